"""The data structure of a language: `Lexicon`, as plain data. A new language is a module that builds one.

Every phrase is written as people spell it; `core.language.text.plain` folds case, accents and other scripts' digits
before any comparison, so a lexicon need not list such variants.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from decimal import Decimal
from enum import StrEnum

from core.client import Sex
from core.language.concepts import Answer, Concept
from core.quantity import Unit


class UnitPart(StrEnum):
    """Units people write in which no reading is stored."""

    GRAM = "g"
    OUNCE = "oz"
    MILLIMETRE = "mm"
    HOUR = "h"


PARTS: dict[UnitPart, tuple[Unit, Decimal]] = {
    UnitPart.GRAM: (Unit.KILOGRAM, Decimal("0.001")),
    UnitPart.OUNCE: (Unit.POUND, Decimal("0.0625")),
    UnitPart.MILLIMETRE: (Unit.CENTIMETRE, Decimal("0.1")),
    UnitPart.HOUR: (Unit.MINUTE, Decimal(60)),
}


class WordRole(StrEnum):
    """The role of a function word beside a number."""

    AND = "and"
    POINT = "point"  # "eighty two point four"
    HALF = "half"  # also "and a half"
    QUARTER = "quarter"
    THREE_QUARTERS = "three_quarters"
    THIRD = "third"  # "an hour and a third"
    LESS_A_QUARTER = "less_a_quarter"  # "two hours less a quarter", as Arabic says it
    LESS_A_THIRD = "less_a_third"
    WITHIN = "within"  # "18 in 15 s"
    OVER = "over"  # "128 over 82"
    TIMES = "times"  # "18 x 4", "3 times"
    OUT_OF = "out_of"  # "7 out of 10"
    RANGE = "range"  # "82 to 84", "82 or 83"
    HEDGE = "hedge"  # "about 82"
    VIGOROUS = "vigorous"  # minutes of hard effort
    BOUND = "bound"  # "more than 82": not an exact value
    AND_SOME = "and_some"  # "70 something": neither
    AFTER = "after"  # "72 after the stairs": of a pulse, what it is no resting one for
    STIRRING = "stirring"  # "98 after coffee"
    CHANGE = "change"  # "lost 2": a difference, not a reading
    NOT = "not"
    NOTHING = "nothing"  # none at all: zero
    CLOCK = "clock"  # "at 7"; "7 pm": a time of day, not a reading
    LABEL = "label"  # "day 3", "attempt 2"
    EACH_DAY = "each_day"  # "30 min a day"
    EVERY_DAY = "every_day"  # seven days
    DAYS = "days"  # "30 min on 5 days", "3 walks of 20 min"
    FOREIGN = "foreign"  # a unit no measure uses: per cent, kPa
    ARMS = "arms"  # the arms helped
    HALF_WAY = "half_way"  # more than half-way up when time ran out
    STOPPED = "stopped"  # the test was not finished
    FILLER = "filler"  # "it is", "my": may stand between a correction and its number
    SORRY = "sorry"  # "no, 82.4": a correction if a number follows at once
    MEANT = "meant"  # "I meant 82.4": a correction wherever the number is
    PLEASE = "please"  # politeness around a request
    FAREWELL = "farewell"  # "see you on the 14th": what follows is a day
    LEAD = "lead"  # introduces a reading without meaning of its own: "the scales say", "I got", "top"


class Intent(StrEnum):
    """The intent of a message that is words rather than a reading."""

    YES = "yes"
    NO = "no"
    HELP = "help"
    SKIP = "skip"
    LATER = "later"
    STOP = "stop"
    UNDO = "undo"
    COACH = "coach"
    PAUSE = "pause"
    RESUME = "resume"
    TODAY = "today"
    RECORD = "record"
    PROGRESS = "progress"
    GOAL = "goal"
    SETTINGS = "settings"
    SAME = "same"  # same as last time
    DIFFERENT = "different"  # not as last time
    WHY = "why"
    SOURCE = "source"
    THANKS = "thanks"
    GREETING = "greeting"
    DONE = "done"
    START = "start"
    NOT_WELL = "not_well"
    WELL = "well"
    MY_DATA = "my_data"
    FORGET = "forget"
    LEAVE = "leave"
    LANGUAGE = "language"
    UNITS = "units"
    ZONE = "zone"
    SLOT = "slot"
    CONTINUE = "continue"
    REPEAT = "repeat"  # say it again
    NOT_SAY = "not_say"  # "rather not say"
    DONT_KNOW = "dont_know"


class Question(StrEnum):
    """What a client asks or remarks in the middle of everyday life. A text that fits several is the first of them."""

    MEDICAL = "medical"  # tablets, illness, exercise with a complaint: for somebody who treats people
    FOOD = "food"
    CAN_STOP = "can_stop"  # may I stop when I like?
    ABOUT = "about"  # what is this?
    ILL = "ill"  # an illness that everybody has now and then
    RESCHEDULE = "reschedule"  # another day or time from now on
    TAKE_OUT = "take_out"  # one number should not count
    NO_TOOL = "no_tool"  # no tape, no scales, no battery
    NOT_NOW = "not_now"
    WAIT = "wait"  # a moment
    TIME_ME = "time_me"
    CHAT = "chat"  # "tell me a joke"
    SORRY = "sorry"
    GRIEF = "grief"
    GOAL = "goal"  # what somebody would like to reach
    NO_WEIGHT = "no_weight"  # no wish to be weighed
    BODY = "body"  # hard words about one's own body
    MAY_SEND = "may_send"  # may I send my blood pressure, too?
    FREE = "free"
    WHO_SEES = "who_sees"
    FOR_COACH = "for_coach"  # words meant for the coach
    WHO = "who"  # who writes here
    HOW_ARE_YOU = "how_are_you"
    THERE = "there"  # "are you there?"
    PHOTO = "photo"
    HOW_LONG = "how_long"
    HOW_OFTEN = "how_often"
    MUST = "must"
    MISSED = "missed"
    WEIGH = "weigh"  # may I weigh myself?
    CHANGED = "changed"  # "I have lost 2 kilos", "did my waist go down?"
    SINCE = "since"  # a picture from a day on
    FIRST = "first"  # the value at the start
    LAST = "last"
    OVER = "over"
    NEXT = "next"
    NORMAL = "normal"  # what is usual for somebody like me?
    WHY_TEST = "why_test"
    MEANING = "meaning"
    DOING = "doing"
    GOOD = "good"  # "is that good?"
    SWEARING = "swearing"
    BYE = "bye"
    GLAD = "glad"


class Request(StrEnum):
    """What a coach asks for in plain words. A text that fits several is the first of them."""

    # about one client, whose name is in the text
    CORRECT = "correct"  # a reading; only the client can
    ADD = "add"  # a measure to their plan
    DROP = "drop"  # a measure from it
    PRIVATE = "private"  # they should not see their numbers
    DAY = "day"  # of their check-in
    PAUSE = "pause"  # only the client can
    HAND_OVER = "hand_over"
    BASELINE = "baseline"  # a new one
    RENAME = "rename"
    END = "end"
    DONE = "done"  # what was done about a flag
    EXPORT = "export"
    PAGE = "page"
    PICTURE = "picture"
    PLAN = "plan"
    NOTE = "note"
    HISTORY = "history"
    CARD = "card"  # show me them, tell me about them
    WRITE = "write"
    THREAD = "thread"
    LAST = "last"  # their newest value
    ABOUT = "about"  # any other question
    # about nobody in particular
    DONE_THEM = "done_them"  # what was done about a flag, of somebody whose name is not in the text
    DIGEST_DAY = "digest_day"
    QUIET = "quiet"  # fewer messages
    STAND_IN = "stand_in"
    INVITE = "invite"
    REPORT = "report"
    NEEDS_ME = "needs_me"
    CASELOAD = "caseload"
    WEEK = "week"


class Level(StrEnum):
    """How a sign is handled (function.md 9.1, three ways; ours, not a published scale)."""

    EMERGENCY = "emergency"
    SAME_DAY = "same_day"
    STOP_REST = "stop_rest"
    TALK = "talk"  # no immediate danger; a person should offer a talk


@dataclass(frozen=True, slots=True)
class Destroys:
    """How a language expresses deleting everything, or leaving for good. Phrases as in `Sign.parts`.

    forget, leave: lines of word groups joined by &, all of which one clause must contain; a line that starts with !
    contains its own negation ("no longer want"). no: negations. if_: conditionals. partly: words that limit a deletion
    to a part ("delete the last number").
    """

    forget: tuple[str, ...] = ()
    leave: tuple[str, ...] = ()
    no: str = ""
    if_: str = ""
    partly: str = ""


@dataclass(frozen=True, slots=True)
class Calendar:
    """Words for days and hours.

    weekdays, months: Monday and January first; each a tuple of spellings.
    today, tomorrow, day_after: relative days.  next, in_, until, on: words before a day ("next Monday", "in 2 weeks").
    day, week, month: spellings of the three lengths.  at: before a time ("at", "um").
    half_past, quarter_past, quarter_to: "half past seven"; half_to: "halb acht" (half an hour before).
    am, pm: markers, including morning and evening words.  noon, midnight.  hour: "Uhr", "o'clock".
    half_after: "siete y media", "sept heures et demie".  place: words before a city ("I am in").
    """

    weekdays: tuple[tuple[str, ...], ...]
    months: tuple[tuple[str, ...], ...]
    today: tuple[str, ...]
    tomorrow: tuple[str, ...]
    day_after: tuple[str, ...]
    next: tuple[str, ...]
    in_: tuple[str, ...]
    until: tuple[str, ...]
    day: tuple[str, ...]
    week: tuple[str, ...]
    month: tuple[str, ...]
    at: tuple[str, ...]
    am: tuple[str, ...]
    pm: tuple[str, ...]
    noon: tuple[str, ...] = ()
    midnight: tuple[str, ...] = ()
    hour: tuple[str, ...] = ()
    half_past: tuple[str, ...] = ()
    half_to: tuple[str, ...] = ()
    half_after: tuple[str, ...] = ()
    quarter_past: tuple[str, ...] = ()
    quarter_to: tuple[str, ...] = ()
    quarter_after: tuple[str, ...] = ()
    quarter_less: tuple[str, ...] = ()  # "las ocho menos cuarto"
    hours: Mapping[str, int] = field(default_factory=dict)  # ordinals: "o siódmej"
    to: tuple[str, ...] = ()  # between two days: "from Monday to Friday"
    two_days: tuple[str, ...] = ()  # the dual, in one word
    two_weeks: tuple[str, ...] = ()
    two_months: tuple[str, ...] = ()
    place: tuple[str, ...] = ()
    any_day: tuple[str, ...] = ()  # "any day", "whenever"
    except_: tuple[str, ...] = ()  # "any day except Tuesday"
    place_ends: tuple[str, ...] = ()  # words that end a city's name: "I am in Lisbon until Monday"


@dataclass(frozen=True, eq=False)
class Lexicon:
    """One language's lexicon.

    code: primary subtag. own_name: its name in the language itself. right_to_left: how it is written. decimal: its
    usual decimal mark, for showing; both are read (`tokens.figure`). numbers: phrase to value. weak: number words
    that are also articles ("one", "une"). units, parts: spellings. amounts: a number and its unit in one word
    ("Viertelstunde"). local_pound: words for a pound that may mean half a kilogram, with the likely kilograms. roles:
    small words. names: measure key to people's names for it. prefixes: letters attached to the front of a word
    (Arabic "wa-"). elision: an apostrophe separates words (French). centimetres_of_mercury: blood pressures are also
    said in them ("13/8"). concepts: words of danger signs (`core.language.concepts`). answers: to "Is it happening
    now?". umlauts: ae, oe, ue may stand for umlauts. grams_of_sugar: blood sugar is read in grams a
    litre, where 1.1 is not low. not_english: English words that mean something else here. no_intents: how
    messages begin that mean something else than a shorter beginning does. literal_words: everyday words that look
    like words of danger (`core.language.literal_words`). balance_stages: names of the four stages of the balance
    test, in order. questions, requests: lines of word groups, see `core.language.questions` and
    `core.language.requests`.
    joints: words that join what is to be said to "tell Ada". sexes: what people call themselves when asked for theirs.
    fillers: small words that change no question, and say neither yes nor no. leads: what else may stand before one
    ("yes, but who"). dialect: a word as it is spoken or texted, to the words it stands for. openers, no_openers,
    closers: phrases that open a question, those that only look so ("what a week"), and words that end one ("tu viens
    quand"). statements: what opens a verdict of one's own, and asks for one only with a question mark ("c'est bien").
    """

    code: str
    own_name: str
    decimal: str
    numbers: Mapping[str, Decimal]
    units: Mapping[Unit, tuple[str, ...]]
    roles: Mapping[WordRole, tuple[str, ...]]
    names: Mapping[str, tuple[str, ...]]
    right_to_left: bool = False
    weak: tuple[str, ...] = ()
    parts: Mapping[UnitPart, tuple[str, ...]] = field(default_factory=dict)
    local_pound: Mapping[str, Decimal] = field(default_factory=dict)
    amounts: Mapping[str, tuple[str, Unit | UnitPart]] = field(default_factory=dict)
    prefixes: tuple[str, ...] = ()
    elision: bool = False
    centimetres_of_mercury: bool = False
    umlauts: bool = False
    grams_of_sugar: bool = False
    not_english: frozenset[str] = frozenset()
    no_intents: tuple[str, ...] = ()
    literal_words: frozenset[str] = frozenset()
    calendar: Calendar | None = None
    intents: Mapping[Intent, tuple[str, ...]] = field(default_factory=dict)
    concepts: Mapping[Concept, str] = field(default_factory=dict)
    answers: Mapping[Answer, str] = field(default_factory=dict)
    destroys: Destroys = Destroys()
    balance_stages: tuple[tuple[str, ...], ...] = ()
    questions: Mapping[Question, tuple[str, ...]] = field(default_factory=dict)
    sexes: Mapping[Sex, tuple[str, ...]] = field(default_factory=dict)
    requests: Mapping[Request, tuple[str, ...]] = field(default_factory=dict)
    fillers: tuple[str, ...] = ()
    leads: tuple[str, ...] = ()
    dialect: Mapping[str, str] = field(default_factory=dict)
    openers: tuple[str, ...] = ()
    no_openers: tuple[str, ...] = ()
    closers: tuple[str, ...] = ()
    statements: tuple[str, ...] = ()
    joints: frozenset[str] = frozenset()


def split(phrases: str) -> tuple[str, ...]:
    """Split a lexicon line at semicolons: "a; b c" is ("a", "b c")."""
    return tuple(p.strip() for p in phrases.split(";") if p.strip())
