"""A check-in, from the prompt to the next date. People and readings are invented."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta
from decimal import Decimal

import pytest

from core.care import NumberVisibility, Status
from core.client import Caution, Profile
from core.dialogue.client import effects as e
from core.dialogue.client import messages as m
from core.dialogue.client.states import AskingConditions, Awaiting
from core.watching.flags import Code
from tests.builders import ADA, MONDAY, Chat, Plan, checked_in

QUIET_PLAN = Plan(measures=("sessions_done", "activity_minutes"))


def test_a_check_in_with_nothing_to_retest_takes_three_messages_of_the_client():
    chat = Chat(replace(ADA, plan=QUIET_PLAN)).due()
    for answer in ("7", "120", "3"):
        chat.says(answer)
    assert chat.state.asking is None
    assert chat.heard(m.CheckInDone).next == date(2026, 3, 9)


def test_several_answers_in_one_message_end_it_in_one():
    chat = Chat(replace(ADA, plan=QUIET_PLAN)).due().says("energy 7, 3 sessions, active for 120 minutes")
    assert chat.state.asking is None
    assert [r.measure for r in chat.facts.history] == ["energy", "sessions_done", "activity_minutes"]


def test_the_first_check_in_asks_for_everything_in_the_plan_and_the_next_only_how_the_week_was():
    chat = checked_in(Chat())
    assert {r.measure for r in chat.facts.history} == {"energy", "resting_heart_rate", "weight", "waist", "hip"}
    chat.later(days=7).due()
    assert chat.state.asking == Awaiting("energy") and chat.state.agenda == ("waist",)  # which starts twice


def test_four_weeks_later_the_retests_are_due_again():
    chat = checked_in(Chat())
    chat.later(days=28).due()
    assert chat.state.agenda == ("resting_heart_rate", "weight", "waist", "hip")


def test_a_retest_is_judged_against_the_baseline():
    chat = checked_in(Chat())
    chat.later(days=28).due().says("7").says("72").presses("cond:same").says("79 kg")
    verdict = chat.heard(m.VerdictSaid)
    assert (verdict.measure, verdict.kind, verdict.strength) == ("weight", "changed", "possible")
    assert verdict.difference is not None and verdict.difference.value == Decimal("-3.4")


@pytest.mark.parametrize(("kilograms", "strength"), [("79.9", "twice"), ("77.4", "confirmed")])
def test_a_change_seen_twice_is_called_one_only_when_it_is_sure(kilograms, strength):
    chat = checked_in(Chat())
    for _ in range(2):
        chat.later(days=28).due().says("7").says("72").presses("cond:same").says(f"{kilograms} kg")
        if "DidYouMean" in chat.kinds or "AskIfSure" in chat.kinds:
            chat.says("yes")
    assert chat.heard(m.VerdictSaid).strength == strength


def test_a_small_difference_is_called_no_change():
    chat = checked_in(Chat())
    chat.later(days=28).due().says("7").says("72").presses("cond:same").says("81.6 kg")
    verdict = chat.heard(m.VerdictSaid)
    assert verdict.kind == "within_error" and verdict.difference is None


def test_nobody_is_asked_about_the_same_conditions_twice_in_one_check_in():
    chat = checked_in(Chat())
    chat.everything.clear()
    checked_in(chat.later(days=28))
    assert len([x for x in chat.everything if isinstance(x, m.AskConditions)]) == 1


def test_a_piece_of_context_is_given_once_in_a_check_in():
    chat = checked_in(Chat())
    chat.everything.clear()
    checked_in(chat.later(days=28))
    contexts = [x.key for x in chat.everything if isinstance(x, m.Context)]
    assert contexts and len(contexts) == len(set(contexts))


def test_a_flat_weight_with_a_smaller_waist_is_worth_saying():
    chat = checked_in(Chat()).later(days=28).due().says("7").says("72").presses("cond:same")
    chat.says("82.2 kg").says("86")
    assert chat.heard(m.Context).key == "flat_weight_smaller_waist"


def test_what_differed_is_kept_with_the_reading():
    chat = (
        checked_in(Chat(replace(ADA, plan=Plan(measures=("weight",))))).later(days=28).due().says("7").says("82.4 kg")
    )
    chat.presses("cond:differed").presses("cond:scales").presses("cond:done")
    assert chat.readings("weight")[-1].conditions.differs == {"scales"}
    assert chat.heard(m.ConditionsNoted).aspects == ("scales",)


def test_conditions_may_be_answered_in_words():
    chat = checked_in(Chat()).later(days=28).due().says("7").says("72").says("same as last time")
    assert chat.state.asking == Awaiting("weight")


def test_an_edit_while_the_conditions_are_open_corrects_the_value_and_leaves_the_question_open():
    chat = checked_in(Chat(replace(ADA, plan=Plan(measures=("weight",))))).later(days=28).due().says("7")
    chat.says("82.4 kg").edits("82.6 kg")
    assert [r.value for r in chat.readings("weight")][1:] == [Decimal("82.6")]
    assert isinstance(chat.state.asking, AskingConditions)


@pytest.mark.parametrize("words", ["no, 82.6", "I meant 82.6 kg", "sorry, 82.6"])
def test_a_correction_in_words_replaces_the_last_reading(words):
    chat = Chat().due().says("7").says("72").says("82.4 kg")
    chat.says(words)
    assert [r.value for r in chat.readings("weight")] == [Decimal("82.6")]


def test_undo_takes_the_last_reading_back_and_asks_for_it_again():
    chat = Chat().due().says("7")
    chat.says("undo")
    assert chat.readings("energy") == []
    assert chat.state.asking == Awaiting("energy")
    assert chat.state.agenda[0] == "resting_heart_rate"


def test_a_skipped_question_is_not_asked_again_today():
    chat = Chat().due().says("skip")
    assert chat.heard(m.Skipped).measure == "energy"
    assert chat.state.asking == Awaiting("resting_heart_rate")


def test_later_puts_the_same_question_again_when_the_time_comes():
    chat = Chat().due().says("later").presses("snooze:2h")
    wake = next(w for w in chat.wakes if w.purpose == "snooze")
    assert wake.at == MONDAY + timedelta(hours=2)
    assert not [w for w in chat.wakes if w.purpose == "follow_up"]
    chat.at(wake.at).wakes_up("snooze", wake.mark)
    assert chat.heard(m.Ask).measure == "energy"


def test_one_follow_up_comes_a_day_later_inside_waking_hours_and_never_another():
    chat = Chat().due()
    (wake,) = [w for w in chat.wakes if w.purpose == "follow_up"]
    assert wake.at == MONDAY + timedelta(hours=24, minutes=30)  # 07:30 the next day is too early; 08:00 is not
    chat.at(wake.at).wakes_up("follow_up", wake.mark)
    assert chat.heard(m.FollowUp).waiting == "energy"
    assert not [w for w in chat.did(e.SetTimer) if w.purpose == "follow_up"]


def test_who_answered_is_not_followed_up():
    chat = Chat().due().says("7")
    chat.later(hours=24).wakes_up("follow_up", "2026-03-02")
    assert chat.said == []


@pytest.mark.parametrize(
    ("late", "kinds"),
    [
        pytest.param(timedelta(hours=2), 0, id="up-to-two-hours-nothing-is-said"),
        pytest.param(timedelta(hours=5), 5, id="then-an-apology"),
        pytest.param(timedelta(hours=12), 12, id="still-asked-at-twelve"),
    ],
)
def test_a_late_slot_is_asked_late(late, kinds):
    chat = Chat(now=MONDAY + late).due(late)
    assert chat.heard(m.CheckInOpens).late == kinds


def test_a_slot_more_than_twelve_hours_late_is_recorded_as_not_asked():
    chat = Chat(now=MONDAY + timedelta(hours=13)).due(timedelta(hours=13))
    assert chat.said == [] and chat.did(e.NotAsked) == [e.NotAsked("2026-03-02")]


def test_who_paused_or_left_is_asked_nothing():
    for status in (Status.PAUSED, Status.LEFT):
        assert Chat(replace(ADA, status=status)).due().effects == ()


def test_numbers_that_go_to_the_coach_are_not_said_back():
    plan = replace(ADA.plan, numbers=NumberVisibility.COACH_ONLY)
    chat = Chat(replace(ADA, plan=plan)).due().says("7").says("72").says("82.4 kg")
    assert "KeptHidden" in chat.kinds and "ReadingKept" not in chat.kinds
    assert not {"BandSaid", "VerdictSaid", "GoalProgress"} & set(chat.kinds)
    assert chat.readings("weight")[0].value == Decimal("82.4")


def test_a_measure_that_somebody_must_not_take_is_not_asked():
    plan = Plan(measures=("weight", "chair_stand_30s"))
    pregnant = Profile(cautions=frozenset({Caution.EATING_WORRIES}))
    chat = Chat(replace(ADA, plan=plan, profile=pregnant)).due()
    assert "weight" not in chat.state.agenda


@pytest.mark.parametrize(("cleared", "asked"), [((), False), (("six_minute_walk",), True)])
def test_a_test_of_effort_waits_for_a_clinicians_yes(cleared, asked):
    plan = Plan(measures=("six_minute_walk",), cleared=cleared)
    profile = Profile(cautions=frozenset({Caution.HEART_CONDITION}))
    chat = Chat(replace(ADA, plan=plan, profile=profile)).due()
    assert ("six_minute_walk" in chat.state.agenda) is asked


def test_openings_and_praise_do_not_repeat_within_eight_weeks():
    chat = Chat(replace(ADA, plan=Plan(measures=())))
    openings, praises = [], []
    for _ in range(8):
        chat.due()
        openings.append(chat.heard(m.CheckInOpens).variant)
        praises += [x.key for x in chat.says("7").said if isinstance(x, m.Praise)]
        chat.later(days=7)
    assert len(set(openings)) == 8
    assert len(set(praises)) == len(praises) == 7  # the fifth check-in ends with a look back instead


def test_a_doubtful_value_is_asked_back_and_kept_only_after_a_yes():
    chat = Chat().due().says("7").says("72").says("824")
    assert chat.heard(m.DidYouMean).amount.value == Decimal("82.4")
    assert chat.readings("weight") == []
    chat.says("yes")
    assert chat.readings("weight")[0].value == Decimal("82.4")


def test_a_fresh_number_replaces_the_doubtful_one():
    chat = Chat().due().says("7").says("72").says("824").says("82.4")
    assert [r.value for r in chat.readings("weight")] == [Decimal("82.4")]


def test_an_impossible_value_is_never_kept_and_the_question_stays_open():
    chat = Chat().due().says("7").says("72").says("99999 kg")
    assert chat.readings("weight") == []
    assert chat.state.asking == Awaiting("weight")
    assert "CannotBe" in chat.kinds


def test_an_answer_for_another_question_is_kept_and_the_open_one_is_put_again():
    chat = Chat().due().says("82.4 kg")
    assert chat.readings("weight")
    assert chat.state.asking == Awaiting("energy")
    assert "weight" not in chat.state.agenda


def test_after_two_answers_not_understood_the_card_is_offered():
    chat = Chat().due().says("7").says("hm").says("well, hm")
    assert chat.kinds == ["StillUnclear", "Card"]


def test_a_button_of_a_question_that_is_over_is_answered_and_changes_nothing():
    chat = Chat().due().says("7")
    before = chat.state
    chat.presses("gate:none")
    assert "OldButton" in chat.kinds
    assert chat.state == before


def asked_in_vain(chat, weeks, *, dealt_with=False):
    """Weeks in which the check-in is answered and the retests are skipped; the retests flagged in each. dealt_with: by
    the coach, each time at once."""
    found = []
    for _ in range(weeks):
        chat.raised.clear()
        if dealt_with:
            chat.facts = replace(chat.facts, flags=())
        chat.due()
        found.append({x.flag.measure: dict(x.flag.evidence) for x in chat.raised if x.flag.code == Code.RETEST_MISSED})
        chat.says("7")
        while isinstance(chat.state.asking, Awaiting):
            chat.presses("skip")
        chat.later(days=7)
    return found


def test_a_retest_that_was_asked_for_twice_and_not_given_is_told():
    chat = checked_in(Chat(replace(ADA, plan=Plan(measures=("waist",))))).later(days=28)
    chat.raised.clear()
    assert asked_in_vain(chat, 3) == [{}, {}, {"waist": {"times": Decimal(2)}}]


def test_a_coach_who_dealt_with_a_retest_not_given_hears_of_it_again_after_a_month_not_every_week():
    chat = checked_in(Chat(replace(ADA, plan=Plan(measures=("waist",))))).later(days=28)
    chat.raised.clear()
    weeks = asked_in_vain(chat, 8, dealt_with=True)
    assert [n for n, found in enumerate(weeks) if found] == [2, 6]


def test_the_number_of_an_open_flag_about_a_retest_grows_with_every_week():
    chat = checked_in(Chat(replace(ADA, plan=Plan(measures=("waist",))))).later(days=28)
    chat.raised.clear()
    assert asked_in_vain(chat, 4)[2:] == [{"waist": {"times": Decimal(n)}} for n in (2, 3)]


def test_a_retest_that_is_given_at_last_is_not_told():
    chat = checked_in(Chat(replace(ADA, plan=Plan(measures=("waist",))))).later(days=28)
    chat.raised.clear()
    asked_in_vain(chat, 2)
    chat.says("92 cm").presses("cond:same")
    assert asked_in_vain(chat, 2) == [{}, {}]


def test_a_retest_nobody_saw_because_the_check_in_went_unanswered_does_not_count():
    chat = checked_in(Chat(replace(ADA, plan=Plan(measures=("waist",))))).later(days=28)
    chat.raised.clear()
    asked_in_vain(chat, 1)
    chat.facts = replace(chat.facts, missed=1)
    assert asked_in_vain(chat, 2) == [{}, {}]
