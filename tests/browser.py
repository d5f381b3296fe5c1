"""A browser to look at pages with, and an accessibility checker.

The browser is Chromium, headless: the one SAMEHOUR_TESTS_CHROMIUM names, else the system's, else the tests say they
were skipped. With CI set, one that is missing is a failure. On Debian:

    apt-get install -y --no-install-recommends chromium-headless-shell
"""

import os
import shutil
from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Browser, sync_playwright

CHROMIUM = "SAMEHOUR_TESTS_CHROMIUM"
NAMES = ("chromium-headless-shell", "chromium", "chromium-browser", "google-chrome")
PATIENCE = 30_000  # ms until something that does not come is a failure; a busy machine is none
AXE = Path(__file__).parent / "demo" / "rehearsal" / "outside" / "node_modules" / "axe-core" / "axe.min.js"


def chromium() -> str:
    """Return the path of the browser; "" for none."""
    named = os.environ.get(CHROMIUM, "")
    if named:
        return named if Path(named).is_file() else ""
    return next(filter(None, map(shutil.which, NAMES)), "")


def missing(what: str) -> None:
    """Skip, and say why; with CI set, fail."""
    if os.environ.get("CI"):
        pytest.fail(what)
    pytest.skip(what)


@pytest.fixture(scope="module")
def browser() -> Iterator[Browser]:
    path = chromium()
    if not path:
        missing(f"no Chromium here, so the page goes untried in a browser: install one, or name it in {CHROMIUM}")
    with sync_playwright() as playwright:
        opened = playwright.chromium.launch(executable_path=path)
        yield opened
        opened.close()
