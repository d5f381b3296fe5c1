"""Sixty everyday questions, and some in each other language: each is answered or honestly handed on, none is stored."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

import pytest

from core.care import NumberVisibility
from core.client import Caution
from core.dialogue.client import effects as e
from core.dialogue.client import messages as m
from core.dialogue.client.everyday import SAYS_IT_ALL
from core.dialogue.client.facts import Membership
from core.dialogue.client.states import Awaiting, Setting
from core.dialogue.kit.events import FromCoach
from core.language.lexicon import Question
from core.watching.cohort import Counted
from tests.builders import ADA, Chat, Plan, checked_in
from tests.core.dialogue.everyday_questions import ASKED, HANDED_ON

CASES = [(language, text, meant) for language, table in ASKED.items() for text, meant in table.items()]
NOT_AN_ANSWER = {"NotSure", "AskAgain", "StillUnclear", "WhichMeasure", "ReadingKept"}


def after_five_weeks(**facts: object) -> Chat:
    """A client whose first and second weigh-in lie behind them, on a Wednesday without a check-in."""
    twice = checked_in(checked_in(Chat(replace(ADA, **facts))).later(days=35))
    return twice.later(days=2)


@pytest.mark.parametrize(("language", "text", "meant"), CASES)
def test_each_is_answered_or_handed_on_and_never_stored(language, text, meant):
    chat = after_five_weeks(language=language).says(text)
    assert not NOT_AN_ANSWER & set(chat.kinds)
    assert chat.said and not chat.did(e.Record)
    if meant is HANDED_ON:
        assert chat.heard(m.OfferToPass) == m.OfferToPass("unknown", "Rowan")


@pytest.mark.parametrize(("language", "text", "meant"), [c for c in CASES if c[2] is not HANDED_ON])
def test_an_open_question_stays_open_and_is_put_again(language, text, meant):
    chat = Chat(replace(ADA, language=language)).due().says(text)
    if meant is Question.ILL:  # what is open can wait
        assert chat.state.asking is None and not chat.did(e.Record)
        return
    asking = chat.state.asking
    assert (asking.back if isinstance(asking, Setting) else asking) == Awaiting("energy")
    assert {"StillOpen", "Ask"} & set(chat.kinds) or meant in SAYS_IT_ALL
    assert not chat.did(e.Record)
    assert chat.says("7").readings("energy")


def test_is_that_good_is_answered_by_the_reading_just_sent_with_its_source():
    chat = checked_in(Chat()).says("is my waist good?")
    assert chat.heard(m.LastReading).measure == "waist"
    source = chat.heard(m.BandSaid).source
    assert "waist" in source and "src" in chat.choices
    assert chat.presses("src").heard(m.SourceOf).sources[0] == source


def test_a_number_inside_a_question_is_no_reading():
    chat = Chat().due().says("is 9 good?")
    assert chat.heard(m.NotStored) and not chat.readings("energy")


def test_a_reading_with_a_question_behind_it_is_stored_and_answered():
    chat = Chat(replace(ADA, plan=Plan(measures=("waist",)))).due().says("7").says("94. is that good?")
    assert [r.value for r in chat.readings("waist")] == [94]
    assert chat.heard(m.BandSaid)


def test_words_for_the_coach_beside_a_reading_are_both_heard():
    chat = Chat().due().says("7. can Rowan ring me?")
    assert chat.readings("energy") and chat.heard(m.OfferToPass).why == "for_coach"


def test_danger_is_looked_for_before_any_question():
    chat = Chat().says("is it normal to have chest pain right now?")
    assert {"Emergency", "AskAlarm"} & set(chat.kinds)


@pytest.mark.parametrize(
    ("plan", "days", "answer"),
    [
        (ADA.plan, 2, "wait"),
        (ADA.plan, 26, "yes"),
        (Plan(measures=("waist",)), 2, "left_out"),
        (Plan(measures=("weight",), directed_weighing=True), 2, "directed"),
    ],
)
def test_whether_to_weigh_today_is_what_the_guard_would_say(plan, days, answer):
    chat = checked_in(Chat(ADA))
    chat.facts = replace(chat.facts, plan=plan)
    said = chat.later(days=days).says("can I weigh myself today?").heard(m.WeighToday)
    assert said.answer == answer
    if answer == "wait":
        assert said.on == date(2026, 3, 27)  # three days before the next weigh-in


def test_asking_whether_to_weigh_is_no_attempt():
    chat = checked_in(Chat(ADA)).later(days=2).says("can I weigh myself today?").says("can I weigh myself today?")
    assert not chat.raised and [w.how.value for w in chat.readings("weight")] == ["asked"]


def test_what_somebody_lost_is_what_the_record_says():
    chat = after_five_weeks().says("I have lost 2 kilos")
    assert chat.kinds == ["ByRecord", "VerdictSaid"]
    once = checked_in(Chat()).later(days=3).says("I have lost 2 kilos")
    assert once.heard(m.OnlyOne) == m.OnlyOne("weight", date(2026, 3, 30))


def test_hidden_numbers_stay_hidden_whatever_is_asked():
    hidden = after_five_weeks(plan=replace(ADA.plan, numbers=NumberVisibility.COACH_ONLY))
    for text in ("is my waist good?", "I have lost 2 kilos", "what was my waist last time?", "what is a normal waist"):
        assert hidden.says(text).kinds == ["OnlyCoachSees"]
    assert set(hidden.says("how am I doing?").heard(m.Doing).early) <= {"energy", "resting_heart_rate"}


def test_how_am_i_doing_goes_by_the_verdicts():
    said = after_five_weeks().says("how am I doing?").heard(m.Doing)
    assert set(said.same) >= {"weight", "waist", "hip"} and not said.better and not said.worse


def test_what_is_normal_is_a_published_range_or_an_honest_no():
    older = replace(ADA, plan=Plan(measures=("chair_stand_30s",)), profile=replace(ADA.profile, birth_year=1954))
    said = Chat(older).says("what is normal for the chair test at my age?").heard(m.UsualFor)
    assert (said.low.value, said.high.value) == (10, 15)  # women of 70 to 74, Rikli and Jones 1999
    assert Chat().says("what is a normal weight?").heard(m.NoUsual).measure == "weight"
    pressure = Chat(replace(ADA, plan=Plan(measures=("blood_pressure",)))).says("what's a good blood pressure")
    assert (pressure.heard(m.UsualFor).high.value, pressure.heard(m.UsualFor).second) == (135, 85)


def test_no_limit_for_blood_pressure_is_given_in_pregnancy():
    pregnant = replace(ADA, profile=replace(ADA.profile, cautions=frozenset({Caution.PREGNANCY})))
    assert Chat(pregnant).says("what's a good blood pressure").heard(m.NoUsual)


def test_a_chart_is_drawn_from_the_day_that_is_named():
    chat = Chat()
    for week in range(3):
        checked_in(chat.later(days=35 * bool(week)))
    spec = chat.says("show my waist since April").heard(m.Picture).spec
    assert [p.day for p in spec.points] == [date(2026, 4, 6), date(2026, 5, 11)]
    assert len(chat.says("show my waist from the start").heard(m.Picture).spec.points) == 3


def test_the_end_is_a_cohorts_last_day_or_nobody_has_set_one():
    spring = Membership(1, "Spring", date(2026, 2, 2), date(2026, 4, 27), Counted.CHECK_INS.value)
    assert Chat(replace(ADA, cohorts=(spring,))).says("is the programme over?").heard(m.EndOf).last == spring.last
    assert Chat().says("is the programme over?").heard(m.NoEnd).coach == "Rowan"


def test_words_for_the_coach_are_passed_on_as_written_by_one_button():
    chat = Chat().due().says("Can Rowan ring me on Friday? My bike is broken")
    assert chat.heard(m.OfferToPass) == m.OfferToPass("for_coach", "Rowan")
    assert not chat.did(e.PassOn)
    chat.presses("pass")
    assert chat.did(e.PassOn) == [e.PassOn("Can Rowan ring me on Friday? My bike is broken")]
    assert not chat.presses("pass").did(e.PassOn)
    assert chat.state.asking == Awaiting("energy")


def test_a_yes_passes_the_words_on_when_nothing_else_is_asked():
    chat = Chat().says("tell Rowan I can't come on Friday").says("yes")
    assert chat.did(e.PassOn) == [e.PassOn("tell Rowan I can't come on Friday")]


def test_without_a_coach_nothing_is_offered():
    alone = Chat(replace(ADA, coach_name="", coach_reachable=False))
    assert alone.says("should I stop my tablets?").heard(m.Plainly).key == "medical"
    assert "OfferToPass" not in alone.says("what is the capital of France?").kinds


def test_a_reply_reaches_the_coach_also_while_a_question_is_open():
    chat = Chat().due().gets(FromCoach(Chat().now, "Rowan", "How was the walk?"))
    chat.says("it was lovely by the river")
    assert chat.did(e.PassOn) == [e.PassOn("it was lovely by the river")]
    assert "AskAgain" not in chat.kinds and "StillOpen" in chat.kinds
    assert chat.says("7").readings("energy")


def test_swearing_gets_a_way_out_and_no_lesson():
    chat = Chat().says("this is bloody stupid")
    assert chat.kinds == ["Plainly"] and chat.choices == ["set:pause", "word"]


def test_the_table_has_every_question():
    assert {meant for meant in ASKED["en"].values() if meant} == set(Question)
