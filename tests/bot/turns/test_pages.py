"""A page through the store: what is loaded for it, and for whom."""

from __future__ import annotations

from datetime import timedelta
from decimal import Decimal
from typing import Any

import pytest

from bot.store import caseload, coach_thread, codec, readings
from bot.store import facts as known_facts
from bot.store import staff as store
from bot.store.coach_thread import Direction
from bot.store.database import Database
from bot.store.mentions import Erased, without
from bot.turns.staff_turn import look_ups
from core.care import Status
from core.dialogue.staff import messages as sm
from core.dialogue.staff.facts import QuarterMeant
from core.reading import Reading
from tests.bot.office import Desk
from tests.bot.practice import ADA, BEN, NOW, ROWAN, add_client, add_coach

DORA, SAM = 300, 901
WEEK = timedelta(weeks=1)


@pytest.fixture
def desk(database: Database) -> Desk:
    desk: Any = Desk(database)

    def fill(conn: Any) -> None:
        rowan, sam = add_coach(conn), add_coach(conn, SAM, "Sam")
        desk.ada, desk.ben = add_client(conn, rowan), add_client(conn, rowan, BEN, "Ben")
        add_client(conn, rowan, DORA, "Dora", status=Status.LEFT.value, left_at=NOW)
        hers = add_client(conn, sam, 400, "Hana")
        for n, client in enumerate((desk.ada, desk.ben, hers)):
            for weeks in (4, 0):
                reading = Reading("waist", Decimal(90 + n), NOW - weeks * WEEK)
                readings.put(conn, [readings.row(client, f"waist/{weeks}", reading, NOW)])
        for client_id in (desk.ada, desk.ben):
            client = caseload.client(conn, rowan, client_id)
            assert client is not None
            coach_thread.note(conn, client, sam, f"old note of Sam {client_id}", NOW - 9 * WEEK)
            coach_thread.note(conn, client, rowan, f"note {client_id}", NOW - 9 * WEEK)
        coach_thread.put(conn, [(desk.ada, rowan, Direction.TO_COACH, "long ago")], NOW - 5 * WEEK)
        coach_thread.put(conn, [(desk.ada, rowan, Direction.TO_COACH, "bad knee")], NOW - WEEK)
        coach_thread.put(conn, [(desk.ben, rowan, Direction.TO_CLIENT, "well done")], NOW - WEEK)

    database.write_now(fill)
    return desk


def test_a_page_of_everybody_has_their_own_notes_words_and_readings(desk: Any) -> None:
    (page,) = desk.commands("digest", "page")
    found = {section.card.name: section for section in page.sections}
    assert list(found) == ["Ada", "Ben"]
    assert found["Ada"].card.note == f"note {desk.ada}" and found["Ben"].card.note == f"note {desk.ben}"
    assert [w[1:] for w in found["Ada"].words] == [(True, "bad knee")]
    assert [w[1:] for w in found["Ben"].words] == [(False, "well done")]
    assert [found[name].results[0].last.amount.value for name in found] == [90, 91]


def test_a_page_of_one_has_what_was_written_long_ago_too(desk: Any) -> None:
    (page,) = desk.commands("page", "ada")
    assert isinstance(page, sm.ClientPage)
    assert [text for _, _, text in page.section.words] == ["long ago", "bad knee"]


def test_a_page_waits_in_the_outbox_as_a_value_and_reads_back_equal(desk: Any) -> None:
    (page,) = desk.commands("page", "ada")
    assert codec.loads(codec.dumps(page)) == page


def test_a_coach_gets_nobody_elses_page(desk: Any) -> None:
    assert [type(message).__name__ for message in desk.commands("page", "Ada", SAM)] == ["NobodyFound"]
    assert "Ada" not in str(desk.commands("page", "", SAM))


def test_a_client_gets_no_page_of_a_coach(desk: Any) -> None:
    assert not any(isinstance(message, sm.CaseloadPage) for message in desk.commands("page", "", ADA))


def test_a_page_that_waits_is_sent_without_somebody_who_is_erased(desk: Any) -> None:
    (page,) = desk.commands("page")
    (left,) = without(page, Erased(desk.ada, "Ada")).sections
    assert left.card.name == "Ben"


def test_a_quarter_of_the_practice_has_those_who_left_and_nobody_of_another_coach(desk: Any) -> None:
    def load(conn: Any) -> Any:
        who = known_facts.who(conn, [ROWAN])[ROWAN].staff
        assert who is not None
        return store.facts(conn, who, [QuarterMeant("2026q1")], NOW + 2 * WEEK, look_ups())

    facts = desk.database.read_now(load)
    assert facts.quarter is not None and facts.quarter.quarter.key == "2026q1"
    assert len(facts.quarter.people) == 3  # Ada, Ben and Dora, who has left
    assert sorted(len(p.readings) for p in facts.quarter.people) == [0, 2, 2]
