"""Messages to a coach or an organiser, as values. Texts are in bot.rendering.phrases."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime, time
from decimal import Decimal

from core.care import METRIC, Plan, Slot, Units
from core.dialogue.client.messages import BandSaid, VerdictSaid
from core.dialogue.client.results import Result
from core.quantity import Amount
from core.watching.digest import CaseRow, Digest, FlagFact, Panel
from core.watching.practice import Practice


@dataclass(frozen=True, slots=True)
class StaffWelcome:
    """The invitation was opened: what this person can do here, and what Samehour is not."""

    name: str
    coach: bool
    organiser: bool


@dataclass(frozen=True, slots=True)
class StaffHelp:
    coach: bool
    organiser: bool


@dataclass(frozen=True, slots=True)
class StaffNotSure:
    coach: bool
    organiser: bool


@dataclass(frozen=True, slots=True)
class NotYours:
    """A person or thing that is not in this caseload or cohort; reveals nothing more."""


# --- inviting ---------------------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class StaffGreeting:
    """A hello or a thank-you, answered in kind."""


@dataclass(frozen=True, slots=True)
class AskInvitee:
    """Whom is the invitation for? templates: saved plans that can be chosen."""

    templates: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class InvitationMade:
    """A link for one person, once, until a date. kind: "client", "coach", "organiser", "cohort"."""

    kind: str
    for_name: str
    link: str
    until: date


@dataclass(frozen=True, slots=True)
class LinkPicture:
    """The link as a QR code to show or print. A picture of its own."""

    link: str
    for_name: str
    stands_alone: bool = True


@dataclass(frozen=True, slots=True)
class InvitationRevoked:
    """for_name: "" if there was nothing to revoke, because the link was already used or revoked."""

    for_name: str


@dataclass(frozen=True, slots=True)
class TemplatesKept:
    """Plans saved under a name; buttons drop one."""

    templates: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class TemplateDropped:
    template: str


# --- caseload and card ------------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class CaseloadList:
    """rows of this page, in order; order: "need" or "name"; page from 0, pages in all."""

    rows: tuple[CaseRow, ...]
    order: str
    page: int
    pages: int
    total: int


@dataclass(frozen=True, slots=True)
class NoClientsYet:
    pass


@dataclass(frozen=True, slots=True)
class NobodyFound:
    """query: the coach's own words, repeated."""

    query: str


@dataclass(frozen=True, slots=True)
class WhichClient:
    names: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class CardLine:
    """One measure on a card: its last reading, the band and the verdict, in the client's units. words: what the client
    wrote about the week."""

    measure: str
    amount: Amount
    second: Decimal | None
    on: date
    band: BandSaid | None
    verdict: VerdictSaid | None
    words: str = ""


@dataclass(frozen=True, slots=True)
class LastSaid:
    """The newest value of one measure of a client; line: None if there is none."""

    name: str
    measure: str
    line: CardLine | None


@dataclass(frozen=True, slots=True)
class CardSaid:
    """One client: plan, cautions, last readings with bands and verdicts, open flags, the note."""

    name: str
    status: str
    age: int | None
    cautions: tuple[str, ...]
    slot: Slot | None
    measures: tuple[str, ...]
    directed: bool
    numbers: str
    answered: date | None
    paused_until: date | None
    reachable: bool
    lines: tuple[CardLine, ...]
    flags: tuple[FlagFact, ...]
    note: str
    medicines: tuple[str, ...] = ()  # stored without them before there were any
    units: Units = METRIC
    for_coach: str = ""
    own_name: str = ""  # what they call themselves, if the coach calls them otherwise
    before_exercise: str = ""  # the verdict of core.judging.readiness, "" if there is none
    directed_by: str = ""


@dataclass(frozen=True, slots=True)
class ThreadSaid:
    """The last messages between coach and client: (when, from the client?, text)."""

    name: str
    words: tuple[tuple[datetime, bool, str], ...]


@dataclass(frozen=True, slots=True)
class AskWhom:
    """To whom should something be written?"""


@dataclass(frozen=True, slots=True)
class AskWords:
    """What should be written to this client?"""

    name: str


@dataclass(frozen=True, slots=True)
class WordsSent:
    """reachable: False when messages do not arrive at the moment."""

    name: str
    reachable: bool = True


@dataclass(frozen=True, slots=True)
class AskNote:
    name: str
    note: str


@dataclass(frozen=True, slots=True)
class NoteSaved:
    name: str


@dataclass(frozen=True, slots=True)
class PlanSaid:
    """A client's plan as it is; buttons change it."""

    name: str
    plan: Plan
    slot: Slot | None
    cautions: tuple[str, ...]
    medicines: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class PlanChosen:
    """A change was made. what: "measures", "interval", "slot", "directed_weighing", "directed_weighing_off", "numbers",
    "cautions", "baseline", "planned_loss", "pressure_body"."""

    name: str
    what: str


@dataclass(frozen=True, slots=True)
class AskMeasures:
    """Which measures? chosen: those of the plan; buttons add or remove one."""

    name: str
    chosen: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class AskInterval:
    """How many days between retests?"""

    name: str
    days: int


@dataclass(frozen=True, slots=True)
class AskCautions:
    name: str
    chosen: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class AskProgramme:
    """How many weeks is this client's programme? now: its weeks, 0 for no end."""

    name: str
    now: int


@dataclass(frozen=True, slots=True)
class AskPressureBody:
    """Whose blood pressure limits? body: the plan's current one."""

    name: str
    body: str


@dataclass(frozen=True, slots=True)
class AskSlotFor:
    name: str


@dataclass(frozen=True, slots=True)
class AskBaseline:
    """A new baseline starts the comparison afresh: sure?"""

    name: str


@dataclass(frozen=True, slots=True)
class AskTemplateName:
    name: str


@dataclass(frozen=True, slots=True)
class TemplateSaved:
    template: str


@dataclass(frozen=True, slots=True)
class AskHandOver:
    name: str
    coaches: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class NoOtherCoach:
    """There is nobody to hand a client to."""


@dataclass(frozen=True, slots=True)
class HandOverSure:
    name: str
    to: str


@dataclass(frozen=True, slots=True)
class HandedOver:
    name: str
    to: str


@dataclass(frozen=True, slots=True)
class TakenOver:
    """Another coach handed this client to you."""

    client_id: int
    name: str
    by: str


@dataclass(frozen=True, slots=True)
class AskEnd:
    name: str


@dataclass(frozen=True, slots=True)
class CareEnded:
    name: str


# --- the digest -------------------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class DigestSaid:
    digest: Digest


@dataclass(frozen=True, slots=True)
class PeopleNamed:
    """Buttons for everybody the digest names: how many in all; page from 0, pages in all."""

    total: int
    page: int
    pages: int


@dataclass(frozen=True, slots=True)
class Sheet:
    """One small trend for each flagged client and measure, as a picture or, for printing, as a PDF.

    left_out: how many did not fit. pdf: a file instead of a picture.
    """

    day: date
    panels: tuple[Panel, ...]
    left_out: int = 0
    pdf: bool = False
    stands_alone: bool = True


@dataclass(frozen=True, slots=True)
class ClientSection:
    """One client on a page: the card (its `lines` are left to `results`), every result, and the newest messages
    between client and coach, as (when, from the client?, text)."""

    client_id: int
    card: CardSaid
    results: tuple[Result, ...]
    words: tuple[tuple[datetime, bool, str], ...] = ()


@dataclass(frozen=True, slots=True)
class CaseloadPage:
    """A whole caseload on one page to read or print, everybody once, in the order of the digest of that day.

    others: everybody with nothing to report, by name. asked, kept: the week's check-ins. left_out: names of clients
    whose data did not fit, or could not be loaded.
    """

    day: date
    needs: tuple[ClientSection, ...] = ()
    changes: tuple[ClientSection, ...] = ()
    quiet: tuple[ClientSection, ...] = ()
    others: tuple[ClientSection, ...] = ()
    asked: int = 0
    kept: int = 0
    left_out: tuple[str, ...] = ()
    stands_alone: bool = True

    @property
    def sections(self) -> tuple[ClientSection, ...]:
        return (*self.needs, *self.changes, *self.quiet, *self.others)


@dataclass(frozen=True, slots=True)
class ClientPage:
    """One client on a page."""

    day: date
    section: ClientSection
    stands_alone: bool = True


@dataclass(frozen=True, slots=True)
class PracticeSaid:
    """The practice report of a quarter in words. number, year: of the quarter."""

    report: Practice
    number: int
    year: int


@dataclass(frozen=True, slots=True)
class PracticePage:
    """The same as a page to read, to print or to send on. coach: whose practice."""

    report: Practice
    number: int
    year: int
    coach: str
    stands_alone: bool = True


@dataclass(frozen=True, slots=True)
class WhichQuarter:
    """Not a quarter that is over; buttons name those that are."""


@dataclass(frozen=True, slots=True)
class NothingToDraw:
    """No flagged client has enough readings to draw a line."""


@dataclass(frozen=True, slots=True)
class SeenNoted:
    names: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class FlagsCleared:
    """done, words: what was done, as in core.watching.flags.Done; "" in a message from before it was asked."""

    name: str
    done: str = ""
    words: str = ""


@dataclass(frozen=True, slots=True)
class AskDone:
    """What was done about these flags?"""

    name: str
    flags: tuple[FlagFact, ...]
    units: Units = METRIC


@dataclass(frozen=True, slots=True)
class AskWhyNothing:
    """Why was nothing needed about something urgent?"""

    name: str


@dataclass(frozen=True, slots=True)
class HistorySaid:
    """Flags of a client that are over, the last to end first."""

    name: str
    flags: tuple[FlagFact, ...]
    units: Units = METRIC


# --- settings and leaving ---------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class StaffSettings:
    weekday: int
    at: time
    zone_name: str
    night: bool
    digest: bool = True


@dataclass(frozen=True, slots=True)
class AskDigestSlot:
    """On which weekday and at what time should the digest be sent?"""


@dataclass(frozen=True, slots=True)
class AskStaffZone:
    """In which time zone is this person? Asked by town."""


@dataclass(frozen=True, slots=True)
class DigestSlotChanged:
    weekday: int
    at: time
    next: date
    zone_name: str


@dataclass(frozen=True, slots=True)
class DigestStopped:
    """No more digests until switched on again; urgent news is still sent."""


@dataclass(frozen=True, slots=True)
class DeputyShown:
    """Who stands in for this coach, and from when to when; name "" for nobody. wait: minutes an emergency waits."""

    name: str
    begins: date | None
    ends: date | None
    wait: int


@dataclass(frozen=True, slots=True)
class AskDeputyDays:
    """When should this coach stand in?"""

    name: str


@dataclass(frozen=True, slots=True)
class YouStandIn:
    """To the deputy: for whom, and from when to when."""

    name: str
    begins: date | None
    ends: date | None


@dataclass(frozen=True, slots=True)
class DeputyAlarm:
    """To the deputy: something urgent that its coach has not acknowledged. waited: minutes."""

    client_id: int
    name: str
    coach: str
    waited: int
    code: str
    measure: str | None
    evidence: tuple[tuple[str, str | Decimal], ...]
    since: datetime


@dataclass(frozen=True, slots=True)
class DigestFor:
    """To the deputy: the digest of a coach who is away."""

    coach: str
    digest: Digest


@dataclass(frozen=True, slots=True)
class NightChanged:
    night: bool


@dataclass(frozen=True, slots=True)
class StaffForgetSure:
    """Forgetting a coach needs their clients handed over or told first; clients: how many there still are."""

    clients: int


@dataclass(frozen=True, slots=True)
class StaffForgotten:
    pass


@dataclass(frozen=True, slots=True)
class UsedForCare:
    """This chat is a coach's; a client invitation needs another account."""
