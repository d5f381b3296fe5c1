"""Settings show every health fact, and each is changed or taken off by buttons or words; enrolment reads sentences."""

from __future__ import annotations

from dataclasses import replace

import pytest

from core.care import Status
from core.client import Background, Caution, Profile, Sex
from core.dialogue.client import effects as e
from core.dialogue.client import messages as m
from core.dialogue.client.about_me import FACTS
from core.dialogue.client.messages_to_coach import HealthChanged
from core.dialogue.client.states import Awaiting, Enrolling, Setting, State
from core.dialogue.kit.messages import KeptAsItWas
from tests.builders import ADA, MONDAY, Chat

SLOWED = replace(
    ADA.profile,
    background=Background.WHITE,
    cautions=frozenset({Caution.RATE_LIMITING_MEDICINE, Caution.FALLS}),
    medicines=frozenset({"bisoprolol", "sotalol"}),
)
NEW = replace(ADA, status=Status.ENROLLING, profile=Profile())


def enrolling(question: str, *left: str) -> Chat:
    return Chat(NEW, state=State(asking=Enrolling(question, left)))


def about(chat: Chat) -> list[HealthChanged]:
    sent = [x.message for x in chat.effects if isinstance(x, e.NotifyCoach)]
    return [message for message in sent if isinstance(message, HealthChanged)]


def test_the_settings_show_every_health_fact() -> None:
    said = Chat(replace(ADA, profile=SLOWED)).commands("settings").heard(m.HealthSaid)
    assert (said.year, said.sex, said.background) == (1968, "female", "white")
    assert set(said.cautions) == {"falls", "rate_limiting_medicine"}
    assert said.medicines == ("bisoprolol", "sotalol")


@pytest.mark.parametrize("what", FACTS)
def test_each_fact_has_a_button_that_opens_it(what: str) -> None:
    chat = Chat(replace(ADA, profile=SLOWED)).presses("set:about_me")
    assert f"set:{what}" in chat.choices
    chat.presses(f"set:{what}")
    assert isinstance(chat.state.asking, Setting)
    assert chat.state.asking.what == what


def test_the_sex_and_the_background_are_changed_by_buttons_or_by_words() -> None:
    chat = Chat().presses("set:sex").presses("me:male")
    assert chat.facts.profile.sex is Sex.MALE
    chat.presses("set:sex").says("I am a woman")
    assert chat.facts.profile.sex is Sex.FEMALE
    chat.presses("set:background").presses("me:south_asian")
    assert chat.facts.profile.background is Background.SOUTH_ASIAN
    chat.presses("set:background").says("my family is from china")
    assert chat.facts.profile.background is Background.CHINESE


@pytest.mark.parametrize(("what", "field"), [(x, x) for x in ("birth_year", "sex", "stature")])
def test_a_fact_can_be_taken_off_the_list(what: str, field: str) -> None:
    chat = Chat().presses(f"set:{what}").presses("me:off")
    assert getattr(chat.facts.profile, field) is None
    assert chat.heard(m.HealthNoted).removed == (field,)


def test_height_and_birth_year_are_typed() -> None:
    chat = Chat().presses("set:stature").says("172")
    assert str(chat.facts.profile.stature) == "172"
    chat.presses("set:birth_year").says("1956")
    assert chat.facts.profile.birth_year == 1956
    assert chat.state.asking is None


def test_a_height_far_from_usual_is_asked_back() -> None:
    chat = Chat().presses("set:stature").says("212 cm")
    assert chat.facts.profile.stature == ADA.profile.stature
    chat.presses("note:yes")
    assert str(chat.facts.profile.stature) == "212"


def test_the_birth_year_of_a_child_is_asked_again_and_closes_no_door() -> None:
    chat = Chat().presses("set:birth_year").says("2019")
    assert chat.facts.profile.birth_year == 1968
    assert chat.kinds == ["EnrolUnclear"]
    assert isinstance(chat.state.asking, Setting)


def test_cautions_are_ticked_and_stored_when_done() -> None:
    chat = Chat(replace(ADA, profile=SLOWED)).presses("set:cautions").presses("me:pregnancy").presses("me:falls")
    assert chat.facts.profile == SLOWED
    chat.presses("me:done")
    assert chat.facts.profile.cautions == {Caution.PREGNANCY, Caution.RATE_LIMITING_MEDICINE}
    assert about(chat)[0].begun == ("pregnancy",)


def test_a_sentence_ticks_what_it_says_in_the_settings_too() -> None:
    chat = Chat().presses("set:cautions").says("no diabetes but I have bad kidneys").presses("me:done")
    assert chat.facts.profile.cautions == {Caution.KIDNEY_DISEASE}


def test_without_the_caution_no_medicine_stays() -> None:
    chat = Chat(replace(ADA, profile=SLOWED)).presses("set:cautions")
    chat.presses("me:rate_limiting_medicine").presses("me:done")
    assert chat.facts.profile.medicines == frozenset()


def test_medicines_are_added_by_name_and_taken_off_by_buttons() -> None:
    chat = Chat(replace(ADA, profile=SLOWED)).presses("set:medicines").says("karvedilol")
    assert chat.facts.profile.medicines == {"bisoprolol", "sotalol", "carvedilol"}
    for name in ("bisoprolol", "sotalol", "carvedilol"):
        chat.presses("set:medicines").presses(f"me:{name}")
    assert chat.facts.profile.medicines == frozenset()
    assert chat.facts.profile.cautions == {Caution.FALLS}


def test_a_medicine_that_slows_nothing_is_not_taken_for_one() -> None:
    chat = Chat().presses("set:medicines").says("ramipril")
    assert chat.kinds == ["MedicineUnknown"]
    assert chat.facts.profile == ADA.profile


def test_the_question_open_before_comes_back() -> None:
    chat = Chat(state=State(asking=Awaiting("resting_heart_rate"), day=MONDAY.date()))
    chat.presses("set:sex").presses("me:female")
    assert isinstance(chat.said[0], KeptAsItWas)
    assert chat.state.asking == Awaiting("resting_heart_rate")


# --- at enrolment -----------------------------------------------------------------------------------------------


def test_a_sentence_ticks_what_it_says_and_nothing_else() -> None:
    chat = enrolling("cautions", "weekday").says("no heart problems but I take metoprolol and I fell in may")
    assert set(chat.heard(m.EnrolQuestion).chosen) == {"rate_limiting_medicine", "falls"}
    chat.presses("e:cautions:done")
    assert chat.facts.profile.cautions == {Caution.RATE_LIMITING_MEDICINE, Caution.FALLS}
    assert chat.facts.profile.medicines == {"metoprolol"}


def test_a_plain_no_ends_the_question() -> None:
    chat = enrolling("cautions", "weekday").says("no")
    assert chat.state.asking == Enrolling("weekday", ())


def test_a_sentence_without_a_fact_ticks_nothing() -> None:
    chat = enrolling("cautions").says("my daughter is pregnant")
    assert chat.kinds == ["EnrolUnclear"]


def test_an_old_illness_stays_a_caution_after_done() -> None:
    chat = enrolling("cautions", "weekday").says("I had a stroke in 2015").presses("e:cautions:done")
    assert chat.facts.profile.cautions == {Caution.HEART_CONDITION}


def test_beside_a_milder_sign_a_fact_is_ticked_after_the_advice() -> None:
    chat = enrolling("cautions", "weekday").says("no diabetes but my heart keeps racing, so I take bisoprolol")
    assert isinstance(chat.said[0], m.SameDay)
    assert set(chat.heard(m.EnrolQuestion).chosen) == {"rate_limiting_medicine"}


def test_a_condition_named_instead_of_an_answer_is_noted_and_the_question_stands() -> None:
    chat = enrolling("sex", "cautions").says("I am pregnant by the way")
    assert chat.heard(m.HealthNoted).begun == ("pregnancy",)
    assert chat.state.asking == Enrolling("sex", ("cautions",))
    chat.presses("e:sex:female")
    assert chat.heard(m.EnrolQuestion).chosen == ("pregnancy",)


def test_what_was_noted_while_enrolling_can_be_taken_back() -> None:
    chat = enrolling("sex", "cautions").says("I am pregnant by the way")
    chat.presses(f"fact:{chat.state.facts_noted.mark}")
    assert chat.facts.profile.cautions == frozenset()
    assert chat.state.asking == Enrolling("sex", ("cautions",))


def test_the_sex_is_understood_in_a_sentence() -> None:
    assert enrolling("sex", "weekday").says("I am a woman").facts.profile.sex is Sex.FEMALE


def test_heart_failure_at_enrolment_is_told_to_the_coach() -> None:
    chat = enrolling("cautions", "weekday").says("I have heart failure").presses("e:cautions:done")
    assert about(chat)[0].undirected
