from datetime import UTC, datetime, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.foundation.retry import (
    FIRST_DELAY,
    LONGEST_DELAY,
    MARGIN,
    MOST_ATTEMPTS,
    SHUT_DELAY,
    Blocked,
    Broken,
    Busy,
    Elsewhere,
    Moved,
    NoAnswer,
    Rejected,
    Shut,
    Trouble,
    Unreachable,
    Wait,
    decide,
)

NOW = datetime(2026, 3, 2, 7, 30, tzinfo=UTC)
SECOND = timedelta(seconds=1)


@pytest.mark.parametrize(
    ("attempt", "failure", "decision"),
    [
        pytest.param(1, Busy(7), Wait(NOW + 7 * SECOND + MARGIN, True, "429"), id="told-to-wait-so-everybody-does"),
        pytest.param(500, Busy(7), Wait(NOW + 7 * SECOND + MARGIN, True, "429"), id="being-told-to-wait-is-no-attempt"),
        pytest.param(1, NoAnswer("timeout"), Wait(NOW + SECOND, False, "timeout"), id="first-silence"),
        pytest.param(2, NoAnswer("timeout"), Wait(NOW + 2 * SECOND, False, "timeout"), id="second-silence"),
        pytest.param(4, Trouble("502"), Wait(NOW + 8 * SECOND, False, "502"), id="fourth-bad-gateway"),
        pytest.param(40, Trouble("502"), Wait(NOW + LONGEST_DELAY, False, "502"), id="never-longer-than-the-longest"),
        pytest.param(MOST_ATTEMPTS, Trouble("502"), Broken("502 (250 attempts)"), id="two-days-of-trouble-are-enough"),
        pytest.param(
            900,
            Shut(),
            Wait(NOW + SHUT_DELAY, True, "the token is refused"),
            id="a-wrong-token-loses-nothing",
        ),
        pytest.param(1, Blocked("blocked"), Unreachable("blocked"), id="blocked"),
        pytest.param(1, Elsewhere(-1007), Moved(-1007), id="a-group-grew"),
        pytest.param(1, Rejected("too long"), Broken("too long"), id="our-message-is-wrong"),
    ],
)
def test_what_is_done_about_each_failure(attempt, failure, decision):
    assert decide(attempt, failure, NOW) == decision


@given(st.integers(1, MOST_ATTEMPTS - 1), st.floats(0, 1, exclude_max=True))
def test_a_wait_is_between_half_and_the_whole_of_its_step(attempt, spread):
    wait = decide(attempt, Trouble("x"), NOW, spread)
    whole = min(2 ** (attempt - 1) * FIRST_DELAY.total_seconds(), LONGEST_DELAY.total_seconds()) * SECOND
    assert isinstance(wait, Wait)
    assert whole / 2 <= wait.until - NOW <= whole


def test_messages_that_failed_together_do_not_all_come_back_together():
    waits = {decide(5, NoAnswer("x"), NOW, spread / 10).until for spread in range(10)}
    assert len(waits) == 10


def test_a_message_is_tried_for_more_than_a_day_whatever_the_jitter():
    shortest = 1 - 1e-9
    waits = (decide(attempt, Trouble("502"), NOW, shortest).until - NOW for attempt in range(1, MOST_ATTEMPTS))
    assert sum(waits, timedelta(0)) > timedelta(days=1)
