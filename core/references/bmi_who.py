"""Body mass index of adults, WHO classes. kg/m2; round by D1 first."""

from __future__ import annotations

from decimal import Decimal

from core.references.ladder import Ladder, LadderStep
from core.sources import Seen, Source

D = Decimal

SOURCE = Source(
    key="who_bmi",
    cite="WHO, international classification of adult underweight, overweight and obesity by body mass index"
    " (1995, 2000, 2004)",
    population="adults of both sexes, all ages from 18",
    seen=Seen.READ,
    note="Read in a copy of the WHO database table.",
)
ASIAN_SOURCE = Source(
    key="who_bmi_asian_action_points",
    cite="WHO expert consultation (2004). Appropriate body-mass index for Asian populations. Lancet 363:157-163",
    population="Asian populations",
    seen=Seen.READ,
    note="Points for public-health action; WHO kept 25 and 30 as the international classes.",
)
SOURCES = (SOURCE, ASIAN_SOURCE)

YOUNGEST = 18

CLASSES = Ladder(
    SOURCE,
    "severe_thinness",
    (
        LadderStep(D(16), "moderate_thinness"),
        LadderStep(D(17), "mild_thinness"),
        LadderStep(D("18.5"), "normal"),
        LadderStep(D(25), "pre_obese"),
        LadderStep(D(30), "obese_1"),
        LadderStep(D(35), "obese_2"),
        LadderStep(D(40), "obese_3"),
    ),
)
ASIAN_ACTION_POINTS = (D(23), D("27.5"), D("32.5"), D("37.5"))
