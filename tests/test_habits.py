"""What the tests themselves keep to: none sleeps, and few reach into private names."""

from __future__ import annotations

import ast
from collections.abc import Iterator
from functools import cache
from pathlib import Path

import pytest

TESTS = Path(__file__).parent
MEASURING = TESTS / "bench"  # measures how long things take, and is run by hand

# Where time is waited for, and why.
MAY_SLEEP = {
    "faults/updates.py": "a platform that hands out bytes, and what is stored, tell nobody",
    "virtual_time.py": "time that passes only there, and at once",
    "waiting.py": "a commit in another process tells nobody",
}
# Each reach into a private name of core, bot, demo or a library, and why it is worth it.
MAY_REACH = {
    ("bot/operator/test_backup.py", "_Tool"): "the server the tests start asks for no password, and this one must",
    ("bot/scoring/test_scoring.py", "_people"): "how much is remembered of a long file shows nowhere else",
    ("bot/turns/test_access.py", "_ONE"): "the proof that the matrix of access finds a hole: the query is broken",
    ("bot/turns/test_access.py", "_ALL"): "the same for the query of a whole caseload",
    ("faults/process.py", "_write"): "what every transaction goes through: faults are put before and after a commit",
}


@cache
def modules() -> dict[str, ast.Module]:
    """Every module of the tests by its path under tests/, the benchmarks aside."""
    return {
        path.relative_to(TESTS).as_posix(): ast.parse(path.read_text())
        for path in sorted(TESTS.rglob("*.py"))
        if MEASURING not in path.parents
    }


def sleeps(tree: ast.Module) -> Iterator[str]:
    """Where it sleeps, or looks again after so many seconds whether anything has changed."""
    for node in ast.walk(tree):
        match node:
            case ast.ImportFrom(module="time" | "asyncio", names=names) if any(n.name == "sleep" for n in names):
                yield f"line {node.lineno}: call sleep by its module's name"
            case ast.Call(func=ast.Attribute(attr="sleep"), args=[ast.Constant(value=0)]):
                pass  # lets the others on the event loop have their turn
            case ast.Call(func=ast.Attribute(attr="sleep")):
                yield f"line {node.lineno}: {ast.unparse(node)}"
            case ast.Call(func=ast.Attribute(attr="changed"), keywords=[ast.keyword(arg="timeout")]):
                yield f"line {node.lineno}: {ast.unparse(node)}"


def is_private(name: str) -> bool:
    return name.startswith("_") and not name.endswith("__") and name != "_exit"  # os._exit is public


def reaches(tree: ast.Module) -> Iterator[str]:
    """The private names of others that it uses, by attribute, by import, or by what it patches."""
    own = {node.name for node in ast.walk(tree) if isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef)}
    for node in ast.walk(tree):
        match node:
            case ast.Attribute(value=ast.Name(id="self" | "cls")):
                pass
            case ast.Attribute(attr=name) if is_private(name) and name not in own:
                yield name
            case ast.ImportFrom(names=names):
                yield from (one.name for one in names if is_private(one.name))
            case ast.Call(func=ast.Name(id="getattr" | "setattr") | ast.Attribute(attr="setattr"), args=args):
                said = [str(one.value).rpartition(".")[2] for one in args[:2] if isinstance(one, ast.Constant)]
                yield from filter(is_private, said)


def test_no_test_sleeps() -> None:
    found = {name: list(sleeps(tree)) for name, tree in modules().items()}
    assert {name: where for name, where in found.items() if where and name not in MAY_SLEEP} == {}
    assert [name for name in MAY_SLEEP if not found[name]] == [], "these need no exception any more"


def test_few_tests_reach_into_private_names_and_each_says_why() -> None:
    found = {(name, private) for name, tree in modules().items() for private in reaches(tree)}
    assert sorted(found - MAY_REACH.keys()) == []
    assert sorted(MAY_REACH.keys() - found) == [], "these need no exception any more"


@pytest.mark.parametrize(
    "program, count",
    [
        ("import time\ntime.sleep(1)", 1),
        ("import asyncio\nasync def f(): await asyncio.sleep(0.01)", 1),
        ("from time import sleep\nsleep(1)", 1),
        ("async def f(m): await m.changed(-1, timeout=0.05)", 1),
        ("import asyncio\nasync def f(): await asyncio.sleep(0)", 0),
        ("async def f(m): await m.changed(-1)", 0),
    ],
)
def test_a_sleep_is_seen(program: str, count: int) -> None:
    assert len(list(sleeps(ast.parse(program)))) == count


@pytest.mark.parametrize(
    "program, found",
    [
        ("from bot.store.inbox import _OLDEST", ["_OLDEST"]),
        ("from bot.store import inbox\ninbox._OLDEST", ["_OLDEST"]),
        ("def test(monkeypatch): monkeypatch.setattr('bot.store.database.Database._read', 1)", ["_read"]),
        ("def test(monkeypatch, it): monkeypatch.setattr(it, '_ALL', 1)", ["_ALL"]),
        ("class A:\n    def _own(self): return self._other\ndef test(): return A()._own()", []),
        ("import os\nos._exit(1)", []),
        ("name = '__main__'", []),
    ],
)
def test_a_reach_is_seen(program: str, found: list[str]) -> None:
    assert list(reaches(ast.parse(program))) == found
