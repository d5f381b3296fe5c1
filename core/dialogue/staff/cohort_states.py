"""State of an organiser's conversation while a cohort is set up. Part of `staff.states.StaffState`."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date


@dataclass(frozen=True, slots=True)
class PlanningCohort:
    """A new cohort, as far as it is known. question: the open one. starts None, weeks 0, at "", most 0: unknown."""

    question: str  # "name", "start", "weeks", "time", "counts", "most", "coach"
    name: str = ""
    starts: date | None = None
    weeks: int = 0
    weekday: int = 0
    at: str = ""  # wall time, ISO
    counts: str = ""
    most: int = 0  # people whom one link lets in


@dataclass(frozen=True, slots=True)
class SureOfCohort:
    """A step that cannot be taken back. what: "remove", "end"."""

    what: str
    cohort_id: int
    client_id: int = 0


@dataclass(frozen=True, slots=True)
class InvitingOrganiser:
    """Waiting for the name of a new organiser."""


OrganiserAsking = PlanningCohort | SureOfCohort | InvitingOrganiser
