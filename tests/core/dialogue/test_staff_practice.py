"""/report: a quarter that is over, in words and as a page."""

from __future__ import annotations

from core.dialogue.staff import messages as sm
from tests.core.dialogue.office import Office, card
from tests.core.watching.test_practice import SIX


def test_the_last_quarter_is_told_in_words_and_as_a_page_and_names_no_client() -> None:
    office = Office(card(1, "Ada"))
    office.people = SIX
    office.commands("report")
    said, page = office.heard(sm.PracticeSaid), office.heard(sm.PracticePage)
    assert (said.year, said.number) == (2025, 4) and page.report == said.report and page.coach == "Rowan"
    assert "Ada" not in str(office.said)
    assert office.choices == ["report:2025q4", "report:2025q3", "report:2025q2", "report:2025q1"]


def test_a_button_gives_another_quarter() -> None:
    assert Office(card(1, "Ada")).presses("report:2025q2").heard(sm.PracticeSaid).number == 2


def test_a_quarter_that_is_not_over_is_asked_about() -> None:
    office = Office(card(1, "Ada")).commands("report", "2026q1")
    assert office.kinds == ["WhichQuarter"] and len(office.choices) == 4
