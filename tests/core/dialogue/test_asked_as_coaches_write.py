"""What coaches type with their thumbs: a question is never a trap, words go to whom they name, a request opens the
screen that does it, and nothing changes without a press."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest

from core.client import Caution
from core.dialogue.kit.effects import Say
from core.dialogue.kit.messages import KeptAsItWas
from core.dialogue.staff import effects as fx
from core.dialogue.staff import messages as sm
from core.dialogue.staff import talk_messages as tm
from core.dialogue.staff.states import AskingSure, ChangingSlot, ConfirmingWords, DealingWith, Ticking
from core.watching.flags import Code, flag
from tests.core.dialogue.office import NOW, Office, card, kept, readings

FLAG = kept(5, flag(Code.WEIGHING_OFTEN, NOW, "weight"))
ADA = card(1, "Ada", flags=(FLAG,), history=(*readings("waist", "99"), *readings("weight", "88")))
BEN = card(2, "Ben", history=readings("weight", "92"))
ANNA, ANNABEL = card(3, "Anna"), card(4, "Annabel")


def office(*clients: Any, **facts: Any) -> Office:
    return Office(*(clients or (ADA, BEN)), **facts)


def sent(at: Office) -> list[tuple[int, str]]:
    return [(effect.client_id, effect.text) for effect in at.did(fx.WriteTo)]


def notes(at: Office) -> list[str]:
    return [effect.text for effect in at.did(fx.SaveNote)]


def done(at: Office) -> list[Any]:
    """Everything that is more than words."""
    return [effect for effect in at.effects if not isinstance(effect, Say)]


# --- to whom words go -------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("text", "client", "words"),
    [
        ("tell Ada well done", 1, "well done"),
        ("message Ben: see you thursday?", 2, "see you thursday?"),
        ("can you tell ada I'll ring at 5", 1, "I'll ring at 5"),
        ("tell Ada that the hall is shut", 1, "the hall is shut"),
        ("let BEN know class is at 6", 2, "class is at 6"),
        ("tell Ada her plan is changed and blood pressure comes next week", 1, None),
        ("remind Ada to bring her shoes", 1, "bring her shoes"),
    ],
)
def test_what_to_tell_whom_is_offered_in_just_those_words_and_sent_by_one_press(
    text: str, client: int, words: str | None
) -> None:
    words = words or text.removeprefix("tell Ada ")
    at = office().says(text)
    assert at.heard(tm.AskWhoGets).words == words and sent(at) == []
    assert sent(at.presses(f"sendto:{client}")) == [(client, words)]


def test_words_for_one_that_name_another_ask_which_of_them() -> None:
    at = office().says("tell Ada that Ben asked about her")
    assert at.heard(tm.AskWhoGets) == tm.AskWhoGets("Ada", ("Ben",), "Ben asked about her", "named")


def test_new_words_that_name_somebody_replace_the_offer_and_the_old_ones_are_dropped() -> None:
    at = office().says("tell Ada well done").says("message Ben: see you thursday?")
    assert at.heard(tm.WordsDropped).name == "Ada"
    assert at.heard(tm.AskWhoGets).words == "see you thursday?"
    assert sent(at.says("yes")) == [(2, "see you thursday?")]


@pytest.mark.parametrize(
    ("text", "shown"),
    [
        ("show me Ben's weight", "LastSaid"),
        ("Ben", "CardSaid"),
        ("who needs me", "DigestSaid"),
        ("what can you do", "StaffHelp"),
        ("my clients", "CaseloadList"),
        ("settings", "StaffSettings"),
    ],
)
def test_a_request_is_done_while_an_offer_is_open(text: str, shown: str) -> None:
    at = office().says("tell Ada well done").says(text)
    assert at.kinds == ["WordsDropped", shown]
    assert at.state.asking is None and sent(at) == []


def test_what_is_no_answer_puts_the_question_again_once_and_then_lets_go() -> None:
    at = office().says("tell Ada well done").says("nice weather today everybody")
    assert at.kinds == ["AskWhoGets"] and isinstance(at.state.asking, ConfirmingWords)
    at.says("nice weather today everybody")
    assert "AskWhoGets" not in at.kinds and "WordsDropped" in at.kinds
    assert at.state.asking is None


def test_the_first_of_two_questions_can_still_be_pressed() -> None:
    at = office().says("tell Ada well done")
    first = at.state.question
    at.says("nice weather today everybody")
    assert at.state.question == first
    assert sent(at.presses("sendto:1")) == [(1, "well done")]


def test_a_request_about_another_client_never_sends_words_that_waited_for_a_choice() -> None:
    ada = replace(ADA, client_id=9, profile=replace(ADA.profile, birth_year=1975))
    for text in ("Ben", "show me Ben"):
        at = office(ADA, ada, BEN).says("tell Ada well done")
        assert at.kinds == ["WhichClient"]
        assert sent(at.says(text)) == []


def test_a_request_about_the_client_who_is_written_to_is_asked_about_first() -> None:
    at = office().presses("write:1").says("show me ada's waist")
    assert sent(at) == [] and at.heard(tm.AskWhoGets).words == "show me ada's waist"


def test_a_reminder_for_oneself_goes_to_nobody() -> None:
    at = office().says("remind me to call Ada")
    assert at.state.asking is None or isinstance(at.state.asking, ConfirmingWords)
    assert sent(at) == []


# --- the note ---------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("text", "note"),
    [
        ("note for Ada: prefers mornings", "prefers mornings"),
        ("note ada prefers mornings", "prefers mornings"),
        ("Note: Ada prefers mornings", "prefers mornings"),
        ("note for Ada: knee is bad, works nights until June and hates the tape", None),
    ],
)
def test_a_note_whose_words_are_there_is_saved_said_back_and_can_be_taken_back(text: str, note: str | None) -> None:
    note = note or text.removeprefix("note for Ada: ")
    at = office().says(text)
    assert notes(at) == [note] and at.heard(tm.NoteKept).note == note
    (back,) = [c for c in at.choices if c.startswith("unnote")]
    at.clients[1] = replace(ADA, note=note)
    assert notes(at.presses(back)) == [""]


def test_a_second_note_is_added_to_the_first_and_only_it_is_taken_back() -> None:
    at = office(replace(ADA, note="bad knee")).says("note for Ada: prefers mornings")
    assert notes(at) == ["bad knee\nprefers mornings"]
    (back,) = [c for c in at.choices if c.startswith("unnote")]
    at.clients[1] = replace(ADA, note="bad knee\nprefers mornings")
    assert notes(at.presses(back)) == ["bad knee"]


def test_a_note_that_changed_since_is_not_taken_back() -> None:
    at = office(replace(ADA, note="something else")).presses("unnote:1:0:16")
    assert notes(at) == [] and at.heard(tm.NoteTakenBack).changed


@pytest.mark.parametrize("text", ["note on Ada", "show the notes on Ada", "note on Ada please"])
def test_a_note_without_words_is_asked_for(text: str) -> None:
    at = office().says(text)
    assert notes(at) == [] and at.kinds == ["AskNote"]


@pytest.mark.parametrize("text", ["show me ada's waist since the start", "Ben rang", "who needs me", "digest"])
def test_what_looks_like_something_else_is_not_saved_as_a_note_without_a_yes(text: str) -> None:
    at = office().presses("note:1").says(text)
    assert notes(at) == [] and at.heard(tm.NoteSure).words == text
    assert isinstance(at.state.asking, AskingSure)
    assert notes(at.presses("sure:note:1")) == [text]


def test_a_question_about_a_note_is_left_by_another_request() -> None:
    at = office().presses("note:1").says("who needs me").says("show me Ben")
    assert "CardSaid" in at.kinds and notes(at) == []


def test_plain_words_are_the_note() -> None:
    assert notes(office().presses("note:1").says("prefers mornings, new plan: walks")) == [
        "prefers mornings, new plan: walks"
    ]


# --- each gets to the screen that does it -----------------------------------------------------------------------


@pytest.mark.parametrize(
    ("text", "shown"),
    [
        ("who hasn't answered", "DigestSaid"),
        ("how many of my clients checked in", "DigestSaid"),
        ("is it serious", "DigestSaid"),
        ("what does the flag mean", "DigestSaid"),
        ("how many clients do I have", "CaseloadList"),
        ("Ada shouldn't see her weight", "PlanSaid"),
        ("cardiologist wants ben weighed daily", "PlanSaid"),
        ("stop the programme for Ben", "AskEnd"),
        ("delete Ben", "AskEnd"),
        ("Ada is pregnant", "AskCautions"),
        ("Ben has diabetes", "AskCautions"),
        ("done with Ada", "AskDone"),
        ("I rang her, all fine", "AskDone"),
        ("why is Ada flagged", "CardSaid"),
        ("is 88 kg good for Ada", "CardSaid"),
        ("ada??", "CardSaid"),
        ("I'm off next week", "DeputyShown"),
        ("Sam will cover", "DeputyShown"),
        ("digest on fridays please", "AskDigestSlot"),
        ("clara never got the link", "AskInvitee"),
        ("mute", "StaffSettings"),
        ("no digest please", "StaffSettings"),
        ("hand Ben over to Sam", "AskHandOver"),
        ("new baseline for Ada", "AskBaseline"),
        ("rename Ada", "AskCalled"),
        ("pause Ben for 2 weeks", "TheirsToDo"),
        ("delete Ada's last weight", "TheirsToDo"),
        ("compare Ada and Ben", "StaffNotSure"),
        ("is that so?", "StaffNotSure"),
        ("ok thanks!", "ThanksToNobody"),
    ],
)
def test_a_wish_gets_to_its_screen_and_nothing_is_changed(text: str, shown: str) -> None:
    at = office().says(text)
    assert at.kinds == [shown] and done(at) == []


def test_a_measure_to_add_or_to_leave_out_stands_ticked_and_waits_for_done() -> None:
    at = office().says("add blood pressure for Ada")
    assert at.state.asking == Ticking("measures", 1, ("weight", "waist", "blood_pressure")) and done(at) == []
    at.says("add blood pressure for Ada").says("take weight off Ada's plan")
    assert at.state.asking == Ticking("measures", 1, ("waist", "blood_pressure")) and done(at) == []
    (changed,) = at.presses("measures:1:done").did(fx.ChangePlan)
    assert changed.plan.measures == ("blood_pressure", "waist")


def test_a_caution_that_is_told_stands_ticked_and_one_that_is_known_stays() -> None:
    assert office().says("Ada is pregnant").state.asking == Ticking("cautions", 1, ("pregnancy",))
    known = replace(ADA, profile=replace(ADA.profile, cautions=frozenset({Caution.PREGNANCY})))
    assert office(known).says("Ada is pregnant").state.asking == Ticking("cautions", 1, ("pregnancy",))


def test_a_new_day_is_said_back_and_its_time_asked() -> None:
    at = office().says("change Ada's day to friday")
    assert at.heard(tm.NewDay) == tm.NewDay("Ada", 4) and at.state.asking == ChangingSlot(1, "4") and done(at) == []


def test_a_day_for_one_client_is_never_set_for_another() -> None:
    at = office().says("move ben to thursdays").says("can ada do mondays at 8")
    assert done(at) == [] and at.state.asking == ChangingSlot(1, "0")


def test_what_is_about_two_clients_with_like_names_asks_whom_and_then_goes_on() -> None:
    other = replace(ADA, client_id=9, profile=replace(ADA.profile, birth_year=1975))
    at = office(ADA, other, BEN).says("stop the programme for Ada")
    assert at.kinds == ["WhichClient"] and at.choices == ["end:1", "end:9"]
    assert office(ANNA, ANNABEL).says("Anna's plan").heard(sm.PlanSaid).name == "Anna"


def test_a_line_about_what_was_done_is_not_taken_from_a_request_about_somebody_else() -> None:
    at = office().says("done with Ada")
    assert isinstance(at.state.asking, DealingWith)
    at.says("message Ben: see you")
    assert done(at) == [] and at.heard(KeptAsItWas) and at.heard(tm.AskWhoGets).name == "Ben"
    assert at.presses("cancel").says("done with Ada").says("rang her at noon").did(fx.ClearFlags)


def test_a_request_is_not_the_name_of_somebody_new() -> None:
    at = office().presses("invite").says("note for Ada: prefers mornings")
    assert at.did(fx.Invite) == [] and notes(at) == ["prefers mornings"]
    assert [one.for_name for one in office().presses("invite").says("Rose Page").did(fx.Invite)] == ["Rose Page"]


def test_the_last_value_is_told_where_there_is_no_picture_yet() -> None:
    said = office().says("what did Ben weigh").heard(sm.LastSaid)
    assert (said.name, said.measure) == ("Ben", "weight") and said.line.amount.value == 92
    assert office().says("what was Ben's last waist").heard(sm.LastSaid).line is None
    twice = replace(BEN, history=readings("weight", "92", "90"))
    assert office(ADA, twice).says("Ben's weight").kinds == ["ClientPicture"]
    assert office(ADA, twice).says("how much does Ben weigh").kinds == ["LastSaid"]


def test_a_deputy_changes_nothing_by_words_either() -> None:
    lent = replace(ADA, for_coach="Sam")
    for text in ("add blood pressure for Ada", "delete Ada", "note for Ada: prefers mornings", "move Ada to Friday"):
        at = office(lent, BEN).says(text)
        assert at.kinds == ["NotYours"] and done(at) == []
    assert office(lent, BEN).says("tell Ada well done").kinds == ["AskWhoGets"]
