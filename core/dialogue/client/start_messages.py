"""Messages about the start of a measure, as values (`core.judging.start`)."""

from __future__ import annotations

from dataclasses import dataclass

from core.quantity import Amount


@dataclass(frozen=True, slots=True)
class StartTaken:
    """A further visit of the start. amount: of the visits together. again: two differ by more than error, so that a
    third is asked for."""

    measure: str
    amount: Amount
    again: bool = False
