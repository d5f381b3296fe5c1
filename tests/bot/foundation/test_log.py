"""No content reaches a log line, whoever writes it."""

import ast
import io
import json
import logging
from pathlib import Path

import pytest

import bot
from bot.foundation import log

SECRET = "Ada weighs 82.4"


@pytest.fixture
def lines():
    """JSON logs in memory; returns a function that reads the lines so far."""
    stream = io.StringIO()
    log.set_up("debug", "json", stream)
    yield lambda: [json.loads(line) for line in stream.getvalue().splitlines()]
    logging.getLogger().handlers.clear()


def test_what_may_be_said_is_said(lines):
    log.get("delivery").warning("set aside", row=17, code="400")
    (line,) = lines()
    assert {key: line[key] for key in ("event", "part", "row", "code", "level")} == {
        "event": "set aside", "part": "delivery", "row": 17, "code": "400", "level": "warning",
    }  # fmt: skip
    assert line["timestamp"].endswith("Z")


@pytest.mark.parametrize(
    ("key", "value"),
    [
        pytest.param("text", SECRET, id="a-key-nobody-allowed"),
        pytest.param("name", "Ada", id="a-name"),
        pytest.param("chat_id", 1001, id="a-chat"),
        pytest.param("value", 82.4, id="a-reading"),
        pytest.param("seconds", 82.4, id="a-fraction-under-an-allowed-key"),
        pytest.param("code", "x" * 200, id="too-long-for-a-code"),
        pytest.param("code", "«82,4 kg»", id="no-plain-word"),
        pytest.param("code", {"text": SECRET}, id="a-nested-value"),
        pytest.param("row", [1, 2], id="a-list"),
    ],
)
def test_anything_else_is_dropped(lines, key, value):
    log.get("turn").info("handled", **{key: value})
    (line,) = lines()
    assert key not in line
    assert line["event"] == "handled"


def test_an_exception_keeps_its_types_and_places_and_loses_its_words(lines):
    try:
        try:
            raise ValueError(SECRET)
        except ValueError as error:
            raise RuntimeError(f"while handling {SECRET}") from error
    except RuntimeError:
        log.get("turn").exception("a turn failed", row=3)
    (line,) = lines()
    assert line["fault"] == "RuntimeError from ValueError"
    assert line["where"].startswith("test_log.py:")
    assert "82.4" not in json.dumps(line)


def test_a_library_s_line_keeps_its_origin_and_loses_its_words(lines):
    try:
        raise KeyError(SECRET)
    except KeyError:
        logging.getLogger("telegram.Bot").exception("Error while parsing %r", SECRET)
    logging.getLogger("apscheduler").warning(f"missed {SECRET}")
    logging.getLogger("telegram.Bot").debug("Calling sendMessage with %s", SECRET)
    failed, missed = lines()
    assert (failed["library"], failed["level"], failed["fault"]) == ("telegram.Bot", "error", "KeyError")
    assert (missed["library"], missed["event"]) == ("apscheduler", "library")
    assert "82.4" not in json.dumps([failed, missed])


def test_quiet_levels_are_left_out():
    stream = io.StringIO()
    log.set_up("warning", "console", stream)
    log.get("turn").info("handled")
    log.get("turn").error("a turn failed")
    logging.getLogger().handlers.clear()
    assert "handled" not in stream.getvalue()
    assert "a turn failed" in stream.getvalue()


def _calls():
    for path in sorted(Path(bot.__file__).parent.rglob("*.py")):
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if (
                isinstance(node, ast.Call)
                and isinstance(node.func, ast.Attribute)
                and node.func.attr in {"debug", "info", "warning", "error", "exception", "critical"}
                and "log" in ast.unparse(node.func.value).lower()
                and path.name != "log.py"
            ):
                yield path.name, node


def test_every_line_the_bot_writes_has_a_literal_event_and_allowed_keys():
    for name, call in _calls():
        event = call.args[0] if call.args else None
        assert isinstance(event, ast.Constant), f"{name}:{call.lineno} logs something that is not a literal"
        assert log.is_plain(event.value), f"{name}:{call.lineno}: this event would be dropped"
        for keyword in call.keywords:
            assert keyword.arg in log.ALLOWED | {"exc_info"}, f"{name}:{call.lineno} logs {keyword.arg}"
