"""A group chat in a database: linked only by its organiser, moved, lost; numbers answered in private; no text
stored."""

from __future__ import annotations

import asyncio
from datetime import timedelta
from typing import Any

import pytest

from bot.foundation.retry import Moved
from bot.store import outbox
from bot.store import schema as t
from bot.store.database import Database
from bot.store.dispatch import SendResult, claim_and_settle
from bot.store.invitations import InvitationKind
from bot.turns.group_turn import GroupTurn
from core.dialogue.group import messages as cm
from core.dialogue.kit.events import Command
from core.dialogue.organiser import messages as om
from demo.player import Player
from demo.tape import read as read_tape
from tests.bot.field import (
    GROUP,
    MONDAY,
    OLGA,
    Field,
    tied,
    told,
)
from tests.bot.practice import ADA, NOW, ROWAN
from tests.bot.steps import queued, rows, work


@pytest.fixture
def field(database: Database) -> Field:
    return Field(database)


# --- the group chat ---------------------------------------------------------------------------------------------


def test_the_organiser_s_link_ties_a_group_which_says_hello_once(field: Field) -> None:
    cohort = field.spring()
    token = field.presses(f"cogroup:{cohort}", OLGA)[0].link.partition("startgroup=")[2]
    assert field.group("start", text=token) == [cm.GroupHello("Spring", MONDAY, 4)]
    assert told(field, OLGA, om.GroupTied).cohort == "Spring"
    assert field.group("start", text=token, chat=-5000) == []  # it worked once
    assert [r.chat_id for r in rows(field.database, t.groups)] == [GROUP]


def test_nobody_but_the_organiser_ties_a_group(field: Field) -> None:
    field.member(ADA, "Ada")
    cohort = field.spring()
    token = field.link(cohort, InvitationKind.GROUP)
    for by in (ADA, ROWAN, 12345, 0):
        assert field.group("start", by=by, text=token) == []
        assert field.group("bind", by=by) == []
    assert rows(field.database, t.groups) == []


def test_the_command_in_the_group_ties_and_unties(field: Field) -> None:
    field.spring()
    assert field.group("bind") == [cm.GroupHello("Spring", MONDAY, 4)]
    assert field.group("unbind") == [cm.GroupGoodbye("Spring")]
    assert rows(field.database, t.groups) == []


def test_the_bot_taken_out_unties_and_the_organiser_is_told(field: Field) -> None:
    cohort = field.spring()
    tied(field, cohort)
    assert field.group("removed", by=12345) == []
    assert rows(field.database, t.groups) == []
    assert told(field, OLGA, om.GroupLost).cohort == "Spring"


def test_a_group_that_grew_takes_what_waits_for_it_along(field: Field) -> None:
    cohort = field.spring()
    tied(field, cohort)
    field.group("migrated", other_chat=-1004000)
    assert [(r.chat_id, r.cohort_id) for r in rows(field.database, t.groups)] == [(-1004000, cohort)]
    assert queued(field.database, -1004000) == [cm.GroupHello("Spring", MONDAY, 4)]
    field.group("migrated", other_chat=-1004000)  # told twice
    field.group("removed")  # the old chat is no longer one of our groups
    assert [r.chat_id for r in rows(field.database, t.groups)] == [-1004000]


def test_a_refusal_that_names_the_new_group_moves_it_as_well(field: Field) -> None:
    cohort = field.spring()
    tied(field, cohort)

    def refused(conn: Any) -> None:
        claimed = outbox.claim(conn, "w", NOW, timedelta(minutes=1), 10)
        (row,) = [r for r in claimed if r.chat_id == GROUP]
        claim_and_settle(conn, "w", NOW, [SendResult(row, Moved(-1004000))], 0, None)

    field.database.write_now(refused)
    work(field.database, field.steps, NOW)
    assert [(r.chat_id, r.cohort_id) for r in rows(field.database, t.groups)] == [(-1004000, cohort)]
    assert queued(field.database, -1004000) == [cm.GroupHello("Spring", MONDAY, 4)]


def test_a_number_in_the_group_is_told_its_owner_in_private_once_an_hour_and_kept_nowhere(field: Field) -> None:
    ada = field.member(ADA, "Ada")
    cohort = field.spring()
    field.join(cohort, ada)
    tied(field, cohort)
    assert field.group("number", by=ADA) == []
    assert field.group("number", by=ADA) == []
    assert queued(field.database, ADA) == [cm.NumberInGroup()]
    field.now += timedelta(hours=1)
    field.group("number", by=ADA)
    assert len(queued(field.database, ADA)) == 2
    assert field.group("number", by=12345) == []
    assert queued(field.database, 12345) == []
    assert rows(field.database, t.readings) == []


def test_a_group_of_no_cohort_leaves_no_trace(field: Field) -> None:
    for what in ("added", "joined", "left", "number", "start", "migrated", "removed"):
        assert field.group(what, by=12345, chat=-9) == []
    assert [r for r in rows(field.database, t.inbox) if r.chat_id == -9] == []
    assert rows(field.database, t.groups) == []


def test_an_event_that_is_none_of_a_group_is_nothing(field: Field) -> None:
    assert field.database.write_now(GroupTurn().step, GROUP, Command(NOW, "start"), NOW) is False


SAID_IN_A_GROUP = """
start 2026-04-06 09:00 Europe/London
coach Rowan
client Ada of Rowan: slot="Mon 18:00"
Rowan: /cohort Spring
Rowan: today
Rowan: 4 weeks
Rowan: 18:00
Rowan presses Active minutes
Rowan presses Up to 30
Ada opens Rowan's invitation
group Steps: Rowan Ada
Rowan adds the bot to Steps
Rowan in Steps: /cohort bind
expect Steps sees Hello
Ada in Steps: my marmalade weighs 123.4 kg
expect Ada sees I did not keep it
Ada in Steps: marmalade for everybody
bot stops
Ada in Steps: marmalade 128/82
"""


def test_no_word_said_in_a_group_is_ever_written_to_the_database(tmp_path: Any) -> None:
    """Also while the bot is down: pending updates are dropped when they are fetched."""

    async def play() -> None:
        async with Player(read_tape(SAID_IN_A_GROUP), tmp_path, lambda line: None, None) as player:
            await player.run()
            assert player.played.failures == []
            kept = b"".join(file.read_bytes() for file in tmp_path.glob("samehour.db*"))
            assert b"Spring" in kept  # the right files
            assert b"marmalade" not in kept and b"123.4" not in kept

    asyncio.run(play())
