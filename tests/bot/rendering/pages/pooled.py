"""Pages of pooled figures, all invented."""

from __future__ import annotations

from bot.rendering import Reader, pages
from core.dialogue.staff.messages import PracticePage
from core.watching.practice import practice
from tests.bot.rendering.test_cohort_words import REPORT
from tests.core.dialogue.office import LONDON
from tests.core.watching.test_practice import Q1, SIX


def closing_page(language: str = "en") -> str:
    return pages.closing_page(REPORT, Reader(language, zone=LONDON)).decode()


def practice_page(language: str = "en") -> str:
    said = PracticePage(practice(SIX, Q1), Q1.number, Q1.year, "Rowan")
    return pages.practice_page(said, Reader(language, zone=LONDON)).decode()
