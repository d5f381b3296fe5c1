"""Test data: a client, and a chat that applies effects to plain values, without store or transport."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, date, datetime, time, timedelta
from decimal import Decimal
from typing import Any
from zoneinfo import ZoneInfo

from core.care import Plan, Slot, Status
from core.client import Profile, Sex
from core.dialogue.client import effects as e
from core.dialogue.client.facts import ClientFacts, GoalFact, OpenFlag
from core.dialogue.client.states import FRESH, State
from core.dialogue.engines.client import step
from core.dialogue.kit.effects import Say, drawn
from core.dialogue.kit.events import Attachment, Command, Due, Event, Press, Text, TimerFired
from core.dialogue.kit.messages import Together
from core.reading import Reading

MONDAY = datetime(2026, 3, 2, 7, 30, tzinfo=UTC)  # 07:30 in London, before the clocks change
ADA = ClientFacts(
    client_id=1,
    name="Ada",
    coach_name="Rowan",
    coach_reachable=True,
    coach_nights=None,
    slot=Slot(0, time(7, 30), "Europe/London"),
    zone=ZoneInfo("Europe/London"),
    country="GB",
    profile=Profile(sex=Sex.FEMALE, birth_year=1968, stature=Decimal(165), cautions_known=True),
    plan=Plan(measures=("weight", "waist", "hip", "resting_heart_rate")),
)
ZONES = {"lisbon": ("Europe/Lisbon",), "berlin": ("Europe/Berlin",), "springfield": ()}


def find_zones(text: str) -> tuple[str, ...]:
    return ZONES.get(text.strip().casefold(), ())


class Chat:
    """One client's conversation on plain values. `said` has the messages of the last event, flattened."""

    def __init__(self, facts: ClientFacts = ADA, now: datetime = MONDAY, state: State = FRESH) -> None:
        self.facts = replace(facts, find_zones=find_zones, zone_of=ZoneInfo)
        self.now = now
        self.state = state
        self.effects: tuple[e.Effect, ...] = ()
        self.keys: dict[str, Reading] = {}
        self.everything: list[object] = []
        self.raised: list[e.Raise] = []
        self.wakes: list[e.SetTimer] = []
        self.refs = 0

    # --- what happens ---------------------------------------------------------------------------------------

    def at(self, now: datetime) -> Chat:
        self.now = now
        return self

    def later(self, **delta: float) -> Chat:
        self.now += timedelta(**delta)
        return self

    def says(self, text: str) -> Chat:
        self.refs += 1
        return self.gets(Text(self.now, text, str(self.refs)))

    def edits(self, text: str, ref: int | None = None) -> Chat:
        return self.gets(Text(self.now, text, str(ref or self.refs), edited=True))

    def presses(self, data: str) -> Chat:
        """Press a button of the question that is open now, or one that belongs to none."""
        return self.gets(Press(self.now, drawn(data, self.state.question)))

    def presses_old(self, callback: str) -> Chat:
        """Press a button of an old message."""
        return self.gets(Press(self.now, callback))

    def commands(self, name: str, argument: str = "") -> Chat:
        return self.gets(Command(self.now, name, argument))

    def sends(self, kind: str) -> Chat:
        return self.gets(Attachment(self.now, kind))

    def due(self, late: timedelta = timedelta(0)) -> Chat:
        return self.gets(Due(self.now, self.facts.local(self.now - late).date(), late))

    def wakes_up(self, purpose: str, mark: str = "") -> Chat:
        return self.gets(TimerFired(self.now, purpose, mark))

    def gets(self, event: Event) -> Chat:
        outcome = step(self.state, event, self.facts, self.now)
        self.state, self.effects = outcome.state, outcome.effects
        for effect in self.effects:
            self._apply(effect)
        self.everything.extend(self.said)
        self.raised.extend(effect for effect in self.effects if isinstance(effect, e.Raise))
        return self

    def _apply(self, effect: e.Effect) -> None:
        match effect:
            case e.Record(reading, key):
                self.keys[key] = replace(reading, key=key)
            case e.Amend(key, reading):
                self.keys[key] = replace(reading, key=key)
            case e.Retract(key):
                self.keys.pop(key, None)
            case e.ChangeClient(field, value):
                self._change_client(field, value)
            case e.Raise(flag):
                others = [f for f in self.facts.flags if (f.code, f.measure) != (flag.code, flag.measure)]
                self.facts = replace(self.facts, flags=(*others, OpenFlag(flag.code, flag.measure, flag.since)))
            case e.Lower(code, measure):
                left = tuple(f for f in self.facts.flags if (f.code, f.measure) != (code, measure))
                self.facts = replace(self.facts, flags=left)
            case e.Answered(day):
                self.facts = replace(self.facts, answered=date.fromisoformat(day), missed=0)
            case e.SetTimer():
                self.wakes.append(effect)
            case e.CancelTimer(purpose):
                self.wakes = [w for w in self.wakes if w.purpose != purpose]
            case e.SetGoal(goal):
                self.facts = replace(self.facts, goals=(goal,))
            case e.DropGoal():
                self.facts = replace(self.facts, goals=())
            case Say(said=said) if said:
                self.facts = replace(self.facts, said=self.facts.said | {said})
            case _:
                pass
        history = tuple(sorted(self.keys.values(), key=lambda r: r.taken_at))
        self.facts = replace(self.facts, history=history)

    def _change_client(self, field: str, value: Any) -> None:
        profile = {
            "birth_year",
            "sex",
            "stature",
            "background",
            "cautions",
            "medicines",
            "birth_date",
            "cautions_known",
        }
        if field in profile:
            self.facts = replace(self.facts, profile=replace(self.facts.profile, **{field: value}))
        else:
            self.facts = replace(self.facts, **{field: value})
        if field == "slot":
            self.facts = replace(self.facts, zone=ZoneInfo(value.zone_name))

    # --- what came of it ------------------------------------------------------------------------------------

    @property
    def said(self) -> list[object]:
        return [part for effect in self.effects if isinstance(effect, Say) for part in flat(effect.message)]

    @property
    def kinds(self) -> list[str]:
        return [type(message).__name__ for message in self.said]

    @property
    def choices(self) -> list[str]:
        return [
            choice.data
            for effect in self.effects
            if isinstance(effect, Say)
            for row in effect.choices
            for choice in row
        ]

    @property
    def callbacks(self) -> list[str]:
        """The data of the current buttons, as the messenger returns it."""
        says = [effect for effect in self.effects if isinstance(effect, Say)]
        return [choice.callback for say in says for row in say.choices for choice in row]

    def heard(self, kind: type) -> Any:
        """The only message of a kind among the latest."""
        found = [message for message in self.said if isinstance(message, kind)]
        assert len(found) == 1, f"{kind.__name__} not said once: {self.kinds}"
        return found[0]

    def readings(self, measure: str) -> list[Reading]:
        return [r for r in self.facts.history if r.measure == measure]

    def did(self, kind: type) -> list[Any]:
        return [effect for effect in self.effects if isinstance(effect, kind)]


def flat(message: object) -> list[object]:
    return [p for part in message.parts for p in flat(part)] if isinstance(message, Together) else [message]


def checked_in(chat: Chat) -> Chat:
    """Answer a whole check-in of ADA's plan with ordinary values."""
    chat.due().says("7")
    for _ in range(12):
        asking = chat.state.asking
        if asking is None:
            break
        measure = getattr(asking, "measure", "")
        if type(asking).__name__ == "AskingConditions":
            chat.presses("cond:same")
        else:
            chat.says(USUAL[measure])
    return chat


USUAL = {
    "energy": "7",
    "resting_heart_rate": "72",
    "weight": "82.4 kg",
    "waist": "94",
    "hip": "104",
    "sessions_done": "3",
    "activity_minutes": "120",
}

__all__ = ["ADA", "MONDAY", "Chat", "GoalFact", "Plan", "Status", "checked_in", "flat"]
