"""Messages to a client, as values: no texts here, `bot.rendering.phrases` has them.

Keys in arguments (measure, reason, question, sign ...) are looked up in the catalogues; amounts are in the client's
preferred unit, rounded for display; instants are UTC and dates local. Messages to coaches are in messages_to_coach.py.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime, time
from decimal import Decimal

from core.quantity import Amount, Unit

# --- arriving ---------------------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class Welcome:
    """Who invites, what this is, what it is not, and what consent means."""

    name: str
    coach: str


@dataclass(frozen=True, slots=True)
class WhatIsKept:
    """What is stored, who sees it, how to have it erased."""

    coach: str


@dataclass(frozen=True, slots=True)
class ConsentDeclined:
    coach: str


@dataclass(frozen=True, slots=True)
class EnrolQuestion:
    """question: "birth_year", "sex", "stature", "units", "background", "cautions", "numbers", "own_question",
    "own_better", "weekday", "time", "zone". chosen: keys ticked so far (cautions)."""

    question: str
    coach: str = ""
    chosen: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class EnrolUnclear:
    """The answer to this question was not understood; say what would be."""

    question: str


@dataclass(frozen=True, slots=True)
class EnrolNoted:
    """What was stored, said back once. question: "birth_year", "stature" or "zone"."""

    question: str
    year: int | None = None
    height: Amount | None = None
    place: str = ""
    clock: time | None = None  # what it says there


@dataclass(frozen=True, slots=True)
class AskBirthYear:
    """This birth year would end enrolment: is it right?"""

    year: int


@dataclass(frozen=True, slots=True)
class SkipCost:
    """What is lost by skipping this question."""

    question: str


@dataclass(frozen=True, slots=True)
class TooYoung:
    """Samehour is for people of 18 and over; everything is erased."""

    coach: str


@dataclass(frozen=True, slots=True)
class ForAdults:
    """Samehour is for people of 18 and over: enrolment has stopped, and a mistake can still be put right for a day."""

    coach: str


@dataclass(frozen=True, slots=True)
class Enrolled:
    """Everything is set: the slot, the first date, and the cautions in short."""

    weekday: int
    at: time
    first: date
    coach: str


@dataclass(frozen=True, slots=True)
class AlreadyHere:
    """The client opened an invitation of the coach they already have."""

    coach: str


@dataclass(frozen=True, slots=True)
class AskChangeCoach:
    new: str
    old: str


@dataclass(frozen=True, slots=True)
class CoachChanged:
    coach: str


@dataclass(frozen=True, slots=True)
class WelcomeBack:
    coach: str


# --- the check-in -----------------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class CheckInOpens:
    """variant: key of an opening, so that it does not repeat. late: hours late, 0 if no apology is needed."""

    variant: str
    late: int = 0


@dataclass(frozen=True, slots=True)
class Ask:
    """Ask for a measure. first: no earlier reading. attempts: how many values to send. turn: 0 for what was not
    given before, else a number that is another one each week, so that the question can vary. again: a further visit of
    the start, and why is said."""

    measure: str
    unit: Unit
    first: bool = False
    attempts: int = 1
    turn: int = 0
    again: bool = False


@dataclass(frozen=True, slots=True)
class AskOwn:
    """The client's own 0-10 question, in their own words."""

    question: str


@dataclass(frozen=True, slots=True)
class Card:
    """How a measure is taken: prepare, technique, keep the same. ruler: the string-and-ruler way."""

    measure: str
    ruler: bool = False


@dataclass(frozen=True, slots=True)
class ReadingKept:
    """Thank, and repeat the value. second: diastolic or end pulse. noted: facts of the attempt ("arms_used")."""

    measure: str
    amount: Amount
    second: Decimal | None = None
    noted: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class KeptHidden:
    """Thank; the number goes to the coach and is not shown."""

    measure: str


@dataclass(frozen=True, slots=True)
class KeptBeforeTime:
    """Stored; compared again from a date on (measures other than weight)."""

    measure: str
    amount: Amount
    on: date
    second: Decimal | None = None


@dataclass(frozen=True, slots=True)
class BandSaid:
    """A published comparison in plain words. source: key of the reference. notes: keys of cautions."""

    measure: str
    band: str
    source: str
    notes: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class VerdictSaid:
    """The meaning of the change.

    kind: "better", "worse", "changed", "within_error", "too_soon", "no_baseline", "starting", "not_comparable".
    strength: "possible", "twice" (seen twice, not yet certain), "confirmed" or "". difference (signed) and error are in
    the client's unit; since: baseline date. A difference "within_error" is beyond it, but too little so to be given a
    meaning. important: whether the change reaches a published important difference; None if none is published.
    last: nothing is asked any more, so that no next time can tell.
    """

    measure: str
    kind: str
    strength: str
    difference: Amount | None
    error: Amount | None
    since: date | None
    important: bool | None = None
    last: bool = False


@dataclass(frozen=True, slots=True)
class Context:
    """One piece of context: "flat_weight_smaller_waist", "early_weeks", "different_conditions", ..."""

    key: str


@dataclass(frozen=True, slots=True)
class Praise:
    """Effort and keeping to the plan, never a number. key: of the sentence; count: consecutive check-ins kept."""

    key: str
    count: int = 0


@dataclass(frozen=True, slots=True)
class AskConditions:
    """Were these aspects the same as last time? first: of messages that an earlier version stored."""

    measure: str
    aspects: tuple[str, ...]
    first: bool = False


@dataclass(frozen=True, slots=True)
class KeepTheSame:
    """After a first reading: what should be the same each time."""

    measure: str
    aspects: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class AskWhatDiffered:
    measure: str
    aspects: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class ConditionsNoted:
    """Noted; a difference makes the comparison wider."""

    aspects: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class CheckInDone:
    """Everything asked today is answered; the next date. hint: that a line about the week may be sent."""

    next: date
    hint: bool = False


@dataclass(frozen=True, slots=True)
class WeekNoted:
    """A line about the week is kept with its answers. coach: who sees it."""

    coach: str


@dataclass(frozen=True, slots=True)
class NotToday:
    """Nothing is due now; the next check-in, and what it will ask."""

    next: date | None
    measures: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class FollowUp:
    """The only reminder after an unanswered check-in."""

    waiting: str  # measure still open
    turn: int = 0  # another number each week, so that the words can vary


@dataclass(frozen=True, slots=True)
class SourceOf:
    """The references and error behind the last answer, on request."""

    sources: tuple[str, ...]


# --- understanding ----------------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class AskAgain:
    """Say how it was understood and what is needed, with an example. why: a value of core.measures.measure.Why."""

    measure: str
    why: str
    unit: Unit


@dataclass(frozen=True, slots=True)
class AskEither:
    """A rating between whole numbers: which of them?"""

    measure: str
    either: tuple[Decimal, ...]


@dataclass(frozen=True, slots=True)
class SendRight:
    """The value asked back was not meant: please send the right one."""

    measure: str
    unit: Unit


@dataclass(frozen=True, slots=True)
class AskWhichDay:
    """A correction that may mean the answer of several days: which of them? new: None if numbers are hidden."""

    measure: str
    new: Amount | None
    second: Decimal | None = None


@dataclass(frozen=True, slots=True)
class NotRead:
    """A message that does not answer the open question, which is put again after this."""


@dataclass(frozen=True, slots=True)
class StillUnclear:
    """Not understood a second time: offer buttons instead of the same sentence."""

    measure: str


@dataclass(frozen=True, slots=True)
class DidYouMean:
    """Ask back with the likely meaning. kind: a value of doubt kinds ("slipped_point", "wrong_unit", ...)."""

    measure: str
    amount: Amount
    second: Decimal | None = None
    kind: str = ""


@dataclass(frozen=True, slots=True)
class AskChangeAnswer:
    """An earlier answer would change, by its old button or a late edit: change that day's answer? old, new: None if the
    numbers are hidden.
    """

    measure: str
    day: date
    old: Amount | None
    new: Amount | None


@dataclass(frozen=True, slots=True)
class AnswerStands:
    """The button belongs to a question already answered. amount: None if hidden."""

    measure: str
    day: date
    amount: Amount | None = None
    second: Decimal | None = None


@dataclass(frozen=True, slots=True)
class AskIfSure:
    """Possible but unusual, or far from last time. The earlier number is never said."""

    measure: str
    amount: Amount
    second: Decimal | None = None


@dataclass(frozen=True, slots=True)
class CannotBe:
    """Outside what is possible: ask to look again, without blame."""

    measure: str
    amount: Amount
    second: Decimal | None = None


@dataclass(frozen=True, slots=True)
class NotSure:
    """The message was not understood; what one can do.  waiting: the measure still open, or ""."""

    waiting: str = ""


@dataclass(frozen=True, slots=True)
class Corrected:
    measure: str
    amount: Amount
    second: Decimal | None = None


@dataclass(frozen=True, slots=True)
class CorrectedHidden:
    measure: str


@dataclass(frozen=True, slots=True)
class EditTooOld:
    """An edited message that no longer belongs to anything: how to correct a value instead."""


@dataclass(frozen=True, slots=True)
class Undone:
    """amount: that was withdrawn; None if hidden."""

    measure: str
    amount: Amount | None = None


@dataclass(frozen=True, slots=True)
class AskUndo:
    """Withdrawing this affects another day, or removes the baseline of later readings."""

    measure: str
    day: date
    amount: Amount | None
    second: Decimal | None
    baseline: bool


@dataclass(frozen=True, slots=True)
class NothingToUndo:
    pass


@dataclass(frozen=True, slots=True)
class YouAreWelcome:
    pass


@dataclass(frozen=True, slots=True)
class Hello:
    """A greeting, answered in kind."""


@dataclass(frozen=True, slots=True)
class WhichMeasure:
    """A bare number while nothing is asked: what does it measure?"""


# --- everyday questions -----------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class Plainly:
    """A short answer that is the same for everybody. key: of the answer.  number: of the emergency service, or ""."""

    key: str
    coach: str
    number: str = ""


@dataclass(frozen=True, slots=True)
class OfferToPass:
    """Words for the coach, or a question nobody answers here: shall they go to the coach as written?

    why: "for_coach", "medical", "food" or "unknown".
    """

    why: str
    coach: str


@dataclass(frozen=True, slots=True)
class LastReading:
    """What the record has: the last value, or the one at the start."""

    measure: str
    amount: Amount
    second: Decimal | None
    day: date
    first: bool = False


@dataclass(frozen=True, slots=True)
class NoReadingYet:
    """Nothing of this measure is in the record that one could speak of. next: check-in."""

    measure: str
    next: date | None


@dataclass(frozen=True, slots=True)
class OnlyCoachSees:
    """The client chose not to see these numbers."""

    measure: str
    coach: str


@dataclass(frozen=True, slots=True)
class WhyMeasure:
    """What a measure is good for."""

    measure: str


@dataclass(frozen=True, slots=True)
class UsualFor:
    """What a published table has as usual, or advises, for this person. low, high: None if it is open on that side."""

    measure: str
    low: Amount | None
    high: Amount | None
    second: Decimal | None = None  # diastolic limit


@dataclass(frozen=True, slots=True)
class NoUsual:
    """No published table says what is usual for this person."""

    measure: str


@dataclass(frozen=True, slots=True)
class ChanceMeans:
    """What a change beyond chance is. error: of this measure, None if unknown or nothing was said yet."""

    measure: str
    error: Amount | None


@dataclass(frozen=True, slots=True)
class WeighToday:
    """May I weigh myself today? answer: "yes", "directed", "left_out", "wait". on: when it counts again."""

    answer: str
    coach: str
    on: date | None = None


@dataclass(frozen=True, slots=True)
class ByRecord:
    """The client speaks of a change; what follows is what the record says."""


@dataclass(frozen=True, slots=True)
class OnlyOne:
    """One official reading so far, so no change can be told. next: check-in."""

    measure: str
    next: date | None


@dataclass(frozen=True, slots=True)
class Doing:
    """How it goes: measures by what their last official reading is worth against the first. unsure: beyond chance, and
    too little so to be given a meaning."""

    better: tuple[str, ...] = ()
    same: tuple[str, ...] = ()
    changed: tuple[str, ...] = ()
    worse: tuple[str, ...] = ()
    early: tuple[str, ...] = ()
    unsure: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class EndOf:
    """When a programme ends. name: of the cohort; last: its last check-in."""

    name: str
    last: date


@dataclass(frozen=True, slots=True)
class NoEnd:
    """No end is set. next: check-in."""

    coach: str
    next: date | None


@dataclass(frozen=True, slots=True)
class StillOpen:
    """After an answer: the question that is open, briefly."""

    measure: str


@dataclass(frozen=True, slots=True)
class NotStored:
    """A number inside a question is no reading."""


# --- weighing too often -----------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class EarlyFirst:
    """Thanks, why we wait, when it counts; never the number."""

    next: date


@dataclass(frozen=True, slots=True)
class EarlySecond:
    """Shorter and warmer; asks what made today feel like a day to check; offers the coach."""

    next: date
    coach: str


@dataclass(frozen=True, slots=True)
class EarlyOften:
    """No more numbers: this is common, and talking can help: coach, GP, a specialist charity."""

    coach: str


@dataclass(frozen=True, slots=True)
class EarlyTaken:
    """The client withdrew or corrected an early weight: fine, nothing is counted."""

    next: date


@dataclass(frozen=True, slots=True)
class WeightLeftOut:
    """The plan leaves weight out: it was not stored; how to include it again."""


@dataclass(frozen=True, slots=True)
class EarlyReason:
    """Thanks for saying what made today a day to check."""

    coach: str


@dataclass(frozen=True, slots=True)
class WalkInstead:
    """A walk instead of the scales: a kind word for it."""


# --- safety -----------------------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class GateWell:
    """Before a function test: do you feel well today?"""


@dataclass(frozen=True, slots=True)
class GateSigns:
    """Before a function test: any of these signs today?"""


@dataclass(frozen=True, slots=True)
class GateStopped:
    """No test today; plain advice. at: see CoachTold."""

    number: str
    coach: str
    at: datetime | None = None


@dataclass(frozen=True, slots=True)
class RestWhileIll:
    """To somebody with a flu or the like: rest, no test, and when to call for help. coach: who hears of it, or ""."""

    number: str
    coach: str


@dataclass(frozen=True, slots=True)
class Emergency:
    """What public guidance says about this sign, with the local emergency number. No diagnosis."""

    sign: str
    number: str


@dataclass(frozen=True, slots=True)
class SameDay:
    sign: str
    number: str


@dataclass(frozen=True, slots=True)
class StopAndRest:
    sign: str
    number: str


@dataclass(frozen=True, slots=True)
class Despair:
    """Words of despair: whom to talk to now. line, dial, site: a helpline of the country, "" if none is known."""

    number: str
    line: str = ""
    dial: str = ""
    site: str = ""


@dataclass(frozen=True, slots=True)
class EatingWorry:
    """Worries about food or weight that fill the day: talking helps. line, site: a charity of the country, or ""."""

    coach: str
    line: str = ""
    site: str = ""


@dataclass(frozen=True, slots=True)
class AskAlarm:
    """A sign was named, perhaps past or somebody else's: is it happening now, and to whom?

    urgent: it would be an emergency; nobody needs to wait for this question then. number: whom to call, "" if unknown.
    """

    sign: str
    urgent: bool = False
    number: str = ""


@dataclass(frozen=True, slots=True)
class EmergencyNearby:
    """Somebody with the client needs help at once: what to do for them."""

    sign: str
    number: str


@dataclass(frozen=True, slots=True)
class AdviceNearby:
    """Somebody with the client has a sign that can wait for a doctor's answer, but not for long."""

    sign: str
    number: str


@dataclass(frozen=True, slots=True)
class AlarmOver:
    """The sign is over: thanks, what still to do, and what if it returns."""

    sign: str
    number: str


@dataclass(frozen=True, slots=True)
class AlarmBetter:
    """The sign is better, which is not over: thanks, what still to do, and what if it grows worse."""

    sign: str
    number: str


@dataclass(frozen=True, slots=True)
class HowIsItNow:
    """The morning after an alarm. nearby: of somebody with the client."""

    sign: str
    nearby: bool = False


@dataclass(frozen=True, slots=True)
class NotMeant:
    """The words of an alarm were a joke or a mistake."""

    number: str


@dataclass(frozen=True, slots=True)
class AlarmClosed:
    """A button of an alarm that is over: what to do if something is wrong now."""

    number: str


@dataclass(frozen=True, slots=True)
class KeptAside:
    """A reading sent along with a danger sign is a side note. amount: None if the client hides their numbers."""

    measure: str
    amount: Amount | None
    second: Decimal | None = None


@dataclass(frozen=True, slots=True)
class PastIllness:
    """A past illness was mentioned during enrolment: it is recorded as a caution."""

    sign: str


@dataclass(frozen=True, slots=True)
class CoachNotReached:
    """The coach cannot be notified now: there is none, or messages do not arrive. coach: "" for none. kept: a message
    that the client sent is kept for them."""

    coach: str
    kept: bool = False


@dataclass(frozen=True, slots=True)
class StoodDown:
    """Good to hear it is not happening now."""


@dataclass(frozen=True, slots=True)
class CoachTold:
    """at: the client's local time at which the coach will be told, if it is night for them; None: they are told now."""

    coach: str
    at: datetime | None = None


@dataclass(frozen=True, slots=True)
class PressureRepeat:
    """A severe reading: sit, rest five minutes, measure again; what to do if unwell."""

    number: str


@dataclass(frozen=True, slots=True)
class PressureSevere:
    """Still severe after rest: contact a clinician today; with any of these signs call the number."""

    number: str


@dataclass(frozen=True, slots=True)
class PregnancyPressureRepeat:
    """Severe in pregnancy: rest five minutes, measure again; whom to call whatever it says, and when at once."""

    number: str


@dataclass(frozen=True, slots=True)
class PregnancyPressureSevere:
    """Still severe in pregnancy after rest: the maternity unit now; with any of these signs the number."""

    number: str


@dataclass(frozen=True, slots=True)
class PregnancyPressureSettled:
    """The repeat is no longer severe for pregnancy: the maternity unit should still be told both readings today."""


@dataclass(frozen=True, slots=True)
class PregnancyPressureWeek:
    """The usual limits for a home week do not apply in pregnancy: show it to the maternity team."""


@dataclass(frozen=True, slots=True)
class PressureLow:
    """Low: only a concern with dizziness or fainting; what to do then."""

    number: str


@dataclass(frozen=True, slots=True)
class PressureSettled:
    """The repeat is no longer severe."""


@dataclass(frozen=True, slots=True)
class FastGain:
    """Weighing is directed and weight has gone up fast: call the clinician who asked for it; the coach is notified.
    at: see CoachTold."""

    number: str
    coach: str
    at: datetime | None = None


@dataclass(frozen=True, slots=True)
class PulseRepeat:
    """Over 120 or under 40: rest ten minutes and count again for 60 seconds."""

    number: str


@dataclass(frozen=True, slots=True)
class PulseAdvice:
    """Still over 120 or under 40 at rest: seek advice."""

    number: str


# --- timed counts -----------------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class CountReady:
    """Choose how long to count. seconds: the choices."""

    measure: str
    seconds: tuple[int, ...]


@dataclass(frozen=True, slots=True)
class CountGo:
    """Start now; we write when the time is up. seconds 0: an open stopwatch."""

    measure: str
    seconds: int


@dataclass(frozen=True, slots=True)
class CountStop:
    """Stop. How many?"""

    measure: str
    seconds: int


@dataclass(frozen=True, slots=True)
class StopwatchRead:
    """An open stopwatch was stopped: the elapsed seconds, to be stored or timed again."""

    measure: str
    amount: Amount


# --- a blood-pressure week --------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class PressureWeekOpens:
    """Seven days, twice a day, two readings; the days and when we write."""

    morning: time
    evening: time
    last: date


@dataclass(frozen=True, slots=True)
class PressurePrompt:
    """day: 1-7. evening: which of the two."""

    day: int
    evening: bool


@dataclass(frozen=True, slots=True)
class PressureAgain:
    """One reading stored: rest a minute, send the second."""

    systolic: Decimal
    diastolic: Decimal


@dataclass(frozen=True, slots=True)
class PressureKept:
    """Both stored. day: 1-7; left: days to go."""

    day: int
    left: int


@dataclass(frozen=True, slots=True)
class PressureWeekDone:
    """Mean of the days after the first. systolic, diastolic rounded; days and readings used."""

    systolic: Decimal
    diastolic: Decimal
    days: int
    used: int


@dataclass(frozen=True, slots=True)
class PressureTooFew:
    """Too few days for a fair mean: how many came, how many are needed."""

    days: int
    needed: int


# --- the rest of life -------------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class Help:
    """What can be done, in the client's words; not a diagnosis, not an emergency service. waiting: open measure."""

    coach: str
    number: str
    waiting: str = ""


@dataclass(frozen=True, slots=True)
class Skipped:
    measure: str


@dataclass(frozen=True, slots=True)
class SnoozeWhen:
    pass


@dataclass(frozen=True, slots=True)
class Snoozed:
    until: datetime
    tomorrow: bool


@dataclass(frozen=True, slots=True)
class PauseWhen:
    pass


@dataclass(frozen=True, slots=True)
class Paused:
    """week_ended: a blood-pressure week was under way, and ends with this."""

    until: date
    week_ended: bool = False


@dataclass(frozen=True, slots=True)
class Resumed:
    next: date | None


@dataclass(frozen=True, slots=True)
class StoppedForNow:
    """The client said stop: this check-in ends here; pause, leave, or continue next week."""

    next: date | None


@dataclass(frozen=True, slots=True)
class AskSlot:
    pass


@dataclass(frozen=True, slots=True)
class SlotChanged:
    weekday: int
    at: time
    next: date


@dataclass(frozen=True, slots=True)
class AskZone:
    pass


@dataclass(frozen=True, slots=True)
class ZoneChanged:
    zone_name: str
    weekday: int
    at: time
    home: bool = False  # back from a stay elsewhere, by itself


@dataclass(frozen=True, slots=True)
class ZoneForNow:
    """The clock follows the client until a day, then it goes back by itself."""

    zone_name: str
    weekday: int
    at: time
    until: date


@dataclass(frozen=True, slots=True)
class AskUnits:
    pass


@dataclass(frozen=True, slots=True)
class UnitsChanged:
    mass: Unit
    length: Unit


@dataclass(frozen=True, slots=True)
class SettingsSaid:
    """The client's settings as they are; buttons change them."""

    weekday: int | None
    at: time | None
    zone_name: str
    mass: Unit
    length: Unit
    numbers: str


@dataclass(frozen=True, slots=True)
class RestTooHigh:
    """No test today: what was taken at rest is above its limits. why: "pulse", "blood_pressure"."""

    measure: str
    why: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class HealthNoted:
    """What was understood of the client's health, said back. begun, over: cautions.  taken, stopped: medicines that
    slow the pulse. tables: those of which sex.  family: its background.
    place: a zone.  left_out, asked_again: measures that are no longer asked, or are again.  removed:
    fields that are unknown again.  grief: a loss.  coach: who hears of it, "" for nobody."""

    begun: tuple[str, ...] = ()
    over: tuple[str, ...] = ()
    taken: tuple[str, ...] = ()
    stopped: tuple[str, ...] = ()
    removed: tuple[str, ...] = ()
    height: Amount | None = None
    year: int | None = None
    tables: str = ""
    family: str = ""
    mass: Unit | None = None
    length: Unit | None = None
    place: str = ""
    left_out: tuple[str, ...] = ()
    asked_again: tuple[str, ...] = ()
    grief: bool = False
    coach: str = ""


@dataclass(frozen=True, slots=True)
class HealthSaid:
    """Everything known of the client's health, as the tables use it. asked: whether the cautions were."""

    year: int | None
    sex: str
    height: Amount | None
    background: str
    cautions: tuple[str, ...]
    medicines: tuple[str, ...]
    asked: bool


@dataclass(frozen=True, slots=True)
class AboutMe:
    """Which of these facts should change?"""


@dataclass(frozen=True, slots=True)
class AskCautions:
    """Buttons tick what fits."""


@dataclass(frozen=True, slots=True)
class AskMedicine:
    """Which medicine that slows the pulse is new? Buttons take off those held."""

    held: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class MedicineUnknown:
    """No medicine that slows the pulse is known by this name."""

    coach: str


@dataclass(frozen=True, slots=True)
class HealthAsBefore:
    """What they say of their health is already known so."""


@dataclass(frozen=True, slots=True)
class HealthUndone:
    """What was noted last is as it was before."""


@dataclass(frozen=True, slots=True)
class HealthNotNoted:
    """They do not want it noted."""


@dataclass(frozen=True, slots=True)
class AskHealth:
    """Not sure: shall this be noted? what: "caution", "medicine", "background", "stature", ...; value: its key.
    over: it no longer applies."""

    what: str
    value: str
    over: bool
    height: Amount | None = None


@dataclass(frozen=True, slots=True)
class NumbersChanged:
    numbers: str


@dataclass(frozen=True, slots=True)
class AskGoal:
    """measures: those for which a goal can be set."""

    measures: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class NoGoalYet:
    """A goal starts from a first reading; when the next check-in is."""

    next: date | None


@dataclass(frozen=True, slots=True)
class AskGoalTarget:
    measure: str
    unit: Unit


@dataclass(frozen=True, slots=True)
class AskGoalDate:
    measure: str


@dataclass(frozen=True, slots=True)
class GoalSet:
    measure: str
    amount: Amount
    by: date


@dataclass(frozen=True, slots=True)
class GoalDoubt:
    """A goal that does not make sense, and why; suggest: a gentler target or None."""

    measure: str
    reason: str
    suggest: Amount | None = None


@dataclass(frozen=True, slots=True)
class GoalDropped:
    pass


@dataclass(frozen=True, slots=True)
class GoalProgress:
    """Progress at a retest: percent of the way (0-100), the goal and its date. earliest, latest: when it would be
    reached if the trend continued; None with why: the readings do not say ("too_few_readings", ...)."""

    measure: str
    percent: int
    amount: Amount
    by: date
    earliest: date | None = None
    latest: date | None = None
    why: str = ""


@dataclass(frozen=True, slots=True)
class NothingToShow:
    """No chart yet."""

    next: date | None


@dataclass(frozen=True, slots=True)
class AskProgress:
    """Which chart? measures with something to show."""

    measures: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Picture:
    """A chart with its caption. spec: a core.judging.chart_data value; rendered when it is delivered."""

    spec: object


@dataclass(frozen=True, slots=True)
class AskWord:
    coach: str


@dataclass(frozen=True, slots=True)
class WordPassed:
    """at: the client's local time at which it arrives, if it is night for the coach; None: at once."""

    coach: str
    at: datetime | None = None


@dataclass(frozen=True, slots=True)
class CoachWrites:
    """The coach's message; a reply goes back to them."""

    coach: str
    text: str


@dataclass(frozen=True, slots=True)
class ForgetSure:
    pass


@dataclass(frozen=True, slots=True)
class Forgotten:
    pass


@dataclass(frozen=True, slots=True)
class LeaveSure:
    coach: str


@dataclass(frozen=True, slots=True)
class HasLeft:
    """Left: nothing more is asked; data stay until erased or until the retention period ends."""

    coach: str


@dataclass(frozen=True, slots=True)
class PlanNews:
    """The coach changed something: what: "measures", "interval", "slot", "directed_weighing", "numbers",
    "baseline", "hand_over", ..."""

    what: str
    detail: str = ""


@dataclass(frozen=True, slots=True)
class JoinedCohort:
    cohort: str
    starts: date
