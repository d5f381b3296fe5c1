"""Play a season of an invented practice, or a tape of your own: no account, no network.

    python -m demo                      the built-in season
    python -m demo TAPE ...             other scripts (the grammar: demo/tape.py)
    python -m demo --record TAPE ...    play them and write each transcript beside its tape
    python -m demo --rehearse           play the people yourself, in a browser; nothing leaves this machine
    python -m demo --rehearse TAPE      play a tape first, then go on from there
    python -m demo --excerpt            write the README's excerpt of the season: ten lines and a picture

The transcript goes to stdout; the folder with the pictures is named on stderr, because it differs from run to run.
Exit code 0 if all expectations hold, 1 if not (stderr names the lines), 2 for an invalid tape.
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

REHEARSE = "python -m demo --rehearse"
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
    parser.add_argument("--rehearse", action="store_true", help="open a page on this machine to play everybody in")
    parser.add_argument("--port", type=int, default=0, help="of the page; a free one unless given")
    given = parser.parse_args(arguments)
    if given.record and not given.tapes:
        parser.error("--record needs a TAPE")
    if given.rehearse and (given.record or given.excerpt or len(given.tapes) > 1):
        parser.error("--rehearse takes one TAPE, or none")
    if given.excerpt and given.tapes:
        parser.error("--excerpt is of the built-in season, and takes no TAPE")
    return given


def main(arguments: Sequence[str] | None = None) -> int:
    """Return the exit code."""
    given = options(arguments)
    if given.rehearse:
        return _rehearse(given.tapes[0] if given.tapes else None, given.port)
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
    if not given.tapes and not given.excerpt:
        print(f"To play the coach and the clients yourself, in a browser: {REHEARSE}", file=sys.stderr)
    return worst


def _rehearse(path: Path | None, port: int) -> int:
    from demo.rehearsal.app import run  # loads the bot and a web server
    from demo.rehearsal.practices import practice

    try:
        tape = practice("empty", "en") if path is None else path.read_text(encoding="utf-8")
        run(tape, port, _say_where)
    except (OSError, UnicodeDecodeError) as error:
        print(f"The page cannot be opened: {error}", file=sys.stderr)
        return 2
    except tapes.CannotRead as error:
        print(f"{path}, {error}", file=sys.stderr)
        return 2
    return 0


def _say_where(address: str) -> None:
    print(
        f"The rehearsal is at {address} (Ctrl-C ends it; save it as a tape first, if you want to keep it)", flush=True
    )


def _play(path: Path, tape: tapes.Tape, pictures: Path, given: argparse.Namespace) -> int:
    from demo.player import play  # loads the bot, so only after the tape has been parsed

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
    except BrokenPipeError:  # the reader is gone, as with `| head`: end quietly
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        raise SystemExit(1) from None


if __name__ == "__main__":
    from bot.foundation import log

    log.set_up("warning", "console", sys.stderr)  # stdout is for the transcript
    sys.exit(main())
