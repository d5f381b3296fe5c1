"""Problems of a row in plain English, and what to write instead, for an instructor with a spreadsheet."""

from __future__ import annotations

from bot.scoring.output import as_given
from core.measures.measure import Measure, Misunderstood, Understood, Why
from core.quantity import Unit, convert, convertible, half_up
from core.understanding.plausibility import Doubt, DoubtKind

NO_PERSON = "no person; write the name or number used in the people file"
NO_TIME = "no time; write it like 2026-03-02 or 2026-03-02T07:30"
BAD_TIME = "the time is not understood; write it like 2026-03-02 or 2026-03-02T07:30"
ODD_YEAR = "the year cannot be right; write the time like 2026-03-02"
NO_MEASURE = "no measure; write one like weight, waist or resting_heart_rate"
TWO_VALUES = "value and as_given are not the same amount; keep the one that is right, and leave as_given empty"
TOO_MANY_CELLS = "more cells than the header names; put a value with a comma in quotation marks"

_EXAMPLES = {
    "weight": "82.4 kg, 181 lb or 12 st 4",
    "height": "165 cm, 1.65 m or 5 ft 5",
    "waist": "94 cm or 37 in",
    "hip": "102 cm or 40 in",
    "resting_heart_rate": "72, or 18 in 15 s for beats counted",
    "blood_pressure": "128/82",
    "walk_mile": "14:30, 132 for minutes and pulse",
    "activity_minutes": "150",
}
_BY_UNIT = {
    Unit.POINT: "7",
    Unit.REPETITION: "12",
    Unit.STEP: "84",
    Unit.SECOND: "9.8 s",
    Unit.METRE: "410 m",
    Unit.METRE_PER_SECOND: "0.9 m/s",
    Unit.DAY: "2",
    Unit.SESSION: "3",
}


def example(measure: Measure) -> str:
    return _EXAMPLES.get(measure.key) or _BY_UNIT.get(measure.unit) or f"12 {measure.unit}"


def unknown_measure(known: list[str]) -> str:
    return f"this measure is not known; write one of {', '.join(known)}"


def worked_out(measure: Measure) -> str:
    return f"{measure.key} is derived here; give {' and '.join(measure.derived_from)} instead"


def empty(measure: Measure) -> str:
    return f"no value; write one like {example(measure)}"


def unknown_unit(measure: Measure) -> str:
    return f"the unit is not known; write {' or '.join(measure.units or (measure.unit,))}, or leave it empty"


def two_units(value: Unit, column: str) -> str:
    return f"the value says {value}, the unit column {column}; keep the one that is right"


def misunderstood(measure: Measure, heard: Misunderstood) -> str:
    match heard.why:
        case Why.NO_NUMBER:
            said = "there is no number to use in the value"
        case Why.OTHER_UNIT:
            said = f"this unit does not belong to {measure.key}, or may mean two things"
        case Why.A_RANGE:
            said = "the value is a range; one number is needed"
        case Why.TOO_MANY_NUMBERS:
            said = "the value has more numbers than can be told apart"
        case Why.ONE_NUMBER_MISSING:
            said = "one of two numbers is missing"
        case Why.NOT_WHOLE:
            said = "whole numbers are counted here, or the point may separate two units"
        case Why.ONE_STAGE:
            said = "the seconds of one stage; all stages together are needed"
        case Why.NOT_COMPLETED:
            said = "a test that was not finished has no value; leave the row out"
    if heard.guess is not None:
        return f"{said}; if {shown(measure, heard.guess)} is meant, write that"
    return said if heard.why is Why.NOT_COMPLETED else f"{said}; write one like {example(measure)}"


def impossible(measure: Measure, doubt: Doubt) -> str:
    low, high = measure.bounds.possible.low, measure.bounds.possible.high
    if doubt.kind is DoubtKind.SYSTOLIC_DIASTOLIC_SWAPPED:
        said = "the second number cannot be as high as the first"
    elif doubt.kind is DoubtKind.BEATS_COUNTED and doubt.meant is not None and doubt.meant.window is not None:
        beats = half_up(doubt.meant.value * doubt.meant.window / 60, 0)
        return f"not possible as beats a minute; for beats counted write {beats} in {doubt.meant.window} s"
    elif measure.bounds.second_possible is not None:
        said = f"not possible for {measure.key}"
    else:
        said = f"not possible for {measure.key}: outside {low} to {high} {measure.unit}"
    return f"{said}; perhaps {shown(measure, doubt.meant)}?" if doubt.meant else f"{said}; check it"


def unlikely(measure: Measure, doubt: Doubt) -> str:
    if doubt.kind is DoubtKind.WEIGHT_FOR_HEIGHT:
        return "scored as it is, but please check: the weight looks like the height"
    if doubt.kind is DoubtKind.JUMP:
        return "scored as it is, but please check: far from the previous reading"
    said = "scored as it is, but please check: an unusual value"
    return f"{said}; perhaps {shown(measure, doubt.meant)}?" if doubt.meant else said


def already(row: int) -> str:
    return f"the same reading as in row {row}; it is counted once"


def left_out(words: list[str]) -> str:
    return f"ignored, because not understood: {', '.join(words)}"


def shown(measure: Measure, heard: Understood) -> str:
    """A value as people write it, in the unit in which it was typed."""
    unit = heard.unit if convertible(heard.unit, measure.unit) else measure.unit
    if unit in (Unit.STONE, Unit.FOOT) and (said := as_given(heard.value, measure.unit, unit)):
        return said
    places = max(measure.places, 1) if unit is not measure.unit else measure.places
    value = half_up(convert(heard.value, measure.unit, unit), places).normalize()
    if measure.unit is Unit.MILLIMETRE_OF_MERCURY and heard.second is not None:
        return f"{value:f}/{half_up(heard.second, 0):f}"
    return f"{value:f} {unit}"
