"""A coach arrives, invites, changes settings, gets their data, leaves."""

from datetime import date, time

import pytest

from core.care import Plan, Slot
from core.dialogue.client.facts import InvitationFact
from core.dialogue.engines import staff
from core.dialogue.kit.effects import Join, SendData
from core.dialogue.kit.messages import KeptAsItWas, LanguageChanged, Stranger, WhichPlace
from core.dialogue.staff import messages as sm
from core.dialogue.staff.effects import (
    ForgetMe,
    Invite,
    Revoke,
    SetDeputy,
    SetDigest,
    SetLanguage,
    SetNight,
    SetWait,
    SetZone,
)
from core.dialogue.staff.facts import DeputyFact, TemplateFact
from core.dialogue.staff.settings import invitation_rows
from core.dialogue.staff.states import ChangingOwn
from tests.core.dialogue.office import NOW, Office, card

PLAN = Plan(measures=("waist",))


def test_a_new_coach_is_welcomed_gets_monday_at_eight_and_is_asked_for_a_town() -> None:
    outcome = staff.joined(Office(slot=None).facts, NOW)
    (slot,) = [effect.slot for effect in outcome.effects if isinstance(effect, SetDigest)]
    assert slot == Slot(0, time(8), "UTC")
    assert outcome.state.asking == ChangingOwn("zone")


def test_the_town_sets_the_clock_and_keeps_the_hour() -> None:
    office = Office()
    office.state = staff.joined(office.facts, NOW).state
    office.says("Lisbon")
    assert office.did(SetZone) == [SetZone("Europe/Lisbon")]
    assert office.did(SetDigest) == [SetDigest(Slot(0, time(8), "Europe/Lisbon"))]
    assert office.state.asking is None


def test_a_coach_who_would_rather_begin_may() -> None:
    office = Office(card(1, "Ada"))
    office.state = staff.joined(office.facts, NOW).state
    assert office.says("caseload").kinds == ["CaseloadList"]


def test_a_place_nobody_knows_is_said_to_be_nobody() -> None:
    office = Office().presses("own:zone").says("Atlantis")
    assert office.did(SetZone) == []


def test_a_place_that_means_several_is_asked_back() -> None:
    office = Office(find_zones=lambda text: ("Europe/London", "America/Toronto") if text == "London" else (text,))
    office.presses("own:zone").says("London")
    assert office.heard(WhichPlace).places == ("Europe/London", "America/Toronto")
    assert office.presses("zone:America/Toronto").did(SetZone) == [SetZone("America/Toronto")]


# --- inviting ---------------------------------------------------------------------------------------------------


def test_a_name_with_the_command_is_invited_at_once() -> None:
    assert Office().commands("invite", "  Ada   Lind ").did(Invite) == [Invite("client", "Ada Lind", None)]


def test_the_name_is_asked_for_when_it_is_missing() -> None:
    office = Office().commands("invite")
    assert office.kinds == ["AskInvitee"]
    assert office.says("Ada").did(Invite) == [Invite("client", "Ada", None)]


def test_the_next_invitation_can_carry_a_saved_plan() -> None:
    office = Office()
    office.templates = (TemplateFact("Falls", PLAN),)
    assert office.commands("invite").heard(sm.AskInvitee).templates == ("Falls",)
    office.presses("tpl:0").says("Ben")
    assert office.did(Invite) == [Invite("client", "Ben", PLAN)]
    assert office.commands("invite", "Emil").did(Invite) == [Invite("client", "Emil", None)]


def test_an_invitation_is_taken_back_by_its_number() -> None:
    assert Office().presses("revoke:12").did(Revoke) == [Revoke(12)]
    assert Office().presses("revoke:Ada").did(Revoke) == []


def test_a_button_of_the_days_when_it_named_a_person_takes_nothing_back() -> None:
    for value in ("Ada", "", "²", "1" * 40):
        assert Office().presses(f"revoke:{value}").kinds == ["OldButton"]


def test_the_buttons_of_an_invitation_fit_the_platform() -> None:
    for row in invitation_rows(2**31):
        for choice in row:
            assert 1 <= len(choice.data.encode()) <= 64


def test_a_coach_who_opens_a_clients_link_is_told_to_use_another_account() -> None:
    for kind in ("client", "cohort"):
        office = Office()
        office.invitation = InvitationFact(kind, "Sam")
        assert office.commands("start", "token").kinds == ["UsedForCare"]
        assert office.did(Join) == []


def test_a_coach_may_become_an_organiser_too() -> None:
    office = Office()
    office.invitation = InvitationFact("organiser", "Samehour")
    assert office.commands("start", "token").did(Join) == [Join()]
    assert office.heard(sm.StaffWelcome).organiser is True


def test_a_link_that_is_used_up_has_the_one_fixed_answer() -> None:
    assert isinstance(Office().commands("start", "token").said[0], Stranger)


# --- settings ---------------------------------------------------------------------------------------------------


def test_the_digest_moves_with_buttons_or_with_words() -> None:
    office = Office().presses("own:digest").presses("own:digest:4").presses("own:hour:09:00")
    assert office.did(SetDigest) == [SetDigest(Slot(4, time(9), "Europe/London"))]
    office = Office().presses("own:digest").says("Tuesday 18:30")
    assert office.did(SetDigest) == [SetDigest(Slot(1, time(18, 30), "Europe/London"))]
    assert office.heard(sm.DigestSlotChanged).next.isoformat() == "2026-03-31"


def test_the_digest_can_be_stopped_and_wanted_again() -> None:
    assert Office().presses("nodigest").did(SetDigest) == [SetDigest(None)]
    assert Office(slot=None).commands("settings").heard(sm.StaffSettings).digest is False


def test_nights_and_language_can_be_set() -> None:
    assert Office().presses("night:off").did(SetNight) == [SetNight(False)]
    assert Office().presses("night:on").did(SetNight) == [SetNight(True)]
    office = Office().presses("own:language:en")
    assert office.did(SetLanguage) == [SetLanguage("en")] and isinstance(office.said[0], LanguageChanged)


def test_an_organiser_has_settings_without_a_digest() -> None:
    office = Office(coach_id=None, organiser_id=4, slot=None).commands("settings")
    assert office.heard(sm.StaffSettings).digest is False
    assert office.choices == ["own:zone", "own:language"]
    assert Office(coach_id=None, organiser_id=4).presses("own:digest").did(SetDigest) == []


# --- data and leaving -------------------------------------------------------------------------------------------


def test_a_coach_gets_their_own_data() -> None:
    assert Office().commands("mydata").did(SendData) == [SendData()]


def test_a_coach_with_clients_is_not_forgotten_and_hears_why() -> None:
    office = Office(card(1, "Ada")).commands("forget")
    assert office.heard(sm.StaffForgetSure).clients == 1
    assert "forget" not in office.choices
    assert office.presses("forget").did(ForgetMe) == []


def test_a_coach_without_clients_is_forgotten_after_one_yes() -> None:
    office = Office().commands("forget")
    assert office.did(ForgetMe) == []
    assert office.presses("forget").did(ForgetMe) == [ForgetMe(sm.StaffForgotten())]


def test_a_yes_in_words_is_not_enough_and_a_no_keeps_everything() -> None:
    office = Office().commands("forget").says("yes")
    assert office.did(ForgetMe) == [] and office.kinds == ["StaffForgetSure"]
    office = Office().commands("forget").says("no")
    assert office.did(ForgetMe) == [] and isinstance(office.said[0], KeptAsItWas)


def test_a_client_who_came_between_question_and_yes_keeps_the_coach() -> None:
    office = Office().commands("forget")
    office.clients[3] = card(3, "Emil")
    assert office.says("yes").did(ForgetMe) == []


def test_commands_work_without_their_stroke() -> None:
    office = Office(card(1, "Ada"))
    assert office.says("Caseload").kinds == ["CaseloadList"]
    assert office.says("help").kinds == ["StaffHelp"]
    assert office.says("thank you").kinds == ["ThanksToNobody"]
    assert office.says("hello").kinds == ["StaffGreeting"]
    assert office.says("invite Ben").did(Invite) == [Invite("client", "Ben", None)]


# --- standing in ------------------------------------------------------------------------------------------------


def test_a_deputy_is_set_for_always_or_for_some_weeks_from_today() -> None:
    office = Office().presses("deputy")
    assert office.heard(sm.DeputyShown) == sm.DeputyShown("", None, None, 30) and "deputy:8" in office.choices
    assert office.presses("deputy:8").heard(sm.AskDeputyDays).name == "Sam"
    office.presses("deputy:8:always")
    assert office.did(SetDeputy) == [SetDeputy(DeputyFact(8, "Sam"))]
    office.presses("deputy:8").presses("deputy:8:two_weeks")
    assert office.did(SetDeputy) == [SetDeputy(DeputyFact(8, "Sam", date(2026, 3, 30), date(2026, 4, 12)))]


@pytest.mark.parametrize(
    ("said", "days"),
    [
        ("2026-04-06 to 2026-04-19", (date(2026, 4, 6), date(2026, 4, 19))),
        ("2026-04-19 to 2026-04-06", None),
        ("2026-01-01 to 2026-01-09", None),
        ("2026-04-31 to 2026-05-09", None),
    ],
)
def test_the_days_of_a_deputy_can_be_typed(said: str, days: tuple[date, date] | None) -> None:
    office = Office().presses("deputy:8").says(said)
    assert office.did(SetDeputy) == ([SetDeputy(DeputyFact(8, "Sam", *days))] if days else [])


def test_nobody_stands_in_any_more_when_the_coach_says_so() -> None:
    office = Office(deputy=DeputyFact(8, "Sam")).presses("deputy")
    assert "deputy:0:nobody" in office.choices
    assert office.presses("deputy:0:nobody").did(SetDeputy) == [SetDeputy(None)]


def test_somebody_who_is_no_coach_here_cannot_stand_in() -> None:
    assert Office().presses("deputy:99:always").did(SetDeputy) == []


def test_a_coach_sets_how_long_an_emergency_waits() -> None:
    office = Office().presses("wait:60")
    assert office.did(SetWait) == [SetWait(60)] and office.heard(sm.DeputyShown).wait == 60
    assert Office().presses("wait:7").did(SetWait) == []
