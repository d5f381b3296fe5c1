"""A clock shared by several machines, read through each machine's own."""

from datetime import UTC, datetime, timedelta

import pytest
from freezegun import freeze_time

from bot.foundation.clock import SharedClock

NOON = datetime(2026, 3, 30, 12, tzinfo=UTC)
MS = timedelta(milliseconds=1)


@pytest.fixture
def noon():
    with freeze_time(NOON):
        yield


@pytest.mark.parametrize("off", [-3000, 0, 3000])
def test_a_machine_that_is_off_says_the_shared_time(noon, off):
    clock = SharedClock()
    clock.agree(NOON + off * MS, NOON - MS, NOON + MS)
    assert clock.now() == NOON + off * MS


def test_a_difference_within_the_time_that_asking_took_is_none(noon):
    clock = SharedClock()
    clock.agree(NOON + 20 * MS, NOON - 30 * MS, NOON + 30 * MS)
    assert clock.now() == NOON
    clock.agree(NOON + 40 * MS, NOON - 30 * MS, NOON + 30 * MS)
    assert clock.now() == NOON + 40 * MS


def test_before_it_has_asked_it_is_the_machine_s(noon):
    assert SharedClock().now() == NOON
