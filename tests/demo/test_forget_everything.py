"""Erasure after a whole season with the bot: nothing the client ever sent is left in the database's bytes."""

from __future__ import annotations

import asyncio
from contextlib import closing
from pathlib import Path

import pytest
from sqlalchemy import select

from bot.store.database import Database
from bot.store.schema import metadata
from demo.player import Player
from demo.tape import read

LIFE = """
start 2026-03-02 07:00 Europe/London
coach Rowan
client Quillfeather of Rowan: sex=female born=1968 height=165cm slot="Mon 07:30" measures=weight,waist
at 2026-03-02 07:30
Quillfeather: 7
Quillfeather: 81.37 kg
Quillfeather: 93.61
at 2026-03-04 09:00
Quillfeather: my weight is 79.83 kg
Quillfeather: marzipan and thistledown
Quillfeather: /coach please ring me about the zeppelin
Quillfeather edits: please ring me about the quagmire
Quillfeather: I fainted on the escalator
at 2026-03-09 09:00
Quillfeather: five
"""
LEAVING = """
Quillfeather: /forget
Quillfeather presses Yes, delete it all
"""
SECRETS = (
    "Quillfeather", "81.37", "93.61", "79.83", "marzipan", "thistledown", "zeppelin", "quagmire", "escalator",
)  # fmt: skip


def after(text: str, folder: Path) -> tuple[bytes, str]:
    """Play a tape: the bytes of all files then, and what whoever has the keys can read."""

    async def _play() -> None:
        async with Player(read(text), folder, lambda line: None, None) as player:
            await player.run()

    asyncio.run(_play())
    found = [path for path in folder.rglob("*") if path.is_file()]
    content = b"".join(path.read_bytes() for path in found)
    (file,) = [path for path in found if path.suffix == ".db"]
    with closing(Database(f"sqlite:///{file}")) as database:
        opened = database.read_now(
            lambda conn: "".join(str(conn.execute(select(table)).all()) for table in metadata.sorted_tables)
        )
    return content, opened


@pytest.mark.parametrize(("text", "left"), [(LIFE, True), (LIFE + LEAVING, False)], ids=["before", "after"])
def test_what_was_sent_is_in_the_database_until_they_are_forgotten_and_then_nowhere(text, left, tmp_path):
    content, opened = after(text, tmp_path)
    assert not {secret for secret in SECRETS if secret.encode() in content}  # on the disk it is encrypted at any time
    held = {secret for secret in SECRETS if secret in opened}
    if left:
        assert {"Quillfeather", "81.37", "93.61", "79.83"} <= held  # the search does find existing data
    else:
        assert held == set()
