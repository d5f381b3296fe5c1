"""Descriptions of the commands, for the messenger's menu beside the text field."""

from __future__ import annotations

from bot.foundation.reader import Reader
from bot.rendering.voice import voice


def describe(text: str, language: str) -> str:
    """The menu text of a row of `core.dialogue.commands` in a language."""
    return voice(Reader(language)).plain(text)
