"""How each builder of `understand` parses a typed answer."""

from __future__ import annotations

from decimal import Decimal

import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st

from core.language import LANGUAGES, words_for
from core.language.amounts import amounts
from core.language.text import LONGEST, near, plain
from core.language.tokens import figure
from core.measures import MEASURES
from core.measures.measure import Misunderstood, Understood, Why
from core.measures.parsing import count, duration, mile, minutes, pressure, pulse, pulse_counted, quantity_in, rating
from core.quantity import Unit, convert

D = Decimal
EN = words_for("en")
MASS = quantity_in(Unit.KILOGRAM, Unit.POUND, Unit.STONE)
GIRTH = quantity_in(Unit.CENTIMETRE, Unit.INCH, attempts=True)
STATURE = quantity_in(Unit.CENTIMETRE, Unit.METRE, Unit.FOOT, Unit.INCH)
BUILDERS = {
    "mass": MASS,
    "girth": GIRTH,
    "stature": STATURE,
    "seconds": quantity_in(Unit.SECOND, attempts=True),
    "speed": quantity_in(Unit.METRE_PER_SECOND, attempts=True),
    "pulse": pulse,
    "pulse counted": pulse_counted(15),
    "pressure": pressure,
    "rating": rating,
    "repetitions": count(Unit.REPETITION),
    "days": count(Unit.DAY),
    "sessions": count(Unit.SESSION),
    "steps": count(Unit.STEP),
    "duration": duration(Unit.SECOND),
    "duration in minutes": duration(Unit.MINUTE, attempts=True),
    "mile": mile,
    "minutes": minutes,
}


def kilograms(number: str, unit: Unit) -> Decimal:
    return convert(D(number), unit, Unit.KILOGRAM)


# --- text ---------------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("typed", "folded"),
    [
        pytest.param("٨٢٫٤", "82.4", id="arabic-indic"),
        pytest.param("۸۲٫۴", "82.4", id="persian"),
        pytest.param("८२.४", "82.4", id="devanagari"),
        pytest.param("８２．４ｋｇ", "82.4kg", id="full-width"),
        pytest.param("82½ KG", "82 1/2 kg", id="vulgar-fraction"),
        pytest.param("5’7”", "5'7\"", id="typographic-quotes"),
        pytest.param("5′7″", "5'7\"", id="primes"),
        pytest.param("\u200f82\u200e.4\u202c", "82.4", id="direction-marks"),
        pytest.param("7\ufe0f\u20e3", "7", id="keycap"),
        pytest.param("128–82", "128-82", id="dash"),
        pytest.param("  82 \u00a0 kg ", "82 kg", id="spaces"),
        pytest.param("Taille\nHüfte", "taille ; hufte", id="line-break"),
        pytest.param("quatre-vingt", "quatre vingt", id="hyphenated-words"),
        pytest.param("الأحد", "الاحد", id="hamza"),
    ],
)
def test_text_is_folded_to_what_can_be_compared(typed, folded):
    assert plain(typed) == folded


@given(st.text())
@example("\ufdfa" * 100)
@example("İ" * 50)
def test_folding_never_fails_and_folds_only_once(text):
    once = plain(text)
    assert plain(once).split() == once.split()


@pytest.mark.parametrize(
    ("typed", "word", "forgiven"),
    [
        ("hlep", "help", True),
        ("pian", "pain", True),
        ("undoo", "undo", False),  # short words: swapped letters only
        ("continu", "continue", True),
        ("contimue", "continue", True),
        ("continuee", "continue", True),
        ("contnie", "continue", False),
        ("kip", "skip", False),
        ("gain", "pain", False),
        ("tontinue", "continue", False),  # the first letter is rarely wrong
    ],
)
def test_one_slip_is_forgiven_in_long_words(typed, word, forgiven):
    assert near(typed, word) is forgiven


@pytest.mark.parametrize(
    ("digits", "value"),
    [
        ("82.4", "82.4"),
        ("82,4", "82.4"),
        ("82,400", "82.400"),
        ("1.234,5", "1234.5"),
        ("1,234.5", "1234.5"),
        ("1.234.567", "1234567"),
        (".5", "0.5"),
        ("1.2.3", None),
        ("12,34,56", None),
        ("9" * 10, None),
        ("9" * 5000, None),
    ],
)
def test_one_mark_is_a_decimal_mark_and_two_group_thousands(digits, value):
    assert figure(digits) == (None if value is None else D(value))


def test_a_count_of_thousands_reads_its_grouping_mark():
    assert figure("1,200", thousands=True) == 1200
    assert minutes("1,200", EN, None) == Understood(D(1200), Unit.MINUTE)


# --- quantities ---------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("typed", "value", "unit"),
    [
        ("82.4", D("82.4"), Unit.KILOGRAM),
        ("82,4 kg", D("82.4"), Unit.KILOGRAM),
        ("82 kilos 400", D("82.4"), Unit.KILOGRAM),
        ("100 lb", D("45.359237"), Unit.POUND),
        ("11 st", kilograms("154", Unit.POUND), Unit.STONE),  # function of the exact factor, body.md W81
        ("2 st 6 lb", kilograms("34", Unit.POUND), Unit.STONE),  # W83
        ("12st4lb", kilograms("172", Unit.POUND), Unit.STONE),
        ("12 st 4 lb 8 oz", kilograms("172.5", Unit.POUND), Unit.STONE),
        ("37 lb 4 oz", kilograms("37.25", Unit.POUND), Unit.POUND),  # W87
        ("twelve and a half stone", kilograms("175", Unit.POUND), Unit.STONE),
    ],
)
def test_a_mass_is_converted_exactly(typed, value, unit):
    heard = MASS(typed, EN, None)
    assert isinstance(heard, Understood)
    assert (heard.value, heard.unit) == (value, unit)


@pytest.mark.parametrize(
    ("typed", "value"),
    [
        ("5 ft 7 in", "170.18"),  # body.md W85
        ("5'7\"", "170.18"),
        ("five foot seven", "170.18"),
        ("5ft7", "170.18"),
        ("1 m 65", "165"),
        ("1m65", "165"),
        ("1,65 m", "165"),
        ("1.65", "165"),
        ("165", "165"),
        ("5'7 1/2\"", "171.45"),
    ],
)
def test_a_stature_is_understood_in_every_unit(typed, value):
    heard = STATURE(typed, EN, None)
    assert isinstance(heard, Understood)
    assert heard.value == D(value)


@pytest.mark.parametrize(
    ("typed", "value"), [("41 1/2 in", "105.41"), ("41½ in", "105.41"), ("37 1/2 in", "95.25"), ("945 mm", "94.5")]
)
def test_a_girth_may_have_a_fraction(typed, value):  # 41 1/2 in = 41.5 in: body.md W87
    heard = GIRTH(typed, EN, None)
    assert isinstance(heard, Understood)
    assert heard.value == D(value)


def test_a_bare_number_is_read_in_the_unit_the_client_prefers():
    assert MASS("181", EN, Unit.POUND) == Understood(kilograms("181", Unit.POUND), Unit.POUND)
    assert MASS("12", EN, Unit.STONE) == Understood(kilograms("12", Unit.STONE), Unit.STONE)
    assert GIRTH("37", EN, Unit.INCH) == Understood(D("93.98"), Unit.INCH)


def test_a_preferred_unit_of_another_dimension_changes_nothing():
    assert MASS("82.4", EN, Unit.CENTIMETRE) == Understood(D("82.4"), Unit.KILOGRAM)


@pytest.mark.parametrize(
    ("typed", "prefer", "guess"),
    [
        pytest.param("12.4", Unit.STONE, kilograms("172", Unit.POUND), id="stones-and-pounds"),
        pytest.param("12.10", Unit.STONE, kilograms("178", Unit.POUND), id="twelve-ten"),
        pytest.param("12.4 st", None, kilograms("172", Unit.POUND), id="with-unit"),
        pytest.param("12.97", Unit.STONE, kilograms("12.97", Unit.STONE), id="no-pounds"),
    ],
)
def test_a_point_between_stones_and_pounds_is_asked_about(typed, prefer, guess):
    heard = MASS(typed, EN, prefer)
    assert isinstance(heard, Misunderstood)
    assert heard.guess is not None
    assert heard.guess.value == guess


@pytest.mark.parametrize(
    ("typed", "why"),
    [
        ("94 cm", Why.OTHER_UNIT),
        ("72 bpm", Why.OTHER_UNIT),
        ("82 %", Why.OTHER_UNIT),
        ("82 to 84", Why.A_RANGE),
        ("82-84", Why.A_RANGE),
        ("82 – 84 kg", Why.A_RANGE),
        ("82 or 83", Why.A_RANGE),
        ("between 82 and 84", Why.A_RANGE),
        ("more than 82", Why.A_RANGE),
        ("82, 84", Why.TOO_MANY_NUMBERS),
        ("82 97 12", Why.TOO_MANY_NUMBERS),
        ("0044 7700 900123", Why.TOO_MANY_NUMBERS),
        ("", Why.NO_NUMBER),
        ("heavy", Why.NO_NUMBER),
        ("lost 2 kg", Why.NO_NUMBER),
        ("2 kg less", Why.NO_NUMBER),
        ("NaN", Why.NO_NUMBER),
        ("1e999", Why.TOO_MANY_NUMBERS),
        ("7:30", Why.NO_NUMBER),
        ("12.3.2026", Why.NO_NUMBER),
    ],
)
def test_what_is_no_weight_says_why(typed, why):
    heard = MASS(typed, EN, None)
    assert isinstance(heard, Misunderstood)
    assert heard.why is why


@pytest.mark.parametrize(
    ("typed", "value", "attempts"),
    [
        ("94 and 94.5", "94.25", 2),
        ("94, 94.5 cm", "94.25", 2),
        ("94; 94.6; 94.3", "94.3", 3),
        ("94 94", "94", 1),  # the same number twice is one
        ("37 and 37.5 in", "94.615", 2),
    ],
)
def test_attempts_that_lie_close_together_are_averaged(typed, value, attempts):
    heard = GIRTH(typed, EN, None)
    assert isinstance(heard, Understood)
    assert (heard.value, heard.attempts) == (D(value), attempts)


@pytest.mark.parametrize(
    ("hear", "typed", "value", "second", "attempts"),
    [
        pytest.param(pulse, "70,72", "71", None, 2, id="pulse"),
        pytest.param(GIRTH, "94,95", "94.5", None, 2, id="girth"),
        pytest.param(pressure, "128,82", "128", "82", 1, id="pressure"),
        pytest.param(pressure, "128.82", "128", "82", 1, id="pressure-with-a-point"),
    ],
)
def test_two_numbers_typed_as_one_are_asked_back(hear, typed, value, second, attempts):
    heard = hear(typed, EN, None)
    assert isinstance(heard, Misunderstood)
    assert heard.guess is not None
    assert heard.guess.value == D(value)
    assert heard.guess.second == (None if second is None else D(second))
    assert heard.guess.attempts == attempts


@pytest.mark.parametrize(("hear", "typed"), [(pulse, "70.5"), (GIRTH, "94.25"), (GIRTH, "94,5"), (MASS, "82.83")])
def test_a_number_with_decimals_stays_one(hear, typed):
    heard = hear(typed, EN, None)
    assert isinstance(heard, Understood)
    assert heard.value == D(typed.replace(",", "."))


def test_attempts_far_apart_and_those_nobody_asked_for_are_asked_about():
    assert GIRTH("94 and 104", EN, None) == Misunderstood(Why.TOO_MANY_NUMBERS)
    heard = MASS("82.4, 82.6", EN, None)
    assert isinstance(heard, Misunderstood)
    assert heard.why is Why.TOO_MANY_NUMBERS


def test_one_weight_in_two_units_is_one_weight():
    assert MASS("82.4 kg (181.7 lb)", EN, None) == Understood(D("82.4"), Unit.KILOGRAM, said_unit=True)


@pytest.mark.parametrize("typed", ["about 82", "82 or so", "roughly 82 kg", "I think 82", "~82"])
def test_a_hedge_is_remembered(typed):
    heard = MASS(typed, EN, None)
    assert isinstance(heard, Understood)
    assert (heard.value, heard.hedged) == (82, True)


@pytest.mark.parametrize(
    ("language", "typed"),
    [
        ("en", "this one is 82.4"),
        ("de", "eine Zahl: 82,4"),
        ("fr", "un poids de 82,4"),
        ("es", "una balanza nueva: 82,4"),
        ("ar", "وزني يوم الاثنين ٨٢٫٤"),  # Monday is not a two
    ],
)
def test_an_article_or_a_weekday_is_no_second_number(language, typed):
    heard = MASS(typed, words_for(language), None)
    assert isinstance(heard, Understood)
    assert heard.value == D("82.4")


def test_a_hedge_elsewhere_in_the_message_hedges_nothing():
    heard = MASS("I think I slept badly, 82", EN, None)
    assert isinstance(heard, Understood)
    assert not heard.hedged


@pytest.mark.parametrize("typed", ["82.4 at 7:30", "82.4 at 7", "82.4 on day 3", "not 84, 82.4", "82.4 after 2 hours"])
def test_another_number_beside_the_weight_is_left_out(typed):
    heard = MASS(typed, EN, None)
    assert isinstance(heard, Understood)
    assert heard.value == D("82.4")


@pytest.mark.parametrize("typed", ["-82.4", "82.4?", "82 4", "164 Pfund"])
def test_a_likely_meaning_is_offered_and_not_taken(typed):
    heard = MASS(typed, words_for("de"), None)
    assert isinstance(heard, Misunderstood)
    assert heard.guess is not None
    assert heard.guess.value in (D("82.4"), D(82))


def test_a_local_pound_is_a_pound_for_whoever_uses_pounds():
    assert MASS("181 livres", words_for("fr"), Unit.POUND) == Understood(
        kilograms("181", Unit.POUND), Unit.POUND, said_unit=True
    )


# --- pulse and pressure -------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("typed", "value", "attempts", "window"),
    [
        ("72", "72", 1, None),
        ("72 bpm", "72", 1, None),
        ("18 in 15 s", "72", 1, 15),  # body.md W41
        ("36 in 30 s", "72", 1, 30),  # body.md W42
        ("36 in 30", "72", 1, 30),
        ("72 in 60", "72", 1, 60),
        ("18 x 4", "72", 1, 15),
        ("36 x 2", "72", 1, 30),
        ("18/15s", "72", 1, 15),
        ("15 s: 18", "72", 1, 15),
        ("18 and 17 in 15s", "70", 2, 15),
        ("18 in 15 and 17 in 15", "70", 2, 15),
        ("70, 72", "71", 2, None),
        ("half a minute: 36", "72", 1, 30),
        ("72 after 5 min of rest", "72", 1, None),
    ],
)
def test_a_pulse_is_counted_or_read(typed, value, attempts, window):
    heard = pulse(typed, EN, None)
    assert isinstance(heard, Understood)
    assert (heard.value, heard.attempts, heard.window) == (D(value), attempts, window)


@pytest.mark.parametrize(
    ("typed", "why"),
    [
        ("18 in 14", Why.TOO_MANY_NUMBERS),
        ("18 x 7", Why.TOO_MANY_NUMBERS),
        ("70-75", Why.A_RANGE),
        ("70 and 140", Why.TOO_MANY_NUMBERS),
        ("18.5 in 15 s", Why.NOT_WHOLE),
        ("82 kg", Why.OTHER_UNIT),
        ("15 s", Why.TOO_MANY_NUMBERS),
        ("fast", Why.NO_NUMBER),
    ],
)
def test_what_is_no_pulse_says_why(typed, why):
    heard = pulse(typed, EN, None)
    assert isinstance(heard, Misunderstood)
    assert heard.why is why


def test_after_a_timed_count_a_bare_number_is_beats():
    hear = pulse_counted(15)
    assert hear("18", EN, None) == Understood(D(72), Unit.BEATS_PER_MINUTE, said_unit=True, window=15)
    assert hear("72 bpm", EN, None) == Understood(D(72), Unit.BEATS_PER_MINUTE, said_unit=True)


@pytest.mark.parametrize(
    "typed",
    [
        "128/82",
        "128 over 82",
        "128 82",
        "128-82",
        "128 / 82 mmHg",
        "128/82 pulse 70",
        "128/82/70",
        "BP: 128, 82",
        "7 128/82",
    ],
)
def test_a_blood_pressure_is_two_numbers(typed):
    heard = pressure(typed, EN, None)
    assert isinstance(heard, Understood)
    assert (heard.value, heard.second, heard.attempts) == (128, 82, 1)


def test_two_blood_pressures_at_once_are_averaged():
    heard = pressure("128/82 and 126/80", EN, None)
    assert isinstance(heard, Understood)
    assert (heard.value, heard.second, heard.attempts) == (127, 81, 2)


@pytest.mark.parametrize(
    ("typed", "why"),
    [
        ("128", Why.ONE_NUMBER_MISSING),
        ("17/11 kPa", Why.OTHER_UNIT),
        ("128 to 135", Why.A_RANGE),
        ("128.5/82", Why.NOT_WHOLE),
        ("1 2 3 4 5", Why.TOO_MANY_NUMBERS),
        ("high", Why.NO_NUMBER),
    ],
)
def test_what_is_no_blood_pressure_says_why(typed, why):
    heard = pressure(typed, EN, None)
    assert isinstance(heard, Misunderstood)
    assert heard.why is why


# --- ratings, counts, times ---------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("typed", "value"),
    [
        ("7", 7),
        ("seven", 7),
        ("7/10", 7),
        ("7 out of 10", 7),
        ("0", 0),
        ("ten", 10),
        ("🔟", 10),
        ("better, 7", 7),
        ("70", 70),
    ],
)
def test_a_rating_is_a_whole_number(typed, value):
    heard = rating(typed, EN, None)
    assert isinstance(heard, Understood)
    assert heard.value == value


@pytest.mark.parametrize(
    ("typed", "why", "guess"),
    [
        ("7.5", Why.NOT_WHOLE, 8),
        ("7 or 8", Why.A_RANGE, None),
        ("better 7", Why.NO_NUMBER, 7),
        ("3/5", Why.OTHER_UNIT, None),
        ("70 %", Why.OTHER_UNIT, None),
        ("same", Why.NO_NUMBER, None),
        ("no", Why.NO_NUMBER, None),
        ("what does 7 mean?", Why.NO_NUMBER, 7),
    ],
)
def test_what_is_no_rating_says_why(typed, why, guess):
    heard = rating(typed, EN, None)
    assert isinstance(heard, Misunderstood)
    assert heard.why is why
    assert (heard.guess.value if heard.guess else None) == guess


@pytest.mark.parametrize(
    ("typed", "value", "notes"),
    [
        ("12", 12, set()),
        ("twelve", 12, set()),
        ("12 times", 12, set()),
        ("12 in 30 s", 12, set()),
        ("12 but I used my arms", 12, {"arms_used"}),
        ("12 without arms", 12, set()),
        ("11 and more than half way", 11, {"more_than_half_way"}),
        ("none", 0, set()),
    ],
)
def test_stands_are_counted_and_what_happened_is_noted(typed, value, notes):
    heard = count(Unit.REPETITION)(typed, EN, None)
    assert isinstance(heard, Understood)
    assert (heard.value, heard.notes) == (value, notes)


def test_half_a_stand_is_asked_about():  # more than half-way counts, function.md section 1 (b); a half is not yet more
    heard = count(Unit.REPETITION)("11 and a half", EN, None)
    assert isinstance(heard, Misunderstood)
    assert heard.why is Why.NOT_WHOLE
    assert heard.guess == Understood(D(11), Unit.REPETITION, notes=frozenset({"more_than_half_way"}))


@pytest.mark.parametrize(
    ("typed", "value"), [("every day", 7), ("twice", 2), ("3 days", 3), ("3 of 4", 3), ("nothing", 0)]
)
def test_days_are_counted(typed, value):
    heard = count(Unit.DAY)(typed, EN, None)
    assert isinstance(heard, Understood)
    assert heard.value == value


@pytest.mark.parametrize(
    "typed", ["4 rises then stopped", "4 rises", "I couldn't finish", "only managed 4", "gave up after 3"]
)
def test_a_test_that_was_not_finished_has_no_time(typed):  # function.md, worked example 15
    assert duration(Unit.SECOND)(typed, EN, None) == Misunderstood(Why.NOT_COMPLETED)


@pytest.mark.parametrize(
    ("typed", "value"), [("14.5", "14.5"), ("14,5 s", "14.5"), ("1:02", "62"), ("2 min 5", "125"), ("1'02\"", "62")]
)
def test_a_time_may_be_typed_as_a_stopwatch_shows_it(typed, value):
    heard = duration(Unit.SECOND)(typed, EN, None)
    assert isinstance(heard, Understood)
    assert heard.value == D(value)


@pytest.mark.parametrize("typed", ["14:30, 140", "14.5 min 140 bpm", "14 min 30 s and pulse 140", "14:30, 35 in 15 s"])
def test_a_mile_is_a_time_and_a_pulse(typed):
    heard = mile(typed, EN, None)
    assert isinstance(heard, Understood)
    assert (heard.value, heard.second) == (D("14.5"), 140)


def test_a_point_between_minutes_and_seconds_is_asked_about():
    heard = mile("14.30", EN, None)
    assert isinstance(heard, Misunderstood)
    assert heard.guess is not None
    assert heard.guess.value == D("14.5")


@pytest.mark.parametrize(
    ("typed", "value", "hard"),
    [
        ("150", 150, None),
        ("2 hours", 120, None),
        ("1h30", 90, None),
        ("1:30", 90, None),
        ("5 x 30", 150, None),
        ("20 + 30 + 15", 65, None),
        ("none", 0, None),
        ("90 and 30 vigorous", 90, 30),
        ("30 vigorous, 90 moderate", 90, 30),
    ],
)
def test_active_minutes_of_a_week(typed, value, hard):
    heard = minutes(typed, EN, None)
    assert isinstance(heard, Understood)
    assert (heard.value, heard.second) == (value, hard)


@pytest.mark.parametrize(
    ("typed", "guess"),
    [
        ("30 min a day", 210),
        ("30 min on 5 days", 150),
        ("20 min Monday, 30 min Wednesday", 50),
        ("5 days", None),
        ("I didn't sleep", None),
    ],
)
def test_minutes_that_need_a_sum_are_asked_back(typed, guess):
    heard = minutes(typed, EN, None)
    assert isinstance(heard, Misunderstood)
    assert (heard.guess.value if heard.guess else None) == guess


# --- anything -----------------------------------------------------------------------------------------------------

PIECES = st.sampled_from(
    [
        *(
            "82",
            "82.4",
            "1/2",
            "½",
            "12",
            "st",
            "kg",
            "'",
            '"',
            "/",
            "-",
            "x",
            ",",
            ".",
            ":",
            "7:30",
            "no",
            "and",
            "half",
        ),
        *(
            "ochenta",
            "einhalb",
            "quatre",
            "vingt",
            "pół",
            "نصف",
            "ساعة",
            "٨٢",
            "و",
            "?",
            "1e999",
            "NaN",
            "inf",
            "in",
            "15",
        ),
        *(
            "9" * 9,
            "9" * 40,
            "0",
            "00",
            "-0",
            "point",
            "hundred",
            "waist",
            "energy",
            "\u200f",
            "\n",
            "%",
            "ft",
            "min",
            "h",
        ),
    ]
)
TYPED = st.one_of(
    st.text(max_size=200), st.lists(PIECES, max_size=14).map(" ".join), st.lists(PIECES, max_size=14).map("".join)
)


@settings(max_examples=400)
@given(
    TYPED,
    st.sampled_from(sorted(LANGUAGES)),
    st.sampled_from(sorted(BUILDERS)),
    st.none() | st.sampled_from(list(Unit)),
)
@example("1e999", "en", "mass", None)
@example("NaN", "en", "mass", None)
@example("٨٢", "ar", "mass", None)
@example("0/0", "en", "pressure", None)
@example("፩፪/፩ ² ①", "en", "pressure", None)
@example("0 in 0", "en", "pulse", None)
@example("0 x 0", "en", "minutes", None)
@example(".", "de", "mile", None)
def test_whatever_is_typed_is_understood_or_not_but_never_an_error(typed, language, builder, prefer):
    heard = BUILDERS[builder](typed, words_for(language), prefer)
    meant = heard.guess if isinstance(heard, Misunderstood) else heard
    if meant is not None:
        assert meant.value.is_finite()
        assert meant.second is None or meant.second.is_finite()
        assert meant.value >= 0
        assert meant.attempts >= 1


@pytest.mark.parametrize("builder", BUILDERS)
@pytest.mark.parametrize(
    "piece", ["9", "1 ", "82.", "1/2 ", "a'b", "12 st ", "and ", "-", "٨", "\u0301", "quatre vingt "]
)
def test_a_message_of_the_greatest_length_is_read(builder, piece):
    typed = (piece * 5000)[: LONGEST + 1000]
    assert isinstance(BUILDERS[builder](typed, words_for("fr"), None), Understood | Misunderstood)


@settings(max_examples=300)
@given(
    st.decimals(min_value=30, max_value=250, places=1),
    st.sampled_from([Unit.KILOGRAM, Unit.POUND]),
    st.sampled_from(sorted(LANGUAGES)),
)
def test_a_weight_written_with_its_unit_is_read_back_in_every_language(value, unit, language):
    words = words_for(language)
    for spelled in words.units[unit]:
        if spelled in words.local_pound:
            continue
        typed = f"{str(value).replace('.', words.decimal)} {spelled}"
        heard = MASS(typed, words, None)
        assert isinstance(heard, Understood), typed
        assert heard.value == convert(value, unit, Unit.KILOGRAM), typed


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_number_word_of_a_language_is_read(language):
    words = words_for(language)
    for phrase, value in words.numbers.items():
        heard = amounts_of(phrase, language)
        assert [h.value for h in heard] == [value], phrase


def amounts_of(text: str, language: str):
    from core.language import lexicon_of
    from core.language.tokens import tokens

    return amounts(tokens(plain(text), lexicon_of(words_for(language))), None)


def test_every_asked_measure_answers_any_language():
    for measure in MEASURES.values():
        if measure.understand is None:
            continue
        for words in LANGUAGES.values():
            assert isinstance(measure.understand("82,4", words, None), Understood | Misunderstood)
