"""A page of a coach: everybody once, or one client."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta
from decimal import Decimal

from core.dialogue.staff import messages as sm
from core.dialogue.staff.facts import CardFact
from core.reading import How
from core.watching.flags import Code, flag
from tests.core.dialogue.office import NOW, Office, card, kept, readings

TALK = kept(1, flag(Code.WANTS_COACH, NOW))
WORSE = kept(2, flag(Code.CHANGE_WORSE_CONFIRMED, NOW, "waist"))
MISSED = kept(3, flag(Code.MISSED_CHECK_INS, NOW, missed=Decimal(3)))


def names(sections: tuple[sm.ClientSection, ...]) -> list[str]:
    return [section.card.name for section in sections]


def several(**of_ada: object) -> tuple[CardFact, ...]:
    return (
        card(1, "Ada", flags=(TALK, WORSE), history=readings("waist", "92", "98"), **of_ada),
        card(2, "Ben", flags=(WORSE,)),
        card(3, "Cyrus", flags=(MISSED,)),
        card(5, "Emil"),
        card(4, "Dora", status="paused", paused_until=date(2026, 4, 20)),
        card(6, "Finn", status="enrolling"),
    )


def test_everybody_in_care_is_on_the_page_once_where_the_digest_names_them_first() -> None:
    page = Office(*several()).commands("digest", "page").heard(sm.CaseloadPage)
    assert names(page.needs) == ["Ada"] and names(page.changes) == ["Ben"] and names(page.quiet) == ["Cyrus"]
    assert names(page.others) == ["Dora", "Emil"]
    assert page.left_out == ()


def test_the_page_is_the_same_by_its_command_and_its_button() -> None:
    office = Office(*several())
    by_digest = office.commands("digest", "Page").heard(sm.CaseloadPage)
    assert office.commands("page").heard(sm.CaseloadPage) == by_digest
    assert office.presses("page").heard(sm.CaseloadPage) == by_digest
    assert office.says("page").heard(sm.CaseloadPage) == by_digest


def test_a_section_has_the_results_all_flags_the_note_and_the_newest_messages() -> None:
    page = Office(*several(note="likes swimming")).commands("page", "Ada").heard(sm.ClientPage)
    assert page.day == date(2026, 3, 30)
    assert [f.id for f in page.section.card.flags] == [1, 2] and page.section.card.note == "likes swimming"
    waist, to_height = page.section.results
    assert to_height.measure == "waist_to_height_ratio" and to_height.bands
    assert (waist.measure, waist.last.amount.value, waist.start and waist.start.amount.value) == ("waist", 98, 92)


def test_the_card_offers_the_page_of_its_client() -> None:
    office = Office(*several()).presses("card:1")
    assert "page:1" in office.choices
    assert office.presses("page:1").heard(sm.ClientPage).section.card.name == "Ada"


def test_of_two_with_one_name_the_coach_is_asked_and_the_button_gives_the_page() -> None:
    office = Office(card(1, "Ada"), card(2, "Ada")).commands("page", "Ada")
    assert office.kinds == ["WhichClient"] and office.choices[:2] == ["page:1", "page:2"]


def test_a_client_of_somebody_else_has_no_page_here() -> None:
    office = Office(*several())
    assert office.presses("page:99").kinds == ["NotYours"]
    assert office.commands("page", "Zoe").kinds == ["NobodyFound"]


def test_a_client_whose_data_cannot_be_loaded_is_named() -> None:
    office = Office(*several())
    office.damaged = {2}
    page = office.commands("page").heard(sm.CaseloadPage)
    assert page.left_out == ("Ben",) and page.changes == ()


def test_a_side_note_is_on_no_page() -> None:
    early = replace(readings("waist", "70")[0], how=How.EARLY, taken_at=NOW - timedelta(hours=1))
    office = Office(card(1, "Ada", history=(*readings("waist", "92", "98"), early)))
    assert "70" not in str(office.commands("page", "Ada").heard(sm.ClientPage).section.results)


def test_without_clients_a_page_says_so() -> None:
    assert Office().commands("page").kinds == ["NoClientsYet"]
