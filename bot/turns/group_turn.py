"""A turn of a group chat: load the facts, and apply the decision of `core.dialogue.engines.group`.

Text of a group never arrives here: `bot.transports.telegram_in` drops it. Private messages go only to that person's own
chat; somebody without a chat with us is told nothing, in private or in the group.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from sqlalchemy import Connection

from bot.store import audit, invitations, outbox, people
from bot.store import cohorts as store
from bot.store.cohorts import Cohort
from bot.store.invitations import Invitation, InvitationKind
from bot.store.outbox import Outgoing
from bot.turns import cohorts
from core.dialogue.engines import group
from core.dialogue.group import messages as cm
from core.dialogue.kit.events import Event, GroupEvent
from core.dialogue.organiser import groups
from core.dialogue.organiser.groups import GroupFacts, GroupNeed, Tied


@dataclass(frozen=True)
class GroupTurn:
    """Plugged into `bot.turns.turn.Steps`."""

    def step(self, conn: Connection, chat_id: int, event: Event, now: datetime) -> bool:
        """Decide and apply one event; return whether it concerned us. If not, nothing of it needs to be stored."""
        if not isinstance(event, GroupEvent):
            return False
        opened = _opened(conn, event, now)
        facts = _facts(conn, chat_id, event, opened)
        effects = group.step(event, facts)
        for effect in effects:
            _apply(conn, chat_id, event, effect, opened, now)
        return bool(effects) or facts.tied is not None


def _opened(conn: Connection, event: GroupEvent, now: datetime) -> Invitation | None:
    if event.what != "start" or not event.text:
        return None
    found = invitations.find(conn, [event.text], now).get(event.text)
    return found if found is not None and found.kind is InvitationKind.GROUP else None


def _facts(conn: Connection, chat_id: int, event: GroupEvent, opened: Invitation | None) -> GroupFacts:
    tied = store.tied_to(conn, chat_id)
    by_link = None
    if opened is not None and opened.cohort_id is not None:
        by_link = store.find(conn, [opened.cohort_id]).get(opened.cohort_id)
    knows = ""
    free: tuple[Tied, ...] = ()
    needs = group.needs(event) if event.by else frozenset()
    if GroupNeed.KNOWS in needs:
        who = people.staff(conn, event.by)
        if who is not None:
            knows = "staff"
            if GroupNeed.FREE in needs and who.organiser_id is not None:
                free = tuple(_tied(c) for c in store.free_of(conn, who.organiser_id))
        elif people.person_of(conn, event.by) is not None:
            knows = "client"
    return GroupFacts(
        None if tied is None else _tied(tied),
        None if by_link is None or by_link.closed else _tied(by_link),
        free,
        knows,
    )


def _tied(c: Cohort) -> Tied:
    return Tied(c.id, c.name, c.organiser_chat)


def _apply(
    conn: Connection,
    chat_id: int,
    event: GroupEvent,
    effect: groups.GroupEffect,
    opened: Invitation | None,
    now: datetime,
) -> None:
    match effect:
        case groups.UseLink():
            if opened is not None:
                invitations.use(conn, opened, now)
        case groups.Tie(cohort_id):
            _tie(conn, chat_id, cohort_id, now)
        case groups.Untie(cohort_id, goodbye):
            c = store.find(conn, [cohort_id]).get(cohort_id)
            if c is not None and goodbye is not None:
                cohorts.to_group(conn, c, goodbye, now)
            store.untie(conn, cohort_id)
            audit.note(conn, now, "group", "untied")
        case groups.Move(to):
            outbox.move_chat(conn, chat_id, to)
            store.move_group(conn, chat_id, to)
        case groups.Privately():
            _privately(conn, chat_id, event, effect, now)


def _tie(conn: Connection, chat_id: int, cohort_id: int, now: datetime) -> None:
    c = store.find(conn, [cohort_id]).get(cohort_id)
    if c is None or c.closed:
        return
    store.tie(conn, c.id, chat_id, c.language, now)
    audit.note(conn, now, f"organiser/{c.organiser_id}", "tied_group")
    cohorts.to_group(conn, c, cm.GroupHello(c.name, c.terms.first, c.terms.weeks), now)


def _privately(conn: Connection, chat_id: int, event: GroupEvent, effect: groups.Privately, now: datetime) -> None:
    """Send to a person's own private chat, and nowhere else."""
    person = people.person_of(conn, effect.chat)
    if person is None:
        return
    occasion = f"group/{chat_id}/{effect.chat}/{event.at:%Y-%m-%dT%H}" if effect.once else None
    told = Outgoing(effect.chat, effect.message, now, effect.choices, person, occasion)
    outbox.put(conn, [told], now)
