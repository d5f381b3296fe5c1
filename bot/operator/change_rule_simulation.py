"""False alarms and sensitivity of the rule of `core.judging.change`, on simulated clients.

The clients are invented, and the simulation is never tuned; only the rule is. What is simulated, and the source of each
figure:

* A usual plan: weight, waist, hip, pulse, chair stands and a blood-pressure week every four weeks, energy
  every week.
* Variability differs between people, as published, while the rule knows only the typical figure: weight CV 0.66 % with
  an SD of 0.24 % between people (Cheuvront 2004), day's systolic pressure 8.6 with 3.1 (Kato 2010), pulse 2.0 to 6.7
  bpm evenly (1972), self-measured girths 0.2 to 1.9 cm evenly (Barrios 2016). Chair stands 0.9 (Gill 2022) and energy 1
  point (ours) are the same for everybody, for lack of a figure.
* Girths are taken twice and read to half a centimetre; weight to 0.1 kg. A pulse is simulated as two counts of whole
  beats in a window of 30 s that opens at a random moment. Stands and ratings are whole numbers, ratings stay in 0 to
  10. The pressure's first day reads 5 mmHg high and two readings of a sitting differ by 3 (both ours).
* In one sitting out of ten a condition differs: the variance doubles, and four times in five the client says so (ours).
* Slots are kept to within a day.

A true change is a step of the published important size right after the baseline, in a random direction, so later
readings say nothing about the old level. "Found" is a flag to the coach within three retests (12 weeks).

"At best" is the upper bound for any rule that sees the baseline and three retests once and keeps to the same
false-alarm budget (1 in 50 client-years, shared evenly by the measures): the Neyman-Pearson bound for the typical
error. If it is under 8 in 10, the measure's error does not allow the target, and the coach is informed in other ways: a
change that reaches the important size but is within error is marked (`matters_but_unsure`), a possible change is on the
client's card, and the trend of four or more readings is drawn with its interval.

From the command line: `figures(clients, weeks, seed)` then `table(rows)`; `print_figures` does both with a
progress bar.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass, replace
from datetime import UTC, datetime, timedelta
from decimal import Decimal
from random import Random
from statistics import NormalDist

from rich.console import Console
from rich.progress import Progress
from rich.table import Table

from core.client import Profile
from core.judging.assess import assess
from core.judging.change import Change, Strength, Verdict, standard_error
from core.measures import MEASURES
from core.measures.measure import Measure, MeasureKind
from core.reading import SAME, Conditions, Reading

D = Decimal
START = datetime(2026, 1, 5, 7, 30, tzinfo=UTC)
WEEK = timedelta(weeks=1)
RETEST_WEEKS = 4
RETESTS = 3
ALLOWED_PER_CLIENT_YEAR = 1 / 50
WANTED_FOUND = 0.8
NOBODY = Profile(cautions_known=True)


@dataclass(frozen=True, slots=True)
class SimulatedClient:
    """True values of one measure in one client. level: the true value; swing: SD of one sitting (of one attempt for
    girths).
    """

    level: float
    swing: float


Draw = Callable[[Random], SimulatedClient]
Take = Callable[[Random, SimulatedClient, float, datetime], Iterator[Reading]]


@dataclass(frozen=True, slots=True)
class Simulated:
    """How one measure is simulated. draw: a client's true values. take: the readings of one sitting at a true level."""

    key: str
    draw: Draw
    take: Take
    typical: float  # the level at which sizes are stated
    every: int = RETEST_WEEKS  # weeks


# --- people and instruments
# -------------------------------------------------------------------------------------


def _spread(low: float, high: float) -> Callable[[Random], float]:
    return lambda dice: dice.uniform(low, high)


def _between(centre: float, sd: float, least: float) -> Callable[[Random], float]:
    """A normally distributed figure that differs between people; `least` keeps it possible."""
    return lambda dice: max(least, dice.gauss(centre, sd))


def _person(level: Callable[[Random], float], swing: Callable[[Random], float], relative: bool = False) -> Draw:
    def draw(dice: Random) -> SimulatedClient:
        at = level(dice)
        return SimulatedClient(at, swing(dice) * at if relative else swing(dice))

    return draw


DIFFERS, SAYS_SO = 0.1, 0.8


def _sitting(dice: Random) -> tuple[float, Conditions]:
    """The factor by which this sitting varies more, and what is known of its conditions."""
    if dice.random() >= DIFFERS:
        return 1.0, SAME
    return math.sqrt(2), Conditions(differs=frozenset({"time_of_day"})) if dice.random() < SAYS_SO else SAME


def _read(value: float, step: str) -> Decimal:
    """The value as an instrument with this resolution displays it."""
    return round(D(value) / D(step)) * D(step)


def _once(key: str, step: str) -> Take:
    def take(dice: Random, person: SimulatedClient, level: float, at: datetime) -> Iterator[Reading]:
        wider, conditions = _sitting(dice)
        yield Reading(key, _read(dice.gauss(level, person.swing * wider), step), at, conditions=conditions)

    return take


def _girth(key: str) -> Take:
    def take(dice: Random, person: SimulatedClient, level: float, at: datetime) -> Iterator[Reading]:
        wider, conditions = _sitting(dice)
        tries = [_read(dice.gauss(level, person.swing * wider), "0.5") for _ in range(2)]
        yield Reading(key, sum(tries, D(0)) / 2, at, conditions=conditions, attempts=2)

    return take


def beats_in(dice: Random, rate: float, window: int) -> int:
    """Count whole beats in a window that opens somewhere inside a beat."""
    period = 60 / rate
    first = dice.random() * period
    return math.floor((window - first) / period) + 1 if first < window else 0


def _pulse(dice: Random, person: SimulatedClient, level: float, at: datetime) -> Iterator[Reading]:
    wider, conditions = _sitting(dice)
    today = max(30.0, dice.gauss(level, person.swing * wider))
    counted = sum(beats_in(dice, today, 30) for _ in range(2))
    yield Reading("resting_heart_rate", D(counted), at, conditions=conditions, attempts=2, window=30)


def _rating(dice: Random, person: SimulatedClient, level: float, at: datetime) -> Iterator[Reading]:
    felt = min(10.0, max(0.0, dice.gauss(level, person.swing)))
    yield Reading("energy", _read(felt, "1"), at)


FIRST_DAY_HIGH, BETWEEN_TWO = 5.0, 3.0  # mmHg


def _pressure(dice: Random, person: SimulatedClient, level: float, at: datetime) -> Iterator[Reading]:
    wider, conditions = _sitting(dice)
    for day in range(7):
        today = dice.gauss(level + FIRST_DAY_HIGH * (day == 0), person.swing * wider)
        for hours in (0, 12):
            for minutes in (0, 1):
                systolic = _read(dice.gauss(today, BETWEEN_TWO), "1")
                yield Reading(
                    "blood_pressure",
                    systolic,
                    at + timedelta(days=day - 6, hours=hours, minutes=minutes),
                    second=systolic - 45,
                    conditions=conditions,
                )


PLAN: tuple[Simulated, ...] = (
    Simulated(
        "weight", _person(_between(82, 12, 50), _between(0.0066, 0.0024, 0.001), True), _once("weight", "0.1"), 82
    ),
    Simulated("waist", _person(_between(95, 10, 65), _spread(0.2, 1.9)), _girth("waist"), 95),
    Simulated("hip", _person(_between(105, 8, 80), _spread(0.2, 1.9)), _girth("hip"), 105),
    Simulated("resting_heart_rate", _person(_between(70, 8, 50), _spread(2.0, 6.7)), _pulse, 70),
    Simulated("energy", _person(_between(6, 1, 3), _spread(1, 1)), _rating, 6, every=1),
    Simulated("chair_stand_30s", _person(_between(13, 3, 6), _spread(0.9, 0.9)), _once("chair_stand_30s", "1"), 13),
    Simulated("blood_pressure", _person(_between(132, 12, 105), _between(8.6, 3.1, 2)), _pressure, 132),
)


# --- one client's year
# ------------------------------------------------------------------------------------------


@dataclass(slots=True)
class Tally:
    """Event counts for one client and one measure. A flag that stays open is one flag."""

    possible: int = 0
    confirmed: int = 0
    flags: int = 0
    large: int = 0


def follow(
    how: Simulated, measure: Measure, dice: Random, person: SimulatedClient, weeks: int, change: float = 0.0
) -> Iterator[Verdict]:
    """Simulate one client's slots and yield the verdict of each sitting after the baseline.

    change: added to the true level after the baseline (for a weekly rating: after the first four weeks).
    """
    history: list[Reading] = []
    settled = _settled(how)
    for week in range(0, weeks + 1, how.every):
        level = person.level + (change if week >= settled else 0.0)
        at = START + week * WEEK + timedelta(days=dice.choice((-1, 0, 0, 0, 1)))
        *earlier, last = how.take(dice, person, level, at)
        history.extend(earlier)
        verdict = assess(measure, last, history, NOBODY, baseline_since=None, retest=None, zone=UTC).verdict
        history.append(last)
        if verdict is not None and verdict.kind is not Change.NO_BASELINE:
            yield verdict


def _settled(how: Simulated) -> int:
    """The first week after the baseline."""
    return RETEST_WEEKS if how.every < RETEST_WEEKS else 1


def tally(verdicts: Iterable[Verdict]) -> Tally:
    """Count runs, not readings: a flag still open is refreshed, not raised again."""
    found, before = Tally(), (False, False, False, False)
    for verdict in verdicts:
        now = (
            verdict.strength is not None,
            verdict.strength is Strength.CONFIRMED,
            verdict.firm,
            verdict.kind is Change.WORSE and verdict.large,
        )
        possible, confirmed, firm, large = (n and not b for n, b in zip(now, before, strict=True))
        found.possible += possible
        found.confirmed += confirmed
        found.flags += firm
        found.large += large
        before = now
    return found


# --- the figures
# ------------------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class MeasureFigures:
    """Figures for one measure.

    false_*: events per client-year without a true change: a possible change and a confirmed one as the client hears
    them, a confirmed change flagged to the coach, a single worsening beyond MDC99 flagged. important: the published
    size at the typical level, in the measure's unit, or None. told, found: shares of true changes of that size reported
    to the client as possible, and flagged, within three retests. at_best: the most that any rule could find. smallest:
    the smallest true change found 8 times in 10.
    """

    measure: str
    client_years: float
    false_possible: float
    false_confirmed: float
    false_flags: float
    false_large: float
    important: float | None
    told: float | None
    found: float | None
    at_best: float | None
    smallest: float

    @property
    def allowed(self) -> bool | None:
        """Whether the error allows the target at all. None if no important difference is published."""
        return None if self.at_best is None else self.at_best >= WANTED_FOUND


def figures(
    clients: int = 500, weeks: int = 52, seed: int = 1, *, advance: Callable[[], object] = lambda: None
) -> tuple[MeasureFigures, ...]:
    """Figures for each measure of the plan; deterministic for the same arguments.

    advance: called after each of the `len(PLAN)` measures.
    """
    rows = []
    for how in PLAN:
        rows.append(_row(how, clients, weeks, seed))
        advance()
    return tuple(rows)


def _row(how: Simulated, clients: int, weeks: int, seed: int) -> MeasureFigures:
    measure = MEASURES[how.key]
    years = clients * weeks / 52
    still = [tally(follow(how, measure, *_client(how, seed, n), weeks)) for n in range(clients)]
    important = _important(how, measure)
    told = found = None
    if important is not None:
        told, found = _found(how, measure, important, clients, seed)
    return MeasureFigures(
        measure=how.key,
        client_years=years,
        false_possible=sum(t.possible for t in still) / years,
        false_confirmed=sum(t.confirmed for t in still) / years,
        false_flags=sum(t.flags for t in still) / years,
        false_large=sum(t.large for t in still) / years,
        important=important,
        told=told,
        found=found,
        at_best=None if important is None else at_best(how, measure, important),
        smallest=_smallest(how, measure, min(clients, 200), seed),
    )


def _client(how: Simulated, seed: int, number: int) -> tuple[Random, SimulatedClient]:
    dice = Random(f"{seed}/{how.key}/{number}")
    return dice, how.draw(dice)


def _important(how: Simulated, measure: Measure) -> float | None:
    if measure.important is None:
        return None
    size = float(measure.important.better)
    return size * how.typical if measure.important.relative else size


def _found(how: Simulated, measure: Measure, size: float, clients: int, seed: int) -> tuple[float, float]:
    """Shares reported and flagged. A relative size is relative to each client's own level."""
    told = found = 0
    relative = measure.important is not None and measure.important.relative
    for number in range(clients):
        dice, person = _client(how, seed, number)
        change = size * (person.level / how.typical if relative else 1) * dice.choice((-1, 1))
        up = change > 0
        verdicts = [
            v
            for v in follow(how, measure, dice, person, RETESTS * RETEST_WEEKS + _settled(how) - 1, change)
            if v.rising is up
        ]
        told += any(v.strength is not None for v in verdicts)
        found += any(v.firm for v in verdicts)
    return told / clients, found / clients


def at_best(how: Simulated, measure: Measure, size: float) -> float:
    """The share found by the best weighting of baseline and three retests, at one year's false-alarm budget."""
    sem = _typical_sem(how, measure)
    spread = sem * math.sqrt(1 + 1 / RETESTS)
    normal = NormalDist()
    threshold = normal.inv_cdf(1 - ALLOWED_PER_CLIENT_YEAR / len(PLAN) / 2)
    return normal.cdf(size / spread - threshold)


def _typical_sem(how: Simulated, measure: Measure) -> float:
    """SEM of one retest as the plan takes it: the mean of two girths, of six days, of four weekly ratings."""
    if measure.error is None:
        raise ValueError(f"{how.key} has no error to simulate against")
    typical = {
        "waist": (2, None),
        "hip": (2, None),
        "resting_heart_rate": (2, 30),
        "energy": (RETEST_WEEKS, None),
        "blood_pressure": (6, None),
    }
    attempts, window = typical.get(how.key, (1, None))
    error = replace(
        measure.error, shared_by_attempts=measure.error.shared_by_attempts and measure.kind is not MeasureKind.RATING
    )
    return float(standard_error(error, D(how.typical), attempts, window))


def _smallest(how: Simulated, measure: Measure, clients: int, seed: int) -> float:
    """Found by bisection, in steps of a hundredth of the widest bound."""
    sem = _typical_sem(how, measure)
    low, high = 0.0, 12 * sem
    for _ in range(6):
        middle = (low + high) / 2
        found = _found(how, measure, middle, clients, seed)[1]
        low, high = (low, middle) if found >= WANTED_FOUND else (middle, high)
    return high


# --- shown
# ------------------------------------------------------------------------------------------------------


def table(rows: Iterable[MeasureFigures]) -> Table:
    """A table for a terminal, with totals for the plan."""
    shown = Table(title="Judgement figures: simulated clients, usual plan")
    shown.add_column("measure")
    for heading in (
        "false possible / client-year",
        "false confirmed",
        "false flags",
        "false large worsening",
        "important change",
        "client told",
        "coach flagged",
        "at best",
        "found 8 in 10 from",
    ):
        shown.add_column(heading, justify="right")
    every = tuple(rows)
    for row in every:
        shown.add_row(
            row.measure,
            *(f"{v:.4f}" for v in (row.false_possible, row.false_confirmed, row.false_flags, row.false_large)),
            "none published" if row.important is None else f"{row.important:.1f}",
            *("" if v is None else f"{v:.0%}" for v in (row.told, row.found, row.at_best)),
            f"{row.smallest:.1f}",
        )
    shown.add_section()
    shown.add_row(
        "all together",
        *(
            f"{sum(values):.4f}"
            for values in zip(
                *((r.false_possible, r.false_confirmed, r.false_flags, r.false_large) for r in every), strict=True
            )
        ),
    )
    return shown


INSTEAD = (
    "Where even the best rule finds fewer than 8 in 10, the measurement cannot show so small a change in one person.\n"
    "The coach is then told the possible change, with the size of the error beside it, on the client's card; the\n"
    "client hears that it may matter but is not sure yet; and the trend over four or more readings is drawn with\n"
    "its interval."
)


def print_figures(clients: int, weeks: int, seed: int, console: Console) -> tuple[MeasureFigures, ...]:
    """Compute with a progress bar, print, and return the rows."""
    with Progress(console=console, transient=True) as progress:
        task = progress.add_task("simulating", total=len(PLAN))
        rows = figures(clients, weeks, seed, advance=lambda: progress.advance(task))
    console.print(table(rows))
    console.print(INSTEAD)
    return rows
