"""For every test: no network traffic leaves this machine."""

import atexit
import os
import shutil
import tempfile
from collections.abc import Iterator
from pathlib import Path

import pytest
from hypothesis import settings

from tests.loopback import guard

# Load on a shared machine must not fail a test.
settings.register_profile("ours", deadline=None)
settings.load_profile("ours")

# Keys of databases on a server are in the user's data folder, which is not for tests to fill.
os.environ["XDG_DATA_HOME"] = tempfile.mkdtemp(prefix="samehour-tests-")
atexit.register(shutil.rmtree, os.environ["XDG_DATA_HOME"], True)

guard.install()  # at once: collecting the tests imports everything
REFUSED = pytest.StashKey[Path]()


def pytest_configure(config: pytest.Config) -> None:
    """Guard the tests' child processes too, and have all of them record what they refuse."""
    file, name = tempfile.mkstemp(prefix="samehour-refused-")
    os.close(file)
    config.stash[REFUSED] = Path(name)
    config.add_cleanup(Path(name).unlink)
    os.environ[guard.NOTES] = name
    inherited = os.environ.get("PYTHONPATH")
    os.environ["PYTHONPATH"] = os.pathsep.join([str(Path(guard.__file__).parent), *([inherited] if inherited else [])])


@pytest.hookimpl(wrapper=True)
def pytest_runtest_teardown(item: pytest.Item) -> Iterator[None]:
    """Fail a test that tried to reach another machine, even if something in some process ignored the refusal."""
    yield
    notes = item.config.stash[REFUSED]
    if notes.stat().st_size:
        said = notes.read_text().split()
        notes.write_text("")
        pytest.fail(f"reached beyond loopback, for {', '.join(sorted(set(said)))}", pytrace=False)
