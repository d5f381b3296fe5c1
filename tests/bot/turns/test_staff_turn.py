"""A coach's decisions are applied: links, messages, plans, flags, handing over, leaving. On both databases."""

from datetime import UTC, date, datetime, time, timedelta
from decimal import Decimal
from typing import Any

import pytest

from bot.store import codec, staff
from bot.store import flags as flag_store
from bot.store.database import Database
from bot.store.flags import Lowering
from bot.store.schema import audit, clients, coaches, conversations, flags, invitations, notes, people, templates
from bot.store.schema import outbox as outbox_table
from core.care import Plan, Slot
from core.dialogue.client import messages as m
from core.dialogue.client.messages_to_coach import ClientWord, UrgentFlag
from core.dialogue.staff.states import StaffState
from core.dialogue.staff.step import stamp
from core.watching.flags import Code, Ended, flag
from tests.bot.office import Desk
from tests.bot.practice import ADA, BEN, NOW, ROWAN, add_client, add_coach, key_of
from tests.bot.steps import arrive, rows, work

SAM = 901
HOUR = timedelta(hours=1)


@pytest.fixture
def desk(database: Database) -> Desk:
    """Rowan with Ada, Sam with Ben."""
    rowan = database.write_now(lambda c: add_coach(c, zone_name="Europe/London", weekday=0, at=time(8)))
    sam = database.write_now(add_coach, SAM, "Sam")
    made = Desk(database)
    made.rowan, made.sam = rowan, sam  # type: ignore[attr-defined]
    made.ada = database.write_now(add_client, rowan)  # type: ignore[attr-defined]
    made.ben = database.write_now(add_client, sam, BEN, "Ben")  # type: ignore[attr-defined]
    return made


def kinds(said: list[Any]) -> list[str]:
    return [type(x).__name__ for x in said]


def raise_flag(desk: Any, code: Code, client: int | None = None, measure: str | None = None) -> int:
    one = flag(code, desk.now - HOUR, measure)
    desk.database.write_now(flag_store.raise_, [(client or desk.ada, one)], desk.now - HOUR)
    return max(r.id for r in rows(desk.database, flags))


def only(database: Database, table: Any) -> Any:
    (row,) = rows(database, table)
    return row


# --- arriving and inviting --------------------------------------------------------------------------------------


def test_a_coach_who_opens_an_operators_invitation_is_welcomed_with_a_digest_slot(database: Database) -> None:
    from bot.store import invitations as store

    token = database.write_now(lambda c: store.make(c, store.InvitationKind.COACH, NOW, for_name="Rowan"))
    desk = Desk(database)
    said = desk.commands("start", token, chat=ROWAN)
    assert kinds(said) == ["StaffWelcome", "AskStaffZone"]
    coach = only(database, coaches)
    assert (coach.weekday, coach.at, coach.zone_name) == (0, time(8), "UTC")
    assert kinds(desk.says("Lisbon")) == ["DigestSlotChanged"]
    coach = only(database, coaches)
    assert coach.zone_name == "Europe/Lisbon"
    assert coach.next_digest_at == datetime(2026, 3, 30, 7, tzinfo=UTC)
    assert only(database, people).zone_name == "Europe/Lisbon"


def test_an_invitation_is_words_and_a_picture_of_the_same_link(desk: Desk) -> None:
    said = desk.commands("invite", "Emil")
    assert kinds(said) == ["InvitationMade", "LinkPicture"]
    assert said[0].link == said[1].link and said[0].link.startswith("https://t.me/it?start=")
    assert said[0].until == date(2026, 4, 13)


def test_the_link_makes_a_client_of_this_coach_with_the_chosen_plan(desk: Any) -> None:
    plan = Plan(measures=("waist",), retest_days=35)
    desk.database.write_now(staff.save_template, desk.rowan, "Girths", plan, NOW)
    desk.commands("invite")
    desk.presses("tpl:0")
    made = desk.says("Emil")[0]
    token = made.link.rpartition("=")[2]
    assert kinds(desk.commands("start", token, chat=300)) == ["Welcome"]
    emil = next(r for r in rows(desk.database, clients) if r.name == "Emil")
    assert (emil.coach_id, codec.loads(emil.plan)) == (desk.rowan, plan)


def test_a_link_that_was_taken_back_opens_nothing(desk: Desk) -> None:
    made = desk.commands("invite", "Emil")[0]
    (revoke,) = [b for b in desk.buttons(ROWAN) if b.startswith("revoke:")]
    assert kinds(desk.presses(revoke)) == ["InvitationRevoked"]
    assert kinds(desk.commands("start", made.link.rpartition("=")[2], chat=300)) == ["Stranger"]


def test_taking_one_link_back_leaves_others_for_the_same_name(desk: Desk) -> None:
    """Links are revoked by number: "Emil" names two people here, and "Emilia" starts the same way."""
    first, second, third = (desk.commands("invite", name)[0] for name in ("Emil", "Emil", "Emilia"))
    revoke = next(b for b in desk.buttons(ROWAN) if b.startswith("revoke:"))
    (said,) = desk.presses(revoke)
    assert said.for_name in ("Emil", "Emilia")
    tokens = [made.link.rpartition("=")[2] for made in (first, second, third)]
    assert sorted(kinds(desk.commands("start", t, chat=300 + n))[0] for n, t in enumerate(tokens)) == [
        "Stranger",
        "Welcome",
        "Welcome",
    ]


def test_a_link_is_taken_back_once_and_a_second_tap_says_so(desk: Desk) -> None:
    desk.commands("invite", "Emil")
    (revoke,) = [b for b in desk.buttons(ROWAN) if b.startswith("revoke:")]
    assert [desk.presses(revoke)[0].for_name for _ in range(2)] == ["Emil", ""]
    assert kinds(desk.presses("revoke:Emil")) == ["OldButton"]


def test_another_coachs_invitations_are_not_taken_back(desk: Any) -> None:
    desk.commands("invite", "Emil", chat=SAM)
    desk.presses(f"revoke:{only(desk.database, invitations).id}")
    assert only(desk.database, invitations).revoked_at is None


# --- writing ----------------------------------------------------------------------------------------------------


def test_words_reach_the_client_and_the_answer_comes_back_into_one_thread(desk: Any) -> None:
    desk.commands("write", "Ada rest your knee")
    (heard,) = [x for x in desk.heard(ADA) if isinstance(x, m.CoachWrites)]
    assert (heard.coach, heard.text) == ("Rowan", "rest your knee")
    desk.says("it is better, Friday is good", chat=ADA)
    (word,) = [x for x in desk.heard(ROWAN) if isinstance(x, ClientWord)]
    assert word.text == "it is better, Friday is good"
    assert desk.buttons(ROWAN) == [f"write:{desk.ada}", f"card:{desk.ada}"]
    (thread,) = desk.presses(f"thread:{desk.ada}")
    assert [w[1:] for w in thread.words] == [(False, "rest your knee"), (True, "it is better, Friday is good")]


def test_writing_back_clears_the_request_to_talk(desk: Any) -> None:
    raise_flag(desk, Code.WANTS_COACH)
    desk.commands("write", "Ada I call you tomorrow")
    assert only(desk.database, flags).cleared_at == NOW


def test_an_urgent_flag_carries_buttons_that_mark_it_seen(desk: Any) -> None:
    desk.says("I have chest pain", chat=ADA)
    told = [x for x in desk.heard(ROWAN) if isinstance(x, UrgentFlag)]
    assert [x.name for x in told] == ["Ada"]
    assert f"saw:{desk.ada}:red_flag_words:{stamp(NOW)}" in desk.buttons(ROWAN)
    desk.presses(f"saw:{desk.ada}")
    assert only(desk.database, flags).seen_at == NOW


def test_two_emergencies_of_one_day_are_both_told_at_once(desk: Any) -> None:
    for text in ("I have chest pain", "chest pain again, and I cannot breathe"):
        desk.says(text, chat=ADA)
        assert [type(x) for x in desk.heard(ROWAN)] == [UrgentFlag], text
        desk.now += HOUR


# --- the plan ---------------------------------------------------------------------------------------------------


def test_a_changed_plan_is_kept_told_and_written_down_without_content(desk: Any) -> None:
    desk.presses(f"interval:{desk.ada}:35")
    ada = next(r for r in rows(desk.database, clients) if r.id == desk.ada)
    assert codec.loads(ada.plan).retest_days == 35
    assert [x.what for x in desk.heard(ADA) if isinstance(x, m.PlanNews)] == ["interval"]
    line = rows(desk.database, audit)[-1]
    assert (line.actor, line.action, line.client_id) == (f"coach/{desk.rowan}", "changed_plan", desk.ada)


def test_a_changed_slot_comes_due_at_its_new_time(desk: Any) -> None:
    desk.presses(f"slot:{desk.ada}")
    desk.says("Wednesday 18:00")
    ada = next(r for r in rows(desk.database, clients) if r.id == desk.ada)
    assert (ada.weekday, ada.at, ada.next_due_day) == (2, time(18), date(2026, 4, 1))
    assert ada.next_due_at == datetime(2026, 4, 1, 17, tzinfo=UTC)


def test_cautions_are_kept(desk: Any) -> None:
    for data in ("cautions:{}", "cautions:{}:falls", "cautions:{}:pregnancy", "cautions:{}:done"):
        desk.presses(data.format(desk.ada))
    assert next(r for r in rows(desk.database, clients) if r.id == desk.ada).cautions == "falls,pregnancy"


def test_a_template_saved_from_a_plan_can_be_chosen_and_dropped(desk: Any) -> None:
    desk.presses(f"template:{desk.ada}")
    desk.says("Usual")
    assert desk.commands("invite")[0].templates == ("Usual",)
    desk.presses("droptpl:0")
    assert rows(desk.database, templates) == []


def test_a_note_is_one_field(desk: Any) -> None:
    for text in ("left knee", "left knee, mornings"):
        desk.presses(f"note:{desk.ada}")
        desk.says(text)
    assert only(desk.database, notes).text == "left knee, mornings"
    assert desk.presses(f"card:{desk.ada}")[0].note == "left knee, mornings"


# --- flags ------------------------------------------------------------------------------------------------------


def test_seen_flags_stay_open_and_dealt_with_ones_are_cleared(desk: Any) -> None:
    number = raise_flag(desk, Code.ENERGY_FALLING, measure="energy")
    assert not desk.commands("digest")[0].digest.calm
    desk.presses(f"seen:{stamp(desk.now)}")
    kept = only(desk.database, flags)
    assert (kept.seen_at, kept.cleared_at) == (NOW, None)
    assert desk.commands("digest")[0].digest.known[0].flags[0].seen
    desk.presses(f"clear:{desk.ada}:{number}:{stamp(desk.now)}")
    desk.presses(f"done:{desk.ada}:rang")
    kept = only(desk.database, flags)
    assert (kept.cleared_at, kept.ended, kept.done, kept.done_by) == (NOW, "by_coach", "rang", desk.rowan)
    assert desk.commands("digest")[0].digest.calm


def test_what_was_done_stands_in_the_history_in_the_coachs_own_words(desk: Any) -> None:
    number = raise_flag(desk, Code.ENERGY_FALLING, measure="energy")
    desk.presses(f"clear:{desk.ada}:{number}:{stamp(desk.now)}")
    desk.says("walked with her to the pharmacy")
    (past,) = desk.presses(f"past:{desk.ada}")[0].flags
    assert (past.done, past.words, past.by) == ("own", "walked with her to the pharmacy", "Rowan")
    with desk.database.engine.connect() as conn:
        assert "pharmacy" not in str(conn.exec_driver_sql("SELECT done_words FROM flags").scalar_one())


def test_an_alarm_that_settles_is_told_once_with_what_followed(desk: Any) -> None:
    raise_flag(desk, Code.PULSE_FAST, measure="resting_heart_rate")
    lowered = {(desk.ada, "pulse_fast", "resting_heart_rate"): Lowering(Ended.READING, (("rate", Decimal(96)),))}
    desk.database.write_now(flag_store.lower, lowered, desk.now)
    desk.now += timedelta(minutes=1)
    for told in (1, 0):
        digest = desk.due()[0].digest
        assert [f.after for e in digest.changes for f in e.flags] == [(("rate", Decimal(96)),)] * told
        desk.now += timedelta(days=7)


def test_what_the_weekly_digest_has_named_is_known_in_the_next(desk: Any) -> None:
    raise_flag(desk, Code.ENERGY_FALLING, measure="energy")
    assert [len(desk.due()[0].digest.needs), only(desk.database, flags).digest_at] == [1, desk.now]
    desk.now += timedelta(days=7)
    digest = desk.due()[0].digest
    assert (len(digest.needs), len(digest.known)) == (0, 1)


def test_a_cleared_flag_that_comes_back_is_new_again(desk: Any) -> None:
    first = raise_flag(desk, Code.ENERGY_FALLING, measure="energy")
    desk.presses(f"saw:{desk.ada}")
    desk.presses(f"clear:{desk.ada}:{first}:{stamp(desk.now)}")
    desk.presses(f"done:{desk.ada}:wrote")
    desk.now += timedelta(days=7)
    assert raise_flag(desk, Code.ENERGY_FALLING, measure="energy") != first
    (entry,) = desk.commands("digest")[0].digest.needs
    assert [f.seen for f in entry.flags] == [False]


def test_another_coachs_flag_cannot_be_marked_by_its_number(desk: Any) -> None:
    number = raise_flag(desk, Code.WANTS_COACH, desk.ben)
    state = codec.dumps(StaffState(digest_day=date(2026, 3, 30), digest_flags=(number,), digest_at=NOW))
    from bot.store import conversations as store

    desk.database.write_now(lambda conn: store.save(conn, {ROWAN: (state, NOW, key_of(conn, ROWAN))}))
    desk.presses(f"seen:{stamp(NOW)}")
    assert only(desk.database, flags).seen_at is None
    assert desk.database.write_now(staff.mark_seen, desk.rowan, [number], NOW, NOW) == 0


def test_a_past_digest_has_the_flags_that_were_open_then(desk: Any) -> None:
    raise_flag(desk, Code.WANTS_COACH)
    desk.now += timedelta(days=1)
    desk.commands("write", "Ada well done")
    look = desk.database.read_now(staff.open_flags, [desk.ada], NOW)
    assert [f.code for f in look[desk.ada]] == ["wants_coach"]
    assert desk.database.read_now(staff.open_flags, [desk.ada], desk.now) == {}


# --- handing over and ending ------------------------------------------------------------------------------------


def hand_over(desk: Any) -> None:
    desk.presses(f"hand:{desk.ada}:{desk.sam}")
    desk.presses(f"sure:hand_over:{desk.ada}")


def test_handing_over_tells_both_coaches_and_the_client(desk: Any) -> None:
    hand_over(desk)
    assert kinds(desk.heard(ROWAN)) == ["HandedOver"]
    assert [(x.name, x.by) for x in desk.heard(SAM)] == [("Ada", "Rowan")]
    assert [(x.what, x.detail) for x in desk.heard(ADA)] == [("hand_over", "Sam")]


def test_the_former_coach_loses_everything_at_once_and_the_new_one_has_it(desk: Any) -> None:
    desk.presses(f"note:{desk.ada}")
    desk.says("left knee")
    hand_over(desk)
    assert kinds(desk.presses(f"card:{desk.ada}")) == ["NotYours"]
    assert kinds(desk.commands("caseload")) == ["NoClientsYet"]
    assert desk.presses(f"card:{desk.ada}", chat=SAM)[0].note == "left knee"


def test_news_of_the_client_that_was_on_its_way_to_the_former_coach_is_not_sent(desk: Any) -> None:
    desk.says("/coach", chat=ADA)
    desk.commands("coach", "my knee", chat=ADA)
    assert any(isinstance(x, ClientWord) for x in desk.heard(ROWAN))
    hand_over(desk)
    waiting = [
        codec.loads(r.message)
        for r in rows(desk.database, outbox_table)
        if r.chat_id == ROWAN and r.status == "pending" and r.message
    ]
    assert not any(isinstance(x, ClientWord) for x in waiting)


def test_a_client_who_writes_after_the_handing_over_reaches_the_new_coach(desk: Any) -> None:
    hand_over(desk)
    desk.commands("coach", "hello Sam", chat=ADA)
    assert [x.text for x in desk.heard(SAM) if isinstance(x, ClientWord)] == ["hello Sam"]
    assert desk.heard(ROWAN) == []


def test_ending_care_tells_the_client_stops_asking_and_shuts_the_door(desk: Any) -> None:
    desk.presses(f"end:{desk.ada}")
    desk.presses(f"sure:end:{desk.ada}")
    ada = next(r for r in rows(desk.database, clients) if r.id == desk.ada)
    assert (ada.status, ada.next_due_at) == ("left", None)
    assert [x.what for x in desk.heard(ADA) if isinstance(x, m.PlanNews)] == ["end_care"]
    assert kinds(desk.presses(f"card:{desk.ada}")) == ["NotYours"]


# --- one's own --------------------------------------------------------------------------------------------------


def test_settings_are_kept(desk: Any) -> None:
    desk.presses("night:off")
    desk.presses("own:digest")
    desk.says("Friday 17:30")
    coach = next(r for r in rows(desk.database, coaches) if r.id == desk.rowan)
    assert (coach.quiet_nights, coach.weekday, coach.at) == (False, 4, time(17, 30))
    assert coach.next_digest_at == datetime(2026, 4, 3, 16, 30, tzinfo=UTC)
    desk.presses("nodigest")
    assert next(r for r in rows(desk.database, coaches) if r.id == desk.rowan).next_digest_at is None


def test_a_coach_is_forgotten_only_when_nobody_is_left(desk: Any) -> None:
    assert desk.commands("forget")[0].clients == 1
    hand_over(desk)
    desk.commands("forget")
    assert kinds(desk.presses("forget")) == ["StaffForgotten"]
    names = [r.name for r in rows(desk.database, people)]
    assert "Rowan" not in names and [r.name for r in rows(desk.database, coaches)] == ["Sam"]
    assert [r.chat_id for r in rows(desk.database, conversations) if r.chat_id == ROWAN] == []


def test_a_coach_gets_all_that_is_held_of_them_and_no_clients_readings(desk: Any) -> None:
    from bot.exports.my_data import gather
    from bot.foundation.reader import Reader

    desk.presses(f"note:{desk.ada}")
    desk.says("left knee")
    desk.commands("write", "Ada well done")
    assert kinds(desk.commands("mydata")) == ["str", "DataSent"]  # a row whose data is gathered at delivery
    (person,) = [r.id for r in rows(desk.database, people) if r.chat_id == ROWAN]
    sent = desk.database.read_now(gather, person, Reader())
    text = "".join(part.document[1].decode() if part.document else part.text for part in sent)
    assert "Rowan" in text
    assert not any(part.document and part.document[0] == "readings.csv" for part in sent)


def test_a_turn_of_staff_asks_the_database_a_bounded_number_of_times(desk: Any) -> None:
    """One query for the coach, one list, flags and slots of the week, histories: none depends on the size of the
    caseload."""
    from sqlalchemy import event

    for number in range(20):
        client = desk.database.write_now(add_client, desk.rowan, 1000 + number, f"Client {number:02}")
        raise_flag(desk, Code.WANTS_COACH, client)
    seen: list[str] = []
    with desk.database.engine.connect() as conn:
        arrive(desk.database, m_digest(desk.now), chat_id=ROWAN)

        def count(*args: Any) -> None:
            seen.append(args[2])

        event.listen(desk.database.engine, "before_cursor_execute", count)
        try:
            work(desk.database, desk.steps, desk.now)
        finally:
            event.remove(desk.database.engine, "before_cursor_execute", count)
        del conn
    assert len([s for s in seen if s.lstrip().upper().startswith(("SELECT", "WITH"))]) <= 16, "\n".join(seen)


def m_digest(now: datetime) -> Any:
    from core.dialogue.kit.events import Command

    return Command(now, "digest")


def test_the_slot_of_a_client_without_one_takes_the_coachs_clock(desk: Any) -> None:
    client = desk.database.write_now(lambda c: add_client(c, desk.rowan, 333, "Emil", slot=None))
    desk.presses(f"slot:{client}")
    desk.says("Friday 9:00")
    emil = next(r for r in rows(desk.database, clients) if r.id == client)
    assert Slot(emil.weekday, emil.at, emil.zone_name) == Slot(4, time(9), "Europe/London")
