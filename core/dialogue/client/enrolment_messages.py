"""What is said while somebody arrives, and while facts are asked for, beyond the questions themselves."""

from __future__ import annotations

from dataclasses import dataclass

from core.quantity import Amount


@dataclass(frozen=True, slots=True)
class FirstValue:
    """The first rating, said back as the start. by_chance: the largest difference that can be just the day."""

    measure: str
    value: Amount
    by_chance: Amount | None


@dataclass(frozen=True, slots=True)
class ConsentUnclear:
    """What was typed is neither yes nor no; nothing of it is kept."""

    coach: str


@dataclass(frozen=True, slots=True)
class EnrolStillUnclear:
    """An answer was not understood for the second time. skippable: whether the question may be left out."""

    skippable: bool


@dataclass(frozen=True, slots=True)
class AllAnswered:
    """There is nothing left to ask about the client."""


@dataclass(frozen=True, slots=True)
class BeforeExercise:
    """What the check before exercise comes to. verdict: of `core.judging.readiness`. signs: one was named. told: the
    coach who has been told, "" for nobody."""

    verdict: str
    signs: bool
    told: str
    number: str
