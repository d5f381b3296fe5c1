"""Health checks for supervisors and monitoring: is it alive, can it work, how much is pending."""

import asyncio
from contextlib import asynccontextmanager
from datetime import timedelta
from pathlib import Path

import aiohttp
import pytest
from pydantic import SecretStr
from structlog.testing import capture_logs

from bot.foundation.clock import now
from bot.foundation.config import Settings
from bot.process import wiring
from bot.store import inbox, outbox
from bot.store.inbox import NewEvent
from core.dialogue.client.messages import Welcome
from core.dialogue.kit.events import Text
from demo.messenger import Flood, Messenger
from tests.faults.balance import free_ports
from tests.waiting import PATIENCE, until


@asynccontextmanager
async def at_work(url, messenger, **more):
    """A running bot, and a way to query it: `ask(path)` returns (status, text)."""
    (port,) = free_ports(1)
    given = {"health_port": port, "database_url": url, "sqlite_synchronous": "NORMAL", **more}
    settings = Settings(token=SecretStr(messenger.token), api_base_url=messenger.url, **given)
    stop = asyncio.Event()
    pushed = "webhook_url" in more
    running = asyncio.create_task(wiring.service(settings, webhook=pushed).run(stop))
    async with aiohttp.ClientSession() as session:

        async def ask(path):
            async with session.get(f"http://127.0.0.1:{port}{path}") as answer:
                return answer.status, await answer.text()

        async def listens():
            assert not running.done(), running.result()
            try:
                return await ask("/healthz")
            except aiohttp.ClientConnectorError:
                return False

        try:
            await until(messenger, listens)
            yield ask
        finally:
            stop.set()
            await running


def staged(scene):
    async def on_stage():
        async with asyncio.timeout(30), Messenger(flood=Flood.off()) as messenger:
            await scene(messenger)

    asyncio.run(on_stage())


def test_a_bot_that_can_work_says_so(database_url):
    async def scene(messenger):
        async with at_work(database_url, messenger) as ask:
            assert await ask("/healthz") == (200, "ok")
            assert await ask("/readyz") == (200, '{"database":true,"schema":true,"messenger":true}')

    staged(scene)


@pytest.mark.parametrize(
    ("statement", "said"),
    [
        pytest.param("UPDATE alembic_version SET version_num = '0000'", '"database":true,"schema":false', id="old"),
        pytest.param("DELETE FROM alembic_version", '"database":true,"schema":false', id="no-version"),
    ],
)
def test_a_bot_on_another_schema_is_alive_and_not_ready(open_database, database_url, statement, said):
    open_database().write_now(lambda conn: conn.exec_driver_sql(statement))

    async def scene(messenger):
        async with at_work(database_url, messenger) as ask:
            status, answer = await ask("/readyz")
            assert (status, said in answer) == (503, True)
            assert (await ask("/healthz"))[0] == 200

    staged(scene)


def test_a_bot_without_its_database_is_alive_and_not_ready_and_still_shows_its_metrics(monkeypatch, database_url):
    def gone(*_):
        raise OSError("the database is gone")

    async def scene(messenger):
        async with at_work(database_url, messenger) as ask:
            assert (await ask("/readyz"))[0] == 200
            monkeypatch.setattr("bot.store.database.Database.read", gone)
            status, answer = await ask("/readyz")
            assert (status, answer) == (503, '{"database":false,"schema":false,"messenger":true}')
            assert (await ask("/healthz"))[0] == (await ask("/metrics"))[0] == 200
            monkeypatch.undo()
            assert (await ask("/readyz"))[0] == 200

    staged(scene)


def test_the_metrics_say_how_much_waits(database, database_url):
    later = now() + timedelta(hours=1)

    def queue(conn):
        outbox.put(conn, [outbox.Outgoing(chat, Welcome("", ""), later) for chat in (1, 2, 3)], now())
        inbox.put(conn, [NewEvent("k", 5, Text(now(), "x"))], now())
        conn.exec_driver_sql("UPDATE inbox SET attempts = 1")
        inbox.retry_later(conn, 1, later, "")
        inbox.put(conn, [NewEvent(key, 6, Text(now(), "x")) for key in ("l", "m")], now())
        inbox.set_aside(conn, 2, "")
        inbox.set_aside(conn, 3, "")

    database.write_now(queue)

    async def scene(messenger):
        async with at_work(database_url, messenger) as ask:
            _, figures = await ask("/metrics")
            assert 'samehour_waiting{what="outbox"} 3.0' in figures
            assert 'samehour_waiting{what="inbox"} 1.0' in figures
            assert 'samehour_waiting{what="person"} 2.0' in figures
            assert "samehour_unreachable_coaches 0.0" in figures

    staged(scene)


def test_the_port_of_the_webhook_says_nothing_of_how_it_is(database_url):
    async def scene(messenger):
        (port,) = free_ports(1)
        hook = f"http://127.0.0.1:{port}"
        given = {"webhook_url": f"{hook}/updates", "webhook_secret": SecretStr("x" * 16), "webhook_port": port}
        async with at_work(database_url, messenger, **given) as ask, aiohttp.ClientSession() as session:
            for path in ("/healthz", "/readyz", "/metrics"):
                assert (await ask(path))[0] == 200
                async with session.get(hook + path) as answer:
                    assert answer.status == 404
            async with session.post(f"{hook}/updates") as answer:
                assert answer.status == 401

    staged(scene)


@pytest.mark.parametrize("database_url", ["sqlite"], indirect=True)
def test_while_the_file_is_gone_nobody_is_answered_and_everything_comes_when_it_is_back(database_url):
    file = Path(database_url.removeprefix("sqlite:///"))
    away = file.with_name("away.db")

    async def scene(messenger):
        ada = await messenger.create_user("Ada")
        with capture_logs() as logged:
            async with at_work(database_url, messenger) as ask:
                file.rename(away)
                await messenger.open_bot(ada)

                async def noticed():
                    return any(line["event"].startswith("the database file is gone") for line in logged)

                await until(messenger, noticed)
                status, answer = await ask("/readyz")
                assert (status, answer) == (503, '{"database":false,"schema":false,"messenger":true}')
                assert [m for m in await messenger.seen(ada) if m.from_bot] == []
                away.rename(file)
                await messenger.wait_for_messages(ada, 1, after=0, timeout=PATIENCE)
                assert (await ask("/readyz"))[0] == 200
        assert {line["log_level"] for line in logged if "file is gone" in line["event"]} == {"error"}

    staged(scene)
