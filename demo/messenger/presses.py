"""Pressed buttons: each a callback query that the bot should answer before it expires."""

from collections.abc import Callable
from dataclasses import dataclass


@dataclass(slots=True)
class Press:
    """One press and, once given, the bot's answer to it."""

    id: str
    person: int
    data: str
    at: int
    answered: bool = False
    text: str = ""
    alert: bool = False


class Presses:
    """Presses by id. `life`: seconds within which a query can be answered."""

    def __init__(self, now: Callable[[], int], life: int = 150) -> None:
        self._now = now
        self._life = life
        self._presses: dict[str, Press] = {}

    def add(self, person: int, data: str) -> Press:
        press = Press(str(7_000_000_000 + len(self._presses)), person, data, self._now())
        self._presses[press.id] = press
        return press

    def answer(self, query_id: str, text: str, alert: bool) -> bool:
        """Record the bot's answer; False if the query is unknown or too old."""
        press = self._presses.get(query_id)
        if press is None or self._now() - press.at >= self._life:
            return False
        press.answered, press.text, press.alert = True, text, alert
        return True

    def of(self, person: int) -> list[Press]:
        return [press for press in self._presses.values() if press.person == person]
