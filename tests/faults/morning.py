"""A Monday morning: clients whose slot was due a minute ago, each typing a check-in as soon as they are asked.

Everybody only types, never presses: the texts do not depend on which messages have arrived, so despite any faults the
conversations must end as without them (`findings`).
"""

from __future__ import annotations

import asyncio
from collections.abc import AsyncIterator, Awaitable, Callable, Sequence
from contextlib import asynccontextmanager
from dataclasses import dataclass, field
from datetime import timedelta

from sqlalchemy import Connection, func, select

from bot.foundation.clock import now
from bot.store.database import Database
from bot.store.schema import inbox, outbox
from core.care import Plan, Slot
from demo.messenger import Faults, Flood, Messenger
from tests.bot.practice import add_client, add_coach
from tests.faults.herd import Bot, End, Herd
from tests.faults.herd import Plan as KillPlan
from tests.waiting import until

ROWAN, FIRST = 900, 1000  # chats
ENOUGH = 60.0  # seconds for one morning
SHORT = {"lease": 2.5}  # seconds, if workers are killed: longer than any send takes here on a busy machine
Look = Callable[[Connection], bool]


@dataclass(frozen=True, slots=True)
class Line:
    """What one client types; `edits`: replaces the message this many lines earlier."""

    text: str
    edits: int = 0


def lines(client: int) -> tuple[Line, ...]:
    """What the n-th client types."""
    return (
        Line(str(3 + client % 7)),
        Line(f"{60 + client}.4 kg"),
        Line("zum ersten Mal"),
        Line(f"{60 + client}.6 kg", edits=2),
        Line("help"),
    )


@dataclass
class Morning:
    """One run. messenger: with its clients; url: of a fresh, migrated database."""

    messenger: Messenger
    url: str
    settings: dict[str, str]
    store: Database
    clients: tuple[int, ...]
    ends: list[End] = field(default_factory=list)
    typed: int = 0

    # --- people -----------------------------------------------------------------------------------------------

    async def people(self) -> None:
        """Everybody types their lines, each after receiving something since the previous one."""
        await asyncio.gather(*(self._person(number, chat) for number, chat in enumerate(self.clients)))

    async def _person(self, number: int, chat: int) -> None:
        sent: list[int] = []
        mark = 0
        for line in lines(number):
            await self.messenger.wait_for_messages(chat, 1, after=mark, timeout=ENOUGH)
            mark = await self.messenger.mark()
            if line.edits:
                await self.messenger.edit_text(chat, line.text, message_id=sent[-line.edits])
            else:
                sent.append(await self.messenger.send_text(chat, line.text))
            self.typed += 1

    # --- bots -------------------------------------------------------------------------------------------------

    async def keep_alive(self, herd: Herd, plans: Sequence[KillPlan], webhook: bool = False) -> Bot:
        """Start bots with each plan in turn, as each is killed; return the first that survives."""
        for plan in plans:
            bot = await herd.start(self.settings, {**SHORT, **plan}, webhook=webhook)
            if not plan.get("at"):
                return bot
            done = asyncio.ensure_future(self.until(self.quiet))
            await asyncio.wait((bot.ended, done), return_when=asyncio.FIRST_COMPLETED)
            if not bot.ended.done():  # everything is sent and its kill point was never reached
                await done
                return bot
            done.cancel()
            self.ends.append(bot.ended.result())
        return await herd.start(self.settings, SHORT, webhook=webhook)

    async def kill_each(self, herd: Herd, lives: Sequence[float]) -> Bot:
        """Start bots that live for the given seconds; return the one that lasts to the end of the morning."""
        for seconds in lives:
            bot = await herd.start(self.settings, SHORT)
            done = asyncio.ensure_future(self.until(self.quiet))
            await asyncio.wait((done,), timeout=seconds)
            if done.done():
                return bot
            bot.kill()
            done.cancel()
            self.ends.append(await bot.ended)
        return await herd.start(self.settings, SHORT)

    # --- waiting ----------------------------------------------------------------------------------------------

    async def until(self, condition: Callable[[], Awaitable[bool]]) -> None:
        await until(self.messenger, condition)

    async def quiet(self) -> bool:
        """Whether everybody has typed everything, and all of it is stored, handled and answered."""
        if self.typed < sum(len(lines(n)) for n in range(len(self.clients))):
            return False
        figures = await self.messenger.figures()
        if figures["unconfirmed"] or figures["in_flight"]:
            return False
        try:
            return await self.store.read(_nothing_waits)
        except Exception:  # the database may be the thing that is broken
            return False


def _nothing_waits(conn: Connection) -> bool:
    for table in (inbox, outbox):
        waiting = select(func.count()).select_from(table).where(table.c.status == "pending")
        if table is outbox:
            waiting = waiting.where(outbox.c.ready_at <= now() + timedelta(minutes=5))
        if conn.execute(waiting).scalar_one():
            return False
    return True


@asynccontextmanager
async def morning(
    url: str, clients: int = 3, *, seed: int = 0, flood: Flood | None = None, **settings: str
) -> AsyncIterator[Morning]:
    """A messenger with `clients` clients, and a database that knows them. settings: of the bot, without the prefix."""
    messenger = Messenger(
        flood=flood or Flood.off(), faults=Faults(seed), webhook_first_delay=0.05, webhook_longest_delay=0.2
    )
    async with messenger:
        chats = tuple(range(FIRST, FIRST + clients))
        for chat in (ROWAN, *chats):
            await messenger.create_user("Rowan" if chat == ROWAN else f"Ada {chat}", id=chat)
            await messenger.open_bot(chat)
        messenger.queue.drop_all()  # they are already known
        store = Database(url, synchronous="NORMAL")
        store.write_now(_enrol, chats)
        given = {
            "TOKEN": messenger.token,
            "API_BASE_URL": messenger.url,
            "DATABASE_URL": url,
            "SQLITE_SYNCHRONOUS": "NORMAL",
            "SWEEP_EVERY": "0.1",
            "SEND_RATE": "1000",
            "CHAT_RATE": "30",
            **{name.upper(): value for name, value in settings.items()},
        }
        try:
            yield Morning(messenger, url, {f"SAMEHOUR_{name}": value for name, value in given.items()}, store, chats)
        finally:
            store.close()


def _enrol(conn: Connection, chats: Sequence[int]) -> None:
    due = now().replace(microsecond=0) - timedelta(minutes=1)
    coach = add_coach(conn, ROWAN)
    for chat in chats:
        add_client(
            conn,
            coach,
            chat,
            f"Ada {chat}",
            plan=Plan(measures=("weight",)),
            slot=Slot(due.weekday(), due.time(), "UTC"),
            next_due_at=due,
            next_due_day=due.date(),
        )
