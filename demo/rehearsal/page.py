"""What each person sees, as HTML: one column a person, and what moves the clock."""

from __future__ import annotations

import hashlib
import re
import unicodedata
from dataclasses import dataclass
from datetime import datetime
from itertools import count
from pathlib import Path

from jinja2 import Environment, FileSystemLoader, StrictUndefined
from markupsafe import Markup

from bot.rendering.phrases.labels import GROUPS
from core.language import LANGUAGES
from demo.messenger import SeenMessage
from demo.rehearsal.practices import TITLES
from demo.rehearsal.stage import Person, Stage
from demo.rehearsal.words import html
from demo.tape import KINDS

SHOWN = 60  # messages of a column, unless more are asked for
BOT = "Samehour"
ROLES = {
    "client": "client",
    "coach": "coach",
    "organiser": "organiser",
    "group": "group chat",
    "": "not known to the bot",
}
LANGUAGE_NAMES = {code: GROUPS["lang"][code] for code in LANGUAGES}
_LINK = re.compile(r"[?&](start|startgroup)=([\w-]+)")


@dataclass(frozen=True, slots=True)
class Link:
    """A link in a message. number: of those its reader was ever given."""

    number: int
    for_group: bool


@dataclass(frozen=True, slots=True)
class Pressable:
    """A button. place: `message.number`, as a form sends it; "" for one that cannot be pressed here."""

    label: str
    place: str


@dataclass(frozen=True, slots=True)
class Entry:
    """One message of a column. day: said above it when it is another than before, else "". mark: changes when what is
    shown does. has_letters: so that its direction is its own, where bare figures follow the reader's."""

    id: str
    number: int
    day: str
    at: str
    instant: str
    speaker: str
    own: bool
    text: Markup
    has_letters: bool
    reply_to: str
    edited: bool
    picture: str
    document: str
    kind: str
    rows: tuple[tuple[Pressable, ...], ...]
    links: tuple[Link, ...]
    mark: str


@dataclass(frozen=True, slots=True)
class Column:
    person: Person
    role: str
    language: str
    entries: tuple[Entry, ...]
    earlier: int
    commands: tuple[dict[str, str], ...]
    can_write: bool

    @property
    def direction(self) -> str:
        return "rtl" if self.person.language == "ar" else "ltr"


class Page:
    """Renders what is on a stage."""

    def __init__(self, stage: Stage) -> None:
        self._stage = stage
        self._environment = Environment(
            loader=FileSystemLoader(Path(__file__).with_name("templates")),
            autoescape=True,
            undefined=StrictUndefined,
            trim_blocks=True,
            lstrip_blocks=True,
        )
        self._environment.globals.update(
            bot=BOT, kinds=KINDS, language_names=LANGUAGE_NAMES, practices=TITLES, stage=stage
        )

    async def whole(self, only: str, version: int) -> str:
        """Return the page. only: the key of one person in a window of their own, "" for everybody."""
        people = list(self._stage.people.values())
        if only:
            people = [self._stage.find(only)]
        columns = [await self.column(person) for person in people]
        return self._render("page.html", columns=columns, only=only, version=version, **self._top())

    async def one_column(self, person: Person, everything: bool) -> str:
        return self._render("column.html", column=await self.column(person, everything=everything), **self._top())

    def top(self) -> str:
        """Return the clock and everything else that stands above the columns."""
        return self._render("top.html", **self._top())

    async def knows(self, person: Person) -> str:
        return self._render("knows.html", person=person, knows=await self._stage.why(person))

    def _render(self, template: str, **values: object) -> str:
        return self._environment.get_template(template).render(**values)

    def _top(self) -> dict[str, object]:
        ready = self._stage.ready
        people = list(self._stage.people.values())
        return {
            "now": moment(self._stage.now.astimezone(self._stage.zone)) if ready else "",
            "zone": self._stage.zone.key if ready else "",
            "due": moment(self._stage.due.astimezone(self._stage.zone)) if ready and self._stage.due else "",
            "people": people,
            "coaches": [person for person in people if person.role == "coach"],
            "groups": [person for person in people if person.is_group],
            "roles": ROLES,
            "faults": self._stage.faults,
        }

    # --- a column -----------------------------------------------------------------------------------------------

    async def column(self, person: Person, *, everything: bool = False) -> Column:
        messages = await self._stage.messages(person)
        shown = messages if everything else messages[-SHOWN:]
        return Column(
            person=person,
            role=ROLES[person.role] + (f", {person.status}" if person.status else ""),
            language="" if person.is_group else LANGUAGE_NAMES.get(person.language, person.language),
            entries=self._entries(person, messages, len(messages) - len(shown)),
            earlier=len(messages) - len(shown),
            commands=() if person.is_group else tuple(await self._stage.commands(person)),
            can_write=bool(person.members) if person.is_group else person.opened and not person.blocked,
        )

    def _entries(self, person: Person, messages: list[SeenMessage], after: int) -> tuple[Entry, ...]:
        entries, last_day = [], ""
        links = self._stage.links(person.name)
        for message in messages[after:]:
            at = message.date.astimezone(self._stage.zone)
            day = f"{at:%A} {at.day} {at:%B %Y}"
            replied = next((one for one in messages if one.message_id == message.reply_to), None)
            entries.append(self._entry(person, message, replied, links, at, "" if day == last_day else day))
            last_day = day
        return tuple(entries)

    def _entry(
        self,
        person: Person,
        message: SeenMessage,
        replied: SeenMessage | None,
        links: list[str],
        at: datetime,
        day: str,
    ) -> Entry:
        names = {one.chat: one.name for one in self._stage.people.values()}
        number = message.message_id
        found = dict.fromkeys(_LINK.findall(message.text)) if message.from_bot else {}
        anchor = f"{person.key}-{number}"
        where = f"/content/{person.key}/{number}"
        entry = Entry(
            id=anchor,
            number=number,
            day=day,
            at=f"{at:%H:%M}",
            instant=at.isoformat(),
            speaker=BOT if message.sender is None else names.get(message.sender, "somebody"),
            own=message.sender == person.chat,
            text=html(message.text, message.entities),
            has_letters=any(unicodedata.bidirectional(c) in ("L", "R", "AL") for c in message.text),
            reply_to="" if replied is None else shortened(replied.text or replied.kind),
            edited=not message.from_bot and message.edits > 0,
            picture=where if message.kind == "photo" and message.from_bot else "",
            document=message.filename or "" if message.kind == "document" and message.from_bot else "",
            kind=message.kind,
            rows=_rows(person, message),
            links=tuple(Link(links.index(token) + 1, kind == "startgroup") for kind, token in found if token in links),
            mark="",
        )
        return Entry(**{**{name: getattr(entry, name) for name in Entry.__slots__}, "mark": _mark(entry)})


def _rows(person: Person, message: SeenMessage) -> tuple[tuple[Pressable, ...], ...]:
    """The buttons of a message. Those of a group, and those that lead elsewhere, are only shown."""
    place = count()
    rows = []
    for row in (*message.buttons, *message.keyboard):
        numbered = [(button, f"{message.message_id}.{next(place)}") for button in row]
        rows.append(tuple(Pressable(b.label, "" if person.is_group or b.url else where) for b, where in numbered))
    return tuple(rows)


def moment(at: datetime) -> str:
    """A day and time as it stands on the page."""
    return f"{at:%a} {at.day} {at:%b %Y}, {at:%H:%M}" + (f":{at:%S}" if at.second else "")


def shortened(text: str, most: int = 60) -> str:
    text = " ".join(text.split())
    return text if len(text) <= most else f"{text[: most - 1]}…"


def _mark(entry: Entry) -> str:
    return hashlib.blake2b(repr(entry).encode("utf-8", "surrogatepass"), digest_size=6).hexdigest()
