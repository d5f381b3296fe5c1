"""Effects of a coach's or organiser's step, in addition to client.effects."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from core.care import Plan, Slot
from core.dialogue.staff.cohort_effects import CohortEffect
from core.dialogue.staff.facts import DeputyFact


@dataclass(frozen=True, slots=True)
class Invite:
    """Create a single-use invitation; the link is sent to this chat as staff.messages.InvitationMade.

    kind: "client", "coach", "organiser", "cohort".  for_name: whom it is for.  plan: the client's initial plan.
    """

    kind: str
    for_name: str
    plan: Plan | None = None
    cohort_id: int | None = None


@dataclass(frozen=True, slots=True)
class Revoke:
    """Revoke one invitation, so that its link no longer works, and report the result."""

    invitation_id: int


@dataclass(frozen=True, slots=True)
class WriteTo:
    """Send a message to a client of this caseload, in their thread."""

    client_id: int
    text: str


@dataclass(frozen=True, slots=True)
class Export:
    """Send the coach all readings of a client of this caseload as a file. form: "csv", "fhir"."""

    client_id: int
    form: str


@dataclass(frozen=True, slots=True)
class ChangePlan:
    """Give a client of this caseload another plan or slot. what: key of the news for the client, "" for none."""

    client_id: int
    what: str
    plan: Plan | None = None
    slot: Slot | None = None
    cautions: frozenset[str] | None = None
    detail: str = ""


@dataclass(frozen=True, slots=True)
class AnswerCohort:
    """Whether a client of this caseload, who has joined somebody's cohort, may be counted there. The reply names the
    cohort, so it comes with the effect (organiser.messages.CountsInCohort, MemberRemoved)."""

    client_id: int
    cohort_id: int
    yes: bool


@dataclass(frozen=True, slots=True)
class SaveNote:
    client_id: int
    text: str


@dataclass(frozen=True, slots=True)
class CallClient:
    """The name under which this coach sees a client; "" for the client's own."""

    client_id: int
    name: str


@dataclass(frozen=True, slots=True)
class MarkSeen:
    """These flags of clients of this caseload were seen; they stay open. until: when the message that told them was
    made."""

    flag_ids: tuple[int, ...]
    until: datetime


@dataclass(frozen=True, slots=True)
class ToldInDigest:
    """The weekly digest has named these flags, or told their end."""

    flag_ids: tuple[int, ...]


@dataclass(frozen=True, slots=True)
class ClearFlags:
    """The coach has dealt with these flags. done: what was done, of core.watching.flags.Done; words: in theirs."""

    client_id: int
    flag_ids: tuple[int, ...]
    done: str
    words: str = ""


@dataclass(frozen=True, slots=True)
class HandOver:
    """Hand a client over to another coach; both and the client are notified."""

    client_id: int
    to_coach: int


@dataclass(frozen=True, slots=True)
class EndCare:
    """The coach ends the care of a client, who is notified; nothing is erased."""

    client_id: int


@dataclass(frozen=True, slots=True)
class SaveTemplate:
    name: str
    plan: Plan


@dataclass(frozen=True, slots=True)
class DropTemplate:
    name: str


@dataclass(frozen=True, slots=True)
class SetDigest:
    """When this coach's digest comes; None ends it."""

    slot: Slot | None


@dataclass(frozen=True, slots=True)
class SetZone:
    """Change this person's time zone; a digest keeps its weekday and local time."""

    zone_name: str


@dataclass(frozen=True, slots=True)
class SetNight:
    """Whether same-day news waits for the morning."""

    quiet: bool


@dataclass(frozen=True, slots=True)
class SetDeputy:
    """Who stands in for this coach; None: nobody."""

    deputy: DeputyFact | None


@dataclass(frozen=True, slots=True)
class SetWait:
    """How many minutes an emergency waits for this coach before it goes to the deputy."""

    minutes: int


@dataclass(frozen=True, slots=True)
class SetLanguage:
    language: str


@dataclass(frozen=True, slots=True)
class ForgetMe:
    """Erase this coach or organiser. `farewell` is the last message."""

    farewell: object


StaffEffect = (
    Invite
    | Revoke
    | WriteTo
    | Export
    | ChangePlan
    | AnswerCohort
    | SaveNote
    | CallClient
    | MarkSeen
    | ToldInDigest
    | ClearFlags
    | HandOver
    | EndCare
    | SaveTemplate
    | DropTemplate
    | SetDigest
    | SetZone
    | SetNight
    | SetDeputy
    | SetWait
    | SetLanguage
    | ForgetMe
    | CohortEffect
)
