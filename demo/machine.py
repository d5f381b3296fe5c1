"""The bot as a tape has it: the parts `samehour serve` runs, on SQLite, settled instant by instant.

What a tape sets up without a conversation (an operator's invitation, a plan a coach chose beforehand) is written by
the store's own functions, as the command line does.
"""

from __future__ import annotations

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
from core.care import Plan
from demo import tape as t
from demo.messenger import CannotDo, Messenger


@lru_cache(maxsize=1)
def _fresh_database() -> bytes:
    """An empty database at the newest version: made once, by the migrations themselves."""
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
    """One bot on one database file, which outlives its process: `stop` and `start` are an outage."""

    def __init__(self, messenger: Messenger, file: Path) -> None:
        self._messenger = messenger
        self._file = file
        self._service: Service | None = None
        self._database: Database | None = None

    async def start(self, now: datetime) -> None:
        if self._service is not None:
            return
        if not self._file.exists():
            self._file.write_bytes(_fresh_database())
        settings = Settings(
            token=SecretStr(self._messenger.token),
            api_base_url=self._messenger.url,
            database_url=f"sqlite:///{self._file}",
            sqlite_synchronous="NORMAL",
            poll_timeout=0,
        )
        self._service = wiring.service(settings, clock=HeldClock(now), live=False, paced=False, spread=lambda: 0.5)
        self._database = Database(settings.database_url, synchronous="NORMAL")
        await self._service.start()

    async def stop(self) -> None:
        if self._service is None or self._database is None:
            return
        await self._service.stop()
        self._database.close()
        self._service = self._database = None

    async def settle(self, now: datetime) -> None:
        """Do all there is to do at `now`; nothing while the bot is stopped."""
        if self._service is not None:
            await self._service.settle(now)

    async def next_due(self) -> datetime | None:
        """Return the next instant something is due; None for never, and while the bot is stopped."""
        return None if self._service is None else await self._service.next_due()

    # What is set up without a conversation.

    async def invite_coach(self, name: str, now: datetime) -> str:
        """Make an operator's invitation; its token."""
        return await self._store.write(_invite_coach, name, now)

    async def invite_organiser(self, name: str, now: datetime) -> str:
        """Make an operator's invitation to run cohorts; its token."""
        return await self._store.write(_invite_organiser, name, now)

    async def invite_client(self, step: t.TapeClient, coach_chat: int, now: datetime) -> str:
        """Make a coach's invitation with the plan the tape gives; its token."""
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
        plan=plan_of(step),
    )


def plan_of(step: t.TapeClient) -> Plan:
    """The plan a coach would have set up for this client; what clients themselves choose is answered by them."""
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
    )
