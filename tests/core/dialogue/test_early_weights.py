"""Weighing too often: what is understood, what is stored, what is never said."""

from __future__ import annotations

from dataclasses import fields, is_dataclass, replace
from datetime import date
from decimal import Decimal

import pytest

from core.dialogue.client import effects as e
from core.dialogue.client import messages as m
from core.quantity import Amount
from core.reading import How
from core.watching.flags import Code
from tests.builders import ADA, Chat, checked_in


def weighed() -> Chat:
    return checked_in(Chat())


def numbers_in(value: object) -> set[Decimal]:
    """Every amount anywhere in a message."""
    if isinstance(value, Amount):
        return {value.value}
    if is_dataclass(value) and not isinstance(value, type):
        return {n for f in fields(value) for n in numbers_in(getattr(value, f.name))}
    if isinstance(value, tuple | list):
        return {n for item in value for n in numbers_in(item)}
    return {value} if isinstance(value, Decimal) else set()


def test_the_first_early_weight_is_a_side_note_with_the_date_and_an_offer():
    chat = weighed().later(days=2).says("81.9 kg")
    assert chat.heard(m.EarlyFirst).next == date(2026, 3, 30)
    assert "early:energy" in chat.choices and "early:walk" in chat.choices
    assert [r.how for r in chat.readings("weight")] == [How.ASKED, How.EARLY]


def test_the_second_asks_what_made_it_a_day_to_check_and_the_answer_goes_to_the_coach():
    chat = weighed().later(days=2).says("81.9 kg").later(days=1).says("my weight is 82.3")
    assert chat.heard(m.EarlySecond).coach == "Rowan"
    chat.says("a wedding is coming up")
    assert chat.did(e.PassOn) == [e.PassOn("a wedding is coming up")]
    assert "EarlyReason" in chat.kinds


def test_two_in_one_day_stop_the_talk_of_numbers_and_flag_it_with_the_count():
    chat = weighed().later(days=2).says("81.9 kg").later(days=1).says("82.3 kg").later(hours=3).says("82 kg")
    assert chat.kinds == ["EarlyOften"]
    (raised,) = chat.did(e.Raise)
    assert (raised.flag.code, dict(raised.flag.evidence)) == (Code.WEIGHING_OFTEN, {"count": Decimal(3)})


def test_no_early_number_is_ever_said_back_or_hinted_at():
    chat = weighed()
    chat.everything.clear()
    chat.later(days=2).says("79.1 kg").later(days=1).says("weight 78.7").later(hours=2).says("78.2 kg")
    chat.edits("78.4 kg").says("no, I meant 78.3 kg").says("undo").says("progress")
    assert not {Decimal("79.1"), Decimal("78.7"), Decimal("78.2"), Decimal("78.4"), Decimal("78.3")} & numbers_in(
        chat.everything
    )
    assert not {"BandSaid", "VerdictSaid", "Corrected"} & {type(x).__name__ for x in chat.everything}


def test_an_edit_of_an_early_weight_is_no_second_attempt():
    chat = weighed().later(days=2).says("81.9 kg").edits("81.8 kg")
    assert "EarlyTaken" in chat.kinds
    assert [r.value for r in chat.readings("weight")][1:] == [Decimal("81.8")]
    chat.later(days=1).says("81.7 kg")
    assert "EarlySecond" in chat.kinds


def test_undo_takes_an_early_weight_back_and_it_still_counts_as_an_attempt():
    chat = weighed().later(days=2).says("81.9 kg").says("undo")
    assert len(chat.readings("weight")) == 1
    chat.later(days=2).says("81.7 kg")
    assert "EarlySecond" in chat.kinds


def test_a_weight_inside_the_window_is_welcome_and_scored():
    chat = weighed().later(days=25).says("81.9 kg")
    assert "AskConditions" in chat.kinds
    assert chat.readings("weight")[-1].how is How.UNASKED


def test_directed_weighing_lifts_the_guard_and_a_fast_gain_is_urgent():
    chat = Chat(replace(ADA, plan=replace(ADA.plan, directed_weighing=True)))
    checked_in(chat).later(days=2).says("84.6 kg")
    assert not {"EarlyFirst", "EarlySecond"} & set(chat.kinds)
    codes = [x.flag.code for x in chat.raised]
    assert Code.FAST_GAIN in codes
    assert chat.heard(m.FastGain) == m.FastGain("999", "Rowan")


def test_who_weighs_daily_because_a_clinician_asked_is_thanked_and_not_questioned():
    chat = checked_in(Chat(replace(ADA, plan=replace(ADA.plan, directed_weighing=True))))
    assert chat.later(days=1).says("82.6 kg").kinds == ["ReadingKept"]


@pytest.mark.parametrize(
    ("directed", "number", "kinds"),
    [
        pytest.param(True, "82.6", ["ReadingKept"], id="directed"),
        pytest.param(True, "12", ["NotSure"], id="no-weight"),
        pytest.param(True, "62", ["AskWhichIsRight"], id="not-likely-theirs"),
        pytest.param(False, "82.6", ["WhichMeasure"], id="not-directed"),
    ],
)
def test_a_number_alone_is_a_weight_where_weighing_is_directed(directed, number, kinds):
    chat = checked_in(Chat(replace(ADA, plan=replace(ADA.plan, directed_weighing=directed))))
    assert chat.later(days=1).says(number).kinds == kinds


def test_a_plan_without_weight_keeps_none():
    plan = replace(ADA.plan, measures=("waist",))
    chat = Chat(replace(ADA, plan=plan)).says("82 kg")
    assert chat.kinds == ["WeightLeftOut"] and chat.readings("weight") == []


def test_an_early_number_that_cannot_be_a_weight_is_answered_and_not_kept():
    chat = weighed().later(days=2).says("weight 8 kg")
    assert "EarlyFirst" in chat.kinds
    assert len(chat.readings("weight")) == 1


@pytest.mark.parametrize("choice", ["early:energy", "early:walk"])
def test_the_offers_lead_somewhere(choice):
    chat = weighed().later(days=2).says("81.9 kg").presses(choice)
    assert chat.said and "OldButton" not in chat.kinds


def test_the_chart_between_dates_has_no_early_number():
    chat = checked_in(weighed().later(days=28)).later(days=3).says("70.5 kg").presses("chart:weight")
    assert Decimal("70.5") not in numbers_in(chat.said)
    assert "Picture" in chat.kinds
