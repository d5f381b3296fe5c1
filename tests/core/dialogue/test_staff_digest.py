"""The digest in a coach's chat: at its slot, seen, asked for, with its sheet."""

from datetime import date, timedelta
from decimal import Decimal

from core.dialogue.kit.effects import Say
from core.dialogue.staff import messages as sm
from core.dialogue.staff.effects import MarkSeen, ToldInDigest
from core.dialogue.staff.step import stamp
from core.watching.digest import Detail, Size
from core.watching.flags import Code, flag
from tests.core.dialogue.office import NOW, WEEK, Office, card, kept, readings

DAY = date(2026, 3, 30)
WISH = flag(Code.WANTS_COACH, NOW - timedelta(days=2))
WIDER = flag(Code.CHANGE_WORSE_CONFIRMED, NOW, "waist", difference=Decimal(6), mdc95=Decimal("5.2"))
BEN = card(2, "Ben", flags=(kept(9, WISH),))
CHIDI = card(3, "Chidi", flags=(kept(11, WIDER),), history=readings("waist", "92", "98", "98.5"))
ADA = card(1, "Ada", answered=DAY)
SEEN = f"seen:{stamp(NOW)}"


def test_at_its_slot_a_digest_is_said_once_for_its_date() -> None:
    office = Office(ADA, BEN).due()
    (say,) = office.did(Say)
    assert say.occasion == "digest/7/2026-03-30"
    assert say.message.digest.day == DAY
    assert [e.name for e in say.message.digest.needs] == ["Ben"]


def test_a_quiet_week_has_no_button_to_see_anything() -> None:
    office = Office(ADA).due()
    assert office.heard(sm.DigestSaid).digest.calm
    assert office.choices == ["list:need:0"]


def test_everybody_named_is_one_tap_away_however_many_there_are() -> None:
    many = [card(n, f"Client {n:02}", answered=DAY, flags=(kept(n, WISH),)) for n in range(1, 61)]
    office = Office(*many).due()
    tapped = [c for c in office.choices if c.startswith("card:")]
    assert len(tapped) == 8 and "people:0" in office.choices
    pages = []
    for page in range(3):
        office.presses(f"people:{page}")
        pages += [c for c in office.choices if c.startswith("card:")]
        assert len(office.choices) <= 100  # buttons the platform allows in one message
    assert sorted(pages) == sorted(f"card:{n}" for n in range(1, 61)) and pages[:8] == tapped
    assert office.heard(sm.PeopleNamed) == sm.PeopleNamed(60, 2, 3)
    assert office.presses("people:99").heard(sm.PeopleNamed).page == 2


def test_somebody_known_or_on_a_break_is_one_tap_away() -> None:
    seen = card(2, "Ben", flags=(kept(9, WISH, seen_at=NOW),))
    away = card(4, "Dora", status="paused", paused_until=DAY)
    assert {"card:2", "card:4"} <= set(Office(ADA, seen, away).due().choices)


def test_seen_marks_every_flag_that_was_shown() -> None:
    office = Office(ADA, BEN, CHIDI).due().presses(SEEN)
    assert office.did(MarkSeen) == [MarkSeen((9, 11), NOW)]
    assert office.heard(sm.SeenNoted).names == ("Ben", "Chidi")


def test_an_older_seen_button_does_not_mark_what_a_newer_digest_told() -> None:
    office = Office(ADA, BEN).due()
    office.now += timedelta(hours=3)
    office.clients[1] = card(1, "Ada", flags=(kept(20, WISH),))
    office.commands("digest")
    assert office.presses(SEEN).did(MarkSeen) == [] and office.kinds == ["DigestSaid"]


def test_the_weekly_digest_notes_what_it_has_named_and_one_asked_for_does_not() -> None:
    office = Office(ADA, BEN, CHIDI).due()
    assert office.did(ToldInDigest) == [ToldInDigest((9, 11))]
    assert office.commands("digest").did(ToldInDigest) == []


def test_a_flag_raised_after_the_digest_is_not_seen_with_it() -> None:
    office = Office(ADA, BEN).due()
    office.clients[1] = card(1, "Ada", flags=(kept(20, WISH),))
    assert office.presses(SEEN).did(MarkSeen) == [MarkSeen((9,), NOW)]


def test_seen_under_a_digest_of_weeks_ago_shows_the_present_one() -> None:
    office = Office(ADA, BEN).due()
    office.now += WEEK
    office.due()
    office.presses(SEEN)
    assert office.did(MarkSeen) == [] and office.heard(sm.DigestSaid).digest.day == date(2026, 4, 6)


def test_the_sheet_follows_the_digest_when_there_is_something_to_draw() -> None:
    office = Office(BEN, CHIDI).due()
    says = office.did(Say)
    assert [type(s.message).__name__ for s in says] == ["DigestSaid", "Sheet"]
    assert says[1].occasion == "digest/7/2026-03-30/sheet"
    (panel,) = says[1].message.panels
    assert (panel.name, panel.code) == ("Chidi", "change_worse_confirmed")
    assert [p.value for p in panel.picture.points] == [Decimal(92), Decimal(98), Decimal("98.5")]


def test_one_reading_is_no_trend() -> None:
    once = card(3, "Chidi", flags=(kept(11, WIDER),), history=readings("waist", "98"))
    assert [type(s.message).__name__ for s in Office(once).due().did(Say)] == ["DigestSaid"]


def test_frequent_weighing_is_never_drawn_as_a_weight_curve() -> None:
    often = flag(Code.WEIGHING_OFTEN, NOW, "weight", count=Decimal(3))
    often_card = card(1, "Ada", flags=(kept(5, often),), history=readings("weight", "82", "81"))
    assert [type(s.message).__name__ for s in Office(often_card).due().did(Say)] == ["DigestSaid"]


def test_the_picture_has_six_panels_and_the_pdf_has_all() -> None:
    many = [
        card(n, f"Client {n:02}", flags=(kept(n, WIDER),), history=readings("waist", "92", "98")) for n in range(1, 10)
    ]
    office = Office(*many)
    picture = office.presses("sheet").heard(sm.Sheet)
    assert (len(picture.panels), picture.left_out, picture.pdf) == (6, 3, False)
    for ask in (lambda: office.presses("sheet:pdf"), lambda: office.commands("digest", "pdf")):
        whole = ask().heard(sm.Sheet)
        assert (len(whole.panels), whole.left_out, whole.pdf) == (9, 0, True)


def test_what_was_seen_is_not_drawn_again_by_itself_but_when_asked_for() -> None:
    seen = card(3, "Chidi", flags=(kept(11, WIDER, seen_at=NOW),), history=readings("waist", "92", "98"))
    office = Office(seen).due()
    assert [type(s.message).__name__ for s in office.did(Say)] == ["DigestSaid"]
    assert not any(choice.startswith("seen:") for choice in office.choices)
    assert len(office.presses("sheet").heard(sm.Sheet).panels) == 1


def test_who_looks_after_nobody_gets_no_digest() -> None:
    assert Office().due().effects == ()
    assert Office(card(1, "Ada", status="enrolling")).due().effects == ()
    assert Office().commands("digest").kinds == ["NoClientsYet"]


def test_asking_for_a_sheet_when_nobody_is_flagged_says_so() -> None:
    assert Office(ADA).presses("sheet:pdf").kinds == ["NothingToDraw"]


def test_a_digest_can_be_asked_for_at_any_time() -> None:
    office = Office(ADA, BEN).commands("digest")
    (say,) = office.did(Say)
    assert say.occasion is None
    assert office.presses(SEEN).did(MarkSeen) == [MarkSeen((9,), NOW)]


def test_a_digest_is_cut_to_what_fits_as_this_coach_reads_it() -> None:
    many = [card(n, f"Client {n:02}", answered=DAY, flags=(kept(n, WISH),)) for n in range(1, 41)]
    office = Office(*many, size=lambda made: Size(0, sum(e.detail is not Detail.NAMED for e in made.entries)))
    made = office.due().heard(sm.DigestSaid).digest
    assert [e.detail for e in made.entries] == [Detail.FULL] * 25 + [Detail.NAMED] * 15
    assert office.presses(SEEN).did(MarkSeen) == [MarkSeen(tuple(range(1, 26)), NOW)]
