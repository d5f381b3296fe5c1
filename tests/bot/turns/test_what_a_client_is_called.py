"""A coach reads each client under one name, wherever they are named: the client's own, or one the coach has given."""

from __future__ import annotations

from datetime import timedelta
from typing import Any

import pytest

from bot.process import deputies as sweeps
from bot.store import deputies
from bot.store import flags as flag_store
from bot.store.database import Database
from bot.store.schema import clients as table
from core.care import Status
from core.dialogue.client.messages_to_coach import ClientWord, HealthChanged, UrgentFlag
from core.dialogue.staff import messages as sm
from core.dialogue.staff import name_messages as nm
from core.dialogue.staff.facts import DeputyFact
from core.watching.flags import Code, flag
from tests.bot.office import Desk
from tests.bot.practice import ADA, BEN, NOW, ROWAN, add_client, add_coach
from tests.bot.steps import rows

SAM = 901
NAMES = {1: "Ada (1950)", 2: "Ada (1960)"}


@pytest.fixture
def desk(database: Database) -> Any:
    """Rowan with two Adas; Sam stands in for Rowan."""
    made: Any = Desk(database)
    made.rowan = database.write_now(lambda c: add_coach(c, zone_name="Europe/London"))
    made.sam = database.write_now(add_coach, SAM, "Sam")
    made.first = database.write_now(lambda c: add_client(c, made.rowan, ADA, "Ada", birth_year=1950))
    made.second = database.write_now(lambda c: add_client(c, made.rowan, BEN, "Ada", birth_year=1960))
    database.write_now(deputies.put, made.rowan, DeputyFact(made.sam, "Sam"))
    return made


def renamed(desk: Any, client: int, name: str) -> Any:
    desk.presses(f"name:{client}")
    (said,) = desk.says(name)
    return said


def news_of(desk: Any, kind: type, text: str, chat: int = ADA) -> Any:
    desk.says(text, chat)
    (said,) = [m for m in desk.heard(ROWAN) if isinstance(m, kind)]
    return said


@pytest.mark.parametrize("given", ["", "Ada K"], ids=["by-their-year", "as-the-coach-calls-them"])
def test_every_piece_of_news_names_the_client_as_the_list_does(desk: Any, given: str) -> None:
    if given:
        renamed(desk, desk.first, given)
    name = given or "Ada (1950)"
    assert name in [r.name for r in desk.commands("caseload")[0].rows]
    told = {UrgentFlag: "I have chest pain now", HealthChanged: "I have diabetes"}
    assert {kind: news_of(desk, kind, text).name for kind, text in told.items()} == dict.fromkeys(told, name)
    desk.commands("coach", "my knee hurts", ADA)
    assert [m.name for m in desk.heard(ROWAN) if isinstance(m, ClientWord)] == [name]
    assert desk.presses(f"card:{desk.first}")[0].name == name
    assert [c.name for c in desk.commands("digest")[0].digest.needs] == [name]


def test_the_deputy_reads_the_same_name(desk: Any) -> None:
    renamed(desk, desk.first, "Ada K")
    alarm = flag(Code.RED_FLAG_WORDS, NOW, level="emergency", sign="chest_pain")
    desk.database.write_now(flag_store.raise_, [(desk.first, alarm)], NOW)
    desk.database.write_now(sweeps.sweep, NOW + timedelta(hours=1))
    assert [m.name for m in desk.heard(SAM) if isinstance(m, sm.DeputyAlarm)] == ["Ada K"]


def test_with_another_name_neither_of_the_two_needs_a_year(desk: Any) -> None:
    assert renamed(desk, desk.first, "  Ada   K ") == nm.Called("Ada K", own=False)
    assert sorted(r.name for r in desk.commands("caseload")[0].rows) == ["Ada", "Ada K"]


def test_the_client_never_reads_it(desk: Any) -> None:
    renamed(desk, desk.first, "Knee")
    assert "Knee" not in str(desk.says("/help", ADA)) + str(desk.commands("start", "", ADA))
    assert [r.name for r in rows(desk.database, table)] == ["Ada", "Ada"]


def test_a_name_that_another_client_has_gets_a_year_again_and_the_coach_is_told(desk: Any) -> None:
    renamed(desk, desk.first, "Knee")
    assert renamed(desk, desk.second, "knee").taken
    assert sorted(r.name for r in desk.commands("caseload")[0].rows) == ["Knee (1950)", "knee (1960)"]


def test_who_was_renamed_is_found_by_either_name_and_words_after_it_are_whole(desk: Any) -> None:
    renamed(desk, desk.first, "Knee lady")
    for typed in ("knee lady rest today", "knee rest today"):
        desk.commands("write", typed)
        assert [m.name for m in desk.heard(ROWAN) if isinstance(m, sm.WordsSent)] == ["Knee lady"]
        assert "rest today" in str(desk.heard(ADA))
        desk.now += timedelta(seconds=1)  # words have a mark of their own by their message and their second
    assert isinstance(desk.commands("client", "ada")[0], sm.WhichClient)


def test_a_coach_goes_back_to_the_clients_own_name_with_one_button(desk: Any) -> None:
    renamed(desk, desk.first, "Ada K")
    (asked,) = desk.presses(f"name:{desk.first}")
    assert asked == nm.AskCalled("Ada K", "Ada") and f"name:{desk.first}:own" in str(desk.buttons(ROWAN))
    (said,) = desk.presses(f"name:{desk.first}:own")
    assert said == nm.Called("Ada", own=True, taken=True)
    assert sorted(r.name for r in desk.commands("caseload")[0].rows) == sorted(NAMES.values())


@pytest.mark.parametrize("typed", ["", "   ", "stop"])
def test_nothing_and_stop_are_no_names(desk: Any, typed: str) -> None:
    desk.presses(f"name:{desk.first}")
    desk.says(typed)
    assert [r.called for r in rows(desk.database, table)] == ["", ""]


def test_the_client_of_another_coach_cannot_be_named(desk: Any) -> None:
    assert [type(m).__name__ for m in desk.presses(f"name:{desk.first}", SAM)] == ["NotYours"]


def test_who_left_and_alarms_is_told_apart_from_who_is_here(desk: Any) -> None:
    values = {"status": Status.LEFT.value, "left_at": NOW}
    desk.database.write_now(lambda c: c.execute(table.update().where(table.c.id == desk.first).values(**values)))
    assert [r.name for r in desk.commands("caseload")[0].rows] == ["Ada"]
    alarm = flag(Code.RED_FLAG_WORDS, NOW, level="emergency", sign="chest_pain")
    desk.database.write_now(flag_store.raise_, [(desk.first, alarm)], NOW)
    assert sorted(r.name for r in desk.commands("caseload")[0].rows) == sorted(NAMES.values())
