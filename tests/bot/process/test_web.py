"""The webhook and the health pages, over real HTTP: uvicorn on one side, the local messenger pushing on the other."""

import asyncio
import io
import json
from contextlib import asynccontextmanager

import aiohttp
import pytest
import uvicorn
from sqlalchemy import select
from telegram import Bot

from bot.foundation.clock import MachineClock
from bot.foundation.metrics import Metrics
from bot.process import web
from bot.process.intake import Answers, keeper
from bot.process.web import MOST_BYTES, SECRET_HEADER, HttpServer, Webhook, application, updates_only
from bot.store import codec, unread
from bot.store.schema import inbox as inbox_table
from bot.transports.request import AiohttpRequest
from bot.transports.salvage import MOST_KEPT
from bot.transports.telegram import Telegram
from demo.messenger import Flood, Messenger
from tests.faults.balance import free_ports

SECRET = "a-secret-of-some-length"


class Scene:
    def __init__(self, messenger, telegram, url, keep, database):
        self.messenger, self.telegram, self.url, self.keep, self.database = messenger, telegram, url, keep, database

    async def ask(self, path, verb="POST", **how):
        async with aiohttp.ClientSession() as session, session.request(verb, self.url + path, **how) as response:
            return response.status, await response.text()

    async def push(self, body, secret=SECRET):
        data = io.BytesIO(body if isinstance(body, bytes) else json.dumps(body).encode())
        return (await self.ask("/updates", data=data, headers={SECRET_HEADER: secret}))[0]

    def texts(self):
        rows = self.database.read_now(lambda conn: conn.execute(select(inbox_table).order_by(inbox_table.c.id)).all())
        return [getattr(codec.loads(row.event), "text", None) or type(codec.loads(row.event)).__name__ for row in rows]


class Keeping:
    """Stores updates, after failing `fail` times."""

    def __init__(self, database):
        self._keep = keeper(database, MachineClock(), lambda: None)
        self.fail = 0

    async def __call__(self, events, aside):
        if self.fail:
            self.fail -= 1
            raise OSError("disk full")
        await self._keep(events, aside)


class Server(uvicorn.Server):
    """Says when it listens."""

    def __init__(self, app):
        super().__init__(uvicorn.Config(app, port=0, log_config=None, lifespan="off"))
        self.listens = asyncio.Event()

    async def startup(self, sockets=None):
        await super().startup(sockets)
        self.listens.set()


@asynccontextmanager
async def served(app):
    server = Server(app)
    server.config.load()
    task = asyncio.create_task(server.serve())
    await server.listens.wait()
    port = server.servers[0].sockets[0].getsockname()[1]
    try:
        yield f"http://127.0.0.1:{port}"
    finally:
        server.should_exit = True
        await task


@pytest.fixture
def play(database):
    def run(scene, probes=None):
        async def staged():
            async with asyncio.timeout(30), Messenger(flood=Flood.off(), webhook_first_delay=0.02) as messenger:
                telegram = Telegram(Bot(messenger.token, messenger.base_url, request=AiohttpRequest()))
                await telegram.open()
                keep, metrics = Keeping(database), Metrics()
                hook = Webhook(SECRET, telegram, keep, Answers(telegram.answer), MachineClock(), metrics)
                try:
                    async with served(application(probes or {}, metrics, hook)) as url:
                        await scene(Scene(messenger, telegram, url, keep, database))
                finally:
                    await telegram.close()

        asyncio.run(staged())

    return run


UPDATE = {
    "update_id": 10_000,
    "message": {
        "message_id": 1,
        "date": 1_772_000_000,
        "chat": {"id": 17, "type": "private", "first_name": "Ada"},
        "from": {"id": 17, "is_bot": False, "first_name": "Ada"},
        "text": "82.4",
    },
}


def test_the_messenger_pushes_updates_and_they_are_kept_in_order(play):
    async def scene(s):
        ada = await s.messenger.create_user("Ada")
        await s.messenger.open_bot(ada)
        await s.telegram.receive(f"{s.url}/updates", SECRET)
        for n in range(20):
            await s.messenger.send_text(ada, str(n))
        await s.messenger.settled()
        assert s.texts() == ["Command", *map(str, range(20))]

    play(scene)


def test_an_update_that_could_not_be_kept_is_pushed_again(play):
    async def scene(s):
        s.keep.fail = 2
        ada = await s.messenger.create_user("Ada")
        await s.telegram.receive(f"{s.url}/updates", SECRET)
        await s.messenger.open_bot(ada)
        await s.messenger.settled()
        assert (s.texts(), s.keep.fail) == (["Command"], 0)

    play(scene)


def test_a_press_is_answered_once_it_is_kept(play):
    async def scene(s):
        ada = await s.messenger.create_user("Ada")
        await s.messenger.open_bot(ada)
        await s.telegram.receive(f"{s.url}/updates", SECRET)
        await s.messenger.press(ada, data="same:1", message_id=5, forge=True)
        version = -1
        while not (await s.messenger.answers(ada))[0].answered:
            version = await s.messenger.changed(version)
        assert sorted(s.texts()) == ["Command", "Press"]  # presses have their own queue: either may come first

    play(scene)


@pytest.mark.parametrize("secret", ["", "wrong", SECRET[:-1], SECRET + "x", "ü" * 5])
def test_without_the_secret_nothing_is_even_read(play, secret):
    async def scene(s):
        assert await s.push(UPDATE, secret) == 401
        assert s.texts() == []

    play(scene)


def test_an_update_repeated_is_kept_once_and_confirmed_every_time(play):
    async def scene(s):
        assert [await s.push(UPDATE) for _ in range(3)] == [200, 200, 200]
        assert s.texts() == ["82.4"]

    play(scene)


@pytest.mark.parametrize(
    "body",
    [
        pytest.param(b"{", id="not-json"),
        pytest.param(b"[" * 100_000, id="nested-without-end"),
        pytest.param(b"\xff\xfe\0", id="not-text"),
        pytest.param(b"[1]", id="not-an-object"),
        pytest.param({"message": {}}, id="no-id"),
        pytest.param({"update_id": True}, id="an-id-that-is-no-number"),
        pytest.param({"update_id": 5, "message": {"message_id": "new form"}}, id="a-form-that-came-later"),
        pytest.param({"update_id": 5, "brand_new": {}}, id="a-kind-that-came-later"),
        pytest.param(UPDATE | {"message": UPDATE["message"] | {"date": 10**18}}, id="a-date-nobody-lives-in"),
        pytest.param(
            UPDATE | {"message": UPDATE["message"] | {"chat": {"id": 2**70, "type": "private"}}}, id="a-large-id"
        ),
        pytest.param(b" " * (MOST_BYTES + 1), id="too-long"),
    ],
)
def test_what_cannot_be_read_is_set_aside_and_confirmed_and_the_next_one_is_kept(play, body):
    async def scene(s):
        assert await s.push(body) == 200
        assert s.texts() == []
        (aside,) = s.database.read_now(unread.kept)
        given = body if isinstance(body, bytes) else json.dumps(body).encode()
        assert aside.body == given[:MOST_KEPT]
        assert await s.push(UPDATE) == 200
        assert s.texts() == ["82.4"]

    play(scene)


def test_a_long_body_that_does_not_say_so_is_cut_off(play):
    async def scene(s):
        async def pieces():
            for _ in range(MOST_BYTES // 65_536 + 2):
                yield b" " * 65_536

        status, _ = await s.ask("/updates", data=pieces(), headers={SECRET_HEADER: SECRET})
        assert status == 200
        (aside,) = s.database.read_now(unread.kept)
        assert len(aside.body) == MOST_KEPT

    play(scene)


@asynccontextmanager
async def running(app, monkeypatch, **limits):
    """The server as the process runs it, with shorter limits; its port, and what ends it."""
    for name, seconds in limits.items():
        monkeypatch.setattr(web, name, seconds)
    (port,) = free_ports(1)
    stopping = asyncio.Event()
    server = HttpServer(app, "127.0.0.1", port)
    task = asyncio.create_task(server.run(stopping))
    await server.listening.wait()
    try:
        yield port, stopping, task
    finally:
        stopping.set()
        await task


def hook_of(keep):
    class Reader:
        def read(self, raw, now, confirmed=None, body=None):
            raise AssertionError("nothing was ever sent whole")

    return Webhook(SECRET, Reader(), keep, Answers(None), MachineClock(), Metrics())


@pytest.mark.parametrize(
    ("said", "answer"),
    [
        pytest.param(b"", b"", id="nothing"),
        pytest.param(b"POST /upd", b"", id="half-a-line"),
        pytest.param(b"POST /updates HTTP/1.1\r\nHost: x\r\nX-Slow", b"", id="half-a-head"),
        pytest.param(
            b"POST /updates HTTP/1.1\r\nHost: x\r\n%s: %s\r\nContent-Length: 90\r\n\r\n{"
            % (SECRET_HEADER.encode(), SECRET.encode()),
            b"HTTP/1.1 408",
            id="half-a-body",
        ),
        pytest.param(b"GET /healthz HTTP/1.1\r\nHost: x\r\n\r\nGET /hea", b"HTTP/1.1 200", id="half-a-second-one"),
    ],
)
def test_a_connection_on_which_nothing_more_comes_is_hung_up_on(monkeypatch, said, answer):
    async def scene():
        app = application({}, Metrics(), hook_of(None))
        async with running(app, monkeypatch, HEAD_WITHIN=0.2, BODY_WITHIN=0.2) as (port, _, _):
            reader, writer = await asyncio.open_connection("127.0.0.1", port)
            writer.write(said)
            async with asyncio.timeout(10):
                try:
                    heard = await reader.read()
                except ConnectionResetError:
                    heard = b""
            assert heard.startswith(answer)
            writer.close()

    asyncio.run(scene())


def test_a_connection_that_goes_on_asking_is_kept(monkeypatch):
    async def scene():
        async with running(application({}, Metrics()), monkeypatch, HEAD_WITHIN=0.2) as (port, _, _):
            reader, writer = await asyncio.open_connection("127.0.0.1", port)
            until = asyncio.get_running_loop().time() + 0.6
            while asyncio.get_running_loop().time() < until:
                writer.write(b"GET /healthz HTTP/1.1\r\nHost: x\r\n\r\n")
                assert b"200 OK" in await reader.readuntil(b"\r\n\r\nok")
            writer.close()

    asyncio.run(scene())


def test_bodies_held_open_do_not_hold_up_the_end(monkeypatch):
    async def scene():
        app = application({}, Metrics(), hook_of(None))
        async with running(app, monkeypatch, BODY_WITHIN=600, STOP_WITHIN=1) as (port, stopping, task):
            head = f"POST /updates HTTP/1.1\r\nHost: x\r\n{SECRET_HEADER}: {SECRET}\r\nContent-Length: 90\r\n\r\n{{"
            held = [await asyncio.open_connection("127.0.0.1", port) for _ in range(20)]
            for _, writer in held:
                writer.write(head.encode())
            reader, other = await asyncio.open_connection("127.0.0.1", port)
            other.write(b"GET /healthz HTTP/1.1\r\nHost: x\r\n\r\n")  # answered after what came before it was read
            await reader.readuntil(b"\r\n\r\nok")
            stopping.set()
            async with asyncio.timeout(10):
                await task
            for _, writer in held:
                writer.close()
            other.close()

    asyncio.run(scene())


def test_where_health_is_served_apart_the_webhook_s_port_takes_updates_and_nothing_else():
    routes = [route.path for route in updates_only(hook_of(None), "/updates").routes]
    assert routes == ["/updates"]


def test_only_post_is_taken(play):
    async def scene(s):
        assert (await s.ask("/updates", "GET", headers={SECRET_HEADER: SECRET}))[0] == 405

    play(scene)


def test_health_says_it_turns_over_and_readiness_says_what_cannot_work(play):
    async def yes():
        return True

    async def no():
        return False

    async def scene(s):
        assert (await s.ask("/healthz", "GET"))[0] == 200
        status, body = await s.ask("/readyz", "GET")
        assert (status, json.loads(body)) == (503, {"database": True, "messenger": False})

    play(scene, {"database": yes, "messenger": no})


def test_metrics_count_and_quote_nobody(play):
    async def scene(s):
        await s.push(UPDATE)
        status, body = await s.ask("/metrics", "GET")
        assert status == 200
        assert 'samehour_updates_total{way="webhook"} 1.0' in body
        assert "Ada" not in body
        assert "82.4" not in body

    play(scene)
