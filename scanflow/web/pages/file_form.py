"""A CSV file that is looked at before it is loaded: it travels between the two steps in the form itself, and nothing is
kept of it here.
"""

from __future__ import annotations

import binascii
import zlib
from base64 import b64decode, b64encode

from flask import request

from scanflow.exchange import csv_table
from scanflow.exchange.csv_table import FileError


def file_sent() -> bytes:
    """The file that was chosen, or the one that the form carries; FileError where there is none."""
    upload = request.files.get("file")
    if upload is not None and upload.filename:
        data: bytes = upload.read(csv_table.MAX_BYTES + 1)
        return data
    return _unpack(request.form.get("carried", ""))


def carried(data: bytes) -> str:
    """A file as a hidden field of the next form."""
    return b64encode(zlib.compress(data, 9)).decode()


def _unpack(text: str) -> bytes:
    try:
        data = zlib.decompressobj().decompress(b64decode(text), csv_table.MAX_BYTES + 1)
    except (binascii.Error, zlib.error, ValueError):
        data = b""
    if not data:
        raise FileError("Choose a file first.")
    return data
