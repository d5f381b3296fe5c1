"""Every way somebody might try to weigh too often without being asked to wait. ADA weighs every four weeks."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from decimal import Decimal

import pytest

from core.care import NumberVisibility
from core.dialogue.client import messages as m
from core.reading import How
from core.watching.flags import Code
from tests.builders import ADA, Chat, checked_in
from tests.core.dialogue.test_early_weights import numbers_in

NEW = Decimal("79.3")  # 174.8 lb, 12 st 6.8
Way = Callable[[Chat], object]


def weighed() -> Chat:
    chat = checked_in(Chat())
    chat.everything.clear()
    return chat


def edits_the_weigh_in(chat: Chat) -> None:
    (official,) = chat.readings("weight")
    written = next(w for w in chat.state.written if w.key == official.key)
    chat.edits("79.3", int(written.ref))


def undoes_until_the_weight_is_gone(chat: Chat) -> None:
    for _ in range(8):
        chat.says("undo")
        if chat.kinds == ["AskUndo"]:
            chat.presses("undo:yes")
        if not chat.readings("weight"):
            return


WAYS: dict[str, Way] = {
    "plain": lambda c: c.says("79.3 kg"),
    "undo and weigh": lambda c: (undoes_until_the_weight_is_gone(c), c.says("79.3 kg")),
    "an edit days later": edits_the_weigh_in,
    "a correction days later": lambda c: c.says("no, the weight was 79.3 kg"),
    "I meant, days later": lambda c: c.says("sorry I meant weight 79.3"),
    "through today": lambda c: c.commands("today").says("79.3 kg"),
    "through record": lambda c: c.commands("record", "weight 79.3"),
    "through record in words": lambda c: c.says("record 79.3 kg"),
    "through the body mass index": lambda c: c.says("my bmi is 29.1, that is 79.3 kg"),
    "through a goal": lambda c: c.commands("goal").presses("goal:weight").says("/cancel").says("79.3 kg"),
    "through the chart": lambda c: (c.says("79.3 kg"), c.presses("chart:weight")),
    "through my data": lambda c: (c.says("79.3 kg"), c.commands("mydata")),
    "another day's words": lambda c: c.says("yesterday I weighed 79.3 kg"),
    "a weekday's words": lambda c: c.says("monday weight 79.3 kg"),
    "a pause and back": lambda c: (c.says("pause"), c.presses("pause:1w"), c.says("resume"), c.says("79.3 kg")),
    "pounds": lambda c: c.says("174.8 lb"),
    "stones": lambda c: c.says("12 st 6.8 lb"),
    "changed units": lambda c: (c.presses("set:units"), c.presses("units:lb"), c.says("weight 174.8")),
    "another language": lambda c: c.says("Gewicht 79,3 kg"),
    "a changed language": lambda c: (c.presses("set:language"), c.presses("lang:de"), c.says("Gewicht 79,3 kg")),
    "which is it?": lambda c: (c.says("79.3"), c.presses("which:weight:79.3")),
    "with another answer": lambda c: c.says("7/10 and 79.3 kg"),
    "numbers shown again": lambda c: (c.presses("set:numbers"), c.presses("numbers:shown"), c.says("79.3 kg")),
    "in Polish": lambda c: c.says("waga 79,3 kg"),
    "in Arabic": lambda c: c.says("الوزن ٧٩٫٣ كيلو"),
    "a goal's target": lambda c: c.commands("goal").presses("goal:weight").says("79.3 kg").says("/cancel"),
    "a day in the past": lambda c: c.says("on 1 March I weighed 79.3 kg"),
    "tomorrow's date": lambda c: c.says("weight for tomorrow 79.3 kg"),
    "pause until a day, then back": lambda c: (c.says("pause until 20 April"), c.says("resume"), c.says("weight 79.3")),
    "stones after a change of units": lambda c: (c.presses("set:units"), c.presses("units:st"), c.says("12 st 6.8")),
    "undo, my data, weigh": lambda c: (undoes_until_the_weight_is_gone(c), c.commands("mydata"), c.says("79.3 kg")),
    "undo twice and weigh": lambda c: (c.says("undo"), undoes_until_the_weight_is_gone(c), c.says("79.3 kg")),
    "an edit of the energy": lambda c: c.edits("79.3 kg", 1),
    "a waist first": lambda c: c.says("waist 93, weight 79.3"),
    "a quarter and a half": lambda c: c.says("weight 79 and a quarter"),
    "beside a sign that was none": lambda c: (c.says("weight 79.3, my chest hurt last year"), c.presses("alarm:none")),
    "beside a sign that is over": lambda c: (c.says("weight 79.3, my chest hurt last year"), c.presses("alarm:over")),
    "at a check-in, as another answer": lambda c: (c.due(), c.says("79.3"), c.presses("which:weight:79.3")),
    "at a check-in, named": lambda c: (c.due(), c.says("7, weight 79.3")),
    "as a range and a choice": lambda c: (c.says("weight between 79 and 79.6"), c.says("79.3")),
    "a correction of the energy": lambda c: c.says("no, the energy was 7, weight 79.3"),
    "a second tap on which is it": lambda c: (
        c.says("79.3"),
        c.presses("which:weight:79.3"),
        c.presses("which:weight:79.3"),
    ),
    "in small steps of words": lambda c: (c.says("weight"), c.says("79.3 kg")),
    "while a word to the coach is open": lambda c: (
        c.commands("coach"),
        c.says("/record weight 79.3"),
        c.says("79.3 kg"),
    ),
    "as a question": lambda c: c.says("is 79.3 kg all right?"),
    "as somebody else's": lambda c: c.says("my sister weighs 79.3 kg"),
    "stop and today": lambda c: (c.says("stop"), c.commands("today"), c.says("weight 79.3")),
}


@pytest.mark.parametrize("days", [2, 9, 16])
@pytest.mark.parametrize("way", WAYS.values(), ids=WAYS.keys())
def test_no_way_makes_a_weight_official_or_says_it_back(way: Way, days: int) -> None:
    chat = weighed()
    official = [r.key for r in chat.readings("weight")]
    way(chat.later(days=days))
    new = [r for r in chat.readings("weight") if r.key not in official]
    assert [r for r in new if r.how is not How.EARLY] == []
    assert [r.value for r in chat.readings("weight") if r.key in official] in ([], [Decimal("82.4")])
    assert not {NEW, Decimal("174.8")} & numbers_in([x for x in chat.everything if not isinstance(x, m.AskUndo)])


@pytest.mark.parametrize("again", ["undo", "edit", "correction", "plain"])
def test_the_third_of_any_kind_is_often(again: str) -> None:
    chat = weighed().later(days=2).says("79.3 kg").later(days=2).says("79.4 kg").says("no reason").later(days=2)
    if again == "undo":
        chat.says("undo").presses("undo:no").says("79.5 kg")
    elif again == "edit":
        edits_early(chat)
    else:
        chat.says("no, the weight is 79.5 kg" if again == "correction" else "79.5 kg")
    assert Code.WEIGHING_OFTEN in [x.flag.code for x in chat.raised]


def edits_early(chat: Chat) -> None:
    last = chat.readings("weight")[-1]
    chat.edits("79.5 kg", int(next(w for w in chat.state.written if w.key == last.key).ref))


def test_a_slip_is_still_corrected_the_same_day_by_a_word_an_edit_or_an_undo() -> None:
    chat = weighed().later(hours=2).says("no, the weight was 81.9")
    assert [r.value for r in chat.readings("weight")] == [Decimal("81.9")]
    edits_the_weigh_in(chat)
    assert [(r.value, r.how) for r in chat.readings("weight")] == [(NEW, How.ASKED)]
    undoes_until_the_weight_is_gone(chat)
    chat.says("weight 82.0")
    assert [(r.value, r.counts) for r in chat.readings("weight")] == [(Decimal("82.0"), True)]


def test_one_weigh_in_is_corrected_three_times_at_most_by_an_undo() -> None:
    chat = weighed()
    for value in ("82.0", "81.8", "81.9"):
        chat.later(hours=2)
        undoes_until_the_weight_is_gone(chat)
        assert chat.says(f"weight {value}").readings("weight")[-1].counts
    chat.later(hours=2)
    undoes_until_the_weight_is_gone(chat)
    assert not chat.says("weight 81.2").readings("weight")[-1].counts


def test_one_weigh_in_is_corrected_three_times_at_most_in_words() -> None:
    chat = weighed()
    for value in ("82.0", "81.8", "81.9"):
        chat.later(hours=1).says(f"no, the weight was {value}")
    chat.later(hours=1).says("no, the weight was 81.2")
    official = [r.value for r in chat.readings("weight") if r.counts]
    assert official == [Decimal("81.9")]


def test_an_early_weight_that_was_withdrawn_still_counts_as_an_attempt() -> None:
    chat = weighed().later(days=2).says("79.3 kg").says("undo").later(days=2).says("79.4 kg").says("undo")
    assert not [r for r in chat.readings("weight") if r.how is How.EARLY]
    chat.later(days=2).says("79.5 kg")
    assert Code.WEIGHING_OFTEN in [x.flag.code for x in chat.raised]


def test_undo_and_weigh_again_day_after_day_is_no_chain() -> None:
    """Otherwise each new weigh-in within a day of the previous one would extend the correction period for ever."""
    chat = weighed().later(hours=20)
    undoes_until_the_weight_is_gone(chat)
    chat.says("weight 82.0").presses("cond:same").later(hours=20)
    undoes_until_the_weight_is_gone(chat)
    chat.says("weight 81.8")
    assert [r.how for r in chat.readings("weight")] == [How.EARLY]


def test_a_late_correction_of_anything_else_names_its_day_and_asks() -> None:
    chat = weighed().later(days=3).says("no, the waist was 93")
    offer = chat.heard(m.AskChangeAnswer)
    assert (offer.measure, offer.day.isoformat()) == ("waist", "2026-03-02")
    before = [r.value for r in chat.readings("waist")]
    assert [r.value for r in chat.presses("ok:no").readings("waist")] == before
    assert chat.says("no, the waist was 93").presses("ok:yes").readings("waist")[0].value == 93


def test_a_correction_goes_to_what_it_names() -> None:
    chat = weighed().says("sorry the waist was 93.5")
    assert [r.value for r in chat.readings("waist")] == [Decimal("93.5")]
    assert [r.value for r in chat.readings("weight")] == [Decimal("82.4")]


def test_undo_says_what_it_took_back_one_at_a_time_and_asks_before_another_day() -> None:
    chat = weighed()
    kept = len(chat.facts.history)
    chat.says("undo")
    assert chat.heard(m.Undone).amount is not None and len(chat.facts.history) == kept - 1
    chat.later(days=1).says("undo")
    assert chat.kinds == ["AskUndo"] and len(chat.facts.history) == kept - 1
    assert len(chat.says("no").facts.history) == kept - 1
    assert len(chat.says("undo").says("yes").facts.history) == kept - 2


def test_a_hidden_number_is_not_said_by_an_undo() -> None:
    chat = checked_in(Chat(replace(ADA, plan=replace(ADA.plan, numbers=NumberVisibility.COACH_ONLY))))
    chat.everything.clear()
    undoes_until_the_weight_is_gone(chat)
    assert not {Decimal("82.4"), Decimal(94)} & numbers_in(chat.everything)


@pytest.mark.parametrize("said", ["waist 91 cm", "hip 101 cm"])
def test_an_early_girth_is_a_side_note_not_scored_and_not_charted(said: str) -> None:
    key, value, _ = said.split()
    chat = checked_in(checked_in(Chat()).later(days=28)).later(days=3).says(said)
    assert chat.kinds == ["KeptBeforeTime"]
    assert [r.how for r in chat.readings(key)][-1] is How.EARLY
    assert chat.presses(f"chart:{key}").kinds == ["Picture"] and Decimal(value) not in numbers_in(chat.said)
    assert not [x for x in chat.raised if x.flag.measure == key]
