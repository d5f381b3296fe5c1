"""A file sealed to a public key: whoever makes backups need not be able to read them.

    magic, the public half of a key made for this file (32 bytes), then pieces of 64 KiB, each AES-GCM's text and tag

The key of the pieces comes from both halves (X25519, HKDF). A piece's nonce counts, and says whether it is the last:
pieces that are missing, doubled or in another order do not open.
"""

from __future__ import annotations

import os
from base64 import urlsafe_b64decode, urlsafe_b64encode
from collections.abc import Iterator
from pathlib import Path
from typing import BinaryIO

from cryptography.exceptions import InvalidTag
from cryptography.hazmat.primitives.asymmetric.x25519 import X25519PrivateKey, X25519PublicKey
from cryptography.hazmat.primitives.ciphers.aead import AESGCM
from cryptography.hazmat.primitives.hashes import SHA256
from cryptography.hazmat.primitives.kdf.hkdf import HKDF

from bot.foundation.errors import OperatorError, UsageError
from bot.foundation.private import private_file

MAGIC = b"samehour sealed file 1\n"
PIECE = 65_536
_TAG = 16
_PUBLIC, _PRIVATE = "samehour-backup-", "samehour-open-"


def make_pair(file: Path) -> str:
    """Write a new private key into a file; return the public key.

    Raises: OperatorError when there is such a file.
    """
    key = X25519PrivateKey.generate()
    try:
        private_file(file)
    except OSError as error:
        raise OperatorError(
            f"{file} cannot be written ({error.strerror}).", "Name a file that does not exist."
        ) from None
    file.write_text(f"{_PRIVATE}{urlsafe_b64encode(key.private_bytes_raw()).decode()}\n", encoding="ascii")
    return f"{_PUBLIC}{urlsafe_b64encode(key.public_key().public_bytes_raw()).decode()}"


def is_sealed(file: Path) -> bool:
    with file.open("rb") as content:
        return content.read(len(MAGIC)) == MAGIC


def seal(source: Path, to: Path, public: str) -> None:
    """Seal a file into a new one. Raises: UsageError for a key that is none."""
    try:
        recipient = X25519PublicKey.from_public_bytes(urlsafe_b64decode(public.removeprefix(_PUBLIC)))
    except ValueError:
        raise UsageError("This is no public key: `samehour key pair` makes one.") from None
    once = X25519PrivateKey.generate()
    half = once.public_key().public_bytes_raw()
    cipher = _cipher(once.exchange(recipient), half, recipient.public_bytes_raw())
    private_file(to)
    with source.open("rb") as content, to.open("wb") as out:
        out.write(MAGIC + half)
        for number, (piece, last) in enumerate(_pieces(content, PIECE)):
            out.write(cipher.encrypt(_nonce(number, last), piece, MAGIC))
        out.flush()
        os.fsync(out.fileno())


def open_sealed(source: Path, to: Path, key_file: Path) -> None:
    """Open a sealed file into a new one. Raises: OperatorError when the key is not the one, or the file is damaged."""
    try:
        text = key_file.read_text(encoding="ascii").strip()
        key = X25519PrivateKey.from_private_bytes(urlsafe_b64decode(text.removeprefix(_PRIVATE)))
    except (OSError, ValueError):
        raise OperatorError(f"{key_file} is no private key.", "Name the file that `samehour key pair` wrote.") from None
    private_file(to)
    with source.open("rb") as content, to.open("wb") as out:
        content.seek(len(MAGIC))
        half = content.read(32)
        try:
            shared = key.exchange(X25519PublicKey.from_public_bytes(half))
            cipher = _cipher(shared, half, key.public_key().public_bytes_raw())
            for number, (piece, last) in enumerate(_pieces(content, PIECE + _TAG)):
                out.write(cipher.decrypt(_nonce(number, last), piece, MAGIC))
        except (InvalidTag, ValueError):
            raise OperatorError(
                f"{source} cannot be opened with this key.", "Use the key it was sealed to, or another backup."
            ) from None


def _cipher(shared: bytes, half: bytes, recipient: bytes) -> AESGCM:
    return AESGCM(HKDF(SHA256(), 32, salt=half + recipient, info=MAGIC).derive(shared))


def _nonce(number: int, last: bool) -> bytes:
    return number.to_bytes(11, "big") + bytes([last])


def _pieces(content: BinaryIO, length: int) -> Iterator[tuple[bytes, bool]]:
    """The pieces of a file, and whether each is the last."""
    piece = content.read(length)
    while True:
        following = content.read(length)
        yield piece, not following
        if not following:
            return
        piece = following
