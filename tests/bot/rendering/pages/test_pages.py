"""A page holds everything it shows, says it in the reader's language, and asks nothing of anywhere else."""

from __future__ import annotations

import re
from decimal import Decimal
from itertools import pairwise

import pytest

from bot.rendering import Reader
from bot.rendering.pages.svg import figure, steps
from bot.rendering.voice import voice
from core.care import Units
from core.dialogue.client.results import ResultFacts, results
from core.language import LANGUAGES
from core.quantity import Unit
from tests.bot.rendering.pages.caseloads import TYPED, ada, caseload, caseload_page, client_page, outline
from tests.bot.rendering.pages.pooled import closing_page, practice_page
from tests.bot.rendering.pages.reports import report_page
from tests.core.dialogue.office import NOW, card, kept, readings

PAGES = {
    "caseload": caseload_page,
    "client": client_page,
    "report": report_page,
    "closing": closing_page,
    "practice": practice_page,
}


@pytest.mark.parametrize("kind", PAGES)
@pytest.mark.parametrize("language", LANGUAGES)
def test_a_page_leads_nowhere_but_to_itself_and_each_of_its_ids_is_one(kind: str, language: str) -> None:
    found = outline(PAGES[kind](language))
    assert len(found.ids) == len(set(found.ids)) > 2
    assert {address for address in found.asks if not address.startswith("#")} == set()
    assert {address[1:] for address in found.asks} - set(found.ids) == set()
    assert not {"script", "img", "link", "iframe", "object"} & set(found.tags)


@pytest.mark.parametrize("kind", PAGES)
@pytest.mark.parametrize("language", LANGUAGES)
def test_headings_are_in_order_and_the_page_says_its_language_and_direction(kind: str, language: str) -> None:
    found = outline(PAGES[kind](language))
    levels = [level for level, _ in found.headings]
    assert levels[0] == 1 and levels.count(1) == 1
    assert all(later <= earlier + 1 for earlier, later in pairwise(levels))
    assert all(words for _, words in found.headings)
    assert found.root == {"lang": language, "dir": "rtl" if language == "ar" else "ltr"}


def test_the_same_caseload_makes_the_same_bytes() -> None:
    assert caseload_page() == caseload_page()
    assert client_page("ar") == client_page("ar")


def test_everybody_stands_on_the_page_once_where_the_digest_has_them() -> None:
    headings = outline(caseload_page()).headings
    named = [words for level, words in headings if level == 3]
    assert named == ["Ada", "Ben", "Cyrus", "Dora (1971)", "Dora (4)", "⁨ليلى⁩"]
    parts = [words for level, words in headings if level == 2]
    assert parts[4:8] == ["Needs you", "Worth knowing", "Gone quiet", "Everybody else"]


def test_the_list_says_of_whom_to_look_at_why_in_the_digests_words() -> None:
    listed = outline(caseload_page()).text.partition("Everybody else")[0]
    for words in ("Ada very high blood pressure, 186/112", "Ben Waist: worse", "Cyrus check-ins without an answer, 3"):
        assert words in " ".join(listed.split())


def test_what_was_typed_is_shown_as_it_was_and_does_nothing() -> None:
    found = outline(caseload_page())
    assert TYPED in found.text and "script" not in found.tags


def test_a_result_has_its_band_its_error_its_verdict_and_their_sources() -> None:
    text = " ".join(outline(client_page()).text.split())
    for words in (
        "104 cm, 8 December 2025",
        "better (−10 cm, chance up to 5.3 cm)",
        "5.2 cm or more",
        "At this size, health risks are higher.",
        "mean of four weeks until 30 March 2026",
        "mean of the week until 29 March 2026",
        "Blood pressure: A very high blood pressure.",
        "Could you ring me?",
        "NG246",
    ):
        assert words in text, words
    numbers = [int(n) for n in re.findall(r'href="#source-(\d+)"', client_page())]
    cited = re.findall(r'id="source-(\d+)"', client_page())
    assert set(numbers) == set(map(int, cited)) and len(cited) > 8


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_picture_says_what_it_shows_and_stands_beside_its_table(language: str) -> None:
    page = caseload_page(language)
    assert page.count('class="chart"') == page.count("<table>") == page.count("<desc") == page.count("</desc>") > 6
    assert not re.search(r"<(title|desc)[^>]*></", page)


def test_a_picture_and_its_table_have_the_same_readings() -> None:
    client = ada()
    whose = ResultFacts(client.history, client.profile, client.plan, client.zone, client.units)
    drawn = {
        one.measure: figure(one.picture, voice(Reader()), "x") for one in results(whose) if one.picture is not None
    }
    assert [row[1] for row in drawn["weight"].rows] == ["92 kg", "91.2 kg", "90.1 kg", "88 kg", "87.5 kg"]
    assert drawn["weight"].svg.count('class="reading"') == 5 and drawn["energy"].svg.count('class="reading"') == 9
    assert len(drawn["blood_pressure"].rows) == 7
    marks = drawn["blood_pressure"].svg
    assert marks.count('class="reading') + marks.count('class="evening') == 2 * 14


def test_of_a_long_history_the_start_stays_and_the_newest_are_drawn() -> None:
    client = card(1, "Ada", history=readings("weight", *(str(90 - n) for n in range(20))))
    whose = ResultFacts(client.history, client.profile, client.plan, client.zone, client.units)
    drawn = results(whose)[0].picture
    assert drawn is not None
    rows = figure(drawn, voice(Reader()), "x").rows
    assert len(rows) == 14 and rows[0][1] == "90 kg" and rows[1][1] == "83 kg" and rows[-1][1] == "71 kg"


@pytest.mark.parametrize(
    ("low", "high", "whole", "expected"),
    [
        (86.2, 94.1, False, ["88", "90", "92", "94"]),
        (0.71, 0.94, False, ["0.8", "0.9"]),
        (9.0, 10.4, True, ["9", "10"]),
        (75.0, 158.0, True, ["100", "150"]),
    ],
)
def test_an_axis_has_round_numbers(low: float, high: float, whole: bool, expected: list[str]) -> None:
    assert steps(low, high, whole=whole) == tuple(map(Decimal, expected))


def test_nobody_is_left_out_silently() -> None:
    assert len(caseload()) == 6
    page = outline(caseload_page())
    assert all(client.name in page.text for client in caseload())


def test_a_pooled_page_has_each_change_with_its_interval_and_says_what_it_does_not_show() -> None:
    closing, practised = (" ".join(outline(page()).text.split()) for page in (closing_page, practice_page))
    assert "Change: +1.4, 95 % interval" in closing and "so that nobody can be made out" in closing
    assert "Practice of Rowan: Q1 2026" in practised and "Change: −3 cm" in practised
    assert closing_page().count('class="chart"') == 3 and practice_page().count('class="chart"') == 1


def test_a_flag_is_told_in_the_units_of_its_client() -> None:
    from core.watching.flags import Code, flag

    lost = flag(Code.UNPLANNED_LOSS_OVER_5, NOW, "weight", **{"from": Decimal(92), "to": Decimal("86.5")})
    ben = card(2, "Ben", flags=(kept(3, lost),), units=Units(Unit.STONE, Unit.INCH))
    text = outline(caseload_page("en", ben)).text
    assert "14\u00a0st 6.8\u00a0lb" in text and "92" not in text
