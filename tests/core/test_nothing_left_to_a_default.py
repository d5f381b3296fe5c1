"""Functions that decide about a person's safety require every fact about them: a caller that forgets one fails at
once."""

from __future__ import annotations

import ast
from collections.abc import Iterator
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
ROOMS = ("core/watching", "core/judging", "core/measures", "core/dialogue/client")
FILES = sorted(path for room in ROOMS for path in (ROOT / room).rglob("*.py"))

# Facts about a person, by parameter names and by types.
NAMES = frozenset(
    {
        "age", "agreed", "background", "baseline_since", "birth_date", "birth_year", "caution", "cautions", "directed",
        "directed_weighing", "in_plan", "interval_days", "loss_is_planned", "pregnant", "profile", "sex", "stature",
        "zone",
    }
)  # fmt: skip
TYPES = frozenset({"Agreed", "Background", "Caution", "Profile", "Sex", "tzinfo"})

ALLOWED = {
    # A limit for everybody names no caution, and most measures are misled by none. Neither is a fact about a person.
    ("core/measures/measure.py", "ReadingAlarm", "caution"),
    ("core/measures/measure.py", "Measure", "misled_by"),
    # Nothing is known about a stranger. Code that builds a client's facts names them all: see the test below.
    ("core/dialogue/client/facts.py", "ClientFacts", "profile"),
    ("core/dialogue/client/facts.py", "ClientFacts", "zone"),
    ("core/dialogue/client/facts.py", "ClientFacts", "zone_of"),
}

Defaulted = tuple[str, str, str]


def of_functions(tree: ast.AST) -> Iterator[tuple[str, ast.arg]]:
    for node in ast.walk(tree):
        if isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef | ast.Lambda):
            named = [*node.args.posonlyargs, *node.args.args]
            found = named[len(named) - len(node.args.defaults) :] if node.args.defaults else []
            found += [a for a, d in zip(node.args.kwonlyargs, node.args.kw_defaults, strict=True) if d is not None]
            yield from ((getattr(node, "name", "lambda"), argument) for argument in found)


def of_classes(tree: ast.AST) -> Iterator[tuple[str, ast.arg]]:
    for node in ast.walk(tree):
        if isinstance(node, ast.ClassDef):
            for line in node.body:
                if isinstance(line, ast.AnnAssign) and line.value is not None and isinstance(line.target, ast.Name):
                    yield node.name, ast.arg(line.target.id, line.annotation)


def is_a_fact(argument: ast.arg) -> bool:
    types = {n.id for n in ast.walk(argument.annotation) if isinstance(n, ast.Name)} if argument.annotation else set()
    return argument.arg in NAMES or bool(types & TYPES)


def defaulted(text: str, file: str) -> set[Defaulted]:
    tree = ast.parse(text)
    found = (*of_functions(tree), *of_classes(tree))
    return {(file, where, argument.arg) for where, argument in found if is_a_fact(argument)} - ALLOWED


@pytest.mark.parametrize("path", FILES, ids=[str(path.relative_to(ROOT)) for path in FILES])
def test_no_fact_about_a_person_is_left_to_a_default(path: Path):
    assert defaulted(path.read_text("utf-8"), str(path.relative_to(ROOT))) == set()


@pytest.mark.parametrize(
    "text",
    [
        "def level(systolic, diastolic, *, pregnant: bool = False): ...",
        "def flags(reading, who: Profile = NOBODY): ...",
        "async def mean(readings, days: tzinfo | None = None, *, other=1): ...",
        "guard = lambda weights, directed=False: ...",
        "class Agreed:\n    directed_weighing: bool = False",
    ],
)
def test_such_a_default_would_be_found(text: str):
    assert len(defaulted(text, "anywhere.py")) == 1


def test_whoever_loads_a_client_names_every_fact_about_them():
    tree = ast.parse((ROOT / "bot/turns/turn.py").read_text("utf-8"))
    calls = [n for n in ast.walk(tree) if isinstance(n, ast.Call) and ast.unparse(n.func) == "ClientFacts"]
    assert calls
    for call in calls:
        assert {"country", "flags", "history", "plan", "profile", "zone"} <= {word.arg for word in call.keywords}


def test_what_is_no_fact_about_a_person_may_have_one():
    assert defaulted("def mean_of(series, zone: tzinfo, *, drop_days: int = 1): ...", "anywhere.py") == set()
