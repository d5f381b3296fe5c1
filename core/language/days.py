"""Recognise days, times of day and places as people write them: "until Monday", "montags um halb acht", "I am in
Lisbon"."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, time, timedelta
from functools import cache

from core.language import ENGLISH, Lexicon, lexicon_of, plain
from core.language.lexicon import Calendar
from core.language.text import bare_words
from core.language.tokens import Token, spellings, tokens

_KINDS = (
    *("today", "tomorrow", "day_after", "next", "in_", "until", "day", "week", "month", "two_days", "two_weeks"),
    *("any_day", "except_"),
    *("two_months", "at", "am", "pm", "noon", "midnight", "hour", "half_past", "half_to", "half_after"),
    *("quarter_past", "quarter_to", "quarter_after", "quarter_less"),
)
READ = 60  # words of a message that are searched
SHORT_STAY = 6  # words of "In Spain this week"


class _Days:
    """A calendar's phrases, including the English ones, ready for lookup."""

    def __init__(self, words: Lexicon) -> None:
        self.phrases: dict[str, set[tuple[str, int]]] = {}
        for lexicon in (words, ENGLISH):
            if lexicon.calendar is None:
                continue
            own: dict[str, set[tuple[str, int]]] = {}
            for kind, value, phrase in _calendar_phrases(lexicon.calendar):
                for spelled in spellings(phrase, lexicon):
                    own.setdefault(" ".join(bare_words(spelled)) or spelled, set()).add((kind, value))
            skip = words.not_english if lexicon is not words else frozenset()
            for spelled, meanings in own.items():
                if spelled not in skip:
                    self.phrases.setdefault(spelled, meanings)

    def read(self, said: Sequence[str]) -> list[_Mark]:
        """Mark each word or phrase; the longest wins."""
        marks: list[_Mark] = []
        i = 0
        while i < len(said):
            for size in range(min(4, len(said) - i), 0, -1):
                phrase = " ".join(said[i : i + size])
                if phrase in self.phrases:
                    marks.append(_Mark(phrase, frozenset(self.phrases[phrase])))
                    i += size
                    break
            else:
                marks.append(_Mark(said[i], frozenset()))
                i += 1
        return marks


@dataclass(frozen=True, slots=True)
class _Mark:
    text: str
    meanings: frozenset[tuple[str, int]]

    def value(self, kind: str) -> int | None:
        return next((v for k, v in sorted(self.meanings) if k == kind), None)

    def has(self, kind: str) -> bool:
        return self.value(kind) is not None


_NOTHING = _Mark("", frozenset())


def _calendar_phrases(calendar: Calendar) -> Iterator[tuple[str, int, str]]:
    for kind in ("weekdays", "months"):
        for value, phrases in enumerate(getattr(calendar, kind)):
            yield from ((kind, value, p) for p in phrases)
    for kind in _KINDS:
        yield from ((kind, 0, p) for p in getattr(calendar, kind))
    yield from (("hours", value, phrase) for phrase, value in calendar.hours.items())


@cache
def _days(words: Lexicon) -> _Days:
    return _Days(words)


def _marks(text: str, words: Lexicon) -> list[_Mark]:
    """The words of a text, with number words converted to digits, marked by the calendar."""
    folded = plain(text)
    said: list[str] = []
    days = _days(words)
    for token in tokens(folded, lexicon_of(words)):
        said += _figures(token, days)
    return days.read(said[:READ])


def _figures(token: Token, days: _Days) -> list[str]:
    if token.clock and len(token.clock) == 2:
        return [f"{int(token.clock[0])}:{int(token.clock[1]):02d}"]
    if token.digits:
        return [token.digits]
    spelled = bare_words(token.text)
    phrase = " ".join(spelled)
    number = token.entry.number
    if number is not None and not token.entry.whole and phrase not in days.phrases and number == int(number):
        return [str(int(number))]
    return spelled or [token.text]


def when(text: str, words: Lexicon, today: date) -> date | None:
    """The day a text names, today or later: "tomorrow", "in two weeks", "until Monday", "3 May", "3.5.".

    A weekday is its next occurrence after today; a date without a year is the next such date. Day before month, unless
    the month is named in words. None if no day is named.
    """
    folded = plain(text)
    if (written := _iso(folded)) is not None:
        return written if written >= today else None
    marks = _marks(text, words)
    for i in range(len(marks)):
        if (day := _relative(marks, i, today)) is not None:
            return day
    if (numeric := _numeric(folded, today)) is not None:
        return numeric
    for mark in marks:
        if (weekday := mark.value("weekdays")) is not None:
            return today + timedelta(days=(weekday - today.weekday() - 1) % 7 + 1)
    return today if any(m.has("today") for m in marks) else None


def stay(text: str, words: Lexicon, today: date) -> date | None:
    """The day until which somebody is away: "until Monday", "for two weeks", "this week"; None if they do not say."""
    until = when(text, words, today)
    if until is not None and until > today:
        return until
    return today + timedelta(weeks=1) if any(mark.has("week") for mark in _marks(text, words)) else None


def away_until(text: str, words: Lexicon, today: date) -> date | None:
    """The day until which a break lasts: as `when`, but "on holiday next week" lasts until that week ends."""
    until = when(text, words, today)
    if until is None or any(mark.has("until") for mark in _marks(text, words)):
        return until
    named = days_between(text, words, today)
    return until if named is None or named[0] <= today else max(until, named[1])


def days_between(text: str, words: Lexicon, today: date) -> tuple[date, date] | None:
    """The first and last day that a text names: "6 to 19 April", "from Monday until Friday", "until 15 March", "next
    week", "for two weeks", "tomorrow". Not before today; None if it names none."""
    said = _apart(plain(text))
    joints = {"-", *(phrase for kind in ("to", "until") for phrase in _phrases_of(kind, words))}
    for i, word in enumerate(said):
        if word in joints and i:
            found = _from_to(" ".join(said[:i]), " ".join(said[i + (word == "-") :]), words, today)
            if found is not None:
                return found
            if when(" ".join(said[:i]), words, today) is not None:
                return None  # it ends before it begins
    marks = _marks(text, words)
    if any(mark.has("week") for mark in marks) and (week := _whole_week(marks, today)) is not None:
        return week
    day = when(text, words, today)
    if day is None:
        return None
    if any(mark.has(kind) for mark in marks for kind in ("week", "month", "two_weeks", "two_months", "two_days")):
        return today, day - timedelta(days=1)
    if any(mark.has("day") for mark in marks):
        return today, max(today, day - timedelta(days=1))
    return (today, day) if any(mark.has("until") for mark in marks) or set(said) & joints else (day, day)


def _apart(folded: str) -> list[str]:
    """The words, with a dash between two days as a word of its own; those of 2026-04-06 stay."""
    return _DASH.sub(" - ", folded).split()


_DASH = re.compile(r"(?<!\d{4})(?<!\d{4}-\d\d)\s*-\s*(?!\d\d-\d\d)(?=\w)|\s+-\s+")


def _phrases_of(kind: str, words: Lexicon) -> Iterator[str]:
    for calendar, lexicon in _calendars(words):
        for phrase in getattr(calendar, kind):
            yield from (spelled for spelled in spellings(phrase, lexicon) if " " not in spelled)


def _from_to(left: str, right: str, words: Lexicon, today: date) -> tuple[date, date] | None:
    begins = when(left, words, today)
    ends = when(right, words, begins or today)
    if ends is None:
        return None
    if begins is None:  # "6 to 19 April" has one month for both
        number = next((int(w.rstrip(".")) for w in reversed(left.split()) if w.rstrip(".").isdecimal()), 0)
        begins = _valid(ends.year, ends.month, number) if 0 < number <= 31 else None
    return (begins, ends) if begins is not None and today <= begins <= ends else None


def _whole_week(marks: Sequence[_Mark], today: date) -> tuple[date, date] | None:
    """ "next week" from Monday to Sunday, "this week" from today; None for a number of weeks."""
    monday = today - timedelta(days=today.weekday())
    if any(mark.text.isdecimal() for mark in marks):
        return None
    if any(mark.has("next") for mark in marks):
        return monday + timedelta(days=7), monday + timedelta(days=13)
    return None if any(mark.has("in_") for mark in marks) else (today, monday + timedelta(days=6))


def day_of_week(text: str, words: Lexicon, today: date) -> int | None:
    """The weekday (Monday 0) somebody would like: "Tuesday", "tomorrow", "any day except Tuesday"; None if unclear.

    Of any day, today's weekday, or the first after it that is not excepted.
    """
    marks = _marks(text, words)
    named = [w for mark in marks if (w := mark.value("weekdays")) is not None]
    excepted = any(mark.has("except_") for mark in marks)
    if excepted or (not named and any(mark.has("any_day") for mark in marks)):
        left = [(today + timedelta(days=n)).weekday() for n in range(7)]
        return next((day for day in left if day not in named), None) if named or not excepted else None
    if named:
        return named[0] if len(set(named)) == 1 else None  # "Monday or Tuesday": which?
    said = when(text, words, today)
    return None if said is None or said > today + timedelta(days=7) else said.weekday()


def since(text: str, words: Lexicon, today: date) -> date | None:
    """The day from which somebody wants to look back: "since January", "since 3 May", "the last 3 months". Not after
    today; a month without a day is its first day. None if no day is named.
    """
    marks = _marks(text, words)
    for i, mark in enumerate(marks):
        if (month := mark.value("months")) is not None and len(marks) > 1:
            beside = [m.text.rstrip(".") for m in (*marks[max(0, i - 2) : i], *marks[i + 1 : i + 2])]
            days = [int(t) for t in beside if t.isdecimal() and len(t) <= 2 and 1 <= int(t) <= 31]
            found = _valid(today.year, month + 1, days[0] if days else 1)
            return found if found is None or found <= today else _valid(today.year - 1, month + 1, found.day)
        count = int(mark.text) if mark.text.isdecimal() and len(mark.text) <= 2 else 1
        length = _at(marks, i + 1) if mark.text.isdecimal() else mark
        if length.has("week") or length.has("month"):
            return today - timedelta(days=count * (7 if length.has("week") else 30))
        if (weekday := mark.value("weekdays")) is not None:
            return today - timedelta(days=(today.weekday() - weekday - 1) % 7 + 1)
    return None


def _relative(marks: Sequence[_Mark], i: int, today: date) -> date | None:
    """The day expressed by the words from mark `i` on: "tomorrow", "2 weeks", "next month", "3 May"."""
    mark, before, after = marks[i], _at(marks, i - 1), _at(marks, i + 1)
    if mark.has("day_after") or mark.has("two_days"):
        return today + timedelta(days=2)
    if mark.has("two_weeks"):
        return today + timedelta(weeks=2)
    if mark.has("two_months"):
        return _months_on(today, 2)
    if mark.has("tomorrow") and not (mark.has("am") and any(m.has("weekdays") for m in marks)):
        return today + timedelta(days=1)
    if mark.text.isdecimal() and len(mark.text) < 4:
        return _length(after, int(mark.text), today)
    if mark.has("next") or (mark.has("in_") and not before.text.isdecimal()):
        return _length(after, 1, today)
    if after.has("next"):  # "la semana que viene"
        return _length(mark, 1, today)
    if (month := mark.value("months")) is not None:
        return _of_month(marks, i, month + 1, today)
    return None


def _at(marks: Sequence[_Mark], i: int) -> _Mark:
    return marks[i] if 0 <= i < len(marks) else _NOTHING


def _length(mark: _Mark, count: int, today: date) -> date | None:
    if mark.has("day"):
        return _plus(today, count)
    if mark.has("week"):
        return _plus(today, 7 * count)
    if mark.has("month"):
        return _months_on(today, count)
    return None


def _months_on(today: date, count: int) -> date | None:
    months = today.month - 1 + count
    return _valid(today.year + months // 12, months % 12 + 1, today.day)


def _plus(day: date, days: int) -> date | None:
    return day + timedelta(days=days) if days <= 3660 else None


def _valid(year: int, month: int, day: int) -> date | None:
    """A date, or the last day of the month if it is shorter (31 January plus a month)."""
    if not (1 <= month <= 12 and 1 <= day <= 31 and year <= 9000):
        return None
    while day > 28:
        try:
            return date(year, month, day)
        except ValueError:
            day -= 1
    return date(year, month, day)


def _of_month(marks: Sequence[_Mark], i: int, month: int, today: date) -> date | None:
    """The day and, if given, the year beside a month's name: "3 May", "May 3rd 2027", "3 de mayo".

    A bare month means its first day, but only after a word like "until": "may I" is not a day.
    """
    beside = [m.text.rstrip(".") for m in (*reversed(marks[max(0, i - 3) : i]), *marks[i + 1 : i + 4])]
    days = [int(t) for t in beside if t.isdecimal() and len(t) <= 2 and 1 <= int(t) <= 31]
    days += [int(t[:-2]) for t in beside if t[:-2].isdecimal() and t[-2:] in ("st", "nd", "rd", "th")]
    years = [int(t) for t in beside if t.isdecimal() and len(t) == 4]
    before = _at(marks, i - 1)
    if not days and len(marks) > 1 and not any(before.has(k) for k in ("until", "in_", "next")):
        return None
    day = days[0] if days else 1
    if years:
        return found if (found := _valid(years[0], month, day)) and found >= today else None
    return _coming(month, day, today)


def _coming(month: int, day: int, today: date) -> date | None:
    found = _valid(today.year, month, day)
    if found is not None and found < today:
        found = _valid(today.year + 1, month, day)
    return found


def _iso(folded: str) -> date | None:
    for word in folded.replace(",", " ").split():
        parts = word.strip(".;").split("-")
        if len(parts) == 3 and [len(p) for p in parts] == [4, 2, 2] and all(p.isdecimal() for p in parts):
            try:
                return date(int(parts[0]), int(parts[1]), int(parts[2]))
            except ValueError:
                return None
    return None


def _numeric(folded: str, today: date) -> date | None:
    """ "3.5.", "3/5", "03.05.2027": day before month; the other way round only if that is the only valid date."""
    for word in folded.replace(",", " ").split():
        for mark in "./":
            parts = word.strip(";").rstrip(".").split(mark) if mark == "." else word.strip(";.").split(mark)
            if len(parts) not in (2, 3) or not all(p.isdecimal() for p in parts) or any(len(p) > 4 for p in parts):
                continue
            day, month = int(parts[0]), int(parts[1])
            if month > 12 >= day:
                day, month = month, day
            if not (1 <= month <= 12 and 1 <= day <= 31):
                continue
            if len(parts) == 2:
                return _coming(month, day, today)
            year = int(parts[2]) + (2000 if len(parts[2]) == 2 else 0)
            return found if (found := _valid(year, month, day)) and found >= today else None
    return None


BORN = {  # what makes a number of two digits the year of a birth, not an age
    "en": "born, class of, year of birth, my year is",
    "es": "del, nací, naci, nacido, nacida, soy de, año de nacimiento, en el, quinta del",
    "de": "jahrgang, geboren, geb, baujahr",
    "fr": "né, née, née en, né en, de l'année, naissance, de la classe",
    "pl": "rocznik, rok urodzenia, urodzony, urodzona, urodziłam, urodziłem, ur, roku",
    "ar": "مواليد, من مواليد, ولدت, مولود, مولودة, خلقت, انولدت, ميلادي",
}
AGED = {  # and what makes it an age all the same
    "en": "years old, year old, aged, age, turn, turned",
    "es": "años, edad, cumplí, cumplo",
    "de": "jahre, jahr alt, alter, werde",
    "fr": "ans, âge",
    "pl": "lat, lata, wiek, skończyłam, skończyłem",
    "ar": "عمري, سنين, العمر",
}


def born_in(text: str, words: Lexicon) -> bool:
    """Whether a text of two digits tells a year of birth: "del 58", "rocznik 58", but not "58 años"."""
    said = f" {' '.join(bare_words(plain(text)))} "

    def names(table: Mapping[str, str]) -> bool:
        return any(f" {' '.join(bare_words(plain(p)))} " in said for p in table[words.code].split(","))

    return names(BORN) and not names(AGED)


def weekday_and_time(text: str, words: Lexicon) -> tuple[int | None, time | None]:
    """The weekday (Monday 0) and local time a text names, each None if not given.

    "Tuesday 7:30", "montags um halb acht", "lunes a las 7 y media", "7.30 pm", "noon". A bare hour needs a word that
    marks it ("at 7", "7 pm", "7 Uhr") or a weekday beside it.
    """
    marks = _marks(text, words)
    weekday = next((w for m in marks if (w := m.value("weekdays")) is not None), None)
    return weekday, _time(marks, weekday is not None)


def _time(marks: Sequence[_Mark], loose: bool) -> time | None:
    afternoon = any(m.has("pm") for m in marks)
    morning = any(m.has("am") for m in marks) and not afternoon
    for i, mark in enumerate(marks):
        found = _clock(marks, i, mark, loose or afternoon or morning)
        if found is not None:
            hour, minute = found
            if afternoon and hour < 12:
                hour += 12
            if morning and hour == 12:
                hour = 0
            return time(hour % 24, minute) if 0 <= hour <= 24 and 0 <= minute < 60 else None
    if any(m.has("noon") for m in marks):
        return time(12)
    if any(m.has("midnight") for m in marks):
        return time(0)
    return None


def _clock(marks: Sequence[_Mark], i: int, mark: _Mark, loose: bool) -> tuple[int, int] | None:
    """Hour and minute at mark `i`, before morning or afternoon is applied."""
    before = _at(marks, i - 1)
    rest = marks[i + 1 : i + 4]
    if ":" in mark.text and mark.text.replace(":", "").isdecimal():
        hours, _, minutes = mark.text.partition(":")
        return int(hours), int(minutes)
    if mark.text.replace(".", "", 1).isdecimal() and "." in mark.text.strip("."):
        whole, _, part = mark.text.partition(".")
        return (int(whole), int(part)) if len(part) == 2 and int(whole) < 25 and int(part) < 60 else None
    hour = _hour(mark)
    if hour is None:
        return None
    if before.has("half_to"):
        return (hour - 1) % 24 or 12, 30
    if before.has("half_past"):
        return hour, 30
    if before.has("quarter_past"):
        return hour, 15
    if before.has("quarter_to"):
        return (hour - 1) % 24 or 12, 45
    after = [m for m in rest if not m.has("hour")]
    told = len(after) < len(rest) or before.has("at") or mark.has("hours") or loose
    if not told:
        return None
    if after and after[0].has("half_after"):
        return hour, 30
    if after and after[0].has("quarter_after"):
        return hour, 15
    if after and after[0].has("quarter_less"):
        return (hour - 1) % 24 or 12, 45
    if rest and rest[0].has("hour") and len(rest) > 1 and rest[1].text.isdecimal() and int(rest[1].text) < 60:
        return hour, int(rest[1].text)
    if (
        rest
        and rest[0].text.isdecimal()
        and len(rest[0].text) == 2
        and int(rest[0].text) < 60
        and (before.has("at") or mark.has("hours"))
    ):
        return hour, int(rest[0].text)
    return hour, 0


def _hour(mark: _Mark) -> int | None:
    if (said := mark.value("hours")) is not None:
        return said
    if mark.text.isdecimal() and len(mark.text) <= 2 and int(mark.text) <= 24:
        return int(mark.text)
    return None


# --- places -------------------------------------------------------------------------------------------------------


def place(text: str, words: Lexicon) -> str | None:
    """The place where somebody says they are, as typed: "Lisbon" in "I am in Lisbon until Monday"; else None."""
    typed = text.split()[:READ]
    folded = [" ".join(bare_words(plain(w))) for w in typed]
    for calendar, lexicon in _calendars(words):
        ends = set(_spelled(calendar.place_ends, lexicon))
        for phrase in sorted(_spelled(calendar.place, lexicon), key=len, reverse=True):
            wanted = phrase.split()
            for i in range(len(folded) - len(wanted)):
                if folded[i : i + len(wanted)] == wanted:
                    found = _city(typed[i + len(wanted) :], folded[i + len(wanted) :], ends)
                    if found:
                        return found
    return None


def place_first(text: str, words: Lexicon) -> str | None:
    """The place a short message begins with: "Spain" in "In Spain this week"; written as a name is, with a capital
    where the script has them. None if it does not begin so."""
    typed = text.split()[:SHORT_STAY]
    folded = [" ".join(bare_words(plain(w))) for w in typed]
    if len(typed) < 3 or len(text.split()) > SHORT_STAY or typed[1] != typed[1].capitalize():
        return None
    for calendar, lexicon in _calendars(words):
        heads = {phrase.split()[-1] for phrase in _spelled(calendar.place, lexicon) if " " in phrase}
        if folded[0] in heads:
            return _city(typed[1:], folded[1:], set(_spelled(calendar.place_ends, lexicon)))
    return None


def _calendars(words: Lexicon) -> Iterator[tuple[Calendar, Lexicon]]:
    for lexicon in dict.fromkeys((words, ENGLISH)):
        if lexicon.calendar is not None:
            yield lexicon.calendar, lexicon


def _spelled(phrases: Iterable[str], words: Lexicon) -> Iterator[str]:
    for phrase in phrases:
        for spelled in spellings(phrase, words):
            yield " ".join(bare_words(spelled))


def _city(typed: Sequence[str], folded: Sequence[str], ends: set[str]) -> str | None:
    kept: list[str] = []
    for word, bare in zip(typed, folded, strict=True):
        if not bare or bare in ends or bare[0].isdecimal():
            break
        kept.append(word.strip(",.;:!?()\"'،؛؟"))
        if word[-1] in ".,;:!?)،؛؟" or len(kept) == 4:
            break
    return " ".join(kept) or None
