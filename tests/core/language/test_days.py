"""The days from the first to the last that a text names."""

from __future__ import annotations

from datetime import date

import pytest

from core.language import LANGUAGES
from core.language.days import days_between

TODAY = date(2026, 3, 4)  # a Wednesday


def march(day: int) -> date:
    return date(2026, 3, day)


@pytest.mark.parametrize(
    ("language", "text", "first", "last"),
    [
        ("en", "2026-04-06 to 2026-04-19", date(2026, 4, 6), date(2026, 4, 19)),
        ("en", "6 to 19 April", date(2026, 4, 6), date(2026, 4, 19)),
        ("en", "from 6 April until 19 April, please", date(2026, 4, 6), date(2026, 4, 19)),
        ("en", "6-19 April", date(2026, 4, 6), date(2026, 4, 19)),
        ("en", "from tomorrow until 15 March", march(5), march(15)),
        ("en", "Monday to Friday", march(9), march(13)),
        ("en", "28 March to 3 April", march(28), date(2026, 4, 3)),
        ("en", "until Friday", TODAY, march(6)),
        ("en", "next week", march(9), march(15)),
        ("en", "this week", TODAY, march(8)),
        ("en", "for two weeks", TODAY, march(17)),
        ("en", "3 days", TODAY, march(6)),
        ("en", "tomorrow", march(5), march(5)),
        ("en", "on Friday", march(6), march(6)),
        ("de", "6.4. bis 19.4.", date(2026, 4, 6), date(2026, 4, 19)),
        ("de", "6.–19. April", date(2026, 4, 6), date(2026, 4, 19)),
        ("de", "von Montag bis Freitag", march(9), march(13)),
        ("de", "nächste Woche", march(9), march(15)),
        ("de", "bis Freitag", TODAY, march(6)),
        ("de", "ab morgen bis 15. März", march(5), march(15)),
        ("es", "del 6 al 19 de abril", date(2026, 4, 6), date(2026, 4, 19)),
        ("es", "de lunes a viernes", march(9), march(13)),
        ("es", "hasta el viernes", TODAY, march(6)),
        ("es", "la próxima semana", march(9), march(15)),
        ("fr", "du 6 au 19 avril", date(2026, 4, 6), date(2026, 4, 19)),
        ("fr", "du lundi au vendredi", march(9), march(13)),
        ("fr", "jusqu'à vendredi", TODAY, march(6)),
        ("fr", "la semaine prochaine", march(9), march(15)),
        ("pl", "od 6 do 19 kwietnia", date(2026, 4, 6), date(2026, 4, 19)),
        ("pl", "od poniedziałku do piątku", march(9), march(13)),
        ("pl", "do piątku", TODAY, march(6)),
        ("pl", "w przyszłym tygodniu", march(9), march(15)),
        ("ar", "من 6 إلى 19 أبريل", date(2026, 4, 6), date(2026, 4, 19)),
        ("ar", "من الاثنين إلى الجمعة", march(9), march(13)),
        ("ar", "حتى الجمعة", TODAY, march(6)),
        ("ar", "الأسبوع القادم", march(9), march(15)),
    ],
)
def test_the_first_and_the_last_day_a_text_names(language: str, text: str, first: date, last: date) -> None:
    assert days_between(text, LANGUAGES[language], TODAY) == (first, last)


@pytest.mark.parametrize(
    "text", ["", "always", "to whom", "2020-01-01 to 2020-01-05", "9 to 3", "2026-04-19 to 2026-04-06", "-", "Sam"]
)
def test_no_days_are_made_up(text: str) -> None:
    assert days_between(text, LANGUAGES["en"], TODAY) is None
