"""Cohorts in a database: joined, published week by week, closed; and what is never revealed."""

from __future__ import annotations

import csv
import io
from collections.abc import Callable
from datetime import UTC, datetime, time, timedelta
from typing import Any

import pytest
from sqlalchemy import Connection, select, text, update

from bot.rendering.closing_csv import COLUMNS, closing_csv
from bot.store import cohorts as store
from bot.store import erase, people, retention
from bot.store import schema as t
from bot.store.database import Database
from bot.turns import cohorts
from core.care import Plan
from core.dialogue.client.messages import HasLeft, JoinedCohort, Welcome
from core.dialogue.client.messages_to_coach import ClientEnrolled, ClientInCohort
from core.dialogue.group import messages as cm
from core.dialogue.kit.messages import KeptAsItWas, NotForThisRole, OldButton, Stranger
from core.dialogue.organiser import messages as om
from core.dialogue.staff.messages import LinkPicture
from core.watching.cohort import CohortWeek, Counted, Paired, Sum, TooFew
from tests.bot.field import (
    GROUP,
    MONDAY,
    OLGA,
    SAM,
    TERMS,
    WEEK,
    Field,
    full,
    group_said,
    instants,
    told,
    week_of,
)
from tests.bot.practice import ADA, BEN, NOW, ROWAN, add_coach, row_of
from tests.bot.steps import queued, rows


@pytest.fixture
def field(database: Database) -> Field:
    return Field(database)


# --- setting one up and joining ---------------------------------------------------------------------------------


def set_up(field: Field, chat: int, *more: str) -> list[Any]:
    field.commands("cohort", "Spring", chat=chat)
    for data in ("costart:2026-04-06", "coweeks:4", "cotime:18:00", "cocounts:activity_minutes", "comost:30", *more):
        said = field.presses(data, chat)
    return said


def test_a_coach_who_starts_a_cohort_runs_it_and_looks_after_newcomers(field: Field) -> None:
    said = set_up(field, ROWAN)
    assert [type(m) for m in said] == [om.CohortMade, om.JoinLink, LinkPicture]
    (row,) = rows(field.database, t.cohorts)
    assert (row.coach_id, row.name, row.weeks, row.starts) == (field.rowan, "Spring", 4, MONDAY)
    assert row.next_at == datetime(2026, 4, 6, 17, tzinfo=UTC)
    assert said[1].newcomers and said[1].until == TERMS.half_time
    assert [type(m) for m in field.commands("cohort")] == [om.CohortList]


def test_an_organiser_s_named_coach_is_told(field: Field) -> None:
    said = set_up(field, OLGA, "cocoach:0")
    assert said[1].newcomers
    assert told(field, ROWAN, om.NamedAsCoach) == om.NamedAsCoach("Spring", "Olga")
    (row,) = rows(field.database, t.cohorts)
    assert (row.coach_id, row.organiser_id) == (field.rowan, field.olga)


def test_a_stranger_hears_what_they_are_asked_into_and_is_in_only_after_consent(field: Field) -> None:
    cohort = field.spring(coach=field.rowan)
    said = field.commands("start", field.link(cohort), chat=ADA)
    assert said[0] == cm.CohortWelcome("Spring", "Olga", MONDAY)
    assert isinstance(said[1], Welcome) and said[1].coach == "Rowan"
    (fact,) = field.database.read_now(store.mine, field.olga)
    assert fact.members == ()  # nobody is shown before they have consented
    said = field.presses("consent:yes", ADA)
    assert JoinedCohort("Spring", MONDAY) in said
    (fact,) = field.database.read_now(store.mine, field.olga)
    assert [m.joined for m in fact.members] == [NOW.date()]


def test_a_newcomer_is_asked_little_and_checks_in_when_the_cohort_does(field: Field) -> None:
    cohort = field.spring(coach=field.rowan)
    field.commands("start", field.link(cohort, plan=cohorts.NEWCOMERS), chat=ADA)
    field.presses("consent:yes", ADA)
    for data in ("e:birth_year:skip", "e:adult:yes", "e:rating:6", "e:zone:skip"):
        said = field.presses(data, ADA)
    assert [m.weekday for m in said if type(m).__name__ == "Enrolled"] == [0]
    (client,) = rows(field.database, t.clients)
    assert (client.coach_id, client.weekday, client.at) == (field.rowan, 0, time(18))
    assert "weight" not in (client.plan or "")
    assert told(field, ROWAN, ClientEnrolled)


def test_a_stranger_is_not_let_in_where_nobody_would_look_after_them(field: Field) -> None:
    cohort = field.spring()
    said = field.commands("start", field.link(cohort), chat=ADA)
    assert said == [cm.CohortForClients("Spring", "Olga")]
    assert rows(field.database, t.clients) == []
    assert field.members_of(cohort) == []


def of_sam(field: Field, name: str = "Ben", chat: int = BEN) -> tuple[int, int]:
    """A client of Sam's who opens the link of Olga's cohort; the client and the cohort."""
    sam = field.database.write_now(add_coach, SAM, "Sam")
    client = field.member(chat, name, sam, plan=Plan(measures=("waist",)))
    cohort = field.spring(coach=field.rowan)
    field.commands("start", field.link(cohort), chat=chat)
    return client, cohort


def test_a_client_of_another_coach_joins_and_keeps_their_coach_who_is_asked(field: Field) -> None:
    ben, cohort = of_sam(field)
    assert told(field, BEN, JoinedCohort) == JoinedCohort("Spring", MONDAY)
    assert told(field, BEN, cm.CohortAsks) == cm.CohortAsks("activity_minutes")
    assert told(field, SAM, ClientInCohort) == ClientInCohort("Ben", "Spring", "Olga")
    assert field.buttons(SAM) == [f"coyes:{ben}:{cohort}", f"cono:{ben}:{cohort}"]
    row = field.database.read_now(row_of, ben)
    assert row.coach_id != field.rowan
    assert "activity_minutes" in row.plan and "waist" in row.plan
    assert field.commands("start", field.link(cohort), chat=BEN) == [cm.AlreadyInCohort("Spring")]


def test_the_organiser_hears_of_everybody_who_joins_and_can_take_them_out(field: Field) -> None:
    ben, cohort = of_sam(field)
    assert told(field, OLGA, om.SomebodyJoined) == om.SomebodyJoined("Spring", "Ben", 1, "Sam")
    assert field.buttons(OLGA) == [f"coout:{cohort}:{ben}", f"cohort:{cohort}"]
    (page,) = field.presses(f"copeople:{cohort}:0", OLGA)
    assert page.waiting == ("Ben",)


def test_nothing_counts_until_the_coach_says_yes(field: Field) -> None:
    ben, cohort = of_sam(field)
    others = [field.member(1000 + n, f"Member {n}") for n in range(5)]
    field.join(cohort, *others)
    c = field.database.read_now(store.one_of_mine, field.olga, cohort)
    assert len(field.database.read_now(store.participants, c)) == 5
    field.now = NOW + WEEK
    assert field.presses(f"coyes:{ben}:{cohort}", SAM) == [om.CountsInCohort("Spring", "Ben")]
    (found,) = [p for p in field.database.read_now(store.participants, c) if p.client_id == ben]
    assert found.joined == field.now.date()
    assert field.presses(f"cono:{ben}:{cohort}", SAM) == [KeptAsItWas()]  # it is answered once
    assert (ben, True) in field.members_of(cohort)


def test_a_coach_who_says_no_keeps_them_out_and_everybody_hears_it_kindly(field: Field) -> None:
    ben, cohort = of_sam(field)
    assert field.presses(f"cono:{ben}:{cohort}", SAM) == [om.MemberRemoved("Spring", "Ben")]
    assert field.members_of(cohort) == [(ben, False)]
    assert queued(field.database, BEN)[-1] == cm.NotInCohort("Spring")
    assert told(field, OLGA, om.CoachSaidNo) == om.CoachSaidNo("Spring", "Ben")
    assert field.presses(f"coyes:{ben}:{cohort}", SAM) == [KeptAsItWas()]


@pytest.mark.parametrize("chat", [ROWAN, OLGA, BEN])
def test_nobody_but_their_coach_answers_for_a_client(field: Field, chat: int) -> None:
    ben, cohort = of_sam(field)
    field.presses(f"coyes:{ben}:{cohort}", chat)
    assert field.database.read_now(store.waits, cohort, ben)


def test_a_newcomer_s_coach_is_asked_after_they_agreed(field: Field) -> None:
    cohort = field.spring(coach=field.rowan)
    field.commands("start", field.link(cohort), chat=ADA)
    assert queued(field.database, ROWAN) == []
    field.presses("consent:yes", ADA)
    assert told(field, ROWAN, ClientInCohort).cohort == "Spring"
    (client,) = rows(field.database, t.clients)
    assert field.database.read_now(store.waits, cohort, client.id)
    assert told(field, OLGA, om.SomebodyJoined).coach == "Rowan"


def test_a_coach_who_runs_the_cohort_is_not_asked_about_their_own_clients(field: Field) -> None:
    ada = field.member(ADA, "Ada")
    said = set_up(field, ROWAN)
    field.commands("start", said[1].link.partition("=")[2], chat=ADA)
    (row,) = rows(field.database, t.cohort_members)
    assert (row.client_id, row.agreed_at) == (ada, NOW)
    assert told(field, ROWAN, om.SomebodyJoined) == om.SomebodyJoined("Spring", "Ada", 1, "")


def test_a_link_lets_in_no_more_people_than_was_said(field: Field) -> None:
    field.commands("cohort", "Spring", chat=OLGA)
    for data in ("costart:2026-04-06", "coweeks:4", "cotime:18:00", "cocounts:activity_minutes"):
        field.presses(data, OLGA)
    assert field.says("3", OLGA) == [om.CohortUnclear("most")]
    field.says("5", OLGA)
    said = field.presses("cocoach:none", OLGA)
    assert said[1].most == 5
    token = said[1].link.partition("=")[2]
    for n in range(5):
        field.member(1000 + n, f"Member {n}")
        assert isinstance(field.commands("start", token, chat=1000 + n)[0], JoinedCohort)
    field.member(BEN, "Ben")
    assert field.commands("start", token, chat=BEN) == [Stranger()]


def test_a_link_runs_out_with_half_time_and_can_be_taken_back(field: Field) -> None:
    cohort = field.spring(coach=field.rowan)
    field.member(ADA, "Ada")
    first = field.presses(f"colink:{cohort}", OLGA)[0].link.partition("=")[2]
    field.presses(f"corevoke:{cohort}", OLGA)
    assert field.commands("start", first, chat=ADA) == [Stranger()]
    second = field.presses(f"colink:{cohort}", OLGA)[0].link.partition("=")[2]
    field.now = datetime(2026, 4, 20, 22, 59, tzinfo=UTC)
    assert isinstance(field.commands("start", second, chat=ADA)[0], JoinedCohort)
    field.member(BEN, "Ben")
    field.now += timedelta(minutes=1)  # midnight in London
    assert field.commands("start", second, chat=BEN) == [Stranger()]
    assert isinstance(field.presses(f"colink:{cohort}", OLGA)[0], om.JoiningOver)


def test_who_has_left_samehour_does_not_come_back_by_a_cohort_s_link(field: Field) -> None:
    field.member(ADA, "Ada", status="left")
    cohort = field.spring(coach=field.rowan)
    assert field.commands("start", field.link(cohort), chat=ADA) == [HasLeft("Rowan")]
    assert field.members_of(cohort) == []


def test_staff_who_open_a_cohort_s_link_are_told_to_use_another_account(field: Field) -> None:
    cohort = field.spring(coach=field.rowan)
    field.commands("help")
    assert [type(m).__name__ for m in field.commands("start", field.link(cohort))] == ["UsedForCare"]
    assert field.members_of(cohort) == []


# --- leaving ----------------------------------------------------------------------------------------------------


def test_a_client_sees_their_cohorts_and_leaves_one_kindly(field: Field) -> None:
    ada = field.member(ADA, "Ada")
    cohort = field.spring()
    field.join(cohort, ada)
    assert field.commands("cohort", chat=ADA) == [cm.MyCohorts((("Spring", MONDAY, TERMS.last),))]
    assert field.buttons(ADA) == [f"coleave:{cohort}"]
    assert field.presses(f"coleave:{cohort}", ADA) == [cm.LeaveCohortSure("Spring")]
    assert field.presses("cogone:no", ADA) and field.members_of(cohort) == [(ada, True)]
    field.presses(f"coleave:{cohort}", ADA)
    assert field.says("yes", ADA) == [cm.LeaveCohortSure("Spring")]  # a yes alone ends nothing
    assert field.presses("cogone:yes", ADA) == [cm.LeftCohort("Spring")]
    assert field.members_of(cohort) == [(ada, False)]
    assert field.commands("cohort", chat=ADA) == [cm.MyCohorts(())]


def test_a_client_cannot_leave_what_they_are_not_in(field: Field) -> None:
    field.member(ADA, "Ada")
    ben = field.member(BEN, "Ben")
    cohort = field.spring()
    field.join(cohort, ben)
    assert field.presses(f"coleave:{cohort}", ADA) == [cm.MyCohorts(())]
    assert field.members_of(cohort) == [(ben, True)]


def test_the_organiser_takes_a_member_out_who_is_told_kindly(field: Field) -> None:
    ada = field.member(ADA, "Ada")
    cohort = field.spring()
    field.join(cohort, ada)
    field.presses(f"coout:{cohort}:{ada}", OLGA)
    assert field.presses(f"cosure:remove:{cohort}:{ada}", OLGA) == [om.MemberRemoved("Spring", "Ada")]
    assert field.members_of(cohort) == [(ada, False)]
    assert queued(field.database, ADA) == [cm.TakenOutOfCohort("Spring", "Olga")]


def test_who_comes_back_counts_anew_and_who_is_in_stays_as_they_were(field: Field) -> None:
    ada = field.member(ADA, "Ada")
    cohort = field.spring()
    field.join(cohort, ada)
    field.join(cohort, ada, at=NOW + WEEK)
    assert rows(field.database, t.cohort_members)[0].joined_at == NOW
    field.database.write_now(store.leave, ada, NOW + WEEK)
    field.join(cohort, ada, at=NOW + 2 * WEEK)
    (row,) = rows(field.database, t.cohort_members)
    assert (row.joined_at, row.left_at) == (NOW + 2 * WEEK, None)


def test_who_leaves_samehour_or_is_let_go_is_in_no_cohort(field: Field) -> None:
    ada, ben = field.member(ADA, "Ada"), field.member(BEN, "Ben")
    cohort = field.spring()
    field.join(cohort, ada, ben)
    field.presses("set:leave", ADA)
    field.presses("leave:yes", ADA)
    field.presses(f"end:{ben}")
    field.presses(f"sure:end:{ben}")
    assert field.members_of(cohort) == [(ada, False), (ben, False)]


# --- week by week -----------------------------------------------------------------------------------------------


def test_the_group_hears_start_figures_and_a_milestone_and_then_the_end(field: Field) -> None:
    _, people = full(field)
    for number in range(5):
        week_of(field, people, number, 150)
    field.goes_on_to(instants(TERMS)[-1])
    kinds = [type(m).__name__ for m in group_said(field)]
    assert kinds == [
        "GroupHello", "GroupStarts", "GroupWeek", "GroupWeek", "GroupWeek", "GroupMilestone", "GroupWeek",
        "GroupMilestone", "GroupWeek", "GroupClosing",
    ]  # fmt: skip
    sums = [m.together for m in group_said(field) if isinstance(m, cm.GroupWeek)]
    assert sums[0] is None
    assert sums[1:] == [Sum(Counted.MINUTES, 6, 915 * n, n) for n in range(1, 5)]
    assert [m.reached for m in group_said(field) if isinstance(m, cm.GroupMilestone)] == [1000, 2500]
    assert rows(field.database, t.groups) == []


def test_a_group_of_four_hears_no_figure_ever(field: Field) -> None:
    _, people = full(field, 4)
    for number in range(5):
        week_of(field, people, number, 150)
    field.goes_on_to(instants(TERMS)[-1])
    assert [type(m).__name__ for m in group_said(field)] == ["GroupHello", "GroupStarts", "GroupClosing"]
    closing = group_said(field)[-1].report
    assert [s.total for s in closing.sums] == [None, None]
    assert closing.changes == (TooFew("energy"),)


def test_figures_that_were_told_stay_as_they_were(field: Field) -> None:
    """Somebody answers late, somebody is erased: published figures do not change, so no difference reveals anything."""
    cohort, people = full(field, 7)
    week_of(field, people, 1)
    field.goes_on_to(instants(TERMS)[2])
    before = field.database.read_now(store.weeks, [cohort])[cohort]
    field.does(people[0], 1, activity_minutes="999")
    field.database.write_now(erase.client, people[6], field.now)
    field.goes_on_to(instants(TERMS)[3])
    assert field.database.read_now(store.weeks, [cohort])[cohort][:2] == before


def test_of_two_groups_with_six_in_common_and_one_more_only_one_is_told_for_good(field: Field) -> None:
    """Also after the one more was erased, and in what the other group is told at its end."""
    first, people = full(field)
    one_more = field.member(2000, "One more")
    second = field.spring()
    field.join(second, *people, one_more)
    everybody = [*people, one_more]
    for number in range(3):
        week_of(field, everybody, number)
    field.goes_on_to(instants(TERMS)[3])
    field.database.write_now(erase.client, one_more, field.now)
    for number in (3, 4):
        week_of(field, people, number)
    field.goes_on_to(instants(TERMS)[-1])
    told_weeks = field.database.read_now(store.weeks, [first, second])
    assert [w.total for w in told_weeks[first]] == [None, 615, 615, 615, 615]
    assert [w.total for w in told_weeks[second]] == [None, None, None, 615, 615]  # the same people: the same figure
    assert [w.asked for w in told_weeks[second]] == [None, None, None, 6, 6]


def test_two_workers_never_tell_at_once(field: Field, open_database: Callable[[], Database]) -> None:
    if field.database.is_sqlite:
        pytest.skip("SQLite has one writer")
    cohort, _ = full(field)
    other = open_database()

    def is_free() -> bool:
        wanted = text("SELECT pg_try_advisory_xact_lock(:what)")
        return bool(other.write_now(lambda conn: conn.execute(wanted, {"what": store.TELLING}).scalar()))

    def telling(conn: Connection) -> bool:
        store.told_beside(conn, cohort, ())
        return is_free()

    assert is_free()
    assert not field.database.write_now(telling)
    assert is_free()


def test_who_is_erased_stays_in_the_record_under_a_name_nobody_can_find_again(field: Field) -> None:
    _, people = full(field)
    week_of(field, people, 0)
    week_of(field, people, 1)
    field.goes_on_to(instants(TERMS)[2])
    before = rows(field.database, t.cohort_told)
    assert len(before) == 6 * 2 + 6  # attendance of two check-ins, minutes of one
    field.database.write_now(erase.client, people[0], field.now)
    assert rows(field.database, t.cohort_told) == before
    assert not [row for row in before if "Member" in str(row) or str(people[0]) == row.who]


def test_the_record_of_what_was_told_does_not_outlive_its_use(field: Field) -> None:
    _, people = full(field)
    week_of(field, people, 1)
    field.goes_on_to(instants(TERMS)[2])
    for days, left in ((300, True), (400, False)):
        later = field.now + timedelta(days=days)
        field.database.write_now(retention.tidy, later, retention.RetentionPeriods())
        assert bool(rows(field.database, t.cohort_told)) is left


def test_nothing_is_told_twice_by_two_sweeps(field: Field) -> None:
    cohort, people = full(field)
    week_of(field, people, 0)
    at = instants(TERMS)[1]
    field.goes_on_to(at)
    field.database.write_now(lambda conn: store.set_next(conn, cohort, at))
    field.database.write_now(cohorts.sweep, at)
    assert sum(isinstance(m, cm.GroupWeek) for m in group_said(field)) == 1


def test_after_an_outage_all_figures_are_kept_and_only_the_newest_are_told(field: Field) -> None:
    cohort, people = full(field)
    for number in range(4):
        week_of(field, people, number)
    field.database.write_now(cohorts.sweep, instants(TERMS)[3])
    assert [w.number for w in field.database.read_now(store.weeks, [cohort])[cohort]] == [0, 1, 2]
    assert [m.week.number for m in group_said(field) if isinstance(m, cm.GroupWeek)] == [2]


# --- the end ----------------------------------------------------------------------------------------------------


def closed(field: Field, cohort: int, people: list[int]) -> Any:
    for number in range(5):
        week_of(field, people, number, **({"weight": "82.4"} if number in (0, 4) else {}))
    field.goes_on_to(instants(TERMS)[-1])
    return told(field, OLGA, om.ClosingSaid).report


def test_an_organiser_who_is_no_coach_gets_the_report_with_energy_alone(field: Field) -> None:
    cohort, people = full(field)
    report = closed(field, cohort, people)
    assert [c.measure for c in report.changes] == ["energy"]
    assert isinstance(report.changes[0], Paired) and report.changes[0].mean == 4
    assert (report.members, report.asked, report.kept) == (6, 30, 30)
    assert told(field, OLGA, om.ClosingPicture).report == report
    assert field.presses(f"coreport:{cohort}:pdf", OLGA) == [om.ClosingFile(report, "pdf")]


def test_the_coach_of_everybody_gets_every_measure_and_of_all_but_one_only_energy(field: Field) -> None:
    own = field.database.write_now(lambda conn: store.ensure_organiser(conn, _person(conn, ROWAN), "Rowan", NOW))
    cohort = field.spring(organiser=own, coach=field.rowan)
    people = [field.member(1000 + n, f"Member {n}") for n in range(5)]
    field.join(cohort, *people)
    for number in range(5):
        week_of(field, people, number, **({"weight": "82.4"} if number in (0, 4) else {}))
    c = field.database.read_now(store.one_of_mine, own, cohort)
    made = field.database.read_now(lambda conn: report_of(conn, c))
    assert [x.measure for x in made.changes] == ["energy", "weight"]
    sam = field.database.write_now(add_coach, SAM, "Sam")
    field.database.write_now(
        lambda conn: conn.execute(update(t.clients).where(t.clients.c.id == people[0]).values(coach_id=sam))
    )
    made = field.database.read_now(lambda conn: report_of(conn, c))
    assert [x.measure for x in made.changes] == ["energy"]


def report_of(conn: Any, c: store.Cohort) -> Any:
    everybody = store.participants(conn, c)
    return cohorts.closing_report(conn, c, everybody, store.told_beside(conn, c.id, everybody))


def _person(conn: Any, chat: int) -> int:
    found = people.person_of(conn, chat)
    assert found is not None
    return found


def test_every_member_hears_of_their_own_check_ins_and_of_nobody_else_s(field: Field) -> None:
    cohort, people = full(field)
    gone = field.member(BEN, "Ben")
    field.join(cohort, gone)
    field.does(gone, 0)
    field.database.write_now(store.leave, gone, NOW + 2 * WEEK, cohort)
    field.does(people[0], 4, kept=False)
    closed(field, cohort, people[1:])
    assert told(field, 1001, cm.CohortOver) == cm.CohortOver("Spring", 5, 5)
    assert told(field, 1000, cm.CohortOver) == cm.CohortOver("Spring", 0, 1)
    assert queued(field.database, BEN) == []


def test_a_cohort_ended_early_has_a_report_of_what_there_is(field: Field) -> None:
    cohort, people = full(field)
    week_of(field, people, 0)
    week_of(field, people, 1)
    field.goes_on_to(instants(TERMS)[1] + timedelta(days=4))
    field.presses(f"coend:{cohort}", OLGA)
    field.presses(f"cosure:end:{cohort}:0", OLGA)
    report = told(field, OLGA, om.ClosingSaid).report
    assert [w.number for w in report.attendance] == [0, 1]
    assert field.database.read_now(cohorts.next_at) is None
    (fact,) = field.database.read_now(store.mine, field.olga)
    assert fact.closed and fact.closing == report


def test_one_called_off_tells_its_members_and_makes_no_report(field: Field) -> None:
    cohort, _ = full(field)
    token = field.link(cohort)
    field.presses(f"coend:{cohort}", OLGA)
    assert field.presses(f"cosure:end:{cohort}:0", OLGA) == [om.CohortCalledOff("Spring")]
    assert queued(field.database, 1000) == [cm.CohortOff("Spring")]
    assert isinstance(group_said(field)[-1], cm.GroupGoodbye)
    field.member(ADA, "Ada")
    assert field.commands("start", token, chat=ADA) == [Stranger()]


def test_an_organiser_who_is_forgotten_takes_their_cohorts_along(field: Field) -> None:
    full(field)
    field.commands("forget", chat=OLGA)
    field.presses("forget", OLGA)
    assert queued(field.database, 1000) == [cm.CohortOff("Spring")]
    for table in (t.cohorts, t.cohort_members, t.cohort_weeks, t.groups, t.organisers):
        assert rows(field.database, table) == [], table.name


# --- rights -----------------------------------------------------------------------------------------------------

BUTTONS = (
    "cohort:{}", "colink:{}", "corevoke:{}", "copeople:{}:0", "coout:{}:{}", "cogroup:{}", "countie:{}", "coend:{}",
    "cosure:end:{}:0", "coreport:{}:csv",
)  # fmt: skip


@pytest.mark.parametrize("data", BUTTONS)
def test_another_organiser_a_coach_a_client_and_a_stranger_reach_nothing_of_a_cohort(field: Field, data: str) -> None:
    cohort, people = full(field)
    field.member(ADA, "Ada")
    before = snapshot(field)
    pressed = data.format(cohort, people[0])
    for chat in (ROWAN, ADA, 12345):
        said = field.presses(pressed, chat)
        assert {type(m) for m in said} <= {
            om.CohortNotYours, om.AskCohortName, Stranger, NotForThisRole, OldButton,
        }, said  # fmt: skip
    assert snapshot(field) == before


def snapshot(field: Field) -> Any:
    tables = (t.cohorts, t.cohort_members, t.cohort_weeks, t.groups, t.invitations)
    return [rows(field.database, table) for table in tables]


def test_nothing_an_organiser_is_sent_holds_what_anybody_typed(field: Field) -> None:
    """A conspicuous reading is searched for in every message ever sent to the organiser and to the group."""
    cohort, people = full(field)
    for number in range(5):
        week_of(field, people, number)
    field.does(people[0], 2, activity_minutes="4321", energy="9", weight="98.76")
    field.goes_on_to(instants(TERMS)[-1])
    field.commands("cohort", chat=OLGA)
    for data in BUTTONS:
        field.presses(data.format(cohort, people[0]), OLGA)
    sent = field.database.read_now(
        lambda conn: [r.message for r in conn.execute(select(t.outbox).where(t.outbox.c.chat_id.in_([OLGA, GROUP])))]
    )
    assert len(sent) > 12
    assert not [m for m in sent if m and ("4321" in m or "98.76" in m)]


def test_the_table_of_a_report_is_read_back_by_a_spreadsheet(field: Field) -> None:
    cohort, people = full(field)
    report = closed(field, cohort, people)
    read = list(csv.DictReader(io.StringIO(closing_csv(report).decode("utf-8-sig"))))
    assert tuple(read[0]) == COLUMNS
    (change,) = [r for r in read if r["what"] == "change"]
    assert (change["key"], change["people"], change["value"]) == ("energy", "6", "4")
    assert [r["value"] for r in read if r["what"] == "attendance"] == ["", "615", "615", "615", "615"]
    assert CohortWeek(1, 6, 6, 6, 615) in report.attendance


def test_a_coach_who_is_named_may_be_gone_and_then_newcomers_are_not_let_in(field: Field) -> None:
    cohort = field.spring(coach=field.rowan)
    token = field.link(cohort)
    field.database.write_now(
        lambda conn: conn.execute(update(t.coaches).where(t.coaches.c.id == field.rowan).values(left_at=NOW))
    )
    assert field.commands("start", token, chat=ADA) == [cm.CohortForClients("Spring", "Olga")]
