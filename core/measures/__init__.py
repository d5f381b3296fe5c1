"""The registry of measures.

A new measure is a module, a line here and, if it is asked at check-ins, an entry in CHECK_IN_ORDER.
"""

from __future__ import annotations

from core.measures.activity_minutes import ACTIVITY_MINUTES
from core.measures.aerobic_estimate import AEROBIC_ESTIMATE
from core.measures.aerobic_from_pulse import AEROBIC_FROM_PULSE
from core.measures.blood_pressure import BLOOD_PRESSURE
from core.measures.bmi import BMI
from core.measures.chair_stand_30s import CHAIR_STAND_30S
from core.measures.energy import ENERGY
from core.measures.five_chair_stands import FIVE_CHAIR_STANDS
from core.measures.four_stage_balance import FOUR_STAGE_BALANCE
from core.measures.gait_speed_4m import GAIT_SPEED_4M
from core.measures.height import HEIGHT
from core.measures.hip import HIP
from core.measures.measure import Measure
from core.measures.one_leg_stance import ONE_LEG_STANCE
from core.measures.own_question import OWN_QUESTION
from core.measures.pain import PAIN
from core.measures.resting_heart_rate import RESTING_HEART_RATE
from core.measures.session_effort import SESSION_EFFORT
from core.measures.sessions_done import SESSIONS_DONE
from core.measures.six_minute_walk import SIX_MINUTE_WALK
from core.measures.six_minute_walk_difference import SIX_MINUTE_WALK_DIFFERENCE
from core.measures.sleep import SLEEP
from core.measures.strength_days import STRENGTH_DAYS
from core.measures.timed_up_and_go import TIMED_UP_AND_GO
from core.measures.two_minute_step import TWO_MINUTE_STEP
from core.measures.waist import WAIST
from core.measures.waist_to_height_ratio import WAIST_TO_HEIGHT_RATIO
from core.measures.waist_to_hip_ratio import WAIST_TO_HIP_RATIO
from core.measures.walk_mile import WALK_MILE
from core.measures.weight import WEIGHT

_BODY = (
    HEIGHT,
    WEIGHT,
    BMI,
    WAIST,
    HIP,
    WAIST_TO_HIP_RATIO,
    WAIST_TO_HEIGHT_RATIO,
    RESTING_HEART_RATE,
    BLOOD_PRESSURE,
)
_RATINGS = (ENERGY, OWN_QUESTION, PAIN, SLEEP)
_FUNCTION = (
    CHAIR_STAND_30S,
    FIVE_CHAIR_STANDS,
    TIMED_UP_AND_GO,
    FOUR_STAGE_BALANCE,
    ONE_LEG_STANCE,
    GAIT_SPEED_4M,
    TWO_MINUTE_STEP,
    SIX_MINUTE_WALK,
    SIX_MINUTE_WALK_DIFFERENCE,
    WALK_MILE,
    AEROBIC_ESTIMATE,
    AEROBIC_FROM_PULSE,
)
_ACTIVITY = (ACTIVITY_MINUTES, STRENGTH_DAYS, SESSIONS_DONE, SESSION_EFFORT)

MEASURES: dict[str, Measure] = {measure.key: measure for measure in (*_BODY, *_RATINGS, *_FUNCTION, *_ACTIVITY)}

# Asked at every check-in, whatever the plan says.
ALWAYS_ASKED = frozenset(key for key, measure in MEASURES.items() if measure.in_every_check_in)

# Ratings come before any number that could influence them, rest before effort, and effort last.
CHECK_IN_ORDER: tuple[str, ...] = (
    "energy",
    "own_question",
    "pain",
    "sleep",
    "activity_minutes",
    "strength_days",
    "sessions_done",
    "session_effort",
    "resting_heart_rate",
    "blood_pressure",
    "weight",
    "waist",
    "hip",
    "four_stage_balance",
    "one_leg_stance",
    "gait_speed_4m",
    "timed_up_and_go",
    "five_chair_stands",
    "chair_stand_30s",
    "two_minute_step",
    "six_minute_walk",
    "walk_mile",
)
