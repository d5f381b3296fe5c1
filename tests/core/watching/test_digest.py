"""A coach's week in order, cut to one message, and when a coach is notified at once."""

from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from decimal import Decimal
from typing import Any
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.watching.digest import CaseRow, Digest, FlagFact, by_need, digest, fitted, when_to_tell
from core.watching.flags import RULES, Code, Severity, flag

NOW = datetime(2026, 3, 30, 7, tzinfo=UTC)
DAY = date(2026, 3, 30)
LONDON = ZoneInfo("Europe/London")
_ids = iter(range(1, 10_000))


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


# --- order ------------------------------------------------------------------------------------------------------


def test_urgent_comes_first_then_this_week_then_notes_oldest_first_within_each() -> None:
    made = digest(
        (
            row(1, "Ada", kept(Code.MUST_MEDIUM)),
            row(2, "Ben", kept(Code.WANTS_COACH, 1)),
            row(3, "Chidi", kept(Code.WANTS_COACH, 5)),
            row(4, "Dora", kept(Code.BP_SEVERE, 1)),
        ),
        DAY,
    )
    assert [e.name for e in made.needs] == ["Dora", "Chidi", "Ben", "Ada"]


def test_within_a_client_the_gravest_comes_first() -> None:
    made = digest((row(1, "Ada", kept(Code.WANTS_COACH), kept(Code.BP_SEVERE)),), DAY)
    assert [f.code for f in made.needs[0].flags] == ["bp_severe", "wants_coach"]


def test_changes_silence_and_blocked_chats_have_parts_of_their_own() -> None:
    made = digest(
        (
            row(1, "Ada", kept(Code.CHANGE_BETTER_CONFIRMED), kept(Code.ENERGY_FALLING)),
            row(2, "Ben", kept(Code.MISSED_CHECK_INS)),
            row(3, "Chidi", kept(Code.UNREACHABLE)),
            row(4, "Dora", status="paused", paused_until=date(2026, 4, 14)),
            row(5, "Emil"),
        ),
        DAY,
    )
    assert [e.name for e in made.needs] == ["Ada"] == [e.name for e in made.changes]
    assert [e.name for e in made.quiet] == ["Ben"]
    assert [e.name for e in made.unreachable] == ["Chidi"]
    assert made.paused == (("Dora", date(2026, 4, 14)),)
    assert made.rest == 1 and not made.calm


@pytest.mark.parametrize("code", list(Code))
def test_every_flag_code_reaches_the_digest(code: Code) -> None:
    made = digest((row(1, "Ada", kept(code)),), DAY)
    assert [f.code for e in made.entries for f in e.flags] == [code.value]


def test_who_paused_is_not_missing() -> None:
    made = digest((row(1, "Ada", kept(Code.MISSED_CHECK_INS), status="paused", paused_until=DAY),), DAY)
    assert made.quiet == ()


def test_a_quiet_week_is_calm_and_counts_who_answered() -> None:
    made = digest((row(1, "Ada", asked=True, kept=True), row(2, "Ben", asked=True), row(3, "Emil")), DAY)
    assert made.calm and (made.asked, made.kept, made.rest, made.often) == (2, 1, 3, 0)


def test_who_left_or_is_not_enrolled_yet_is_not_in_it() -> None:
    gone = row(1, "Ada", kept(Code.BP_SEVERE), status="left", asked=True)
    coming = row(2, "Ben", status="enrolling", asked=True)
    assert digest((gone, coming), DAY) == Digest(DAY)


# --- the life of a flag -----------------------------------------------------------------------------------------


def test_a_seen_flag_stays_behind_the_unseen_ones_of_its_kind() -> None:
    made = digest((row(1, "Ada", kept(Code.WANTS_COACH, 9, seen=True)), row(2, "Ben", kept(Code.WANTS_COACH))), DAY)
    assert [e.name for e in made.needs] == ["Ben", "Ada"]


def test_a_seen_note_is_on_the_card_only() -> None:
    assert digest((row(1, "Ada", kept(Code.CHANGE_BETTER_CONFIRMED, seen=True)),), DAY).calm


def test_frequent_weighing_is_counted_also_when_it_was_seen() -> None:
    assert digest((row(1, "Ada", kept(Code.WEIGHING_OFTEN, seen=True)),), DAY).often == 1


def test_an_urgent_flag_that_happens_again_after_it_was_seen_is_new() -> None:
    again = kept(Code.BP_SEVERE, 9, seen=True)
    assert again.seen
    assert not replace(again, refreshed_at=NOW).seen
    assert replace(again, refreshed_at=NOW - timedelta(days=1)).seen


def test_another_flag_that_is_refreshed_stays_seen() -> None:
    assert kept(Code.MISSED_CHECK_INS, 9, seen=True, refreshed_at=NOW).seen


def test_shown_names_every_flag_once() -> None:
    one, two = kept(Code.BP_SEVERE), kept(Code.CHANGE_BETTER_CONFIRMED)
    assert digest((row(1, "Ada", one, two),), DAY).shown == (one.id, two.id)


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


# --- one message ------------------------------------------------------------------------------------------------


def practice(urgent: int, week: int, notes: int, quiet: int) -> Digest:
    codes = (
        [Code.BP_SEVERE] * urgent + [Code.WANTS_COACH] * week + [Code.MUST_MEDIUM] * notes
        + [Code.MISSED_CHECK_INS] * quiet
    )  # fmt: skip
    return digest(tuple(row(n, f"Client {n}", kept(code)) for n, code in enumerate(codes)), DAY)


def characters(made: Digest) -> int:
    """Roughly the rendered length: a line for each entry, a short one in brief."""
    return 100 + len(made.entries) * (70 if made.brief else 150) + 20 * len(made.paused)


def test_what_fits_is_not_cut() -> None:
    whole = practice(1, 2, 1, 1)
    assert fitted(whole, characters) is whole


@given(st.integers(0, 30), st.integers(0, 40), st.integers(0, 40), st.integers(0, 40))
def test_a_long_digest_is_cut_to_one_message_says_how_many_and_never_lacks_an_urgent_one(
    urgent: int, week: int, notes: int, quiet: int
) -> None:
    whole = practice(urgent, week, notes, quiet)
    made = fitted(whole, characters)
    assert characters(made) <= 3900
    assert len(made.entries) + made.left_out == len(whole.entries)
    assert sum(e.urgent for e in made.entries) == urgent
    if made.left_out:  # as much as fits
        assert characters(made) > 3900 - 150


def test_notes_go_before_this_weeks_ones() -> None:
    made = fitted(practice(2, 20, 20, 0), characters)
    assert {Severity(f.severity) for e in made.entries for f in e.flags} >= {Severity.URGENT, Severity.THIS_WEEK}
    left = [f for e in made.entries for f in e.flags if f.severity == Severity.NOTE]
    assert made.left_out == 42 - len(made.entries) and len(left) < 20


def test_very_many_urgent_ones_are_named_in_brief_rather_than_left_out() -> None:
    made = fitted(practice(50, 10, 0, 0), characters)
    assert made.brief and sum(e.urgent for e in made.entries) == 50


def test_more_urgent_ones_than_one_message_can_name_are_counted() -> None:
    made = fitted(practice(90, 0, 0, 0), characters)
    assert made.left_out == 90 - len(made.entries) > 0 and characters(made) <= 3900


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
