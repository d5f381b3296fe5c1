"""What holds for every test."""

import atexit
import os
import shutil
import tempfile

from hypothesis import settings

# Keys of databases on a server are in the user's data folder, which is not for tests to fill.
os.environ["XDG_DATA_HOME"] = tempfile.mkdtemp(prefix="samehour-tests-")
atexit.register(shutil.rmtree, os.environ["XDG_DATA_HOME"], True)

# A slow moment of a shared machine is no failure of ours.
settings.register_profile("ours", deadline=None)
settings.load_profile("ours")
