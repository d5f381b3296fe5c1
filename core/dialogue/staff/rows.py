"""Commands and buttons in a staff chat: who may use them, what is loaded, what they do."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, field
from enum import StrEnum

from core.dialogue.kit.commands import Argument, Chat, CommandRow, HalfMade, Who
from core.dialogue.staff.digest import is_page
from core.dialogue.staff.facts import (
    CardOf,
    CardsFlagged,
    CardsNamed,
    CardsOfAll,
    Caseload,
    Cohorts,
    MentionedIn,
    Need,
    OtherCoaches,
    QuarterMeant,
    Templates,
)
from core.dialogue.staff.step import Handler

Needs = Callable[[str], tuple[Need, ...]]  # from the text after the command, or after the button's verb


@dataclass(frozen=True, slots=True, kw_only=True)
class StaffCommand(CommandRow[Handler]):
    """needs: what to load for an argument. Only the first word of a text is known before its language is, so a command
    that plain words can mean must make do with what every text loads."""

    chat: Chat = field(init=False, default=Chat.STAFF)
    needs: Needs

    def __post_init__(self) -> None:
        CommandRow.__post_init__(self)
        if self.words and not set(self.needs("")) <= {Caseload()}:
            raise HalfMade(f"/{self.name}: nothing but the caseload is loaded for plain words")
        if self.argument in (Argument.TEXT, Argument.SPOKEN):
            raise HalfMade(f"/{self.name}: the words after a staff command are not interpreted as text")


NEVER = 9  # parts that no value has


class About(StrEnum):
    """Whose number comes first in a button's data."""

    CLIENT = "client"
    COHORT = "cohort"
    NOBODY = "nobody"


@dataclass(frozen=True, slots=True, kw_only=True)
class StaffButton:
    """A button. verb: its data up to the colon; what follows is the value that `needs` and `act` are given.

    decides: from how many parts of the value on it is a choice, which is valid only while its question is open, and
    only once ("measures:17" asks, "measures:17:waist" chooses); NEVER for one that only shows, or names all it does.
    """

    verb: str
    who: Who
    about: About
    needs: Needs
    act: Handler
    decides: int

    def is_choice(self, value: str) -> bool:
        return len(value.split(":")) >= self.decides if value else self.decides == 0

    def __post_init__(self) -> None:
        if not self.verb.isalpha() or self.who is Who.CLIENT:
            raise HalfMade(f"button {self.verb!r}: not a button of staff")
        loaded = self.needs("17")
        if self.about is About.CLIENT and CardOf(17) not in loaded:
            raise HalfMade(f"button {self.verb}: the client it names is not loaded")
        if self.about is About.COHORT and Cohorts() not in loaded:
            raise HalfMade(f"button {self.verb}: the cohort it names is not loaded")


def by_verb(buttons: Iterable[StaffButton]) -> Mapping[str, StaffButton]:
    """Raises: HalfMade when two buttons have one verb."""
    found: dict[str, StaffButton] = {}
    for button in buttons:
        if button.verb in found:
            raise HalfMade(f"button {button.verb}: two buttons have this verb")
        found[button.verb] = button
    return found


# --- what to load -----------------------------------------------------------------------------------------------


def nothing(value: str) -> tuple[Need, ...]:
    return ()


def caseload(value: str) -> tuple[Need, ...]:
    return (Caseload(),)


def flagged(value: str) -> tuple[Need, ...]:
    return (Caseload(), CardsFlagged())


def other_coaches(value: str) -> tuple[Need, ...]:
    return (OtherCoaches(),)


def digest_or_page(value: str) -> tuple[Need, ...]:
    return (Caseload(), CardsOfAll()) if is_page(value) else flagged(value)


def page_of(words: str) -> tuple[Need, ...]:
    """The words are a name; without one, everybody."""
    return named(words) if words.strip() else (Caseload(), CardsOfAll())


def page(value: str) -> tuple[Need, ...]:
    """The client whose number comes first; without one, everybody."""
    return card(value) if value else (Caseload(), CardsOfAll())


def quarter(words: str) -> tuple[Need, ...]:
    return (QuarterMeant(words),)


def templates(value: str) -> tuple[Need, ...]:
    return (Templates(),)


def cohorts(value: str) -> tuple[Need, ...]:
    return (Cohorts(), OtherCoaches())


def named(words: str) -> tuple[Need, ...]:
    """The words are a name, or hold one."""
    return (Caseload(), CardsNamed(words, whole=True, anywhere=True)) if words.strip() else (Caseload(),)


def addressed(words: str) -> tuple[Need, ...]:
    """The words begin with a name, and may name others."""
    return (Caseload(), CardsNamed(words), MentionedIn(words)) if words.strip() else (Caseload(),)


def card(value: str) -> tuple[Need, ...]:
    """The client whose number comes first."""
    number = value.partition(":")[0]
    return (CardOf(int(number)),) if number.isdecimal() and len(number) < 19 else ()


def card_or_caseload(value: str) -> tuple[Need, ...]:
    """The client, or the caseload to choose from if the button names nobody."""
    return card(value) if value.partition(":")[0] else (Caseload(),)


def card_among_all(value: str) -> tuple[Need, ...]:
    """The client, and everybody whose name theirs must differ from."""
    return (*card(value), Caseload())


def card_and_coaches(value: str) -> tuple[Need, ...]:
    return (*card(value), OtherCoaches())


def card_at_the_end(value: str) -> tuple[Need, ...]:
    """For a confirmation, which names its subject before the client."""
    return card_and_coaches(value.rpartition(":")[2])
