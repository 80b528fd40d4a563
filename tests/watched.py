"""The page of a camera at a station, served with something on it."""

from __future__ import annotations

import io
import socket
from collections.abc import Iterator
from contextlib import contextmanager
from typing import Any

import filmed
import numpy as np
from PIL import Image

from scanflow.vision.decode import glance
from scanflow.web.watch_page import Watched, serving


def seeing(code: str | None) -> Watched:
    """A camera that sees the card of a slot."""
    levels = filmed.light(filmed.face(code) if code else None, 0)
    out = io.BytesIO()
    Image.fromarray((255 * levels).astype(np.uint8)).save(out, "JPEG")
    picture = glance(out.getvalue())
    outlines: list[dict[str, Any]] = [
        {"text": each.text, "corners": each.corners, "kind": "scanned"} for each in picture.decoded
    ]
    return Watched("table", "Hold a card up.", "", out.getvalue(), filmed.SIZE, outlines)


@contextmanager
def served(watched: Watched) -> Iterator[str]:
    """The address of its page."""
    with socket.create_server(("127.0.0.1", 0)) as listener, serving(watched, listener) as address:
        yield address
