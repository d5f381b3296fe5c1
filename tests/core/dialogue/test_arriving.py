"""Enrolment: consent, only the questions the plan needs, every one skippable."""

from __future__ import annotations

from dataclasses import replace
from datetime import time, timedelta
from decimal import Decimal

import pytest

from core.care import NumberVisibility, Slot, Status
from core.client import Background, Caution, Profile, Sex
from core.dialogue.client import effects as e
from core.dialogue.client import enrolment_messages as em
from core.dialogue.client import messages as m
from core.dialogue.client.facts import ClientFacts, InvitationFact, StrangerFacts
from core.dialogue.client.states import Enrolling
from core.dialogue.engines.client import step_stranger
from core.dialogue.kit.effects import Erase, Join
from core.dialogue.kit.events import Command, Text
from core.dialogue.kit.messages import Stranger, WhichPlace
from core.quantity import Better, Unit
from tests.builders import MONDAY, Chat, Plan

INVITED = InvitationFact("client", "Rowan", "Ben")


def arriving(**changes: object) -> Chat:
    plan = Plan(measures=("weight", "waist", "hip", "resting_heart_rate"))
    facts = ClientFacts(
        2, "Ben", "Rowan", True, None, status=Status.ENROLLING, consented=False, plan=plan, country="GB"
    )
    chat = Chat(replace(facts, **changes))
    chat.gets(Command(chat.now, "start", ""))
    return chat


def asked(chat: Chat) -> str:
    assert isinstance(chat.state.asking, Enrolling)
    return chat.state.asking.question


def rest_of(chat: Chat) -> Chat:
    """Ask for everything that would be asked when it is needed."""
    while isinstance(chat.state.asking, Enrolling) and not chat.state.asking.measure:
        chat.says("skip" if asked(chat) != "adult" else "yes")
    return chat.presses("set:missing")


def test_a_stranger_gets_one_fixed_answer_whatever_they_send():
    for event in (Text(MONDAY, "hello"), Command(MONDAY, "start", "guessed"), Command(MONDAY, "forget")):
        outcome = step_stranger(event, StrangerFacts())
        assert [type(x.message) for x in outcome.effects] == [Stranger]


def test_a_good_invitation_is_used_up_and_consent_is_asked_before_anything_else():
    outcome = step_stranger(Command(MONDAY, "start", "token"), StrangerFacts(invitation=INVITED))
    assert isinstance(outcome.effects[0], Join)
    assert outcome.effects[1].message == m.Welcome("Ben", "Rowan")


def test_nothing_is_asked_or_kept_before_consent():
    chat = arriving().says("82.4 kg").says("7")
    assert chat.facts.history == () and "ConsentUnclear" in chat.kinds


def test_a_no_to_consent_is_respected_and_can_be_changed():
    chat = arriving().says("no")
    assert chat.kinds == ["ConsentDeclined"] and not chat.did(e.ChangeClient)
    chat.presses("consent:yes")
    assert asked(chat) == "birth_year"


def test_the_whole_way_by_typing_and_pressing():
    chat = arriving().presses("consent:yes")
    chat.says("1951")
    chat.says("seven")
    assert chat.heard(em.FirstValue).value.value == 7
    chat.says("Tuesday 7:30")
    assert asked(chat) == "zone"
    chat.says("Lisbon")
    assert chat.heard(m.Enrolled).weekday == 1
    facts = chat.facts
    assert facts.status is Status.ACTIVE
    assert facts.slot == Slot(1, time(7, 30), "Europe/Lisbon")
    assert facts.profile == Profile(birth_year=1951)
    assert [type(x.message).__name__ for x in chat.did(e.NotifyCoach)] == ["ClientEnrolled"]


def test_all_that_is_asked_later_can_be_asked_at_once():
    chat = rest_of(arriving().presses("consent:yes").says("1951"))
    chat.presses("e:cautions:rate_limiting_medicine").presses("e:cautions:done")
    chat.presses("e:numbers:shown")
    chat.presses("e:units:st")
    chat.says("5 ft 9")
    chat.presses("e:sex:male")
    chat.presses("e:background:south_asian")
    chat.presses("e:signs:done").presses("e:regular:yes")
    assert chat.heard(em.AllAnswered) and chat.state.asking is None
    assert chat.facts.profile == Profile(
        Sex.MALE,
        1951,
        None,
        Decimal("175.26"),
        Background.SOUTH_ASIAN,
        frozenset({Caution.RATE_LIMITING_MEDICINE}),
        cautions_known=True,
    )
    assert chat.facts.units.mass is Unit.STONE
    assert chat.presses("set:missing").kinds == ["HealthSaid", "AboutMe"]


def test_every_question_can_be_skipped_and_says_what_that_costs():
    chat = arriving().presses("consent:yes")
    seen = []
    while isinstance(chat.state.asking, Enrolling):
        question = asked(chat)
        seen.append(question)
        if question == "adult":
            chat.says("yes")
        else:
            assert chat.says("skip").said[0] == m.SkipCost(question)
    assert seen == ["birth_year", "adult", "rating", "weekday", "time", "zone"]
    assert chat.facts.status is Status.ACTIVE
    chat.presses("set:missing")
    left = []
    while isinstance(chat.state.asking, Enrolling):
        left.append(asked(chat))
        assert chat.says("skip").said[0] == m.SkipCost(left[-1])
    assert left == ["cautions", "numbers", "units", "stature", "sex", "background", "signs"]
    assert not chat.facts.profile.cautions_known


@pytest.mark.parametrize("answer", ["no", "No"])
def test_without_a_year_of_birth_only_adults_go_on(answer):
    chat = arriving().presses("consent:yes").says("skip")
    assert asked(chat) == "adult"
    assert asked(chat.says("skip")) == "adult"
    assert asked(chat.says(answer)) == "young"


@pytest.mark.parametrize("answer", ["2012", "14", "I am 16"])
def test_under_18_is_turned_away_kindly_and_erased_when_confirmed(answer):
    chat = arriving().presses("consent:yes").says(answer).says("yes")
    assert chat.heard(m.ForAdults).coach == "Rowan" and not chat.did(Erase)
    assert not [x for x in chat.did(e.ChangeClient) if x.field == "birth_year"]
    chat.presses("e:too_young:erase")
    assert chat.did(Erase) == [Erase(m.TooYoung("Rowan"))]


def turned_away():
    return arriving().presses("consent:yes").says("2012").says("yes")


@pytest.mark.parametrize("typed", ["yes", "no", "ok", "hello", "skip", "12"])
def test_nothing_typed_erases_somebody_who_was_turned_away(typed):
    chat = turned_away().says(typed)
    assert not chat.did(Erase) and chat.state.asking is not None
    assert chat.kinds[-1] in ("ForAdults", "AskBirthYear")


@pytest.mark.parametrize("year", ["2008", "2012"])
def test_the_question_of_age_cannot_be_skipped(year):
    chat = arriving().presses("consent:yes").says(year)
    before = asked(chat)
    assert asked(chat.says("skip")) == before in ("adult", "young")


def test_a_mistake_in_the_year_is_put_right_by_its_button_or_by_typing_it_again():
    assert turned_away().presses("e:too_young:again").heard(m.EnrolQuestion).question == "birth_year"
    chat = turned_away().says("sorry, 1959")
    assert [x.value for x in chat.did(e.ChangeClient) if x.field == "birth_year"] == [1959]
    assert chat.did(e.CancelTimer) and not chat.later(days=1).wakes_up("turned_away").did(Erase)


@pytest.mark.parametrize("over", ["", "my neighbour had chest pain", "/forget"])
def test_somebody_turned_away_is_erased_after_a_day_whatever_was_opened_since(over):
    chat = turned_away()
    (wake,) = [w for w in chat.wakes if w.purpose == "turned_away"]
    assert wake.at - chat.now == timedelta(days=1)
    if over:
        chat.commands(over[1:]) if over.startswith("/") else chat.says(over)
    assert not chat.did(Erase)
    assert chat.later(days=1).wakes_up("turned_away").did(Erase) == [Erase(m.TooYoung("Rowan"))]


def test_the_year_of_the_eighteenth_birthday_is_asked_about():
    chat = arriving().presses("consent:yes").says("2008")
    assert asked(chat) == "adult"
    chat.says("yes")
    assert asked(chat) == "rating"


@pytest.mark.parametrize("answer", ["57", "I am 57", "1969", "born in 1969"])
def test_an_age_or_a_year_is_understood(answer):
    chat = arriving().presses("consent:yes").says(answer)
    assert chat.facts.profile.birth_year == 1969


def test_an_answer_that_is_not_understood_is_asked_again_without_blame():
    chat = arriving().presses("consent:yes").says("purple")
    assert chat.kinds == ["EnrolUnclear"] and asked(chat) == "birth_year"


def test_eating_worries_leave_weight_out_without_another_question():
    chat = rest_of(arriving(plan=Plan(measures=("weight",))).presses("consent:yes").says("1951"))
    chat.presses("e:cautions:eating_worries").presses("e:cautions:done")
    assert "numbers" not in (chat.state.asking.question if isinstance(chat.state.asking, Enrolling) else "")
    assert "weight" not in chat.facts.plan.measures


def test_numbers_can_go_to_the_coach_only():
    chat = rest_of(arriving().presses("consent:yes").says("1951")).presses("e:cautions:done")
    chat.presses("e:numbers:coach_only")
    assert chat.facts.plan.numbers is NumberVisibility.COACH_ONLY


def test_an_own_question_is_taken_in_their_own_words():
    chat = rest_of(arriving(plan=Plan(measures=("own_question",))).presses("consent:yes").says("1951"))
    chat.says("How stiff are my knees?").presses("e:own_better:lower")
    assert (chat.facts.plan.own_question, chat.facts.plan.own_better) == ("How stiff are my knees?", Better.LOWER)


def test_a_place_nobody_knows_is_asked_back():
    chat = arriving().presses("consent:yes").says("1951")
    while asked(chat) != "zone":
        chat.says("skip")
    chat.says("Springfield")
    assert chat.heard(WhichPlace).places == () and asked(chat) == "zone"


def test_a_command_in_the_middle_puts_the_open_question_again():
    chat = arriving().presses("consent:yes").commands("today")
    assert chat.heard(m.EnrolQuestion).question == "birth_year"


def test_a_red_flag_is_heard_during_enrolment():
    chat = arriving().presses("consent:yes").says("I have chest pain right now")
    assert "Emergency" in chat.kinds


def test_an_invitation_of_another_coach_asks_before_it_changes_anything():
    chat = arriving().presses("consent:yes")
    chat.says("1951")
    while isinstance(chat.state.asking, Enrolling):
        chat.says("skip")
    chat.facts = replace(chat.facts, invitation=InvitationFact("client", "Sasha", "Ben"))
    chat.commands("start", "token2")
    assert chat.heard(m.AskChangeCoach) == m.AskChangeCoach("Sasha", "Rowan")
    chat.presses("move:yes")
    assert Join() in chat.effects and chat.heard(m.CoachChanged).coach == "Sasha"
