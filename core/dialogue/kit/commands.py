"""Commands and buttons as rows: everything about one is defined in one place.

Dispatch, loading, the messenger's menus, /help and the access tests all read the rows, so an incomplete command is
rejected: by Python if a field is missing, by `CommandRow` and `Table` if a field is empty or contradicts another.

Core renders no text: the English sentences of a row are keys that `bot.rendering` looks up.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from enum import StrEnum
from typing import Any, Generic, TypeVar

from core.language import Intent


def N_(text: str) -> str:
    """Mark `text` for the catalogues; a voice of `bot.rendering` translates it later."""
    return text


class Chat(StrEnum):
    """Where a command is typed."""

    CLIENT = "client"
    STAFF = "staff"
    GROUP = "group"


class Who(StrEnum):
    """Who may use it. STAFF: a coach or an organiser."""

    CLIENT = "client"
    COACH = "coach"
    ORGANISER = "organiser"
    STAFF = "staff"

    def includes(self, role: Who) -> bool:
        """Whether somebody in this role may use it."""
        return self is role or (self is Who.STAFF and role in (Who.COACH, Who.ORGANISER))


PEOPLE = {
    Chat.CLIENT: (Who.CLIENT,),
    Chat.STAFF: (Who.COACH, Who.ORGANISER, Who.STAFF),
    Chat.GROUP: (Who.ORGANISER,),
}
ROLES = (Who.CLIENT, Who.COACH, Who.ORGANISER)


class Argument(StrEnum):
    """How a command treats the words after it."""

    NONE = "none"  # ignored
    WORDS = "words"  # passed to it
    SPOKEN = "spoken"  # the same, and an intent in plain words includes them too: "pause until Friday"
    TEXT = "text"  # interpreted like any other text
    LINK = "link"  # the token of a link; never typed by hand


@dataclass(frozen=True, slots=True)
class NotListed:
    """A command deliberately omitted from the menu or /help. why: for readers of the row."""

    why: str


@dataclass(frozen=True, slots=True)
class OnLineOf:
    """Another command's /help line mentions this one too."""

    name: str


@dataclass(frozen=True, slots=True)
class HelpLine:
    """One line of /help. place: sort order of the lines. to: the role that sees it. text: English, a key."""

    place: int
    to: Who
    text: str


class HalfMade(ValueError):
    """A command or button that is incomplete, or contradicts another."""


ActT = TypeVar("ActT")


@dataclass(frozen=True, slots=True, kw_only=True)
class CommandRow(Generic[ActT]):
    """One command of one kind of chat.

    name: as typed, without the slash; in a group two words ("cohort bind").  who: may use it. words: intents that mean
    the same. argument: how the words after it are treated. act: what it does.  menu: what it does in a few words
    (English, a key), beside its name in the messenger's menu. help: its lines in /help, exactly one for each role that
    may use it.
    """

    name: str
    chat: Chat
    who: Who
    words: tuple[Intent, ...]
    argument: Argument
    act: ActT
    menu: str | NotListed
    help: tuple[HelpLine, ...] | OnLineOf | NotListed

    def __post_init__(self) -> None:
        for fault in self._faults():
            raise HalfMade(f"/{self.name}: {fault}")

    def _faults(self) -> Iterator[str]:
        name = r"[a-z]{1,32} [a-z]{1,32}" if self.chat is Chat.GROUP else r"[a-z]{1,32}"
        if not re.fullmatch(name, self.name):
            yield "no name that can be typed"
        if self.who not in PEOPLE[self.chat]:
            yield f"nobody who is {self.who} is in a chat of kind {self.chat}"
        if not callable(self.act):
            yield "does nothing"
        if isinstance(self.menu, NotListed):
            yield from ["left out of the menu without a reason"] if not self.menu.why.strip() else []
        elif self.chat is Chat.GROUP:
            yield "groups have no menu"
        elif not 1 <= len(self.menu.strip()) <= 256:
            yield "the messenger takes 1 to 256 characters for a menu"
        if isinstance(self.help, NotListed):
            yield from ["left out of /help without a reason"] if not self.help.why.strip() else []
        elif isinstance(self.help, tuple):
            yield from self._faults_of_help(self.help)

    def _faults_of_help(self, lines: tuple[HelpLine, ...]) -> Iterator[str]:
        for role in ROLES:
            found = [line for line in lines if line.to.includes(role)]
            if len(found) != self.who.includes(role):
                yield f"{len(found)} lines of /help for a {role}"
        for line in lines:
            if not line.text.startswith(f"/{self.name} "):
                yield f"its line of /help begins otherwise: {line.text!r}"


RowT = TypeVar("RowT", bound=CommandRow[Any])


class Table(Generic[RowT]):
    """The commands of one kind of chat, in the order of its menu."""

    def __init__(self, chat: Chat, rows: Iterable[RowT]) -> None:
        self.chat = chat
        self.rows = tuple(rows)
        self._by_name = {row.name: row for row in self.rows}
        self._by_intent = {intent: row for row in self.rows for intent in row.words}
        for fault in self._faults():
            raise HalfMade(fault)

    def _faults(self) -> Iterator[str]:
        for row in self.rows:
            if row.chat is not self.chat:
                yield f"/{row.name}: a command of another kind of chat"
            if self._by_name[row.name] is not row:
                yield f"/{row.name}: two commands of this name"
            for intent in row.words:
                if self._by_intent[intent] is not row:
                    yield f"/{row.name}: {intent!r} means /{self._by_intent[intent].name} already"
            if isinstance(row.help, OnLineOf):
                lines = [line for role in ROLES if row.who.includes(role) for line in self._lines(row.help.name, role)]
                if not lines or not all(f"/{row.name} " in line.text for line in lines):
                    yield f"/{row.name}: the line of /{row.help.name} in /help does not name it"
        for role in ROLES:
            places = [line.place for row in self.rows for line in self._lines(row.name, role)]
            if len(set(places)) != len(places):
                yield f"two lines of /help for a {role} in one place"

    def _lines(self, name: str, role: Who) -> list[HelpLine]:
        row = self._by_name.get(name)
        if row is None or not isinstance(row.help, tuple):
            return []
        return [line for line in row.help if line.to.includes(role)]

    def __iter__(self) -> Iterator[RowT]:
        return iter(self.rows)

    def named(self, name: str) -> RowT | None:
        return self._by_name.get(name)

    def meant_by(self, intent: Intent | None) -> RowT | None:
        """The command that an intent stands for."""
        return None if intent is None else self._by_intent.get(intent)

    def menu(self, *roles: Who) -> tuple[tuple[str, str], ...]:
        """Names and descriptions (English, keys), for somebody in these roles."""
        return tuple(
            (row.name, row.menu)
            for row in self.rows
            if isinstance(row.menu, str) and any(row.who.includes(role) for role in roles)
        )

    def help(self, role: Who) -> tuple[str, ...]:
        """The lines of /help (English, keys) for somebody in this role."""
        lines = [line for row in self.rows for line in self._lines(row.name, role)]
        return tuple(line.text for line in sorted(lines, key=lambda line: line.place))
