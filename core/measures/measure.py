"""The one shape of a measure. A new measure is a module that makes a `Measure`, and a row in the registry."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from datetime import timedelta
from decimal import Decimal
from enum import StrEnum

from core.client import Caution, Profile
from core.language import Lexicon
from core.quantity import Better, Range, Unit
from core.reading import Reading
from core.sources import Source

D = Decimal
FOUR_WEEKS = timedelta(days=28)
NONE_PUBLISHED = D(0)


class MeasureKind(StrEnum):
    """What the chat does with a measure."""

    BODY = "body"  # taken at rest, every retest interval
    FUNCTION = "function"  # behind the safety gate
    RATING = "rating"  # 0-10, every check-in
    ACTIVITY = "activity"  # of the past week, every check-in
    ONCE = "once"  # asked once
    DERIVED = "derived"  # computed, never asked


@dataclass(frozen=True, slots=True)
class Understood:
    """What a typed answer means.

    value, second: in the measure's own unit.  unit: as typed, or assumed.  said_unit: whether it was typed.
    attempts: how many numbers `value` is the mean of.  window: seconds the pulse was counted for.
    hedged: "about 82".  notes: facts of the attempt, as in `Conditions.notes`.
    """

    value: Decimal
    unit: Unit
    said_unit: bool = False
    second: Decimal | None = None
    attempts: int = 1
    window: int | None = None
    hedged: bool = False
    notes: frozenset[str] = field(default_factory=frozenset)


class Why(StrEnum):
    """Why an answer was not understood; each is one question back to the client."""

    NO_NUMBER = "no_number"
    OTHER_UNIT = "other_unit"  # a unit of another measure
    A_RANGE = "a_range"  # "82 to 84"
    TOO_MANY_NUMBERS = "too_many_numbers"
    ONE_NUMBER_MISSING = "one_number_missing"  # "128" for a blood pressure
    NOT_WHOLE = "not_whole"  # "7.5" where whole numbers are counted
    NOT_COMPLETED = "not_completed"  # four of five rises: there is no time to record


@dataclass(frozen=True, slots=True)
class Misunderstood:
    """guess: the likely meaning, to be asked back; never stored unasked."""

    why: Why
    guess: Understood | None = None


@dataclass(frozen=True, slots=True)
class Score:
    """Where a published reference puts a value.

    band: key of the category.  rank: position of the band in its reference, 0 first as printed.
    figures: the limits or prediction used, by name, in the measure's unit.  notes: keys of cautions to add.
    """

    band: str
    source: Source
    rank: int = 0
    figures: tuple[tuple[str, Decimal], ...] = ()
    notes: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class NoReference:
    """No published comparison fits; reason: "age_outside_table", "sex_not_given", "stature_not_given", ..."""

    reason: str
    source: Source | None = None


Scores = tuple[Score | NoReference, ...]


@dataclass(frozen=True, slots=True)
class Protocol:
    """How a measure is taken. Every string is a key; the words are in the catalogues.

    prepare, technique: ordered steps.  keep_same: aspects asked about as conditions ("scales", "site", ...).
    attempts: how many are averaged (or the best taken).  practice: tries before that do not count.
    attempts_in_question: the question says itself how often.  gap: pause between attempts.
    helper: somebody should stand close.  site: default site label.
    timers: seconds of the timed counts the bot can run, e.g. (15, 30, 60); (0,) is an open stopwatch.
    """

    prepare: tuple[str, ...] = ()
    technique: tuple[str, ...] = ()
    keep_same: tuple[str, ...] = ()
    attempts: int = 1
    practice: int = 0
    best_of: bool = False
    attempts_in_question: bool = False
    gap: timedelta = timedelta(0)
    helper: bool = False
    site: str | None = None
    timers: tuple[int, ...] = ()


@dataclass(frozen=True, slots=True)
class Bounds:
    """Ours, not published: outside `possible` we refuse, outside `usual` we ask.

    jump: the largest difference from the client's own last reading taken without asking: absolute in the
    measure's unit, or as a fraction of the last value when `jump_relative`.
    second_possible, second_usual: the same for the reading's second value.
    """

    possible: Range
    usual: Range
    jump: Decimal | None = None
    jump_relative: bool = False
    second_possible: Range | None = None
    second_usual: Range | None = None


@dataclass(frozen=True, slots=True)
class MeasurementError:
    """Standard error of measurement of one reading: absolute (`sem`, in the unit) or relative (`cv`, a fraction).

    counted: the pulse rule; step^2/6 is added for a count over `Reading.window` seconds.
    shared_by_attempts: the error is the swing from day to day, which attempts in one sitting share, so their
    mean is no surer of it (the counting part of a pulse does shrink).
    spread: SD of this error between people, as a fraction of it, where a paper prints one.
    borrowed_from: whose error this is when nobody measured it in people at home, else "".
    """

    source: Source
    sem: Decimal | None = None
    cv: Decimal | None = None
    counted: bool = False
    shared_by_attempts: bool = False
    spread: Decimal = NONE_PUBLISHED
    borrowed_from: str = ""


@dataclass(frozen=True, slots=True)
class ImportantDifference:
    """A published difference that matters to people (MCID), apart from what is beyond error.

    better, worse: sizes in the measure's unit (or fractions of the baseline when `relative`), both positive.
    """

    source: Source
    better: Decimal
    worse: Decimal | None = None
    relative: bool = False


@dataclass(frozen=True, slots=True)
class Exclusion:
    """Who must not do it, or only after asking a clinician. key names the advice."""

    caution: Caution
    key: str


class ProfileFact(StrEnum):
    """What a measure may need to know of a client beyond age and cautions, which everybody is asked."""

    SEX = "sex"
    UNITS = "units"
    STATURE = "stature"
    BACKGROUND = "background"
    NUMBERS = "numbers"  # whether they want to see them
    OWN_QUESTION = "own_question"


class BodySize(StrEnum):
    """Which size of the body a number is. Such a number can be hidden, and in pregnancy it is no goal."""

    WEIGHT = "weight"  # guarded against weighing too often
    STATURE = "stature"  # no secret: asked once, and it does not change
    MASS_INDEX = "mass_index"
    GIRTH = "girth"  # taken with a tape
    RATIO = "ratio"


class AlarmKind(StrEnum):
    """What a single reading asks for, whatever the readings around it say."""

    SEVERE_PRESSURE = "severe_pressure"
    LOW_PRESSURE = "low_pressure"  # matters only with dizziness or fainting
    FAST_PULSE = "fast_pulse"
    SLOW_PULSE = "slow_pulse"


@dataclass(frozen=True, slots=True)
class ReadingAlarm:
    """Why one reading is answered at once.

    figures: what the coach is shown, by name.  repeat: it is taken again after rest.  caution: the fact about this
    person that set the limit, when it is not the limit of everybody.
    """

    kind: AlarmKind
    source: Source
    figures: tuple[tuple[str, Decimal], ...]
    repeat: bool
    caution: Caution | None = None


@dataclass(frozen=True, slots=True)
class Repeat:
    """How an alarming reading is taken again.

    rest: before it.  count: seconds of the timed count to be used, None without one.
    """

    rest: timedelta
    count: int | None = None


Understand = Callable[[str, Lexicon, Unit | None], Understood | Misunderstood]
AlarmOf = Callable[[Reading, Profile], ReadingAlarm | None]
ScoreReading = Callable[[Reading, Profile], Scores]
Derive = Callable[[Mapping[str, Reading], Profile], Reading | None]


def no_score(reading: Reading, profile: Profile) -> Scores:
    """For measures that are compared only with themselves."""
    return ()


def never(reading: Reading, profile: Profile) -> ReadingAlarm | None:
    """For measures no single value of which calls for anything at once."""
    return None


@dataclass(frozen=True, slots=True)
class Measure:
    """One assessment.

    What would harm somebody if it were forgotten has no default: a measure says itself what it needs to know of a
    client, when a single value of it calls for something at once, and whether it is a size of their body.

    unit: the unit values are kept in.  units: those people may answer in, the first is assumed when none is said
    and the client has no preference.  places: decimals shown and kept.  understand(text, words, preferred unit).
    score(reading, profile): one answer for each reference, the primary one first.
    derive: for derived measures, from the newest readings it needs (`derived_from`).
    needs: the facts its bands, and those of what is derived from it, are chosen by; enrolment asks for them.
    alarm(reading, profile): what this one value asks for at once, whoever calls.  repeat: how it is then taken again.
    in_every_check_in: whatever the plan says.  series: taken over days, and compared as their mean.
    client_words: the client words the question.  goal: clients may aim for a value of it.
    beside: the measure whose change of the same day is told together with its own.
    said_with: for derived measures, the reading whose answer says their band.
    misled_by: cautions to be remembered beside any value, each with the key of what is said.
    fall: how far two values in a row lie under the usual mean before the coach hears of it.
    second_called: the measure by whose name people call its second number.
    """

    key: str
    kind: MeasureKind
    unit: Unit
    better: Better
    bounds: Bounds
    sources: tuple[Source, ...]
    needs: frozenset[ProfileFact]
    alarm: AlarmOf
    body: BodySize | None
    places: int = 0
    units: tuple[Unit, ...] = ()
    protocol: Protocol = Protocol()
    understand: Understand | None = None
    score: ScoreReading = no_score
    error: MeasurementError | None = None
    important: ImportantDifference | None = None
    retest: timedelta = FOUR_WEEKS
    must_not: tuple[Exclusion, ...] = ()
    derived_from: tuple[str, ...] = ()
    derive: Derive | None = None
    optional_second: bool = False
    repeat: Repeat | None = None
    in_every_check_in: bool = False
    series: bool = False
    client_words: bool = False
    goal: bool = False
    beside: str = ""
    said_with: str = ""
    misled_by: tuple[tuple[Caution, str], ...] = ()
    fall: Decimal | None = None
    second_called: str = ""

    @property
    def hideable(self) -> bool:
        """Whether the number can go to the coach alone."""
        return self.body not in (None, BodySize.STATURE)

    @property
    def guarded(self) -> bool:
        """Whether taking it before its time is pushed back."""
        return self.body is BodySize.WEIGHT
