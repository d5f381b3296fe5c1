"""A coach changes a plan, saves it, hands over, ends care."""

from dataclasses import replace
from datetime import datetime, time

import pytest

from core.care import NumberVisibility, Plan, Slot
from core.client import Caution, Profile
from core.dialogue.kit.messages import KeptAsItWas
from core.dialogue.staff import messages as sm
from core.dialogue.staff import talk_messages as tm
from core.dialogue.staff.effects import ChangePlan, DropTemplate, EndCare, HandOver, SaveTemplate
from core.dialogue.staff.facts import TemplateFact
from tests.core.dialogue.office import NOW, Office, card

PLAN = Plan(measures=("weight", "waist"))


def office(**more: object) -> Office:
    return Office(card(1, "Ada", plan=PLAN, **more))


def changed(chat: Office) -> ChangePlan:
    (effect,) = chat.did(ChangePlan)
    assert isinstance(effect, ChangePlan)
    return effect


@pytest.mark.parametrize(
    ("data", "what", "plan"),
    [
        ("interval:1:35", "interval", replace(PLAN, retest_days=35)),
        ("interval:1:42", "interval", replace(PLAN, retest_days=42)),
        ("loss:1:on", "planned_loss", replace(PLAN, loss_is_planned=True)),
        ("numbers:1:coach_only", "numbers", replace(PLAN, numbers=NumberVisibility.COACH_ONLY)),
        ("bp:1:esc", "pressure_body", replace(PLAN, pressure_body="esc")),
    ],
)
def test_a_button_changes_one_thing_and_the_plan_is_shown_as_it_is_now(data: str, what: str, plan: Plan) -> None:
    chat = office().presses(data)
    assert changed(chat) == ChangePlan(1, what, plan=plan)
    assert chat.heard(sm.PlanChosen).what == what
    assert chat.heard(sm.PlanSaid).plan == plan


def test_frequent_weighing_names_who_asked_for_it_and_is_confirmed_first() -> None:
    chat = office().presses("directed:1:on")
    assert chat.kinds == ["AskClinician"] and chat.did(ChangePlan) == []
    chat.says("Dr Marsh,  heart clinic")
    assert chat.heard(tm.DirectedSure) == tm.DirectedSure("Ada", "Dr Marsh, heart clinic")
    assert chat.did(ChangePlan) == []
    chat.presses("sure:directed:1")
    new = replace(PLAN, directed_weighing=True, directed_by="Dr Marsh, heart clinic")
    assert changed(chat) == ChangePlan(1, "directed_weighing", plan=new, detail="Dr Marsh, heart clinic")


def test_frequent_weighing_that_is_not_confirmed_changes_nothing() -> None:
    chat = office().presses("directed:1:on").says("Dr Marsh").says("no")
    assert chat.did(ChangePlan) == [] and chat.says("yes").did(ChangePlan) == []


def test_frequent_weighing_ends_with_one_button_and_forgets_who_asked() -> None:
    chat = Office(card(1, "Ada", plan=replace(PLAN, directed_weighing=True, directed_by="Dr Marsh")))
    assert changed(chat.presses("directed:1:off")) == ChangePlan(1, "directed_weighing_off", plan=PLAN)


def test_what_is_set_already_is_not_set_again() -> None:
    assert office().presses("interval:1:28").did(ChangePlan) == []


@pytest.mark.parametrize("days", ["27", "43", "0", "400", "28.5", "x"])
def test_an_interval_outside_28_to_42_days_is_asked_again(days: str) -> None:
    chat = office().presses(f"interval:1:{days}")
    assert chat.did(ChangePlan) == [] and chat.kinds == ["AskInterval"]


def test_measures_are_ticked_one_by_one_and_changed_once() -> None:
    chat = office().presses("measures:1")
    assert chat.heard(sm.AskMeasures).chosen == ("weight", "waist")
    chat.presses("measures:1:hip")
    assert chat.did(ChangePlan) == []
    chat.presses("measures:1:weight").presses("measures:1:done")
    assert changed(chat) == ChangePlan(1, "measures", plan=replace(PLAN, measures=("waist", "hip")))


def test_ticks_of_one_client_are_not_another_clients() -> None:
    chat = Office(card(1, "Ada", plan=PLAN), card(2, "Ben", plan=PLAN)).presses("measures:1").presses("measures:1:hip")
    chat.presses("measures:2:done")
    assert chat.did(ChangePlan) == []


def test_ticks_that_were_given_up_change_nothing() -> None:
    chat = office().presses("measures:1").presses("measures:1:hip").presses("cancel")
    assert isinstance(chat.said[0], KeptAsItWas)
    assert chat.presses("measures:1:done").did(ChangePlan) == []


def test_cautions_are_ticked_in_the_same_way() -> None:
    chat = office(profile=Profile(cautions=frozenset({Caution.FALLS}))).presses("cautions:1")
    assert chat.heard(sm.AskCautions).chosen == ("falls",)
    chat.presses("cautions:1:pregnancy").presses("cautions:1:done")
    assert changed(chat) == ChangePlan(1, "cautions", cautions=frozenset({"falls", "pregnancy"}))


def test_day_and_time_can_be_chosen_with_buttons() -> None:
    chat = office().presses("slot:1").presses("slotday:1:2").presses("slothour:1:18:00")
    assert changed(chat).slot == Slot(2, time(18), "Europe/London")


def test_day_and_time_can_be_typed_at_once() -> None:
    assert changed(office().presses("slot:1").says("Tuesday 7:30")).slot == Slot(1, time(7, 30), "Europe/London")


def test_a_time_alone_keeps_the_day() -> None:
    assert changed(office().presses("slot:1").says("at 18:15")).slot == Slot(0, time(18, 15), "Europe/London")


def test_a_day_alone_asks_for_the_time() -> None:
    chat = office().presses("slot:1").says("Friday")
    assert chat.did(ChangePlan) == [] and chat.kinds == ["EnrolQuestion"]
    assert changed(chat.says("9:00")).slot == Slot(4, time(9), "Europe/London")


# --- what cannot be taken back ----------------------------------------------------------------------------------


def test_a_new_baseline_needs_a_yes() -> None:
    chat = office().presses("baseline:1")
    assert chat.kinds == ["AskBaseline"] and chat.did(ChangePlan) == []
    assert changed(chat.presses("sure:baseline:1")).plan == replace(PLAN, baseline_since=NOW)


def test_a_no_leaves_the_old_baseline() -> None:
    chat = office().presses("baseline:1").says("no")
    assert chat.did(ChangePlan) == [] and isinstance(chat.said[0], KeptAsItWas)


def test_a_yes_to_a_question_that_is_closed_shows_the_card_instead() -> None:
    chat = office().presses("sure:end:1")
    assert chat.did(EndCare) == [] and chat.kinds == ["CardSaid"]


def test_a_yes_is_not_taken_for_another_question() -> None:
    chat = office().presses("baseline:1").presses("sure:end:1")
    assert chat.did(EndCare) == [] and chat.did(ChangePlan) == []


def test_handing_over_asks_to_whom_then_whether_that_is_sure() -> None:
    chat = office().presses("hand:1")
    assert chat.heard(sm.AskHandOver).coaches == ("Sam",)
    assert chat.presses("hand:1:8").heard(sm.HandOverSure).to == "Sam"
    chat.says("yes")
    assert chat.did(HandOver) == [HandOver(1, 8)]
    assert chat.heard(sm.HandedOver).to == "Sam"


def test_nobody_is_handed_to_a_coach_who_is_not_there() -> None:
    chat = office()
    assert chat.presses("hand:1:99").kinds == ["AskHandOver"]
    chat.others = ()
    assert chat.presses("hand:1").kinds == ["NoOtherCoach"]


def test_a_coach_who_left_meanwhile_is_handed_nobody() -> None:
    chat = office().presses("hand:1:8")
    chat.others = ()
    assert chat.presses("sure:hand_over:1").did(HandOver) == []


def test_ending_care_needs_a_yes() -> None:
    chat = office().presses("end:1")
    assert chat.kinds == ["AskEnd"]
    assert chat.presses("sure:end:1").did(EndCare) == [EndCare(1)]


# --- templates --------------------------------------------------------------------------------------------------


def test_a_template_takes_the_plan_without_what_is_one_persons_alone() -> None:
    own = replace(PLAN, own_question="How are the stairs?", baseline_since=NOW, directed_weighing=True, retest_days=35)
    chat = Office(card(1, "Ada", plan=own)).presses("template:1").says("  Two  measures ")
    assert chat.did(SaveTemplate) == [SaveTemplate("Two measures", replace(PLAN, retest_days=35))]


def test_a_template_can_be_dropped() -> None:
    chat = office()
    chat.templates = (TemplateFact("Falls", PLAN),)
    assert chat.presses("templates").heard(sm.TemplatesKept).templates == ("Falls",)
    assert chat.presses("droptpl:0").did(DropTemplate) == [DropTemplate("Falls")]
    assert chat.presses("droptpl:7").did(DropTemplate) == []


def test_the_start_of_a_new_baseline_is_the_instant_of_the_yes() -> None:
    chat = office().presses("baseline:1")
    chat.now = datetime.fromisoformat("2026-04-01T09:00:00+00:00")
    plan = changed(chat.says("yes")).plan
    assert plan is not None and plan.baseline_since == chat.now
