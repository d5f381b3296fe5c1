"""A practice of sixty for twelve weeks, through the real engine and store, with forty events that must not be missed.

Rowan's clients check in on Mondays at 07:30 and answer the conversation's questions. Some have an event in a particular
week: every flag code, alarms that settle by themselves, a break, an end of care, two of one name; the others are well.
On Saturdays at 08:00 the digest arrives; Rowan deals with all of it, or only looks, or does nothing. All invented.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass, field, replace
from datetime import date, datetime, time, timedelta
from decimal import Decimal
from enum import StrEnum
from pathlib import Path
from statistics import median
from typing import Any
from zoneinfo import ZoneInfo

from sqlalchemy import Connection, select

from bot.process import deputies as passed_on
from bot.process import digests, reminders
from bot.rendering import Reader, render
from bot.rendering.phrases.staff_digest import lines
from bot.store import codec, conversations, deputies, flags, inbox, invitations, migrate, staff
from bot.store.database import Database
from bot.store.inbox import NewEvent
from bot.store.invitations import InvitationKind
from bot.store.schema import outbox
from core.care import Plan, Slot
from core.client import Sex
from core.dialogue.client import states as s
from core.dialogue.client.messages_to_coach import UrgentFlag
from core.dialogue.kit.effects import drawn
from core.dialogue.kit.events import Command, Event, Press, Reachability, Text
from core.dialogue.staff.facts import DeputyFact
from core.dialogue.staff.messages import DeputyAlarm, DigestFor, DigestSaid
from core.dialogue.staff.step import stamp
from core.schedule import instant
from core.watching.digest import SCREEN, Digest
from core.watching.flags import Code, flag
from tests.bot.office import steps
from tests.bot.practice import ROWAN, add_client, add_coach
from tests.bot.steps import work

LONDON = ZoneInfo("Europe/London")
FIRST = date(2026, 1, 12)  # a Monday; the clocks change in the eleventh week
WEEKS = 12
CLIENTS = 60
SAM = 901
PERSONS = (
    "Abel Bo Cleo Dana Edda Finn Gus Hana Ines Jon Kaya Levi Mara Nils Olga Pia Quin Rita Sven Tara Ugo Vera Wim Xena"
    " Yara Zoe Arlo Bea Cyd Dag"
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
    status: str = "active"  # or "link": a link that nobody opens
    since: int = 0  # the week in which they joined, or the link was made
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
    Code.ENERGY_FALLING: (6, {"answers": {"energy": steps_to((0, "7"), (5, "3"), (7, "7"))}}),
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
    Code.ENERGY_DROPPED: (7, {"answers": {"energy": steps_to((0, "7"), (7, "2"), (8, "7"))}}),
    Code.RETEST_MISSED: (6, {"answers": {"waist": lambda week: "" if 4 <= week < 8 else "92 cm"}}),
    Code.BP_WEEK_SHORT: (1, {"plan": plan("blood_pressure"), "also": {0: [(1, say("131/82")), (25, say("129/81"))]}}),
    Code.STUCK_ENROLLING: (3, {"status": "enrolling", "since": 3}),
    Code.INVITATION_UNUSED: (5, {"status": "link", "since": 4}),
    Code.DOCTOR_FIRST: (1, {}),  # told when somebody joins, and all here have: added by hand
}
UNHEARD = ("Wanda", "Xena")  # Rowan's telephone lies at home; what is set up by hand rings nobody
AWAY = 6  # the week in which Rowan is away, and Sam gets the digest as well
SILENT = 11  # the week in which nobody at all answers
# What else must not fall through: (week, code, the person). Over: it settled before the digest, and is told so.
ALSO: tuple[tuple[int, Code, bool, dict[str, Any]], ...] = (
    (3, Code.PULSE_FAST, True, {
        "name": "Orla", "plan": plan("resting_heart_rate"),
        "also": {3: [(NOON, say("pulse 131 bpm")), (NOON + 0.3, say("72 bpm"))]},
    }),
    (6, Code.BP_SEVERE, True, {
        "name": "Per", "plan": plan("blood_pressure"),
        "also": {6: [(NOON, say("188/114")), (NOON + 0.2, say("150/92"))]},
    }),
    (5, Code.SIGN_UNANSWERED, True, {
        "name": "Ruth", "also": {5: [(NOON, say("I had chest pain last year")), (NOON + 1, say("no"))]},
    }),
    (7, Code.RED_FLAG_WORDS, False, {
        "name": "Sol", "also": {7: [(NOON, say("I have chest pain")), (NOON + 20, say("it is better now"))]},
    }),
    (9, Code.RED_FLAG_WORDS, False, {"name": "Tess", "status": "paused", "also": {9: [(NOON, say("I feel faint"))]}}),
    (8, Code.RED_FLAG_WORDS, False, {"name": "Ulf", "status": "left", "also": {8: [(NOON, say("I have chest pain"))]}}),
    (2, Code.WANTS_COACH, False, {
        "name": "Ada", "born": 1950, "also": {2: [(NOON, lambda at: Command(at, "coach", "Could we talk?"))]},
    }),
    (9, Code.WANTS_COACH, False, {
        "name": "Ada", "born": 1960, "also": {9: [(NOON, lambda at: Command(at, "coach", "My knee hurts"))]},
    }),
    (10, Code.RED_FLAG_WORDS, False, {"name": "Wanda", "also": {10: [(NOON, say("I have chest pain"))]}}),
    (10, Code.SYMPTOM_REPORTED, False, {
        "name": "Yuri", "plan": plan("chair_stand_30s", retest_days=35), "unwell_in": 10,
    }),
)  # fmt: skip


def events() -> list[tuple[int, str, Code, bool]]:
    """Everything planted: its week, who, what, and whether it was over before the digest."""
    names = PERSONS.split()
    codes = [(week, names[n], code, False) for n, (code, (week, _)) in enumerate(PLANTED.items())]
    also = [(week, called(more), code, over) for week, code, over, more in ALSO]
    return [*codes, *also, (SILENT, "", Code.CASELOAD_QUIET, False)]


def called(more: dict[str, Any]) -> str:
    """As the coach reads it: two of one name with their year of birth."""
    return f"Ada ({more['born']})" if more["name"] == "Ada" else str(more["name"])


def people() -> list[Person]:
    names = PERSONS.split()
    planted = [Person(names[n], 1000 + n, **more) for n, (_, more) in enumerate(PLANTED.values())]
    planted += [
        Person(more["name"], 1500 + n, **{k: v for k, v in more.items() if k != "name"})
        for n, (_, _, _, more) in enumerate(ALSO)
    ]
    kinds = (
        plan("waist"),
        plan("weight"),
        plan("resting_heart_rate"),
        plan("waist", "activity_minutes", "sessions_done"),
    )
    well = [Person(f"Well {n:02}", 2000 + n, plan=kinds[n % len(kinds)]) for n in range(CLIENTS - len(planted))]
    return planted + well


class Habit(StrEnum):
    """What Rowan does with a digest, and with an alarm."""

    DEALS = "deals with all"
    LOOKS = "only looks"
    NOTHING = "does nothing"


# --- living through it ------------------------------------------------------------------------------------------


class Season:
    """Twelve weeks of the practice; `digests`: those sent to Rowan, `texts`: as they read. Sam stands in for Rowan: for
    alarms always, and for all in the week `AWAY`."""

    def __init__(self, database: Database, habit: Habit) -> None:
        self.database = database
        self.habit = habit
        self.acknowledged = 0  # the last message of Rowan's that was looked at
        self.steps = steps()
        self.people = people()
        self.deputy = (0, 0)  # the numbers of Rowan and of Sam
        self.digests: list[Digest] = []
        self.texts: list[str] = []
        self._keys = iter(range(10**6))
        database.write_now(self._enrol)

    def _enrol(self, conn: Connection) -> None:
        coach = add_coach(conn)
        sam = add_coach(conn, SAM, "Sam")
        self.deputy = coach, sam
        deputies.put(conn, coach, DeputyFact(sam, "Sam"))
        staff.set_digest(conn, coach, DIGEST, monday(0, -72))
        for p in self.people:
            if p.status == "link":
                at = monday(p.since)
                invitations.make(conn, InvitationKind.CLIENT, at, by_name="Rowan", for_name=p.name, coach_id=coach)
                continue
            due = {"next_due_at": monday(0), "next_due_day": FIRST} if p.status == "active" else {}
            away = {"paused_until": FIRST + timedelta(weeks=WEEKS + 4)} if p.status == "paused" else {}
            since = {"created_at": monday(p.since)} if p.since else {}
            p.id = add_client(
                conn, coach, p.chat, p.name, plan=p.plan, slot=SLOT, sex=Sex.FEMALE.value, birth_year=p.born,
                stature=Decimal(p.stature), cautions_known=True, status=p.status, **due, **away, **since,
            )  # fmt: skip

    def run(self) -> None:
        coach, sam = self.deputy
        for week in range(WEEKS):
            monday_, sunday = FIRST + timedelta(weeks=week), FIRST + timedelta(weeks=week, days=6)
            days = (monday_, sunday) if week == AWAY else (None, None)
            self.database.write_now(deputies.put, coach, DeputyFact(sam, "Sam", *days))
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
        self._react(now)
        self.database.write_now(passed_on.sweep, now)

    def _monday(self, week: int) -> None:
        now = monday(week)
        self._sweep(now)
        for _ in range(25):
            now += timedelta(minutes=1)
            kept = self.database.read_now(conversations.load, [p.chat for p in self.people])
            replies = []
            for p in self.people:
                if week in p.silent or week == SILENT or p.chat not in kept:
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
            self._react(now)
        raise AssertionError("a check-in does not end")

    def _beside(self, week: int) -> None:
        acts = sorted((monday(week, hours), p.chat, act) for p in self.people for hours, act in p.also.get(week, ()))
        for at, chat, act in acts:
            self._sweep(at)
            self._put([(chat, act(at))], at)
            self._react(at)
            self._sweep(at + timedelta(minutes=20))
        self._sweep(monday(week, 4 * DAY))
        if week == PLANTED[Code.DOCTOR_FIRST][0]:
            (p,) = [p for p in self.people if p.name == self.of(Code.DOCTOR_FIRST)]
            self.database.write_now(flags.raise_, [(p.id, flag(Code.DOCTOR_FIRST, monday(week)))], monday(week))
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

    def _react(self, now: datetime) -> None:
        """Rowan presses what stands under an alarm, unless nobody heard it."""
        if self.habit is Habit.NOTHING:
            return
        for number, message, choices in self.database.read_now(_after, self.acknowledged):
            self.acknowledged = number
            if isinstance(message, UrgentFlag) and message.name not in UNHEARD:
                self._put([(ROWAN, Press(now, choices[0][0].data))], now)

    def _digest(self, now: datetime) -> None:
        self._sweep(now)
        self.database.write_now(digests.sweep, now)
        work(self.database, self.steps, now)
        said = [m for _, m, _ in self.database.read_now(_after, 0) if isinstance(m, DigestSaid)]
        assert len(said) == len(self.digests) + 1, "a digest each week, and one only"
        made = said[-1].digest
        self.digests.append(made)
        self.texts.append(render(said[-1], (), Reader(zone=LONDON)).text)
        if self.habit is Habit.NOTHING:
            return
        self._put([(ROWAN, Press(now, f"seen:{stamp(now)}"))], now)
        if self.habit is Habit.DEALS:
            for entry in (*made.entries, *(e for e in made.known if e.urgent)):
                last = max((f.id for f in (*entry.flags, *entry.still) if not f.over), default=0)
                if last:
                    self._put([(ROWAN, Press(now, f"clear:{entry.client_id}:{last}:{stamp(now)}"))], now)
                    self._put([(ROWAN, Text(now, "rang, all is well"))], now)

    @property
    def passed_on(self) -> list[str]:
        """Whose alarms went to Sam."""
        rows = self.database.read_now(_messages, SAM)
        return [m.name for m in rows if isinstance(m, DeputyAlarm)]

    @property
    def for_deputy(self) -> list[Digest]:
        """The digests that Sam got in Rowan's place."""
        return [m.digest for m in self.database.read_now(_messages, SAM) if isinstance(m, DigestFor)]

    @staticmethod
    def of(code: Code) -> str:
        return PERSONS.split()[list(PLANTED).index(code)]


def _after(conn: Connection, number: int) -> list[tuple[int, Any, Any]]:
    """What Rowan was sent after a message: its number, the message, its buttons."""
    rows = conn.execute(select(outbox).where(outbox.c.chat_id == ROWAN, outbox.c.id > number).order_by(outbox.c.id))
    return [(r.id, codec.loads(r.message), codec.load_rows(r.choices) if r.choices else ()) for r in rows if r.message]


def _messages(conn: Connection, chat: int) -> list[Any]:
    rows = conn.execute(select(outbox.c.message).where(outbox.c.chat_id == chat).order_by(outbox.c.id)).scalars()
    return [codec.loads(m) for m in rows if m]


def played(folder: Path, habit: Habit) -> Season:
    """The twelve weeks of one habit, on a database of their own. The caller closes it."""
    database = Database(f"sqlite:///{folder / 'samehour.db'}", synchronous="NORMAL")
    migrate.upgrade(database.engine)
    season = Season(database, habit)
    season.run()
    return season


def news(made: Digest) -> list[tuple[str, str, bool]]:
    """Who is told of as new, with what, and whether it is over."""
    return [
        (e.name, f.code, f.over)
        for e in made.entries
        for f in e.flags
        if (f.id in e.shown and (f.over or (not f.seen and f.digest_at is None))) or not f.id
    ]


def named(made: Digest) -> list[tuple[str, str, bool]]:
    """Who is named, because of what, and whether it is over."""
    return [(e.name, f.code, f.over) for e in (*made.entries, *made.known) for f in (*e.flags, *e.still)]


def first_fold(text: str, made: Digest) -> bool:
    """Whether everybody with something urgent stands on the first screen."""
    head, count = "", 0
    for line in text.split("\n"):
        head = f"{head}\n{line}" if head else line
        count = lines(head)
        if count > SCREEN:
            break
    shown = head if count <= SCREEN else head[: head.rindex("\n")]
    urgent = [e.name for e in (*made.entries, *made.known) if e.urgent and e.name]
    return all(name in shown for name in urgent)


def table(seasons: Iterable[Season]) -> str:
    """The lines of each digest, by habit, as they are on a phone."""
    out = [f"{'':16}" + "".join(f"{week + 1:>5}" for week in range(WEEKS)) + "  median  most"]
    for season in seasons:
        count = [lines(text) for text in season.texts]
        row = "".join(f"{n:>5}" for n in count)
        out.append(f"{season.habit.value:16}{row}{median(count):>8g}{max(count):>6}")
    return "\n".join(out)
