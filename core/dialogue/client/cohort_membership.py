"""A client's cohorts: joining by a link, listing them, leaving one."""

from __future__ import annotations

from dataclasses import replace

from core.dialogue.client import messages as m
from core.dialogue.client.effects import ChangeClient, EnterCohort, LeaveCohort
from core.dialogue.client.facts import Membership
from core.dialogue.client.states import Setting
from core.dialogue.client.step import ClientStep
from core.dialogue.group import messages as cm
from core.dialogue.kit.effects import Choice, Join
from core.dialogue.kit.messages import KeptAsItWas
from core.dialogue.kit.step import rows_of
from core.watching.cohort import MEASURE_OF, Counted

LEAVE = "leave_cohort"  # the setting that waits for a yes


def join_by_link(d: ClientStep) -> None:
    """A client opened the link of a cohort. They stay with their coach, who is asked; leaving is just as easy."""
    invitation = d.facts.invitation
    assert invitation is not None and invitation.cohort is not None
    cohort = invitation.cohort
    if any(c.cohort_id == cohort.cohort_id for c in d.facts.cohorts):
        d.say(cm.AlreadyInCohort(cohort.name), _mine())
        return
    d.do(Join())
    welcome(d, cohort)


def welcome(d: ClientStep, cohort: Membership) -> None:
    """Confirm that they have joined; the pooled measure is asked from now on, if it was not before."""
    d.do(EnterCohort(cohort.cohort_id))
    d.say(m.JoinedCohort(cohort.name, cohort.first), _mine())
    measure = MEASURE_OF.get(Counted(cohort.counts))
    plan = d.facts.plan
    if measure is not None and measure not in plan.measures:
        plan = replace(plan, measures=(*plan.measures, measure))
        d.facts = replace(d.facts, plan=plan)
        d.do(ChangeClient("plan", plan))
        d.say(cm.CohortAsks(measure))


def _mine() -> tuple[Choice, ...]:
    return (Choice("my_cohorts", "cohorts"),)


def list_cohorts(d: ClientStep) -> None:
    """/cohort: the list, each with a button to leave."""
    d.say(
        cm.MyCohorts(tuple((c.name, c.first, c.last) for c in d.facts.cohorts)),
        *rows_of(*(Choice("leave_cohort", f"coleave:{c.cohort_id}", c.name) for c in d.facts.cohorts), width=1),
    )


def leave(d: ClientStep, value: str) -> None:
    """The button under the list: ask for confirmation."""
    found = _of(d, value)
    if found is None:
        list_cohorts(d)
        return
    d.ask(Setting(LEAVE, value, d.asking.back if isinstance(d.asking, Setting) else d.asking))
    d.say(cm.LeaveCohortSure(found.name), (Choice("leave_yes", "cogone:yes"), Choice("no_keep", "cogone:no")))


def leave_answered(d: ClientStep, asking: Setting, yes: bool) -> None:
    """Their answer."""
    found = _of(d, asking.detail)
    if not yes or found is None:
        d.say(KeptAsItWas())
        return
    d.do(LeaveCohort(found.cohort_id))
    d.facts = replace(d.facts, cohorts=tuple(c for c in d.facts.cohorts if c is not found))
    d.say(cm.LeftCohort(found.name))


def _of(d: ClientStep, value: str) -> Membership | None:
    return next((c for c in d.facts.cohorts if str(c.cohort_id) == value), None)
