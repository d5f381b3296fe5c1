"""Plays a tape: the real bot, the real client over real HTTP, the local messenger, and a clock the tape moves.

Nothing here decides what is said. Time never ticks: it jumps to the next instant at which the store says that
something is due, so that a season takes seconds and the same tape gives the same bytes.
"""

from __future__ import annotations

import asyncio
import re
from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import UTC, datetime
from pathlib import Path
from tempfile import TemporaryDirectory
from types import TracebackType
from typing import Self

from bot.foundation.private import private_file
from demo import tape as t
from demo.machine import Machine
from demo.messenger import CannotDo, Flood, Messenger, SeenMessage
from demo.transcript import STAND_IN, body, says, shown, stamp

_LINK = re.compile(r"[?&]start(?:group)?=([\w-]+)")
_STEPS_AT_MOST = 200_000  # instants a jump may pass through: more means that something comes due for ever


@dataclass(frozen=True, slots=True)
class FailedStep:
    """An `expect` that did not hold, or something nobody could do. number: the line."""

    number: int
    said: str


@dataclass(slots=True)
class Played:
    """What came of a tape."""

    lines: list[str] = field(default_factory=list)
    failures: list[FailedStep] = field(default_factory=list)
    pictures: list[Path] = field(default_factory=list)

    @property
    def text(self) -> str:
        return "".join(f"{line}\n" for line in self.lines)


@dataclass(slots=True)
class _Links:
    """Invitations one coach was given, oldest first, and the last one that was opened."""

    unopened: list[str] = field(default_factory=list)
    opened: list[str] = field(default_factory=list)


def play(tape: t.Tape, *, write: Callable[[str], None] = lambda line: None, pictures: Path | None = None) -> Played:
    """Play a tape from start to end in a temporary folder.

    write: called with each line of the transcript as it comes.  pictures: a folder for the pictures that were sent.
    A step that nobody could do ends the tape there, as a failure; an `expect` that does not hold lets it go on.
    """

    async def _play() -> Played:
        with TemporaryDirectory(prefix="samehour-tape-") as folder:
            async with Player(tape, Path(folder), write, pictures) as player:
                await player.run()
                return player.played

    return asyncio.run(_play())


class Player:
    """One tape being played. `async with`, then `run`."""

    def __init__(self, tape: t.Tape, folder: Path, write: Callable[[str], None], pictures: Path | None) -> None:
        self.tape = tape
        self.played = Played()
        self._write = write
        self._pictures = pictures
        self._now = tape.start.astimezone(UTC)
        self._messenger = Messenger(clock=lambda: self._now, flood=Flood.off(), bot_username="samehour_bot")
        self._machine = Machine(self._messenger, folder / "samehour.db")
        self._chats: dict[str, int] = {}  # people and groups, in the order they came
        self._mark = 0  # of what the bot sent, read so far
        self._recent: list[SeenMessage] = []  # since the last `at`
        self._links: dict[str, _Links] = {}
        self._muted = False

    async def __aenter__(self) -> Self:
        await self._messenger.start()
        await self._messenger.set_privacy(False)
        await self._machine.start(self._now)
        return self

    async def __aexit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        await self._machine.stop()
        await self._messenger.stop()

    # --- playing ------------------------------------------------------------------------------------------------

    async def run(self) -> None:
        for step in self.tape.steps:
            try:
                await self._step(step)
            except CannotDo as cannot:
                self.played.failures.append(FailedStep(step.number, str(cannot)))
                return

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
                self._chats[name] = await self._messenger.create_group(name, [self._chats[m] for m in members])
                self._line(f"group {name}: {', '.join(members)}")
            case t.At(_, instant):
                self._recent.clear()
                await self._go_on_to(instant.astimezone(UTC))
            case t.Says(_, name, text, group):
                to = f"group {group}" if group else "bot"
                self._line(f"{name} -> {to}: {shown(text)}")
                await self._messenger.send_text(self._chats[name], text, chat=self._chats[group] if group else None)
                await self._settle(name)
            case t.Edits(_, name, text):
                self._line(f"{name} -> bot (edited): {shown(text)}")
                await self._messenger.edit_text(self._chats[name], text)
                await self._settle(name)
            case t.Presses(_, name, label):
                await self._press(name, label)
            case t.Opens():
                await self._open(step)
            case t.Sends(_, name, kind):
                self._line(f"{name} -> bot: <{kind}>")
                await self._send(self._chats[name], kind)
                await self._settle(name)
            case t.Does():
                await self._does(step)
            case t.Bot(_, runs):
                self._line("the bot starts again" if runs else "the bot is stopped")
                await (self._machine.start(self._now) if runs else self._machine.stop())
                await self._settle()
            case t.Expect():
                self._expect(step)

    async def _go_on_to(self, until: datetime) -> None:
        """Jump from one due instant to the next, then to `until`."""
        for _ in range(_STEPS_AT_MOST):
            due = await self._machine.next_due()
            if due is None or due >= until:
                break
            self._now = due
            await self._settle()
        else:
            raise CannotDo("something comes due without end")
        self._now = until
        await self._settle()

    async def _settle(self, who: str = "") -> None:
        """Let the bot work off everything there is to do now, and write down what it said: to `who` first."""
        await self._machine.settle(self._now)
        sent = await self._messenger.sent(after=self._mark)
        self._mark += len(sent)
        place = {chat: number for number, chat in enumerate(self._chats.values())}
        first = self._chats.get(who)
        # Chats are served side by side, so their order is chance; within a chat it is the order they were sent in.
        sent.sort(key=lambda m: (m.chat != first, place.get(m.chat, len(place)), m.seq))
        names = {chat: name for name, chat in self._chats.items()}
        for message in sent:
            name = names[message.chat]
            self._links.setdefault(name, _Links()).unopened.extend(
                token for token in dict.fromkeys(_LINK.findall(message.text)) if token not in self._known_links()
            )
            if self._muted:
                continue
            self._recent.append(message)
            self._line(f"bot -> {'group ' if message.chat < 0 else ''}{name}: {body(message)}")
            self._keep_picture(name, message)

    def _known_links(self) -> set[str]:
        return {token for links in self._links.values() for token in (*links.unopened, *links.opened)}

    def _line(self, text: str) -> None:
        if self._muted:
            return
        line = f"{stamp(self._now, self.tape.zone)} {text}"
        self.played.lines.append(line)
        self._write(line)

    def _keep_picture(self, name: str, message: SeenMessage) -> None:
        if self._pictures is None or message.content is None or message.filename is None:
            return
        at = f"{self._now.astimezone(self.tape.zone):%Y-%m-%d-%H%M}"
        path = self._pictures / f"{at}-{name.casefold()}-{message.filename}"
        path.unlink(missing_ok=True)
        private_file(path)
        path.write_bytes(message.content)
        self.played.pictures.append(path)

    def _expect(self, step: t.Expect) -> None:
        chat = self._chats.get(step.name)
        got = [message for message in self._recent if message.chat == chat]
        if any(says(message, step.words) for message in got) is step.seen:
            return
        what = f'"{step.words}"' if step.words else "anything"
        said = f"{step.name} did not see {what}" if step.seen else f"{step.name} saw {what}"
        self.played.failures.append(FailedStep(step.number, said))

    # --- what people do -----------------------------------------------------------------------------------------

    async def _account(self, name: str, language: str = "en") -> int:
        """The account of somebody, made when they first appear."""
        if name not in self._chats:
            self._chats[name] = await self._messenger.create_user(name, language_code=language)
        return self._chats[name]

    async def _press(self, name: str, label: str) -> None:
        user = self._chats[name]
        self._line(f"{name} presses [{shown(label)}]")
        labels = {shown(shown_label) for m in await self._messenger.seen(user) for shown_label in m.labels}
        near = [one for one in labels if one.casefold() == label.casefold()]
        await self._messenger.press(user, label if label in labels or len(near) != 1 else near[0])
        await self._settle(name)

    async def _send(self, user: int, kind: str) -> None:
        if kind == "location":
            await self._messenger.send_location(user, 51.48, 0.0)
        elif kind == "contact":
            await self._messenger.send_contact(user, "+440000000000", "Somebody")
        else:
            await self._messenger.send_file(user, kind)

    async def _open(self, step: t.Opens) -> None:
        if step.coach == t.OPERATOR:
            await self._become_coach(step.name)
            return
        user = await self._account(step.name)
        if not step.coach:
            self._line(f"{step.name} -> bot: /start")
            await self._messenger.open_bot(user)
            await self._settle(step.name)
            return
        links = self._links.setdefault(step.coach, _Links())
        if step.used:
            if not links.opened:
                raise CannotDo(f"nobody opened an invitation of {step.coach}'s yet")
            token = links.opened[-1]
        else:
            if not links.unopened:
                await self._step(t.Says(step.number, step.coach, f"/invite {step.name}"))
            if not links.unopened:
                raise CannotDo(f"{step.coach} was given no link")
            token = links.unopened.pop()
            links.opened.append(token)
        self._line(f"{step.name} -> bot: /start {STAND_IN}")
        await self._messenger.open_bot(user, token)
        await self._settle(step.name)

    async def _does(self, step: t.Does) -> None:
        user, group = self._chats[step.name], self._chats.get(step.group, 0)
        match step.act:
            case "blocks":
                self._line(f"{step.name} blocks the bot")
                await self._messenger.block(user)
            case "unblocks":
                self._line(f"{step.name} unblocks the bot")
                await self._messenger.unblock(user)
            case "adds":
                self._line(f"{step.name} adds the bot to {step.group}")
                links = self._links.get(step.coach, _Links()).unopened
                await self._messenger.add_bot(group, user, links[-1] if links else None)
            case "removes":
                self._line(f"{step.name} removes the bot from {step.group}")
                await self._messenger.remove_bot(group, user)
            case "joins":
                self._line(f"{step.name} joins {step.group}")
                await self._messenger.add_user(group, user, user)
            case "upgrades":
                self._line(f"{step.group} becomes a supergroup")
                self._chats[step.group] = await self._messenger.migrate(group, user)
            case _:
                self._line(f"{step.name} leaves {step.group}")
                await self._messenger.remove_user(group, user, user)
        await self._settle(step.name)

    # --- arriving in one line -----------------------------------------------------------------------------------

    async def _coach(self, step: t.TapeCoach) -> None:
        """An operator's invitation, opened for real; the questions after place and digest are answered."""
        user = await self._account(step.name, step.given.get("lang", "en"))
        self._line(f"{step.name} joins as a coach, by the operator's invitation")
        self._muted = True
        try:
            await self._become_coach(step.name)
            await self._step(t.Says(step.number, step.name, step.given.get("zone", self.tape.zone_name)))
            if "slot" in step.given:
                await self._step(t.Says(step.number, step.name, "/settings"))
                await self._messenger.press(user, data="own:digest")
                await self._settle(step.name)
                await self._step(t.Says(step.number, step.name, step.given["slot"]))
        finally:
            self._muted = False

    async def _organiser(self, step: t.Organiser) -> None:
        """The same for somebody who is to run cohorts."""
        user = await self._account(step.name, step.given.get("lang", "en"))
        self._line(f"{step.name} joins as an organiser, by the operator's invitation")
        self._muted = True
        try:
            await self._messenger.open_bot(user, await self._machine.invite_organiser(step.name, self._now))
            await self._settle(step.name)
            await self._step(t.Says(step.number, step.name, step.given.get("zone", self.tape.zone_name)))
        finally:
            self._muted = False

    async def _become_coach(self, name: str) -> None:
        user = await self._account(name)
        token = await self._machine.invite_coach(name, self._now)
        self._line(f"{name} -> bot: /start {STAND_IN}")
        await self._messenger.open_bot(user, token)
        await self._settle(name)

    async def _client(self, step: t.TapeClient) -> None:
        """An invitation of the coach's, and every question answered: by the same messages as anybody's."""
        user = await self._account(step.name, step.given.get("lang", "en"))
        self._line(f"{step.name} joins by {step.coach}'s invitation and answers every question")
        self._muted = True
        try:
            token = await self._machine.invite_client(step, self._chats[step.coach], self._now)
            await self._messenger.open_bot(user, token)
            await self._machine.settle(self._now)
            await self._answer_everything(user, step)
            await self._settle()
        finally:
            self._muted = False

    async def _answer_everything(self, user: int, step: t.TapeClient) -> None:
        left = answers(step, self.tape)
        for _ in range(60):
            (*_, latest) = [m for m in await self._messenger.seen(user) if m.from_bot]
            data = [b.data or "" for row in latest.buttons for b in row]
            if "consent:yes" in data:
                await self._messenger.press(user, data="consent:yes", message_id=latest.message_id)
            elif (question := next((d.split(":")[1] for d in data if d.startswith("e:")), "")) == "":
                return
            else:
                given = left.get(question) or ["skip"]
                answer = given.pop(0)
                wanted = f"e:{question}:{answer}"
                if wanted in data:
                    await self._messenger.press(user, data=wanted, message_id=latest.message_id)
                else:
                    await self._messenger.send_text(user, answer)
            await self._machine.settle(self._now)
        raise CannotDo(f"{step.name} is asked without end; the last question was: {shown(latest.text)}")


def answers(step: t.TapeClient, tape: t.Tape) -> dict[str, list[str]]:
    """What this client answers to each question of the enrolment, in order: the data of a button, or typed words."""
    given = step.given
    weekday, at = t.slot(given.get("slot", "")) or (tape.start.weekday(), tape.start.time())
    cautions = [c for c in given.get("cautions", "").split(",") if c]
    found = {
        "adult": ["yes"],
        "cautions": [*cautions, "done"],
        "numbers": [given.get("numbers", "shown")],
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
