"""The calendar file, read back by libraries that did not write it: vobject for the event, dateutil for its times."""

from datetime import UTC, datetime, time, timedelta, tzinfo
from io import StringIO
from itertools import takewhile
from zoneinfo import ZoneInfo

import icalendar
import pytest
import vobject
from dateutil.rrule import rrulestr
from dateutil.tz import tzical

from bot.exports.calendar import Weekly, calendar
from core.care import Slot
from core.schedule import instants, next_due

NOW = datetime(2026, 2, 10, 12, 0, tzinfo=UTC)
SINCE = datetime(2026, 1, 5, 9, 12, 44, 731_204, tzinfo=UTC)
SLOTS = {
    "Monday morning in London": (0, time(7, 30), "Europe/London"),
    "inside the gap in Berlin": (6, time(2, 30), "Europe/Berlin"),
    "in the repeated hour in New York": (6, time(1, 30), "America/New_York"),
    "half an hour's change on Lord Howe": (6, time(2, 15), "Australia/Lord_Howe"),
    "two hours' gap at Troll": (6, time(1, 30), "Antarctica/Troll"),
    "the change at midnight in Cairo": (4, time(0, 30), "Africa/Cairo"),
    "no changes in Kolkata": (3, time(18, 0), "Asia/Kolkata"),
    "the other half of the year in Auckland": (5, time(23, 45), "Pacific/Auckland"),
}


def a_slot(weekday: int, at: time, zone: str, **more: object) -> Weekly:
    return Weekly(17, SINCE, Slot(weekday, at, zone), ZoneInfo(zone), **more)  # type: ignore[arg-type]


def ours(weekly: Weekly, until: datetime) -> list[datetime]:
    return [o.at for o in instants(weekly.slot, weekly.zone, NOW, until)]


def zone_of(text: str) -> tzinfo:
    """The zone by the rules in the file alone, regardless of this machine's tz database."""
    begins, ends = "BEGIN:VTIMEZONE", "END:VTIMEZONE"
    rules = text[text.index(begins) : text.index(ends)] + ends
    return tzical(StringIO(rules.replace("\r\n ", ""))).get()


@pytest.mark.parametrize("which", SLOTS.values(), ids=SLOTS.keys())
def test_another_library_reads_the_very_instants_at_which_we_ask(which: tuple[int, time, str]) -> None:
    weekly, until = a_slot(*which), NOW + timedelta(days=3 * 366)
    text = calendar([weekly], NOW).decode()
    event, zone = vobject.readOne(text).vevent, zone_of(text)
    rule = rrulestr(event.rrule.value, dtstart=event.dtstart.value.replace(tzinfo=None))
    read = takewhile(lambda at: at <= until, (at.replace(tzinfo=zone).astimezone(UTC) for at in rule))
    assert list(read) == ours(weekly, until)
    assert len(ours(weekly, until)) in (156, 157)


@pytest.mark.parametrize("which", SLOTS.values(), ids=SLOTS.keys())
def test_the_file_carries_the_rules_of_its_zone(which: tuple[int, time, str]) -> None:
    made = icalendar.Calendar.from_ical(calendar([a_slot(*which)], NOW))
    assert [str(z["TZID"]) for z in made.walk("VTIMEZONE")] == [which[2]]
    (event,) = made.walk("VEVENT")
    assert event["DTSTART"].params["TZID"] == which[2]
    assert event.errors == []


def test_the_first_one_is_the_next_one() -> None:
    weekly = a_slot(0, time(7, 30), "Europe/London")
    (event,) = icalendar.Calendar.from_ical(calendar([weekly], NOW)).walk("VEVENT")
    assert event["DTSTART"].dt.astimezone(UTC) == next_due(weekly.slot, weekly.zone, NOW).at


def test_a_pause_is_left_out() -> None:
    until = NOW + timedelta(weeks=6)
    weekly = a_slot(0, time(7, 30), "Europe/London", begins=until)
    (event,) = icalendar.Calendar.from_ical(calendar([weekly], NOW)).walk("VEVENT")
    assert event["DTSTART"].dt.astimezone(UTC) == next_due(weekly.slot, weekly.zone, until).at


def test_nobody_is_named_unless_asked_for() -> None:
    assert b"Ada" not in calendar([a_slot(0, time(7, 30), "Europe/London")], NOW)
    named = calendar([a_slot(0, time(7, 30), "Europe/London", name="Ada, née Ó Súilleabháin; \\ " + "x" * 90)], NOW)
    (event,) = icalendar.Calendar.from_ical(named).walk("VEVENT")
    assert str(event["SUMMARY"]) == "Check-in: Ada, née Ó Súilleabháin; \\ " + "x" * 90
    assert vobject.readOne(named.decode()).vevent.summary.value == str(event["SUMMARY"])
    assert max(len(line) for line in named.split(b"\r\n")) <= 75


def test_a_second_export_replaces_the_first() -> None:
    def uid(at: time) -> str:
        made = icalendar.Calendar.from_ical(calendar([a_slot(0, at, "Europe/London")], NOW))
        return str(made.walk("VEVENT")[0]["UID"])

    assert uid(time(7, 30)) == uid(time(18, 0))


def test_a_caseload_is_one_calendar_with_each_zone_once() -> None:
    weeklies = [
        Weekly(n, SINCE, Slot(n % 7, time(7, 30), zone), ZoneInfo(zone))
        for n, zone in enumerate(("Europe/London", "Europe/London", "Asia/Kolkata"), 1)
    ]
    made = icalendar.Calendar.from_ical(calendar(weeklies, NOW))
    assert len(made.walk("VEVENT")) == len({str(e["UID"]) for e in made.walk("VEVENT")}) == 3
    assert sorted(str(z["TZID"]) for z in made.walk("VTIMEZONE")) == ["Asia/Kolkata", "Europe/London"]
