"""What is declared of dependencies: ranges in pyproject.toml, and the version each is tested with."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Iterable
from pathlib import Path
from typing import Any

from packaging.requirements import Requirement
from packaging.utils import canonicalize_name

ROOT = Path(__file__).parents[2]
PYPROJECT = ROOT / "pyproject.toml"
CONSTRAINTS = ROOT / ".ci" / "constraints.txt"
HASHES = ROOT / ".ci" / "hashes.txt"  # of everything
HASHES_OF_A_WORKER = ROOT / ".ci" / "hashes-of-a-worker.txt"  # of what it needs to run


def _pyproject() -> dict[str, Any]:
    return tomllib.loads(PYPROJECT.read_text(encoding="utf-8"))


def ranges() -> list[Requirement]:
    """What it needs to run, and to be tested."""
    project = _pyproject()["project"]
    lines = [*project["dependencies"], *(line for extra in project["optional-dependencies"].values() for line in extra)]
    return [Requirement(line) for line in lines]


def of_the_build() -> list[Requirement]:
    """What makes the package. pip builds apart from everything else, where no constraints reach: so these are pins."""
    return [Requirement(line) for line in _pyproject()["build-system"]["requires"]]


def oldest_python() -> str:
    """The lowest Python that is declared: "3.11"."""
    return str(_pyproject()["project"]["requires-python"]).removeprefix(">=")


def read(text: str) -> list[Requirement]:
    """The lines of a file of pins."""
    lines = (line.partition("#")[0].strip() for line in text.splitlines())
    return [Requirement(line) for line in lines if line]


def pins() -> list[Requirement]:
    """Each dependency, and each dependency of one, with the version it is tested with."""
    return read(CONSTRAINTS.read_text(encoding="utf-8"))


def hashes(file: Path) -> dict[str, list[str]]:
    """The pins of a file of hashes, and the hashes of each."""
    found: dict[str, list[str]] = {}
    for part in re.split(r"\n(?=\S)", file.read_text(encoding="utf-8")):
        if not part.startswith("#"):
            pin, *hashed = re.split(r"\s*\\\n\s*", part.strip())
            found[pin] = hashed
    return found


def name_of(requirement: Requirement) -> str:
    """Its name as it is compared: "fhir.resources" and "fhir-resources" are one."""
    return canonicalize_name(requirement.name)


def holds_here(requirement: Requirement) -> bool:
    return requirement.marker is None or requirement.marker.evaluate()


def version_of(pin: Requirement) -> str:
    """Its version. Raises: ValueError if it is not pinned to exactly one."""
    (only,) = pin.specifier
    if only.operator != "==" or "*" in only.version:
        raise ValueError(f"{pin} is not one version")
    return only.version


def versions(lines: Iterable[Requirement]) -> dict[str, str]:
    """The version of each name, of the pins that hold for this machine."""
    return {name_of(pin): version_of(pin) for pin in lines if holds_here(pin)}
