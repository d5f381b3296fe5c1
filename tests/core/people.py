"""Invented people and readings, and helpers shared by the scoring tests."""

from __future__ import annotations

from datetime import UTC, datetime
from decimal import Decimal

from core.client import Background, Caution, Profile, Sex
from core.measures.measure import Score, Scores
from core.quantity import Unit, convert
from core.reading import Conditions, Reading

D = Decimal
AT = datetime(2026, 3, 2, 7, 30, tzinfo=UTC)


def someone(
    sex: str | None = None,
    age: int | None = 40,
    background: str | None = None,
    cautions: tuple[Caution, ...] = (),
    stature: str | None = None,
) -> Profile:
    """A person of `age` on the day of `AT`."""
    return Profile(
        sex=None if sex is None else Sex(sex),
        birth_date=None if age is None else AT.date().replace(year=AT.year - age),
        background=None if background is None else Background(background),
        cautions=frozenset(cautions),
        cautions_known=True,
        stature=None if stature is None else Decimal(stature),
    )


def reading(
    measure: str,
    value: Decimal | str | int,
    second: int | None = None,
    notes: tuple[str, ...] = (),
    labels: tuple[tuple[str, str], ...] = (),
    at: datetime = AT,
    window: int | None = None,
) -> Reading:
    return Reading(
        measure=measure,
        value=Decimal(value),
        second=None if second is None else Decimal(second),
        taken_at=at,
        conditions=Conditions(labels=labels, notes=frozenset(notes)),
        window=window,
    )


def by(key: str, scores: Scores) -> str:
    """The band of one reference, or "no: why"."""
    (found,) = (s for s in scores if s.source is not None and s.source.key.startswith(key))
    return found.band if isinstance(found, Score) else f"no: {found.reason}"


def kg(value: str, unit: Unit) -> Decimal:
    return convert(D(value), unit, Unit.KILOGRAM)


def cm(value: str, unit: Unit) -> Decimal:
    return convert(D(value), unit, Unit.CENTIMETRE)
