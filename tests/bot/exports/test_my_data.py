"""A data subject request returns everything stored about the person, readable and as tables, and nothing about
others."""

import asyncio
import io
from dataclasses import replace
from datetime import timedelta
from decimal import Decimal
from typing import Any

import pandas
import pytest
from sqlalchemy import select, update

from bot.exports.my_data import gather
from bot.foundation.clock import HeldClock
from bot.foundation.metrics import Metrics
from bot.foundation.reader import TEXT_LIMIT, length
from bot.foundation.spreadsheet import unescaped
from bot.process.delivery import Delivery
from bot.process.rendering_cache import Renderings
from bot.rendering import Reader
from bot.rendering.subject_access import ClientAccount, MeasureCount, StaffAccount, client_texts, staff_texts
from bot.rendering.voice import voice
from bot.store import coach_thread, invitations, outbox, people, readings, subject_access
from bot.store import schema as tables
from bot.store.database import Database
from bot.store.invitations import InvitationKind
from bot.store.people import Role
from bot.store.schema import metadata
from core.care import NumberVisibility, Plan
from core.client import Background, Caution, Profile, Sex
from core.dialogue.kit.effects import SendData
from core.language import LANGUAGES
from core.measures import MEASURES
from core.reading import How
from tests.bot.practice import (
    ADA,
    BEN,
    MONDAY,
    NOW,
    ROWAN,
    SLOT,
    Practice,
    add_client,
    client_of,
    rowan_and_ada,
    weight,
)
from tests.bot.steps import Puppet, say
from tests.bot.store.test_erase import SECRETS, live
from tests.memory_transport import MemoryTransport

READER = Reader("en", name="Ada")


def person_of(database: Database, chat_id: int) -> int:
    return database.read_now(
        lambda conn: conn.execute(select(tables.people.c.id).where(tables.people.c.chat_id == chat_id)).scalar_one()
    )


def sent_to(database: Database, chat_id: int = ADA, reader: Reader = READER) -> dict[str, Any]:
    """The text and the files, by name, as read by an independent library."""
    found: dict[str, Any] = {}
    for part in database.read_now(gather, person_of(database, chat_id), reader):
        if part.document is not None:
            name, content = part.document
            found[name] = pandas.read_csv(io.BytesIO(content), dtype=str, keep_default_na=False)
        else:
            found["text"] = part.text
    return found


def everything(database: Database, chat_id: int = ADA) -> set[tuple[str, str, str]]:
    frame = sent_to(database, chat_id)["everything.csv"]
    return {(t, f, unescaped(v)) for t, _, f, v in frame.itertuples(index=False)}


def test_whatever_would_be_erased_is_told(database: Database) -> None:
    live(database)
    told = " ".join(value for _, _, value in everything(database))
    assert [secret for secret in SECRETS if secret not in told] == []


def test_every_table_that_has_something_of_the_client_is_told(database: Database) -> None:
    practice = live(database)
    there = set()
    for table in metadata.sorted_tables:
        of_chat = [table.c.chat_id == ADA] if "chat_id" in table.c else []
        of_client = [table.c.client_id == practice.ada] if "client_id" in table.c else []
        for rule in (*of_chat, *of_client):
            if database.read_now(lambda conn, t=table, r=rule: conn.execute(select(t).where(r)).first()):
                there.add(table.name)
    assert {"readings", "words", "goals", "flags", "notes", "invitations", "people"} <= there
    assert there | {"clients"} == {table for table, _, _ in everything(database)}


def test_no_table_hangs_on_somebody_by_a_column_that_is_not_looked_for() -> None:
    whose = {tables.clients: "client_id", tables.people: "person_id", tables.coaches: "coach_id"}
    stands_in = {"deputies.deputy_id"}  # beside the coach's own: staff for staff
    for table in metadata.sorted_tables:
        for column in table.c:
            for key in column.foreign_keys:
                name = f"{table.name}.{column.name}"
                assert column.name == whose.get(key.column.table, column.name) or name in stands_in, name


def test_readings_come_as_they_can_be_read_by_score_with_what_was_typed_and_taken_back(database: Database) -> None:
    practice = database.write_now(rowan_and_ada)
    later = NOW + timedelta(days=2)

    def take(conn: Any) -> None:
        rows = [
            readings.row(practice.ada, "a", weight("82.4", NOW), NOW),
            readings.row(practice.ada, "b", weight("82.1", later, how=How.EARLY), NOW),
            readings.row(practice.ada, "c", replace(weight("28.4", NOW), as_typed="=28.4"), NOW),
        ]
        readings.put(conn, rows)
        readings.withdraw(conn, [(practice.ada, "c")], later)

    database.write_now(take)
    frame = sent_to(database)["readings.csv"]
    assert list(frame["value"]) == ["82.4", "28.4", "82.1"]
    assert list(frame["how"]) == ["asked", "asked", "early"]
    assert [bool(cell) for cell in frame["taken_back_at"]] == [False, True, False]
    assert unescaped(frame["as_typed"][1]) == "=28.4"
    text = sent_to(database)["text"]
    assert "Weight: 1, last on: 30 March 2026" in text
    assert "Kept as a side note: 1" in text
    assert "Taken back: 1" in text


def test_nothing_of_anybody_else_is_told(database: Database) -> None:
    practice = live(database)

    def other(conn: Any) -> None:
        ben = add_client(conn, practice.coach, BEN, "Ben")
        readings.put(conn, [readings.row(ben, "k", weight("91.7", NOW), NOW)])
        client = client_of(conn, BEN)
        coach_thread.put(conn, [(ben, practice.coach, coach_thread.Direction.TO_COACH, "only-bens")], NOW)
        coach_thread.note(conn, client, practice.coach, "note-on-ben", NOW)

    database.write_now(other)
    ada, ben = (repr(sorted(everything(database, chat))) for chat in (ADA, BEN))
    assert "only-bens" in ben
    assert "91.7" in ben
    for secret in ("only-bens", "note-on-ben", "91.7", "'Ben'"):
        assert secret not in ada
    for secret in SECRETS:
        assert secret not in ben


def test_a_coach_gets_their_own_and_only_the_number_of_what_is_their_clients(database: Database) -> None:
    practice = live(database)
    database.write_now(
        lambda conn: invitations.make(conn, InvitationKind.CLIENT, NOW, for_name="Chidi", coach_id=practice.coach)
    )
    found = everything(database, ROWAN)
    assert ("coaches", "name", "Rowan") in found
    assert ("invitations", "for_name", "Chidi") in found
    assert ("notes", "number", "1") in found
    assert ("clients", "number", "1") in found
    told = repr(sorted(found))
    for secret in ("77.31", "Zanzibar-note"):
        assert secret not in told
    assert "Your clients: 1" in sent_to(database, ROWAN)["text"]


def test_an_organiser_gets_their_own(database: Database) -> None:
    def join(conn: Any) -> None:
        person = people.add(conn, 700, Role.ORGANISER, "Dora", "en", NOW)
        people.add_organiser(conn, person, "Dora", NOW)

    database.write_now(join)
    assert ("organisers", "name", "Dora") in everything(database, 700)
    assert "Your clients" not in sent_to(database, 700)["text"]


def test_nobody_is_told_nothing(database: Database) -> None:
    assert database.read_now(gather, None, READER) == ()
    assert database.read_now(gather, 12345, READER) == ()


def test_no_hash_of_a_link_is_told(database: Database) -> None:
    live(database)
    assert not [field for _, field, _ in everything(database) if field in subject_access.OF_NO_USE]


def test_it_is_sent_when_asked_for_as_a_text_and_two_files(database: Database) -> None:
    database.write_now(rowan_and_ada)
    say(database, Puppet([SendData()]), "my data")
    transport = MemoryTransport()
    sender = Delivery(
        database, transport, Renderings(database, gather), HeldClock(NOW), Metrics(), worker="one", rates=None
    )
    asyncio.run(sender.drain())
    text, first, second = transport.to(ADA)
    assert "Ada" in text.text
    assert [part.document and part.document[0] for part in (first, second)] == ["readings.csv", "everything.csv"]
    statuses = database.read_now(lambda conn: conn.execute(select(tables.outbox.c.status)).scalars().all())
    assert set(statuses) == {"sent"}
    kept = database.read_now(lambda conn: conn.execute(select(tables.outbox.c.kind)).scalars().all())
    assert outbox.DeliveryKind.DATA.value in kept


# --- the text ----------------------------------------------------------------------------------------------

FULL = ClientAccount(
    name="Ada " * 40,
    coach="Rowan " * 20,
    language="de",
    since=MONDAY,
    profile=Profile(Sex.FEMALE, 1968, None, Decimal(165), Background.SOUTH_CENTRAL_AMERICAN, frozenset(Caution)),
    plan=Plan(measures=tuple(MEASURES), own_question="How far can I walk? " * 300),
    slot=SLOT,
    taken=tuple(MeasureCount(key, 9_999, MONDAY) for key in MEASURES),
    early=4,
    withdrawn=2,
    slots=(120, 99),
    goals=tuple((key, "123.4", MONDAY) for key in MEASURES),
    words=1_234,
    notes=40,
    flags=99,
    open_flags=9,
    cohorts=tuple(f"Challenge {n} " * 10 for n in range(40)),
)


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_longest_account_goes_out_in_messages_that_are_not_too_long(language: str) -> None:
    v = voice(Reader(language))
    texts = client_texts(FULL, v)
    assert max(map(length, texts)) <= TEXT_LIMIT
    assert len(texts) == (3 if language in ("es", "fr") else 2)
    staff = StaffAccount("Rowan" * 50, language, MONDAY, SLOT, 3, 4, FULL.cohorts, {"clients": 2})
    assert [length(text) <= TEXT_LIMIT for text in staff_texts(staff, v)] == [True]


def test_who_does_not_want_to_see_numbers_reads_none_in_the_text() -> None:
    hidden = replace(FULL, plan=replace(FULL.plan, numbers=NumberVisibility.COACH_ONLY))
    text = "".join(client_texts(hidden, voice(READER)))
    assert "123.4" in "".join(client_texts(FULL, voice(READER)))
    assert "123.4" not in text
    assert "not shown to you" in text


def test_what_is_not_known_has_no_line() -> None:
    bare = ClientAccount("", "", "en", MONDAY, Profile(), Plan(), None)
    (text,) = client_texts(bare, voice(READER))
    for word in ("Name:", "Coach:", "Born:", "Sex:", "Height:", "Your answers", "Check-ins", "Challenges"):
        assert word not in text


def test_a_removed_zone_and_a_strange_language_do_no_harm(database: Database) -> None:
    practice: Practice = database.write_now(rowan_and_ada)
    database.write_now(
        lambda conn: conn.execute(
            update(tables.clients).where(tables.clients.c.id == practice.ada).values(zone_name="Nowhere/Gone")
        )
    )
    assert "Gone" in sent_to(database, reader=Reader("tlh"))["text"]
