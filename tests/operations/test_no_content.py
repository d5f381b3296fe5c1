"""No name, message or reading reaches a log or a metric, even when things go wrong."""

import asyncio
import re
from datetime import timedelta

import aiohttp
from sqlalchemy import select, update

from bot.foundation.clock import now
from bot.store import inbox, outbox
from bot.store import schema as tables
from bot.store.database import Database
from bot.store.inbox import NewEvent
from core.care import Plan, Slot
from core.dialogue.client.messages import Welcome
from core.dialogue.kit.events import Text
from demo.messenger import Flood, Messenger
from tests.bot.practice import add_client, add_coach, in_clear
from tests.faults.balance import free_ports
from tests.faults.herd import herd
from tests.waiting import until

COACH, CLIENT = "Quillonia", "Zebulonia"
QUILLONIA, ZEBULONIA = 778_899_001, 778_899_002  # chats
TYPED = (
    "7",
    "187.3 kg",
    "163/97 marzipan corridor",
    "/coach tell her about the marzipan",
    "I weigh 187,3 and I feel chest pain marzipan",
    "/mydata",
    "/help",
    "\U0001f9c1 marzipan",
)
NEVER = (
    COACH,
    CLIENT,
    "778899",
    "778_899",
    "187.3",
    "187,3",
    "163",
    "marzipan",
    "corridor",
    "\U0001f9c1",
    "chest pain",
)


def enrol(conn):
    due = now().replace(microsecond=0) - timedelta(minutes=1)
    hours = {"weekday": due.weekday(), "at": due.time(), "zone_name": "UTC", "next_digest_at": due}
    coach = add_coach(conn, QUILLONIA, COACH, quiet_nights=False, **hours)  # this test may run at night
    slot = Slot(due.weekday(), due.time(), "UTC")
    plan = Plan(measures=("weight",))
    add_client(conn, coach, ZEBULONIA, CLIENT, plan=plan, slot=slot, next_due_at=due, next_due_day=due.date())


def break_something(conn):
    """Add an event that cannot be loaded, a message that cannot be rendered, and one to a nonexistent chat."""
    typed = NewEvent("broken/1", ZEBULONIA, Text(now(), "187.3 marzipan"))
    inbox.put(conn, [typed], now())
    broken = '{"$":"events.Marzipan","text":"187.3"}'
    conn.execute(
        update(tables.inbox).where(tables.inbox.c.key == "broken/1").values(event=in_clear(broken), attempts=2)
    )
    rows = [outbox.Outgoing(chat, Welcome(CLIENT, COACH), now(), person_id=2) for chat in (ZEBULONIA, 778_899_777)]
    outbox.put(conn, rows, now())
    newest = select(tables.outbox.c.id).where(tables.outbox.c.chat_id == ZEBULONIA).order_by(tables.outbox.c.id.desc())
    conn.execute(
        update(tables.outbox)
        .where(tables.outbox.c.id == conn.execute(newest.limit(1)).scalar_one())
        .values(message=in_clear(broken))
    )


async def conversation(messenger, url, log):
    """Two people use a bot that logs everything, while the messenger has faults; return its metrics at the end."""
    (port,) = free_ports(1)
    for user, name in ((QUILLONIA, COACH), (ZEBULONIA, CLIENT)):
        await messenger.create_user(name, id=user)
        await messenger.open_bot(user)
    store = Database(url, synchronous="NORMAL")
    await store.write(enrol)
    settings = {
        "SAMEHOUR_TOKEN": messenger.token,
        "SAMEHOUR_API_BASE_URL": messenger.url,
        "SAMEHOUR_DATABASE_URL": url,
        "SAMEHOUR_LOG_LEVEL": "debug",
        "SAMEHOUR_HEALTH_PORT": str(port),
        "SAMEHOUR_SEND_RATE": "1000",
        "SAMEHOUR_CHAT_RATE": "30",
    }
    async with herd(log) as bots:
        bot = await bots.start(settings)
        for kind in ("server_error", "reset", "lost_answer", "too_many"):
            await messenger.add_fault(kind, methods=["sendMessage", "getUpdates"], times=2, probability=0.3)
        mark = 0
        for text in TYPED:
            await messenger.wait_for_messages(ZEBULONIA, 1, after=mark, timeout=20)
            mark = await messenger.mark()
            await messenger.send_text(ZEBULONIA, text)
        await messenger.send_text(QUILLONIA, "/caseload")
        await messenger.send_text(QUILLONIA, f"/client {CLIENT}")
        await store.write(break_something)

        async def all_done():
            waits = await store.read(inbox.waiting) + await store.read(outbox.waiting)
            return not waits and not (await messenger.figures())["unconfirmed"]

        await until(messenger, all_done)
        aside = await store.read(inbox.set_aside_count)
        async with aiohttp.ClientSession() as session, session.get(f"http://127.0.0.1:{port}/metrics") as answer:
            figures = await answer.text()
        assert (await bot.stop()).status == 0
    store.close()
    return figures, aside


def test_a_conversation_at_the_loudest_level_leaves_no_word_of_it(database_url, tmp_path):
    async def scene():
        async with asyncio.timeout(60), Messenger(flood=Flood.off()) as messenger:
            figures, aside = await conversation(messenger, database_url, tmp_path / "log")
            said = [m.text for chat in (ZEBULONIA, QUILLONIA) for m in await messenger.seen(chat) if m.from_bot]
            return messenger.token, figures, aside, said

    token, figures, aside, said = asyncio.run(scene())
    log = (tmp_path / "log").read_text()
    for event in (
        "at work",
        "a turn was set aside",
        "a message could not be rendered",
        "a message was set aside",
        "stopped",
    ):
        assert event in log
    assert aside == 1
    assert any(CLIENT in text for text in said)
    assert 'samehour_messages_total{result="sent"}' in figures
    for word in (*NEVER, token, token.partition(":")[2]):
        for name, text in (("log", log), ("metrics", figures)):
            # a separate number, not three digits inside an instant or a number of seconds
            whole = rf"(?<![\d.]){re.escape(word)}(?![\d.])" if word.isdigit() else re.escape(word)
            assert not re.search(whole, text, re.IGNORECASE), f"{word} is in the {name}"
