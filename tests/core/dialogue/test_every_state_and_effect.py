"""Every state and effect is whole: some conversation makes it, and somebody does what it asks."""

from __future__ import annotations

import ast
import dataclasses
import importlib
import pkgutil
from collections.abc import Iterator
from functools import cache
from pathlib import Path
from typing import get_args

import pytest

from core import dialogue
from core.dialogue.client.states import Asking, Awaiting, State
from core.dialogue.kit.step import changed
from core.dialogue.staff.states import StaffAsking, StaffState

ROOT = Path(__file__).parents[3]
PARTS = {"Choice"}  # of effects, and none itself
UNASKED = {"DropButtons"}  # buttons stay on a message that was pressed: the bot could take them off, and nothing asks


def of(kind: str) -> list[str]:
    """The names of all classes in modules called so, or so with something before it: "effects", "cohort_effects"."""
    found = []
    for one in pkgutil.walk_packages(dialogue.__path__, f"{dialogue.__name__}."):
        if one.name.rpartition(".")[2].endswith(kind):
            module = importlib.import_module(one.name)
            own = [c for c in vars(module).values() if isinstance(c, type) and c.__module__ == one.name]
            found += [c.__name__ for c in own if dataclasses.is_dataclass(c)]
    return sorted({*found} - PARTS)


def last(node: ast.expr) -> str:
    return node.attr if isinstance(node, ast.Attribute) else node.id if isinstance(node, ast.Name) else ""


@cache
def names(folder: str) -> tuple[frozenset[str], frozenset[str]]:
    """What the modules below a folder make, and what they tell from others by its class."""
    made, told_apart = set[str](), set[str]()
    for path in (ROOT / folder).rglob("*.py"):
        for node in ast.walk(ast.parse(path.read_text())):
            match node:
                case ast.MatchClass(cls=cls):
                    told_apart.add(last(cls))
                case ast.Call(func=ast.Name(id="isinstance"), args=[_, kinds]):
                    told_apart |= set(alternatives(kinds))
                case ast.Call(func=func):
                    made.add(last(func))
    return frozenset(made), frozenset(told_apart)


def alternatives(node: ast.expr) -> Iterator[str]:
    match node:
        case ast.BinOp(left=left, right=right):
            yield from alternatives(left)
            yield from alternatives(right)
        case ast.Tuple(elts=each):
            for one in each:
                yield from alternatives(one)
        case _:
            yield last(node)


def test_there_are_states_and_effects_to_walk_over() -> None:
    assert {"Awaiting", "Inviting", "State", "StaffState"} <= set(of("states"))
    assert {"Record", "Invite", "StartCohort", "Say", "Erase"} <= set(of("effects"))


@pytest.mark.parametrize("name", of("effects"))
def test_an_effect_is_asked_for_and_carried_out(name: str) -> None:
    assert (name in names("core/dialogue")[0]) == (name not in UNASKED), "no conversation asks for it"
    assert name in names("bot/turns")[1], "no turn carries it out"


@pytest.mark.parametrize("name", of("states"))
def test_a_state_is_entered(name: str) -> None:
    assert name in names("core/dialogue")[0] | names("bot")[0], "no conversation enters it"


@pytest.mark.parametrize("name", [kind.__name__ for kind in (*get_args(Asking), *get_args(StaffAsking))])
def test_what_is_typed_while_something_is_asked_is_understood(name: str) -> None:
    assert name in names("core/dialogue")[1], "no conversation knows what to do in it"


@pytest.mark.parametrize("state", [State(agenda=("waist", "hip"), question=3), StaffState(question=3)])
def test_a_changed_state_differs_in_what_was_changed_and_in_nothing_else(state: State | StaffState) -> None:
    changes = {"question": 7, "asking": Awaiting("hip")}
    assert changed(state, changes) == dataclasses.replace(state, **changes)
    assert state.question == 3
