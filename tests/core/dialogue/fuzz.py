"""Random and mutated messages against random states, seeded.

python -m tests.core.dialogue.fuzz 200000      the long run; the suite runs the same in eight parts
"""

from __future__ import annotations

import sys
from collections import Counter
from dataclasses import replace
from datetime import date, datetime, time, timedelta
from decimal import Decimal
from random import Random
from time import perf_counter
from zoneinfo import ZoneInfo

from bot.store.codec import dumps, load_state
from core.care import NumberVisibility, Plan, Slot, Status, Units
from core.client import Caution, Profile, Sex
from core.dialogue.client import effects as e
from core.dialogue.client import states as s
from core.dialogue.client.facts import ClientFacts, GoalFact
from core.dialogue.engines.client import step
from core.dialogue.kit.effects import Erase, Say
from core.dialogue.kit.events import Attachment, Command, Due, Event, FromCoach, Press, Text, TimerFired
from core.language import LANGUAGES
from core.measures import CHECK_IN_ORDER, MEASURES
from core.measures.measure import Understood
from core.quantity import Unit
from core.reading import Conditions, How, Reading
from tests.builders import ADA, MONDAY, find_zones

SPOKEN = (*LANGUAGES, "xx")
PHRASES = (
    "they put me on bisoprolol",
    "not pregnant, but I fell last week",
    "we moved to Lisbon",
    "I am 172 cm tall and born in 1956",
    "my family is from pakistan",
    "estoy embarazada",
    "ich habe herzinsuffizienz",
    "7",
    "82.4",
    "82,4 kg",
    "12 st 4",
    "5 ft 7",
    "128/82",
    "128 over 82",
    "18 in 15 s",
    "18 and 17 in 15 s",
    "14:30",
    "energy 7, waist 94 hip 102",
    "no, 82.4",
    "I meant 82.4 kg",
    "about 82",
    "82 to 84",
    "between 80 and 85",
    "help",
    "skip",
    "later",
    "stop",
    "undo",
    "pause until 20 March",
    "pause",
    "I am in Lisbon",
    "Tuesday 7:30",
    "same as last time",
    "yes",
    "no",
    "why",
    "thanks",
    "chest pain",
    "no chest pain",
    "I fainted yesterday",
    "what if my chest hurts",
    "message my coach",
    "forget me",
    "my data",
    "settings",
    "goal",
    "progress",
    "٨٢٫٤",
    "２０",
    "½",
    "9" * 40,
    "1e999",
    "NaN",
    "-5",
    "0",
    "",
    " ",
    "\n",
    "🙂",
    "<b>&",
    "{0} %s",
    "\u202e82.4",
    "\x00",
    "a" * 5000,
    "siete",
    "sieben komma fünf",
    "soixante-dix-huit",
    "osiemdziesiąt dwa",
    "سبعة",
    "82 kilos",
    "180 lbs",
    "thirty beats",
    "11 and a half",
    "used my arms",
    "4 rises then stopped",
    "184/112",
    "126 bpm",
    "38 bpm",
    "weight 8 kg",
    "waist 940",
    "hip 28 in",
    "165",
    "1968",
    "Monday",
)
VERBS = (
    "n",
    "ok",
    "cond",
    "gate",
    "alarm",
    "stop",
    "watch",
    "have",
    "snooze",
    "pause",
    "wd",
    "hr",
    "zone",
    "lang",
    "units",
    "numbers",
    "forget",
    "leave",
    "move",
    "back",
    "goal",
    "goaldate",
    "goaldrop",
    "cancel",
    "how",
    "ruler",
    "time",
    "count",
    "skip",
    "later",
    "begin",
    "word",
    "src",
    "resume",
    "pressure",
    "chart",
    "early",
    "set",
    "consent",
    "me",
    "note",
    "fact",
    "e",
    "zzz",
    "",
)
VALUES = (
    "7",
    "10",
    "99",
    "yes",
    "no",
    "same",
    "first",
    "differed",
    "scales",
    "done",
    "well",
    "unwell",
    "none",
    "some",
    "keep",
    "again",
    "2h",
    "evening",
    "tomorrow",
    "1w",
    "0",
    "6",
    "07:30",
    "Europe/Lisbon",
    "pl",
    "st",
    "shown",
    "leave_out",
    "28",
    "weight",
    "waist",
    "energy",
    "walk",
    "now",
    "slot",
    "falls",
    "bisoprolol",
    "off",
    "about_me",
    "birth_year",
    "sex:female",
    "cautions:done",
    "zone:skip",
    "weight:30",
    "resting_heart_rate:30",
    "timed_up_and_go:0",
    "timed_up_and_go:x",
    "",
    ":",
    "::::",
    "�",
)
SETTINGS = (
    "slot",
    "zone",
    "language",
    "units",
    "pause",
    "snooze",
    "word",
    "forget",
    "leave",
    "goal",
    "goal_target",
    "goal_date",
    "coach_change",
    "early_reason",
    "progress",
    "numbers",
    "fact",
    "birth_year",
    "sex",
    "stature",
    "background",
    "cautions",
    "medicines",
    "nonsense",
)
ASKABLE = tuple(CHECK_IN_ORDER)


def message(r: Random) -> str:
    """A phrase, two of them, or one with letters dropped, doubled, swapped or made up."""
    text = r.choice(PHRASES)
    if r.random() < 0.3:
        text = f"{text}{r.choice((' ', ', ', '; ', ' and ', chr(10)))}{r.choice(PHRASES)}"
    for _ in range(r.choice((0, 0, 1, 2, 5))):
        i = r.randrange(len(text) + 1)
        match r.randrange(4):
            case 0:
                text = text[:i] + text[i + 1 :]
            case 1:
                text = text[:i] + text[i : i + 1] + text[i:]
            case 2:
                text = text[:i] + text[i + 1 : i + 2] + text[i : i + 1] + text[i + 2 :]
            case _:
                text = (
                    text[:i]
                    + chr(r.choice((r.randrange(32, 127), r.randrange(0x600, 0x700), r.randrange(0x2000, 0x2070))))
                    + text[i:]
                )
    return text


def event(r: Random, now: datetime) -> Event:
    kind = r.random()
    if kind < 0.6:
        return Text(now, message(r), str(r.randrange(6)), edited=r.random() < 0.1)
    if kind < 0.85:
        return Press(now, f"{r.choice(VERBS)}:{r.choice(VALUES)}"[:64])
    if kind < 0.92:
        name = r.choice(
            ("start", "help", "today", "record", "progress", "goal", "pause", "undo", "coach", "mydata", "forget", "zz")
        )
        return Command(now, name, r.choice(("", message(r))))
    if kind < 0.94:
        return Attachment(now, r.choice(("voice", "photo", "sticker")))
    if kind < 0.96:
        return Due(now, now.date(), timedelta(hours=r.randrange(20)))
    if kind < 0.98:
        return FromCoach(now, "Rowan", message(r))
    purpose, mark = r.choice(
        (("follow_up", "2026-03-02"), ("snooze", ""), ("pressure", "3e"), ("pressure_end", ""), ("resume", ""))
    )
    return TimerFired(now, purpose, mark)


def asking(r: Random, now: datetime, depth: int = 0) -> s.Asking | None:
    measure = r.choice(ASKABLE)
    back = asking(r, now, depth + 1) if depth < 1 else None
    return r.choice(
        (
            None,
            s.Consenting(),
            s.Enrolling(
                r.choice(
                    (
                        "birth_year",
                        "sex",
                        "units",
                        "stature",
                        "background",
                        "cautions",
                        "numbers",
                        "weekday",
                        "time",
                        "zone",
                        "adult",
                        "own_question",
                        "own_better",
                    )
                ),
                ("zone",),
            ),
            s.Awaiting(measure, r.randrange(4)),
            s.Awaiting(measure),
            s.Confirming(
                measure,
                Understood(MEASURES[measure].bounds.usual.low or Decimal(1), MEASURES[measure].unit),
                "jump",
                "x",
                "1",
                True,
                now,
            ),
            s.AskingConditions(measure, f"1:{measure}", r.random() < 0.5, ()),
            s.Gate(r.random() < 0.5),
            s.AlarmAsked("chest_pain", "emergency", back),
            s.Counting(measure, r.choice((0, 15, 30, 60)), now - timedelta(seconds=r.randrange(100))),
            s.StopwatchDone(measure, Decimal("9.4")),
            s.Repeating(r.choice(("blood_pressure", "resting_heart_rate")), "1:x"),
            s.Setting(r.choice(SETTINGS), r.choice(("", "3", "weight", "weight=78", "caution|falls|so")), back),
        )
    )


def state(r: Random, now: datetime) -> s.State:
    today = now.date()
    return s.State(
        asking=asking(r, now),
        agenda=tuple(r.sample(ASKABLE, r.randrange(4))),
        day=r.choice((None, today)),
        noted=r.choice(((), (("scales", True), ("clothing", False)))),
        gate_passed=r.choice((None, today)),
        written=r.choice(((), (s.Written("1:weight", "1", "weight"),), (s.Written("2:energy", "2", "energy"),))),
        sources=r.choice(((), ("who_bmi",))),
        pressure=r.choice(
            (None, None, s.PressureWeek(today - timedelta(days=2), today + timedelta(days=4), 3, False, r.randrange(3)))
        ),
        word_until=r.choice((None, now + timedelta(hours=1))),
    )


def history(r: Random, now: datetime) -> tuple[Reading, ...]:
    found = []
    for key in r.sample(ASKABLE, r.randrange(6)):
        measure = MEASURES[key]
        low, high = measure.bounds.usual.low or Decimal(1), measure.bounds.usual.high or Decimal(10)
        for n in range(r.randrange(1, 4)):
            value = (low + (high - low) * r.randrange(101) / 100).quantize(Decimal(1).scaleb(-measure.places))
            second = Decimal(80) if key == "blood_pressure" else None
            at = now - timedelta(days=28 * n + r.randrange(3), hours=r.randrange(20))
            how = How.EARLY if key == "weight" and n == 0 and r.random() < 0.3 else How.ASKED
            found.append(Reading(key, value, at, second, "x", measure.unit, Conditions(), how, key=f"{n or ''}1:{key}"))
    return tuple(sorted(found, key=lambda x: x.taken_at))


def facts(r: Random, now: datetime) -> ClientFacts:
    plan = Plan(
        measures=tuple(r.sample(ASKABLE, r.randrange(1, 8))),
        directed_weighing=r.random() < 0.1,
        numbers=r.choice(tuple(NumberVisibility)),
        own_question=r.choice(("", "How stiff?")),
    )
    profile = Profile(
        r.choice((None, *Sex)),
        r.choice((None, 1940, 1968, 2007)),
        None,
        r.choice((None, Decimal(165), Decimal("181.5"))),
        None,
        frozenset(r.sample(list(Caution), r.choice((0, 0, 1, 2)))),
    )
    zone = r.choice(("Europe/London", "Asia/Kolkata", "America/St_Johns"))
    return replace(
        ADA,
        language=r.choice(SPOKEN),
        status=r.choice((Status.ACTIVE, Status.ACTIVE, Status.ACTIVE, Status.PAUSED, Status.LEFT, Status.ENROLLING)),
        consented=r.random() < 0.95,
        units=Units(r.choice((Unit.KILOGRAM, Unit.POUND, Unit.STONE)), r.choice((Unit.CENTIMETRE, Unit.INCH))),
        slot=r.choice((Slot(0, time(7, 30), zone), None)),
        zone=ZoneInfo(zone),
        profile=profile,
        plan=plan,
        history=history(r, now),
        goals=r.choice(((), (GoalFact("weight", "78", date(2026, 6, 1), now - timedelta(days=30)),))),
        find_zones=find_zones,
        zone_of=ZoneInfo,
    )


def check(r: Random) -> str:
    """One message against one state: raise AssertionError, naming the case, unless all is well; return its kind."""
    now = MONDAY + timedelta(minutes=r.randrange(60 * 24 * 7))
    before, known, happened = state(r, now), facts(r, now), event(r, now)
    case = f"{happened!r}\nstate {before!r}\nfacts {known!r}"
    try:
        outcome = step(before, happened, known, now)
    except Exception as error:
        raise AssertionError(f"raised {error!r}\n{case}") from error
    said = [x for x in outcome.effects if isinstance(x, Say | Erase)]
    if isinstance(happened, Text | Press | Command | Attachment):
        assert said, f"no answer\n{case}"
    for effect in outcome.effects:
        if isinstance(effect, e.Record):
            reading = effect.reading
            bounds = MEASURES[reading.measure].bounds
            assert reading.value.is_finite() and reading.value in bounds.possible, f"{reading}\n{case}"
            if reading.second is not None and bounds.second_possible is not None:
                assert reading.second in bounds.second_possible, f"{reading}\n{case}"
    assert load_state(dumps(outcome.state)) == outcome.state, f"state does not load again\n{case}"
    return type(happened).__name__


def run(count: int, seed: int) -> Counter[str]:
    r = Random(seed)
    return Counter(check(r) for _ in range(count))


if __name__ == "__main__":
    total = int(sys.argv[1]) if len(sys.argv) > 1 else 200_000
    started = perf_counter()
    kinds = run(total, seed=2026)
    print(f"{total} messages in {perf_counter() - started:.0f} s, no exception: {dict(kinds)}")
