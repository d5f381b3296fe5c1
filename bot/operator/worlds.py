"""What the rules about change say falsely, and what they find, in one ideal and three realistic worlds.

    samehour judgement --worlds

`change_rule_simulation` has noise as the rules expect it. Here the rules meet noise they do not expect. A world is
written down once and never tuned; only the rules are. Figures that are not published are marked as ours.

ideal       everybody swings as published, sittings are independent, nothing is misread.
misreads    as ideal, but 2 in 100 numbers are typed wrong (ours): a digit replaced, two neighbours swapped, or the
            point slipped, equally often. What the bot asks back is put right 9 times in 10 (ours), else it stands.
unequal     people differ in how much they swing, as published (weight CV 0.66 % with an SD of 0.24 % between people,
            Cheuvront 2004; a day's systolic pressure 8.6 with 3.1, Kato 2010; pulse 2.0 to 6.7 bpm, 1972; girths 0.2
            to 1.9 cm, Barrios 2016); chair stands and energy by the same share as weight (ours). One sitting in ten
            is under other conditions: its variance is doubled, and 4 times in 5 the client says so (ours).
correlated  3 tenths of the variance between days wander, with a correlation time of six weeks. The share is that of a
            home pressure: with it, means of six days differ by an SD of 7.7 mmHg after a year, as Asayama 2022 found
            (8.6 a day, Kato 2010); the correlation time, and the share for the other measures, are ours. Two tapes of
            a sitting share half of their variance (ours). The first try of a chair-stand test is 0.65 low (0.5 to 0.8,
            gone by the third: Gill 2022).

Everywhere: a usual plan for a year, readings as an instrument shows them, judged with the history a turn loads; slots
kept to within a day; a pressure's
first day reads 5 mmHg high and two readings of a sitting differ by an SD of 3 mmHg (ours).

What is counted, for each client-year without a true change: what the client hears (possible, twice, confirmed), each
flag that reaches the coach, and how often a right value is asked back. A flag that stays open is one flag. What is
found: by the coach, a flag about change, and by the client, a change that is said at least as "possible", or as seen
"twice"; in the right direction, within three retests of a sudden true change right after the start, or after half a
year; and within half a year of the beginning of a change that takes that long. Sizes are the published important ones,
of pressure 10 mmHg.

Beside them, two yardsticks on the same readings: the plain MDC95 from the start, at a single retest (Weir 2005), and
the reference change value, 1.96 * sqrt 2 SEM between two retests in a row (Harris and Yasaka 1983, from memory).
"""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Callable, Iterable, Iterator, Sequence
from concurrent.futures import ProcessPoolExecutor
from dataclasses import dataclass, field, replace
from datetime import UTC, datetime, timedelta
from decimal import Decimal
from itertools import product
from multiprocessing import get_context
from random import Random

from rich.console import Console
from rich.table import Table

from bot.operator.change_rule_simulation import NOBODY, RETEST_WEEKS, RETESTS, START, WEEK, beats_in
from bot.store.readings import DEEP, HISTORY, LONG, SERIES, SERIES_HISTORY, SEVERAL
from bot.store.readings import START as START_SPAN
from core.judging.assess import Assessment, assess, error_of_weeks
from core.judging.change import Change, level_of, mdc95_squared, variance
from core.judging.start import ODD_ONE_OUT, start_of
from core.measures import MEASURES
from core.measures.measure import Measure, MeasureKind, Understood
from core.quantity import Unit
from core.reading import SAME, Conditions, Reading
from core.understanding.plausibility import Doubt, DoubtKind, doubt, is_jump
from core.watching.flags import NOTHING_AGREED, Code
from core.watching.flags_of_reading import far_below_usual, flags_of_reading

D = Decimal
HALF_A_YEAR = 24  # weeks
SLIP = "slip"  # key of a reading that was typed wrong
MISREAD, PUT_RIGHT = 0.02, 0.9
WANDERS, WANDER_WEEKS = 0.3, 6.0
OF_THE_DAY = 0.5  # of the variance of one tape
OTHER_CONDITIONS, SAYS_SO = 0.1, 0.8
FIRST_TRY = 0.65  # stands
FIRST_DAY_HIGH, BETWEEN_TWO = 5.0, 3.0  # mmHg
ABOUT_CHANGE = (
    Code.CHANGE_BETTER_CONFIRMED,
    Code.CHANGE_WORSE_CONFIRMED,
    Code.CHANGE_CONFIRMED,
    Code.CHANGE_WORSE_LARGE,
    Code.ENERGY_FALLING,
    Code.ENERGY_DROPPED,
    Code.UNPLANNED_LOSS_OVER_5,
    Code.MUST_MEDIUM,
    Code.MUST_HIGH,
)
HEARD = ("possible", "twice", "confirmed")


@dataclass(frozen=True, slots=True)
class World:
    """misread: share of numbers typed wrong. unequal: whether people differ. wanders: share of the variance between
    days that is correlated. practice: whether the first try of a test is low."""

    key: str
    misread: float = 0.0
    unequal: bool = False
    wanders: float = 0.0
    practice: bool = False


WORLDS = (
    World("ideal"),
    World("misreads", misread=MISREAD),
    World("unequal", unequal=True),
    World("correlated", wanders=WANDERS, practice=True),
)

Draw = Callable[[Random], float]


def _normal(centre: float, sd: float, least: float) -> Draw:
    return lambda dice: max(least, dice.gauss(centre, sd))


def _even(low: float, high: float) -> Draw:
    return lambda dice: dice.uniform(low, high)


@dataclass(frozen=True, slots=True)
class Part:
    """A measure of the plan.

    level, swing: of a person in the unequal world. typical: everybody's swing elsewhere, the SD between sittings (of
    one tape for a girth). Swings are fractions of the level if `relative`. step: of the display. size: of a true
    change worth finding, in the unit or a fraction; None if none is published. every: weeks.
    """

    key: str
    level: Draw
    swing: Draw
    typical: float
    step: str
    size: float | None = None
    relative: bool = False
    every: int = RETEST_WEEKS
    tries: int = 1


SPREAD = 0.24 / 0.66
PLAN = (
    Part("weight", _normal(82, 12, 50), _normal(0.0066, 0.0024, 0.001), 0.0066, "0.1", 0.05, relative=True),
    Part("waist", _normal(95, 10, 65), _even(0.2, 1.9), 1.9, "0.5", 0.05, tries=2),
    Part("hip", _normal(105, 8, 80), _even(0.2, 1.9), 1.9, "0.5", tries=2),
    Part("resting_heart_rate", _normal(70, 8, 50), _even(2.0, 6.7), 5.0, "1", tries=2),
    Part("energy", _normal(6, 1, 3), _normal(1, SPREAD, 0.2), 1.0, "1", 2.0, every=1),
    Part("chair_stand_30s", _normal(13, 3, 6), _normal(0.9, 0.9 * SPREAD, 0.2), 0.902, "1", 2.0),
    Part("blood_pressure", _normal(132, 12, 105), _normal(8.6, 3.1, 2), 8.6, "1", 10.0),
)
BY_KEY = {part.key: part for part in PLAN}
Shift = Callable[[int], float]  # week -> what is added to the true level


def no_change(week: int) -> float:
    return 0.0


# --- one person's readings


@dataclass(slots=True)
class Person:
    """level: true value. swing: SD between sittings, in the unit. wander: of now, in swings."""

    level: float
    swing: float
    wander: float = 0.0


def meet(world: World, part: Part, dice: Random) -> Person:
    level = part.level(dice)
    swing = part.swing(dice) if world.unequal else part.typical
    return Person(level, swing * level if part.relative else swing, dice.gauss(0, 1))


def _wander(world: World, person: Person, weeks: float, dice: Random) -> None:
    """A stationary first-order process with an SD of 1."""
    if world.wanders and weeks:
        kept = math.exp(-weeks / WANDER_WEEKS)
        person.wander = kept * person.wander + math.sqrt(1 - kept * kept) * dice.gauss(0, 1)


@dataclass(slots=True)
class Sitting:
    """level: true, on this day, without its noise. swing: of the noise that is left."""

    level: float
    swing: float
    conditions: Conditions


def _sit(world: World, person: Person, level: float, dice: Random) -> Sitting:
    wider, conditions = 1.0, SAME
    if world.unequal and dice.random() < OTHER_CONDITIONS:
        wider = math.sqrt(2)
        conditions = Conditions(differs=frozenset({"time_of_day"})) if dice.random() < SAYS_SO else SAME
    today = level + math.sqrt(world.wanders) * person.swing * person.wander
    return Sitting(today, math.sqrt(1 - world.wanders) * person.swing * wider, conditions)


def shown(value: float, step: str) -> Decimal:
    """The value as an instrument with this resolution displays it."""
    return round(D(value) / D(step)) * D(step)


def take(world: World, part: Part, person: Person, level: float, at: datetime, dice: Random) -> list[Reading]:
    """The readings of one sitting (of a pressure: one week), as typed if nothing is misread."""
    now = _sit(world, person, level, dice)
    measure = MEASURES[part.key]
    if measure.series:
        return list(_pressures(now, at, dice))
    if measure.unit is Unit.BEATS_PER_MINUTE:
        today = max(30.0, dice.gauss(now.level, now.swing))
        beats = D(sum(beats_in(dice, today, 30) for _ in range(part.tries)))
        return [Reading(part.key, beats, at, conditions=now.conditions, attempts=part.tries, window=30)]
    if part.tries > 1:
        shared = OF_THE_DAY if world.wanders else 0.0
        today = dice.gauss(now.level, math.sqrt(shared) * now.swing)
        tries = [shown(dice.gauss(today, math.sqrt(1 - shared) * now.swing), part.step) for _ in range(part.tries)]
        value = sum(tries, D(0)) / part.tries
        return [Reading(part.key, value, at, conditions=now.conditions, attempts=part.tries)]
    value = shown(dice.gauss(now.level, now.swing), part.step)
    if measure.kind is MeasureKind.RATING:
        return [Reading(part.key, min(D(10), max(D(0), value)), at)]
    return [Reading(part.key, max(D(0), value), at, conditions=now.conditions)]


def _pressures(now: Sitting, at: datetime, dice: Random) -> Iterator[Reading]:
    for day, hours, minutes in product(range(7), (0, 12), (0, 1)):
        if not (hours or minutes):
            today = dice.gauss(now.level + FIRST_DAY_HIGH * (day == 0), now.swing)
        systolic = shown(dice.gauss(today, BETWEEN_TWO), "1")
        taken = at + timedelta(days=day - 6, hours=hours, minutes=minutes)
        yield Reading("blood_pressure", systolic, taken, second=systolic - 45, conditions=now.conditions)


def slip(value: Decimal, dice: Random) -> Decimal:
    """A number typed wrong: a digit replaced, two neighbours swapped, or the point one place off."""
    text = format(value, "f")
    places = [i for i, c in enumerate(text) if c.isdecimal()]
    kind = dice.randrange(3)
    if kind == 0 or len(places) < 2:
        i = dice.choice(places)
        return D(text[:i] + dice.choice([c for c in "0123456789" if c != text[i]]) + text[i + 1 :])
    if kind == 1:
        at = dice.randrange(len(places) - 1)
        i, j = places[at], places[at + 1]
        return D(text[:i] + text[j] + text[i + 1 : j] + text[i] + text[j + 1 :])
    return value.scaleb(dice.choice((-1, 1)))


@dataclass(slots=True)
class Typed:
    """reading: as stored. asked: whether it was asked back though it was right. put_right: whether the reading before
    it turned out to be the slip, and was taken out."""

    reading: Reading
    asked: bool
    put_right: bool = False


def typed(world: World, measure: Measure, reading: Reading, before: Sequence[Reading], dice: Random) -> Typed:
    """A reading as it reaches the store: perhaps misread, perhaps asked back and put right. before: what is stored."""
    last = before[-1] if before else None
    wrong = world.misread > 0 and dice.random() < world.misread
    given = replace(reading, value=slip(reading.value, dice), key=SLIP) if wrong else reading
    found = doubt(measure, Understood(given.value, measure.unit, second=given.second), last, NOBODY)
    if found is None and far_below_usual(measure, given.value, given.taken_at, before):
        found = Doubt(DoubtKind.UNUSUAL)
    if not wrong:
        # two readings far apart: which of them is right is asked, and a slip is owned up to as often as any other
        slipped = last is not None and last.key == SLIP and found is not None and given.value in measure.bounds.usual
        apart = slipped and last is not None and is_jump(measure.bounds, given.value, last.value)
        return Typed(reading, found is not None, apart and not measure.series and dice.random() < PUT_RIGHT)
    never = given.value not in measure.bounds.possible  # such a value is not stored as it is typed
    if never or (found is not None and dice.random() < PUT_RIGHT):
        return Typed(reading, False)
    return Typed(given, False)


# --- one person's year


@dataclass(slots=True)
class Said:
    """What one sitting led to. asked: right values that were asked back."""

    week: int
    assessment: Assessment
    flags: frozenset[Code]
    asked: int


def follow(
    world: World, part: Part, dice: Random, weeks: int, shift: Shift = no_change, person: Person | None = None
) -> Iterator[Said]:
    """One person's sittings, the start included. shift: of the true level."""
    measure, history = MEASURES[part.key], list[Reading]()
    person = person or meet(world, part, dice)
    before = 0
    for week in visits(part, weeks):
        if 0 < week < RETEST_WEEKS <= part.every and not start_of(measure, history).wants_another:
            continue
        _wander(world, person, week - before, dice)
        before = week
        level = person.level + shift(week)
        if world.practice and measure.kind is MeasureKind.FUNCTION and not history:
            level -= FIRST_TRY
        at = START + week * WEEK + timedelta(days=dice.choice((-1, 0, 0, 0, 1)))
        asked = 0
        for reading in take(world, part, person, level, at, dice):
            kept = typed(world, measure, reading, history, dice)
            if kept.put_right:
                history.pop()
            history.append(kept.reading)
            asked += kept.asked
        history = as_loaded(history, at)
        *earlier, last = history
        found = assess(measure, last, earlier, NOBODY, baseline_since=None, retest=None, zone=UTC)
        flags = flags_of_reading(measure, found, earlier, NOBODY, NOTHING_AGREED, zone=UTC)
        yield Said(week, found, frozenset(f.code for f in flags), asked)


def as_loaded(history: Sequence[Reading], now: datetime) -> list[Reading]:
    """What a turn knows of one measure (`bot.store.readings.histories`): twelve weeks or more, the start and the last
    before."""
    if not history:
        return []
    key = history[0].measure
    since = now - HISTORY
    earlier = [r for r in history if r.taken_at < since]
    start = earlier[:1]
    if start and key in SEVERAL:
        start = [r for r in earlier if r.taken_at < start[0].taken_at + START_SPAN]
    further = earlier[len(start) :]
    older = [r for r in further if r.taken_at >= now - LONG] if key in DEEP else []
    lately = [r for r in history if r.taken_at >= (now - SERIES_HISTORY if key in SERIES else since)]
    return [*start, *(older or further[-1:]), *lately]


def visits(part: Part, weeks: int) -> Iterator[int]:
    """The weeks in which a measure may be asked for: for a start of several visits, also those after the first."""
    again = range(1, ODD_ONE_OUT) if MEASURES[part.key].start_visits > 1 else ()
    yield from sorted({*range(0, weeks + 1, part.every), *again})


# --- figures


@dataclass(slots=True)
class Tally:
    """Counts of one measure in one world. false: of what is heard and of each flag, without a true change. asked: right
    values asked back. mdc, rcv: of the yardsticks. found: shares by kind of change, in the order of `FOUND_BY`."""

    world: str
    measure: str
    years: float
    false: Counter[str] = field(default_factory=Counter)
    found: dict[str, tuple[float, ...]] = field(default_factory=dict)

    def a_year(self, *keys: str) -> float:
        return sum(self.false[key] for key in keys) / self.years


def tallied(world: World, part: Part, clients: int, weeks: int, seed: int) -> Tally:
    """The row of one measure in one world; deterministic for the same arguments."""
    tally = Tally(world.key, part.key, clients * weeks / 52)
    for number in range(clients):
        dice = Random(f"{seed}/{world.key}/{part.key}/{number}")
        tally.false.update(heard(follow(world, part, dice, weeks)))
    if part.size is not None:
        for kind, (shift, last) in CHANGES.items():
            found = [_found(world, part, kind, shift, last, seed, number) for number in range(clients)]
            tally.found[kind] = tuple(sum(column) / clients for column in zip(*found, strict=True))
    return tally


def heard(said: Iterable[Said]) -> Counter[str]:
    """Runs, not readings: what is still true at the next sitting is not said anew."""
    counts: Counter[str] = Counter()
    before: frozenset[str] = frozenset()
    yardsticks = Yardsticks()
    for each in said:
        verdict = each.assessment.verdict
        certainty = "" if verdict is None else verdict.certainty
        now = frozenset({*each.flags, certainty, *yardsticks.say(each)} - {""})
        counts.update(now - before)
        counts["asked"] += each.asked
        before = now
    return counts


@dataclass(slots=True)
class Yardsticks:
    """The plain MDC95 from the start, and the reference change value from the retest before. beyond: directions."""

    values: list[Reading] = field(default_factory=list)
    ratings: int = 0

    def say(self, said: Said) -> Iterator[str]:
        """ "mdc" or "rcv", with "+" or "-", for what this sitting is beyond. A rating counts every four weeks."""
        now, verdict = said.assessment.judged, said.assessment.verdict
        measure = MEASURES[now.measure]
        if verdict is not None and verdict.kind is Change.STARTING:
            return
        if measure.kind is MeasureKind.RATING and (said.week + 1) % RETEST_WEEKS:
            return
        error = error_of_weeks(measure.error) if measure.kind is MeasureKind.RATING else measure.error
        if error is None:
            return
        for name, other in (("mdc", self.values[:1]), ("rcv", self.values[-1:])):
            for before in other:
                level = level_of(before.value, now.value)
                spread = sum(variance(error, level, r.attempts, r.window) for r in (before, now))
                difference = now.value - before.value
                if difference * difference > mdc95_squared(D(spread)):
                    yield name + ("+" if difference > 0 else "-")
        self.values.append(now)


# Each kind of change: the share of its size at a week, and the last week in which it may be found.
CHANGES: dict[str, tuple[Callable[[int, int], float], int]] = {
    "from the start": (lambda week, start: float(week > start), 0),
    "after half a year": (lambda week, start: float(week > HALF_A_YEAR), HALF_A_YEAR),
    "slow": (lambda week, start: min(1.0, max(0.0, (week - HALF_A_YEAR) / HALF_A_YEAR)), HALF_A_YEAR),
}


def start_weeks(part: Part) -> int:
    """The last week that belongs to the start."""
    if part.every < RETEST_WEEKS:
        return RETEST_WEEKS - 1
    return ODD_ONE_OUT - 1 if MEASURES[part.key].start_visits > 1 else 0


def _found(
    world: World, part: Part, kind: str, shift: Callable[[int, int], float], since: int, seed: int, number: int
) -> tuple[bool, ...]:
    """Whether a change of the part's size is found in time, in the order of `FOUND_BY`."""
    dice = Random(f"{seed}/{world.key}/{part.key}/{kind}/{number}")
    person = meet(world, part, dice)
    assert part.size is not None
    important = MEASURES[part.key].important
    of_level = important is not None and important.relative
    size = part.size * (person.level if of_level else 1) * dice.choice((-1, 1))
    start = start_weeks(part)
    until = 2 * HALF_A_YEAR if kind == "slow" else (since or start) + RETESTS * RETEST_WEEKS
    found: set[str] = set()
    yardsticks = Yardsticks()
    for said in follow(world, part, dice, until, lambda week: size * shift(week, start), person):
        sign = "+" if size > 0 else "-"
        beyond = set(yardsticks.say(said))
        if said.week <= max(since, start):
            continue
        verdict = said.assessment.verdict
        right = verdict is not None and verdict.rising is (size > 0)
        if (right and said.flags & CHANGE_FLAGS) or (size < 0 and said.flags & FALL_FLAGS):
            found.add("coach")
        if right and verdict is not None and verdict.certainty:
            found.add("possible")
            if verdict.certainty != HEARD[0]:
                found.add("twice")
        found |= {name for name, key in (("MDC95", "mdc"), ("RCV", "rcv")) if key + sign in beyond}
    return tuple(name in found for name in FOUND_BY)


# Who found it: the coach, the client as a possible change or as one seen twice, and the yardsticks.
FOUND_BY = ("coach", "possible", "twice", "MDC95", "RCV")
CHANGE_FLAGS = frozenset(ABOUT_CHANGE[:4])
FALL_FLAGS = frozenset(ABOUT_CHANGE[4:6])


def row(world: str, part: str, clients: int, weeks: int, seed: int) -> Tally:
    """`tallied` by keys, which pass from process to process."""
    return tallied(next(w for w in WORLDS if w.key == world), BY_KEY[part], clients, weeks, seed)


def figures(clients: int, weeks: int, seed: int, processes: int, done: Callable[[], object]) -> list[Tally]:
    """Every measure in every world. done: called after each."""
    jobs = [(world.key, part.key, clients, weeks, seed) for world in WORLDS for part in reversed(PLAN)]
    rows: list[Tally] = []
    if processes == 1:
        for job in jobs:
            rows.append(row(*job))
            done()
        return rows
    with ProcessPoolExecutor(processes, mp_context=get_context("spawn")) as pool:
        for future in [pool.submit(row, *job) for job in jobs]:
            rows.append(future.result())
            done()
    return rows


# --- shown

SAID: tuple[tuple[str, Sequence[str]], ...] = (
    ("possible", HEARD[:1]),
    ("twice", HEARD[1:2]),
    ("confirmed", HEARD[2:]),
    ("coach: change", ABOUT_CHANGE[:3]),
    ("large", ABOUT_CHANGE[3:4]),
    ("falling", ABOUT_CHANGE[4:6]),
    ("loss", ABOUT_CHANGE[6:]),
    ("all these flags", ABOUT_CHANGE),
    ("identical", (Code.IDENTICAL_VALUES,)),
    ("asked back", ("asked",)),
    ("MDC95", ("mdc+", "mdc-")),
    ("RCV", ("rcv+", "rcv-")),
)


def tables(world: str, rows: Sequence[Tally]) -> Iterator[Table]:
    """What is said falsely in a world, measures in the order of the plan and their sum; and what is found."""
    order = {part.key: n for n, part in enumerate(PLAN)}
    every = sorted((row for row in rows if row.world == world), key=lambda row: order[row.measure])
    said = Table("measure", *(heading for heading, _ in SAID), title=f"{world}: said falsely, a client-year")
    for each in every:
        said.add_row(each.measure, *(f"{each.a_year(*keys):.3f}" for _, keys in SAID))
    said.add_section()
    said.add_row("all together", *(f"{sum(each.a_year(*keys) for each in every):.3f}" for _, keys in SAID))
    yield said
    headings = [f"{kind}, {name}" for kind in CHANGES for name in FOUND_BY]
    found = Table("measure", *headings, title=f"{world}: found, in 100")
    for each in every:
        if each.found:
            shares = [f"{100 * share:.0f}" for kind in CHANGES for share in each.found[kind]]
            found.add_row(each.measure, *shares)
    yield found


def print_figures(clients: int, weeks: int, seed: int, processes: int, console: Console) -> list[Tally]:
    """Compute, print a table for each world, and return the rows."""
    from rich.progress import Progress

    with Progress(console=console, transient=True) as progress:
        task = progress.add_task("simulating", total=len(WORLDS) * len(PLAN))
        rows = figures(clients, weeks, seed, processes, lambda: progress.advance(task))
    for world in WORLDS:
        for table in tables(world.key, rows):
            console.print(table)
    return rows
