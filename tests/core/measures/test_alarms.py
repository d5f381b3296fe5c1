"""When a single reading calls for an immediate response: the measure decides, from the whole profile."""

from __future__ import annotations

from datetime import UTC, datetime
from decimal import Decimal

import pytest

from core.client import Caution
from core.dialogue.client.safety import WORDS
from core.measures import MEASURES
from core.measures.measure import AlarmKind
from core.reading import Reading
from core.watching.flags import RULES
from core.watching.flags_of_reading import ALARM_CODES
from tests.core.people import someone

D = Decimal
MONDAY = datetime(2026, 3, 2, 7, tzinfo=UTC)
ANYBODY = someone("female", 58)
PREGNANT = someone("female", 30, cautions=(Caution.PREGNANCY,))
SEVERE, LOW = AlarmKind.SEVERE_PRESSURE, AlarmKind.LOW_PRESSURE


def pressure(number: str) -> Reading:
    systolic, diastolic = number.split("/")
    return Reading("blood_pressure", D(systolic), MONDAY, second=D(diastolic))


def kind(reading: Reading, person) -> AlarmKind | None:
    found = MEASURES[reading.measure].alarm(reading, person)
    return None if found is None else found.kind


@pytest.mark.parametrize(
    ("number", "wanted"),
    [
        pytest.param("182/100", SEVERE, id="W59 derived from NHLBI"),
        pytest.param("180/90", SEVERE, id="D6: exactly 180"),
        pytest.param("150/120", SEVERE, id="D6: exactly 120"),
        pytest.param("182/124", SEVERE, id="W60 derived"),
        pytest.param("179/119", None, id="just below both"),
        pytest.param("88/58", LOW, id="W62 derived"),
        pytest.param("90/60", None, id="90/60 itself is not low"),
        pytest.param("120/59", LOW, id="one number is enough"),
        pytest.param("182/55", SEVERE, id="severe wins over low"),
    ],
)
def test_a_single_pressure_alarms_from_the_limits_of_everybody(number: str, wanted: AlarmKind | None):
    assert kind(pressure(number), ANYBODY) is wanted


@pytest.mark.parametrize(
    ("number", "wanted"),
    [("160/90", SEVERE), ("140/110", SEVERE), ("159/109", None), ("184/122", SEVERE), ("88/58", LOW)],
)
def test_in_pregnancy_either_number_alarms_earlier(number: str, wanted: AlarmKind | None):
    assert kind(pressure(number), PREGNANT) is wanted


def test_an_alarm_names_the_fact_that_set_its_limit_and_who_says_so():
    found = MEASURES["blood_pressure"].alarm(pressure("164/104"), PREGNANT)
    assert found is not None
    assert (found.caution, found.source.key) == (Caution.PREGNANCY, "severe_blood_pressure_pregnancy")
    usual = MEASURES["blood_pressure"].alarm(pressure("184/104"), ANYBODY)
    assert usual is not None and usual.caution is None


def test_a_severe_upper_number_alarms_without_its_lower_one():
    assert kind(Reading("blood_pressure", D(186), MONDAY), ANYBODY) is SEVERE
    assert kind(Reading("blood_pressure", D(120), MONDAY), ANYBODY) is None


@pytest.mark.parametrize(
    ("rate", "wanted"),
    [("120", None), ("120.5", AlarmKind.FAST_PULSE), ("40", None), ("39.5", AlarmKind.SLOW_PULSE)],
)
@pytest.mark.parametrize("caution", [None, *Caution])
def test_a_pulse_alarms_at_the_same_limits_whoever_it_is(rate: str, wanted: AlarmKind | None, caution: Caution | None):
    person = someone("female", 58, cautions=() if caution is None else (caution,))
    assert kind(Reading("resting_heart_rate", D(rate), MONDAY), person) is wanted


VALUES = [D(n) for n in range(0, 260, 5)]
PEOPLE = [ANYBODY, *(someone("male", 40, cautions=(caution,)) for caution in Caution)]


@pytest.mark.parametrize("measure", MEASURES.values(), ids=list(MEASURES))
def test_every_alarm_a_measure_can_raise_has_words_for_the_client_and_a_flag_for_the_coach(measure):
    for value in VALUES:
        for person in PEOPLE:
            second = value / 2 if measure.bounds.second_possible is not None else None
            found = measure.alarm(Reading(measure.key, value, MONDAY, second=second), person)
            if found is None:
                continue
            said, codes = WORDS[found.kind, found.caution], ALARM_CODES[found.kind]
            assert (said.repeat and said.still and codes.at_once) if found.repeat else (said.once or codes.with_symptom)
            assert not found.repeat or measure.repeat is not None
            for code in filter(None, (codes.at_once, codes.with_symptom)):
                assert {name for name, _ in found.figures} <= set(RULES[code].evidence)


def test_every_kind_of_alarm_is_known_to_the_coach_and_has_words():
    assert set(ALARM_CODES) == set(AlarmKind) == {of for of, _ in WORDS}
