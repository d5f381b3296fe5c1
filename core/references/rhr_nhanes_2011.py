"""Mean resting pulse of US adults by sex: descriptive, not a target. Beats per minute."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal

from core.client import Sex
from core.sources import Seen, Source

D = Decimal

SOURCE = Source(
    key="nhanes_resting_pulse",
    cite="Ostchega Y and others (2011). Resting pulse rate reference data, United States, 1999-2008."
    " National Health Statistics Reports 41",
    population="US residents, 35,302 seated about 4 minutes, without an illness or medicine that changes"
    " the pulse; the rows by sex are of people from 20",
    seen=Seen.READ,
    note="Percentiles by sex and decade were not found and are not used.",
)
SOURCES = (SOURCE,)

YOUNGEST = 20


@dataclass(frozen=True, slots=True)
class Mean:
    """Mean and its standard error."""

    mean: Decimal
    error: Decimal


MEANS: dict[Sex, Mean] = {Sex.MALE: Mean(D(71), D("0.3")), Sex.FEMALE: Mean(D(74), D("0.2"))}
