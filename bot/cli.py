"""The command line: `samehour`, also `python -m bot`.

Exit codes: 0 done, 2 called wrongly, 1 anything else, with one line on stderr that says what and, where it can,
what to do about it. Importing this opens nothing and imports no heavy library: each command imports its own.
"""

from __future__ import annotations

import sys
from enum import StrEnum
from pathlib import Path
from typing import Annotated, NoReturn

import typer

from bot.errors import OperatorError, UsageError

app = typer.Typer(
    name="samehour",
    help="Weekly home check-ins by message: the same assessments, the same way, at the same hour.",
    add_completion=False,
    pretty_exceptions_enable=False,
    rich_markup_mode=None,
)


INTERRUPTED = 130  # what Typer makes of Ctrl-C


class Invited(StrEnum):
    COACH = "coach"
    ORGANISER = "organiser"


class Output(StrEnum):
    CSV = "csv"
    JSON = "json"
    TABLE = "table"


@app.command()
def serve(
    webhook: Annotated[
        bool, typer.Option("--webhook", help="Have updates pushed to SAMEHOUR_WEBHOOK_URL instead of polling.")
    ] = False,
) -> None:
    """Run the bot until it is told to stop."""
    from bot.commands.serve import serve as run

    run(webhook=webhook)


@app.command()
def check() -> None:
    """Look at the token, the database, the schema, the catalogues and the clock; say what is wrong."""
    from bot.commands.check import check as run

    raise typer.Exit(run(print))


@app.command()
def invite(
    kind: Annotated[Invited, typer.Argument(help="Whom to invite.")],
    name: Annotated[str, typer.Argument(help="What they are called.")],
) -> None:
    """Print a link that makes somebody a coach or an organiser: once, within 14 days."""
    from bot.commands.invite import invite as run

    run(kind.value, name)


@app.command()
def digest(
    coach: Annotated[str, typer.Option("--coach", help="Whose digest.")],
    date: Annotated[str, typer.Option("--date", help="For which local date, like 2026-03-30; today if left out.")] = "",
    dry_run: Annotated[bool, typer.Option("--dry-run", help="Print it here; send nothing.")] = False,
) -> None:
    """Send a coach the digest of a date, if it was not sent, or print it."""
    from bot.commands.digest import digest as run

    print(run(coach, date, dry_run=dry_run))


@app.command()
def score(
    readings: Annotated[Path, typer.Argument(help="CSV: person,taken_at,measure,value,unit,conditions; - for stdin")],
    people: Annotated[
        Path | None, typer.Option("--people", help="CSV: person,sex,birth_date,height,background,cautions")
    ] = None,
    to: Annotated[Output, typer.Option("--to", help="How to write the result.")] = Output.TABLE,
) -> None:
    """Score readings from a file against the published references, without a chat."""
    from bot.scoring import score as run

    run(str(readings), None if people is None else str(people), to.value, sys.stdout, sys.stderr)


@app.command()
def migrate() -> None:
    """Bring the database to the newest schema; nothing happens when it is there."""
    from bot.commands.database import migrate as run

    print(run())


@app.command()
def backup(
    to: Annotated[Path, typer.Argument(help="The file to write; it must not exist yet.")],
) -> None:
    """Copy the whole database into a file, consistent even while the bot runs."""
    from bot.backup import backup as run

    print(run(to))


@app.command()
def restore(
    source: Annotated[Path, typer.Argument(help="A file written by `samehour backup`.")],
    force: Annotated[bool, typer.Option("--force", help="Lose everything that is in the database now.")] = False,
) -> None:
    """Put a backup in place. Stop the bot first; a database that is not empty is left alone without --force."""
    from bot.backup import restore as run

    print(run(source, force=force))


def main() -> NoReturn:
    """Run the command named on the command line, and exit with its code."""
    sys.exit(run(sys.argv[1:]))


def run(arguments: list[str]) -> int:
    """Run one command; its exit code. Everything that goes wrong is one line on stderr."""
    try:
        code = app(arguments, standalone_mode=False)
    except (typer.Abort, KeyboardInterrupt):
        return _fail("Stopped.", 1)
    except UsageError as error:
        return _fail(str(error), 2)
    except OperatorError as error:
        return _fail(str(error), 1)
    except BrokenPipeError:
        sys.stderr.close()  # whoever read our output went away; saying so would only fail again
        return 1
    except Exception as error:
        if hasattr(error, "format_message"):  # what Typer says of a wrong call; its own class of it is private
            return _fail(f"{error.format_message()} See `samehour --help`.", 2)
        from bot.log import fault, places

        return _fail(f"A fault of ours: {fault(error)} ({places(error)}).", 1)
    if code == INTERRUPTED:
        return _fail("Stopped.", 1)
    return code if isinstance(code, int) else 0


def _fail(said: str, code: int) -> int:
    print(" ".join(said.split()), file=sys.stderr)
    return code
