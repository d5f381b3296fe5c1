"""The readings loaded for a turn, compared with a plain loop over all of them."""

from dataclasses import replace
from datetime import UTC, datetime, timedelta
from decimal import Decimal
from random import Random

from sqlalchemy import Connection, update

from bot.store import readings
from bot.store.database import Database
from bot.store.schema import clients
from core.reading import SAME, Conditions, How, Reading
from tests.bot.practice import NOW, add_client, add_coach, weight

MEASURES = ("energy", "weight", "waist", "blood_pressure")
SEVERAL = ("blood_pressure", "energy", "waist")  # whose start is a week, four weeks, or two visits


def matters(held: list[Reading], since: datetime | None) -> set[tuple[str, datetime]]:
    """Everything of twelve weeks, of a pressure ten; before that, for each measure the start and the last that
    count, and of what is hard to judge all that count of 24 weeks."""
    recent, series, long = (NOW - timedelta(weeks=weeks) for weeks in (12, 10, 24))
    found = {
        (r.measure, r.taken_at) for r in held if r.taken_at >= (series if r.measure == "blood_pressure" else recent)
    }
    for measure in MEASURES:
        old = sorted(
            r.taken_at
            for r in held
            if r.measure == measure and r.counts and r.taken_at < recent and (since is None or r.taken_at >= since)
        )
        start = [at for at in old if at < old[0] + timedelta(days=25)] if measure in SEVERAL else old[:1]
        deep = [at for at in old if at >= long] if measure in ("energy", "waist") else []
        found |= {(measure, at) for at in (*start, *old[-1:], *deep)}
    return found


def test_a_turn_is_told_of_twelve_weeks_and_of_start_and_end_of_what_came_before(database: Database) -> None:
    draw = Random(7)
    expected = {}

    def fill(conn: Connection) -> None:
        coach = add_coach(conn)
        for n in range(12):
            client = add_client(conn, coach, 100 + n)
            since = None if n % 3 else NOW - timedelta(days=300)
            conn.execute(update(clients).where(clients.c.id == client).values(baseline_since=since))
            held = [
                Reading(
                    draw.choice(MEASURES),
                    Decimal(draw.randrange(60, 90)),
                    NOW - timedelta(days=draw.randrange(500), seconds=number),
                    how=draw.choice((How.ASKED, How.ASKED, How.EARLY)),
                    key=str(number),
                )
                for number in range(draw.choice((0, 1, 5, 120)))
            ]
            readings.put(conn, [readings.row(client, r.key, r, NOW) for r in held])
            gone = held[:2]
            readings.withdraw(conn, [(client, r.key) for r in gone], NOW)
            expected[client] = matters(held[len(gone) :], since)

    database.write_now(fill)
    found = database.read_now(readings.histories, list(expected), NOW)
    told = {client: {(r.measure, r.taken_at) for r in found.get(client, ())} for client in expected}
    assert told == expected
    assert any(len(one) > 20 for one in expected.values())
    assert all(list(rs) == sorted(rs, key=lambda r: r.taken_at) for rs in found.values())


def test_a_reading_loaded_for_a_turn_is_the_one_that_was_kept(database: Database) -> None:
    lately = weight(
        "82.40", NOW - timedelta(days=1, microseconds=123_450), conditions=Conditions(frozenset({"scales"}))
    )
    old = Reading(
        "blood_pressure", Decimal(128), datetime(2024, 2, 3, 4, 5, tzinfo=UTC), Decimal(82), '„128/82“ \\ "', window=30
    )

    def keep(conn: Connection) -> int:
        client = add_client(conn, add_coach(conn))
        readings.put(conn, [readings.row(client, key, r, NOW) for key, r in (("a", lately), ("b", old))])
        return client

    client = database.write_now(keep)
    found = database.read_now(readings.histories, [client], NOW)[client]
    everything = database.read_now(readings.everything, [client])[client]
    assert found == tuple(replace(reading, as_typed="") for reading in everything), "all but what was typed"
    assert [(r.value, r.second, r.taken_at, r.as_typed, r.conditions, r.unit, r.window, r.key) for r in found] == [
        (old.value, old.second, old.taken_at, "", SAME, None, 30, "b"),
        (lately.value, None, lately.taken_at, "", lately.conditions, lately.unit, None, "a"),
    ]
