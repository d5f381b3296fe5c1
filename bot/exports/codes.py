"""FHIR coding of each measure: LOINC code, UCUM unit, category, vital-signs profile.

LOINC (http://loinc.org) is copyright Regenstrief Institute, Inc. and the LOINC Committee, and is available at no
cost under the licence at http://loinc.org/license. UCUM is copyright Regenstrief Institute, Inc.

Every observation also has our own code, so nothing is lost if no single LOINC code was confirmed: hip, ratios,
balance, most ratings. SNOMED CT has codes for girths but needs a licence, so none is used.
"""

from __future__ import annotations

from dataclasses import dataclass

from core.measures import MEASURES
from core.measures.score_function_tests import ARMS_USED
from core.reading import How, Reading

LOINC = "http://loinc.org"
UCUM = "http://unitsofmeasure.org"
CATEGORIES = "http://terminology.hl7.org/CodeSystem/observation-category"
OURS = "urn:uuid:3f900ab7-fc74-50c1-be42-c8c3c886c0c2"  # our code system; a URN, because we own no web address
PROFILES = "http://hl7.org/fhir/StructureDefinition/"


@dataclass(frozen=True, slots=True)
class LoincCode:
    """A LOINC code with its name."""

    code: str
    display: str


@dataclass(frozen=True, slots=True)
class Coded:
    """The coding of one measure. category: from HL7's list. unit: the UCUM code; text: the unit for people. loinc:
    codes, most specific first. profile: the vital-signs profile that applies, or "".
    """

    category: str
    unit: str
    text: str
    loinc: tuple[LoincCode, ...] = ()
    profile: str = ""


HEART_RATE = LoincCode("8867-4", "Heart rate")
SYSTOLIC = LoincCode("8480-6", "Systolic blood pressure")
DIASTOLIC = LoincCode("8462-4", "Diastolic blood pressure")
STANDS = LoincCode("66247-8", "Sit to stand frequency in 30 seconds")
STANDS_WITH_ARMS = LoincCode("93125-3", "Modified 30s Sit to Stand w extremities")

CODES: dict[str, Coded] = {
    "weight": Coded("vital-signs", "kg", "kg", (LoincCode("29463-7", "Body weight"),), "bodyweight"),
    "height": Coded("vital-signs", "cm", "cm", (LoincCode("8302-2", "Body height"),), "bodyheight"),
    "bmi": Coded("vital-signs", "kg/m2", "kg/m2", (LoincCode("39156-5", "Body mass index (BMI) [Ratio]"),), "bmi"),
    "resting_heart_rate": Coded(
        "vital-signs", "/min", "beats/minute", (LoincCode("40443-4", "Heart rate --resting"), HEART_RATE), "heartrate"
    ),
    "blood_pressure": Coded(
        "vital-signs",
        "mm[Hg]",
        "mmHg",
        (LoincCode("85354-9", "Blood pressure panel with all children optional"),),
        "bp",
    ),
    "waist": Coded("exam", "cm", "cm"),  # depends on the tape site
    "hip": Coded("exam", "cm", "cm"),
    "waist_to_hip_ratio": Coded("exam", "1", "ratio"),
    "waist_to_height_ratio": Coded("exam", "1", "ratio"),
    "energy": Coded("survey", "{score}", "of 10"),
    "own_question": Coded("survey", "{score}", "of 10"),
    "pain": Coded("survey", "{score}", "of 10"),
    "sleep": Coded("survey", "{score}", "of 10"),
    "chair_stand_30s": Coded("exam", "{#}/(30.s)", "stands in 30 s", (STANDS,)),
    "five_chair_stands": Coded("exam", "s", "s"),
    "timed_up_and_go": Coded(
        "exam",
        "s",
        "s",
        (LoincCode("89423-8", "Time to rise from chair, walk 10 feet and back, and return to sitting [TUG]"),),
    ),
    "four_stage_balance": Coded("exam", "s", "s"),
    "one_leg_stance": Coded("exam", "s", "s"),
    "gait_speed_4m": Coded("exam", "m/s", "m/s"),
    "two_minute_step": Coded("exam", "{#}/(2.min)", "steps in 2 min"),
    "six_minute_walk": Coded("exam", "m", "m", (LoincCode("64098-7", "Six minute walk test"),)),
    "six_minute_walk_difference": Coded("exam", "m", "m"),
    "walk_mile": Coded("exam", "min", "min"),
    "aerobic_estimate": Coded("exam", "mL/kg/min", "ml/kg/min"),
    "aerobic_from_pulse": Coded("exam", "mL/kg/min", "ml/kg/min"),
    "activity_minutes": Coded(
        "activity",
        "min/wk",
        "minutes a week",
        (LoincCode("82290-8", "Frequency of moderate to vigorous aerobic physical activity"),),
    ),
    "strength_days": Coded(
        "activity",
        "d/wk",
        "days a week",
        (LoincCode("82291-6", "Frequency of muscle-strengthening physical activity"),),
    ),
    "sessions_done": Coded("activity", "{#}/wk", "sessions a week"),
    "session_effort": Coded(
        "activity", "{score}", "of 10", (LoincCode("82289-0", "Rating of perceived exertion [Score]"),)
    ),
}

WAIST_SITES: dict[str, LoincCode] = {
    "midpoint": LoincCode("56115-9", "Waist Circumference by NCFS"),
    "navel": LoincCode("8280-0", "Waist Circumference at umbilicus by Tape measure"),
    "hip_bone_top": LoincCode("56114-2", "Waist Circumference by NHANES"),
}


def loinc_of(reading: Reading) -> tuple[LoincCode, ...]:
    """The LOINC codes of a reading; empty if no exact code is known.

    A waist without a named site follows our protocol, unless it was imported.
    """
    if reading.measure == "waist":
        site = reading.conditions.label("site")
        if site is None and reading.how is not How.IMPORTED:
            site = MEASURES["waist"].protocol.site
        found = WAIST_SITES.get(site or "")
        return () if found is None else (found,)
    if reading.measure == "chair_stand_30s" and ARMS_USED in reading.conditions.notes:
        return (STANDS_WITH_ARMS,)
    return CODES[reading.measure].loinc
