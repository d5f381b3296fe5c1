"""The only access to another person's data."""

import pytest
from sqlalchemy import update

from bot.store import caseload, flags
from bot.store import schema as tables
from bot.store.database import Database
from core.dialogue.client.effects import Raise
from core.watching.flags import Code, flag
from tests.bot.practice import BEN, NOW, SLOT, add_client, add_coach, rowan_and_ada
from tests.bot.steps import Puppet, say


@pytest.fixture
def practices(database: Database) -> tuple[int, int, int, int]:
    """Rowan with Ada, Sam with Ben: coach, client, coach, client."""

    def both(conn):
        first = rowan_and_ada(conn)
        sam = add_coach(conn, 901, "Sam")
        return (first.coach, first.ada, sam, add_client(conn, sam, BEN, "Ben"))

    return database.write_now(both)


def test_a_coach_sees_their_own_client_and_everything_the_row_says(database: Database, practices) -> None:
    rowan, ada, _, _ = practices
    client = database.read_now(caseload.client, rowan, ada)
    assert client is not None
    assert (client.id, client.name, client.slot, client.language) == (ada, "Ada", SLOT, "de")


def test_a_coach_sees_nobody_else_s_client(database: Database, practices) -> None:
    rowan, ada, sam, ben = practices
    assert database.read_now(caseload.client, rowan, ben) is None
    assert database.read_now(caseload.client, sam, ada) is None
    assert database.read_now(caseload.client, rowan, 404) is None
    assert [c.id for c in database.read_now(caseload.everybody, sam)] == [ben]


def test_the_door_closes_the_moment_a_client_goes_over(database: Database, practices) -> None:
    rowan, ada, sam, _ = practices
    database.write_now(
        lambda conn: conn.execute(update(tables.clients).where(tables.clients.c.id == ada).values(coach_id=sam))
    )
    assert database.read_now(caseload.client, rowan, ada) is None
    assert database.read_now(caseload.client, sam, ada) is not None


def test_a_client_without_a_coach_is_in_no_caseload(database: Database, practices) -> None:
    rowan, ada, _, _ = practices
    database.write_now(lambda conn: conn.execute(update(tables.clients).values(coach_id=None)))
    assert database.read_now(caseload.client, rowan, ada) is None
    assert database.read_now(caseload.everybody, rowan) == ()


def test_a_flag_is_seen_once_and_stays_open(database: Database, practices) -> None:
    _, ada, _, ben = practices
    say(database, Puppet([Raise(flag(Code.WANTS_COACH, NOW))]))
    assert not database.write_now(flags.seen, ben, "wants_coach", None, NOW)
    assert database.write_now(flags.seen, ada, "wants_coach", None, NOW)
    assert not database.write_now(flags.seen, ada, "wants_coach", None, NOW)
    (kept,) = database.read_now(flags.history, [ada])
    assert (kept.seen_at, kept.cleared_at, kept.flag.code) == (NOW, None, Code.WANTS_COACH)
