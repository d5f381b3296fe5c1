"""A coach's chat on plain values, without store or transport: the facts contain what `needs` names and nothing else."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, date, datetime, time, timedelta
from decimal import Decimal
from typing import Any
from zoneinfo import ZoneInfo

from core.care import Plan, Slot, Units
from core.client import Profile, Sex
from core.dialogue.client.facts import InvitationFact
from core.dialogue.engines import staff
from core.dialogue.kit.effects import Say, drawn
from core.dialogue.kit.events import Command, Due, Event, Press, Text
from core.dialogue.staff.facts import (
    CardFact,
    CardOf,
    CardsFlagged,
    CardsNamed,
    CardsOfAll,
    Caseload,
    CohortFact,
    Cohorts,
    MentionedIn,
    Need,
    OtherCoaches,
    QuarterFact,
    QuarterMeant,
    RepliedTo,
    StaffFacts,
    TemplateFact,
    Templates,
    WrittenTo,
)
from core.dialogue.staff.names import addressed, distinct_names, meant, mentioned
from core.dialogue.staff.states import FRESH_STAFF, StaffState
from core.reading import Reading
from core.watching.digest import CaseRow, FlagFact
from core.watching.flags import Flag
from core.watching.practice import PersonFact
from core.watching.practice import meant as quarter_meant
from tests.builders import find_zones, flat

NOW = datetime(2026, 3, 30, 7, 0, tzinfo=UTC)  # Monday 08:00 in London
LONDON = ZoneInfo("Europe/London")
WEEK = timedelta(weeks=1)


def kept(number: int, flag: Flag, seen_at: datetime | None = None, refreshed_at: datetime | None = None) -> FlagFact:
    """A flag as the store would return it."""
    return FlagFact(
        number, flag.code.value, flag.severity.value, flag.measure, flag.evidence, flag.since, seen_at, refreshed_at
    )


def readings(measure: str, *values: str, days: int = 28, second: str | None = None) -> tuple[Reading, ...]:
    """Readings at intervals of `days`, the last one now."""
    lower = None if second is None else Decimal(second)
    last = len(values) - 1
    return tuple(
        Reading(measure, Decimal(value), NOW - timedelta(days=days * (last - n)), second=lower)
        for n, value in enumerate(values)
    )


def card(number: int, name: str, **more: Any) -> CardFact:
    usual: dict[str, Any] = {
        "status": "active",
        "profile": Profile(Sex.FEMALE, 1968, stature=Decimal(165)),
        "plan": Plan(measures=("weight", "waist")),
        "slot": Slot(0, time(7, 30), "Europe/London"),
        "zone": LONDON,
        "units": Units(),
        "history": (),
        "flags": (),
    }
    return CardFact(number, name, **(usual | more))


class Office:
    """Rowan's chat. clients: this coach's caseload; nobody else exists here."""

    def __init__(self, *clients: CardFact, **facts: Any) -> None:
        self.clients = {c.client_id: c for c in clients}
        self.templates: tuple[TemplateFact, ...] = ()
        self.others: tuple[tuple[int, str], ...] = ((8, "Sam"),)
        self.cohorts: tuple[CohortFact, ...] = ()
        self.state: StaffState = FRESH_STAFF
        self.now = NOW
        self.effects: tuple[Any, ...] = ()
        self.invitation: InvitationFact | None = None
        self.people: tuple[PersonFact, ...] = ()  # of a quarter
        self.damaged: set[int] = set()  # clients whose data cannot be loaded
        self.about: dict[str, int] = {}  # whom an earlier message is about, by its ref
        self.also: tuple[Need, ...] = ()  # loaded in addition to what is needed
        usual: dict[str, Any] = {
            "person_id": 1,
            "name": "Rowan",
            "coach_id": 7,
            "slot": Slot(0, time(8), "Europe/London"),
            "zone": LONDON,
            "zone_name": "Europe/London",
            "find_zones": find_zones,
            "zone_of": ZoneInfo,
        }
        self.facts = StaffFacts(**(usual | facts))

    # --- what happens ---------------------------------------------------------------------------------------

    def says(self, text: str) -> Office:
        return self.gets(Text(self.now, text))

    def replies(self, ref: str, text: str) -> Office:
        return self.gets(Text(self.now, text, reply_to=ref))

    def presses(self, data: str) -> Office:
        return self.gets(Press(self.now, drawn(data, self.state.question)))

    def commands(self, name: str, argument: str = "") -> Office:
        return self.gets(Command(self.now, name, argument))

    def due(self, day: date | None = None) -> Office:
        return self.gets(Due(self.now, day or self.now.astimezone(LONDON).date()))

    def gets(self, event: Event) -> Office:
        facts = self._loaded(event)
        outcome = staff.step(self.state, event, facts, self.now)
        self.state, self.effects = outcome.state, outcome.effects
        return self

    def _loaded(self, event: Event) -> StaffFacts:
        names = tuple((c.client_id, c.name) for c in self.clients.values())
        cards: dict[int, CardFact] = {}
        facts = replace(self.facts, invitation=self.invitation)
        for need in (*staff.needs(self.state, event, facts.language), *self.also):
            match need:
                case Cohorts():
                    facts = replace(facts, cohorts=self.cohorts)
                case OtherCoaches():
                    facts = replace(facts, coaches=self.others)
                case _ if self.facts.coach_id is None:
                    pass
                case Caseload():
                    facts = replace(facts, rows=tuple(map(row_of, self.clients.values())))
                case CardOf(number) if number in self.clients:
                    cards[number] = self.clients[number]
                case CardsNamed(words, whole, anywhere):
                    ids = meant(names, words) if whole else addressed(names, words)[0]
                    ids = ids or (mentioned(names, words, facts.language) if anywhere else ())
                    cards |= {n: self.clients[n] for n in ids}
                case MentionedIn(text):
                    told_apart = distinct_names((n, c.name, c.profile.birth_year) for n, c in self.clients.items())
                    ids = mentioned(names, text, facts.language)
                    facts = replace(facts, mentioned=tuple((n, told_apart[n]) for n in ids))
                case WrittenTo(number) if number in self.clients:
                    facts = replace(facts, writing_to=self.clients[number].name)
                case RepliedTo(ref):
                    number = self.about.get(ref, 0)
                    facts = replace(facts, replied=number)
                    cards |= {number: self.clients[number]} if number in self.clients else {}
                case CardsFlagged():
                    cards |= {n: c for n, c in self.clients.items() if c.flags}
                case CardsOfAll():
                    cards |= {n: c for n, c in self.clients.items() if n not in self.damaged}
                case QuarterMeant(words) if (quarter := quarter_meant(words, self.now.date())) is not None:
                    facts = replace(facts, quarter=QuarterFact(quarter, self.people))
                case Templates():
                    facts = replace(facts, templates=self.templates)
                case _:
                    pass
        return replace(facts, cards=tuple(cards.values()))

    # --- what came of it ------------------------------------------------------------------------------------

    @property
    def said(self) -> list[Any]:
        return [part for effect in self.effects if isinstance(effect, Say) for part in flat(effect.message)]

    @property
    def kinds(self) -> list[str]:
        return [type(message).__name__ for message in self.said]

    @property
    def choices(self) -> list[str]:
        return [c.data for effect in self.effects if isinstance(effect, Say) for r in effect.choices for c in r]

    def heard(self, kind: type) -> Any:
        found = [message for message in self.said if isinstance(message, kind)]
        assert len(found) == 1, f"{kind.__name__} not said once: {self.kinds}"
        return found[0]

    def did(self, kind: type) -> list[Any]:
        return [effect for effect in self.effects if isinstance(effect, kind)]


def row_of(c: CardFact) -> CaseRow:
    return CaseRow(
        c.client_id,
        c.name,
        c.status,
        c.answered,
        asked=True,
        kept=c.answered is not None,
        missed=c.missed,
        paused_until=c.paused_until,
        reachable=c.reachable,
        flags=c.flags,
    )
