"""How much is understood: `python -m tests.corpus answers|danger|destructive|health|numbers`, with `--held` or `--tune`
for one half, and `--list-missed`.

`python -m tests.corpus fuzz [--texts N]`: whether anything raises.
"""

from __future__ import annotations

import argparse
import sys

from tests.corpus import danger_table
from tests.corpus.fuzz import fuzz
from tests.corpus.meant import LANGUAGES, SUBJECTS


def main(arguments: list[str]) -> int:
    parser = argparse.ArgumentParser(prog="python -m tests.corpus")
    parser.add_argument("subject", choices=("danger", "fuzz", *sorted(SUBJECTS)))
    half = parser.add_mutually_exclusive_group()
    half.add_argument("--held", action="store_const", const="held", dest="half", help="counts only")
    half.add_argument("--tune", action="store_const", const="tune", dest="half")
    parser.add_argument("--list-missed", action="store_true", help="with every tuning sentence that went wrong")
    parser.add_argument("--texts", type=int, default=200_000, help="of the fuzz")
    asked = parser.parse_args(arguments)
    if asked.subject == "fuzz":
        raised = fuzz(asked.texts)
        print(f"{asked.texts} texts, {len(raised)} exceptions")
        if raised:
            print(*(f"{language} {key}: {text!r} -> {error!r}" for language, key, text, error in raised[:20]), sep="\n")
        return bool(raised)
    if asked.list_missed and asked.half == "held":
        parser.error("the held sentences are counted, never read")
    halves = (asked.half,) if asked.half else ("tune", "held")
    if asked.subject == "danger":
        danger_table.report(halves, asked.list_missed)
        return 0
    for name in halves:
        for language in LANGUAGES:
            found = SUBJECTS[asked.subject](language, name)
            said = ", ".join(f"{kind} {found.right[kind]} of {n}" for kind, n in sorted(found.counts.items()))
            print(f"{name} {language}: {said}")
            if asked.list_missed and name == "tune":
                print(*(f"    {meant} -> {heard}: {sentence}" for sentence, meant, heard in found.wrong), sep="\n")
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
