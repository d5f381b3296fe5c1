"""Everything a coach's or organiser's conversation remembers between two events.

A state must always load: an unknown or corrupt one is replaced by a new one, and the next reply is a menu.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import date, datetime

from core.dialogue.staff.cohort_states import OrganiserAsking


@dataclass(frozen=True, slots=True)
class Inviting:
    """Waiting for the invitee's name. template: the saved plan chosen for it, "" for the usual one."""

    template: str = ""


@dataclass(frozen=True, slots=True)
class WritingTo:
    """The next words go to this client. since: when that began, None if it was not noted."""

    client_id: int
    since: datetime | None = None


@dataclass(frozen=True, slots=True)
class ConfirmingWords:
    """Whether these words are for this client, or for one of the others whom they name. why: as in
    `talk_messages.AskWhoGets`. again: it was put a second time, and is not put a third."""

    client_id: int
    words: str
    others: tuple[int, ...] = ()
    why: str = "named"
    again: bool = False


@dataclass(frozen=True, slots=True)
class NotingOn:
    """The next words become the note on this client's card."""

    client_id: int


@dataclass(frozen=True, slots=True)
class NamingClient:
    """The next words become the name under which this coach sees the client."""

    client_id: int


@dataclass(frozen=True, slots=True)
class DealingWith:
    """Waiting for what was done about these flags of a client. urgent: "nothing needed" wants a reason; reason: it is
    being asked for."""

    client_id: int
    flag_ids: tuple[int, ...]
    urgent: bool
    reason: bool = False


@dataclass(frozen=True, slots=True)
class ChoosingClient:
    """Several clients, or none yet, match. what: a button's verb, and what follows the client in its value ("card",
    "write", "picture:waist"). words: to send once chosen. among: whom a name may have meant; the words go to nobody
    else."""

    what: str
    words: str = ""
    among: tuple[int, ...] = ()


@dataclass(frozen=True, slots=True)
class ChangingSlot:
    """Waiting for the weekday and time of a client's check-in. weekday: chosen so far, "" for none."""

    client_id: int
    weekday: str = ""


@dataclass(frozen=True, slots=True)
class Ticking:
    """Measures or cautions of a client are being ticked. chosen: so far."""

    what: str
    client_id: int
    chosen: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class NamingTemplate:
    """Waiting for a name under which to save this client's plan."""

    client_id: int


@dataclass(frozen=True, slots=True)
class NamingClinician:
    """Waiting for who asked that this client be weighed often."""

    client_id: int


@dataclass(frozen=True, slots=True)
class AskingSure:
    """A step that cannot be taken back, or tells the client something weighty. what: "baseline", "end", "hand_over",
    "forget", "directed", "note".  to: the new coach.  words: who asked for the weighing, or the note."""

    what: str
    client_id: int = 0
    to: int = 0
    words: str = ""


@dataclass(frozen=True, slots=True)
class ChangingOwn:
    """A setting of one's own. what: "digest", "zone", "language".  weekday: of the digest, chosen so far."""

    what: str
    weekday: str = ""


@dataclass(frozen=True, slots=True)
class ChoosingDeputyDays:
    """From when to when should this coach stand in?"""

    coach_id: int


@dataclass(frozen=True, slots=True)
class Undo:
    """The last thing that was done, and the effect that undoes it; both are effects of this conversation. at: when."""

    did: object
    back: object
    at: datetime


StaffAsking = (
    Inviting
    | WritingTo
    | ConfirmingWords
    | NotingOn
    | NamingClient
    | DealingWith
    | ChoosingClient
    | ChangingSlot
    | Ticking
    | NamingTemplate
    | NamingClinician
    | AskingSure
    | ChangingOwn
    | ChoosingDeputyDays
    | OrganiserAsking
)


@dataclass(frozen=True, slots=True)
class StaffState:
    """asking: the open question.  digest_day, digest_flags, digest_at: what the last digest showed and when it was
    made, for its button "seen".

    question: number of what is open, in the data of its buttons; a choice that is made ends it.  undo: what was done
    last, if it can be undone.
    """

    asking: StaffAsking | None = None
    digest_day: date | None = None
    digest_flags: tuple[int, ...] = ()
    question: int = 0
    digest_at: datetime | None = None
    undo: Undo | None = None


def same_question(one: StaffAsking | None, other: StaffAsking | None) -> bool:
    """Whether it is the same question, however much was ticked in the meantime, or how often it was put."""
    if isinstance(one, Ticking) and isinstance(other, Ticking):
        return replace(one, chosen=()) == replace(other, chosen=())
    if isinstance(one, ConfirmingWords) and isinstance(other, ConfirmingWords):
        return replace(one, again=False) == replace(other, again=False)
    return one == other


FRESH_STAFF = StaffState()
