import pytest
from telegram.error import RetryAfter

from demo.messenger import Flood
from demo.messenger.refusals import Refused


class Seconds:
    """A clock that stands still until it is moved."""

    def __init__(self):
        self.now = 1000.0

    def __call__(self):
        return self.now


def wait_for(flood, chat):
    """Send one message; return 0 if it was allowed, else the seconds to wait."""
    try:
        flood.take(chat)
    except Refused as refused:
        return refused.parameters["retry_after"]
    return 0


def test_a_refusal_names_the_wait_in_words_and_as_a_number():
    flood = Flood(clock=Seconds(), burst=1, per_chat=0.2)
    flood.take(1)
    with pytest.raises(Refused) as refused:
        flood.take(1)
    assert (refused.value.code, refused.value.description, refused.value.parameters) == (
        429,
        "Too Many Requests: retry after 5",
        {"retry_after": 5},
    )


def test_one_chat_takes_a_short_burst_and_then_a_message_a_second():
    clock = Seconds()
    flood = Flood(clock=clock, burst=3)
    assert [wait_for(flood, 1) for _ in range(4)] == [0, 0, 0, 1]
    assert wait_for(flood, 2) == 0
    clock.now += 1
    assert [wait_for(flood, 1) for _ in range(2)] == [0, 1]
    clock.now += 60
    assert [wait_for(flood, 1) for _ in range(4)] == [0, 0, 0, 1]


def test_who_does_not_wait_is_refused_until_the_wait_is_over():
    clock = Seconds()
    flood = Flood(clock=clock, burst=1)
    assert wait_for(flood, 1) == 0
    clock.now += 0.5
    assert wait_for(flood, 1) == 1  # told to wait whole seconds, it must wait them
    clock.now += 0.75
    assert wait_for(flood, 1) == 1
    clock.now += 0.25
    assert wait_for(flood, 1) == 0


def test_a_group_takes_twenty_messages_in_any_minute():
    clock = Seconds()
    flood = Flood(clock=clock)
    for _ in range(20):
        assert wait_for(flood, -5) == 0
        clock.now += 1
    assert wait_for(flood, -5) == 40
    assert wait_for(flood, 5) == 0
    clock.now += 40
    assert wait_for(flood, -5) == 0


def test_a_groups_minute_is_a_whole_one():
    clock = Seconds()
    flood = Flood(clock=clock, burst=20)
    assert [wait_for(flood, -5) for _ in range(20)] == [0] * 20
    clock.now += 55
    assert wait_for(flood, -5) == 5


def test_all_chats_together_are_held_to_the_overall_rate():
    clock = Seconds()
    flood = Flood(clock=clock, overall=3)
    assert [wait_for(flood, chat) for chat in range(4)] == [0, 0, 0, 1]
    clock.now += 0.5
    assert wait_for(flood, 9) == 1
    clock.now += 0.5
    assert [wait_for(flood, chat) for chat in range(10, 14)] == [0, 0, 0, 1]
    assert (flood.accepted, flood.refused, flood.highest_per_second) == (6, 3, 3)


def test_switched_off_it_refuses_nothing_and_still_counts():
    clock = Seconds()
    flood = Flood(clock=clock, enabled=False)
    for _ in range(100):
        assert wait_for(flood, 1) == 0
        clock.now += 1 / 32
    assert (flood.accepted, flood.refused, flood.highest_per_second) == (100, 0, 32)
    flood.reset_counts()
    assert (flood.accepted, flood.highest_per_second) == (0, 0)


def test_the_real_client_hears_how_long_to_wait(play):
    async def scene(messenger, bot):
        ada = await messenger.create_user("Ada")
        await messenger.open_bot(ada)
        await bot.send_message(ada, "one")
        with pytest.raises(RetryAfter, match="Retry in 10 seconds"):
            await bot.send_message(ada, "two")
        figures = await messenger.figures()
        assert (figures["accepted"], figures["refused_by_flood"], figures["answers"]["429"]) == (1, 1, 1)
        await messenger.set_flood(enabled=False)
        await bot.send_message(ada, "three")
        assert [m.text for m in await messenger.sent()] == ["one", "three"]

    play(scene, flood=Flood(clock=Seconds(), burst=1, per_chat=0.1))


def test_only_messages_count_against_the_limits(play):
    async def scene(messenger, bot):
        ada = await messenger.create_user("Ada")
        await messenger.open_bot(ada)
        sent = await bot.send_message(ada, "one")
        await bot.send_chat_action(ada, "typing")
        await sent.edit_text("uno")
        assert (await messenger.figures())["accepted"] == 1

    play(scene, flood=Flood(clock=Seconds(), burst=1))
