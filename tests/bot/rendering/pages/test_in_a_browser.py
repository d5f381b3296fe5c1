"""The pages in a real browser: on a phone, on a desk and on paper; looked at, and by an accessibility checker."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page

from core.language import LANGUAGES
from tests.bot.rendering.pages.caseloads import caseload, caseload_page, client_page
from tests.bot.rendering.pages.pooled import closing_page, practice_page
from tests.bot.rendering.pages.reports import report_page
from tests.browser import AXE, missing

PAGES = {
    "caseload": caseload_page,
    "client": client_page,
    "report": report_page,
    "closing": closing_page,
    "practice": practice_page,
}
PHONE, DESK = 360, 1200
Open = Callable[..., Page]

# Pairs of texts of one drawing that touch, and texts that leave their drawing.
CROWDED = """() => [...document.querySelectorAll("svg.chart")].flatMap(svg => {
    const edge = svg.getBoundingClientRect();
    const texts = [...svg.querySelectorAll("text")].map(t => [t.textContent, t.getBoundingClientRect()]);
    const out = texts.filter(([, b]) => b.left < edge.left - 1 || b.right > edge.right + 1
        || b.top < edge.top - 1 || b.bottom > edge.bottom + 1).map(([words]) => svg.id + " leaves: " + words);
    for (let i = 0; i < texts.length; i++) for (let j = i + 1; j < texts.length; j++) {
        const [a, b] = [texts[i][1], texts[j][1]];
        const over = Math.min(a.right, b.right) - Math.max(a.left, b.left);
        const deep = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
        if (over > 1 && deep > 3) out.push(texts[i][0] + " touches " + texts[j][0]);
    }
    return out;
})"""
SMALLEST = """() => Math.min(...[...document.querySelectorAll("svg.chart")].map(svg =>
    12 * svg.getBoundingClientRect().width / svg.viewBox.baseVal.width))"""


@pytest.fixture
def opened(browser: Browser, tmp_path: Path) -> Iterator[Open]:
    """Open a page from a file, as somebody who was sent it would. What it asks of anywhere is a fault."""
    contexts = []
    asked: list[str] = []

    def open_(kind: str, language: str, width: int) -> Page:
        file = tmp_path / f"{kind}-{language}.html"
        file.write_text(PAGES[kind](language), encoding="utf-8")
        context = browser.new_context(viewport={"width": width, "height": 800})
        contexts.append(context)
        page = context.new_page()
        page.on("request", lambda request: asked.append(request.url))
        page.on("console", lambda said: asked.append(said.text))
        page.goto(file.as_uri())
        return page

    yield open_
    for context in contexts:
        context.close()
    assert [url for url in asked if not url.startswith(tmp_path.as_uri())] == []


@pytest.mark.parametrize("width", [PHONE, DESK])
@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("kind", PAGES)
def test_nothing_is_wider_than_the_screen_and_no_words_of_a_picture_touch(
    opened: Open, kind: str, language: str, width: int
) -> None:
    page = opened(kind, language, width)
    assert page.evaluate("document.documentElement.scrollWidth") <= width
    assert page.evaluate(CROWDED) == []
    assert page.evaluate(SMALLEST) >= 9.5  # pixels of a 12-unit letter


@pytest.mark.parametrize("width", [PHONE, DESK])
@pytest.mark.parametrize("language", ["en", "ar"])
@pytest.mark.parametrize("kind", PAGES)
def test_an_accessibility_checker_finds_nothing(opened: Open, kind: str, language: str, width: int) -> None:
    if not AXE.is_file():
        missing(f"no accessibility checker here: npm install --prefix {AXE.parents[2]}")
    page = opened(kind, language, width)
    page.evaluate(AXE.read_text(encoding="utf-8"))
    found = page.evaluate("axe.run(document, { resultTypes: ['violations'] })")
    assert [(one["id"], [node["html"][:120] for node in one["nodes"]]) for one in found["violations"]] == []
    assert len(found["passes"]) > 20


@pytest.mark.parametrize("language", ["en", "ar"])
def test_on_paper_everybody_begins_on_a_page_of_their_own(opened: Open, language: str) -> None:
    page = opened("caseload", language, DESK)
    printed = page.pdf(prefer_css_page_size=True)
    assert len(re.findall(rb"/Type\s*/Page\b(?!s)", printed)) >= 1 + len(caseload()) + 1  # the list, all, the sources
    page.emulate_media(media="print")
    breaks = page.locator("article.client").evaluate_all("all => all.map(one => getComputedStyle(one).breakBefore)")
    assert breaks == ["page"] * len(caseload())


def test_a_link_of_the_list_leads_to_the_client(opened: Open) -> None:
    page = opened("caseload", "en", PHONE)
    page.get_by_role("navigation").get_by_role("link", name="Cyrus").click()
    assert page.locator(":target").get_by_role("heading", level=3).text_content() == "Cyrus"
