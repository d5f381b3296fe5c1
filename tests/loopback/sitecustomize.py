"""Python imports this by its name when it starts: the guard in the processes that the tests start."""

import sys

import guard

guard.install()
sys.modules["tests.loopback.guard"] = guard  # one guard also where such a process is pytest's own worker
