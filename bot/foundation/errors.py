"""Errors outside the core, grouped by what the caller should do.

    SamehourError
    +-- OperatorError      stop and tell the operator: `remedy` says what to do; exit code 1
    |   +-- BadSettings    a setting is missing or wrong (its value is never shown)
    |   +-- TokenRefused   the platform does not know the token
    |   +-- OtherPoller    somebody else polls our updates, or a webhook is set
    |   +-- CannotReach    the database or the platform does not answer at start
    +-- UsageError         the command was called wrongly; exit code 2

User input is never an error, and a failed send is a value (`bot.foundation.retry.Failure`): neither raises.
No message here carries a name, a reading, a text or a token.
"""

from __future__ import annotations


class SamehourError(Exception):
    """Any error we raise on purpose."""


class OperatorError(SamehourError):
    """Only the operator can fix this. `problem` and `remedy` are each one plain sentence."""

    def __init__(self, problem: str, remedy: str = "") -> None:
        super().__init__(f"{problem} {remedy}".strip())
        self.problem = problem
        self.remedy = remedy


class BadSettings(OperatorError):
    """A setting is missing or wrong."""


class TokenRefused(OperatorError):
    """The platform refuses the token."""

    def __init__(self) -> None:
        super().__init__("The messenger refuses the bot's token.", "Set SAMEHOUR_TOKEN to the bot's token.")


class OtherPoller(OperatorError):
    """Updates are delivered elsewhere."""


class CannotReach(OperatorError):
    """A service we need does not answer."""


class UsageError(SamehourError):
    """The command was called wrongly."""
