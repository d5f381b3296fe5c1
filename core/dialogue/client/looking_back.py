"""Every fourth week: a short look back in words, and one picture. What is praised is keeping to it."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date, timedelta

from core.dialogue.client import messages as m
from core.dialogue.client.pictures import chart_of, showable
from core.dialogue.client.readings import assessed
from core.dialogue.client.report import activity_lines
from core.dialogue.client.results import ResultFacts, verdict_told
from core.dialogue.client.step import ClientStep
from core.dialogue.client.week_messages import LookBack
from core.judging.assess import SMALL_STEPS
from core.judging.change import Change
from core.measures import MEASURES
from core.measures.measure import MeasureKind
from core.reading import Reading

WEEKS = 4
SOONEST = timedelta(weeks=WEEKS) - timedelta(days=3)
FEWEST_KEPT = 2  # ours: of fewer check-ins there is nothing to look back on
SHELVES = {
    Change.BETTER: "better",
    Change.WORSE: "worse",
    Change.CHANGED: "changed",
    Change.WITHIN_ERROR: "same",
}


def is_due(d: ClientStep, day: date) -> bool:
    """Whether the check-in of `day` ends with a look back: four weeks after the last one, or after the start."""
    since = max((at for at in (d.state.looked_back, _start(d)) if at is not None), default=None)
    return since is not None and day - since >= SOONEST and kept(d, day) >= FEWEST_KEPT


def _start(d: ClientStep) -> date | None:
    """The day of the first rating of this programme; of the first at hand if no programme runs."""
    since = d.facts.plan.baseline_since
    taken = [r for r in d.facts.of("energy") if since is None or r.taken_at >= since]
    return d.facts.local(taken[0].taken_at).date() if taken else None


def kept(d: ClientStep, day: date) -> int:
    """How many of the last four check-ins, up to that of `day`, got an answer."""
    days = {d.facts.local(r.taken_at).date() for r in d.facts.history}
    weeks = [day - timedelta(weeks=n) for n in range(WEEKS)]
    return sum(any(start <= x < start + timedelta(weeks=1) for x in days) for start in weeks)


Shelves = dict[str, tuple[str, ...]]  # measures, by what became of them


def look_back(d: ClientStep, day: date) -> Shelves:
    """Say it, and remember that it was said; return what it was about, for the picture."""
    whose = ResultFacts(d.facts.history, d.facts.profile, d.facts.plan, d.facts.zone, d.facts.units)
    found = shelves(d)
    activity = tuple(line for line in activity_lines(whose) if not d.hidden(MEASURES[line.measure]))
    d.say(LookBack(kept(d, day), WEEKS, **found, activity=activity))
    d.become(looked_back=day)
    return found


def picture(d: ClientStep, found: Shelves) -> None:
    """One picture: of what moved, else of what the client has a goal for, else of what was measured, else of energy."""
    seen = showable(d)
    goals = tuple(goal.measure for goal in d.facts.goals)
    moved = (
        *found["better"],
        *found["changed"],
        *found["worse"],
        *goals,
        *found["steps"],
        *found["unsure"],
        *found["same"],
    )
    wanted = sorted(dict.fromkeys((*moved, *seen)), key=_of_how_one_feels)
    key = next((key for key in wanted if key in seen), None)
    if key is not None:
        d.say(m.Picture(chart_of(d, MEASURES[key])))


def _of_how_one_feels(key: str) -> bool:
    """Ratings and recalled activity come after what was measured."""
    return MEASURES[key].kind in (MeasureKind.RATING, MeasureKind.ACTIVITY)


def shelves(d: ClientStep) -> Shelves:
    """Every measure by its verdict as the client hears it; hidden ones and recalled activity left out."""
    found: dict[str, list[str]] = {
        name: [] for name in ("better", "changed", "worse", "steps", "unsure", "same", "early")
    }
    for key, last in _latest(d):
        judged = assessed(d, MEASURES[key], last)
        told = verdict_told(MEASURES[key], judged, d.facts.units, d.facts.zone)
        shelf = "early" if told is None else SHELVES.get(Change(told.kind), "early")
        if shelf == "same" and SMALL_STEPS in judged.context:
            shelf = "steps"
        elif shelf == "same" and told is not None and told.difference is not None:
            shelf = "unsure"
        found[shelf].append(key)
    return {name: tuple(keys) for name, keys in found.items()}


def _latest(d: ClientStep) -> Iterable[tuple[str, Reading]]:
    for key, measure in MEASURES.items():
        taken = d.facts.of(key)
        if taken and not d.hidden(measure) and measure.kind not in (MeasureKind.ONCE, MeasureKind.ACTIVITY):
            yield key, taken[-1]
