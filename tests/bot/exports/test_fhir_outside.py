"""The FHIR export against HL7's own R4 profiles, by an independent validator.

It runs on Node.js and comes from its registry, so it must be installed first:

    npm install --prefix tests/bot/exports/outside
    python -m pytest tests/bot/exports/test_fhir_outside.py

SAMEHOUR_TESTS_FHIR_MODULES can name another node_modules folder.
"""

import copy
import json
import os
import shutil
import subprocess
from collections.abc import Callable
from dataclasses import replace
from datetime import timedelta
from pathlib import Path
from typing import Any

import pytest

from bot.exports.fhir import bundle, to_json
from tests.bot.exports.test_csv_out import READINGS
from tests.bot.exports.test_fhir import ADA, AT, NOW

HERE = Path(__file__).parent / "outside"
MODULES = Path(os.environ.get("SAMEHOUR_TESTS_FHIR_MODULES", HERE / "node_modules"))
NODE = shutil.which("node")
pytestmark = pytest.mark.skipif(
    NODE is None or not (MODULES / "@medplum" / "definitions").is_dir(),
    reason=f"the FHIR validator is not here, so HL7's profiles go untried: npm install --prefix {HERE}",
)


def exported() -> dict[str, Any]:
    """Every measure, with derived ones, as plain JSON."""
    series = [
        replace(r, id=number, taken_at=AT + timedelta(hours=number)) for number, r in enumerate(READINGS.values(), 1)
    ]
    made: dict[str, Any] = json.loads(to_json(bundle([(ADA, series)], NOW, side_notes=True)))
    return made


def problems(made: dict[str, Any]) -> list[str]:
    ended = subprocess.run(
        [str(NODE), str(HERE / "check.cjs"), str(MODULES)], input=json.dumps(made), capture_output=True, text=True
    )
    assert ended.returncode == 0, ended.stderr[-2000:]
    return [f"{p['profile']}: {p['problem']}" for p in json.loads(ended.stdout)]


def test_everything_we_export_keeps_to_hl7s_profiles() -> None:
    made = exported()
    claimed = {url for e in made["entry"] for url in e["resource"].get("meta", {}).get("profile", ())}
    assert {url.rpartition("/")[2] for url in claimed} == {
        "vitalsigns", "bodyweight", "bodyheight", "bmi", "heartrate", "bp",
    }  # fmt: skip
    assert problems(made) == []


def first(made: dict[str, Any], code: str) -> dict[str, Any]:
    found: dict[str, Any] = next(
        e["resource"]
        for e in made["entry"]
        if any(c["code"] == code for c in e["resource"].get("code", {}).get("coding", ()))
    )
    return found


Break = Callable[[dict[str, Any]], Any]
BROKEN: dict[str, tuple[Break, str]] = {
    "W104 a rate in bpm": (lambda b: first(b, "8867-4")["valueQuantity"].update(code="bpm"), "unit bpm, fixed /min"),
    "W104 a rate an hour": (lambda b: first(b, "8867-4")["valueQuantity"].update(code="/h"), "unit /h, fixed /min"),
    "W105 a weight in stones": (
        lambda b: first(b, "29463-7")["valueQuantity"].update(code="[stone_av]"),
        "unit [stone_av], allowed kg [lb_av] g",
    ),
    "a height in metres": (lambda b: first(b, "8302-2")["valueQuantity"].update(code="m"), "unit m, allowed"),
    "a pressure in kPa": (
        lambda b: first(b, "85354-9")["component"][0]["valueQuantity"].update(code="kPa"),
        "unit kPa, fixed mm[Hg]",
    ),
    "a pressure without its lower number": (lambda b: first(b, "85354-9")["component"].pop(), "0 components 8462-4"),
    "another category": (lambda b: first(b, "29463-7")["category"][0]["coding"][0].update(code="exam"), "VSCat"),
    "another code": (lambda b: first(b, "29463-7")["code"]["coding"][0].update(code="3141-9"), "BodyWeightCode"),
    "no subject": (lambda b: first(b, "29463-7").pop("subject"), "subject"),
    "no time": (lambda b: first(b, "29463-7").pop("effectiveDateTime"), "effective"),
    "a status nobody knows": (lambda b: first(b, "29463-7").update(status=""), "status"),
    "a field nobody knows": (lambda b: first(b, "29463-7").update(weight=82), "weight"),
}


@pytest.mark.parametrize("broken, said", BROKEN.values(), ids=BROKEN.keys())
def test_the_validator_would_have_found(broken: Break, said: str) -> None:
    made = copy.deepcopy(exported())
    broken(made)
    assert any(said in problem for problem in problems(made)), problems(made)
