"""Everything we hold of a client reaches them, whichever table it is in, and nobody else's does."""

import csv
import io
from decimal import Decimal

from sqlalchemy import select

from bot.mydata import gather, tables
from bot.rendering.reader import Reader
from bot.store import readings, words
from bot.store.schema import clients, metadata
from bot.store.words import Direction
from core.reading import How
from tests.bot.practice import BEN, NOW, add_client, rowan_and_ada, weight


def filled(conn):
    made = rowan_and_ada(conn)
    ben = add_client(conn, made.coach, BEN, "Ben")
    for client, number in ((made.ada, "82.4"), (ben, "91.7")):
        readings.put(conn, [readings.row(client, f"k{number}", weight(number, NOW), NOW)])
    readings.put(conn, [readings.row(made.ada, "k2", weight("81.9", NOW, how=How.EARLY), NOW)])
    words.put(conn, [(made.ada, made.coach, Direction.TO_COACH, "my left knee hurts")], NOW)
    words.put(conn, [(ben, made.coach, Direction.TO_COACH, "the private words of Ben")], NOW)
    return made


def sent(database, client_id):
    person = database.read_now(
        lambda conn: conn.execute(select(clients.c.person_id).where(clients.c.id == client_id)).scalar_one()
    )
    return [message.document for message in database.read_now(gather, person, Reader())]


def test_a_client_gets_every_reading_as_csv(database):
    made = database.write_now(filled)
    (name, content), _ = sent(database, made.ada)
    assert name == "readings.csv"
    found = list(csv.DictReader(io.StringIO(content.decode("utf-8-sig"))))
    assert {Decimal(line["value"]) for line in found} == {Decimal("82.4"), Decimal("81.9")}


def test_a_client_gets_all_that_is_kept_to_read_and_nothing_of_anybody_else(database):
    made = database.write_now(filled)
    _, (name, content) = sent(database, made.ada)
    text = content.decode()
    assert name == "everything.txt"
    for theirs in ("Ada", "82.4 kg", "my left knee hurts", "Europe/London"):
        assert theirs in text
    for others in ("Ben", "91.7", "private words"):
        assert others not in text


def test_whoever_is_gone_is_sent_nothing(database):
    assert database.read_now(gather, None, Reader()) == ()
    assert database.read_now(gather, 4711, Reader()) == ()


def test_every_table_that_hangs_on_a_client_is_walked():
    walked = {table.name for table in tables()}
    hanging = {
        table.name
        for table in metadata.sorted_tables
        if any(key.column.table is clients for column in table.c for key in column.foreign_keys)
    }
    assert hanging <= walked
    assert {"readings", "words", "flags", "goals", "slots", "notes"} <= walked
