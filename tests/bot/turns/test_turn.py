"""Handling the inbox: facts in, effects out, all or nothing, and one person's failure never affects another."""

from collections import Counter
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import replace
from datetime import date, timedelta

import pytest
from sqlalchemy import event as listening
from sqlalchemy import update

from bot.store import codec, conversations, inbox, outbox
from bot.store.database import Database
from bot.store.people import set_reachable
from bot.store.schema import clients as clients_table
from bot.store.schema import conversations as conversations_table
from bot.store.schema import inbox as inbox_table
from bot.store.schema import outbox as outbox_table
from bot.store.schema import readings as readings_table
from bot.store.sealed import secret
from bot.turns import turn
from core.dialogue.client.effects import Answered, NotifyCoach, PassOn, Record
from core.dialogue.client.messages import Emergency, Help, NotSure
from core.dialogue.client.states import FRESH, Awaiting, State
from core.dialogue.engines.client import step, step_stranger
from core.dialogue.kit.effects import Say
from core.dialogue.kit.events import Due, Press, Reachability, Text, TimerFired
from core.dialogue.kit.messages import OurFault, Stranger
from tests.bot.practice import ADA, BEN, MONDAY, NOW, ROWAN, add_client, in_clear, key_of, row_of, rowan_and_ada, weight
from tests.bot.steps import Puppet, arrive, queued, rows, say, work

SECOND, HOUR = timedelta(seconds=1), timedelta(hours=1)
HELLO = Say(NotSure("weight"))


@pytest.fixture
def ada(database: Database) -> int:
    return database.write_now(rowan_and_ada).ada


# --- one turn ----------------------------------------------------------------------------------------------


def test_a_text_is_answered_stored_and_forgotten_in_one_turn(database: Database, ada: int) -> None:
    state = State(asking=Awaiting("waist"))
    puppet = Puppet([Record(weight("82.4", NOW), "k1"), Answered("2026-03-30"), HELLO], state)
    say(database, puppet)
    assert queued(database) == [NotSure("weight")]
    assert [r.key for r in rows(database, readings_table)] == ["k1"]
    (handled,) = rows(database, inbox_table)
    assert (handled.status, handled.event) == ("done", None)
    assert codec.load_state(rows(database, conversations_table)[0].state) == state


def test_the_next_step_starts_from_the_state_the_last_one_left(database: Database, ada: int) -> None:
    puppet = Puppet(state=State(asking=Awaiting("waist")))
    say(database, puppet)
    say(database, puppet)
    assert [state for state, _, _ in puppet.seen] == [FRESH, State(asking=Awaiting("waist"))]


def test_a_state_that_no_longer_loads_starts_afresh(database: Database, ada: int) -> None:
    database.write_now(lambda conn: conversations.save(conn, {ADA: ("{broken", NOW, key_of(conn, ADA))}))
    puppet = Puppet([HELLO])
    say(database, puppet)
    assert puppet.seen[0][0] == FRESH
    assert queued(database) == [NotSure("weight")]


def test_a_message_is_queued_for_the_person_with_its_buttons_and_its_time(database: Database, ada: int) -> None:
    from core.dialogue.kit.effects import Choice

    buttons = ((Choice("yes", "ok:yes"),),)
    puppet = Puppet([Say(Help("Rowan", "112"), buttons, after=30 * SECOND, occasion="o/1")])
    say(database, puppet)
    (row,) = rows(database, outbox_table)
    assert (row.chat_id, row.occasion, row.due_at) == (ADA, "o/1", NOW + 30 * SECOND)
    assert row.person_id is not None
    assert codec.load_rows(row.choices) == buttons


def test_messages_of_one_turn_keep_their_order(database: Database, ada: int) -> None:
    say(database, Puppet([Say(NotSure("a")), NotifyCoach(NotSure("b")), Say(NotSure("c"))]))
    assert queued(database) == [NotSure("a"), NotSure("b"), NotSure("c")]


def test_answers_go_before_reminders(database: Database, ada: int) -> None:
    arrive(database, Due(NOW, MONDAY))
    work(database, Puppet([HELLO]).steps())
    arrive(database, Text(NOW, "hello"))
    work(database, Puppet([HELLO]).steps())
    assert [row.priority for row in rows(database, outbox_table)] == [outbox.BULK, outbox.ANSWER]


@pytest.mark.parametrize("made", [Due(NOW, MONDAY, SECOND), TimerFired(NOW, "snooze", "", SECOND)])
def test_an_event_that_waited_in_the_inbox_is_as_late_as_it_is(database: Database, ada: int, made) -> None:
    puppet = Puppet()
    arrive(database, made)
    work(database, puppet.steps(), NOW + 3 * HOUR)
    assert puppet.seen[0][1] == replace(made, late_by=3 * HOUR)


def test_each_chat_is_worked_off_in_the_order_things_were_typed(database: Database, ada: int) -> None:
    database.write_now(lambda conn: add_client(conn, None, BEN, "Ben"))
    puppet = Puppet(lambda state, event, facts: [Say(NotSure(event.text))])
    for number in range(3):
        arrive(database, Text(NOW, f"ada {number}"))
        arrive(database, Text(NOW, f"ben {number}"), chat_id=BEN)
    assert work(database, puppet.steps()) == 6
    assert queued(database, ADA) == [NotSure(f"ada {n}") for n in range(3)]
    assert queued(database, BEN) == [NotSure(f"ben {n}") for n in range(3)]


def test_a_machine_whose_clock_is_behind_does_not_turn_a_chat_s_answers_round(database: Database, ada: int) -> None:
    puppet = Puppet(lambda state, event, facts: [Say(NotSure(event.text))])
    say(database, puppet, "first", NOW)
    say(database, puppet, "second", NOW - 3 * SECOND)
    lease = timedelta(seconds=60)
    sent = []
    for _ in range(2):
        (row,) = database.write_now(outbox.claim, "w", NOW, lease, 10)
        sent.append(codec.loads(row.message))
        database.write_now(outbox.mark_sent, [(row.id, None)], NOW)
    assert sent == [NotSure("first"), NotSure("second")]


def test_the_answer_of_a_machine_whose_clock_is_behind_can_go_at_once(database: Database, ada: int) -> None:
    say(database, Puppet([HELLO]), now=NOW)
    say(database, Puppet([HELLO]), now=NOW - 3 * SECOND)
    assert [row.ready_at for row in rows(database, outbox_table)] == [NOW, NOW - 3 * SECOND]


# --- how much it asks of the database ----------------------------------------------------------------------


@contextmanager
def counted(database: Database) -> Iterator[Counter[str]]:
    """Count the statements sent to the database, by their first word."""
    found: Counter[str] = Counter()

    def note(conn, cursor, statement, *rest):
        found[statement.split()[0]] += 1

    listening.listen(database.engine, "before_cursor_execute", note)
    try:
        yield found
    finally:
        listening.remove(database.engine, "before_cursor_execute", note)


def queries(database: Database, chats: int) -> Counter[str]:
    """Statements of one batch in which `chats` clients send a reading."""
    puppet = Puppet(
        lambda state, event, facts: [
            Record(weight("82.4", NOW), event.text),
            Answered("2026-03-30"),
            Say(NotSure(), said="praise"),
        ]
    )
    for chat in range(chats):
        arrive(database, Text(NOW, f"k{chat}"), chat_id=5000 + chat)
    with counted(database) as found:
        assert database.write_now(turn.work_batch, puppet.steps(), NOW, 100) == chats
    return found


def test_a_batch_asks_the_database_no_more_for_forty_chats_than_for_one(database: Database) -> None:
    def many(conn):
        for chat in range(40):
            add_client(conn, None, 5000 + chat, f"Client {chat}")

    database.write_now(many)
    one, forty = queries(database, 1), queries(database, 40)
    assert one == forty
    assert one["SELECT"] <= 9
    assert one["INSERT"] + one["UPDATE"] + one["DELETE"] <= 8


def test_a_stranger_and_an_invitation_cost_one_query_more_each(database: Database, ada: int) -> None:
    from core.dialogue.kit.events import Command

    arrive(database, Text(NOW, "hello"))
    arrive(database, Text(NOW, "who are you"), chat_id=31)
    arrive(database, Command(NOW, "start", "no-such-token"), chat_id=32)
    with counted(database) as found:
        assert database.write_now(turn.work_batch, Puppet([HELLO]).steps(), NOW, 100) == 3
    assert found["SELECT"] <= 9


# --- when a turn fails -------------------------------------------------------------------------------------


def failing_on(word: str) -> Puppet:
    def effects(state, event, facts):
        if event.text == word:
            raise ValueError(f"cannot stand {word}")
        return [Say(NotSure(event.text))]

    return Puppet(effects)


def test_a_failing_turn_does_not_spoil_the_others_of_its_batch(database: Database, ada: int) -> None:
    database.write_now(lambda conn: add_client(conn, None, BEN, "Ben"))
    arrive(database, Text(NOW, "bad"))
    arrive(database, Text(NOW, "good"), chat_id=BEN)
    work(database, failing_on("bad").steps())
    assert queued(database) == [NotSure("good")]


def test_a_failing_turn_is_tried_three_times_then_set_aside_and_its_sender_told(database: Database, ada: int) -> None:
    puppet = failing_on("bad")
    arrive(database, Text(NOW, "bad"), Text(NOW, "good"))
    work(database, puppet.steps(), NOW)
    assert queued(database) == []  # the next message of the chat waits for its turn
    work(database, puppet.steps(), NOW + 2 * SECOND)
    work(database, puppet.steps(), NOW + 10 * SECOND)
    assert queued(database) == []
    work(database, puppet.steps(), NOW + 17 * SECOND)
    assert queued(database) == [OurFault(), NotSure("good")]
    assert database.read_now(inbox.set_aside_count) == 1
    assert len(puppet.seen) == 4


def test_what_was_set_aside_keeps_the_message_and_says_what_failed_without_repeating_it(
    database: Database, ada: int
) -> None:
    arrive(database, Text(NOW, "bad"))
    for later in (0, 2, 17):
        work(database, failing_on("bad").steps(), NOW + later * SECOND)
    (row,) = rows(database, inbox_table)
    assert row.status == "set_aside"
    assert row.error.startswith("ValueError < test_turn:")
    assert "bad" not in row.error
    assert codec.loads(row.event) == Text(NOW, "bad")
    assert database.write_now(inbox.put_back) == 1
    work(database, Puppet([HELLO]).steps(), NOW + HOUR)
    assert queued(database)[-1] == NotSure("weight")


def test_nobody_is_told_of_a_reminder_that_failed(database: Database, ada: int) -> None:
    def effects(state, event, facts):
        raise ValueError

    arrive(database, Due(NOW, MONDAY))
    for later in (0, 2, 17):
        work(database, Puppet(effects).steps(), NOW + later * SECOND)
    assert database.read_now(inbox.set_aside_count) == 1
    assert queued(database) == []


def test_what_the_database_refuses_spoils_only_the_turn_that_asked_for_it(database: Database, ada: int) -> None:
    database.write_now(lambda conn: add_client(conn, None, BEN, "Ben"))

    def effects(state, event, facts):
        reading = weight("82.4", NOW)
        return [
            Record(replace(reading, measure=None) if event.text == "bad" else reading, "k"),
            Say(NotSure(event.text)),
        ]

    arrive(database, Text(NOW, "bad"))
    arrive(database, Text(NOW, "good"), chat_id=BEN)
    work(database, Puppet(effects).steps())
    assert queued(database) == [NotSure("good")]
    assert len(rows(database, readings_table)) == 1
    waiting = [row for row in rows(database, inbox_table) if row.status == "pending"]
    assert [(row.chat_id, row.attempts) for row in waiting] == [(ADA, 1)]
    assert "82.4" not in waiting[0].error


def test_a_row_that_is_no_event_is_set_aside_and_the_chat_goes_on(database: Database, ada: int) -> None:
    arrive(database, Text(NOW, "lost"), Text(NOW, "good"))
    (lost, _) = rows(database, inbox_table)
    broken = update(inbox_table).where(inbox_table.c.id == lost.id).values(event=in_clear('{"$": "events.Text"}'))
    database.write_now(lambda conn: conn.execute(broken))
    puppet = Puppet([HELLO])
    for later in (0, 2, 17):
        work(database, puppet.steps(), NOW + later * SECOND)
    assert queued(database) == [OurFault(), NotSure("weight")]


def test_an_effect_that_is_none_is_a_fault_and_nothing_of_that_turn_is_written(database: Database, ada: int) -> None:
    say(database, Puppet([Say(NotSure()), Record(weight("82.4", NOW), "k"), object()]))
    assert queued(database) == []
    assert rows(database, readings_table) == []


def test_a_broken_plan_is_never_replaced_by_the_usual_one(database: Database, ada: int) -> None:
    broken = secret(database.read_now(row_of, ada).key_id, '{"$": "facts.Plan", "x": 1}')
    database.write_now(lambda conn: conn.execute(update(clients_table).values(plan=broken)))
    database.write_now(lambda conn: add_client(conn, None, BEN, "Ben"))
    arrive(database, Text(NOW, "82.4"))
    arrive(database, Text(NOW, "good"), chat_id=BEN)
    puppet = Puppet([HELLO])
    for later in (0, 2, 17):
        work(database, puppet.steps(), NOW + later * SECOND)
    assert [facts.name for _, _, facts in puppet.seen] == ["Ben"]
    assert queued(database, ADA) == [OurFault()]


def test_a_crash_before_the_commit_leaves_no_trace_and_the_turn_is_done_again(
    open_database: Callable[[], Database],
) -> None:
    database = open_database()
    database.write_now(rowan_and_ada)
    puppet = Puppet([Record(weight("82.4", NOW), "k"), HELLO])
    arrive(database, Text(NOW, "82.4 kg"))
    with database.engine.connect() as conn:
        conn.begin()
        assert turn.work_batch(conn, puppet.steps(), NOW) == 1
        conn.invalidate()  # as after kill -9
    assert (queued(database), rows(database, readings_table)) == ([], [])
    assert work(open_database(), puppet.steps()) == 1
    assert (len(queued(database)), len(rows(database, readings_table))) == (1, 1)
    assert work(database, puppet.steps()) == 0


# --- strangers ---------------------------------------------------------------------------------------------


def test_a_stranger_hears_one_answer_an_hour_and_leaves_no_row(database: Database) -> None:
    puppet = Puppet()
    for minute in (0, 1, 59, 61):
        arrive(database, Text(NOW, "hello"), chat_id=31, language="de-AT", name="Zoe")
        work(database, puppet.steps(), NOW + timedelta(minutes=minute))
    assert queued(database) == [Stranger(), Stranger()]
    assert [row.language for row in rows(database, outbox_table)] == ["de", "de"]
    assert rows(database, inbox_table) == []
    assert rows(database, conversations_table) == []


def test_a_stranger_in_need_is_told_to_call_however_lately_they_got_an_answer(database: Database) -> None:
    for minute, text in enumerate(("hello", "I have chest pain and cannot breathe", "hello?")):
        arrive(database, Text(NOW, text), chat_id=31, name="Zoe")
        work(database, turn.Steps(step, step_stranger), NOW + timedelta(minutes=minute))
    told = [part for message in queued(database) for part in getattr(message, "parts", (message,))]
    assert [type(part) for part in told] == [Stranger, Emergency, Stranger]  # not the last hello


def test_a_stranger_s_language_is_english_when_we_do_not_write_theirs(database: Database) -> None:
    arrive(database, Text(NOW, "hei"), chat_id=31, language="nb")
    work(database, Puppet().steps())
    assert [row.language for row in rows(database, outbox_table)] == ["en"]


def test_a_group_nobody_speaks_for_gets_no_answer(database: Database) -> None:
    from core.dialogue.kit.events import GroupEvent

    arrive(database, GroupEvent(NOW, "text", ADA, "82.4 kg"), chat_id=-5, is_group=True)
    assert work(database, Puppet([HELLO]).steps()) == 1
    assert queued(database) == []
    assert [row.event for row in rows(database, inbox_table)] == [None]


# --- facts -------------------------------------------------------------------------------------------------


def test_a_step_is_told_what_the_store_knows(database: Database) -> None:
    from decimal import Decimal

    from core.care import Plan, Status
    from core.client import Caution, Sex
    from tests.bot.practice import SLOT, add_coach

    def join(conn):
        return add_client(
            conn,
            add_coach(conn),
            plan=Plan(("weight",), directed_weighing=True),
            sex="female",
            birth_year=1968,
            stature=Decimal("165.5"),
            cautions="heart_condition,pregnancy",
            mass_unit="st",
            length_unit="in",
            missed=1,
            answered=date(2026, 3, 23),
        )

    client = database.write_now(join)
    puppet = Puppet()
    arrive(database, Text(NOW, "hello"))
    work(
        database,
        puppet.steps(
            find_zones=lambda text, language: (f"{text}/{language}",),
            country_of=lambda zone: {"Europe/London": "GB"}[zone],
            label=lambda language, key, argument: f"{language}:{key}:{argument}",
        ),
    )
    facts = puppet.seen[0][2]
    assert (facts.client_id, facts.name, facts.coach_name, facts.language) == (client, "Ada", "Rowan", "de")
    assert (facts.country, facts.status, facts.consented, facts.slot) == ("GB", Status.ACTIVE, True, SLOT)
    assert str(facts.zone) == "Europe/London"
    assert (facts.profile.sex, facts.profile.birth_year, facts.profile.stature) == (Sex.FEMALE, 1968, Decimal("165.5"))
    assert facts.profile.cautions == {Caution.HEART_CONDITION, Caution.PREGNANCY}
    assert (facts.units.mass.value, facts.units.length.value) == ("st", "in")
    assert facts.plan == Plan(("weight",), directed_weighing=True)
    assert (facts.missed, facts.answered) == (1, date(2026, 3, 23))
    assert facts.find_zones("Lisbon") == ("Lisbon/de",)
    assert facts.label("yes", "x") == "de:yes:x"
    assert str(facts.zone_of("Asia/Tokyo")) == "Asia/Tokyo"


def test_a_client_whose_zone_left_the_tz_database_is_still_answered(database: Database) -> None:
    database.write_now(lambda conn: add_client(conn, None, zone_name="Mars/Olympus"))
    say(database, Puppet([HELLO]))
    assert queued(database) == [NotSure("weight")]


# --- reaching people ---------------------------------------------------------------------------------------


def test_a_coach_learns_at_once_and_once_a_day_that_a_client_blocked_us(database: Database, ada: int) -> None:
    from bot.store.schema import people
    from core.dialogue.client.messages_to_coach import ClientUnreachable
    from core.watching.flags import Code

    noon = NOW + 5 * HOUR
    for _ in range(2):
        arrive(database, Reachability(noon, False), now=noon)
        work(database, Puppet().steps(), noon)
    assert queued(database, ROWAN) == [ClientUnreachable(ada, "Ada")]
    assert [row.reachable for row in rows(database, people) if row.chat_id == ADA] == [False]
    puppet = Puppet()
    say(database, puppet, "hello", noon + HOUR)
    assert [flag.code for flag in puppet.seen[0][2].flags] == [Code.UNREACHABLE]
    assert [row.reachable for row in rows(database, people) if row.chat_id == ADA] == [True]
    say(database, puppet, "hello", noon + 2 * HOUR)
    assert puppet.seen[1][2].flags == ()


def test_a_client_s_words_wait_for_a_coach_who_is_away_and_arrive_when_they_are_back(
    database: Database, ada: int
) -> None:
    database.write_now(set_reachable, ROWAN, False)
    say(database, Puppet([PassOn("I have a question")]))
    database.write_now(outbox.hold_chat, ROWAN, NOW, "unreachable")
    assert [r.status for r in rows(database, outbox_table) if r.chat_id == ROWAN] == ["held"]
    say(database, Puppet(), "hello", NOW + HOUR, chat_id=ROWAN)
    (row,) = [r for r in rows(database, outbox_table) if r.chat_id == ROWAN and r.message]
    assert row.status == "pending" and codec.loads(row.message).text == "I have a question"


def test_a_press_of_a_client_reaches_the_step_as_it_was(database: Database, ada: int) -> None:
    puppet = Puppet()
    arrive(database, Press(NOW, "n:7", "55"))
    work(database, puppet.steps())
    assert puppet.seen[0][1] == Press(NOW, "n:7", "55")
