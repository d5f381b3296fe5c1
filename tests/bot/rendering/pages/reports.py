"""The last report of an invented programme."""

from __future__ import annotations

from datetime import date, timedelta

from bot.rendering import Reader, pages
from core.care import Programme
from core.dialogue.client.facts import GoalFact
from core.dialogue.client.report import Report, report
from core.dialogue.client.results import ResultFacts
from tests.bot.rendering.pages.caseloads import ada
from tests.core.dialogue.office import LONDON, NOW, readings

STARTS, ENDED = date(2025, 12, 8), date(2026, 3, 30)


def of_ada(name: str = "Ada", hidden: frozenset[str] = frozenset()) -> Report:
    """Sixteen weeks with something of everything: better, changed, too close to call, counted weekly, a goal."""
    more = (
        *readings("resting_heart_rate", "71", "72", "70", "70", "69"),
        *readings("activity_minutes", "90", "120", "150", "160", "170", "180", days=7),
        *readings("timed_up_and_go", "9.1", "8.9", "9.0"),
    )
    client = ada()
    history = tuple(sorted((*client.history, *more), key=lambda r: r.taken_at))
    return report(
        ResultFacts(history, client.profile, client.plan, client.zone, client.units),
        Programme(STARTS, 16),
        ENDED,
        {STARTS + timedelta(weeks=n): n % 6 != 5 for n in range(17)},
        (GoalFact("waist", "92", ENDED, NOW - timedelta(weeks=12)), GoalFact("weight", "80", ENDED, NOW)),
        client_id=1,
        name=name,
        coach="Rowan",
        hidden=hidden,
    )


def report_page(language: str = "en") -> str:
    return pages.report_page(of_ada(), Reader(language, zone=LONDON)).decode()
