"""Invitations: a link creates one person, once, with one role."""

from collections.abc import Callable
from datetime import date, time, timedelta

import pytest
from sqlalchemy import insert

from bot.store import codec, invitations
from bot.store import schema as tables
from bot.store.database import Database
from bot.store.invitations import InvitationGone, InvitationKind
from core.care import Plan, Status
from core.dialogue.client.facts import InvitationFact, Membership
from core.dialogue.client.messages import Forgotten, NotSure
from core.dialogue.client.messages_to_coach import ClientEnrolled
from core.dialogue.client.states import Consenting, Setting, State
from core.dialogue.kit.effects import Erase, Join, Say
from core.dialogue.kit.events import Command, Press, Text
from core.dialogue.kit.messages import Stranger
from tests.bot.practice import ADA, BEN, NOW, ROWAN, add_client, add_coach, row_of, rowan_and_ada
from tests.bot.steps import Puppet, arrive, queued, rows, work

DAY = timedelta(days=1)
PLAN = Plan(("waist",), 35)


def invite(database: Database, kind: InvitationKind = InvitationKind.CLIENT, **more) -> str:
    return database.write_now(lambda conn: invitations.make(conn, kind, NOW, by_name="Rowan", **more))


def start(database: Database, puppet: Puppet, token: str, chat_id: int = ADA, now=NOW, **more) -> None:
    arrive(database, Command(now, "start", token), chat_id=chat_id, now=now, language="pl-PL", name="Adele")
    work(database, puppet.steps(**more), now)


@pytest.fixture
def rowan(database: Database) -> int:
    return database.write_now(add_coach)


def test_opening_a_client_s_invitation_makes_the_client(database: Database, rowan: int) -> None:
    token = invite(database, coach_id=rowan, for_name="Ada", plan=PLAN)
    puppet = Puppet()
    start(database, puppet, token)
    ((_, told),) = puppet.strangers
    assert told.invitation == InvitationFact("client", "Rowan", "Ada")
    assert (told.language, told.name) == ("pl", "Adele")
    arrive(database, Text(NOW, "yes"))
    work(database, puppet.steps())
    facts = puppet.seen[0][2]
    assert (facts.name, facts.coach_name, facts.language, facts.plan) == ("Ada", "Rowan", "pl", PLAN)
    assert (facts.status, facts.consented, facts.slot) == (Status.ENROLLING, False, None)
    assert [row.action for row in rows(database, tables.audit)] == ["joined"]


def test_the_state_of_who_has_just_joined_is_kept(database: Database, rowan: int) -> None:
    token = invite(database, coach_id=rowan)
    consenting = State(asking=Consenting())

    class Asking(Puppet):
        def stranger(self, event, facts):
            from core.dialogue.client.step import Outcome

            return Outcome(consenting, (Join(), Say(NotSure())))

    puppet = Asking()
    start(database, puppet, token)
    arrive(database, Text(NOW, "yes"))
    work(database, puppet.steps())
    assert puppet.seen[0][0] == consenting
    assert puppet.seen[0][2].name == "Adele"


def test_an_invitation_serves_once_and_then_holds_no_name(database: Database, rowan: int) -> None:
    token = invite(database, coach_id=rowan, for_name="Ada", plan=PLAN)
    start(database, Puppet(), token)
    start(database, Puppet(), token, chat_id=BEN)
    assert len(rows(database, tables.clients)) == 1
    assert queued(database, BEN) == [Stranger()]
    (row,) = rows(database, tables.invitations)
    assert (row.uses_left, row.for_name, row.plan, row.used_at) == (0, "", None, NOW)


def test_two_taps_on_one_link_at_once_make_one_client(open_database: Callable[[], Database]) -> None:
    one, two = open_database(), open_database()
    token = invite(one, coach_id=one.write_now(add_coach))
    found = [db.read_now(invitations.find, [token], NOW)[token] for db in (one, two)]
    one.write_now(invitations.use, found[0], NOW)
    with pytest.raises(InvitationGone):
        two.write_now(invitations.use, found[1], NOW)


@pytest.mark.parametrize("after", [timedelta(days=14), timedelta(days=15)])
def test_an_invitation_runs_out_after_two_weeks(database: Database, rowan: int, after: timedelta) -> None:
    token = invite(database, coach_id=rowan)
    start(database, Puppet(), token, now=NOW + after)
    assert queued(database) == [Stranger()]


def test_an_invitation_still_serves_on_its_last_day(database: Database, rowan: int) -> None:
    token = invite(database, coach_id=rowan)
    start(database, Puppet(), token, now=NOW + 14 * DAY - timedelta(seconds=1))
    assert len(rows(database, tables.clients)) == 1


def test_an_invitation_taken_back_opens_nothing_and_only_its_coach_can_take_it_back(
    database: Database, rowan: int
) -> None:
    token = invite(database, coach_id=rowan, for_name="Ada")
    ((number, name, _),) = database.read_now(invitations.open_of, rowan, NOW)
    assert name == "Ada"
    assert not database.write_now(invitations.revoke, number, rowan + 1, NOW)
    assert database.write_now(invitations.revoke, number, rowan, NOW)
    assert not database.write_now(invitations.revoke, number, rowan, NOW)
    assert database.read_now(invitations.open_of, rowan, NOW) == ()
    start(database, Puppet(), token)
    assert queued(database) == [Stranger()]


@pytest.mark.parametrize("token", ["", "x", "A" * 22, "A" * 65, "' OR 1=1 --", "\ud83d", "\0"])
def test_a_token_that_was_never_given_out_opens_nothing(database: Database, rowan: int, token: str) -> None:
    invite(database, coach_id=rowan)
    start(database, Puppet(), token)
    assert queued(database) == [Stranger()]
    assert rows(database, tables.clients) == []


def test_a_token_has_128_bits_fits_a_link_and_is_not_in_the_database(database: Database, rowan: int) -> None:
    import re

    token = invite(database, coach_id=rowan)
    assert re.fullmatch(r"[A-Za-z0-9_-]{22}", token)
    assert token not in str(rows(database, tables.invitations))
    assert token != invite(database, coach_id=rowan)


def test_an_invitation_links_the_client_a_coach_had_set_up_before(database: Database, rowan: int) -> None:
    from bot.store import clients

    waiting = database.write_now(lambda conn: clients.add(conn, NOW, name="Ada", coach_id=rowan, plan=PLAN))
    token = invite(database, coach_id=rowan, for_name="Ada", client_id=waiting)
    start(database, Puppet(), token)
    (row,) = rows(database, tables.clients)
    assert row.id == waiting
    assert row.person_id is not None


def test_a_coach_s_invitation_makes_a_coach_and_their_own_conversation_greets_them(database: Database) -> None:
    token = invite(database, InvitationKind.COACH, for_name="Nia")
    greeted = []

    class StaffTurn:
        def step(self, conn, who, state, event, now, **more):
            from core.dialogue.client.step import Outcome

            greeted.append((who.name, who.coach_id, who.organiser_id, event))
            return Outcome(State(), (Say(NotSure("welcome")),))

        def apply(self, conn, who, effect, turn):
            raise AssertionError

    class Silent(Puppet):
        def stranger(self, event, facts):
            from core.dialogue.client.step import Outcome

            return Outcome(State(), (Join(),))

    start(database, Silent(), token, chat_id=ROWAN, staff=StaffTurn())
    (coach,) = rows(database, tables.coaches)
    assert coach.name == "Nia"
    assert greeted == [("Nia", coach.id, None, Command(NOW, "start", token))]
    assert queued(database) == [NotSure("welcome")]


def test_an_organiser_s_invitation_makes_an_organiser(database: Database) -> None:
    token = invite(database, InvitationKind.ORGANISER, for_name="Nia")
    start(database, Puppet(), token, chat_id=ROWAN)
    assert [row.name for row in rows(database, tables.organisers)] == ["Nia"]
    assert [row.role for row in rows(database, tables.people)] == ["organiser"]


def test_a_client_who_opens_a_coach_s_invitation_stays_a_client(database: Database) -> None:
    database.write_now(rowan_and_ada)
    token = invite(database, InvitationKind.COACH)
    puppet = Puppet([Join()])
    start(database, puppet, token)
    assert puppet.seen[0][2].invitation is None
    assert len(rows(database, tables.coaches)) == 1
    assert [row.uses_left for row in rows(database, tables.invitations)] == [1]


def test_a_client_goes_over_to_another_coach_with_their_own_yes(database: Database) -> None:
    practice = database.write_now(rowan_and_ada)
    other = database.write_now(lambda conn: add_coach(conn, 901, "Sam"))
    token = database.write_now(
        lambda conn: invitations.make(conn, InvitationKind.CLIENT, NOW, by_name="Sam", coach_id=other)
    )
    asking = State(asking=Setting("coach_change", token))
    opening = Puppet([Say(NotSure())], asking)
    start(database, opening, token)
    assert opening.seen[0][2].invitation == InvitationFact("client", "Sam", "", True)
    agreeing = Puppet([Join()])
    arrive(database, Press(NOW, "move:yes"))
    work(database, agreeing.steps())
    assert agreeing.seen[0][2].invitation is not None
    assert database.read_now(row_of, practice.ada).coach_id == other
    assert queued(database, 901) == [ClientEnrolled(practice.ada, "Ada")]
    assert [row.uses_left for row in rows(database, tables.invitations)] == [0]


def cohort_of(database: Database, coach: int | None) -> int:
    row = {
        "coach_id": coach, "name": "Spring", "starts": date(2026, 4, 6), "weeks": 6, "language": "en",
        "weekday": 0, "at": time(18), "zone_name": "Europe/London", "counts": codec.dumps("sessions"),
        "created_at": NOW,
    }  # fmt: skip
    return database.write_now(
        lambda conn: conn.execute(insert(tables.cohorts).returning(tables.cohorts.c.id), row).scalar_one()
    )


SPRING = Membership(1, "Spring", date(2026, 4, 6), date(2026, 5, 18), "sessions")


def test_a_cohort_s_link_serves_many_and_a_client_keeps_their_coach(database: Database, rowan: int) -> None:
    ada = database.write_now(lambda conn: add_client(conn, rowan))
    ben = database.write_now(lambda conn: add_client(conn, None, BEN, "Ben"))
    cohort = cohort_of(database, rowan)
    token = invite(database, InvitationKind.COHORT, cohort_id=cohort, uses=10)
    puppet = Puppet([Join()])
    start(database, puppet, token)
    start(database, puppet, token, chat_id=BEN)
    start(database, puppet, token, chat_id=BEN)
    assert {row.client_id for row in rows(database, tables.cohort_members)} == {ada, ben}
    assert puppet.seen[0][2].invitation == InvitationFact("cohort", "Rowan", "", True, SPRING, "Rowan")
    assert database.read_now(row_of, ada).coach_id == rowan
    arrive(database, Text(NOW, "hello"))
    work(database, puppet.steps())
    assert puppet.seen[-1][2].cohorts == (SPRING,)


def test_a_stranger_who_opens_a_cohort_s_link_becomes_a_client_of_its_coach(database: Database, rowan: int) -> None:
    token = invite(database, InvitationKind.COHORT, cohort_id=cohort_of(database, rowan), uses=10)
    start(database, Puppet(), token)
    (client,) = rows(database, tables.clients)
    assert (client.coach_id, client.status) == (rowan, "enrolling")
    assert (client.weekday, client.at, client.zone_name) == (0, time(18), "Europe/London")
    assert len(rows(database, tables.cohort_members)) == 1


def test_a_link_for_a_group_chat_opens_nothing_for_a_person(database: Database, rowan: int) -> None:
    token = invite(database, InvitationKind.GROUP, cohort_id=cohort_of(database, rowan))
    puppet = Puppet()
    start(database, puppet, token)
    assert puppet.strangers[0][1].invitation is None
    assert rows(database, tables.clients) == []
    assert queued(database, ADA) == [Stranger()]


def test_somebody_who_was_forgotten_is_a_stranger_and_can_be_invited_again(database: Database) -> None:
    practice = database.write_now(rowan_and_ada)
    arrive(database, Text(NOW, "forget me"), Text(NOW, "still there?"))
    puppet = Puppet([Erase(Forgotten())])
    work(database, puppet.steps())
    assert queued(database, ADA) == [Forgotten()]  # the next message is a stranger's, who has just received a message
    assert rows(database, tables.clients) == []
    start(database, Puppet(), invite(database, coach_id=practice.coach, for_name="Ada"))
    assert [row.name for row in rows(database, tables.clients)] == ["Ada"]
