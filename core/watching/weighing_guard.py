"""The weighing guard, as one table. Common practice; the figures (28 days, 3, 14) are ours.

Weight swings by about half a kilogram from day to day (core.references.weight_variation), so a weighing between two
weigh-ins says little and can be discouraging. A reading before the next weigh-in is early: it is stored as a side note,
never scored, charted or commented on, and its size and direction are never hinted at.

| in one cycle                                 | step     | what the client hears                    |
|----------------------------------------------|----------|------------------------------------------|
| due, or in its last 3 days, or no weight yet | WELCOME  | the usual answer                         |
| directed weighing: a clinician asked for it  | DIRECTED | the usual answer                         |
| weight is left out of the plan               | LEFT_OUT | it is not stored; how to bring it back   |
| first early attempt                          | FIRST    | thanks, why we wait, the date, an offer  |
| second                                       | SECOND   | warmer: what made today a day to check?  |
| third within 14 days, or two in one day      | OFTEN    | no more numbers: whom to talk to instead |

OFTEN also raises the flag "weighing often", with the count. A correction (an edit, "undo", "I meant 82.4") is not an
attempt if made within 24 hours for the same weigh-in, at most 3 times; later, the new number is a weight like others.
A withdrawn weigh-in still counts as one, and a withdrawn early weight as an attempt. A cycle runs from one official
weight to the next.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime, timedelta, tzinfo
from enum import StrEnum

from core import schedule
from core.reading import How, Reading

OFTEN_WITHIN = timedelta(days=14)
OFTEN_COUNT = 3
OFTEN_IN_ONE_DAY = 2
CORRECTED_WITHIN = timedelta(hours=24)
CORRECTED_AT_MOST = 3  # one weigh-in; whoever corrects it more often is weighing again


class GuardStep(StrEnum):
    WELCOME = "welcome"
    DIRECTED = "directed"
    LEFT_OUT = "left_out"
    FIRST = "first"
    SECOND = "second"
    OFTEN = "often"


EARLY = frozenset({GuardStep.FIRST, GuardStep.SECOND, GuardStep.OFTEN})


@dataclass(frozen=True, slots=True)
class GuardDecision:
    """step: a row of the table.  attempts: early attempts of this cycle, this one included.
    opens: local date from which a weight is official again; None if one is welcome now."""

    step: GuardStep
    attempts: int = 0
    opens: date | None = None


def decide(
    weights: tuple[Reading, ...],
    now: datetime,
    *,
    interval_days: int,
    directed: bool,
    in_plan: bool,
    zone: tzinfo,
    taken_back: datetime | None = None,
    corrected: int = 0,
    early_withdrawn: tuple[datetime, ...] = (),
) -> GuardDecision:
    """Look up the step for an unrequested weight at `now`.

    weights: this client's weights, side notes included, oldest first.  zone: the client's, which decides what "one day"
    is. taken_back: when the last withdrawn weigh-in took place. A new number soon after it is its correction, unless it
    was `corrected` too often.  early_withdrawn: when withdrawn early weights were sent.
    """
    if directed:
        return GuardDecision(GuardStep.DIRECTED)
    if not in_plan:
        return GuardDecision(GuardStep.LEFT_OUT)
    official = [r.taken_at for r in weights if r.counts]
    if taken_back is not None and now - taken_back <= CORRECTED_WITHIN and corrected <= CORRECTED_AT_MOST:
        return GuardDecision(GuardStep.WELCOME)
    last = max((*official, *((taken_back,) if taken_back is not None else ())), default=None)
    if last is None:
        return GuardDecision(GuardStep.WELCOME)
    opens = schedule.opens_on("weight", last, interval_days, zone)
    if now.astimezone(zone).date() >= opens:
        return GuardDecision(GuardStep.WELCOME)
    early = [r.taken_at for r in weights if r.how is How.EARLY and r.taken_at > last]
    attempts = sorted([*early, *(at for at in early_withdrawn if at > last), now])
    recent = sum(now - at <= OFTEN_WITHIN for at in attempts)
    today = sum(at.astimezone(zone).date() == now.astimezone(zone).date() for at in attempts)
    if recent >= OFTEN_COUNT or today >= OFTEN_IN_ONE_DAY:
        step = GuardStep.OFTEN
    else:
        step = GuardStep.FIRST if len(attempts) == 1 else GuardStep.SECOND
    return GuardDecision(step, len(attempts), opens)
