"""A coach's messages and buttons have texts, fit the platform's limits, and say what they must."""

from __future__ import annotations

import io
from collections.abc import Iterator
from datetime import date, timedelta
from decimal import Decimal
from typing import Any
from zoneinfo import ZoneInfo

import pytest

from bot.foundation.reader import length
from bot.rendering import Reader, render
from bot.rendering.attachments import ATTACHMENTS
from bot.rendering.phrases import PHRASES, load
from bot.rendering.phrases.labels import known
from bot.rendering.phrases.staff_digest import characters
from bot.rendering.phrases.staff_labels import LABELS
from bot.rendering.voice import voice
from core.care import Plan
from core.client import Caution, Profile, Sex
from core.dialogue.commands import STAFF, STAFF_BUTTONS
from core.dialogue.kit.effects import Say
from core.dialogue.kit.events import Command, Press
from core.dialogue.staff import messages as sm
from core.language import LANGUAGES
from core.measures import MEASURES
from core.watching.digest import CaseRow, Digest, FlagFact, Panel, digest, fitted
from core.watching.flags import RULES, Code
from tests.core.dialogue.office import LONDON, NOW, Office, card, kept, readings

DAY = date(2026, 3, 30)
READER = Reader("en", zone=ZoneInfo("Europe/London"))


def text(message: object, language: str = "en") -> str:
    return render(message, (), Reader(language, zone=LONDON)).text


def flagged(number: int, name: str, code: Code, **evidence: Any) -> CaseRow:
    rule = RULES[code]
    fact = FlagFact(number, code.value, rule.severity.value, "weight", tuple(evidence.items()), NOW - timedelta(days=3))
    return CaseRow(number, name, "active", asked=True, kept=True, flags=(fact,))


def test_every_message_for_staff_has_words() -> None:
    load()
    kinds = [x for x in vars(sm).values() if isinstance(x, type) and x.__module__ == sm.__name__]
    assert len(kinds) > 50
    # parts of a card and of a page
    assert [k.__name__ for k in kinds if k not in PHRASES and k not in ATTACHMENTS] == ["CardLine", "ClientSection"]


def test_every_button_a_coach_is_ever_given_has_words() -> None:
    office = Office(card(1, "Ada", flags=(kept(3, _wants_to_talk()),)), card(2, "Ann"), card(3, "Anna"))
    seen: dict[str, str] = {}
    events = [Command(NOW, row.name, "ann" if row.name == "client" else "") for row in STAFF]
    events += [Press(NOW, f"{verb}:1") for verb in STAFF_BUTTONS]  # type: ignore[misc]
    for event in events:
        office.gets(event)
        for effect in office.effects:
            if isinstance(effect, Say):
                seen |= {c.label: c.data for row in effect.choices for c in row}
    assert len(seen) > 40
    assert [label for label in seen if not known(label)] == []
    assert all(known(label) for label in LABELS)


def _wants_to_talk() -> Any:
    from core.watching.flags import flag

    return flag(Code.WANTS_COACH, NOW)


# --- the digest -------------------------------------------------------------------------------------------------


def test_a_quiet_week_is_one_line_that_says_how_many_answered_and_that_nobody_weighs_too_often() -> None:
    rows = tuple(CaseRow(n, f"C{n}", "active", asked=True, kept=n < 4) for n in range(5))
    said = text(sm.DigestSaid(digest(rows, DAY)))
    assert said.split("\n\n")[1] == (
        "A quiet week: 4 of 5 checked in, nobody needs a call and nobody is weighing too often."
    )


def test_a_quiet_week_with_somebody_still_weighing_often_does_not_say_the_opposite() -> None:
    often = FlagFact(1, "weighing_often", "note", "weight", (), NOW - timedelta(days=9), seen_at=NOW)
    said = text(sm.DigestSaid(digest((CaseRow(1, "Ada", "active", asked=True, flags=(often,)),), DAY)))
    assert "nobody is weighing" not in said and "weighing often" in said


def test_an_entry_says_who_what_the_numbers_with_units_and_since_when() -> None:
    gain = {"gain": Decimal("2.6"), "days": Decimal(2), "from": Decimal("82.4"), "to": Decimal(85)}
    said = text(sm.DigestSaid(digest((flagged(1, "Mara", Code.FAST_GAIN, **gain),), DAY)))
    assert "<b>Mara</b>" in said
    for part in ("+2.6 kg", "82.4 kg", "85 kg", "Since 27 Mar", "fast"):
        assert part in said, part


def test_a_seen_flag_is_shorter_and_says_that_it_was_seen() -> None:
    row = flagged(1, "Ada", Code.UNPLANNED_LOSS_OVER_5, percent=Decimal(6))
    fresh = text(sm.DigestSaid(digest((row,), DAY)))
    (one,) = row.flags
    again = FlagFact(one.id, one.code, one.severity, one.measure, one.evidence, one.since, seen_at=NOW)
    seen = text(sm.DigestSaid(digest((CaseRow(1, "Ada", "active", flags=(again,)),), DAY)))
    assert "Seen:" in seen and "Seen:" not in fresh and len(seen) < len(fresh)


def test_what_was_cut_is_counted() -> None:
    assert "And 12 more: /caseload" in text(sm.DigestSaid(Digest(DAY, left_out=12)))


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("count", [5, 60, 300])
def test_the_worst_week_in_any_language_is_one_message_and_lacks_no_urgent_one_of_sixty(
    language: str, count: int
) -> None:
    codes = [Code.BP_SEVERE_REPEATED, Code.RED_FLAG_WORDS, Code.FAST_GAIN]
    pressures = {"systolic": Decimal(186), "diastolic": Decimal(112)}
    rows = tuple(
        flagged(n, f"Wilhelmina {n:03}", codes[n % 3] if n < 60 else Code.WANTS_COACH, **pressures)
        for n in range(count)
    )
    made = fitted(digest(rows, DAY), lambda d: characters(d, voice(Reader(language, zone=LONDON))))
    said = text(sm.DigestSaid(made), language)
    assert length(said) <= 4096
    assert all(f"Wilhelmina {n:03}" in said for n in range(min(count, 60)))
    assert len(made.entries) + made.left_out == count


def test_a_digest_cut_for_one_language_is_still_one_message_in_a_longer_one() -> None:
    rows = tuple(flagged(n, f"Client {n}", Code.WANTS_COACH) for n in range(200))
    made = fitted(digest(rows, DAY), lambda d: characters(d, voice(Reader("en"))), 4096)
    assert all(length(text(sm.DigestSaid(made), language)) <= 4096 for language in LANGUAGES)


# --- the card ---------------------------------------------------------------------------------------------------


def test_a_card_is_one_message_however_much_there_is_on_it() -> None:
    from core.watching.flags import flag

    series = tuple(
        r
        for key, m in MEASURES.items()
        if m.understand is not None
        for r in readings(key, "40", "41", "60", second="30")
    )
    ada = card(
        1,
        "A" * 64,
        profile=Profile(Sex.FEMALE, 1950, stature=Decimal(165), cautions=frozenset(Caution)),
        plan=Plan(measures=tuple(MEASURES)),
        history=series,
        flags=tuple(kept(n, flag(Code.WANTS_COACH, NOW)) for n in range(30)),
        note="n" * 1000,
    )
    office = Office(ada).presses("card:1")
    for language in LANGUAGES:
        assert length(text(office.heard(sm.CardSaid), language)) <= 4096


def test_a_card_says_a_change_with_its_error_and_a_thread_is_one_message() -> None:
    office = Office(card(1, "Ada", history=readings("waist", "92", "104"))).presses("card:1")
    assert "worse (+12 cm, chance up to 5.3 cm)" in text(office.heard(sm.CardSaid))
    words = tuple((NOW, n % 2 == 0, "w" * 3000) for n in range(10))
    assert length(text(sm.ThreadSaid("Ada", words))) <= 4096


# --- pictures ---------------------------------------------------------------------------------------------------


def _panels(count: int) -> Iterator[Panel]:
    from core.dialogue.staff.card import panels
    from core.watching.flags import flag

    wider = flag(Code.CHANGE_WORSE_CONFIRMED, NOW, "waist")
    for n in range(count):
        yield from panels(
            (card(n, f"Client {n}", flags=(kept(n, wider),), history=readings("waist", "92", "98", "99")),)
        )


@pytest.mark.parametrize("count", [1, 2, 5, 6])
def test_a_sheet_is_a_picture_as_wide_as_a_phone_likes_with_its_content_in_words(count: int) -> None:
    from PIL import Image

    made = render(sm.Sheet(DAY, tuple(_panels(count)), left_out=3), (), READER)
    assert made.photo is not None and made.document is None
    wide, high = Image.open(io.BytesIO(made.photo)).size
    assert wide == 1080 and high <= 1700
    assert made.caption.count("•") == count and "92 cm → 99 cm" in made.caption and "3 more" in made.caption


def test_a_sheet_to_print_is_a_pdf_with_a_page_for_every_eight() -> None:
    made = render(sm.Sheet(DAY, tuple(_panels(17)), pdf=True), (), READER)
    assert made.document is not None
    name, data = made.document
    assert name == "sheet-2026-03-30.pdf" and data.startswith(b"%PDF")
    assert data.count(b"/Type /Page ") + data.count(b"/Type /Page\n") == 3
    assert length(made.caption) <= 1024


def test_an_invitations_picture_scans_to_its_link() -> None:
    made = render(sm.LinkPicture("https://t.me/it?start=abc", "Ada"), (), READER)
    assert made.photo is not None and made.photo.startswith(b"\x89PNG") and "Ada" in made.caption


def test_names_and_words_are_escaped() -> None:
    assert "<script>" not in text(sm.NobodyFound("<script>"))
    assert "&lt;b&gt;" in text(sm.ThreadSaid("<b>", ((NOW, True, "x < y"),)))
