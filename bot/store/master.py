"""What wraps the keys of people: a master key from the environment or a file, or a key service that is plugged in.

Without it nothing that was stored can be read again. It is in no backup of ours and in no database.
"""

from __future__ import annotations

import os
import secrets
from base64 import urlsafe_b64decode, urlsafe_b64encode
from hashlib import sha256
from importlib import import_module
from pathlib import Path
from typing import Protocol

from cryptography.exceptions import InvalidTag
from cryptography.hazmat.primitives.ciphers.aead import AESGCM

from bot.foundation.errors import BadSettings, OperatorError
from bot.foundation.private import private_file, private_folder

LENGTH = 32  # bytes
_NONCE = 12


class CannotUnwrap(OperatorError):
    """This master key, or key service, is not the one that wrapped a key."""


class Wrapper(Protocol):
    """Wraps keys. name: which one it is, the same for ever: a key that another one wrapped is not asked for."""

    @property
    def name(self) -> str: ...

    def wrap(self, key: bytes, of: str) -> bytes:
        """Return a key wrapped. of: whose it is, as a number that says nothing; it must be named to unwrap."""
        ...

    def unwrap(self, wrapped: bytes, of: str) -> bytes:
        """Return a key that `wrap` wrapped. Raises: CannotUnwrap."""
        ...


class MasterKey:
    """A master key in memory."""

    def __init__(self, key: bytes) -> None:
        if len(key) != LENGTH:
            raise BadSettings("The master key is not 32 bytes long.", "Use the whole of it, in base 64.")
        self._cipher = AESGCM(key)
        self._key = key
        self.name = f"master/{sha256(b'samehour master key' + key).hexdigest()[:16]}"

    @classmethod
    def new(cls) -> MasterKey:
        return cls(secrets.token_bytes(LENGTH))

    @classmethod
    def of_text(cls, text: str) -> MasterKey:
        """Read a master key in base 64. Raises: BadSettings."""
        try:
            return cls(urlsafe_b64decode(text.strip().replace("+", "-").replace("/", "_")))
        except ValueError:
            raise BadSettings("The master key is not in base 64.", "Use the whole of it, as it was made.") from None

    def text(self) -> str:
        return urlsafe_b64encode(self._key).decode()

    def wrap(self, key: bytes, of: str) -> bytes:
        nonce = os.urandom(_NONCE)
        return nonce + self._cipher.encrypt(nonce, key, of.encode())

    def unwrap(self, wrapped: bytes, of: str) -> bytes:
        try:
            return self._cipher.decrypt(wrapped[:_NONCE], wrapped[_NONCE:], of.encode())
        except (InvalidTag, ValueError):
            raise CannotUnwrap(
                "The master key is not the one of these keys.",
                "Set SAMEHOUR_MASTER_KEY or SAMEHOUR_MASTER_KEY_FILE to it.",
            ) from None


def in_file(file: Path, *, make: bool) -> MasterKey:
    """Return the master key of a file; `make` it, for its owner alone, if there is no file.

    Raises: OperatorError when there is none, or it cannot be read.
    """
    try:
        return MasterKey.of_text(file.read_text(encoding="ascii"))
    except FileNotFoundError:
        if not make:
            raise OperatorError(
                f"The master key {file} is missing.", "Put it back: without it nothing stored can be read."
            ) from None
    except (OSError, UnicodeDecodeError):
        raise OperatorError(f"The master key {file} cannot be read.", "Let the bot read it.") from None
    key = MasterKey.new()
    write(file, key)
    return in_file(file, make=False)  # as it is on disk; another process may have been first


def write(file: Path, key: MasterKey, *, over: bool = False) -> None:
    """Write a master key into a file that only its owner can read; into an existing one only if `over`."""
    private_folder(file.parent)
    part = file.with_name(f"{file.name}.{secrets.token_hex(4)}")
    try:
        private_file(part)
        with part.open("w", encoding="ascii") as out:
            out.write(f"{key.text()}\n")
            out.flush()
            os.fsync(out.fileno())
        if over:
            part.replace(file)
        else:
            try:
                os.link(part, file)  # fails if there is one
            except FileExistsError:
                return
    finally:
        part.unlink(missing_ok=True)


def service(place: str) -> Wrapper:
    """Return the key service that "package.module:function" makes. Raises: BadSettings."""
    module, _, name = place.partition(":")
    try:
        made: Wrapper = getattr(import_module(module), name)()
    except (ImportError, AttributeError, TypeError, ValueError) as error:
        raise BadSettings(
            f"SAMEHOUR_KEY_SERVICE cannot be used ({type(error).__name__}).",
            "It looks like package.module:function, and the function takes no arguments.",
        ) from None
    return made
