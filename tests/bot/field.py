"""A small set of cohorts in a database: Rowan, a coach, Olga, an organiser but not a coach, and members."""

from __future__ import annotations

from datetime import UTC, date, datetime, time, timedelta
from decimal import Decimal
from typing import Any
from zoneinfo import ZoneInfo

from bot.store import cohorts as store
from bot.store import invitations, people, readings, slots
from bot.store import schema as t
from bot.store.database import Database
from bot.store.invitations import InvitationKind
from bot.store.people import Role
from bot.turns import cohorts
from bot.turns.group_turn import GroupTurn
from bot.turns.staff_turn import StaffTurn, look_ups
from bot.turns.turn import Steps
from core.care import Slot
from core.dialogue.engines.client import step, step_stranger
from core.dialogue.kit.events import GroupEvent
from core.reading import Reading
from core.watching.cohort import Counted, Terms, jobs
from tests.bot.office import Desk
from tests.bot.practice import NOW, add_client, add_coach
from tests.bot.steps import arrive, queued, rows, work

OLGA, SAM, GROUP = 700, 901, -4000
MONDAY = date(2026, 4, 6)
SLOT = Slot(0, time(18), "Europe/London")
TERMS = Terms(MONDAY, 4, SLOT, Counted.MINUTES)
WEEK = timedelta(weeks=1)


def steps() -> Steps:
    staff = StaffTurn(look_ups(), lambda x: f"https://t.me/it?start={x}", lambda x: f"https://t.me/it?startgroup={x}")
    return Steps(step, step_stranger, staff=staff, group=GroupTurn())


class Field(Desk):
    """Rowan coaches; Olga organises but is not a coach. members: clients of Rowan's, as (chat, id)."""

    def __init__(self, database: Database) -> None:
        super().__init__(database)
        self.steps = steps()
        self.rowan = database.write_now(lambda conn: add_coach(conn, zone_name="Europe/London"))
        self.olga = database.write_now(_organiser)

    def member(self, chat: int, name: str, coach: int | None = None, **columns: Any) -> int:
        return self.database.write_now(
            lambda conn: add_client(conn, coach or self.rowan, chat, name, slot=None, **columns)
        )

    def spring(self, *, organiser: int | None = None, coach: int | None = None, terms: Terms = TERMS) -> int:
        """A cohort, created as StartCohort does."""
        return self.database.write_now(
            lambda conn: store.add(
                conn,
                NOW,
                organiser_id=organiser or self.olga,
                coach_id=coach,
                name="Spring",
                terms=terms,
                language="en",
                next_at=instants(terms)[0],
            )
        )

    def join(self, cohort: int, *clients: int, at: datetime = NOW) -> None:
        for client in clients:
            self.database.write_now(lambda conn, one=client: store.join(conn, cohort, one, at, agreed=True))

    def does(self, client: int, number: int, *, kept: bool = True, **told: str) -> None:
        """One check-in of a client: kept or not, and the answers."""
        day = TERMS.check_in(number)
        at = datetime(day.year, day.month, day.day, 17, 30, tzinfo=UTC)

        def write(conn: Any) -> None:
            slots.asked(conn, [(client, day, at)])
            if kept:
                slots.answered(conn, [(client, day)], at)
            rows = [
                readings.row(client, f"{measure}/{number}", Reading(measure, Decimal(value), at), at)
                for measure, value in told.items()
            ]
            readings.put(conn, rows)

        self.database.write_now(write)

    def goes_on_to(self, now: datetime) -> None:
        """Sweep and handle everything due until then, each at its own instant."""
        while True:
            due = self.database.read_now(cohorts.next_at)
            if due is None or due > now:
                break
            self.now = due
            self.database.write_now(cohorts.sweep, due)
        self.now = now
        work(self.database, self.steps, now)

    def group(self, what: str, by: int = OLGA, chat: int = GROUP, **more: Any) -> list[Any]:
        """Messages to the group because of an event in it."""
        before = len(queued(self.database, chat))
        arrive(self.database, GroupEvent(self.now, what, by, **more), chat_id=chat, now=self.now, is_group=True)
        work(self.database, self.steps, self.now)
        return queued(self.database, chat)[before:]

    def members_of(self, cohort: int) -> list[tuple[int, bool]]:
        return [
            (r.client_id, r.left_at is None) for r in rows(self.database, t.cohort_members) if r.cohort_id == cohort
        ]

    def link(self, cohort: int, kind: InvitationKind = InvitationKind.COHORT, **more: Any) -> str:
        return self.database.write_now(
            lambda conn: invitations.make(conn, kind, self.now, by_name="Olga", cohort_id=cohort, **more)
        )


def _organiser(conn: Any) -> int:
    return people.add_organiser(conn, people.add(conn, OLGA, Role.ORGANISER, "Olga", "en", NOW), "Olga", NOW)


def instants(terms: Terms) -> list[datetime]:
    return [job.at for job in jobs(terms, ZoneInfo("Europe/London"))]


def told(field: Field, chat: int, kind: type) -> Any:
    """The only message of a kind ever sent to a chat."""
    found = [part for m in queued(field.database, chat) for part in getattr(m, "parts", (m,)) if isinstance(part, kind)]
    assert len(found) == 1, f"{kind.__name__} said {len(found)} times to {chat}"
    return found[0]


def tied(field: Field, cohort: int) -> None:
    field.group("start", text=field.link(cohort, InvitationKind.GROUP))


def full(field: Field, count: int = 6) -> tuple[int, list[int]]:
    """A cohort of Olga's with Rowan's clients, linked to a group."""
    cohort = field.spring()
    people = [field.member(1000 + n, f"Member {n}") for n in range(count)]
    field.join(cohort, *people)
    tied(field, cohort)
    return cohort, people


def week_of(field: Field, people: list[int], number: int, minutes: int = 100, **told: str) -> None:
    for k, client in enumerate(people):
        field.does(client, number, activity_minutes=str(minutes + k), energy=str(4 + number), **told)


def group_said(field: Field) -> list[Any]:
    return [part for m in queued(field.database, GROUP) for part in getattr(m, "parts", (m,))]
