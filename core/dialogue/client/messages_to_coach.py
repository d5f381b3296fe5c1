"""Messages to the coach from a client's turn. Those of the coach's own conversation are in staff/messages.py."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime
from decimal import Decimal


@dataclass(frozen=True, slots=True)
class UrgentFlag:
    """Something that cannot wait for the digest: who, what, the evidence, since when."""

    client_id: int
    name: str
    code: str
    measure: str | None
    evidence: tuple[tuple[str, str | Decimal], ...]
    since: datetime


@dataclass(frozen=True, slots=True)
class HealthChanged:
    """A client's health facts changed. begun, over: cautions.  taken, stopped: medicines that slow the pulse.  fields:
    of the profile, "stature", "birth_year", "sex", "background".  undirected: heart failure without directed weighing,
    so that a fast gain is not watched.  undone: they took back what they had said."""

    client_id: int
    name: str
    begun: tuple[str, ...]
    over: tuple[str, ...]
    taken: tuple[str, ...]
    stopped: tuple[str, ...]
    fields: tuple[str, ...]
    undirected: bool = False
    undone: bool = False


@dataclass(frozen=True, slots=True)
class DoctorFirst:
    """Before exercise the client was advised to see their doctor. signs: those they named; diseases: cautions."""

    client_id: int
    name: str
    signs: tuple[str, ...]
    diseases: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class RepeatTaken:
    """To whoever was alarmed: what was measured next. code: of the alarm; after: the figures; settled: whether they no
    longer alarm.  slip: it was no repeat, the alarming figures were a slip and were put right."""

    client_id: int
    name: str
    code: str
    measure: str | None
    after: tuple[tuple[str, str | Decimal], ...]
    settled: bool
    slip: bool = False


@dataclass(frozen=True, slots=True)
class SignAnswered:
    """To whoever heard that a question about a sign stood unanswered: it was no sign after all."""

    client_id: int
    name: str
    sign: str


@dataclass(frozen=True, slots=True)
class ClientWord:
    """The client's message to the coach."""

    client_id: int
    name: str
    text: str


@dataclass(frozen=True, slots=True)
class ClientEnrolled:
    """alike: the name they share with another client of this coach, "" if they share it with nobody."""

    client_id: int
    name: str
    alike: str = ""


@dataclass(frozen=True, slots=True)
class ClientLeft:
    name: str


@dataclass(frozen=True, slots=True)
class ClientPaused:
    client_id: int
    name: str
    until: date


@dataclass(frozen=True, slots=True)
class ClientIll:
    """An illness that everybody has now and then: a flu, a stomach bug. Nothing urgent; no test until it is over."""

    client_id: int
    name: str


@dataclass(frozen=True, slots=True)
class ProgrammeEnded:
    """The client's programme is over; the report follows. kept, asked: check-ins."""

    client_id: int
    name: str
    kept: int
    asked: int


@dataclass(frozen=True, slots=True)
class NewRound:
    """The client began a new programme of as many weeks as the last. last: about when it closes."""

    client_id: int
    name: str
    weeks: int
    last: date


@dataclass(frozen=True, slots=True)
class ClientMoved:
    """The client moved to another coach, with their consent."""

    name: str


@dataclass(frozen=True, slots=True)
class ClientUnreachable:
    client_id: int
    name: str


@dataclass(frozen=True, slots=True)
class ClientBack:
    client_id: int
    name: str


@dataclass(frozen=True, slots=True)
class ClientInCohort:
    """To a coach: a client of yours has joined somebody's cohort. May they be counted there? Buttons answer."""

    name: str
    cohort: str
    by: str


News = (  # each with the client's name
    UrgentFlag
    | HealthChanged
    | RepeatTaken
    | SignAnswered
    | ClientWord
    | ClientEnrolled
    | ClientLeft
    | ClientPaused
    | ClientIll
    | ProgrammeEnded
    | NewRound
    | ClientMoved
    | ClientUnreachable
    | ClientBack
    | ClientInCohort
)
