"""Formatted text as HTML: plain text and entities, whose offsets count UTF-16 units. Whatever was typed stays text."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from markupsafe import Markup, escape

_TAGS = {
    "bold": "strong",
    "italic": "em",
    "underline": "u",
    "strikethrough": "s",
    "code": "code",
    "pre": "code",
    "blockquote": "q",
    "expandable_blockquote": "q",
    "spoiler": "em",
}


def html(text: str, entities: Sequence[Mapping[str, Any]] = ()) -> Markup:
    """Return a text as HTML. Entities that no tag stands for, links among them, are shown as their text."""
    units = text.encode("utf-16-le", "surrogatepass")
    spans = [(e["offset"], e["offset"] + e["length"], _TAGS[e["type"]]) for e in entities if e["type"] in _TAGS]
    return _within(units, 0, len(units) // 2, sorted(spans, key=lambda span: (span[0], -span[1])))


def _within(units: bytes, start: int, stop: int, spans: Sequence[tuple[int, int, str]]) -> Markup:
    """The piece from `start` to `stop`, with the spans that begin in it; one that reaches out of it is cut."""
    made, at, rest = Markup(""), start, list(spans)
    while rest:
        first, last, tag = rest.pop(0)
        first, last = max(first, at), min(last, stop)
        if last <= first:
            continue
        inside = [span for span in rest if span[0] < last]
        rest = [span for span in rest if span[0] >= last]
        made += _plain(units, at, first)
        made += Markup(f"<{tag}>{{}}</{tag}>").format(_within(units, first, last, inside))
        at = last
    return made + _plain(units, at, stop)


def _plain(units: bytes, start: int, stop: int) -> Markup:
    return escape(units[2 * start : 2 * stop].decode("utf-16-le", "replace"))
