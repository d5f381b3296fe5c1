"""Score rows one after another, each person's in order of time; nothing is kept but what `tracks` keeps.

The same cells come again and again in a long file. So what they mean, what the references say of a value, and
what a doubt says of two values are looked up once and remembered, in tables of a bounded size.
"""

from __future__ import annotations

from collections.abc import Hashable, Mapping
from dataclasses import replace
from datetime import datetime
from operator import is_

from bot.scoring import problems
from bot.scoring.bounded import remember
from bot.scoring.meanings import NOBODY, Meaning, instant, understand
from bot.scoring.output import (
    PART_OF_SERIES,
    Line,
    reference_cells,
    value_cell,
)
from bot.scoring.sheets import Cells
from bot.scoring.tracks import PressureTrack, Track, track
from bot.scoring.verdicts import Verdicts
from core.assess import Assessment, derived_error
from core.client import Profile
from core.doubt import doubt
from core.flags import Code
from core.flags_of_reading import flags_of_reading
from core.measures import MEASURES
from core.measures.height import HEIGHT
from core.measures.shape import Measure, Scores, Understood, no_score
from core.measures.weight import WEIGHT
from core.reading import How, Reading

MEAN = "blood_pressure_mean"  # what the row of a series is called
# Of one pressure, not of its series.
_OF_ONE_PRESSURE = frozenset({Code.BP_SEVERE, Code.BP_SEVERE_REPEATED, Code.BP_LOW, Code.IDENTICAL_VALUES})

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
NEEDS: Mapping[str, frozenset[str]] = {m.key: frozenset(m.derived_from) for m in DERIVED}
ONCE_EACH: Mapping[str, tuple[str, ...]] = {m.key: _once_each(m) for m in DERIVED}


class Person:
    """What is kept of one person."""

    __slots__ = ("kind", "newest", "profile", "tracks", "used")

    def __init__(self, profile: Profile, kind: int) -> None:
        self.profile = profile
        self.kind = kind  # the same for people of whom the references say the same
        self.tracks: dict[str, Track] = {}
        self.newest: dict[str, Reading] = {}
        self.used: dict[str, list[Reading]] = {}  # parts of the newest derived readings


class Scorer:
    """Turns rows into lines. `used`, `unusable` and `to_check` count rows; `strangers` are not in `profiles`."""

    def __init__(self, profiles: Mapping[str, Profile]) -> None:
        self._profiles = profiles
        self._people: dict[str, Person] = {}
        self._kinds: dict[Hashable, int] = {}
        self._meanings: dict[Cells, Meaning] = {}
        self._references: dict[Hashable, tuple[Scores, tuple[str, str]]] = {}
        self._remarks: dict[Hashable, str] = {}
        self._verdicts = Verdicts()
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
        twin = past.twin(at, meaning.heard, row)
        if twin is not None and not (len(taken) == len("2026-03-02") and isinstance(past, PressureTrack)):
            return [self._refused(name, taken, meaning, what, problems.already(twin))]
        return self._used(name, taken, at, meaning, meaning.measure, meaning.heard, who, past)

    def _used(
        self,
        name: str,
        taken: str,
        at: datetime,
        meaning: Meaning,
        measure: Measure,
        heard: Understood,
        who: Person,
        past: Track,
    ) -> list[Line]:
        self.used += 1
        remark = self._remark(meaning, measure, heard, past, who.profile)
        reading = Reading(
            measure.key,
            heard.value,
            at,
            second=heard.second,
            unit=heard.unit,
            conditions=meaning.conditions,
            how=How.IMPORTED,
            attempts=heard.attempts,
            window=heard.window,
        )
        scores, bands = self._scores(meaning, measure, reading, who)
        history, run = past.history(at), past.equal_in_a_row(reading)
        head = (name, taken, measure.key, meaning.value, meaning.unit, *bands)
        if isinstance(past, PressureTrack):
            past.add(reading, run)
            verdict, cells = past.judged(reading, self._verdicts)
            assessment = Assessment(reading, past.mean or reading, scores, verdict, (), past.found)
            flags = flags_of_reading(measure, assessment, history, who.profile, run=run)
            own = ";".join(f.code for f in flags if f.code in _OF_ONE_PRESSURE)
            lines: list[Line] = [(*head, *PART_OF_SERIES, own, remark)]
            if past.mean is not None:
                of_mean = ";".join(f.code for f in flags if f.code not in _OF_ONE_PRESSURE)
                mean_bands = reference_cells(measure.score(past.mean, who.profile))
                mean = value_cell(past.mean.value, past.mean.second, measure.unit)
                lines.append((name, taken, MEAN, mean, meaning.unit, *mean_bands, *cells, of_mean, ""))
        else:
            verdict, cells = past.judged(reading, self._verdicts)
            past.add(reading, run)
            assessment = Assessment(reading, reading, scores, verdict)
            flags = flags_of_reading(measure, assessment, history, who.profile, run=run)
            lines = [(*head, *cells, ";".join([f.code for f in flags]) if flags else "", remark)]
        past.number = meaning.number
        who.newest[measure.key] = reading
        if measure is HEIGHT:
            who.profile = replace(who.profile, stature=reading.value)
        for derived in MAKES[measure.key]:
            self._derive(derived, name, taken, who, lines)
        return lines

    def _derive(self, measure: Measure, name: str, taken: str, who: Person, lines: list[Line]) -> None:
        newest = who.newest
        if measure.derive is None or not newest.keys() >= NEEDS[measure.key]:
            return
        parts = [newest[key] for key in ONCE_EACH[measure.key]]
        if any(map(is_, parts, who.used.get(measure.key, ()))):
            return
        reading = measure.derive(newest, who.profile)
        if reading is None:
            return
        who.used[measure.key] = parts
        past = who.tracks.get(measure.key)
        if past is None:
            past = who.tracks[measure.key] = track(measure)
        _, cells = past.judged_with(reading, derived_error(measure, newest, MEASURES))
        past.add(reading)
        bands = reference_cells(measure.score(reading, who.profile))
        # A derived measure raises no flag: it would only repeat what its parts say.
        value = value_cell(reading.value, None, measure.unit)
        lines.append((name, taken, measure.key, value, measure.unit, *bands, *cells, "", ""))

    # --- what is looked up once

    def _meaning(self, what: Cells) -> Meaning:
        found = self._meanings.get(what)
        if found is None:
            self._number += 1
            found = remember(self._meanings, what, understand(self._number, *what))
        return found

    def _scores(
        self, meaning: Meaning, measure: Measure, reading: Reading, who: Person
    ) -> tuple[Scores, tuple[str, str]]:
        """What the references say; nothing they ask of a person is left out of the key."""
        if measure.score is no_score:
            return (), ("", "")
        key = (meaning.number, who.kind, who.profile.age_on(reading.taken_at))
        found = self._references.get(key)
        if found is None:
            scores = measure.score(reading, who.profile)
            found = remember(self._references, key, (scores, reference_cells(scores)))
        return found

    def _remark(self, meaning: Meaning, measure: Measure, heard: Understood, past: Track, profile: Profile) -> str:
        """What to check in a row that is used."""
        key = (meaning.number, past.number, profile.stature if measure is WEIGHT else None)
        remark = self._remarks.get(key)
        if remark is None:
            found = doubt(measure, heard, past.newest, profile)
            said = problems.unlikely(measure, found) if found is not None else ""
            remark = remember(self._remarks, key, "; ".join(filter(None, (said, meaning.remark))))
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
