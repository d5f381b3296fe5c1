"""What every page has: the template with its style, words that are escaped once, numbered sources."""

from __future__ import annotations

from functools import lru_cache
from pathlib import Path
from typing import TYPE_CHECKING

from markupsafe import Markup

from bot.rendering.phrases.sources import cited
from bot.rendering.voice import Html, Voice

if TYPE_CHECKING:
    from jinja2 import Environment

TEMPLATES = Path(__file__).parent / "templates"


class Sources:
    """The sources a page names, numbered in the order in which they are first named."""

    def __init__(self) -> None:
        self._numbers: dict[str, int] = {}

    def number(self, key: str) -> int:
        return self._numbers.setdefault(key, len(self._numbers) + 1)

    def numbers(self, *keys: str) -> tuple[int, ...]:
        return tuple(self.number(key) for key in keys if key)

    @property
    def cited(self) -> tuple[str, ...]:
        return tuple(map(cited, self._numbers))


def _as_written(value: object) -> object:
    """A phrase is escaped already, and its lines are lines."""
    return Markup(value.replace("\n", "<br>")) if isinstance(value, Html) else value


@lru_cache(maxsize=1)
def _environment() -> Environment:
    from jinja2 import Environment, FileSystemLoader, StrictUndefined  # 0.05 s, which most starts do without

    return Environment(
        loader=FileSystemLoader(TEMPLATES),
        autoescape=True,
        undefined=StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
        finalize=_as_written,
    )


def printed(template: str, v: Voice, **values: object) -> bytes:
    """A page, whole."""
    said = (
        _environment()
        .get_template(template)
        .render(
            language=v.reader.language,
            direction="rtl" if v.reader.right_to_left else "ltr",
            **values,
        )
    )
    return said.encode()
