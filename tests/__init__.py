"""Tests mirror the code. A package, because a library installs a `tests` of its own that would win otherwise."""
