"""Score rows one after another, each person's in order of time; nothing is kept but what `tracks` keeps.

The same cells come again and again in a long file. So what they mean, what the references say of a value, and
what a doubt says of two values are looked up once and remembered, in tables of a bounded size.
"""

from __future__ import annotations

from collections.abc import Hashable, Mapping
from dataclasses import replace
from datetime import datetime
from typing import TypeVar

from bot.scoring import problems
from bot.scoring.meanings import NOBODY, Meaning, instant, understand
from bot.scoring.output import (
    PART_OF_SERIES,
    Judgement,
    Line,
    judgement,
    reference_cells,
    value_cell,
)
from bot.scoring.sheets import Cells
from bot.scoring.tracks import PressureTrack, Track, track
from core.assess import Assessment, derived_error
from core.client import Profile
from core.doubt import doubt
from core.flags import Code
from core.flags_of_reading import flags_of_reading
from core.measures import MEASURES
from core.measures.shape import Measure, Scores
from core.quantity import Unit
from core.reading import How, Reading

MEAN = "blood_pressure_mean"  # what the row of a series is called
REMEMBERED = 20_000  # entries of a table before it starts anew
# Of one pressure, not of its series.
_OF_ONE_PRESSURE = frozenset({Code.BP_SEVERE, Code.BP_SEVERE_REPEATED, Code.BP_LOW, Code.IDENTICAL_VALUES})

T = TypeVar("T")
K = TypeVar("K", bound=Hashable)

DERIVED = tuple(m for m in MEASURES.values() if m.derive is not None)


def _makes(key: str) -> tuple[Measure, ...]:
    """The derived measures that a reading of `key` may make possible; a height may, for any of them."""
    return tuple(m for m in DERIVED if key == "height" or key in m.derived_from)


def _once_each(measure: Measure) -> tuple[str, ...]:
    """The parts of a derived measure that are used only once: a new waist waits for its own hip, a walk may be
    compared with an older weight.
    """
    kind = MEASURES[measure.derived_from[0]].kind
    return tuple(key for key in measure.derived_from if MEASURES[key].kind is kind)


MAKES: Mapping[str, tuple[Measure, ...]] = {key: _makes(key) for key in MEASURES}
ONCE_EACH: Mapping[str, tuple[str, ...]] = {m.key: _once_each(m) for m in DERIVED}


class Person:
    """What is kept of one person."""

    __slots__ = ("kind", "newest", "profile", "tracks", "used")

    def __init__(self, profile: Profile, kind: int) -> None:
        self.profile = profile
        self.kind = kind  # the same for people of whom the references say the same
        self.tracks: dict[str, Track] = {}
        self.newest: dict[str, Reading] = {}
        self.used: dict[str, tuple[Reading, ...]] = {}  # parts of the newest derived readings


class Scorer:
    """Turns rows into lines. `used`, `unusable` and `to_check` count rows; `strangers` are not in `profiles`."""

    def __init__(self, profiles: Mapping[str, Profile]) -> None:
        self._profiles = profiles
        self._people: dict[str, Person] = {}
        self._kinds: dict[Hashable, int] = {}
        self._meanings: dict[Cells, Meaning] = {}
        self._references: dict[Hashable, tuple[Scores, tuple[str, str]]] = {}
        self._remarks: dict[Hashable, str] = {}
        self._number = 0
        self.used = self.unusable = self.to_check = self.strangers = 0

    def lines(self, row: int, cells: Cells, beyond: bool = False) -> list[Line]:
        """The row's own line, then those of the derived measures it makes possible. Total: no text raises.

        row: its number in the file, the header being 1. beyond: it has more cells than the header names.
        Rows of one person must come in order of time.
        """
        name, taken, *what = cells
        meaning = self._meaning(tuple(what))
        at = instant(taken)
        person = name.strip()
        problem = self._unusable(person, at, meaning, beyond)
        if problem or isinstance(at, str) or meaning.measure is None or meaning.heard is None:
            return [self._refused(name, taken, meaning, what, problem)]
        who = self._people.get(person) or self._meet(person)
        past = who.tracks.get(meaning.key)
        if past is None:
            past = who.tracks[meaning.key] = track(meaning.measure)
        if past.newest is not None and past.newest.taken_at == at:
            earlier = past.rows.get((meaning.heard.value, meaning.heard.second))
            if earlier is not None and not (len(taken) == len("2026-03-02") and isinstance(past, PressureTrack)):
                return [self._refused(name, taken, meaning, what, problems.already(earlier))]
        else:
            past.rows.clear()
        past.rows[meaning.heard.value, meaning.heard.second] = row
        return self._used(name, taken, at, meaning, who, past)

    def _used(self, name: str, taken: str, at: datetime, meaning: Meaning, who: Person, past: Track) -> list[Line]:
        measure, heard = meaning.measure, meaning.heard
        assert measure is not None and heard is not None
        self.used += 1
        remark = self._remark(meaning, past.newest, who.profile)
        reading = Reading(
            measure=measure.key,
            value=heard.value,
            taken_at=at,
            second=heard.second,
            unit=heard.unit,
            conditions=meaning.conditions,
            how=How.IMPORTED,
            attempts=heard.attempts,
            window=heard.window,
        )
        scores, bands = self._scores(meaning, reading, who)
        history, run = past.history(at), past.equal_in_a_row(reading)
        lines: list[Line] = []
        if isinstance(past, PressureTrack):
            past.add(reading)
            verdict = past.judged(reading)
            assessment = Assessment(reading, past.mean or reading, scores, verdict, (), past.found)
            found = flags_of_reading(measure, assessment, history, who.profile, run=run)
            flags = ";".join(f.code for f in found if f.code in _OF_ONE_PRESSURE)
            judged = PART_OF_SERIES
            if past.mean is not None:
                of_mean = ";".join(f.code for f in found if f.code not in _OF_ONE_PRESSURE)
                of_mean_bands = reference_cells(measure.score(past.mean, who.profile))
                cells = judgement(verdict, measure.unit)
                lines.append(_line(name, taken, MEAN, past.mean, measure.unit, of_mean_bands, cells, of_mean))
        else:
            verdict = past.judged(reading)
            past.add(reading)
            assessment = Assessment(reading, reading, scores, verdict)
            found = flags_of_reading(measure, assessment, history, who.profile, run=run)
            flags = ";".join([f.code for f in found])
            judged = judgement(verdict, measure.unit)
        lines.insert(0, _line(name, taken, measure.key, reading, measure.unit, bands, judged, flags, remark))
        who.newest[measure.key] = reading
        if measure.key == "height":
            who.profile = replace(who.profile, stature=reading.value)
        for derived in MAKES[measure.key]:
            self._derive(derived, name, taken, who, lines)
        return lines

    def _derive(self, measure: Measure, name: str, taken: str, who: Person, lines: list[Line]) -> None:
        newest = who.newest
        if measure.derive is None or not all(key in newest for key in measure.derived_from):
            return
        parts = tuple(newest[key] for key in ONCE_EACH[measure.key])
        if any(new is old for new, old in zip(parts, who.used.get(measure.key, ()), strict=False)):
            return
        reading = measure.derive(newest, who.profile)
        if reading is None:
            return
        who.used[measure.key] = parts
        past = who.tracks.get(measure.key)
        if past is None:
            past = who.tracks[measure.key] = track(measure)
        verdict = past.judged(reading, derived_error(measure, newest, MEASURES))
        past.add(reading)
        bands = reference_cells(measure.score(reading, who.profile))
        # A derived measure raises no flag: it would only repeat what its parts say.
        cells = judgement(verdict, measure.unit)
        lines.append(_line(name, taken, measure.key, reading, measure.unit, bands, cells))

    # --- what is looked up once

    def _meaning(self, what: Cells) -> Meaning:
        found = self._meanings.get(what)
        if found is None:
            self._number += 1
            found = _remember(self._meanings, what, understand(self._number, *what))
        return found

    def _scores(self, meaning: Meaning, reading: Reading, who: Person) -> tuple[Scores, tuple[str, str]]:
        key = (meaning.number, who.kind, who.profile.age_on(reading.taken_at.date()))
        found = self._references.get(key)
        if found is None and meaning.measure is not None:
            scores = meaning.measure.score(reading, who.profile)
            found = _remember(self._references, key, (scores, reference_cells(scores)))
        return found or ((), ("", ""))

    def _remark(self, meaning: Meaning, last: Reading | None, profile: Profile) -> str:
        """What to check in a row that is used."""
        stature = profile.stature if meaning.key == "weight" else None
        key = (meaning.number, last and last.value, stature)
        remark = self._remarks.get(key)
        if remark is None:
            assert meaning.measure is not None and meaning.heard is not None
            found = doubt(meaning.measure, meaning.heard, last, profile)
            said = [meaning.remark] if meaning.remark else []
            if found is not None:
                said.insert(0, problems.unlikely(meaning.measure, found))
            remark = _remember(self._remarks, key, "; ".join(said))
        if remark:
            self.to_check += 1
        return remark

    def _meet(self, name: str) -> Person:
        profile = self._profiles.get(name)
        if profile is None:
            self.strangers += 1
            profile = NOBODY
        kind = self._kinds.setdefault((profile.sex, profile.background, profile.cautions), len(self._kinds))
        who = self._people[name] = Person(profile, kind)
        return who

    # --- rows that cannot be used

    @staticmethod
    def _unusable(person: str, at: datetime | str, meaning: Meaning, beyond: bool) -> str:
        if person and not beyond and not meaning.problem and not isinstance(at, str):
            return ""
        said = [
            problems.TOO_MANY_CELLS if beyond else "",
            "" if person else problems.NO_PERSON,
            at if isinstance(at, str) else "",
            meaning.problem,
        ]
        return "; ".join(filter(None, said))

    def _refused(self, name: str, taken: str, meaning: Meaning, what: Cells | list[str], problem: str) -> Line:
        self.unusable += 1
        return (name, taken, meaning.key, what[1], what[2], "", "", "", "", "", "", "", "", problem)


def _line(
    name: str,
    taken: str,
    key: str,
    reading: Reading,
    unit: Unit,
    bands: tuple[str, str],
    judged: Judgement,
    flags: str = "",
    problem: str = "",
) -> Line:
    return (name, taken, key, value_cell(reading, unit), unit, *bands, *judged, flags, problem)


def _remember(table: dict[K, T], key: K, value: T) -> T:
    """Keep `value`; a full table starts anew, which costs less than knowing what was used last."""
    if len(table) >= REMEMBERED:
        table.clear()
    table[key] = value
    return value
