"""A cohort's calendar, its privacy rules, and its closing statistics compared with scipy."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import UTC, date, datetime, time, timedelta
from decimal import Decimal
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy import stats

from core.care import Slot
from core.reading import How, Reading
from core.watching import cohort
from core.watching.cohort import Closing, CohortWeek, Counted, Paired, Participant, Sum, Task, Terms, Told, TooFew

D = Decimal
LONDON = ZoneInfo("Europe/London")
MONDAY = date(2026, 3, 2)
TERMS = Terms(MONDAY, 6, Slot(0, time(18), "Europe/London"), Counted.MINUTES)
LONG_AGO = date(2026, 1, 1)


def at(day: date, hour: int = 18) -> datetime:
    return datetime(day.year, day.month, day.day, hour, tzinfo=LONDON).astimezone(UTC)


def minutes(number: int, value: str, measure: str = "activity_minutes", **more: object) -> Reading:
    return Reading(measure, D(value), at(TERMS.check_in(number)), **more)  # type: ignore[arg-type]


def person(
    number: int,
    *readings: Reading,
    joined: date = LONG_AGO,
    left: date | None = None,
    check_ins: tuple[tuple[date, bool], ...] = (),
) -> Participant:
    return Participant(number, f"{number}", joined, left, LONDON, check_ins, readings)


def nothing() -> Told:
    return Told({}, {})


def week_of(people: list[Participant], number: int, terms: Terms = TERMS) -> CohortWeek:
    """A week beside which nothing else was told."""
    return cohort.week(terms, people, number, nothing())


# --- the calendar -----------------------------------------------------------------------------------------------


def test_the_first_check_in_is_on_the_cohort_s_weekday_and_the_last_one_closes_the_last_week() -> None:
    assert (TERMS.first, TERMS.last) == (date(2026, 3, 2), date(2026, 4, 13))
    thursday = Terms(MONDAY, 4, Slot(3, time(8), "Europe/London"), Counted.SESSIONS)
    assert (thursday.first, thursday.last) == (date(2026, 3, 5), date(2026, 4, 2))


@pytest.mark.parametrize(
    ("day", "number"),
    [
        (date(2026, 2, 26), None),  # a Thursday, four days before
        (date(2026, 2, 27), 0),
        (date(2026, 3, 2), 0),
        (date(2026, 3, 5), 0),
        (date(2026, 3, 6), 1),
        (date(2026, 4, 16), 6),
        (date(2026, 4, 17), None),
    ],
)
def test_a_member_s_own_weekday_belongs_to_the_nearest_check_in(day: date, number: int | None) -> None:
    assert TERMS.number_of(day) == number


@given(st.integers(4, 12), st.integers(0, 6), st.integers(0, 6))
def test_every_weekday_has_one_check_in_a_week(weeks: int, weekday: int, own: int) -> None:
    terms = Terms(MONDAY, weeks, Slot(weekday, time(8), "Europe/London"), Counted.CHECK_INS)
    days = [MONDAY + timedelta(days=n) for n in range(-7, 7 * weeks + 21)]
    numbers = [n for d in days if d.weekday() == own and (n := terms.number_of(d)) is not None]
    assert numbers == list(range(weeks + 1))


def test_people_may_join_until_half_time() -> None:
    assert TERMS.half_time == date(2026, 3, 23)
    assert TERMS.joining_ends(LONDON) == datetime(2026, 3, 24, tzinfo=UTC)


def test_a_cohort_says_its_start_then_each_check_in_four_days_later_and_closes_with_the_last() -> None:
    every = cohort.jobs(TERMS, LONDON)
    assert [(j.task, j.number) for j in every] == [
        (Task.START, 0),
        *((Task.WEEK, n) for n in range(6)),
        (Task.CLOSE, 6),
    ]
    assert every[0].at == datetime(2026, 3, 2, 18, tzinfo=UTC)
    assert every[1].at == datetime(2026, 3, 6, 18, tzinfo=UTC)
    assert every[-1].at == datetime(2026, 4, 17, 17, tzinfo=UTC)  # 18:00 in London, after the clocks went forward
    assert [j.at for j in every] == sorted(j.at for j in every)


def test_nobody_is_written_to_at_night() -> None:
    early = Terms(MONDAY, 4, Slot(0, time(5), "Europe/London"), Counted.CHECK_INS)
    assert {j.at.astimezone(LONDON).time() for j in cohort.jobs(early, LONDON)} == {time(8)}


def test_the_next_job_is_the_first_one_later_and_there_is_an_end() -> None:
    every = cohort.jobs(TERMS, LONDON)
    assert cohort.next_job(TERMS, LONDON, every[0].at) == every[1]
    assert cohort.next_job(TERMS, LONDON, every[-1].at) is None
    assert cohort.jobs_due(TERMS, LONDON, every[1].at, every[3].at) == every[1:4]


# --- pooling ----------------------------------------------------------------------------------------------------


def test_a_week_adds_up_what_five_people_told() -> None:
    people = [person(n, minutes(1, str(10 * n))) for n in range(1, 6)]
    assert week_of(people, 1) == CohortWeek(1, None, None, 5, 150)


def test_four_people_are_too_few_and_their_total_is_nowhere() -> None:
    people = [person(n, minutes(1, str(10 * n))) for n in range(1, 5)]
    assert week_of(people, 1) == CohortWeek(1, None, None, None, None)


def test_minutes_of_the_week_before_the_start_count_for_nobody() -> None:
    people = [person(n, minutes(0, "500")) for n in range(9)]
    assert week_of(people, 0) == CohortWeek(0, None, None, None, None)


def test_vigorous_minutes_are_added_a_corrected_week_counts_once_and_a_side_note_never() -> None:
    five = [person(n, minutes(1, "10")) for n in range(4)]
    twice = person(9, minutes(1, "90"), Reading("activity_minutes", D(30), at(TERMS.check_in(1), 20), second=D(5)))
    early = person(8, minutes(1, "1000", how=How.EARLY))
    assert week_of([*five, twice, early], 1) == CohortWeek(1, None, None, 5, 75)


def test_only_what_is_counted_is_added_up() -> None:
    people = [person(n, minutes(1, "4", measure="sessions_done"), minutes(1, "82", measure="weight")) for n in range(9)]
    assert week_of(people, 1).total is None


def test_attendance_counts_who_was_asked_and_who_kept_it() -> None:
    day = TERMS.check_in(2)
    people = [person(n, check_ins=((day, n < 5),)) for n in range(6)]
    terms = Terms(MONDAY, 6, TERMS.slot, Counted.CHECK_INS)
    assert week_of(people, 2, terms) == CohortWeek(2, 6, 5, 6, 5)
    assert week_of(people[:4], 2, terms) == CohortWeek(2, None, None, None, None)


@pytest.mark.parametrize(("kept", "aloud"), [(1, None), (4, None), (5, 5), (6, 6)])
def test_a_group_hears_how_many_checked_in_only_if_they_are_five(kept: int, aloud: int | None) -> None:
    people = [person(n, check_ins=((TERMS.check_in(2), n < kept),)) for n in range(6)]
    assert week_of(people, 2).kept_aloud == aloud
    assert week_of(people, 2, Terms(MONDAY, 6, TERMS.slot, Counted.CHECK_INS)).total == aloud


def test_of_two_groups_with_one_in_common_only_the_first_is_told() -> None:
    everybody = [person(n, minutes(1, "10"), check_ins=((TERMS.check_in(1), True),)) for n in range(11)]
    told = nothing()
    assert cohort.week(TERMS, everybody[:6], 1, told) == CohortWeek(1, 6, 6, 6, 60)
    assert cohort.week(TERMS, everybody[1:], 1, told) == CohortWeek(1, None, None, None, None)
    assert cohort.week(TERMS, everybody[6:], 1, told) == CohortWeek(1, 5, 5, 5, 50)


def test_the_whole_time_of_who_is_still_there_is_not_told_beside_the_weeks_of_who_was() -> None:
    """Somebody was erased: what the report lacks of the weeks would be theirs."""
    people = [person(n, *(minutes(k, "10", measure="sessions_done") for k in range(7))) for n in range(6)]
    terms = Terms(MONDAY, 6, TERMS.slot, Counted.SESSIONS)
    told = nothing()
    shown = [cohort.week(terms, people, n, told) for n in range(7)]
    assert shown[3].total == 60
    assert not told.tell(
        "sessions_done", frozenset((p.who, TERMS.check_in(n)) for p in people[1:] for n in range(1, 7))
    )
    assert cohort.closing("x", terms, people[1:], shown, told).sums[1] == Sum(Counted.SESSIONS, 6, 360, 6)


def test_two_slots_of_one_week_are_one_check_in_kept_if_either_was() -> None:
    day = TERMS.check_in(1)
    moved = person(1, check_ins=((day, False), (day + timedelta(days=2), True)))
    assert moved.kept(TERMS) == {1: True}


def test_a_late_joiner_counts_from_their_join_and_a_leaver_until_the_day_they_leave() -> None:
    days = tuple((TERMS.check_in(n), True) for n in range(7))
    late = person(1, *(minutes(n, "10") for n in range(7)), joined=TERMS.check_in(3), check_ins=days)
    gone = person(2, *(minutes(n, "10") for n in range(7)), left=TERMS.check_in(3), check_ins=days)
    assert sorted(late.kept(TERMS)) == [3, 4, 5, 6]
    assert sorted(gone.kept(TERMS)) == [0, 1, 2]
    assert sorted(gone.reported(TERMS, "activity_minutes")) == [0, 1, 2]
    assert cohort.own_check_ins(TERMS, late) == (4, 4)


def test_what_was_told_together_is_the_sum_of_what_was_shown() -> None:
    weeks = [
        CohortWeek(0, 6, 6, 0, None),
        CohortWeek(1, 6, 6, 6, 900),
        CohortWeek(2, 6, 6, 4, None),
        CohortWeek(3, 6, 5, 5, 300),
    ]
    assert cohort.together(weeks) == 1200


@pytest.mark.parametrize(
    ("before", "now", "passed"),
    [(0, 999, None), (0, 1000, 1000), (999, 5200, 5000), (5000, 5000, None), (9_400, 10_100, 10_000)],
)
def test_a_milestone_is_the_highest_round_number_just_passed(before: int, now: int, passed: int | None) -> None:
    assert cohort.milestone(Counted.MINUTES, before, now) == passed


def test_what_a_cohort_counts_is_never_weight_or_girth() -> None:
    assert {c.value for c in Counted} == {"check_ins", "activity_minutes", "sessions"}
    assert set(cohort.MEASURE_OF.values()) == {"activity_minutes", "sessions_done"}
    assert set(cohort.LADDER) == set(Counted)


# --- statistics -------------------------------------------------------------------------------------------------

ENERGY = [(5, 7), (6, 6), (4, 7), (6, 8), (7, 7), (5, 5), (6, 7)]


def test_the_mean_paired_change_and_its_interval_are_those_of_scipy() -> None:
    found = cohort.paired("energy", [(D(a), D(b)) for a, b in ENERGY])
    test = stats.ttest_rel([b for _, b in ENERGY], [a for a, _ in ENERGY])
    low, high = test.confidence_interval(0.95)
    assert (found.n, float(found.before), float(found.after)) == (7, pytest.approx(39 / 7), pytest.approx(47 / 7))
    assert [float(found.mean), float(found.low), float(found.high)] == pytest.approx([8 / 7, low, high], abs=1e-9)


@given(
    st.lists(st.tuples(st.decimals(0, 200, places=1), st.decimals(0, 200, places=1)), min_size=5, max_size=40).filter(
        lambda pairs: len({b - a for a, b in pairs}) > 1
    )
)
def test_any_sample_gives_scipy_s_interval(pairs: list[tuple[Decimal, Decimal]]) -> None:
    found = cohort.paired("weight", pairs)
    differences = [float(b - a) for a, b in pairs]
    low, high = stats.ttest_1samp(differences, 0).confidence_interval(0.95)
    assert [float(found.low), float(found.high)] == pytest.approx([low, high], rel=1e-6, abs=1e-6)


def test_everybody_changing_alike_leaves_no_width() -> None:
    found = cohort.paired("energy", [(D(n), D(n + 1)) for n in range(5)])
    assert (found.low, found.mean, found.high) == (1, 1, 1)


def test_the_start_is_the_first_of_the_first_half_and_the_end_the_last_of_the_second() -> None:
    told = [minutes(n, str(v), measure="energy") for n, v in ((1, 4), (2, 5), (4, 6), (5, 8))]
    assert cohort.first_and_last(TERMS, person(1, *told), "energy") == (told[0], told[3])
    assert cohort.first_and_last(TERMS, person(1, *told[:2]), "energy") is None
    assert cohort.first_and_last(TERMS, person(1, *told[2:]), "energy") is None
    at_half_time = person(1, *(minutes(n, str(n), measure="energy") for n in (3, 6)), joined=TERMS.half_time)
    assert cohort.first_and_last(TERMS, at_half_time, "energy") == at_half_time.readings


def members(*, count: int = 6) -> list[Participant]:
    days = tuple((TERMS.check_in(n), n != 4) for n in range(7))
    return [
        person(
            k,
            *(minutes(n, str(10 + k)) for n in range(7)),
            *(minutes(n, str(4 + n // 3), measure="energy") for n in range(7)),
            minutes(0, str(80 + k), measure="weight"),
            minutes(4, str(79 + k), measure="weight"),
            check_ins=days,
        )
        for k in range(count)
    ]


def report_of(people: list[Participant], measures: Sequence[str] = cohort.ENERGY_ONLY) -> Closing:
    """The report, after every week was told."""
    told = nothing()
    weeks = [cohort.week(TERMS, people, n, told) for n in range(7)]
    return cohort.closing("Spring steps", TERMS, people, weeks, told, measures)


def test_a_closing_report_has_completion_attendance_totals_and_energy() -> None:
    people = members()
    report = report_of(people)
    assert (report.members, report.stayed, report.asked, report.kept) == (6, 6, 42, 36)
    assert report.completion == 86
    assert [w.kept for w in report.attendance] == [6, 6, 6, 6, 0, 6, 6]
    total = 6 * sum(10 + k for k in range(6))
    assert report.sums == (Sum(Counted.MINUTES, 6, total, 6), Sum(Counted.SESSIONS, None, None))
    (energy,) = report.changes
    assert isinstance(energy, Paired)
    assert (energy.measure, energy.n, energy.mean) == ("energy", 6, 2)


def test_other_measures_are_worked_out_only_when_asked_for_and_never_for_the_group() -> None:
    people = members()
    report = report_of(people, cohort.EVERY_MEASURE)
    assert [c.measure for c in report.changes] == ["energy", "weight"]
    assert [c.measure for c in cohort.for_the_group(report).changes] == ["energy"]


def test_the_total_is_that_of_the_weeks_as_they_were_told() -> None:
    """Otherwise the difference of two totals would reveal what one person reported later."""
    people = members()
    told = nothing()
    weeks = [cohort.week(TERMS, people, n, told) for n in range(7)]
    late = (*people[0].readings, minutes(6, "900"))
    days = tuple((day, True) for day, _ in people[0].check_ins)
    later = [person(0, *late, check_ins=days), *people[1:]]
    report = cohort.closing("Spring steps", TERMS, later, weeks, told)
    before = report_of(people)
    assert (report.sums, report.asked, report.kept) == (before.sums, before.asked, before.kept)


def test_a_report_of_four_people_shows_no_figure_of_what_they_did() -> None:
    people = members(count=4)
    report = report_of(people, cohort.EVERY_MEASURE)
    assert report.sums == (Sum(Counted.MINUTES, None, None), Sum(Counted.SESSIONS, None, None))
    assert report.changes == (TooFew("energy"), TooFew("weight"))
    assert (report.asked, report.kept, report.completion) == (None, None, None)


def test_nothing_asked_has_no_completion() -> None:
    report = cohort.closing("x", TERMS, [person(1)], [], nothing())
    assert isinstance(report, Closing)
    assert report.completion is None


def test_no_value_of_one_number_alone_is_left_out_of_a_coach_s_report() -> None:
    assert {"weight", "waist", "hip", "resting_heart_rate", "chair_stand_30s"} <= set(cohort.EVERY_MEASURE)
    assert not {"blood_pressure", "own_question", "bmi", "activity_minutes"} & set(cohort.EVERY_MEASURE)
