"""Published tables as literals, one module a paper or a body, and the registry of all their sources.

A module holds its SOURCES, its rows and small look-ups; no rounding but what `boundaries` decides, no guess
outside the rows.
"""

from __future__ import annotations

from core.references import (
    bmi_nice,
    bmi_who,
    body_errors,
    bp_aha,
    bp_esc,
    bp_low,
    bp_nhs_over_80,
    bp_nice_home,
    bp_severe,
    fast_gain,
    glim,
    must,
    repeats,
    rhr_adult_range,
    rhr_nhanes_2011,
    rhr_trade_chart,
    unplanned_loss,
    waist_idf,
    waist_nice,
    waist_who,
    weight_loss_rates,
    weight_variation,
    whr_trade,
    whr_who,
    whtr_nice,
)
from core.sources import Source

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
    glim.SOURCES,
    unplanned_loss.SOURCES,
    fast_gain.SOURCES,
    weight_variation.SOURCES,
    repeats.SOURCES,
    body_errors.SOURCES,
)

REFERENCES: dict[str, Source] = {
    source.key: source for module in (*_BODY,) for source in module
}  # a test looks for keys used twice
