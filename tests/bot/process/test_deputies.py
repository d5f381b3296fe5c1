"""An alarm that its coach does not acknowledge in time goes to whoever stands in, once."""

from __future__ import annotations

from datetime import date, datetime, timedelta
from decimal import Decimal
from typing import Any

import pytest

from bot.process import deputies as sweeps
from bot.process import digests
from bot.store import codec, deputies, staff
from bot.store import flags as flag_store
from bot.store.people import set_reachable
from bot.store.schema import flags, outbox
from core.care import Slot, Status
from core.dialogue.staff import messages as sm
from core.dialogue.staff.facts import DeputyFact
from core.watching.flags import Code, Flag, flag
from tests.bot.office import Desk
from tests.bot.practice import ADA, NOW, ROWAN, add_client, add_coach
from tests.bot.steps import rows, work

SAM = 901
MINUTE = timedelta(minutes=1)
EMERGENCY = flag(Code.RED_FLAG_WORDS, NOW, level="emergency", sign="chest_pain", words="my chest hurts")


@pytest.fixture
def desk(database: Any) -> Any:
    """Rowan looks after Ada; Sam stands in for Rowan."""
    made: Any = Desk(database)
    made.rowan = database.write_now(lambda c: add_coach(c, zone_name="Europe/London"))
    made.sam = database.write_now(add_coach, SAM, "Sam")
    made.ada = database.write_now(add_client, made.rowan)
    database.write_now(deputies.put, made.rowan, DeputyFact(made.sam, "Sam"))
    return made


def alarm(desk: Any, one: Flag = EMERGENCY, at: datetime = NOW) -> None:
    desk.database.write_now(flag_store.raise_, [(desk.ada, one)], at)


def heard(desk: Any, kind: type) -> list[Any]:
    return [
        m
        for m in (codec.loads(r.message) for r in rows(desk.database, outbox) if r.chat_id == SAM)
        if isinstance(m, kind)
    ]


def swept(desk: Any, after: timedelta) -> int:
    return int(desk.database.write_now(sweeps.sweep, NOW + after))


def test_an_emergency_goes_to_the_deputy_after_thirty_minutes_and_only_once(desk: Any) -> None:
    alarm(desk)
    assert desk.database.read_now(sweeps.next_at) == NOW + 30 * MINUTE
    assert [swept(desk, n * MINUTE) for n in (29, 30, 31)] == [0, 1, 0]
    (told,) = heard(desk, sm.DeputyAlarm)
    assert (told.name, told.coach, told.waited, dict(told.evidence)["words"]) == ("Ada", "Rowan", 30, "my chest hurts")
    assert desk.database.read_now(sweeps.next_at) is None


@pytest.mark.parametrize("act", ["seen", "write"])
def test_what_the_coach_acknowledges_goes_to_nobody_else(desk: Any, act: str) -> None:
    alarm(desk)
    desk.presses(f"saw:{desk.ada}") if act == "seen" else desk.commands("write", "Ada I am ringing you now")
    assert swept(desk, timedelta(days=1)) == 0


def test_an_alarm_that_happens_again_after_it_was_acknowledged_waits_anew(desk: Any) -> None:
    alarm(desk)
    desk.presses(f"saw:{desk.ada}")
    alarm(desk, at=NOW + 60 * MINUTE)
    assert [swept(desk, n * MINUTE) for n in (89, 90)] == [0, 1]


def test_a_coach_sets_how_long_it_waits(desk: Any) -> None:
    desk.presses("wait:120")
    alarm(desk)
    assert [swept(desk, n * MINUTE) for n in (119, 120)] == [0, 1]


def test_what_may_wait_for_the_morning_waits_four_times_as_long(desk: Any) -> None:
    alarm(desk, flag(Code.FAST_GAIN, NOW, "weight", gain=Decimal(3)))
    assert [swept(desk, n * MINUTE) for n in (119, 120)] == [0, 1]


def test_a_coach_who_cannot_be_reached_is_not_waited_for(desk: Any) -> None:
    desk.database.write_now(set_reachable, ROWAN, False)
    alarm(desk)
    assert swept(desk, timedelta(0)) == 1 and heard(desk, sm.DeputyAlarm)[0].waited == 0


def test_what_is_not_urgent_or_has_settled_goes_to_nobody(desk: Any) -> None:
    alarm(desk, flag(Code.WANTS_COACH, NOW))
    alarm(desk)
    desk.database.write_now(
        flag_store.lower, {(desk.ada, "red_flag_words", None): flag_store.Lowering(flag_store.Ended.READING)}, NOW
    )
    assert swept(desk, timedelta(days=1)) == 0


def test_the_deputy_can_deal_with_it_and_the_history_says_so(desk: Any) -> None:
    alarm(desk)
    swept(desk, 30 * MINUTE)
    desk.now = NOW + 31 * MINUTE
    (card,) = desk.presses(f"card:{desk.ada}", chat=SAM)
    assert (card.name, card.for_coach) == ("Ada", "Rowan")
    (clear,) = [b for b in desk.buttons(SAM) if b.startswith("clear:")]
    desk.presses(clear, chat=SAM)
    desk.presses(f"done:{desk.ada}:rang", chat=SAM)
    (kept,) = rows(desk.database, flags)
    assert (kept.done, kept.done_by) == ("rang", desk.sam)
    (past,) = desk.presses(f"past:{desk.ada}")[0].flags
    assert past.by == "Sam"
    assert [type(x).__name__ for x in desk.presses(f"card:{desk.ada}", chat=SAM)] == ["NotYours"]  # it is over


def test_what_a_deputy_dealt_with_stands_once_in_the_coachs_next_digest_and_not_in_the_deputys(desk: Any) -> None:
    desk.database.write_now(staff.set_digest, desk.rowan, Slot(NOW.weekday(), NOW.time(), "UTC"), NOW)
    alarm(desk)
    swept(desk, 30 * MINUTE)
    desk.now = NOW + 31 * MINUTE
    desk.presses(f"card:{desk.ada}", chat=SAM)
    (clear,) = [b for b in desk.buttons(SAM) if b.startswith("clear:")]
    desk.presses(clear, chat=SAM)
    desk.says("rang her, she is with her doctor", chat=SAM)
    for week, told in ((1, 1), (2, 0)):
        desk.now = NOW + timedelta(weeks=week)
        digest = desk.due()[0].digest
        assert [f.words for e in digest.changes for f in e.flags] == ["rang her, she is with her doctor"] * told
        assert digest.needed == 0


def test_what_the_coach_dealt_with_is_not_told_to_them_again(desk: Any) -> None:
    alarm(desk)
    desk.presses(f"card:{desk.ada}")
    (clear,) = [b for b in desk.buttons(ROWAN) if b.startswith("clear:")]
    desk.presses(clear)
    desk.says("rang her")
    assert desk.commands("digest")[0].digest.calm


def test_while_the_coach_is_away_the_deputy_gets_the_digest_and_opens_the_cards(desk: Any) -> None:
    today = date(2026, 3, 30)
    desk.database.write_now(deputies.put, desk.rowan, DeputyFact(desk.sam, "Sam", today, today + timedelta(days=6)))
    slot = Slot(NOW.weekday(), NOW.time(), "UTC")
    desk.database.write_now(staff.set_digest, desk.rowan, slot, NOW - timedelta(days=1))
    alarm(desk, flag(Code.WANTS_COACH, NOW - timedelta(days=1)), NOW - timedelta(days=1))
    settled = desk.database.write_now(lambda c: add_client(c, desk.rowan, 555, "Ben"))
    pulse = flag(Code.PULSE_FAST, NOW - timedelta(days=1), "resting_heart_rate", rate=Decimal(128))
    desk.database.write_now(flag_store.raise_, [(settled, pulse)], NOW - timedelta(days=1))
    over = {(settled, "pulse_fast", "resting_heart_rate"): flag_store.Lowering(flag_store.Ended.READING)}
    desk.database.write_now(flag_store.lower, over, NOW - timedelta(hours=20))
    desk.database.write_now(digests.sweep, NOW)
    work(desk.database, desk.steps, NOW)
    (said,) = heard(desk, sm.DigestFor)
    assert said.coach == "Rowan" and [e.name for e in said.digest.needs] == ["Ada"]
    (own,) = [m for m in desk.heard(ROWAN) if isinstance(m, sm.DigestSaid)]
    assert [e.shown for e in said.digest.changes] == [e.shown for e in own.digest.changes] != []
    assert [type(x).__name__ for x in desk.presses(f"card:{desk.ada}", chat=SAM)] == ["CardSaid"]
    desk.now = NOW + timedelta(days=7)
    assert [type(x).__name__ for x in desk.presses(f"card:{desk.ada}", chat=SAM)] == ["NotYours"]


def test_an_alarm_after_care_has_ended_reaches_the_coach_who_can_open_the_card(database: Any) -> None:
    desk: Any = Desk(database)
    rowan = database.write_now(lambda c: add_coach(c, zone_name="Europe/London"))
    desk.ada = database.write_now(lambda c: add_client(c, rowan, status=Status.LEFT.value, left_at=NOW))
    assert [type(x).__name__ for x in desk.presses(f"card:{desk.ada}")] == ["NotYours"]
    desk.says("I have chest pain", chat=ADA)
    assert [type(x).__name__ for x in desk.heard(ROWAN)] == ["UrgentFlag"]
    assert desk.presses(f"card:{desk.ada}")[0].status == "left"
    (entry,) = desk.commands("digest")[0].digest.needs
    assert (entry.name, entry.status) == ("Ada", "left")


def test_two_clients_of_one_name_are_told_apart_wherever_they_are_named(desk: Any) -> None:
    other = desk.database.write_now(lambda c: add_client(c, desk.rowan, 555, "Ada", birth_year=1931))
    alarm(desk)
    assert {r.name for r in desk.commands("caseload")[0].rows} == {f"Ada ({desk.ada})", "Ada (1931)"}
    assert desk.presses(f"card:{other}")[0].name == "Ada (1931)"
    assert [e.name for e in desk.commands("digest")[0].digest.needs] == [f"Ada ({desk.ada})"]
    desk.says("please ring me", chat=555)
    desk.commands("coach", "please ring me", chat=555)
    assert [x.name for x in desk.heard(ROWAN)] == ["Ada (1931)"]
