"""A programme has an end: a last report for both, nothing asked after it, and a new start from where it ended."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta
from decimal import Decimal

import pytest

from bot.rendering import Reader, render
from core.care import NumberVisibility, Plan, Programme, Status
from core.dialogue.client import messages as m
from core.dialogue.client import messages_to_coach as cm
from core.dialogue.client import report_messages as rm
from core.dialogue.client.effects import CancelTimer, ChangeClient, NotAsked, NotifyCoach
from core.dialogue.client.facts import GoalFact
from core.dialogue.client.report import Report
from core.dialogue.staff import messages as sm
from core.dialogue.staff.effects import ChangePlan
from core.reading import Reading
from tests.builders import ADA, MONDAY, Chat, checked_in
from tests.core.dialogue.office import NOW, Office, card, readings

WEEK = timedelta(weeks=1)


def twelve_weeks(waist: tuple[str, ...] = ("104", "100", "96"), **more: object) -> Chat:
    """Ada on the Monday twelve weeks after her first, with what she told before."""
    starts = MONDAY.date()
    chat = Chat(replace(ADA, plan=replace(ADA.plan, programme=Programme(starts, 12)), **more))
    body = [
        ("waist", waist),
        ("weight", ("88", "86", "84")),
        ("hip", ("105", "105", "104")),
        ("resting_heart_rate", ("72", "71", "72")),
    ]
    for measure, values in body:
        for n, value in enumerate(values):
            key = f"{measure}/{n}"
            chat.keys[key] = Reading(measure, Decimal(value), MONDAY + 4 * n * WEEK, key=key)
    for n in range(12):
        chat.keys[f"energy/{n}"] = Reading("energy", Decimal(4 + n // 4), MONDAY + n * WEEK, key=f"energy/{n}")
    check_ins = tuple((starts + n * WEEK, n not in (3, 7)) for n in range(12))
    history = tuple(sorted(chat.keys.values(), key=lambda r: r.taken_at))
    chat.facts = replace(chat.facts, check_ins=check_ins, history=history)
    chat.now = MONDAY + 12 * WEEK
    return chat


def told(chat: Chat, kind: type) -> list[object]:
    return [e.message for e in chat.did(NotifyCoach) if isinstance(e.message, kind)]


def ended(chat: Chat) -> Report:
    found: Report = chat.heard(rm.LastReport).report
    return found


def test_the_last_check_in_ends_with_the_report_for_both_and_nothing_is_asked_after_it() -> None:
    chat = checked_in(twelve_weeks())
    report = ended(chat)
    assert (report.kept, report.asked) == (11, 13)
    assert [p.pdf for p in chat.said if isinstance(p, rm.LastReportPicture)] == [False, True]
    assert [p.pdf for p in told(chat, rm.ReportForCoach)] == [False, True]  # type: ignore[attr-defined]
    assert told(chat, cm.ProgrammeEnded)
    assert chat.facts.status is Status.FINISHED and chat.state.asking is None and chat.state.day is None
    assert not any(isinstance(said, m.CheckInDone) for said in chat.said)
    chat.later(weeks=1).due()
    assert chat.said == []


@pytest.mark.parametrize(("weeks", "next_time"), [(12, False), (16, True)], ids=["the-last", "one-before-the-last"])
def test_no_next_time_is_promised_at_the_last_check_in(weeks: int, next_time: bool) -> None:
    chat = twelve_weeks(("104", "104", "104"))
    plan = Plan(measures=("waist",), programme=Programme(MONDAY.date(), weeks))
    chat.facts = replace(chat.facts, plan=plan)
    chat.due().says("7").says("92 cm").presses("ok:yes").presses("cond:same")
    text = render(chat.heard(m.VerdictSaid), (), Reader()).text
    assert "less than on" in text and ("Next time" in text) is next_time


def test_a_week_before_its_end_a_check_in_ends_as_ever() -> None:
    chat = twelve_weeks()
    chat.now -= WEEK
    last = chat.keys.pop("energy/11")
    chat.facts = replace(chat.facts, history=tuple(r for r in chat.facts.history if r != last))
    checked_in(chat)
    assert "LastReport" not in chat.kinds and "CheckInDone" in chat.kinds


def test_the_report_says_what_changed_and_what_cannot_be_told_and_never_that_nothing_changed() -> None:
    report = ended(checked_in(twelve_weeks()))
    assert {r.measure for r in report.changed} >= {"waist", "weight"}
    assert {r.measure for r in report.unsure} >= {"hip", "resting_heart_rate"}
    (waist,) = [r for r in report.results if r.measure == "waist"]
    assert waist.start is not None and waist.now is not None
    assert (waist.start.amount.value, waist.now.amount.value) == (104, 94)


def test_the_coachs_report_calls_nothing_a_change_that_the_clients_does_not() -> None:
    chat = checked_in(twelve_weeks(waist=("100", "99", "98")))
    assert "waist" in {r.measure for r in ended(chat).unsure}
    whole = told(chat, rm.ReportForCoach)[0].report  # type: ignore[attr-defined]
    assert "waist" in {r.measure for r in whole.unsure}


def test_if_the_last_check_in_is_missed_the_report_comes_a_week_later_without_it() -> None:
    chat = twelve_weeks().due()
    assert "CheckInOpens" in chat.kinds
    chat.facts = replace(chat.facts, check_ins=(*chat.facts.check_ins, (chat.now.date(), False)))
    chat.later(weeks=1)
    chat.facts = replace(chat.facts, check_ins=(*chat.facts.check_ins, (chat.now.date(), False)))
    chat.due()
    assert (ended(chat).kept, ended(chat).asked) == (10, 13)
    assert [e.day for e in chat.did(NotAsked)] == [chat.now.date().isoformat()]
    assert "CheckInOpens" not in chat.kinds


def test_body_numbers_a_client_does_not_want_to_see_are_only_in_the_coachs_report() -> None:
    chat = twelve_weeks()
    hidden = replace(chat.facts.plan, numbers=NumberVisibility.COACH_ONLY)
    chat.facts = replace(chat.facts, plan=hidden, goals=(GoalFact("waist", "90", date(2026, 6, 1), MONDAY),))
    checked_in(chat)
    assert {r.measure for r in ended(chat).results} == {"energy", "resting_heart_rate"}
    assert ended(chat).goals == ()
    whole = told(chat, rm.ReportForCoach)[0].report  # type: ignore[attr-defined]
    assert {"waist", "weight"} <= {r.measure for r in whole.results} and whole.goals


def test_a_goal_counts_only_what_is_beyond_error() -> None:
    chat = twelve_weeks()
    goals = (GoalFact("waist", "84", date(2026, 9, 1), MONDAY), GoalFact("hip", "100", date(2026, 9, 1), MONDAY))
    chat.facts = replace(chat.facts, goals=goals)
    waist, hip = ended(checked_in(chat)).goals
    assert (waist.percent, waist.reached, hip.percent) == (50, False, 0)


@pytest.mark.parametrize(
    ("minutes", "days", "expected"),
    [
        ("160", "2", ("same_hour", "keep_active", "keep_strength")),
        ("149", "1", ("same_hour", "more_active", "more_strength")),
    ],
)
def test_what_to_keep_doing_comes_from_the_last_four_weeks(minutes: str, days: str, expected: tuple[str, ...]) -> None:
    chat = twelve_weeks()
    for n in range(8, 12):
        at = MONDAY + n * WEEK
        chat.keys[f"minutes/{n}"] = Reading("activity_minutes", Decimal(minutes), at, key=f"minutes/{n}")
        chat.keys[f"days/{n}"] = Reading("strength_days", Decimal(days), at, key=f"days/{n}")
    chat.facts = replace(chat.facts, plan=replace(chat.facts.plan, measures=("waist",)))
    assert ended(checked_in(chat)).keep == expected


def test_whoever_kept_few_check_ins_is_not_told_to_keep_their_hour() -> None:
    chat = twelve_weeks()
    chat.facts = replace(chat.facts, check_ins=tuple((day, n < 5) for n, (day, _) in enumerate(chat.facts.check_ins)))
    assert "same_hour" not in ended(checked_in(chat)).keep


# --- after it ---------------------------------------------------------------------------------------------------


def test_after_the_end_the_bot_says_so_and_offers_what_comes_next() -> None:
    chat = checked_in(twelve_weeks()).later(days=2).commands("today")
    over = chat.heard(rm.ProgrammeOver)
    assert over.ended == (MONDAY + 12 * WEEK).date()
    assert chat.choices == ["round", "set:pause", "set:leave"]


def test_danger_is_heard_after_the_end_too() -> None:
    chat = checked_in(twelve_weeks()).later(days=2).says("I have chest pain")
    assert chat.raised and "ProgrammeOver" not in chat.kinds


def test_a_new_round_begins_with_the_last_results_as_its_baseline_and_the_coach_hears_of_it() -> None:
    chat = checked_in(twelve_weeks()).later(days=2).presses("round")
    plan = chat.facts.plan
    assert chat.facts.status is Status.ACTIVE
    assert plan.programme == Programme((MONDAY + 12 * WEEK).date() + timedelta(days=2), 12)
    last = [r for r in chat.facts.history if r.measure == "waist"][-1]
    assert plan.baseline_since is not None and plan.baseline_since <= last.taken_at
    assert chat.heard(rm.RoundBegins).weeks == 12 and told(chat, cm.NewRound)


def test_a_new_round_does_not_begin_with_a_look_back_on_the_last_one() -> None:
    chat = checked_in(twelve_weeks())
    chat.state = replace(chat.state, looked_back=(MONDAY + 8 * WEEK).date())
    chat.later(days=2).presses("round").later(days=5).due().says("7").says("94 cm").presses("cond:same")
    assert "CheckInDone" in chat.kinds and "LookBack" not in chat.kinds


def test_a_new_round_long_after_the_end_has_a_baseline_of_its_own() -> None:
    chat = checked_in(twelve_weeks()).later(weeks=5).presses("round")
    assert chat.facts.plan.baseline_since == chat.now


def test_the_button_pressed_twice_begins_one_round() -> None:
    chat = checked_in(twelve_weeks()).presses("round").presses("round")
    assert not chat.did(ChangeClient) and "RoundBegins" in chat.kinds


def test_after_a_break_a_new_round_begins_by_itself() -> None:
    chat = checked_in(twelve_weeks()).presses("set:pause").presses("pause:2w")
    assert chat.facts.status is Status.PAUSED
    chat.facts = replace(chat.facts, status=Status.ACTIVE, paused_until=None)  # as the sweep does
    chat.later(weeks=3).due()
    assert chat.kinds[:2] == ["RoundBegins", "CheckInOpens"]
    assert chat.facts.plan.programme is not None and chat.facts.plan.programme.ended is None


def test_goodbye_asks_whether_that_is_sure() -> None:
    assert "LeaveSure" in checked_in(twelve_weeks()).presses("set:leave").kinds


# --- the coach's side -------------------------------------------------------------------------------------------


def test_the_coach_sets_the_weeks_and_they_count_from_the_first_reading() -> None:
    office = Office(card(1, "Ada", history=readings("waist", "92", "91", "90"))).presses("programme:1")
    assert office.heard(sm.AskProgramme).now == 0 and "programme:1:12" in office.choices
    (change,) = office.presses("programme:1:12").did(ChangePlan)
    assert change.plan.programme == Programme((NOW - 8 * WEEK).date(), 12) and change.detail == "12"


def test_a_programme_that_is_set_late_does_not_end_in_the_past() -> None:
    office = Office(card(1, "Ada", history=readings("waist", *["92"] * 10))).presses("programme:1")
    (change,) = office.presses("programme:1:12").did(ChangePlan)
    assert change.plan.programme.last == NOW.date()


def test_another_length_keeps_the_start_and_no_end_takes_it_away() -> None:
    plan = Plan(programme=Programme(date(2026, 3, 2), 12))
    office = Office(card(1, "Ada", plan=plan)).presses("programme:1")
    (longer,) = office.presses("programme:1:16").did(ChangePlan)
    assert longer.plan.programme == Programme(date(2026, 3, 2), 16)
    (none,) = office.presses("programme:1").presses("programme:1:0").did(ChangePlan)
    assert none.plan.programme is None


def test_after_the_end_the_coach_begins_a_new_one_with_a_new_baseline() -> None:
    over = Programme(date(2025, 12, 29), 12, ended=date(2026, 3, 23))
    office = Office(card(1, "Ada", status="finished", plan=Plan(programme=over))).presses("programme:1")
    (change,) = office.presses("programme:1:8").did(ChangePlan)
    assert change.plan.programme == Programme(date(2026, 3, 30), 8)
    assert change.plan.baseline_since is not None and change.plan.baseline_since.date() == date(2026, 3, 23)


def test_whoever_has_finished_is_still_on_the_list_and_on_the_page() -> None:
    office = Office(card(1, "Ada", status="finished"))
    assert [s.card.name for s in office.commands("page").heard(sm.CaseloadPage).others] == ["Ada"]
    assert office.commands("caseload").heard(sm.CaseloadList).rows[0].status == "finished"


def test_a_template_takes_no_ones_programme() -> None:
    from core.dialogue.staff.plan import for_anybody

    assert for_anybody(Plan(programme=Programme(date(2026, 3, 2), 12))).programme is None


def test_no_blood_pressure_week_begins_at_the_last_check_in_or_outlives_the_programme() -> None:
    chat = twelve_weeks()
    both = replace(chat.facts.plan, measures=(*chat.facts.plan.measures, "blood_pressure"))
    chat.facts = replace(chat.facts, plan=both)
    chat = checked_in(chat)
    assert chat.facts.status is Status.FINISHED and chat.state.pressure is None
    assert not any(isinstance(x.message, m.PressureWeekOpens) for x in chat.effects if hasattr(x, "message"))
    assert CancelTimer("pressure") in chat.did(CancelTimer)
