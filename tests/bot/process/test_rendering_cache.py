"""Renderings are created once for all readers of the same message, and never mixed up."""

import asyncio
from datetime import UTC, datetime

import pytest

from bot.foundation.reader import Reader, Rendered
from bot.process.rendering_cache import Renderings
from bot.store import codec, outbox
from core.care import Units
from core.dialogue.client import messages as m
from core.dialogue.kit.messages import Stranger
from core.quantity import Unit

NOW = datetime(2026, 3, 30, 6, 30, tzinfo=UTC)


def row(message, reader, *, kind=outbox.DeliveryKind.MESSAGE, row=1):
    text = "" if message is None else codec.dumps(message)
    return outbox.ClaimedMessage(row, kind, 17, 5, False, reader, text, "", "", 0, None, NOW, True)


class Store:
    """Stands in for a database whose reads work."""

    async def read(self, work, *args):
        return work(None, *args)


@pytest.fixture
def renderings():
    made = Renderings(Store(), lambda conn, person, reader: (Rendered(text=f"{person} {reader.language}"),), keep=3)
    yield made
    made.close()


PLAIN = Reader()


def parts(renderings, message, reader=PLAIN, **how):
    return asyncio.run(renderings.parts(row(message, reader, **how)))


def test_the_same_message_for_the_same_reader_is_made_once(renderings):
    assert parts(renderings, Stranger(), row=1) is parts(renderings, Stranger(), row=2)
    assert renderings.made == 1


@pytest.mark.parametrize("other", [Reader("de"), Reader(units=Units(Unit.POUND, Unit.INCH))], ids=["language", "units"])
def test_another_reader_gets_a_rendering_of_their_own(renderings, other):
    parts(renderings, Stranger())
    parts(renderings, Stranger(), other)
    assert renderings.made == 2


def test_only_the_latest_are_kept(renderings):
    for name in ("Ada", "Ben", "Chidi", "Dora", "Ada"):
        parts(renderings, m.Welcome(name, "Rowan"))
    assert renderings.made == 5
    parts(renderings, m.Welcome("Dora", "Rowan"))
    assert renderings.made == 5


def test_a_person_s_data_are_read_when_they_are_sent(renderings):
    assert parts(renderings, None, kind=outbox.DeliveryKind.DATA) == (Rendered(text="5 en"),)
    assert renderings.made == 0
