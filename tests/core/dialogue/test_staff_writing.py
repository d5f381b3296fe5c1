"""To whom a coach's words go: an open writing, a reply, and a question before they could reach the wrong person."""

from dataclasses import replace
from datetime import timedelta
from typing import Any

import pytest

from core.dialogue.staff import talk_messages as tm
from core.dialogue.staff.effects import WriteTo
from core.dialogue.staff.states import ConfirmingWords, WritingTo
from tests.core.dialogue.office import Office, card

ADA, BEN = card(1, "Ada"), card(2, "Ben")
OTHER_ADA = card(3, "Ada", profile=replace(ADA.profile, birth_year=1975))


def office(*clients: Any) -> Office:
    return Office(*(clients or (ADA, BEN)))


def sent(at: Office) -> list[tuple[int, str]]:
    return [(effect.client_id, effect.text) for effect in at.did(WriteTo)]


def test_writing_closes_after_one_message() -> None:
    at = office().presses("write:1")
    assert sent(at.says("Well done.")) == [(1, "Well done.")]
    assert sent(at.says("It was a good week for everybody")) == []


@pytest.mark.parametrize(("minutes", "goes"), [(0, True), (10, True), (11, False), (600, False)])
def test_writing_closes_after_ten_minutes(minutes: int, goes: bool) -> None:
    at = office().presses("write:1")
    at.now += timedelta(minutes=minutes)
    at.says("See you on the mat tomorrow evening")
    assert bool(sent(at)) is goes
    assert ("AskWhoGets" in at.kinds) is not goes


def test_words_that_came_too_late_are_sent_by_a_yes_and_dropped_by_a_no() -> None:
    for answer, wanted in (("yes", [(1, "See you on the mat tomorrow")]), ("no", [])):
        at = office().presses("write:1")
        at.now += timedelta(minutes=11)
        assert at.says("See you on the mat tomorrow").heard(tm.AskWhoGets).why == "late"
        assert sent(at.says(answer)) == wanted
        assert at.state.asking is None


def test_a_name_typed_after_ten_minutes_opens_a_card_and_is_not_sent() -> None:
    at = office().presses("write:1")
    at.now += timedelta(minutes=11)
    assert at.says("Ben").kinds == ["CardSaid"]
    assert at.state.asking is None


@pytest.mark.parametrize(
    ("words", "asked"),
    [
        pytest.param("Ben says hello", ("Ben",), id="another-client"),
        pytest.param("Did you see Ben's waist?", ("Ben",), id="declined"),
        pytest.param("Ada, well done", (), id="the-one-it-is-for"),
        pytest.param("the bench is bent", (), id="only-like-a-name"),
    ],
)
def test_words_that_name_another_client_are_asked_about_before_they_go(words: str, asked: tuple[str, ...]) -> None:
    at = office().presses("write:1").says(words)
    assert bool(sent(at)) is not bool(asked)
    if asked:
        assert at.heard(tm.AskWhoGets) == tm.AskWhoGets("Ada", asked, words, "named")
        assert sent(at.presses("sendto:2")) == [(2, words)]


@pytest.mark.parametrize("way", ["write Ada Ben says hello", "a reply", "two of one name"])
def test_every_way_to_send_words_asks_about_another_name(way: str) -> None:
    at = office(ADA, BEN, OTHER_ADA) if way == "two of one name" else office()
    at.about = {"m1": 1}
    if way == "a reply":
        at.replies("m1", "Ben says hello")
    elif way == "two of one name":
        at.commands("write", "Ada Ben says hello").presses("pick:1")
    else:
        at.says(way)
    assert sent(at) == []
    assert at.state.asking == ConfirmingWords(1, "Ben says hello", (2,), "named")


def test_two_clients_of_one_name_are_not_taken_for_somebody_else() -> None:
    at = office(ADA, OTHER_ADA).presses("write:1").says("Ada, see you tomorrow")
    assert sent(at) == [(1, "Ada, see you tomorrow")]


@pytest.mark.parametrize("answer", ["Ben", "sendto:2"])
def test_the_other_one_can_be_chosen_by_name_or_button(answer: str) -> None:
    at = office().presses("write:1").says("Ben says hello")
    (at.presses if ":" in answer else at.says)(answer)
    assert sent(at) == [(2, "Ben says hello")]


def test_what_is_no_answer_puts_the_question_again() -> None:
    at = office().presses("write:1").says("Ben says hello").says("what was that")
    assert sent(at) == [] and at.heard(tm.AskWhoGets).others == ("Ben",)


def test_a_client_who_was_not_asked_about_gets_nothing_by_an_old_button() -> None:
    at = office(ADA, BEN, card(4, "Chidi")).presses("write:1").says("Ben says hello").presses("sendto:4")
    assert sent(at) == [] and at.kinds == ["AskWords"]


# --- what is open is said -----------------------------------------------------------------------------------------


@pytest.mark.parametrize("act", ["thread:1", "thread:2", "digest", "list:need:0"])
def test_every_reply_says_to_whom_the_next_words_go(act: str) -> None:
    at = office().presses("write:1").presses(act)
    assert at.heard(tm.StillWriting).name == "Ada"
    assert isinstance(at.state.asking, WritingTo)


@pytest.mark.parametrize("act", ["card:2", "plan:2", "cancel", "note:1"])
def test_whatever_ends_it_says_that_nothing_was_sent(act: str) -> None:
    at = office().presses("write:1").presses(act)
    assert at.heard(tm.WritingClosed).name == "Ada"


def test_writing_to_somebody_else_instead_says_to_whom_from_now_on() -> None:
    at = office().presses("write:1").presses("write:2")
    assert at.kinds == ["AskWords"]
    assert sent(at.says("hello")) == [(2, "hello")]


def test_after_ten_minutes_nothing_is_said_of_it_any_more() -> None:
    at = office().presses("write:1")
    at.now += timedelta(minutes=11)
    assert at.presses("thread:2").kinds == ["ThreadSaid"]


# --- replies, and words for nobody ----------------------------------------------------------------------------------


def test_a_reply_goes_to_whom_the_message_was_about_whatever_else_is_open() -> None:
    at = office().presses("write:2")
    at.about = {"m1": 1}
    at.replies("m1", "Put ice on it.")
    assert sent(at) == [(1, "Put ice on it.")]
    assert at.heard(tm.StillWriting).name == "Ben"
    assert sent(at.says("And you may swim.")) == [(2, "And you may swim.")]


def test_a_reply_about_somebody_who_is_not_theirs_any_more_goes_nowhere() -> None:
    at = office()
    at.about = {"m1": 99}
    assert at.replies("m1", "Put ice on it.").kinds == ["NotYours"]


def test_a_reply_to_a_message_about_nobody_is_a_text_like_others() -> None:
    assert office().replies("m0", "Ada").kinds == ["CardSaid"]


def test_thanks_go_to_nobody_and_say_so_unless_they_are_a_reply() -> None:
    at = office()
    assert at.says("Thank you!").kinds == ["ThanksToNobody"]
    at.about = {"m1": 1}
    assert sent(at.replies("m1", "Thank you!")) == [(1, "Thank you!")]


def test_words_for_nobody_that_name_one_client_are_offered_to_them() -> None:
    at = office().says("Ada please bring your shoes tomorrow")
    assert at.heard(tm.AskWhoGets).why == "offer" and sent(at) == []
    assert sent(at.says("yes")) == [(1, "Ada please bring your shoes tomorrow")]


def test_words_that_name_several_are_offered_to_nobody() -> None:
    assert office().says("Ada and Ben please bring your shoes tomorrow").kinds == ["StaffNotSure"]
