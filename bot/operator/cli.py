"""The command line: `samehour`, also `python -m bot`.

Exit codes: 0 done, 2 called wrongly, 78 a setting is wrong or the token refused, 1 anything else, with one line on
stderr saying what went wrong and, if possible, what to do about it. Importing this module opens nothing and loads no
heavy library: each command imports its own.
"""

from __future__ import annotations

import os
import sys
from enum import StrEnum
from pathlib import Path
from typing import Annotated, NoReturn

import typer

from bot.foundation.errors import OperatorError, UsageError

app = typer.Typer(
    name="samehour",
    help="Weekly home check-ins by message: the same assessments, the same way, at the same hour.",
    add_completion=False,
    pretty_exceptions_enable=False,
    rich_markup_mode=None,
)


INTERRUPTED = 130  # Typer's exit code for Ctrl-C


class Invited(StrEnum):
    COACH = "coach"
    ORGANISER = "organiser"


class Form(StrEnum):
    CSV = "csv"
    FHIR = "fhir"
    ICS = "ics"


class Dates(StrEnum):
    DAY_FIRST = "day-first"
    MONTH_FIRST = "month-first"


class Output(StrEnum):
    CSV = "csv"
    JSON = "json"
    TABLE = "table"


class Limits(StrEnum):
    NICE = "nice"
    AHA = "aha"
    ESC = "esc"


@app.command()
def serve(
    webhook: Annotated[
        bool, typer.Option("--webhook", help="Have updates pushed to SAMEHOUR_WEBHOOK_URL instead of polling.")
    ] = False,
) -> None:
    """Run the bot until it is stopped."""
    from bot.operator.commands.serve import serve as run

    run(webhook=webhook)


@app.command()
def check() -> None:
    """Check the token, the database, the schema, the catalogues and the clock, and report problems."""
    from bot.operator.commands.check import check as run

    raise typer.Exit(run(print))


@app.command()
def invite(
    kind: Annotated[Invited, typer.Argument(help="The role to invite.")],
    name: Annotated[str, typer.Argument(help="Their name.")],
) -> None:
    """Print a single-use link, valid for 14 days, that makes somebody a coach or an organiser."""
    from bot.operator.commands.invite import invite as run

    run(kind.value, name)


@app.command()
def digest(
    coach: Annotated[str, typer.Option("--coach", help="The coach's name.")],
    date: Annotated[str, typer.Option("--date", help="The local date, like 2026-03-30; today by default.")] = "",
    dry_run: Annotated[bool, typer.Option("--dry-run", help="Print it here; send nothing.")] = False,
) -> None:
    """Send a coach the digest for a date, unless it was already sent, or print it."""
    from bot.operator.commands.digest import digest as run

    print(run(coach, date, dry_run=dry_run))


@app.command()
def score(
    readings: Annotated[Path, typer.Argument(help="CSV: person,taken_at,measure,value,unit,conditions; - for stdin")],
    people: Annotated[
        Path | None, typer.Option("--people", help="CSV: person,sex,birth_date,height,background,cautions")
    ] = None,
    to: Annotated[Output, typer.Option("--to", help="How to write the result.")] = Output.TABLE,
    processes: Annotated[
        int, typer.Option("--processes", min=0, help="Processes for a long file, for csv and json; 0 chooses.")
    ] = 0,
    dates: Annotated[Dates | None, typer.Option("--dates", help="What 1.2.2026 means, where a file fits both.")] = None,
    pressure: Annotated[
        Limits, typer.Option("--pressure", help="Whose limits a home blood-pressure mean is compared with.")
    ] = Limits.NICE,
) -> None:
    """Score readings from a file against the published references, without a chat."""
    from bot.scoring import score as run
    from bot.scoring.dates import Order

    who = None if people is None else str(people)
    order = None if dates is None else Order(dates)
    run(str(readings), who, to.value, sys.stdout, sys.stderr, processes or None, order, pressure.value)


@app.command("import")
def import_(
    file: Annotated[Path, typer.Argument(help="CSV: person,taken_at,measure,value,unit,conditions; - for stdin")],
    coach: Annotated[str, typer.Option("--coach", help="Whose clients they are.")],
    write: Annotated[bool, typer.Option("--write", help="Import them; otherwise only show what would happen.")] = False,
    doubtful: Annotated[
        bool, typer.Option("--doubtful", help="Import doubtful values too, once you have checked them.")
    ] = False,
    dates: Annotated[Dates | None, typer.Option("--dates", help="What 1.2.2026 means, where a file fits both.")] = None,
) -> None:
    """Show what would become of each row of past readings; import them with --write. A repeated import adds nothing."""
    from bot.operator.commands.import_export_erase import import_ as run
    from bot.scoring.dates import Order

    order = None if dates is None else Order(dates)
    run(str(file), coach, write=write, doubtful=doubtful, dates=order, out=sys.stdout, err=sys.stderr)


@app.command()
def export(
    coach: Annotated[str, typer.Option("--coach", help="Whose client.")],
    client: Annotated[
        str | None, typer.Argument(help="Full name or number; all of the coach's clients by default.")
    ] = None,
    to: Annotated[Form, typer.Option("--to", help="csv or fhir for readings, ics for weekly slots.")] = Form.CSV,
    out: Annotated[Path | None, typer.Option("--out", help="A new file; printed by default.")] = None,
    names: Annotated[
        bool, typer.Option("--names", help="Include names in fhir and ics, which omit them by default.")
    ] = False,
    side_notes: Annotated[bool, typer.Option("--side-notes", help="Include readings that never count.")] = False,
) -> None:
    """Export a client's readings or weekly slot, or those of a caseload."""
    from bot.operator.commands.import_export_erase import export as run

    said = run(client, coach, to.value, out, named=names, side_notes=side_notes, stdout=sys.stdout)
    if said:
        print(said)


@app.command()
def erase(
    client: Annotated[str, typer.Argument(help="Full name or number.")],
    coach: Annotated[str, typer.Option("--coach", help="Whose client.")],
    yes: Annotated[bool, typer.Option("--yes", help="Do not ask.")] = False,
) -> None:
    """Permanently erase a client: readings, name, messages, everything."""
    from bot.operator.commands.import_export_erase import erase_client, on_terminal

    print(erase_client(client, coach, (lambda number: True) if yes else on_terminal))


@app.command()
def judgement(
    clients: Annotated[int, typer.Option(min=1, max=100_000, help="Simulated clients.")] = 1000,
    weeks: Annotated[int, typer.Option(min=16, max=260, help="Weeks of follow-up.")] = 52,
    seed: Annotated[int, typer.Option(help="The same seed gives the same figures.")] = 1,
    worlds: Annotated[
        bool, typer.Option("--worlds", help="With misreads, unequal people and correlated days, and all that is said.")
    ] = False,
    bounds: Annotated[
        bool, typer.Option("--bounds", help="How much any rule could find; --clients is of years.")
    ] = False,
    processes: Annotated[int, typer.Option("--processes", min=1, help="For --worlds: how many share the work.")] = 2,
) -> None:
    """Show how the rule for change performs on simulated clients: false flags, and true changes found."""
    from rich.console import Console

    console = Console()
    if bounds:
        from bot.operator.bounds import print_bounds

        print_bounds(max(clients, 1000), Console(width=max(console.width, 100)))
        return
    if worlds:
        from bot.operator.worlds import print_figures as print_worlds

        print_worlds(clients, weeks, seed, processes, Console(width=max(console.width, 220)))
        return
    from bot.operator.change_rule_simulation import print_figures

    print_figures(clients, weeks, seed, Console(width=max(console.width, 132)))


@app.command()
def migrate() -> None:
    """Upgrade the database to the newest schema, if it is not there already."""
    from bot.operator.commands.database import migrate as run

    print(run())


@app.command()
def backup(
    to: Annotated[Path, typer.Argument(help="The file to write; it must not exist yet.")],
    to_key: Annotated[str, typer.Option("--to-key", help="Seal it to this public key, of `samehour key pair`.")] = "",
) -> None:
    """Copy the whole database into a file, consistent even while the bot runs. The keys are not in it."""
    from bot.operator.backup import backup as run

    print(run(to, to_key))


@app.command()
def restore(
    source: Annotated[Path, typer.Argument(help="A file written by `samehour backup`.")],
    force: Annotated[bool, typer.Option("--force", help="Lose everything that is in the database now.")] = False,
    key_file: Annotated[
        Path | None, typer.Option("--key-file", help="The private key that opens a sealed backup.")
    ] = None,
) -> None:
    """Restore a backup. Stop the bot first; a database that is not empty is left alone without --force."""
    from bot.operator.backup import restore as run

    print(run(source, force=force, key_file=key_file))


keys = typer.Typer(name="key", help="The keys that what is stored is sealed with.", rich_markup_mode=None)
app.add_typer(keys)


@keys.command("rotate")
def rotate_keys(
    to: Annotated[Path | None, typer.Option("--to", help="A file for the new master key.")] = None,
    service: Annotated[str, typer.Option("--service", help="A key service instead, as package.module:function.")] = "",
) -> None:
    """Wrap everybody's key with a new master key. The bot may run meanwhile."""
    from bot.operator.commands.keys import rotate as run

    print(run(to, service))


@keys.command("copy")
def copy_keys(
    to: Annotated[Path, typer.Argument(help="The file to write; an older copy in it is overwritten.")],
) -> None:
    """Copy the keys, wrapped as they are: without them and the master key a backup cannot be read."""
    from bot.operator.commands.keys import copy as run

    print(run(to))


@keys.command("pair")
def pair_of_keys(
    file: Annotated[Path, typer.Argument(help="A new file for the private key.")],
) -> None:
    """Make a pair of keys: backups are sealed to the public one, and opened with the other."""
    from bot.operator.commands.keys import pair as run

    print(run(file))


def main() -> NoReturn:
    """Run the command given on the command line and exit with its code. Only the owner can read what it writes."""
    os.umask(0o077)
    sys.exit(run(sys.argv[1:]))


def run(arguments: list[str]) -> int:
    """Run one command and return its exit code. Errors are reported as one line on stderr."""
    try:
        code = app(arguments, standalone_mode=False)
    except (typer.Abort, KeyboardInterrupt):
        return _fail("Stopped.", 1)
    except UsageError as error:
        return _fail(str(error), 2)
    except OperatorError as error:
        return _fail(str(error), error.exit_code)
    except BrokenPipeError:
        sys.stderr.close()  # the reader of our output went away; an error message would only fail again
        return 1
    except Exception as error:
        if hasattr(error, "format_message"):  # Typer's usage error; its class is private
            return _fail(f"{error.format_message()} See `samehour --help`.", 2)
        from bot.foundation.log import fault, places

        return _fail(f"A fault of ours: {fault(error)} ({places(error)}).", 1)
    if code == INTERRUPTED:
        return _fail("Stopped.", 1)
    return code if isinstance(code, int) else 0


def _fail(said: str, code: int) -> int:
    print(" ".join(said.split()), file=sys.stderr)
    return code
