"""Arabic: right-to-left paragraphs with embedded left-to-right numbers, names and commands.

`⟨` and `⟩` below stand for an isolate (U+2068, U+2069), `‹` for a left-to-right isolate (U+2066).
"""

from __future__ import annotations

import html
import re
import unicodedata
from collections.abc import Iterator
from datetime import date
from decimal import Decimal
from functools import lru_cache

import pytest

from bot.rendering import Reader, render
from bot.rendering.direction import FSI, LRI, NO_BREAK, PDI, RLM, directed, isolate_numbers
from bot.rendering.phrases import asking
from bot.rendering.samples import extreme, ordinary, pictures
from bot.rendering.voice import voice
from core.care import Units
from core.dialogue.client import messages as m
from core.dialogue.staff import messages as sm
from core.measures import MEASURES
from core.quantity import Amount, Unit
from core.watching.digest import CaseRow, FlagFact, digest
from core.watching.flags import RULES, Code
from tests.core.dialogue.office import NOW, Office, card, readings

D = Decimal
ARABIC = Reader("ar")
STONES = Reader("ar", Units(Unit.STONE, Unit.INCH))
TAG = re.compile(r"</?\w+>")
INVITATION = sm.InvitationMade("client", "Ada", "https://t.me/it?start=a1b2", date(2026, 4, 6))
COMMAND = re.compile(r"(?<![\w<])/[a-z]+\b")


def shown(text: str) -> str:
    """The text with visible marks."""
    for mark, sign in ((FSI, "⟨"), (PDI, "⟩"), (LRI, "‹"), (RLM, ""), (NO_BREAK, " ")):
        text = text.replace(mark, sign)
    return text


def said(message: object, reader: Reader = ARABIC) -> str:
    sent = render(message, (), reader)
    return sent.text or sent.caption


def to_a_coach() -> Iterator[object]:
    evidence = (("gain", D("-2.6")), ("days", D(2)), ("from", D("85")), ("to", D("82.4")))
    flag = FlagFact(1, "fast_gain", RULES[Code.FAST_GAIN].severity.value, "weight", evidence, NOW)
    seen = FlagFact(2, "fast_gain", RULES[Code.FAST_GAIN].severity.value, "weight", evidence, NOW, seen_at=NOW)
    rows = tuple(CaseRow(n, f"C{n}", "active", asked=True, kept=True, flags=(f,)) for n, f in ((1, flag), (2, seen)))
    yield sm.DigestSaid(digest(rows, date(2026, 3, 30), now=NOW))
    office = Office(card(1, "Ada", history=readings("waist", "92", "104"), note="See 3 times.")).presses("card:1")
    yield office.heard(sm.CardSaid)
    yield INVITATION
    yield sm.StaffHelp(coach=True, organiser=True)


@lru_cache(maxsize=1)
def lines() -> tuple[str, ...]:
    """Every line of every sample, without tags, once."""
    texts = [said(x, reader) for x in (*ordinary(), *extreme()) for reader in (ARABIC, STONES)]
    texts.extend(said(x) for x in (*pictures(), *to_a_coach()))
    each = dict.fromkeys(line for text in texts for line in html.unescape(TAG.sub("", text)).split("\n"))
    return tuple(line for line in each if line)


def arabic(text: str) -> bool:
    return any(unicodedata.bidirectional(letter) == "AL" for letter in text)


def outside(line: str) -> str:
    """The part of a line outside any isolate."""
    depth, left = 0, ""
    for letter in line:
        if letter in (FSI, LRI):
            depth += 1
        elif letter == PDI:
            depth -= 1
        elif not depth:
            left += letter
    return left


def balanced(line: str) -> bool:
    depth = 0
    for letter in line:
        depth += (letter in (FSI, LRI)) - (letter == PDI)
        if depth < 0:
            return False
    return depth == 0


# --- every sample -----------------------------------------------------------------------------------------------


def test_there_are_samples_of_everything_that_can_be_torn_apart() -> None:
    whole = "\n".join(lines())
    assert len(lines()) > 1000
    for part in ("135/85", "/today", "07:30", "Rowan", "−2.1", "180/100", "+12", "/forget", "• "):
        assert part in whole, part


def test_every_island_of_every_sample_ends_on_its_own_line() -> None:
    assert [shown(line) for line in lines() if not balanced(line)] == []


def test_no_number_of_any_sample_stands_outside_an_island() -> None:
    """A line entirely in another script, such as a source, runs from the left anyway."""
    bare = [line for line in lines() if arabic(line) and re.search(r"\d", outside(line))]
    assert [shown(line) for line in bare] == []


def words_of_units() -> set[str]:
    """The first word after the figure, for every unit and every form."""
    v, words = voice(ARABIC), set[str]()
    for unit in Unit:
        for n in (0, 1, 2, 3, 11, 100):
            for text in (v.amount(Amount(D(n), unit)), v.size(Amount(D(n), unit))):
                words |= set(re.findall(r"\d[ \u00a0]([^\W\d][\w\u064b-\u0652]*)", shown(text).strip("⟨⟩")))
    return words - {"من"}  # "6 of 10"


def test_no_unit_of_any_sample_is_left_outside_its_numbers_island() -> None:
    words = words_of_units()
    assert {"كغم", "سم", "ثانية", "دقائق", "نبضات", "أيام", "رطل", "مترًا"} <= words
    apart = re.compile(rf"\d{PDI}+[ {NO_BREAK}](?:{'|'.join(sorted(words))})\b")
    found = {line for line in lines() for hit in apart.finditer(line) if _at_the_top(line, hit.end())}
    assert [shown(line) for line in found] == []


def _at_the_top(line: str, end: int) -> bool:
    """Whether a position in a line is outside any isolate."""
    before = line[:end]
    return before.count(FSI) + before.count(LRI) == before.count(PDI)


def test_every_command_of_every_sample_runs_from_the_left() -> None:
    for line in lines():
        if arabic(outside(line)):
            for found in COMMAND.finditer(line):
                assert line[found.start() - 1] == LRI, shown(line)


def test_every_line_of_ours_begins_from_the_right() -> None:
    """With a letter or a mark of that direction, not with a bullet, a slash or somebody's name."""
    wrong = [
        line for line in lines() if arabic(outside(line)) and unicodedata.bidirectional(line[0]) not in ("AL", "R")
    ]
    assert [shown(line) for line in wrong] == []


def test_digits_are_0_to_9_everywhere() -> None:
    assert [shown(line) for line in lines() if re.search(r"\d", re.sub("[0-9]", "", line))] == []


# --- piece by piece ---------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("value", "unit", "text"),
    [
        ("-2.1", Unit.KILOGRAM, "⟨‹−2.1⟩ كغم⟩"),
        ("12", Unit.CENTIMETRE, "⟨‹+12⟩ سم⟩"),
        ("-2", Unit.SECOND, "⟨‹−2⟩ ثانية⟩"),
        ("8", Unit.BEATS_PER_MINUTE, "⟨‹+8⟩ نبضات⟩"),
    ],
)
def test_a_sign_stands_to_the_left_of_its_figure_and_the_unit_left_of_both(value: str, unit: Unit, text: str) -> None:
    assert shown(voice(ARABIC).signed(Amount(D(value), unit))) == text


@pytest.mark.parametrize(
    ("value", "unit", "text"),
    [
        ("1", Unit.SECOND, "⟨1 ثانية⟩"),
        ("2", Unit.SECOND, "⟨2 ثانية⟩"),
        ("2", Unit.METRE, "⟨2 متر⟩"),
        ("1", Unit.MINUTE, "⟨1 دقيقة⟩"),
        ("2", Unit.DAY, "⟨2 يوم⟩"),
        ("3", Unit.DAY, "⟨3 أيام⟩"),
        ("-2.1", Unit.KILOGRAM, "⟨‹-2.1⟩ كغم⟩"),
    ],
)
def test_an_amount_always_has_its_figure(value: str, unit: Unit, text: str) -> None:
    assert shown(voice(ARABIC).amount(Amount(D(value), unit))) == text


def test_a_part_of_a_point_takes_the_general_form() -> None:
    assert shown(voice(ARABIC).size(Amount(D("0.3"), Unit.POINT))) == "⟨0.3 نقطة⟩"
    assert shown(voice(ARABIC).size(Amount(D(3), Unit.POINT))) == "⟨3 نقاط⟩"


def test_two_amounts_are_parted_by_an_arabic_comma() -> None:
    assert shown(asking.example(voice(ARABIC), "walk_mile", Unit.MINUTE)) == "⟨17 د 30 ث⟩، ⟨124 نبضة في الدقيقة⟩"


def test_a_change_over_time_points_to_the_left() -> None:
    from core.dialogue.staff.card import panels
    from core.watching.flags import flag
    from tests.core.dialogue.office import kept

    wider = kept(1, flag(Code.CHANGE_WORSE_CONFIRMED, NOW, "waist"))
    (panel,) = panels((card(1, "Ada", flags=(wider,), history=readings("waist", "92", "98", "99")),))
    assert "⟨92 سم⟩ ← ⟨99 سم⟩" in shown(said(sm.Sheet(date(2026, 3, 30), (panel,))))


def test_what_was_typed_in_several_lines_is_an_island_in_each() -> None:
    text = said(m.CoachWrites("Rowan", "Week 1: 82.4 kg\n\nWell done."))
    assert shown(text).endswith("⟨Week 1: 82.4 kg⟩\n\n⟨Well done.⟩")


def test_a_link_stands_alone_and_unmarked_so_that_it_can_be_copied() -> None:
    assert "\nhttps://t.me/it?start=a1b2\n" in said(INVITATION)


@pytest.mark.parametrize(
    ("text", "kept"),
    [
        ("حد 135/85.", "حد ⟨135/85⟩."),
        ("من 22:00 إلى 7:00", "من ⟨22:00⟩ إلى ⟨7:00⟩"),
        (f"حتى 10{NO_BREAK}ثوانٍ.", "حتى ⟨10 ثوانٍ⟩."),
        (f"نحو 1.61{NO_BREAK}كم.", "نحو ⟨1.61 كم⟩."),
        (f"بقيت {{n}}{NO_BREAK}أيام.", "بقيت ⟨{n} أيام⟩."),
        ("{n} من {all}", "{n} من {all}"),
        (f"/digest{NO_BREAK}pdf – ورقة", "‹/digest pdf⟩ – ورقة"),
        ("<b>اسم</b> و/أو", "<b>اسم</b> و/أو"),
    ],
)
def test_numbers_and_commands_of_a_text_are_kept_whole(text: str, kept: str) -> None:
    assert shown(isolate_numbers(text)) == kept


@pytest.mark.parametrize(
    ("line", "marked"),
    [
        ("مرحبا", False),
        ("<b>مرحبا</b>", False),
        ("• مرحبا", True),
        (f"{FSI}Ada{PDI}: مرحبا", True),
        (f"<b>{FSI}Ada{PDI}</b>: {FSI}{LRI}−2{PDI} كغم{PDI}، أسوأ", True),
        (f"{FSI}ليلى{PDI}", True),
        (f"{FSI}Well done.{PDI}", False),
        ("• WHO, 1995", False),
        ("https://t.me/it", False),
        ("", False),
    ],
)
def test_a_line_is_marked_where_it_would_begin_from_the_wrong_side(line: str, marked: bool) -> None:
    assert directed(line) == (f"{RLM}{line}" if marked else line)


def test_nothing_is_marked_for_a_reader_of_another_language() -> None:
    texts = [render(x, (), Reader("en")).text for x in ordinary()]
    assert not any(mark in text for text in texts for mark in (LRI, RLM, FSI))


@pytest.mark.parametrize("measure", sorted(MEASURES))
def test_a_measure_is_named_in_arabic(measure: str) -> None:
    from bot.rendering.phrases import names

    assert arabic(names.measure(voice(ARABIC), measure))
