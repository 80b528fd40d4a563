"""Pictures made ready to be kept."""

from __future__ import annotations

from io import BytesIO

import numpy as np
import pytest
from PIL import Image, ImageCms

from scanflow.vision.readings import ImageError
from scanflow.vision.stored_pictures import LONGEST, SMALL, kept

TOLD = b"Workshop, second shelf"


def taken(size: tuple[int, int], orientation: int = 1, kind: str = "JPEG") -> bytes:
    """A picture whose left half is red and right half blue as it is stored, with all that a phone writes beside it."""
    image = Image.new("RGB", size, "#c00000")
    image.paste("#0000c0", (size[0] // 2, 0, *size))
    exif = Image.Exif()
    exif[0x0112] = orientation  # CIPA DC-008 (EXIF) 4.6.5.1: Orientation
    exif[0x010E] = TOLD.decode()  # ImageDescription
    exif.get_ifd(0x8825)[1] = "N"  # GPSLatitudeRef
    profile = ImageCms.ImageCmsProfile(ImageCms.createProfile("sRGB")).tobytes()
    out = BytesIO()
    more = {"comment": TOLD} if kind == "JPEG" else {}
    image.save(out, kind, exif=exif, icc_profile=profile, **more)
    return out.getvalue()


@pytest.mark.parametrize("kind", ["JPEG", "PNG", "WEBP"])
def test_nothing_but_pixels_is_kept(kind: str) -> None:
    """Neither EXIF, nor where it was taken, nor a comment or profile is in what is kept."""
    for each in kept(taken((400, 300), kind=kind)):
        image = Image.open(BytesIO(each))
        assert ("JPEG", {}, {"jfif", "jfif_version", "jfif_unit", "jfif_density"}) == (
            image.format,
            dict(image.getexif()),
            set(image.info),
        )
        assert TOLD not in each


@pytest.mark.parametrize(("orientation", "red"), [(1, "left"), (3, "right"), (6, "top"), (8, "bottom")])
def test_it_stands_upright(orientation: int, red: str) -> None:
    """It is turned as its EXIF orientation said: 3 is half a turn, 6 a quarter to the right, 8 to the left."""
    for each in kept(taken((400, 200), orientation)):
        pixels = np.asarray(Image.open(BytesIO(each))).astype(int)
        height, width = pixels.shape[:2]
        spots = {
            "left": (height // 2, width // 8),
            "right": (height // 2, -width // 8),
            "top": (height // 8, width // 2),
            "bottom": (-height // 8, width // 2),
        }
        opposite = {"left": "right", "right": "left", "top": "bottom", "bottom": "top"}[red]
        assert pixels[spots[red]][0] > 100 > pixels[spots[red]][2]
        assert pixels[spots[opposite]][2] > 100 > pixels[spots[opposite]][0]
        assert (width > height) is (orientation < 5)


@pytest.mark.parametrize(("size", "expected"), [((4000, 3000), (1600, 1200)), ((300, 200), (300, 200))])
def test_it_is_no_larger_than_it_is_looked_at(size: tuple[int, int], expected: tuple[int, int]) -> None:
    """The longer side has at most 1600 pixels, of the small one 320; a smaller picture is not blown up."""
    whole, small = (Image.open(BytesIO(each)) for each in kept(taken(size)))
    assert expected == whole.size
    assert min(SMALL, max(expected)) == max(small.size)
    assert max(whole.size) <= LONGEST


def test_the_same_file_gives_the_same_bytes() -> None:
    """So that it is stored once."""
    data = taken((640, 480))
    assert kept(data) == kept(data)


@pytest.mark.parametrize("data", [b"", b"no picture", taken((400, 300))[:2000]])
def test_what_is_no_picture_is_refused(data: bytes) -> None:
    """An error that says so."""
    with pytest.raises(ImageError):
        kept(data)
