"""Two-minute step: marching on the spot, counting each time the right knee comes up. Higher is better.

Value   right-knee counts. Counting both knees roughly doubles it; another step test of the same name counts
        differently.
No measurement error was found in a text, so a change is shown, never judged.
"""

from __future__ import annotations

from decimal import Decimal

from core.client import Profile
from core.measures.cautions import EFFORT
from core.measures.measure import Bounds, Measure, MeasureKind, NoReference, ProfileFact, Protocol, Score, Scores, never
from core.measures.parsing import count
from core.measures.score_function_tests import AgeAndSex, person, rounded, split
from core.quantity import Better, Range, Unit
from core.reading import Reading
from core.references import two_minute_step_jones_rikli_2002 as jones_rikli

D = Decimal


def score(reading: Reading, profile: Profile) -> Scores:
    """Compare with the middle half of the age group, then with the independence standard."""
    steps = rounded(reading, 0)
    return (
        _range(steps, person(reading, profile, jones_rikli.SOURCE)),
        _standard(steps, person(reading, profile, jones_rikli.STANDARD_SOURCE)),
    )


def _range(steps: Decimal, who: AgeAndSex | NoReference) -> Score | NoReference:
    if isinstance(who, NoReference):
        return who
    row = jones_rikli.row(who.age, who.sex)
    if row is None:
        return NoReference("age_outside_table", jones_rikli.SOURCE)
    rank = (steps >= row.low) + (steps > row.high)
    band = ("below_usual", "usual", "above_usual")[rank]
    return Score(band, jones_rikli.SOURCE, rank, (("low", D(row.low)), ("high", D(row.high))))


def _standard(steps: Decimal, who: AgeAndSex | NoReference) -> Score | NoReference:
    if isinstance(who, NoReference):
        return who
    row, source = jones_rikli.row(who.age, who.sex), jones_rikli.STANDARD_SOURCE
    if row is None:
        return NoReference("age_outside_table", source)
    return split(source, D(row.standard), steps >= row.standard, ("below_standard", "at_standard"))


TWO_MINUTE_STEP = Measure(
    key="two_minute_step",
    kind=MeasureKind.FUNCTION,
    unit=Unit.STEP,
    units=(Unit.STEP,),
    better=Better.HIGHER,
    bounds=Bounds(possible=Range(D(0), D(250)), usual=Range(D(20), D(160)), jump=D(40)),
    protocol=Protocol(
        prepare=(
            "mark_midway_kneecap_and_hip_bone",
            "wall_or_chair_to_touch",
            "usual_shoes",
            "somebody_close",
        ),
        technique=(
            "march_on_the_spot",
            "knee_to_the_mark",
            "count_right_knee_only",
            "slowing_and_resting_allowed",
            "clock_runs_on",
            "touch_for_balance_allowed",
            "stop_at_warning_signs",
        ),
        keep_same=("footwear", "time_of_day"),
        practice=1,
        helper=True,
        timers=(120,),
    ),
    understand=count(Unit.STEP),
    score=score,
    must_not=EFFORT,
    sources=jones_rikli.SOURCES,
    needs=frozenset({ProfileFact.CAUTIONS, ProfileFact.SEX}),
    alarm=never,
    body=None,
)
