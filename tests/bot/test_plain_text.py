"""The fast path for parsing typed text gives the same result as the long way through the library."""

from copy import deepcopy
from typing import Any

import pytest

from bot.transports import telegram_in
from tests.bot.practice import NOW

TYPED: dict[str, Any] = {
    "update_id": 42,
    "message": {
        "message_id": 7,
        "date": 1_774_850_400,
        "text": "82.4 kg",
        "chat": {"id": 100, "type": "private", "first_name": "Ada"},
        "from": {"id": 100, "is_bot": False, "first_name": "Ada", "language_code": "de"},
    },
}


def other(**message: Any) -> dict[str, Any]:
    return {"update_id": 42, "message": deepcopy(TYPED["message"]) | message}


@pytest.mark.parametrize(
    "raw",
    [
        TYPED,
        other(text="x" * 5000),
        other(text="٨٢٫٤ كغ"),
        other(reply_to_message=deepcopy(TYPED["message"]) | {"message_id": 3}),
        other(link_preview_options={"is_disabled": True}, has_protected_content=True),
    ],
)
def test_what_somebody_typed_is_read_the_short_way_as_the_long_way_reads_it(raw: dict[str, Any]) -> None:
    short = telegram_in.plain_text(raw)
    update = telegram_in.read(raw)
    assert short is not None and update is not None
    assert short == telegram_in.incoming(update, NOW, "it")


@pytest.mark.parametrize(
    "raw",
    [
        other(text="/help", entities=[{"type": "bot_command", "offset": 0, "length": 5}]),
        other(chat={"id": -5, "type": "group", "title": "Stairs"}),
        other(date=10**18),
        other(text=None, voice={}),
        other(text=""),
        other(date="soon"),
        {"update_id": 42, "edited_message": TYPED["message"]},
        {"update_id": 42, "message": {k: v for k, v in TYPED["message"].items() if k != "from"}},
        {"update_id": 42},
        {},
    ],
)
def test_anything_else_goes_the_long_way(raw: dict[str, Any]) -> None:
    assert telegram_in.plain_text(raw) is None
