"""Updates of every public kind, mutated at random, pushed at a whole bot; between them a client who types "help".

    python -m tests.faults.updates [--updates 200000] [--seed 1] [--database SQLite] [--way polling]

The updates are shared out among the databases and ways; one of each can be chosen.

Nothing may be stuck, nothing answered with an error, and the client must be answered within a second each time. The
platform here only hands out bytes, so that they can be what no platform would send.
"""

from __future__ import annotations

import argparse
import asyncio
import copy
import json
import os
import random
import time
from collections import Counter
from collections.abc import Iterator
from contextlib import asynccontextmanager
from dataclasses import dataclass, field
from typing import Any

import aiohttp
from aiohttp import web
from sqlalchemy import func, select
from telegram import Update

from bot.foundation import config
from bot.process import wiring
from bot.process.web import SECRET_HEADER
from bot.store.database import Database
from bot.store.schema import inbox, unread
from tests.bot.practice import add_client, add_coach
from tests.faults.balance import free_ports

TOKEN = "4242:" + "x" * 35
SECRET = "a-secret-of-some-length"
AT = 1_774_850_000
CLIENTS = 40  # who type in turn, so that nobody types faster than a person
FIRST = 5_000
WAYS = ("polling", "webhook")
EVERY = 25  # updates between two that a client types
USER = {"id": 17, "is_bot": False, "first_name": "Zoe", "language_code": "en"}
CHAT = {"id": 17, "type": "private", "first_name": "Zoe"}
GROUP = {"id": -1001, "type": "supergroup", "title": "Spring walkers"}
MESSAGE = {"message_id": 5, "date": AT, "chat": CHAT, "from": USER, "text": "82.4 kg"}
MEMBER = {"user": USER, "status": "member"}
CHANGE = {"chat": CHAT, "from": USER, "date": AT, "old_chat_member": MEMBER, "new_chat_member": MEMBER}
REACTION = {"type": "emoji", "emoji": "x"}
BOOST = {"boost_id": "1", "add_date": AT, "expiration_date": AT, "source": {"source": "premium", "user": USER}}
SEEDS: dict[str, list[Any]] = {
    "message": [
        MESSAGE,
        MESSAGE | {"text": "/help", "entities": [{"type": "bot_command", "offset": 0, "length": 5}]},
        MESSAGE | {"text": "/start abc", "entities": [{"type": "bot_command", "offset": 0, "length": 6}]},
        {k: v for k, v in MESSAGE.items() if k != "text"} | {"photo": [{"file_id": "a", "file_unique_id": "b",
         "width": 1, "height": 1}], "caption": "82.4"},
        {k: v for k, v in MESSAGE.items() if k != "text"} | {"voice": {"file_id": "a", "file_unique_id": "b",
         "duration": 1}},
        MESSAGE | {"chat": GROUP, "text": "82.4"},
        {"message_id": 6, "date": AT, "chat": GROUP, "from": USER, "migrate_to_chat_id": -1002},
        {"message_id": 6, "date": AT, "chat": GROUP, "from": USER, "new_chat_members": [USER]},
        {"message_id": 6, "date": AT, "chat": GROUP, "from": USER, "left_chat_member": USER},
        MESSAGE | {"reply_to_message": MESSAGE},
    ],
    "edited_message": [MESSAGE | {"edit_date": AT + 5}],
    "callback_query": [{"id": "9", "from": USER, "chat_instance": "1", "data": "same:1", "message": MESSAGE}],
    "my_chat_member": [CHANGE | {"new_chat_member": {"user": USER, "status": "kicked", "until_date": 0}},
                       CHANGE | {"chat": GROUP}],
    "chat_member": [CHANGE],
    "inline_query": [{"id": "1", "from": USER, "query": "x", "offset": ""}],
    "chosen_inline_result": [{"result_id": "1", "from": USER, "query": "x"}],
    "shipping_query": [{"id": "1", "from": USER, "invoice_payload": "x", "shipping_address": {"country_code": "XX",
                        "state": "", "city": "x", "street_line1": "", "street_line2": "", "post_code": ""}}],
    "pre_checkout_query": [{"id": "1", "from": USER, "currency": "EUR", "total_amount": 1, "invoice_payload": "x"}],
    "poll": [{"id": "1", "question": "x", "options": [{"text": "a", "voter_count": 0}], "total_voter_count": 0,
              "is_closed": False, "is_anonymous": True, "type": "regular", "allows_multiple_answers": False}],
    "poll_answer": [{"poll_id": "1", "option_ids": [0], "user": USER}],
    "chat_join_request": [{"chat": GROUP, "from": USER, "user_chat_id": 17, "date": AT}],
    "message_reaction": [{"chat": GROUP, "message_id": 1, "date": AT, "old_reaction": [], "new_reaction": [REACTION],
                          "user": USER}],
    "message_reaction_count": [{"chat": GROUP, "message_id": 1, "date": AT,
                                "reactions": [{"type": REACTION, "total_count": 1}]}],
    "chat_boost": [{"chat": GROUP, "boost": BOOST}],
    "removed_chat_boost": [{"chat": GROUP, "boost_id": "1", "remove_date": AT, "source": BOOST["source"]}],
    "business_connection": [{"id": "1", "user": USER, "user_chat_id": 17, "date": AT, "is_enabled": True}],
    "deleted_business_messages": [{"business_connection_id": "1", "chat": CHAT, "message_ids": [1]}],
    "purchased_paid_media": [{"from": USER, "paid_media_payload": "x"}],
    "a_kind_of_the_future": [{"chat": CHAT, "thought": "x"}],
}  # fmt: skip
for _like in ("channel_post", "edited_channel_post", "business_message", "edited_business_message"):
    SEEDS[_like] = [MESSAGE]
for _new in Update.ALL_TYPES:  # what the library knows and we have no example of
    SEEDS.setdefault(_new, [{"from": USER, "chat": CHAT, "date": AT}])
KINDS = tuple(SEEDS)

WRONG: tuple[Any, ...] = (
    None, True, False, 0, -1, 2**31, 2**53, 2**63, 2**64, -(2**70), 10**18, 10**40, 1.5, -0.0, 1e308, "", "x", "82.4",
    "\0", "a\0b", "\ud800", "x\udfffy", "\U0001f600", "x" * 5000, [], {}, [[]], [None], {"id": 1}, {"": {}}, [1, "a"],
    float("nan"), float("inf"), "1774850000", "\u202e", "private", {"chat": {"id": 5000, "type": "private"}},
)  # fmt: skip


def mutated(draw: random.Random, number: int) -> bytes:
    """Return an update as bytes: mostly mutated, sometimes whole, sometimes no JSON."""
    kind = draw.choice(KINDS)
    update: Any = {"update_id": number, kind: json.loads(json.dumps(draw.choice(SEEDS[kind])))}
    if draw.random() < 0.3:
        _known(draw, update)
    for _ in range(draw.choice((0, 1, 1, 1, 2, 3))):
        _mutate(draw, update)
    text = json.dumps(update)
    body = text.encode()
    chance = draw.random()
    if chance < 0.02:
        body = body.replace(str(AT).encode(), b"9" * 5000, 1)
    elif chance < 0.04:
        body = body[:-1] + b',"deep":' + b"[" * 3000 + b"]" * 3000 + b"}"
    elif chance < 0.06:
        body = body.replace(b"Zoe", b"Z\xff\xfe\xc3", 1)
    elif chance < 0.07:
        body = body.replace(b'":', b'" ', 1)
    return body


def _known(draw: random.Random, value: Any) -> None:
    """Let it come from somebody we know."""
    who = FIRST + draw.randrange(CLIENTS)
    for inner in value.values() if isinstance(value, dict) else value if isinstance(value, list) else ():
        if isinstance(inner, dict) and inner.get("id") == 17:
            inner["id"] = who
        _known(draw, inner)


def _mutate(draw: random.Random, update: dict[str, Any]) -> None:
    places = list(_places(update))
    holder, key = draw.choice(places)
    if holder is update and key == "update_id":  # which update this is, is the platform's affair; not, what it says
        if draw.random() < 0.1:
            update["update_id"] = draw.choice((None, "5", True, 2**70, -1, 1.5, []))
        return
    match draw.randrange(5):
        case 0 if isinstance(holder, dict):
            del holder[key]
        case 1 if isinstance(holder, dict):
            holder[draw.choice(("new", "text", "chat", "from", "entities", "date", "data", "caption"))] = draw.choice(
                WRONG
            )
        case _:
            holder[key] = copy.deepcopy(draw.choice(WRONG))


def _places(value: Any) -> Iterator[tuple[Any, Any]]:
    for key, inner in value.items() if isinstance(value, dict) else enumerate(value):
        yield value, key
        if isinstance(inner, dict | list):
            yield from _places(inner)


@dataclass
class Figures:
    sent: int = 0
    answers: Counter[int] = field(default_factory=Counter)  # of the webhook, by status
    waits: list[float] = field(default_factory=list)  # seconds until the client who typed was answered
    aside: int = 0
    stuck: int = 0
    kinds: Counter[str] = field(default_factory=Counter)


class Platform:
    """What a bot asks, answered with bytes of our own."""

    def __init__(self) -> None:
        self.url = ""
        self.updates: list[tuple[int, bytes]] = []
        self.arrived = asyncio.Event()
        self.polled = asyncio.Event()  # at all
        self.said: dict[int, asyncio.Event] = {}
        self._numbers = 0

    @asynccontextmanager
    async def open(self) -> Any:
        app = web.Application(client_max_size=1 << 24)
        app.router.add_route("*", "/bot{token}/{method}", self._asked)
        runner = web.AppRunner(app, access_log=None)
        await runner.setup()
        (port,) = free_ports(1)
        await web.TCPSite(runner, "127.0.0.1", port).start()
        self.url = f"http://127.0.0.1:{port}"
        try:
            yield self
        finally:
            await runner.cleanup()

    async def _asked(self, request: web.Request) -> web.Response:
        method = request.match_info["method"].lower()
        given = await request.json() if request.content_type == "application/json" else dict(await request.post())
        result = b"true"
        if method == "getme":
            result = json.dumps(
                {"id": 4242, "is_bot": True, "first_name": "Bot", "username": "local_test_bot"}
            ).encode()
        elif method == "getupdates":
            result = await self._updates(int(given.get("offset") or 0), float(given.get("timeout") or 0))
        elif method.startswith("send"):
            self._numbers += 1
            chat = int(given["chat_id"])
            self.said.setdefault(chat, asyncio.Event()).set()
            result = json.dumps(
                {"message_id": self._numbers, "date": AT, "chat": {"id": chat, "type": "private"}}
            ).encode()
        return web.Response(body=b'{"ok":true,"result":' + result + b"}", content_type="application/json")

    async def _updates(self, offset: int, timeout: float) -> bytes:
        self.polled.set()
        if not 0 <= offset < 2**63:
            raise web.HTTPBadRequest
        self.updates = [one for one in self.updates if one[0] >= offset]
        if not self.updates:
            self.arrived.clear()
            try:
                async with asyncio.timeout(timeout):
                    await self.arrived.wait()
            except TimeoutError:
                return b"[]"
        return b"[" + b",".join(body for _, body in self.updates[:100]) + b"]"

    def put(self, number: int, body: bytes) -> None:
        self.updates.append((number, body))
        self.arrived.set()


def _typed(number: int, chat: int) -> bytes:
    who = {"id": chat, "is_bot": False, "first_name": "Ada", "language_code": "en"}
    message = {"message_id": number, "date": AT, "chat": {"id": chat, "type": "private"}, "from": who}
    return json.dumps({"update_id": number, "message": message | {"text": "help"}}).encode()


async def push(url: str, count: int, seed: int, *, webhook: bool) -> Figures:
    """Send a bot on this database `count` updates; what came of them."""
    found, draw, platform = Figures(), random.Random(seed), Platform()
    async with platform.open():
        (port,) = free_ports(1)
        settings = config.Settings(
            token=TOKEN,
            api_base_url=platform.url,
            database_url=url,
            sqlite_synchronous="NORMAL",
            webhook_url="http://127.0.0.1/updates",
            webhook_secret=SECRET,
            webhook_port=port,
            poll_timeout=5,
            chat_rate=30,
            send_rate=1000,
        )
        service = wiring.service(settings, paced=False, webhook=webhook)
        stop = asyncio.Event()
        running = asyncio.create_task(service.run(stop))
        store = Database(url)
        try:
            async with aiohttp.ClientSession(headers={SECRET_HEADER: SECRET}) as session:
                if not webhook:  # a client who waits for the bot to start waits for nothing that was sent
                    async with asyncio.timeout(60):
                        await platform.polled.wait()
                give = _by_webhook(session, port, found) if webhook else _by_polling(platform)
                await _all(platform, give, found, draw, count)
            found.stuck = len(platform.updates) - 1 if platform.updates else 0
            for _ in range(600):  # what failed is tried again, and then set aside
                if not store.read_now(_pending):
                    break
                await asyncio.sleep(0.1)
            found.stuck += store.read_now(_pending)
            found.aside = store.read_now(_aside)
        finally:
            stop.set()
            await running
            store.close()
    return found


async def _all(platform: Platform, give: Any, found: Figures, draw: random.Random, count: int) -> None:
    turn = 0
    async with asyncio.timeout(count * 0.2 + 120):
        for number in range(1, count + 1):
            if number % EVERY:
                await give(number, mutated(draw, number))
                continue
            chat = FIRST + CLIENTS + turn % CLIENTS  # of these nothing else ever comes
            turn += 1
            heard = platform.said[chat] = asyncio.Event()
            begun = time.monotonic()
            await give(number, _typed(number, chat))
            async with asyncio.timeout(30):
                await heard.wait()
            found.waits.append(time.monotonic() - begun)
    found.sent = count


def _by_polling(platform: Platform) -> Any:
    async def give(number: int, body: bytes) -> None:
        platform.put(number, body)

    return give


def _by_webhook(session: aiohttp.ClientSession, port: int, found: Figures) -> Any:
    async def give(number: int, body: bytes) -> None:
        for _ in range(200):
            try:
                async with session.post(f"http://127.0.0.1:{port}/updates", data=body) as response:
                    found.answers[response.status] += 1
                    return
            except aiohttp.ClientConnectorError:  # it is not listening yet
                await asyncio.sleep(0.05)

    return give


def _pending(conn: Any) -> int:
    return conn.execute(select(func.count()).select_from(inbox).where(inbox.c.status == "pending")).scalar_one()


def _aside(conn: Any) -> int:
    return conn.execute(select(func.count()).select_from(unread)).scalar_one()


def filled(url: str) -> None:
    """Put the clients into a fresh database."""
    store = Database(url)

    def fill(conn: Any) -> None:
        coach = add_coach(conn)
        for n in range(2 * CLIENTS):
            add_client(conn, coach, FIRST + n, f"Ada {n}", slot=None)

    store.write_now(fill)
    store.close()


def main() -> int:
    from bot.foundation import log
    from tests.bench.servers import KINDS as DATABASES

    parser = argparse.ArgumentParser()
    parser.add_argument("--updates", type=int, default=200_000)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--database", choices=tuple(DATABASES), action="append")
    parser.add_argument("--way", choices=WAYS, action="append")
    given = parser.parse_args()
    runs = [(name, way) for name in given.database or DATABASES for way in given.way or WAYS]
    with open(os.devnull, "w", encoding="utf-8") as nowhere:
        log.set_up("error", "json", nowhere)
        good = True
        for name, way in runs:
            with DATABASES[name]() as fresh:
                url = fresh()
                filled(url)
                start = time.monotonic()
                found = asyncio.run(push(url, given.updates // len(runs), given.seed, webhook=way == "webhook"))
            late = sum(wait > 1 for wait in found.waits)
            print(
                f"{name:10} {way}  {found.sent:,} updates in {time.monotonic() - start:,.0f} s; stuck {found.stuck}; "
                f"answers {dict(found.answers)}; set aside {found.aside:,}; next person {len(found.waits):,} times, "
                f"the longest wait {max(found.waits):.2f} s, {late} over a second",
                flush=True,
            )
            good = good and not found.stuck and not late and set(found.answers) <= {200}
    return 0 if good else 1


if __name__ == "__main__":
    raise SystemExit(main())
