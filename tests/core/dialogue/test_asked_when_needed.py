"""What is asked when: little at the start, a first value early, everything else when a measure first needs it."""

from __future__ import annotations

from dataclasses import replace

import pytest

from core.care import Plan, Status
from core.client import Caution, Profile, Sex
from core.dialogue.client import enrolment_messages as em
from core.dialogue.client import messages as m
from core.dialogue.client.facts import ClientFacts
from core.dialogue.client.states import Awaiting, Enrolling, Gate
from core.dialogue.kit.effects import Say
from core.dialogue.kit.events import Command
from core.judging.readiness import Readiness
from core.measures import MEASURES
from core.measures.measure import MeasureKind, ProfileFact, never
from core.watching.flags import Code
from tests.builders import ADA, Chat
from tests.core.people import reading, someone

NEW = ClientFacts(2, "Ben", "Rowan", True, None, status=Status.ENROLLING, consented=False, country="GB")
LIFTED = Readiness(signs=(), regular=True, harder=False, cleared=None)


def joined(*measures: str, **known: object) -> Chat:
    """Somebody who has just answered the first questions, with a first rating left out."""
    chat = Chat(replace(NEW, plan=Plan(measures=measures), **known))
    chat.gets(Command(chat.now, "start", ""))
    chat.presses("consent:yes").says("1962").says("skip").says("Monday 7:30").says("Lisbon")
    assert chat.facts.status is Status.ACTIVE
    return chat


def begun(*measures: str) -> Chat:
    """The same person, after the rating of the first check-in."""
    return joined(*measures).presses("begin:now").says("7")


def question(chat: Chat) -> str:
    return chat.state.asking.question if isinstance(chat.state.asking, Enrolling) else ""


def test_the_fourth_message_is_a_first_value():
    """When everything was asked up front, it was the fourteenth."""
    chat = Chat(replace(NEW, plan=Plan()))
    messages = sent = 0
    for answer in (None, "yes", "1962", "7"):
        chat.gets(Command(chat.now, "start", "")) if answer is None else chat.says(answer)
        sent += 1
        messages += sum(isinstance(effect, Say) for effect in chat.effects)
        if any(isinstance(x, em.FirstValue) for x in chat.said):
            break
    assert (messages, sent) == (4, 4)
    first = chat.heard(em.FirstValue)
    assert (first.value.value, first.by_chance.value) == (7, 2)
    assert [r.value for r in chat.facts.history] == [7]


def test_enrolment_asks_four_questions_and_a_rating():
    chat = Chat(replace(NEW, plan=Plan()))
    chat.gets(Command(chat.now, "start", "")).presses("consent:yes")
    asked = []
    for answer in ("1962", "7", "Monday", "half past seven", "Lisbon"):
        asked.append(question(chat))
        chat.says(answer)
    assert asked == ["birth_year", "rating", "weekday", "time", "zone"]
    assert chat.facts.status is Status.ACTIVE


@pytest.mark.parametrize(
    ("measure", "asked"),
    [
        ("activity_minutes", ()),
        ("resting_heart_rate", ("cautions", "sex")),
        ("weight", ("cautions", "numbers", "units", "stature", "background")),
        ("waist", ("cautions", "units", "stature", "sex", "background")),
        ("hip", ("cautions", "units", "sex")),
        ("blood_pressure", ("cautions",)),
        ("chair_stand_30s", ("cautions", "sex")),
        ("own_question", ("own_question", "cautions")),  # the cautions for the check before exercise
    ],
)
def test_a_measure_is_preceded_by_what_it_needs(measure, asked):
    chat, seen = begun(measure), []
    while question(chat) and question(chat) not in ("signs", "own_better"):
        seen.append(question(chat))
        chat.presses(f"e:{seen[-1]}:done") if seen[-1] == "cautions" else chat.says("skip")
    assert tuple(seen) == asked


def test_nothing_is_asked_a_second_time_even_if_it_was_left_out():
    chat = begun("resting_heart_rate", "waist").presses("e:cautions:done").says("skip").says("66")
    assert question(chat) == "units"
    seen = []
    while question(chat):
        seen.append(question(chat))
        chat.says("skip")
    assert "sex" not in seen and "cautions" not in seen
    assert chat.state.asking == Awaiting("waist")


def test_what_was_said_early_is_not_asked():
    chat = joined("resting_heart_rate").says("I am a man and I take bisoprolol")
    assert chat.facts.profile.sex is Sex.MALE
    chat.presses("begin:now").says("7")
    assert question(chat) == "cautions"
    assert chat.heard(m.EnrolQuestion).chosen == ("rate_limiting_medicine",)
    chat.presses("e:cautions:done")
    assert chat.state.asking == Awaiting("resting_heart_rate")


def test_a_number_sent_while_a_fact_is_asked_is_taken_and_the_fact_waits():
    chat = begun("weight").presses("e:cautions:done").presses("e:numbers:shown").presses("e:units:kg")
    assert question(chat) == "stature"
    chat.says("my weight is 82.4 kg")
    assert [str(r.value) for r in chat.facts.of("weight")] == ["82.4"]
    assert "stature" not in chat.state.met


@pytest.mark.parametrize(("said", "kind"), [("who sees this?", "Plainly"), ("help", "Help"), ("/settings", "AboutYou")])
def test_other_words_are_answered_while_a_fact_is_asked(said, kind):
    chat = begun("waist")
    chat.commands("settings") if said.startswith("/") else chat.says(said)
    assert kind in chat.kinds or "SettingsSaid" in chat.kinds
    assert question(chat) == "cautions"


def test_later_puts_the_check_in_off_and_the_fact_comes_again():
    chat = begun("waist").says("later").presses("snooze:tomorrow")
    assert question(chat) == "cautions"
    assert chat.later(days=1).wakes_up("snooze").heard(m.EnrolQuestion).question == "cautions"


def test_leaving_the_weight_out_asks_nothing_more_about_it():
    chat = begun("weight").presses("e:cautions:done").presses("e:numbers:leave_out")
    assert question(chat) == "signs" and "weight" not in chat.facts.plan.measures


def test_pregnancy_ends_the_questions_of_a_girth():
    chat = begun("waist").presses("e:cautions:pregnancy").presses("e:cautions:done")
    assert question(chat) == "signs"


def test_whoever_leaves_the_cautions_open_is_not_asked_for_a_test():
    chat = begun("chair_stand_30s").says("skip")
    assert not chat.facts.profile.cautions_known
    while question(chat):
        chat.says("skip")
    assert not isinstance(chat.state.asking, Gate) and chat.state.agenda == ()


def test_somebody_from_before_is_asked_for_cautions_only_if_they_are_unknown():
    assert Chat().due().says("7").state.asking == Awaiting("resting_heart_rate")
    unknown = replace(ADA, profile=replace(ADA.profile, cautions_known=False))
    assert question(Chat(unknown).due().says("7")) == "cautions"


# --- safety -----------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    "measure",
    [x for x in MEASURES.values() if x.kind in (MeasureKind.BODY, MeasureKind.FUNCTION)],
    ids=lambda x: x.key,
)
def test_a_measure_that_must_not_be_taken_by_all_or_can_alarm_needs_the_cautions(measure):
    risky = bool(measure.must_not) or measure.alarm is not never or bool(measure.misled_by)
    assert not risky or ProfileFact.CAUTIONS in measure.needs


UNKNOWN = replace(someone("female", 30), cautions_known=False)
PRESSURES = [
    pytest.param(someone("female", 30), False, id="known: none"),
    pytest.param(someone("female", 30, cautions=(Caution.PREGNANCY,)), True, id="pregnant"),
    pytest.param(UNKNOWN, True, id="not known"),
    pytest.param(replace(UNKNOWN, sex=None), True, id="not known, nor the sex"),
    pytest.param(replace(UNKNOWN, birth_date=None), True, id="not known, nor the age"),
    pytest.param(replace(UNKNOWN, sex=Sex.MALE), False, id="a man"),
    pytest.param(replace(someone("female", 60), cautions_known=False), False, id="over 55"),
]


@pytest.mark.parametrize(("person", "alarms"), PRESSURES)
def test_until_pregnancy_is_ruled_out_a_pressure_alarms_from_160(person: Profile, alarms: bool):
    alarm = MEASURES["blood_pressure"].alarm(reading("blood_pressure", 162, 90), person)
    assert (alarm is not None) is alarms
    if alarm is not None:  # the words name a pregnancy only if they said so
        assert (alarm.caution is Caution.PREGNANCY) is (Caution.PREGNANCY in person.cautions)


def test_until_medicines_are_known_no_table_is_used_for_a_pulse():
    scores = MEASURES["resting_heart_rate"].score(reading("resting_heart_rate", 62), UNKNOWN)
    assert "cautions_not_given" in [getattr(score, "reason", "") for score in scores]


# --- before exercise --------------------------------------------------------------------------------------------


def checked(*answers: str, cautions: str = "") -> Chat:
    chat = begun("activity_minutes").says("90")
    if cautions:
        chat.presses(f"e:cautions:{cautions}")
    chat.presses("e:cautions:done")
    for answer in answers:
        chat.presses(f"e:{answer}")
    return chat


@pytest.mark.parametrize(
    ("cautions", "answers", "verdict"),
    [
        ("", ("signs:done", "regular:yes"), "as_you_are"),
        ("", ("signs:done", "regular:no"), "light_to_moderate"),
        ("", ("signs:dizzy", "signs:done"), "doctor_first"),
        ("diabetes", ("signs:done", "regular:no", "cleared:no"), "doctor_first"),
        ("diabetes", ("signs:done", "regular:no", "cleared:yes"), "light_to_moderate"),
        ("heart_condition", ("signs:done", "regular:yes", "harder:no"), "light_to_moderate"),
        ("kidney_disease", ("signs:done", "regular:yes", "harder:yes", "cleared:no"), "doctor_first"),
    ],
)
def test_the_first_check_in_ends_with_the_check_before_exercise(cautions, answers, verdict):
    chat = checked(*answers, cautions=cautions)
    said = chat.heard(em.BeforeExercise)
    assert said.verdict == verdict and said.signs is ("signs:dizzy" in answers)
    assert chat.state.asking is None and "CheckInDone" in chat.kinds
    doctor = verdict == "doctor_first"
    assert (Code.DOCTOR_FIRST in [x.flag.code for x in chat.raised]) is doctor
    assert ("Praise" in chat.kinds) is not doctor
    later = chat.later(days=7).due().says("7").says("90")
    assert question(later) == "" and "CheckInDone" in later.kinds


def test_a_new_disease_is_told_at_once_and_asked_about_at_the_next_check_in():
    chat = checked("signs:done", "regular:no")
    assert Code.DOCTOR_FIRST not in [x.flag.code for x in chat.raised]
    chat.says("I have diabetes")
    assert Code.DOCTOR_FIRST in [x.flag.code for x in chat.raised]
    chat.later(days=7).due().says("7").says("90")
    assert question(chat) == "signs"
    chat.presses("e:signs:done").presses("e:regular:no").presses("e:cleared:yes")
    assert chat.heard(em.BeforeExercise).verdict == "light_to_moderate"
    assert not [x for x in chat.facts.flags if x.code == Code.DOCTOR_FIRST]


def test_a_test_of_exertion_waits_for_the_doctor_and_others_do_not():
    chat = begun("chair_stand_30s", "six_minute_walk").presses("e:cautions:diabetes").presses("e:cautions:done")
    chat.says("female").presses("e:signs:done").presses("e:regular:no").presses("e:cleared:no")
    assert isinstance(chat.state.asking, Gate)
    assert chat.state.agenda == ("chair_stand_30s",)


def test_signs_left_open_hold_back_exertion_and_are_no_verdict():
    chat = begun("six_minute_walk").presses("e:cautions:done").says("178 cm").says("male").says("skip")
    assert chat.said[0] == m.SkipCost("signs")
    assert chat.state.agenda == () and not isinstance(chat.state.asking, Gate)


def test_a_sign_in_words_is_an_alarm_not_a_tick():
    chat = checked().says("I have chest pain right now")
    assert "Emergency" in chat.kinds
