"""A choice of a coach or organiser belongs to its question: a second tap, or an old one, changes nothing."""

from __future__ import annotations

from collections import deque
from collections.abc import Iterator
from copy import copy
from dataclasses import replace
from datetime import timedelta
from functools import cache

import pytest

from core.care import Plan
from core.dialogue.commands import STAFF, STAFF_BUTTONS
from core.dialogue.kit.effects import Say, drawn, undrawn
from core.dialogue.kit.events import Press
from core.dialogue.kit.messages import OldButton
from core.dialogue.staff import effects as fx
from core.dialogue.staff import messages as sm
from core.dialogue.staff.cohort_effects import MakeGroupLink, MakeJoinLink
from core.dialogue.staff.facts import TemplateFact
from core.dialogue.staff.states import StaffState
from core.watching.flags import Code, flag
from tests.core.dialogue.office import NOW, Office, card, kept
from tests.core.dialogue.test_organiser import TERMS, spring

DEEPEST = 3  # presses from an open message
BY_IDENTITY = (
    fx.Export,
    fx.MarkSeen,
    fx.TakeBack,
    fx.ToldInDigest,
    fx.Revoke,
    MakeGroupLink,
)  # they name all they change


def opened(office: Office) -> Office:
    office.templates = (TemplateFact("Hearts", Plan(measures=("weight",))),)
    office.cohorts = (spring(),)
    return office


def rowan() -> Office:
    ada = card(1, "Ada", flags=(kept(5, flag(Code.WEIGHING_OFTEN, NOW, "weight")),))
    return opened(Office(ada, card(2, "Ben"), organiser_id=4))


def olga() -> Office:
    return opened(Office(coach_id=None, organiser_id=4, slot=None, name="Olga"))


def openings() -> Iterator[Office]:
    for row in STAFF:
        for person in (rowan, olga):
            yield person().commands(row.name)
    yield rowan().says("Ada")
    yield rowan().due()
    yield rowan().commands("cohort", "Autumn")
    yield rowan().commands("write", "Ada well done")
    yield rowan().says("note for Ada: prefers mornings")
    yield opened(Office()).commands("forget")
    yield rowan().presses("slot:1").presses("slotday:1:2")
    for end in ("coend:3", "coout:3:1"):
        yield olga().presses(end)
    tied = rowan()
    tied.cohorts = (spring(grouped=True),)
    yield tied.presses("cohort:3")


def callbacks(office: Office) -> list[str]:
    says = [effect for effect in office.effects if isinstance(effect, Say)]
    return list(dict.fromkeys(c.callback for say in says for row in say.choices for c in row))


def pressed(office: Office, callback: str) -> Office:
    """The office after a press some seconds later; the one given stays as it was."""
    after = copy(office)
    after.now = office.now + timedelta(seconds=5)
    return after.gets(Press(after.now, callback))


@cache
def walked() -> tuple[tuple[Office, tuple[str, ...]], ...]:
    found: dict[tuple[object, ...], tuple[Office, tuple[str, ...]]] = {}
    queue = deque((office, 0) for office in openings())
    while queue:
        office, depth = queue.popleft()
        buttons = tuple(callbacks(office))
        seen = (bare(office.state), tuple(undrawn(b)[0] for b in buttons), office.facts.coach_id)
        if seen in found:
            continue
        found[seen] = (office, buttons)
        if depth < DEEPEST:
            few = buttons if len(buttons) < 12 else buttons[:3] + buttons[-3:]
            queue.extend((pressed(office, button), depth + 1) for button in few)
    return tuple(found.values())


def bare(state: StaffState) -> StaffState:
    return replace(state, question=0, digest_day=None, digest_flags=())


def is_choice(callback: str) -> bool:
    verb, _, value = undrawn(callback)[0].partition(":")
    return STAFF_BUTTONS[verb].is_choice(value)


def changed(before: StaffState, office: Office) -> bool:
    return bare(office.state) != bare(before) or any(not isinstance(x, Say) for x in office.effects)


def test_the_walk_meets_the_buttons_of_coaches_and_organisers() -> None:
    verbs = {undrawn(b)[0].partition(":")[0] for _, buttons in walked() for b in buttons}
    rare = {
        "revoke",
        "zone",
        "saw",
        "sheet",
        "people",
        "past",
        "cocoach",
        "coreport",
        "comost",
        "coyes",
        "cono",
        "sendto",
    }
    assert set(STAFF_BUTTONS) - verbs <= rare
    assert len(walked()) > 100


def test_a_second_tap_on_any_choice_changes_nothing_and_says_so() -> None:
    wrong = []
    for office, buttons in walked():
        for button in filter(is_choice, buttons):
            once = pressed(office, button)
            twice = pressed(once, button)
            if changed(once.state, twice) or not any(isinstance(x, OldButton) for x in twice.said):
                wrong.append((undrawn(button)[0], office.state.asking))
    assert not wrong


def test_an_old_choice_changes_nothing_whatever_is_open() -> None:
    choices = {undrawn(b)[0] for _, buttons in walked() for b in buttons if is_choice(b)}
    wrong = []
    for office, _ in walked():
        for data in choices:
            for old in (data, drawn(data, 17), drawn(data, office.state.question + 1)):
                if changed(office.state, pressed(office, old)):
                    wrong.append((old, office.state.asking))
    assert choices and not wrong


PUT_BY = {
    "Inviting": "AskInvitee", "WritingTo": "AskWords", "NotingOn": "AskNote", "NamingClinician": "AskClinician",
    "ChangingSlot": "AskSlotFor", "DealingWith": "AskDone", "NamingClient": "AskCalled",
    "ChoosingDeputyDays": "AskDeputyDays",
    "NamingTemplate": "AskTemplateName", "InvitingOrganiser": "AskOrganiser",
}  # fmt: skip
PUT_BY_SUBJECT = {
    ("ChoosingClient", "write"): "AskWhom",
    ("ChoosingClient", "card"): "CaseloadList",
    ("Ticking", "measures"): "AskMeasures",
    ("Ticking", "cautions"): "AskCautions",
    ("AskingSure", "baseline"): "AskBaseline",
    ("AskingSure", "end"): "AskEnd",
    ("AskingSure", "hand_over"): "HandOverSure",
    ("AskingSure", "forget"): "StaffForgetSure",
    ("ChangingOwn", "zone"): "AskStaffZone",
    ("ChangingOwn", "language"): "AskLanguage",
    ("ChangingOwn", "digest"): "AskDigestSlot",
    ("SureOfCohort", "end"): "EndCohortSure",
    ("SureOfCohort", "remove"): "RemoveSure",
    ("PlanningCohort", "name"): "AskCohortName",
    ("PlanningCohort", "start"): "AskCohortStart",
    ("PlanningCohort", "weeks"): "AskCohortWeeks",
    ("PlanningCohort", "time"): "AskCohortTime",
    ("PlanningCohort", "counts"): "AskCohortCounts",
    ("PlanningCohort", "coach"): "AskCohortCoach",
}


def put_by(state: StaffState) -> str:
    """The message that puts the open question."""
    asking = state.asking
    if getattr(asking, "weekday", "") and type(asking).__name__ in ("ChangingSlot", "ChangingOwn"):
        return "EnrolQuestion"
    name = type(asking).__name__
    about = getattr(asking, "what", getattr(asking, "question", ""))
    return PUT_BY.get(name) or PUT_BY_SUBJECT[name, about]


def test_after_an_old_choice_the_open_question_is_put_again_and_can_be_answered() -> None:
    choices = {undrawn(b)[0] for _, buttons in walked() for b in buttons if is_choice(b)}
    wrong, met = [], set()
    for office, buttons in walked():
        if office.state.asking is None:
            continue
        question = put_by(office.state)
        met.add(question)
        for data in (*sorted(choices)[::7], "whatever:1"):
            after = pressed(office, drawn(data, 17))
            if after.kinds == ["NotForThisRole"]:
                continue
            if after.kinds[0] != "OldButton" or after.kinds[-1] != question:
                wrong.append((data, office.state.asking, after.kinds))
            if question in office.kinds and not set(buttons) <= set(callbacks(after)):
                wrong.append((data, office.state.asking, "its buttons"))
    assert not wrong, wrong[:20]
    assert len(met) >= 20


def test_what_is_no_choice_changes_only_what_it_names() -> None:
    wrong = []
    for office, buttons in walked():
        for button in buttons:
            if not is_choice(button):
                did = [x for x in pressed(office, button).effects if not isinstance(x, Say)]
                wrong += [(undrawn(button)[0], x) for x in did if not isinstance(x, BY_IDENTITY)]
    assert not wrong


@pytest.mark.parametrize("other", ["plan:1", "card:1"])
def test_an_old_button_of_the_plan_shows_the_plan_as_it_is(other: str) -> None:
    office = rowan().presses("plan:1")
    old = next(b for b in callbacks(office) if b.startswith("loss:1"))
    office = pressed(pressed(office, old), old)
    assert [type(x) for x in office.said] == [OldButton, sm.PlanSaid]
    assert not office.did(fx.ChangePlan)
    assert not pressed(office.presses(other), old).did(fx.ChangePlan)


def test_a_tick_tapped_twice_is_ticked_once() -> None:
    office = rowan().presses("measures:1")
    tick = next(b for b in callbacks(office) if b.startswith("measures:1:hip"))
    office = pressed(pressed(office, tick), tick).presses("measures:1:done")
    (change,) = office.did(fx.ChangePlan)
    assert change.plan is not None and "hip" in change.plan.measures


def test_a_join_link_is_made_once() -> None:
    office = rowan()
    office.cohorts = (replace(spring(), terms=replace(TERMS, starts=NOW.date())),)
    office.presses("cohort:3")
    link = next(b for b in callbacks(office) if b.startswith("colink"))
    once = pressed(office, link)
    assert once.did(MakeJoinLink) and not pressed(once, link).did(MakeJoinLink)
