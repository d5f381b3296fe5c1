"""`samehour serve` in a separate process, against the local messenger in another: a conversation over HTTP, and kills
at the worst moments."""

import asyncio
import os
import signal
import sys
from contextlib import asynccontextmanager
from datetime import timedelta
from pathlib import Path

import pytest
from sqlalchemy import select

from bot.foundation.clock import now
from bot.store.database import Database
from bot.store.schema import inbox, outbox, readings
from core.care import Plan, Slot
from demo.messenger import Remote
from tests.bot.practice import add_client, add_coach
from tests.waiting import PATIENCE, until

ROOT = Path(__file__).parents[3]


class Bot:
    """`python -m bot serve` under a test's settings."""

    def __init__(self, messenger, file, **settings):
        self.messenger = messenger
        self.settings = {
            "SAMEHOUR_TOKEN": messenger.token,
            "SAMEHOUR_API_BASE_URL": messenger.url,
            "SAMEHOUR_DATABASE_URL": f"sqlite:///{file}",
            "SAMEHOUR_SWEEP_EVERY": "0.2",
            "SAMEHOUR_SEND_RATE": "1000",
            **settings,
        }
        self.process = None

    async def run(self, *arguments):
        bare = {name: value for name, value in os.environ.items() if not name.startswith("SAMEHOUR_")}
        return await asyncio.create_subprocess_exec(
            sys.executable,
            "-m",
            "bot",
            *arguments,
            cwd=ROOT,
            env=bare | self.settings,
            stdout=asyncio.subprocess.PIPE,
            stderr=asyncio.subprocess.PIPE,
        )

    async def start(self):
        self.process = await self.run("serve")

        async def polled():
            assert self.process.returncode is None, (await self.process.stderr.read()).decode()
            return (await self.messenger.figures())["polling"]

        await until(self.messenger, polled)

    async def kill(self):
        self.process.send_signal(signal.SIGKILL)
        await self.process.communicate()

    async def stop(self):
        self.process.send_signal(signal.SIGTERM)
        _, said = await self.process.communicate()
        return self.process.returncode, said.decode()


@asynccontextmanager
async def practice(tmp_path, template):
    """The messenger, the bot (not started) and Ada, whose check-in was due a minute ago."""
    file = tmp_path / "samehour.db"
    file.write_bytes(template)
    async with asyncio.timeout(120), await Remote.spawn("--no-flood") as messenger:
        ada = await messenger.create_user("Ada")
        rowan = await messenger.create_user("Rowan")
        for user in (ada, rowan):
            await messenger.open_bot(user)
        due = now().replace(microsecond=0) - timedelta(minutes=1)

        def enrol(conn):
            coach = add_coach(conn, rowan)
            slot = Slot(due.weekday(), due.time(), "UTC")
            add_client(
                conn, coach, ada, plan=Plan(measures=("weight",)), slot=slot, next_due_at=due, next_due_day=due.date()
            )

        store = Database(f"sqlite:///{file}")
        store.write_now(enrol)
        bot = Bot(messenger, file)
        try:
            yield messenger, bot, ada, store
        finally:
            if bot.process is not None and bot.process.returncode is None:
                await bot.kill()
            store.close()


def rows(store, table):
    return store.read_now(lambda conn: conn.execute(select(table).order_by(table.c.id)).all())


def texts(messages):
    return [m.text for m in messages if m.from_bot]


def play(tmp_path, template, scene):
    async def staged():
        async with practice(tmp_path, template) as (messenger, bot, ada, store):
            await scene(messenger, bot, ada, store)

    asyncio.run(staged())


@pytest.fixture
def stage(tmp_path, sqlite_template):
    return lambda scene: play(tmp_path, sqlite_template, scene)


async def first_question(messenger, bot, ada, store):
    """Start, and wait until Ada has been asked for her energy and everything is sent; return the mark after it."""
    await bot.start()

    async def asked():
        quiet = all(row.status == "done" for row in rows(store, inbox)) and all(
            row.status == "sent" for row in rows(store, outbox)
        )
        return quiet and any("7" in m.labels for m in await messenger.seen(ada))

    await until(messenger, asked)
    return await messenger.mark()


def test_a_check_in_over_http(stage):
    async def scene(messenger, bot, ada, store):
        mark = await first_question(messenger, bot, ada, store)
        await messenger.press(ada, "7")
        (weigh, *_) = await messenger.wait_for_messages(ada, 1, after=mark, timeout=PATIENCE)
        mark = await messenger.mark()
        await messenger.send_text(ada, "82.4 kg")
        (kept, *_) = await messenger.wait_for_messages(ada, 1, after=mark, timeout=PATIENCE)
        assert "82" in kept.text
        assert {row.measure: str(row.value) for row in rows(store, readings)} == {"energy": "7", "weight": "82.4"}
        assert all(answer.answered for answer in await messenger.answers(ada))
        code, said = await bot.stop()
        assert (code, "82.4" in said, "Ada" in said) == (0, False, False)
        assert weigh.text

    stage(scene)


def test_killed_between_a_message_and_its_answer_the_answer_comes_once_and_the_reading_is_kept_once(stage):
    async def scene(messenger, bot, ada, store):
        mark = await first_question(messenger, bot, ada, store)
        asked = (await messenger.figures())["requests"]["sendmessage"]
        await messenger.add_fault("silence", methods=["sendMessage"])
        await messenger.send_text(ada, "7")

        async def answering():
            return (await messenger.figures())["requests"]["sendmessage"] > asked

        await until(messenger, answering)
        await bot.kill()
        await messenger.clear_faults()
        assert await messenger.mark() == mark

        await bot.start()
        (answer, *_) = await messenger.wait_for_messages(ada, 1, after=mark, timeout=PATIENCE)
        await messenger.settled(PATIENCE)
        code, _ = await bot.stop()
        assert code == 0
        assert texts(await messenger.seen(ada)).count(answer.text) == 1
        assert [(row.measure, str(row.value)) for row in rows(store, readings)] == [("energy", "7")]
        assert [row.status for row in rows(store, outbox)] == ["sent"] * len(rows(store, outbox))

    stage(scene)


def test_what_is_typed_while_the_bot_is_down_is_answered_when_it_is_back(stage):
    async def scene(messenger, bot, ada, store):
        mark = await first_question(messenger, bot, ada, store)
        await bot.kill()
        await messenger.send_text(ada, "7")
        await bot.start()
        assert await messenger.wait_for_messages(ada, 1, after=mark, timeout=PATIENCE)
        assert [(row.measure, str(row.value)) for row in rows(store, readings)] == [("energy", "7")]

    stage(scene)


def test_killed_again_and_again_nothing_typed_is_lost_or_kept_twice(stage):
    async def scene(messenger, bot, ada, store):
        await first_question(messenger, bot, ada, store)
        for number in range(4):  # each kill strikes at a different stage
            await messenger.send_text(ada, f"energy {number + 3}")
            seen = len(rows(store, inbox))

            async def stage_reached(number=number, seen=seen):
                found = rows(store, inbox)
                match number % 4:
                    case 0:
                        return True  # at once: perhaps not even fetched
                    case 1:
                        return len(found) > seen or found[-1].status == "done"
                    case _:
                        return found[-1].status == "done"

            await until(messenger, stage_reached)
            await bot.kill()
            await bot.start()

        async def all_done():
            await messenger.settled(PATIENCE)
            return all(row.status == "done" for row in rows(store, inbox)) and all(
                row.status == "sent" for row in rows(store, outbox)
            )

        await until(messenger, all_done)
        keys = [row.key for row in rows(store, inbox)]
        assert len(keys) == len(set(keys))
        typed = [m for m in await messenger.seen(ada) if not m.from_bot]
        assert len([key for key in keys if key.startswith("telegram/")]) == len(typed) + 1  # and Rowan's /start
        answers = [row for row in rows(store, outbox) if row.chat_id == ada]
        assert len(answers) >= len(typed)
        assert len(texts(await messenger.seen(ada))) <= len(answers) + 4  # at most one repeat per kill

    stage(scene)


@pytest.mark.parametrize("number", [signal.SIGTERM, signal.SIGINT])
def test_told_to_stop_it_finishes_and_says_nothing_twice_afterwards(stage, number):
    async def scene(messenger, bot, ada, store):
        mark = await first_question(messenger, bot, ada, store)
        await messenger.send_text(ada, "7")
        await messenger.wait_for_messages(ada, 1, after=mark, timeout=PATIENCE)
        bot.process.send_signal(number)
        await bot.process.communicate()
        assert bot.process.returncode == 0
        before = texts(await messenger.seen(ada))
        await bot.start()
        await messenger.settled(PATIENCE)
        await bot.stop()
        assert texts(await messenger.seen(ada)) == before

    stage(scene)


@pytest.mark.parametrize(
    ("settings", "said", "code"),
    [
        pytest.param(
            {"SAMEHOUR_TOKEN": "4242:another-token-that-opens-nothing"}, "refuses the bot's token", 78, id="token"
        ),
        pytest.param({"SAMEHOUR_TOKEN": ""}, "SAMEHOUR_TOKEN is not set", 78, id="no-token"),
        pytest.param({"SAMEHOUR_DATABASE_URL": "mysql://x/y"}, "not a usable database address", 78, id="database"),
        pytest.param({"SAMEHOUR_DATABASE_URL": "postgresql://127.0.0.1:9/x"}, "does not answer", 1, id="unreachable"),
        pytest.param({"SAMEHOUR_SEND_RATE": "fast"}, "SAMEHOUR_SEND_RATE", 78, id="setting"),
    ],
)
def test_what_keeps_it_from_starting_is_one_line_that_says_what_to_do(stage, settings, said, code):
    async def scene(messenger, bot, ada, store):
        bot.settings |= settings
        process = await bot.run("serve")
        out, err = await process.communicate()
        lines = [line for line in err.decode().splitlines() if not line.startswith("{")]
        assert (process.returncode, out) == (code, b"")
        assert len(lines) == 1, lines
        assert said in lines[0]
        assert "4242:" not in err.decode()

    stage(scene)


def test_a_messenger_that_is_not_there_yet_is_waited_for(stage):
    async def scene(messenger, bot, ada, store):
        await messenger.add_fault("server_error", methods=["getMe"], times=2, code=502)
        await first_question(messenger, bot, ada, store)

    stage(scene)
