"""Files and folders for their owner's eyes alone, whatever the process's umask says."""

from __future__ import annotations

import os
import stat
from pathlib import Path

FILE, FOLDER = 0o600, 0o700


def private_folder(folder: Path) -> None:
    """Make a folder, and those above it that are missing, for their owner alone. One that is there stays as it is."""
    if folder.is_dir():
        return
    private_folder(folder.parent)
    try:
        folder.mkdir(mode=FOLDER)
    except FileExistsError:
        return
    folder.chmod(FOLDER)


def private_file(file: Path) -> None:
    """Make an empty file for its owner alone. Raises: FileExistsError."""
    handle = os.open(file, os.O_CREAT | os.O_EXCL | os.O_WRONLY, FILE)
    try:
        os.fchmod(handle, FILE)
    finally:
        os.close(handle)


def make_private(file: Path) -> None:
    """Make a file if it is missing, and take it from everybody but its owner if it is ours to do so."""
    private_folder(file.parent)
    try:
        private_file(file)
    except FileExistsError:
        there = file.stat()
        if there.st_mode & 0o077 and stat.S_ISREG(there.st_mode) and there.st_uid == os.geteuid():
            file.chmod(stat.S_IMODE(there.st_mode) & FILE)
