"""Progress and goals: charts a client can see, and targets they can set."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from decimal import Decimal

from core.dialogue.client import check_in
from core.dialogue.client import messages as m
from core.dialogue.client.effects import DropGoal, SetGoal
from core.dialogue.client.facts import GoalFact
from core.dialogue.client.pictures import chart_of, showable
from core.dialogue.client.states import Setting
from core.dialogue.client.step import ClientStep
from core.dialogue.kit.effects import Choice
from core.dialogue.kit.step import rows_of
from core.judging.goals import Goal, check
from core.language.intents import when
from core.measures import MEASURES
from core.measures.measure import Measure, Understood

GOALS_FOR = tuple(key for key, measure in MEASURES.items() if measure.goal)


def progress(d: ClientStep, named: str = "", since: str = "") -> None:
    """Show a chart, or ask which. Early weights are never on it. since: an ISO date from which to draw."""
    measures = showable(d)
    if named in measures:
        show(d, MEASURES[named], since)
    elif len(measures) == 1:
        show(d, MEASURES[measures[0]], since)
    elif measures:
        tail = f":{since}" if since else ""
        d.say(m.AskProgress(measures), *rows_of(*(Choice(f"measure:{k}", f"chart:{k}{tail}") for k in measures)))
    else:
        d.say(m.NothingToShow(d.next_slot()))


def show(d: ClientStep, measure: Measure, since: str = "") -> None:
    if measure.key in showable(d):
        d.say(m.Picture(chart_of(d, measure, since)))
    else:
        d.say(m.NothingToShow(d.next_slot()))


# --- goals ------------------------------------------------------------------------------------------------------


def goal(d: ClientStep) -> None:
    """Choose the measure; only those with a reading, so that a goal can be checked."""
    measures = tuple(k for k in GOALS_FOR if d.facts.of(k) and k in d.facts.plan.measures and not d.hidden(MEASURES[k]))
    if not measures:
        d.say(m.NoGoalYet(d.next_slot()))
        return
    back = d.asking.back if isinstance(d.asking, Setting) else d.asking
    d.ask(Setting("goal", "", back))
    rows = rows_of(*(Choice(f"measure:{k}", f"goal:{k}") for k in measures))
    drop = ((Choice("goal_drop", "goaldrop"),),) if d.facts.goals else ()
    d.say(m.AskGoal(measures), *rows, *drop)


def goal_for(d: ClientStep, key: str) -> None:
    if key not in GOALS_FOR or not d.facts.of(key):
        goal(d)
        return
    back = d.asking.back if isinstance(d.asking, Setting) else d.asking
    d.ask(Setting("goal_target", key, back))
    d.say(m.AskGoalTarget(key, d.unit(MEASURES[key])))


def goal_typed(d: ClientStep, asking: Setting, text: str) -> bool:
    """The target, then the date; True if the text was for it."""
    if asking.what == "goal_target":
        measure = MEASURES.get(asking.detail)
        understand = measure.understand if measure is not None else None
        if measure is None or understand is None:
            return False
        understood = understand(text, d.words, d.unit(measure))
        if not isinstance(understood, Understood):
            return False
        if understood.value not in measure.bounds.possible:
            d.say(m.CannotBe(measure.key, d.shown(measure, understood.value)))
            return True
        d.ask(Setting("goal_date", f"{measure.key}={understood.value}", asking.back))
        say_goal_date(d, measure.key)
        return True
    if asking.what == "goal_date":
        by = when(text, d.words, d.today)
        if by is None:
            return False
        goal_set(d, asking, (by - d.today).days)
        return True
    return False


def say_goal_date(d: ClientStep, key: str) -> None:
    d.say(m.AskGoalDate(key), (Choice("four_weeks", "goaldate:28"), Choice("twelve_weeks", "goaldate:84")))


def goal_set(d: ClientStep, asking: Setting, days: int) -> None:
    """Check whether the goal is sensible; report doubts, with a gentler target if there is one."""
    key, _, target = asking.detail.partition("=")
    measure = MEASURES.get(key)
    if measure is None or not target or not d.facts.of(key):
        goal(d)
        return
    aim = Goal(key, Decimal(target), d.today + timedelta(days=min(max(days, 0), 730)))
    sense = check(measure, aim, d.facts.of(key)[-1], d.facts.profile, d.today)
    if not sense.sensible:
        suggest = None if sense.suggest is None else d.shown(measure, sense.suggest)
        d.ask(replace(asking, what="goal_target", detail=key))
        row = (Choice("no_keep", "cancel"),)
        d.say(m.GoalDoubt(key, sense.doubts[0].value, suggest), row)
        return
    d.do(SetGoal(GoalFact(key, str(aim.target), aim.by, d.now)))
    d.say(m.GoalSet(key, d.shown(measure, aim.target), aim.by))
    check_in.close_setting(d)


def goal_drop(d: ClientStep) -> None:
    d.do(*(DropGoal(g.measure) for g in d.facts.goals))
    d.say(m.GoalDropped())
    check_in.close_setting(d)
