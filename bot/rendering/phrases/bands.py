"""Published comparisons in plain words: every band of every reference, cautions, and why a comparison is missing.

A band is described by its meaning, not its clinical name; the name and the paper are one button away ("Where is this
from?"). Nobody is labelled.
"""

from __future__ import annotations

from bot.rendering.voice import N_, Html, Voice

_WEIGHT_WELL_BELOW = N_(
    "For your height, this weight is well below the usual range. Please talk to your doctor about it."
)
_WEIGHT_BELOW = N_("For your height, this weight is below the usual range.")
_WEIGHT_USUAL = N_("For your height, this weight is in the usual range.")
_WEIGHT_ABOVE = N_("For your height, this weight is above the usual range.")
_WEIGHT_WELL_ABOVE = N_("For your height, this weight is well above the usual range.")
_WAIST_FINE = N_("At this size, health risks are not raised.")
_WAIST_RAISED = N_("At this size, health risks go up a little.")
_WAIST_HIGH = N_("At this size, health risks are higher.")
_RATIO_FINE = N_("Your waist is not large compared with your hips.")
_RATIO_MIDDLE = N_("Compared with your hips, your waist is in the middle group.")
_RATIO_HIGH = N_("Your waist is large compared with your hips.")
_FALLS_MORE = N_("With this result, falls are more common. Practice can help.")
_FALLS_LESS = N_("With this result, falls are less common.")
_FEWER = N_("That is less than most people of your age do.")
_AS_MOST = N_("That is in the usual range for your age.")
_MORE = N_("That is more than most people of your age do.")
_STANDARD = N_("That is a level that goes with staying on your feet for years.")
_BELOW_STANDARD = N_("Steady practice can bring more.")
_SLOWER = N_("That is slower than the average for your age.")
_AS_QUICK = N_("That is about the average for your age, or quicker.")
_STRENGTH_LOW = N_("That is on the low side of a strength limit.")
_STRENGTH_FINE = N_("That is on the good side of a strength limit.")
_ESTIMATE = N_("A formula puts it in rough terms.")

_BMI = {
    "underweight": _WEIGHT_BELOW,
    "healthy": _WEIGHT_USUAL,
    "overweight": _WEIGHT_ABOVE,
    "obesity_1": _WEIGHT_WELL_ABOVE,
    "obesity_2": _WEIGHT_WELL_ABOVE,
    "obesity_3": _WEIGHT_WELL_ABOVE,
}
_IDF = {
    "below_limit": N_("Your waist is below the limit for people of your background."),
    "central_obesity": N_("Your waist is at or above the limit for people of your background."),
}
_FALLS = {"raised_risk": _FALLS_MORE, "usual_risk": _FALLS_LESS}
_USUAL_BY_AGE = {"below_usual": _FEWER, "usual": _AS_MOST, "above_usual": _MORE}
_STANDARDS = {"at_standard": _STANDARD, "below_standard": _BELOW_STANDARD}
_BY_AVERAGE = {"worse_than_average": _SLOWER, "not_worse_than_average": _AS_QUICK}

BANDS: dict[str, dict[str, str]] = {
    "who_bmi": {
        "severe_thinness": _WEIGHT_WELL_BELOW,
        "moderate_thinness": _WEIGHT_WELL_BELOW,
        "mild_thinness": _WEIGHT_BELOW,
        "normal": _WEIGHT_USUAL,
        "pre_obese": _WEIGHT_ABOVE,
        "obese_1": _WEIGHT_WELL_ABOVE,
        "obese_2": _WEIGHT_WELL_ABOVE,
        "obese_3": _WEIGHT_WELL_ABOVE,
    },
    "nice_bmi": _BMI,
    "nice_bmi_lower": _BMI,
    "who_waist": {
        "not_increased": _WAIST_FINE,
        "increased": _WAIST_RAISED,
        "substantially_increased": _WAIST_HIGH,
    },
    "nice_waist": {"low": _WAIST_FINE, "high": _WAIST_RAISED, "very_high": _WAIST_HIGH},
    "idf_waist_europid": _IDF,
    "idf_waist_south_asian": _IDF,
    "idf_waist_south_central_american": _IDF,
    "idf_waist_chinese": _IDF,
    "idf_waist_japanese": _IDF,
    "who_waist_to_hip": {"not_increased": _RATIO_FINE, "substantially_increased": _RATIO_HIGH},
    "trade_waist_to_hip": {"low": _RATIO_FINE, "moderate": _RATIO_MIDDLE, "high": _RATIO_HIGH},
    "nice_waist_to_height": {
        "below_named_bands": N_("Your waist is small for your height. Please tell your doctor if you lose weight."),
        "healthy": N_("Your waist is less than half your height, as advised."),
        "increased": N_("Your waist is half your height or more. Less than half is advised."),
        "high": N_("Your waist is well over half your height. Less than half is advised."),
    },
    "bhf_resting_heart_rate": {
        "slow": N_("That is slower than usual for adults, 60 to 100."),
        "usual": N_("That is usual for adults, 60 to 100."),
        "fast": N_("That is faster than usual for adults, 60 to 100."),
    },
    "trade_resting_heart_rate": {
        "athlete": N_("A fitness chart puts that with very fit people of your age."),
        "excellent": N_("A fitness chart puts that in its top group for your age."),
        "good": N_("A fitness chart calls that good for your age."),
        "above_average": N_("For your age, a fitness chart calls that good to fair."),
        "average": N_("A fitness chart puts that at the average for your age."),
        "below_average": N_("For your age, a fitness chart sees room to grow."),
        "poor": N_("For your age, a fitness chart sees much room to grow."),
    },
    "nhanes_resting_pulse": {"mean_of_others": N_("Other adults have about the same.")},
    "nice_home_blood_pressure": {
        "below_home_limit": N_("That is below the home limit, 135/85."),
        "raised": N_("That is at or above the home limit, 135/85. Please show your doctor."),
        "clearly_raised": N_("That is well above the home limit, 135/85. Please show your doctor soon."),
    },
    "nhs_home_blood_pressure_over_80": {
        "below_home_limit": N_("That is below the limit for home readings at your age, 145/85."),
        "raised": N_(
            "That is at or above the limit for home readings at your age, 145/85. Please show it to your doctor or"
            " nurse."
        ),
    },
    "aha_home_blood_pressure": {
        "normal": N_("That is in the usual range for home readings."),
        "elevated": N_("For home readings, that is a little high."),
        "stage_1": N_("That is above the limit for home readings, 130/80. Please show it to your doctor or nurse."),
        "stage_2": N_(
            "That is well above the limit for home readings, 130/80. Please show it to your doctor or nurse soon."
        ),
    },
    "esc_home_blood_pressure": {
        "non_elevated": N_("That is in the usual range for home readings."),
        "elevated": N_("For home readings, that is a little high."),
        "hypertension": N_("That is at or above the home limit, 135/85. Please show your doctor."),
    },
    "severe_blood_pressure": {"severe": N_("That is a very high reading.")},
    "severe_blood_pressure_pregnancy": {
        "severe": N_("That is a very high reading in pregnancy. Please call your midwife or doctor now.")
    },
    "low_blood_pressure": {"low": N_("That is on the low side.")},
    "chair_stand_cdc": {
        "below_average": N_("Most people of your age do more. Practice can help."),
        "not_below_average": N_("That is in the usual range for your age, or above."),
    },
    "chair_stand_rikli_jones": _USUAL_BY_AGE,
    "chair_stand_rikli_jones_2013": _STANDARDS,
    "five_chair_stands_bohannon_2006": _BY_AVERAGE,
    "five_chair_stands_buatois_2008": _FALLS,
    "five_chair_stands_tiedemann_2008": _FALLS,
    "ewgsop2": {"low": _STRENGTH_LOW, "not_low": _STRENGTH_FINE},
    "timed_up_and_go_bohannon_2006": _BY_AVERAGE,
    "timed_up_and_go_cdc": _FALLS,
    "four_stage_balance_cdc": {
        "raised_risk": N_("With a shorter hold, falls are more common. Practice can help."),
        "usual_risk": N_("Held in full: with that, falls are less common."),
    },
    "gait_speed_cesari_2005": {
        "raised_risk": N_("That is slower than 1 metre a second. Walking often can help."),
        "usual_risk": N_("That is 1 metre a second or more, which is a good sign."),
    },
    "one_leg_stance_springer_2007": {
        "below_mean": N_("That is less than the average for your age."),
        "at_or_above_mean": N_("That is the average for your age, or more."),
    },
    "one_leg_stance_vellas_1997": _FALLS,
    "two_minute_step_jones_rikli_2002": _USUAL_BY_AGE,
    "two_minute_step_rikli_jones_2013": _STANDARDS,
    "six_minute_walk_enright_1998": {
        "below_lower_limit": N_("Most people of your age and build walk further."),
        "not_below_lower_limit": N_("That is usual for people of your age and build."),
        "less_than_expected": N_("That is a little less than a formula expects for you."),
        "as_expected": N_("That is what a formula expects for you, or more."),
    },
    "six_minute_walk_enright_2003": {
        "less_than_expected": N_("That is a little less than a formula expects for you."),
        "as_expected": N_("That is what a formula expects for you, or more."),
    },
    "six_minute_walk_troosters_1999": {
        "less_than_expected": N_("That is a little less than a formula expects for you."),
        "as_expected": N_("That is what a formula expects for you, or more."),
    },
    "kline_1987": {"estimate": _ESTIMATE},
    "uth_2004": {"estimate": _ESTIMATE},
    "who_activity_2020": {
        "inactive": N_("Every minute counts, so any start is a good start."),
        "some": N_("Every bit counts. You can build up as it suits you."),
        "meets": N_("That is as much as health advice asks for."),
        "more": N_("That is more than health advice asks for."),
    },
    "activity_intensity_pag_2018": {
        "very_light": N_("That counts as very light effort."),
        "light": N_("That counts as light effort."),
        "moderate": N_("That is a fair bit of effort."),
        "vigorous": N_("That counts as hard effort."),
        "near_maximal": N_("That counts as close to all you can give."),
    },
}
BAND_OTHER = N_("I have compared it with a published table.")

NOTES: dict[str, str] = {
    "a_little_more_can_be_fine_from_65": N_("From 65 on, a little more can be fine."),
    "age_not_given": N_("I do not know your age, so I used the table for adults."),
    "copies_disagree": N_("Copies of this table do not all agree."),
    "estimate_has_error": N_("It can be off by quite a bit."),
    "matters_only_with_dizziness": N_("It only matters if you feel dizzy or faint."),
    "medicine_slows_the_pulse": N_("Your medicine slows the pulse, so this says little."),
    "muscle_counts_too": N_("Strong muscles count in it too."),
    "no_waist_to_height_from_35": N_("I leave out waist to height here."),
    "rest_5_min_and_repeat": N_("Please rest 5 minutes and measure again."),
    "rest_and_count_again": N_("Please rest and count again."),
    "seek_advice_if_it_stays": N_("If it stays like this, ask a doctor or nurse."),
    "slow_can_be_usual_when_trained": N_("In fit people a slow pulse is usual."),
    "slow_worth_a_check": N_("It is worth asking a doctor or nurse once."),
    "count_30_or_60_s": N_("Count for 30 or 60 seconds. It is more exact."),
    "weight_misleads": N_("For you, weight alone can mislead."),
}

REASONS: dict[str, str] = {
    "age_not_given": N_("Without your age there is nothing to compare with."),
    "age_outside_table": N_("There is no table for your age."),
    "athlete_or_check": N_("That is lower than the chart goes. In very fit people it is usual; else have it checked."),
    "background_not_given": N_("Without your family background there is no limit to use."),
    "background_outside_table": N_("There is no table for your family background."),
    "eating_worries": N_("I do not compare weight here."),
    "lower_number_not_lower": N_("The lower number must be the smaller one."),
    "medicine_slows_the_pulse": N_("Your medicine slows the pulse, so no table fits."),
    "cautions_not_given": N_("First I need to know of medicines that slow the pulse."),
    "not_completed": N_("It was not finished, so there is nothing to compare."),
    "one_number_missing": N_("One number is missing."),
    "pregnant": N_("In pregnancy this is not compared."),
    "sex_not_given": N_("The table needs to know female or male."),
    "series_too_few_days": N_("There are too few days to compare."),
    "single_reading": N_("One reading says little. A week says more."),
    "stature_not_given": N_("Without your height there is nothing to compare with."),
    "weight_not_given": N_("Without your weight there is nothing to compare with."),
}
REASON_OTHER = N_("No published table fits.")

# Why a measure is left out, or taken only with care (Measure.must_not).
CAUTIONS: dict[str, str] = {
    "ask_clinician_first": N_("Please ask your doctor or nurse before you do this one."),
    "not_asked_by_default": N_("I leave this out for now. You can have it back at any time."),
    "not_in_pregnancy": N_("I leave this out in pregnancy."),
    "not_now": N_("Please do not do this one until your doctor agrees."),
}


def band(v: Voice, source: str, key: str) -> Html:
    return v.say(BANDS.get(source, {}).get(key, BAND_OTHER))


def note(v: Voice, key: str) -> Html:
    return v.say(NOTES[key]) if key in NOTES else Html("")


def reason(v: Voice, key: str) -> Html:
    return v.say(REASONS.get(key, REASON_OTHER))


def caution(v: Voice, key: str) -> Html:
    return v.say(CAUTIONS[key]) if key in CAUTIONS else Html("")
