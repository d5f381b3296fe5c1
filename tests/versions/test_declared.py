"""The README's commands install versions that were tested: one of everything, in the range that is declared of it."""

from __future__ import annotations

import ast
import re
import sys
import tomllib
from collections import Counter
from importlib.metadata import packages_distributions, requires
from pathlib import Path

import pytest
from packaging.requirements import Requirement
from packaging.utils import canonicalize_name

from tests.versions.declared import (
    CONSTRAINTS,
    HASHES,
    HASHES_OF_A_WORKER,
    ROOT,
    hashes,
    holds_here,
    name_of,
    of_the_build,
    pins,
    ranges,
    version_of,
)
from tests.versions.workshop import SOME_TESTS

OURS = ("bot", "core", "demo", "tests")
GIVEN = f"-c {CONSTRAINTS.relative_to(ROOT)} "


BY_PATH = {"guard"}  # tests/loopback puts itself on the path of the processes that tests start


def imported() -> set[str]:
    """The first part of every name that is imported anywhere, but for our own and Python's."""
    found: set[str] = set()
    for folder in OURS:
        for path in (ROOT / folder).rglob("*.py"):
            for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
                if isinstance(node, ast.Import):
                    found.update(alias.name.partition(".")[0] for alias in node.names)
                elif isinstance(node, ast.ImportFrom) and node.module and not node.level:
                    found.add(node.module.partition(".")[0])
    return found - set(OURS) - BY_PATH - sys.stdlib_module_names


def required(waiting: list[Requirement]) -> set[str]:
    """The names of these and of all that they require on this machine."""
    done: set[tuple[str, str]] = set()
    while waiting:
        one = waiting.pop()
        for extra in {"", *one.extras}:
            if (name_of(one), extra) not in done:
                done.add((name_of(one), extra))
                asked = map(Requirement, requires(one.name) or [])
                waiting += [each for each in asked if each.marker is None or each.marker.evaluate({"extra": extra})]
    return {name for name, _ in done}


@pytest.mark.parametrize("one", ranges(), ids=str)
def test_every_dependency_is_pinned_within_its_range(one: Requirement) -> None:
    mine = [version_of(pin) for pin in pins() if name_of(pin) == name_of(one)]
    assert mine != []
    assert [version for version in mine if version not in one.specifier] == []


def test_what_a_dependency_requires_is_pinned_too() -> None:
    names = required([one for one in ranges() if holds_here(one)])
    assert "psycopg-binary" in names
    assert names - {name_of(pin) for pin in pins()} == set()


def test_every_pin_is_one_version_and_there_is_one_for_a_machine() -> None:
    assert [str(pin) for pin in pins() if not version_of(pin)] == []
    here = Counter(name_of(pin) for pin in pins() if holds_here(pin))
    assert [name for name, times in here.items() if times > 1] == []


def test_what_builds_the_package_is_pinned_where_no_constraints_reach() -> None:
    assert "hatchling" in {name_of(one) for one in of_the_build()}
    assert [str(one) for one in of_the_build() if not version_of(one)] == []


def test_whatever_is_imported_is_declared() -> None:
    declared = {name_of(one) for one in ranges()}
    installed = packages_distributions()
    missing = {name for name in imported() if not declared & set(map(canonicalize_name, installed.get(name, [])))}
    assert missing == set()


def test_the_readme_installs_what_was_tested() -> None:
    commands = re.findall(r"^    (python3 -m venv .*)$", (ROOT / "README.md").read_text(encoding="utf-8"), re.M)
    assert [command.rpartition(" && ")[2].split()[2] for command in commands] == ["demo", "pytest"]
    assert [command for command in commands if f".venv/bin/pip install -q {GIVEN}" not in command] == []


def test_a_worker_in_a_container_is_what_was_tested() -> None:
    first, second = re.findall(r"pip install .*", (ROOT / "compose.yaml").read_text(encoding="utf-8"))
    assert f"--require-hashes --no-deps -r /src/{HASHES_OF_A_WORKER.relative_to(ROOT)}" in first
    assert "--no-deps --no-build-isolation /src" in second  # nothing is fetched that has no hash


def test_ci_installs_what_was_tested_by_its_hashes() -> None:
    assert f"--require-hashes --no-deps -r {HASHES.relative_to(ROOT)}" in (ROOT / ".ci" / "run").read_text()


@pytest.mark.parametrize("file", [HASHES, HASHES_OF_A_WORKER], ids=lambda file: file.name)
def test_each_version_has_the_hashes_of_its_files(file: Path) -> None:
    found = hashes(file)
    assert [pin for pin, hashed in found.items() if not hashed] == []
    assert all(re.fullmatch(r"--hash=sha256:[0-9a-f]{64}", one) for hashed in found.values() for one in hashed)
    tested = {str(pin) for pin in [*pins(), *of_the_build()]}
    named = {str(Requirement(pin)) for pin in found}
    assert named <= tested
    if file is HASHES:
        assert named == tested


def test_a_worker_has_all_it_needs_and_nothing_to_test_with() -> None:
    names = {name_of(Requirement(pin)) for pin in hashes(HASHES_OF_A_WORKER)}
    project = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    needed = [Requirement(line) for line in project["dependencies"]]
    assert required([one for one in needed if holds_here(one)]) <= names
    assert not names & {"pytest", "hypothesis", "ruff"}


def test_the_tests_for_the_ends_of_the_ranges_are_there() -> None:
    assert [name for name in SOME_TESTS if not (ROOT / name).exists()] == []
