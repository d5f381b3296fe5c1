"""A coach looks people up, reads cards, writes, and takes notes."""

from dataclasses import replace
from datetime import date, datetime, timedelta
from decimal import Decimal

import pytest

from core.client import Profile
from core.dialogue.commands import STAFF_BUTTONS
from core.dialogue.kit.effects import drawn
from core.dialogue.kit.events import Press
from core.dialogue.kit.messages import KeptAsItWas, NotForThisRole, NotText, OldButton
from core.dialogue.staff import messages as sm
from core.dialogue.staff.effects import ClearFlags, MarkSeen, SaveNote, WriteTo
from core.dialogue.staff.facts import WordFact
from core.dialogue.staff.states import ChoosingClient
from core.dialogue.staff.step import stamp
from core.watching.digest import FlagFact
from core.watching.flags import Code, flag
from tests.core.dialogue.office import NOW, Office, card, kept, readings

WISH = flag(Code.WANTS_COACH, NOW - timedelta(days=2))
SEVERE = flag(Code.BP_SEVERE, NOW, "blood_pressure", systolic=Decimal(186), diastolic=Decimal(112))
ADA, BEN = card(1, "Ada"), card(2, "Ben", flags=(kept(9, WISH),))


# --- the list ---------------------------------------------------------------------------------------------------


def test_a_coach_without_clients_is_told_how_to_invite() -> None:
    office = Office().commands("caseload")
    assert office.kinds == ["NoClientsYet"]
    assert office.choices == ["invite"]


def test_the_list_puts_those_who_need_somebody_first() -> None:
    goran = card(3, "Goran", flags=(kept(4, SEVERE),))
    quiet = card(4, "Emil", missed=2)
    shown = Office(ADA, BEN, goran, quiet).commands("caseload").heard(sm.CaseloadList)
    assert [r.name for r in shown.rows] == ["Goran", "Ben", "Emil", "Ada"]


def test_the_list_by_name_is_by_name() -> None:
    shown = Office(BEN, card(3, "chidi"), ADA).presses("list:name:0").heard(sm.CaseloadList)
    assert [r.name for r in shown.rows] == ["Ada", "Ben", "chidi"]


def test_a_long_list_has_pages_of_eight_and_buttons_to_turn_them() -> None:
    office = Office(*(card(n, f"Client {n:02}") for n in range(1, 20)))
    first = office.commands("caseload").heard(sm.CaseloadList)
    assert (len(first.rows), first.page, first.pages, first.total) == (8, 0, 3, 19)
    assert "list:need:1" in office.choices and "list:need:-1" not in office.choices
    last = office.presses("list:need:2").heard(sm.CaseloadList)
    assert [r.name for r in last.rows] == ["Client 17", "Client 18", "Client 19"]
    assert "list:need:1" in office.choices and "list:need:3" not in office.choices


def test_a_page_that_is_no_longer_there_is_the_last_one() -> None:
    assert Office(ADA).presses("list:need:40").heard(sm.CaseloadList).page == 0


# --- looking somebody up ----------------------------------------------------------------------------------------


def test_a_name_typed_plainly_opens_the_card() -> None:
    assert Office(ADA, BEN).says("ben").heard(sm.CardSaid).name == "Ben"


def test_a_command_with_a_name_opens_the_card() -> None:
    for command in ("caseload", "client"):
        assert Office(ADA, BEN).commands(command, "Ada").heard(sm.CardSaid).name == "Ada"


def test_a_name_that_means_several_is_asked_back_with_a_button_for_each() -> None:
    office = Office(card(1, "Ann", profile=Profile(birth_year=1960)), card(2, "Ann", profile=Profile(birth_year=1971)))
    office.says("ann")
    assert office.heard(sm.WhichClient).names == ("Ann", "Ann")
    assert office.choices == ["card:1", "card:2"]
    assert [c.argument for row in office.effects[0].choices for c in row] == ["Ann (1960)", "Ann (1971)"]


def test_a_name_nobody_has_is_said_back() -> None:
    assert Office(ADA).says("zoe").heard(sm.NobodyFound).query == "zoe"


def test_a_client_named_like_an_intent_is_still_found() -> None:
    assert Office(card(5, "Hi")).says("Hi").heard(sm.CardSaid).name == "Hi"


def test_a_sentence_is_not_taken_for_a_name() -> None:
    assert Office(ADA).says("what on earth am I to do with all this").kinds == ["StaffNotSure"]


# --- the card ---------------------------------------------------------------------------------------------------


def test_the_card_shows_results_with_their_verdicts_flags_and_the_note() -> None:
    ada = card(
        1,
        "Ada",
        history=(*readings("weight", "82.4", "81.9"), *readings("waist", "92", "104")),
        flags=(kept(9, WISH),),
        note="left knee",
    )
    shown = Office(ada).presses("card:1").heard(sm.CardSaid)
    lines = {line.measure: line for line in shown.lines}
    assert lines["weight"].amount.value == Decimal("81.9")
    assert lines["weight"].verdict.kind == "within_error"
    assert lines["waist"].verdict.kind == "worse"
    assert lines["bmi"].band.source == "who_bmi"
    assert [f.id for f in shown.flags] == [9]
    assert (shown.note, shown.age) == ("left knee", 57)


def test_the_card_never_shows_an_early_weight() -> None:
    from core.reading import How

    official, early = readings("weight", "82.4", "79.1", days=3)
    ada = card(1, "Ada", history=(official, replace(early, how=How.EARLY)))
    (weight,) = [x for x in Office(ada).presses("card:1").heard(sm.CardSaid).lines if x.measure == "weight"]
    assert weight.amount.value == Decimal("82.4")


def dealing(*flags: FlagFact, shown: int = 12, at: datetime = NOW) -> Office:
    return Office(card(2, "Ben", flags=flags)).presses(f"clear:2:{shown}:{stamp(at)}")


def test_dealt_with_asks_what_was_done_and_clears_what_stood_on_the_card() -> None:
    office = dealing(kept(9, WISH), kept(12, SEVERE), shown=9)
    assert [f.id for f in office.heard(sm.AskDone).flags] == [9] and office.did(ClearFlags) == []
    assert office.presses("done:2:rang").did(ClearFlags) == [ClearFlags(2, (9,), "rang")]
    assert office.heard(sm.FlagsCleared) == sm.FlagsCleared("Ben", "rang")
    assert office.state.asking is None


def test_what_was_done_can_be_said_in_ones_own_line() -> None:
    office = dealing(kept(12, SEVERE)).says("Her daughter\ndrove her to the clinic")
    assert office.did(ClearFlags) == [ClearFlags(2, (12,), "own", "Her daughter drove her to the clinic")]


@pytest.mark.parametrize("text", ["ok", "hm", "thanks", "done with Ben", "done", "what do you mean?", "yes"])
def test_a_stray_word_clears_no_flag_and_is_asked_about_again(text: str) -> None:
    office = dealing(kept(12, SEVERE)).says(text)
    assert office.did(ClearFlags) == [] and office.kinds == ["AskDone"]
    assert office.presses("done:2:rang").did(ClearFlags) == [ClearFlags(2, (12,), "rang")]


def test_one_word_that_says_what_was_done_is_enough() -> None:
    assert dealing(kept(9, WISH)).says("rang").did(ClearFlags) == [ClearFlags(2, (9,), "own", "rang")]


def test_that_nothing_was_needed_wants_a_reason_where_it_was_urgent_and_none_elsewhere() -> None:
    office = dealing(kept(12, SEVERE)).presses("done:2:nothing")
    assert office.did(ClearFlags) == [] and office.kinds == ["AskWhyNothing"]
    assert office.says("the cuff was over a sleeve").did(ClearFlags) == [
        ClearFlags(2, (12,), "nothing", "the cuff was over a sleeve")
    ]
    assert dealing(kept(9, WISH)).presses("done:2:nothing").did(ClearFlags) == [ClearFlags(2, (9,), "nothing")]


def test_what_happened_again_since_the_card_was_shown_stays_open() -> None:
    again = kept(12, SEVERE, refreshed_at=NOW + timedelta(minutes=5))
    office = dealing(kept(9, WISH), again)
    assert [f.id for f in office.heard(sm.AskDone).flags] == [9]
    assert dealing(again).kinds == ["CardSaid"]  # nothing of it was on that card


def test_a_second_press_of_what_was_done_clears_nothing() -> None:
    office = dealing(kept(12, SEVERE))
    pressed = office.state.question
    office.presses("done:2:rang").gets(Press(NOW, drawn("done:2:met", pressed)))
    assert office.did(ClearFlags) == []


def test_seen_under_an_urgent_flag_marks_that_flag_as_it_was_told_and_no_other() -> None:
    office = Office(card(2, "Ben", flags=(kept(9, WISH), kept(12, SEVERE))))
    assert office.presses(f"saw:2:bp_severe:{stamp(NOW)}").did(MarkSeen) == [MarkSeen((12,), NOW)]
    later = Office(card(2, "Ben", flags=(kept(12, SEVERE, refreshed_at=NOW + timedelta(minutes=5)),)))
    assert later.presses(f"saw:2:bp_severe:{stamp(NOW)}").did(MarkSeen) == []


def test_an_old_seen_button_marks_what_is_urgent() -> None:
    office = Office(card(2, "Ben", flags=(kept(9, WISH), kept(12, SEVERE))))
    assert office.presses("saw:2").did(MarkSeen) == [MarkSeen((12,), NOW)]


def test_the_history_has_what_is_over() -> None:
    over = replace(kept(12, SEVERE), cleared_at=NOW, ended="by_coach", done="rang", by="Rowan")
    office = Office(card(2, "Ben", past=(over,))).presses("card:2")
    assert "past:2" in office.choices
    assert office.presses("past:2").heard(sm.HistorySaid).flags == (over,)


# --- writing ----------------------------------------------------------------------------------------------------


def test_a_command_with_name_and_words_writes_at_once() -> None:
    office = Office(ADA, BEN).commands("write", "Ben well done, rest now")
    assert [(effect.client_id, effect.text) for effect in office.did(WriteTo)] == [(2, "well done, rest now")]
    assert office.heard(sm.WordsSent).name == "Ben"


def test_the_button_asks_for_words_and_the_next_message_is_sent_as_it_is() -> None:
    office = Office(ADA, BEN).presses("write:2")
    assert office.kinds == ["AskWords"]
    office.says("please stop the stairs this week")
    assert [(effect.client_id, effect.text) for effect in office.did(WriteTo)] == [
        (2, "please stop the stairs this week")
    ]
    assert office.state.asking is None


def test_stop_alone_sends_nothing() -> None:
    office = Office(BEN).presses("write:2").says("stop")
    assert office.did(WriteTo) == [] and isinstance(office.said[0], KeptAsItWas)


def test_words_for_a_name_that_means_two_wait_until_one_is_chosen() -> None:
    office = Office(card(1, "Ann"), card(2, "Anna B"), card(3, "Anna C")).commands("write", "anna hello")
    assert office.state.asking == ChoosingClient("write", "hello", (2, 3))
    office.presses("pick:3")
    assert [(effect.client_id, effect.text) for effect in office.did(WriteTo)] == [(3, "hello")]


def test_somebody_who_cannot_be_reached_is_written_to_with_a_warning() -> None:
    office = Office(card(1, "Ada", reachable=False)).commands("write", "Ada hello")
    assert office.heard(sm.WordsSent).reachable is False


def test_a_thread_shows_both_sides() -> None:
    words = (WordFact(NOW, True, "my knee"), WordFact(NOW, False, "rest it"))
    shown = Office(card(1, "Ada", thread=words)).presses("thread:1").heard(sm.ThreadSaid)
    assert [w[1:] for w in shown.words] == [(True, "my knee"), (False, "rest it")]


def test_a_note_replaces_the_one_before() -> None:
    office = Office(card(1, "Ada", note="old")).presses("note:1")
    assert office.heard(sm.AskNote).note == "old"
    assert office.says("left knee, mornings").did(SaveNote) == [SaveNote(1, "left knee, mornings")]


# --- everything is answered -------------------------------------------------------------------------------------


def test_a_client_of_somebody_else_is_nobody_and_no_more_is_said() -> None:
    office = Office(ADA)
    for data in ("card:2", "write:2", "thread:2", "note:2", "plan:2", "saw:2", "clear:2:9", "hand:2", "end:2"):
        assert office.presses(data).kinds == ["NotYours"], data
        assert office.effects[0].choices == ()


def test_words_for_a_client_who_went_elsewhere_meanwhile_are_not_sent() -> None:
    office = Office(ADA, BEN).presses("write:2")
    del office.clients[2]
    office.says("hello Ben")
    assert office.kinds == ["NotYours"] and office.did(WriteTo) == []


def test_an_organiser_has_no_clients() -> None:
    office = Office(ADA, coach_id=None, organiser_id=5)
    for name in ("caseload", "client", "write", "invite", "digest"):
        assert isinstance(office.commands(name, "Ada").said[0], NotForThisRole), name


def test_a_button_nobody_knows_any_more_is_answered_kindly() -> None:
    assert isinstance(Office(ADA).presses("abracadabra:1").said[0], OldButton)


def test_a_voice_message_is_answered() -> None:
    from core.dialogue.kit.events import Attachment

    assert isinstance(Office(ADA).gets(Attachment(NOW, "voice")).said[0], NotText)


def test_broken_buttons_never_raise() -> None:
    office = Office(ADA)
    for verb in STAFF_BUTTONS:
        for value in ("", ":", "1:", "x", "9" * 40, "1:x:y", "-1", "٣", "²", "1:²"):
            assert office.presses(f"{verb}:{value}").said, (verb, value)


def test_the_card_says_when_a_client_last_answered() -> None:
    assert Office(card(1, "Ada", answered=date(2026, 3, 30))).says("Ada").heard(sm.CardSaid).answered == date(
        2026, 3, 30
    )
