"""Every effect of a step is applied to the database."""

import dataclasses
import typing
from datetime import UTC, date, datetime, time, timedelta
from decimal import Decimal

import pytest
from sqlalchemy import Connection, update

from bot.store import codec, cohorts, outbox, people
from bot.store import schema as tables
from bot.store.database import Database
from bot.store.people import Role
from bot.turns.apply_effects import TurnEffects
from core.care import Plan, Slot, Status, Units
from core.client import Background, Caution, Sex
from core.dialogue.client import effects
from core.dialogue.client.effects import (
    Amend,
    Answered,
    CancelTimer,
    ChangeClient,
    DropButtons,
    DropDelayed,
    DropGoal,
    Effect,
    EnterCohort,
    LeaveCohort,
    Lower,
    NotAsked,
    NotifyCoach,
    PassOn,
    Raise,
    Record,
    Retract,
    SetGoal,
    SetTimer,
    Unsay,
)
from core.dialogue.client.facts import GoalFact
from core.dialogue.client.messages import CoachWrites, NotSure
from core.dialogue.client.messages_to_coach import ClientInCohort, ClientWord, UrgentFlag
from core.dialogue.kit.effects import Say, SendData
from core.dialogue.organiser.messages import SomebodyJoined
from core.dialogue.staff.step import stamp
from core.dialogue.staff.talk_messages import TakingBack, WordsTakenBack
from core.quantity import Unit
from core.reading import Conditions, How
from core.watching.cohort import Counted, Terms
from core.watching.flags import Code, flag, worded
from tests.bot.practice import ADA, MONDAY, NOW, ROWAN, SLOT, Practice, client_of, row_of, rowan_and_ada, weight
from tests.bot.steps import Puppet, queued, rows, say

HOUR, DAY, WEEK = timedelta(hours=1), timedelta(days=1), timedelta(weeks=1)
NIGHT = datetime(2026, 3, 30, 1, 0, tzinfo=UTC)  # two in the morning in London
MORNING = datetime(2026, 3, 30, 7, 0, tzinfo=UTC)


@pytest.fixture
def practice(database: Database) -> Practice:
    return database.write_now(rowan_and_ada)


def apply(database: Database, *asked: Effect, now: datetime = NOW) -> Puppet:
    """Let one turn of Ada's return effects."""
    puppet = Puppet(asked)
    say(database, puppet, "x", now)
    assert database.read_now(lambda conn: [r.error for r in conn.execute(tables.inbox.select()) if r.error]) == []
    return puppet


def facts(database: Database, now: datetime = NOW):
    """The facts of Ada's next turn."""
    return apply(database, now=now).seen[0][2]


def test_every_effect_has_a_test_here() -> None:
    import pathlib

    source = pathlib.Path(__file__).read_text("utf-8") + (
        pathlib.Path(__file__).with_name("test_joining.py").read_text("utf-8")
    )
    for kind in typing.get_args(effects.Effect):
        assert f"{kind.__name__}(" in source, f"{kind.__name__} is carried out untried"


# --- readings ----------------------------------------------------------------------------------------------


def test_a_reading_is_kept_exactly_as_it_was_given(database: Database, practice: Practice) -> None:
    given = dataclasses.replace(
        weight("82.40", NOW),
        second=Decimal("60"),
        conditions=Conditions(frozenset({"scales"}), (("site", "navel"),), frozenset({"arms_used"})),
        how=How.UNASKED,
        attempts=2,
        window=30,
    )
    apply(database, Record(given, "k"))
    (kept,) = facts(database).history
    assert dataclasses.replace(kept, id=None) == dataclasses.replace(given, key="k", as_typed="")
    assert rows(database, tables.readings)[0].as_typed == given.as_typed
    assert str(kept.value) == "82.40"
    assert kept.id is not None


def test_a_reading_under_a_key_that_exists_is_replaced_and_marked_as_corrected(
    database: Database, practice: Practice
) -> None:
    apply(database, Record(weight("28.4", NOW), "k"))
    assert [r.corrected_at for r in rows(database, tables.readings)] == [None]
    apply(database, Record(weight("82.4", NOW), "k"), now=NOW + HOUR)
    (row,) = rows(database, tables.readings)
    assert (row.value, row.corrected_at, row.created_at) == (Decimal("82.4"), NOW + HOUR, NOW)


def test_a_reading_taken_back_stays_withdrawn_and_never_counts(database: Database, practice: Practice) -> None:
    apply(database, Record(weight("82.4", NOW), "k"))
    apply(database, Retract("k"), now=NOW + HOUR)
    assert facts(database).history == ()
    assert [r.withdrawn_at for r in rows(database, tables.readings)] == [NOW + HOUR]
    apply(database, Record(weight("82.6", NOW), "k"))
    assert [r.value for r in facts(database).history] == [Decimal("82.6")]


def test_conditions_are_amended_and_the_value_is_not(database: Database, practice: Practice) -> None:
    apply(database, Record(weight("82.4", NOW), "k"))
    other = dataclasses.replace(weight("99.9", NOW), conditions=Conditions(frozenset({"scales"})))
    apply(database, Amend("k", other))
    (kept,) = facts(database).history
    assert (kept.value, kept.conditions.differs) == (Decimal("82.4"), {"scales"})


def test_what_one_turn_keeps_and_takes_back_again_does_not_count(database: Database, practice: Practice) -> None:
    other = dataclasses.replace(weight("82.4", NOW), conditions=Conditions(frozenset({"scales"})))
    apply(
        database,
        Record(weight("82.4", NOW), "gone"),
        Retract("gone"),
        Record(weight("70", NOW), "kept"),
        Amend("kept", other),
        Retract("back"),
        Record(weight("71", NOW), "back"),
    )
    kept = {str(r.value): r.conditions.differs for r in facts(database).history}
    assert kept == {"70": {"scales"}, "71": frozenset()}


def test_the_history_is_the_last_twelve_weeks_the_baselines_and_the_newest_before(
    database: Database, practice: Practice
) -> None:
    def at(weeks: int) -> datetime:
        return NOW - weeks * WEEK

    apply(
        database,
        Record(weight("90", at(60)), "before-baseline"),
        Record(weight("88", at(40)), "baseline"),
        Record(weight("87", at(30)), "forgotten"),
        Record(weight("86", at(20)), "newest-before"),
        Record(dataclasses.replace(weight("85", at(13)), how=How.EARLY), "old-side-note"),
        Record(weight("84", at(12)), "twelve-weeks"),
        Record(dataclasses.replace(weight("83", at(1)), how=How.EARLY), "side-note"),
    )
    assert [str(r.value) for r in facts(database).history] == ["90", "86", "84", "83"]
    apply(database, ChangeClient("plan", Plan(baseline_since=at(50))))
    assert [str(r.value) for r in facts(database).history] == ["88", "86", "84", "83"]


def test_somebody_else_s_readings_are_not_in_the_history(database: Database, practice: Practice) -> None:
    from tests.bot.practice import BEN, add_client

    database.write_now(lambda conn: add_client(conn, None, BEN, "Ben"))
    puppet = Puppet([Record(weight("70", NOW), "k")])
    say(database, puppet, "x", chat_id=BEN)
    assert facts(database).history == ()


# --- what is learned ---------------------------------------------------------------------------------------

ELSEWHERE = Slot(2, time(18, 0), "America/New_York")


@pytest.mark.parametrize(
    ("name", "value", "read"),
    [
        pytest.param("language", "fr", lambda f: f.language, id="language"),
        pytest.param("name", "Ada L", lambda f: f.name, id="name"),
        pytest.param("slot", ELSEWHERE, lambda f: f.slot, id="slot"),
        pytest.param("units", Units(Unit.STONE, Unit.INCH), lambda f: f.units, id="units"),
        pytest.param("birth_year", 1968, lambda f: f.profile.birth_year, id="birth-year"),
        pytest.param("birth_year", None, lambda f: f.profile.birth_year, id="no-birth-year"),
        pytest.param("birth_date", date(1968, 2, 29), lambda f: f.profile.birth_date, id="birth-date"),
        pytest.param("sex", Sex.FEMALE, lambda f: f.profile.sex, id="sex"),
        pytest.param("sex", None, lambda f: f.profile.sex, id="sex-not-said"),
        pytest.param("stature", Decimal("165.10"), lambda f: f.profile.stature, id="stature"),
        pytest.param("background", Background.CHINESE, lambda f: f.profile.background, id="background"),
        pytest.param(
            "cautions", frozenset({Caution.FALLS, Caution.ATHLETE}), lambda f: f.profile.cautions, id="cautions"
        ),
        pytest.param("cautions", frozenset(), lambda f: f.profile.cautions, id="no-cautions"),
        pytest.param("status", Status.LEFT, lambda f: f.status, id="status"),
        pytest.param("consented", False, lambda f: f.consented, id="no-consent"),
        pytest.param("consented", True, lambda f: f.consented, id="consent"),
        pytest.param("paused_until", MONDAY, lambda f: f.paused_until, id="pause"),
        pytest.param("plan", Plan(("waist",), 35, directed_weighing=True), lambda f: f.plan, id="plan"),
    ],
)
def test_what_is_learned_is_known_at_the_next_turn(database: Database, practice: Practice, name, value, read) -> None:
    apply(database, ChangeClient(name, value))
    found = facts(database)
    assert read(found) == value
    apply(database, ChangeClient(name, value))
    assert read(facts(database)) == value


def test_a_zone_is_learned_by_its_name_and_the_slot_stays(database: Database, practice: Practice) -> None:
    apply(database, ChangeClient("zone", "Europe/Lisbon"))
    assert facts(database).slot == dataclasses.replace(SLOT, zone_name="Europe/Lisbon")


@pytest.mark.parametrize(("name", "value"), [("shoe_size", 42), ("sex", "female"), ("status", "left"), ("name", 5)])
def test_what_no_client_has_is_a_fault(database: Database, practice: Practice, name, value) -> None:
    puppet = Puppet([ChangeClient(name, value), Say(NotSure())])
    say(database, puppet)
    assert queued(database) == []


def test_a_new_slot_comes_due_by_itself(database: Database, practice: Practice) -> None:
    apply(database, ChangeClient("slot", ELSEWHERE))
    row = database.read_now(row_of, practice.ada)
    assert (row.next_due_at, row.next_due_day) == (datetime(2026, 4, 1, 22, 0, tzinfo=UTC), date(2026, 4, 1))


def test_an_enrolled_client_comes_due_and_one_who_leaves_does_not(database: Database, practice: Practice) -> None:
    apply(database, ChangeClient("status", Status.LEFT), now=NOW + HOUR)
    row = database.read_now(row_of, practice.ada)
    assert (row.next_due_at, row.left_at) == (None, NOW + HOUR)
    apply(database, ChangeClient("slot", SLOT), ChangeClient("status", Status.ACTIVE), now=NOW + DAY)
    row = database.read_now(row_of, practice.ada)
    assert (row.next_due_at, row.left_at) == (NOW + WEEK, None)


def test_a_client_who_pauses_comes_due_on_the_day_the_pause_ends(database: Database, practice: Practice) -> None:
    apply(database, ChangeClient("status", Status.PAUSED), ChangeClient("paused_until", date(2026, 4, 20)))
    row = database.read_now(row_of, practice.ada)
    assert row.next_due_at == datetime(2026, 4, 19, 23, 0, tzinfo=UTC)  # midnight in London
    apply(database, ChangeClient("status", Status.ACTIVE), ChangeClient("paused_until", None))
    assert database.read_now(row_of, practice.ada).next_due_at == NOW + WEEK


def test_a_plan_changed_by_somebody_else_meanwhile_is_not_overwritten(database: Database, practice: Practice) -> None:
    from bot.store import clients
    from bot.store.clients import StalePlan

    def both(conn):
        read = client_of(conn, ADA)
        clients.set_plan(conn, read, Plan(("waist",), directed_weighing=True))
        with pytest.raises(StalePlan):
            clients.set_plan(conn, read, Plan(("hip",)))

    database.write_now(both)
    assert facts(database).plan.directed_weighing


# --- check-ins ---------------------------------------------------------------------------------------------


def test_an_answer_keeps_the_slot_and_ends_the_row_of_missed_ones(database: Database, practice: Practice) -> None:
    missing = flag(Code.MISSED_CHECK_INS, NOW, missed=Decimal(2))
    database.write_now(lambda conn: conn.execute(update(tables.clients).values(missed=2)))
    apply(database, Raise(missing))
    apply(database, Answered("2026-03-30"), now=NOW + HOUR)
    (slot,) = rows(database, tables.slots)
    assert (slot.day, slot.outcome, slot.answered_at) == (MONDAY, "answered", NOW + HOUR)
    found = facts(database)
    assert (found.missed, found.answered, found.flags) == (0, MONDAY, ())


def test_a_late_answer_to_an_older_slot_does_not_undo_a_newer_one(database: Database, practice: Practice) -> None:
    apply(database, Answered("2026-03-30"))
    apply(database, Answered("2026-03-23"))
    assert facts(database).answered == MONDAY


def test_a_slot_that_was_not_asked_after_all_counts_for_nobody(database: Database, practice: Practice) -> None:
    from bot.process import reminders

    database.write_now(reminders.sweep, NOW)
    apply(database, NotAsked("2026-03-30"))
    assert [row.outcome for row in rows(database, tables.slots)] == ["not_asked"]
    database.write_now(reminders.sweep, NOW + WEEK)
    assert database.read_now(row_of, practice.ada).missed == 0


# --- flags -------------------------------------------------------------------------------------------------


def test_a_flag_is_opened_once_refreshed_cleared_and_comes_back_as_a_new_one(
    database: Database, practice: Practice
) -> None:
    for count, at in ((3, NOW), (4, NOW + HOUR)):
        apply(database, Raise(flag(Code.WEIGHING_OFTEN, at, "weight", count=Decimal(count))), now=at)
    (row,) = rows(database, tables.flags)
    assert (row.since, row.refreshed_at) == (NOW, NOW + HOUR)
    assert codec.loads(row.evidence) == (("count", Decimal(4)),)
    assert [(f.code, f.measure) for f in facts(database).flags] == [("weighing_often", "weight")]
    apply(database, Lower("weighing_often", "weight"))
    assert facts(database).flags == ()
    apply(database, Raise(flag(Code.WEIGHING_OFTEN, NOW + DAY, "weight", count=Decimal(3))))
    assert [f.since for f in facts(database).flags] == [NOW + DAY]
    assert len(rows(database, tables.flags)) == 2


def test_a_flag_raised_and_lowered_in_one_turn_is_not_open(database: Database, practice: Practice) -> None:
    apply(database, Raise(flag(Code.WANTS_COACH, NOW)), Lower("wants_coach"))
    assert facts(database).flags == ()
    apply(database, Lower("wants_coach"), Raise(flag(Code.WANTS_COACH, NOW)))
    assert len(facts(database).flags) == 1


def urgent(at: datetime) -> Raise:
    return Raise(flag(Code.BP_SEVERE, at, "blood_pressure", systolic=Decimal(190), diastolic=Decimal(110)))


def test_nobodys_own_words_are_stored_in_clear_with_the_occasion(database: Database, practice: Practice) -> None:
    dizzy = flag(Code.RED_FLAG_WORDS, NOW, level="same_day", sign="dizzy")
    apply(database, Raise(worded(dizzy, "my head is swimming")))
    apply(database, Raise(worded(dizzy, "it is swimming again")))
    (row,) = rows(database, tables.outbox)
    assert row.occasion == f"flag/{practice.ada}/red_flag_words/same_day/dizzy/{NOW.date().isoformat()}"


def test_an_urgent_flag_is_told_to_the_coach_at_once_and_once_a_day(database: Database, practice: Practice) -> None:
    apply(database, urgent(NIGHT), now=NIGHT)
    apply(database, urgent(NIGHT + HOUR), now=NIGHT + HOUR)
    (told,) = queued(database, ROWAN)
    evidence = (("systolic", Decimal(190)), ("diastolic", Decimal(110)))
    assert told == UrgentFlag(practice.ada, "Ada", "bp_severe", "blood_pressure", evidence, NIGHT)
    (row,) = rows(database, tables.outbox)
    assert row.occasion.startswith(f"flag/{practice.ada}/bp_severe/")
    assert row.due_at == NIGHT
    apply(database, urgent(NOW + DAY), now=NOW + DAY)
    assert len(queued(database, ROWAN)) == 2


def test_a_flag_that_can_wait_for_the_digest_is_not_told(database: Database, practice: Practice) -> None:
    apply(database, Raise(flag(Code.WANTS_COACH, NOW)))
    assert queued(database, ROWAN) == []


@pytest.mark.parametrize(
    ("level", "quiet", "due"),
    [
        pytest.param("emergency", True, NIGHT, id="an-emergency-never-waits"),
        pytest.param("same_day", True, MORNING - HOUR, id="same-day-waits-for-a-coach-who-sleeps"),
        pytest.param("same_day", False, NIGHT, id="same-day-goes-at-night-where-wanted"),
    ],
)
def test_red_flag_words_respect_a_coach_s_nights_as_far_as_they_may(
    database: Database, level: str, quiet: bool, due: datetime
) -> None:
    from tests.bot.practice import add_client, add_coach

    database.write_now(lambda conn: add_client(conn, add_coach(conn, zone_name="Europe/London", quiet_nights=quiet)))
    apply(database, Raise(flag(Code.RED_FLAG_WORDS, NIGHT, level=level, sign="chest_pain")), now=NIGHT)
    assert [row.due_at for row in rows(database, tables.outbox)] == [due]


# --- telling, timers, goals, the rest ----------------------------------------------------------------------


def test_a_coach_is_told_in_the_morning_what_can_wait(database: Database) -> None:
    from tests.bot.practice import add_client, add_coach

    database.write_now(lambda conn: add_client(conn, add_coach(conn, zone_name="Europe/London")))
    apply(
        database,
        NotifyCoach(NotSure()),
        NotifyCoach(NotSure("now"), urgent=True),
        NotifyCoach(NotSure(), occasion="o"),
        now=NIGHT,
    )
    apply(database, NotifyCoach(NotSure(), occasion="o"), now=NIGHT)
    assert [row.due_at for row in rows(database, tables.outbox)] == [MORNING, NIGHT, MORNING]
    assert {row.chat_id for row in rows(database, tables.outbox)} == {ROWAN}


def test_a_client_without_a_coach_has_nobody_to_tell(database: Database) -> None:
    from tests.bot.practice import add_client

    database.write_now(lambda conn: add_client(conn, None))
    apply(database, NotifyCoach(NotSure()), urgent(NOW), PassOn("hello"), Say(NotSure()))
    assert queued(database) == [NotSure()]


def test_timers_are_set_moved_and_dropped(database: Database, practice: Practice) -> None:
    apply(
        database,
        SetTimer("snooze", NOW + HOUR),
        SetTimer("pressure", NOW + DAY, "1m"),
        SetTimer("pressure", NOW + DAY, "1e"),
    )
    apply(database, SetTimer("snooze", NOW + 2 * HOUR))
    assert {(t.purpose, t.mark, t.at) for t in rows(database, tables.wakes)} == {
        ("snooze", "", NOW + 2 * HOUR),
        ("pressure", "1m", NOW + DAY),
        ("pressure", "1e", NOW + DAY),
    }
    apply(database, CancelTimer("pressure"))
    assert {t.purpose for t in rows(database, tables.wakes)} == {"snooze"}


def test_what_was_to_be_said_later_is_dropped_and_what_is_due_is_not(database: Database, practice: Practice) -> None:
    apply(database, Say(NotSure("now")), Say(NotSure("later"), after=timedelta(seconds=30)))
    apply(database, DropDelayed(), Say(NotSure("again"), after=timedelta(seconds=60)), now=NOW + timedelta(seconds=5))
    assert queued(database) == [NotSure("now"), NotSure("again")]


def test_in_one_turn_the_last_word_on_a_timer_counts(database: Database, practice: Practice) -> None:
    apply(database, SetTimer("a", NOW), CancelTimer("a"), CancelTimer("b"), SetTimer("b", NOW + HOUR))
    assert [(t.purpose, t.at) for t in rows(database, tables.wakes)] == [("b", NOW + HOUR)]


def test_goals_are_set_exchanged_and_dropped(database: Database, practice: Practice) -> None:
    first = GoalFact("waist", "90", date(2026, 6, 1), NOW)
    second = dataclasses.replace(first, target="88.5")
    apply(database, SetGoal(first))
    apply(database, SetGoal(second), SetGoal(dataclasses.replace(first, measure="hip")), DropGoal("hip"))
    assert facts(database).goals == (second,)
    apply(database, DropGoal("waist"))
    assert facts(database).goals == ()


def test_a_client_leaves_one_cohort_and_stays_in_the_other(database: Database, practice: Practice) -> None:
    def two(conn: Connection) -> list[int]:
        organiser = people.add_organiser(conn, people.add(conn, 700, Role.ORGANISER, "Olga", "en", NOW), "Olga", NOW)
        terms = Terms(NOW.date(), 6, Slot(0, time(18), "Europe/London"), Counted.CHECK_INS)
        made = [
            cohorts.add(
                conn, NOW, organiser_id=organiser, coach_id=None, name=name, terms=terms, language="en", next_at=None
            )
            for name in ("Spring", "Autumn")
        ]
        for cohort in made:
            cohorts.join(conn, cohort, practice.ada, NOW, agreed=True)
        return made

    spring, autumn = database.write_now(two)
    apply(database, LeaveCohort(spring))
    assert [c.cohort_id for c in facts(database).cohorts] == [autumn]
    assert {r.cohort_id: r.left_at for r in rows(database, tables.cohort_members)} == {spring: NOW, autumn: None}


def test_who_enters_a_cohort_counts_once_their_coach_said_yes_and_its_organiser_hears_of_them(
    database: Database, practice: Practice
) -> None:
    def spring(conn: Connection) -> int:
        organiser = people.add_organiser(conn, people.add(conn, 700, Role.ORGANISER, "Olga", "en", NOW), "Olga", NOW)
        terms = Terms(NOW.date(), 6, Slot(0, time(18), "Europe/London"), Counted.CHECK_INS)
        made = cohorts.add(
            conn, NOW, organiser_id=organiser, coach_id=None, name="Spring", terms=terms, language="en", next_at=None
        )
        cohorts.join(conn, made, practice.ada, NOW, agreed=False)
        return made

    cohort = database.write_now(spring)
    apply(database, EnterCohort(cohort))
    assert queued(database, ROWAN) == [ClientInCohort("Ada", "Spring", "Olga")]
    assert queued(database, 700) == [SomebodyJoined("Spring", "Ada", 1, "Rowan")]
    assert [row.agreed_at for row in rows(database, tables.cohort_members)] == [None]


def test_what_was_said_is_remembered_for_eight_weeks(database: Database, practice: Practice) -> None:
    apply(database, Say(NotSure(), said="praise-1"))
    apply(database, Say(NotSure(), said="praise-2"), now=NOW + WEEK)
    assert facts(database, NOW + 8 * WEEK - HOUR).said == {"praise-1", "praise-2"}
    assert facts(database, NOW + 8 * WEEK).said == {"praise-2"}


def test_a_client_s_words_go_to_the_coach_and_into_the_thread(database: Database, practice: Practice) -> None:
    apply(database, PassOn("My knee hurts \0"))
    assert queued(database, ROWAN) == [ClientWord(practice.ada, "Ada", "My knee hurts \0")]
    (word,) = rows(database, tables.words)
    assert (word.client_id, word.coach_id, word.direction) == (practice.ada, practice.coach, "to_coach")
    assert word.text == "My knee hurts "


def coach_writes(database: Database, practice: Practice) -> None:
    """Two words of the coach to Ada, each under its mark."""
    for n in (1, 2):
        said = CoachWrites("Rowan", f"words {n}")
        apply(database, Say(said, occasion=f"word/{practice.coach}.{n}.{stamp(NOW)}"))


def taken_back(database: Database, practice: Practice, n: int, by: int) -> None:
    apply(database, Unsay(f"word/{practice.coach}.{n}.{stamp(NOW)}", by))


def test_words_taken_back_while_they_wait_are_never_sent_and_the_coach_is_told(
    database: Database, practice: Practice
) -> None:
    coach_writes(database, practice)
    taken_back(database, practice, 1, practice.coach)
    assert queued(database, ADA) == [CoachWrites("Rowan", "words 2")]
    assert queued(database, ROWAN) == [WordsTakenBack("Ada", "never")]


def test_words_taken_back_once_sent_are_ordered_deleted_where_they_stand(
    database: Database, practice: Practice
) -> None:
    coach_writes(database, practice)
    (claimed,) = database.write_now(outbox.claim, "w1", NOW, HOUR, 10)  # one at a time in each chat
    database.write_now(outbox.mark_sent, [(claimed.id, "55")], NOW)
    taken_back(database, practice, 1, practice.coach)
    first, second, order = sorted(rows(database, tables.outbox), key=lambda row: row.id)
    assert (first.status, first.platform_message_id, second.status) == ("sent", "55", "pending")
    assert (order.kind, order.chat_id, order.ref) == ("delete", ADA, f"word/{practice.coach}.1.{stamp(NOW)}")
    taking = codec.loads(order.message)
    assert isinstance(taking, TakingBack)
    assert (taking.name, taking.chat_id, taking.client_id) == ("Ada", ROWAN, practice.ada)
    assert queued(database, ROWAN) == []  # what became of them is told once the messenger has answered


def test_words_of_nobody_who_coaches_are_not_taken_back(database: Database, practice: Practice) -> None:
    coach_writes(database, practice)
    taken_back(database, practice, 1, 999)
    assert queued(database) == [CoachWrites("Rowan", "words 1"), CoachWrites("Rowan", "words 2")]
    assert queued(database, ROWAN) == []


def test_what_is_sent_later_is_queued_without_its_content(database: Database, practice: Practice) -> None:
    apply(database, SendData(), DropButtons("55"), DropButtons(""))
    found = [(row.kind, row.ref, row.message) for row in rows(database, tables.outbox)]
    assert found == [("data", "", None), ("drop_buttons", "55", None)]
    assert all(row.person_id for row in rows(database, tables.outbox))


def test_effects_of_a_client_need_a_client() -> None:
    turn = TurnEffects(None, NOW, NOW, ADA, lambda turn: None)  # type: ignore[arg-type]
    with pytest.raises(ValueError, match="Answered"):
        turn.apply([Answered("2026-03-30")])
