"""What can happen in a chat. `at` is the instant it happened, aware, UTC.

ref names the message on the platform, so that an edit finds what it corrects; "" if there is none.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime, timedelta


@dataclass(frozen=True, slots=True)
class Text:
    """Somebody typed. edited: new text of an earlier message (same ref). reply_to: the message it is a reply to."""

    at: datetime
    text: str
    ref: str = ""
    edited: bool = False
    reply_to: str = ""


@dataclass(frozen=True, slots=True)
class Press:
    """Somebody pressed a button; data is ours, but may come from an old message, so it is never trusted."""

    at: datetime
    data: str
    ref: str = ""


@dataclass(frozen=True, slots=True)
class Command:
    """ "/name argument". Opening an invitation link arrives as name="start", argument=token."""

    at: datetime
    name: str
    argument: str = ""
    ref: str = ""


@dataclass(frozen=True, slots=True)
class Attachment:
    """Something that is not text: kind is "voice", "photo", "video", "sticker", "document", "location", "contact"..."""

    at: datetime
    kind: str
    ref: str = ""


@dataclass(frozen=True, slots=True)
class Due:
    """A weekly slot is due: its local date, and how late we are. instead_of: the coach whose digest comes to whoever
    stands in for them; 0 for one's own."""

    at: datetime
    day: date
    late_by: timedelta = timedelta(0)
    instead_of: int = 0


@dataclass(frozen=True, slots=True)
class TimerFired:
    """A timer set with the `SetTimer` effect fired. mark: as in the effect; late_by: how late we are."""

    at: datetime
    purpose: str
    mark: str = ""
    late_by: timedelta = timedelta(0)


@dataclass(frozen=True, slots=True)
class FromCoach:
    """The coach wrote to this client through us. by: the coach who stands in for theirs, 0 if it was their own."""

    at: datetime
    coach: str
    text: str
    by: int = 0


@dataclass(frozen=True, slots=True)
class PlanChanged:
    """The coach changed the plan, or another coach took over; what: key of the change, "" if the client is not told."""

    at: datetime
    what: str
    detail: str = ""


@dataclass(frozen=True, slots=True)
class Reachability:
    """The messenger reported that the person blocked or unblocked us."""

    at: datetime
    reachable: bool


@dataclass(frozen=True, slots=True)
class GroupEvent:
    """An event in a group chat that is, or may be, linked to a cohort. What people say there never becomes an event.

    what: "added", "removed" (the bot), "migrated" (to other_chat), "joined", "left" (somebody), "start" (the link that
    brought the bot; text is its token), "bind", "unbind" (the organiser's command), "number" (somebody typed what looks
    like a reading; the number itself is not included). by: chat id of the person.
    """

    at: datetime
    what: str
    by: int = 0
    text: str = ""
    ref: str = ""
    other_chat: int = 0


Event = Text | Press | Command | Attachment | Due | TimerFired | FromCoach | PlanChanged | Reachability | GroupEvent
