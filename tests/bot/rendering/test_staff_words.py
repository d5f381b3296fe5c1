"""A coach's messages and buttons have texts, fit the platform's limits, and say what they must."""

from __future__ import annotations

import io
from collections.abc import Iterator
from dataclasses import replace
from datetime import date, timedelta
from decimal import Decimal
from typing import Any
from zoneinfo import ZoneInfo

import pytest

from bot.foundation.reader import length
from bot.rendering import Reader, render
from bot.rendering.attachments import ATTACHMENTS
from bot.rendering.phrases import PHRASES, load
from bot.rendering.phrases.coach import FLAGS, SHORT
from bot.rendering.phrases.labels import known
from bot.rendering.phrases.staff_digest import NEXT, lines, size
from bot.rendering.phrases.staff_labels import LABELS
from bot.rendering.voice import voice
from core.care import Plan, Units
from core.client import Caution, Profile, Sex
from core.dialogue.commands import STAFF, STAFF_BUTTONS
from core.dialogue.kit.effects import Say
from core.dialogue.kit.events import Command, Press
from core.dialogue.staff import messages as sm
from core.language import LANGUAGES
from core.measures import MEASURES
from core.quantity import Unit
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


def made(rows: tuple[CaseRow, ...], language: str = "en") -> Digest:
    v = voice(Reader(language, zone=LONDON))
    return fitted(digest(rows, DAY, now=NOW), lambda d: size(d, v))


def said(*rows: CaseRow) -> str:
    return text(sm.DigestSaid(made(rows)))


def test_a_quiet_week_is_one_line_that_says_how_many_of_those_asked_answered() -> None:
    rows = tuple(CaseRow(n, f"C{n}", "active", asked=n < 5, kept=n < 4) for n in range(6))
    head, week = said(*rows).split("\n\n")
    assert head == "<b>Digest of Monday, 30 March: nobody needs you today</b>"
    assert week == "A quiet week. Checked in: 4 of 5 asked. Nobody is weighing too often."


def test_a_week_with_something_urgent_still_open_is_never_a_quiet_week() -> None:
    open_ = FlagFact(1, "bp_severe", "urgent", "blood_pressure", (), NOW, seen_at=NOW)
    words = said(CaseRow(1, "Ada", "active", asked=True, kept=True, flags=(open_,)), CaseRow(2, "Ben", "active"))
    assert "1 urgent and still open: Ada" in words and "A quiet week" not in words and "1 of 1 asked" in words


def test_a_week_in_which_nobody_answered_is_never_a_quiet_week() -> None:
    quiet = said(*(CaseRow(n, f"C{n}", "active", asked=True) for n in range(60)))
    assert "A quiet week" not in quiet and "A quiet week" not in said(CaseRow(1, "Ada", "active", asked=True))
    assert "<b>Nobody at all has answered this week.</b> 0 of 60. → Look whether the bot runs." in quiet


def test_a_quiet_week_with_somebody_still_weighing_often_does_not_say_the_opposite() -> None:
    often = FlagFact(1, "weighing_often", "note", "weight", (), NOW - timedelta(days=9), seen_at=NOW)
    week = said(CaseRow(1, "Ada", "active", asked=True, kept=True, flags=(often,)))
    assert "nobody is weighing" not in week and "weighing often" in week


def test_the_first_line_says_how_many_need_a_person_today() -> None:
    rows = (*(flagged(n, f"C{n}", Code.WANTS_COACH) for n in range(1, 4)), flagged(7, "D", Code.MUST_MEDIUM))
    assert said(*rows).split("\n")[0] == "<b>Digest of Monday, 30 March: 3 people need you today</b>"


def test_an_entry_says_who_what_the_number_since_when_their_words_and_what_next() -> None:
    gain = {"gain": Decimal("2.6"), "days": Decimal(2), "from": Decimal("82.4"), "to": Decimal(85)}
    assert "• <b>Mara</b>: fast weight gain, +2.6 kg, since 27 Mar. → Ring today." in said(
        flagged(1, "Mara", Code.FAST_GAIN, **gain)
    )
    words = {"level": "emergency", "sign": "chest_pain", "words": "I have chest pain"}
    assert (
        "• <b>Ada</b>: words that call for help, chest pain or tightness, since 27 Mar. “I have chest pain” → Ring now."
        in said(flagged(1, "Ada", Code.RED_FLAG_WORDS, **words))
    )


def test_two_matters_of_one_person_stand_in_one_line_each_with_its_number_and_date() -> None:
    one, two = (
        flagged(1, "Mara", c, **e)
        for c, e in ((Code.FAST_GAIN, {"gain": Decimal("2.6")}), (Code.WEIGHING_OFTEN, {"count": Decimal(3)}))
    )
    both = said(replace(one, flags=(*one.flags, *two.flags)))
    assert "<b>Mara</b>: fast weight gain, +2.6 kg, since 27 Mar; weighing often, 3 times, since 27 Mar. →" in both


@pytest.mark.parametrize("code", list(Code))
def test_every_code_has_words_in_short_and_a_next_step(code: Code) -> None:
    assert code.value in SHORT and code.value in FLAGS and RULES[code].step.value in NEXT


def test_what_is_known_folds_into_one_line() -> None:
    seen = [
        replace(row, flags=tuple(replace(f, seen_at=NOW) for f in row.flags))
        for row in (flagged(n, name, Code.WANTS_COACH) for n, name in enumerate(("Dora", "Mara", "Hana")))
    ]
    urgent = flagged(9, "Emil", Code.BP_SEVERE_REPEATED)
    urgent = replace(urgent, flags=tuple(replace(f, seen_at=NOW) for f in urgent.flags))
    week = said(*seen, urgent)
    assert "3 known: Dora, Hana, Mara" in week and "1 urgent and still open: Emil" in week
    assert week.count("Dora") == 1


def test_an_alarm_that_settled_says_what_when_what_they_were_told_and_what_followed() -> None:
    (one,) = flagged(1, "Ada", Code.PULSE_FAST, rate=Decimal(128)).flags
    over = replace(one, cleared_at=NOW, ended="reading", after=(("rate", Decimal(96)),))
    assert (
        "• <b>Ada</b>: very fast resting pulse, 128 beats a minute, 27 Mar. Told: sit still and count again, and when"
        " to call for help. Then 96 beats a minute. → Look at the card."
    ) in said(CaseRow(1, "Ada", "active", asked=True, kept=True, settled=(over,)))


def test_the_history_says_who_dealt_with_it_and_how() -> None:
    words = {"level": "emergency", "sign": "chest_pain", "words": "I have chest pain"}
    (one,) = flagged(1, "Ada", Code.RED_FLAG_WORDS, **words).flags
    over = replace(one, cleared_at=NOW, ended="by_coach", done="rang", words="her son is with her", by="Rowan")
    assert text(sm.HistorySaid("Ada", (over,))).split("\n")[1] == (
        "• 27 Mar: words that call for help, chest pain or tightness. “I have chest pain” Told: call for help now, with"
        " the number. Dealt with (Rowan, 30 Mar): Rang, “her son is with her”."
    )
    many = tuple(replace(over, words="w" * 200, id=n) for n in range(40))
    assert length(text(sm.HistorySaid("Ada", many))) <= 4096


def test_one_flag_has_one_number_in_the_text_the_card_and_the_picture() -> None:
    from core.dialogue.staff.card import panels
    from core.watching.flags import flag

    stones = Units(Unit.STONE, Unit.INCH)
    lost = {"percent": Decimal(6), "from": Decimal("92"), "to": Decimal("86.5"), "since": "2026-01-05"}
    found = kept(5, flag(Code.UNPLANNED_LOSS_OVER_5, NOW, "weight", **lost))
    ada = card(1, "Ada", flags=(found,), history=readings("weight", "92", "86.5"), units=stones)
    told = said(CaseRow(1, "Ada", "active", flags=(found,), units=stones))
    on_card = text(Office(ada).presses("card:1").heard(sm.CardSaid))
    drawn = render(sm.Sheet(DAY, panels((ada,))), (), READER).caption
    for stone in ("14\u202fst 7\u202flb", "13\u202fst 9\u202flb"):
        first = stone.split("\u202f")[0]
        assert all(first in where for where in (told, on_card, drawn)), (told, on_card, drawn)
    assert "kg" not in told + on_card + drawn


def test_what_was_cut_is_counted() -> None:
    assert "And 12 more: /caseload" in text(sm.DigestSaid(Digest(DAY, left_out=12)))


@pytest.mark.parametrize(
    ("paragraph", "count"),
    [
        ("", 1),
        ("one", 1),
        ("a" * 42, 1),
        ("a" * 43, 2),
        ("a" * 100, 3),
        ("a" * 40 + " bc", 2),
        ("one\ntwo\n\nthree", 4),
    ],
)
def test_lines_are_counted_as_a_phone_breaks_them(paragraph: str, count: int) -> None:
    assert lines(paragraph) == count


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("count", [5, 60, 300])
def test_the_worst_week_in_any_language_is_one_message_and_lacks_no_urgent_one_of_forty(
    language: str, count: int
) -> None:
    codes = [Code.BP_SEVERE_REPEATED, Code.RED_FLAG_WORDS, Code.FAST_GAIN]
    pressures = {"systolic": Decimal(186), "diastolic": Decimal(112)}
    rows = tuple(
        flagged(n, f"Wilhelmina {n:03}", codes[n % 3] if n < 40 else Code.WANTS_COACH, **pressures)
        for n in range(1, count + 1)
    )
    whole = made(rows, language)
    week = text(sm.DigestSaid(whole), language)
    assert length(week) <= 4096
    assert all(f"Wilhelmina {n:03}" in week for n in range(1, min(count, 40)))
    assert len(whole.entries) + whole.left_out == count


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_week_with_six_in_need_and_ten_others_is_one_screen(language: str) -> None:
    rows = tuple(flagged(n, f"Client {n}", Code.WANTS_COACH if n < 7 else Code.MUST_MEDIUM) for n in range(1, 17))
    assert lines(text(sm.DigestSaid(made(rows, language)), language)) <= 25


def test_a_digest_cut_for_one_language_is_still_one_message_in_a_longer_one() -> None:
    rows = tuple(flagged(n, f"Client {n}", Code.BP_SEVERE_REPEATED) for n in range(1, 200))
    whole = made(rows)
    assert all(length(text(sm.DigestSaid(whole), language)) <= 4096 for language in LANGUAGES)


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
