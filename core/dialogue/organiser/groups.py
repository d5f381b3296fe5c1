"""Linking a group chat to a cohort: what its organiser may do there, as plain values.

Anybody can cause a group event; only the cohort's organiser is obeyed.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field
from enum import StrEnum

from core.dialogue.group import messages as cm
from core.dialogue.kit.commands import Chat, CommandRow, Who
from core.dialogue.kit.effects import Choice, Rows
from core.dialogue.kit.events import GroupEvent
from core.dialogue.kit.step import rows_of
from core.dialogue.organiser import messages as om
from core.dialogue.organiser.cohorts import LONGEST_NAME

# --- facts ------------------------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class Tied:
    """A cohort that is, or can be, linked to a group. organiser: their chat, None if they are gone."""

    cohort_id: int
    name: str
    organiser: int | None


class GroupNeed(StrEnum):
    """What to load beside the linked cohort: fields of `GroupFacts`."""

    KNOWS = "knows"
    FREE = "free"


@dataclass(frozen=True, slots=True)
class GroupFacts:
    """tied: linked to this group now. opened: the cohort whose link brought the bot, if still valid. free: the actor's
    own cohorts, not over and without a group. knows: how we know the actor: "client", "staff", or "" for a stranger.
    """

    tied: Tied | None = None
    opened: Tied | None = None
    free: tuple[Tied, ...] = ()
    knows: str = ""


# --- what to do -------------------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class Tie:
    """Link this group to a cohort and greet it."""

    cohort_id: int


@dataclass(frozen=True, slots=True)
class Untie:
    """goodbye: whether to say goodbye in the group, if we are still in it."""

    cohort_id: int
    goodbye: object | None = None


@dataclass(frozen=True, slots=True)
class Move:
    """The group has a new id."""

    to: int


@dataclass(frozen=True, slots=True)
class UseLink:
    """Redeem the link that brought the bot."""


@dataclass(frozen=True, slots=True)
class Privately:
    """Say something to one person, in their private chat. once: at most once per "hour", or ""."""

    chat: int
    message: object
    choices: Rows = ()
    once: str = ""


GroupEffect = Tie | Untie | Move | UseLink | Privately


Handler = Callable[[GroupEvent, GroupFacts], tuple[GroupEffect, ...]]


@dataclass(frozen=True, slots=True, kw_only=True)
class GroupCommand(CommandRow[Handler]):
    """needs: what to load."""

    chat: Chat = field(init=False, default=Chat.GROUP)
    who: Who = field(init=False, default=Who.ORGANISER)
    needs: frozenset[GroupNeed]


# --- commands ---------------------------------------------------------------------------------------------------


def bind(event: GroupEvent, facts: GroupFacts) -> tuple[GroupEffect, ...]:
    """Link this group to the only cohort without one; ask in private if there are several."""
    if facts.knows != "staff" or (facts.tied is not None and facts.tied.organiser == event.by):
        return ()
    if len(facts.free) == 1:
        return tie(event, facts, facts.free[0])
    if not facts.free:
        return (Privately(event.by, om.NothingToTie(), ((Choice("cohorts", "cohorts"),),)),)
    rows = rows_of(*(Choice("cohort_named", f"cogroup:{c.cohort_id}", c.name[:LONGEST_NAME]) for c in facts.free))
    return (Privately(event.by, om.TieWhich(), rows),)


def unbind(event: GroupEvent, facts: GroupFacts) -> tuple[GroupEffect, ...]:
    tied = facts.tied
    if tied is None or tied.organiser != event.by:
        return ()
    return (
        Untie(tied.cohort_id, cm.GroupGoodbye(tied.name)),
        Privately(event.by, om.GroupUntied(tied.name)),
    )


# --- what happens to a group ------------------------------------------------------------------------------------


def tie(event: GroupEvent, facts: GroupFacts, cohort: Tied) -> tuple[GroupEffect, ...]:
    """A group linked by another organiser stays theirs."""
    if facts.tied is not None and facts.tied.organiser not in (event.by, None):
        return (Privately(event.by, om.NothingToTie()),)
    told = Privately(event.by, om.GroupTied(cohort.name), ((_back_to(cohort),),))
    return (Tie(cohort.cohort_id), told)


def _back_to(cohort: Tied) -> Choice:
    return Choice("cohort_named", f"cohort:{cohort.cohort_id}", cohort.name)


def lost(cohort: Tied) -> tuple[GroupEffect, ...]:
    untied = Untie(cohort.cohort_id)
    if cohort.organiser is None:
        return (untied,)
    rows = ((Choice("group_tie", f"cogroup:{cohort.cohort_id}"), _back_to(cohort)),)
    return (untied, Privately(cohort.organiser, om.GroupLost(cohort.name), rows))
