"""Make typed text comparable: one case, one script of digits, one kind of quote, no accents, no invisible marks."""

from __future__ import annotations

import re
import unicodedata

from core.language.cache import memoized

LONGEST = 4096  # the chat platform's limit for a message; anything beyond is ignored

_INVISIBLE = (
    "\u00ad\u061c\u200b\u200c\u200d\u200e\u200f\u202a\u202b\u202c\u202d\u202e\u2060\u2066\u2067\u2068\u2069\ufeff"
)
_BEFORE: dict[int, str] = {
    **dict.fromkeys(map(ord, _INVISIBLE + "\ufe0e\ufe0f\u20e3\u0640"), ""),  # 20e3: keycap digits; 0640: tatweel
    **dict.fromkeys(map(ord, "\u2018\u2019\u201a\u201b\u2032\u00b4\u0060\u02b9\u02bc\u2035\uff07"), "'"),
    **dict.fromkeys(map(ord, "\u201c\u201d\u201e\u201f\u2033\u02ba\u2036\u3003\u00ab\u00bb\uff02"), '"'),
    **dict.fromkeys(map(ord, "\u2010\u2011\u2012\u2013\u2014\u2015\u2212\ufe58\ufe63\uff0d\u06d4"), "-"),
    **dict.fromkeys(map(ord, "\u00d7\u2715\u2716\u2a2f"), "x"),
    **dict.fromkeys(map(ord, "\r\n\u2028\u2029\v\f"), "\n"),
    ord("\u066b"): ".",  # Arabic decimal separator
    ord("\u066c"): "",  # Arabic thousands separator
    ord("\u060c"): ",",
    ord("\u061b"): ";",
    ord("\u061f"): "?",
    ord("\u00bd"): " 1/2",
    ord("\u00bc"): " 1/4",
    ord("\u00be"): " 3/4",
    ord("\u2153"): " 1/3",
    ord("\u2154"): " 2/3",
    ord("\u215b"): " 1/8",
    ord("\u215c"): " 3/8",
    ord("\u215d"): " 5/8",
    ord("\u215e"): " 7/8",
    ord("\U0001f51f"): "10",  # the keycap ten
}
_LETTERS = str.maketrans(
    {
        "ł": "l",
        "ø": "o",
        "đ": "d",
        "æ": "ae",
        "œ": "oe",
        "ı": "i",
        "ى": "ي",
        "ی": "ي",
        "ة": "ه",
        "ک": "ك",
        "\u2044": "/",
    }
)
_BLANK = re.compile(r"[^\S\n]+")
_HYPHEN = re.compile(r"(?<=[^\W\d_])-(?=\w)|(?<=\d)-(?=[^\W\d_])")


@memoized
def plain(text: str) -> str:
    """`text` normalised for comparison: case, accents, digits, quotes and dashes folded; line breaks become semicolons.

    Idempotent up to spacing; at most `LONGEST` characters are read.

    >>> plain("  82½ KG, „Düsseldorf“ ٨٢٫٤ ")
    '82 1/2 kg, "dusseldorf" 82.4'
    """
    text = text[:LONGEST]
    if not text.isascii():
        text = unicodedata.normalize("NFKC", text.translate(_BEFORE)).translate(_BEFORE)
    text = text.casefold().replace("`", "'")
    if not text.isascii():
        text = unicodedata.normalize("NFD", text).translate(_FOLD)
    if "-" in text:
        text = _HYPHEN.sub(" ", text)
    return _BLANK.sub(" ", text.replace("''", '"').strip().replace("\n", " ; "))


class _Fold(dict[int, str | None]):
    """Normalisation of a character once letters and accents are separated; computed on first use."""

    def __missing__(self, code: int) -> str | None:
        char = chr(code)
        digit = unicodedata.decimal(char, None)
        if digit is not None:
            folded: str | None = str(digit)
        else:
            folded = None if unicodedata.category(char) == "Mn" else char
        self[code] = folded
        return folded


_FOLD = _Fold(_LETTERS)


def near(typed: str, word: str) -> bool:
    """Whether `typed` is `word` with one typo: a letter left out, added or changed, or two swapped.

    Only for command words and signs of four or more letters (up to five: swapped letters only), with the same first
    letter; never for numbers. Both must be `plain`.
    """
    if typed == word:
        return True
    if len(word) < 4 or abs(len(typed) - len(word)) > 1 or typed[:1] != word[:1]:
        return False
    if len(typed) == len(word):
        wrong = [i for i, (a, b) in enumerate(zip(typed, word, strict=True)) if a != b]
        if len(wrong) == 2:
            i, j = wrong
            return j == i + 1 and typed[i] == word[j] and typed[j] == word[i]
        return len(wrong) == 1 and len(word) > 5
    if len(word) < 6:
        return False
    short, long = sorted((typed, word), key=len)
    i = next((i for i, (a, b) in enumerate(zip(short, long, strict=False)) if a != b), len(short))
    return short[i:] == long[i + 1 :]


def bare_words(text: str) -> list[str]:
    """The words and numbers of a plain text, without apostrophes and other punctuation."""
    kept = "".join(c if c.isalnum() or c == " " else " " if c != "'" else "" for c in text)
    return kept.split()
