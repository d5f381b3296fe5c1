"""Health facts said at any time are noted, said back, undone by a button, and take effect at once."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime

import pytest

from core.client import Caution, Profile
from core.dialogue.client import effects as e
from core.dialogue.client import messages as m
from core.dialogue.client.messages_to_coach import HealthChanged
from core.dialogue.client.states import AlarmAsked, Awaiting, Gate, Setting, State
from core.dialogue.kit.messages import OldButton
from tests.builders import ADA, MONDAY, Chat

PREGNANT = replace(ADA, profile=replace(ADA.profile, cautions=frozenset({Caution.PREGNANCY})))


def news(chat: Chat) -> list[HealthChanged]:
    """What the coach hears of the last event."""
    sent = [x.message for x in chat.effects if isinstance(x, e.NotifyCoach)]
    return [message for message in sent if isinstance(message, HealthChanged)]


def noted(chat: Chat) -> m.HealthNoted:
    [found] = [x for x in chat.said if isinstance(x, m.HealthNoted)]
    return found


def test_a_medicine_is_noted_by_name_and_said_back() -> None:
    chat = Chat().says("they put me on bisoprolol")
    assert noted(chat).taken == ("bisoprolol",)
    assert chat.facts.profile.medicines == {"bisoprolol"}
    assert Caution.RATE_LIMITING_MEDICINE in chat.facts.profile.cautions
    assert news(chat)[0].taken == ("bisoprolol",)


def test_the_last_medicine_stopped_takes_its_caution_away() -> None:
    chat = Chat().says("I take bisoprolol and sotalol").says("stopped the sotalol")
    assert Caution.RATE_LIMITING_MEDICINE in chat.facts.profile.cautions
    chat.says("I came off the bisoprolol")
    assert chat.facts.profile == ADA.profile
    assert noted(chat).stopped == ("bisoprolol",)


def test_no_but_notes_only_what_is_so() -> None:
    chat = Chat().says("not pregnant, but I fell last week")
    assert chat.facts.profile.cautions == {Caution.FALLS}
    assert noted(chat).begun == ("falls",)


def test_a_denial_takes_off_what_was_noted() -> None:
    chat = Chat(PREGNANT).says("I am not pregnant")
    assert noted(chat).over == ("pregnancy",)
    assert chat.facts.profile.cautions == frozenset()


def test_pregnancy_takes_effect_on_the_open_question() -> None:
    chat = Chat(state=State(asking=Awaiting("weight"), agenda=("waist", "resting_heart_rate"), day=MONDAY.date()))
    chat.says("I am pregnant now")
    assert set(noted(chat).left_out) == {"weight", "waist", "hip"}
    assert chat.state.asking == Awaiting("resting_heart_rate")


def test_a_reading_in_the_same_message_is_taken() -> None:
    chat = Chat(state=State(asking=Awaiting("resting_heart_rate"), day=MONDAY.date()))
    chat.says("66, and they put me on bisoprolol")
    assert noted(chat).taken == ("bisoprolol",)
    assert [r.value for r in chat.facts.history] == [66]


def test_the_button_takes_everything_back() -> None:
    chat = Chat().says("I am pregnant and I am 170 cm tall")
    mark = chat.state.facts_noted.mark
    chat.later(minutes=5).says("7").presses(f"fact:{mark}")
    assert chat.facts.profile == ADA.profile
    assert any(isinstance(x, m.HealthUndone) for x in chat.said)
    assert news(chat)[0].undone
    assert news(chat)[0].over == ("pregnancy",)


def test_undo_right_after_a_fact_takes_the_fact_back() -> None:
    chat = Chat().says("I am pregnant").later(minutes=2).commands("undo")
    assert chat.facts.profile == ADA.profile
    assert chat.kinds == ["HealthUndone"]


def test_undo_after_a_later_reading_takes_the_reading_back() -> None:
    chat = Chat(state=State(asking=Awaiting("resting_heart_rate"), day=MONDAY.date()))
    chat.says("they put me on bisoprolol").later(minutes=2).says("66").later(minutes=1).commands("undo")
    assert chat.facts.profile.medicines == {"bisoprolol"}
    assert chat.readings("resting_heart_rate") == []


def test_the_button_of_an_older_fact_takes_nothing_back() -> None:
    chat = Chat().says("I am pregnant")
    mark = chat.state.facts_noted.mark
    chat.later(minutes=5).says("I have diabetes").presses(f"fact:{mark}")
    assert chat.facts.profile.cautions == {Caution.PREGNANCY, Caution.DIABETES}
    assert any(isinstance(x, OldButton) for x in chat.said)


def test_what_is_known_is_acknowledged_and_the_coach_left_alone() -> None:
    chat = Chat(PREGNANT).says("I am pregnant")
    assert any(isinstance(x, m.HealthAsBefore) for x in chat.said)
    assert news(chat) == []


def test_every_fall_is_news_for_the_coach() -> None:
    chat = Chat().says("I fell last week").later(days=9).says("I fell again yesterday")
    assert news(chat)[0].begun == ("falls",)
    assert chat.facts.profile.cautions == {Caution.FALLS}


def test_what_is_not_sure_is_asked_once() -> None:
    chat = Chat(state=State(asking=Awaiting("resting_heart_rate"), day=MONDAY.date()))
    chat.says("I think I might be pregnant")
    assert any(isinstance(x, m.AskHealth) for x in chat.said)
    assert chat.facts.profile == ADA.profile
    chat.presses("note:yes")
    assert chat.facts.profile.cautions == {Caution.PREGNANCY}
    assert chat.state.asking == Awaiting("resting_heart_rate")


@pytest.mark.parametrize("answer", ["no", "No, thank you"])
def test_a_no_notes_nothing(answer: str) -> None:
    chat = Chat().says("gave birth on friday, I was pregnant")
    chat = Chat(PREGNANT).says("gave birth on friday")
    assert isinstance(chat.state.asking, Setting)
    chat.says(answer)
    assert chat.facts.profile == PREGNANT.profile
    assert any(isinstance(x, m.HealthNotNoted) for x in chat.said)


def test_heart_failure_without_directed_weighing_is_told_to_the_coach() -> None:
    assert news(Chat().says("I have heart failure"))[0].undirected
    directed = replace(ADA, plan=replace(ADA.plan, directed_weighing=True))
    assert not news(Chat(directed).says("I have heart failure"))[0].undirected


def test_worries_about_eating_leave_weight_out_and_undo_brings_it_back() -> None:
    chat = Chat().says("I get obsessive about food when I weigh myself")
    assert "weight" not in chat.facts.plan.measures
    chat.presses(f"fact:{chat.state.facts_noted.mark}")
    assert chat.facts.plan.measures == ADA.plan.measures


def test_a_danger_sign_in_the_same_sentence_wins() -> None:
    chat = Chat().says("they put me on bisoprolol and now I have chest pain")
    assert any(isinstance(x, m.Emergency) for x in chat.said)
    assert not any(isinstance(x, m.HealthNoted) for x in chat.said)


def test_beside_a_milder_sign_a_fact_is_noted_after_the_advice() -> None:
    chat = Chat().says("my heart keeps racing so they put me on bisoprolol")
    assert isinstance(chat.said[0], m.SameDay)
    assert noted(chat).taken == ("bisoprolol",)


def test_no_question_about_health_covers_the_question_about_a_sign() -> None:
    chat = Chat(state=State(asking=AlarmAsked("chest_pain", "emergency")))
    chat.says("my family is from pakistan")
    assert isinstance(chat.state.asking, AlarmAsked)


def test_a_move_changes_the_clock_and_can_be_undone() -> None:
    chat = Chat().says("we moved to Lisbon last week")
    assert chat.facts.slot.zone_name == "Europe/Lisbon"
    assert noted(chat).place == "Europe/Lisbon"
    chat.presses(f"fact:{chat.state.facts_noted.mark}")
    assert chat.facts.slot.zone_name == "Europe/London"


def test_where_somebody_lives_is_asked_back_since_it_may_be_no_place() -> None:
    chat = Chat().says("I am living in Lisbon now")
    assert chat.facts.slot.zone_name == "Europe/London"
    assert (chat.kinds, chat.choices) == (["WhichPlace"], ["zone:Europe/Lisbon"])
    chat.says("Lisbon")
    assert chat.facts.slot.zone_name == "Europe/Lisbon"


@pytest.mark.parametrize("how", ["command", "question"])
def test_words_for_the_coach_are_passed_on_and_noted(how: str) -> None:
    chat = Chat()
    if how == "command":
        chat.commands("coach", "I am pregnant, can we talk?")
    else:
        chat.presses("word").says("I am pregnant, can we talk?")
    assert chat.did(e.PassOn)[0].text == "I am pregnant, can we talk?"
    assert chat.facts.profile.cautions == {Caution.PREGNANCY}


def test_an_edited_message_is_read_again() -> None:
    chat = Chat().says("I am pregnant").edits("I am not pregnant")
    assert chat.facts.profile.cautions == frozenset()


def test_a_move_to_an_unknown_place_asks_for_the_city() -> None:
    chat = Chat().says("I have relocated to Atlantis")
    assert chat.kinds == ["AskZone"]
    assert chat.state.asking == Setting("zone", "", None)


def test_height_birth_year_sex_and_units_are_facts_too() -> None:
    unknown = replace(ADA, profile=Profile())
    chat = Chat(unknown).says("I am 172 cm tall").says("born in 1956").says("I am a woman")
    assert (str(chat.facts.profile.stature), chat.facts.profile.birth_year) == ("172", 1956)
    assert chat.facts.profile.sex == "female"
    chat.says("I would prefer stones and pounds")
    assert chat.facts.units.mass == "st"


def test_the_no_of_a_denial_answers_no_open_question() -> None:
    chat = Chat(state=State(asking=Gate()))
    chat.says("no diabetes, but I fell last week")
    assert chat.facts.profile.cautions == {Caution.FALLS}
    assert chat.state.asking == Gate()


def test_a_yes_with_a_fact_is_both() -> None:
    chat = Chat(state=State(asking=Gate()))
    chat.says("yes, and they put me on bisoprolol")
    assert chat.facts.profile.medicines == {"bisoprolol"}
    assert chat.state.asking == Gate(signs=True)


def test_a_birth_year_of_a_child_is_not_noted() -> None:
    chat = Chat().says("born in 2019")
    assert chat.facts.profile == ADA.profile


def test_what_is_said_to_the_coach_is_passed_on_as_well() -> None:
    chat = Chat(state=State(word_until=datetime(2026, 3, 3, tzinfo=UTC)))
    chat.says("yes I stopped bisoprolol, I was on it")
    chat.says("I am pregnant")
    assert any(isinstance(x, e.PassOn) for x in chat.effects)
    assert noted(chat).begun == ("pregnancy",)
