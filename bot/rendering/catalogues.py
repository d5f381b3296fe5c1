"""Catalogue tool: extract every text from the source, update each language, and check the result.

python -m bot.rendering.catalogues extract    source text -> locales/messages.pot
python -m bot.rendering.catalogues update     .pot -> every .po; new entries are empty, obsolete ones dropped
python -m bot.rendering.catalogues check      reports problems; exit code 1 if there are any
"""

from __future__ import annotations

import io
import re
import string
import sys
from collections import Counter
from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

from babel.messages.catalog import Catalog, Message
from babel.messages.extract import extract_from_dir
from babel.messages.pofile import read_po, write_po

from core.language import LANGUAGES

ROOT = Path(__file__).parents[2]

# Which argument of which function is a text; "c" is its context.
KEYWORDS: dict[str, tuple[int | tuple[int, str], ...]] = {
    "N_": (1,),
    "say": (1,),
    "plain": (1,),
    "say_n": (1, 2),
    "plain_n": (1, 2),
    "NC_": ((1, "c"), 2),
    "say_in": ((1, "c"), 2),
    "plain_in": ((1, "c"), 2),
}
# Where texts are, and how they are marked there: core only marks the words of commands, and says none itself.
SOURCES: dict[str, dict[str, tuple[int | tuple[int, str], ...]]] = {
    "bot/rendering": KEYWORDS,
    "core/dialogue": {"N_": (1,)},
}
_EPOCH = datetime(2026, 1, 1, tzinfo=UTC)  # a constant date keeps the file reproducible
_PLAIN: dict[str, Any] = {
    "project": "samehour",
    "version": "1",
    "creation_date": _EPOCH,
    "revision_date": _EPOCH,
    "msgid_bugs_address": "-",
    "last_translator": "-",
    "language_team": "-",
    "fuzzy": False,
}
_TEMPLATE_HEADER = """\
Texts of Samehour.
Whole sentences; {placeholders} stay as they are, and so do <b>tags</b> and /commands.
"""
_HEADER = """\
Texts of Samehour in {language}.
Drafted with care; not yet reviewed by a native-speaking practitioner.
"""

Key = tuple[tuple[str, ...], str | None]


# --- making -----------------------------------------------------------------------------------------------------


def extracted(root: Path = ROOT) -> Catalog:
    """Every text marked in the source."""
    catalogue = Catalog(header_comment=_as_comment(_TEMPLATE_HEADER), **_PLAIN)
    for source, keywords in SOURCES.items():
        found = extract_from_dir(
            root / source,
            [("**.py", "python")],
            keywords=keywords,
            comment_tags=["Translators:"],
            strip_comment_tags=True,
        )
        for name, _line, text, comments, context in sorted(found, key=lambda f: (f[0], f[1])):
            catalogue.add(text, None, [(f"{source}/{name}", 0)], auto_comments=comments, context=context)
    return catalogue


def _as_comment(text: str) -> str:
    return "".join(f"# {line}\n" for line in text.splitlines()).rstrip()


def _write(path: Path, catalogue: Catalog) -> None:
    path.parent.mkdir(parents=True, exist_ok=True)
    buffer = io.BytesIO()
    write_po(buffer, catalogue, width=110, include_lineno=False, ignore_obsolete=True, sort_by_file=True)
    path.write_bytes(buffer.getvalue())


def extract(root: Path = ROOT) -> int:
    """Write the template; return the number of texts."""
    catalogue = extracted(root)
    _write(root / "locales" / "messages.pot", catalogue)
    return len(catalogue)


def update(root: Path = ROOT) -> dict[str, int]:
    """Update every language's catalogue from the template; return the number of untranslated texts."""
    new = extracted(root)
    missing = {}
    for language in LANGUAGES:
        path = root / "locales" / language / "LC_MESSAGES" / "messages.po"
        catalogue = Catalog(locale=language, **_PLAIN)
        if path.is_file():
            with path.open("rb") as file:
                catalogue = read_po(file, locale=language)
        catalogue.header_comment = _as_comment(_HEADER.format(language=_english_name(language)))
        catalogue.update(new, no_fuzzy_matching=True, update_header_comment=False)
        catalogue.obsolete.clear()
        catalogue.creation_date = catalogue.revision_date = _EPOCH
        _write(path, catalogue)
        missing[language] = sum(not _has_words(m) for m in catalogue if m.id)
    return missing


def _english_name(language: str) -> str:
    from babel import Locale

    return str(Locale.parse(language).get_display_name("en"))


def _texts(value: object) -> tuple[str, ...]:
    """A text, or its plural forms, as a tuple."""
    each = value if isinstance(value, tuple | list) else (value,)
    return tuple(str(text or "") for text in each)


def _has_words(message: Message) -> bool:
    return all(_texts(message.string))


# --- checking ---------------------------------------------------------------------------------------------------

_TAG = re.compile(r"</?\w+>")
_COMMAND = re.compile(r"(?<![\w<])/[a-z]+\b")


def problems(root: Path = ROOT) -> Iterator[str]:
    """All problems of the catalogues, one line each."""
    new = _keyed(extracted(root))
    with (root / "locales" / "messages.pot").open("rb") as file:
        if set(_keyed(read_po(file))) != set(new):
            yield "messages.pot: stale; run extract"
    for language in LANGUAGES:
        path = root / "locales" / language / "LC_MESSAGES" / "messages.po"
        if not path.is_file():
            yield f"{language}: no catalogue; run update"
            continue
        with path.open("rb") as file:
            catalogue = read_po(file, locale=language)
        old = _keyed(catalogue)
        for key in new.keys() - old.keys():
            yield f"{language}: missing: {_start(key)}"
        for key in old.keys() - new.keys():
            yield f"{language}: stale: {_start(key)}"
        for key in new.keys() & old.keys():
            for what in problems_of(old[key], catalogue.num_plurals, english=language == "en"):
                yield f"{language}: {what}: {_start(key)}"


def problems_of(message: Message, plurals: int, *, english: bool = False) -> Iterator[str]:
    """Problems of one entry."""
    if message.fuzzy:
        yield "fuzzy"
    originals, words = _texts(message.id), _texts(message.string)
    if not _has_words(message):
        if not english:
            yield "no words"
        return
    if len(originals) > 1 and len(words) != plurals:
        yield f"{len(words)} plural forms, not {plurals}"
    needed = fields(originals[-1])
    may_lack = {"n"} if len(originals) > 1 else set()
    for text in words:
        try:
            found = fields(text)
        except ValueError:
            yield "broken placeholder"
            continue
        if not needed - may_lack <= found <= needed:
            yield f"placeholders {sorted(found)}, not {sorted(needed)}"
        if Counter(_TAG.findall(text)) != Counter(_TAG.findall(originals[-1])) or not balanced(text):
            yield "tags differ"
        if Counter(_COMMAND.findall(text)) != Counter(_COMMAND.findall(originals[-1])):
            yield "commands differ"


def fields(text: str) -> set[str]:
    """The names of the placeholders. Raises: ValueError for a broken one."""
    return {name for _, name, _, _ in string.Formatter().parse(text) if name is not None}


def balanced(text: str) -> bool:
    """Whether every tag that opens closes, innermost first."""
    open_tags: list[str] = []
    for tag in _TAG.findall(text):
        if not tag.startswith("</"):
            open_tags.append(tag[1:-1])
        elif not open_tags or open_tags.pop() != tag[2:-1]:
            return False
    return not open_tags


def _keyed(catalogue: Catalog) -> dict[Key, Message]:
    return {(_texts(m.id), m.context): m for m in catalogue if m.id}


def _start(key: Key) -> str:
    text = key[0][0]
    return repr(text if len(text) < 60 else text[:57] + "...")


def main(arguments: list[str]) -> int:
    """Run one command; return its exit code."""
    out = sys.stdout.write
    match arguments:
        case ["extract"]:
            out(f"{extract()} texts\n")
            return 0
        case ["update"]:
            extract()
            for language, count in update().items():
                out(f"{language}: {count} without words\n")
            return 0
        case ["check"]:
            found = sorted(problems())
            out("".join(f"{line}\n" for line in found) or "all catalogues are whole\n")
            return 1 if found else 0
        case _:
            sys.stderr.write("usage: python -m bot.rendering.catalogues extract|update|check\n")
            return 2


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
