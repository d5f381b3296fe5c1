"""Readings as a FHIR R4 bundle: a Patient, and an Observation for each reading and each derived measure.

* A `collection`: a set of resources to be read or filed. A `document` would be a signed composition, and nobody signs
  here.
* The patient's pseudonym and the observation ids are stable between exports: a receiver that files both updates its
  records and gets no duplicates. The name and full date of birth are included only on request.
* Vital signs keep to HL7's profiles (weight, height, body mass index, heart rate, blood pressure): kg, cm, kg/m2,
  /min, mm[Hg], whatever unit was typed. FHIR has no stone.
* Side notes (early weights) are left out unless requested: nobody should chart them.
"""

from __future__ import annotations

import json
import uuid
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from decimal import Decimal
from typing import Any

from bot.exports.codes import (
    CATEGORIES,
    CODES,
    DIASTOLIC,
    LOINC,
    OURS,
    PROFILES,
    SYSTOLIC,
    UCUM,
    Coded,
    LoincCode,
    loinc_of,
)
from bot.rendering.phrases.names import MEASURES as NAMES
from core.client import Profile, Sex
from core.judging.assess import derive_all
from core.language import ENGLISH
from core.measures import MEASURES
from core.measures.measure import MeasureKind, Understood
from core.measures.parsing import count
from core.measures.score_function_tests import ARMS_USED
from core.quantity import Unit, half_up
from core.reading import Reading

Json = dict[str, Any]

WEEK = timedelta(days=7)
OF_A_WEEK = frozenset({MeasureKind.ACTIVITY, MeasureKind.RATING})  # asked about the past seven days
ABSENT = "http://terminology.hl7.org/CodeSystem/data-absent-reason"
GENDERS = {Sex.FEMALE: "female", Sex.MALE: "male"}
_hear_count = count(Unit.REPETITION)


@dataclass(frozen=True, slots=True)
class Subject:
    """The subject of the readings. id, since: of the client's row; together they make the pseudonym.

    name: given only on request; then the full date of birth is included too.
    """

    id: int
    since: datetime
    profile: Profile
    name: str = ""

    @property
    def pseudonym(self) -> uuid.UUID:
        """The same in every export, and not guessable: nobody else knows `since` to the microsecond."""
        return uuid.uuid5(uuid.UUID(OURS.removeprefix("urn:uuid:")), f"{self.id}/{self.since.isoformat()}")


def bundle(people: Iterable[tuple[Subject, Sequence[Reading]]], now: datetime, *, side_notes: bool = False) -> Json:
    """A bundle of people, each with all their readings (oldest first) and derived measures.

    side_notes: include readings that never count.
    """
    resources = [resource for who, readings in people for resource in _resources(who, readings, side_notes)]
    return {
        "resourceType": "Bundle",
        "type": "collection",
        "timestamp": now.isoformat(),
        "entry": [{"fullUrl": f"urn:uuid:{resource['id']}", "resource": resource} for resource in resources],
    }


def _resources(subject: Subject, readings: Sequence[Reading], side_notes: bool) -> Iterator[Json]:
    told = [r for r in readings if side_notes or r.counts]
    yield patient(subject)
    for reading in told:
        yield observation(reading, subject)
    yield from _derived(told, subject)


def patient(subject: Subject) -> Json:
    """A Patient: pseudonym, sex as the reference tables use it, year of birth."""
    profile, me = subject.profile, str(subject.pseudonym)
    made: Json = {"resourceType": "Patient", "id": me, "identifier": [{"system": OURS, "value": me}]}
    if subject.name:
        made["name"] = [{"text": subject.name}]
    made["gender"] = GENDERS[profile.sex] if profile.sex else "unknown"
    if profile.birth_date is not None:
        made["birthDate"] = profile.birth_date.isoformat() if subject.name else f"{profile.birth_date.year:04}"
    elif profile.birth_year is not None:
        made["birthDate"] = f"{profile.birth_year:04}"
    return made


def observation(
    reading: Reading, subject: Subject, *, since: datetime | None = None, parts: Iterable[Reading] = ()
) -> Json:
    """One reading as an Observation.

    since: start of the period the value covers; derived for answers about the past week. parts: of a derived reading.
    """
    measure, coded = MEASURES[reading.measure], CODES[reading.measure]
    if since is None and measure.kind in OF_A_WEEK:
        since = reading.taken_at - WEEK
    parts = tuple(parts)
    me = _reference("Patient", str(subject.pseudonym))
    made: Json = {"resourceType": "Observation", "id": _id(reading, subject, parts)}
    if coded.profile:
        made["meta"] = {"profile": [f"{PROFILES}vitalsigns", f"{PROFILES}{coded.profile}"]}
    made |= {
        "status": "final",
        "category": [{"coding": [{"system": CATEGORIES, "code": coded.category}]}],
        "code": _code(reading),
        "subject": me,
    }
    if since is None:
        made["effectiveDateTime"] = reading.taken_at.isoformat()
    else:
        made["effectivePeriod"] = {"start": since.isoformat(), "end": reading.taken_at.isoformat()}
    if measure.kind is not MeasureKind.DERIVED:
        made["performer"] = [me]  # everything is measured at home by the person themselves
    made |= _value(reading, coded)
    if notes := _notes(reading):
        made["note"] = [{"text": text} for text in notes]
    if parts:
        made["derivedFrom"] = [_reference("Observation", _id(p, subject)) for p in parts]
    return made


def _reference(kind: str, id_: str) -> Json:
    """Reference to a resource of the same bundle, with its type for readers that do not resolve it."""
    return {"reference": f"urn:uuid:{id_}", "type": kind}


def _id(reading: Reading, subject: Subject, parts: Sequence[Reading] = ()) -> str:
    """The id of the stored row, if there is one, so that a corrected value keeps its id."""
    own = f"reading/{reading.id}" if reading.id is not None and not parts else None
    key = own or "/".join((reading.measure, reading.taken_at.isoformat(), *(str(part.id) for part in parts)))
    return str(uuid.uuid5(subject.pseudonym, key))


def _code(reading: Reading) -> Json:
    name = NAMES[reading.measure]
    codings = [{"system": LOINC, "code": c.code, "display": c.display} for c in loinc_of(reading)]
    return {"coding": [*codings, {"system": OURS, "code": reading.measure, "display": name}], "text": name}


def _value(reading: Reading, coded: Coded) -> Json:
    places = MEASURES[reading.measure].places + 1
    match reading.measure:
        case "blood_pressure":
            return {
                "component": [
                    _component(SYSTOLIC, reading.value, coded, places),
                    _component(DIASTOLIC, reading.second, coded, places),
                ]
            }
        case "chair_stand_30s" if ARMS_USED in reading.conditions.notes:
            return _quantity(_with_arms(reading), coded, places)  # the stored value is 0, by the other test's rule
        case "walk_mile" if reading.second is not None:
            return _quantity(reading.value, coded, places) | {
                "component": [_of_ours("pulse_at_the_end", "Pulse at the end", reading.second, "/min", "beats/minute")]
            }
        case "activity_minutes" if reading.second is not None:
            text = "Vigorous minutes beside them"
            return _quantity(reading.value, coded, places) | {
                "component": [_of_ours("vigorous_minutes", text, reading.second, coded.unit, coded.text)]
            }
        case _:
            return _quantity(reading.value, coded, places)


def _with_arms(reading: Reading) -> Decimal | None:
    """The number of stands with the help of the arms, if the original text still has it."""
    heard = _hear_count(reading.as_typed, ENGLISH, None)
    return heard.value if isinstance(heard, Understood) else None


def _quantity(value: Decimal | None, coded: Coded, places: int) -> Json:
    if value is None:
        return {"dataAbsentReason": {"coding": [{"system": ABSENT, "code": "unknown"}]}}
    return {"valueQuantity": _amount(value, coded.unit, coded.text, places)}


def _component(code: LoincCode, value: Decimal | None, coded: Coded, places: int) -> Json:
    coding = {"system": LOINC, "code": code.code, "display": code.display}
    return {"code": {"coding": [coding]}} | _quantity(value, coded, places)


def _of_ours(code: str, text: str, value: Decimal, unit: str, unit_text: str) -> Json:
    coding = {"system": OURS, "code": code, "display": text}
    return {"code": {"coding": [coding]}, "valueQuantity": _amount(value, unit, unit_text, 1)}


def _amount(value: Decimal, unit: str, text: str, places: int) -> Json:
    """One decimal more than displayed: enough for a mean of two, without digits that nobody measured."""
    exact = half_up(value, places)
    whole = exact.to_integral_value()
    return {"value": whole if exact == whole else exact.normalize(), "unit": text, "system": UCUM, "code": unit}


def _notes(reading: Reading) -> Iterator[str]:
    """How the reading was taken, in plain English."""
    conditions = reading.conditions
    if not reading.counts:
        yield "Taken before its time: a side note, not to be compared."
    if conditions.differs:
        yield f"Not as last time: {_listed(conditions.differs)}."
    for aspect, name in conditions.labels:
        yield f"{aspect.replace('_', ' ').capitalize()}: {name.replace('_', ' ')}."
    if conditions.notes:
        yield f"Noted: {_listed(conditions.notes)}."


def _listed(keys: Iterable[str]) -> str:
    return ", ".join(key.replace("_", " ") for key in sorted(keys))


# --- what is worked out ------------------------------------------------------------------------------------


def _derived(readings: Sequence[Reading], subject: Subject) -> list[Json]:
    """Each derived measure for every day that brought a new part; a day's last one counts."""
    latest: dict[str, Reading] = {}
    found: dict[tuple[str, str], Json] = {}
    for reading in readings:
        if not reading.counts:
            continue
        latest[reading.measure] = reading
        for derived in derive_all(latest, subject.profile, MEASURES):
            parts = _parts(derived.measure.key, latest)
            if reading in parts:
                day = derived.reading.taken_at.date().isoformat()
                found[derived.measure.key, day] = observation(derived.reading, subject, parts=parts)
    return list(found.values())


def _parts(measure: str, latest: Mapping[str, Reading]) -> tuple[Reading, ...]:
    """The stored readings behind a derived measure; a stature on file is not a reading."""
    needed = MEASURES[measure].derived_from
    also = ("height",) if measure in ("bmi", "waist_to_height_ratio") else ()
    return tuple(latest[key] for key in (*needed, *also) if key in latest)


# --- text --------------------------------------------------------------------------------------------------


def to_json(value: object, indent: int = 0) -> str:
    """JSON with every Decimal digit for digit, which the standard library's encoder cannot write."""
    inner = " " * (indent + 2)
    match value:
        case Decimal():
            return format(value, "f")
        case dict():
            rows = [f"{inner}{json.dumps(k)}: {to_json(v, indent + 2)}" for k, v in value.items()]
            return "{\n" + ",\n".join(rows) + f"\n{' ' * indent}}}"
        case list():
            rows = [inner + to_json(v, indent + 2) for v in value]
            return "[\n" + ",\n".join(rows) + f"\n{' ' * indent}]"
        case _:
            return json.dumps(value, ensure_ascii=False)
