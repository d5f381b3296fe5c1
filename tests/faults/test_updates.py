"""A few of the mutated updates, on both databases and both ways in; `python -m tests.faults.updates` sends 200,000."""

import asyncio

import pytest
from telegram import Update

from tests.faults.updates import KINDS, filled, push


@pytest.mark.parametrize("webhook", [False, True], ids=["polling", "webhook"])
def test_no_update_whatever_it_is_holds_up_the_next_person(database_url, webhook):
    filled(database_url)
    found = asyncio.run(push(database_url, 1_000, seed=webhook, webhook=webhook))
    assert (found.sent, found.stuck) == (1_000, 0)
    assert set(found.answers) <= {200}
    assert len(found.waits) == 40
    assert sorted(found.waits)[20] < 1
    assert found.aside > 100


def test_every_public_kind_of_update_is_among_them():
    assert set(Update.ALL_TYPES) <= set(KINDS)
