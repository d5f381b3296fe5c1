"""`invite`: a link for a coach or an organiser, with its QR code on a terminal."""

from __future__ import annotations

import asyncio
import sys

from sqlalchemy import Connection
from sqlalchemy.exc import SQLAlchemyError

from bot.foundation import config
from bot.foundation.clock import now
from bot.foundation.errors import OperatorError, UsageError
from bot.store import audit, invitations
from bot.store import migrate as versions
from bot.store.opening import open_database, unreachable
from bot.transports.telegram import Telegram

LONGEST_NAME = 64


def invite(kind: str, name: str) -> None:
    """Print a single-use link, valid for 14 days. It cannot be shown again.

    Raises: UsageError for an invalid name; OperatorError if the messenger or the database is not ready.
    """
    name = name.strip()
    if not name or len(name) > LONGEST_NAME or not name.isprintable():
        raise UsageError(f"A name has 1 to {LONGEST_NAME} characters.")
    settings = config.read()
    telegram = Telegram.of(settings)
    asyncio.run(_ask_who_we_are(telegram))
    database = open_database(settings)
    try:
        if versions.current(database.engine) != versions.head():
            raise OperatorError("The database is not ready.", "Run `samehour migrate`.")
        token = database.write_now(_make, kind, name)
    except SQLAlchemyError as error:
        raise unreachable(error) from None
    finally:
        database.close()
    link = telegram.link(token)
    print(link)
    if sys.stdout.isatty():
        import segno

        segno.make(link, error="m").terminal(compact=True)


def _make(conn: Connection, kind: str, name: str) -> str:
    at = now()
    audit.note(conn, at, audit.OPERATOR, f"invited_{kind}")
    return invitations.make(conn, invitations.InvitationKind(kind), at, for_name=name)


async def _ask_who_we_are(telegram: Telegram) -> None:
    await telegram.open()
    await telegram.close()
