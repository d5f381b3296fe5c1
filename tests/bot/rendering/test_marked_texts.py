"""Every text that is marked for the catalogues is written so that every version of Babel finds it, and nothing else.

Babel reads tokens, not the tree, and its versions differ in what they make of brackets within a marked call: of
`v.say("...", sex=v.say_in("sex", GROUPS["sex"][key]))` some made a text "sex", and a text marked within another call
that is within a marked one is lost without a word. So the source leaves such things alone, and what Babel finds is held
against the tree.
"""

from __future__ import annotations

import ast
from collections.abc import Iterator
from pathlib import Path
from typing import NamedTuple

import pytest

from bot.rendering.catalogues import KEYWORDS, ROOT, extracted
from bot.rendering.catalogues import SOURCES as FOLDERS

SOURCES = sorted(path for folder in FOLDERS for path in (ROOT / folder).rglob("*.py"))
BRACKETS = (
    *(ast.Call, ast.Subscript, ast.List, ast.Tuple, ast.Set, ast.Dict),
    *(ast.ListComp, ast.SetComp, ast.DictComp, ast.GeneratorExp),
)


class Marked(NamedTuple):
    """A marked call. inside: of another.  lost: some reader would overlook a text there."""

    call: ast.Call
    name: str
    inside: bool
    lost: bool

    @property
    def context(self) -> list[ast.expr]:
        """The argument that is the context, if there is one."""
        return [self.call.args[place[0] - 1] for place in KEYWORDS[self.name] if isinstance(place, tuple)]

    @property
    def forms(self) -> list[ast.expr]:
        """The arguments that are the text: one, or one for each of its forms."""
        return [self.call.args[place - 1] for place in KEYWORDS[self.name] if isinstance(place, int)]


def marking(node: ast.AST) -> str:
    """The marking function that this node calls; "" for none."""
    if not isinstance(node, ast.Call):
        return ""
    name = node.func.attr if isinstance(node.func, ast.Attribute) else getattr(node.func, "id", "")
    return name if name in KEYWORDS else ""


def marked(node: ast.AST, inside: bool = False, lost: bool = False) -> Iterator[Marked]:
    """Every marked call in here. An f-string is one token up to Python 3.11, so that nothing is found in it."""
    name = marking(node)
    if name:
        assert isinstance(node, ast.Call)
        yield Marked(node, name, inside, lost)
        inside, lost = True, False
    elif isinstance(node, ast.JoinedStr) or (inside and isinstance(node, BRACKETS)):
        lost = True
    for child in ast.iter_child_nodes(node):
        yield from marked(child, inside, lost)


def literal(node: ast.AST) -> str | None:
    return node.value if isinstance(node, ast.Constant) and isinstance(node.value, str) else None


def holds_a_literal(node: ast.AST) -> bool:
    """Somewhere in here, but for the arguments of a call, which every reader passes over."""
    if isinstance(node, ast.Call):
        return False
    return literal(node) is not None or any(map(holds_a_literal, ast.iter_child_nodes(node)))


def faults(source: str) -> list[str]:
    """What may be read in two ways."""
    found = []
    for one in marked(ast.parse(source)):
        if all(literal(text) is not None for text in one.context + one.forms):
            fault = "a text is overlooked here" if one.lost else ""
        elif one.inside:
            fault = "a text is looked up inside another"
        else:
            fault = "a text is no literal but holds one" if any(map(holds_a_literal, one.forms)) else ""
        if fault:
            found.append(f"line {one.call.lineno}: {fault}; give it a name first: {ast.unparse(one.call)}")
    return found


def written(source: str) -> set[tuple[str | tuple[str, ...], str | None]]:
    """Each text as it stands in the source, alone or in its forms, and its context."""
    found: set[tuple[str | tuple[str, ...], str | None]] = set()
    for one in marked(ast.parse(source)):
        context = literal(one.context[0]) if one.context else None
        forms = tuple(text for form in one.forms if (text := literal(form)) is not None)
        if len(forms) == len(one.forms):
            found.add((forms if len(forms) > 1 else forms[0], context))
    return found


@pytest.mark.parametrize("path", SOURCES, ids=lambda path: path.relative_to(ROOT).as_posix())
def test_no_text_can_be_read_in_two_ways(path: Path) -> None:
    assert faults(path.read_text()) == []


def test_babel_finds_what_is_written_no_more_and_no_less() -> None:
    there = set[tuple[str | tuple[str, ...], str | None]]().union(*(written(path.read_text()) for path in SOURCES))
    assert len(there) > 1000
    assert {(message.id, message.context) for message in extracted() if message.id} == there


@pytest.mark.parametrize(
    "source",
    [
        'v.say("Sex: {sex}", sex=v.say_in("sex", GROUPS["sex"][key]))',
        'v.say("Is {status}.", status=v.say(STATUS[key]))',
        'v.plain("{n} out of {most}", n=n, most=v.bold(numbers.plain(10)))',
        'v.say("Hello, {name}.", name=v.bold(v.say("nobody")))',
        'v.say("Measures: {measures}", measures=[v.say("Weight")])',
        'v.say(TABLE.get(key, N_("Something else")))',
        "f\"{v.say('Hello')}!\"",
        'v.say(GROUPS["sex"][key])',
        'v.say_in("sex", {"f": F, "m": M}[key])',
        'v.say_in(CONTEXT["sex"], "Female" if key == "f" else "Male")',
        'v.say(f"Dear {name}")',
        'v.say("Dear " + name)',
        'v.say_n("{n} day", TABLE["days"], n)',
        'v.say_n(TABLE["day"], "{n} days", n)',
    ],
)
def test_what_can_be_read_in_two_ways_is_found(source: str) -> None:
    assert len(faults(source)) == 1


@pytest.mark.parametrize(
    "source",
    [
        'v.say("Sex: {sex}", sex=sex)',
        'v.say("Hello, {name}.", name=v.say_in("name", "nobody") if lonely else name)',
        'v.lines(v.say("Hello."), *[v.say("Goodbye.")])',
        "v.say(TABLE[key])",
        "v.say_in(CONTEXT[group], table[key])",
        'v.say(TABLE.get(key, TABLE["other"]))',
    ],
)
def test_what_is_read_in_one_way_is_left_alone(source: str) -> None:
    assert faults(source) == []
