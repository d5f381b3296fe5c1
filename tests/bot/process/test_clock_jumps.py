"""The clock is put an hour forward or back, while messages wait and everybody's turn to send is known by it."""

from datetime import timedelta

import pytest
from sqlalchemy import select

from bot.foundation.clock import Jumps
from bot.foundation.retry import Sent
from bot.store import clock_jumps, dispatch, inbox, outbox
from bot.store import schema as tables
from bot.store.database import Database
from bot.store.dispatch import SendResult, claim_and_settle
from bot.store.inbox import NewEvent
from bot.store.outbox import Outgoing
from bot.store.rate_limit import Rates
from core.dialogue.client.messages import NotSure
from core.dialogue.kit.events import Text
from tests.bot.practice import ADA, BEN, NOW

HOUR, SECOND = timedelta(hours=1), timedelta(seconds=1)


class Wall:
    def __init__(self) -> None:
        self.at = NOW
        self.monotonic = 100.0

    def now(self):
        return self.at

    def pass_(self, seconds: float, jump: timedelta = timedelta(0)) -> None:
        self.at += timedelta(seconds=seconds) + jump
        self.monotonic += seconds


@pytest.mark.parametrize("jump", [HOUR, -HOUR, timedelta(seconds=40), timedelta(seconds=-40)])
def test_a_jump_is_noticed_once(jump):
    wall = Wall()
    jumps = Jumps(wall, lambda: wall.monotonic)
    wall.pass_(5)
    assert not jumps.look()
    wall.pass_(2, jump)
    assert jumps.look() == jump
    wall.pass_(2, timedelta(milliseconds=300))
    assert not jumps.look()


def send_all(database: Database, at, rates=None):
    """Send what can be sent within two seconds, at a messenger that takes no time."""
    said = []
    for n in range(9):
        now = at + n * SECOND / 4
        jobs = database.write_now(claim_and_settle, "w", now, [], 50, rates).jobs
        said += [job.row.chat_id for job in jobs]
        database.write_now(claim_and_settle, "w", now, [SendResult(job.row, Sent(1)) for job in jobs], 0, rates)
    return said


def wait_for(database: Database, *chats: int, at=NOW, **more) -> None:
    database.write_now(outbox.put, [Outgoing(chat, NotSure(), at, **more) for chat in chats], at)


@pytest.mark.parametrize("jump", [HOUR, -HOUR], ids=["forward", "back"])
def test_what_waits_when_the_clock_jumps_is_said_at_once_and_in_order(database: Database, jump) -> None:
    rates = Rates(28, 30, 20)
    wait_for(database, *range(1, 60), at=NOW)
    send_all(database, NOW - SECOND, rates)  # some of it is under way, and the rate is known by the clock as it was
    wait_for(database, ADA, BEN, at=NOW + SECOND)
    then = NOW + 2 * SECOND + jump
    database.write_now(clock_jumps.mend, then)
    wait_for(database, ADA, at=then + SECOND)
    said = []
    for n in range(4):
        said += send_all(database, then + (1 + 3 * n) * SECOND, rates)
    left = database.read_now(
        lambda conn: conn.execute(select(tables.outbox.c.chat_id).where(tables.outbox.c.status == "pending")).all()
    )
    assert left == []
    assert said.count(ADA) == 2
    assert said.count(BEN) == 1


def test_what_is_to_be_said_later_is_still_said_later(database: Database) -> None:
    wait_for(database, ADA, at=NOW, ready_at=NOW + 2 * HOUR)
    database.write_now(clock_jumps.mend, NOW - HOUR)
    assert database.read_now(outbox.next_due) == NOW + HOUR


def test_a_turn_that_failed_is_tried_again_at_once(database: Database) -> None:
    database.write_now(inbox.put, [NewEvent("telegram/1", ADA, Text(NOW, "7"))], NOW)
    (row,) = database.write_now(inbox.claim, NOW, 5)
    database.write_now(inbox.retry_later, row.id, NOW + 2 * SECOND, "x")
    assert database.write_now(inbox.claim, NOW - HOUR, 5) == []
    assert database.write_now(clock_jumps.mend, NOW - HOUR) == 1
    assert len(database.write_now(inbox.claim, NOW - HOUR, 5)) == 1


def test_clocks_of_machines_that_differ_a_little_change_nothing(database: Database) -> None:
    wait_for(database, ADA, at=NOW)
    assert database.write_now(clock_jumps.mend, NOW - 50 * SECOND) == 0
    assert dispatch.HOLD > SECOND
