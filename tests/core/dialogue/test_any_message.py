"""Whatever is typed or pressed, in whatever state: 200,000 random and mutated messages, seeded."""

from __future__ import annotations

import pytest

from tests.core.dialogue.fuzz import run


@pytest.mark.parametrize("seed", range(8))
def test_every_message_is_answered_nothing_raises_and_nothing_impossible_is_kept(seed):
    kinds = run(25_000, seed)
    assert sum(kinds.values()) == 25_000
    assert {"Text", "Press", "Command"} <= kinds.keys()
