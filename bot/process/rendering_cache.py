"""Render queued messages, once for all readers of the same message.

Equal messages are equal text in the outbox, so a reminder to thousands with the same language and units is rendered
once. Pictures are drawn on a separate thread, off the event loop, and never cached.
"""

from __future__ import annotations

import asyncio
from collections import OrderedDict
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor

from bot.foundation.reader import Reader, Rendered
from bot.rendering import render
from bot.rendering.attachments import attachment_for
from bot.store import codec, outbox
from bot.store.database import Database
from bot.transports.telegram import parts
from core.dialogue.kit.messages import Together

KEPT = 512  # renderings, a few hundred bytes each

Gather = Callable[..., tuple[Rendered, ...]]  # (conn, person_id, reader): everything stored about a person


class Renderings:
    """Renders for delivery. gather: reads the data of a `DATA` row from the store at delivery."""

    def __init__(self, database: Database, gather: Gather, keep: int = KEPT) -> None:
        self._database = database
        self._gather = gather
        self._keep = keep
        self._made: OrderedDict[tuple[str, str, Reader], tuple[Rendered, ...]] = OrderedDict()
        self._artist: ThreadPoolExecutor | None = None
        self.made = 0

    async def parts(self, row: outbox.ClaimedMessage) -> tuple[Rendered, ...]:
        """The parts to send for `row`, each with one call to the messenger.

        Raises: whatever rendering raises (a bug, which affects only this message).
        """
        if row.kind is outbox.DeliveryKind.DATA:
            return await self._database.read(self._gather, row.person_id, row.reader)
        key = (row.message, row.choices, row.reader)
        found = self._made.get(key)
        if found is not None:
            self._made.move_to_end(key)
            return found
        message = codec.load_again(row.message)
        if _is_drawn(message):
            return await asyncio.get_running_loop().run_in_executor(self._thread(), _make, message, *key[1:])
        found = self._made[key] = _make(message, *key[1:])
        self.made += 1
        if len(self._made) > self._keep:
            self._made.popitem(last=False)
        return found

    def close(self) -> None:
        if self._artist is not None:
            self._artist.shutdown(wait=True)

    def _thread(self) -> ThreadPoolExecutor:
        if self._artist is None:
            self._artist = ThreadPoolExecutor(1, thread_name_prefix="artist")
        return self._artist


def _is_drawn(message: object) -> bool:
    """Whether a message has a picture or a file."""
    said = message.parts if isinstance(message, Together) else (message,)
    return any(attachment_for(type(part)) is not None for part in said)


def _make(message: object, choices: str, reader: Reader) -> tuple[Rendered, ...]:
    buttons = codec.load_rows(choices) if choices else ()
    return parts(render(message, buttons, reader))
