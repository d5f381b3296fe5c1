"""`digest`: a coach's digest for a date, printed or sent. Printing sends nothing and marks nothing as seen."""

from __future__ import annotations

import html
import re
from datetime import date, datetime, time

from sqlalchemy import Connection
from sqlalchemy.exc import SQLAlchemyError

from bot.foundation import config
from bot.foundation.clock import now
from bot.foundation.errors import OperatorError, UsageError
from bot.store import inbox, people, staff
from bot.store import migrate as versions
from bot.store.opening import open_database, unreachable
from bot.store.people import Staff
from bot.store.zones import zone_of
from core import schedule
from core.dialogue.kit.events import Due

USUAL_TIME = time(8, 0)
_TAG = re.compile(r"</?b>")


def digest(coach: str, day: str, *, dry_run: bool) -> str:
    """Return a coach's digest for a local date as text; unless `dry_run`, queue it for sending and say so.

    day: "2026-03-30"; "" is today.  Flags are those open on that date; names, pauses and evidence are current.

    Raises: UsageError for an invalid date or a name that is not exactly one coach's; OperatorError if the database is
    not ready.
    """
    try:
        wanted = date.fromisoformat(day) if day else None
    except ValueError:
        raise UsageError(f"{day} is not a date. Write it like this: 2026-03-30.") from None
    database = open_database(config.read())
    try:
        if versions.current(database.engine) != versions.head():
            raise OperatorError("The database is not ready.", "Run `samehour migrate`.")
        if dry_run:
            return database.read_now(_digest, coach, wanted, now())
        return database.write_now(_send, coach, wanted, now())
    except SQLAlchemyError as error:
        raise unreachable(error) from None
    finally:
        database.close()


def _digest(conn: Connection, name: str, day: date | None, at: datetime) -> str:
    from bot.rendering import Reader, render
    from bot.turns.staff_turn import look_ups
    from core.dialogue.staff.digest import made_for
    from core.dialogue.staff.facts import Caseload
    from core.dialogue.staff.messages import DigestSaid
    from core.dialogue.staff.states import FRESH_STAFF
    from core.dialogue.staff.step import StaffStep

    who = _coach(conn, name)
    look = look_ups()
    facts = staff.facts(conn, who, (), at, look)
    if day is not None:
        at = schedule.instant(day, facts.slot.at if facts.slot else USUAL_TIME, facts.zone)
    facts = staff.facts(conn, who, (Caseload(),), at, look)
    desk = StaffStep(FRESH_STAFF, facts, at)
    said = render(DigestSaid(made_for(desk, desk.today)), (), Reader(who.language, zone=facts.zone))
    return html.unescape(_TAG.sub("", said.text))


def _send(conn: Connection, name: str, day: date | None, at: datetime) -> str:
    """Put the digest into the coach's inbox, once for its date, as the sweep does."""
    who = _coach(conn, name)
    day = day or at.astimezone(zone_of(who.zone_name)).date()
    key = f"digest/{who.coach_id}/{day.isoformat()}"
    new = inbox.put(conn, [inbox.NewEvent(key, who.chat_id, Due(at, day))], at)
    return f"The digest for {day} is queued." if new else f"The digest for {day} was already sent."


def _coach(conn: Connection, name: str) -> Staff:
    found = staff.by_name(conn, name)
    if not found:
        raise UsageError(f"There is no coach called {name}.")
    if len(found) > 1:
        raise UsageError(f"Several coaches are called {name}: {', '.join(found.values())}.")
    who = people.coach(conn, next(iter(found)))
    if who is None:
        raise UsageError(f"{name} no longer has a chat.")
    return who
