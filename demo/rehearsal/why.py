"""What the engine knows of somebody, and why it answered as it did.

The core decides by pure functions, so an answer can be worked out a second time, beside the bot, from what it knew when
it heard the words: which rule read them, what was decided, and which published reference stands behind it.
"""

from __future__ import annotations

import dataclasses
import inspect
from dataclasses import dataclass
from datetime import datetime
from decimal import Decimal
from enum import Enum
from functools import cached_property
from typing import Any
from zoneinfo import ZoneInfo

from sqlalchemy import Connection

from bot.foundation.config import Settings
from bot.process import wiring
from bot.rendering.phrases.sources import all_sources
from bot.store import caseload, codec, facts
from bot.store.facts import History, Known
from bot.turns.turn import Decided, Steps, client_facts
from core import sources
from core.care import Plan
from core.dialogue.client import answers, buttons
from core.dialogue.client.facts import OpenFlag
from core.dialogue.client.states import State
from core.dialogue.client.step import ClientStep
from core.dialogue.engines.client import step as client_step
from core.dialogue.engines.staff import needs as staff_needs
from core.dialogue.kit.effects import Say
from core.dialogue.kit.events import Command, Event, Press, Text
from core.dialogue.kit.messages import Together
from core.dialogue.staff.states import FRESH_STAFF, StaffState
from core.language import words_for
from core.language.danger_signs import recognise
from core.language.intents import intent_of
from core.measures import MEASURES
from core.measures.measure import MeasureKind, Misunderstood, Understood
from core.reading import How, Reading
from core.watching.flags import RULES, Code
from demo import tape as t
from demo.messenger import SeenMessage
from demo.player import buttons as buttons_called

NOTHING = "nothing"
EACH_WEEK = (MeasureKind.RATING, MeasureKind.ACTIVITY)
SEEN = {
    sources.Seen.READ: "read in the source",
    sources.Seen.SECOND_HAND: "read second-hand",
    sources.Seen.MEMORY: "from memory",
    sources.Seen.DERIVED: "worked out from other figures",
    sources.Seen.COMMON_PRACTICE: "common practice",
    sources.Seen.OURS: "our own choice",
}


@dataclass(frozen=True, slots=True)
class Heard:
    """What somebody wrote or pressed, and what the store knew of them when the bot heard it.

    history: of a client.  decided: for a coach or an organiser, at once, since it rests on their caseload as it was.
    """

    name: str
    event: Event
    at: datetime
    known: Known
    history: History | None = None
    decided: Decided | None = None


@dataclass(frozen=True, slots=True)
class Row:
    """A line of an explanation. note: what it means, in words."""

    name: str
    value: str
    note: str = ""


@dataclass(frozen=True, slots=True)
class Reference:
    cite: str
    population: str
    seen: str


@dataclass(frozen=True, slots=True)
class Explanation:
    """Why the last answer was given. rules: in the order they are tried; decided: what came of it."""

    heard: str
    question: str
    rules: tuple[Row, ...]
    decided: tuple[Row, ...]
    references: tuple[Reference, ...]


@dataclass(frozen=True, slots=True)
class Knows:
    """What the engine knows of somebody. flags: open ones. readings: the newest of each measure."""

    facts: tuple[Row, ...]
    plan: tuple[Row, ...] = ()
    flags: tuple[Row, ...] = ()
    readings: tuple[Row, ...] = ()
    why: Explanation | None = None


class Reasons:
    """Explains, with the look-ups the bot lends its engine."""

    @cached_property
    def _steps(self) -> Steps:
        return wiring.steps(Settings(), str)

    # --- what is about to be heard --------------------------------------------------------------------------------

    def event(self, step: t.TapeStep, seen: list[SeenMessage], now: datetime) -> Event | None:
        """Return the event the bot will make of a step."""
        match step:
            case t.Says(_, _, text) | t.Replies(_, _, text) if text.startswith("/"):
                name, _, argument = text[1:].partition(" ")
                return Command(now, name.partition("@")[0].lower(), argument.strip())
            case t.Says(_, _, text) | t.Replies(_, _, text):
                return Text(now, text)
            case t.Edits(_, name, text, back):
                own = [m for m in seen if not m.from_bot and m.kind == "text"]
                return Text(now, text, str(own[-1 - back].message_id), edited=True) if len(own) > back else None
            case t.Presses(_, _, label, back):
                found = buttons_called(seen, label)
                if len(found) <= back:
                    return None
                message, button = found[back]
                return Press(now, button.data, str(message.message_id)) if button.data is not None else None
            case _:
                return None

    def heard(self, conn: Connection, name: str, chat: int, event: Event, now: datetime) -> Heard | None:
        """Return what is about to be heard, with what the store knows of whoever said it; None for a stranger."""
        known = facts.who(conn, [chat]).get(chat)
        if known is None:
            return None
        if known.client is not None:
            return Heard(name, event, now, known, history=facts.histories(conn, [known.client], now)[known.client.id])
        if known.staff is not None and self._steps.staff is not None:
            decided = self._steps.staff.step(conn, known.staff, _staff_state(known), event, now)
            return Heard(name, event, now, known, decided=decided)
        return None

    # --- what is known --------------------------------------------------------------------------------------------

    def knows(self, conn: Connection, chat: int, heard: Heard | None, now: datetime) -> Knows:
        """Return what the store knows of a private chat now, and why the last answer was given."""
        known = facts.who(conn, [chat]).get(chat)
        if known is None:
            return Knows((Row("Person", NOTHING, "whoever writes without an invitation gets one fixed answer"),))
        if known.staff is not None:
            return self._of_staff(conn, known, heard, now)
        if known.client is None:
            return Knows((Row("Person", NOTHING),))
        history = facts.histories(conn, [known.client], now)[known.client.id]
        client, zone = known.client, ZoneInfo(known.client.slot.zone_name) if known.client.slot else None
        due = client.next_due_at
        rows = [
            Row("Status", client.status.value + ("" if client.consented else ", has not agreed yet")),
            Row("Open question", _open(codec.load_state(known.state))),
            Row("Coach", known.coach.name if known.coach else "none"),
            Row("Language, units", f"{client.language}, {client.units.mass.value} and {client.units.length.value}"),
            Row("Next check-in", f"{due.astimezone(zone):%a %d %b %Y, %H:%M}" if due is not None else "none"),
            Row("Check-ins missed in a row", str(client.missed)),
        ]
        rows += [Row(f"Goal: {_named(goal.measure)}", f"{goal.target} by {goal.by:%d %b %Y}") for goal in history.goals]
        rows += [Row("Group", f"{one.name}, until {one.last:%d %b %Y}") for one in history.cohorts]
        return Knows(
            tuple(rows),
            plan=_plan(client.plan),
            flags=tuple(_flag(flag) for flag in history.flags),
            readings=_newest(history.readings, zone),
            why=None if heard is None else self._why(heard),
        )

    def _of_staff(self, conn: Connection, known: Known, heard: Heard | None, now: datetime) -> Knows:
        staff = known.staff
        assert staff is not None
        rows = [Row("Open question", _described(codec.loads(known.state)) if known.state else NOTHING)]
        flags: list[Row] = []
        if staff.coach_id is not None:
            mine = caseload.everybody(conn, staff.coach_id)
            of_each = facts.histories(conn, mine, now)
            rows.append(Row("Clients", str(len(mine))))
            for client in mine:
                history = of_each.get(client.id, History())
                flags += [
                    dataclasses.replace(row, name=f"{client.name}: {row.name}") for row in map(_flag, history.flags)
                ]
        return Knows(tuple(rows), flags=tuple(flags), why=None if heard is None else self._why(heard))

    # --- why ------------------------------------------------------------------------------------------------------

    def _why(self, heard: Heard) -> Explanation | None:
        if heard.decided is not None:
            return _why_for_staff(heard, heard.decided)
        if heard.known.client is None or heard.history is None:
            return None
        state = codec.load_state(heard.known.state)
        known = client_facts(self._steps, heard.known, heard.history)
        outcome = client_step(state, heard.event, known, heard.at)
        said, others = _said(outcome)
        return Explanation(
            heard=_in_words(heard.event),
            question=_open(state),
            rules=tuple(_rules(heard.event, ClientStep(state, known, heard.at))),
            decided=tuple(_row(thing) for thing in (*others, *said)),
            references=_references(said, outcome.state),
        )


def _said(outcome: Decided) -> tuple[list[object], list[object]]:
    """What a step says, message by message, and what else it does."""
    said = [
        part
        for effect in outcome.effects
        if isinstance(effect, Say)
        for part in (effect.message.parts if isinstance(effect.message, Together) else (effect.message,))
    ]
    return said, [effect for effect in outcome.effects if not isinstance(effect, Say)]


def _staff_state(known: Known) -> object | None:
    return codec.loads(known.state) if known.state else None


def _why_for_staff(heard: Heard, outcome: Decided) -> Explanation:
    stored = _staff_state(heard.known)
    state = stored if isinstance(stored, StaffState) else FRESH_STAFF
    staff = heard.known.staff
    assert staff is not None
    said, others = _said(outcome)
    rules = [Row("Looked up", _described(need)) for need in staff_needs(state, heard.event, staff.language)]
    if isinstance(heard.event, Text):
        intent = intent_of(heard.event.text, words_for(staff.language))
        rules.append(Row("An intent", NOTHING if intent is None else intent.value))
    return Explanation(
        heard=_in_words(heard.event),
        question=NOTHING if state.asking is None else _described(state.asking),
        rules=tuple(rules),
        decided=tuple(_row(thing) for thing in (*others, *said)),
        references=(),
    )


def _rules(event: Event, d: ClientStep) -> list[Row]:
    """The rules that read an event, in the order the engine tries them, each with what it found."""
    match event:
        case Text(text=text):
            pass
        case Press(data=data):
            return [Row("Button", data, "what the button carries; checked against the open question")]
        case Command(name=name, argument=argument):
            return [Row("Command", f"/{name} {argument}".strip())]
        case _:
            return []
    alarm = recognise(text, d.words)
    typed = buttons.typed(d, text)
    intent = intent_of(text, d.words)
    asked = buttons.asked_measure(d)
    rows = [
        Row("Words that call for help", NOTHING if alarm is None else f"{alarm.sign} ({alarm.level.value})"),
        Row("Words of an open button", NOTHING if typed is None else typed),
        Row("An intent", NOTHING if intent is None else intent.value),
    ]
    found = answers.readings_in(d, text, asked)
    if not found:
        rows.append(Row("Numbers", NOTHING))
    for answer in found:
        if isinstance(answer.heard, Understood):
            rows.append(Row(f"Number for {_named(answer.measure)}", _amount(answer.heard), _how_read(answer.heard)))
        elif isinstance(answer.heard, Misunderstood):
            rows.append(Row(f"Number for {_named(answer.measure)}", "not understood", answer.heard.why.value))
    return rows


def _amount(heard: Understood) -> str:
    second = "" if heard.second is None else f" / {_plain(heard.second)}"
    return f"{_plain(heard.value)}{second}, typed in {heard.unit.value}"


def _how_read(heard: Understood) -> str:
    notes = ["the unit was typed" if heard.said_unit else "the unit is the one this person uses"]
    if heard.attempts > 1:
        notes.append(f"the mean of {heard.attempts} numbers")
    if heard.window is not None:
        notes.append(f"counted for {heard.window} s")
    if heard.hedged:
        notes.append("said with a doubt")
    return ", ".join(notes)


def _references(said: list[object], state: State) -> tuple[Reference, ...]:
    keys: dict[str, None] = {}
    for message in said:
        for name in ("source", "sources"):
            value = getattr(message, name, ())
            keys |= dict.fromkeys((value,) if isinstance(value, str) else value)
    if not keys and said:
        return ()
    for key in state.sources if keys else ():
        keys.setdefault(key)
    every = all_sources()
    return tuple(
        Reference(every[key].cite, every[key].population, SEEN[every[key].seen]) for key in keys if key in every
    )


# --- into words ---------------------------------------------------------------------------------------------------


def _open(state: State) -> str:
    return NOTHING if state.asking is None else _described(state.asking)


def _in_words(event: Event) -> str:
    match event:
        case Text(text=text, edited=edited):
            return f"{text} (edited)" if edited else text
        case Press(data=data):
            return f"a button: {data}"
        case Command(name=name, argument=argument):
            return f"/{name} {argument}".strip()
        case _:
            return type(event).__name__


def _row(thing: object) -> Row:
    """A decision: its name, what it holds, and what it is for, as its own description says."""
    kind = type(thing)
    about = (inspect.getdoc(kind) or "").split("\n\n")[0].replace("\n", " ")
    if about.startswith(f"{kind.__name__}("):  # what a dataclass says when nobody described it
        about = ""
    return Row(kind.__name__, _fields(thing), about)


def _described(thing: object) -> str:
    fields = _fields(thing)
    return f"{type(thing).__name__} ({fields})" if fields else type(thing).__name__


def _fields(thing: object) -> str:
    if not dataclasses.is_dataclass(thing):
        return _plain(thing)
    parts = []
    for field in dataclasses.fields(thing):
        value = getattr(thing, field.name)
        if value == field.default or value in ((), "", None, frozenset()):
            continue
        parts.append(f"{field.name} {_plain(value)}")
    return ", ".join(parts)


def _plain(value: Any) -> str:
    match value:
        case Enum():
            return str(value.value)
        case Decimal():
            return f"{value.normalize():f}"
        case datetime():
            return f"{value:%d %b %H:%M} UTC"
        case tuple() | frozenset():
            return "; ".join(_plain(one) for one in value)
        case _ if dataclasses.is_dataclass(value):
            return _described(value)
        case _:
            return str(value)


def _named(measure: str) -> str:
    return measure.replace("_", " ")


def _plan(plan: Plan) -> tuple[Row, ...]:
    rows = [
        Row(_named(key), "at each check-in" if MEASURES[key].kind in EACH_WEEK else f"every {plan.interval(key)} days")
        for key in plan.measures
        if key in MEASURES
    ]
    if plan.own_question:
        rows.append(Row("own question", plan.own_question))
    rows.append(Row("own numbers", "shown" if plan.numbers.value == "shown" else "only to the coach"))
    if plan.directed_weighing:
        rows.append(Row("weighing", "a clinician asked for it often: the guard is off"))
    if plan.loss_is_planned:
        rows.append(Row("losing weight", "agreed with the coach"))
    return tuple(rows)


def _flag(flag: OpenFlag) -> Row:
    try:
        rule = RULES[Code(flag.code)]
    except (ValueError, KeyError):
        return Row(_named(flag.code), "")
    about = f" ({_named(flag.measure)})" if flag.measure else ""
    since = f"since {flag.since:%d %b}"
    return Row(f"{_named(flag.code)}{about}", f"{_named(rule.severity.value)}, {since}", rule.when)


def _newest(readings: tuple[Reading, ...], zone: ZoneInfo | None) -> tuple[Row, ...]:
    newest: dict[tuple[str, bool], Reading] = {}
    for reading in readings:
        newest[reading.measure, reading.counts] = reading
    rows = []
    for (measure, counts), reading in newest.items():
        unit = MEASURES[measure].unit.value if measure in MEASURES else ""
        second = "" if reading.second is None else f"/{_plain(reading.second)}"
        note = "" if counts else "too early: stored, never scored, charted or compared"
        at = f"{reading.taken_at.astimezone(zone):%d %b}"
        how = "" if reading.how in (How.ASKED, How.EARLY) else f", {reading.how.value}"
        rows.append(Row(_named(measure), f"{_plain(reading.value)}{second} {unit}, {at}{how}", note))
    return tuple(rows)
