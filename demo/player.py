"""Plays a tape: the real bot, the real client over real HTTP, the local messenger, and a clock the tape moves.

Nothing here decides what is said. Time does not tick: it jumps to the next instant at which something is due according
to the store, so that a season takes seconds and the same tape gives the same bytes.
"""

from __future__ import annotations

import asyncio
import re
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from datetime import UTC, datetime
from pathlib import Path
from tempfile import TemporaryDirectory
from types import TracebackType
from typing import Self

from bot.foundation.private import private_file
from core.dialogue.kit.effects import undrawn
from demo import tape as t
from demo.machine import Machine
from demo.messenger import Button, CannotDo, Flood, Messenger, SeenMessage
from demo.transcript import STAND_IN, body, says, shown, stamp

_LINK = re.compile(r"[?&]start(?:group)?=([\w-]+)")
_STEPS_AT_MOST = 200_000  # instants a jump may pass through: more means that something is due endlessly


@dataclass(frozen=True, slots=True)
class FailedStep:
    """An `expect` that did not hold, or an impossible act. number: of the line."""

    number: int
    said: str


@dataclass(slots=True)
class Played:
    """The result of a tape."""

    lines: list[str] = field(default_factory=list)
    failures: list[FailedStep] = field(default_factory=list)
    pictures: list[Path] = field(default_factory=list)

    @property
    def text(self) -> str:
        return "".join(f"{line}\n" for line in self.lines)


@dataclass(slots=True)
class GivenLinks:
    """One coach's links, oldest first: all, those not opened yet, and those opened, in order."""

    given: list[str] = field(default_factory=list)
    unopened: list[str] = field(default_factory=list)
    opened: list[str] = field(default_factory=list)

    def add(self, token: str) -> None:
        self.given.append(token)
        self.unopened.append(token)

    def open(self, token: str) -> None:
        if token in self.unopened:
            self.unopened.remove(token)
        self.opened.append(token)

    def numbered(self, number: int) -> str:
        """Raises: CannotDo if there are not that many."""
        if not 1 <= number <= len(self.given):
            raise CannotDo(f"there is no {t.nth(number)} link")
        return self.given[number - 1]


def play(tape: t.Tape, *, write: Callable[[str], None] = lambda line: None, pictures: Path | None = None) -> Played:
    """Play a tape from start to end in a temporary folder.

    write: called with each line of the transcript. pictures: a folder for the pictures that were sent. An impossible
    step ends the tape as a failure; after a failed `expect` it continues.
    """

    async def _play() -> Played:
        with TemporaryDirectory(prefix="samehour-tape-") as folder:
            async with Player(tape, Path(folder), write, pictures) as player:
                await player.run()
                return player.played

    return asyncio.run(_play())


class Player:
    """One tape being played: `async with`, then `run`; or `do`, step by step, for an improvised tape.

    now: the instant the clock stands at.  chats: of people and groups by name, in the order they came.  links: of
    invitations, by recipient.  menus: whether the bot sets its command menus, which no tape shows.
    """

    def __init__(
        self, tape: t.Tape, folder: Path, write: Callable[[str], None], pictures: Path | None, *, menus: bool = False
    ) -> None:
        self.tape = tape
        self.played = Played()
        self.now = tape.start.astimezone(UTC)
        self.messenger = Messenger(clock=lambda: self.now, flood=Flood.off(), bot_username="samehour_bot")
        self.machine = Machine(self.messenger, folder / "samehour.db", menus=menus)
        self.chats: dict[str, int] = {}
        self.links: dict[str, GivenLinks] = {}
        self._write = write
        self._pictures = pictures
        self._mark = 0  # position in the bot's messages, read so far
        self._recent: list[SeenMessage] = []  # since the last `at`
        self._muted = False

    async def __aenter__(self) -> Self:
        await self.messenger.start()
        await self.messenger.set_privacy(False)
        await self.machine.start(self.now)
        return self

    async def __aexit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        await self.machine.stop()
        await self.messenger.stop()

    # --- playing ------------------------------------------------------------------------------------------------

    async def run(self) -> None:
        for step in self.tape.steps:
            try:
                await self.do(step)
            except CannotDo as cannot:
                self.played.failures.append(FailedStep(step.number, str(cannot)))
                return

    async def do(self, step: t.TapeStep) -> None:
        """Play one step. Raises: CannotDo if it is impossible; then it does not appear in the transcript."""
        lines = len(self.played.lines)
        try:
            await self._step(step)
        except CannotDo:
            del self.played.lines[lines:]
            raise

    async def _step(self, step: t.TapeStep) -> None:
        match step:
            case t.TapeCoach():
                await self._coach(step)
            case t.Organiser():
                await self._organiser(step)
            case t.TapeClient():
                await self._client(step)
            case t.TapePerson(_, name, language):
                await self._account(name, language)
            case t.Group(_, name, members):
                self.chats[name] = await self.messenger.create_group(name, [self.chats[m] for m in members])
                self._line(f"group {name}: {', '.join(members)}")
            case t.At(_, instant):
                self._recent.clear()
                await self._go_on_to(instant.astimezone(UTC))
            case t.Says(_, name, text, group):
                to = f"group {group}" if group else "bot"
                self._line(f"{name} -> {to}: {shown(text)}")
                await self.messenger.send_text(self.chats[name], text, chat=self.chats[group] if group else None)
                await self._settle(name)
            case t.Edits(_, name, text, back):
                self._line(f"{name} -> bot (edited): {shown(text)}")
                user = self.chats[name]
                message = await self._nth_last(user, back, lambda m: m.sender == user and m.kind == "text")
                await self.messenger.edit_text(user, text, message_id=message)
                await self._settle(name)
            case t.Replies(_, name, text, back):
                self._line(f"{name} -> bot (in reply): {shown(text)}")
                user = self.chats[name]
                message = await self._nth_last(user, back, lambda m: True)
                await self.messenger.send_text(user, text, reply_to=message)
                await self._settle(name)
            case t.Presses():
                await self._press(step)
            case t.Opens():
                await self._open(step)
            case t.Sends(_, name, kind):
                self._line(f"{name} -> bot: <{kind}>")
                await self._send(self.chats[name], kind)
                await self._settle(name)
            case t.Does():
                await self._does(step)
            case t.Bot(_, act):
                await self._bot(act)
            case t.MessengerIs(_, working):
                self._line("the messenger works again" if working else "the messenger fails")
                await self.machine.messenger_is(working)
                await self._settle()
            case t.Expect():
                self._expect(step)

    async def _go_on_to(self, until: datetime) -> None:
        """Jump from one due instant to the next, then to `until`."""
        for _ in range(_STEPS_AT_MOST):
            due = await self.machine.next_due()
            if due is None or due >= until:
                break
            self.now = due
            await self._settle()
        else:
            raise CannotDo("work is due again without end")
        self.now = until
        await self._settle()

    async def _settle(self, who: str = "") -> None:
        """Let the bot do everything due now, and write what it said to the transcript: to `who` first."""
        if await self.machine.settle(self.now):
            self._line("the bot is killed before it could send what it had to say")
        sent = await self.messenger.sent(after=self._mark)
        self._mark += len(sent)
        place = {chat: number for number, chat in enumerate(self.chats.values())}
        first = self.chats.get(who)
        # Chats are served concurrently, so their order is random; within a chat it is the order of sending.
        sent.sort(key=lambda m: (m.chat != first, place.get(m.chat, len(place)), m.seq))
        names = {chat: name for name, chat in self.chats.items()}
        for message in sent:
            name = names[message.chat]
            for token in dict.fromkeys(_LINK.findall(message.text)):
                if token not in self._known_links():
                    self.links.setdefault(name, GivenLinks()).add(token)
            if self._muted:
                continue
            self._recent.append(message)
            self._line(f"bot -> {'group ' if message.chat < 0 else ''}{name}: {body(message)}")
            self._keep_picture(name, message)

    def _known_links(self) -> set[str]:
        return {token for links in self.links.values() for token in links.given}

    def _line(self, text: str) -> None:
        if self._muted:
            return
        line = f"{stamp(self.now, self.tape.zone)} {text}"
        self.played.lines.append(line)
        self._write(line)

    def _keep_picture(self, name: str, message: SeenMessage) -> None:
        if self._pictures is None or message.content is None or message.filename is None:
            return
        at = f"{self.now.astimezone(self.tape.zone):%Y-%m-%d-%H%M}"
        path = self._pictures / f"{at}-{name.casefold()}-{message.filename}"
        path.unlink(missing_ok=True)
        private_file(path)
        path.write_bytes(message.content)
        self.played.pictures.append(path)

    def _expect(self, step: t.Expect) -> None:
        chat = self.chats.get(step.name)
        got = [message for message in self._recent if message.chat == chat]
        if any(says(message, step.words) for message in got) is step.seen:
            return
        what = f'"{step.words}"' if step.words else "anything"
        said = f"{step.name} did not see {what}" if step.seen else f"{step.name} saw {what}"
        self.played.failures.append(FailedStep(step.number, said))

    # --- what people do -----------------------------------------------------------------------------------------

    async def _account(self, name: str, language: str = "en") -> int:
        """A person's account, created when they first appear."""
        if name not in self.chats:
            self.chats[name] = await self.messenger.create_user(name, language_code=language)
        return self.chats[name]

    async def _press(self, step: t.Presses) -> None:
        user = self.chats[step.name]
        self._line(f"{step.name} presses [{shown(step.label)}]")
        found = buttons(await self.messenger.seen(user), step.label)
        if len(found) <= step.back:
            which = "" if not found else f" {t.nth(step.back + 1)}"
            raise CannotDo(f"there is no{which} button {step.label!r}")
        message, button = found[step.back]
        if button.data is None:
            await self.messenger.press(user, button.label, message_id=message.message_id)
        else:
            await self.messenger.press(user, data=button.data, message_id=message.message_id)
        await self._settle(step.name)

    async def _nth_last(self, user: int, back: int, which: Callable[[SeenMessage], bool]) -> int:
        found = [m for m in await self.messenger.seen(user) if which(m)]
        if len(found) <= back:
            raise CannotDo("there are not that many messages")
        return found[-1 - back].message_id

    async def _bot(self, act: str) -> None:
        match act:
            case "starts":
                self._line("the bot starts again")
                await self.machine.start(self.now)
            case "stops":
                self._line("the bot is stopped")
                await self.machine.stop()
            case _:
                self._line("the bot will be killed when it next has something to send")
                self.machine.crash_at_next_message()
        await self._settle()

    async def _send(self, user: int, kind: str) -> None:
        if kind == "location":
            await self.messenger.send_location(user, 51.48, 0.0)
        elif kind == "contact":
            await self.messenger.send_contact(user, "+440000000000", "Somebody")
        else:
            await self.messenger.send_file(user, kind)

    async def _open(self, step: t.Opens) -> None:
        if step.coach == t.OPERATOR:
            await self._become_coach(step.name)
            return
        user = await self._account(step.name)
        if not step.coach:
            self._line(f"{step.name} -> bot: /start")
            await self.messenger.open_bot(user)
            await self._settle(step.name)
            return
        links = self.links.setdefault(step.coach, GivenLinks())
        if step.link:
            token = links.numbered(step.link)
        elif step.used:
            if not links.opened:
                raise CannotDo(f"nobody opened an invitation of {step.coach}'s yet")
            token = links.opened[-1]
        else:
            if not links.unopened:
                await self._step(t.Says(step.number, step.coach, f"/invite {step.name}"))
            if not links.unopened:
                raise CannotDo(f"{step.coach} has no link")
            token = links.unopened[-1]
        if not step.used:
            links.open(token)
        self._line(f"{step.name} -> bot: /start {STAND_IN}")
        await self.messenger.open_bot(user, token)
        await self._settle(step.name)

    async def _does(self, step: t.Does) -> None:
        user, group = self.chats[step.name], self.chats.get(step.group, 0)
        match step.act:
            case "blocks":
                self._line(f"{step.name} blocks the bot")
                await self.messenger.block(user)
            case "unblocks":
                self._line(f"{step.name} unblocks the bot")
                await self.messenger.unblock(user)
            case "adds":
                self._line(f"{step.name} adds the bot to {step.group}")
                links = self.links.get(step.coach, GivenLinks())
                newest = links.unopened[-1] if links.unopened else None
                await self.messenger.add_bot(group, user, links.numbered(step.link) if step.link else newest)
            case "removes":
                self._line(f"{step.name} removes the bot from {step.group}")
                await self.messenger.remove_bot(group, user)
            case "joins":
                self._line(f"{step.name} joins {step.group}")
                await self.messenger.add_user(group, user, user)
            case "upgrades":
                self._line(f"{step.group} becomes a supergroup")
                self.chats[step.group] = await self.messenger.migrate(group, user)
            case _:
                self._line(f"{step.name} leaves {step.group}")
                await self.messenger.remove_user(group, user, user)
        await self._settle(step.name)

    # --- arriving in one line -----------------------------------------------------------------------------------

    async def _coach(self, step: t.TapeCoach) -> None:
        """Open an operator's invitation through the chat, and answer the questions about place and digest."""
        user = await self._account(step.name, step.given.get("lang", "en"))
        self._line(f"{step.name} joins as a coach, by the operator's invitation")
        self._muted = True
        try:
            await self._become_coach(step.name)
            await self._step(t.Says(step.number, step.name, step.given.get("zone", self.tape.zone_name)))
            if "slot" in step.given:
                await self._step(t.Says(step.number, step.name, "/settings"))
                latest, data = await self._latest_buttons(user)
                await self.messenger.press(user, data=data["own:digest"], message_id=latest.message_id)
                await self._settle(step.name)
                await self._step(t.Says(step.number, step.name, step.given["slot"]))
        finally:
            self._muted = False

    async def _organiser(self, step: t.Organiser) -> None:
        """The same for an organiser."""
        user = await self._account(step.name, step.given.get("lang", "en"))
        self._line(f"{step.name} joins as an organiser, by the operator's invitation")
        self._muted = True
        try:
            await self.messenger.open_bot(user, await self.machine.invite_organiser(step.name, self.now))
            await self._settle(step.name)
            await self._step(t.Says(step.number, step.name, step.given.get("zone", self.tape.zone_name)))
        finally:
            self._muted = False

    async def _become_coach(self, name: str) -> None:
        user = await self._account(name)
        token = await self.machine.invite_coach(name, self.now)
        self._line(f"{name} -> bot: /start {STAND_IN}")
        await self.messenger.open_bot(user, token)
        await self._settle(name)

    async def _client(self, step: t.TapeClient) -> None:
        """Open a coach's invitation and answer every question, with the same messages as anybody."""
        user = await self._account(step.name, step.given.get("lang", "en"))
        self._line(f"{step.name} joins by {step.coach}'s invitation and answers every question")
        self._muted = True
        try:
            token = await self.machine.invite_client(step, self.chats[step.coach], self.now)
            await self.messenger.open_bot(user, token)
            await self.machine.settle(self.now)
            await self._answer_everything(user, step)
            await self._settle()
        finally:
            self._muted = False

    async def _latest_buttons(self, user: int) -> tuple[SeenMessage, dict[str, str | None]]:
        """The bot's latest message, and its buttons: what each stands for, and what it returns."""
        (*_, latest) = [m for m in await self.messenger.seen(user) if m.from_bot]
        return latest, {undrawn(b.data or "")[0]: b.data for row in latest.buttons for b in row}

    async def _answer_everything(self, user: int, step: t.TapeClient) -> None:
        left = answers(step, self.tape)
        rest = ["/settings", "set:about_me", "set:missing"]  # what is asked later, answered at once
        for _ in range(80):
            latest, data = await self._latest_buttons(user)
            if "consent:yes" in data:
                await self.messenger.press(user, data=data["consent:yes"], message_id=latest.message_id)
            elif (question := next((d.split(":")[1] for d in data if d.startswith("e:")), "")) == "":
                if not rest:
                    return
                if rest[0] in data:
                    await self.messenger.press(user, data=data[rest.pop(0)], message_id=latest.message_id)
                elif rest[0].startswith("/"):
                    await self.messenger.send_text(user, rest.pop(0))
                else:
                    return  # nothing is missing
            else:
                given = left.get(question) or ["skip"]
                answer = given.pop(0)
                wanted = f"e:{question}:{answer}"
                if wanted in data:
                    await self.messenger.press(user, data=data[wanted], message_id=latest.message_id)
                else:
                    await self.messenger.send_text(user, answer)
            await self.machine.settle(self.now)
        raise CannotDo(f"{step.name} is asked without end; the last question was: {shown(latest.text)}")


def buttons(messages: Sequence[SeenMessage], label: str) -> list[tuple[SeenMessage, Button]]:
    """The buttons with this label, newest message first, top to bottom; ignoring case if unambiguous."""
    every = [
        (message, button, shown(button.label))
        for message in reversed(messages)
        for row in (*message.buttons, *message.keyboard)
        for button in row
    ]
    near = {words for _, _, words in every if words.casefold() == label.casefold()}
    wanted = label if label in near or len(near) != 1 else near.pop()
    return [(message, button) for message, button, words in every if words == wanted]


def answers(step: t.TapeClient, tape: t.Tape) -> dict[str, list[str]]:
    """This client's answer to each enrolment question, in order: a button's data, or text."""
    given = step.given
    weekday, at = t.slot(given.get("slot", "")) or (tape.start.weekday(), tape.start.time())
    cautions = [c for c in given.get("cautions", "").split(",") if c]
    found = {
        "adult": ["yes"],
        "cautions": [*cautions, "done"],
        "numbers": [given.get("numbers", "shown")],
        "signs": ["done"],
        "regular": ["yes"],
        "harder": ["no"],
        "own_better": [given.get("own_better", "higher")],
        "weekday": [str(weekday)],
        "time": [f"{at:%H:%M}"],
        "zone": [given.get("zone", tape.zone_name)],
    }
    for question, key in (
        ("birth_year", "born"), ("sex", "sex"), ("units", "units"), ("stature", "height"),
        ("background", "background"), ("own_question", "own"),
    ):  # fmt: skip
        if key in given:
            found[question] = [given[key]]
    return found
