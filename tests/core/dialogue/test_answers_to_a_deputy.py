"""What a client answers to the coach who stands in for theirs."""

from __future__ import annotations

from dataclasses import replace

import pytest

from core.dialogue.client import messages as m
from core.dialogue.client.effects import PassOn
from core.dialogue.kit.events import FromCoach
from tests.builders import ADA, Chat

SAM = (8, "Sam")


def written_to(by: int, deputy: tuple[int, str] | None = SAM) -> Chat:
    chat = Chat(replace(ADA, deputy=deputy))
    return chat.gets(FromCoach(chat.now, "Sam" if by else "Rowan", "How was the walk?", by))


@pytest.mark.parametrize(
    ("by", "deputy", "to", "told"),
    [
        pytest.param(8, SAM, 8, "Sam", id="the-deputy-wrote"),
        pytest.param(0, SAM, 0, "Rowan", id="their-own-coach-wrote"),
        pytest.param(8, None, 0, "Rowan", id="nobody-stands-in-any-more"),
        pytest.param(8, (9, "Kim"), 0, "Rowan", id="somebody-else-stands-in-now"),
    ],
)
@pytest.mark.parametrize("text", ["Very pleasant, we went to the lake", "/coach Very pleasant"])
def test_an_answer_goes_to_whoever_wrote(
    text: str, by: int, deputy: tuple[int, str] | None, to: int, told: str
) -> None:
    chat = written_to(by, deputy)
    chat = chat.commands("coach", "Very pleasant") if text.startswith("/") else chat.says(text)
    assert [effect.to for effect in chat.did(PassOn)] == [to]
    assert chat.heard(m.WordPassed).coach == told


def test_two_days_later_it_goes_to_their_own_coach() -> None:
    chat = written_to(8).later(hours=48, minutes=1).commands("coach", "When are you back?")
    assert [effect.to for effect in chat.did(PassOn)] == [0]
