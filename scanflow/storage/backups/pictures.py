"""Pictures at a place: each is one file, so that few are made, and opens as the picture that it is.

picture ‖ thumb ‖ SHA-256 of the thumb (32 bytes) ‖ bytes of the thumb (8, big-endian). The picture's own hash is
its name in the shop.
"""

from __future__ import annotations

import hashlib

from scanflow.storage.backups.key import sealed, unsealed
from scanflow.storage.backups.place import BackupError, Store, damaged, picture_path

_TAIL = 32 + 8
_SEALING = 16 + 2048
"""What age adds to 64 KiB at most, and to a file; it pads its header by lot."""


def packed(picture: bytes, thumb: bytes, recipient: str) -> bytes:
    """The bytes of the file, encrypted for a recipient unless that is ""."""
    data = b"".join((picture, thumb, hashlib.sha256(thumb).digest(), len(thumb).to_bytes(8, "big")))
    return sealed(data, recipient) if recipient else data


def fits(size: int, both: int, recipient: str) -> bool:
    """Whether a file of this size may hold a picture and thumb of `both` bytes."""
    whole = both + _TAIL
    return size == whole if not recipient else whole < size <= whole + 16 * (whole // 65536 + 1) + _SEALING


def taken_out(store: Store, name: str, recipient: str, key: str) -> tuple[bytes, bytes]:
    """A picture and its thumb, read back from a place and held against their hashes. BackupError."""
    path = picture_path(name, recipient)
    if store.size(path) < 0:
        raise BackupError("damaged", f"The picture {path} is missing there. Use another backup.")
    with store.open(path) as file:
        data = file.read()
    if recipient:
        data = unsealed(data, key, f"The picture {path}")
    size = int.from_bytes(data[-8:], "big")
    end = len(data) - _TAIL
    picture, thumb = data[: max(0, end - size)], data[max(0, end - size) : max(0, end)]
    if hashlib.sha256(picture).hexdigest() != name or hashlib.sha256(thumb).digest() != data[-_TAIL:-8]:
        raise damaged(f"The picture {path}")
    return picture, thumb
