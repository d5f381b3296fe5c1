"""The page in a real browser: what somebody who tries it does, sees, and is spared."""

import os
import re
import signal
import subprocess
import sys
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

import pytest
from playwright.sync_api import Locator, Page, expect

from demo.player import play
from demo.rehearsal.practices import practice
from demo.tape import read
from tests.browser import AXE
from tests.demo.rehearsal.conftest import Served

ADA = """\
start 2026-03-02 07:00 Europe/London
coach Rowan
client Ada of Rowan: sex=female born=1958 height=165cm slot="Mon 07:30" measures=weight
"""
ENERGY = "How much energy do you have today"
Window = Callable[..., Page]
Serving = Callable[..., Served]


def column(page: Page, name: str) -> Locator:
    return page.locator(".column", has=page.get_by_role("heading", name=name, exact=True))


def writes(page: Page, name: str, text: str) -> None:
    box = column(page, name).locator(".writes textarea")
    box.fill(text)
    box.press("Enter")
    expect(box).to_have_value("")


def presses(page: Page, name: str, label: str) -> None:
    column(page, name).get_by_role("button", name=label, exact=True).last.click()


def sees(page: Page, name: str, words: str) -> None:
    expect(column(page, name).locator(".entry:not(.own) .words", has_text=words).last).to_be_visible()


def moves(page: Page, to: str) -> None:
    page.locator("#moves").get_by_role("button", name=to).click()


def saved(page: Page) -> str:
    """The tape, as somebody saves it."""
    page.get_by_text("Practice", exact=True).click()
    with page.expect_download() as download:
        page.get_by_role("link", name="Save as tape").click()
    return download.value.path().read_text(encoding="utf-8")


def test_from_the_invitation_to_enrolled_by_clicks_and_the_saved_tape_says_the_same(
    served: Served, window: Window
) -> None:
    page = window(served.url)
    rowan = column(page, "Rowan")
    rowan.get_by_text("Commands", exact=True).click()
    rowan.get_by_role("button", name="/invite").click()
    sees(page, "Rowan", "name")
    writes(page, "Rowan", "Ben")
    rowan.get_by_label("Opened by").fill("Ben")
    rowan.get_by_role("button", name="Open the link").click()
    sees(page, "Ben", "not a doctor")
    presses(page, "Ben", "Yes, I agree")
    sees(page, "Ben", "year were you born")
    writes(page, "Ben", "1962")
    for question, answer in (("How much energy", "7"), ("Which day", "Monday"), ("What time", "07:30")):
        sees(page, "Ben", question)
        presses(page, "Ben", answer)
    sees(page, "Ben", "Where do you live")
    writes(page, "Ben", "Leeds")
    sees(page, "Ben", "All set")
    expect(column(page, "Ben").locator(".name")).to_contain_text("client, active")
    with ThreadPoolExecutor(1) as elsewhere:  # this thread's event loop is the browser's
        again = elsewhere.submit(play, read(saved(page))).result()
    assert again.failures == []
    assert again.text == served.stage.transcript
    assert "Ben presses [Monday]" in again.text


def test_the_next_message_lands_on_its_instant_and_a_reading_is_edited(serving: Serving, window: Window) -> None:
    page = window(serving(ADA).url)
    expect(page.locator("#moves")).to_contain_text("due Mon 2 Mar 2026, 07:30")
    moves(page, "Next message")
    expect(page.locator("#now")).to_have_text("Mon 2 Mar 2026, 07:30")
    sees(page, "Ada", ENERGY)
    expect(column(page, "Ada").locator(".entry:not(.own) time").last).to_have_text("07:30")
    presses(page, "Ada", "7")
    sees(page, "Ada", "Energy: 7 out of 10")
    writes(page, "Ada", "82.4 kg")
    sees(page, "Ada", "82.4 kg")
    column(page, "Ada").locator(".entry.own").last.get_by_role("button", name="Edit").click()
    box = column(page, "Ada").locator(".writes textarea")
    expect(box).to_have_value("82.4 kg")
    box.fill("82.6 kg")
    box.press("Enter")
    sees(page, "Ada", "82.6 kg")
    expect(column(page, "Ada").locator(".entry.own").last).to_contain_text("edited")


def test_four_weeks_later_the_weight_is_asked_again_and_not_before(serving: Serving, window: Window) -> None:
    page = window(serving(ADA + "at 2026-03-02 07:30\nAda: 7\nAda: 82.4 kg\n").url)
    sees(page, "Ada", "Next check-in: Monday, 9 March")
    moves(page, "Next Monday")
    expect(page.locator("#now")).to_have_text("Mon 9 Mar 2026, 07:30")
    keyboards = column(page, "Ada").get_by_role("button", name="6", exact=True)
    expect(keyboards).to_have_count(3)  # the new one is drawn: those of the start and of last week are over
    presses(page, "Ada", "6")
    sees(page, "Ada", "Next check-in: Monday, 16 March")
    writes(page, "Ada", "81.9 kg")
    expect(column(page, "Ada").locator(".entry:not(.own)").last).not_to_contain_text("81.9")
    for drawn, day in enumerate(("16", "23"), start=4):
        moves(page, "Next Monday")
        expect(page.locator("#now")).to_have_text(f"Mon {day} Mar 2026, 07:30")
        expect(keyboards).to_have_count(drawn)
        presses(page, "Ada", "6")
    moves(page, "Next Monday")
    expect(keyboards).to_have_count(6)
    presses(page, "Ada", "7")
    sees(page, "Ada", "What is your weight today?")


def test_an_old_button_is_answered_too(serving: Serving, window: Window) -> None:
    page = window(serving(ADA + "at 2026-03-02 07:30\nAda: 7\nAda: 82.4 kg\n").url)
    moves(page, "Next Monday")
    sees(page, "Ada", ENERGY)
    old = column(page, "Ada").get_by_role("button", name="Where is this from?").first
    before = column(page, "Ada").locator(".entry").count()
    old.click()
    expect(column(page, "Ada").locator(".entry")).not_to_have_count(before)


def test_two_windows_act_at_once_and_both_show_everything(serving: Serving, window: Window) -> None:
    served = serving(ADA)
    ada = window(f"{served.url}?only={served.stage.people['Ada'].key}")
    rowan = window(f"{served.url}?only={served.stage.people['Rowan'].key}")
    expect(ada.locator(".column")).to_have_count(1)
    both = window(served.url)
    act = """async ([who, texts]) => Promise.all(texts.map((text) => fetch("/act/say", {
        method: "POST", body: new URLSearchParams({ person: who, text }) }).then((answer) => answer.status)))"""
    statuses = []
    for page, name, words in ((ada, "Ada", "hello"), (rowan, "Rowan", "/invite Guest")):
        statuses += page.evaluate(act, [served.stage.people[name].key, [f"{words}{n}" for n in range(4)]])
    assert statuses == [204] * 8
    for page in (ada, both):
        expect(column(page, "Ada").locator(".entry.own")).to_have_count(len(typed(served, "Ada")))
        expect(column(page, "Ada").locator(".words", has_text="hello3").first).to_be_visible()
    sees(rowan, "Rowan", "Guest3")
    sees(both, "Rowan", "Guest3")


def typed(served: Served, name: str) -> list[str]:
    room = served.stage.player.messenger.world.chats[served.stage.people[name].chat]
    return [m.text for m in room.messages.values() if m.sender is not None]


def test_an_urgent_flag_reaches_the_coach_without_a_reload(serving: Serving, window: Window) -> None:
    served = serving(ADA)
    rowan = window(f"{served.url}?only={served.stage.people['Rowan'].key}")
    ada = window(f"{served.url}?only={served.stage.people['Ada'].key}")
    rowan.evaluate("window.loadedOnce = true")
    moves(ada, "Next message")
    writes(ada, "Ada", "I have chest pain")
    sees(ada, "Ada", "999")
    sees(rowan, "Rowan", "Ada")
    expect(column(rowan, "Rowan").locator(".entry").last).to_contain_text("chest pain", ignore_case=True)
    assert rowan.evaluate("window.loadedOnce")


def test_markup_that_somebody_types_stays_text(served: Served, window: Window) -> None:
    page = window(served.url)
    nasty = "<img src=x onerror=\"document.title='gone'\"><b>bold</b> &amp; </textarea><script>alert(1)</script>"
    writes(page, "Rowan", nasty)
    expect(column(page, "Rowan").locator(".entry.own .words").last).to_have_text(nasty)
    writes(page, "Rowan", "/invite <i>Ben</i>")
    sees(page, "Rowan", "<i>Ben</i>")
    assert column(page, "Rowan").locator(".words img, .words script, .words i").count() == 0
    assert "Rehearsal" in page.title()


def test_arabic_runs_from_right_to_left_and_the_rest_of_the_page_does_not(serving: Serving, window: Window) -> None:
    page = window(serving(practice("empty", "ar")).url)
    log = column(page, "Rowan").locator(".log")
    assert log.evaluate("log => getComputedStyle(log).direction") == "rtl"
    assert page.locator("#top").evaluate("top => getComputedStyle(top).direction") == "ltr"
    words = column(page, "Rowan").locator(".entry:not(.own) .words", has_text="/caseload").first
    expect(words).to_contain_text(re.compile("[\u0600-\u06ff]"))
    flush = words.evaluate("""words => {
        const range = document.createRange(), ends = new Map();
        range.selectNodeContents(words);
        for (const piece of range.getClientRects()) {
            const line = Math.round(piece.bottom);
            if (piece.width > 1) ends.set(line, Math.max(piece.right, ends.get(line) ?? 0));
        }
        const edge = words.getBoundingClientRect().right;
        return [...ends.values()].map((end) => Math.round(edge - end));
    }""")
    assert len(flush) > 3
    assert max(flush) <= 2


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_a_phone_shows_one_person_without_scrolling_sideways_and_with_room_for_a_finger(
    serving: Serving, window: Window, scheme: str
) -> None:
    page = window(serving(practice("last_day", "en")).url, width=390, height=844, scheme=scheme)
    expect(page.locator(".column:visible")).to_have_count(1)
    expect(page.locator("[data-shows]")).to_have_count(8)
    page.get_by_role("button", name="Ada", exact=True).click()
    expect(column(page, "Ada")).to_be_visible()
    expect(page.locator(".column:visible")).to_have_count(1)
    for panel in ("Practice", "New person", "New group", "Faults"):
        page.get_by_text(panel, exact=True).click()
        assert page.evaluate("document.documentElement.scrollWidth") <= 390
        assert small(page) == []
    page.keyboard.press("Escape")
    for name in ("Ada", "Rowan", "Walkers"):
        page.get_by_role("button", name=name, exact=True).click()
        for summary in column(page, name).locator(".extras summary").all():
            summary.click()
        assert page.evaluate("document.documentElement.scrollWidth") <= 390
        assert column(page, name).locator(".log").evaluate("log => log.scrollWidth - log.clientWidth") == 0
        assert small(page) == []


def small(page: Page) -> list[str]:
    """What can be pressed and is smaller than 44 by 44."""
    found: list[str] = (
        page.evaluate("""() => [...document.querySelectorAll("button, a, summary, select, input, textarea")]
        .filter((one) => one.checkVisibility())
        .map((one) => one.type === "checkbox" ? one.closest("label") : one)
        .filter((one) => { const box = one.getBoundingClientRect(); return box.width < 44 || box.height < 43.9; })
        .map((one) => one.outerHTML.slice(0, 90))""")
    )
    return found


def test_everything_works_from_the_keyboard(serving: Serving, window: Window) -> None:
    page = window(serving(ADA).url)
    reach(page, "#by-next")
    page.keyboard.press("Enter")
    sees(page, "Ada", ENERGY)
    expect(page.locator("#by-next")).to_be_focused()
    reach(page, f"#column-{key(page, 'Ada')} .entry:last-child .buttons button")
    for _ in range(7):
        page.keyboard.press("Tab")
    expect(page.locator(":focus")).to_have_text("7")
    page.keyboard.press("Space")
    sees(page, "Ada", "What is your weight today?")
    reach(page, f"#column-{key(page, 'Ada')} .entry:last-child .buttons button")
    expect(page.locator(":focus")).to_have_text("How do I measure?")
    reach(page, f"#text-{key(page, 'Ada')}")
    page.keyboard.type("82.4 kg")
    page.keyboard.press("Enter")
    sees(page, "Ada", "82.4 kg")
    expect(page.locator(f"#text-{key(page, 'Ada')}")).to_be_focused()
    reach(page, "#faults > summary", back=True)
    page.keyboard.press("Enter")
    expect(page.locator("#bot-stops")).to_be_visible()
    page.keyboard.press("Escape")
    expect(page.locator("#faults > summary")).to_be_focused()
    expect(page.locator("#bot-stops")).to_be_hidden()


def key(page: Page, name: str) -> str:
    return str(column(page, name).get_attribute("data-key"))


def reach(page: Page, selector: str, *, back: bool = False) -> None:
    """Go there with the tab key alone."""
    for _ in range(300):
        if page.evaluate("selector => document.activeElement.matches(selector)", selector):
            return
        page.keyboard.press("Shift+Tab" if back else "Tab")
    raise AssertionError(f"the tab key never reaches {selector}")


def test_drafts_and_focus_outlive_what_arrives_and_a_reload(serving: Serving, window: Window) -> None:
    served = serving(ADA)
    page, other = window(served.url), window(served.url)
    box = page.locator(f"#text-{key(page, 'Ada')}")
    box.fill("half a sent")
    box.press("End")
    moves(other, "Next message")
    sees(page, "Ada", ENERGY)
    expect(box).to_be_focused()
    page.keyboard.type("ence")
    expect(box).to_have_value("half a sentence")
    page.reload()
    expect(box).to_have_value("half a sentence")
    expect(box).to_be_focused()
    log = column(page, "Ada").locator(".log")
    assert log.evaluate("log => log.scrollHeight - log.scrollTop - log.clientHeight") < 2


def test_what_arrives_is_announced_and_nobody_is_thrown_back_who_reads_further_up(
    serving: Serving, window: Window
) -> None:
    page = window(serving(ADA + "Ada: /help\nAda: /settings\nAda: /progress\nAda: /help\n").url, height=600)
    log = column(page, "Ada").get_by_role("log", name="What Ada sees")
    log.evaluate("log => { log.scrollTop = 0; log.dispatchEvent(new Event('scroll')); }")
    moves(page, "Next message")
    sees(page, "Ada", ENERGY)
    assert log.evaluate("log => log.scrollTop") == 0
    writes(page, "Ada", "7")
    sees(page, "Ada", "Energy: 7")
    assert log.evaluate("log => log.scrollTop") > 0


@pytest.mark.skipif(
    not AXE.is_file() and not os.environ.get("CI"),
    reason=f"no accessibility checker here: npm install --prefix {AXE.parents[2]}",
)
@pytest.mark.parametrize("scheme", ["light", "dark"])
@pytest.mark.parametrize("width", [390, 1280])
@pytest.mark.parametrize("language", ["en", "ar"])
def test_an_accessibility_checker_finds_nothing(
    serving: Serving, window: Window, scheme: str, width: int, language: str
) -> None:
    page = window(serving(practice("last_day", language)).url, width=width, height=844, scheme=scheme)
    expect(page.locator("[data-shows]")).to_have_count(8)
    page.get_by_role("button", name="Ada", exact=True).click()
    if not column(page, "Ada").is_visible():
        page.get_by_role("button", name="Ada", exact=True).click()
    column(page, "Ada").get_by_text("Known, and why").click()
    expect(column(page, "Ada").locator("dl").first).to_be_visible()
    page.get_by_text("New person", exact=True).click()
    page.evaluate(AXE.read_text(encoding="utf-8"))
    found = page.evaluate("axe.run(document, { resultTypes: ['violations'] })")
    assert [(one["id"], [node["html"][:120] for node in one["nodes"]]) for one in found["violations"]] == []


def test_nothing_is_asked_of_anywhere_else(serving: Serving, window: Window) -> None:
    served = serving(practice("empty", "en"))
    page = window("about:blank")
    asked: list[str] = []
    page.context.on("request", lambda request: asked.append(request.url))
    page.goto(served.url)
    writes(page, "Rowan", "/invite Ben")
    expect(column(page, "Rowan").locator("img")).to_have_count(1)
    column(page, "Rowan").get_by_text("Known, and why").click()
    expect(column(page, "Rowan").locator("dl").first).to_be_visible()
    assert len(asked) > 6
    assert {url for url in asked if not url.startswith((served.origin, "about:"))} == set()
    picture = column(page, "Rowan").locator("img")
    assert picture.evaluate("image => image.complete && image.naturalWidth > 0")


def test_faults_are_switched_on_and_off_and_nothing_is_lost(serving: Serving, window: Window) -> None:
    page = window(serving(ADA).url)
    page.get_by_text("Faults", exact=True).click()
    page.get_by_role("button", name="Kill the bot at its next message").click()
    expect(page.locator("#fault-crash")).to_be_visible()
    page.keyboard.press("Escape")
    moves(page, "Next message")
    expect(page.locator("#fault-bot")).to_be_visible()
    writes(page, "Ada", "7")
    page.get_by_text("Faults", exact=True).click()
    page.get_by_role("button", name="Start the bot again").click()
    expect(page.locator("#fault-bot")).to_have_count(0)
    sees(page, "Ada", ENERGY)
    sees(page, "Ada", "Energy: 7")
    page.get_by_role("button", name="Let the messenger fail").click()
    expect(page.locator("#fault-messenger")).to_be_visible()
    page.get_by_role("button", name="Let the messenger work again").click()
    expect(page.locator("#fault-messenger")).to_have_count(0)


def test_a_practice_is_begun_and_a_tape_is_continued_from_a_file(
    served: Served, window: Window, tmp_path: Path
) -> None:
    page = window(served.url)
    tape = tmp_path / "mine.tape"
    tape.write_text(ADA + "at 2026-03-02 07:30\nAda: 7\n", encoding="utf-8")
    page.get_by_text("Practice", exact=True).click()
    page.get_by_label("A file").set_input_files(tape)
    page.get_by_role("button", name="Play it, then go on from there").click()
    sees(page, "Ada", "Energy: 7")
    page.get_by_text("Practice", exact=True).click()
    page.locator("#practice select[name=practice]").select_option("empty")
    page.locator("#practice select[name=language]").select_option("fr")
    page.get_by_role("button", name="Start over").click()
    expect(page.locator(".column")).to_have_count(1)
    expect(column(page, "Rowan").locator(".name")).to_contain_text("Français")


def test_what_nobody_can_do_is_said_in_a_sentence(served: Served, window: Window) -> None:
    page = window(served.url)
    page.get_by_text("New person", exact=True).click()
    page.locator("#newcomer").get_by_label("Name, one word").fill("Rowan")
    page.get_by_role("button", name="Bring them in").click()
    expect(page.get_by_role("alert")).to_have_text("There is a Rowan already.")
    assert served.stage.lines[-1] == "coach Rowan: lang=en"


def test_it_stops_cleanly_while_the_page_is_open(window: Window) -> None:
    process = subprocess.Popen(
        [sys.executable, "-m", "demo", "--rehearse"], stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True
    )
    try:
        assert process.stdout is not None and process.stderr is not None
        address = re.search(r"http://\S+", process.stdout.readline())
        assert address is not None
        page = window(address[0])
        expect(column(page, "Rowan")).to_be_visible()
        process.send_signal(signal.SIGTERM)
        assert process.wait(20) == 0
        assert process.stderr.read() == ""  # where a server that was held up would say so
    finally:
        process.kill()
        process.communicate()
