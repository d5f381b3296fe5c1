"""Published tables as literals, one module a paper or a body, and the registry of all their sources.

A module holds its SOURCES, its rows and small look-ups; no rounding but what `boundaries` decides, no guess
outside the rows.
"""

from __future__ import annotations

from core.references import (
    activity_intensity,
    bmi_nice,
    bmi_who,
    body_errors,
    bp_aha,
    bp_esc,
    bp_low,
    bp_nhs_over_80,
    bp_nice_home,
    bp_severe,
    chair_stand_cdc,
    chair_stand_rikli_jones,
    emergency_numbers,
    ewgsop2,
    fast_gain,
    five_chair_stands_bohannon_2006,
    five_chair_stands_falls,
    four_stage_balance_cdc,
    function_test_change,
    gait_speed_cesari_2005,
    heart_rate_max,
    helplines,
    kline_1987,
    must,
    one_leg_stance_springer_2007,
    repeats,
    rhr_adult_range,
    rhr_nhanes_2011,
    rhr_trade_chart,
    session_load,
    six_minute_walk_ats_2002,
    six_minute_walk_enright_1998,
    six_minute_walk_enright_2003,
    six_minute_walk_troosters_1999,
    timed_up_and_go_bohannon_2006,
    timed_up_and_go_cdc,
    two_minute_step_jones_rikli_2002,
    unplanned_loss,
    uth_2004,
    waist_idf,
    waist_nice,
    waist_who,
    weight_loss_rates,
    weight_variation,
    who_activity_2020,
    whr_trade,
    whr_who,
    whtr_nice,
)
from core.sources import Source

_SAFETY = (emergency_numbers.SOURCES, helplines.SOURCES)

_BODY = (
    bmi_who.SOURCES,
    bmi_nice.SOURCES,
    waist_nice.SOURCES,
    waist_who.SOURCES,
    waist_idf.SOURCES,
    whr_who.SOURCES,
    whr_trade.SOURCES,
    whtr_nice.SOURCES,
    rhr_adult_range.SOURCES,
    rhr_trade_chart.SOURCES,
    rhr_nhanes_2011.SOURCES,
    bp_nice_home.SOURCES,
    bp_nhs_over_80.SOURCES,
    bp_aha.SOURCES,
    bp_esc.SOURCES,
    bp_severe.SOURCES,
    bp_low.SOURCES,
    weight_loss_rates.SOURCES,
    must.SOURCES,
    unplanned_loss.SOURCES,
    fast_gain.SOURCES,
    weight_variation.SOURCES,
    repeats.SOURCES,
    body_errors.SOURCES,
)

_FUNCTION = (
    chair_stand_cdc.SOURCES,
    chair_stand_rikli_jones.SOURCES,
    five_chair_stands_bohannon_2006.SOURCES,
    five_chair_stands_falls.SOURCES,
    ewgsop2.SOURCES,
    timed_up_and_go_cdc.SOURCES,
    timed_up_and_go_bohannon_2006.SOURCES,
    six_minute_walk_enright_1998.SOURCES,
    six_minute_walk_troosters_1999.SOURCES,
    six_minute_walk_enright_2003.SOURCES,
    six_minute_walk_ats_2002.SOURCES,
    four_stage_balance_cdc.SOURCES,
    one_leg_stance_springer_2007.SOURCES,
    gait_speed_cesari_2005.SOURCES,
    two_minute_step_jones_rikli_2002.SOURCES,
    kline_1987.SOURCES,
    uth_2004.SOURCES,
    heart_rate_max.SOURCES,
    who_activity_2020.SOURCES,
    activity_intensity.SOURCES,
    session_load.SOURCES,
    function_test_change.SOURCES,
)

REFERENCES: dict[str, Source] = {
    source.key: source for module in (*_SAFETY, *_BODY, *_FUNCTION) for source in module
}  # a test looks for keys used twice
