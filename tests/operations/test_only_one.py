"""Two processes never serve one SQLite file; on PostgreSQL they may."""

import os
import signal
import subprocess
import sys
from pathlib import Path

import pytest

from bot.foundation.errors import OperatorError
from bot.process.single_instance import only_one

ROOT = Path(__file__).parents[2]
HOLDER = "import sys; from pathlib import Path; from bot.process.single_instance import only_one\n\
with only_one(Path(sys.argv[1])): print('held', flush=True); sys.stdin.read()"


def holder(file):
    process = subprocess.Popen(
        [sys.executable, "-c", HOLDER, str(file)], cwd=ROOT, stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True
    )
    assert process.stdout.readline() == "held\n"
    return process


def test_a_second_one_is_refused_and_a_killed_one_leaves_nothing_behind(tmp_path):
    file = tmp_path / "new" / "samehour.db"
    process = holder(file)
    with pytest.raises(OperatorError, match=r"Another `samehour serve` uses .*samehour\.db"), only_one(file, 0.05):
        pass
    process.send_signal(signal.SIGKILL)
    process.communicate()
    with only_one(file, 0.05):
        pass


def test_one_that_is_still_finishing_is_waited_for(tmp_path):
    file = tmp_path / "samehour.db"
    process = holder(file)
    process.stdin.close()
    with only_one(file, 20):
        pass
    assert process.wait(20) == 0
    process.stdout.close()


def test_a_database_that_is_no_file_may_be_served_by_several():
    with only_one(None), only_one(None):
        pass


def test_the_command_says_so_in_one_line_and_touches_nothing(tmp_path):
    file = tmp_path / "samehour.db"
    bare = {name: value for name, value in os.environ.items() if not name.startswith("SAMEHOUR_")}
    given = {"SAMEHOUR_TOKEN": "4242:" + "x" * 35, "SAMEHOUR_DATABASE_URL": f"sqlite:///{file}"}
    with only_one(file):
        ended = subprocess.run(
            [sys.executable, "-m", "bot", "serve"],
            cwd=ROOT,
            env=bare | given,
            capture_output=True,
            text=True,
            check=False,
        )
    assert (ended.returncode, ended.stdout) == (1, "")
    assert len(ended.stderr.splitlines()) == 1
    assert "Another `samehour serve`" in ended.stderr
    assert not file.exists()
