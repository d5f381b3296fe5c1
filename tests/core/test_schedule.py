"""Slots on every zone of the tz database, with the nights known to break naive arithmetic as examples."""

from datetime import UTC, date, datetime, time, timedelta
from functools import cache
from importlib.resources import files
from zoneinfo import ZoneInfo

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from core import schedule
from core.care import Slot
from core.schedule import Lateness

ZONES = tuple(sorted(files("tzdata").joinpath("zones").read_text("utf-8").split()))
TICK = timedelta(seconds=1)
HALF_HOUR = timedelta(minutes=30)
LONDON, BERLIN = ZoneInfo("Europe/London"), ZoneInfo("Europe/Berlin")


def slot(weekday: int, hour: int, minute: int, zone_name: str) -> Slot:
    return Slot(weekday, time(hour, minute), zone_name)


SLOTS = st.builds(slot, st.integers(0, 6), st.integers(0, 23), st.integers(0, 59), st.sampled_from(ZONES))
STARTS = st.datetimes(datetime(2024, 1, 1), datetime(2037, 1, 1), timezones=st.just(UTC))


@given(SLOTS, STARTS)
@example(slot(6, 2, 30, "Europe/Berlin"), datetime(2026, 3, 28, tzinfo=UTC))  # skipped hour
@example(slot(6, 2, 30, "Europe/Berlin"), datetime(2026, 10, 24, tzinfo=UTC))  # repeated hour
@example(slot(5, 23, 30, "America/Scoresbysund"), datetime(2027, 3, 26, tzinfo=UTC))  # past midnight
@example(slot(6, 1, 30, "Antarctica/Troll"), datetime(2027, 3, 27, tzinfo=UTC))  # a two-hour gap
@example(slot(6, 2, 15, "Australia/Lord_Howe"), datetime(2026, 10, 3, tzinfo=UTC))  # a half-hour gap
def test_reminders_come_at_the_wall_time_and_survive_any_tick(slot: Slot, start: datetime) -> None:
    zone, end = ZoneInfo(slot.zone_name), start + timedelta(weeks=4)
    found = list(schedule.instants(slot, zone, start, end))
    assert 3 <= len(found) <= 5  # four, give or take a clock change at either edge
    assert [f.at for f in found] == sorted({f.at for f in found})
    for one in found:
        assert one.day.weekday() == slot.weekday
        wall = one.at.astimezone(zone).replace(tzinfo=None)
        assert timedelta(0) <= wall - datetime.combine(one.day, slot.at) <= timedelta(hours=2)
        for cut in (one.at - TICK, one.at, one.at + TICK):  # wake just before, on and after
            assert [
                *schedule.instants(slot, zone, start, cut),
                *schedule.instants(slot, zone, cut, end),
            ] == found
        assert schedule.next_due(slot, zone, one.at - TICK) == one
        assert schedule.next_due(slot, zone, one.at).day == one.day + timedelta(days=7)
        assert schedule.latest_due(slot, zone, one.at) == one
        assert schedule.latest_due(slot, zone, one.at + TICK) == one


@cache
def nights(zone_name: str) -> tuple[date, ...]:
    """Days of 2026 and 2027 on which the zone's clock changes."""
    zone, first = ZoneInfo(zone_name), datetime(2026, 1, 1)
    offsets = [(first + timedelta(days=n)).replace(tzinfo=zone).utcoffset() for n in range(731)]
    return tuple((first + timedelta(days=n)).date() for n in range(730) if offsets[n] != offsets[n + 1])


CHANGING = tuple(name for name in ZONES if nights(name))


@pytest.mark.parametrize("zone_name", CHANGING)
def test_on_every_clock_change_a_time_is_its_first_pass_or_moved_past_the_gap(zone_name: str) -> None:
    zone = ZoneInfo(zone_name)
    for day in nights(zone_name):
        for half_hours in range(48):
            wanted = datetime.combine(day, time()) + half_hours * HALF_HOUR
            at = schedule.instant(day, wanted.time(), zone)
            passes = [  # every instant of that day or around it that shows the wanted time
                moment
                for n in range(-8, 9)
                if (moment := at + n * HALF_HOUR).astimezone(zone).replace(tzinfo=None) == wanted
            ]
            if passes:
                assert at == min(passes)
            else:
                before = (at - timedelta(hours=3)).astimezone(zone).utcoffset()
                after = at.astimezone(zone).utcoffset()
                assert before is not None
                assert after is not None
                assert at.astimezone(zone).replace(tzinfo=None) == wanted + (after - before)


def test_the_clock_changes_of_some_hundred_zones_were_tried() -> None:
    assert len(CHANGING) > 100


def test_a_day_that_a_zone_left_out_still_has_its_slot_a_day_later() -> None:
    apia = ZoneInfo("Pacific/Apia")  # 30 December 2011 did not happen there
    assert schedule.instant(date(2011, 12, 30), time(7, 30), apia) == datetime(2011, 12, 30, 17, 30, tzinfo=UTC)
    assert schedule.instant(date(2011, 12, 31), time(7, 30), apia) == datetime(2011, 12, 30, 17, 30, tzinfo=UTC)


@pytest.mark.parametrize(
    ("late_by", "policy"),
    [
        pytest.param(timedelta(0), Lateness.SILENT, id="on-time"),
        pytest.param(timedelta(hours=2), Lateness.SILENT, id="two-hours-still-silent"),
        pytest.param(timedelta(hours=2, seconds=1), Lateness.APOLOGISE, id="just-over-two-hours"),
        pytest.param(timedelta(hours=12), Lateness.APOLOGISE, id="twelve-hours-still-asked"),
        pytest.param(timedelta(hours=12, seconds=1), Lateness.NOT_ASKED, id="just-over-twelve-hours"),
    ],
)
def test_what_becomes_of_a_late_slot(late_by: timedelta, policy: Lateness) -> None:
    assert schedule.late_policy(late_by) is policy


MONDAY = date(2026, 3, 30)  # the day after the clocks went forward in Europe


@pytest.mark.parametrize(
    ("measure", "last", "days", "due"),
    [
        pytest.param("weight", None, 28, True, id="never-taken"),
        pytest.param("weight", datetime(2026, 3, 2, 7, tzinfo=UTC), 28, True, id="28-days-ago"),
        pytest.param("weight", datetime(2026, 3, 5, 7, tzinfo=UTC), 28, True, id="25-days-ago"),
        pytest.param("weight", datetime(2026, 3, 6, 7, tzinfo=UTC), 28, False, id="24-days-ago"),
        pytest.param("weight", datetime(2026, 3, 5, 23, 30, tzinfo=UTC), 28, False, id="local-date-counts"),
        pytest.param("weight", datetime(2026, 3, 2, 7, tzinfo=UTC), 42, False, id="longer-interval"),
        pytest.param("energy", datetime(2026, 3, 23, 7, tzinfo=UTC), 28, True, id="energy-every-week"),
        pytest.param("energy", datetime(2026, 3, 26, 7, tzinfo=UTC), 28, True, id="four-days-ago"),
        pytest.param("energy", datetime(2026, 3, 27, 7, tzinfo=UTC), 28, False, id="three-days-ago"),
        pytest.param("height", datetime(2020, 1, 1, tzinfo=UTC), 28, False, id="height-once"),
        pytest.param("height", None, 28, True, id="height-not-yet"),
    ],
)
def test_when_a_retest_is_due(measure: str, last: datetime | None, days: int, due: bool) -> None:
    assert schedule.retest_due(measure, last, days, MONDAY, BERLIN) is due
    if last is not None and measure != "height":
        assert (schedule.opens_on(measure, last, days, BERLIN) <= MONDAY) is due


@pytest.mark.parametrize(
    ("asked", "expected"),
    [
        pytest.param("2026-03-02T07:30", "2026-03-03T08:00", id="too-early-waits-for-eight"),
        pytest.param("2026-03-02T12:00", "2026-03-03T12:00", id="a-day-later"),
        pytest.param("2026-03-02T20:30", "2026-03-03T20:30", id="last-minute-of-the-evening"),
        pytest.param("2026-03-02T20:31", "2026-03-04T08:00", id="too-late-waits-for-morning"),
        pytest.param("2026-03-28T20:00", "2026-03-30T08:00", id="a-day-is-24-hours-over-a-clock-change"),
    ],
)
def test_the_follow_up_comes_a_day_later_in_daytime(asked: str, expected: str) -> None:
    at = datetime.fromisoformat(asked).replace(tzinfo=LONDON)
    found = schedule.follow_up(at.astimezone(UTC), LONDON)
    assert found.astimezone(LONDON).replace(tzinfo=None) == datetime.fromisoformat(expected)


@given(st.sampled_from(ZONES), STARTS)
def test_a_follow_up_never_comes_at_night_or_early(zone_name: str, asked: datetime) -> None:
    zone = ZoneInfo(zone_name)
    at = schedule.follow_up(asked, zone)
    assert timedelta(hours=24) <= at - asked <= timedelta(hours=24 + 13)
    assert time(8, 0) <= at.astimezone(zone).time() <= time(20, 30)


def test_a_pressure_week_prompts_twice_a_day_at_the_same_wall_times_over_a_clock_change() -> None:
    prompts = schedule.pressure_prompts(date(2026, 3, 26), 7, LONDON)
    assert [(p.number, p.evening) for p in prompts] == [(n, e) for n in range(1, 8) for e in (False, True)]
    for prompt in prompts:
        wall = prompt.at.astimezone(LONDON)
        assert wall.date() == prompt.day == date(2026, 3, 25) + timedelta(days=prompt.number)
        assert wall.time() == (time(20, 0) if prompt.evening else time(8, 0))


def test_the_names_kept_here_are_those_the_registry_calls_ratings_activity_and_once():
    from core.measures import MEASURES
    from core.measures.measure import MeasureKind

    weekly = {key for key, measure in MEASURES.items() if measure.kind in (MeasureKind.RATING, MeasureKind.ACTIVITY)}
    assert weekly == schedule.EVERY_CHECK_IN
    once = {key for key, measure in MEASURES.items() if measure.kind is MeasureKind.ONCE}
    assert once == schedule.ONCE
