"""`serve`: one process of the bot, until it is told to stop."""

from __future__ import annotations

import asyncio
import signal

from sqlalchemy.exc import SQLAlchemyError

from bot import config, log, loop, wiring
from bot.commands.database import opened, unreachable
from bot.errors import OperatorError
from bot.only import only_one
from bot.store import migrate as versions
from bot.store.database import Database


def serve(*, webhook: bool) -> None:
    """Run until SIGTERM or SIGINT, then finish what is in hand.

    A new SQLite file is made ready by itself; a database with another schema is not touched.

    Raises: OperatorError when it cannot begin.
    """
    settings = config.read()
    settings.need_token()
    log.set_up(settings.log_level, settings.log_format)
    with only_one(opened(settings).file):
        _prepare(settings)
        loop.run(_run(settings, webhook))


async def _run(settings: config.Settings, webhook: bool) -> None:
    stop = asyncio.Event()
    running = asyncio.get_running_loop()
    for number in (signal.SIGTERM, signal.SIGINT):
        running.add_signal_handler(number, stop.set)
    await wiring.service(settings, webhook=webhook).run(stop)


def _prepare(settings: config.Settings) -> None:
    database = opened(settings)
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
