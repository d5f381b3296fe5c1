"""`check`: one line per check, "ok" or what to do. It changes nothing."""

from __future__ import annotations

import asyncio
from collections.abc import Callable, Iterator
from datetime import UTC, datetime, timedelta
from email.utils import parsedate_to_datetime

from sqlalchemy import Connection
from sqlalchemy.exc import SQLAlchemyError

from bot.foundation import config
from bot.foundation.clock import now
from bot.foundation.errors import BadSettings, OperatorError
from bot.store import inbox, staff, unread
from bot.store import migrate as versions
from bot.store.database import Database
from bot.store.opening import keyring_of, open_database, unreachable

MOST_SKEW = timedelta(seconds=30)  # between our clock and the messenger's: slots follow our clock
CheckLine = tuple[str, str | None]  # what was checked, and what is wrong with it, or None


def check(say: Callable[[str], None]) -> int:
    """Run every check, reporting a line each. Return 0 if all is well, else 1."""
    try:
        settings = config.read()
    except BadSettings as error:
        for wrong in error.each:
            say(f"settings   {wrong}")
        _say_names(say)
        return 1
    failed = False
    for what, found in _lines(settings):
        failed = failed or found is not None
        say(f"{what:11}{found or 'ok'}")
    _say_names(say)
    return 1 if failed else 0


def _say_names(say: Callable[[str], None]) -> None:
    """Warn of names that look like settings; the bot runs without them, so they fail no check."""
    for name, nearest in config.unknown():
        meant = f"Did you mean {nearest}?" if nearest else "bot/README.md lists the settings."
        say(f"names      {name} is no setting and has no effect. {meant}")


def _lines(settings: config.Settings) -> Iterator[CheckLine]:
    yield "settings", _pushed(settings)
    yield from asyncio.run(_messenger(settings))
    yield from _database(settings)
    yield "catalogues", _catalogues(settings)


def _pushed(settings: config.Settings) -> str | None:
    """Whether what is needed for updates to be pushed is there as a whole."""
    if not settings.webhook_url and settings.webhook_secret is None:
        return None  # it polls
    try:
        settings.need_webhook()
    except BadSettings as error:
        return str(error)
    return None


async def _messenger(settings: config.Settings) -> list[CheckLine]:
    """Ask the platform who we are and what time it is there."""
    from bot.transports.telegram import Telegram

    try:
        telegram = Telegram.of(settings)
        await telegram.open()
    except OperatorError as error:
        return [("token", str(error))]
    await telegram.close()
    return [("token", None), ("clock", await _clock(settings))]


async def _clock(settings: config.Settings) -> str | None:
    import aiohttp

    try:
        timeout = aiohttp.ClientTimeout(total=10)
        async with aiohttp.ClientSession(timeout=timeout) as session, session.head(settings.api_base_url) as answer:
            given = answer.headers.get("Date", "")
        there = parsedate_to_datetime(given).astimezone(UTC)
    except (aiohttp.ClientError, TimeoutError, ValueError, TypeError):
        return None  # nothing to compare with; the token line reports an unreachable messenger
    return skewed(now(), there)


def skewed(here: datetime, there: datetime) -> str | None:
    """How far this machine's clock is off, if it matters."""
    if abs(here - there) <= MOST_SKEW:
        return None
    way = "ahead of" if here > there else "behind"
    seconds = round(abs(here - there).total_seconds())
    return f"This machine's clock is {seconds} s {way} the messenger's. Synchronise it with a time server."


def _database(settings: config.Settings) -> Iterator[CheckLine]:
    try:
        database = open_database(settings)
    except OperatorError as error:
        yield "database", str(error)
        return
    try:
        yield from _opened(database)
    finally:
        database.close()


def _opened(database: Database) -> Iterator[CheckLine]:
    if database.file is not None and not database.file.exists():
        yield "database", f"There is no {database.file} yet. Run `samehour migrate`."
        return
    try:
        have, want = versions.current(database.engine), versions.head()
    except (SQLAlchemyError, OSError) as error:
        yield "database", str(unreachable(error))
        return
    yield "database", None
    if have != want:
        yield "schema", f"It is {have or 'empty'}, the code needs {want}. Run `samehour migrate`."
        return
    yield "schema", None
    yield "keys", _keys(database)
    yield "coaches", _unheard(database.read_now(staff.unheard))
    waiting, not_read = database.read_now(_set_aside)
    said = [f"{waiting} messages were set aside after a fault of ours. See the logs."] if waiting else []
    said += [f"{not_read} updates of the messenger could not be read and were set aside."] if not_read else []
    yield "inbox", " ".join(said) or None


def _unheard(found: staff.Unheard) -> str | None:
    """Who must be reached by another way; no names."""
    if not found.clients:
        return None
    return (
        f"{found.clients} clients have no coach who can be reached ({found.coaches} coaches blocked the bot or left)."
        " Ask the coaches to open the bot, or hand the clients over."
    )


def _keys(database: Database) -> str | None:
    try:
        mine = database.read_now(keyring_of)
        if mine is not None and mine != database.keyring.id:
            return "They are not those of this database. Set SAMEHOUR_KEYS_URL to where they are."
        database.keyring.check()
    except (OperatorError, SQLAlchemyError, OSError) as error:
        return str(error) if isinstance(error, OperatorError) else f"They cannot be read ({type(error).__name__})."
    return None


def _set_aside(conn: Connection) -> tuple[int, int]:
    return inbox.set_aside_count(conn), unread.count(conn)


def _catalogues(settings: config.Settings) -> str | None:
    from bot.rendering import translations

    missing = [name for name in settings.languages if name != "en" and translations.read(name) is None]
    if missing:
        return f"Missing: {', '.join(missing)}. Reinstall, or remove them from SAMEHOUR_LANGUAGES."
    return None
