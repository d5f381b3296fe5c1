"""Whatever the umask says, nobody but their owner reads the files of a bot, nor finds out their names."""

import os
import stat
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
SCRIPT = """
import sys
from contextlib import closing
from pathlib import Path
from bot.operator import cli
from bot.operator.backup import backup, restore
from bot.operator.commands.database import migrate
from bot.operator.commands.keys import copy, pair
from bot.process.single_instance import only_one
from bot.foundation import config
from bot.store.opening import open_database
from tests.bot.practice import rowan_and_ada
from demo.__main__ import main
folder = Path(sys.argv[1])
migrate()
with closing(open_database(config.read())) as database:
    database.write_now(rowan_and_ada)
    backup(folder / "backup")
    copy(folder / "keys")
    public = pair(folder / "pair").splitlines()[1]
    backup(folder / "sealed", public)
    for form in ("csv", "fhir", "ics"):
        cli.run(["export", "--coach", "Rowan", "--to", form, "--out", str(folder / form)])
    with only_one(database.file):
        print(*sorted(path.name for path in database.file.parent.iterdir()))
restore(folder / "sealed", force=True, key_file=folder / "pair")
main([str(folder / "a.tape"), "--pictures", str(folder / "pictures")])
"""
TAPE = """
start 2026-03-02 07:00 Europe/London
coach Rowan
client Ada of Rowan: sex=female born=1968 height=165cm slot="Mon 07:30" measures=weight
Ben opens Rowan's invitation
"""


@pytest.mark.parametrize("umask", ["000", "022"])
def test_files_are_for_their_owner_alone_whatever_the_umask(tmp_path: Path, umask: str) -> None:
    folder = tmp_path / "out"
    folder.mkdir(mode=0o700)
    (folder / "a.tape").write_text(TAPE)
    (folder / "a.tape").chmod(0o600)
    bare = {name: value for name, value in os.environ.items() if not name.startswith("SAMEHOUR_")}
    place = tmp_path / "new" / "folder" / "samehour.db"
    ended = subprocess.run(
        ["/bin/sh", "-c", f'umask {umask}; exec "$@"', "-", sys.executable, "-c", SCRIPT, str(folder)],
        cwd=ROOT,
        env=bare | {"SAMEHOUR_DATABASE_URL": f"sqlite:///{place}"},
        capture_output=True,
        text=True,
        check=False,
    )
    assert ended.returncode in (0, 1), ended.stderr
    there = {"samehour.db", "samehour.db-wal", "samehour.db.keys", "samehour.db.master", "samehour.db.serving"}
    assert there <= set(ended.stdout.split()), ended.stderr
    modes = {
        path.relative_to(tmp_path): stat.S_IMODE(path.stat().st_mode) for path in tmp_path.rglob("*") if path != folder
    }
    assert any("pictures" in str(path) and path.suffix for path in modes), ended.stderr
    assert {"backup", "sealed", "keys", "pair", "csv", "fhir", "ics"} <= {path.name for path in modes}, ended.stderr
    assert {str(path): oct(mode) for path, mode in modes.items() if mode & 0o077} == {}
