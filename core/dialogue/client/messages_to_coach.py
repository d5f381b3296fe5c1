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
class ClientWord:
    """The client's message to the coach."""

    client_id: int
    name: str
    text: str


@dataclass(frozen=True, slots=True)
class ClientEnrolled:
    client_id: int
    name: str


@dataclass(frozen=True, slots=True)
class ClientLeft:
    name: str


@dataclass(frozen=True, slots=True)
class ClientPaused:
    client_id: int
    name: str
    until: date


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
    """To a coach: a client of yours takes part in somebody's cohort."""

    name: str
    cohort: str
    by: str
