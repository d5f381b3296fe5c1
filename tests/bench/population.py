"""An invented practice of any size, written straight into a database: clients with years of readings behind them.

Everything is drawn from one fixed seed, so two databases of the same size are the same.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import datetime, time, timedelta
from decimal import Decimal
from itertools import islice
from random import Random
from typing import Any

from sqlalchemy import Connection, insert, text

from bot.store import owners, people
from bot.store.database import Database
from bot.store.keyring import of_connection
from bot.store.people import Role
from bot.store.schema import clients, outbox, readings
from bot.store.schema import people as people_table
from bot.store.sealed import secret
from core.care import Status

FIRST_CHAT = 1_000_000
A_LOAD = 10_000  # rows per statement
WEEKLY = (("energy", 6.0, 1.2), ("sessions_done", 2.5, 1.0), ("activity_minutes", 110.0, 40.0))
MONTHLY = (("resting_heart_rate", 68.0, 4.0), ("weight", 82.0, 0.8), ("waist", 96.0, 1.2), ("hip", 104.0, 1.2))
UNITS = {"weight": "kg", "waist": "cm", "hip": "cm", "resting_heart_rate": "bpm", "activity_minutes": "min"}


def fill(
    database: Database,
    count: int,
    now: datetime,
    *,
    weeks: int = 0,
    due: datetime | None = None,
    caseload: int = 60,
    first_chat: int = FIRST_CHAT,
    grid: timedelta = timedelta(minutes=1),
) -> None:
    """Write `count` active clients, `caseload` per coach, with `weeks` of readings before `now`.

    due: when all of them are next due; None spreads them over the coming week, in steps of `grid`. Chat ids: from
    `first_chat`, the coaches' after the clients'.
    """
    draw = Random(1)
    for at, rows in enumerate(_loads(_clients(draw, count, now, due, caseload, first_chat, grid))):
        if at == 0:
            database.write_now(_coaches, -(-count // caseload), now, first_chat + count)
        database.write_now(_put_clients, rows)
    if weeks:
        for rows in _loads(_readings(draw, count, now, weeks)):
            database.write_now(_put_readings, rows)
    database.write_now(_settled)


def _loads(rows: Iterator[dict[str, Any]]) -> Iterator[list[dict[str, Any]]]:
    while some := list(islice(rows, A_LOAD)):
        yield some


def _coaches(conn: Connection, count: int, now: datetime, first_chat: int) -> None:
    for n in range(count):
        person = people.add(conn, first_chat + n, Role.COACH, f"Rowan {n}", "en", now)
        people.add_coach(conn, person, f"Rowan {n}", now)


def _clients(
    draw: Random, count: int, now: datetime, due: datetime | None, caseload: int, first_chat: int, grid: timedelta
) -> Iterator[dict[str, Any]]:
    tomorrow = now.replace(hour=0, minute=0, second=0, microsecond=0) + timedelta(days=1)
    for n in range(count):
        steps = draw.randrange(timedelta(hours=13) // grid)  # 07:00-20:00
        at = due or tomorrow + timedelta(days=draw.randrange(7), hours=7) + steps * grid
        at = at.replace(second=0, microsecond=0)
        yield {
            "chat_id": first_chat + n,
            "coach": n // caseload,
            "name": f"Ada {n}",
            "sex": draw.choice(("female", "male")),
            "birth_year": draw.randrange(1940, 1990),
            "stature": Decimal(draw.randrange(155, 190)),
            "weekday": at.weekday(),
            "at": time(at.hour, at.minute),
            "next_due_at": at,
            "next_due_day": at.date(),
            "created_at": now - timedelta(weeks=110),
            "day": now.date(),
        }


def _put_clients(conn: Connection, rows: Sequence[dict[str, Any]]) -> None:
    keys = dict(
        zip((r["chat_id"] for r in rows), of_connection(conn).make_many(len(rows), rows[0]["day"]), strict=True)
    )
    theirs = [
        {
            "chat_id": r["chat_id"],
            "key_id": keys[r["chat_id"]],
            "role": "client",
            "name": secret(keys[r["chat_id"]], r["name"]),
            "language": "en",
            "created_at": r["created_at"],
        }
        for r in rows
    ]
    conn.execute(insert(people_table), theirs)
    chats = {"low": rows[0]["chat_id"], "high": rows[-1]["chat_id"]}
    found = conn.execute(text("SELECT chat_id, id FROM people WHERE chat_id BETWEEN :low AND :high"), chats)
    ids = {r.chat_id: r.id for r in found}
    first_coach = conn.execute(text("SELECT min(id) FROM coaches")).scalar_one()
    fixed = {"status": Status.ACTIVE.value, "zone_name": "UTC"}
    conn.execute(
        insert(clients),
        [
            {
                k: secret(keys[r["chat_id"]], v) if k in ("name", "sex", "birth_year", "stature") else v
                for k, v in r.items()
                if k not in ("chat_id", "coach", "day")
            }
            | fixed
            | {
                "key_id": keys[r["chat_id"]],
                "person_id": ids[r["chat_id"]],
                "coach_id": first_coach + r["coach"],
                "consented_at": r["created_at"],
            }
            for r in rows
        ],
    )


def _readings(draw: Random, count: int, now: datetime, weeks: int) -> Iterator[dict[str, Any]]:
    """As a chat would have written them: week by week, everybody."""
    for week in range(weeks, 0, -1):
        at = now - timedelta(weeks=week)
        for client in range(1, count + 1):
            for measure, mean, spread in (*WEEKLY, *(MONTHLY if week % 4 == 0 else ())):
                value = Decimal(f"{max(0, draw.gauss(mean, spread)):.{1 if measure in ('weight', 'waist') else 0}f}")
                yield {
                    "client_id": client,
                    "key": f"{measure}/{week}",
                    "measure": measure,
                    "value": min(value, Decimal(10)) if measure == "energy" else value,
                    "taken_at": at,
                    "as_typed": str(value),
                    "unit": UNITS.get(measure),
                    "how": "asked",
                    "created_at": at,
                }


def _put_readings(conn: Connection, rows: Sequence[dict[str, Any]]) -> None:
    keys = owners.of_clients(conn, {r["client_id"] for r in rows})
    sealed = [r | {k: secret(keys[r["client_id"]], r[k]) for k in ("value", "as_typed")} for r in rows]
    conn.execute(insert(readings), sealed)


def _settled(conn: Connection) -> None:
    """Update the planner's statistics, as in a database that grew slowly."""
    conn.execute(text("ANALYZE"))


def nothing_waits(conn: Connection) -> None:
    """As if all that was queued had been sent long ago."""
    conn.execute(outbox.delete())
