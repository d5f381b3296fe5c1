"""What happens in a group chat, decided. The group hears of a cohort as a whole; what people say in it is nobody's
business.

    looks_like_a_reading(text, words)   all that is asked of a text; the text itself is dropped before it is kept
    step(event, facts)                  -> what to do

| event                                   | what happens                                                          |
|-----------------------------------------|-----------------------------------------------------------------------|
| the organiser's link brings the bot     | the group is tied to the cohort, and hears what it will hear          |
| "/cohort bind" by the organiser         | the same, for the one cohort without a group; else asked in private   |
| the link or the command by anybody else | nothing                                                               |
| "/cohort unbind" by the organiser       | untied                                                                |
| the bot is taken out                    | untied, and the organiser is told                                     |
| the group gets another id               | it stays tied                                                         |
| a number that looks like a reading      | its owner is told in private, if they talk with us; else nothing      |
| anything else                           | nothing                                                               |
"""

from __future__ import annotations

import re
from dataclasses import dataclass

from core.dialogue.group import messages as cm
from core.dialogue.kit.effects import Choice, Rows
from core.dialogue.kit.events import GroupEvent
from core.dialogue.kit.step import rows_of
from core.dialogue.organiser import messages as om
from core.dialogue.organiser.cohorts import LONGEST_NAME
from core.language import Lexicon, plain
from core.measures import MEASURES
from core.measures.measure import MeasureKind, Understood
from core.understanding.answers_in_text import hear

# Minutes and sessions are what a group talks about; body, heart, function and feeling are somebody's own.
_OWN = tuple(x for x in MEASURES.values() if x.kind not in (MeasureKind.DERIVED, MeasureKind.ACTIVITY))
_BARE = re.compile(r"[^\w]*\d{1,3}([.,]\d{1,2})?[^\w]*")


def looks_like_a_reading(text: str, words: Lexicon) -> bool:
    """Whether a text of a group chat may be an answer meant for us: a bare number, or a value with its measure or unit.

    Errs to yes: a kind word in private costs little.
    """
    if _BARE.fullmatch(plain(text).strip()):
        return True
    return any(
        isinstance(a.heard, Understood) and a.heard.value in MEASURES[a.measure].bounds.possible
        for a in hear(text, words, None, _OWN)
    )


# --- facts ------------------------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class Tied:
    """A cohort that is, or can be, tied to a group. organiser: the chat of who runs it, None when they are gone."""

    cohort_id: int
    name: str
    organiser: int | None


@dataclass(frozen=True, slots=True)
class GroupFacts:
    """tied: to this group now.  opened: whose link brought the bot, if it is still good.
    free: cohorts that whoever did it runs, not over and without a group.
    knows: whether whoever did it has a chat with us, as "client" or "staff"; "" for a stranger.
    """

    tied: Tied | None = None
    opened: Tied | None = None
    free: tuple[Tied, ...] = ()
    knows: str = ""


# --- what to do -------------------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class Tie:
    """Tie this group to a cohort; it says hello."""

    cohort_id: int


@dataclass(frozen=True, slots=True)
class Untie:
    """goodbye: said in the group, if we are still in it."""

    cohort_id: int
    goodbye: object | None = None


@dataclass(frozen=True, slots=True)
class Move:
    """The group has another id."""

    to: int


@dataclass(frozen=True, slots=True)
class UseLink:
    """The link that brought the bot is used up."""


@dataclass(frozen=True, slots=True)
class Privately:
    """Say something to one person, in their own chat with us. once: a word for how often, "hour" or ""."""

    chat: int
    message: object
    choices: Rows = ()
    once: str = ""


GroupEffect = Tie | Untie | Move | UseLink | Privately


def step(event: GroupEvent, facts: GroupFacts) -> tuple[GroupEffect, ...]:
    """Decide one event of a group chat."""
    match event.what:
        case "start" if facts.opened is not None and facts.opened.organiser == event.by:
            return (UseLink(), *_tie(event, facts, facts.opened))
        case "bind":
            return _bind(event, facts)
        case "unbind" if facts.tied is not None and facts.tied.organiser == event.by:
            return (
                Untie(facts.tied.cohort_id, cm.GroupGoodbye(facts.tied.name)),
                Privately(event.by, om.GroupUntied(facts.tied.name)),
            )
        case "removed" if facts.tied is not None:
            return _lost(facts.tied)
        case "migrated" if event.other_chat:
            return (Move(event.other_chat),)
        case "number" if facts.knows:
            said = cm.NumberInGroup() if facts.knows == "client" else cm.NumberInGroupOfStaff()
            return (Privately(event.by, said, once="hour"),)
        case _:
            return ()


def _bind(event: GroupEvent, facts: GroupFacts) -> tuple[GroupEffect, ...]:
    if facts.knows != "staff" or (facts.tied is not None and facts.tied.organiser == event.by):
        return ()
    if len(facts.free) == 1:
        return _tie(event, facts, facts.free[0])
    if not facts.free:
        return (Privately(event.by, om.NothingToTie(), ((Choice("cohorts", "cohorts"),),)),)
    rows = rows_of(*(Choice("cohort_named", f"cogroup:{c.cohort_id}", c.name[:LONGEST_NAME]) for c in facts.free))
    return (Privately(event.by, om.TieWhich(), rows),)


def _tie(event: GroupEvent, facts: GroupFacts, cohort: Tied) -> tuple[GroupEffect, ...]:
    """A group that another organiser has tied stays theirs."""
    if facts.tied is not None and facts.tied.organiser not in (event.by, None):
        return (Privately(event.by, om.NothingToTie()),)
    told = Privately(event.by, om.GroupTied(cohort.name), ((_back_to(cohort),),))
    return (Tie(cohort.cohort_id), told)


def _back_to(cohort: Tied) -> Choice:
    return Choice("cohort_named", f"cohort:{cohort.cohort_id}", cohort.name)


def _lost(cohort: Tied) -> tuple[GroupEffect, ...]:
    untied = Untie(cohort.cohort_id)
    if cohort.organiser is None:
        return (untied,)
    rows = ((Choice("group_tie", f"cogroup:{cohort.cohort_id}"), _back_to(cohort)),)
    return (untied, Privately(cohort.organiser, om.GroupLost(cohort.name), rows))
