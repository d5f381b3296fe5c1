"""Taking words back, and undoing what a coach did last."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from typing import Any

import pytest

from core.care import NumberVisibility
from core.dialogue.kit.events import Text
from core.dialogue.staff import effects as fx
from core.dialogue.staff import talk_messages as tm
from core.watching.flags import Code, flag
from tests.core.dialogue.office import NOW, Office, card, kept

FLAGS = (kept(3, flag(Code.WANTS_COACH, NOW)), kept(4, flag(Code.MISSED_CHECK_INS, NOW)))
ADA = card(1, "Ada", flags=FLAGS)


def later(office: Office, **delta: float) -> Office:
    office.now += timedelta(**delta)
    return office


def written() -> Office:
    return Office(ADA).gets(Text(NOW, "write Ada well done", ref="m7"))


def button_of(office: Office) -> str:
    return next(data for data in office.choices if data.startswith("unsend:"))


@pytest.mark.parametrize(("seconds", "back"), [(0, True), (60, True), (62, False), (86400, False)])
@pytest.mark.parametrize("way", ["button", "undo"])
def test_words_can_be_taken_back_for_a_minute(way: str, seconds: int, back: bool) -> None:
    office = written()
    button = button_of(office)
    (sent,) = office.did(fx.WriteTo)
    later(office, seconds=seconds)
    (office.presses(button) if way == "button" else office.says("undo"))
    taken = [(effect.client_id, effect.mark) for effect in office.did(fx.TakeBack)]
    assert taken == ([(1, sent.mark)] if back else [])
    assert bool(office.kinds) is not back  # what became of them is said when it is known


def test_two_messages_of_one_second_are_told_apart() -> None:
    office = Office(ADA)
    marks = [office.gets(Text(NOW, "write Ada hi", ref=ref)).did(fx.WriteTo)[0].mark for ref in ("m7", "m8")]
    assert len(set(marks)) == 2


@pytest.mark.parametrize("mark", ["8.m7.69ca1c30", "nonsense", "", "7.m7.zz"])
def test_a_mark_that_is_not_ones_own_takes_nothing_back(mark: str) -> None:
    office = Office(ADA).presses(f"unsend:1:{mark}")
    assert office.did(fx.TakeBack) == [] and office.kinds == ["TooLateToTakeBack"]


UNDONE: list[tuple[list[str], Any]] = [
    (["clear:1:4", "done:1:rang"], fx.ReopenFlags(1, (3, 4))),
    (["saw:1:wants_coach"], fx.MarkUnseen((3,))),
    (["numbers:1:coach_only"], fx.ChangePlan(1, "numbers", plan=ADA.plan)),
    (["interval:1:42"], fx.ChangePlan(1, "interval", plan=ADA.plan)),
    (["night:off"], fx.SetNight(True)),
    (["wait:60"], fx.SetWait(30)),
    (["nodigest"], fx.SetDigest(Office().facts.slot)),
    (["deputy:8:always"], fx.SetDeputy(None)),
]


@pytest.mark.parametrize(("acts", "back"), UNDONE, ids=lambda value: value[-1] if isinstance(value, list) else "")
def test_the_last_thing_is_undone_once(acts: list[str], back: Any) -> None:
    office = Office(ADA)
    for act in acts:
        office.presses(act)
    (did,) = [effect for effect in office.effects if isinstance(effect, fx.StaffEffect)]
    if isinstance(did, fx.ChangePlan):
        office.clients[1] = replace(ADA, plan=did.plan)
    assert office.presses("card:1").says("undo").did(type(back)) == [back]  # looking is no action
    assert office.heard(tm.ActionUndone)
    assert office.says("undo").kinds == ["NothingToUndo"]


@pytest.mark.parametrize(
    "acts",
    [
        pytest.param([], id="nothing-was-done"),
        pytest.param(["note:1", "type:rang them"], id="a-note"),
        pytest.param(["end:1", "sure:end:1"], id="the-end-of-care"),
        pytest.param(["baseline:1", "sure:baseline:1"], id="a-new-baseline"),
        pytest.param(["saw:1:wants_coach", "note:1", "type:rang them"], id="something-else-since"),
    ],
)
def test_what_cannot_be_undone_is_not(acts: list[str]) -> None:
    office = Office(ADA)
    for act in acts:
        office = office.says(act.removeprefix("type:")) if act.startswith("type:") else office.presses(act)
    assert office.says("undo").kinds == ["NothingToUndo"]
    assert not [effect for effect in office.effects if isinstance(effect, fx.StaffEffect)]


def test_a_plan_that_has_changed_since_stays_as_it_is() -> None:
    office = Office(ADA).presses("numbers:1:coach_only")
    office.clients[1] = replace(ADA, plan=replace(ADA.plan, measures=("hip",), numbers=NumberVisibility.COACH_ONLY))
    assert office.says("undo").kinds == ["NothingToUndo"]


def test_what_is_a_clients_own_is_not_kept_in_the_coachs_chat_and_is_as_it_was_after_an_undo() -> None:
    plan = replace(ADA.plan, own_question="How are the stairs?", directed_weighing=True, directed_by="Dr Marsh")
    office = Office(replace(ADA, plan=plan)).presses("numbers:1:coach_only")
    assert "stairs" not in str(office.state) and "Marsh" not in str(office.state)
    office.clients[1] = replace(ADA, plan=replace(plan, numbers=NumberVisibility.COACH_ONLY))
    assert office.says("undo").did(fx.ChangePlan) == [fx.ChangePlan(1, "numbers", plan=plan)]


def test_a_client_who_is_not_theirs_any_more_is_left_alone() -> None:
    office = Office(ADA).presses("numbers:1:coach_only")
    office.clients.clear()
    assert office.says("undo").kinds == ["NothingToUndo"]


def test_a_day_later_nothing_is_undone() -> None:
    assert later(Office(ADA).presses("night:off"), days=1).says("undo").kinds == ["NothingToUndo"]
