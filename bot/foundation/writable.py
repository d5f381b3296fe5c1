"""Text that every database, every file and UTF-8 can hold."""

from __future__ import annotations


def writable(text: str) -> str:
    """Return a text without what cannot be stored or sent: NUL characters go, half surrogates become "?"."""
    if text.isascii():
        return text.replace("\0", "") if "\0" in text else text
    return text.replace("\0", "").encode("utf-8", "replace").decode("utf-8")
