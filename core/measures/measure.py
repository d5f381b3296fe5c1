"""The definition of a measure. A new measure is a module that builds a `Measure`, and a row in the registry."""

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
SIT_QUIETLY = "sit_quietly_5_min"


class MeasureKind(StrEnum):
    """How the chat treats a measure."""

    BODY = "body"  # taken at rest, every retest interval
    FUNCTION = "function"  # behind the safety gate
    RATING = "rating"  # 0-10, every check-in
    ACTIVITY = "activity"  # of the past week, every check-in
    ONCE = "once"  # asked once
    DERIVED = "derived"  # computed, never asked


@dataclass(frozen=True, slots=True)
class Understood:
    """The meaning of a typed answer.

    value, second: in the measure's own unit.  unit: as typed, or assumed.  said_unit: whether it was typed. attempts:
    how many numbers `value` is the mean of. window: seconds over which the pulse was counted. hedged: "about 82".
    notes: facts of the attempt, as in `Conditions.notes`.
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
    NOT_WHOLE = "not_whole"  # "7.5" for a count of whole numbers
    ONE_STAGE = "one_stage"  # "tandem 10 s" where the seconds of all stages are asked
    NOT_AT_REST = "not_at_rest"  # "72 after the stairs" for a resting heart rate
    NOT_COMPLETED = "not_completed"  # four of five rises: there is no time to record


@dataclass(frozen=True, slots=True)
class Misunderstood:
    """guess: the likely meaning, to confirm with the client; never stored without asking.  either: whole numbers, to
    choose from ("between 6 and 7"); empty unless there are a few."""

    why: Why
    guess: Understood | None = None
    either: tuple[Decimal, ...] = ()


@dataclass(frozen=True, slots=True)
class Score:
    """A value's place in a published reference.

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
    """No published comparison applies; reason: "age_outside_table", "sex_not_given", "stature_not_given", ..."""

    reason: str
    source: Source | None = None


Scores = tuple[Score | NoReference, ...]


@dataclass(frozen=True, slots=True)
class Protocol:
    """How a measure is taken. Every string is a key; the texts are in the catalogues.

    prepare, technique: ordered steps.  keep_same: aspects asked about as conditions ("scales", "site", ...). attempts:
    how many are averaged (or the best of them used). practice: tries before those that count. attempts_in_question: the
    question itself says how many.  gap: pause between attempts. helper: somebody should stand close by.  site: default
    site label. timers: seconds of the timed counts the bot can run, e.g. (15, 30, 60); (0,) is an open stopwatch.
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

    @property
    def at_rest(self) -> bool:
        """Whether it counts only after some quiet minutes."""
        return SIT_QUIETLY in self.prepare

    @property
    def attempts_to_name(self) -> int:
        """How many values a question still has to ask for: one, where its own words say how many."""
        return 1 if self.attempts_in_question else self.attempts


@dataclass(frozen=True, slots=True)
class Bounds:
    """Ours, not published: outside `possible` we refuse, outside `usual` we ask.

    jump: the largest difference from the client's last reading accepted without asking: absolute in the
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

    counted: the pulse rule; step^2/6 is added for a count over `Reading.window` seconds. shared_by_attempts: the error
    is mostly variation between days, which attempts in one sitting share, so averaging them does not reduce it (except
    the counting part of a pulse). So it is assumed unless the source says that its repeats were of one sitting; then
    the part between days is not known, and no study that we found gives both. spread: SD of this error between people,
    as a fraction of it, if published. worst: the largest of what is published, which hardly anybody exceeds, instead of
    the typical one.
    borrowed_from: the population it was measured in, if not people at home, else "".
    """

    source: Source
    sem: Decimal | None = None
    cv: Decimal | None = None
    counted: bool = False
    shared_by_attempts: bool = False
    spread: Decimal = NONE_PUBLISHED
    worst: bool = False
    borrowed_from: str = ""


@dataclass(frozen=True, slots=True)
class ImportantDifference:
    """A published difference that matters to people (MCID); whether it exceeds error is a separate question.

    better, worse: sizes in the measure's unit (or fractions of the baseline when `relative`), both positive.
    """

    source: Source
    better: Decimal
    worse: Decimal | None = None
    relative: bool = False


@dataclass(frozen=True, slots=True)
class Exclusion:
    """Who must not take the measure, or only after asking a clinician. key: of the advice."""

    caution: Caution
    key: str


class ProfileFact(StrEnum):
    """Client facts a measure may need, for its band or for safety, beyond age, which everybody is asked."""

    CAUTIONS = "cautions"  # pregnancy, heart disease, medicines: before a value is taken or judged
    SEX = "sex"
    UNITS = "units"
    STATURE = "stature"
    BACKGROUND = "background"
    NUMBERS = "numbers"  # whether they want to see them
    OWN_QUESTION = "own_question"


class BodySize(StrEnum):
    """The body size that a number measures. It can be hidden, and is not a goal in pregnancy."""

    WEIGHT = "weight"  # subject to the weighing guard
    STATURE = "stature"  # never hidden: asked once, and it does not change
    MASS_INDEX = "mass_index"
    GIRTH = "girth"  # taken with a tape
    RATIO = "ratio"


class AlarmKind(StrEnum):
    """What a single reading calls for, whatever the readings around it are."""

    SEVERE_PRESSURE = "severe_pressure"
    LOW_PRESSURE = "low_pressure"  # matters only with dizziness or fainting
    FAST_PULSE = "fast_pulse"
    SLOW_PULSE = "slow_pulse"


@dataclass(frozen=True, slots=True)
class ReadingAlarm:
    """Why a single reading needs an immediate response.

    figures: shown to the coach, by name. repeat: whether it is taken again after rest. caution: the fact about this
    person that set the limit, if it is not everybody's limit.
    """

    kind: AlarmKind
    source: Source
    figures: tuple[tuple[str, Decimal], ...]
    repeat: bool
    caution: Caution | None = None


@dataclass(frozen=True, slots=True)
class ShortCount:
    """A count over `seconds` or less is not enough above `up_to`, in the measure's unit."""

    seconds: int
    up_to: Decimal
    source: Source

    def too_short(self, value: Decimal, window: int | None) -> bool:
        return window is not None and window <= self.seconds and value > self.up_to


@dataclass(frozen=True, slots=True)
class Repeat:
    """How an alarming reading is taken again.

    rest: pause before it. count: seconds of the timed count to use, or None.
    """

    rest: timedelta
    count: int | None = None


Understand = Callable[[str, Lexicon, Unit | None], Understood | Misunderstood]
AlarmOf = Callable[[Reading, Profile], ReadingAlarm | None]
ScoreReading = Callable[[Reading, Profile], Scores]
Derive = Callable[[Mapping[str, Reading], Profile], Reading | None]
RestLimits = Callable[[Decimal | None, Decimal | None, Decimal | None], frozenset[str]]  # bpm, mmHg, mmHg


def no_score(reading: Reading, profile: Profile) -> Scores:
    """For measures compared only with the client's own readings."""
    return ()


def never(reading: Reading, profile: Profile) -> ReadingAlarm | None:
    """For measures whose single values never call for an immediate response."""
    return None


@dataclass(frozen=True, slots=True)
class Measure:
    """One assessment.

    Fields whose omission could harm somebody have no default: the client facts a measure needs, when a single value
    calls for an immediate response, and whether it is a body size.

    unit: the unit in which values are stored. units: those accepted in answers; the first is assumed if none is given
    and the client has no preference. places: decimals shown and stored.  understand(text, words, preferred unit).
    score(reading, profile): one result per reference, the primary one first. derive: for derived measures, from the
    newest readings it needs (`derived_from`). needs: facts that select its bands and those of measures derived from it;
    they are asked for before it is taken for the first time. alarm(reading, profile): the immediate response this value
    calls for. repeat: how it is then taken again. short_count: which counts are taken again, for longer, before they
    become a start. in_every_check_in: whatever the plan says.  series: taken over days and compared as a mean.
    client_words: the client words the question.  goal: clients may set a target for it. beside: the measure whose
    change on the same day is reported together with its own. said_with: for derived measures, the reading whose reply
    includes their band. misled_by: cautions to mention with any value, each with a message key. fall: how far two
    consecutive values lie below the usual mean before the coach is notified. second_called: the measure whose name
    people use for its second number. rest_limits: reasons not to start, from the pulse and the pressure at rest.
    start_visits: how many make its start, a week apart, because one sitting alone is too unsure (`core.judging.start`).
    quick: answers offered as buttons, for those who would rather not type.
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
    short_count: ShortCount | None = None
    in_every_check_in: bool = False
    series: bool = False
    client_words: bool = False
    goal: bool = False
    beside: str = ""
    said_with: str = ""
    misled_by: tuple[tuple[Caution, str], ...] = ()
    fall: Decimal | None = None
    second_called: str = ""
    rest_limits: RestLimits | None = None
    start_visits: int = 1
    quick: tuple[int, ...] = ()

    @property
    def hideable(self) -> bool:
        """Whether the number can be shown to the coach only."""
        return self.body not in (None, BodySize.STATURE)

    @property
    def guarded(self) -> bool:
        """Whether taking it early is discouraged."""
        return self.body is BodySize.WEIGHT
