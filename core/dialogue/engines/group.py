"""Decide an event of a group chat. The group is told about the cohort as a whole; what people say in it is not stored.

    looks_like_a_reading(text, words)   the only check of a text, which is dropped before anything is stored
    needs(event)                        -> what to load
    step(event, facts)                  -> what to do

| event                                   | what happens                                                         |
|-----------------------------------------|----------------------------------------------------------------------|
| the organiser's link brings the bot     | the group is linked to the cohort, and told what it will receive     |
| "/cohort bind" by the organiser         | the same, for the only cohort without a group; else asked in private |
| the link or the command by anybody else | nothing                                                              |
| "/cohort unbind" by the organiser       | unlinked                                                             |
| the bot is removed                      | unlinked, and the organiser is notified                              |
| the group gets another id               | it stays linked                                                      |
| a number that looks like a reading      | its owner is told in private, if they talk with us; else nothing     |
| anything else                           | nothing                                                              |
"""

from __future__ import annotations

import re

from core.dialogue.commands import GROUP
from core.dialogue.group import messages as cm
from core.dialogue.kit.events import GroupEvent
from core.dialogue.organiser import groups
from core.dialogue.organiser.groups import GroupEffect, GroupFacts, GroupNeed, Move, Privately, UseLink
from core.language import Lexicon, plain
from core.measures import MEASURES
from core.measures.measure import MeasureKind, Understood
from core.understanding.answers_in_text import answers_in

# Minutes and sessions are what a group talks about; body, heart, function and mood are private.
_OWN = tuple(x for x in MEASURES.values() if x.kind not in (MeasureKind.DERIVED, MeasureKind.ACTIVITY))
_BARE = re.compile(r"[^\w]*\d{1,3}([.,]\d{1,2})?[^\w]*")


def looks_like_a_reading(text: str, words: Lexicon) -> bool:
    """Whether a text in a group chat may be an answer meant for the bot: a bare number, or a value with measure or
    unit.

    Errs towards yes: a private hint costs little.
    """
    if _BARE.fullmatch(plain(text).strip()):
        return True
    return any(
        isinstance(a.heard, Understood) and a.heard.value in MEASURES[a.measure].bounds.possible
        for a in answers_in(text, words, None, _OWN)
    )


# --- what to load, and to do ------------------------------------------------------------------------------------


def needs(event: GroupEvent) -> frozenset[GroupNeed]:
    """The facts a step needs beside the linked cohort."""
    if (row := GROUP.named(f"cohort {event.what}")) is not None:
        return row.needs
    return frozenset({GroupNeed.KNOWS}) if event.what == "number" else frozenset()


def step(event: GroupEvent, facts: GroupFacts) -> tuple[GroupEffect, ...]:
    """Decide one event of a group chat."""
    if (row := GROUP.named(f"cohort {event.what}")) is not None:
        return row.act(event, facts)
    match event.what:
        case "start" if facts.opened is not None and facts.opened.organiser == event.by:
            return (UseLink(), *groups.tie(event, facts, facts.opened))
        case "removed" if facts.tied is not None:
            return groups.lost(facts.tied)
        case "migrated" if event.other_chat:
            return (Move(event.other_chat),)
        case "number" if facts.knows:
            said = cm.NumberInGroup() if facts.knows == "client" else cm.NumberInGroupOfStaff()
            return (Privately(event.by, said, once="hour"),)
        case _:
            return ()
