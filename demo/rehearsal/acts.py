"""From what a form of the page says to lines of a tape. Whether somebody can do it, the tape and the messenger say."""

from __future__ import annotations

import re
from collections.abc import Awaitable, Callable, Mapping

from demo.messenger import CannotDo, SeenMessage
from demo.player import buttons
from demo.rehearsal.stage import Person, Stage
from demo.tape import KINDS, OPERATOR, escaped, nth
from demo.transcript import shown

Fields = Mapping[str, str]
_COUNTED = re.compile(r"the \d+(st|nd|rd|th) ")
_BOT = ("stops", "starts", "crashes")
_MESSENGER = ("fails", "works")
_PRIVATE = ("blocks", "unblocks")
_IN_GROUP = ("joins", "leaves", "upgrades")


async def lines(act: str, fields: Fields, stage: Stage) -> tuple[str, ...]:
    """Return what a tape says for an act.

    Raises: CannotDo for an act there is not, or one that lacks something.
    """
    if act in _IN_A_CHAT:
        person = stage.find(_given(fields, "person", "somebody"))
        return (await _IN_A_CHAT[act](fields, stage, person),)
    if act in _OTHERS:
        return _OTHERS[act](fields, stage)
    raise CannotDo("the page asked for something that nobody can do")


def _given(fields: Fields, name: str, what: str) -> str:
    value = fields.get(name, "").strip()
    if not value:
        raise CannotDo(f"{what} is missing")
    return value


def _one_of(fields: Fields, name: str, known: tuple[str, ...]) -> str:
    value = fields.get(name, "")
    if value not in known:
        raise CannotDo("the page asked for something that nobody can do")
    return value


def _one_line(fields: Fields, name: str) -> str:
    """A field that a tape takes as it is: no line of its own may hide in it."""
    return " ".join(fields.get(name, "").split())


def _text(fields: Fields) -> str:
    text = fields.get("text", "").replace("\r\n", "\n").strip()
    if not text:
        raise CannotDo("there is nothing written yet")
    return escaped(text)


# --- what somebody does in a chat -----------------------------------------------------------------------------------


async def _say(fields: Fields, stage: Stage, person: Person) -> str:
    if person.is_group:
        return f"{stage.find(fields.get('speaker', '')).name} in {person.name}: {_text(fields)}"
    message = fields.get("message", "")
    if not message:
        return f"{person.name}: {_text(fields)}"
    seen = await stage.messages(person)
    if fields.get("mode") == "edit":
        own = [m for m in seen if m.sender == person.chat and m.kind == "text"]
        return f"{person.name} edits the {_last(own, message)}: {_text(fields)}"
    return f"{person.name} replies to the {_last(seen, message)}: {_text(fields)}"


def _last(seen: list[SeenMessage], message: str) -> str:
    """ "2nd last": where a message stands, counted from the newest."""
    for back, one in enumerate(reversed(seen), 1):
        if str(one.message_id) == message:
            return "last" if back == 1 else f"{nth(back)} last"
    raise CannotDo("that message is gone")


async def _press(fields: Fields, stage: Stage, person: Person) -> str:
    seen = await stage.messages(person)
    message, _, place = fields.get("button", "").partition(".")
    for one in seen:
        every = [button for row in (*one.buttons, *one.keyboard) for button in row]
        if str(one.message_id) == message and place.isdigit() and int(place) < len(every):
            label = shown(every[int(place)].label)
            for back, (where, button) in enumerate(buttons(seen, label), 1):
                if where is one and button is every[int(place)]:
                    counted = f"the {nth(back)} " if back > 1 or _COUNTED.match(label) else ""
                    return f"{person.name} presses {counted}{escaped(label)}"
    raise CannotDo("that button is gone")


async def _send(fields: Fields, stage: Stage, person: Person) -> str:
    return f"{person.name} sends {_one_of(fields, 'what', KINDS)}"


async def _private(fields: Fields, stage: Stage, person: Person) -> str:
    return f"{person.name} {_one_of(fields, 'what', _PRIVATE)}"


async def _start(fields: Fields, stage: Stage, person: Person) -> str:
    return f"{person.name} opens the bot"


async def _in_group(fields: Fields, stage: Stage, group: Person) -> str:
    who = stage.find(fields.get("speaker", "")).name
    what = fields.get("what", "")
    if what in ("adds", "removes"):
        return f"{who} {what} the bot {'to' if what == 'adds' else 'from'} {group.name}"
    return f"{who} {_one_of(fields, 'what', _IN_GROUP)} {group.name}"


async def _bring(fields: Fields, stage: Stage, person: Person) -> str:
    """Follow a link that brings the bot into a group."""
    group = stage.find(fields.get("group", ""))
    which = _which(fields, stage, person)
    return f"{person.name} adds the bot to {group.name} by {person.name}'s {which}link"


# --- newcomers, groups, faults --------------------------------------------------------------------------------------


def _which(fields: Fields, stage: Stage, holder: Person) -> str:
    """ "2nd ": which of somebody's links; "" for the newest that nobody opened."""
    number = fields.get("link", "")
    given = stage.links(holder.name)
    if not number.isdigit() or not 1 <= int(number) <= len(given):
        raise CannotDo("that link is gone")
    return "" if given[int(number) - 1] == stage.newest_unopened(holder.name) else f"{nth(int(number))} "


def _open(fields: Fields, stage: Stage) -> tuple[str, ...]:
    """Somebody opens a link that another person was given."""
    holder = stage.find(_given(fields, "person", "somebody"))
    name = _one_line(fields, "name")
    if not name:
        raise CannotDo("a name is missing: who opens the link?")
    opens = f"{name} opens {holder.name}'s {_which(fields, stage, holder)}invitation"
    return (*_account(name, fields, stage), opens)


def _account(name: str, fields: Fields, stage: Stage) -> tuple[str, ...]:
    language = _one_line(fields, "language") or "en"
    return () if name in stage.people else (f"person {name}: lang={language}",)


def _newcomer(fields: Fields, stage: Stage) -> tuple[str, ...]:
    name = _one_line(fields, "name")
    if not name:
        raise CannotDo("a name is missing")
    language = _one_line(fields, "language") or "en"
    keys = " ".join(filter(None, (f"lang={language}", _one_line(fields, "keys"))))
    match fields.get("role"):
        case "coach":
            return (f"coach {name}: {keys}",)
        case "coach_by_hand":
            return (*_account(name, fields, stage), f"{name} opens {OPERATOR}'s invitation")
        case "organiser":
            return (f"organiser {name}: {keys}",)
        case "client":
            return (f"client {name} of {stage.find(fields.get('coach', '')).name}: {keys}",)
        case _:
            return (f"person {name}: {keys}",)


def _group(fields: Fields, stage: Stage) -> tuple[str, ...]:
    members = [person.name for person in stage.people.values() if fields.get(f"member-{person.key}")]
    name = _one_line(fields, "name")
    if not name or not members:
        raise CannotDo("a group needs a name and somebody in it")
    return (f"group {name}: {' '.join(members)}",)


def _bot(fields: Fields, stage: Stage) -> tuple[str, ...]:
    return (f"bot {_one_of(fields, 'what', _BOT)}",)


def _messenger(fields: Fields, stage: Stage) -> tuple[str, ...]:
    return (f"messenger {_one_of(fields, 'what', _MESSENGER)}",)


_IN_A_CHAT: Mapping[str, Callable[[Fields, Stage, Person], Awaitable[str]]] = {
    "say": _say,
    "press": _press,
    "send": _send,
    "private": _private,
    "start": _start,
    "in_group": _in_group,
    "bring": _bring,
}
_OTHERS: Mapping[str, Callable[[Fields, Stage], tuple[str, ...]]] = {
    "open": _open,
    "newcomer": _newcomer,
    "group": _group,
    "bot": _bot,
    "messenger": _messenger,
}
