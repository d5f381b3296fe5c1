"""Messages about the end of a programme, to the client and to the coach, as values."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from core.dialogue.client.report import Report


@dataclass(frozen=True, slots=True)
class LastReport:
    """The programme is over: what changed, what cannot be told yet, kept check-ins, what to keep doing, what next."""

    report: Report


@dataclass(frozen=True, slots=True)
class LastReportPicture:
    """The report as a picture, or as a PDF of one page."""

    report: Report
    pdf: bool = False
    stands_alone: bool = True


@dataclass(frozen=True, slots=True)
class ReportForCoach:
    """The report with bands, errors and sources: a page to read or print, or a PDF fit to be sent on."""

    report: Report
    pdf: bool = False
    stands_alone: bool = True


@dataclass(frozen=True, slots=True)
class ProgrammeOver:
    """Nothing is asked any more. ended: when the programme did."""

    ended: date | None
    coach: str


@dataclass(frozen=True, slots=True)
class RoundBegins:
    """A programme runs. weeks: 0 if no end is agreed. last: about when it closes. coming: the next check-in."""

    weeks: int
    last: date | None
    coming: date | None
