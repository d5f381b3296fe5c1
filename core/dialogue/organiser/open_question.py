"""Repeat the open question of a coach or organiser: after a button of another one, nobody should have to scroll."""

from __future__ import annotations

from core.dialogue.organiser import cohorts
from core.dialogue.staff import caseload, naming, plan, rows, settings, writing
from core.dialogue.staff.cohort_states import InvitingOrganiser, PlanningCohort, SureOfCohort
from core.dialogue.staff.facts import CardOf, Caseload, Need, Templates
from core.dialogue.staff.states import (
    AskingSure,
    ChangingOwn,
    ChangingSlot,
    ChoosingClient,
    ChoosingDeputyDays,
    ConfirmingWords,
    DealingWith,
    Inviting,
    NamingClient,
    NamingClinician,
    NamingTemplate,
    NotingOn,
    StaffAsking,
    Ticking,
    WritingTo,
)
from core.dialogue.staff.step import StaffStep


def needs(asking: StaffAsking | None) -> tuple[Need, ...]:
    """What must be loaded to put it again."""
    match asking:
        case AskingSure(what="forget") | ChoosingClient():
            return (Caseload(),)
        case AskingSure(client_id=client):
            return rows.card_and_coaches(str(client))
        case NamingClient(client):
            return rows.card_among_all(str(client))
        case WritingTo(client) | NotingOn(client) | ChangingSlot(client) | NamingTemplate(client):
            return (CardOf(client),)
        case ConfirmingWords(client, _, others):
            return tuple(CardOf(number) for number in (client, *others))
        case Ticking(client_id=client) | DealingWith(client_id=client) | NamingClinician(client):
            return (CardOf(client),)
        case ChoosingDeputyDays():
            return rows.other_coaches("")
        case Inviting():
            return (Templates(),)
        case PlanningCohort() | SureOfCohort():
            return rows.cohorts("")
        case _:
            return ()


def put_again(d: StaffStep) -> None:
    """Repeat the open question with its buttons; nothing if none is open. The state is unchanged."""
    open_now = d.asking
    _say(d, open_now)
    d.ask(open_now)


def _say(d: StaffStep, asking: StaffAsking | None) -> None:
    match asking:
        case Inviting(template=""):
            settings.invite(d, "")
        case Inviting(template=template):
            settings.ask_invitee(d, template)
        case WritingTo(client):
            caseload.write_to(d, str(client))
        case ConfirmingWords():
            writing.ask_who_again(d, asking)
        case NotingOn(client):
            caseload.note(d, str(client))
        case NamingClient(client):
            naming.name(d, str(client))
        case ChoosingClient(what="write"):
            caseload.write(d, "")
        case ChoosingClient():
            caseload.page(d, "need", 0)
        case ChangingSlot():
            plan.slot_again(d, asking)
        case Ticking():
            plan.ticking_again(d, asking)
        case DealingWith():
            caseload.dealing_again(d, asking)
        case ChoosingDeputyDays(coach):
            settings.deputy(d, str(coach))
        case NamingClinician():
            plan.clinician_again(d, asking)
        case NamingTemplate(client):
            plan.template(d, str(client))
        case AskingSure(what="forget"):
            settings.forget(d, "")
        case AskingSure():
            plan.sure_again(d, asking)
        case ChangingOwn():
            settings.own_again(d, asking)
        case PlanningCohort():
            cohorts.planning_again(d, asking)
        case SureOfCohort():
            cohorts.sure_again(d, asking)
        case InvitingOrganiser():
            cohorts.invite_organiser(d, "")
        case None:
            pass
