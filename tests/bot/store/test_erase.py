"""Erasure is complete: no reading, name or message of the person remains, not even in the bytes of the file."""

from datetime import timedelta
from decimal import Decimal
from pathlib import Path

import pytest
from sqlalchemy import select, text, update

from bot.store import coach_thread, codec, erase, invitations, outbox, people, retention, staff
from bot.store import schema as tables
from bot.store.database import Database
from bot.store.invitations import InvitationKind
from bot.store.outbox import Outgoing
from bot.store.retention import RetentionPeriods
from bot.store.schema import metadata
from core.care import Plan
from core.dialogue.client.effects import PassOn, Raise, Record, SetGoal, SetTimer
from core.dialogue.client.facts import GoalFact
from core.dialogue.client.messages import CoachWrites, Forgotten
from core.dialogue.client.messages_to_coach import ClientWord
from core.dialogue.client.states import Setting, State
from core.dialogue.kit.effects import Choice, Erase, Say
from core.dialogue.kit.events import Text
from core.dialogue.staff.messages import DigestSaid, NothingToDraw, Sheet
from core.judging.chart_data import Point, TrendChart
from core.quantity import Unit
from core.watching.digest import Digest, DigestEntry, FlagFact, Panel
from core.watching.flags import Code, Severity, flag
from tests.bot.practice import (
    ADA,
    BEN,
    MONDAY,
    NOW,
    ROWAN,
    Practice,
    add_client,
    client_of,
    rename,
    rowan_and_ada,
    weight,
)
from tests.bot.steps import Puppet, arrive, queued, rows, say, work
from tests.bot.store.bytes_of import mark_of, stored

SECRETS = ("Quillfeather", "77.31", "knee-of-glass", "purple-scales", "Zanzibar-note", "77.29", "torn-page")
SECOND, DAY = timedelta(seconds=1), timedelta(days=1)


def live(database: Database) -> Practice:
    """Give Ada some weeks with us, in which each secret is stored somewhere."""
    practice = database.write_now(rowan_and_ada)
    ada = practice.ada

    def known(conn):
        rename(conn, ada, "Quillfeather")
        client = client_of(conn, ADA)
        coach_thread.note(conn, client, practice.coach, "Zanzibar-note", NOW)
        invitations.make(
            conn, InvitationKind.CLIENT, NOW, for_name="Quillfeather", coach_id=practice.coach, client_id=ada
        )
        outbox.put(conn, [Outgoing(ADA, CoachWrites("Rowan", "torn-page"), NOW + DAY, person_id=client.person_id)], NOW)

    database.write_now(known)
    state = State(asking=Setting("word", "purple-scales"))
    reading = weight("77.31", NOW)
    say(
        database,
        Puppet(
            [Record(reading, "k"), PassOn("knee-of-glass"), SetGoal(GoalFact("weight", "77.29", MONDAY, NOW))], state
        ),
    )
    say(
        database,
        Puppet([Raise(flag(Code.WANTS_COACH, NOW)), SetTimer("snooze", NOW), Say(Forgotten(), said="x")], state),
    )
    arrive(database, Text(NOW, "77.31 torn-page"), name="Quillfeather")
    for later in (0, 2, 17):  # a message nobody could handle

        def broken(state, event, facts):
            raise ValueError

        work(database, Puppet(broken).steps(), NOW + later * SECOND)
    return practice


def contents(database: Database) -> str:
    """Everything that is kept, as whoever has the keys can read it."""

    def dump(conn):
        return "".join(str(conn.execute(select(table)).all()) for table in metadata.sorted_tables)

    return database.read_now(dump)


def found(database: Database) -> list[str]:
    kept = contents(database) + stored(database).decode("latin-1")
    return [secret for secret in SECRETS if secret in kept]


def test_the_secrets_are_there_before_and_can_be_read_with_the_keys_alone(database: Database) -> None:
    live(database)
    assert found(database) == list(SECRETS)
    assert not [secret for secret in SECRETS if secret.encode() in stored(database)]


def test_nothing_of_a_forgotten_client_stays_in_the_database_or_its_log(database: Database) -> None:
    live(database)
    mark = mark_of(database, ADA)
    assert mark in stored(database)
    say(database, Puppet([Erase(Forgotten())]), "forget Quillfeather")
    assert found(database) == []
    if database.file is not None:  # a server has overwritten what is deleted once VACUUM has passed; see test_vault
        assert mark not in stored(database)
    assert queued(database, ADA) == [Forgotten()]
    assert queued(database, ROWAN) == []
    assert [(row.actor, row.action) for row in rows(database, tables.audit)][-1][1] == "erased"


def test_what_waits_for_the_coach_is_said_without_who_was_forgotten(database: Database) -> None:
    practice = live(database)
    ben = database.write_now(lambda conn: add_client(conn, practice.coach, BEN, "Ben"))
    seen = FlagFact(1, Code.MISSED_CHECK_INS, Severity.NOTE, None, (), NOW)
    both = [DigestEntry(practice.ada, "Quillfeather", (seen,)), DigestEntry(ben, "Ben", (seen,))]
    lines = TrendChart("weight", Unit.KILOGRAM, (Point(MONDAY, Decimal(77)),), Point(MONDAY, Decimal(77)))

    def waiting(conn):
        to = people.coach(conn, practice.coach).person_id
        digest = Digest(MONDAY, tuple(both), away=tuple(both))
        buttons = ((Choice("card", "card:1", "Quillfeather"), Choice("card", "card:2", "Ben")),)
        for message in (DigestSaid(digest), Sheet(MONDAY, (Panel("Quillfeather", "x", lines),)), NothingToDraw()):
            outbox.put(conn, [Outgoing(ROWAN, message, NOW, buttons, to)], NOW)

    database.write_now(waiting)
    say(database, Puppet([Erase(Forgotten())]))
    left = Digest(MONDAY, (both[1],), away=(both[1],))
    assert queued(database, ROWAN) == [DigestSaid(left), NothingToDraw()]
    assert [codec.load_rows(r.choices) for r in rows(database, tables.outbox) if r.chat_id == ROWAN and r.choices] == [
        ((Choice("card", "card:2", "Ben"),),)
    ] * 2
    assert found(database) == []


def test_every_table_of_a_client_is_empty_afterwards(database: Database) -> None:
    practice = live(database)
    say(database, Puppet([Erase(Forgotten())]))
    for table in metadata.sorted_tables:
        if "client_id" in table.c and table.name != "audit":
            assert [row for row in rows(database, table) if row.client_id == practice.ada] == [], table.name
    for table in (tables.people, tables.conversations, tables.wakes):
        assert [row for row in rows(database, table) if row.chat_id == ADA] == [], table.name


def test_a_client_erased_from_the_command_line_is_erased_as_well(database: Database) -> None:
    practice = live(database)
    database.write_now(erase.client, practice.ada, NOW, "operator")
    assert found(database) == []
    assert rows(database, tables.audit)[-1].actor == "operator"


def test_others_keep_what_is_theirs(database: Database) -> None:
    practice = live(database)
    ben = database.write_now(lambda conn: add_client(conn, practice.coach, BEN, "Ben"))
    say(database, Puppet([Record(weight("70.5", NOW), "k")]), chat_id=BEN)
    database.write_now(outbox.put, [Outgoing(ROWAN, ClientWord(ben, "Ben", "hello"), NOW, about=ben)], NOW)
    database.write_now(erase.client, practice.ada, NOW)
    assert [row.value for row in rows(database, tables.readings)] == [Decimal("70.5")]
    assert queued(database, ROWAN) == [ClientWord(ben, "Ben", "hello")]


def test_a_forgotten_coach_leaves_their_clients_in_place_without_a_coach(database: Database) -> None:
    practice = live(database)

    def forget(conn):
        rowan = people.coach(conn, practice.coach)
        staff.save_template(conn, practice.coach, "t", Plan(), NOW)
        erase.staff(conn, rowan.person_id, NOW, "coach/1")

    database.write_now(forget)
    (ada,) = rows(database, tables.clients)
    assert (ada.id, ada.coach_id) == (practice.ada, None)
    for table in (tables.coaches, tables.notes, tables.templates, tables.invitations):
        assert rows(database, table) == [], table.name
    assert "Zanzibar-note" not in contents(database)
    assert [row.chat_id for row in rows(database, tables.people)] == [ADA]


def test_whoever_left_long_ago_is_forgotten_and_whoever_left_lately_is_not(database: Database) -> None:
    practice = live(database)
    kept = RetentionPeriods(left=timedelta(days=365))
    left = {"status": "left", "left_at": NOW}
    database.write_now(lambda conn: conn.execute(update(tables.clients).values(**left)))
    database.write_now(retention.tidy, NOW + timedelta(days=365), kept)
    assert [row.id for row in rows(database, tables.clients)] == [practice.ada]
    database.write_now(retention.tidy, NOW + timedelta(days=365, seconds=1), kept)
    assert rows(database, tables.clients) == []
    assert found(database) == []


@pytest.mark.parametrize("pragma", ["secure_delete", "foreign_keys"])
def test_what_erasing_relies_on_is_switched_on(tmp_path: Path, pragma: str) -> None:
    database = Database(f"sqlite:///{tmp_path / 'x.db'}")
    assert database.read_now(lambda conn: conn.execute(text(f"PRAGMA {pragma}")).scalar_one()) == 1
    database.close()
