"""Charts: drawn in every language, described in text, matplotlib imported only when needed."""

from __future__ import annotations

import io
import subprocess
import sys
from dataclasses import replace
from decimal import Decimal

import pytest
from PIL import Image

from bot.foundation.reader import CAPTION_LIMIT, length
from bot.rendering import Reader, render
from bot.rendering.charts import draw, file_name
from bot.rendering.samples import pictures
from bot.transports.telegram import parts
from core.care import Units
from core.dialogue.client import messages as m
from core.dialogue.kit.effects import Choice
from core.dialogue.kit.messages import Together
from core.judging.chart_data import Usual
from core.language import LANGUAGES
from core.quantity import Unit

PICTURES = list(pictures())


@pytest.mark.parametrize("language", ["en", "ar"])
@pytest.mark.parametrize("picture", PICTURES, ids=lambda p: type(p.spec).__name__)
def test_a_picture_is_a_png_of_a_phones_width(picture: m.Picture, language: str) -> None:
    sent = render(picture, (), Reader(language, Units(Unit.STONE, Unit.INCH)))
    assert sent.photo is not None
    image = Image.open(io.BytesIO(sent.photo))
    assert (image.format, image.size) == ("PNG", (1080, 810))
    assert len(image.convert("RGB").getcolors(1 << 20) or ()) > 20  # it is not blank
    assert len(sent.photo) < 200_000


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_caption_tells_the_same_and_fits(language: str) -> None:
    from bot.rendering.charts import caption
    from bot.rendering.voice import voice

    for picture in PICTURES:
        said = caption(picture.spec, voice(Reader(language)))
        assert 0 < length(said) <= CAPTION_LIMIT


def test_a_trends_caption_has_first_last_error_and_range() -> None:
    said = render(PICTURES[0], (), Reader("en")).caption
    for part in ("88 cm", "79 cm", "5.3 cm", "below 80 cm", "5 readings"):
        assert part in said, said


@pytest.mark.parametrize(
    ("usual", "seen"),
    [
        (Usual(None, Decimal(80), "x"), True),
        (Usual(None, Decimal(40), "x"), False),
        (Usual(Decimal(120), None, "x"), False),
        (Usual(Decimal(40), Decimal(120), "x"), True),
    ],
    ids=["its edge is near", "far below", "far above", "all of the picture"],
)
def test_a_caption_speaks_of_green_only_where_the_picture_shows_any(usual: Usual, seen: bool) -> None:
    picture = m.Picture(replace(PICTURES[0].spec, usual=usual))  # from 88 to 79 cm
    sent = render(picture, (), Reader("en"))
    assert ("Green" in sent.caption) == seen
    assert sent.photo is not None
    colours = Image.open(io.BytesIO(sent.photo)).convert("RGB").getcolors(1 << 20) or []
    green = sum(count for count, (red, green, blue) in colours if green > red + 8 and green > blue + 8)
    assert (green > 1000) == seen


def test_a_pressure_weeks_caption_has_the_mean_and_the_limit() -> None:
    said = render(PICTURES[5], (), Reader("en")).caption
    assert "142/91 mmHg" in said
    assert "135/85 mmHg" in said


def test_words_before_a_picture_are_sent_as_text_and_buttons_go_with_it() -> None:
    sent = render(Together((m.YouAreWelcome(), PICTURES[0])), ((Choice("yes", "y"),),), Reader("en"))
    assert (sent.text, sent.keyboard) == ("You are welcome.", ((("Yes", "y"),),))
    assert sent.photo
    assert sent.caption


def test_the_same_picture_is_the_same_bytes() -> None:
    assert draw(PICTURES[0].spec, Reader("en")) == draw(PICTURES[0].spec, Reader("en"))


def test_a_pictures_file_is_called_by_what_it_shows() -> None:
    sent = [render(picture, (), Reader("en")) for picture in PICTURES]
    assert {"trend-weight.png", "pressure-week.png"} <= {one.photo_name for one in sent}
    (apart, whole) = parts(replace(sent[0], text="words"))
    assert (apart.photo, whole.photo_name) == (None, sent[0].photo_name)


def test_anything_else_is_no_picture() -> None:
    with pytest.raises(TypeError):
        draw(Decimal(1), Reader("en"))
    with pytest.raises(TypeError):
        file_name(Decimal(1))


def test_rendering_text_does_not_load_matplotlib() -> None:
    program = (
        "import sys; from bot.rendering import Reader, render; from core.dialogue.client import messages as m;"
        " render(m.YouAreWelcome(), (), Reader('de')); sys.exit('matplotlib' in sys.modules)"
    )
    assert subprocess.run([sys.executable, "-c", program], check=False, timeout=60).returncode == 0
