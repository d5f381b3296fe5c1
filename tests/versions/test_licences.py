"""Nothing is used whose licence nobody has looked at, and no private name of a library."""

from __future__ import annotations

import ast
from pathlib import Path

import pytest

from tests.versions.declared import ROOT
from tests.versions.licences import LENIENT, LINKED, listed, of_a_worker

OURS = ("bot", "core", "demo")


def test_every_licence_is_known() -> None:
    assert {name for name, licence in listed().items() if licence == "unknown"} == set()


def test_what_a_worker_runs_with_asks_for_nothing_of_our_own_code() -> None:
    asks = {name: licence for name, licence in listed().items() if name in of_a_worker() and licence not in LENIENT}
    assert {name: licence for name, licence in asks.items() if licence} == {
        name: licence for name, licence in LINKED.items() if licence == asks.get(name)
    }


def private_imports(tree: ast.Module) -> list[str]:
    """Names with an underscore that are imported from somewhere else."""
    found = []
    for node in ast.walk(tree):
        if isinstance(node, ast.ImportFrom):
            names = [*(node.module or "").split("."), *(alias.name for alias in node.names)]
        elif isinstance(node, ast.Import):
            names = [part for alias in node.names for part in alias.name.split(".")]
        else:
            continue
        found += [name for name in names if name.startswith("_") and not name.startswith("__")]
    return found


def test_no_private_name_of_a_library_is_imported() -> None:
    found = {
        str(path.relative_to(ROOT)): names
        for folder in OURS
        for path in (ROOT / folder).rglob("*.py")
        if (names := private_imports(ast.parse(path.read_text(encoding="utf-8"))))
    }
    assert found == {}


@pytest.mark.parametrize("line", ["from telegram._utils import x", "import a._b", "from a import _c"])
def test_a_private_import_is_seen(line: str) -> None:
    assert private_imports(ast.parse(line))
    assert not private_imports(ast.parse("from __future__ import annotations\nfrom telegram import Bot"))
    assert Path(__file__).parents[2] == ROOT
