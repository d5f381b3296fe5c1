"""Aerobic capacity from the ratio of maximal to resting heart rate; validated for well-trained men only."""

from __future__ import annotations

from decimal import Decimal

from core.sources import Seen, Source

SOURCE = Source(
    key="uth_2004",
    cite="Uth N et al. (2004). Estimation of VO2max from the ratio between HRmax and HRrest: the Heart Rate"
    " Ratio Method. Eur J Appl Physiol 91(1):111-115.",
    population="46 well-trained men of 21 to 51 years",
    seen=Seen.READ,
    doi="10.1007/s00421-003-0988-y",
    note="a constant of 15 instead of 15.3 circulates",
)
SOURCES = (SOURCE,)
AGES = range(21, 52)
CONSTANT = Decimal("15.3")  # ml/kg/min
STANDARD_ERROR = Decimal("2.7")  # ml/kg/min, with a measured maximum
STANDARD_ERROR_PREDICTED = Decimal("4.7")  # with a maximum predicted from age


def aerobic_capacity(maximum: Decimal, resting: Decimal) -> Decimal:
    """Estimate in ml/kg/min from two heart rates in bpm; `resting` > 0."""
    return CONSTANT * maximum / resting
