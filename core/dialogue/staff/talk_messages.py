"""Messages of a coach's talk with clients and about them: to whom words go and what became of them, files, pictures"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from core.judging.chart_data import PressureWeekChart, RatingLine, TrendChart


@dataclass(frozen=True, slots=True)
class AskWhoGets:
    """To whom should these words go? why: "named" (they name somebody else than the client they were for), "late" (the
    writing was closed by then), "offer" (they were for nobody, and name somebody). others: whom they name."""

    name: str
    others: tuple[str, ...]
    words: str
    why: str


@dataclass(frozen=True, slots=True)
class StillWriting:
    """The next words still go to this client."""

    name: str


@dataclass(frozen=True, slots=True)
class WritingClosed:
    """The next words do not go to this client any more, and nothing was sent."""

    name: str


@dataclass(frozen=True, slots=True)
class ThanksToNobody:
    """Thanks that no client was meant to get: they went nowhere."""


# --- files and pictures ---------------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class AskExport:
    """In which form should all readings of this client come?"""

    name: str


@dataclass(frozen=True, slots=True)
class NothingToExport:
    name: str


@dataclass(frozen=True, slots=True)
class ClientFile:
    """All readings of a client as a file. form: "csv", "fhir"."""

    name: str
    form: str
    day: date
    content: str
    stands_alone: bool = True


@dataclass(frozen=True, slots=True)
class AskPicture:
    """Of what? measure: which there is no picture of, "" if none was named. none: there is no picture at all."""

    name: str
    measure: str = ""
    none: bool = False


@dataclass(frozen=True, slots=True)
class ClientPicture:
    """One measure of a client."""

    name: str
    spec: TrendChart | RatingLine | PressureWeekChart
    stands_alone: bool = True


# --- frequent weighing ----------------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class AskClinician:
    """Who asked that this client be weighed often?"""

    name: str


@dataclass(frozen=True, slots=True)
class DirectedSure:
    """Frequent weighing, at somebody's request: sure? The client is told who asked for it."""

    name: str
    by: str
