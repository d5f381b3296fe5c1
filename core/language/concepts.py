"""The concepts that danger signs are made of. Each language has one table of words for each `Concept` (`en_signs` ...).

In a table, words and phrases stand between commas. "pain*" is any word that begins so, "*tablette*" any that holds it;
".." in a phrase allows up to three words between ("took .. tablets"). Small words of `FILLER` may stand anywhere.
Spelling is folded on both sides (`core.language.text.plain`): no accents, no case, one spelling of Arabic letters.
"""

from __future__ import annotations

from enum import StrEnum, auto


class Concept(StrEnum):
    """What a word can be about."""

    # parts of the body
    CHEST = auto()
    HEART = auto()  # the beat and the pulse as well
    ARM_OR_JAW = auto()  # where pain from the heart spreads to: left arm, jaw, neck, between the shoulder blades
    FACE = auto()
    LIPS_OR_TONGUE = auto()  # what swells in an allergic reaction, eyelids too
    THROAT = auto()
    LIMB = auto()  # an arm, a leg, a side of the body
    LEG = auto()  # one leg, or a part of it
    LEGS = auto()  # both
    EYE = auto()
    JOINT = auto()  # joints and muscles

    # heart
    CHEST_PAIN = auto()  # in one word, or in a phrase that holds both
    HEART_ATTACK = auto()
    HURT = auto()
    PRESS = auto()  # pressure, weight, tightness
    SPREADS = auto()
    CLUTCH = auto()  # holding the chest, as seen by another
    RACING = auto()  # fast, pounding, uneven, skipping
    PALPITATIONS = auto()
    COLD_SWEAT = auto()

    # brain
    STROKE = auto()
    DROOP = auto()
    NUMB = auto()
    LIMP = auto()  # floppy, dead, will not obey
    WEAK = auto()
    ONE_SIDE = auto()
    CANNOT = auto()
    MOVE = auto()  # move, lift, feel, hold
    FEEL = auto()
    SPEAK = auto()
    SPEECH = auto()
    GARBLED = auto()  # said of speech
    SLURRED = auto()  # says it all alone
    SEE = auto()
    SIGHT_LOST = auto()
    CURTAIN = auto()  # said of an eye: a curtain, a light that went out
    CONFUSED = auto()
    LOST_BEARINGS = auto()  # "I do not know where I am"
    HEADACHE = auto()
    WORST = auto()
    SEVERE = auto()
    SUDDEN = auto()
    FAINTED = auto()
    CAME_ROUND = auto()  # woke, found oneself
    FLOOR = auto()
    SEIZURE = auto()
    JERKING = auto()
    DIZZY = auto()
    AGAIN = auto()  # again, still, for days, every time

    # breath
    BREATHE = auto()
    CHOKING = auto()  # cannot breathe, says it all alone
    AIR_HUNGER = auto()  # lack of air: an emergency unless it comes with effort
    BREATHLESS = auto()
    BLUE = auto()
    REST = auto()  # sitting, lying, doing nothing
    TASKS = auto()  # stairs, dressing, more than usual
    INHALE = auto()

    # blood
    BLEED = auto()
    BLOOD = auto()
    WOUND = auto()
    NOT_STOPPING = auto()
    MUCH = auto()
    HAEMORRHAGE = auto()
    VOMIT = auto()
    COUGH = auto()
    STOOL = auto()
    BLACK = auto()

    # medicines and poisons
    OVERDOSE = auto()
    TOOK = auto()
    SWALLOWED = auto()
    TABLETS = auto()
    INSULIN = auto()
    TOO_MUCH = auto()  # all of them, twice, by mistake, instead of
    POISON = auto()

    # despair
    KILL_SELF = auto()
    CUT_SELF = auto()
    END_IT = auto()
    TONIGHT = auto()
    FAREWELL = auto()
    READY = auto()
    MEANS = auto()  # a blade, a rope, tablets
    THOUGHTS = auto()  # "I think of ...", "I would never do it"
    DEATH_WISH = auto()
    HOPELESS = auto()
    RESIGNED = auto()  # "why bother": by itself only a sigh
    PLAN = auto()
    BRINK = auto()  # a place to jump from

    # eating
    EATING = auto()  # says it all alone
    ON_PURPOSE = auto()
    MEAL = auto()
    NOT_EATEN = auto()
    FOR_DAYS = auto()

    # swelling
    SWOLLEN = auto()
    BIGGER = auto()
    HOT_OR_RED = auto()
    CLOT = auto()
    CLOSING = auto()  # said of the throat
    ALLERGY = auto()
    RASH = auto()  # hives, an itch all over
    TRIGGER = auto()  # stings, nuts, a new medicine

    # exercise
    NAUSEA = auto()
    FATIGUE = auto()
    SHARP = auto()  # twisted, pulled, snapped
    INJURY = auto()  # says it all alone
    EFFORT = auto()  # exercise, walk, test; newly

    # falls, sugar, water
    HEAD = auto()
    HIT = auto()  # said of the head
    HEAD_INJURY = auto()  # says it all alone
    THINNERS = auto()  # medicines that thin the blood
    SUGAR = auto()  # in the blood
    METER = auto()  # what shows it, or something else
    SHAKY = auto()  # trembling, sweating
    SUGAR_LOW = auto()  # a low reading in figures counts too
    HYPO = auto()  # low blood sugar in one word
    INHALER = auto()  # asthma too
    NO_USE = auto()  # said of the inhaler: does not help; of asthma: an attack
    URINATE = auto()
    GROIN = auto()
    FAST_RATE = auto()  # a heart rate far too fast; figures count too

    # a cry for help
    CRY = auto()
    HELP_ME = auto()
    URGENT = auto()
    CALL = auto()
    AMBULANCE = auto()
    DYING = auto()

    # poisons of the air, infection
    GAS = auto()  # carbon monoxide and what makes it
    POISONED = auto()  # what gas does; an alarm that goes; all of us
    FEVER = auto()
    RIGOR = auto()  # with a fever: chattering teeth, confusion, a rash that does not fade
    STREAK = auto()  # a red line that climbs a limb
    DROWSY = auto()
    SKIP = auto()  # leave a medicine out
    DOWN = auto()  # said of weight
    LOW_SHOWN = auto()  # said of a meter: "LO", an arrow down

    # something is amiss: the second, wider net, which only asks
    VITAL = auto()  # sight, memory, the voice
    PART = auto()  # every other part of the body
    AMISS = auto()  # what no part of the body should do: burst, go out, drip, not obey
    ODD = auto()  # strange, fading, rattling: said of what is vital
    AS_IF = auto()  # "like a ...": people describe what they have no word for
    ONSET = auto()  # suddenly, worse and worse
    SCENE = auto()  # everything, the room
    DIM = auto()  # goes grey, tilts
    DO = auto()  # what anybody can do: get up, swallow, stay awake
    DREAD = auto()  # says it all alone: fear, a bad turn, in and out of it
    HAZARD = auto()  # says it all alone: gas, a crash, boiling oil
    FALL = auto()
    FALL_FROM = auto()  # a ladder, the stairs; on the head
    MEDICINE = auto()  # besides tablets and insulin
    MISUSE = auto()
    SENSELESS = auto()  # said of somebody else
    HELP_ALONE = auto()  # "help me", when nothing else is said

    # how it is said
    NO = auto()  # denies what follows
    NO_AFTER = auto()  # denies what stands before: "chest pain: none"
    BETWEEN = auto()  # may stand between a "no" and what it denies
    AND = auto()  # a list word that may or may not carry a "no" on
    NOR = auto()  # one that does
    BUT = auto()  # starts a fresh thought
    CLAUSE = auto()  # because, when, since: a "no" does not reach past it
    FINE = auto()  # said of a part of the body: nothing wrong there
    PAST = auto()
    BYGONE = auto()  # right before a named condition: "after my", "in hospital with"
    ONLY_BESIDE = auto()  # a word that says a sign only beside a complaint or a part of the body: "blue", "dropped"
    NOW = auto()
    JUST_NOW = auto()
    EARLIER = auto()  # earlier today
    SETTLED = auto()  # the complaint itself went away
    IMAGINED = auto()
    FICTION = auto()  # films, news
    FIGURATIVE = auto()  # what takes the breath away without danger: prices, a match, a view
    NEARLY = auto()  # nearly, could have: before a heart attack, a figure of speech
    EVERYDAY = auto()  # what explains a mild complaint: gardening, a carousel, a cold morning, "as always"
    LAUGHTER = auto()
    THING = auto()  # what can break down without harm: a phone, a cake
    HERO = auto()  # of a story
    OTHERS = auto()
    COMPANY = auto()  # where the client meets others: "my" says nothing of the client there ("a lady in my class")
    ELSEWHERE = auto()  # in hospital, at work, passed away
    MINE = auto()
    DONT_KNOW = auto()  # no answer: "I do not know", "what do you mean"
    FILLER = auto()
    HARMLESS = auto()  # figures of speech and look-alikes, taken out first


class Answer(StrEnum):
    """What somebody says to "Is it happening now?"."""

    YES = auto()
    HESITANT = auto()  # counts as a yes
    NO = auto()
    OVER = auto()
    OTHER_PERSON = auto()
    NOT_A_SIGN = auto()
