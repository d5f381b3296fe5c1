"""Formatted text: parse the Bot API's HTML subset into plain text and entities.

Lengths and offsets are in UTF-16 code units, as the platform counts them. A text the platform would refuse raises
`Refused` with its wording ("can't parse entities: ..."); byte offsets are into UTF-8. An `&` that starts no known
entity is plain text there, and here too.
"""

import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from demo.messenger.refusals import Refused, bad_request

Entity = Mapping[str, Any]

_STYLES = {
    "b": "bold",
    "strong": "bold",
    "i": "italic",
    "em": "italic",
    "u": "underline",
    "ins": "underline",
    "s": "strikethrough",
    "strike": "strikethrough",
    "del": "strikethrough",
    "tg-spoiler": "spoiler",
    "span": "spoiler",
    "code": "code",
    "pre": "pre",
    "a": "text_link",
    "blockquote": "blockquote",
    "tg-emoji": "custom_emoji",
}
_NAMED = {"lt": "<", "gt": ">", "amp": "&", "quot": '"'}
_SPECIAL = re.compile(r"[<&]")
_CHARACTER = re.compile(r"&(?:#x([0-9a-fA-F]{1,6})|#([0-9]{1,7})|([a-z]{2,4}));?")
_NAME = re.compile(r"[^\s>/]*")
_ATTRIBUTE = re.compile(r"\s*([^\s=>/]+)(?:\s*=\s*(\"[^\"]*\"|'[^']*'|[^\s>]+))?")
_COMMAND = re.compile(r"(?<!\S)/[A-Za-z0-9_]{1,64}(?:@[A-Za-z0-9_]{3,32})?")


@dataclass(slots=True)
class _Open:
    """A start tag waiting for its end tag."""

    tag: str
    attributes: dict[str, str]
    offset: int


def utf16_length(text: str) -> int:
    """The length of `text` in UTF-16 code units."""
    return len(text) if text.isascii() else len(text.encode("utf-16-le", "surrogatepass")) // 2


def parse_html(source: str) -> tuple[str, list[dict[str, Any]]]:
    """The plain text of `source` and its entities, in order of offset, outermost first.

    Raises: Refused for an unknown tag, an unclosed tag, an end without a start, or crossed tags.
    """
    if "<" not in source and "&" not in source:
        return source, []
    parts: list[str] = []
    length = 0
    stack: list[_Open] = []
    found: list[dict[str, Any]] = []
    at = 0
    while at < len(source):
        special = _SPECIAL.search(source, at)
        end = special.start() if special else len(source)
        if end > at:
            parts.append(source[at:end])
            length += utf16_length(source[at:end])
        if special is None:
            break
        if source[end] == "&":
            piece, at = _character(source, end)
            parts.append(piece)
            length += utf16_length(piece)
        elif source.startswith("</", end):
            at = _close(source, end, stack, found, length, parts)
        else:
            at = _open(source, end, stack, length)
    if stack:
        raise _broken(f'Can\'t find end tag corresponding to start tag "{stack[-1].tag}"')
    found.sort(key=lambda entity: (entity["offset"], -entity["length"]))
    return "".join(parts), found


def trimmed(text: str, entities: Sequence[Entity]) -> tuple[str, list[dict[str, Any]]]:
    """`text` without surrounding space, with entities shifted and cut accordingly, as the platform does."""
    kept = text.strip()
    if not entities or kept == text:
        return kept, [dict(entity) for entity in entities]
    lost = len(text) - len(text.lstrip())  # no space is longer than one unit
    size = utf16_length(kept)
    result = []
    for entity in entities:
        start = max(entity["offset"] - lost, 0)
        stop = min(entity["offset"] + entity["length"] - lost, size)
        if stop > start:
            result.append({**entity, "offset": start, "length": stop - start})
    return kept, result


def commands_in(text: str) -> list[dict[str, Any]]:
    """`bot_command` entities for each `/command` in a text."""
    if "/" not in text:
        return []
    return [
        {
            "type": "bot_command",
            "offset": utf16_length(text[: match.start()]),
            "length": utf16_length(match.group()),
        }
        for match in _COMMAND.finditer(text)
    ]


def _broken(reason: str) -> Refused:
    return bad_request(f"can't parse entities: {reason}")


def _byte(source: str, at: int) -> int:
    return len(source[:at].encode())


def _character(source: str, at: int) -> tuple[str, int]:
    match = _CHARACTER.match(source, at)
    if match is None:
        return "&", at + 1
    hexadecimal, decimal, name = match.groups()
    if name:
        plain = _NAMED.get(name)
    else:
        code = int(hexadecimal, 16) if hexadecimal else int(decimal)
        usable = 0 < code < 0x110000 and not 0xD800 <= code < 0xE000
        plain = chr(code) if usable else None
    return (plain, match.end()) if plain else ("&", at + 1)


def _open(source: str, start: int, stack: list[_Open], offset: int) -> int:
    match = _NAME.match(source, start + 1)
    assert match is not None  # the pattern also matches nothing
    tag, at = match.group().lower(), match.end()
    where = f"at byte offset {_byte(source, start)}"
    if at >= len(source):
        raise _broken(f"Unclosed start tag {where}")
    if tag not in _STYLES:
        raise _broken(f'Unsupported start tag "{tag}" {where}')
    attributes: dict[str, str] = {}
    while True:
        while at < len(source) and source[at].isspace():
            at += 1
        if at >= len(source):
            raise _broken(f"Unclosed start tag {where}")
        if source[at] == ">":
            break
        attribute = _ATTRIBUTE.match(source, at)
        if attribute is None:
            raise _broken(f'Empty attribute name in the tag "{tag}" {where}')
        name, value = attribute.group(1), attribute.group(2) or ""
        if value[:1] in ('"', "'"):
            value = value[1:-1] if len(value) > 1 and value[-1] == value[0] else value
        attributes[name.lower()] = _unescaped(value)
        at = attribute.end()
    if tag == "span" and attributes.get("class") != "tg-spoiler":
        raise _broken(f'Tag "span" must have class "tg-spoiler" {where}')
    if tag == "blockquote" and any(opened.tag == tag for opened in stack):
        raise _broken(f'Tag "blockquote" must not be nested {where}')
    stack.append(_Open(tag, attributes, offset))
    return at + 1


def _close(
    source: str, start: int, stack: list[_Open], found: list[dict[str, Any]], offset: int, parts: list[str]
) -> int:
    where = f"at byte offset {_byte(source, start)}"
    if not stack:
        raise _broken(f"Unexpected end tag {where}")
    match = _NAME.match(source, start + 2)
    assert match is not None  # the pattern also matches nothing
    tag, at = match.group().lower(), match.end()
    while at < len(source) and source[at].isspace():
        at += 1
    if at >= len(source) or source[at] != ">":
        raise _broken(f"Unclosed end tag {where}")
    opened = stack.pop()
    if tag and tag != opened.tag:
        raise _broken(f'Unmatched end tag {where}, expected "</{opened.tag}>", found "</{tag}>"')
    if offset > opened.offset:
        entity = _entity(opened, offset, parts)
        if entity:
            found.append(entity)
    return at + 1


def _entity(opened: _Open, end: int, parts: list[str]) -> dict[str, Any] | None:
    entity: dict[str, Any] = {
        "type": _STYLES[opened.tag],
        "offset": opened.offset,
        "length": end - opened.offset,
    }
    if opened.tag == "a":
        inside = "".join(parts).encode("utf-16-le")[2 * opened.offset :].decode("utf-16-le")
        url = opened.attributes.get("href") or inside
        if not re.match(r"(https?|tg|mailto|tel):", url):
            return None  # the platform shows such a link as plain text
        entity["url"] = url
    elif opened.tag == "tg-emoji":
        entity["custom_emoji_id"] = opened.attributes.get("emoji-id", "")
    elif opened.tag == "blockquote" and "expandable" in opened.attributes:
        entity["type"] = "expandable_blockquote"
    elif opened.tag == "code" and opened.attributes.get("class", "").startswith("language-"):
        entity["language"] = opened.attributes["class"].removeprefix("language-")
    return entity


def _unescaped(value: str) -> str:
    result, at = [], 0
    while (cut := value.find("&", at)) >= 0:
        piece, after = _character(value, cut)
        result += [value[at:cut], piece]
        at = after
    return "".join(result) + value[at:]
