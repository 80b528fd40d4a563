"""The picture of a thing that a form brings along."""

from __future__ import annotations

from flask import request

from scanflow.domain.things import Photo
from scanflow.vision import photographs
from scanflow.web.door.visitors import shop

FIELD = "photo"


def sent() -> Photo | None:
    """Opened before any transaction; None where none was chosen. `Invalid` for what is no picture."""
    file = request.files.get(FIELD)
    if file is None or not file.filename:
        return None
    return photographs.photo(shop().readers, file.read(), f"/{FIELD}")
