"""Five chair stands: times associated with falling more than once. Two papers, two cut-offs; each is reported by
name."""

from __future__ import annotations

from decimal import Decimal

from core.sources import Seen, Source

BUATOIS = Source(
    key="five_chair_stands_buatois_2008",
    cite="Buatois S et al. (2008). Five times sit to stand test is a predictor of recurrent falls in healthy"
    " community-living subjects aged 65 and older. J Am Geriatr Soc 56(8):1575-1577.",
    population="2,735 people of 65 years and over in good health; sensitivity 55 %, specificity 65 %",
    seen=Seen.SECOND_HAND,
    doi="10.1111/j.1532-5415.2008.01777.x",
    note="that the cut itself is not counted as slow is from memory",
)
TIEDEMANN = Source(
    key="five_chair_stands_tiedemann_2008",
    cite="Tiedemann A et al. (2008). The comparative ability of eight functional mobility tests for"
    " predicting falls in community-dwelling older people. Age Ageing 37(4):430-435.",
    population="362 people of 74 to 98 years; those who fell twice or more",
    seen=Seen.MEMORY,
    doi="10.1093/ageing/afn100",
    note="the study was read, the 12 s and its >= are from memory",
)
SOURCES = (BUATOIS, TIEDEMANN)
BUATOIS_AGES, TIEDEMANN_AGES = range(65, 120), range(74, 99)
BUATOIS_ABOVE, TIEDEMANN_FROM = Decimal(15), Decimal(12)  # s


def slow_by_buatois(seconds: Decimal) -> bool:
    """More than 15 s, to 0.1 s."""
    return seconds > BUATOIS_ABOVE


def slow_by_tiedemann(seconds: Decimal) -> bool:
    """12 s or more, to 0.1 s."""
    return seconds >= TIEDEMANN_FROM
