"""Tapes: scripted conversations in a text file, one step per line. This module parses them; `player` plays them.

    # the invented practice of Rowan
    start 2026-03-02 07:00 Europe/London
    coach Rowan
    client Ada of Rowan: sex=female born=1968 height=165cm zone=Europe/London slot="Mon 07:30" measures=weight,waist
    at 2026-03-02 07:30
    Ada: 7
    Ada presses Same as last time
    expect Ada sees energy

| line                                  | what it does                                                                |
|---------------------------------------|-----------------------------------------------------------------------------|
| `start DATE TIME ZONE`                | the first step; every date and time of the tape is wall time in ZONE        |
| `at DATE TIME`                        | go on to then; what comes due on the way happens at its own instant         |
| `wait NUMBER s` (or `min`, `h`, `days`) | go on by that much                                                        |
| `coach NAME: key=value ...`           | NAME opens an operator's invitation; `: ...` may be left out                |
| `organiser NAME: key=value ...`       | NAME opens an operator's invitation to run cohorts, and is no coach         |
| `client NAME of COACH: key=value ...` | COACH invites NAME, who answers everything                                  |
| `person NAME: lang=pl`                | somebody with an account who has not opened the bot                         |
| `group GROUP: NAME NAME ...`          | a group chat of these people, without the bot                               |
| `NAME opens COACH's invitation`       | by the newest link COACH has and nobody opened; COACH asks for one if needed |
| `NAME opens COACH's used invitation`  | by the link that was opened last                                            |
| `NAME opens COACH's 2nd invitation`   | by the second link that COACH was ever given                                |
| `NAME opens the operator's invitation` | becomes a coach by hand                                                    |
| `NAME opens the bot`                  | presses Start, with no link                                                 |
| `NAME: text`                          | NAME writes to the bot                                                      |
| `NAME in GROUP: text`                 | NAME writes to a group                                                      |
| `NAME edits: text`                    | NAME's last message to the bot now reads so                                 |
| `NAME edits the 2nd last: text`       | the one before it does                                                      |
| `NAME replies to the 3rd last: text`  | counted among all messages of the chat; `to the last` is the newest         |
| `NAME presses LABEL`                  | the latest button with that label, in NAME's language                       |
| `NAME presses the 2nd LABEL`          | the one before it: newest message first, and down each message              |
| `NAME sends voice`                    | or photo, video, audio, sticker, document, location, contact                |
| `NAME blocks`, `NAME unblocks`        | the bot                                                                     |
| `NAME adds the bot to GROUP`          | or `removes the bot from GROUP`; with `by COACH's link` it carries that link |
|                                       | (`by COACH's 2nd link`: the second that COACH was ever given)               |
| `NAME upgrades GROUP`                 | the group becomes a supergroup, with another id                             |
| `NAME joins GROUP`, `NAME leaves GROUP` | as a member of the group chat                                             |
| `bot stops`, `bot starts`             | an outage: nothing is worked off in between                                 |
| `bot crashes`                         | killed as soon as it is about to send something, until `bot starts`         |
| `messenger fails`, `messenger works`  | it answers the bot with an error, and goes on holding what people write     |
| `expect NAME sees words`              | among what NAME (or a group) got since the last `at` or `wait`              |
| `expect-not NAME sees words`          | the opposite; `expect-not NAME sees anything`: not one message              |

* A line that begins with `#` is a comment, and so is everything after a `#` between two blanks.
* In what somebody writes `\\n` is a line break, `\\#` a `#`, `\\\\` a `\\` and `\\u2028` that character.
* Words are looked for in plain text, captions and file names, whatever their case; `"..."` is taken literally.
* A name is one word. Values with blanks stand in double quotes. Every key of `client` may be left out:

| key                 | value                                          | left out                 |
|---------------------|------------------------------------------------|--------------------------|
| `lang`              | en, de, es, fr, pl, ar                         | en                       |
| `born`              | a year                                         | question skipped         |
| `sex`               | female, male                                   | skipped                  |
| `height`            | as one types it: 165cm, "5 ft 5"               | skipped                  |
| `units`             | kg, lb, st                                     | skipped (kg)             |
| `background`        | a key of `core.client.Background`              | skipped                  |
| `cautions`          | keys of `core.client.Caution`, comma between   | none                     |
| `numbers`           | shown, coach_only, leave_out                   | shown                    |
| `slot`              | "Mon 07:30"                                    | weekday and time of start |
| `zone`              | a tz database name                             | the zone of the tape     |
| `measures`          | keys of measures, comma between                | the usual plan           |
| `interval`          | days, or measure:days with commas between      | 28                       |
| `directed`          | yes, no: a clinician asked for frequent weighing | no                     |
| `planned_loss`      | yes, no: losing weight is agreed               | no                       |
| `programme`         | weeks, from the day of the invitation          | no set end               |
| `own`, `own_better` | the client's own 0-10 question; higher, lower  | no question              |

`coach` takes `lang`, `zone` and `slot` (of the digest), `organiser` the first two.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import UTC, datetime, timedelta
from typing import Literal
from zoneinfo import ZoneInfo

from demo.keys import CLIENT_KEYS, COACH_KEYS, ORGANISER_KEYS, PERSON_KEYS, CannotRead, intervals, pairs, slot, zone

__all__ = ["CannotRead", "Tape", "TapeReader", "escaped", "intervals", "moment", "nth", "read", "slot"]

KINDS = ("voice", "photo", "video", "audio", "sticker", "document", "location", "contact")
OPERATOR = "the operator"
RESERVED = frozenset(
    {
        "start",
        "at",
        "wait",
        "coach",
        "organiser",
        "client",
        "person",
        "group",
        "bot",
        "messenger",
        "expect",
        "expect-not",
    }
)
_UNITS = {"s": "seconds", "min": "minutes", "h": "hours", "day": "days", "days": "days"}


# --- steps: what a line says --------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class TapeCoach:
    number: int
    name: str
    given: Mapping[str, str]


@dataclass(frozen=True, slots=True)
class Organiser:
    number: int
    name: str
    given: Mapping[str, str]


@dataclass(frozen=True, slots=True)
class TapeClient:
    number: int
    name: str
    coach: str
    given: Mapping[str, str]


@dataclass(frozen=True, slots=True)
class TapePerson:
    number: int
    name: str
    language: str


@dataclass(frozen=True, slots=True)
class Group:
    number: int
    name: str
    members: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class At:
    """Go on to an instant (aware)."""

    number: int
    instant: datetime


@dataclass(frozen=True, slots=True)
class Says:
    """group "" is the private chat with the bot."""

    number: int
    name: str
    text: str
    group: str = ""


@dataclass(frozen=True, slots=True)
class Edits:
    """back: how many of one's own messages are newer."""

    number: int
    name: str
    text: str
    back: int = 0


@dataclass(frozen=True, slots=True)
class Replies:
    """back: how many messages of the chat are newer than the one replied to."""

    number: int
    name: str
    text: str
    back: int = 0


@dataclass(frozen=True, slots=True)
class Presses:
    """back: how many buttons with that label are newer, or higher up in the same message."""

    number: int
    name: str
    label: str
    back: int = 0


@dataclass(frozen=True, slots=True)
class Opens:
    """coach "" presses Start without a link; OPERATOR invites coaches; used: the link opened last; link: number among
    all of that coach's links, 0 for the newest unopened one."""

    number: int
    name: str
    coach: str = ""
    used: bool = False
    link: int = 0


@dataclass(frozen=True, slots=True)
class Sends:
    number: int
    name: str
    kind: str


@dataclass(frozen=True, slots=True)
class Does:
    """act: "blocks", "unblocks", "adds", "removes", "joins", "leaves" or "upgrades"; the last five with a group.
    coach: whose link is used to add the bot, "" for none; link: its number as in `Opens`, 0 for the newest."""

    number: int
    name: str
    act: str
    group: str = ""
    coach: str = ""
    link: int = 0


@dataclass(frozen=True, slots=True)
class Bot:
    """The bot is stopped, starts again, or is killed when it next sends something."""

    number: int
    act: Literal["stops", "starts", "crashes"]


@dataclass(frozen=True, slots=True)
class MessengerIs:
    """Whether the messenger answers the bot."""

    number: int
    working: bool


@dataclass(frozen=True, slots=True)
class Expect:
    """name: a person or a group. words "" means any message at all."""

    number: int
    name: str
    words: str
    seen: bool


Act = Says | Edits | Replies | Presses | Opens | Sends | Does
TapeStep = TapeCoach | Organiser | TapeClient | TapePerson | Group | At | Act | Bot | MessengerIs | Expect


@dataclass(frozen=True, slots=True)
class Tape:
    """start: aware, in the zone of the tape."""

    start: datetime
    zone_name: str
    steps: tuple[TapeStep, ...]

    @property
    def zone(self) -> ZoneInfo:
        return ZoneInfo(self.zone_name)


# --- reading ------------------------------------------------------------------------------------------------------

_NAME = r"[^\W\d_][\w-]*"
_ESCAPES = {"\n": "\\n", "#": "\\#", "\\": "\\\\"}
_MEANT = {code[1:]: c for c, code in _ESCAPES.items()}
_ESCAPED = re.compile(r"\\(n|#|\\|u[0-9a-f]{4})")
_BREAKS = frozenset("\r\x0b\x0c\x1c\x1d\x1e\x85\u2028\u2029")  # where `splitlines` would split a line
_COMMENT = re.compile(r"^\s*#.*$|\s#(?:\s.*)?$")
_START = re.compile(r"start (\S+) (\S+) (\S+)")
_AT = re.compile(r"at (\S+) (\S+)")
_WAIT = re.compile(r"wait (\d+(?:\.\d+)?) ?(s|min|h|days?)")
_COACH = re.compile(rf"coach ({_NAME})(?:\s*:\s*(.*))?")
_ORGANISER = re.compile(rf"organiser ({_NAME})(?:\s*:\s*(.*))?")
_CLIENT = re.compile(rf"client ({_NAME}) of ({_NAME})(?:\s*:\s*(.*))?")
_PERSON = re.compile(rf"person ({_NAME})(?:\s*:\s*(.*))?")
_GROUP = re.compile(rf"group ({_NAME})\s*:\s*(.+)")
_BOT = re.compile(r"bot (stops|starts|crashes)")
_MESSENGER = re.compile(r"messenger (fails|works)")
_EXPECT = re.compile(rf"expect(-not)? ({_NAME}) sees (.+)")
_IN_GROUP = re.compile(rf"({_NAME}) in ({_NAME})\s*:\s*(.+)")
_SAYS = re.compile(rf"({_NAME})\s*:\s*(.+)")
_ORDINAL = r"(\d{1,6})(?:st|nd|rd|th) "
_EDITS = re.compile(rf"({_NAME}) edits(?: the (?:{_ORDINAL})?last)?\s*:\s*(.+)")
_REPLIES = re.compile(rf"({_NAME}) replies to the (?:{_ORDINAL})?last\s*:\s*(.+)")
_PRESSES = re.compile(rf"({_NAME}) presses (?:the {_ORDINAL})?(.+)")
_OPENS = re.compile(rf"({_NAME}) opens (?:(the operator|{_NAME})['’]s (?:(used) |{_ORDINAL})?invitation|the bot)")
_SENDS = re.compile(rf"({_NAME}) sends (?:a |an )?(\w+)")
_BLOCKS = re.compile(rf"({_NAME}) (blocks|unblocks)(?: the bot)?")
_ADDS = re.compile(
    rf"({_NAME}) (adds|removes) the bot (?:to|from) ({_NAME})(?: by ({_NAME})['’]s (?:{_ORDINAL})?link)?"
)
_JOINS = re.compile(rf"({_NAME}) (joins|leaves|upgrades) ({_NAME})")

SHAPES = (
    (_CLIENT, "client", 'client NAME of COACH: sex=female born=1968 slot="Mon 07:30" ...'),
    (_COACH, "coach", "coach NAME"),
    (_ORGANISER, "organiser", "organiser NAME"),
    (_PERSON, "person", "person NAME: lang=pl"),
    (_GROUP, "group", "group GROUP: NAME NAME ..."),
    (_AT, "at", "at 2026-03-02 07:30"),
    (_WAIT, "wait", "wait 30 s, wait 5 min, wait 2 h or wait 3 days"),
    (_BOT, "bot", "bot stops, bot starts or bot crashes"),
    (_MESSENGER, "messenger", "messenger fails, or messenger works"),
    (_EXPECT, "expect", "expect NAME sees words"),
    (_EXPECT, "expect-not", "expect-not NAME sees words"),
)  # by first word
ACTS = (_IN_GROUP, _SAYS, _EDITS, _REPLIES, _PRESSES, _OPENS, _SENDS, _BLOCKS, _ADDS, _JOINS)
ACT_FORMS = (
    "NAME: text, NAME presses LABEL, NAME edits: text, NAME opens COACH's invitation, NAME sends voice, "
    "NAME blocks, NAME unblocks, NAME in GROUP: text"
)


def read(text: str) -> Tape:
    """Parse a tape.

    Raises: CannotRead for the first line that cannot be parsed or cannot happen (unknown names, time going back).
    """
    reader = TapeReader()
    for number, line in enumerate(text.splitlines(), 1):
        reader.take(number, line)
    return reader.tape()


def escaped(text: str) -> str:
    """A message as written in a line of a tape."""
    return "".join(_ESCAPES.get(c) or (f"\\u{ord(c):04x}" if c in _BREAKS else c) for c in text)


def _unescaped(text: str) -> str:
    return _ESCAPED.sub(lambda found: _MEANT.get(found[1]) or chr(int(found[1][1:], 16)), text)


def nth(number: int) -> str:
    """ "2nd": a number as an ordinal of the tape."""
    teen = number % 100 in (11, 12, 13)
    return f"{number}{'th' if teen else {1: 'st', 2: 'nd', 3: 'rd'}.get(number % 10, 'th')}"


def moment(now: datetime, at: datetime, where: ZoneInfo) -> str:
    """The line that moves from `now` to `at`: a local time, or a waiting time if a local time is not exact."""
    wall = at.astimezone(where)
    if _instant(f"{wall:%Y-%m-%d}", f"{wall:%H:%M:%S}", where) == at:
        return f"at {wall:%Y-%m-%d %H:%M:%S}".removesuffix(":00")
    return f"wait {(at - now).total_seconds():.6f}".rstrip("0").rstrip(".") + " s"


def _start(number: int, line: str) -> tuple[datetime, str]:
    form = "start 2026-03-02 07:00 Europe/London"
    match = _START.fullmatch(line)
    if match is None:
        raise CannotRead(number, line, "the first step is `start`", form)
    found = zone(match[3])
    if found is None:
        raise CannotRead(number, line, f"there is no time zone {match[3]!r}", form)
    at = _instant(match[1], match[2], found)
    if at is None:
        raise CannotRead(number, line, "this is no date and time", form)
    return at, match[3]


def _instant(day: str, at: str, where: ZoneInfo) -> datetime | None:
    """The instant of a local time: the first of two occurrences if it is ambiguous."""
    if not re.fullmatch(r"\d{4}-\d\d-\d\d", day) or not re.fullmatch(r"\d\d:\d\d(:\d\d)?", at):
        return None
    try:
        return datetime.fromisoformat(f"{day}T{at}").replace(tzinfo=where)
    except ValueError:
        return None


@dataclass(frozen=True, slots=True)
class Mark:
    """A position of a `TapeReader`."""

    now: datetime | None
    people: frozenset[str]
    coaches: frozenset[str]
    groups: frozenset[str]
    steps: int


@dataclass(slots=True)
class TapeReader:
    """Parses a tape line by line, keeping track of people and time. now: None before `start`."""

    zone_name: str = ""
    start: datetime | None = None
    now: datetime | None = None
    steps: list[TapeStep] = field(default_factory=list)
    people: frozenset[str] = frozenset()
    coaches: frozenset[str] = frozenset()
    groups: frozenset[str] = frozenset()

    def tape(self) -> Tape:
        """Everything parsed so far."""
        if self.start is None:
            raise CannotRead(1, "", "a tape needs a first step", "start 2026-03-02 07:00 Europe/London")
        return Tape(self.start, self.zone_name, tuple(self.steps))

    def take(self, number: int, raw: str) -> TapeStep | None:
        """Parse one line and return its step; None for `start`, a comment or an empty line.

        Raises: CannotRead, and then the line is ignored.
        """
        line = _COMMENT.sub("", raw).strip()
        if not line:
            return None
        if self.start is None:
            self.start, self.zone_name = _start(number, line)
            self.now = self.start
            return None
        before = self.mark()
        try:
            step = self._step(number, line)
        except CannotRead:
            self.go_back(before)
            raise
        self.steps.append(step)
        return step

    def mark(self) -> Mark:
        """The current position, for `go_back`."""
        return Mark(self.now, self.people, self.coaches, self.groups, len(self.steps))

    def go_back(self, mark: Mark) -> None:
        """Return to `mark`, discarding lines that could not be played."""
        self.now, self.people, self.coaches, self.groups = mark.now, mark.people, mark.coaches, mark.groups
        del self.steps[mark.steps :]

    def _step(self, number: int, line: str) -> TapeStep:
        first = line.split(None, 1)[0].rstrip(":")
        if first == "start":
            raise CannotRead(number, line, "a tape starts once")
        for shape, word, form in SHAPES:
            if first == word:
                match = shape.fullmatch(line)
                if match is None:
                    raise CannotRead(number, line, f"this `{word}` line cannot be read", form)
                return self._spoken(number, line, word, match)
        for shape in ACTS:
            match = shape.fullmatch(line)
            if match is not None:
                return self._act(number, line, shape, match)
        raise CannotRead(number, line, "no step is written like this", ACT_FORMS)

    # Lines that start with a keyword.

    def _spoken(self, number: int, line: str, word: str, match: re.Match[str]) -> TapeStep:
        match word:
            case "coach":
                name = self._new(number, line, match[1])
                given = pairs(number, line, match[2] or "", COACH_KEYS)
                self.coaches |= {name}
                return TapeCoach(number, name, given)
            case "organiser":
                name = self._new(number, line, match[1])
                self.coaches |= {name}  # as far as links are concerned
                return Organiser(number, name, pairs(number, line, match[2] or "", ORGANISER_KEYS))
            case "client":
                if match[2] not in self.coaches:
                    raise CannotRead(number, line, f"there is no coach {match[2]}", f"coach {match[2]}, further up")
                given = pairs(number, line, match[3] or "", CLIENT_KEYS)
                return TapeClient(number, self._new(number, line, match[1]), match[2], given)
            case "person":
                given = pairs(number, line, match[2] or "", PERSON_KEYS)
                return TapePerson(number, self._new(number, line, match[1]), given.get("lang", "en"))
            case "group":
                members = tuple(match[2].split())
                for member in members:
                    self._somebody(number, line, member)
                name = self._new(number, line, match[1])
                self.people -= {name}
                self.groups |= {name}
                return Group(number, name, members)
            case "at":
                at = _instant(match[1], match[2], ZoneInfo(self.zone_name))
                if at is None:
                    raise CannotRead(number, line, "this is no date and time", "at 2026-03-02 07:30")
                return self._on_to(number, line, at)
            case "wait":
                assert self.now is not None
                passing = timedelta(**{_UNITS[match[2]]: float(match[1])})
                at = self.now.astimezone(UTC) + passing  # in UTC, so that a clock change takes no time
                return self._on_to(number, line, at.astimezone(self.now.tzinfo))
            case "bot":
                return Bot(number, "starts" if match[1] == "starts" else "stops" if match[1] == "stops" else "crashes")
            case "messenger":
                return MessengerIs(number, match[1] == "works")
            case _:
                name = match[2]
                if name not in self.groups:
                    self._somebody(number, line, name)
                words = match[3].strip()
                if words == "anything":
                    words = ""
                elif len(words) > 2 and words[0] == words[-1] == '"':
                    words = words[1:-1]
                return Expect(number, name, words, match[1] is None)

    def _on_to(self, number: int, line: str, at: datetime) -> At:
        assert self.now is not None
        if at.astimezone(UTC) < self.now.astimezone(UTC):
            shown = f"{self.now:%Y-%m-%d %H:%M}"
            raise CannotRead(number, line, f"time does not go back; it is {shown} by now", f"at {shown} or later")
        self.now = at
        return At(number, at)

    # Lines that start with somebody's name.

    def _act(self, number: int, line: str, shape: re.Pattern[str], match: re.Match[str]) -> TapeStep:
        name = match[1]
        if shape is _OPENS:
            if match[2] == OPERATOR and not match[3] and not match[4]:
                self.coaches |= {name}
            elif match[2] and match[2] not in self.coaches:
                raise CannotRead(number, line, f"there is no coach {match[2]}", f"coach {match[2]}, further up")
            self._check_name(number, line, name)
            self.people |= {name}
            return Opens(number, name, match[2] or "", bool(match[3]), int(match[4] or 0))
        self._somebody(number, line, name)
        if shape is _IN_GROUP:
            return Says(number, name, _unescaped(match[3].strip()), self._group(number, line, match[2]))
        if shape is _SAYS:
            return Says(number, name, _unescaped(match[2].strip()))
        if shape is _EDITS:
            return Edits(number, name, _unescaped(match[3].strip()), max(int(match[2] or 1) - 1, 0))
        if shape is _REPLIES:
            return Replies(number, name, _unescaped(match[3].strip()), max(int(match[2] or 1) - 1, 0))
        if shape is _PRESSES:
            return Presses(number, name, _unescaped(match[3].strip()), max(int(match[2] or 1) - 1, 0))
        if shape is _SENDS:
            if match[2] not in KINDS:
                raise CannotRead(number, line, f"nobody can send a {match[2]}", f"one of {', '.join(KINDS)}")
            return Sends(number, name, match[2])
        if shape is _BLOCKS:
            return Does(number, name, match[2])
        if shape is _ADDS:
            return Does(number, name, match[2], self._group(number, line, match[3]), match[4] or "", int(match[5] or 0))
        return Does(number, name, match[2], self._group(number, line, match[3]))

    # Names.

    def _check_name(self, number: int, line: str, name: str) -> None:
        if name.casefold() in RESERVED:
            raise CannotRead(number, line, f"nobody can be called {name}: it is a word of the tape")
        if name in self.groups:
            raise CannotRead(number, line, f"{name} is a group")

    def _new(self, number: int, line: str, name: str) -> str:
        self._check_name(number, line, name)
        if name in self.people:
            raise CannotRead(number, line, f"there is a {name} already", "another name")
        self.people |= {name}
        return name

    def _somebody(self, number: int, line: str, name: str) -> None:
        if name not in self.people:
            raise CannotRead(
                number, line, f"nobody is called {name}", f"client {name} of COACH: ..., or {name} opens the bot, first"
            )

    def _group(self, number: int, line: str, name: str) -> str:
        if name not in self.groups:
            raise CannotRead(number, line, f"there is no group {name}", f"group {name}: NAME NAME ..., before")
        return name
