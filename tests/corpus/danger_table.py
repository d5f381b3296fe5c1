"""The table of how many danger signs are recognised, one line per language."""

from __future__ import annotations

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

NONE_YET = (
    "No sentences in the {half} half: they have become tuning sentences. For a fair count, let somebody who knows "
    "neither lexicon nor code write tests/corpus/*/danger_signs.{half}.tsv anew."
)


def report(halves: tuple[str, ...], listed: bool) -> None:
    """Print both tables. listed: with every sentence of the tuning half that went wrong."""
    for half in halves:
        scores = {language: score(language, half) for language in LANGUAGES}
        if any(found.counts for found in scores.values()):
            _print(half, scores, listed)
        else:
            print(NONE_YET.format(half=half))
    for language in LANGUAGES if halves != ("held",) else ():
        count, right, wrong = answers(language)
        print(f"{language} answers {right} of {count}")
        if listed:
            print(*(f"    {meaning} -> {heard}: {said}" for meaning, said, heard in wrong), sep="\n")


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
