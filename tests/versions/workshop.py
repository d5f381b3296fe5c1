"""A temporary folder where versions are chosen, installed and tried; nothing outside it changes."""

from __future__ import annotations

import os
import re
import subprocess
import sys
from collections.abc import Collection, Mapping, Sequence
from pathlib import Path

from packaging.requirements import Requirement

from tests.versions.declared import CONSTRAINTS, PYPROJECT, ROOT, oldest_python, read, versions

UV = "uv>=0.13,<1"  # chooses versions from either end of a range, which pip does not; nothing else needs it
BARE = ("--quiet", "--no-header", "--no-annotate")

# One test or more of everything that comes from outside, in a minute or two.
SOME_TESTS = (
    "tests/bot/exports",
    "tests/bot/rendering",
    "tests/bot/store",
    "tests/bot/operator/test_cli.py",
    "tests/bot/foundation/test_clock.py",
    "tests/bot/foundation/test_config.py",
    "tests/bot/operator/test_import_export_erase.py",
    "tests/bot/foundation/test_log.py",
    "tests/bot/transports/test_menus.py",
    "tests/bot/transports/test_request.py",
    "tests/bot/scoring/test_scoring.py",
    "tests/bot/transports/test_telegram_in.py",
    "tests/bot/process/test_web.py",
    "tests/bot/process/test_worker.py",
    "tests/contracts",
    "tests/core/judging/test_change_examples.py",
    "tests/core/watching/test_cohort.py",
    "tests/core/test_linnerud.py",
    "tests/core/judging/test_training_load.py",
    "tests/core/judging/test_trend.py",
    "tests/demo/test_messenger_refusals.py",
    "tests/demo/test_tape_player.py",
    "tests/operations/test_check.py",
    "tests/operations/test_compose.py",
)
ALL_TESTS = ("tests", "--ignore=tests/versions")  # those hold for the pinned versions only
_FAILED = re.compile(r"^(?:FAILED|ERROR) ([^\s:]+\.py)", re.M)
NO_TESTS = "pytest itself"


class Workshop:
    """`folder` is empty and somebody else's to remove. python: which one to try them on, its name or path."""

    def __init__(self, folder: Path, python: str = sys.executable) -> None:
        self.folder = folder
        self.said = ""  # by the checks, last time
        _run(sys.executable, "-m", "venv", folder / "tools")
        _run(folder / "tools" / "bin" / "pip", "install", "--quiet", UV)
        self._uv = folder / "tools" / "bin" / "uv"
        _run(self._uv, "venv", "--quiet", "--python", python, folder / "tried")
        self._bin = folder / "tried" / "bin"

    # --- choosing ---

    def pinned(self, *, newest: bool) -> str:
        """Pins of everything for every platform and Python: the newest in range, or what is pinned, where it fits."""
        everywhere = ("--universal", "--python-version", oldest_python(), "--fork-strategy", "fewest")
        return self._compiled(PYPROJECT, *everywhere, start="" if newest else CONSTRAINTS.read_text())

    def to_run(self) -> list[Requirement]:
        """The pins of what it needs to run, without what tests it, for every platform and Python."""
        everywhere = ("--universal", "--python-version", oldest_python(), "--fork-strategy", "fewest")
        return read(self._compiled(PYPROJECT, *everywhere, extras=False, start=CONSTRAINTS.read_text()))

    def hashed(self, pins: Sequence[object]) -> str:
        """These pins, each with the hashes of all its files: for machines that install nothing else."""
        asked = self._file("hashed.in", "".join(f"{pin}\n" for pin in pins))
        everywhere = ("--universal", "--python-version", oldest_python(), "--no-deps", "--generate-hashes")
        return self._compiled(asked, *everywhere)

    def with_their_own(self, names: Sequence[object]) -> set[str]:
        """The names of these requirements and of all that they require."""
        asked = self._file("asked.in", "".join(f"{name}\n" for name in names))
        return set(versions(read(self._compiled(asked, "--python", self._python))))

    def tested(self) -> dict[str, str]:
        return self._chosen("--constraint", CONSTRAINTS)

    def at_the_end(self, end: str) -> dict[str, str]:
        """The lowest or the newest version in range of each dependency; of what these depend on, the newest."""
        return self._chosen("--resolution", {"lowest": "lowest-direct", "newest": "highest"}[end])

    def moved(self, start: Mapping[str, str], moves: Mapping[str, str]) -> dict[str, str]:
        """`start` with some versions moved, and others only where these require it."""
        return self._chosen("--constraint", self._file("moves.txt", _lines(moves)), start=_lines(start))

    def _chosen(self, *options: str | Path, start: str = "") -> dict[str, str]:
        return versions(read(self._compiled(PYPROJECT, "--python", self._python, *options, start=start)))

    def _compiled(self, asked: Path, *options: str | Path, start: str = "", extras: bool = True) -> str:
        """What is asked for, and what that requires, as pins; those of `start` stay where they fit."""
        into = self._file("chosen.txt", start)
        more = ("--all-extras",) if asked == PYPROJECT and extras else ()
        _run(self._uv, "pip", "compile", *BARE, *more, *options, "--output-file", into, asked)
        return into.read_text()

    def _file(self, name: str, text: str) -> Path:
        path = self.folder / name
        path.write_text(text)
        return path

    # --- trying ---

    @property
    def _python(self) -> Path:
        return self._bin / "python"

    def install(self, chosen: Mapping[str, str]) -> None:
        """Exactly these, and nothing else."""
        _run(self._uv, "pip", "sync", "--quiet", "--python", self._python, self._file("wanted.txt", _lines(chosen)))

    def broken(self, tests: Collection[str], only: Collection[str] | None = None) -> frozenset[str]:
        """Run tests and checks (`only` some of them); the files whose tests failed, and the checks that did."""
        said: list[str] = []
        broken: set[str] = set()
        for name, command in self._checks().items():
            if only is None or name in only:
                done = self._tried(*command)
                if done.returncode:
                    broken.add(name)
                    said.append(f"{name}:\n{_end(done.stdout)}")
        if only is not None and NO_TESTS not in only:
            tests = [name for name in only if name.endswith(".py")]
        if tests:
            options = ("-n", "auto", "-r", "fE", "--tb", "no", "--no-header")
            done = self._tried(self._python, "-m", "pytest", *options, *sorted(tests))
            if done.returncode:
                broken |= set(_FAILED.findall(done.stdout)) or {NO_TESTS}
                said.append(_end(done.stdout))
        self.said = "\n".join(said)
        return frozenset(broken)

    def _checks(self) -> dict[str, tuple[str | Path, ...]]:
        cache = self.folder / "cache"
        return {
            "ruff": (self._bin / "ruff", "check", "--no-cache", "."),
            "mypy": (self._bin / "mypy", "--cache-dir", cache),
            "lint-imports": (self._bin / "lint-imports", "--no-cache"),
            "catalogues": (self._python, "-m", "bot.rendering.catalogues", "check"),
            "demo": (self._python, "-m", "demo"),
        }

    def _tried(self, *command: str | Path) -> subprocess.CompletedProcess[str]:
        return subprocess.run(
            command,
            cwd=ROOT,
            env={**os.environ, "TMPDIR": str(self._temporary())},
            stdout=subprocess.PIPE,
            stderr=subprocess.STDOUT,
            text=True,
            check=False,
        )

    def _temporary(self) -> Path:
        folder = self.folder / "temporary"
        folder.mkdir(exist_ok=True)
        return folder


def _run(*command: str | Path) -> str:
    """Run it and return what it says. Raises: SystemExit with its own words if it fails."""
    done = subprocess.run(command, cwd=ROOT, capture_output=True, text=True, check=False)
    if done.returncode:
        raise SystemExit(f"{' '.join(map(str, command))}\n{done.stderr}")
    return done.stdout


def _lines(chosen: Mapping[str, str]) -> str:
    return "".join(f"{name}=={version}\n" for name, version in chosen.items())


def _end(text: str, lines: int = 30) -> str:
    return "\n".join(text.splitlines()[-lines:])
