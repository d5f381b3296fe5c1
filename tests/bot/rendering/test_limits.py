"""Every message, in every language, is accepted by the platform."""

from __future__ import annotations

import html
import re

import pytest

from bot.foundation.reader import CAPTION_LIMIT, TEXT_LIMIT, Reader, length
from bot.rendering import Unsendable, render
from bot.rendering.direction import FSI, LRI, PDI
from bot.rendering.samples import extreme, ordinary
from bot.rendering.translations import PSEUDO
from core.care import Units
from core.dialogue.client import messages as m
from core.dialogue.kit.effects import Choice
from core.language import LANGUAGES
from core.quantity import Unit

TAG = re.compile(r"<(/?)(\w+)>")
STONES = Units(Unit.STONE, Unit.INCH)


def well_formed(text: str) -> bool:
    """Tags nest, and nothing else looks like a tag or an entity."""
    stack: list[str] = []
    for closing, name in TAG.findall(text):
        if not closing:
            stack.append(name)
        elif not stack or stack.pop() != name:
            return False
    rest = TAG.sub("", text)
    return not stack and "<" not in rest and html.escape(html.unescape(rest), quote=False) == rest


@pytest.mark.parametrize("units", [Units(), STONES], ids=["metric", "stones"])
@pytest.mark.parametrize("language", LANGUAGES)
def test_every_message_fits_and_is_well_formed(language: str, units: Units) -> None:
    reader = Reader(language, units)
    for message in (*ordinary(), *extreme()):
        text = render(message, (), reader).text
        assert 0 < length(text) <= TEXT_LIMIT, message
        assert well_formed(text), text
        assert "{" not in text, text
        assert text.count(FSI) + text.count(LRI) == text.count(PDI), text


@pytest.mark.parametrize("language", LANGUAGES)
def test_no_placeholder_is_left_out(language: str) -> None:
    """Every value passed in appears: the weight is in the reply in every language."""
    said = render(m.ReadingKept("weight", m.Amount(m.Decimal("71.5"), Unit.KILOGRAM)), (), Reader(language)).text
    assert re.search(r"71[.,٫]5", said)


def test_right_to_left_numbers_are_islands() -> None:
    said = render(m.PressureAgain(m.Decimal(128), m.Decimal(82)), (), Reader("ar")).text
    assert re.search(f"{FSI}128/82 [^{PDI}]+{PDI}", said)


def test_a_name_in_arabic_letters_is_an_island_in_english() -> None:
    assert f"{FSI}ليلى{PDI}" in render(m.WordPassed("ليلى"), (), Reader("en")).text


def test_callback_data_over_64_bytes_is_refused() -> None:
    render(m.YouAreWelcome(), ((Choice("yes", "é" * 32),),), Reader())
    with pytest.raises(Unsendable):
        render(m.YouAreWelcome(), ((Choice("yes", "é" * 33),),), Reader())


def test_emoji_count_twice_as_the_platform_counts() -> None:
    assert length("<b>ab</b>") == 2
    assert length("🙂 &amp;") == 4


def test_captions_have_their_own_limit() -> None:
    assert CAPTION_LIMIT < TEXT_LIMIT


BRACKETED = re.compile(r"⟦[^⟦⟧]*⟧")


def outside_brackets(text: str) -> str:
    """What remains when every bracketed text is removed, innermost first."""
    while BRACKETED.search(text):
        text = BRACKETED.sub("", text)
    return text


def test_no_text_escapes_the_catalogues() -> None:
    """In the pseudo-language every catalogue text is in brackets."""
    reader = Reader(PSEUDO)
    for message in ordinary():
        left = outside_brackets(TAG.sub("", render(message, (), reader).text))
        if isinstance(message, m.SourceOf):
            continue  # citations are names
        typed = {"How were the stairs?", "Well done. See you on Friday.", "Can we talk?"}
        assert not re.search(r"[a-z]", left) or left.strip() in typed, left


def test_no_label_escapes_the_catalogues() -> None:
    from bot.rendering.phrases import labels
    from bot.rendering.voice import voice

    v = voice(Reader(PSEUDO))
    own_names = {f"lang:{code}" for code in LANGUAGES}
    for key in [*labels.LABELS, *(f"{g}:{k}" for g, table in labels.GROUPS.items() for k in table)]:
        said = labels.label(v, Choice(key, "x", "7"))
        assert key in own_names or not re.search(r"[a-z]", outside_brackets(said)), (key, said)
