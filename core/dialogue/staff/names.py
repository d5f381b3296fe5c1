"""Which client a coach means by a name, or by a name and words after it."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from core.dialogue.staff.facts import CardFact
from core.language import plain
from core.language.text import bare_words

SHORTEST_PART = 3  # fewest letters for a search inside names
ENDINGS = {  # what may follow a name, or take the place of its last vowel, where nouns decline
    "en": ("s",),
    "de": ("s",),
    "pl": ("a", "y", "i", "e", "o", "u", "owi", "em", "iem", "ie", "zie", "ii", "ce"),
}
PREFIXES = {"ar": ("ل", "لل", "و", "ب", "ك", "ف"), "fr": ("d", "l", "qu")}  # small words written with the next
VOWELS = "aeiou"
SOON = 5  # words before the name of whoever is told something: "could you please tell Ada"
_MARKS = " :,;-–—.،"
TO = frozenset({"to", "an", "a", "do", "الى", "إلى"})  # may stand before whoever is addressed


def meant(names: Sequence[tuple[int, str]], words: str) -> tuple[int, ...]:
    """Ids of the clients that `words` may name: all words must match; only the best kind of match counts.

    names: id and name, one or several of each. A full name beats a prefix, which beats letters inside a name; two
    clients with the same name both match, and the coach is asked.
    """
    said = plain(words).strip()
    if not said:
        return ()
    folded = [(client, plain(name)) for client, name in names]
    for fits in (_whole, _beginning, _inside):
        found = tuple(dict.fromkeys(client for client, name in folded if fits(name, said)))
        if found:
            return found
    return ()


def _whole(name: str, said: str) -> bool:
    return name == said


def _beginning(name: str, said: str) -> bool:
    """Whether every given word starts a word of the name, in order: "ann b" is Ann-Marie Bell."""
    parts = iter(name.split())
    return all(any(part.startswith(word) for part in parts) for word in said.split())


def _inside(name: str, said: str) -> bool:
    return len(said) >= SHORTEST_PART and said in name


def addressed(names: Sequence[tuple[int, str]], text: str) -> tuple[tuple[int, ...], str]:
    """The clients addressed at the start of `text`, and the words after: "/write Ann Bell well done" or "ann: well
    done".

    The longest prefix of the text that is a full name decides; else its first word, as in `meant`.
    """
    words = text.split()
    if len(words) > 1 and plain(words[0]) in TO and not meant(names, words[0]):
        return addressed(names, _rest(text, 1))  # "write to Ada well done"
    for size in range(min(len(words), 5), 0, -1):
        said = plain(" ".join(words[:size])).strip().rstrip(":,")
        found = tuple(dict.fromkeys(client for client, name in names if plain(name) == said))
        if found:
            return found, _rest(text, size)
    return (meant(names, words[0].rstrip(":,")), _rest(text, 1)) if words else ((), "")


def _rest(text: str, words: int) -> str:
    """The text after the first `words` words, with its line breaks."""
    return (text.split(None, words) + [""] * (words + 1))[words].strip()


def all_names(cards: Iterable[CardFact]) -> tuple[tuple[int, str], ...]:
    """What clients may be called by their coach: as the coach reads them, and as they call themselves."""
    return tuple((c.client_id, name) for c in cards for name in (c.name, c.own_name) if name)


def mentioned(names: Sequence[tuple[int, str]], text: str, language: str) -> tuple[int, ...]:
    """Ids of the clients whom a text names somewhere, declined as the language does: "Ada's", "Ady", "لآدا".

    By the whole name, or by its first word. Two clients of one name are both named.
    """
    said = bare_words(plain(text))
    parts = [(client, bare_words(plain(name))) for client, name in names]
    taken = {name[0] for _, name in parts if len(name) == 1}  # "Ann" is not Ann Bell if somebody is called just that
    return tuple(
        client
        for client, name in parts
        if name
        and (_stands_in(said, name, language) or (name[0] not in taken and _stands_in(said, name[:1], language)))
    )


def _stands_in(said: Sequence[str], name: Sequence[str], language: str) -> bool:
    size = len(name)
    return any(
        all(_declined(word, part, language) for word, part in zip(said[i : i + size], name, strict=True))
        for i in range(len(said) - size + 1)
    )


def _declined(word: str, name: str, language: str) -> bool:
    if word == name:
        return True
    if any(word == prefix + name for prefix in PREFIXES.get(language, ())):
        return True
    endings = ENDINGS.get(language, ())
    if any(word == name + ending for ending in endings):
        return True
    return language == "pl" and name[-1] in VOWELS and len(name) > 2 and any(word == name[:-1] + e for e in endings)


def told(names: Sequence[tuple[int, str]], text: str, language: str) -> tuple[tuple[int, ...], str]:
    """Whom a text tells something ("tell Ada well done"), and the words after their name; nobody if no name comes
    soon. Two clients of one name are both meant, and the coach is asked."""
    typed = text.split()
    folded = [" ".join(bare_words(plain(word))) for word in typed]
    parts = [(client, bare_words(plain(name))) for client, name in names]
    for i in range(min(SOON, len(typed))):
        for whole in (True, False):
            found = {}
            for client, name in parts:
                wanted = name if whole else name[:1]
                if wanted and _stands_in(folded[i : i + len(wanted)], wanted, language):
                    found[client] = len(wanted)
            if found:
                return tuple(found), _rest(text, i + max(found.values())).lstrip(_MARKS)
    return (), ""


def distinct_names(names: Iterable[tuple[int, str, int | None]]) -> dict[int, str]:
    """Names as a coach reads them; clients with the same name get their birth year, or their number, beside it.

    names: number, name and birth year of each.
    """
    given = list(names)
    alike: dict[str, list[int | None]] = {}
    for _, name, born in given:
        alike.setdefault(plain(name), []).append(born)
    out: dict[int, str] = {}
    for client, name, born in given:
        years = alike[plain(name)]
        tell = born if born is not None and years.count(born) == 1 else client
        out[client] = name if len(years) == 1 else f"{name} ({tell})"
    return out
