"""The databases of the other tests, a herd of bots for the whole run, and a morning without faults to compare with."""

import asyncio
import logging
from collections.abc import Callable, Coroutine
from pathlib import Path
from typing import Any

import pytest

from tests.bot.conftest import (  # noqa: F401 (fixtures)
    database,
    database_url,
    open_database,
    postgresql_server,
    sqlite_template,
)
from tests.faults.findings import Chats, chats
from tests.faults.herd import Herd, herd
from tests.faults.morning import morning

CLIENTS = 8


@pytest.fixture(scope="session")
def stage(tmp_path_factory: pytest.TempPathFactory) -> Any:
    """Run a scene on the one event loop of these tests: `stage(scene)`, which receives the herd."""
    log = tmp_path_factory.mktemp("herd") / "log"
    with asyncio.Runner() as runner:
        entered = herd(log)
        bots = runner.run(entered.__aenter__())

        def play(scene: Callable[[Herd], Coroutine[Any, Any, Any]]) -> Any:
            try:
                return runner.run(scene(bots))
            except BaseException:
                logging.getLogger().handlers.clear()
                print("\n".join(log.read_text().splitlines()[-60:]))
                raise
            finally:
                runner.run(bots.end_all())

        yield play
        runner.run(entered.__aexit__(None, None, None))


@pytest.fixture(scope="session")
def peaceful(stage: Any, sqlite_template: bytes, tmp_path_factory: pytest.TempPathFactory) -> Chats:  # noqa: F811
    """What the chats show after a morning without faults."""
    file: Path = tmp_path_factory.mktemp("peaceful") / "samehour.db"
    file.write_bytes(sqlite_template)

    async def scene(bots: Herd) -> Chats:
        async with morning(f"sqlite:///{file}", CLIENTS) as there:
            bot = await bots.start(there.settings)
            await there.people()
            await there.until(there.quiet)
            assert (await bot.stop()).status == 0
            return await chats(there)

    found: Chats = stage(scene)
    return found
