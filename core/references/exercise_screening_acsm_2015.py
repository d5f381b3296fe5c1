"""Who is advised to see a doctor before exercising: three facts decide, and no questionnaire.

Read in sources that report the paper: that regular activity, known disease or signs, and the intended intensity decide,
that counting risk factors was dropped, and that lung disease alone no longer refers anybody. The cells of the table and
the definition of regular are from memory; check them before relying on them. No words of any form are used.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from core.client import Caution
from core.sources import Seen, Source

SOURCE = Source(
    key="exercise_screening_acsm_2015",
    cite="Riebe D, Franklin BA, Thompson PD, et al. (2015). Updating ACSM's recommendations for exercise"
    " preparticipation health screening. Med Sci Sports Exerc 47(11):2473-2479.",
    population="adults about to begin, or to step up, exercise",
    seen=Seen.MEMORY,
    doi="10.1249/MSS.0000000000000664",
    note="the cells of the table and the definition of regular are from memory",
)
SIGNS_SOURCE = Source(
    key="exercise_signs_acsm",
    cite="American College of Sports Medicine, major signs or symptoms suggestive of cardiovascular, metabolic or"
    " renal disease (table 2.2 of an older edition of the guidelines; later ones keep the list).",
    population="adults",
    seen=Seen.SECOND_HAND,
    note="without a known heart murmur, which nobody notices at home",
)
SOURCES = (SOURCE, SIGNS_SOURCE)

REGULAR_MINUTES, REGULAR_DAYS, REGULAR_MONTHS = 30, 3, 3  # moderate, a week, for as long as this

# Known heart, kidney or metabolic disease, as far as clients are asked for it.
DISEASE = frozenset(
    {
        Caution.HEART_CONDITION,
        Caution.HEART_FAILURE,
        Caution.RECENT_HEART_EVENT,
        Caution.KIDNEY_DISEASE,
        Caution.DIABETES,
    }
)


class Sign(StrEnum):
    """Signs that call for a doctor whatever else is so, in words for laymen elsewhere."""

    CHEST = "chest"  # pain or tightness in chest, neck, jaw or arm
    BREATH = "breath"  # at rest, with little effort, or lying flat
    DIZZY = "dizzy"  # or fainting
    HEART_RACES = "heart_races"  # palpitations
    ANKLES = "ankles"  # swollen
    LEG_CRAMP = "leg_cramp"  # on walking, gone after a rest
    TIRED = "tired"  # unusually, with everyday things


class Advice(StrEnum):
    FREE = "free"  # no clearance needed: go on, and further step by step
    START_GENTLY = "start_gently"  # no clearance needed: light to moderate, and build up
    CLEAR_FIRST = "clear_first"  # medical clearance before any exercise; afterwards light to moderate
    MODERATE_ONLY = "moderate_only"  # go on moderately; clearance within twelve months before going harder
    STOP_AND_CLEAR = "stop_and_clear"  # stop, and seek clearance


@dataclass(frozen=True, slots=True)
class Row:
    """regular: exercises regularly.  disease: known.  signs: of disease; None for either."""

    regular: bool
    disease: bool | None
    signs: bool
    advice: Advice


TABLE = (
    Row(regular=False, disease=False, signs=False, advice=Advice.START_GENTLY),
    Row(regular=False, disease=True, signs=False, advice=Advice.CLEAR_FIRST),
    Row(regular=False, disease=None, signs=True, advice=Advice.CLEAR_FIRST),
    Row(regular=True, disease=False, signs=False, advice=Advice.FREE),
    Row(regular=True, disease=True, signs=False, advice=Advice.MODERATE_ONLY),
    Row(regular=True, disease=None, signs=True, advice=Advice.STOP_AND_CLEAR),
)


def advice(*, regular: bool, disease: bool, signs: bool) -> Advice:
    """The cell of the table for these three."""
    return next(
        row.advice for row in TABLE if row.regular is regular and row.signs is signs and row.disease in (None, disease)
    )
