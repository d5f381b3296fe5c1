"""`python -m tests.corpus danger [--held | --tune] [--list-missed]`: print how many danger signs are recognised."""

from __future__ import annotations

import argparse
import sys

from tests.corpus.danger import LANGUAGES, Score, answers, score

COLUMNS = (
    ("alarms", "alarm", "alarm"),
    ("heard", "alarm:heard", "alarm"),
    ("acted", "alarm:acted", "alarm"),
    ("level", "alarm:level", "alarm"),
    ("denials", "denial", "denial"),
    ("alarming", "denial:acted", "denial"),
    ("asked", "denial:asked", "denial"),
    ("past", "past", "past"),
    ("alarming", "past:acted", "past"),
    ("asked", "past:asked", "past"),
    ("others", "other_now", "other_now"),
    ("acted", "other_now:acted", "other_now"),
    ("far", "other_elsewhere", "other_elsewhere"),
    ("acted", "other_elsewhere:acted", "other_elsewhere"),
    ("asked", "other_elsewhere:asked", "other_elsewhere"),
    ("innocent", "innocent", "innocent"),
    ("alarming", "innocent:acted", "innocent"),
    ("asked", "innocent:asked", "innocent"),
    ("mutated", "mutated", "mutated"),
    ("same", "mutated:same", "mutated"),
)


def main(arguments: list[str]) -> int:
    parser = argparse.ArgumentParser(prog="python -m tests.corpus")
    parser.add_argument("subject", choices=("danger",))
    half = parser.add_mutually_exclusive_group()
    half.add_argument("--held", action="store_const", const="held", dest="half", help="counts only")
    half.add_argument("--tune", action="store_const", const="tune", dest="half")
    parser.add_argument("--list-missed", action="store_true", help="show the sentences of --tune that went wrong")
    asked = parser.parse_args(arguments)
    if asked.list_missed and asked.half == "held":
        parser.error("the held sentences are counted, never read")
    for name in (asked.half,) if asked.half else ("tune", "held"):
        _print(name, {language: score(language, name) for language in LANGUAGES}, asked.list_missed)
    for language in LANGUAGES if asked.half != "held" else ():
        count, right, wrong = answers(language)
        print(f"{language} answers {right} of {count}")
        if asked.list_missed:
            print(*(f"    {meaning} -> {heard}: {said}" for meaning, said, heard in wrong), sep="\n")
    return 0


def _print(half: str, scores: dict[str, Score], listed: bool) -> None:
    total = Score()
    for found in scores.values():
        total.counts.update(found.counts)
    print(half.ljust(6), *(name.rjust(8) for name, _, _ in COLUMNS))
    for language, found in [*scores.items(), ("all", total)]:
        print(language.ljust(6), *(str(found.counts[key]).rjust(8) for _, key, _ in COLUMNS))
        if listed and half == "tune":
            for line, heard in found.wrong:
                print(f"    {line.kind} {line.category} {line.level} -> {heard}: {line.sentence}")


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
