"""The bot as a tape runs it: the parts of `samehour serve`, on SQLite, settled at each instant.

What a tape sets up without a conversation (an operator's invitation, a plan a coach chose beforehand) is written with
the store's functions, as on the command line.
"""

from __future__ import annotations

import asyncio
from datetime import datetime
from functools import lru_cache
from pathlib import Path
from tempfile import TemporaryDirectory

from pydantic import SecretStr
from sqlalchemy import Connection

from bot.foundation.clock import HeldClock
from bot.foundation.config import Settings
from bot.process import wiring
from bot.process.worker import Service
from bot.store import invitations, migrate
from bot.store.database import Database
from bot.store.people import staff
from core.care import Plan, Programme
from demo import tape as t
from demo.messenger import CannotDo, Messenger

_SENDING = ("sendMessage", "sendPhoto", "sendDocument")


@lru_cache(maxsize=1)
def _fresh_database() -> bytes:
    """An empty database at the newest version, created once by the migrations."""
    with TemporaryDirectory(prefix="samehour-fresh-") as folder:
        file = Path(folder) / "fresh.db"
        database = Database(f"sqlite:///{file}", synchronous="NORMAL")
        migrate.upgrade(database.engine)
        with database.engine.connect() as conn:
            conn.exec_driver_sql("COMMIT")
            conn.exec_driver_sql("PRAGMA wal_checkpoint(TRUNCATE)")
            conn.exec_driver_sql("BEGIN")
        database.close()
        return file.read_bytes()


class Machine:
    """One bot on one database file, which outlives its process: `stop` and `start` are an outage.

    menus: whether it sets its command menus.
    """

    def __init__(self, messenger: Messenger, file: Path, *, menus: bool = False) -> None:
        self._messenger = messenger
        self._menus = menus
        self.file = file
        self.messenger_works = True
        self.will_crash = False
        self._service: Service | None = None
        self._database: Database | None = None

    @property
    def runs(self) -> bool:
        return self._service is not None

    async def start(self, now: datetime) -> None:
        if self._service is not None:
            return
        if not self.messenger_works:
            raise CannotDo("the bot cannot start while the messenger fails")
        if not self.file.exists():
            self.file.write_bytes(_fresh_database())
        settings = Settings(
            token=SecretStr(self._messenger.token),
            api_base_url=self._messenger.url,
            database_url=f"sqlite:///{self.file}",
            sqlite_synchronous="NORMAL",
            poll_timeout=0,
        )
        self._service = wiring.service(
            settings, clock=HeldClock(now), live=False, paced=False, menus=self._menus, spread=lambda: 0.5
        )
        self._database = Database(settings.database_url, synchronous="NORMAL")
        await self._service.start()

    async def stop(self) -> None:
        self.will_crash = False
        if self._service is None or self._database is None:
            return
        await self._service.stop()
        self._database.close()
        self._service = self._database = None

    async def settle(self, now: datetime) -> bool:
        """Do everything due at `now`; nothing while the bot is stopped. Return whether the bot was killed by it."""
        if self._service is None:
            return False
        if not self.will_crash:
            await self._service.settle(now)
            return False
        # Its messages are claimed and in flight to a messenger that stays silent; then everything is dropped. A service
        # that is not live records nothing when stopped, so its claims stay.
        await self._messenger.add_fault("silence", methods=_SENDING)
        settling = asyncio.create_task(self._service.settle(now))
        sending = asyncio.create_task(self._silenced())
        try:
            await asyncio.wait((settling, sending), return_when=asyncio.FIRST_COMPLETED)
            killed = not settling.done()
            settling.cancel()
            await asyncio.gather(settling, return_exceptions=True)
        finally:
            sending.cancel()
            await self._messenger.clear_faults()
        if killed:
            await self.stop()
        else:
            settling.result()
        return killed

    async def _silenced(self) -> None:
        """Wait until the messenger has left a message unanswered."""
        before = await self._silences()
        stands = await self._messenger.changed(-1)
        while await self._silences() == before:
            stands = await self._messenger.changed(stands, timeout=60)

    async def _silences(self) -> int:
        struck: dict[str, int] = (await self._messenger.figures())["struck"]
        return struck.get("silence", 0)

    def crash_at_next_message(self) -> None:
        """Kill the process when it next has something to send."""
        if self._service is None:
            raise CannotDo("the bot is stopped already")
        if not self.messenger_works:
            raise CannotDo("nothing can be sent while the messenger fails")
        self.will_crash = True

    async def messenger_is(self, working: bool) -> None:
        """Make the messenger answer the bot with errors, or work again. It keeps storing what people write."""
        if self.will_crash:
            raise CannotDo("the bot is about to be killed at a message that then could not be sent")
        await self._messenger.clear_faults()
        if not working:
            await self._messenger.add_fault("server_error", code=502)
        self.messenger_works = working

    async def next_due(self) -> datetime | None:
        """The next instant at which something is due; None if never, and while the bot is stopped."""
        return None if self._service is None else await self._service.next_due()

    # What is set up without a conversation.

    async def invite_coach(self, name: str, now: datetime) -> str:
        """Create an operator's invitation; return its token."""
        return await self._store.write(_invite_coach, name, now)

    async def invite_organiser(self, name: str, now: datetime) -> str:
        """Create an operator's invitation to run cohorts; return its token."""
        return await self._store.write(_invite_organiser, name, now)

    async def invite_client(self, step: t.TapeClient, coach_chat: int, now: datetime) -> str:
        """Create a coach's invitation with the tape's plan; return its token."""
        return await self._store.write(_invite_client, step, coach_chat, now)

    @property
    def _store(self) -> Database:
        if self._database is None:
            raise CannotDo("nobody can be invited while the bot is stopped")
        return self._database


def _invite_coach(conn: Connection, name: str, now: datetime) -> str:
    return invitations.make(conn, invitations.InvitationKind.COACH, now, for_name=name)


def _invite_organiser(conn: Connection, name: str, now: datetime) -> str:
    return invitations.make(conn, invitations.InvitationKind.ORGANISER, now, for_name=name)


def _invite_client(conn: Connection, step: t.TapeClient, coach_chat: int, now: datetime) -> str:
    who = staff(conn, coach_chat)
    if who is None or who.coach_id is None:
        raise CannotDo(f"{step.coach} is no coach yet")
    return invitations.make(
        conn,
        invitations.InvitationKind.CLIENT,
        now,
        by_name=who.name,
        for_name=step.name,
        coach_id=who.coach_id,
        plan=plan_of(step, now),
    )


def plan_of(step: t.TapeClient, now: datetime) -> Plan:
    """The plan a coach would set up for this client; the client answers what clients choose themselves."""
    given, usual = step.given, Plan()
    days = t.intervals(given.get("interval", str(usual.retest_days))) or {}
    measures = tuple(given["measures"].split(",")) if "measures" in given else usual.measures
    if "own" in given and "own_question" not in measures:
        measures = (*measures, "own_question")
    return Plan(
        measures=measures,
        retest_days=days.pop("", usual.retest_days),
        per_measure=tuple(days.items()),
        directed_weighing=given.get("directed") == "yes",
        loss_is_planned=given.get("planned_loss") == "yes",
        programme=Programme(now.date(), int(given["programme"])) if "programme" in given else None,
    )
