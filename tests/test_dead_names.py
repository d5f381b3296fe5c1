"""Every name of core, bot and demo is used by them: what only its own tests know is dead."""

from __future__ import annotations

import ast
from collections.abc import Iterator
from pathlib import Path

ROOT = Path(__file__).parents[1]
MIGRATIONS = ROOT / "bot" / "store" / "migrations"  # run by Alembic, which looks for their names

# What nothing calls yet, and why it stays.
WAITING = {
    "third_weighing": "when a second weight asks for a third; weights are taken once so far",
    "measure_again": "when a second girth asks for another; the same",
    "standing_drop": "a pressure taken standing; only sitting ones are asked for so far",
    "put_back": "gives what was set aside another start; no command does it yet",
    "daily_loads": "the load of a week's sessions; no conversation shows it yet",
    "TABLES": "every command's row: the walks over commands read it",
    "CLIENT_BUTTONS": "the same for a client's buttons",
    "REFERENCES": "the registry that the walks over sources read",
    "DECISIONS": "which side of a printed limit counts, and why: the walk over boundaries reads it",
    "extreme": "messages at their longest, for the walks over every message",
    "LONGER": "which messages may be longer than a reply: the walk over their length reads it",
    "LONGER_WORDS": "how long",
    "SITES": "where a waist may be measured: the export's codes are held against it",
    "DIASTOLIC_ERROR": "the second number's error; changes are judged by the first",
    "ASIAN_ACTION_POINTS": "of the paper, beside the classes that are used",
    "HOME_TO_OFFICE": "of the guideline, beside the levels at home that are used",
    "OFFICE": "the same",
    "DAY_TO_DAY_SD": "the study's other figure: the relative error is held against it",
    "WITHIN_WEEK": "the same",
    "PROGRAMME_AVERAGE": "of the paper, beside the rates that are used",
}


def sources() -> dict[Path, ast.Module]:
    return {
        path: ast.parse(path.read_text())
        for folder in ("core", "bot", "demo")
        for path in sorted((ROOT / folder).rglob("*.py"))
        if MIGRATIONS not in path.parents
    }


def used(tree: ast.Module) -> Iterator[str]:
    """Every name it reads, imports or writes as a text, as a registry or a lazy import does."""
    for node in ast.walk(tree):
        match node:
            case ast.Name(id=name, ctx=ast.Load()) | ast.Attribute(attr=name):
                yield name
            case ast.alias(name=name):
                yield name.rpartition(".")[2]
            case ast.Constant(value=str(said)) if said.isidentifier():
                yield said


def defined(tree: ast.Module) -> Iterator[str]:
    """Its functions, classes and constants; those with a decorator are somebody's who keeps a register."""
    for node in tree.body:
        match node:
            case ast.FunctionDef(name=name, decorator_list=[]) | ast.AsyncFunctionDef(name=name, decorator_list=[]):
                yield name
            case ast.ClassDef(name=name):
                yield name
            case ast.Assign(targets=[ast.Name(id=name)]) | ast.AnnAssign(target=ast.Name(id=name)):
                yield name


def test_every_name_is_used_or_says_what_it_waits_for() -> None:
    trees = sources()
    known = {name for tree in trees.values() for name in used(tree)}
    dead = {
        name: str(path.relative_to(ROOT))
        for path, tree in trees.items()
        for name in defined(tree)
        if name not in known and not name.startswith("__")
    }
    assert {name: where for name, where in dead.items() if name not in WAITING} == {}
    assert sorted(WAITING.keys() - dead) == [], "these are used now"


def test_a_dead_name_is_seen() -> None:
    tree = ast.parse("FEW = 3\ndef double(n): return n * 2\ndef unused(): return double(FEW)\n")
    assert set(defined(tree)) - set(used(tree)) == {"unused"}
