"""Cohorts: apply an organiser's decisions, and publish what is due.

* `carry`: applies the effects of an organiser's conversation, each authorised again by `one_of_mine`.
* `sweep`: the start, the pooled figures of each check-in, milestones, and at the end the closing report. One
  transaction; every message has an occasion as idempotency key. After an outage only the newest figures are published
  and the others stored; a closing report is always sent.
* `forgotten`: ends the cohorts of an organiser who is erased.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, replace
from datetime import datetime, timedelta

from sqlalchemy import Connection

from bot.store import audit, invitations, outbox, people
from bot.store import cohorts as store
from bot.store.clients import Client
from bot.store.cohorts import Cohort
from bot.store.invitations import GOOD_FOR, InvitationKind
from bot.store.outbox import BULK, Outgoing
from bot.store.people import Staff
from bot.store.zones import zone_of
from bot.turns.apply_effects import TurnEffects
from core.care import Plan
from core.dialogue.group import messages as cm
from core.dialogue.kit.effects import Choice, Rows, Say
from core.dialogue.kit.messages import KeptAsItWas, Together
from core.dialogue.organiser import messages as om
from core.dialogue.organiser.cohorts import closing_rows
from core.dialogue.staff import cohort_effects as fx
from core.dialogue.staff.messages import LinkPicture
from core.watching import cohort as rules
from core.watching.cohort import Closing, CohortTask, CohortWeek, Counted, Participant, Task, Terms, Told

BATCH = 50
NEWCOMERS = Plan(measures=("sessions_done", "activity_minutes"))  # never weight or girth: only a coach adds those
_TICK = timedelta(microseconds=1)


@dataclass(frozen=True)
class Links:
    """Create the link for a token: for a person, and for a group chat."""

    person: Callable[[str], str]
    group: Callable[[str], str]


def actor(who: Staff) -> str:
    return f"organiser/{who.organiser_id}" if who.organiser_id is not None else f"coach/{who.coach_id}"


# --- what an organiser decided ----------------------------------------------------------------------------------


def apply(conn: Connection, who: Staff, effect: fx.CohortEffect, turn: TurnEffects, links: Links) -> None:
    """Apply one effect. Nothing happens for a cohort that is over or not this person's: the step has said so."""
    if isinstance(effect, fx.StartCohort):
        _start(conn, who, effect, turn, links)
        return
    found = store.one_of_mine(conn, who.organiser_id, effect.cohort_id)
    if found is None or found.closed:
        return
    match effect:
        case fx.MakeJoinLink():
            _join_link(conn, who, found, turn, links)
        case fx.RevokeJoinLinks():
            store.revoke_links(conn, found.id, turn.now)
        case fx.MakeGroupLink():
            _group_link(conn, who, found, turn, links)
        case fx.UntieGroup():
            _untie(conn, found, turn.now, goodbye=True)
        case fx.RemoveMember(_, client_id):
            _remove(conn, found, client_id, turn.now)
        case fx.EndCohort():
            _end(conn, found, turn)
    audit.note(conn, turn.now, actor(who), CODES[type(effect)])


CODES: dict[type, str] = {
    fx.MakeJoinLink: "invited_cohort",
    fx.RevokeJoinLinks: "revoked_cohort_links",
    fx.MakeGroupLink: "invited_group",
    fx.UntieGroup: "untied_group",
    fx.RemoveMember: "removed_member",
    fx.EndCohort: "ended_cohort",
}


def _start(conn: Connection, who: Staff, effect: fx.StartCohort, turn: TurnEffects, links: Links) -> None:
    """Create a cohort; newcomers are coached by the organiser, if they are a coach, else by the coach they named."""
    organiser = store.ensure_organiser(conn, who.person_id, who.name, turn.now)
    terms = Terms(effect.starts, effect.weeks, effect.slot, Counted(effect.counts))
    first = rules.next_job(terms, zone_of(effect.slot.zone_name), turn.now - _TICK)
    coach = None if effect.coach_id is None else people.coach(conn, effect.coach_id)
    coach_id = who.coach_id if who.coach_id is not None else None if coach is None else effect.coach_id
    closing_report = store.add(
        conn,
        turn.now,
        organiser_id=organiser,
        coach_id=coach_id,
        name=effect.name,
        terms=terms,
        language=who.language,
        next_at=None if first is None else first.at,
        most=effect.most,
    )
    audit.note(conn, turn.now, f"organiser/{organiser}", "started_cohort")
    who = replace(who, organiser_id=organiser)
    found = store.one_of_mine(conn, organiser, closing_report)
    assert found is not None
    _join_link(conn, who, found, turn, links)
    if coach is not None and who.coach_id is None:
        told = Outgoing(coach.chat_id, om.NamedAsCoach(effect.name, who.name), turn.now, person_id=coach.person_id)
        outbox.put(conn, [told], turn.now)


def _join_link(conn: Connection, who: Staff, c: Cohort, turn: TurnEffects, links: Links) -> None:
    """Create a link with many uses, valid to the end of half-time; the text first, so that it can be forwarded."""
    until = c.terms.joining_ends(c.zone)
    if until <= turn.now:
        turn.say(Say(om.JoiningOver(c.name, c.terms.half_time)))
        return
    token = invitations.make(
        conn,
        InvitationKind.COHORT,
        turn.now,
        by_name=who.name,
        coach_id=c.coach_id,
        plan=NEWCOMERS,
        cohort_id=c.id,
        uses=c.most,
        good_for=until - turn.now,
    )
    link = links.person(token)
    turn.say(Say(om.JoinLink(c.name, link, c.terms.half_time, c.coach_id is not None, c.most), _after_link(c)))
    turn.say(Say(LinkPicture(link, c.name)))


def _after_link(c: Cohort) -> Rows:
    return ((Choice("group_tie", f"cogroup:{c.id}"), Choice("cohort_named", f"cohort:{c.id}", c.name)),)


def _group_link(conn: Connection, who: Staff, c: Cohort, turn: TurnEffects, links: Links) -> None:
    token = invitations.make(conn, InvitationKind.GROUP, turn.now, by_name=who.name, cohort_id=c.id)
    until = (turn.now + GOOD_FOR).astimezone(c.zone).date()
    turn.say(Say(om.GroupLink(c.name, links.group(token), until)))


def _remove(conn: Connection, c: Cohort, client_id: int, now: datetime) -> None:
    member = next((m for m in store.current_members(conn, c.id) if m.client_id == client_id), None)
    if store.leave(conn, client_id, now, c.id) and member is not None:
        outbox.put(conn, [_to(member, cm.TakenOutOfCohort(c.name, c.organiser_name), now)], now)


def answered(conn: Connection, client: Client, cohort_id: int, turn: TurnEffects, *, yes: bool) -> None:
    """A coach said whether a client of theirs may be counted in a cohort. It is asked and answered once."""
    c = store.find(conn, [cohort_id]).get(cohort_id)
    if c is None or c.closed or not store.waits(conn, cohort_id, client.id):
        turn.say(Say(KeptAsItWas()))
        return
    if yes:
        store.agree(conn, cohort_id, client.id, turn.now)
        turn.say(Say(om.CountsInCohort(c.name, client.name)))
        return
    store.leave(conn, client.id, turn.now, cohort_id)
    turn.say(Say(om.MemberRemoved(c.name, client.name)))
    told = []
    if client.chat_id is not None:
        told.append(Outgoing(client.chat_id, cm.NotInCohort(c.name), turn.now, person_id=client.person_id))
    if c.organiser_chat is not None:
        said = om.CoachSaidNo(c.name, client.name)
        told.append(Outgoing(c.organiser_chat, said, turn.now, person_id=c.organiser_person, about=client.id))
    outbox.put(conn, told, turn.now)


def _to(member: store.Member, message: object, now: datetime, occasion: str | None = None) -> Outgoing:
    return Outgoing(member.chat_id, message, now, person_id=member.person_id, occasion=occasion, priority=BULK)


def _end(conn: Connection, c: Cohort, turn: TurnEffects) -> None:
    """Cancel it if it has not started; else close it now, with what there is."""
    if turn.now.astimezone(c.zone).date() < c.terms.first:
        _call_off(conn, c, turn.now)
    else:
        _close(conn, c, turn.now)


def _call_off(conn: Connection, c: Cohort, now: datetime) -> None:
    told = [
        _to(m, cm.CohortOff(c.name), now, f"cohort/{c.id}/off/{m.client_id}") for m in store.current_members(conn, c.id)
    ]
    outbox.put(conn, told, now)
    _untie(conn, c, now, goodbye=True)
    store.close(conn, c.id, now, None)


def end_all(conn: Connection, organiser_id: int, now: datetime) -> None:
    """End the cohorts of an organiser who is being erased: members are told, and everything is deleted."""
    for c in store.run_by(conn, organiser_id):
        if not c.closed:
            _call_off(conn, c, now)
        store.drop(conn, c.id)


# --- the group chat ---------------------------------------------------------------------------------------------


def to_group(conn: Connection, c: Cohort, message: object, now: datetime, occasion: str | None = None) -> None:
    """Say something in a cohort's group chat, if it has one."""
    chat = store.group_of(conn, c.id)
    if chat is not None:
        said = Outgoing(chat, message, now, occasion=occasion, is_group=True, language=c.language, priority=BULK)
        outbox.put(conn, [said], now)


def _untie(conn: Connection, c: Cohort, now: datetime, *, goodbye: bool) -> None:
    if goodbye:
        to_group(conn, c, cm.GroupGoodbye(c.name), now)
    store.untie(conn, c.id)


# --- what comes due ---------------------------------------------------------------------------------------------


def sweep(conn: Connection, now: datetime, limit: int = BATCH) -> int:
    """Run due tasks for up to `limit` cohorts; return how many were due. The caller owns the transaction."""
    found = store.due(conn, now, limit)
    for c in found:
        assert c.next_at is not None
        come = rules.jobs_due(c.terms, c.zone, c.next_at, now)
        coming = rules.next_job(c.terms, c.zone, now)
        store.set_next(conn, c.id, None if coming is None else coming.at)
        _run_tasks(conn, c, come, now)
    return len(found)


def _run_tasks(conn: Connection, c: Cohort, come: Sequence[CohortTask], now: datetime) -> None:
    """Run due tasks. Several are due only after an outage: all figures are stored, and only the newest published."""
    if any(job.task is Task.START for job in come) and len(come) == 1:
        to_group(conn, c, cm.GroupStarts(c.name, c.terms.weeks), now, f"cohort/{c.id}/start")
    numbers = [job.number for job in come if job.task is not Task.START]
    if not numbers:
        return
    everybody = store.participants(conn, c)
    told = store.told_beside(conn, c.id, everybody)
    for number in numbers:
        _publish(conn, c, everybody, told, number, now, aloud=number == numbers[-1])
    if come[-1].task is Task.CLOSE:
        _close(conn, c, now, everybody, told)


def _publish(
    conn: Connection,
    c: Cohort,
    everybody: Iterable[Participant],
    told: Told,
    number: int,
    now: datetime,
    *,
    aloud: bool,
) -> None:
    """Store one check-in's figures, and tell the group what it may know of them."""
    before = store.weeks(conn, [c.id]).get(c.id, ())
    week = rules.week(c.terms, everybody, number, told)
    store.publish(conn, c.id, week, now)
    store.record(conn, c.id, told)
    sum_ = rules.total_so_far(c.terms.counts, (*before, week), told)
    said: list[object] = []
    if aloud and (week.kept_aloud is not None or week.total is not None):
        whole = sum_ if sum_.total else None
        aloud_week = replace(week, asked=None, kept=week.kept_aloud)
        said.append(cm.GroupWeek(aloud_week, c.terms.weeks, c.terms.counts.value, whole))
    reached = rules.milestone(c.terms.counts, rules.together(before), sum_.total or 0)
    if reached is not None:
        said.append(cm.GroupMilestone(c.terms.counts.value, reached))
    if said:
        message = said[0] if len(said) == 1 else Together(tuple(said))
        to_group(conn, c, message, now, f"cohort/{c.id}/week/{number}")


def _close(
    conn: Connection,
    c: Cohort,
    now: datetime,
    everybody: Sequence[Participant] | None = None,
    told: Told | None = None,
) -> None:
    """Create and store the report, and send the organiser, the members and the group their parts."""
    everybody = store.participants(conn, c) if everybody is None else everybody
    told = store.told_beside(conn, c.id, everybody) if told is None else told
    _publish_the_rest(conn, c, everybody, told, now)
    report = closing_report(conn, c, everybody, told)
    store.record(conn, c.id, told)
    store.close(conn, c.id, now, report)
    occasion = f"cohort/{c.id}/closing"
    if c.organiser_chat is not None:
        words = Outgoing(c.organiser_chat, om.ClosingSaid(report), now, person_id=c.organiser_person, occasion=occasion)
        picture = replace(
            words, message=om.ClosingPicture(report), choices=closing_rows(c.id), occasion=f"{occasion}/picture"
        )
        outbox.put(conn, [words, picture], now)
    own = {p.client_id: rules.own_check_ins(c.terms, p) for p in everybody}
    parts = [
        _to(m, cm.CohortOver(c.name, *own.get(m.client_id, (0, 0))), now, f"{occasion}/{m.client_id}")
        for m in store.current_members(conn, c.id)
    ]
    outbox.put(conn, parts, now)
    to_group(conn, c, cm.GroupClosing(rules.for_the_group(report)), now, f"{occasion}/group")
    store.untie(conn, c.id)


def _publish_the_rest(conn: Connection, c: Cohort, everybody: Sequence[Participant], told: Told, now: datetime) -> None:
    """Ended early: check-ins that have passed but were not published yet are included in the report."""
    before = {w.number for w in store.weeks(conn, [c.id]).get(c.id, ())}
    today = now.astimezone(c.zone).date()
    for number in range(c.terms.weeks + 1):
        if number not in before and c.terms.check_in(number) <= today:
            store.publish(conn, c.id, rules.week(c.terms, everybody, number, told), now)
            store.record(conn, c.id, told)


def closing_report(conn: Connection, c: Cohort, everybody: Sequence[Participant], told: Told) -> Closing:
    """The report; with every measure only for an organiser who coaches everybody in it."""
    measures = rules.EVERY_MEASURE if store.coached_by_all(conn, c) else rules.ENERGY_ONLY
    shown: tuple[CohortWeek, ...] = store.weeks(conn, [c.id]).get(c.id, ())
    return rules.closing(c.name, c.terms, everybody, shown, told, measures)


def next_at(conn: Connection) -> datetime | None:
    """When the next task is due, perhaps in the past; None if never."""
    return store.next_at(conn)
