"""The FHIR export: the published worked examples as a table, and the bundle read back by an independent library."""

import json
from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from decimal import Decimal
from typing import Any

import pytest
from fhir.resources.R4B.bundle import Bundle
from fhir.resources.R4B.observation import Observation

from bot.exports import codes, fhir
from bot.exports.fhir import Subject, bundle, observation, to_json
from core.client import Profile, Sex
from core.measures import MEASURES
from core.quantity import Unit, convert
from core.reading import Conditions, How, Reading

D = Decimal
AT = datetime(2026, 3, 2, 7, 30, tzinfo=UTC)
NOW = AT + timedelta(days=40)
ADA = Subject(
    17,
    datetime(2026, 1, 5, 9, 12, 44, 731_204, tzinfo=UTC),
    Profile(sex=Sex.FEMALE, birth_date=date(1968, 5, 20), stature=D(165)),
)


def a_reading(measure: str, value: str, **more: Any) -> Reading:
    return Reading(measure, D(value), more.pop("taken_at", AT), **more)


def quantity(made: dict[str, Any]) -> tuple[Decimal, str, str]:
    found = made["valueQuantity"]
    return found["value"], found["system"], found["code"]


def loincs(made: dict[str, Any]) -> list[str]:
    return [c["code"] for c in made["code"]["coding"] if c["system"] == "http://loinc.org"]


def category(made: dict[str, Any]) -> str:
    return str(made["category"][0]["coding"][0]["code"])


UCUM = "http://unitsofmeasure.org"
EXAMPLES = {  # id: reading, since, LOINC codes, value, unit, category
    "W100 weight": (a_reading("weight", "84"), None, ["29463-7"], D(84), "kg", "vital-signs"),
    "W101 waist at the navel": (
        a_reading("waist", "85", conditions=Conditions(labels=(("site", "navel"),))),
        None,
        ["8280-0"],
        D(85),
        "cm",
        "exam",
    ),
    "W102 resting heart rate over a week": (
        a_reading("resting_heart_rate", "68"),
        AT - timedelta(days=7),
        ["40443-4", "8867-4"],
        D(68),
        "/min",
        "vital-signs",
    ),
    "W103 an hour a week": (a_reading("activity_minutes", "60"), None, ["82290-8"], D(60), "min/wk", "activity"),
    "W104 a rate typed in bpm": (
        a_reading("resting_heart_rate", "72", unit=Unit.BEATS_PER_MINUTE),
        None,
        ["40443-4", "8867-4"],
        D(72),
        "/min",
        "vital-signs",
    ),
    "W105 a weight typed in stones": (
        a_reading("weight", str(convert(D("12.5"), Unit.STONE, Unit.KILOGRAM)), unit=Unit.STONE, as_typed="12 st 7"),
        None,
        ["29463-7"],
        D("79.38"),
        "kg",
        "vital-signs",
    ),
}


@pytest.mark.parametrize("example", EXAMPLES.values(), ids=EXAMPLES.keys())
def test_a_published_example_comes_out_as_it_is_published(example: tuple[Any, ...]) -> None:
    reading, since, expected_codes, value, unit, expected_category = example
    made = observation(reading, ADA, since=since)
    assert loincs(made) == expected_codes
    assert quantity(made) == (value, UCUM, unit)
    assert category(made) == expected_category
    read_back = Observation.model_validate_json(to_json(made))
    assert read_back.valueQuantity.value == value


def test_a_heart_rate_over_a_week_says_which_week() -> None:
    made = observation(a_reading("resting_heart_rate", "68"), ADA, since=AT - timedelta(days=7))
    assert made["effectivePeriod"] == {"start": "2026-02-23T07:30:00+00:00", "end": "2026-03-02T07:30:00+00:00"}
    assert "effectiveDateTime" not in made


def test_minutes_of_the_past_week_are_of_a_period_and_a_weight_is_of_an_instant() -> None:
    assert "effectivePeriod" in observation(a_reading("activity_minutes", "60"), ADA)
    assert observation(a_reading("weight", "84"), ADA)["effectiveDateTime"] == "2026-03-02T07:30:00+00:00"


SITES = {
    "midpoint": ("midpoint", How.ASKED, ["56115-9"]),
    "navel": ("navel", How.ASKED, ["8280-0"]),
    "top of the hip bone": ("hip_bone_top", How.ASKED, ["56114-2"]),
    "narrowest has no code": ("narrowest", How.ASKED, []),
    "asked by us, by our protocol": (None, How.ASKED, ["56115-9"]),
    "imported, nobody knows where": (None, How.IMPORTED, []),
}


@pytest.mark.parametrize("site, how, expected", SITES.values(), ids=SITES.keys())
def test_a_waist_is_named_by_where_the_tape_was(site: str | None, how: How, expected: list[str]) -> None:
    conditions = Conditions(labels=(("site", site),) if site else ())
    made = observation(a_reading("waist", "94", conditions=conditions, how=how), ADA)
    assert loincs(made) == expected
    assert made["code"]["coding"][-1]["code"] == "waist"


def test_a_blood_pressure_is_a_panel_of_two_and_has_no_value_of_its_own() -> None:
    made = observation(a_reading("blood_pressure", "128", second=D(82)), ADA)
    parts = {c["code"]["coding"][0]["code"]: quantity(c) for c in made["component"]}
    assert parts == {"8480-6": (D(128), UCUM, "mm[Hg]"), "8462-4": (D(82), UCUM, "mm[Hg]")}
    assert loincs(made) == ["85354-9"]
    assert "valueQuantity" not in made


def test_a_lower_pressure_nobody_gave_is_said_to_be_missing() -> None:
    made = observation(a_reading("blood_pressure", "128"), ADA)
    assert made["component"][1]["dataAbsentReason"]["coding"][0]["code"] == "unknown"


def test_stands_with_the_arms_are_another_test_and_never_told_as_none() -> None:
    arms = Conditions(notes=frozenset({"arms_used"}))
    told = observation(a_reading("chair_stand_30s", "0", conditions=arms, as_typed="8 with my arms"), ADA)
    assert loincs(told) == ["93125-3"]
    assert quantity(told)[0] == D(8)
    untold = observation(a_reading("chair_stand_30s", "0", conditions=arms), ADA)
    assert untold["dataAbsentReason"]["coding"][0]["code"] == "unknown"
    assert "valueQuantity" not in untold
    assert loincs(observation(a_reading("chair_stand_30s", "12"), ADA)) == ["66247-8"]


@pytest.mark.parametrize("key", MEASURES)
def test_every_measure_has_a_code_a_unit_and_a_category(key: str) -> None:
    reading = a_reading(key, "40", second=D(20) if MEASURES[key].bounds.second_possible else None)
    made = observation(reading, ADA)
    assert made["code"]["coding"][-1] == {
        "system": codes.OURS,
        "code": key,
        "display": made["code"]["text"],
    }
    assert category(made) in {"vital-signs", "exam", "survey", "activity"}
    Observation.model_validate_json(to_json(made))


def test_no_code_is_left_behind_for_a_measure_that_is_gone() -> None:
    assert codes.CODES.keys() == MEASURES.keys()


VITALS = {
    "weight": "bodyweight",
    "height": "bodyheight",
    "bmi": "bmi",
    "resting_heart_rate": "heartrate",
    "blood_pressure": "bp",
}


def test_only_vital_signs_claim_the_vital_signs_profile() -> None:
    claimed = {key: coded.profile for key, coded in codes.CODES.items() if coded.profile}
    assert claimed == VITALS
    assert {key for key, coded in codes.CODES.items() if coded.category == "vital-signs"} == set(VITALS)


# --- the bundle --------------------------------------------------------------------------------------------

HISTORY = (
    a_reading("weight", "82.4", id=1),
    a_reading("waist", "94.25", id=2, attempts=2),
    a_reading("hip", "102", id=3),
    a_reading("blood_pressure", "128", second=D(82), id=4),
    a_reading("resting_heart_rate", "68", id=5, window=30),
    a_reading("energy", "7", id=6),
    a_reading("weight", "82.1", id=7, how=How.EARLY, taken_at=AT + timedelta(days=2)),
    a_reading("weight", "81.9", id=8, taken_at=AT + timedelta(days=28)),
)


def read_back(made: dict[str, Any]) -> Any:
    return Bundle.model_validate_json(to_json(made))


def observed(made: dict[str, Any], measure: str) -> list[dict[str, Any]]:
    found = [e["resource"] for e in made["entry"]]
    return [r for r in found if r["resourceType"] == "Observation" and r["code"]["coding"][-1]["code"] == measure]


def test_the_bundle_is_read_back_whole_by_another_library() -> None:
    made = bundle([(ADA, HISTORY)], NOW)
    found = read_back(made)
    assert found.type == "collection"
    assert len(found.entry) == len(made["entry"])
    weights = [
        e.resource.valueQuantity.value
        for e in found.entry
        if e.resource.get_resource_type() == "Observation" and e.resource.code.coding[0].code == "29463-7"
    ]
    assert weights == [D("82.4"), D("81.9")]


def test_a_side_note_stays_at_home_unless_asked_for() -> None:
    assert len(observed(bundle([(ADA, HISTORY)], NOW), "weight")) == 2
    (note,) = [
        w
        for w in observed(bundle([(ADA, HISTORY)], NOW, side_notes=True), "weight")
        if w["valueQuantity"]["value"] == D("82.1")
    ]
    assert "side note" in note["note"][0]["text"]


def test_what_is_worked_out_names_what_it_was_worked_out_of() -> None:
    made = bundle([(ADA, HISTORY)], NOW)
    first, second = observed(made, "bmi")
    assert first["valueQuantity"]["value"] == D("30.27")  # 82.4 / 1.65^2 = 30.266
    weights = [f"urn:uuid:{w['id']}" for w in observed(made, "weight")]
    assert [d["reference"] for d in first["derivedFrom"]] == weights[:1]
    assert [d["reference"] for d in second["derivedFrom"]] == weights[1:]
    (ratio,) = observed(made, "waist_to_hip_ratio")
    assert len(ratio["derivedFrom"]) == 2


def test_a_side_note_makes_no_body_mass_index() -> None:
    assert len(observed(bundle([(ADA, HISTORY)], NOW, side_notes=True), "bmi")) == 2


def test_every_reference_leads_to_something_in_the_bundle() -> None:
    made = bundle([(ADA, HISTORY)], NOW, side_notes=True)
    there = {e["fullUrl"] for e in made["entry"]}
    named = set()

    def look(value: Any) -> None:
        if isinstance(value, dict):
            named.update({value["reference"]} if "reference" in value else ())
            for inner in value.values():
                look(inner)
        elif isinstance(value, list):
            for inner in value:
                look(inner)

    look(made)
    assert named
    assert named <= there
    assert len(there) == len(made["entry"])


def test_nobody_is_named_unless_asked_for() -> None:
    text = to_json(bundle([(ADA, HISTORY)], NOW))
    assert "Ada" not in text
    assert "05-20" not in text
    person = bundle([(replace(ADA, name="Ada"), HISTORY)], NOW)["entry"][0]["resource"]
    assert (person["name"], person["birthDate"]) == ([{"text": "Ada"}], "1968-05-20")


def test_a_second_export_updates_the_first() -> None:
    before = {e["fullUrl"] for e in bundle([(ADA, HISTORY)], NOW)["entry"]}
    corrected = (replace(HISTORY[0], value=D("82.6")), *HISTORY[1:])
    after = {e["fullUrl"] for e in bundle([(ADA, corrected)], NOW + timedelta(days=1))["entry"]}
    assert before == after


def test_two_installations_never_share_a_pseudonym() -> None:
    elsewhere = replace(ADA, since=ADA.since + timedelta(microseconds=1))
    assert ADA.pseudonym != elsewhere.pseudonym


def test_a_decimal_is_written_digit_for_digit() -> None:
    text = to_json({"value": D("82.40"), "list": [D("1E+2")], "text": 'a "b"\n'})
    assert "82.40" in text
    assert json.loads(text, parse_float=D, parse_int=D) == {"value": D("82.40"), "list": [D(100)], "text": 'a "b"\n'}


def test_a_profile_that_says_nothing_is_a_patient_all_the_same() -> None:
    nobody = Subject(1, AT, Profile())
    found = read_back(bundle([(nobody, ())], NOW))
    assert found.entry[0].resource.gender == "unknown"
    assert fhir.patient(nobody)["identifier"][0]["value"] == str(nobody.pseudonym)


def test_a_caseload_is_one_bundle_in_which_everything_is_of_its_own_patient() -> None:
    ben = replace(ADA, id=18)
    made = bundle([(ADA, HISTORY), (ben, HISTORY[:1])], NOW)
    owners = [e["resource"]["subject"]["reference"] for e in made["entry"] if "subject" in e["resource"]]
    assert owners.count(f"urn:uuid:{ben.pseudonym}") == 2  # the weight, and the index derived from it
    assert len({e["fullUrl"] for e in made["entry"]}) == len(made["entry"])
    assert read_back(made).entry[0].resource.id == str(ADA.pseudonym)
