"""What each command does, for the menu the messenger shows beside the text field."""

from __future__ import annotations

from bot.foundation.reader import Reader
from bot.rendering.voice import voice


def describe(text: str, language: str) -> str:
    """Return the words of a row of `core.dialogue.commands` in a language."""
    return voice(Reader(language)).plain(text)
