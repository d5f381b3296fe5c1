"""What is being played: one practice on SQLite, the local messenger, and a clock that stands until it is moved.

Whoever acts, acts alone: everybody else's act waits. Each act is a line of a tape, done by the tape player itself, so
that what was played can be written down and plays again to the same transcript. What nobody could do leaves no line.
"""

from __future__ import annotations

import asyncio
from collections.abc import Awaitable, Callable, Sequence
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from pathlib import Path
from tempfile import TemporaryDirectory
from zoneinfo import ZoneInfo

from bot.store import facts
from bot.store.database import Database
from bot.store.facts import Known
from demo import tape as t
from demo.keys import CannotRead
from demo.messenger import CannotDo, SeenMessage
from demo.messenger.signal import Signal
from demo.player import Player
from demo.rehearsal.why import Heard, Knows, Reasons

SILENT_AT_MOST = 2_000  # instants at which something comes due and nobody hears of it
PROGRESS_EVERY = 5  # lines of a tape between two looks at how far it is


@dataclass(frozen=True, slots=True)
class Person:
    """Somebody with an account, or a group.

    role: "client", "coach", "organiser", "group", or "" for somebody the bot does not know.  status: of a client.
    opened, blocked: the bot, by this person.  members: of a group, in the order they came.  has_bot: whether the bot is
    in this group.
    """

    name: str
    chat: int
    role: str = ""
    status: str = ""
    language: str = "en"
    opened: bool = False
    blocked: bool = False
    members: tuple[str, ...] = ()
    has_bot: bool = False

    @property
    def key(self) -> str:
        """A name for addresses and anchors."""
        return f"p{self.chat}" if self.chat > 0 else f"g{-self.chat}"

    @property
    def is_group(self) -> bool:
        return self.chat < 0


@dataclass(frozen=True, slots=True)
class Playing:
    """A tape that is being played from its start. done, of: lines."""

    done: int
    of: int


class Stage:
    """`open` a tape, then `act` and `go`; `close` at the end.

    run: counts the tapes that were opened.  people: everybody, in the order they came.  versions: of each chat by
    name, the `signal.version` at which it last changed.  due: when the next thing comes due.  trouble: why the tape
    that was opened could not be played to its end, or "".
    """

    def __init__(self) -> None:
        self.signal = Signal()
        self.run = 0
        self.people: dict[str, Person] = {}
        self.versions: dict[str, int] = {}
        self.due: datetime | None = None
        self.playing: Playing | None = None
        self.trouble = ""
        self.lines: list[str] = []
        self.last: dict[str, Heard] = {}
        self._lock = asyncio.Lock()
        self._marks: dict[int, tuple[int, int, int]] = {}
        self._known: dict[int, Known] = {}
        self._folder: TemporaryDirectory[str] | None = None
        self._player: Player | None = None
        self._store: Database | None = None
        self._reader = t.TapeReader()
        self._reasons = Reasons()

    # --- opening and closing ------------------------------------------------------------------------------------

    async def open(self, text: str) -> None:
        """Begin anew with a tape, and play it to its end.

        Raises: CannotRead for a tape that cannot be read; what was being played then goes on.
        """
        t.read(text)
        async with self._lock:
            await self._put_away()
            lines = text.splitlines()
            self._reader, self.lines, self.trouble = t.TapeReader(), [], ""
            self.people, self.versions, self.last, self.due = {}, {}, {}, None
            self.playing = Playing(0, len(lines))
            self.run += 1
            try:
                await self._play(lines)
            finally:
                self.playing = None
                await self._look_around()

    async def _play(self, lines: Sequence[str]) -> None:
        for number, line in enumerate(lines, 1):
            step = self._reader.take(number, line)
            if self._player is None and self._reader.start is not None:
                await self._begin(self._reader.tape())
            if step is not None:
                try:
                    await self.player.do(step)
                except CannotDo as cannot:
                    self.trouble = f"Line {number} could not be played, nor what comes after it: {cannot}."
                    return
            self.lines.append(line)
            if number % PROGRESS_EVERY == 0:
                self.playing = Playing(number, len(lines))
                self.signal.bump()

    async def _begin(self, tape: t.Tape) -> None:
        self._folder = TemporaryDirectory(prefix="samehour-rehearsal-")
        folder = Path(self._folder.name)
        self._player = Player(tape, folder, lambda line: None, None, menus=True)  # put away even if it never gets ready
        await self._player.__aenter__()
        self._store = Database(f"sqlite:///{self._player.machine.file}", synchronous="NORMAL")

    async def close(self) -> None:
        """Stop everything; what was not saved is gone."""
        async with self._lock:
            await self._put_away()

    async def _put_away(self) -> None:
        if self._player is not None:
            await self._player.__aexit__(None, None, None)
        if self._store is not None:
            self._store.close()
        if self._folder is not None:
            self._folder.cleanup()
        self._player = self._store = self._folder = None
        self._marks, self._known = {}, {}

    @property
    def player(self) -> Player:
        if self._player is None:
            raise CannotDo("nothing is being played yet")
        return self._player

    @property
    def ready(self) -> bool:
        """Whether there is a practice, and a clock."""
        return self._player is not None

    # --- acting -------------------------------------------------------------------------------------------------

    async def act(self, *lines: str) -> None:
        """Do what lines of a tape say.

        Raises: CannotRead or CannotDo; what comes before the line at fault is done.
        """

        async def written() -> Sequence[str]:
            return lines

        await self.do(written)

    async def do(self, write: Callable[[], Awaitable[Sequence[str]]], under: int | None = None) -> None:
        """The same for lines that depend on how things stand when it is one's turn.

        under: the `run` this was meant for; None for whichever it is.
        """
        async with self._lock:
            self._check(under)
            try:
                for line in await write():
                    await self._do(line)
            finally:
                await self._look_around()

    def _check(self, under: int | None) -> None:
        if under is not None and under != self.run:
            raise CannotDo("another practice has begun meanwhile")

    async def _do(self, line: str) -> None:
        player = self.player
        before = self._reader.mark()
        step = self._reader.take(len(self.lines) + 1, line)
        if step is None:
            return
        heard = await self._heard(step)
        try:
            await player.do(step)
        except CannotDo:
            self._reader.go_back(before)
            raise
        self.lines.append(line)
        if heard is not None:
            self.last[heard.name] = heard

    async def _heard(self, step: t.TapeStep) -> Heard | None:
        """What the bot is about to hear from a person, with what it knows of them by then."""
        player, store = self.player, self._store
        match step:
            case t.Says(_, name, _, "") | t.Presses(_, name) | t.Edits(_, name) | t.Replies(_, name):
                pass
            case _:
                return None
        chat = player.chats[name]
        event = self._reasons.event(step, await player.messenger.seen(chat), self.now)
        if event is None or store is None:
            return None
        return await store.read(self._reasons.heard, name, chat, event, self.now)

    # --- the clock ----------------------------------------------------------------------------------------------

    @property
    def now(self) -> datetime:
        """The instant the clock stands at, in UTC."""
        return self.player.now

    @property
    def zone(self) -> ZoneInfo:
        return self.player.tape.zone

    async def go(self, by: str, under: int | None = None) -> None:
        """Move the clock: "15s", "1min", "tomorrow", "monday" or "4weeks" from now, or "next": to the next message.

        Raises: CannotDo.
        """
        if by == "next":
            await self._go_to_next_message(under)
            return
        async with self._lock:
            self._check(under)
            try:
                await self._do(t.moment(self._local_now, self._then(by), self.zone))
            finally:
                await self._look_around()

    def _then(self, by: str) -> datetime:
        local = self._local_now
        match by:
            case "15s":
                return self.now + timedelta(seconds=15)
            case "1min":
                return self.now + timedelta(minutes=1)
            case "tomorrow":
                days = 1
            case "monday":
                days = 7 - local.weekday()
            case "4weeks":
                days = 28
            case _:
                raise CannotDo("the clock cannot be moved like that")
        wall = local.replace(tzinfo=None) + timedelta(days=days)  # the same hour, whatever the clocks do meanwhile
        return wall.replace(tzinfo=self.zone).astimezone(UTC)

    @property
    def _local_now(self) -> datetime:
        return self.now.astimezone(self.zone)

    async def _go_to_next_message(self, under: int | None) -> None:
        async with self._lock:
            self._check(under)
            player, start = self.player, self._local_now
            if not player.machine.runs:
                raise CannotDo("the bot is stopped: nothing comes due")
            said = await player.messenger.mark()
            try:
                for _ in range(SILENT_AT_MOST):
                    due = await player.machine.next_due()
                    if due is None or due <= player.now:
                        break
                    await player.do(t.At(0, due.astimezone(self.zone)))
                    if await player.messenger.mark() != said:
                        break
                if player.now == start:
                    raise CannotDo("nothing more will come due by itself")
                await self._do(t.moment(start, player.now, self.zone))
            finally:
                await self._look_around()

    # --- looking ------------------------------------------------------------------------------------------------

    async def _look_around(self) -> None:
        """See what has changed, and let everybody who watches know."""
        player = self._player
        version = self.signal.version + 1
        if player is not None and self._store is not None:
            self._known = await self._store.read(facts.who, [chat for chat in player.chats.values() if chat > 0])
            people = {name: self._person(name, chat) for name, chat in player.chats.items()}
            for name, person in people.items():
                room = player.messenger.world.chats.get(person.chat)
                messages = {} if room is None else room.messages
                mark = (len(messages), max(messages, default=0), sum(m.edits for m in messages.values()))
                if self._marks.get(person.chat) != mark or self.people.get(name) != person:
                    self.versions[name] = version
                self._marks[person.chat] = mark
            self.people = people
            self.due = await player.machine.next_due()
        self.signal.bump()

    def _person(self, name: str, chat: int) -> Person:
        player = self.player
        if chat < 0:
            room = player.messenger.world.chats[chat]
            members = tuple(member for member, one in player.chats.items() if one in room.members)
            return Person(name, chat, "group", members=members, has_bot=room.bot == "member")
        account = player.messenger.world.people[chat]
        role, status, language = "", "", account.language_code or "en"
        known = self._known.get(chat)
        if known is not None and known.client is not None:
            role, status, language = "client", known.client.status.value, known.client.language
        elif known is not None and known.staff is not None:
            role = "coach" if known.staff.coach_id is not None else "organiser"
            language = known.staff.language
        return Person(name, chat, role, status, language, account.opened, account.blocked)

    def find(self, key: str) -> Person:
        """Return somebody by `Person.key`.

        Raises: CannotDo when there is nobody.
        """
        for person in self.people.values():
            if person.key == key:
                return person
        raise CannotDo("there is nobody like that here")

    async def messages(self, person: Person) -> list[SeenMessage]:
        """Return what this person, or this group, has in the chat, oldest first."""
        player = self.player
        if person.is_group:
            room = player.messenger.world.chats[person.chat]
            if not room.members:
                return []
            return await player.messenger.seen(min(room.members), chat=person.chat)
        return await player.messenger.seen(person.chat)

    async def commands(self, person: Person) -> list[dict[str, str]]:
        """Return the menu of commands this person sees."""
        return await self.player.messenger.menu(person.chat)

    def links(self, name: str) -> list[str]:
        """Return the tokens of the links somebody was given, oldest first."""
        links = self.player.links.get(name)
        return [] if links is None else list(links.given)

    def newest_unopened(self, name: str) -> str:
        """Return the token a tape means by "NAME's invitation"; "" when every link was opened."""
        links = self.player.links.get(name)
        return links.unopened[-1] if links is not None and links.unopened else ""

    @property
    def faults(self) -> dict[str, bool]:
        """Return what is switched on: whether the bot runs, will crash, and whether the messenger works."""
        if self._player is None:
            return {"runs": False, "will_crash": False, "messenger_works": True}
        machine = self._player.machine
        return {"runs": machine.runs, "will_crash": machine.will_crash, "messenger_works": machine.messenger_works}

    @property
    def broken_expectations(self) -> int:
        """Return how many `expect` lines of the tape did not hold."""
        return 0 if self._player is None else len(self._player.played.failures)

    @property
    def tape(self) -> str:
        """Return what was played, as a tape."""
        return "".join(f"{line}\n" for line in self.lines)

    @property
    def transcript(self) -> str:
        """Return what was said, as the tape player would write it down."""
        return "" if self._player is None else self._player.played.text

    async def why(self, person: Person) -> Knows:
        """Return what the bot knows of a person, and why it answered as it did ."""
        store = self._store
        if store is None:
            raise CannotDo("nothing is being played yet")
        return await store.read(self._reasons.knows, person.chat, self.last.get(person.name), self.now)


__all__ = ["CannotDo", "CannotRead", "Person", "Playing", "Stage"]
