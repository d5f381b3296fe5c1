"""Python imports this by its name when it starts: the guard in the processes that the tests start."""

import sys
from importlib import import_module

guard = import_module("guard")  # the one beside this: such a process may not see the tests as a package
guard.install()
sys.modules["tests.loopback.guard"] = guard  # one guard also where such a process is pytest's own worker
