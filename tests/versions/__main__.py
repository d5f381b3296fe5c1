"""Which versions of its dependencies Samehour is tested with, and whether the ranges it declares are true.

    python -m tests.versions freeze [--newest]      pin all that pyproject.toml asks for in .ci/constraints.txt: what is
                                                    pinned stays where it fits, or moves to the newest in range;
                                                    their hashes go into .ci/hashes*.txt
    python -m tests.versions lowest|newest [--all]  run some tests (or all) and the checks at that end of every range
    python -m tests.versions newer                  what is newer than the pins, for somebody to try; exit code 0 always

The README's commands install what is pinned, so a new release of anything reaches nobody before it has been tested:
`newest` says whether it could, `freeze --newest` takes it, and then every test must pass. At an end where something is
broken, halves of what differs from the pins are tried alone, until it is clear which package breaks what (exit code 1).
Everything happens in a temporary folder, which needs network and about 1 GB. `--python 3.13` tries another Python.
"""

from __future__ import annotations

import argparse
import json
import subprocess
import sys
import tempfile
from collections.abc import Sequence
from pathlib import Path

from packaging.utils import canonicalize_name
from packaging.version import Version

from tests.versions.declared import (
    CONSTRAINTS,
    HASHES,
    HASHES_OF_A_WORKER,
    holds_here,
    name_of,
    of_the_build,
    pins,
    ranges,
    versions,
)
from tests.versions.search import culprits
from tests.versions.workshop import ALL_TESTS, SOME_TESTS, Workshop

HEADER = """\
# The versions Samehour is tested with: everything that pyproject.toml asks for, and what that asks for in turn.
# Made by `python -m tests.versions freeze`. The README's commands install them.
"""
HASHES_HEADER = """\
# Versions Samehour is tested with, and what builds the package, with the hashes of their files: what a container or CI
# installs, and nothing else. Made by `python -m tests.versions freeze`.
"""
PATIENCE = 180  # seconds, for an index to answer


def freeze(shop: Workshop, *, newest: bool) -> int:
    pinned = shop.pinned(newest=newest)
    CONSTRAINTS.write_text(HEADER + pinned)
    print(f"{len(pinned.splitlines())} versions are in {CONSTRAINTS}: now run every test.")
    build = of_the_build()
    HASHES.write_text(HASHES_HEADER + shop.hashed([*pins(), *build]))
    HASHES_OF_A_WORKER.write_text(HASHES_HEADER + shop.hashed([*shop.to_run(), *build]))
    missing = shop.with_their_own(build) - {name_of(pin) for pin in build}
    if missing:
        print(f"build-system.requires in pyproject.toml lacks a pin of {', '.join(sorted(missing))}.", file=sys.stderr)
    return 1 if missing else 0


def end(shop: Workshop, which: str, tests: Sequence[str]) -> int:
    tested, there = shop.tested(), shop.at_the_end(which)
    moves = {name: version for name, version in there.items() if tested.get(name, version) != version}
    print(f"{which}: {len(moves)} of {len(there)} versions differ from the pins.", flush=True)
    shop.install(there)
    once = broken = shop.broken(tests)
    said = shop.said
    if once:
        broken = once & shop.broken(tests, only=once)  # a slow moment of the machine is no package's fault
        for name in sorted(once - broken):
            print(f"{which}: {name} failed once, and passed when it was tried again.")
    if not broken:
        print(f"{which}: nothing is broken.")
        return 0
    print(f"{said}\n{which}: broken is {', '.join(sorted(broken))}. Which package does it?", flush=True)

    def breaks(names: Sequence[str]) -> frozenset[str]:
        if list(names) == list(moves):
            return broken
        shop.install(shop.moved(tested, {name: moves[name] for name in names}))
        found = shop.broken(tests, only=broken) & broken
        print(f"  {', '.join(names)}: {', '.join(sorted(found)) or 'nothing'}", flush=True)
        return found

    without = breaks([])
    for names, what in culprits(list(moves), lambda names: breaks(names) - without):
        moved = " with ".join(f"{name} {moves[name]} (pinned: {tested[name]})" for name in names)
        print(f"{which}: {moved} breaks {', '.join(sorted(what))}", flush=True)
    if without:
        print(f"{which}: broken with the pins, too: {', '.join(sorted(without))}")
    return 1


def newer() -> int:
    """Ask the index for the newest of each dependency, whatever its range."""
    asked = {name_of(one): one for one in [*ranges(), *of_the_build()] if holds_here(one)}
    pinned = versions([*pins(), *of_the_build()])
    look = ("install", "--quiet", "--dry-run", "--no-deps", "--ignore-installed", "--report", "-", "--retries", "0")
    try:
        done = subprocess.run(
            (sys.executable, "-m", "pip", *look, "--timeout", "10", *asked),
            capture_output=True,
            text=True,
            check=True,
            timeout=PATIENCE,
        )
        metadata = [item["metadata"] for item in json.loads(done.stdout)["install"]]
    except (subprocess.SubprocessError, OSError, ValueError):
        print("Whether anything is newer than the pins is not known: the package index does not answer.")
        return 0
    lines = []
    for name, version in sorted((canonicalize_name(one["name"]), one["version"]) for one in metadata):
        if Version(version) > Version(pinned[name]):
            outside = "" if version in asked[name].specifier else f", outside {asked[name].specifier}"
            lines.append(f"  {name} {version} (pinned: {pinned[name]}{outside})")
    print("\n".join(["Newer than the pins:", *lines]) if lines else "Nothing is newer than the pins.")
    return 0


def main(arguments: list[str]) -> int:
    parser = argparse.ArgumentParser(
        prog="python -m tests.versions", description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter
    )
    parser.add_argument("command", choices=["freeze", "lowest", "newest", "newer"])
    parser.add_argument("--newest", action="store_true", help="freeze: move all to the newest")
    parser.add_argument("--all", action="store_true", help="lowest, newest: run every test")
    parser.add_argument("--python", default=sys.executable, help="lowest, newest: another Python")
    asked = parser.parse_args(arguments)
    if asked.command == "newer":
        return newer()
    with tempfile.TemporaryDirectory(prefix="samehour-versions-") as folder:
        shop = Workshop(Path(folder), asked.python)
        if asked.command == "freeze":
            return freeze(shop, newest=asked.newest)
        return end(shop, asked.command, ALL_TESTS if asked.all else SOME_TESTS)


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
