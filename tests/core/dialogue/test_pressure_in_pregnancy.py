"""A pressure of 160 or 110 is severe in pregnancy: the client is told at once, and the coach gets the same reason."""

from __future__ import annotations

from dataclasses import replace

import pytest

from core.client import Caution
from core.dialogue.client import effects as e
from core.dialogue.client import messages as m
from core.dialogue.client.states import Awaiting, Repeating
from core.watching.flags import Code, Severity
from tests.builders import ADA, Chat, Plan

PLAN = Plan(measures=("blood_pressure",))
PREGNANT = replace(ADA, plan=PLAN, profile=replace(ADA.profile, cautions=frozenset({Caution.PREGNANCY})))
OTHERS = replace(ADA, plan=PLAN)


def morning(who=PREGNANT) -> Chat:
    return Chat(who).due().says("7").later(days=1).wakes_up("pressure", "1m")


def flags(chat: Chat) -> dict[Code, dict]:
    return {x.flag.code: dict(x.flag.evidence) for x in chat.did(e.Raise)}


@pytest.mark.parametrize("number", ["164/104", "160/90", "146/110"])
def test_either_number_is_answered_at_once_and_the_coach_hears_the_same_reason(number: str):
    chat = morning().says(number)
    assert chat.kinds == ["PregnancyPressureRepeat"]
    assert chat.heard(m.PregnancyPressureRepeat).number == "999"
    assert isinstance(chat.state.asking, Repeating)
    (raised,) = [x.flag for x in chat.did(e.Raise)]
    assert (raised.code, raised.severity) == (Code.BP_SEVERE, Severity.URGENT)
    assert dict(raised.evidence)["caution"] == "pregnancy"


def test_just_below_it_is_a_reading_like_others():
    chat = morning().says("159/109")
    assert "PressureAgain" in chat.kinds and flags(chat) == {}


def test_nobody_else_hears_of_pregnancy():
    chat = morning(OTHERS).says("164/104")
    assert "PressureAgain" in chat.kinds and flags(chat) == {}
    chat = morning(OTHERS).says("184/104")
    assert chat.kinds == ["PressureRepeat"] and "caution" not in flags(chat)[Code.BP_SEVERE]


def test_a_repeat_that_is_still_severe_sends_to_the_maternity_unit_and_the_coach_hears_both():
    chat = morning().says("164/104").later(minutes=6).says("162/100")
    assert chat.kinds == ["PregnancyPressureSevere", "CoachTold"]
    assert set(flags(chat)) == {Code.BP_SEVERE, Code.BP_SEVERE_REPEATED}
    assert flags(chat)[Code.BP_SEVERE_REPEATED]["caution"] == "pregnancy"


def test_a_repeat_that_settles_is_still_to_be_told_to_the_midwife():
    chat = morning().says("164/104").later(minutes=6).says("148/92")
    assert chat.kinds == ["PregnancyPressureSettled"] and flags(chat) == {}
    assert chat.state.asking is None


def test_a_severe_value_never_waits_behind_are_you_sure():
    chat = morning().says("112/70").says("114/72").later(hours=12).wakes_up("pressure", "1e").says("166/96")
    assert chat.kinds == ["PregnancyPressureRepeat"] and Code.BP_SEVERE in flags(chat)


def test_a_likely_slip_is_not_asked_about_when_either_number_would_be_severe():
    chat = morning().says("159/100").edits("186/112")  # 168/112?
    assert "PregnancyPressureRepeat" in chat.kinds and Code.BP_SEVERE in flags(chat)


def test_a_likely_slip_is_asked_about_when_only_the_slip_would_be_severe():
    chat = morning().says("128/82").edits("182/82")  # 128/82 with two digits swapped?
    assert "DidYouMean" in chat.kinds and flags(chat) == {}


def test_an_edit_to_a_severe_value_is_answered_like_a_severe_reading():
    chat = morning().says("116/74").edits("166/104")
    assert chat.kinds == ["PregnancyPressureRepeat"] and Code.BP_SEVERE in flags(chat)


@pytest.mark.parametrize("who", [PREGNANT, OTHERS], ids=["pregnant", "not"])
def test_an_edit_from_a_severe_value_is_no_repeat_and_takes_the_flag_back(who):
    chat = morning(who).says("184/112")
    chat.edits("134/82")
    assert "Corrected" in chat.kinds and not {"PressureSettled", "PregnancyPressureSettled"} & set(chat.kinds)
    assert chat.state.asking == Awaiting("blood_pressure")
    assert [x.code for x in chat.did(e.Lower)] == [Code.BP_SEVERE]


def test_an_edit_of_a_severe_value_to_another_severe_one_is_still_the_first_reading():
    chat = morning().says("184/112").edits("164/112")
    assert chat.kinds == ["PregnancyPressureRepeat"]
    assert isinstance(chat.state.asking, Repeating)


def test_an_edit_of_a_repeat_to_a_severe_value_is_a_repeat_that_is_still_severe():
    chat = morning().says("164/104").later(minutes=6).says("146/92")
    chat.edits("164/92")
    assert "PregnancyPressureSevere" in chat.kinds and Code.BP_SEVERE_REPEATED in flags(chat)


def test_a_severe_reading_that_is_taken_back_leaves_nothing_to_repeat():
    assert "PressureAgain" in morning().says("164/104").says("undo").says("118/76").kinds
    assert morning().says("164/104").says("undo").says("166/104").kinds == ["PregnancyPressureRepeat"]


def test_a_week_is_not_read_by_limits_that_are_not_made_for_pregnancy():
    chat = Chat(PREGNANT).due().says("7")
    for day in range(1, 8):
        chat.later(days=1).wakes_up("pressure", f"{day}m").says("138/88 and 138/88")
    chat.later(days=1).wakes_up("pressure_end")
    assert "BandSaid" not in chat.kinds and "PregnancyPressureWeek" in chat.kinds
    assert chat.heard(m.Picture).spec.limit is None
