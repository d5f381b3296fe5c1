"""The end of a programme through the store: attendance and the start of long ago are in its report."""

from __future__ import annotations

from datetime import timedelta
from decimal import Decimal
from typing import Any

import pytest

from bot.store import readings, slots
from bot.store.database import Database
from bot.store.schema import clients as clients_table
from core.care import Plan, Programme, Status
from core.dialogue.client import messages_to_coach as cm
from core.dialogue.client import report_messages as rm
from core.dialogue.kit.events import Due
from core.reading import Reading
from tests.bot.office import Desk
from tests.bot.practice import ADA, MONDAY, NOW, ROWAN, add_client, add_coach, client_of
from tests.bot.steps import arrive, queued, rows, work

WEEK = timedelta(weeks=1)


@pytest.fixture
def desk(database: Database) -> Desk:
    """Ada, whose twenty weeks end today; she kept 18 of her 20 check-ins."""
    desk: Any = Desk(database)

    def fill(conn: Any) -> None:
        starts = MONDAY - 20 * WEEK
        plan = Plan(measures=("waist",), programme=Programme(starts, 20))
        desk.ada = add_client(conn, add_coach(conn, zone_name="Europe/London"), plan=plan)
        for n in range(20):
            at = NOW - (20 - n) * WEEK
            slots.asked(conn, [(desk.ada, starts + n * WEEK, at)])
            if n not in (4, 9):
                slots.answered(conn, [(desk.ada, starts + n * WEEK)], at)
                energy = Reading("energy", Decimal(3 if n < 4 else 7), at)
                readings.put(conn, [readings.row(desk.ada, f"energy/{n}", energy, at)])
            if n % 4 == 0:
                waist = Reading("waist", Decimal(104 - n // 2), at)
                readings.put(conn, [readings.row(desk.ada, f"waist/{n}", waist, at)])

    database.write_now(fill)
    return desk


def closed(desk: Any) -> None:
    arrive(desk.database, Due(NOW, MONDAY, timedelta(0)), chat_id=ADA, now=NOW)
    work(desk.database, desk.steps, NOW)
    desk.says("7", ADA)
    desk.presses("e:cautions:done", ADA)  # asked before the first measure that needs them, however late
    desk.says("94", ADA)
    desk.presses("cond:same", ADA)


def test_the_report_counts_the_whole_programme_and_compares_with_its_first_weeks(desk: Any) -> None:
    closed(desk)
    (report,) = [m.report for m in desk.heard(ADA) if isinstance(m, rm.LastReport)]
    assert (report.kept, report.asked) == (19, 21)
    found = {r.measure: r for r in report.results}
    assert found["waist"].start is not None and found["waist"].start.amount.value == 104
    assert found["energy"].start is not None and found["energy"].start.amount.value == 3  # the mean of the first four


def test_the_client_is_asked_nothing_more_and_the_coach_has_the_report(desk: Any) -> None:
    closed(desk)
    (row,) = rows(desk.database, clients_table)
    assert (row.status, row.next_due_at) == (Status.FINISHED.value, None)
    told = [type(m) for m in queued(desk.database, ROWAN)]
    assert told[-3:] == [cm.ProgrammeEnded, rm.ReportForCoach, rm.ReportForCoach]


def test_a_new_round_of_the_coach_brings_the_questions_back(desk: Any) -> None:
    closed(desk)
    desk.presses(f"programme:{desk.ada}")
    desk.presses(f"programme:{desk.ada}:12")
    client = desk.database.read_now(client_of, ADA)
    assert client.status is Status.ACTIVE and client.plan.programme.ended is None
    (row,) = rows(desk.database, clients_table)
    assert row.next_due_day == MONDAY + WEEK
