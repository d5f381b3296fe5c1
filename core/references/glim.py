"""GLIM 2019: weight loss and low body mass index as signs of malnutrition, with stages."""

from __future__ import annotations

from decimal import Decimal

from core.sources import Seen, Source

D = Decimal

SOURCE = Source(
    key="glim",
    cite="Cederholm T and others (2019). GLIM criteria for the diagnosis of malnutrition: a consensus report",
    population="adults; criteria are meant to follow a screening, and with a cause",
    seen=Seen.READ,
    note="Stages were read second hand. Used as a note for the coach, never as a diagnosis.",
)
SOURCES = (SOURCE,)

OLDER_FROM = 70  # "over 70" in the copy read, which would leave 70 itself in neither group
LOW_BMI = {False: (D(20), D(22)), True: (D("18.5"), D(20))}  # general, Asian: under 70, from 70
STAGE_2_BMI = (D("18.5"), D(20))  # under 70, from 70


def loss_stage(percent: Decimal, months: Decimal) -> int:
    """Stage of an unplanned loss: 0 none, 1, 2.

    percent: of the earlier weight, unrounded. months: the period; up to six, the limits are 5 and 10 percent, beyond
    that 10 and 20. A loss of exactly the first limit is stage 0, of exactly the second still stage 1.
    """
    first, second = (D(5), D(10)) if months <= 6 else (D(10), D(20))
    return (percent > first) + (percent > second)


def low_bmi(bmi: Decimal, age: int, *, asian: bool = False) -> bool:
    """Whether a body mass index (kg/m2) is low for the age in whole years."""
    return bmi < LOW_BMI[asian][age >= OLDER_FROM]


def low_bmi_is_stage_2(bmi: Decimal, age: int) -> bool:
    """Whether a low body mass index alone is stage 2."""
    return bmi < STAGE_2_BMI[age >= OLDER_FROM]
