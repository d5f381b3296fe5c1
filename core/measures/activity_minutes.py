"""Active minutes of the past week. Higher is better.

Value   minutes in which talking is possible and singing is not (moderate), or all active minutes if not distinguished.
Second  vigorous minutes, if distinguished; each counts as two (US guidelines 2018).
Every minute counts: there is no shortest bout.
Scored  by the 150 to 300 minutes of WHO 2020.
Recalled minutes are not measured: a change is shown, not judged.
"""

from __future__ import annotations

from datetime import timedelta
from decimal import Decimal

from core.client import Profile
from core.measures.classify import adult, age_at, age_notes
from core.measures.measure import Bounds, Measure, MeasureKind, Protocol, Score, Scores, never
from core.measures.parsing import minutes
from core.quantity import Better, Range, Unit, half_up
from core.reading import Reading
from core.references import who_activity_2020 as who

D = Decimal
BANDS = {
    who.ActivityAmount.INACTIVE: "inactive",
    who.ActivityAmount.SOME: "some",
    who.ActivityAmount.MEETS: "meets",
    who.ActivityAmount.MORE: "more",
}


def score(reading: Reading, profile: Profile) -> Scores:
    """Class of the week's moderate minutes, vigorous ones counted twice."""
    counted = half_up(who.equivalent(reading.value, reading.second or D(0)), 0)
    amount = who.amount(counted)
    figures = (("counted", counted), ("low", who.LEAST), ("high", who.MOST))
    age = age_at(reading, profile)
    return (
        adult(age, who.YOUNGEST, who.SOURCE) or Score(BANDS[amount], who.SOURCE, amount.value, figures, age_notes(age)),
    )


ACTIVITY_MINUTES = Measure(
    key="activity_minutes",
    kind=MeasureKind.ACTIVITY,
    unit=Unit.MINUTE,
    units=(Unit.MINUTE,),
    better=Better.HIGHER,
    bounds=Bounds(
        possible=Range(D(0), D(5040)),  # half of all hours of a week
        usual=Range(D(0), D(1260)),  # three hours a day
        second_possible=Range(D(0), D(2520)),
        second_usual=Range(D(0), D(600)),
    ),
    protocol=Protocol(technique=("past_seven_days", "can_talk_cannot_sing", "every_minute_counts")),
    understand=minutes,
    score=score,
    retest=timedelta(days=7),
    optional_second=True,
    sources=who.SOURCES,
    needs=frozenset(),
    alarm=never,
    body=None,
    goal=True,
    quick=(0, 30, 60, 90, 120, 150, 200, 300),
)
