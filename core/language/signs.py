"""The signs that must stop everything, as combinations of concepts: one table for all languages.

Levels are the three-way handling of function.md 9.1 (ours, not a published scale). Thoughts of death are for a talk,
intent, a plan or an act are an emergency. Nothing here is a diagnosis.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from core.language.concepts import Concept as C
from core.language.lexicon import Level

EMERGENCY, SAME_DAY, STOP_REST, TALK = Level.EMERGENCY, Level.SAME_DAY, Level.STOP_REST, Level.TALK
Part = tuple[C, ...]  # any of them


HEAD_FLAGS: tuple[C, ...] = (  # what makes a knock on the head urgent (common practice)
    C.VOMIT, C.NAUSEA, C.CONFUSED, C.DIZZY, C.SEVERE, C.BLEED, C.BLOOD, C.SIGHT_LOST, C.HEADACHE, C.THINNERS, C.DROWSY,
)  # fmt: skip
ACHES: tuple[C, ...] = (C.HURT, C.PRESS, C.SWOLLEN, C.NAUSEA, C.DIZZY, C.FINE)  # "I feel no pain in my arm" is well
SENSES: tuple[C, ...] = (C.VITAL, C.HEAD, C.EYE, C.SEE, C.SPEECH, C.CHEST, C.HEART, C.BREATHE, C.FACE, C.LIPS_OR_TONGUE,
    C.THROAT)  # fmt: skip
BODY_PARTS: tuple[C, ...] = (C.PART, C.LIMB, C.LEG, C.LEGS, C.ARM_OR_JAW, C.JOINT)
SEEN: tuple[C, ...] = (C.CLUTCH, C.NUMB, C.LIMP, C.BLUE, C.JERKING, C.CONFUSED, C.COLD_SWEAT)  # in anybody
COMPLAINTS: tuple[C, ...] = (*SEEN, C.DROOP, C.SPREADS)
AMISS = "amiss"  # the key of the wider net


@dataclass(frozen=True, slots=True)
class Sign:
    """A combination of concepts close together in one clause, in any order, that makes a sign.

    unless: concepts that make it something milder; `softened` is then the level, None for no sign at all.
    named: a name for a condition rather than something seen ("stroke"): of another person it may well be long ago.
    sure: False when the words alone never suffice to act on, only to ask. net: looked for only where a message holds no
    other sign, denied or not, and is about here and now. alone: only where the message says nothing besides.
    """

    key: str
    level: Level
    parts: tuple[Part, ...]
    unless: Part = ()
    softened: Level | None = None
    named: bool = False
    sure: bool = True
    net: bool = False
    alone: bool = False


def _signs() -> Iterator[Sign]:
    def sign(key: str, level: Level, *parts: C | Part, named: bool = False, sure: bool = True) -> Sign:
        either = tuple(p if isinstance(p, tuple) else (p,) for p in parts)
        return Sign(key, level, either, named=named, sure=sure)

    yield sign("chest_pain", EMERGENCY, C.CHEST_PAIN)
    yield sign("chest_pain", EMERGENCY, C.HEART_ATTACK, named=True)
    yield sign("chest_pain", EMERGENCY, C.CHEST, (C.HURT, C.PRESS))
    yield sign("chest_pain", EMERGENCY, C.CHEST, C.CLUTCH)
    yield sign("chest_pain", EMERGENCY, C.HEART, C.HURT)
    yield sign("chest_pain", EMERGENCY, C.HURT, C.INHALE)
    yield sign("arm_jaw_neck_pain", STOP_REST, C.ARM_OR_JAW, (C.HURT, C.PRESS))
    yield sign("cold_sweat", STOP_REST, C.COLD_SWEAT)
    yield sign("palpitations", EMERGENCY, (C.HEART, C.PALPITATIONS), (C.RACING, C.PALPITATIONS), C.DIZZY)
    yield sign("palpitations", EMERGENCY, (C.HEART, C.PALPITATIONS), (C.RACING, C.DIZZY), C.FAST_RATE)
    yield sign("palpitations", SAME_DAY, (C.HEART, C.PALPITATIONS), C.FAST_RATE, C.REST)
    yield sign("palpitations", SAME_DAY, C.PALPITATIONS)
    yield sign("palpitations", SAME_DAY, (C.HEART, C.CHEST), C.RACING)

    yield sign("stroke_signs", EMERGENCY, C.STROKE, named=True)
    yield sign("stroke_signs", EMERGENCY, C.FACE, (C.DROOP, C.NUMB))
    yield sign("stroke_signs", EMERGENCY, C.LIMB, (C.NUMB, C.LIMP))
    yield sign("stroke_signs", EMERGENCY, C.LIMB, C.CANNOT, C.MOVE)
    yield sign("stroke_signs", EMERGENCY, C.WEAK, (C.ONE_SIDE, C.SUDDEN))
    yield sign("stroke_signs", EMERGENCY, C.SPEECH, C.GARBLED)
    yield sign("stroke_signs", EMERGENCY, C.CANNOT, C.SPEAK)
    yield sign("stroke_signs", EMERGENCY, C.SLURRED)
    yield sign("stroke_signs", EMERGENCY, (C.CANNOT, C.NO), C.SEE, C.EYE)
    yield sign("stroke_signs", EMERGENCY, C.CANNOT, C.SEE, C.SUDDEN)
    yield sign("stroke_signs", EMERGENCY, C.SIGHT_LOST)
    yield sign("stroke_signs", EMERGENCY, (C.EYE, C.SEE), C.CURTAIN)
    yield sign("stroke_signs", EMERGENCY, C.CONFUSED, C.SUDDEN)
    yield sign("stroke_signs", EMERGENCY, C.LOST_BEARINGS)
    yield sign("stroke_signs", EMERGENCY, C.HEADACHE, (C.SUDDEN, C.WORST, C.CONFUSED, C.SIGHT_LOST))
    yield sign("severe_headache", STOP_REST, C.HEADACHE, C.SEVERE)

    yield sign("faint", EMERGENCY, C.FAINTED)
    yield sign("faint", EMERGENCY, C.CAME_ROUND, C.FLOOR)
    yield sign("seizure", EMERGENCY, C.SEIZURE)
    yield sign("seizure", EMERGENCY, C.JERKING)
    yield sign("dizzy", SAME_DAY, C.DIZZY, C.AGAIN)
    yield sign("dizzy", STOP_REST, C.DIZZY)

    yield sign("breathless_at_rest", EMERGENCY, C.CHOKING)
    yield Sign("breathless_at_rest", EMERGENCY, ((C.CANNOT,), (C.BREATHE,)), unless=(C.TASKS,))
    yield sign("breathless_at_rest", EMERGENCY, C.BLUE)
    yield Sign("breathless_at_rest", EMERGENCY, ((C.AIR_HUNGER,),), unless=(C.TASKS,))
    yield sign("breathless_at_rest", EMERGENCY, (C.AIR_HUNGER, C.BREATHLESS), (C.REST, C.SEVERE))
    yield sign("breathless_at_rest", EMERGENCY, C.INHALER, C.NO_USE)
    yield sign("breathless_on_usual_tasks", SAME_DAY, (C.AIR_HUNGER, C.BREATHLESS), (C.TASKS, C.AGAIN))
    yield sign("breathless_on_usual_tasks", SAME_DAY, C.CANNOT, C.BREATHE, C.TASKS)
    yield sign("breathless", STOP_REST, C.BREATHLESS)

    yield sign("bleeding", EMERGENCY, C.HAEMORRHAGE)
    yield sign("bleeding", EMERGENCY, (C.BLEED, C.BLOOD), (C.NOT_STOPPING, C.MUCH))
    yield sign("bleeding", EMERGENCY, C.BLOOD, (C.VOMIT, C.COUGH, C.STOOL))
    yield sign("bleeding", EMERGENCY, C.WOUND, C.NOT_STOPPING)
    yield sign("bleeding", EMERGENCY, C.STOOL, C.BLACK)
    yield sign("bleeding", EMERGENCY, C.BLEED, C.THINNERS)
    yield sign("bleeding", EMERGENCY, C.BLEED, sure=False)

    yield sign("overdose", EMERGENCY, C.OVERDOSE)
    yield sign("overdose", EMERGENCY, (C.TOOK, C.SWALLOWED), C.TABLETS, C.TOO_MUCH)
    yield sign("overdose", EMERGENCY, C.INSULIN, C.TOO_MUCH)
    yield sign("overdose", EMERGENCY, C.SWALLOWED, C.TABLETS, C.OTHERS)
    yield sign("overdose", EMERGENCY, (C.SWALLOWED, C.TOOK), C.POISON)

    yield Sign("despair", EMERGENCY, ((C.KILL_SELF,),), unless=(C.THOUGHTS,), softened=TALK)
    yield Sign("despair", EMERGENCY, ((C.CUT_SELF,),), unless=(C.THOUGHTS,), softened=TALK)
    yield sign("despair", EMERGENCY, C.END_IT, C.TONIGHT)
    yield sign("despair", EMERGENCY, C.FAREWELL)
    yield sign("despair", EMERGENCY, C.TABLETS, C.READY)
    yield sign("despair", EMERGENCY, C.DEATH_WISH, (C.MEANS, C.TONIGHT, C.TABLETS))
    yield sign("despair", EMERGENCY, (C.DEATH_WISH, C.HOPELESS, C.RESIGNED), C.PLAN)
    yield sign("despair", EMERGENCY, C.DEATH_WISH, (C.HOPELESS, C.RESIGNED))
    yield sign("despair", TALK, C.DEATH_WISH)
    yield sign("despair", TALK, C.HOPELESS)
    yield sign("despair", TALK, C.RESIGNED, sure=False)

    yield sign("eating_worry", TALK, C.EATING)
    yield sign("eating_worry", TALK, C.VOMIT, (C.ON_PURPOSE, C.MEAL))
    yield sign("eating_worry", TALK, C.NOT_EATEN, C.FOR_DAYS)

    yield sign("leg_swelling", SAME_DAY, C.LEG, (C.SWOLLEN, C.BIGGER, C.HOT_OR_RED, C.CLOT))
    yield sign("leg_swelling", SAME_DAY, C.CLOT)
    yield sign("swollen_legs", SAME_DAY, C.LEGS, C.SWOLLEN)
    yield sign("allergic_reaction", EMERGENCY, C.ALLERGY)
    yield sign("allergic_reaction", EMERGENCY, C.THROAT, (C.CLOSING, C.SWOLLEN))
    yield sign("allergic_reaction", EMERGENCY, (C.FACE, C.LIPS_OR_TONGUE), C.SWOLLEN)
    yield sign("allergic_reaction", EMERGENCY, C.RASH, (C.BREATHLESS, C.AIR_HUNGER, C.CHOKING, C.SWOLLEN, C.TRIGGER))
    yield sign("allergic_reaction", EMERGENCY, C.TRIGGER, (C.BREATHLESS, C.AIR_HUNGER))
    yield Sign("allergic_reaction", EMERGENCY, ((C.TRIGGER,), (C.DIZZY,)), unless=(C.TABLETS, C.MEDICINE))

    yield sign("nausea", STOP_REST, C.NAUSEA)
    yield sign("nausea", STOP_REST, C.VOMIT)
    yield sign("unusual_fatigue", STOP_REST, C.FATIGUE)
    yield sign("new_joint_pain", STOP_REST, C.JOINT, C.SHARP)
    yield sign("new_joint_pain", STOP_REST, C.JOINT, C.HURT, C.EFFORT)
    yield sign("new_joint_pain", STOP_REST, C.INJURY)

    yield sign("head_injury", EMERGENCY, C.HEAD_INJURY)
    yield sign("head_injury", EMERGENCY, C.HEAD, C.HIT, HEAD_FLAGS)
    yield sign("head_injury", EMERGENCY, C.FALL, (C.FALL_FROM, C.HEAD), (*HEAD_FLAGS, C.LOST_BEARINGS))
    yield sign("head_injury", SAME_DAY, C.HEAD, C.HIT)
    yield sign("low_sugar", EMERGENCY, C.HYPO)
    yield sign("low_sugar", EMERGENCY, C.SUGAR, C.SUGAR_LOW)
    yield sign("low_sugar", EMERGENCY, C.METER, C.SUGAR_LOW, C.SHAKY)
    yield sign("low_sugar", EMERGENCY, (C.METER, C.SUGAR), C.SHAKY, (C.CONFUSED, C.SENSELESS))
    yield sign("low_sugar", EMERGENCY, C.SUGAR, C.SHAKY, sure=False)
    yield sign("cannot_pass_water", EMERGENCY, C.CANNOT, C.URINATE)
    yield sign("cannot_pass_water", EMERGENCY, C.GROIN, C.NUMB)

    yield sign("call_for_help", EMERGENCY, C.CRY)
    yield sign("call_for_help", EMERGENCY, C.CALL, C.AMBULANCE)
    yield Sign("call_for_help", EMERGENCY, ((C.AMBULANCE,),), alone=True)
    yield sign("call_for_help", EMERGENCY, C.HELP_ME, C.URGENT)
    yield sign("call_for_help", EMERGENCY, C.DYING)

    yield sign("carbon_monoxide", EMERGENCY, C.GAS, C.POISONED)
    yield sign("infection", EMERGENCY, C.FEVER, C.RIGOR)
    yield sign("infection", SAME_DAY, C.STREAK)
    yield sign("eating_worry", TALK, C.INSULIN, C.SKIP, C.DOWN)
    yield sign("low_sugar", EMERGENCY, C.METER, C.LOW_SHOWN)
    yield Sign("call_for_help", EMERGENCY, ((C.HELP_ALONE,),), sure=False, alone=True)

    # too little to act on, too much to pass over: one question
    yield sign("stroke_signs", EMERGENCY, (C.EYE, C.SPEECH, C.LIMB, C.FACE, C.HEADACHE), C.SUDDEN, sure=False)
    yield sign("stroke_signs", EMERGENCY, (C.FACE, C.SPEECH), (C.ONE_SIDE, C.CANNOT), sure=False)
    yield sign("stroke_signs", EMERGENCY, C.CANNOT, C.LIMB, sure=False)
    yield sign("stroke_signs", EMERGENCY, C.NUMB, (C.SUDDEN, C.ONE_SIDE), sure=False)
    yield Sign(
        "stroke_signs", EMERGENCY, ((C.LIMB, C.ONE_SIDE, C.FACE), (C.FEEL,), (C.NO, C.CANNOT)), ACHES, sure=False
    )
    yield sign("chest_pain", EMERGENCY, C.CHEST, (C.SUDDEN, C.SPREADS), sure=False)
    yield sign("overdose", EMERGENCY, C.TABLETS, C.TOO_MUCH, sure=False)
    yield sign("allergic_reaction", EMERGENCY, C.TRIGGER, (C.SWOLLEN, C.THROAT, C.LIPS_OR_TONGUE), sure=False)
    yield sign("allergic_reaction", EMERGENCY, C.RASH, sure=False)
    yield sign("bleeding", EMERGENCY, C.BLOOD, sure=False)
    yield sign("despair", EMERGENCY, C.BRINK, sure=False)
    yield sign("call_for_help", EMERGENCY, C.FLOOR, (C.CANNOT, C.URGENT), sure=False)
    yield from _net()


def _net() -> Iterator[Sign]:
    """The second, wider net: what the body, or somebody near, is said to do that it should not. Only ever asked about.

    People have more ways of saying it than any table; so these need no name for the complaint, only that something of
    the body goes wrong, or that somebody is afraid.
    """

    def amiss(*parts: Part, unless: Part = ()) -> Sign:
        return Sign(AMISS, EMERGENCY, parts, unless=unless, sure=False, net=True)

    yield amiss(SENSES, (C.AMISS, C.ODD, C.AS_IF, C.ONSET, *COMPLAINTS))
    yield amiss(BODY_PARTS, (C.AMISS, C.AS_IF, *COMPLAINTS))
    yield amiss((*SENSES, C.SCENE), (C.DIM,))
    yield amiss((C.CANNOT,), (C.DO,))
    yield amiss((C.OTHERS,), (C.SENSELESS, *SEEN))
    yield amiss((C.DREAD,))
    yield amiss((C.HAZARD,))
    yield amiss((C.FALL,), (C.FALL_FROM, C.HEAD), unless=(C.FOR_DAYS, C.PAST))  # an old fall is a caution
    yield amiss((C.MEDICINE, C.TABLETS, C.INSULIN), (C.MISUSE,))
    yield amiss((C.METER, C.SUGAR), (C.AMISS, C.ODD, C.ONSET))


SIGNS: tuple[Sign, ...] = tuple(_signs())

BY_POINTS = Sign(AMISS, EMERGENCY, (), sure=False, net=True)  # where no combination stands, but enough is told
ENOUGH = 7  # points of different rows that are asked about
ENOUGH_ALONE = 9  # of a single word: "that would help" is no cry, "I feel fat" no swelling
TELLS: tuple[tuple[int, Part], ...] = (
    # How much words tell of danger; a row counts once in a message, a word in one row. Found by logistic regression on
    # the tuned alarms of six languages, nearly half of each one's words left out, beside 2,100 everyday sentences; then
    # rounded by hand. A row may be moved a point or two without harm.
    (10, (C.KILL_SELF, C.DEATH_WISH, C.BRINK, C.FAREWELL, C.CUT_SELF)),
    (8, (C.BREATHE, C.CHOKING, C.AIR_HUNGER, C.BREATHLESS)),
    (5, (C.INHALER,)),
    (8, (C.FAINTED, C.DIZZY)),
    (8, (C.SEIZURE, C.JERKING, C.SHAKY, C.RIGOR)),
    (8, (C.BLEED, C.BLOOD, C.HAEMORRHAGE)),
    (8, (C.VOMIT, C.NAUSEA, C.COUGH)),
    (8, (C.SWOLLEN, C.RASH, C.ALLERGY, C.BIGGER, C.BLUE)),
    (7, (C.HELP_ME, C.CRY, C.DYING)),
    (6, (C.FACE, C.LIPS_OR_TONGUE, C.THROAT)),
    (5, (C.CANNOT,)),
    (6, (C.AS_IF,)),
    (6, (C.CONFUSED, C.LOST_BEARINGS)),
    (5, (C.SUDDEN, C.ONSET)),
    (5, (C.DIM,)),
    (5, (C.AMISS,)),
    (5, (C.NUMB, C.LIMP, C.WEAK, C.DROOP)),
    (5, (C.FEVER, C.STREAK)),
    (5, (C.EATING, C.NOT_EATEN)),
    (4, (C.CHEST, C.HEART, C.PALPITATIONS)),
    (4, (C.SPEECH, C.SPEAK)),
    (2, (C.LIMB, C.LEG, C.LEGS, C.ARM_OR_JAW)),
    (4, (C.HEAD, C.VITAL, C.HEADACHE)),
    (4, (C.HURT, C.SHARP)),
    (4, (C.SEVERE, C.WORST)),
    (2, (C.MUCH,)),
    (4, (C.WOUND, C.HIT)),
    (4, (C.NOT_STOPPING,)),
    (4, (C.SUGAR, C.METER)),
    (4, (C.STOOL, C.URINATE)),
    (4, (C.BLACK,)),
    (4, (C.COLD_SWEAT,)),
    (4, (C.HOPELESS, C.PLAN, C.MEANS, C.READY)),
    (3, (C.EYE, C.SEE)),
    (1, (C.TABLETS, C.MEDICINE, C.INSULIN)),
    (3, (C.TOO_MUCH, C.MISUSE)),
    (1, (C.TOOK, C.SWALLOWED)),
    (3, (C.ODD, C.GARBLED)),
    (3, (C.SENSELESS,)),
    (3, (C.FLOOR,)),
    (3, (C.FALL, C.FALL_FROM)),
    (3, (C.TRIGGER,)),
    (3, (C.CLOSING,)),
    (1, (C.URGENT, C.AMBULANCE)),
    (2, (C.PART,)),
    (2, (C.PRESS,)),
    (-3, (C.IMAGINED,)),
    (-3, (C.EFFORT,)),
    (-3, (C.THING,)),
    (-4, (C.FINE,)),
    (-6, (C.PAST,)),
    (-7, (C.FIGURATIVE,)),
    (-8, (C.FICTION, C.HERO)),
    (-8, (C.LAUGHTER,)),
)

ALSO_TELL: tuple[tuple[int, Part], ...] = (  # names and shapes of signs, which the net above need not know; ours
    (12, (C.CHEST_PAIN, C.HEART_ATTACK, C.STROKE, C.FAINTED)),
    (10, (C.OVERDOSE, C.SLURRED, C.SIGHT_LOST)),
    (7, (C.CHEST,)),
    (11, (C.PALPITATIONS,)),
    (8, (C.FAST_RATE,)),
    (8, (C.HYPO, C.HEAD_INJURY, C.CLOT, C.INJURY, C.FATIGUE, C.COLD_SWEAT)),
    (8, (C.WORST,)),
    (6, (C.LOW_SHOWN, C.SUGAR_LOW)),
    (4, (C.CRY, C.DYING)),
    (4, (C.PRESS,)),
    (4, (C.HOT_OR_RED,)),
    (4, (C.ONE_SIDE, C.MOVE, C.FEEL, C.THINNERS, C.TONIGHT, C.INHALE, C.GAS, C.POISONED, C.NO_USE, C.CURTAIN,
         C.SPREADS, C.CLUTCH, C.RACING, C.FOR_DAYS, C.ON_PURPOSE, C.END_IT, C.CALL)),
)  # fmt: skip
ENOUGH_TO_ACT = 11  # points; with fewer, and no word that it is now, one question is asked before anything else
PARTS_TELL = 1  # points, for each part of a sign but the first: what fits together is no accident
SAYS_LITTLE = (C.THING, C.EFFORT)  # "on the sofa", "after the test" make a sign no less one
NOTHING_ELSE = 4  # points, if every word of a message is known: it is about nothing besides

TOGETHER: tuple[tuple[str, str, str], ...] = (  # two signs together are another one, an emergency
    ("leg_swelling", "chest_pain", "leg_swelling_with_breathlessness"),
    ("leg_swelling", "breathless_at_rest", "leg_swelling_with_breathlessness"),
    ("leg_swelling", "breathless_on_usual_tasks", "leg_swelling_with_breathlessness"),
    ("leg_swelling", "breathless", "leg_swelling_with_breathlessness"),
    ("swollen_legs", "breathless_at_rest", "leg_swelling_with_breathlessness"),
    ("swollen_legs", "breathless", "leg_swelling_with_breathlessness"),
    ("head_injury", "nausea", "head_injury"),
    ("head_injury", "dizzy", "head_injury"),
    ("head_injury", "severe_headache", "head_injury"),
    ("arm_jaw_neck_pain", "cold_sweat", "chest_pain"),
    ("arm_jaw_neck_pain", "nausea", "chest_pain"),
    ("arm_jaw_neck_pain", "breathless", "chest_pain"),
    ("arm_jaw_neck_pain", "breathless_at_rest", "chest_pain"),
)

SETTLES: dict[tuple[str, Level], Level] = {  # milder when said to have gone again; the others keep their level
    ("chest_pain", EMERGENCY): SAME_DAY,  # ours: a chest pain that went away is still for today
    ("breathless_on_usual_tasks", SAME_DAY): STOP_REST,
}

BODY: frozenset[C] = frozenset(
    {
        C.CHEST,
        C.HEART,
        C.ARM_OR_JAW,
        C.FACE,
        C.LIPS_OR_TONGUE,
        C.THROAT,
        C.LIMB,
        C.LEG,
        C.LEGS,
        C.EYE,
        C.JOINT,
        C.SPEECH,
    }
)  # said to be "fine", they make no sign

FUNCTIONS: frozenset[C] = frozenset({C.BREATHE, C.AIR_HUNGER, C.BREATHLESS, C.SEE, C.VITAL})  # so are these

COMPANY: frozenset[C] = BODY | FUNCTIONS | {
    C.HURT, C.PRESS, C.SUDDEN, C.ONSET, C.NUMB, C.LIMP, C.WEAK, C.DROOP, C.SWOLLEN, C.CHEST_PAIN, C.HEART_ATTACK,
    C.PALPITATIONS, C.COLD_SWEAT, C.CONFUSED, C.FAINTED, C.DIZZY, C.SEIZURE, C.JERKING, C.SHAKY, C.CHOKING, C.BLEED,
    C.BLOOD, C.HAEMORRHAGE, C.VOMIT, C.NAUSEA, C.COUGH, C.STOOL, C.FEVER, C.RIGOR, C.HEAD, C.PART, C.KILL_SELF,
    C.DEATH_WISH, C.END_IT, C.HOPELESS, C.FAREWELL, C.CUT_SELF, C.MEANS, C.TABLETS, C.MEDICINE, C.INSULIN, C.POISON,
    C.TOO_MUCH, C.SWALLOWED, C.SENSELESS, C.FLOOR, C.HELP_ME, C.CRY, C.AMBULANCE, C.WOUND, C.NOT_STOPPING, C.SUGAR,
    C.HEADACHE, C.EATING, C.ON_PURPOSE, C.MEAL, C.SLURRED, C.STROKE, C.SIGHT_LOST, C.DREAD, C.HAZARD, C.DIM, C.JUST_NOW,
    C.THOUGHTS, C.RASH, C.ALLERGY, C.TRIGGER, C.HYPO, C.OVERDOSE,
}  # fmt: skip  # beside these a word that is mostly said of something else is meant

CARRIES_NO: frozenset[C] = BODY | {
    C.CHEST_PAIN, C.HEART_ATTACK, C.HURT, C.PRESS, C.RACING, C.PALPITATIONS, C.COLD_SWEAT, C.STROKE, C.DROOP, C.NUMB,
    C.WEAK, C.SPEAK, C.SLURRED, C.SIGHT_LOST, C.CONFUSED, C.HEADACHE, C.SEVERE, C.SUDDEN, C.FAINTED, C.SEIZURE,
    C.DIZZY, C.BREATHE, C.CHOKING, C.AIR_HUNGER, C.BREATHLESS, C.BLEED, C.BLOOD, C.HAEMORRHAGE, C.VOMIT, C.COUGH,
    C.STOOL, C.HYPO, C.HEAD_INJURY, C.OVERDOSE, C.KILL_SELF, C.CUT_SELF, C.THOUGHTS, C.SWOLLEN, C.CLOT, C.ALLERGY,
    C.NAUSEA, C.FATIGUE, C.INJURY, C.MUCH, C.TOOK, C.SWALLOWED, C.TABLETS, C.TOO_MUCH, C.CALL, C.AMBULANCE, C.HELP_ME,
    C.CRY, C.CLOSING, C.TRIGGER,
}  # fmt: skip  # in a list of denials ("no chest pain, dizziness or fainting") a "no" reaches past these

HOW_IT_IS_SAID: frozenset[C] = frozenset(
    {
        C.NO, C.NO_AFTER, C.BETWEEN, C.AND, C.NOR, C.BUT, C.CLAUSE, C.FINE, C.PAST, C.BYGONE, C.ONLY_BESIDE, C.NOW,
        C.JUST_NOW, C.EARLIER, C.SETTLED, C.IMAGINED, C.FICTION, C.FIGURATIVE, C.NEARLY, C.EVERYDAY, C.COMPANY,
        C.LAUGHTER, C.OTHERS, C.ELSEWHERE, C.MINE, C.FILLER, C.HARMLESS, C.DONT_KNOW, C.THING, C.HERO, C.AS_IF,
    }
)  # fmt: skip  # their phrases stand as written, no word between
