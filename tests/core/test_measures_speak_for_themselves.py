"""Anything special about a measure is defined in the measure; code elsewhere does not test for measures by name."""

from __future__ import annotations

import ast
from collections import Counter
from collections.abc import Iterator
from pathlib import Path

import pytest

from core.measures import MEASURES

ROOT = Path(__file__).parents[2]
FILES = sorted(path for room in ("core", "bot") for path in (ROOT / room).rglob("*.py"))

# The remaining comparisons with a measure's key, by file, each with its reason.
ALLOWED: dict[str, tuple[int, str]] = {
    "bot/exports/codes.py": (2, "LOINC has a code for each site of a waist, and one for stands with arms"),
    "bot/exports/csv_out.py": (2, "cells that are read back: vigorous minutes beside others, the last half rise"),
    "bot/exports/fhir.py": (6, "what another system expects beside the value differs from measure to measure"),
}


def constants(node: ast.AST) -> Iterator[str]:
    """Keys of measures written out in an operand: "weight", ("waist", "hip")."""
    parts = node.elts if isinstance(node, ast.Tuple | ast.Set | ast.List) else [node]
    for part in parts:
        if isinstance(part, ast.Constant) and isinstance(part.value, str) and part.value in MEASURES:
            yield part.value


def comparisons(text: str) -> Counter[str]:
    """How often each measure is compared by name. `"waist" in plan` asks the plan and does not count."""
    found: Counter[str] = Counter()
    for node in ast.walk(ast.parse(text)):
        if isinstance(node, ast.Compare):
            left = [] if isinstance(node.ops[0], ast.In | ast.NotIn) else [node.left]
            for operand in (*left, *node.comparators):
                found.update(constants(operand))
        elif isinstance(node, ast.MatchValue):
            found.update(constants(node.value))
    return found


def test_no_code_knows_a_measure_by_its_name_but_what_is_listed_with_a_reason():
    found = {}
    for path in FILES:
        name = str(path.relative_to(ROOT))
        if (number := comparisons(path.read_text("utf-8")).total()) and not name.startswith("core/measures/"):
            found[name] = number
    assert found == {name: number for name, (number, _) in ALLOWED.items()}


@pytest.mark.parametrize(
    "text",
    [
        'if measure.key == "weight": ...',
        'if reading.measure != "blood_pressure": ...',
        'taped = measure.key in ("waist", "nobody")',
        'match key:\n    case "walk_mile" if far: ...',
    ],
)
def test_such_a_comparison_would_be_found(text: str):
    assert comparisons(text).total() == 1


def test_asking_a_plan_for_a_measure_is_none():
    assert comparisons('if "waist" in plan.measures and said == "thanks": ...').total() == 0
