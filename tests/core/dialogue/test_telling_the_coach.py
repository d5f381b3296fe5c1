"""What the client hears of telling the coach is so: told now, told in the morning, or not reached."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime, timedelta
from zoneinfo import ZoneInfo

import pytest

from core.dialogue.client import effects as e
from core.dialogue.client import messages as m
from core.measures import MEASURES
from core.watching.digest import when_to_tell
from core.watching.flags import Severity
from tests.builders import ADA, MONDAY, Chat, Plan

LONDON, SYDNEY = ZoneInfo("Europe/London"), ZoneInfo("Australia/Sydney")
NIGHT = MONDAY.replace(hour=23, minute=10)
RESTING = replace(ADA, coach_nights=LONDON, plan=Plan(measures=tuple(MEASURES)))
SAME_DAY, EMERGENCY = "I feel dizzy", "I have chest pain now"


def night(**changes: object) -> Chat:
    return Chat(replace(RESTING, **changes), NIGHT)


def test_at_night_a_same_day_matter_is_not_said_to_be_told_but_when_it_will_be() -> None:
    told = night().says(SAME_DAY).heard(m.CoachTold)
    assert told.at is not None and (told.at.hour, told.at.date()) == (7, NIGHT.date() + timedelta(days=1))


def test_by_day_and_of_a_coach_who_is_told_at_any_hour_it_is_told_now() -> None:
    assert Chat(RESTING, MONDAY.replace(hour=12)).says(SAME_DAY).heard(m.CoachTold).at is None
    assert night(coach_nights=None).says(SAME_DAY).heard(m.CoachTold).at is None


@pytest.mark.parametrize("text", [EMERGENCY, "I want to die"])
def test_an_emergency_is_told_at_any_hour(text: str) -> None:
    assert night().says(text).heard(m.CoachTold).at is None


def test_the_hour_is_said_in_the_client_s_time_and_the_night_is_the_coach_s() -> None:
    noon = MONDAY.replace(hour=14)  # 01:00 in Sydney, whose night ends at 20:00 in London
    told = Chat(replace(RESTING, coach_nights=SYDNEY), noon).says(SAME_DAY).heard(m.CoachTold)
    assert told.at is not None and (told.at.hour, told.at.date()) == (20, noon.date())


def test_words_for_the_coach_are_passed_on_in_the_morning_and_that_is_what_is_said() -> None:
    passed = night().commands("coach", "please send me the new plan").heard(m.WordPassed)
    assert passed.at is not None and passed.at.hour == 8
    assert (
        Chat(RESTING, MONDAY.replace(hour=12)).commands("coach", "thank you for Monday").heard(m.WordPassed).at is None
    )


@pytest.mark.parametrize("well", [True, False])
def test_the_gate_says_when_the_coach_is_told(well: bool) -> None:
    chat = Chat(replace(RESTING, plan=Plan(measures=("chair_stand_30s",))), NIGHT).due().says("7")
    chat.presses("gate:well").presses("gate:some") if well else chat.presses("gate:unwell")
    assert (chat.heard(m.GateStopped).at is None) is well  # a sign is told at once, not feeling well can wait


SAID = (
    (SAME_DAY,), (EMERGENCY,), ("my foot hurts",), ("I have an eating disorder",), ("I want to die",),
    ("my mother had a stroke",), ("85/50", "low"), ("185/125", "190/125"), ("pulse 130", "pulse 131"),
    (SAME_DAY, "better"), (SAME_DAY, "worse"), (EMERGENCY, "it was a joke"),
)  # fmt: skip


@pytest.mark.parametrize("texts", SAID, ids=" ".join)
@pytest.mark.parametrize("at", [MONDAY.replace(hour=12), NIGHT], ids=["noon", "night"])
def test_told_is_never_said_without_an_urgent_flag_that_is_sent_at_that_very_time(
    texts: tuple[str, ...], at: datetime
) -> None:
    chat = Chat(RESTING, at)
    for text in texts:
        low = next((b for b in chat.callbacks if b.startswith("low:")), "")
        chat.later(minutes=6)
        chat.presses_old(low) if text == "low" else chat.says(text)
        for said in chat.said:
            if isinstance(said, m.CoachTold):
                urgent = [x.flag for x in chat.did(e.Raise) if x.flag.severity is Severity.URGENT]
                due = min(when_to_tell(f, chat.now, LONDON, quiet_nights=True) for f in urgent)
                assert said.at == (None if due == chat.now else due.astimezone(LONDON))
