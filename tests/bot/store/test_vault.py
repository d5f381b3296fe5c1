"""What somebody finds who has the disk, the log, a backup or a replica: before and after a person was erased."""

import re
import sqlite3
import subprocess
import sys
from contextlib import closing
from datetime import timedelta
from itertools import pairwise
from pathlib import Path

import pytest
from sqlalchemy import update

from bot.store import dispatch, rate_limit, readings
from bot.store import schema as tables
from bot.store.database import Database
from bot.store.keyring import UNOPENED, KeyGone, Keyring
from bot.store.sealed import Sealed
from core.dialogue.client.effects import PassOn, Record
from core.dialogue.client.messages import Forgotten
from core.dialogue.kit.effects import Erase, Say
from tests.bot.practice import BEN, NOW, add_client, rename, rowan_and_ada, weight
from tests.bot.steps import Puppet, queued, rows, say
from tests.bot.store.bytes_of import bytes_of, mark, mark_of, stored

ROOT = Path(__file__).parents[3]
CHAT = 71_234_567_890_123  # of nobody else, and as bytes of nothing else
SECRETS = ("Quillfeather", "77.31", "knee-of-glass")
RUN = re.compile(rb"[A-Za-z0-9+/]*={0,2}")
SECOND = timedelta(seconds=1)


def live(database: Database) -> int:
    """Give somebody in `CHAT` a life with us; their number."""
    practice = database.write_now(rowan_and_ada)
    client = database.write_now(lambda conn: add_client(conn, practice.coach, CHAT, "Ada"))
    database.write_now(rename, client, "Quillfeather")
    for n in range(20):
        said = [Record(weight("77.31", NOW + n * SECOND), f"k{n}"), PassOn("knee-of-glass"), Say(Forgotten())]
        say(database, Puppet(said), "my knee-of-glass", NOW + n * SECOND, CHAT)
    database.write_now(rate_limit.take_chats, [(CHAT, False, NOW)], rate_limit.Rates())
    return client


def forget(database: Database) -> None:
    say(database, Puppet([Erase(Forgotten())]), "forget Quillfeather", NOW + 60 * SECOND, CHAT)


def send_everything(database: Database) -> list[int]:
    """Send what may be sent; to which chats."""
    at = NOW + 120 * SECOND
    sent: list[int] = []
    while jobs := database.write_now(dispatch.claim_and_settle, "w", at, [], 50, None).jobs:
        sent += [job.row.chat_id for job in jobs]
        results = [dispatch.SendResult(job.row, dispatch.Sent(1)) for job in jobs]
        database.write_now(dispatch.claim_and_settle, "w", at, results, 0, None)
    return sent


def chat_bytes() -> tuple[bytes, ...]:
    """The chat as digits, and as the databases write numbers."""
    return (str(CHAT).encode(), CHAT.to_bytes(6, "big"), CHAT.to_bytes(8, "little"))


def opened(database: Database, content: bytes) -> str:
    """Everything sealed that stands in these bytes and can be opened with the keys there are."""
    ring = database.keyring
    places = [c.type.place for t in tables.metadata.sorted_tables for c in t.c if isinstance(c.type, Sealed)]
    starts = sorted(
        {at.start() for key in ring.held() for at in re.finditer(re.escape(mark(key)), content)} | {len(content)}
    )
    found = set()
    for start, following in pairwise(starts):
        run = RUN.match(content, start, following)[0]
        for end in range(len(run) // 4 * 4, max(len(run) - 64, 48), -4):  # what stands behind it may look the same
            texts = {ring.open(place, run[:end].decode()) for place in places} - {UNOPENED}
            if texts:
                found |= texts
                break
    return "\n".join(sorted(found))


def test_no_word_of_anybody_is_on_the_disk_in_clear(database: Database) -> None:
    live(database)
    content = stored(database)
    assert not [word for word in SECRETS if word.encode() in content]
    assert all(word in opened(database, content) for word in SECRETS)  # the search finds what is there


@pytest.mark.parametrize("database_url", ["sqlite"], indirect=True)
def test_after_the_goodbye_no_byte_of_the_person_is_in_the_file_or_its_log(database: Database) -> None:
    live(database)
    theirs = mark_of(database, CHAT)
    send_everything(database)
    forget(database)
    assert send_everything(database) == [CHAT]
    content = stored(database)
    assert [byte for byte in (theirs, *chat_bytes()) if byte in content] == []
    assert opened(database, content).count("Quillfeather") == 0


@pytest.mark.parametrize("database_url", ["sqlite"], indirect=True)
def test_the_goodbye_waits_for_a_reader_who_still_sees_the_person(database: Database) -> None:
    live(database)
    theirs = mark_of(database, CHAT)
    send_everything(database)
    with closing(sqlite3.connect(database.file, isolation_level=None)) as reader:
        reader.execute("BEGIN")
        reader.execute("SELECT count(*) FROM readings").fetchone()
        forget(database)
        assert theirs in stored(database)
        assert database.finish_erasures_now() == 0
        assert CHAT not in send_everything(database)
        assert queued(database, CHAT) == [Forgotten()]
        assert opened(database, stored(database)).count("Quillfeather") == 0  # the key is gone already
        reader.execute("COMMIT")
        assert database.finish_erasures_now() > 0
    assert theirs not in stored(database)
    assert send_everything(database) == [CHAT]
    assert [byte for byte in (theirs, *chat_bytes()) if byte in stored(database)] == []


KILLED = """
import os, signal, sys
from bot.store import erase, database
from tests.bot.practice import NOW
database.Database._finish_erasures = lambda self: os.kill(os.getpid(), signal.SIGKILL)
there = database.Database(sys.argv[1])
there.write_now(erase.client, int(sys.argv[2]), NOW)
"""


def test_a_kill_right_at_the_commit_leaves_the_rest_to_the_next_start(database: Database) -> None:
    client = live(database)
    theirs = mark_of(database, CHAT)
    before = opened(database, stored(database))
    assert "Quillfeather" in before
    if database.file is None:
        url = database.engine.url.render_as_string(hide_password=False)
    else:
        url = f"sqlite:///{database.file}"
    ended = subprocess.run([sys.executable, "-c", KILLED, url, str(client)], cwd=ROOT, check=False)
    assert ended.returncode == -9
    assert len(rows(database, tables.erasures)) > 0
    assert database.finish_erasures_now() > 0
    assert rows(database, tables.erasures) == []
    content = stored(database)
    assert theirs not in content
    assert "Quillfeather" not in opened(database, content)


@pytest.mark.parametrize("database_url", ["sqlite"], indirect=True)
def test_a_copy_from_before_holds_nothing_of_them_for_whoever_has_the_master_key(
    database: Database, tmp_path: Path
) -> None:
    live(database)
    ben = database.write_now(lambda conn: add_client(conn, None, BEN, "Benjamin-of-the-brook"))
    folder = tmp_path / "copy"
    folder.mkdir()
    with closing(sqlite3.connect(database.file)) as old, closing(sqlite3.connect(folder / "copy.db")) as new:
        old.backup(new)
    theirs = mark_of(database, CHAT)
    forget(database)
    content = bytes_of(folder)
    assert theirs in content
    read = opened(database, content)
    assert not [word for word in SECRETS if word in read]
    assert "Benjamin-of-the-brook" in read  # others are still there
    assert ben


@pytest.mark.parametrize("database_url", ["postgresql"], indirect=True)
def test_heap_and_log_of_a_server_hold_nothing_that_could_be_read(
    database: Database, postgresql_server, request: pytest.FixtureRequest
) -> None:
    live(database)
    theirs = mark_of(database, CHAT)
    send_everything(database)
    before = bytes_of(postgresql_server.folder)
    assert theirs in before
    assert "knee-of-glass" in opened(database, before)
    forget(database)
    send_everything(database)
    after = bytes_of(postgresql_server.folder)
    for word in SECRETS:
        assert word.encode() not in before + after
        assert word not in opened(database, after)
    assert [row for row in rows(database, tables.outbox) if row.chat_id == CHAT] == []
    assert [row for row in rows(database, tables.inbox) if row.chat_id == CHAT] == []


def test_rows_name_no_chat_beside_an_instant_once_it_is_forgotten(database: Database) -> None:
    live(database)
    forget(database)
    send_everything(database)
    for table in tables.metadata.sorted_tables:
        for column in ("chat_id", "key", "occasion"):
            if column in table.c:
                assert not [row for row in rows(database, table) if str(CHAT) in str(getattr(row, column))], table.name


# --- keys ------------------------------------------------------------------------------------------------------


def test_a_value_without_its_owner_is_refused(database: Database) -> None:
    client = live(database)
    with pytest.raises(Exception, match=r"clients\.name is stored sealed"):
        database.write_now(lambda conn: conn.execute(update(tables.clients).values(name="Ada")))
    assert client


def test_a_value_moved_to_another_column_or_person_does_not_open(database: Database) -> None:
    ring = database.keyring
    one, other = ring.make_many(2, NOW.date())
    sealed = ring.seal(one, "words.text", "my knee")
    ring.forget_opened()
    assert ring.open("words.text", sealed) == "my knee"
    assert ring.open("notes.text", sealed) is UNOPENED
    swapped = mark(other) + sealed.encode()[12:]
    assert ring.open("words.text", swapped.decode()) is UNOPENED
    assert ring.open("words.text", "my knee") is UNOPENED


def test_a_destroyed_key_opens_and_seals_nothing_any_more(database: Database) -> None:
    ring = database.keyring
    key = ring.make(NOW.date())
    sealed = ring.seal(key, "words.text", "my knee")
    ring.destroy([key], NOW.date())
    ring.destroy([key], NOW.date())
    assert ring.open("words.text", sealed) is UNOPENED
    with pytest.raises(KeyGone):
        ring.seal(key, "words.text", "my knee")
    assert ring.destroyed() == {key}
    assert key.encode() in Path(str(ring.url.database)).read_bytes()  # the list names it
    wrapped = sqlite3.connect(str(ring.url.database))
    assert wrapped.execute("SELECT count(*) FROM keys WHERE id = ?", [key]).fetchone() == (0,)
    wrapped.close()


def test_keys_looked_up_together_open_what_they_sealed_and_only_those_that_are_there(database: Database) -> None:
    ring = database.keyring
    first, second, gone = ring.make_many(3, NOW.date())
    sealed = {number: ring.seal(number, "people.name", number) for number in (first, second, gone)}
    ring.destroy([gone], NOW.date())
    ring.look_up([*sealed.values(), None, "", "no sealed value", "????????????"])
    assert ring.open("people.name", sealed[first]) == first
    assert ring.open("people.name", sealed[second]) == second
    assert ring.open("people.name", sealed[gone]) is UNOPENED
    assert ring.open("people.language", sealed[first]) is UNOPENED


def test_what_belongs_to_nobody_is_sealed_for_five_weeks(database: Database) -> None:
    ring = database.keyring
    sealed = ring.seal(ring.passing(NOW), "outbox.message", "a digest")
    assert ring.passing(NOW) == ring.passing(NOW + timedelta(days=3)) != ring.passing(NOW + timedelta(days=7))
    assert ring.destroy_passing(NOW + timedelta(weeks=5)) == 0
    assert ring.open("outbox.message", sealed) == "a digest"
    assert ring.destroy_passing(NOW + timedelta(weeks=5, days=1)) == 1
    assert ring.open("outbox.message", sealed) is UNOPENED


def test_what_was_read_of_anybody_is_let_go_of_when_somebody_is_erased(database: Database) -> None:
    client = live(database)
    ring = database.keyring
    (known,) = database.read_now(readings.histories, [client], NOW).values()
    assert [str(reading.value) for reading in ring.parsed.values()] == ["77.31"] * len(known)
    forget(database)
    assert ring.parsed == {}


def test_what_another_process_erased_is_let_go_of_within_the_hour(database: Database) -> None:
    ring = database.keyring
    key = ring.make(NOW.date())
    sealed = ring.seal(key, "words.text", "my knee")
    with closing(Keyring(str(ring.url))) as other:
        other.destroy([key], NOW.date())
    assert ring.open("words.text", sealed) == "my knee"
    ring.destroy_passing(NOW)  # as housekeeping does
    assert ring.open("words.text", sealed) is UNOPENED


def test_every_column_in_which_somebody_is_spoken_of_is_sealed() -> None:
    """What is in clear is listed here, so that a new column is thought about."""
    clear = {
        f"{table.name}.{column.name}"
        for table in tables.metadata.sorted_tables
        for column in table.c
        if str(column.type) in ("TEXT",) and not isinstance(column.type, Sealed)
    }
    assert clear == {
        "audit.action", "audit.actor", "clients.key_id", "clients.length_unit", "clients.mass_unit", "clients.status",
        "clients.zone_name", "coaches.settings", "coaches.zone_name", "cohorts.closing", "cohorts.counts",
        "cohort_told.what", "cohort_told.who", "cohorts.language", "cohorts.name", "cohorts.zone_name",
        "erasures.key_id", "flags.code", "flags.done", "flags.ended", "flags.measure", "flags.severity",
        "goals.measure", "groups.language", "inbox.error", "inbox.key", "inbox.language",
        "inbox.status", "invitations.kind", "invitations.token_hash", "outbox.claimed_by", "outbox.error",
        "outbox.kind", "outbox.language", "outbox.occasion", "outbox.platform_message_id", "outbox.ref",
        "outbox.status",
        "pace.key",
        "people.key_id", "people.language", "people.role", "people.zone_name", "readings.how", "readings.key",
        "readings.measure", "readings.unit", "said.key", "settings.key", "settings.value", "slots.outcome",
        "unread.key", "unread.why", "wakes.mark", "wakes.purpose", "words.direction",
    }  # fmt: skip
