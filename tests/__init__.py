"""Tests mirror the code. A package, because a library installs its own `tests`, which would otherwise take
precedence."""
