"""A coach's week in order, cut to one message, and when a coach is notified at once."""

from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from decimal import Decimal
from typing import Any
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.watching.digest import (
    ROOM,
    SCREEN,
    CaseRow,
    Detail,
    Digest,
    FlagFact,
    OpenInvitation,
    Size,
    by_need,
    digest,
    fitted,
    when_to_tell,
)
from core.watching.flags import RULES, Clears, Code, Severity, flag

NOW = datetime(2026, 3, 30, 7, tzinfo=UTC)
DAY = date(2026, 3, 30)
LONDON = ZoneInfo("Europe/London")
_ids = iter(range(1, 10_000_000))


def kept(code: Code, days: int = 1, seen: bool = False, **more: Any) -> FlagFact:
    usual: dict[str, Any] = {
        "id": next(_ids),
        "code": code.value,
        "severity": RULES[code].severity.value,
        "measure": None,
        "evidence": (),
        "since": NOW - timedelta(days=days),
        "seen_at": NOW - timedelta(hours=1) if seen else None,
    }
    return FlagFact(**(usual | more))


def row(number: int, name: str, *flags: FlagFact, **more: Any) -> CaseRow:
    return CaseRow(number, name, **({"status": "active", "flags": flags} | more))


def made_of(rows: tuple[CaseRow, ...], day: date = DAY, *invitations: OpenInvitation) -> Digest:
    return digest(rows, day, now=NOW, invitations=invitations)


# --- order ------------------------------------------------------------------------------------------------------


def test_urgent_comes_first_and_within_one_severity_the_newest() -> None:
    made = made_of(
        (
            row(2, "Ben", kept(Code.WANTS_COACH, 1)),
            row(3, "Chidi", kept(Code.WANTS_COACH, 5)),
            row(4, "Dora", kept(Code.BP_SEVERE, 56)),
            row(5, "Emil", kept(Code.BP_SEVERE, 1)),
        )
    )
    assert [e.name for e in made.needs] == ["Emil", "Dora", "Ben", "Chidi"]


def test_within_a_client_the_gravest_comes_first() -> None:
    made = made_of((row(1, "Ada", kept(Code.WANTS_COACH), kept(Code.BP_SEVERE)),), DAY)
    assert [f.code for f in made.needs[0].flags] == ["bp_severe", "wants_coach"]


def test_everybody_stands_in_one_section_by_the_gravest_that_is_new() -> None:
    made = made_of(
        (
            row(1, "Ada", kept(Code.CHANGE_BETTER_CONFIRMED), kept(Code.ENERGY_FALLING)),
            row(2, "Ben", kept(Code.MISSED_CHECK_INS), kept(Code.MUST_MEDIUM)),
            row(3, "Chidi", kept(Code.UNREACHABLE)),
            row(4, "Dora", status="paused", paused_until=date(2026, 4, 14)),
            row(5, "Emil"),
            row(6, "Farah", kept(Code.CHANGE_WORSE_CONFIRMED)),
            row(7, "Goran", kept(Code.WANTS_COACH, seen=True)),
        )
    )
    sections = (made.needs, made.changes, made.quiet, made.known, made.away)
    assert [[e.name for e in section] for section in sections] == [
        ["Ada"],
        ["Farah"],
        ["Ben", "Chidi"],
        ["Goran"],
        ["Dora"],
    ]
    assert made.away[0].until == date(2026, 4, 14)
    assert (made.needed, made.rest, made.calm) == (1, 1, False)
    assert [f.code for f in made.needs[0].flags] == ["energy_falling", "change_better_confirmed"]


@pytest.mark.parametrize("code", [c for c in Code if RULES[c].clears is not Clears.BY_ITSELF])
def test_every_flag_code_reaches_the_made_of(code: Code) -> None:
    made = made_of((row(1, "Ada", kept(code)),), DAY)
    assert [f.code for e in made.entries for f in e.flags] == [code.value]


def test_who_takes_a_break_comes_after_who_does_not() -> None:
    away = row(1, "Ada", kept(Code.BP_SEVERE), status="paused", paused_until=DAY)
    made = made_of((away, row(2, "Ben", kept(Code.BP_SEVERE, 9))))
    assert [e.name for e in made.needs] == ["Ben", "Ada"] and made.needs[1].until == DAY


def test_who_paused_is_not_missing() -> None:
    made = made_of((row(1, "Ada", kept(Code.MISSED_CHECK_INS), status="paused", paused_until=DAY),), DAY)
    assert made.quiet == ()


def test_a_quiet_week_is_calm_and_counts_who_answered() -> None:
    made = made_of((row(1, "Ada", asked=True, kept=True), row(2, "Ben", asked=True), row(3, "Emil")), DAY)
    assert made.calm and (made.asked, made.kept, made.rest, made.often) == (2, 1, 3, 0)


def test_who_left_or_is_not_enrolled_yet_is_not_in_it() -> None:
    gone = row(1, "Ada", status="left", asked=True)
    coming = row(2, "Ben", status="enrolling", asked=True)
    assert made_of((gone, coming), DAY) == Digest(DAY)


def test_an_alarm_after_care_has_ended_is_in_it() -> None:
    made = made_of((row(1, "Ada", kept(Code.RED_FLAG_WORDS), status="left"),))
    assert [(e.name, e.status) for e in made.needs] == [("Ada", "left")]


def test_a_whole_caseload_gone_quiet_is_a_matter_of_the_bot() -> None:
    made = made_of(tuple(row(n, f"C{n}", asked=True) for n in range(60)))
    assert made.silent and not made.calm and made.needed == 0
    (one,) = made.needs
    assert (one.flags[0].code, dict(one.flags[0].evidence)) == ("caseload_quiet", {"asked": Decimal(60)})


@pytest.mark.parametrize(("asked", "kept_"), [(2, 0), (60, 1), (0, 0)])
def test_a_caseload_that_answered_or_was_hardly_asked_is_not_silent(asked: int, kept_: int) -> None:
    rows = tuple(row(n, f"C{n}", asked=n < asked, kept=n < kept_) for n in range(60))
    assert not made_of(rows).silent and made_of(rows).calm


@pytest.mark.parametrize(("days", "section"), [(2, ""), (3, "needs"), (9, "needs"), (10, "known"), (40, "known")])
def test_somebody_stuck_in_the_first_questions_is_new_for_a_week_and_known_after(days: int, section: str) -> None:
    made = made_of((row(1, "Ada", status="enrolling", joined=NOW - timedelta(days=days)),))
    assert [name for name in ("needs", "known") if getattr(made, name)] == ([section] if section else [])


@pytest.mark.parametrize(("days", "told"), [(6, 0), (7, 1), (13, 1), (14, 0)])
def test_a_link_nobody_has_opened_is_told_once_after_a_week(days: int, told: int) -> None:
    made = made_of((), DAY, OpenInvitation(4, "Ben", NOW - timedelta(days=days)))
    assert [e.name for e in made.quiet] == ["Ben"] * told and made.shown == () == made.named
    set_up = made_of((row(1, "Ada", status="invited", joined=NOW - timedelta(days=days)),))
    assert [e.name for e in set_up.quiet] == ["Ada"] * told


# --- the life of a flag -----------------------------------------------------------------------------------------


def test_a_seen_flag_is_known_and_not_named_twice() -> None:
    old, new = kept(Code.WANTS_COACH, 9, seen=True), kept(Code.ENERGY_FALLING)
    made = made_of((row(1, "Ada", old), row(2, "Ben", old, new)))
    assert [e.name for e in made.known] == ["Ada"]
    assert [f.code for e in made.needs for f in e.flags] == ["energy_falling"]
    assert made.named == ((2, "Ben"), (1, "Ada"))


def test_what_an_earlier_weeks_digest_has_named_is_known_whether_or_not_anybody_pressed_seen() -> None:
    lately, before = (kept(Code.WANTS_COACH, 9, digest_at=NOW - timedelta(days=days)) for days in (5, 7))
    made = made_of((row(1, "Ada", lately), row(2, "Ben", before)))
    assert ([e.name for e in made.needs], [e.name for e in made.known]) == (["Ada"], ["Ben"])


def test_something_urgent_that_is_known_still_needs_a_person() -> None:
    made = made_of((row(1, "Ada", kept(Code.BP_SEVERE, 9, seen=True)), row(2, "Ben", kept(Code.WANTS_COACH))))
    assert made.needed == 2 and [e.urgent for e in made.known] == [True]


def test_something_urgent_that_happened_again_after_a_digest_named_it_is_new() -> None:
    again = kept(Code.BP_SEVERE, 9, digest_at=NOW - timedelta(days=7), refreshed_at=NOW - timedelta(days=1))
    assert [e.name for e in made_of((row(1, "Ada", again),)).needs] == ["Ada"]


def test_something_urgent_and_known_is_not_hidden_behind_a_note_that_is_new() -> None:
    old, note = kept(Code.BP_SEVERE, 9, seen=True), kept(Code.MUST_MEDIUM)
    made = made_of((row(1, "Ada", old, note),))
    (one,) = made.needs
    assert ([f.code for f in one.flags], [f.code for f in one.still]) == (["must_medium"], ["bp_severe"])
    assert one.urgent and made.known == () and made.needed == 1


def test_what_is_new_today_stands_above_what_was_urgent_weeks_ago() -> None:
    old, note = kept(Code.BP_SEVERE, 56, seen=True), kept(Code.MUST_MEDIUM)
    rows = (row(1, "Ada", old, note), row(2, "Ben", kept(Code.WANTS_COACH, 5)), row(3, "Emil", kept(Code.BP_SEVERE, 2)))
    assert [e.name for e in made_of(rows).needs] == ["Emil", "Ben", "Ada"]


@pytest.mark.parametrize(("days", "section"), [(9, "known"), (1, "needs")], ids=["of-then", "of-yesterday"])
def test_what_a_known_flag_says_already_is_no_news_unless_it_happened_again(days: int, section: str) -> None:
    twice = kept(Code.BP_SEVERE_REPEATED, 9, seen=True, measure="blood_pressure")
    made = made_of((row(1, "Ada", twice, kept(Code.BP_SEVERE, days, measure="blood_pressure")),))
    assert [name for name in ("needs", "known") if getattr(made, name)] == [section]


def test_an_alarm_that_settled_by_itself_is_told_but_needs_nobody() -> None:
    over = kept(Code.PULSE_FAST, 3, cleared_at=NOW - timedelta(days=3), ended="reading", after=(("rate", Decimal(96)),))
    made = made_of((row(1, "Ada", settled=(over,)), row(2, "Ben", kept(Code.WANTS_COACH), settled=(over,))))
    assert [e.name for e in made.changes] == ["Ada"] and made.needed == 1 and not made.changes[0].urgent
    assert made.shown == (made.needs[0].flags[0].id, over.id, over.id)


def test_a_seen_note_is_on_the_card_only() -> None:
    assert made_of((row(1, "Ada", kept(Code.CHANGE_BETTER_CONFIRMED, seen=True)),), DAY).calm


def test_frequent_weighing_that_was_seen_is_counted() -> None:
    assert made_of((row(1, "Ada", kept(Code.WEIGHING_OFTEN, seen=True)),), DAY).often == 1
    assert made_of((row(1, "Ada", kept(Code.WEIGHING_OFTEN)),), DAY).often == 0


def test_an_urgent_flag_that_happens_again_after_it_was_seen_is_new() -> None:
    again = kept(Code.BP_SEVERE, 9, seen=True)
    assert again.seen
    assert not replace(again, refreshed_at=NOW).seen
    assert replace(again, refreshed_at=NOW - timedelta(days=1)).seen


def test_another_flag_that_is_refreshed_stays_seen() -> None:
    assert kept(Code.MISSED_CHECK_INS, 9, seen=True, refreshed_at=NOW).seen


def test_shown_names_every_flag_once() -> None:
    one, two = kept(Code.BP_SEVERE), kept(Code.CHANGE_BETTER_CONFIRMED)
    assert made_of((row(1, "Ada", one, two),), DAY).shown == (one.id, two.id)


def test_a_list_by_need_has_the_unseen_and_grave_first_then_the_silent_then_names() -> None:
    rows = (
        row(1, "emil"),
        row(2, "Ada"),
        row(3, "Ben", missed=1),
        row(4, "Chidi", kept(Code.MUST_MEDIUM)),
        row(5, "Dora", kept(Code.BP_SEVERE, seen=True)),
        row(6, "Farah", kept(Code.BP_SEVERE)),
    )
    assert [r.name for r in by_need(rows)] == ["Farah", "Dora", "Chidi", "Ben", "Ada", "emil"]


# --- one screen -------------------------------------------------------------------------------------------------


def practice(urgent: int, week: int, notes: int, quiet: int) -> Digest:
    codes = (
        [Code.BP_SEVERE] * urgent + [Code.WANTS_COACH] * week + [Code.MUST_MEDIUM] * notes
        + [Code.MISSED_CHECK_INS] * quiet
    )  # fmt: skip
    return made_of(tuple(row(n, f"Client {n}", kept(code)) for n, code in enumerate(codes, 1)))


def size(made: Digest) -> Size:
    """Roughly as rendered: two lines for an entry in full, one in short, and names five to a line."""
    count = {detail: sum(e.detail is detail for e in made.entries) for detail in Detail}
    lines = 4 + 2 * count[Detail.FULL] + count[Detail.SHORT] + -(-count[Detail.NAMED] // 5)
    return Size(40 * lines, lines)


def details(made: Digest) -> list[Detail]:
    return [e.detail for e in made.entries]


def test_what_fits_is_not_cut() -> None:
    whole = practice(1, 2, 1, 1)
    assert fitted(whole, size) is whole


@given(st.integers(0, 30), st.integers(0, 40), st.integers(0, 40), st.integers(0, 40))
def test_a_long_digest_is_cut_to_one_screen_and_everybody_is_there_or_counted(
    urgent: int, week: int, notes: int, quiet: int
) -> None:
    whole = practice(urgent, week, notes, quiet)
    made = fitted(whole, size)
    assert size(made).fits(ROOM) or urgent > SCREEN - 6
    assert len(made.entries) + made.left_out == len(whole.entries)
    assert sum(e.urgent and e.detail is not Detail.NAMED for e in made.entries) == urgent
    assert fitted(made, size) == made


def test_what_is_less_pressing_is_shortened_first_and_named_next() -> None:
    made = fitted(practice(2, 10, 20, 0), size)
    assert details(made)[:2] == [Detail.SHORT] * 2
    assert {e.detail for e in made.entries if e.flags[0].severity == Severity.THIS_WEEK} == {Detail.SHORT}
    assert {e.detail for e in made.changes} == {Detail.SHORT, Detail.NAMED} and made.left_out == 0


def test_very_many_urgent_ones_are_a_line_each_rather_than_left_out() -> None:
    made = fitted(practice(40, 10, 0, 0), size)
    assert details(made) == [Detail.SHORT] * 40 and made.left_out == 10


def test_more_urgent_ones_than_one_message_can_hold_are_counted() -> None:
    made = fitted(practice(120, 0, 0, 0), size)
    assert made.left_out == 120 - len(made.entries) > 0 and size(made).characters <= 3900


def test_what_another_flag_includes_is_not_told_beside_it_but_counts_as_shown() -> None:
    once, twice = kept(Code.BP_SEVERE), kept(Code.BP_SEVERE_REPEATED, 2)
    (one,) = made_of((row(1, "Ada", once, twice),)).needs
    assert [f.code for f in one.told] == ["bp_severe_repeated"] and set(one.shown) == {once.id, twice.id}
    other = made_of((row(1, "Ada", kept(Code.CHANGE_WORSE_LARGE, measure="waist"), kept(Code.ENERGY_FALLING)),))
    assert len(other.needs[0].told) == 2


def test_only_what_is_told_counts_as_shown() -> None:
    both = row(1, "Ada", kept(Code.BP_SEVERE), kept(Code.WANTS_COACH))
    (one,) = made_of((both,)).needs
    full, short, named = (replace(one, detail=detail) for detail in Detail)
    assert [len(e.told) for e in (full, short, named)] == [2, 1, 0]
    assert replace(made_of((both,)), needs=(short,)).shown == (one.flags[0].id,)


# --- at once ----------------------------------------------------------------------------------------------------

NIGHT = datetime(2026, 3, 30, 22, 30, tzinfo=UTC)  # 23:30 in London
SAME_DAY = flag(Code.RED_FLAG_WORDS, NIGHT, level="same_day", sign="dizzy")
EMERGENCY = flag(Code.RED_FLAG_WORDS, NIGHT, level="emergency", sign="chest_pain")


@pytest.mark.parametrize(
    ("at", "told"),
    [
        pytest.param("2026-03-30T20:59+00:00", "2026-03-30T20:59+00:00", id="before-ten-at-once"),
        pytest.param("2026-03-30T21:00+00:00", "2026-03-31T06:00+00:00", id="from-ten-on-at-seven"),
        pytest.param("2026-03-31T02:00+00:00", "2026-03-31T06:00+00:00", id="after-midnight-the-same-day"),
        pytest.param("2026-03-31T06:00+00:00", "2026-03-31T06:00+00:00", id="from-seven-on-at-once"),
        pytest.param("2026-03-28T23:00+00:00", "2026-03-29T06:00+00:00", id="the-night-the-clock-goes-forward"),
        pytest.param("2026-10-24T22:00+00:00", "2026-10-25T07:00+00:00", id="the-night-the-clock-goes-back"),
    ],
)
def test_what_is_for_the_same_day_waits_for_the_end_of_a_quiet_night(at: str, told: str) -> None:
    now = datetime.fromisoformat(at)
    assert when_to_tell(SAME_DAY, now, LONDON, quiet_nights=True) == datetime.fromisoformat(told)
    assert when_to_tell(SAME_DAY, now, LONDON, quiet_nights=False) == now


def test_an_emergency_never_waits() -> None:
    assert when_to_tell(EMERGENCY, NIGHT, LONDON, quiet_nights=True) == NIGHT


@pytest.mark.parametrize("code", [c for c in Code if RULES[c].severity is Severity.URGENT])
def test_of_urgent_flags_only_those_that_guidance_lets_wait_do(code: Code) -> None:
    evidence: dict[str, str | Decimal] = {"level": "emergency"} if code is Code.RED_FLAG_WORDS else {}
    if code is Code.SYMPTOM_REPORTED:
        evidence = {"sign": "gate_signs"}
    waits = when_to_tell(flag(code, NIGHT, None, **evidence), NIGHT, LONDON, quiet_nights=True) != NIGHT
    assert waits is (code in (Code.FAST_GAIN, Code.BP_LOW))


def test_not_feeling_well_before_a_test_may_wait_a_sign_may_not() -> None:
    unwell, sign = (flag(Code.SYMPTOM_REPORTED, NIGHT, sign=s) for s in ("gate_unwell", "gate_signs"))
    assert when_to_tell(unwell, NIGHT, LONDON, quiet_nights=True) > NIGHT
    assert when_to_tell(sign, NIGHT, LONDON, quiet_nights=True) == NIGHT
