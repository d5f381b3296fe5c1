"""Validate a request's parameters; a missing or wrong one is refused with the platform's wording.

Slightly stricter than the platform about types: where it would silently convert a list or a number to text, or a word
to zero, we refuse, so that a test notices.
"""

import json
import re
import unicodedata
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from demo.messenger.entities import parse_html, trimmed, utf16_length
from demo.messenger.refusals import bad_request

MAX_TEXT = 4096
MAX_CAPTION = 1024
MAX_CALLBACK_DATA = 64
MAX_BUTTONS = 100
_LINK = re.compile(r"(https?://|tg://)?[\w.-]+(\.\w+|://)\S*$")
_OTHER_BUTTONS = (
    "url", "web_app", "login_url", "switch_inline_query", "switch_inline_query_current_chat",
    "switch_inline_query_chosen_chat", "copy_text", "callback_game", "pay",
)  # fmt: skip


@dataclass(slots=True, frozen=True)
class Upload:
    """A file in a multipart request."""

    filename: str | None
    content: bytes
    mime_type: str | None


class Params:
    """A request's parameters, from query string, form or JSON alike, and its uploaded files."""

    __slots__ = ("files", "values")

    def __init__(self, values: Mapping[str, Any], files: Mapping[str, Upload] | None = None) -> None:
        self.values = values
        self.files = files or {}

    def text(self, name: str, default: str | None = None) -> str | None:
        value = self.values.get(name)
        if value is None:
            return default
        if not isinstance(value, str):
            raise bad_request(f'field "{name}" must be of type String')
        return value

    def integer(self, name: str, default: int) -> int:
        value = self.values.get(name)
        if value is None:
            return default
        if isinstance(value, bool):
            raise bad_request(f'field "{name}" must be of type Number')
        if isinstance(value, int):
            return value
        if isinstance(value, str) and re.fullmatch(r"\s*[+-]?[0-9]{1,18}\s*", value):
            return int(value)
        raise bad_request(f'field "{name}" must be of type Number')

    def boolean(self, name: str, default: bool = False) -> bool:
        value = self.values.get(name)
        if value is None:
            return default
        if isinstance(value, bool):
            return value
        if value in (0, 1, "0", "1"):
            return bool(int(value))
        if isinstance(value, str) and value.lower() in ("true", "false"):
            return value.lower() == "true"
        raise bad_request(f'field "{name}" must be of type Boolean')

    def structure(self, name: str, what: str) -> Any:
        """An array or object, sent directly or as JSON text; None if absent or empty."""
        value = self.values.get(name)
        if isinstance(value, str):
            if not value:
                return None
            try:
                return json.loads(value)
            except ValueError:
                raise bad_request(f"can't parse {what} JSON object") from None
        return value

    def chat_id(self) -> int | str:
        value = self.values.get("chat_id")
        if value is None or value == "":
            raise bad_request("chat_id is empty")
        if isinstance(value, int) and not isinstance(value, bool):
            return value
        if not isinstance(value, str):
            raise bad_request('field "chat_id" must be of type Number or String')
        stripped = value.strip()
        return int(stripped) if re.fullmatch(r"-?[0-9]{1,18}", stripped) else stripped

    def formatted(self, name: str, mode_name: str, entities_name: str) -> "Formatted | None":
        """The text in `name` after entity parsing, or None if absent or empty."""
        raw = self.text(name)
        if not raw:
            return None
        mode = (self.text(mode_name) or "").lower()
        entities: list[dict[str, Any]]
        if mode == "html":
            plain, entities = parse_html(raw)
        elif mode in ("", "none"):
            plain, entities = raw, _given_entities(self.structure(entities_name, "message entities"))
        else:
            raise bad_request("unsupported parse_mode")
        plain, entities = trimmed(plain, entities)
        return Formatted(plain, entities, raw)


@dataclass(slots=True, frozen=True)
class Formatted:
    """Text after entity parsing, with the original."""

    plain: str
    entities: list[dict[str, Any]]
    raw: str


def message_text(params: Params) -> Formatted:
    """The `text` of a message. Refuses a missing or blank one, and more than 4096 characters after parsing."""
    formatted = params.formatted("text", "parse_mode", "entities")
    if formatted is None:
        raise bad_request("message text is empty")
    if not formatted.plain or _is_invisible(formatted.plain):
        raise bad_request("text must be non-empty")
    if len(formatted.plain) * 2 > MAX_TEXT and utf16_length(formatted.plain) > MAX_TEXT:
        raise bad_request("message is too long")
    return formatted


def _is_invisible(text: str) -> bool:
    """Whether a text is made of nothing but space and characters without width."""
    return all(character.isspace() or unicodedata.category(character) == "Cf" for character in text)


def thread(params: Params) -> None:
    """Refuse a message to a thread: no chat here has any."""
    if params.integer("message_thread_id", 0):
        raise bad_request("message thread not found")


def caption(params: Params) -> Formatted:
    """The `caption`, empty if none. Refuses more than 1024 characters after parsing."""
    formatted = params.formatted("caption", "parse_mode", "caption_entities")
    if formatted is None:
        return Formatted("", [], "")
    if utf16_length(formatted.plain) > MAX_CAPTION:
        raise bad_request("message caption is too long")
    return formatted


def reply_markup(params: Params, *, inline_only: bool = False) -> dict[str, Any] | None:
    """A validated keyboard. Refuses anything the platform could not show."""
    markup = params.structure("reply_markup", "reply keyboard markup")
    if markup is None:
        return None
    if not isinstance(markup, dict):
        raise bad_request("object expected as reply markup")
    if "inline_keyboard" in markup:
        rows = _rows(markup, "inline_keyboard")
        if sum(map(len, rows)) > MAX_BUTTONS:
            raise bad_request("reply markup is too long")
        rows = [[_inline_button(button) for button in row] for row in rows if row]
        return {"inline_keyboard": rows} if rows else None
    if inline_only:
        raise bad_request("inline keyboard expected")
    if "keyboard" in markup:
        rows = _rows(markup, "keyboard")
        if sum(map(len, rows)) > 300:
            raise bad_request("reply markup is too long")
        return {**markup, "keyboard": [[_plain_button(button) for button in row] for row in rows]}
    if markup.get("remove_keyboard") is True:
        return {"remove_keyboard": True}
    if markup.get("force_reply") is True:
        return {"force_reply": True}
    if markup:
        raise bad_request("can't parse reply keyboard markup: no known kind of keyboard")
    return None


def _rows(markup: dict[str, Any], name: str) -> list[list[Any]]:
    rows = markup[name]
    if not isinstance(rows, list):
        raise bad_request(f'field "{name}" of the reply markup must be an Array')
    if not all(isinstance(row, list) for row in rows):
        raise bad_request(f'field "{name}" of the reply markup must be an Array of Arrays')
    return rows


def _label(button: dict[str, Any], what: str) -> str:
    if "text" not in button:
        raise bad_request(f"can't parse {what} button: Can't find field \"text\"")
    label = button["text"]
    if not isinstance(label, str):
        raise bad_request(f'can\'t parse {what} button: Field "text" must be of type String')
    if not label.strip():
        raise bad_request(f"can't parse {what} button: Button text must be non-empty")
    return label


def _inline_button(button: Any) -> dict[str, Any]:
    if not isinstance(button, dict):
        raise bad_request("can't parse inline keyboard button: InlineKeyboardButton must be an Object")
    _label(button, "inline keyboard")
    if sum(kind in button for kind in ("callback_data", *_OTHER_BUTTONS)) > 1:
        raise bad_request("BUTTON_TYPE_INVALID")
    if "callback_data" in button:
        data = button["callback_data"]
        if not isinstance(data, str):
            raise bad_request('can\'t parse inline keyboard button: Field "callback_data" must be of type String')
        if not 1 <= len(data.encode()) <= MAX_CALLBACK_DATA:
            raise bad_request("BUTTON_DATA_INVALID")
    elif "url" in button:
        url = button["url"]
        if not isinstance(url, str) or not _LINK.match(url):
            raise bad_request(f"inline keyboard button URL '{url}' is invalid: Wrong HTTP URL")
    elif not any(kind in button for kind in _OTHER_BUTTONS):
        raise bad_request("can't parse inline keyboard button: Text buttons are unallowed in the inline keyboard")
    return button


def _plain_button(button: Any) -> dict[str, Any]:
    if isinstance(button, str):
        button = {"text": button}
    if not isinstance(button, dict):
        raise bad_request("can't parse keyboard button: KeyboardButton must be an Object")
    _label(button, "keyboard")
    return button


def _given_entities(entities: Any) -> list[dict[str, Any]]:
    if entities is None:
        return []
    if not isinstance(entities, list):
        raise bad_request("can't parse message entities JSON object")
    for entity in entities:
        if not (
            isinstance(entity, dict)
            and isinstance(entity.get("type"), str)
            and isinstance(entity.get("offset"), int)
            and isinstance(entity.get("length"), int)
        ):
            raise bad_request("can't parse MessageEntity: an object with type, offset and length is expected")
    return entities
