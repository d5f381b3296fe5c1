"""Waist of adults, IDF: the limit for central obesity by sex and family background. cm."""

from __future__ import annotations

from decimal import Decimal

from core.client import Background, Sex
from core.references.boundaries import WAIST_RAISED
from core.references.ladder import Ladder, LadderStep
from core.sources import Seen, Source

D = Decimal

CITE = "International Diabetes Federation, worldwide definition of the metabolic syndrome (2005, 2006)"
EUROPID_SOURCE = Source(
    "idf_waist_europid",
    CITE,
    "Europid adults; also advised for Sub-Saharan African, Eastern Mediterranean and Middle Eastern people",
    Seen.READ,
)
SOUTH_ASIAN_SOURCE = Source("idf_waist_south_asian", CITE, "South Asian adults", Seen.READ)
AMERICAN_SOURCE = Source(
    "idf_waist_south_central_american",
    CITE,
    "South and Central American adults",
    Seen.READ,
    note="One copy gives the South Asian limits, which we use, another the Europid ones.",
)
CHINESE_SOURCE = Source("idf_waist_chinese", CITE, "Chinese adults", Seen.READ)
JAPANESE_SOURCE = Source(
    "idf_waist_japanese",
    CITE,
    "Japanese adults",
    Seen.READ,
    note="Every copy read prints 85 and 90 cm (2005); a revision to 90 and 80 cm is known from memory only.",
)
SOURCES = (EUROPID_SOURCE, SOUTH_ASIAN_SOURCE, AMERICAN_SOURCE, CHINESE_SOURCE, JAPANESE_SOURCE)

YOUNGEST = 18


def _limits(source: Source, men: int, women: int) -> dict[Sex, Ladder]:
    return {
        sex: Ladder(source, "below_limit", (LadderStep(D(limit), "central_obesity", WAIST_RAISED),))
        for sex, limit in ((Sex.MALE, men), (Sex.FEMALE, women))
    }


EUROPID = _limits(EUROPID_SOURCE, 94, 80)

# Other Asian, African-Caribbean, mixed or other: not in the table, and we do not guess.
BY_BACKGROUND: dict[Background, dict[Sex, Ladder]] = {
    Background.WHITE: EUROPID,
    Background.MIDDLE_EASTERN: EUROPID,
    Background.BLACK_AFRICAN: EUROPID,
    Background.SOUTH_ASIAN: _limits(SOUTH_ASIAN_SOURCE, 90, 80),
    Background.SOUTH_CENTRAL_AMERICAN: _limits(AMERICAN_SOURCE, 90, 80),
    Background.CHINESE: _limits(CHINESE_SOURCE, 90, 80),
    Background.JAPANESE: _limits(JAPANESE_SOURCE, 85, 90),
}
# Limits that another copy prints differently.
DISPUTED = frozenset({Background.SOUTH_CENTRAL_AMERICAN, Background.JAPANESE})
