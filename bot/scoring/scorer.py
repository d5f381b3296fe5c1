"""Score rows one by one, each person's chronologically; only `running_history` keeps state.

Cells repeat in a long file, so their meaning, the references' results and the doubts about pairs of values are computed
once and cached, in tables of bounded size.
"""

from __future__ import annotations

from collections.abc import Hashable, Mapping
from dataclasses import dataclass, replace
from datetime import UTC, datetime
from decimal import Decimal
from operator import is_

from bot.scoring import problems
from bot.scoring.bounded import cache
from bot.scoring.cells import TakenValue
from bot.scoring.dates import Order
from bot.scoring.derived import MAKES, ONCE_EACH, derive
from bot.scoring.identity import filed_under
from bot.scoring.output import PART_OF_SERIES, OutputCells, reference_cells, value_cell
from bot.scoring.parse_row import NOBODY, Meaning, day_written, instant, understand
from bot.scoring.references import Alike, References, Said
from bot.scoring.running_history import PressureTrack, Track, track
from bot.scoring.tabular import Cells
from bot.scoring.verdicts import Verdicts
from core.client import Profile
from core.judging.assess import Assessment, relative_variance
from core.measures import MEASURES
from core.measures.blood_pressure import DEFAULT_LIMITS, score_series
from core.measures.height import HEIGHT
from core.measures.measure import Measure, MeasureKind, Understood
from core.measures.weight import WEIGHT
from core.understanding.plausibility import doubt, is_jump
from core.watching.flags import NOTHING_AGREED, Code
from core.watching.flags_of_reading import FEWEST_IDENTICAL, flags_of_reading

MEAN = "blood_pressure_mean"  # measure name of a series row
# Flags of a single pressure, not of its series.
_OF_ONE_PRESSURE = frozenset({Code.BP_SEVERE, Code.BP_SEVERE_REPEATED, Code.BP_LOW, Code.IDENTICAL_VALUES})
_MAY_BE_TOO_EQUAL = (MeasureKind.BODY, MeasureKind.FUNCTION)


class ScoredPerson:
    """State of one person."""

    __slots__ = ("kind", "newest", "profile", "tracks", "used")

    def __init__(self, profile: Profile, kind: Alike) -> None:
        self.profile = profile
        self.kind = kind
        self.tracks: dict[str, Track] = {}
        self.newest: dict[str, TakenValue] = {}
        self.used: dict[str, list[TakenValue]] = {}  # parts of the newest derived readings


@dataclass(slots=True)
class Counts:
    """Rows used, unusable, and to check; strangers: people missing from the people file."""

    used: int = 0
    unusable: int = 0
    to_check: int = 0
    strangers: int = 0

    def add(self, other: Counts) -> None:
        """Add another's counts."""
        self.used += other.used
        self.unusable += other.unusable
        self.to_check += other.to_check
        self.strangers += other.strangers


class Scorer:
    """Turns rows into lines, and counts them.

    dates: the order of day and month in the file. limits: whose limits a blood-pressure mean is compared with, a key of
    `core.measures.blood_pressure.BODIES`.
    """

    def __init__(
        self,
        profiles: Mapping[str, Profile],
        counts: Counts | None = None,
        dates: Order | None = None,
        limits: str = DEFAULT_LIMITS,
    ) -> None:
        """profiles: by what a person is filed under."""
        self.dates = dates if dates is not None else Order.DAY_FIRST
        self._profiles = profiles
        self._people: dict[str, ScoredPerson] = {}  # by what they are filed under, and by each spelling
        self._meanings: dict[Cells, Meaning] = {}
        self._references = References()
        self._weights: dict[Hashable, bool] = {}
        self._verdicts = Verdicts()
        self._number = 0
        self._limits = limits
        self.counts = Counts() if counts is None else counts

    def lines(self, row: int, cells: Cells, beyond: bool = False) -> list[OutputCells]:
        """The row's own line, then those of the derived measures it makes possible. Total: never raises for any text.

        row: its number in the file, the header being 1. beyond: it has more cells than the header. Rows of one person
        must be chronological.
        """
        name, taken, what = cells[0], cells[1], cells[2:]
        meaning = self._meanings.get(what) or self._understood(what)
        at = instant(taken, self.dates)
        person = name.strip()
        if isinstance(at, str) or meaning.measure is None or meaning.heard is None or not person or beyond:
            return [self._refused(name, taken, meaning, what, _problem(person, at, meaning, beyond))]
        who = self._people.get(person) or self._meet(person)
        past = who.tracks.get(meaning.key)
        if past is None:
            past = who.tracks[meaning.key] = track(meaning.measure)
        duplicate = past.duplicate(at, meaning.heard, row)
        if duplicate is not None and not (":" not in taken and isinstance(past, PressureTrack)):
            return [self._refused(name, taken, meaning, what, problems.already(duplicate))]
        return self._used(name, taken, at, meaning, meaning.measure, meaning.heard, who, past)

    def _used(
        self,
        name: str,
        taken: str,
        at: datetime,
        meaning: Meaning,
        measure: Measure,
        heard: Understood,
        who: ScoredPerson,
        past: Track,
    ) -> list[OutputCells]:
        self.counts.used += 1
        remark = self._remark(meaning, measure, heard, past, who.profile)
        now = TakenValue(meaning, heard.value, at)
        said = self._references.of(measure, now, who.kind, who.profile)
        run = past.equal_in_a_row(now)
        head = (name, taken, measure.key, meaning.value, meaning.unit, *said.cells)
        if isinstance(past, PressureTrack):
            lines = self._pressure(measure, now, said, run, who, past, head, remark)
        else:
            verdict, cells = past.judged(now, self._verdicts)
            course = past.course(now)
            flags, may_flag = said.flags, past.may_raise_flags(now, who.profile)
            if (
                may_flag
                or course
                or verdict is not None
                or (run >= FEWEST_IDENTICAL and measure.kind in _MAY_BE_TOO_EQUAL)
            ):
                history = past.history(at)
                assessment = Assessment(now.reading(), now.reading(), said.scores, verdict, course=course)
                found = flags_of_reading(measure, assessment, history, who.profile, NOTHING_AGREED, zone=UTC, run=run)
                flags = ";".join([f.code for f in found])
            past.add(now, run)
            lines = [(*head, *cells, flags, remark, meaning.given)]
        who.newest[measure.key] = now
        if measure is HEIGHT:
            who.profile = replace(who.profile, stature=now.value)
        for derived in MAKES[measure.key]:
            self._derive(derived, name, taken, who, lines)
        return lines

    def _pressure(
        self,
        measure: Measure,
        now: TakenValue,
        said: Said,
        run: int,
        who: ScoredPerson,
        past: PressureTrack,
        head: OutputCells,
        remark: str,
    ) -> list[OutputCells]:
        """The line of one pressure, and that of its series once there are enough days."""
        history, reading = past.history(now.taken_at), now.reading()
        past.add(now, run, day_written(head[1], self.dates))
        verdict, cells = past.judged(now, self._verdicts)
        assessment = Assessment(reading, past.mean or reading, said.scores, verdict, (), past.found, past.course(now))
        flags = flags_of_reading(
            measure, assessment, history, who.profile, NOTHING_AGREED, zone=UTC, run=run, limits=self._limits
        )
        own = ";".join(f.code for f in flags if f.code in _OF_ONE_PRESSURE)
        lines: list[OutputCells] = [(*head, *PART_OF_SERIES, own, remark, "")]
        if past.mean is not None:
            of_mean = ";".join(f.code for f in flags if f.code not in _OF_ONE_PRESSURE)
            bands = reference_cells((score_series(past.mean, who.profile, self._limits),))
            mean = value_cell(past.mean.value, past.mean.second, measure.unit)
            lines.append((*head[:2], MEAN, mean, head[4], *bands, *cells, of_mean, "", ""))
        return lines

    def _derive(self, measure: Measure, name: str, taken: str, who: ScoredPerson, lines: list[OutputCells]) -> None:
        newest = who.newest
        for key in measure.derived_from:
            if key not in newest:
                return
        parts = [newest[key] for key in ONCE_EACH[measure.key]]
        if any(map(is_, parts, who.used.get(measure.key, ()))):
            return
        now = derive(measure, newest, who.profile)
        if now is None:
            return
        who.used[measure.key] = parts
        past = who.tracks.get(measure.key)
        if past is None:
            past = who.tracks[measure.key] = track(measure)
        cells = past.judged_by(now, relative_variance(measure, newest, MEASURES))
        past.add(now)
        said = self._references.of(measure, now, who.kind, who.profile)
        # A derived measure raises no flag: it would only repeat its parts.
        value = value_cell(now.value, None, measure.unit)
        lines.append((name, taken, measure.key, value, measure.unit, *said.cells, *cells, "", "", ""))

    # --- what is looked up once

    def _understood(self, what: Cells) -> Meaning:
        self._number += 1
        return cache(self._meanings, what, understand(self._number, *what))

    def _remark(self, meaning: Meaning, measure: Measure, heard: Understood, past: Track, profile: Profile) -> str:
        """What to check in a row that is used."""
        newest = past.newest
        stature = profile.stature if measure is WEIGHT else None
        likely = meaning.likely if stature is None else self._likely(meaning, measure, heard, stature)
        if likely and (newest is None or not is_jump(measure.bounds, heard.value, newest.value)):
            remark = meaning.remark
        else:
            found = doubt(measure, heard, None if newest is None else newest.reading(), profile)
            said = problems.unlikely(measure, found) if found is not None else ""
            remark = "; ".join(filter(None, (said, meaning.remark)))
        if remark:
            self.counts.to_check += 1
        return remark

    def _likely(self, meaning: Meaning, measure: Measure, heard: Understood, stature: Decimal) -> bool:
        """Whether a weight is plausible for somebody of this stature."""
        key = (meaning.number, stature)
        likely = self._weights.get(key)
        if likely is None:
            likely = cache(self._weights, key, doubt(measure, heard, None, Profile(stature=stature)) is None)
        return likely

    def _meet(self, name: str) -> ScoredPerson:
        """Somebody in a spelling that is new."""
        key = filed_under(name)
        who = self._people.get(key)
        if who is None:
            profile = self._profiles.get(key)
            if profile is None:
                self.counts.strangers += 1
                profile = NOBODY
            who = self._people[key] = ScoredPerson(profile, self._references.kind(profile))
        self._people[name] = who
        return who

    # --- rows that cannot be used

    def _refused(self, name: str, taken: str, meaning: Meaning, what: Cells, problem: str) -> OutputCells:
        self.counts.unusable += 1
        return (name, taken, meaning.key, what[1], what[2], "", "", "", "", "", "", "", "", problem, "")


def _problem(person: str, at: datetime | str, meaning: Meaning, beyond: bool) -> str:
    """Everything that is wrong with a row."""
    said = [
        problems.TOO_MANY_CELLS if beyond else "",
        "" if person else problems.NO_PERSON,
        at if isinstance(at, str) else "",
        meaning.problem,
    ]
    return "; ".join(filter(None, said))
