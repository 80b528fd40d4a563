"""The drawn pictures of the example shop's goods."""

from __future__ import annotations

from io import BytesIO

from PIL import Image

from scanflow.demo.drawings import SIZE, drawing
from scanflow.demo.goods import KINDS


def test_every_thing_has_a_picture_of_its_own() -> None:
    """Square JPEGs, the same each time; no two of the fifteen things of a section look alike, nor do two sections."""
    drawn = {kind.slot(number): drawing(kind.slot(number)) for kind in KINDS for number in range(1, 16)}
    assert len(drawn) == len(set(drawn.values()))
    for code in ("S001", "BL015"):
        assert drawn[code] == drawing(code)
        image = Image.open(BytesIO(drawn[code]))
        assert ("JPEG", (SIZE, SIZE)) == (image.format, image.size)
