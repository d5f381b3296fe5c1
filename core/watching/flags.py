"""What a coach should know: the table of flag codes, and what raises and clears each.

A flag is raised by an event (a reading, a week, a message), never by scanning everything: each rule below is a pure
function of one trigger and its evidence (those of a reading are in `core.watching.flags_of_reading`). The store
refreshes an open flag with the same code and measure instead of raising it twice. Every rule notifies a person; none is
a diagnosis.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from decimal import Decimal
from enum import StrEnum

from core.watching.weighing_guard import OFTEN_COUNT, OFTEN_IN_ONE_DAY

D = Decimal
Evidence = tuple[tuple[str, str | Decimal], ...]


class Severity(StrEnum):
    URGENT = "urgent"  # at once
    THIS_WEEK = "this_week"  # first in the digest
    NOTE = "note"  # a line in the digest


class Clears(StrEnum):
    """What clears a flag. A coach may always clear one by hand."""

    BY_COACH = "by_coach"  # only when a coach has dealt with it
    NEXT_READING = "next_reading"  # when a later reading of the measure no longer meets the rule
    ANSWERED = "answered"  # when a check-in is answered
    HEARD = "heard"  # when the client sends any message
    FOUR_QUIET_WEEKS = "four_quiet_weeks"  # when it has not recurred for 28 days
    BY_ITSELF = "by_itself"  # never stored: it is reckoned for each digest, and over when it is so no more


class NextStep(StrEnum):
    """What a coach is offered to do: a talk or a pointer to licensed practice, never a diagnosis."""

    RING_NOW = "ring_now"
    RING = "ring"  # today
    ASK_AGAIN = "ask_again"  # for the repeat that was asked for
    DOCTOR = "doctor"  # suggest their doctor or nurse
    WRITE = "write"
    ANOTHER_WAY = "another_way"  # not through the messenger
    LOOK = "look"  # at the card
    TELL = "tell"  # let them know that it was seen
    HELP = "help"  # offer help with it
    NEW_LINK = "new_link"
    THE_BOT = "the_bot"  # look whether it runs


class Ended(StrEnum):
    """What cleared a flag."""

    BY_COACH = "by_coach"
    READING = "reading"
    ANSWER = "answer"
    HEARD = "heard"
    TIME = "time"
    CORRECTED = "corrected"  # the reading that raised it was a slip


class Done(StrEnum):
    """What a coach did about a flag."""

    RANG = "rang"
    WROTE = "wrote"
    MET = "met"
    REFERRED = "referred"
    NOTHING = "nothing"  # nothing was needed
    OWN = "own"  # in the coach's words


class Code(StrEnum):
    BP_SEVERE = "bp_severe"
    BP_SEVERE_REPEATED = "bp_severe_repeated"
    BP_HIGH_MEAN = "bp_high_mean"
    BP_LOW = "bp_low"
    PULSE_FAST = "pulse_fast"
    PULSE_SLOW = "pulse_slow"
    FAST_GAIN = "fast_gain"
    UNPLANNED_LOSS_OVER_5 = "unplanned_loss_over_5"
    MUST_MEDIUM = "must_medium"
    MUST_HIGH = "must_high"
    FALLS_RISK = "falls_risk"
    CHANGE_BETTER_CONFIRMED = "change_better_confirmed"
    CHANGE_WORSE_CONFIRMED = "change_worse_confirmed"
    CHANGE_CONFIRMED = "change_confirmed"
    CHANGE_WORSE_LARGE = "change_worse_large"
    ENERGY_FALLING = "energy_falling"
    ENERGY_DROPPED = "energy_dropped"
    WEIGHING_OFTEN = "weighing_often"
    MISSED_CHECK_INS = "missed_check_ins"
    SYMPTOM_REPORTED = "symptom_reported"
    RED_FLAG_WORDS = "red_flag_words"
    SIGN_UNANSWERED = "sign_unanswered"
    IDENTICAL_VALUES = "identical_values"
    UNREACHABLE = "unreachable"
    WANTS_COACH = "wants_coach"
    DOCTOR_FIRST = "doctor_first"
    RETEST_MISSED = "retest_missed"
    BP_WEEK_SHORT = "bp_week_short"
    STUCK_ENROLLING = "stuck_enrolling"
    INVITATION_UNUSED = "invitation_unused"
    CASELOAD_QUIET = "caseload_quiet"


@dataclass(frozen=True, slots=True)
class FlagRule:
    """One row of the table. when: the rule in words, for readers of this table. evidence: names of the values shown.
    step: what the coach is offered to do."""

    severity: Severity
    when: str
    evidence: tuple[str, ...]
    clears: Clears
    step: NextStep


RULES: dict[Code, FlagRule] = {
    Code.BP_SEVERE: FlagRule(
        Severity.URGENT,
        "one reading from 180 or from 120 up (160 or 110 in pregnancy); asked again in five minutes",
        ("systolic", "diastolic", "caution"),
        Clears.NEXT_READING,
        NextStep.ASK_AGAIN,
    ),
    Code.BP_SEVERE_REPEATED: FlagRule(
        Severity.URGENT,
        "the reading before this one, within a day, was severe as well",
        ("systolic", "diastolic", "before_systolic", "before_diastolic", "caution"),
        Clears.BY_COACH,
        NextStep.RING_NOW,
    ),
    Code.BP_HIGH_MEAN: FlagRule(
        Severity.THIS_WEEK,
        "the mean of a home series is at or above 135 or 85; over the age of 80, 145 or 85",
        ("systolic", "diastolic", "days", "band"),
        Clears.NEXT_READING,
        NextStep.DOCTOR,
    ),
    Code.BP_LOW: FlagRule(
        Severity.URGENT,
        "below 90 or 60 together with dizziness or fainting, as words of it are; a low reading alone is no flag",
        ("systolic", "diastolic", "symptom"),
        Clears.NEXT_READING,
        NextStep.DOCTOR,
    ),
    Code.PULSE_FAST: FlagRule(
        Severity.URGENT,
        "a resting pulse above 120; a repeat is asked for",
        ("rate",),
        Clears.NEXT_READING,
        NextStep.ASK_AGAIN,
    ),
    Code.PULSE_SLOW: FlagRule(
        Severity.URGENT,
        "a resting pulse below 40; a repeat is asked for",
        ("rate",),
        Clears.NEXT_READING,
        NextStep.ASK_AGAIN,
    ),
    Code.FAST_GAIN: FlagRule(
        Severity.URGENT,
        "directed weighing only: 1.36 kg in a day, more than 2 kg in three, or more than 2.27 kg in seven",
        ("gain", "days", "from", "to"),
        Clears.BY_COACH,
        NextStep.RING,
    ),
    Code.UNPLANNED_LOSS_OVER_5: FlagRule(
        Severity.THIS_WEEK,
        "5 % or more below the highest weight of twelve months that does not stand alone, when no loss was agreed",
        ("percent", "from", "to", "since"),
        Clears.NEXT_READING,
        NextStep.DOCTOR,
    ),
    Code.MUST_MEDIUM: FlagRule(
        Severity.NOTE,
        "one MUST point: body mass index 18.5 to 20, or 5 to 10 % lost unplanned within six months",
        ("points", "bmi", "percent"),
        Clears.NEXT_READING,
        NextStep.LOOK,
    ),
    Code.MUST_HIGH: FlagRule(
        Severity.THIS_WEEK,
        "two MUST points or more; agreed loss counts as well once the body mass index is 20 or less",
        ("points", "bmi", "percent"),
        Clears.NEXT_READING,
        NextStep.DOCTOR,
    ),
    Code.FALLS_RISK: FlagRule(
        Severity.THIS_WEEK,
        "chair stands, timed up and go or heel-to-toe stance on the risk side of the CDC limit for the age",
        ("value", "band", "source"),
        Clears.NEXT_READING,
        NextStep.DOCTOR,
    ),
    Code.CHANGE_BETTER_CONFIRMED: FlagRule(
        Severity.NOTE,
        "the level of all readings at hand has changed for the better, beyond chance in a year of a whole plan",
        ("difference", "mdc95", "level_before", "since", "about"),
        Clears.BY_COACH,
        NextStep.TELL,
    ),
    Code.CHANGE_WORSE_CONFIRMED: FlagRule(
        Severity.THIS_WEEK,
        "the same, for the worse",
        ("difference", "mdc95", "level_before", "since", "about"),
        Clears.BY_COACH,
        NextStep.WRITE,
    ),
    Code.CHANGE_CONFIRMED: FlagRule(
        Severity.NOTE,
        "the same, on a measure where neither direction is better",
        ("difference", "mdc95", "level_before", "since", "about"),
        Clears.BY_COACH,
        NextStep.LOOK,
    ),
    Code.CHANGE_WORSE_LARGE: FlagRule(
        Severity.NOTE,
        "one worsening so large that it was asked back, or a mean: not yet confirmed, but a person may want to ask",
        ("difference", "mdc95", "baseline", "since"),
        Clears.NEXT_READING,
        NextStep.LOOK,
    ),
    Code.ENERGY_FALLING: FlagRule(
        Severity.THIS_WEEK,
        "two check-ins in a row 2 points or more under the mean of the weeks before, and further than moods swing",
        ("rating", "before", "mean"),
        Clears.NEXT_READING,
        NextStep.WRITE,
    ),
    Code.ENERGY_DROPPED: FlagRule(
        Severity.NOTE,
        "one check-in the important difference or more under the weeks before it, and further than moods swing",
        ("rating", "mean"),
        Clears.NEXT_READING,
        NextStep.WRITE,
    ),
    Code.WEIGHING_OFTEN: FlagRule(
        Severity.NOTE,
        "a third early weighing within 14 days, or two in one day",
        ("count",),
        Clears.FOUR_QUIET_WEEKS,
        NextStep.WRITE,
    ),
    Code.MISSED_CHECK_INS: FlagRule(
        Severity.THIS_WEEK,
        "two slots in a row without any answer",
        ("missed",),
        Clears.ANSWERED,
        NextStep.WRITE,
    ),
    Code.SYMPTOM_REPORTED: FlagRule(
        Severity.URGENT,
        "a yes to a sign at the gate before a function test",
        ("sign",),
        Clears.BY_COACH,
        NextStep.RING,
    ),
    Code.RED_FLAG_WORDS: FlagRule(
        Severity.URGENT,
        "words that call for help now, today, or for rest",
        # about: "nearby", "over"; absent if it is the client's own, now. now: what they said of it later
        # words: their own, that raised it
        ("level", "sign", "about", "now", "words"),
        Clears.BY_COACH,
        NextStep.RING_NOW,
    ),
    Code.SIGN_UNANSWERED: FlagRule(
        Severity.URGENT,
        "a sign was named, and the question whether it is happening now stood for 15 minutes",
        ("level", "sign", "words"),
        Clears.BY_COACH,
        NextStep.RING_NOW,
    ),
    Code.IDENTICAL_VALUES: FlagRule(
        Severity.NOTE,
        "so many equal values in a row that day-to-day swing would do it less than once in a thousand runs",
        ("value", "times"),
        Clears.NEXT_READING,
        NextStep.LOOK,
    ),
    Code.UNREACHABLE: FlagRule(
        Severity.THIS_WEEK, "the messenger refuses to deliver to them", (), Clears.HEARD, NextStep.ANOTHER_WAY
    ),
    Code.DOCTOR_FIRST: FlagRule(
        Severity.THIS_WEEK,
        "before exercise: signs, or a known disease without a doctor's word; see core/judging/readiness.py",
        ("reason",),
        Clears.BY_COACH,
        NextStep.DOCTOR,
    ),
    Code.WANTS_COACH: FlagRule(Severity.THIS_WEEK, "asked for a word", ("words",), Clears.BY_COACH, NextStep.WRITE),
    Code.RETEST_MISSED: FlagRule(
        Severity.NOTE,
        "a retest was asked at two check-ins that were answered, and not given at either",
        ("times",),
        Clears.NEXT_READING,
        NextStep.HELP,
    ),
    Code.BP_WEEK_SHORT: FlagRule(
        Severity.NOTE,
        "a home blood pressure week ended with fewer than four days",
        ("days", "needed"),
        Clears.FOUR_QUIET_WEEKS,
        NextStep.HELP,
    ),
    Code.STUCK_ENROLLING: FlagRule(
        Severity.THIS_WEEK,
        "three days after joining, the first questions are not answered",
        (),
        Clears.BY_ITSELF,
        NextStep.HELP,
    ),
    Code.INVITATION_UNUSED: FlagRule(
        Severity.NOTE, "a week after it was made, nobody has opened the link", (), Clears.BY_ITSELF, NextStep.NEW_LINK
    ),
    Code.CASELOAD_QUIET: FlagRule(
        Severity.URGENT,
        "three clients or more were asked this week, and not one answered",
        ("asked",),
        Clears.BY_ITSELF,
        NextStep.THE_BOT,
    ),
}


@dataclass(frozen=True, slots=True)
class Flag:
    """One thing a coach should know. evidence: name and value, in the order of the table. since: the instant
    it began.
    """

    code: Code
    severity: Severity
    measure: str | None
    evidence: Evidence
    since: datetime


@dataclass(frozen=True, slots=True)
class Agreed:
    """What coach and client agreed, as far as the rules need it.

    directed_weighing: a clinician asked for it.  loss_is_planned: losing weight is a goal, set by either.
    """

    directed_weighing: bool
    loss_is_planned: bool


NOTHING_AGREED = Agreed(directed_weighing=False, loss_is_planned=False)


def flag(code: Code, since: datetime, measure: str | None = None, /, **evidence: str | Decimal) -> Flag:
    """A flag not raised by a reading: words, a failed health question, silence, a request to talk.

    Raises: ValueError for evidence that the table does not name (a programming error).
    """
    rule = RULES[code]
    unknown = evidence.keys() - set(rule.evidence)
    if unknown:
        raise ValueError(f"{code} has no evidence called {', '.join(sorted(unknown))}")
    return Flag(code, rule.severity, measure, tuple((n, evidence[n]) for n in rule.evidence if n in evidence), since)


MOST_WORDS = 200  # characters of somebody's own words in the evidence


def worded(found: Flag, text: str) -> Flag:
    """The same flag with the words that raised it, if the table has a place for them."""
    if "words" not in RULES[found.code].evidence:
        return found
    return replace(found, evidence=(*(e for e in found.evidence if e[0] != "words"), ("words", in_short(text))))


def in_short(text: str) -> str:
    """Somebody's own words, as long as evidence may be."""
    said = " ".join(text.split())
    return said if len(said) <= MOST_WORDS else said[: MOST_WORDS - 1].rstrip() + "…"


MISSED_SLOTS = 2


@dataclass(frozen=True, slots=True)
class ClientWeek:
    """A client's state at the end of a week.

    missed: consecutive slots without an answer; slots at which we never asked do not count.  early_weighings: within 14
    days; in_one_day: the most on any one day. reachable: the messenger delivers messages.
    """

    missed: int = 0
    early_weighings: int = 0
    in_one_day: int = 0
    reachable: bool = True
    paused: bool = False


def flags_of_week(week: ClientWeek, now: datetime) -> tuple[Flag, ...]:
    """Silence, unreachability and frequent weighing. A paused client is not missing."""
    found = []
    if week.missed >= MISSED_SLOTS and not week.paused:
        found.append(flag(Code.MISSED_CHECK_INS, now, missed=D(week.missed)))
    if week.early_weighings >= OFTEN_COUNT or week.in_one_day >= OFTEN_IN_ONE_DAY:
        found.append(flag(Code.WEIGHING_OFTEN, now, "weight", count=D(week.early_weighings)))
    if not week.reachable:
        found.append(flag(Code.UNREACHABLE, now))
    return tuple(found)


@dataclass(frozen=True, slots=True)
class WhatFollowed:
    """Events after a flag that may clear it.

    read_at: when the newest assessed reading of the flag's measure was taken; raised: the codes it raised.
    answered_at: the last answered check-in.  heard_at: their last message.  again_at: when the flag last recurred.
    """

    read_at: datetime | None = None
    raised: frozenset[Code] = frozenset()
    answered_at: datetime | None = None
    heard_at: datetime | None = None
    again_at: datetime | None = None


QUIET = timedelta(days=28)


def cleared(code: Code, since: datetime, later: WhatFollowed, now: datetime) -> bool:
    """Whether an open flag of `code`, open since `since`, has cleared by itself."""
    match RULES[code].clears:
        case Clears.NEXT_READING:
            return later.read_at is not None and later.read_at > since and code not in later.raised
        case Clears.ANSWERED:
            return later.answered_at is not None and later.answered_at > since
        case Clears.HEARD:
            return later.heard_at is not None and later.heard_at > since
        case Clears.FOUR_QUIET_WEEKS:
            return now - max(since, later.again_at or since) >= QUIET
        case Clears.BY_COACH | Clears.BY_ITSELF:
            return False


def worst(flags: Sequence[Flag]) -> Severity | None:
    """The most serious severity among flags."""
    order = list(Severity)
    return min((f.severity for f in flags), key=order.index, default=None)
