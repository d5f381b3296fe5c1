"""An update that cannot be read takes nobody with it: the others of its answer are read, and it is set aside."""

import json
from datetime import UTC, datetime

import pytest
from telegram import Bot

from bot.transports import salvage, telegram_in
from bot.transports.incoming import Incoming, Unread
from bot.transports.request import AiohttpRequest
from bot.transports.salvage import Broken
from bot.transports.telegram import Telegram

NOW = datetime(2026, 3, 2, 7, 30, tzinfo=UTC)
AT = int(NOW.timestamp())


class Named(Telegram):
    """An account that nobody has to be asked about."""

    username = "local_test_bot"


def text(number, said="82.4", chat=17, **more):
    message = {
        "message_id": 1,
        "date": AT,
        "chat": {"id": chat, "type": "private", "first_name": "Ada"},
        "from": {"id": chat, "is_bot": False, "first_name": "Ada", "language_code": "en"},
        "text": said,
    }
    return {"update_id": number, "message": message | more}


def answer(*updates):
    inside = ",".join(one if isinstance(one, str) else json.dumps(one) for one in updates)
    return f'{{"ok":true,"result":[{inside}]}}'.encode()


@pytest.mark.parametrize(
    "bad",
    [
        pytest.param('{"update_id":6,"message":' + "9" * 5000 + "}", id="a-number-without-end"),
        pytest.param('{"update_id":6,"message":' + "[" * 5000 + "]" * 5000 + "}", id="nested-without-end"),
        pytest.param('{"update_id":6,"message":{"text":"a]}\\"{"},}', id="no-json-with-brackets-in-its-words"),
    ],
)
def test_one_that_no_reader_reads_leaves_the_others_of_its_answer_whole(bad):
    read = AiohttpRequest.parse_json_payload(answer(text(5), bad, text(7)))["result"]
    assert [read[0], read[2]] == [text(5), text(7)]
    assert read[1] == Broken(bad.encode())
    batch = Named(Bot("1:x", request=AiohttpRequest())).read(read, NOW)
    assert [event.key for event in batch.events] == ["telegram/5", "telegram/7"]
    assert batch.aside == (Unread("telegram/6", None, bad.encode()[: salvage.MOST_KEPT], "not_json"),)
    assert batch.confirm == 8


def test_bytes_that_are_no_text_are_set_aside_as_they_came():
    payload = answer(text(5), text(6, "é"), text(7)).replace(b"\\u00e9", b"\xff\xfe")
    read = AiohttpRequest.parse_json_payload(payload)["result"]
    assert [type(one) for one in read] == [dict, Broken, dict]
    taken = telegram_in.take(read[1], NOW)
    assert (taken.key, taken.chat_id, taken.why) == ("telegram/6", 17, "not_json")
    assert b"\xff\xfe" in taken.body


BAD = {
    "a chat beyond 64 bits": text(6, chat=2**64),
    "a chat that is no number": text(6, chat=True),
    "an instant nobody lives in": text(6, date=10**18),
    "an instant before anybody wrote": text(6, date=-(10**11)),
    "a text that is none": text(6, said=["82.4"]),
    "a name that is none": text(6, **{"from": {"id": 17, "is_bot": False, "first_name": 5, "language_code": "en"}}),
    "a language that is none": text(6, **{"from": {"id": 17, "is_bot": False, "first_name": "", "language_code": 7}}),
    "a command without a length": text(6, "/help", entities=[{"type": "bot_command", "offset": 0, "length": "5"}]),
    "a press by words": {"update_id": 6, "callback_query": {"id": "1", "from": "Ada", "data": "x"}},
    "a kind of the future": {"update_id": 6, "telepathy": {"chat": {"id": 17, "type": "private"}}},
    "words": {"update_id": 6, "message": "words"},
    "a list": ["update_id", 6],
    "nothing": None,
    "a number beyond 64 bits": text(2**70),
    "a number that is none": text("6"),
    "a group's number beyond 64 bits": {
        "update_id": 6,
        "message": {
            "message_id": 1,
            "date": AT,
            "chat": {"id": -100, "type": "group", "title": "Spring walkers"},
            "migrate_to_chat_id": -(2**70),
        },
    },
}  # fmt: skip


@pytest.mark.parametrize("raw", BAD.values(), ids=BAD.keys())
def test_what_cannot_be_read_is_set_aside_with_its_bytes(raw):
    taken = telegram_in.take(raw, NOW)
    assert isinstance(taken, Unread)
    if taken.chat_id == 17:
        assert json.loads(taken.body) == raw


@pytest.mark.parametrize(
    ("said", "heard"),
    [("82\0.4", "82.4"), ("82.4 \ud83d kg", "82.4 ? kg"), ("\ud800", "?")],
    ids=["nul", "half", "only"],
)
@pytest.mark.parametrize("how", ["plain", "by the library"])
def test_characters_that_nothing_can_store_do_not_make_a_message_unreadable(said, heard, how):
    raw = text(6, said, **({} if how == "plain" else {"entities": []}))
    taken = telegram_in.take(raw, NOW)
    assert isinstance(taken, Incoming)
    assert taken.event.text == heard


def test_of_a_group_only_the_form_is_kept():
    raw = text(6, "my weight is 82.4", chat=-100, date="now")
    raw["message"]["chat"]["type"] = "supergroup"
    taken = telegram_in.take(raw, NOW)
    assert b"82.4" not in taken.body
    assert json.loads(taken.body)["message"]["text"] == "str"


def test_updates_that_do_not_say_their_number_are_passed_all_the_same():
    telegram = Named(Bot("1:x", request=AiohttpRequest()))
    assert telegram.read([{"message": 1}, "words"], NOW, confirmed=40).confirm == 42
    assert telegram.read([{"message": 1}, text(50)], NOW, confirmed=40).confirm == 51
    assert telegram.read([{"message": 1}], NOW).confirm is None


def test_an_answer_that_holds_no_updates_is_still_an_error():
    assert salvage.updates(b'{"ok": true, "result": "my weight') is None
    assert salvage.updates(b"<html>{}</html>") is None
