"""Errors outside the core, grouped by what the caller should do.

    SamehourError
    +-- OperatorError      stop and tell the operator: `remedy` says what to do; exit code 1
    |   +-- BadSettings    a setting is missing or wrong (its value is never shown); exit code 78
    |   +-- TokenRefused   the platform does not know the token; exit code 78
    |   +-- OtherPoller    somebody else polls our updates, or a webhook is set
    |   +-- CannotReach    the database or the platform does not answer at start
    +-- UsageError         the command was called wrongly; exit code 2

User input is never an error, and a failed send is a value (`bot.foundation.retry.Failure`): neither raises.
No message here carries a name, a reading, a text or a token.
"""

from __future__ import annotations

CONFIGURATION = 78  # EX_CONFIG of sysexits.h, from memory: no restart helps, which a supervisor can be told


class SamehourError(Exception):
    """Any error we raise on purpose."""


class OperatorError(SamehourError):
    """Only the operator can fix this. `problem` and `remedy` are each one plain sentence."""

    exit_code = 1

    def __init__(self, problem: str, remedy: str = "") -> None:
        super().__init__(f"{problem} {remedy}".strip())
        self.problem = problem
        self.remedy = remedy


class BadSettings(OperatorError):
    """A setting is missing or wrong. each: one sentence for every setting at fault."""

    exit_code = CONFIGURATION

    def __init__(self, problem: str, remedy: str = "", each: tuple[str, ...] = ()) -> None:
        super().__init__(problem, remedy)
        self.each = each or (str(self),)


class TokenRefused(OperatorError):
    """The platform refuses the token."""

    exit_code = CONFIGURATION

    def __init__(self) -> None:
        super().__init__(
            "The messenger refuses the bot's token.",
            "Set SAMEHOUR_TOKEN to the token as it was given out last: an earlier one ends when a new one is made.",
        )


class OtherPoller(OperatorError):
    """Updates are delivered elsewhere."""


class CannotReach(OperatorError):
    """A service we need does not answer."""


class UsageError(SamehourError):
    """The command was called wrongly."""
