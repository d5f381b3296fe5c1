"""A button belongs to its question: a second tap, or one under an old message, changes nothing."""

from __future__ import annotations

from collections import deque
from collections.abc import Iterator
from dataclasses import replace
from datetime import date
from functools import cache

import pytest

from bot.rendering.phrases.labels import labeller
from core.care import Plan, Status
from core.dialogue.client import messages as m
from core.dialogue.client.about_me import FACTS
from core.dialogue.client.answers import OLD_ANSWER
from core.dialogue.client.buttons import BUTTONS, Lasts
from core.dialogue.client.facts import InvitationFact, Membership
from core.dialogue.client.states import Awaiting, Confirming, Enrolling, Gate, State
from core.dialogue.kit.effects import Say, drawn, undrawn
from core.dialogue.kit.messages import OldButton
from core.watching.cohort import Counted
from tests.builders import ADA, Chat, checked_in

PLAN = Plan(
    measures=(
        "weight", "waist", "resting_heart_rate", "blood_pressure", "chair_stand_30s", "walk_mile", "activity_minutes",
    )
)  # fmt: skip
SPRING = Membership(5, "Spring", date(2026, 3, 2), date(2026, 6, 1), Counted.MINUTES.value)
EVERYTHING = replace(ADA, plan=PLAN, cohorts=(SPRING,), label=labeller("en"))
USUAL = {
    "energy": "7", "weight": "82.4", "waist": "94", "resting_heart_rate": "64", "chair_stand_30s": "14",
    "walk_mile": "15:30, pulse 120", "activity_minutes": "90",
}  # fmt: skip
ENROLLED = {"cautions": "done", "numbers": "shown"}
DEEPEST = 4  # presses from an open message


def copied(chat: Chat) -> Chat:
    found = Chat(chat.facts, chat.now, chat.state)
    found.keys, found.refs = dict(chat.keys), chat.refs
    return found


def openings() -> Iterator[Chat]:
    """Conversations at every question that a check-in asks, and at every message with buttons beside it."""
    yield Chat(replace(EVERYTHING, consented=False)).commands("start")
    yield Chat(replace(EVERYTHING, consented=False)).commands("start").presses("consent:yes")
    new = Chat(replace(EVERYTHING, consented=False)).commands("start").presses("consent:yes")
    for _ in range(20):
        asking = new.state.asking
        if not isinstance(asking, Enrolling):
            break
        new.presses(f"e:{asking.question}:{ENROLLED.get(asking.question, 'skip')}")
    yield new
    for name in ("today", "progress", "settings", "help", "pause", "goal", "coach", "forget", "cohort"):
        yield Chat(EVERYTHING).commands(name)
        yield checked_in(Chat(replace(EVERYTHING, plan=ADA.plan))).commands(name)
    for text in (
        "stop",
        "later",
        "my sister had chest pain",
        "188/125",
        "82",
        "leave this programme for good",
        "can Rowan ring me",
        "they put me on bisoprolol",
        "I think I might be pregnant",
    ):
        yield Chat(EVERYTHING).says(text)
        yield Chat(EVERYTHING).due().says(text)
    yield Chat(EVERYTHING).says("can Rowan ring me")
    for fact in FACTS:
        yield Chat(EVERYTHING).says("they put me on bisoprolol").presses(f"set:{fact}")
    yield Chat(EVERYTHING).says("I have chest pain now").wakes_up("how_now")
    early = checked_in(Chat(ADA)).later(days=2).says("81 kg")
    yield copied_with_effects(early)
    yield early.later(days=1).says("81 kg")
    yield checked_in(Chat(ADA)).later(days=1).says("undo")
    fortnight = checked_in(Chat(ADA)).later(days=7).due().says("5")
    yield fortnight.later(days=3).says("no, the energy was 4")
    twice = checked_in(checked_in(Chat(ADA)).later(days=35))
    yield copied_with_effects(twice)
    yield copied(twice).commands("progress")
    yield copied(twice).commands("goal").presses("goal:waist").says("90 cm")
    for key in ("resting_heart_rate", "walk_mile"):
        timed = Chat(replace(EVERYTHING, plan=Plan(measures=(key,)))).due().says("7")
        yield copied_with_effects(timed)
        yield timed.presses("gate:well").presses("gate:none")
    for invited in (InvitationFact("client", "Olga", "Ada"), InvitationFact("client", ADA.coach_name, "Ada")):
        status = Status.ACTIVE if invited.by_name == "Olga" else Status.LEFT
        yield Chat(replace(EVERYTHING, invitation=invited, status=status)).commands("start", "token")
    retest = checked_in(Chat(ADA)).later(days=35).due()
    while isinstance(retest.state.asking, Awaiting):
        retest.says(USUAL[retest.state.asking.measure])
    yield retest
    low = Chat(EVERYTHING).says("85/50")
    yield low
    chat = Chat(EVERYTHING).due()
    for _ in range(20):
        yield copied_with_effects(chat)
        match chat.state.asking:
            case Awaiting(measure=key):
                chat.says(USUAL[key])
            case Gate(signs=signs):
                chat.presses("gate:none" if signs else "gate:well")
            case None:
                break
            case _:
                chat.presses("cond:same")


def copied_with_effects(chat: Chat) -> Chat:
    found = copied(chat)
    found.effects = chat.effects
    return found


@cache
def walked() -> tuple[tuple[Chat, tuple[str, ...]], ...]:
    """Every conversation reachable by a few presses, with its current buttons."""
    found: dict[tuple[object, ...], tuple[Chat, tuple[str, ...]]] = {}
    queue = deque((chat, 0) for chat in openings())
    while queue:
        chat, depth = queue.popleft()
        buttons = tuple(dict.fromkeys(chat.callbacks))
        seen = (
            replace(chat.state, question=0, written=(), sources=(), alarm=None, offered=""),
            tuple(undrawn(b)[0] for b in buttons),
            chat.facts.status,
        )
        if seen in found:
            continue
        found[seen] = (chat, buttons)
        if depth < DEEPEST:
            few = buttons if len(buttons) < 12 else buttons[:2] + buttons[-2:]
            queue.extend((copied(chat).later(seconds=20).presses_old(button), depth + 1) for button in few)
    return tuple(found.values())


def each_question() -> Iterator[Chat]:
    """One conversation of the walk for each state."""
    seen = set()
    for chat, _ in walked():
        kind = (repr(replace(chat.state, written=(), question=0, sources=(), alarm=None)), chat.facts.status)
        if kind not in seen:
            seen.add(kind)
            yield chat


def lasting(callback: str) -> bool:
    button = BUTTONS.get(undrawn(callback)[0].partition(":")[0])
    return button is not None and button.lasts is Lasts.ALWAYS


def bare(state: State) -> State:
    return replace(state, question=0)


def changed_nothing(before: State, chat: Chat) -> bool:
    """Only messages were sent, and the same question is open; or a change of an old answer is offered."""
    if any(not isinstance(effect, Say) for effect in chat.effects):
        return False
    asking = chat.state.asking
    if isinstance(asking, Confirming) and asking.kind == OLD_ANSWER:
        return True
    return bare(chat.state) == bare(before)


def test_the_walk_meets_every_button_and_every_question() -> None:
    verbs = {undrawn(b)[0].partition(":")[0] for _, buttons in walked() for b in buttons}
    asked = {type(chat.state.asking).__name__ for chat, _ in walked()}
    assert set(BUTTONS) - verbs == {"goaldrop", "round", "zone"}
    assert {
        "Awaiting",
        "Confirming",
        "AskingConditions",
        "ChoosingDay",
        "Gate",
        "AlarmAsked",
        "Setting",
        "Enrolling",
    } <= asked
    assert len(walked()) > 200


def test_a_second_tap_on_any_button_anywhere_changes_nothing() -> None:
    wrong = []
    for chat, buttons in walked():
        for button in buttons:
            if lasting(button):
                continue
            again = copied(chat).later(seconds=1).presses_old(button)
            before = again.state
            if before.question == chat.state.question:
                continue  # a picture of how to measure, or a choice among many: the question is still open
            again.later(seconds=1).presses_old(button)
            if not again.said or not changed_nothing(before, again):
                wrong.append((undrawn(button)[0], before.asking))
    assert not wrong


def test_a_button_of_any_other_question_changes_nothing_whatever_is_open() -> None:
    pairs = {(undrawn(b)[0], b) for _, buttons in walked() for b in buttons if not lasting(b)}
    by_verb: dict[str, str] = {}
    for data, _ in sorted(pairs):
        by_verb.setdefault(data.partition(":")[0], data)
    wrong = []
    for chat in each_question():
        for data in by_verb.values():
            for old in (data, drawn(data, 17), drawn(data, max(chat.state.question - 1, 1))):
                tried = copied(chat).later(seconds=5).presses_old(old)
                if not tried.said or not changed_nothing(chat.state, tried):
                    wrong.append((old, chat.state.asking))
    assert not wrong


GIBBERISH = ("well well", "hmm 12345 kg and so on")


def test_nothing_typed_is_answered_by_could_not_find_a_number_twice_in_a_row() -> None:
    wrong = []
    for chat in each_question():
        for text in GIBBERISH:
            twice = copied(chat).later(seconds=5).says(text)
            if "AskAgain" not in twice.kinds:
                continue
            twice.later(seconds=5).says(text)
            if "AskAgain" in twice.kinds or not twice.choices:
                wrong.append((text, chat.state.asking, twice.kinds))
    assert not wrong, wrong[:10]


def test_an_old_button_says_what_stands_and_puts_the_open_question() -> None:
    chat = Chat().due()
    seven = next(b for b in chat.callbacks if b.startswith("n:7"))
    chat.presses_old(seven)
    assert [r.value for r in chat.readings("energy")] == [7]
    chat.presses_old(seven)
    assert chat.heard(m.AnswerStands).amount.value == 7
    assert chat.heard(m.Ask).measure == "resting_heart_rate"


def test_another_button_of_an_answered_question_offers_to_change_that_day_s_answer() -> None:
    chat = Chat().due()
    drawn_then = {undrawn(b)[0]: b for b in chat.callbacks}
    chat.presses_old(drawn_then["n:7"]).later(days=1).presses_old(drawn_then["n:4"])
    offer = chat.heard(m.AskChangeAnswer)
    assert (offer.day, offer.old.value, offer.new.value) == (date(2026, 3, 2), 7, 4)
    assert [r.value for r in chat.readings("energy")] == [7]
    open_then = chat.state
    chat.presses("ok:yes")
    assert [r.value for r in chat.readings("energy")] == [4]
    assert chat.heard(m.Ask).measure == "resting_heart_rate"
    refused = Chat(chat.facts, chat.now, open_then).presses("ok:no")
    assert refused.heard(m.Ask).measure == "resting_heart_rate" and not refused.readings("energy")[1:]


def test_last_week_s_keyboard_does_not_answer_this_week() -> None:
    chat = Chat().due()
    old = next(b for b in chat.callbacks if b.startswith("n:3"))
    chat.later(days=7).due()
    assert chat.state.asking == Awaiting("energy")
    chat.presses_old(old)
    assert chat.readings("energy") == [] and chat.heard(OldButton)
    assert chat.heard(m.Ask).measure == "energy"


@pytest.mark.parametrize("lost", [State(), State(asking=Awaiting("energy"))])
def test_a_question_never_has_the_number_of_one_before_even_when_the_state_was_lost(lost: State) -> None:
    chat = Chat().due()
    before = chat.callbacks
    chat.state = lost
    chat.later(days=7).due()
    assert not set(before) & set(chat.callbacks)


def test_a_number_typed_while_nothing_is_asked_is_kept_once_however_often_its_button_is_tapped() -> None:
    chat = Chat().says("94")
    which = next(b for b in chat.callbacks if b.startswith("which:waist"))
    chat.presses_old(which)
    assert len(chat.readings("waist")) == 1
    chat.later(minutes=1).presses_old(which)
    assert len(chat.readings("waist")) == 1


def test_the_number_of_a_question_comes_back_as_it_was_drawn() -> None:
    for question in (0, 1, 35, 36, 1_772_000_000, 36**8 - 1):
        assert undrawn(drawn("which:waist:~9", question)) == ("which:waist:~9", question)
    assert undrawn("n:7") == ("n:7", None) and undrawn("n:7~Q!") == ("n:7~Q!", None)


def test_every_button_of_the_walk_fits_the_platform() -> None:
    assert all(len(b.encode()) <= 64 for _, buttons in walked() for b in buttons)
