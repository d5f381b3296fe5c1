"""A six-minute walk does not start above the published limits at rest; other questions go on."""

from __future__ import annotations

from dataclasses import replace

import pytest

from core.dialogue.client import messages as m
from core.dialogue.client.states import Awaiting, State
from tests.builders import ADA, MONDAY, Chat

WALKS = replace(ADA, plan=replace(ADA.plan, measures=("resting_heart_rate", "blood_pressure", "six_minute_walk")))


def at_the_pulse(**fields: object) -> Chat:
    agenda = ("six_minute_walk", "activity_minutes")
    state = State(asking=Awaiting("blood_pressure"), agenda=agenda, day=MONDAY.date(), gate_passed=MONDAY.date())
    return Chat(WALKS, state=replace(state, **fields))


@pytest.mark.parametrize(("typed", "why"), [("150/101", ("blood_pressure",)), ("150/100", ())])
def test_a_pressure_above_the_limit_calls_the_walk_off(typed: str, why: tuple[str, ...]) -> None:
    chat = at_the_pulse().says(typed)
    while chat.state.asking is not None and type(chat.state.asking).__name__ == "AskingConditions":
        chat.presses("cond:same")
    said = [x for x in chat.everything if isinstance(x, m.RestTooHigh)]
    assert [x.why for x in said] == ([why] if why else [])
    assert chat.state.asking == Awaiting("activity_minutes" if why else "six_minute_walk")


def test_a_pressure_of_another_day_says_nothing_about_today() -> None:
    chat = at_the_pulse().says("150/101")
    chat.later(days=1)
    chat.state = State(asking=Awaiting("energy"), agenda=("six_minute_walk",), day=chat.now.date())
    chat.state = replace(chat.state, gate_passed=chat.now.date())
    chat.says("7")
    assert chat.state.asking == Awaiting("six_minute_walk")
