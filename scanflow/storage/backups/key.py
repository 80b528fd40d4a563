"""Files that only a recovery key opens: the age format (age-encryption.org/v1) with X25519, by pyrage."""

from __future__ import annotations

import io
from collections.abc import Callable
from typing import IO, TypeVar

import pyrage
from pyrage import x25519

from scanflow.storage.backups.place import BackupError, damaged


def new_key() -> tuple[str, str]:
    """A recipient, `age1…`, which encrypts and may be kept, and its recovery key, `AGE-SECRET-KEY-1…`."""
    identity = x25519.Identity.generate()
    return str(identity.to_public()), str(identity)


def recipient_of(key: str) -> str:
    """The recipient that a recovery key opens; spaces and small letters are forgiven. BackupError."""
    try:
        return str(x25519.Identity.from_str("".join(key.split()).upper()).to_public())
    except pyrage.IdentityError as error:
        detail = "This is no recovery key. A key begins with AGE-SECRET-KEY-1. Copy it again from its sheet."
        raise BackupError("wrong_key", detail) from error


def sealer(recipient: str) -> x25519.Recipient:
    """BackupError where the text is no recipient."""
    try:
        return x25519.Recipient.from_str(recipient)
    except pyrage.RecipientError as error:
        detail = "This is no recipient. One begins with age1. Copy it again from where the key was made."
        raise BackupError("wrong_key", detail) from error


T = TypeVar("T")


class _Told:
    """A file that remembers what went wrong with it: pyrage tells only that something did."""

    def __init__(self, file: IO[bytes]) -> None:
        self.file = file
        self.error: OSError | None = None

    def read(self, size: int = -1) -> bytes:
        return self._do(lambda: self.file.read(size))

    def write(self, data: bytes) -> int:
        return self._do(lambda: self.file.write(data))

    def flush(self) -> None:
        self._do(self.file.flush)

    def _do(self, work: Callable[[], T]) -> T:
        try:
            return work()
        except OSError as error:
            self.error = error
            raise


def seal(source: IO[bytes], out: IO[bytes], recipient: str) -> None:
    """Encrypt a file into another. OSError of either."""
    files = _Told(source), _Told(out)
    try:
        pyrage.encrypt_io(*files, [sealer(recipient)])
    except (pyrage.EncryptError, OSError):
        for file in files:
            if file.error is not None:
                raise file.error from None
        raise


def unseal(source: IO[bytes], out: IO[bytes], key: str, what: str) -> None:
    """Decrypt a file into another; `what` it is called. BackupError, OSError of either."""
    files = _Told(source), _Told(out)
    try:
        identity = x25519.Identity.from_str("".join(key.split()).upper())
        pyrage.decrypt_io(*files, [identity])
    except (pyrage.DecryptError, OSError) as error:
        for file in files:
            if file.error is not None:
                raise file.error from None
        raise damaged(what) from error


def sealed(data: bytes, recipient: str) -> bytes:
    """The bytes, encrypted for a recipient."""
    encrypted: bytes = pyrage.encrypt(data, [sealer(recipient)])
    return encrypted


def unsealed(data: bytes, key: str, what: str) -> bytes:
    """The bytes again, by the recipient's key; `what` they are is said where it doesn't fit."""
    out = io.BytesIO()
    unseal(io.BytesIO(data), out, key, what)
    return out.getvalue()
