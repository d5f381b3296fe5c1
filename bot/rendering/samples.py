"""Sample messages: every class, every key, ordinary and extreme arguments.

For checking texts: tests, the readability table, translators who want to see a sentence in context. All values are
invented.
"""

from __future__ import annotations

import dataclasses
from collections.abc import Iterator
from dataclasses import replace
from datetime import UTC, date, datetime, time, timedelta
from decimal import Decimal
from typing import Any

from bot.rendering.phrases.programme import KEEP
from core.care import NumberVisibility, Programme
from core.client import Caution
from core.dialogue.client import enrolment_messages as em
from core.dialogue.client import messages as m
from core.dialogue.client import messages_to_coach as cm
from core.dialogue.client import report_messages as rm
from core.dialogue.client import slip_messages as pm
from core.dialogue.client import start_messages as sm
from core.dialogue.client.encouragement import OPENINGS, PRAISES
from core.dialogue.client.enrolment import ANSWER
from core.dialogue.client.needed import READINESS, SIGNS_TO_TICK
from core.dialogue.client.report import GoalSaid, Report
from core.dialogue.client.results import Result, Value
from core.dialogue.client.week_messages import ActivityLine, AnotherDay, LookBack
from core.dialogue.kit.messages import (
    AskLanguage,
    DataSent,
    KeptAsItWas,
    LanguageChanged,
    NotForThisRole,
    NotText,
    OldButton,
    OurFault,
    Stranger,
    Together,
    WhichPlace,
)
from core.judging.change import Change, Strength
from core.judging.chart_data import Point, Pressure, PressureDay, PressureWeekChart, RatingLine, TrendChart, Usual
from core.judging.goals import GoalDoubt
from core.judging.readiness import Verdict
from core.language.rate_limiting_medicines import RATE_LIMITING_MEDICINES
from core.language.signs import SIGNS
from core.measures import MEASURES
from core.measures.measure import Measure, MeasureKind, Why
from core.quantity import FACTOR, Amount, Dimension, Unit, convert
from core.understanding.plausibility import DoubtKind
from core.watching.flags import RULES

D = Decimal
DAY, LONG_DAY = date(2026, 3, 30), date(2026, 9, 23)  # a Wednesday in September is the longest name in English
AT = datetime(2026, 3, 30, 6, 30, tzinfo=UTC)
COACH, LONG_NAME = "Rowan", "Maximiliane-Theodora <von> & zu Ölspitzenberg-Wienerwald, the Second"
ARABIC_NAME = "ليلى"
LONG_TEXT = "I went up the stairs & down again <slowly>. " * 100

CONTEXTS = (
    "first_reading",
    "start_again",
    "start_alone",
    "different_conditions",
    "flat_weight_smaller_waist",
    "small_steps",
    "matters_but_unsure",
    "early_weeks",
    "one_step_of_tape",
    "one_beat_of_the_count",
    "other_weekday",
    "practice_counts_too",
    "medicine_slows_pulse",
    "series_too_few_days",
)
NEWS = (
    "measures", "interval", "slot", "directed_weighing", "numbers", "baseline", "hand_over", "programme",
    "programme_open",
)  # fmt: skip
KINDS = ("voice", "photo", "video", "sticker", "document", "location", "contact", "empty")
GATE_SIGNS = ("gate_signs", "gate_unwell", "dizziness", "fainting", "leg_swelling_with_breathlessness")


def asked() -> tuple[Measure, ...]:
    return tuple(x for x in MEASURES.values() if x.kind is not MeasureKind.DERIVED)


def signs() -> tuple[str, ...]:
    return tuple(dict.fromkeys((*(s.key for s in SIGNS), *GATE_SIGNS)))


def middle(measure: Measure) -> Decimal:
    """A usual value, rounded to the measure's resolution."""
    usual = measure.bounds.usual
    low, high = usual.low or D(0), usual.high if usual.high is not None else D(100)
    return ((low + high) / 2).quantize(D(1).scaleb(-measure.places))


def amount(measure: Measure, unit: Unit | None = None) -> Amount:
    unit = unit or measure.unit
    return Amount(convert(middle(measure), measure.unit, unit), unit)


def second(measure: Measure) -> Decimal | None:
    return {"blood_pressure": D(82), "walk_mile": D(124)}.get(measure.key)


def imperial(measure: Measure) -> Unit:
    """The unit of somebody who uses stones and inches."""
    if measure.unit in FACTOR and FACTOR[measure.unit][0] is Dimension.MASS:
        return Unit.STONE
    return Unit.INCH if Unit.INCH in measure.units else measure.unit


def ordinary() -> Iterator[object]:
    """Everyday messages: at least one of every class, with every key."""
    yield from _arriving()
    yield from _check_in()
    yield from _results()
    yield from _not_clear()
    yield from _everyday()
    yield from _care()
    yield from _counts()
    yield from _life()
    yield from _programme()
    yield from _look_back()
    yield from _to_the_coach()


def _arriving() -> Iterator[object]:
    yield Stranger()
    yield from (m.Welcome("Ada", COACH), m.Welcome("", COACH), m.WhatIsKept(COACH), m.ConsentDeclined(COACH))
    for question in (*ANSWER, "rating", *READINESS):
        yield m.EnrolQuestion(question, COACH)
        yield m.EnrolUnclear(question)
        yield m.SkipCost(question)
    yield m.EnrolQuestion("cautions", COACH, tuple(c.value for c in Caution))
    yield from (
        m.EnrolNoted("birth_year", year=1958),
        m.EnrolNoted("stature", height=Amount(Decimal(165), Unit.CENTIMETRE)),
    )
    six = Amount(Decimal(6), Unit.POINT)
    yield from (em.FirstValue("energy", six, Amount(Decimal(2), Unit.POINT)), em.FirstValue("energy", six, None))
    yield em.AllAnswered()
    yield m.EnrolQuestion("signs", COACH, SIGNS_TO_TICK)
    for verdict in Verdict:
        for signs, told, number in ((True, COACH, "112"), (True, "", ""), (False, COACH, "112"), (False, "", "")):
            yield em.BeforeExercise(verdict.value, signs, told, number)
    yield from (m.EnrolNoted("zone", place="Europe/Lisbon", clock=time(7, 30)), m.AskBirthYear(2012))
    yield from (m.TooYoung(COACH), m.ForAdults(COACH), WhichPlace(()), WhichPlace(("Europe/London", "America/Toronto")))
    yield from (m.Enrolled(0, time(7, 30), DAY, COACH), m.AlreadyHere(COACH), m.AskChangeCoach("Sascha", COACH))
    yield from (m.CoachChanged("Sascha"), m.WelcomeBack(COACH))


def _check_in() -> Iterator[object]:
    for key in OPENINGS:
        yield m.CheckInOpens(key)
    yield m.CheckInOpens(OPENINGS[0], 5)
    for x in asked():
        for first in (False, True):
            yield m.Ask(x.key, x.unit, first, x.protocol.attempts_to_name)
            yield from (
                m.Ask(x.key, x.unit, turn=turn)
                for turn in range(1, 5)
                if x.kind in (MeasureKind.RATING, MeasureKind.ACTIVITY)
            )
        yield m.Ask(x.key, imperial(x), False, 1)
        if x.start_visits > 1:
            yield m.Ask(x.key, x.unit, False, x.protocol.attempts_to_name, again=True)
            yield from (sm.StartTaken(x.key, amount(x, imperial(x)), again) for again in (False, True))
        yield m.Card(x.key)
        yield m.ReadingKept(x.key, amount(x), second(x))
        yield m.ReadingKept(x.key, amount(x, imperial(x)), second(x))
        yield m.KeptHidden(x.key)
        yield m.KeptBeforeTime(x.key, amount(x), LONG_DAY, second(x))
        if x.protocol.keep_same:
            yield m.AskConditions(x.key, x.protocol.keep_same)
            yield m.KeepTheSame(x.key, x.protocol.keep_same)
            yield m.AskWhatDiffered(x.key, ())
            yield m.AskWhatDiffered(x.key, x.protocol.keep_same)
            yield m.ConditionsNoted(x.protocol.keep_same)
        yield from (m.FollowUp(x.key, turn) for turn in range(3))
    yield m.AskOwn("How were the stairs?")
    for key in ("waist", "hip"):
        yield m.Card(key, ruler=True)
    for note in ("arms_used", "more_than_half_way"):
        yield m.ReadingKept("chair_stand_30s", amount(MEASURES["chair_stand_30s"]), None, (note,))
    for key in PRAISES:
        yield from (m.Praise(key, 1), m.Praise(key, 7))
    yield from (m.ConditionsNoted(()), m.CheckInDone(LONG_DAY), m.NotToday(None))
    yield from (m.CheckInDone(LONG_DAY, hint=True), m.WeekNoted(COACH), m.WeekNoted(""))
    yield from (m.NotToday(DAY), m.NotToday(DAY, ("energy", "waist", "resting_heart_rate")))
    yield from (m.SourceOf(()), m.SourceOf(("who_bmi", "cheuvront_2004", "nobody_2030")))


def _results() -> Iterator[object]:
    for key in CONTEXTS:
        yield m.Context(key)
    for x in MEASURES.values():
        for kind in Change:
            for strength in ("", "twice", *(s.value for s in Strength)):
                for important in (None, False, True):
                    beyond = kind in (Change.BETTER, Change.WORSE, Change.CHANGED)
                    if beyond is (strength != ""):
                        yield verdict(x, kind.value, strength, important)
        yield replace(verdict(x, "changed", "possible", None), difference=Amount(-middle(x) / 10, x.unit))
    for source, bands in _bands().items():
        for band in bands:
            yield m.BandSaid(source, band, source)
    for note in _notes():
        yield m.BandSaid("bmi", "normal", "who_bmi", (note,))


def _bands() -> dict[str, dict[str, str]]:
    from bot.rendering.phrases.bands import BANDS

    return BANDS


def _notes() -> tuple[str, ...]:
    from bot.rendering.phrases.bands import NOTES

    return tuple(NOTES)


def verdict(x: Measure, kind: str, strength: str, important: bool | None) -> m.VerdictSaid:
    beyond = strength != ""
    value = middle(x)
    return m.VerdictSaid(
        x.key,
        kind,
        strength,
        Amount(value / 10, x.unit) if beyond else None,
        Amount(value / 20, x.unit) if beyond or kind == "within_error" else None,
        date(2026, 3, 2),
        important,
    )


def _not_clear() -> Iterator[object]:
    for x in asked():
        for why in Why:
            yield m.AskAgain(x.key, why.value, x.unit)
        for kind in DoubtKind:
            yield m.DidYouMean(x.key, amount(x), second(x), kind.value)
        yield from (m.AskChangeAnswer(x.key, DAY, amount(x), amount(x)), m.AnswerStands(x.key, DAY))
        yield from (m.AskWhichDay(x.key, amount(x), second(x)), m.AskWhichDay(x.key, None), m.SendRight(x.key, x.unit))
        yield from (m.AskEither(x.key, (Decimal(6), Decimal(7))), m.NotRead())
        yield m.AnswerStands(x.key, DAY, amount(x), second(x))
        yield from (pm.AskWhichIsRight(x.key, amount(x), second(x), LONG_DAY), pm.EarlierTakenOut(x.key, DAY))
        yield from (m.AskIfSure(x.key, amount(x), second(x)), m.CannotBe(x.key, amount(x), second(x)))
        yield m.StillUnclear(x.key)
        yield from (m.NotSure(x.key), m.Corrected(x.key, amount(x), second(x)), m.CorrectedHidden(x.key))
        yield from (
            m.Undone(x.key),
            m.Undone(x.key, amount(x)),
            m.AskUndo(x.key, DAY, amount(x), second(x), True),
            m.AskUndo(x.key, DAY, None, None, False),
            m.AskChangeAnswer(x.key, DAY, None, None),
            NotText("photo", x.key),
            OldButton(x.key),
            m.Skipped(x.key),
        )
    for medium in KINDS:
        yield NotText(medium)
    yield from (m.NotSure(), m.NothingToUndo(), m.YouAreWelcome(), m.EditTooOld(), OldButton())
    yield from (m.Hello(), m.WhichMeasure())


def _care() -> Iterator[object]:
    yield from (m.EarlyFirst(LONG_DAY), m.EarlySecond(LONG_DAY, COACH), m.EarlyOften(COACH), m.EarlyTaken(DAY))
    yield from (m.EarlyReason(COACH), m.WalkInstead(), m.WeightLeftOut())
    yield from (m.GateWell(), m.GateSigns(), m.GateStopped("999", COACH), m.GateStopped("999", COACH, AT))
    yield from (m.RestWhileIll("999", COACH), m.RestWhileIll("", ""))
    for sign in signs():
        yield from (m.Emergency(sign, "999"), m.SameDay(sign, "999"), m.StopAndRest(sign, "999"), m.AskAlarm(sign))
        yield m.AskAlarm(sign, True, "999")
        yield from (m.EmergencyNearby(sign, "999"), m.AdviceNearby(sign, "999"))
        yield from (m.AlarmOver(sign, "999"), m.AlarmBetter(sign, "999"))
        yield from (m.Emergency(sign, ""), m.PastIllness(sign), m.HowIsItNow(sign), m.HowIsItNow(sign, True))
    yield from (
        m.Despair("999"),
        m.Despair("", "Samaritans", "116 123", "samaritans.org"),
        m.Despair("112", "Línea 024", "024"),
    )
    yield from (m.EatingWorry(COACH), m.EatingWorry("", "Beat", "beateatingdisorders.org.uk"))
    yield from (
        m.StoodDown(),
        m.CoachTold(COACH),
        m.CoachTold(COACH, AT),
        m.CoachNotReached(COACH),
        m.CoachNotReached(COACH, True),
    )
    yield m.CoachNotReached("")
    yield from (m.NotMeant("999"), m.AlarmClosed("999"), m.NotMeant(""))
    for key in ("weight", "blood_pressure"):
        yield from (m.KeptAside(key, amount(MEASURES[key]), second(MEASURES[key])), m.KeptAside(key, None))
    yield from (m.PressureRepeat("999"), m.PressureSevere("999"), m.PressureLow("999"), m.PressureSettled())
    yield from (m.PregnancyPressureRepeat("999"), m.PregnancyPressureSevere("999"))
    yield from (m.PregnancyPressureSettled(), m.PregnancyPressureWeek())
    yield from (m.PulseRepeat("999"), m.PulseAdvice("999"), m.FastGain("999", COACH), m.FastGain("999", COACH, AT))


PLAIN = (
    *("free", "who_sees", "who", "how_are_you", "photo", "how_long", "how_often", "must", "missed", "glad", "bye"),
    *("swearing", "rating", "medical", "food", "for_coach", "unknown"),
)


def _everyday() -> Iterator[object]:
    for key in PLAIN:
        yield from (m.Plainly(key, COACH, "999"), m.Plainly(key, "", ""))
    yield from (m.OfferToPass(why, COACH) for why in ("for_coach", "medical", "food", "unknown"))
    for x in asked():
        yield from (m.StillOpen(x.key), m.WhyMeasure(x.key), m.NoUsual(x.key), m.OnlyCoachSees(x.key, COACH))
        yield from (m.LastReading(x.key, amount(x), second(x), LONG_DAY, first) for first in (False, True))
        yield from (m.NoReadingYet(x.key, DAY), m.NoReadingYet(x.key, None), m.OnlyOne(x.key, LONG_DAY))
    stands = MEASURES["chair_stand_30s"]
    for low, high in ((D(11), D(17)), (None, D(17)), (D(11), None)):
        ends = [None if x is None else Amount(x, stands.unit) for x in (low, high)]
        yield m.UsualFor(stands.key, ends[0], ends[1])
    yield m.UsualFor("blood_pressure", None, Amount(D(135), Unit.MILLIMETRE_OF_MERCURY), D(85))
    yield from (m.ChanceMeans("waist", amount(MEASURES["waist"])), m.ChanceMeans("", None), m.OnlyOne("weight", None))
    yield from (m.WeighToday(key, COACH, LONG_DAY) for key in ("yes", "directed", "left_out", "wait"))
    yield m.WeighToday("wait", COACH)
    yield from (m.ByRecord(), m.NotStored(), m.EndOf("Spring", LONG_DAY), m.NoEnd(COACH, LONG_DAY), m.NoEnd("", None))
    keys = ("waist", "energy")
    yield from (m.Doing(), m.Doing(keys, keys, keys, keys, keys), m.Doing(early=keys), m.Doing(better=keys))


def _counts() -> Iterator[object]:
    for x in asked():
        if x.protocol.timers:
            yield m.CountReady(x.key, x.protocol.timers)
            yield from (m.StopwatchRead(x.key, amount(x)), m.CountGo(x.key, 0))
        for seconds in x.protocol.timers:
            if seconds:
                yield from (m.CountGo(x.key, seconds), m.CountStop(x.key, seconds))
    yield m.PressureWeekOpens(time(8, 0), time(20, 0), LONG_DAY)
    for day in range(1, 8):
        yield from (m.PressurePrompt(day, False), m.PressurePrompt(day, True), m.PressureKept(day, 7 - day))
    yield m.PressureAgain(D(128), D(82))
    yield from (m.PressureWeekDone(D(128), D(82), 6, 24), m.PressureTooFew(2, 4), m.PressureTooFew(0, 4))
    yield from (m.PressureWeekDone(D(128), D(82), 1, 1), m.PressureTooFew(1, 4))


def _life() -> Iterator[object]:
    yield from (m.Help(COACH, "999"), m.Help(COACH, "999", "waist"), m.SnoozeWhen(), m.PauseWhen())
    yield from (
        m.Snoozed(AT, False),
        m.Snoozed(AT, True),
        m.Paused(DAY),
        m.Paused(DAY, True),
        m.Resumed(DAY),
        m.Resumed(None),
    )
    yield from (m.StoppedForNow(DAY), m.StoppedForNow(None), m.AskSlot(), m.SlotChanged(2, time(7, 30), DAY))
    yield m.ZoneForNow("Europe/Lisbon", 0, time(7, 30), LONG_DAY)
    yield from (
        m.AskZone(),
        m.ZoneChanged("Europe/Lisbon", 0, time(7, 30)),
        m.ZoneChanged("Europe/Lisbon", 0, time(7, 30), True),
        AskLanguage(),
        LanguageChanged(),
    )
    yield m.AskUnits()
    for mass, length in (
        (Unit.KILOGRAM, Unit.CENTIMETRE),
        (Unit.POUND, Unit.INCH),
        (Unit.STONE, Unit.INCH),
        (Unit.STONE, Unit.FOOT),
    ):
        yield m.UnitsChanged(mass, length)
        yield m.SettingsSaid(0, time(7, 30), "Europe/London", mass, length, NumberVisibility.SHOWN.value)
    yield m.SettingsSaid(None, None, "UTC", Unit.KILOGRAM, Unit.CENTIMETRE, NumberVisibility.COACH_ONLY.value)
    for numbers in (*(n.value for n in NumberVisibility), "leave_out"):
        yield m.NumbersChanged(numbers)
    weight = MEASURES["weight"]
    yield from (m.AskGoal(("waist",)), m.AskGoalTarget("weight", Unit.KILOGRAM), m.AskGoalDate("weight"))
    yield from (m.GoalSet("weight", amount(weight), LONG_DAY), m.GoalDropped())
    for doubt in GoalDoubt:
        yield from (m.GoalDoubt("weight", doubt.value), m.GoalDoubt("weight", doubt.value, amount(weight)))
    for percent in (0, 4, 37, 95, 100):
        yield m.GoalProgress("weight", percent, amount(weight), LONG_DAY)
    yield from (m.NoGoalYet(None), m.NoGoalYet(DAY))
    yield from (m.NothingToShow(None), m.NothingToShow(DAY), m.AskProgress(("weight", "waist")))
    yield from (
        m.AskWord(COACH),
        m.WordPassed(COACH),
        m.WordPassed(COACH, AT),
        m.CoachWrites(COACH, "Well done. See you on Friday."),
    )
    yield from (DataSent(), m.ForgetSure(), m.Forgotten(), m.LeaveSure(COACH), m.HasLeft(COACH), KeptAsItWas())
    for what in NEWS:
        yield m.PlanNews(what, "Sascha")
    yield from (NotForThisRole(), OurFault(), m.JoinedCohort("Spring steps", DAY))


def _programme() -> Iterator[object]:
    """The end of a programme, with a result of every kind."""
    for coming, last in ((DAY, LONG_DAY), (None, None)):
        yield rm.RoundBegins(12, last, coming)
        yield rm.ProgrammeOver(coming, COACH)
    results = []
    for kind in ("better", "worse", "changed", "within_error", "not_comparable"):
        for strength in ("possible", "confirmed") if kind in ("better", "worse", "changed") else ("",):
            start, now = Value(DAY, Amount(D(104), Unit.CENTIMETRE)), Value(LONG_DAY, Amount(D(94), Unit.CENTIMETRE))
            verdict = m.VerdictSaid("waist", kind, strength, None, Amount(D(5), Unit.CENTIMETRE), DAY)
            results.append(Result("waist", now, start, now, verdict=verdict))
    target = Amount(D(90), Unit.CENTIMETRE)
    programme = Programme(DAY, 24, LONG_DAY)
    some, others = tuple(results[:4]), tuple(results[4:])
    for n, keep, told in ((0, tuple(KEEP)[:2], some), (40, tuple(KEEP)[2:4], others), (100, tuple(KEEP)[4:], ())):
        goal = GoalSaid("waist", target, LONG_DAY, n, n == 100)
        lines = (ActivityLine("activity_minutes", *(Amount(D(x), Unit.MINUTE) for x in (160, 90, 150))),) if n else ()
        yield rm.LastReport(
            Report(7, "Ada", COACH, programme, LONG_DAY, n and 25, n and 21, told, (goal,), keep, lines)
        )


def _look_back() -> Iterator[object]:
    minutes = ActivityLine("activity_minutes", *(Amount(D(n), Unit.MINUTE) for n in (110, 90, 150)))
    days = ActivityLine("strength_days", *(Amount(D(n), Unit.DAY) for n in (2, 1, 2)))
    yield LookBack(4, 4, better=("waist",), steps=("chair_stand_30s",), same=("energy", "weight"), activity=(minutes,))
    yield LookBack(3, 4, changed=("weight",), worse=("timed_up_and_go",), early=("energy",), activity=(days,))
    yield LookBack(2, 4)
    yield AnotherDay(2)


def _to_the_coach() -> Iterator[object]:
    for code, rule in RULES.items():
        evidence = tuple((name, evidence_value(name)) for name in rule.evidence)
        for measure in ("weight", "blood_pressure", None):
            yield cm.UrgentFlag(7, "Ada", code.value, measure, evidence, AT)
    rate = (("rate", Decimal(96)),)
    for settled, slip in ((True, False), (False, False), (True, True)):
        yield cm.RepeatTaken(7, "Ada", "pulse_fast", "resting_heart_rate", rate, settled, slip)
    yield cm.SignAnswered(7, "Ada", "chest_pain")
    yield from (cm.ClientWord(7, "Ada", "Can we talk?"), cm.ClientEnrolled(7, "Ada"), cm.ClientLeft("Ada"))
    yield from (cm.ClientPaused(7, "Ada", DAY), cm.ClientIll(7, "Ada"))
    yield from (cm.ClientMoved("Ada"), cm.ClientUnreachable(7, "Ada"))
    yield from _of_health()
    yield from (cm.ClientBack(7, "Ada"), cm.ClientInCohort("Ada", "Spring", "Olga"))
    yield from (cm.ProgrammeEnded(7, "Ada", 11, 12), cm.ProgrammeEnded(7, "Ada", 0, 0), cm.NewRound(7, "Ada", 12, DAY))


def _of_health() -> Iterator[object]:
    cautions, medicines = tuple(c.value for c in Caution), tuple(RATE_LIMITING_MEDICINES)
    height = Amount(Decimal(172), Unit.CENTIMETRE)
    yield m.HealthNoted(begun=(Caution.FALLS.value,), coach=COACH)
    yield m.HealthNoted(
        begun=cautions[:2],
        over=cautions[2:3],
        taken=medicines[:1],
        left_out=("weight",),
        asked_again=("waist",),
        grief=True,
        coach=COACH,
    )
    yield m.HealthNoted(stopped=medicines[:1], height=height, year=1956, tables="female", family="white")
    yield m.HealthNoted(mass=Unit.STONE, length=Unit.FOOT, place="Europe/Lisbon")
    yield m.HealthSaid(1956, "female", height, "", (Caution.FALLS.value, *cautions[2:4]), ("sotalol",), True)
    yield from (m.RestTooHigh("six_minute_walk", ("pulse",)), m.RestTooHigh("six_minute_walk", ("blood_pressure",)))
    yield from (m.HealthSaid(None, "", None, "white", (), (), asked) for asked in (True, False))
    yield from (m.AboutMe(), m.AskCautions(), m.MedicineUnknown(COACH))
    yield from (m.AskMedicine(()), m.AskMedicine(medicines[:2]), m.HealthNoted(removed=("stature",)))
    yield from (m.HealthAsBefore(), m.HealthUndone(), m.HealthNotNoted())
    for over in (False, True):
        yield from (m.AskHealth("caution", c, over) for c in cautions)
        yield from (m.AskHealth("medicine", name, over) for name in ("", *medicines))
    yield m.AskHealth("background", "white", False)
    yield m.AskHealth("stature", "210", False, Amount(Decimal(210), Unit.CENTIMETRE))
    fields = ("stature", "birth_year", "sex", "background")
    yield from (cm.DoctorFirst(7, "Ada", SIGNS_TO_TICK, ()), cm.DoctorFirst(7, "Ada", (), cautions[1:3]))
    yield cm.HealthChanged(7, "Ada", cautions[:1], cautions[1:2], medicines[:1], (), fields, undirected=True)
    yield cm.HealthChanged(7, "Ada", (), cautions[:1], (), medicines[:1], (), undone=True)


def evidence_value(name: str) -> str | Decimal:
    """A plausible value for a name of a flag's evidence."""
    texts = {"band": "raised_risk", "source": "chair_stand_cdc", "sign": "chest_pain", "level": "emergency"}
    if name in ("systolic", "before_systolic"):
        return D(186)
    texts |= {"symptom": "dizziness", "since": "2026-03-02"}
    return texts.get(name) or {"difference": D("-2.1")}.get(name, D("82.4"))


def pictures() -> Iterator[m.Picture]:
    """A chart of every kind."""
    days = [DAY + timedelta(days=28 * n) for n in range(5)]
    points = tuple(Point(day, D(v)) for day, v in zip(days, ("88", "87", "84", "82.5", "79"), strict=True))
    yield m.Picture(TrendChart("waist", Unit.CENTIMETRE, points, points[0], D("5.3"), Usual(None, D(80), "nice_waist")))
    yield m.Picture(TrendChart("weight", Unit.STONE, points[:1], points[0]))
    yield m.Picture(
        TrendChart("resting_heart_rate", Unit.BEATS_PER_MINUTE, points, points[0], D(9), Usual(D(60), D(100), "x"))
    )
    ratings = tuple(Point(DAY + timedelta(days=7 * n), D(n % 11)) for n in range(12))
    yield m.Picture(RatingLine("energy", ratings))
    yield m.Picture(RatingLine("own_question", ratings, LONG_TEXT[:200]))
    half = Pressure(D(142), D(91))
    week = tuple(PressureDay(DAY + timedelta(days=n), half, None if n == 3 else half, n > 0) for n in range(7))
    yield m.Picture(PressureWeekChart(week, half, Pressure(D(135), D(85)), "nice_home_blood_pressure"))
    yield m.Picture(PressureWeekChart((), None, Pressure(D(135), D(85)), "nice_home_blood_pressure"))


def extreme() -> Iterator[object]:
    """Messages with the longest names and texts, and numbers of any size."""
    for message in ordinary():
        yield stretched(message)
    yield from (m.CoachWrites(LONG_NAME, LONG_TEXT), cm.ClientWord(7, LONG_NAME, LONG_TEXT), m.AskOwn(LONG_TEXT))
    yield m.CoachWrites(ARABIC_NAME, "<b>&")
    yield Together(tuple(message for message in _check_in() if isinstance(message, m.ReadingKept))[:12])
    for unit in Unit:
        for value in ("0", "-0.04", "1", "2", "5", "0.3333333333333333333333333333", "999999.999", "-13.96"):
            yield m.ReadingKept("weight", Amount(D(value), unit))
            yield m.VerdictSaid("weight", "changed", "possible", Amount(D(value), unit), Amount(D(value), unit), DAY)


_STRETCHED = {"name", "coach", "new", "old", "detail", "cohort"}


def stretched(message: Any) -> object:
    """A message with the longest possible name wherever it has one."""
    changes: dict[str, object] = {}
    for field in dataclasses.fields(message):
        value = getattr(message, field.name)
        if field.name in _STRETCHED and isinstance(value, str):
            changes[field.name] = LONG_NAME
        elif field.name == "aspects" and value:
            changes[field.name] = value * 4
    return replace(message, **changes)
