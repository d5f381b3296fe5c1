"""PEOPLE.csv as profiles. Any cell may be empty; one that is not understood is ignored and reported.

person      the name or number used in the readings, in any spelling `bot.scoring.identity` takes for the same.
sex         female or male (f, m, woman, man), as the reference tables use it.
birth_date  2026-03-02, or a bare year.
height      with its unit, or bare centimetres.
background  a family background of `core.client.Background`; spaces and hyphens are fine.
cautions    any of `core.client.Caution`, separated by ; or , or a space. A sheet says what there is: an empty cell,
            or no such column, means none. Something that is not understood may be any of them, so nothing that depends
            on one not being there is said of this person.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from datetime import date
from decimal import Decimal

from bot.scoring.identity import filed_under
from bot.scoring.tabular import InputTable, open_sheet
from core.client import Background, Caution, Profile, Sex
from core.language import ENGLISH
from core.measures.height import HEIGHT
from core.measures.measure import Misunderstood

REQUIRED, OPTIONAL = ("person",), ("sex", "birth_date", "height", "background", "cautions")
SEXES = {
    **dict.fromkeys(("female", "f", "woman", "w"), Sex.FEMALE),
    **dict.fromkeys(("male", "m", "man"), Sex.MALE),
}
_YEAR = re.compile(r"(?:18|19|20)\d\d", re.ASCII)
_NONE = ("none", "no", "nil", "n/a", "-")
_PARTED = re.compile(r"[;,\s]+")

Complain = Callable[[str], None]


def read_people(path: str, say: Complain) -> dict[str, Profile]:
    """Profiles, by what a person is filed under. `say` gets one plain line for each ignored cell, naming its row, never
    the person."""
    with open_sheet(path, REQUIRED, OPTIONAL) as sheet:
        return _profiles(sheet, say)


def _profiles(sheet: InputTable, say: Complain) -> dict[str, Profile]:
    profiles: dict[str, Profile] = {}
    for number, (cells, beyond) in enumerate(sheet.rows(), start=2):
        person, *rest = (cell.strip() for cell in cells)

        def remark(text: str, row: int = number) -> None:
            say(f"{sheet.name}, row {row}: {text}")

        if beyond:
            remark("more cells than the header names; the rest is left out.")
        if not person:
            remark("no person; the row is left out.")
            continue
        key = filed_under(person)
        if key in profiles:
            remark("this person stands in an earlier row; this row is used.")
        profiles[key] = profile(*rest, say=remark)
    return profiles


def profile(sex: str, birth_date: str, height: str, background: str, cautions: str, *, say: Complain) -> Profile:
    """The profile in one row; what is not understood is left out, and is reported to `say`."""
    year, day = _birth(birth_date, say)
    named, understood = _cautions(cautions, say)
    return Profile(
        sex=_sex(sex, say),
        birth_year=year,
        birth_date=day,
        stature=_stature(height, say),
        background=_background(background, say),
        cautions=named,
        cautions_known=understood,
    )


def _sex(text: str, say: Complain) -> Sex | None:
    found = SEXES.get(text.casefold())
    if text and found is None:
        say("sex not understood; write female or male, or leave it empty.")
    return found


def _birth(text: str, say: Complain) -> tuple[int | None, date | None]:
    if not text:
        return None, None
    if _YEAR.fullmatch(text):
        return int(text), None
    try:
        day = date.fromisoformat(text)
    except ValueError:
        day = date.min
    if _YEAR.fullmatch(f"{day.year:04}"):
        return None, day
    say("birth date not understood; write it like 1957-05-20, or only the year.")
    return None, None


def _stature(text: str, say: Complain) -> Decimal | None:
    if not text or HEIGHT.understand is None:
        return None
    heard = HEIGHT.understand(text, ENGLISH, None)
    if isinstance(heard, Misunderstood) or heard.value not in HEIGHT.bounds.possible:
        say("height not understood; write it like 165, 165 cm, 1.65 m or 5 ft 5.")
        return None
    return heard.value


def _background(text: str, say: Complain) -> Background | None:
    if not text:
        return None
    try:
        return Background(key_of(text))
    except ValueError:
        say(f"background not understood; write one of {', '.join(Background)}.")
        return None


def _cautions(text: str, say: Complain) -> tuple[frozenset[Caution], bool]:
    """The cautions in a cell, and whether all of it was understood."""
    found, understood = set(), True
    for word in filter(None, _PARTED.split("" if text.casefold() in _NONE else text)):
        try:
            found.add(Caution(key_of(word)))
        except ValueError:
            understood = False
            say(f"a caution not understood; write any of {', '.join(Caution)}, or leave it empty.")
    return frozenset(found), understood


def key_of(text: str) -> str:
    """Text as a key: "South Asian" is south_asian."""
    return re.sub(r"[\s_-]+", "_", text.strip().casefold())
