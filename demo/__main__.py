"""Play a season of an invented practice, or a tape of your own: no account, no network.

    python -m demo                      the built-in season
    python -m demo TAPE ...             other scripts (the grammar: demo/tape.py)
    python -m demo --record TAPE ...    play them and write each transcript beside its tape
    python -m demo --excerpt            write what the README shows of the season: ten lines and a picture

The transcript goes to stdout; the folder with the pictures is named on stderr, because it differs from run to run.
Exit code 0 when everything came as expected, 1 when not (stderr names the lines), 2 for a tape that cannot be read.
"""

from __future__ import annotations

import argparse
import os
import sys
import tempfile
from collections.abc import Sequence
from pathlib import Path

from bot.foundation.private import private_folder
from demo import tape as tapes

SEASON = Path(__file__).with_name("season.tape")


def options(arguments: Sequence[str] | None = None) -> argparse.Namespace:
    """Read the command line."""
    parser = argparse.ArgumentParser(
        prog="python -m demo", description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter
    )
    parser.add_argument("tapes", nargs="*", type=Path, metavar="TAPE", help="scripts; none is the built-in season")
    parser.add_argument("--record", action="store_true", help="write each transcript beside its tape, as NAME.txt")
    parser.add_argument("--excerpt", action="store_true", help="write what the README shows of the season")
    parser.add_argument("--pictures", type=Path, metavar="FOLDER", help="where pictures go; a new temporary folder")
    given = parser.parse_args(arguments)
    if given.record and not given.tapes:
        parser.error("--record needs a TAPE")
    if given.excerpt and given.tapes:
        parser.error("--excerpt is of the built-in season, and takes no TAPE")
    return given


def main(arguments: Sequence[str] | None = None) -> int:
    """Return the exit code."""
    given = options(arguments)
    read: list[tuple[Path, tapes.Tape]] = []
    for path in given.tapes or [SEASON]:
        try:
            read.append((path, tapes.read(path.read_text(encoding="utf-8"))))
        except (OSError, UnicodeDecodeError) as error:
            print(f"{path} cannot be opened: {error}", file=sys.stderr)
            return 2
        except tapes.CannotRead as error:
            print(f"{path}, {error}", file=sys.stderr)
            return 2
    folder = given.pictures or Path(tempfile.mkdtemp(prefix="samehour-pictures-"))
    private_folder(folder)
    worst = max([_play(path, tape, folder, given) for path, tape in read])
    if any(folder.iterdir()):
        print(f"The pictures are in {folder}", file=sys.stderr)
    elif given.pictures is None:
        folder.rmdir()
    return worst


def _play(path: Path, tape: tapes.Tape, pictures: Path, given: argparse.Namespace) -> int:
    from demo.player import play  # loads the bot: not before a tape is known to be readable

    played = play(tape, pictures=pictures, write=(lambda line: None) if given.record or given.excerpt else _print)
    if given.record:
        path.with_suffix(".txt").write_text(played.text, encoding="utf-8")
        print(f"{path.with_suffix('.txt')}: {len(played.lines)} lines")
    if given.excerpt and not played.failures:
        from demo import excerpt

        try:
            for written in excerpt.write(played):
                print(written)
        except excerpt.NotInTheSeason as missing:
            print(f"{path}: {missing}.", file=sys.stderr)
            return 1
    for failure in played.failures:
        print(f"{path}, line {failure.number}: {failure.said}.", file=sys.stderr)
    return 1 if played.failures else 0


def _print(line: str) -> None:
    try:
        print(line, flush=True)
    except BrokenPipeError:  # nobody reads on, as with `| head`: end without a fuss
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        raise SystemExit(1) from None


if __name__ == "__main__":
    from bot.foundation import log

    log.set_up("warning", "console", sys.stderr)  # stdout is the transcript's
    sys.exit(main())
