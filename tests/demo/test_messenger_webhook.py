"""Updates pushed to a bot's own web server, here a tiny receiver on loopback."""

import asyncio
from datetime import UTC, datetime, timedelta

import pytest
from aiohttp import web

START = datetime(2026, 3, 2, 7, 0, tzinfo=UTC)


class Receiver:
    """Takes updates. `answers` are returned in turn, then 200s; a closed `gate` holds them back."""

    def __init__(self, *answers):
        self.answers = list(answers)
        self.taken = []
        self.secrets = []
        self.gate = asyncio.Event()
        self.gate.set()
        self.arrived = asyncio.Condition()

    async def __aenter__(self):
        self.runner = web.ServerRunner(web.Server(self._take, access_log=None), shutdown_timeout=0.05)
        await self.runner.setup()
        await web.TCPSite(self.runner, "127.0.0.1", 0).start()
        self.url = f"http://127.0.0.1:{self.runner.addresses[0][1]}/hook"
        return self

    async def __aexit__(self, *_):
        self.gate.set()
        await self.runner.cleanup()

    async def _take(self, request):
        update = await request.json()
        self.secrets.append(request.headers.get("X-Telegram-Bot-Api-Secret-Token"))
        async with self.arrived:
            self.taken.append(update)
            self.arrived.notify_all()
        await self.gate.wait()
        answer = self.answers.pop(0) if self.answers else {}
        return web.json_response(answer.get("body"), status=answer.get("status", 200),
                                 headers=answer.get("headers"))  # fmt: skip

    async def until(self, count):
        async with self.arrived:
            await self.arrived.wait_for(lambda: len(self.taken) >= count)

    @property
    def texts(self):
        return [update["message"]["text"] for update in self.taken if "message" in update]


def test_updates_are_pushed_with_the_secret_and_confirmed_by_the_answer(play):
    async def scene(messenger, bot):
        async with Receiver() as receiver:
            ada = await messenger.create_user("Ada")
            await messenger.open_bot(ada)  # before the webhook: waits, then comes first
            await bot.set_webhook(receiver.url, secret_token="s-1")
            await messenger.send_text(ada, "one")
            await messenger.settled()
            assert receiver.texts == ["/start", "one"]
            assert receiver.secrets == ["s-1", "s-1"]
            assert (await bot.get_webhook_info()).pending_update_count == 0

    play(scene)


def test_a_failed_push_is_repeated_until_taken_before_the_chats_next_update(play):
    async def scene(messenger, bot):
        failures = [{"status": 500}, {"status": 404}, {"status": 302}]
        async with Receiver(*failures) as receiver:
            ada, ben = [await messenger.create_user(name) for name in ("Ada", "Ben")]
            await bot.set_webhook(receiver.url)
            await messenger.open_bot(ada)
            await receiver.until(3)
            await messenger.send_text(ada, "after")
            await messenger.open_bot(ben)
            await messenger.settled()
            of_ada = [u["message"]["text"] for u in receiver.taken if u["message"]["chat"]["id"] == ada]
            assert of_ada == ["/start"] * 4 + ["after"]
            info = await bot.get_webhook_info()
            assert "Wrong response from the webhook: 302" in info.last_error_message

    play(scene, webhook_first_delay=0.001, webhook_longest_delay=0.002)


def test_one_update_of_a_chat_is_in_flight_while_other_lanes_go_on(play, ask):
    async def scene(messenger, bot):
        async with Receiver() as receiver:
            ada, ben = [await messenger.create_user(name) for name in ("Ada", "Ben")]
            await messenger.open_bot(ada)
            keyboard = {"inline_keyboard": [[{"text": "Yes", "callback_data": "y"}]]}
            await ask(messenger, "sendMessage", json={"chat_id": ada, "text": "?", "reply_markup": keyboard})
            receiver.gate.clear()
            await bot.set_webhook(receiver.url)
            await messenger.send_text(ada, "one")
            await messenger.open_bot(ben)
            await messenger.press(ada, "Yes")
            await receiver.until(3)
            kinds = {(u.get("message", {}).get("chat", {}).get("id"), "callback_query" in u)
                     for u in receiver.taken}  # fmt: skip
            assert kinds == {(ada, False), (ben, False), (None, True)}
            receiver.gate.set()
            await messenger.settled()
            assert receiver.texts[-1] == "one"

    play(scene)


def test_an_answer_may_carry_a_method_call(play):
    async def scene(messenger, bot):
        ada = await messenger.create_user("Ada")
        await messenger.open_bot(ada)
        call = {"body": {"method": "sendMessage", "chat_id": ada, "text": "hello"}}
        async with Receiver(call) as receiver:
            mark = await messenger.mark()
            await bot.set_webhook(receiver.url)
            (message,) = await messenger.wait_for_messages(ada, after=mark)
            assert message.text == "hello"

    play(scene)


def test_what_nobody_takes_is_dropped_when_it_expires(play):
    async def scene(messenger, bot):
        async with Receiver(*[{"status": 500}] * 10_000) as receiver:
            await messenger.set_now(START)
            await messenger.open_bot(await messenger.create_user("Ada"))
            await bot.set_webhook(receiver.url)
            await receiver.until(3)
            await messenger.set_now(START + timedelta(hours=24))
            await messenger.settled()

    play(scene, webhook_first_delay=0.001, webhook_longest_delay=0.002)


@pytest.mark.parametrize("status", [200, 204, 299])
def test_any_2xx_takes_an_update(play, status):
    async def scene(messenger, bot):
        async with Receiver({"status": status}) as receiver:
            await bot.set_webhook(receiver.url)
            await messenger.open_bot(await messenger.create_user("Ada"))
            await messenger.settled()
            assert receiver.texts == ["/start"]

    play(scene)


def test_a_bot_that_asks_for_patience_gets_it(play):
    async def scene(messenger, bot):
        async with Receiver({"status": 429, "headers": {"Retry-After": "3000"}}) as receiver:
            await bot.set_webhook(receiver.url)
            await messenger.open_bot(await messenger.create_user("Ada"))
            await receiver.until(1)
            with pytest.raises(TimeoutError):
                await messenger.settled(timeout=0.05)
            assert len(receiver.taken) == 1
            await bot.set_webhook(receiver.url)  # set again, it starts over
            await messenger.settled()
            assert receiver.texts == ["/start", "/start"]

    play(scene, webhook_first_delay=0.001)
