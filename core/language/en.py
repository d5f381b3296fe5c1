"""English, as people type it."""

from __future__ import annotations

from decimal import Decimal

from core.language.en_amiss import AMISS
from core.language.en_everyday import EVERYDAY
from core.language.en_questions import QUESTIONS
from core.language.en_requests import JOINTS, REQUESTS
from core.language.en_signs import ANSWERS, CONCEPTS
from core.language.en_talk import CALENDAR, DESTROYS, SEXES, WISHES
from core.language.lexicon import Lexicon, UnitPart, WordRole, split
from core.language.literal_words import LITERAL_WORDS
from core.language.weak_words import WEAK_WORDS
from core.quantity import Unit

OPENERS = split(
    "what;whats;what's;which;who;whos;who's;why;how;hows;how's;where is;where are;where do;where can;"
    "wheres;where's;when is;when are;when do;when will;when can;when should;whens;when's;am i;is it;"
    "is that;is this;is my;is there;is 1;are you;are they;are there;are we;do i;do you;do we;does it;"
    "does this;does that;did i;did you;did my;did it;did that;can i;can you;can we;could i;could you;"
    "could we;should i;should we;shall i;shall we;will i;will you;will it;would it;would you;would that;"
    "may i;have i;have you;has it;isnt it;isn't it;isnt that;cant i;cant you;can't i;can't you"
)
NO_OPENERS = split("what a;how lovely;how nice;how kind;how are things with you")

D = Decimal

_ONES = split(
    "zero;one;two;three;four;five;six;seven;eight;nine;ten;eleven;twelve;thirteen;fourteen;fifteen;sixteen;"
    "seventeen;eighteen;nineteen"
)
_TENS = split("twenty;thirty;forty;fifty;sixty;seventy;eighty;ninety")


def _numbers() -> dict[str, Decimal]:
    """0 to 999, with and without "and"; "one twenty eight" as pressures are said aloud."""
    small = {word: n for n, word in enumerate(_ONES)}
    for t, tens in enumerate(_TENS, start=2):
        small[tens] = 10 * t
        small |= {f"{tens} {_ONES[n]}": 10 * t + n for n in range(1, 10)}
    found = dict(small)
    for hundred, n in [("a hundred", 1), *((f"{_ONES[n]} hundred", n) for n in range(1, 10))]:
        found[hundred] = 100 * n
        for word, rest in small.items():
            if rest:
                found[f"{hundred} and {word}"] = found[f"{hundred} {word}"] = 100 * n + rest
    found |= {f"hundred and {word}": 100 + n for word, n in small.items() if n}  # "a" left out
    found |= {f"one {word}": 100 + n for word, n in small.items() if n >= 10}
    found |= {
        "nought": 0,
        "fourty": 40,
        "fourty two": 42,
        "oh": 0,
        "dozen": 12,
        "a dozen": 12,
        "once": 1,
        "twice": 2,
        "thrice": 3,
    }
    return {word: D(n) for word, n in found.items()}


ENGLISH = Lexicon(
    code="en",
    own_name="English",
    decimal=".",
    numbers=_numbers(),
    weak=("one", "oh"),
    units={
        Unit.KILOGRAM: split("kg;kgs;kilo;kilos;kilogram;kilograms;kilogramme;kilogrammes;kilogrammes;kgms;keys"),
        Unit.POUND: split("lb;lbs;pound;pounds;pnds;punds"),
        Unit.STONE: split("st;stone;stones;stn;ston"),
        Unit.CENTIMETRE: split("cm;cms;centimetre;centimetres;centimeter;centimeters;centi;cents"),
        Unit.METRE: split("m;metre;metres;meter;meters;mtr;mtrs"),
        Unit.INCH: split("in;ins;inch;inches;inchs;inche"),
        Unit.FOOT: split("ft;foot;feet"),
        Unit.BEATS_PER_MINUTE: split(
            "bpm;beats;beat;beats per minute;beats a minute;beats per min;beats a min;per minute;"
            "a minute;per min;pm bpm"
        ),
        Unit.MILLIMETRE_OF_MERCURY: split("mmhg;mm hg"),
        Unit.SECOND: split("s;sec;secs;second;seconds;scs;sek"),
        Unit.MINUTE: split("min;mins;minute;minutes;m;mns"),
        Unit.METRE_PER_SECOND: split("metres per second;meters per second;metres a second;mps"),
        Unit.REPETITION: split("reps;rep;repetitions;stands;stand;rises;rise"),
        Unit.STEP: split("steps;step"),
        Unit.POINT: split("points;point;pts"),
        Unit.DAY: split("days;day"),
        Unit.SESSION: split("sessions;session;workouts;workout;classes;class"),
    },
    parts={
        UnitPart.GRAM: split("g;gram;grams;gr;gramme;grammes"),
        UnitPart.OUNCE: split("oz;ounce;ounces"),
        UnitPart.MILLIMETRE: split("mm;millimetres;millimeters"),
        UnitPart.HOUR: split("h;hr;hrs;hour;hours"),
    },
    amounts={
        "an hour": ("1", UnitPart.HOUR),
        "couple of hours": ("2", UnitPart.HOUR),
        "a couple of hours": ("2", UnitPart.HOUR),
    },
    roles={
        WordRole.LEAD: split(
            "weighs;has;had;just got off the scales;got off the scales;just off the scales;off the scales;"
            "just stepped off the scales;just weighed myself;just been weighed;weighed myself;i managed;got to;"
            "made it to;now at;i got to;"
            "top;bottom;upper;lower;got;get;says;say;reads;read;shows;showed;did;managed;counted;made;"
            "oh;btw;well;im;i am;came to;came out at;reading;mine is;just;only;so;ok;this time;"
            "watch;my watch;fitbit;garmin;clock;tape;monitor;machine;meter;cuff;app;tracker;morning all;id say;"
            "i'd say;call it;about a;measured;weighed in at;weighing in at;it came to;that makes;so;walked;"
            "sitting;solid;a solid"
        ),
        WordRole.AND: split("and;&;plus"),
        WordRole.POINT: split("point;dot;decimal"),
        WordRole.HALF: split("half;and a half;a half;and half;half a;half an"),
        WordRole.QUARTER: split("quarter;and a quarter;a quarter;a quarter of an;quarter of an;and one quarter"),
        WordRole.THREE_QUARTERS: split("three quarters;and three quarters;three quarters of an"),
        WordRole.LESS_A_QUARTER: split("less a quarter;minus a quarter"),
        WordRole.THIRD: split("a third of an;third of an;and a third"),
        WordRole.LESS_A_THIRD: split("less a third"),
        WordRole.WITHIN: split("in;over;per;during;for;within;after;@"),
        WordRole.OVER: split("over;on;by;above;/;upon"),
        WordRole.TIMES: split("x;times;time;multiplied by;*;twice;thrice;once;lots of;times for;goes of"),
        WordRole.OUT_OF: split("out of;of;/;from"),
        WordRole.RANGE: split("to;till;or;-;~;or maybe;or so to"),
        WordRole.HEDGE: split(
            "about;around;roughly;approx;approximately;ca;circa;c;maybe;perhaps;probably;i think;i guess;"
            "ish;or so;~;give or take;nearly;almost;just over;just under;a bit over;a bit under;"
            "a little over;a little under;somewhere around;more or less;say;close to"
        ),
        WordRole.AND_SOME: split("something;somethin;odd;and something"),
        WordRole.AFTER: split(
            "after;just after;right after;straight after;soon after;following;when i;while;whilst;during;from;once i"
        ),
        WordRole.STIRRING: split("coffee;tea;cigarette;smoke;smoking;smoked;vape;argument;row;sauna;hot bath"),
        WordRole.BOUND: split(
            "more than;less than;over;under;above;below;at least;at most;up to;>;<;not more than;"
            "no more than;bigger than;between"
        ),
        WordRole.CHANGE: split(
            "lost;gained;down;up;more;less;fewer;better;worse;dropped;added;higher;lower;heavier;lighter;"
            "+;down by;up by;lost another;put on;went up;went down;went up by;went down by;came down"
        ),
        WordRole.NOT: split("not;isn't;wasn't;no longer;never;ain't"),
        WordRole.NOTHING: split(
            "none;nothing;nil;zero;not any;no;not at all;nowt;didn't do any;didn't;i didn't;haven't;not one"
        ),
        WordRole.CLOCK: split("at;am;pm;a m;p m;o'clock;since;until"),
        WordRole.LABEL: split("day;week;attempt;try;no;number;reading;test;try number;question;room;age;aged;born"),
        WordRole.EACH_DAY: split(
            "a day;per day;each day;every day;daily;/day;most days;a session;each time;each;every time"
        ),
        WordRole.EVERY_DAY: split("every day;all seven;daily;all week;each day;every single day"),
        WordRole.DAYS: split(
            "days;day;walks;walk;sessions;session;times;time;classes;swims;rides;runs;mornings;evenings"
        ),
        WordRole.FOREIGN: split(
            "percent;per cent;kpa;celsius;degrees;years;year;yrs;weeks;week;months;month;km;miles;mile;"
            "calories;kcal;litres;mg;ml;"
            "question;questions;tapes;friends;kids;boxes;bags;batteries;pairs;children;grandchildren;dogs;cats;"
            "chairs;cups;pints;euros;pounds sterling;people;visitors"
        ),
        WordRole.ARMS: split(
            "used my arms;using my arms;with arms;with my arms;used arms;used my hands;with my hands;"
            "using my hands;pushed with my arms;pushed with my hands;arms used;used the armrests;"
            "pushed off;pushed up with my arms;pushed up with my hands;had to use my arms;used the arms"
        ),
        WordRole.HALF_WAY: split(
            "more than half way;more than halfway;over half way;over halfway;nearly up;almost up;"
            "and almost another;and nearly another;past half way;past halfway;almost another one;"
            "and most of another;more than half;over half"
        ),
        WordRole.STOPPED: split(
            "stopped;then stopped;had to stop;gave up;couldn't finish;could not finish;didn't finish;"
            "did not finish;couldn't;could not;can't;cannot;couldn't do it;didn't manage;unable;"
            "only managed;only did;not finished;didn't complete;failed;quit;too hard;not able"
        ),
        WordRole.VIGOROUS: split("vigorous;vigorously;hard;intense;strenuous;running;jogging;intensive;brisk running"),
        WordRole.FILLER: split(
            "i'm afraid;im afraid;i am afraid;sadly;unfortunately;sorry to say;"
            "this week;this;week;today;sadly;unfortunately;at all;much;did;exercise;any;it's;its;it;is;"
            "was;it was;should be;be;my;the;that's;that;actually;a;number;i;really;"
            "of course;rather;real;"
            "value;reading;oops;typo;sorry;wrong;weight;=;:;correct;"
            "once in a while;at once;once more;once again;one of these days;one of those days;for once;"
            "one moment;one second;one sec;a couple of things;one more thing;one thing"
        ),
        WordRole.FAREWELL: split(
            "see you;see you on;see you on the;talk on the;until the;till the;bye until;back on the"
        ),
        WordRole.SORRY: split(
            "no;nope;sorry;oops;wait;ops;whoops;hang on;hold on;mistake;typo;*;er;erm;rather;actually;ah no;"
            "oh no;no no;wrong;my mistake;my bad;no sorry;sorry no;no wait;i mistyped;mistyped;edit"
        ),
        WordRole.MEANT: split(
            "i meant;meant;i mean;should be;should have been;should say;should read;correction;instead;"
            "make that;meant to say;meant to write;meant to type;correct that to;correct to;change it to;"
            "change that to;change to;correct is;it's actually;it is actually;was actually;corrected"
        ),
        WordRole.PLEASE: split(
            "please;pls;plz;actually;can you;could you;can i;could i;i want to;i would like to;i'd like to;i wanna;"
            "let me;just;now;ok;okay;hi;hello;hey;thanks;thank you;i need to;may i;want to;would like to;"
            "i need;i want;show me;give me;show"
        ),
    },
    balance_stages=(
        ("side by side", "feet together", "feet side by side", "first stage"),
        ("semi tandem", "semitandem", "half tandem", "half heel to toe", "instep at big toe", "second stage"),
        ("tandem", "full tandem", "heel to toe", "third stage"),
        ("one leg", "on one leg", "single leg", "one foot", "fourth stage"),
    ),
    names={
        "weight": split("weight;weigh;i weigh;body weight;mass;scales;the scales;wt;weighed"),
        "height": split("height;tall;stature;how tall;ht"),
        "waist": split("waist;belly;tummy;middle;stomach;waistline;w"),
        "hip": split("hip;hips;bottom;bum;h"),
        "resting_heart_rate": split(
            "pulse;heart rate;resting heart rate;heartrate;resting pulse;hr;rhr;heart beat;heartbeat"
        ),
        "blood_pressure": split("blood pressure;bp;pressure"),
        "energy": split("energy;energy level;energy levels;vitality"),
        "chair_stand_30s": split("chair stand;chair stands;sit to stand;sit to stands;chair test"),
        "five_chair_stands": split("five chair stands;five stands;5 stands;five rises"),
        "timed_up_and_go": split("up and go;timed up and go;tug;get up and go"),
        "six_minute_walk": split("six minute walk;walk test;6 minute walk"),
        "two_minute_step": split("step test;two minute step;marching"),
        "one_leg_stance": split("one leg;one leg stance;balance"),
        "walk_mile": split("mile walk;walk mile;mile"),
        "activity_minutes": split("activity;active;active minutes;activity minutes;exercise;moving;minutes active"),
        "strength_days": split("strength;strength days;strength training;weights;strengthening"),
        "sessions_done": split("sessions done;plan sessions;workouts done"),
        "session_effort": split("effort;how hard;exertion"),
    },
    calendar=CALENDAR,
    intents=WISHES,
    concepts=CONCEPTS | AMISS | EVERYDAY | WEAK_WORDS["en"],
    literal_words=LITERAL_WORDS["en"],
    answers=ANSWERS,
    destroys=DESTROYS,
    questions=QUESTIONS,
    requests=REQUESTS,
    joints=JOINTS,
    sexes=SEXES,
    openers=OPENERS,
    no_openers=NO_OPENERS,
)
