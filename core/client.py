"""Facts about the client that reference tables and safety rules need. Any of them may be unknown."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import date
from decimal import Decimal
from enum import StrEnum

CHILDBEARING_UNTIL = 55  # ours: above this age nobody is taken to be pregnant unless they say so


class Sex(StrEnum):
    """As the reference tables use it."""

    FEMALE = "female"
    MALE = "male"


class Background(StrEnum):
    """Family background, asked because some published limits differ by it."""

    WHITE = "white"
    SOUTH_ASIAN = "south_asian"
    CHINESE = "chinese"
    JAPANESE = "japanese"
    OTHER_ASIAN = "other_asian"
    MIDDLE_EASTERN = "middle_eastern"
    BLACK_AFRICAN = "black_african"
    AFRICAN_CARIBBEAN = "african_caribbean"
    SOUTH_CENTRAL_AMERICAN = "south_central_american"
    MIXED_OR_OTHER = "mixed_or_other"


class Caution(StrEnum):
    """Changes how a reading is interpreted, or whether a measure is taken at all."""

    PREGNANCY = "pregnancy"  # or breast-feeding
    HEART_CONDITION = "heart_condition"
    HEART_FAILURE = "heart_failure"
    RATE_LIMITING_MEDICINE = "rate_limiting_medicine"  # slows the pulse, e.g. a beta-blocker
    EATING_WORRIES = "eating_worries"
    VERY_MUSCULAR = "very_muscular"
    WEIGHT_MISLEADS = "weight_misleads"  # swelling, plaster cast, amputation
    ATHLETE = "athlete"  # trained; a slow pulse is expected
    BREATHLESS_AT_REST = "breathless_at_rest"
    RECENT_HEART_EVENT = "recent_heart_event"  # within a month
    FALLS = "falls"  # has fallen in the last year
    KIDNEY_DISEASE = "kidney_disease"  # water may move the weight
    DIABETES = "diabetes"


@dataclass(frozen=True, slots=True)
class Profile:
    """Facts about a client. birth: a date, or a bare year. stature in cm. medicines: generic names of those that slow
    the pulse, as far as they were named; whether there is one at all is a caution. cautions_known: whether they were
    asked for and answered. Until then `cautions` has what was said unasked, and what is not among them may still be so:
    safety goes by `may_have`."""

    sex: Sex | None = None
    birth_year: int | None = None
    birth_date: date | None = None
    stature: Decimal | None = None
    background: Background | None = None
    cautions: frozenset[Caution] = field(default_factory=frozenset)
    medicines: frozenset[str] = field(default_factory=frozenset)
    cautions_known: bool = False

    def may_have(self, caution: Caution, age: int | None) -> bool:
        """Whether `caution` is so, or cannot be ruled out. age: in whole years, None if unknown."""
        if caution in self.cautions:
            return True
        if caution is Caution.PREGNANCY and (self.sex is Sex.MALE or (age is not None and age > CHILDBEARING_UNTIL)):
            return False
        return not self.cautions_known

    def age_on(self, day: date) -> int | None:
        """Age in whole years on `day`. For a bare year, a birthday on 1 July is assumed (ours: off by at most one year,
        half the time not at all)."""
        if self.birth_date is not None:
            before = (day.month, day.day) < (self.birth_date.month, self.birth_date.day)
            return day.year - self.birth_date.year - before
        if self.birth_year is not None:
            return day.year - self.birth_year - (day.month < 7)
        return None
