"""The last report as a picture and as a PDF, in every language, whatever its length."""

from __future__ import annotations

import io
import re
from dataclasses import replace

import pytest
from PIL import Image

from bot.foundation.reader import length
from bot.rendering import Reader, last_report, pages, render
from core.dialogue.client import report_messages as rm
from core.language import LANGUAGES
from tests.bot.rendering.pages.caseloads import outline
from tests.bot.rendering.pages.reports import of_ada
from tests.core.dialogue.office import LONDON


def reader(language: str) -> Reader:
    return Reader(language, zone=LONDON)


def count(pdf: bytes) -> int:
    return len(re.findall(rb"/Type\s*/Page\b(?!s)", pdf))


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_client_gets_a_picture_as_wide_as_a_phone_likes_and_one_page(language: str) -> None:
    drawn = render(rm.LastReportPicture(of_ada()), (), reader(language))
    assert drawn.photo is not None
    wide, high = Image.open(io.BytesIO(drawn.photo)).size
    assert wide == 1080 and 1000 < high < 3000
    assert length(drawn.caption) <= 1024 and "87" in drawn.caption
    printed = render(rm.LastReportPicture(of_ada(), pdf=True), (), reader(language)).document
    assert printed is not None and printed[0] == "report-2026-03-30.pdf" and count(printed[1]) == 1


def test_more_measures_than_a_page_holds_are_still_on_it() -> None:
    whole = of_ada()
    many = replace(whole, results=whole.results * 3)
    assert count(last_report.pdf(many, reader("en"))) == 1
    drawn = render(rm.LastReportPicture(many), (), reader("en"))
    assert length(drawn.caption) <= 1024


def test_the_coach_gets_it_with_bands_errors_and_sources() -> None:
    page = outline(pages.report_page(of_ada(), reader("en")).decode())
    for words in (
        "Changed beyond chance",
        "Cannot be told yet",
        "better (−10 cm, chance up to 5.3 cm)",
        "NG246",
    ):
        assert words in page.text, words
    printed = render(rm.ReportForCoach(of_ada(), pdf=True), (), reader("en")).document
    assert printed is not None and count(printed[1]) >= 3


def test_what_a_client_does_not_wish_to_see_is_not_in_their_words() -> None:
    hidden = of_ada(hidden=frozenset({"weight", "bmi"}))
    said = render(rm.LastReport(hidden), (), reader("en")).text
    assert "Waist" in said and "Weight" not in said and "87.5" not in said


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_words_fit_one_message(language: str) -> None:
    whole = of_ada("A" * 200)
    said = render(rm.LastReport(replace(whole, results=whole.results * 4)), (), reader(language)).text
    assert length(said) <= 4096


def test_a_programme_without_a_result_says_thank_you_all_the_same() -> None:
    said = render(rm.LastReport(replace(of_ada(), results=(), goals=(), keep=())), (), reader("en")).text
    assert "That was your programme" in said and "Thank you" in said


@pytest.mark.parametrize(("strength", "times"), [("possible", "once"), ("twice", "twice")])
def test_what_is_not_confirmed_does_not_sound_as_sure_as_what_is(strength: str, times: str) -> None:
    whole = of_ada()
    found = tuple(
        replace(r, verdict=replace(r.verdict, strength=strength if r.measure == "waist" else "confirmed"))
        if r.verdict
        else r
        for r in whole.results
    )
    said = render(rm.LastReport(replace(whole, results=found)), (), reader("en")).text
    sure, unsure = said.split(f"<b>Looks better, seen {times}</b>")
    assert "chair stands" in sure and "Waist" in unsure and "Waist" not in sure
