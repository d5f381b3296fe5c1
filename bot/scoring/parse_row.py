"""Parse the cells of a row: a measure, a value in its own unit, conditions; or what is wrong with them.

The conditions column holds words separated by ; or , :

    site=navel              a name for an aspect: a different name next time is a different condition
    different scales        an aspect that differs from last time (also "other", "new")
    arms, half way          in a chair-stand or timed test: the arms helped; the last rise was past half-way
    dizziness, fainting     felt when blood pressure was taken
"""

from __future__ import annotations

import re
from dataclasses import dataclass, replace
from datetime import UTC, date, datetime
from decimal import Decimal

from bot.scoring import problems
from bot.scoring.dates import Order, iso
from bot.scoring.output import as_given, value_cell
from bot.scoring.people import key_of
from core.client import Profile
from core.language import ENGLISH, lexicon_of, plain
from core.language.lexicon import PARTS, UnitPart
from core.language.tokens import tokens
from core.measures import MEASURES
from core.measures.measure import Measure, Misunderstood, Understood
from core.quantity import Unit, convert, convertible
from core.reading import SAME, Conditions
from core.understanding.plausibility import doubt

LONGEST = 200  # characters of a value that are parsed; no reading is longer
_YEARS = range(1900, 2201)
_FIGURES = re.compile(r"[\d\s.,+-]*", re.ASCII)
_DIFFERENT = re.compile(r"(?:different|other|another|new|not the same)\s+(.+)")
_FACTS = {  # word in the column -> note, and its wording beside a count or a time
    "arms": ("arms_used", ", arms used"),
    "arms_used": ("arms_used", ", arms used"),
    "half_way": ("more_than_half_way", ", more than half way"),
    "more_than_half_way": ("more_than_half_way", ", more than half way"),
    "dizziness": ("dizziness", ""),
    "dizzy": ("dizziness", ""),
    "fainting": ("fainting", ""),
    "fainted": ("fainting", ""),
}
_COUNTED = (Unit.REPETITION, Unit.SECOND)
_NAMES = {plain(name): key for key, names in ENGLISH.names.items() for name in names}
NOBODY = Profile(cautions_known=True)  # a sheet says what there is: an empty cell means none


@dataclass(slots=True, eq=False)
class Meaning:
    """The cells measure, value, unit and conditions, parsed once for all rows with the same cells.

    key: of the measure, or its cell as read. heard: None if the row cannot be used; `problem` says why. remark: a
    comment on a row that is used. value, unit: output cells. number: identifies this meaning in caches, from 1; 0 is
    none. given: the value in the unit it was given in, if that is another. second, typed (the unit), attempts, window:
    as in a `Reading`. likely: plausible for anybody (for a weight, of unknown stature).
    """

    number: int
    key: str
    measure: Measure | None = None
    heard: Understood | None = None
    conditions: Conditions = SAME
    problem: str = ""
    remark: str = ""
    value: str = ""
    unit: str = ""
    given: str = ""
    second: Decimal | None = None
    typed: Unit | None = None
    attempts: int = 1
    window: int | None = None
    likely: bool = False


def instant(text: str, dates: Order | None = None) -> datetime | str:
    """The instant in a cell, in UTC if it has no zone; or what is wrong with it.

    dates: the order of day and month in a date that ISO 8601 does not know; None if nobody knows.

    >>> instant("2026-03-02T07:30+01:00")
    datetime.datetime(2026, 3, 2, 6, 30, tzinfo=datetime.timezone.utc)
    """
    try:
        at = datetime.fromisoformat(text)
        zone = at.tzinfo
        if zone is None:
            at = at.replace(tzinfo=UTC)
        elif zone is not UTC:
            at = at.astimezone(UTC)
    except ValueError:
        stripped = text.strip()
        if stripped != text:
            return instant(stripped, dates)
        known = iso(text, dates)
        if known is not None and known != text:
            return instant(known)
        return problems.BAD_TIME if text else problems.NO_TIME
    except OverflowError:
        return problems.ODD_YEAR
    return at if at.year in _YEARS else problems.ODD_YEAR


def day_written(text: str, dates: Order | None = None) -> date:
    """The date of an instant as its cell writes it, which is the local one if the cell gives its zone.

    text, dates: of which `instant` gave an instant.

    >>> day_written("2026-03-02T22:30-05:00")
    datetime.date(2026, 3, 2)
    """
    try:
        return datetime.fromisoformat(text.strip()).date()
    except ValueError:
        return datetime.fromisoformat(iso(text, dates) or text).date()


def understand(number: int, measure: str, value: str, unit: str, conditions: str, given: str = "") -> Meaning:
    """Parse the cells of a row together. Total: any text yields a result, if only a problem.

    given: the cell `as_given`, for the unit in which somebody first gave the value.
    """
    known = _measure(measure)
    value, unit = value.strip()[:LONGEST], unit.strip()[:LONGEST]
    if isinstance(known, str):
        return Meaning(number, measure.strip(), problem=known)
    found = Meaning(number, known.key, known)
    found.conditions, unheard = _conditions(conditions)
    heard = _value(known, value, unit, found.conditions.notes)
    if isinstance(heard, str):
        found.problem = heard
        return found
    found.conditions = Conditions(
        found.conditions.differs, found.conditions.labels, found.conditions.notes | heard.notes
    )
    first = _given(known, given) if given.strip() else None
    if first is not None:
        if not _same_amount(known, first, heard):
            found.problem = problems.TWO_VALUES
            return found
        heard = replace(heard, unit=first.unit)
    refused = doubt(known, heard, None, NOBODY)
    if refused is not None and not possible(known, heard):
        found.problem = problems.impossible(known, refused)
        return found
    if found.conditions == SAME:
        found.conditions = SAME
    found.heard = heard
    found.likely = refused is None
    found.second, found.typed, found.attempts, found.window = heard.second, heard.unit, heard.attempts, heard.window
    found.unit = known.unit
    found.value = value_cell(heard.value, heard.second, known.unit)
    found.given = as_given(heard.value, known.unit, heard.unit)
    found.remark = problems.left_out(unheard) if unheard else ""
    return found


def possible(measure: Measure, heard: Understood) -> bool:
    """Whether a value is within the possible bounds, and the lower of two pressures below the upper."""
    bounds, second = measure.bounds, heard.second
    if not heard.value.is_finite() or heard.value not in bounds.possible:
        return False
    if second is None:
        return True
    if not second.is_finite() or (bounds.second_possible is not None and second not in bounds.second_possible):
        return False
    return measure.unit is not Unit.MILLIMETRE_OF_MERCURY or second < heard.value


def _measure(text: str) -> Measure | str:
    key = key_of(text[:LONGEST])
    if not key:
        return problems.NO_MEASURE
    found = MEASURES.get(key) or MEASURES.get(_NAMES.get(plain(text[:LONGEST]).replace("_", " "), ""))
    if found is None:
        return problems.unknown_measure([k for k, m in MEASURES.items() if m.understand is not None])
    if found.understand is None:
        return problems.worked_out(found)
    return found


def _value(measure: Measure, value: str, unit: str, notes: frozenset[str]) -> Understood | str:
    """The value in the measure's unit; a unit cell beside a value with its own unit must agree with it."""
    if measure.understand is None or not value:
        return problems.empty(measure)
    units = _units(unit)
    if unit and not units:
        return problems.unknown_unit(measure)
    bare = _FIGURES.fullmatch(value) is not None
    said = "".join(sorted({words for note, words in _FACTS.values() if note in notes and measure.unit in _COUNTED}))
    heard = measure.understand(f"{value} {unit}{said}" if bare and unit else value + said, ENGLISH, None)
    if isinstance(heard, Misunderstood):
        return problems.misunderstood(measure, heard)
    if not bare and units and heard.unit not in units:
        if any(isinstance(u, Unit) and convertible(u, measure.unit) for u in units):
            return problems.two_units(heard.unit, unit)
        if not any(_fits(measure, u) for u in units):
            return problems.unknown_unit(measure)
    return heard


def _given(measure: Measure, text: str) -> Understood | None:
    """The cell `as_given`, if it can be read."""
    heard = None if measure.understand is None else measure.understand(text.strip()[:LONGEST], ENGLISH, None)
    return heard if isinstance(heard, Understood) and convertible(heard.unit, measure.unit) else None


def _same_amount(measure: Measure, first: Understood, heard: Understood) -> bool:
    """Whether two readings of a value differ by no more than its rounding: `as_given` has two places at most."""
    return abs(first.value - heard.value) <= convert(Decimal("0.0051"), first.unit, measure.unit)


def _fits(measure: Measure, unit: Unit | UnitPart) -> bool:
    """Whether a unit cell is compatible with the value's own unit: seconds are, for counted beats."""
    if isinstance(unit, UnitPart):
        unit = PARTS[unit][0]
    return convertible(unit, measure.unit) or unit in (Unit.SECOND, Unit.MINUTE, Unit.BEATS_PER_MINUTE)


def _units(text: str) -> frozenset[Unit | UnitPart]:
    return frozenset(u for token in tokens(plain(text), lexicon_of(ENGLISH)) for u in token.entry.units)


def _conditions(text: str) -> tuple[Conditions, list[str]]:
    """The conditions, and unknown words."""
    if not text.strip():
        return SAME, []
    differs, labels, notes, unheard = set(), {}, set(), []
    for part in filter(None, (p.strip() for p in re.split(r"[;,\n]", text))):
        name, sign, label = part.partition("=")
        different = _DIFFERENT.fullmatch(part.casefold())
        if sign and key_of(name) and key_of(label):
            labels[key_of(name)] = key_of(label)
        elif key_of(part) in _FACTS:
            notes.add(_FACTS[key_of(part)][0])
        elif different:
            differs.add(key_of(different[1]))
        else:
            unheard.append(part[:LONGEST])
    return Conditions(frozenset(differs), tuple(sorted(labels.items())), frozenset(notes)), unheard
