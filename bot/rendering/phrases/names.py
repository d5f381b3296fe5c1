"""Names that stand alone, before a colon or in a list: measures, aspects, places of the body, sides.

They never sit inside a sentence, because other languages would decline them there.
"""

from __future__ import annotations

from collections.abc import Iterable

from bot.rendering.voice import N_, NC_, Html, Voice

MEASURES: dict[str, str] = {
    "weight": N_("Weight"),
    "height": N_("Height"),
    "bmi": N_("Weight for height (BMI)"),
    "waist": N_("Waist"),
    "hip": N_("Hips"),
    "waist_to_hip_ratio": N_("Waist to hips"),
    "waist_to_height_ratio": N_("Waist to height"),
    "resting_heart_rate": N_("Pulse at rest"),
    "blood_pressure": N_("Blood pressure"),
    "energy": N_("Energy"),
    "own_question": N_("Your own question"),
    "pain": N_("Pain"),
    "sleep": N_("Sleep"),
    "chair_stand_30s": N_("30-second chair stands"),
    "five_chair_stands": N_("Five chair stands"),
    "timed_up_and_go": N_("Get up and walk"),
    "six_minute_walk": N_("Six-minute walk"),
    "six_minute_walk_difference": N_("Walk against what is expected"),
    "four_stage_balance": N_("Balance in four steps"),
    "one_leg_stance": N_("Standing on one leg"),
    "gait_speed_4m": N_("Walking pace"),
    "two_minute_step": N_("Two-minute step"),
    "walk_mile": N_("One-mile walk"),
    "aerobic_estimate": N_("Fitness, from the mile walk"),
    "aerobic_from_pulse": N_("Fitness, from the pulse"),
    "activity_minutes": N_("Active minutes this week"),
    "strength_days": N_("Days with strength work"),
    "sessions_done": N_("Sessions this week"),
    "session_effort": N_("Effort of the session"),
}

ASPECTS: dict[str, str] = {
    "scales": N_("scales"),
    "clothes": N_("clothes"),
    "time_of_day": N_("time of day"),
    "site": N_("place of the tape"),
    "tape": N_("tape"),
    "chair": N_("chair"),
    "course": N_("course"),
    "floor": N_("floor"),
    "footwear": N_("shoes"),
    "walking_aid": N_("walking aid"),
    "monitor": N_("blood pressure monitor"),
    "arm": N_("arm"),
    "leg": N_("leg"),
    "way_of_counting": N_("way of counting"),
    "posture": N_("how you sit"),
}


def named(table: dict[str, str], key: str) -> str:
    """The source text for a key; an unknown key is shown as it is, rather than failing in front of a client."""
    return table.get(key, key.replace("_", " "))


def measure(v: Voice, key: str) -> Html:
    return v.say(named(MEASURES, key))


def measures(v: Voice, keys: tuple[str, ...]) -> Html:
    return v.listed([measure(v, key) for key in keys])


def aspects(v: Voice, keys: tuple[str, ...]) -> Html:
    return v.listed([v.say(named(ASPECTS, key)) for key in keys])


CAUTIONS: dict[str, str] = {
    "pregnancy": NC_("caution", "Pregnant or breast-feeding"),
    "heart_condition": NC_("caution", "Heart condition"),
    "heart_failure": NC_("caution", "Heart failure"),
    "rate_limiting_medicine": NC_("caution", "Medicine that slows the pulse"),
    "eating_worries": NC_("caution", "Worries about food or weight"),
    "very_muscular": NC_("caution", "Very strong muscles"),
    "weight_misleads": NC_("caution", "Swelling, a cast or a lost limb"),
    "athlete": NC_("caution", "I train a lot"),
    "breathless_at_rest": NC_("caution", "Short of breath at rest"),
    "recent_heart_event": NC_("caution", "Heart attack in the past month"),
    "falls": NC_("caution", "A fall in the past year"),
    "kidney_disease": NC_("caution", "Kidney disease"),
    "diabetes": NC_("caution", "Diabetes"),
}

MEDICINES: dict[str, str] = {  # generic names, as a language writes them
    "acebutolol": NC_("medicine", "acebutolol"),
    "amiodarone": NC_("medicine", "amiodarone"),
    "atenolol": NC_("medicine", "atenolol"),
    "betaxolol": NC_("medicine", "betaxolol"),
    "bisoprolol": NC_("medicine", "bisoprolol"),
    "carvedilol": NC_("medicine", "carvedilol"),
    "celiprolol": NC_("medicine", "celiprolol"),
    "digoxin": NC_("medicine", "digoxin"),
    "diltiazem": NC_("medicine", "diltiazem"),
    "dronedarone": NC_("medicine", "dronedarone"),
    "esmolol": NC_("medicine", "esmolol"),
    "flecainide": NC_("medicine", "flecainide"),
    "ivabradine": NC_("medicine", "ivabradine"),
    "labetalol": NC_("medicine", "labetalol"),
    "metoprolol": NC_("medicine", "metoprolol"),
    "nadolol": NC_("medicine", "nadolol"),
    "nebivolol": NC_("medicine", "nebivolol"),
    "penbutolol": NC_("medicine", "penbutolol"),
    "pindolol": NC_("medicine", "pindolol"),
    "propranolol": NC_("medicine", "propranolol"),
    "sotalol": NC_("medicine", "sotalol"),
    "timolol": NC_("medicine", "timolol"),
    "verapamil": NC_("medicine", "verapamil"),
    "beta-blocker": NC_("medicine", "beta-blocker"),
}


def medicines(v: Voice, keys: Iterable[str]) -> Html:
    return v.listed([v.say_in("medicine", MEDICINES.get(key, key)) for key in keys])


# Before exercise: signs that call for a doctor.
SIGNS: dict[str, str] = {
    "chest": N_("Chest pain or tightness"),
    "breath": N_("Out of breath with little effort"),
    "dizzy": N_("Dizzy spells or fainting"),
    "heart_races": N_("A racing or pounding heart"),
    "ankles": N_("Swollen ankles"),
    "leg_cramp": N_("Leg pain in walking that rest eases"),
    "tired": N_("Unusually tired by everyday things"),
}
BEFORE_EXERCISE: dict[str, str] = {
    "as_you_are": N_("as they are"),
    "light_to_moderate": N_("light to moderate"),
    "doctor_first": N_("see their doctor first"),
}


def before_exercise(v: Voice, verdict: str) -> Html:
    """A verdict of `core.judging.readiness`; empty if there is none."""
    advice = BEFORE_EXERCISE.get(verdict)
    return v.say(advice) if advice else Html("")
