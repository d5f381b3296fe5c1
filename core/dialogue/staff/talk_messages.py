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
class WordsDropped:
    """Something else was asked for: the words that were offered to this client went to nobody."""

    name: str


@dataclass(frozen=True, slots=True)
class NoteKept:
    """What the note on this client says now."""

    name: str
    note: str


@dataclass(frozen=True, slots=True)
class NoteSure:
    """Words that were to be a note ask for something, or name another client: are they the note?"""

    name: str
    words: str


@dataclass(frozen=True, slots=True)
class NoteTakenBack:
    """The note is as it was before. changed: it was not, since it has changed in the meantime."""

    name: str
    note: str
    changed: bool = False


@dataclass(frozen=True, slots=True)
class TheirsToDo:
    """Only the client can do this. what: "pause", "correct"."""

    name: str
    what: str


@dataclass(frozen=True, slots=True)
class NewDay:
    """The check-in of this client is to be on another weekday; its time is asked next."""

    name: str
    weekday: int


@dataclass(frozen=True, slots=True)
class ThanksToNobody:
    """Thanks that no client was meant to get: they went nowhere."""


@dataclass(frozen=True, slots=True)
class TakingBack:
    """Words that are being taken back, and who took them back: never said, it waits with the order to delete them."""

    name: str
    chat_id: int
    person_id: int
    client_id: int


@dataclass(frozen=True, slots=True)
class WordsTakenBack:
    """What became of words that were taken back. how: "never" (they had not arrived), "deleted" (from the chat, where
    they may have been read), "stays" (the messenger does not delete them)."""

    name: str
    how: str


@dataclass(frozen=True, slots=True)
class TooLateToTakeBack:
    name: str


@dataclass(frozen=True, slots=True)
class ActionUndone:
    """The last thing this coach did is undone. what: "flags", "plan", "seen", "own".  name: of the client, "" if it was
    about none."""

    what: str
    name: str = ""


@dataclass(frozen=True, slots=True)
class NothingToUndo:
    """Nothing was done that can be undone, or too long ago, or it has changed since."""


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
