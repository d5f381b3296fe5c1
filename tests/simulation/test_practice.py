"""A practice of sixty for twelve weeks, through the real engine and store, with every flag a digest can show.

Rowan's clients check in on Mondays at 07:30 and answer the conversation's questions. Twenty-three of them have an
event, one flag code each, in a particular week; thirty-seven are well. On Saturdays at 08:00 the digest arrives; Rowan
reads it, opens no card and clears everything, so that each digest contains only what is new. All invented.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass, field, replace
from datetime import date, datetime, time, timedelta
from decimal import Decimal
from pathlib import Path
from typing import Any
from zoneinfo import ZoneInfo

import pytest
from sqlalchemy import Connection, select

from bot.foundation.reader import length
from bot.process import digests, reminders
from bot.rendering import Reader, render
from bot.store import codec, conversations, flags, inbox, staff
from bot.store.database import Database
from bot.store.inbox import NewEvent
from bot.store.schema import outbox
from core.care import Plan, Slot
from core.client import Sex
from core.dialogue.client import states as s
from core.dialogue.kit.effects import drawn
from core.dialogue.kit.events import Command, Event, Press, Reachability, Text
from core.dialogue.staff.messages import DigestSaid
from core.schedule import instant
from core.watching.digest import Digest
from core.watching.flags import RULES, Code, Severity, flag
from tests.bot.office import steps
from tests.bot.practice import ROWAN, add_client, add_coach
from tests.bot.steps import work

LONDON = ZoneInfo("Europe/London")
FIRST = date(2026, 1, 12)  # a Monday; the clocks change in the eleventh week
WEEKS = 12
CLIENTS = 60
PERSONS = (
    "Abel Bo Cleo Dana Edda Finn Gus Hana Ines Jon Kaya Levi Mara Nils Olga Pia Quin Rita Sven Tara Ugo Vera Wim Xena"
)
SLOT = Slot(0, time(7, 30), "Europe/London")
DIGEST = Slot(5, time(8), "Europe/London")


def monday(week: int, hours: float = 0) -> datetime:
    """The instant of a week's slot, and hours after it."""
    return instant(FIRST + timedelta(weeks=week), SLOT.at, LONDON) + timedelta(hours=hours)


WAIST = Plan(measures=("waist",))


@dataclass
class Person:
    """One client. answers: by measure, their message in a week ("" for no answer). also: additional events by week,
    with hours after the slot. silent: weeks without any answer."""

    name: str
    chat: int
    plan: Plan = WAIST
    answers: dict[str, Callable[[int], str]] = field(default_factory=dict)
    also: dict[int, list[tuple[float, Callable[[datetime], Event]]]] = field(default_factory=dict)
    silent: frozenset[int] = frozenset()
    unwell_in: int = -1
    born: int = 1968
    stature: str = "170"
    id: int = 0

    def reply(self, asking: object, week: int) -> Event | None:
        """Their response to an open question, None if they ignore it."""
        at = monday(week, 0.2)
        match asking:
            case s.Awaiting(measure=key):
                said = self.answers.get(key, USUAL[key])(week)
                return Text(at, said, ref=f"{self.chat}/{week}/{key}") if said else Press(at, "skip")
            case s.AskingConditions():
                return Press(at, "cond:same")
            case s.Gate(signs=signs):
                if week == self.unwell_in and not signs:
                    return Press(at, "gate:unwell")
                return Press(at, "gate:none" if signs else "gate:well")
            case s.Confirming():
                return Press(at, "ok:yes")
            case _:
                return None


def around(*values: str) -> Callable[[int], str]:
    """Ordinary fluctuating values, by week."""
    return lambda week: values[week % len(values)]


def steps_to(*levels: tuple[int, str]) -> Callable[[int], str]:
    """A value from a week on: steps_to((0, "92"), (4, "104"))."""

    def value(week: int) -> str:
        return [v for since, v in levels if week >= since][-1]

    return value


USUAL: dict[str, Callable[[int], str]] = {
    "energy": around("7", "6", "7", "8"),
    "waist": around("92 cm", "92.5 cm", "91.5 cm", "92 cm", "92.8 cm"),
    "weight": around("82.4 kg", "82.1 kg", "82.6 kg", "82.2 kg", "82.7 kg"),
    "resting_heart_rate": around("64", "66", "65", "67", "63"),
    "chair_stand_30s": around("16", "17", "16", "15"),
    "blood_pressure": around(""),
    "activity_minutes": around("120", "150"),
    "sessions_done": around("2", "3"),
}


def say(text: str) -> Callable[[datetime], Event]:
    return lambda at: Text(at, text, ref=f"{text}/{at.isoformat()}")


def plan(*measures: str, **more: Any) -> Plan:
    return Plan(measures=measures, **more)


NOON, DAY = 4.5, 24.0
# Who has which event, in which week. A flag caused by a change is raised at the retest that shows it.
PLANTED: dict[Code, tuple[int, dict[str, Any]]] = {
    Code.MUST_HIGH: (0, {"plan": plan("weight"), "answers": {"weight": around("51.0 kg")}, "stature": "170"}),
    Code.MUST_MEDIUM: (0, {"plan": plan("weight"), "answers": {"weight": around("55.5 kg", "55.4 kg")}}),
    Code.RED_FLAG_WORDS: (1, {"also": {1: [(NOON, say("I have chest pain"))]}}),
    Code.SIGN_UNANSWERED: (1, {"also": {1: [(NOON, say("I had chest pain last year"))]}}),
    Code.PULSE_FAST: (1, {"plan": plan("resting_heart_rate"), "also": {1: [(NOON, say("pulse 128 bpm"))]}}),
    Code.PULSE_SLOW: (2, {"plan": plan("resting_heart_rate"), "also": {2: [(NOON, say("pulse 37 bpm"))]}}),
    Code.BP_SEVERE: (2, {"plan": plan("blood_pressure"), "also": {2: [(NOON, say("186/112"))]}}),
    Code.WEIGHING_OFTEN: (
        2,
        {
            "plan": plan("weight"),
            "also": {2: [(h, say(f"weight {v} kg")) for h, v in ((28, 82), (52, 83), (76, 82.5))]},
        },
    ),
    Code.BP_SEVERE_REPEATED: (
        3,
        {"plan": plan("blood_pressure"), "also": {3: [(NOON, say("184/111")), (NOON + 0.2, say("186/114"))]}},
    ),
    Code.WANTS_COACH: (3, {"also": {3: [(NOON, lambda at: Command(at, "coach", "Could we talk?"))]}}),
    Code.UNPLANNED_LOSS_OVER_5: (
        4,
        {"plan": plan("weight"), "answers": {"weight": steps_to((0, "92 kg"), (4, "86.5 kg"))}},
    ),
    Code.CHANGE_WORSE_LARGE: (4, {"answers": {"waist": steps_to((0, "92 cm"), (4, "106 cm"), (8, "93 cm"))}}),
    Code.MISSED_CHECK_INS: (4, {"silent": frozenset({2, 3, 4})}),
    Code.FAST_GAIN: (
        5,
        {
            "plan": plan("weight", directed_weighing=True),
            "also": {5: [(DAY, say("weight 82.4 kg")), (3 * DAY, say("weight 85.0 kg"))]},
        },
    ),
    Code.SYMPTOM_REPORTED: (5, {"plan": plan("chair_stand_30s", retest_days=35), "unwell_in": 5}),
    Code.IDENTICAL_VALUES: (
        6,
        {
            "plan": plan("weight", directed_weighing=True),
            "also": {6: [(h * 12.0, say("weight 81.37 kg")) for h in range(1, 9)]},
        },
    ),
    Code.ENERGY_FALLING: (6, {"answers": {"energy": steps_to((0, "7"), (5, "4"), (7, "7"))}}),
    Code.UNREACHABLE: (7, {"also": {7: [(NOON, lambda at: Reachability(at, False))]}}),
    Code.FALLS_RISK: (
        8,
        {
            "plan": plan("chair_stand_30s"),
            "answers": {"chair_stand_30s": steps_to((0, "16"), (8, "7"))},
            "born": 1950,
        },
    ),
    Code.CHANGE_WORSE_CONFIRMED: (8, {"answers": {"waist": steps_to((0, "92 cm"), (4, "103 cm"), (8, "104 cm"))}}),
    Code.CHANGE_BETTER_CONFIRMED: (8, {"answers": {"waist": steps_to((0, "104 cm"), (4, "93 cm"), (8, "92 cm"))}}),
    Code.CHANGE_CONFIRMED: (8, {"plan": plan("weight"), "answers": {"weight": steps_to((0, "70 kg"), (4, "76 kg"))}}),
    Code.BP_HIGH_MEAN: (  # a week of readings, judged when it is over
        10,
        {
            "plan": plan("blood_pressure"),
            "also": {9: [(12.0 * n + 1, say(f"{144 + n % 3}/{92 + n % 2}")) for n in range(1, 9)]},
        },
    ),
    Code.BP_LOW: (10, {"plan": plan("blood_pressure")}),
}


def people() -> list[Person]:
    names = PERSONS.split()
    planted = [Person(names[n], 1000 + n, **more) for n, (_, more) in enumerate(PLANTED.values())]
    kinds = (
        plan("waist"),
        plan("weight"),
        plan("resting_heart_rate"),
        plan("waist", "activity_minutes", "sessions_done"),
    )
    well = [Person(f"Well {n:02}", 2000 + n, plan=kinds[n % len(kinds)]) for n in range(CLIENTS - len(planted))]
    return planted + well


# --- living through it ------------------------------------------------------------------------------------------


class Season:
    """Twelve weeks of the practice; `digests`: those sent to Rowan."""

    def __init__(self, database: Database) -> None:
        self.database = database
        self.steps = steps()
        self.people = people()
        self.digests: list[Digest] = []
        self.texts: list[str] = []
        self._keys = iter(range(10**6))
        database.write_now(self._enrol)

    def _enrol(self, conn: Connection) -> None:
        coach = add_coach(conn)
        staff.set_digest(conn, coach, DIGEST, monday(0, -72))
        for p in self.people:
            p.id = add_client(
                conn, coach, p.chat, p.name, plan=p.plan, slot=SLOT, sex=Sex.FEMALE.value, birth_year=p.born,
                stature=Decimal(p.stature), next_due_at=monday(0), next_due_day=FIRST,
            )  # fmt: skip

    def run(self) -> None:
        for week in range(WEEKS):
            self._monday(week)
            self._beside(week)
            self._digest(instant(FIRST + timedelta(weeks=week, days=5), DIGEST.at, LONDON))

    def _put(self, events: list[tuple[int, Event]], now: datetime) -> None:
        rows = [NewEvent(f"sim/{next(self._keys)}", chat, event) for chat, event in events]
        self.database.write_now(inbox.put, rows, now)
        work(self.database, self.steps, now)

    def _sweep(self, now: datetime) -> None:
        while self.database.write_now(reminders.sweep, now):
            pass
        work(self.database, self.steps, now)

    def _monday(self, week: int) -> None:
        now = monday(week)
        self._sweep(now)
        for _ in range(25):
            now += timedelta(minutes=1)
            kept = self.database.read_now(conversations.load, [p.chat for p in self.people])
            replies = []
            for p in self.people:
                if week in p.silent or p.chat not in kept:
                    continue
                state = codec.load_state(kept[p.chat][0])
                event = p.reply(state.asking, week) if state.day is not None else None
                if isinstance(event, Press):  # as the messenger gives a button back: with the question it was drawn for
                    event = replace(event, data=drawn(event.data, state.question))
                if event is not None:
                    replies.append((p.chat, event))
            if not replies:
                return
            self._put(replies, now)
        raise AssertionError("a check-in does not end")

    def _beside(self, week: int) -> None:
        acts = sorted((monday(week, hours), p.chat, act) for p in self.people for hours, act in p.also.get(week, ()))
        for at, chat, act in acts:
            self._sweep(at)
            self._put([(chat, act(at))], at)
        if week == PLANTED[Code.BP_LOW][0]:
            # no question asks about dizziness with a low pressure, so this flag is added by hand
            (p,) = [p for p in self.people if p.name == self.of(Code.BP_LOW)]
            low = flag(
                Code.BP_LOW,
                monday(week),
                "blood_pressure",
                systolic=Decimal(86),
                diastolic=Decimal(55),
                symptom="dizziness",
            )
            self.database.write_now(flags.raise_, [(p.id, low)], monday(week))

    def _digest(self, now: datetime) -> None:
        self._sweep(now)
        self.database.write_now(digests.sweep, now)
        work(self.database, self.steps, now)
        said = self.database.read_now(_digests)
        assert len(said) == len(self.digests) + 1, "a digest each week, and one only"
        self.digests.append(said[-1].digest)
        self.texts.append(render(said[-1], (), Reader(zone=LONDON)).text)
        day = now.astimezone(LONDON).date().isoformat()
        self._put([(ROWAN, Press(now, f"seen:{day}"))], now)
        for entry in self.digests[-1].entries:
            last = max(f.id for f in entry.flags)
            self._put([(ROWAN, Press(now, f"clear:{entry.client_id}:{last}"))], now)

    @staticmethod
    def of(code: Code) -> str:
        return PERSONS.split()[list(PLANTED).index(code)]


def _digests(conn: Connection) -> list[Any]:
    rows = conn.execute(select(outbox.c.message).where(outbox.c.chat_id == ROWAN).order_by(outbox.c.id)).scalars()
    return [m for m in map(codec.loads, rows) if isinstance(m, DigestSaid)]


@pytest.fixture(scope="module")
def season(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Season]:
    from bot.store import migrate

    path: Path = tmp_path_factory.mktemp("practice") / "samehour.db"
    database = Database(f"sqlite:///{path}", synchronous="NORMAL")
    migrate.upgrade(database.engine)
    made = Season(database)
    made.run()
    yield made
    database.close()


# --- the tests --------------------------------------------------------------------------------------------------


def found(made: Digest) -> set[tuple[str, str]]:
    return {(e.name, f.code) for e in made.entries for f in e.flags}


def test_there_is_somebody_for_every_code_of_the_table() -> None:
    assert set(PLANTED) == set(RULES) and len(people()) == CLIENTS


@pytest.mark.parametrize("code", list(PLANTED))
def test_the_digest_names_what_was_planted_in_the_week_it_happens(season: Season, code: Code) -> None:
    week, _ = PLANTED[code]
    assert (Season.of(code), code.value) in found(season.digests[week])
    assert Season.of(code) in season.texts[week]
    assert (Season.of(code), code.value) not in set().union(*map(found, season.digests[:week]), set())


def test_nothing_is_urgent_but_what_was_planted_as_urgent(season: Season) -> None:
    for week, made in enumerate(season.digests):
        urgent = {(e.name, f.code) for e in made.entries for f in e.flags if f.severity == Severity.URGENT}
        meant = {
            (Season.of(code), code.value)
            for code, (planted, _) in PLANTED.items()
            if planted == week and RULES[code].severity is Severity.URGENT
        }
        extra = {(n, c) for n, c in urgent - meant if (n, c) != (Season.of(Code.BP_SEVERE_REPEATED), "bp_severe")}
        assert urgent >= meant and not extra, (week, extra)


def test_who_is_well_is_never_named(season: Season) -> None:
    for week, text in enumerate(season.texts):
        assert "Well" not in text, (week, text)


def test_every_digest_is_one_message(season: Season) -> None:
    assert len(season.texts) == WEEKS
    assert max(map(length, season.texts)) <= 4096
    assert all(made.left_out == 0 for made in season.digests)


def test_a_week_in_which_nothing_happened_is_one_line(season: Season) -> None:
    quiet = [text for made, text in zip(season.digests, season.texts, strict=True) if made.calm]
    assert len(quiet) == 2
    for text in quiet:
        _, line = text.split("\n\n")
        assert "\n" not in line and "59 of 59" in line and "weighing" in line
