"""Five chair stands: seconds for five full rises, arms folded on the chest. Lower is better.

Value   seconds to 0.1 s. The clock stops when the body is upright for the fifth time. Other protocols stop at the seat
        after the fifth rise: about a second longer, and not comparable with ours. We stop at the stand because somebody
        alone can then stop the watch upright instead of while sitting down.
Error   SEM 0.9 s (Goldberg 2012).  Matters: 1.7 s (Jones 2013).
Fewer than five, or with the arms: not completed, and no time is stored.
"""

from __future__ import annotations

from decimal import Decimal
from typing import TYPE_CHECKING

from core.client import Profile
from core.measures.cautions import STANDING
from core.measures.classify import age_at
from core.measures.measure import (
    Bounds,
    ImportantDifference,
    Measure,
    MeasureKind,
    MeasurementError,
    Misunderstood,
    NoReference,
    ProfileFact,
    Protocol,
    Score,
    Scores,
    Understood,
    Why,
    never,
)
from core.measures.parsing import duration
from core.measures.score_function_tests import ARMS_USED, in_ages, rounded, split
from core.quantity import Better, Range, Unit
from core.reading import Reading
from core.references import ewgsop2
from core.references import five_chair_stands_bohannon_2006 as bohannon
from core.references import five_chair_stands_falls as falls
from core.references import function_test_change as change

if TYPE_CHECKING:
    from core.language import Lexicon

D = Decimal
FALLS = ("usual_risk", "raised_risk")

_hear_seconds = duration(Unit.SECOND)


def understand(text: str, words: Lexicon, prefer: Unit | None) -> Understood | Misunderstood:
    """Understand seconds; with the arms, or with fewer than five rises, there is no time to store."""
    understood = _hear_seconds(text, words, prefer)
    if isinstance(understood, Understood) and ARMS_USED in understood.notes:
        return Misunderstood(Why.NOT_COMPLETED)
    return understood


def score(reading: Reading, profile: Profile) -> Scores:
    """Compare with the decade's average, two falls cut-offs, and the consensus on low strength."""
    if ARMS_USED in reading.conditions.notes:
        return (NoReference("not_completed", bohannon.SOURCE),)
    seconds = rounded(reading, 1)
    buatois, tiedemann, low = falls.BUATOIS, falls.TIEDEMANN, ewgsop2.SOURCE
    return (
        _average(seconds, age_at(reading, profile)),
        in_ages(reading, profile, falls.BUATOIS_AGES, buatois)
        or split(buatois, falls.BUATOIS_ABOVE, falls.slow_by_buatois(seconds), FALLS),
        in_ages(reading, profile, falls.TIEDEMANN_AGES, tiedemann)
        or split(tiedemann, falls.TIEDEMANN_FROM, falls.slow_by_tiedemann(seconds), FALLS),
        in_ages(reading, profile, ewgsop2.AGES, low)
        or split(
            low,
            ewgsop2.FIVE_STANDS_ABOVE,
            ewgsop2.low_strength_by_five_stands(seconds),
            ("not_low", "low"),
        ),
    )


def _average(seconds: Decimal, age: int | None) -> Score | NoReference:
    if age is None:
        return NoReference("age_not_given", bohannon.SOURCE)
    limit = bohannon.limit(age)
    if limit is None:
        return NoReference("age_outside_table", bohannon.SOURCE)
    return split(bohannon.SOURCE, limit, seconds > limit, ("not_worse_than_average", "worse_than_average"))


FIVE_CHAIR_STANDS = Measure(
    key="five_chair_stands",
    kind=MeasureKind.FUNCTION,
    unit=Unit.SECOND,
    units=(Unit.SECOND,),
    places=1,
    better=Better.LOWER,
    bounds=Bounds(possible=Range(D(3), D(120)), usual=Range(D(5), D(40)), jump=D(6)),
    protocol=Protocol(
        prepare=(
            "chair_without_arms_43_cm",
            "chair_against_wall",
            "shoes_that_do_not_slip",
            "somebody_close",
        ),
        technique=(
            "sit_in_the_middle",
            "feet_flat",
            "arms_crossed",
            "five_full_stands_fast_but_safe",
            "clock_stops_at_fifth_stand",
            "fewer_than_five_is_not_completed",
            "arms_used_is_not_completed",
            "stop_if_unsteady",
        ),
        keep_same=("chair", "footwear", "time_of_day"),
        practice=1,
        helper=True,
        timers=(0,),
    ),
    understand=understand,
    score=score,
    start_visits=2,
    error=MeasurementError(
        source=change.GOLDBERG,
        sem=change.FIVE_STANDS_SEM,
        shared_by_attempts=True,  # how far apart the tries were is not known
        borrowed_from=change.GOLDBERG.population,
    ),
    important=ImportantDifference(source=change.JONES, better=change.FIVE_STANDS_MATTERS),
    must_not=STANDING,
    sources=(bohannon.SOURCE, *falls.SOURCES, ewgsop2.SOURCE, change.GOLDBERG, change.JONES),
    needs=frozenset({ProfileFact.CAUTIONS}),
    alarm=never,
    body=None,
)
