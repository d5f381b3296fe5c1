"""The messenger at its worst: rate limits, refusals, resets, late or missing answers; updates repeated and shuffled."""

import asyncio

import pytest

from demo.messenger import Flood
from tests.faults.conftest import CLIENTS
from tests.faults.findings import check
from tests.faults.morning import morning

SENDING = ["sendMessage", "editMessageReplyMarkup"]
FAULTS = {
    "told to wait": [("too_many", {"methods": SENDING, "times": 3, "probability": 0.1, "retry_after": 1})],
    "refused": [
        ("server_error", {"methods": SENDING, "probability": 0.15}),
        ("server_error", {"methods": ["getUpdates"], "probability": 0.2, "code": 500}),
    ],
    "cut off": [("reset", {"methods": [*SENDING, "getUpdates"], "probability": 0.15})],
    "not answered": [("silence", {"methods": SENDING, "probability": 0.1, "times": 3})],
    "answers lost": [("lost_answer", {"methods": [*SENDING, "getUpdates"], "probability": 0.2})],
    "answered too late": [("delay", {"methods": SENDING, "probability": 0.1, "times": 3, "ms": 1200})],
    "updates repeated, late and shuffled": [
        ("repeat", {"probability": 0.5}),
        ("shuffle", {"probability": 0.5}),
        ("late", {"probability": 0.3, "behind": 3}),
    ],
}
ON_POSTGRESQL = ("told to wait", "answers lost", "updates repeated, late and shuffled")  # what is recorded differs
UNHEARD = ("silence", "delay")  # the bot gives up and retries, whatever became of its request


@pytest.mark.parametrize(
    ("database_url", "name"),
    [*(("sqlite", name) for name in FAULTS), *(("postgresql", name) for name in ON_POSTGRESQL)],
    indirect=["database_url"],
)
def test_whatever_the_messenger_does_everybody_ends_where_they_would_have(stage, peaceful, database_url, name):
    faults = FAULTS[name]

    async def scene(bots):
        async with morning(database_url, CLIENTS, seed=6) as there:
            for kind, given in faults:
                await there.messenger.add_fault(kind, **given)
            bot = await bots.start(there.settings, {"wait": 0.8} if faults[0][0] in UNHEARD else {})
            await there.people()
            await there.until(there.quiet)
            await there.messenger.clear_faults()
            assert (await bot.stop()).status == 0
            struck = (await there.messenger.figures())["struck"]
            return await check(there, peaceful, lossy=sum(struck.get(kind, 0) for kind in (*UNHEARD, "lost_answer")))

    found = stage(scene)
    assert set(found.faults) == {kind for kind, _ in faults}
    assert found.repeats["killed in flight"] == 0


def test_killed_again_and_again_the_platform_s_own_limits_are_never_passed(stage, peaceful, database_url):
    """At the default of 28 messages a second, a messenger that allows 30 has nothing to refuse."""

    async def scene(bots):
        limits = Flood(overall=30, burst=5, per_chat=1.0)
        async with morning(database_url, CLIENTS, flood=limits, send_rate="28", chat_rate="1") as there:
            people = asyncio.create_task(there.people())
            last = await there.keep_alive(
                bots, [{"point": "sent", "at": 6}, {"point": "written claim_and_settle", "at": 9}]
            )
            await people
            await there.until(there.quiet)
            assert (await last.stop()).status == 0
            return await check(there, peaceful), await there.messenger.figures()

    found, figures = stage(scene)
    assert found.kills.total() >= 1
    assert figures["highest_per_second"] <= 30
