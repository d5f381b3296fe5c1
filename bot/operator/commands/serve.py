"""`serve`: one process of the bot, until it is stopped."""

from __future__ import annotations

import asyncio
import signal

from sqlalchemy.exc import SQLAlchemyError

from bot.foundation import config, log
from bot.foundation.errors import OperatorError
from bot.process import loop, wiring
from bot.process.single_instance import only_one
from bot.store import migrate as versions
from bot.store.database import Database
from bot.store.opening import check_keys, open_database, unreachable

_log = log.get("serve")


def serve(*, webhook: bool) -> None:
    """Run until SIGTERM or SIGINT, then finish the work in progress.

    A new SQLite file gets its schema automatically; a database with another schema is left alone.

    Raises: OperatorError if it cannot start.
    """
    settings = config.read()
    settings.need_token()
    log.set_up(settings.log_level, settings.log_format)
    for name, nearest in config.unknown():
        _log.warning("a name that looks like a setting is none", kind=name, where=nearest)
    with only_one(open_database(settings).file):
        _prepare(settings)
        loop.run(run(settings, webhook))


async def run(settings: config.Settings, webhook: bool) -> None:
    stop = asyncio.Event()
    running = asyncio.get_running_loop()
    for number in (signal.SIGTERM, signal.SIGINT):
        running.add_signal_handler(number, stop.set)
    await wiring.service(settings, webhook=webhook).run(stop)


def _prepare(settings: config.Settings) -> None:
    database = open_database(settings)
    try:
        _check_schema(database)
    except (SQLAlchemyError, OSError) as error:
        raise unreachable(error) from None
    finally:
        database.close()


def _check_schema(database: Database) -> None:
    have, want = versions.current(database.engine), versions.head()
    if have is None and database.is_sqlite:
        versions.upgrade(database.engine)
    elif have != want:
        raise OperatorError(f"The schema is {have or 'empty'}, the code wants {want}.", "Run `samehour migrate`.")
    check_keys(database)
