"""Bots to be killed: one process imports everything once and forks a bot for each line it reads.

    stdin    {"settings": {"SAMEHOUR_...": "..."}, "webhook": false, "plan": {...}}
    stdout   {"pid": 17, "event": "started"} and, when it is over, {"pid": 17, "event": "ended", "status": -9,
             "point": "sent"}

A plan defines where the bot kills itself with SIGKILL: {"at": 12} at the twelfth point it passes, {"point": "sent",
"at": 3} at the third of that name, {} never. The points are where something could be lost or done twice:

    fetched        updates have arrived and are not stored
    writing W      W has done its work, and nothing is committed
    written W      W is committed, and nobody knows it yet
    sending        a message is about to be sent
    sent           the messenger's answer has arrived, and is not recorded

W is the function that wrote. Only transactions that changed something count. The bot contains none of this: the points
are wrapped around it in the fork. A plan may also contain

    clock          seconds by which the bot's clock is off
    lease          seconds for which a killed worker's messages stay claimed
    wait           seconds until a request without an answer is abandoned
    full           number of transactions that find the disk full (SQLite); each is a point "full"
    unheard        3: every third transaction is committed, but the bot only learns that the connection broke; each is a
                   point "unheard"
"""

from __future__ import annotations

import asyncio
import json
import os
import selectors
import signal
import sys
from collections.abc import Coroutine
from datetime import timedelta
from typing import Any


def forever() -> None:
    """Fork bots on request, until stdin closes; then kill the remaining ones."""
    _import_everything()
    chosen = selectors.DefaultSelector()
    chosen.register(0, selectors.EVENT_READ)
    children: dict[int, tuple[int, bytes]] = {}
    waiting = b""
    _tell(event="ready")
    while True:
        for key, _ in chosen.select():
            if key.fd == 0:
                given = os.read(0, 1 << 16)
                if not given:
                    for pid, _ in children.values():
                        os.kill(pid, signal.SIGKILL)
                    return
                *lines, waiting = (waiting + given).split(b"\n")
                for line in lines:
                    pid, fd = _fork(json.loads(line))
                    children[fd] = (pid, b"")
                    chosen.register(fd, selectors.EVENT_READ)
                    _tell(event="started", pid=pid)
            else:
                pid, said = children[key.fd]
                more = os.read(key.fd, 1 << 12)
                if more:
                    children[key.fd] = (pid, said + more)
                    continue
                chosen.unregister(key.fd)
                os.close(key.fd)
                del children[key.fd]
                _, status = os.waitpid(pid, 0)
                _tell(event="ended", pid=pid, status=os.waitstatus_to_exitcode(status), point=said.decode())


def _tell(**what: Any) -> None:
    sys.stdout.write(json.dumps(what) + "\n")
    sys.stdout.flush()


def _import_everything() -> None:
    """Import and warm up what a bot needs, so that each fork works within milliseconds. Starts no thread."""
    import apscheduler.schedulers.asyncio  # noqa: F401
    import psycopg  # noqa: F401
    import sqlalchemy.dialects.postgresql.psycopg  # noqa: F401
    import uvloop  # noqa: F401

    import bot.operator.commands.serve
    import bot.process.wiring  # noqa: F401
    from bot.rendering import Reader, render
    from bot.store import codec
    from core.dialogue.kit.messages import OurFault

    codec.registry()
    render(OurFault(), (), Reader("en"))


def _fork(given: dict[str, Any]) -> tuple[int, int]:
    ours, theirs = os.pipe()
    signal.pthread_sigmask(signal.SIG_BLOCK, {signal.SIGTERM})  # a stop request right away must not look like a kill
    pid = os.fork()
    if pid:
        signal.pthread_sigmask(signal.SIG_UNBLOCK, {signal.SIGTERM})
        os.close(theirs)
        return pid, ours
    try:
        os.close(ours)
        os.dup2(os.open(os.devnull, os.O_RDONLY), 0)
        os.dup2(2, 1)
        _be_a_bot(given, theirs)
        code = 0
    except BaseException as error:
        os.write(2, f"{type(error).__name__}: {error}\n".encode())
        code = 1
    finally:
        sys.stdout.flush()
        sys.stderr.flush()
    os._exit(code)


def _be_a_bot(given: dict[str, Any], pipe: int) -> None:
    from bot.foundation import config, log
    from bot.operator.commands import serve
    from bot.process import loop
    from bot.process.single_instance import only_one
    from bot.store.opening import open_database

    for name in [name for name in os.environ if name.startswith("SAMEHOUR_")]:
        del os.environ[name]
    os.environ.update(given["settings"])
    settings = config.read()
    log.set_up(settings.log_level, "json", sys.stderr)
    plan = given.get("plan", {})
    _hurry(plan)
    _wrap(Points(plan, pipe))
    with only_one(open_database(settings).file):
        loop.run(_hearing(serve.run(settings, given.get("webhook", False))))


async def _hearing(work: Coroutine[Any, Any, None]) -> None:
    """Unblock SIGTERM once `work` has installed its handler, which it does first."""
    task = asyncio.create_task(work)
    await asyncio.sleep(0)
    signal.pthread_sigmask(signal.SIG_UNBLOCK, {signal.SIGTERM})
    await task


def _hurry(plan: dict[str, Any]) -> None:
    """Shorten pure waiting times, and shift the clock."""
    from bot.foundation import clock as clocks
    from bot.foundation import retry
    from bot.store import dispatch
    from bot.transports.request import AiohttpRequest

    retry.FIRST_DELAY = timedelta(milliseconds=100)
    if "lease" in plan:
        dispatch.LEASE = timedelta(seconds=plan["lease"])
    if "wait" in plan:
        assert AiohttpRequest.__init__.__kwdefaults__ is not None
        AiohttpRequest.__init__.__kwdefaults__["read_timeout"] = plan["wait"]
    if "clock" in plan:
        real, shift = clocks.now, timedelta(seconds=plan["clock"])
        clocks.now = lambda: real() + shift


class Points:
    """Counts the points a bot passes, and kills it at the chosen one."""

    def __init__(self, plan: dict[str, Any], pipe: int) -> None:
        self._only = plan.get("point")
        self._left = plan.get("at", 0)
        self._full: int | None = plan.get("full")
        self._unheard = plan.get("unheard", 0)
        self._committed = 0
        self._pipe = pipe

    def pass_(self, name: str) -> None:
        if self._left and (self._only is None or name.startswith(self._only)):
            self._left -= 1
            if not self._left:
                os.write(self._pipe, name.encode())
                os.kill(os.getpid(), signal.SIGKILL)

    def limit(self, conn: Any) -> None:
        """Allow the file no further page while the disk is meant to be full."""
        if self._full is not None:
            conn.exec_driver_sql(f"PRAGMA max_page_count = {1 if self._full else 1 << 30}")

    def committed(self) -> None:
        """Raise instead of reporting the commit, if this one is meant to go unheard."""
        self._committed += 1
        if self._unheard and self._committed % self._unheard == 0:
            os.write(self._pipe, b"unheard ")
            raise OSError("the connection broke")

    def found_full(self, error: Exception) -> None:
        said: BaseException | None = error  # SQLite ends the transaction itself, so the savepoint is missing
        while said is not None and "is full" not in str(said):
            said = said.__context__
        if self._full and said is not None:
            self._full -= 1
            os.write(self._pipe, b"full")


def _wrap(points: Points) -> None:
    from bot.store.database import Database
    from bot.transports.telegram import Telegram

    write, send, drop, fetch = Database._write, Telegram.send, Telegram.drop_buttons, Telegram.fetch

    def watched(self: Database, work: Any, args: tuple[Any, ...]) -> Any:
        name = work.__name__.strip("_")
        matters = False

        def working(conn: Any, *given: Any) -> Any:
            nonlocal matters
            points.limit(conn)
            result = work(conn, *given)
            matters = _did_something(name, given, result)
            if matters:
                points.pass_(f"writing {name}")
            return result

        try:
            result = write(self, working, args)
        except Exception as error:
            points.found_full(error)
            raise
        if matters:
            points.pass_(f"written {name}")
            points.committed()
        return result

    async def sending(self: Telegram, *given: Any) -> Any:
        points.pass_("sending")
        answer = await send(self, *given)
        points.pass_("sent")
        return answer

    async def dropping(self: Telegram, *given: Any) -> Any:
        points.pass_("sending")
        answer = await drop(self, *given)
        points.pass_("sent")
        return answer

    async def fetching(self: Telegram, *given: Any, **more: Any) -> Any:
        batch = await fetch(self, *given, **more)
        if batch.events:
            points.pass_("fetched")
        return batch

    Database._write = watched  # type: ignore[method-assign]
    Telegram.send = sending  # type: ignore[method-assign]
    Telegram.drop_buttons = dropping  # type: ignore[method-assign]
    Telegram.fetch = fetching  # type: ignore[method-assign]


def _did_something(name: str, given: tuple[Any, ...], result: Any) -> bool:
    if name == "claim_and_settle":
        return bool(given[2] or result.jobs)
    return bool(result)


if __name__ == "__main__":
    forever()
