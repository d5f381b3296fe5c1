"""Everything a conversation remembers between two events. All else is a fact from the store.

A state must always load: an unknown or corrupt one is replaced by a new `State`, and the next reply is a question.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import date, datetime
from decimal import Decimal

from core.measures.measure import Understood


@dataclass(frozen=True, slots=True)
class Consenting:
    """The invitation was opened; consent is asked."""


@dataclass(frozen=True, slots=True)
class Enrolling:
    """question: the open one; left: those after it; chosen: cautions ticked so far.  measure: the one that needs to
    know; "" at the start, when nothing else can be done, and "*" if the client wants all of it done.  tries:
    misunderstood answers so far."""

    question: str
    left: tuple[str, ...] = ()
    chosen: tuple[str, ...] = ()
    measure: str = ""
    tries: int = 0


@dataclass(frozen=True, slots=True)
class Awaiting:
    """A measure is asked. tries: misunderstood answers so far. so_far: attempts already given (if attempts > 1)."""

    measure: str
    tries: int = 0
    so_far: tuple[Decimal, ...] = ()


@dataclass(frozen=True, slots=True)
class Confirming:
    """A doubtful value is being confirmed. meant: the likely meaning; typed: the original text; kind: of doubt."""

    measure: str
    meant: Understood
    kind: str
    as_typed: str
    ref: str
    asked: bool  # whether it answers a question of ours
    at: datetime
    replaces: str = ""  # key of the reading this corrects
    back: Asking | None = None  # the question open before, if it must be put again


@dataclass(frozen=True, slots=True)
class AskingConditions:
    """The reading is stored; were conditions the same? picking: choosing what differed.  then: keys of the readings
    given along with it, which are asked about next."""

    measure: str
    key: str
    picking: bool = False
    differs: tuple[str, ...] = ()
    then: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class ChoosingDay:
    """A correction that may mean the answers of several days. keys: those readings, newest first. meant: the new value.
    as_typed, at: the message with it. back: as in Confirming."""

    measure: str
    meant: Understood
    keys: tuple[str, ...]
    as_typed: str
    at: datetime
    back: Asking | None = None


@dataclass(frozen=True, slots=True)
class Gate:
    """Safety questions before function tests. signs: the second question is open."""

    signs: bool = False


@dataclass(frozen=True, slots=True)
class Aside:
    """A message with a reading and a sign; the reading waits until the sign is settled."""

    text: str
    ref: str
    at: datetime


@dataclass(frozen=True, slots=True)
class AlarmAsked:
    """A sign was named; is it happening now? back: what was open before. aside: a reading sent along with it. words:
    their own, in which they named it. perhaps_now: not past, and of the client or somebody near."""

    sign: str
    level: str
    back: Asking | None = None
    aside: Aside | None = None
    words: str = ""
    perhaps_now: bool = False


@dataclass(frozen=True, slots=True)
class Alarm:
    """The last alarm, until the client says that it is better or was not meant. nearby: of somebody with them."""

    sign: str
    level: str
    since: datetime
    nearby: bool = False


@dataclass(frozen=True, slots=True)
class Counting:
    """A timed count runs, or has just ended. seconds 0: an open stopwatch. started: when it began."""

    measure: str
    seconds: int
    started: datetime


@dataclass(frozen=True, slots=True)
class StopwatchDone:
    """The stopwatch was stopped at value seconds; keep it?"""

    measure: str
    value: Decimal


@dataclass(frozen=True, slots=True)
class Repeating:
    """A severe reading is being repeated after rest. first: the key of the first reading."""

    measure: str
    first: str


@dataclass(frozen=True, slots=True)
class Setting:
    """A setting or message is being entered. what: "slot", "zone", "language", "units", "pause", "snooze", "word",
    "forget", "leave", "goal", "goal_target", "goal_date", "coach_change", "early_reason", "progress", "leave_cohort",
    "birth_year", "sex", "stature", "background", "cautions", "medicines", "fact" (shall it be noted? detail:
    kind, value, stance).
    detail: chosen so far. back: the question open before, to return to afterwards."""

    what: str
    detail: str = ""
    back: Asking | None = None


Asking = (
    Consenting
    | Enrolling
    | Awaiting
    | Confirming
    | AskingConditions
    | ChoosingDay
    | Gate
    | AlarmAsked
    | Counting
    | StopwatchDone
    | Repeating
    | Setting
)


@dataclass(frozen=True, slots=True)
class Written:
    """A reading of this conversation that undo, an edit or "no, 82.4" can change.

    question: the one it answered.  day: of the check-in it was given in.
    """

    key: str
    ref: str
    measure: str
    question: int = 0
    day: date | None = None


@dataclass(frozen=True, slots=True)
class FactsNoted:
    """Health facts noted last. mark: names them in a button.  before: the fields that changed, as they were."""

    mark: int
    at: datetime
    before: tuple[tuple[str, str], ...]


@dataclass(frozen=True, slots=True)
class PressureWeek:
    """A home blood-pressure series in progress. first, last: local dates. prompt: day of the open prompt, 0 for
    none."""

    first: date
    last: date
    day: int = 0
    evening: bool = False
    taken: int = 0  # readings given to the open prompt


@dataclass(frozen=True, slots=True)
class State:
    """The state of one conversation.

    asking: the open question.  agenda: measures this check-in still asks.  day: slot date of the check-in under way.
    noted: aspects asked about in this check-in, and whether they were the same.  told: context already given in it,
    each once.  gate_passed: local date on which the safety questions were answered well.  written: newest last, few.
    sources: references behind the last answer. word_until: until when plain text goes to the coach as a reply, or to
    whoever stands in for them and wrote (word_to, their number).
    question: number of the open question, included in its buttons' data; never reused, even if a state is lost.
    weighed: when a withdrawn weigh-in took place, since it still counts as one.  first_said, corrected: of the weigh-in
    corrected last, when it took place and how often it was corrected or withdrawn.  early_withdrawn: when withdrawn
    early weights were sent, since each still counts as an attempt.
    alarm: the one that stands.  facts_noted: what undo can take back of what they said of their health.  owed: retests
    that were asked for at a check-in and not given, with how often.  offered: words of the client that a button passes
    on to the coach; offer_open: they were offered just now, so that a yes is for them.  cautioned: cautions already
    given, each once.  looked_back: the check-in with the last look back.  home: the zone to go back to after a stay
    elsewhere, or "".  met: facts that were asked for, each once, whether or not they were given.
    """

    asking: Asking | None = None
    agenda: tuple[str, ...] = ()
    day: date | None = None
    noted: tuple[tuple[str, bool], ...] = ()
    told: tuple[str, ...] = ()
    gate_passed: date | None = None
    written: tuple[Written, ...] = ()
    sources: tuple[str, ...] = ()
    pressure: PressureWeek | None = None
    word_until: datetime | None = None
    word_to: int = 0
    question: int = 0
    weighed: datetime | None = None
    first_said: datetime | None = None
    corrected: int = 0
    early_withdrawn: tuple[datetime, ...] = ()
    alarm: Alarm | None = None
    facts_noted: FactsNoted | None = None
    owed: tuple[tuple[str, int], ...] = ()
    offered: str = ""
    offer_open: bool = False
    cautioned: tuple[str, ...] = ()
    looked_back: date | None = None
    home: str = ""
    met: tuple[str, ...] = ()


def same_question(one: State, other: State) -> bool:
    """Whether it is the same question, however often it was repeated or partly answered."""
    return one.day == other.day and _asks_the_same(one.asking, other.asking)


def _asks_the_same(one: Asking | None, other: Asking | None) -> bool:
    if isinstance(one, Awaiting) and isinstance(other, Awaiting):
        return one.measure == other.measure and replace(one, tries=other.tries) == other
    if isinstance(one, Enrolling) and isinstance(other, Enrolling):
        return replace(one, tries=other.tries) == other
    if isinstance(one, AskingConditions) and isinstance(other, AskingConditions):
        return replace(one, differs=other.differs, then=other.then) == other
    if isinstance(one, Setting | AlarmAsked) and isinstance(other, Setting | AlarmAsked):
        return _asks_the_same(one.back, other.back) and replace(one, back=other.back) == other
    return one == other


FRESH = State()
