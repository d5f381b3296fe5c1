"""Texts about cohorts: complete, in every language, within the platform's limits; the group's texts contain no name;
and the closing report draws, prints and tabulates the same figures."""

from __future__ import annotations

import csv
import dataclasses
import io
import re
from collections.abc import Iterator
from dataclasses import replace
from datetime import date, time
from decimal import Decimal
from types import ModuleType

import pytest

from bot.foundation.reader import CAPTION_LIMIT, TEXT_LIMIT, length
from bot.rendering import Reader, render
from bot.rendering.attachments import ATTACHMENTS
from bot.rendering.closing_csv import closing_csv
from bot.rendering.phrases import PHRASES, cohort_labels, labels, load
from bot.rendering.samples import LONG_NAME
from bot.rendering.voice import voice
from core.dialogue.client import messages_to_coach
from core.dialogue.group import messages as cm
from core.dialogue.kit.effects import Choice
from core.dialogue.organiser import messages as om
from core.language import LANGUAGES
from core.watching.cohort import Closing, CohortWeek, Counted, Paired, Sum, TooFew, for_the_group, paired

D = Decimal
FIRST, LAST = date(2026, 3, 2), date(2026, 4, 13)
WEEKS = tuple(CohortWeek(n, 11, 9 + n % 2, 10 if n else None, 1040 + n if n else None) for n in range(7))
HIDDEN = CohortWeek(3, None, None, None, None)
PAIRS = [(D(5), D(7)), (D(6), D(6)), (D(4), D(7)), (D(6), D(8)), (D(7), D(7))]
REPORT = Closing(
    "Spring steps",
    FIRST,
    LAST,
    6,
    11,
    10,
    77,
    66,
    WEEKS,
    (Sum(Counted.MINUTES, 11, 6261, 6), Sum(Counted.SESSIONS, None, None)),
    (paired("energy", PAIRS), paired("weight", [(D("88.25") + a, D("87.5") + b) for a, b in PAIRS]), TooFew("hip")),
)
LINE = om.CohortLine("Spring steps", FIRST, LAST, "running")
ENGLISH = Reader("en")


def to_organisers() -> Iterator[object]:
    yield from (om.AskCohortName(True), om.AskCohortName(), om.AskCohortStart("Spring"), om.AskCohortWeeks())
    yield from (om.AskCohortTime(0), om.AskCohortCounts(), om.AskCohortMost(), om.AskCohortCoach(), om.AskOrganiser())
    yield from (om.CohortUnclear(q) for q in ("name", "start", "weeks", "time", "counts", "most", "coach"))
    for counts in Counted:
        yield om.CohortMade("Spring", FIRST, LAST, 6, 0, time(18), counts.value)
        yield om.CohortSaid(LINE, 6, 0, time(18), counts.value, 10, 1, True, WEEKS, 11)
        yield om.CohortSaid(LINE, 6, 0, time(18), counts.value, 10, 1, True, (*WEEKS[:3], HIDDEN), 11)
        yield om.CohortSaid(LINE, 6, 0, time(18), counts.value, 10, 1, True, (replace(WEEKS[3], total=None),), 11)
    yield om.CohortSaid(replace(LINE, stage="coming"), 6, 0, time(18), "sessions", 0, 0, False)
    yield from (om.JoinLink("Spring", "https://t.me/it?start=x", LAST, new, 30) for new in (True, False))
    yield from (om.SomebodyJoined("Spring", "Ada", 5, coach) for coach in ("", "Rowan"))
    yield from (om.CoachSaidNo("Spring", "Ada"), om.CountsInCohort("Spring", "Ada"))
    yield from (om.JoiningOver("Spring", FIRST), om.JoinLinksRevoked("Spring"), om.NamedAsCoach("Spring", "Olga"))
    yield messages_to_coach.ClientInCohort("Ada", "Spring", "Olga")
    yield om.CohortList(tuple(replace(LINE, stage=s) for s in ("coming", "running", "over", "called_off")))
    yield from (om.CohortNotYours(), om.CohortPeople("Spring", (), 0, 1))
    yield om.CohortPeople("Spring", (("Ada", FIRST, None), ("Ben", FIRST, LAST)), 1, 3, ("Ada",))
    yield from (om.RemoveSure("Spring", "Ada"), om.MemberRemoved("Spring", "Ada"), om.CohortCalledOff("Spring"))
    yield from (om.EndCohortSure("Spring", begun) for begun in (True, False))
    yield from (om.GroupLink("Spring", "https://t.me/it?startgroup=x", LAST), om.GroupIsTied("Spring"))
    yield from (om.GroupTied("Spring"), om.GroupUntied("Spring"), om.GroupLost("Spring"))
    yield from (om.NothingToTie(), om.TieWhich(), om.ClosingSaid(REPORT))
    yield om.ClosingSaid(replace(REPORT, attendance=(*WEEKS[:2], HIDDEN), asked=None, kept=None))


def to_members() -> Iterator[object]:
    yield from (cm.CohortWelcome("Spring", "Olga", FIRST, c) for c in (True, False))
    yield from (cm.CohortForClients("Spring", "Olga"), cm.CohortAsks("activity_minutes"), cm.AlreadyInCohort("Spring"))
    yield from (cm.MyCohorts(()), cm.MyCohorts((("Spring", FIRST, LAST),)), cm.LeaveCohortSure("Spring"))
    yield from (cm.LeftCohort("Spring"), cm.TakenOutOfCohort("Spring", "Olga"), cm.CohortOff("Spring"))
    yield cm.NotInCohort("Spring")
    yield from (cm.CohortOver("Spring", *n) for n in ((5, 7), (1, 1), (0, 3), (0, 0)))
    yield from (cm.NumberInGroup(), cm.NumberInGroupOfStaff())


def to_groups() -> Iterator[object]:
    yield from (cm.GroupHello("Spring", FIRST, 6), cm.GroupGoodbye("Spring"), cm.GroupStarts("Spring", 6))
    for counts in Counted:
        whole = Sum(counts, 11, 5000, 4)
        yield from (cm.GroupWeek(replace(w, asked=None), 6, counts.value, whole) for w in WEEKS[:2])
        yield cm.GroupWeek(CohortWeek(3, None, 8, None, None), 6, counts.value, None)
        yield cm.GroupMilestone(counts.value, 10_000)
    yield cm.GroupClosing(for_the_group(REPORT))


def everything() -> Iterator[object]:
    yield from to_organisers()
    yield from to_members()
    yield from to_groups()


def classes(module: ModuleType) -> set[type]:
    return {c for c in vars(module).values() if dataclasses.is_dataclass(c) and c.__module__ == module.__name__}


@pytest.mark.parametrize("module", [om, cm], ids=["organiser", "cohort"])
def test_every_message_of_cohorts_has_words_or_a_picture_and_a_sample(module: ModuleType) -> None:
    load()
    said = classes(module) - {om.CohortLine}  # only part of other messages
    assert {c.__name__ for c in said if c not in PHRASES and c not in ATTACHMENTS} == set()
    sampled = {type(m) for m in everything()} | {om.ClosingPicture, om.ClosingFile}
    assert {c.__name__ for c in said - sampled} == set()


@pytest.mark.parametrize("language", LANGUAGES)
def test_everything_said_about_cohorts_fits_and_is_well_formed(language: str) -> None:
    for message in everything():
        for said in (message, _stretched(message)):
            text = render(said, (), Reader(language)).text
            assert 0 < length(text) <= TEXT_LIMIT, said
            assert "{" not in text, text
            assert len(re.findall("<b>", text)) == len(re.findall("</b>", text)), text
            assert "<von>" not in text


def _stretched(message: object) -> object:
    names = {f.name: LONG_NAME for f in dataclasses.fields(message) if f.name in ("name", "cohort", "by")}  # type: ignore[arg-type]
    return replace(message, **names)  # type: ignore[type-var]


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_label_of_cohorts_is_short(language: str) -> None:
    v = voice(Reader(language))
    for key in (*cohort_labels.LABELS, *(f"counts:{c}" for c in cohort_labels.COUNTS)):
        assert labels.known(key)
        assert 0 < len(labels.label(v, Choice(key, "x"))) <= 40
    assert labels.label(voice(ENGLISH), Choice("in_weeks", "x", "6")) == "6 weeks"
    assert labels.label(voice(ENGLISH), Choice("on_day", "x", "2026-04-06")) == "Monday, 6 April"
    assert labels.label(voice(ENGLISH), Choice("up_to", "x", "30")) == "Up to 30"
    assert labels.label(voice(ENGLISH), Choice("take_out", "x", "Ada")) == "Take out: Ada"


def test_every_button_of_cohorts_has_a_label() -> None:
    """Read out of the source, so that a new button cannot be forgotten."""
    from pathlib import Path

    import bot
    import core.dialogue

    modules = ("organiser/cohorts", "client/cohort_membership", "engines/group", "staff/settings")
    files = [Path(core.dialogue.__path__[0]) / f"{module}.py" for module in modules]
    files += [Path(bot.__path__[0]) / "turns" / f"{module}.py" for module in ("cohorts", "apply_effects")]
    found = set(re.findall(r'Choice\(\s*"([a-z_:]+)"', "\n".join(p.read_text() for p in files)))
    assert len(found) > 15
    assert sorted(key for key in found if not labels.known(key)) == []


def test_members_read_plain_words() -> None:
    """US grade 6 or lower, by the same formula as all clients' texts."""
    textstat = pytest.importorskip("textstat")
    told = " ".join(
        render(m, (), ENGLISH).text for m in (*to_members(), *to_groups()) if not isinstance(m, cm.GroupClosing)
    )
    plain = re.sub(r"<[^>]+>|[•🎉]", "", told).replace("\n", ". ")
    assert textstat.flesch_kincaid_grade(plain) <= 6


def test_nothing_said_in_a_group_names_anybody() -> None:
    for kind in (cm.GroupHello, cm.GroupGoodbye, cm.GroupStarts, cm.GroupWeek, cm.GroupMilestone, cm.GroupClosing):
        assert not {"name", "by", "client_id"} & {f.name for f in dataclasses.fields(kind)}, kind.__name__
    said = render(cm.GroupClosing(for_the_group(REPORT)), (), ENGLISH).text
    assert "Energy" in said and "Weight" not in said and "Hip" not in said
    assert "stayed" not in said  # members who left are not pointed out in front of everybody


def test_what_is_withheld_says_so_and_not_of_how_few_it_is() -> None:
    said = render(om.ClosingSaid(replace(REPORT, attendance=(*WEEKS[:2], HIDDEN))), (), ENGLISH).text
    for what in ("Exercise sessions", "Hips", "• Week 3"):
        assert f"{what}: not shown, so that nobody can be made out" in said
    page = om.CohortSaid(LINE, 6, 0, time(18), "activity_minutes", 10, 1, True, (replace(WEEKS[3], total=None),))
    assert "Active minutes: not shown, so that nobody can be made out" in render(page, (), ENGLISH).text
    for kind in (TooFew, CohortWeek, Sum):  # there is nothing it could be read from
        hidden = {TooFew: TooFew("hip"), CohortWeek: HIDDEN, Sum: Sum(Counted.SESSIONS, None, None)}[kind]
        numbers = [getattr(hidden, f.name) for f in dataclasses.fields(kind) if f.name not in ("number", "weeks")]
        assert not [n for n in numbers if isinstance(n, int)]


def test_a_group_never_hears_of_how_many_somebody_checked_in() -> None:
    said = render(cm.GroupWeek(CohortWeek(1, None, 5, 6, 900), 6, "activity_minutes", None), (), ENGLISH).text
    assert "5 of you checked in." in said
    hidden = render(cm.GroupWeek(CohortWeek(1, None, None, 6, 900), 6, "activity_minutes", None), (), ENGLISH).text
    assert "checked in" not in hidden
    few = render(cm.GroupClosing(for_the_group(replace(REPORT, asked=5, kept=1))), (), ENGLISH).text
    assert "Check-ins kept" not in few


def test_a_total_says_of_how_many_weeks_and_people() -> None:
    week = cm.GroupWeek(WEEKS[3], 6, "activity_minutes", Sum(Counted.MINUTES, 11, 3126, 3))
    assert "So far, together: 3,126 active minutes (3 weeks, 11 people)." in render(week, (), ENGLISH).text
    assert "6,261 active minutes (6 weeks, 11 people)" in render(om.ClosingSaid(REPORT), (), ENGLISH).text
    page = om.CohortSaid(LINE, 6, 0, time(18), "activity_minutes", 10, 1, True, WEEKS, 11)
    assert "Together so far: 6,261 active minutes (6 weeks, 11 people)." in render(page, (), ENGLISH).text


def test_a_member_who_kept_nothing_is_thanked_and_not_counted() -> None:
    said = render(cm.CohortOver("Spring", 0, 3), (), ENGLISH).text
    assert "0" not in said and "worth" not in said
    assert "You kept 5 of your 7 check-ins" in render(cm.CohortOver("Spring", 5, 7), (), ENGLISH).text


# --- the closing report -----------------------------------------------------------------------------------------


@pytest.mark.parametrize("language", ["en", "ar"])
def test_the_report_is_a_picture_of_a_phone_s_width_and_an_a4_page(language: str) -> None:
    matplotlib_image = pytest.importorskip("matplotlib.image")
    drawn = render(om.ClosingPicture(REPORT), (), Reader(language))
    assert drawn.photo is not None and length(drawn.caption) <= CAPTION_LIMIT
    height, width = matplotlib_image.imread(io.BytesIO(drawn.photo)).shape[:2]
    assert width == 1080 and 700 <= height <= 2000
    printed = render(om.ClosingFile(REPORT, "pdf"), (), Reader(language)).document
    assert printed is not None and printed[1].startswith(b"%PDF-") and printed[0] == "closing.pdf"


def test_a_report_draws_whatever_is_in_it() -> None:
    many = tuple(replace(WEEKS[1], number=n, asked=40, kept=n) for n in range(13))
    every = tuple(replace(c, measure=m) for c in REPORT.changes[:1] for m in ("energy", "weight", "waist", "hip") * 3)
    for report in (
        replace(REPORT, attendance=(), changes=()),
        replace(REPORT, attendance=many, changes=every, name=LONG_NAME),
        replace(REPORT, attendance=(HIDDEN,), changes=(TooFew("energy"),), asked=None, kept=None),
    ):
        assert render(om.ClosingPicture(report), (), ENGLISH).photo
        assert render(om.ClosingFile(report, "pdf"), (), ENGLISH).document


def test_the_same_report_is_the_same_bytes() -> None:
    assert render(om.ClosingPicture(REPORT), (), ENGLISH).photo == render(om.ClosingPicture(REPORT), (), ENGLISH).photo


def test_the_table_holds_every_figure_and_leaves_the_withheld_ones_empty() -> None:
    read = list(csv.DictReader(io.StringIO(closing_csv(REPORT).decode("utf-8-sig"))))
    by = {(r["what"], r["key"]): r for r in read}
    assert by["check_ins", ""]["asked"] == "77" and by["check_ins", ""]["value"] == "86"
    assert by["total", "activity_minutes"]["value"] == "6261"
    assert by["total", "sessions"]["value"] == ""
    energy = REPORT.changes[0]
    assert isinstance(energy, Paired)
    low = by["change", "energy"]["low"]
    assert Decimal(low) == energy.low.quantize(D("0.01"))
    assert by["change", "hip"] == {**dict.fromkeys(read[0], ""), "what": "change", "key": "hip"}
