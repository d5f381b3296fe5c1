"""What a message says of the client's health: pregnant, on bisoprolol, no longer, a fall, moved, how tall.

Read clause by clause, so that "no heart problems, but I take metoprolol" is a denial and a fact. What is said of
somebody else, asked, feared, planned, long over or a figure of speech is no fact. What is likely but not plain is not
sure, and is asked. Danger signs are not looked for here; they come first.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass, field
from enum import StrEnum
from functools import cache

from core.client import Background, Caution, Sex
from core.language import ENGLISH, Lexicon, plain
from core.language.cache import memoized
from core.language.concepts import Concept as C
from core.language.health_words import HEALTH_WORDS
from core.language.health_words import Topic as T
from core.language.phrases import HARD, Said, Table, compiled, cut, known, read
from core.language.rate_limiting_medicines import RATE_LIMITING_MEDICINES
from core.measures.height import HEIGHT
from core.measures.measure import Understood

Key = T | C | str  # a medicine is its name

LOOSE = 2  # unknown words that a "no" may reach across
NEAR_END = 2  # words from the end of a clause in which a "no" denies what stands before
NEXT = 2  # words: "stopped taking" is stopped
PLACE = 3  # words of a place's name
BRIEF = 3  # words: a medicine alone in so few is asked about
CLASS = "beta-blocker"
_YEAR = re.compile(r"(?<!\d)(?:19|20)\d\d(?!\d)")
_CLAUSE = re.compile(r"(?<!\d)[.,;:!?،؛؟\n]+|[.,;:!?،؛؟\n]+(?!\d)")


class What(StrEnum):
    """The kind of fact."""

    CAUTION = "caution"
    MEDICINE = "medicine"
    MOVED = "moved"
    STATURE = "stature"
    BIRTH_YEAR = "birth_year"
    SEX = "sex"
    BACKGROUND = "background"
    UNITS = "units"


class Stance(StrEnum):
    SO = "so"
    OVER = "over"  # was so, and is no longer
    DENIED = "denied"


@dataclass(frozen=True, slots=True)
class HealthFact:
    """One fact. value: the caution, the medicine's generic name ("" for one not named), the place as written, cm, the
    year, the sex, the background or the set of units.  sure: False if it must be asked first; of a place, if it may be
    none.  grief: a loss."""

    what: What
    value: str
    stance: Stance = Stance.SO
    sure: bool = True
    grief: bool = False


@dataclass(frozen=True, slots=True)
class HealthSaid:
    """facts: in order, one for each thing.  rest: the message without the clauses that hold them."""

    facts: tuple[HealthFact, ...] = ()
    rest: str = ""


CAUTIONS: dict[T, Caution] = {
    T.PREGNANT: Caution.PREGNANCY,
    T.PREGNANT_PERHAPS: Caution.PREGNANCY,
    T.BIRTH: Caution.PREGNANCY,
    T.LOSS: Caution.PREGNANCY,
    T.PREGNANT_NO_LONGER: Caution.PREGNANCY,
    T.HEART_FAILURE: Caution.HEART_FAILURE,
    T.HEART_CONDITION: Caution.HEART_CONDITION,
    T.KIDNEY: Caution.KIDNEY_DISEASE,
    T.DIABETES: Caution.DIABETES,
    T.FELL: Caution.FALLS,
    T.EATING: Caution.EATING_WORRIES,
    T.BREATHLESS: Caution.BREATHLESS_AT_REST,
}
ENDS = frozenset({T.BIRTH, T.LOSS, T.PREGNANT_NO_LONGER})
ASKED = frozenset({T.BIRTH, T.PREGNANT_PERHAPS})
EVENTS = frozenset({T.FELL, T.PREGNANT, T.PREGNANT_PERHAPS, T.BIRTH, T.LOSS})  # long ago, they are over
HISTORY = frozenset({T.EATING})  # counts however long ago
SEXES = {T.FEMALE: Sex.FEMALE, T.MALE: Sex.MALE}
BACKGROUNDS: dict[T, Background] = {T[b.name]: b for b in Background}
UNITS = (T.ST, T.KG, T.LB)  # "stones and pounds" is stones
PLACES = (T.MOVED, T.LIVES)
ABOUT = frozenset(
    {*CAUTIONS, *SEXES, *BACKGROUNDS, *UNITS, T.HEART_TABLETS, *PLACES, T.HEIGHT, T.BORN, *RATE_LIMITING_MEDICINES}
)
HOW = (
    C.NO, C.NO_AFTER, C.BETWEEN, C.AND, C.NOR, C.BUT, C.CLAUSE, C.IMAGINED, C.FICTION, C.OTHERS, C.MINE, C.FILLER
)  # fmt: skip
ARTICLES = frozenset({"el"})  # "él" without its accent
PERSON = (C.MINE, T.ME, T.SUBJECT)  # heard even inside a longer phrase: "started me on"
CARRY = (C.BETWEEN, C.FILLER, C.AND, C.NOR, T.TAKE, T.ANYMORE)  # a "no" reaches across these


@cache
def _table(words: Lexicon) -> Table[Key]:
    """Every phrase of one language; medicines are the same in all."""
    table: dict[Key, str] = {topic: listed for topic, listed in HEALTH_WORDS[words.code].items()}  # noqa: C416
    for name, stems in RATE_LIMITING_MEDICINES.items():
        table[name] = ", ".join(f"{stem}*" for stem in stems)
    table |= {concept: words.concepts.get(concept, "") for concept in HOW}
    others = (p.strip() for p in table[C.OTHERS].split(","))
    table[C.OTHERS] = ", ".join(p for p in others if plain(p) not in ARTICLES)
    strict = frozenset(key for key in table if key not in ABOUT)
    return compiled(table, words, C.FILLER, C.NO, strict)


@memoized
def health_in(text: str, words: Lexicon) -> HealthSaid:
    """The facts of a message, in the client's language, or in English if it is more English than that."""
    if not (facts := _facts(text, words)):
        return HealthSaid((), text)
    return HealthSaid(facts, _rest(text, words))


def _facts(text: str, words: Lexicon) -> tuple[HealthFact, ...]:
    folded = plain(text)
    best, most = None, 0
    for lexicon in dict.fromkeys((words, ENGLISH)):
        pieces, table = cut(folded, lexicon.elision), _table(lexicon)
        stems = [known(piece, table, True) for piece in pieces]
        if not any(table.begins.get(stem, 0) & _about(lexicon) for found in stems for stem in found):
            continue  # as with nearly every message
        understood = sum(map(bool, stems))
        if understood > most:
            best, most = lexicon, understood
    if best is None:
        return ()
    said = read(cut(folded, best.elision), _table(best), True)
    found: dict[tuple[What, str], HealthFact] = {}
    for fact in _Clauses(said, best).facts():
        one = "" if fact.what in (What.STATURE, What.BIRTH_YEAR, What.SEX, What.UNITS) else fact.value
        found.pop((fact.what, one), None)
        found[fact.what, one] = fact
    named = {f.stance for f in found.values() if f.what is What.MEDICINE and f.value not in ("", CLASS)}
    return tuple(f for f in found.values() if not (f.what is What.MEDICINE and f.value == CLASS and f.stance in named))


@cache
def _about(words: Lexicon) -> int:
    return _table(words).mask(ABOUT)


@cache
def _joins(words: Lexicon) -> re.Pattern[str]:
    """What parts the clauses of a message: marks, "and", "but"."""
    phrases = ",".join(lexicon.concepts.get(c, "") for lexicon in (words, ENGLISH) for c in (C.AND, C.BUT))
    joins = sorted({plain(p.strip()) for p in phrases.split(",")} - {""}, key=len, reverse=True)
    return re.compile(rf"{_CLAUSE.pattern}|(?<!\w)(?:{'|'.join(map(re.escape, joins))})(?!\w)", re.IGNORECASE)


def _rest(text: str, words: Lexicon) -> str:
    """The clauses without a fact; a number in the others is not for us: "carvedilol 6.25"."""
    kept = [part for part in _joins(words).split(text) if part.strip() and not _facts(part, words)]
    return ", ".join(part.strip() for part in kept)


@dataclass(slots=True)
class _Clauses:
    """A message as phrases. `at`: where each key stands, by its first word; a longer phrase hides those within it."""

    said: Said[Key]
    words: Lexicon
    at: dict[Key, list[tuple[int, int]]] = field(init=False)

    def __post_init__(self) -> None:
        every = [(key, span) for i in range(len(self.said.words)) for key, span in self.said.spans(i).items()]
        self.at = {}
        spare = [span for key, span in every if key is T.SPARE]
        for key, (a, b) in every:
            hidden = any(x <= a and b <= y and y - x > b - a for other, (x, y) in every if other is not C.FILLER)
            hidden = hidden or (key in ABOUT and any(a < y and x < b for x, y in spare))
            if key in PERSON or not hidden:
                self.at.setdefault(key, []).append((a, b))

    # --- where things stand ---------------------------------------------------------------------------------

    def any_(self, keys: tuple[Key, ...], start: int, end: int) -> bool:
        return any(start <= a < end for key in keys for a, _ in self.at.get(key, ()))

    def last_(self, key: Key, start: int, end: int) -> int:
        return max((a for a, _ in self.at.get(key, ()) if start <= a < end), default=-1)

    def covers(self, keys: tuple[Key, ...], i: int) -> bool:
        return any(a <= i < b for key in keys for a, b in self.at.get(key, ()))

    def _decimal(self, i: int) -> bool:
        words = self.said.words
        return i > 0 and self.said.gaps[i] in (",", ".") and words[i - 1].isdecimal() and words[i].isdecimal()

    def fresh(self, i: int) -> bool:
        """Whether a sentence or a contrast starts here."""
        if i == 0 or i >= len(self.said.words) - 1:
            return True
        return bool(HARD & set(self.said.gaps[i]) and not self._decimal(i)) or self.covers((C.BUT,), i)

    def parted(self, i: int) -> bool:
        """Whether a clause starts here."""
        return self.fresh(i) or bool(self.said.gaps[i] and not self._decimal(i))

    def bounds(self, a: int, b: int) -> tuple[int, int, int, int]:
        """Sentence from, clause from, clause to, sentence to."""
        last = len(self.said.words) - 1
        low = next(i for i in range(a, -1, -1) if self.fresh(i))
        left = next(i for i in range(a, -1, -1) if self.parted(i))
        right = next((i for i in range(b, last) if self.parted(i)), last)
        high = next((i for i in range(b, last) if self.fresh(i)), last)
        return low, left, right, high

    def text(self, start: int, end: int) -> str:
        parts = []
        for i in range(start, end):
            tight = self._decimal(i)
            parts.append(self.said.gaps[i] + self.said.words[i] if tight else " " + self.said.words[i])
        return "".join(parts).strip()

    # --- reading --------------------------------------------------------------------------------------------

    def facts(self) -> Iterator[HealthFact]:
        spans = sorted((span, key) for key in ABOUT for span in self.at.get(key, ()))
        for (a, b), key in spans:
            low, left, right, high = self.bounds(a, b)
            if right == high and "?" in self.said.gaps[min(high, len(self.said.gaps) - 1)]:
                continue
            if key not in BACKGROUNDS and self._of_another(low, left, a, b, right):
                continue
            if key not in HISTORY and self.any_((T.FUTURE, C.IMAGINED, C.FICTION), left, right):
                continue
            yield from self._fact(key, a, b, (low, left, right, high))

    def _of_another(self, low: int, left: int, a: int, b: int, right: int) -> bool:
        """Whether somebody else is named nearer than the client."""
        other = self.last_(C.OTHERS, low, a)
        if other >= 0:
            return not self.any_(PERSON, other + 1, b)
        return self.any_((C.OTHERS,), b, right) and not self.any_(PERSON, left, b)

    def _fact(self, key: Key, a: int, b: int, bounds: tuple[int, int, int, int]) -> Iterator[HealthFact]:
        low, left, right, _ = bounds
        denied = self._denied(a, b, low, right)
        maybe = self.any_((T.MAYBE,), left, right)
        if not isinstance(key, T) or key is T.HEART_TABLETS:
            yield from self._medicine(str(key), a, b, denied, maybe, bounds)
        elif key in CAUTIONS:
            yield from self._caution(CAUTIONS[key], key, denied, maybe, left, right)
        elif denied and key not in PLACES:
            return
        elif key in SEXES:
            yield HealthFact(What.SEX, SEXES[key].value)
        elif key in BACKGROUNDS and self.any_((T.ROOTS,), low, right):
            yield HealthFact(What.BACKGROUND, BACKGROUNDS[key].value, sure=False)
        elif key is T.HEIGHT:
            yield from self._height(left, right)
        elif key is T.BORN:
            years = set(_YEAR.findall(self.text(left, right)))
            if len(years) == 1:
                yield HealthFact(What.BIRTH_YEAR, years.pop())
        elif key in PLACES and not self._denied(a, b, low, b) and (place := self._place(a, b, right)):
            yield HealthFact(What.MOVED, place, sure=key is T.MOVED)
        elif key in UNITS:
            yield from self._units(left, right)

    def _caution(
        self, caution: Caution, key: Key, denied: bool, maybe: bool, left: int, right: int
    ) -> Iterator[HealthFact]:
        childhood = self.any_((T.CHILDHOOD,), left, right)
        if key not in HISTORY:
            if key in EVENTS and (childhood or self.any_((T.LONG_AGO,), left, right)):
                return
            maybe = maybe or childhood
        if key is T.FELL and _YEAR.search(self.text(left, right)):
            maybe = True
        if denied:
            ended = self.any_((T.ANYMORE,), left, right) and key not in ENDS
            yield HealthFact(What.CAUTION, caution.value, Stance.OVER if ended else Stance.DENIED)
            return
        stance = Stance.OVER if key in ENDS else Stance.SO
        yield HealthFact(What.CAUTION, caution.value, stance, not maybe and key not in ASKED, key is T.LOSS)

    def _medicine(
        self, name: str, a: int, b: int, denied: bool, maybe: bool, bounds: tuple[int, int, int, int]
    ) -> Iterator[HealthFact]:
        low, left, right, high = bounds
        stop, take = self.last_(T.STOP, low, a), self.last_(T.TAKE, low, a)
        if stop < 0 and take < 0:
            stop, take = self._first(T.STOP, b, high), self._first(T.TAKE, b, right)
            stopped = stop >= 0
        else:
            stopped = stop >= 0 and take <= stop + NEXT
            stopped = stopped or self._first(T.STOP, b, right) >= 0
        if not denied and self.any_((T.LONG_AGO, T.CHILDHOOD), left, right) and not stopped:
            return
        if stopped and stop >= 0 and self._denied(stop, stop + 1, low, stop + 1):
            return  # "I have not stopped it"
        if not stopped and denied:
            ended = self.any_((T.ANYMORE,), left, right)
            yield HealthFact(What.MEDICINE, self._named(name), Stance.OVER if ended else Stance.DENIED)
            return
        if name == T.HEART_TABLETS:
            if stopped:
                yield HealthFact(What.MEDICINE, "", Stance.OVER, sure=False)
            return
        spoken = take >= 0 or stopped or self.any_((C.MINE, T.ME), left, right)
        spoken = spoken or any(w.isdecimal() for w in self.said.words[left:right]) or right - left > BRIEF
        stance = Stance.OVER if stopped else Stance.SO
        yield HealthFact(What.MEDICINE, name, stance, sure=spoken and not maybe)

    def _named(self, name: str) -> str:
        return "" if name == T.HEART_TABLETS else name

    def _first(self, key: Key, start: int, end: int) -> int:
        return min((a for a, _ in self.at.get(key, ()) if start <= a < end), default=-1)

    def _height(self, left: int, right: int) -> Iterator[HealthFact]:
        """A height in a clause; far from usual, it is asked."""
        assert HEIGHT.understand is not None
        heard = HEIGHT.understand(self.text(left, right), self.words, None)
        if isinstance(heard, Understood) and heard.value in HEIGHT.bounds.possible:
            yield HealthFact(What.STATURE, str(heard.value), sure=heard.value in HEIGHT.bounds.usual)

    def _units(self, left: int, right: int) -> Iterator[HealthFact]:
        until = self._first(T.INSTEAD, left, right)
        end = until if until >= 0 else right
        named = [u for u in UNITS if self.any_((u,), left, end)]
        figures = any(w.isdecimal() for w in self.said.words[left:right])
        if named and not figures and self.any_((T.WISH,), left, right):
            yield HealthFact(What.UNITS, named[0].value)

    def _place(self, a: int, b: int, right: int) -> str:
        """The words behind "moved to"; those inside "nach ... gezogen"."""
        words = self.said.words
        ends = set(self.words.calendar.place_ends) if self.words.calendar is not None else set()
        inside = [i for i in range(a, b - 1) if words[i] == "nach"]
        if inside and words[b - 1].endswith("gezogen"):
            return " ".join(words[inside[0] + 1 : b - 1])
        place: list[str] = []
        for i in range(b, min(b + PLACE, right)):
            if words[i] in ends or words[i].isdecimal() or (i > b and self.said.gaps[i]):
                break
            place.append(words[i])
        return " ".join(place)

    def _denied(self, a: int, b: int, low: int, right: int) -> bool:
        """Whether a "no" reaches it: across a list of such things, but not into a thought of its own."""
        late = self.any_((C.NO, C.NO_AFTER), max(b, right - NEAR_END), right)
        if late and not self.any_(tuple(ABOUT), b, right):
            return True
        loose, apart = 0, False
        for i in range(a - 1, low - 1, -1):
            if apart_here := bool(self.said.gaps[i + 1] and not self._decimal(i + 1)):
                apart = apart or apart_here
            if self.covers((C.NO,), i):
                alone = apart_here and self.parted(i)  # "no, I am pregnant"
                return not alone and not (apart and loose)
            if self.covers((T.SUBJECT, C.CLAUSE, T.MAYBE), i):
                return False
            if not (self.covers(CARRY, i) or self.covers(tuple(ABOUT), i)):
                loose += 1
                if loose > LOOSE or apart:
                    return False
        return False
