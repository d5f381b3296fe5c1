"""A caseload with everything a page can show, all invented; and the pages a coach gets of it."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field
from datetime import date, timedelta
from decimal import Decimal
from html.parser import HTMLParser

from bot.rendering import Reader, render
from core.care import Plan, Units
from core.client import Caution, Profile, Sex
from core.dialogue.staff import messages as sm
from core.dialogue.staff.facts import CardFact, WordFact
from core.quantity import Unit
from core.reading import Reading
from core.watching.flags import Code, flag
from tests.core.dialogue.office import LONDON, NOW, Office, card, kept, readings

A_DAY = timedelta(days=1)
TYPED = "Knee <since> January & <script src='https://elsewhere.example/x.js'></script>"


def home_week() -> Iterator[Reading]:
    for day in range(7):
        for hours in (0, 12):
            at = NOW - timedelta(days=7 - day, hours=-hours)
            yield Reading(
                "blood_pressure", Decimal(148 - day + hours // 4), at, second=Decimal(88 + day % 3), attempts=2
            )


def ada() -> CardFact:
    history = (
        *readings("weight", "92", "91.2", "90.1", "88", "87.5"),
        *readings("waist", "104", "101", "97", "95", "94"),
        *readings("energy", "3", "4", "3", "5", "6", "6", "7", "7", "6", days=7),
        *readings("chair_stand_30s", "9", "10", "12", "13"),
        *home_week(),
    )
    return card(
        1,
        "Ada",
        history=tuple(sorted(history, key=lambda r: r.taken_at)),
        flags=(
            kept(1, flag(Code.BP_SEVERE, NOW, "blood_pressure", systolic=Decimal(186), diastolic=Decimal(112))),
            kept(2, flag(Code.WANTS_COACH, NOW - 2 * A_DAY)),
        ),
        answered=date(2026, 3, 30),
        plan=Plan(measures=("weight", "waist", "blood_pressure", "chair_stand_30s")),
        profile=Profile(Sex.FEMALE, 1958, stature=Decimal(165), cautions=frozenset({Caution.RATE_LIMITING_MEDICINE})),
        note=TYPED,
        thread=(WordFact(NOW - 2 * A_DAY, True, "Could you ring me?"), WordFact(NOW - A_DAY, False, "On Tuesday.")),
    )


def caseload() -> tuple[CardFact, ...]:
    stones = Units(Unit.STONE, Unit.INCH)
    worse = kept(3, flag(Code.CHANGE_WORSE_CONFIRMED, NOW, "waist"))
    missed = kept(4, flag(Code.MISSED_CHECK_INS, NOW - 9 * A_DAY, missed=Decimal(3)))
    return (
        ada(),
        card(2, "Ben", history=readings("waist", "92", "98", "99", "100"), flags=(worse,), units=stones),
        card(3, "Cyrus", history=readings("weight", "80", "82.4", "81", "83"), flags=(missed,), units=stones, missed=3),
        card(4, "Dora", profile=Profile()),
        card(
            5,
            "ليلى",
            status="paused",
            paused_until=date(2026, 4, 20),
            history=readings("resting_heart_rate", "72", "66"),
        ),
        card(6, "Dora", profile=Profile(Sex.FEMALE, 1971)),
    )


def caseload_page(language: str = "en", *clients: CardFact) -> str:
    office = Office(*(clients or caseload()), language=language)
    return _opened(office.commands("digest", "page").heard(sm.CaseloadPage), language)


def client_page(language: str = "en") -> str:
    return _opened(Office(*caseload(), language=language).commands("page", "Ada").heard(sm.ClientPage), language)


def _opened(message: object, language: str) -> str:
    made = render(message, (), Reader(language, zone=LONDON))
    assert made.document is not None and made.document[0].endswith(".html")
    return made.document[1].decode()


@dataclass
class Outline(HTMLParser):
    """What a browser would find. asks: addresses that it would fetch, or lead to."""

    ids: list[str] = field(default_factory=list)
    headings: list[tuple[int, str]] = field(default_factory=list)
    asks: list[str] = field(default_factory=list)
    root: dict[str, str | None] = field(default_factory=dict)
    tags: list[str] = field(default_factory=list)
    text: str = ""

    def __post_init__(self) -> None:
        super().__init__()

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        given = dict(attrs)
        self.tags.append(tag)
        if tag == "html":
            self.root = given
        if (found := given.get("id")) is not None:
            self.ids.append(found)
        self.asks += [str(given[name]) for name in ("src", "href", "action", "data", "poster") if name in given]
        if len(tag) == 2 and tag[0] == "h" and tag[1].isdigit():
            self.headings.append((int(tag[1]), ""))

    def handle_data(self, data: str) -> None:
        self.text += data
        if self.headings and not self.headings[-1][1]:
            self.headings[-1] = (self.headings[-1][0], data.strip())


def outline(page: str) -> Outline:
    found = Outline()
    found.feed(page)
    return found
