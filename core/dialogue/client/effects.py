"""Effects of a step. `bot.turns.turn` applies them in order, in one transaction."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from core.dialogue.client.facts import GoalFact
from core.dialogue.kit.effects import Erase, Join, Rows, Say, SendData
from core.reading import Reading
from core.watching.flags import Ended, Evidence, Flag


@dataclass(frozen=True, slots=True)
class NotifyCoach:
    """Queue a message for the coach. urgent: at once, at any hour."""

    message: object
    choices: Rows = ()
    urgent: bool = False
    occasion: str | None = None


@dataclass(frozen=True, slots=True)
class Record:
    """Store a reading under `key`, unique for this client. An existing key is replaced (an edited message)."""

    reading: Reading
    key: str


@dataclass(frozen=True, slots=True)
class Retract:
    """Withdraw a reading; it stays stored as withdrawn and never counts."""

    key: str


@dataclass(frozen=True, slots=True)
class Amend:
    """Change the conditions or notes of the reading stored under `key`; the value stays."""

    key: str
    reading: Reading


@dataclass(frozen=True, slots=True)
class ChangeClient:
    """Change one field of the client: language, zone, slot, units, birth_year, sex, stature, background, cautions,
    medicines, status, consented, paused_until, plan, name. The value has the field's type in `ClientFacts`."""

    field: str
    value: object


@dataclass(frozen=True, slots=True)
class Raise:
    """Open a flag, or refresh the evidence of the open one with the same code and measure."""

    flag: Flag


@dataclass(frozen=True, slots=True)
class Lower:
    """Clear the open flag with this code and measure. ended: what clears it.  after: what followed, such as the repeat
    or the answer, by name."""

    code: str
    measure: str | None = None
    ended: Ended = Ended.ANSWER
    after: Evidence = ()


@dataclass(frozen=True, slots=True)
class SetTimer:
    """Send `TimerFired(purpose, mark)` to this conversation at an instant. One timer per purpose and mark."""

    purpose: str
    at: datetime
    mark: str = ""


SIGN_UNANSWERED, NEXT_MORNING = "alarm_stands", "how_now"  # purposes of timers about a danger sign
HOME = "home"  # purpose of the timer that ends a stay elsewhere
TURNED_AWAY = "turned_away"  # of the one that erases somebody under 18, unless the year was a mistake


@dataclass(frozen=True, slots=True)
class CancelTimer:
    """Cancel the timers of a purpose (any mark)."""

    purpose: str


@dataclass(frozen=True, slots=True)
class DropDelayed:
    """Drop this chat's delayed messages (`Say.after`), because their timed count is over or cancelled."""


@dataclass(frozen=True, slots=True)
class Answered:
    """This check-in was answered: the slot counts as kept. day: its local date, ISO."""

    day: str


@dataclass(frozen=True, slots=True)
class NotAsked:
    """The slot of this local date was never asked (an outage): it does not count as missed."""

    day: str


@dataclass(frozen=True, slots=True)
class SetGoal:
    goal: GoalFact


@dataclass(frozen=True, slots=True)
class DropGoal:
    measure: str


@dataclass(frozen=True, slots=True)
class PassOn:
    """Pass the client's message to the coach, in their thread. urgent: at once, at any hour. to: the coach who stands
    in for theirs and gets it as well, 0 for nobody."""

    text: str
    urgent: bool = False
    to: int = 0


@dataclass(frozen=True, slots=True)
class EnterCohort:
    """This client has joined a cohort, and consented: its organiser hears of it, and their coach is asked, if it is
    another. Until the coach says yes, nothing they do counts there."""

    cohort_id: int


@dataclass(frozen=True, slots=True)
class LeaveCohort:
    """This client no longer takes part in a cohort; what they did in it until today still counts."""

    cohort_id: int


@dataclass(frozen=True, slots=True)
class DropButtons:
    """Remove the buttons of the message that was pressed, so that they are not pressed twice."""

    ref: str


Effect = (
    Say
    | NotifyCoach
    | Record
    | Retract
    | Amend
    | ChangeClient
    | Raise
    | Lower
    | SetTimer
    | CancelTimer
    | DropDelayed
    | Answered
    | NotAsked
    | SetGoal
    | DropGoal
    | PassOn
    | Join
    | EnterCohort
    | LeaveCohort
    | SendData
    | Erase
    | DropButtons
)
