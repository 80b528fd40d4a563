"""Image files of every kind through the real decoders: a reading, or an error that says what to do."""

import io
import subprocess
import sys
from pathlib import Path
from typing import Any

import numpy as np
import pillow_heif
import pytest
from numpy.typing import NDArray
from pictures import HIGH, TEXT, TRUTH, WIDE, as_file, card, png_header, texts
from PIL import Image

from scanflow.vision import ImageError, read


def test_read_gives_size_and_place() -> None:
    """A reading has the text, both engines, and the bars' corners within 3 pixels."""
    picture = read(as_file(card()))
    (one,) = picture.decoded

    assert (WIDE, HIGH) == (picture.width, picture.height)
    assert (TEXT, "code128", "decoded", "zxing-cpp+zbar") == (one.text, one.symbology, one.certainty, one.engine)
    assert [] == far_from(one.corners)


def far_from(corners: Any) -> list[Any]:
    pairs = zip(TRUTH, corners, strict=True)
    return [(true, seen) for true, seen in pairs if max(abs(true[0] - seen[0]), abs(true[1] - seen[1])) > 3]


# EXIF 2.32, 4.6.5.1 tag 274: what must be done to the stored picture to see it upright; here is its inverse.
STORED = {
    1: None,
    2: Image.Transpose.FLIP_LEFT_RIGHT,
    3: Image.Transpose.ROTATE_180,
    4: Image.Transpose.FLIP_TOP_BOTTOM,
    5: Image.Transpose.TRANSPOSE,
    6: Image.Transpose.ROTATE_90,
    7: Image.Transpose.TRANSVERSE,
    8: Image.Transpose.ROTATE_270,
}


@pytest.mark.parametrize("kind", ["JPEG", "PNG", "WEBP", "AVIF"])
@pytest.mark.parametrize("orientation", list(STORED))
def test_corners_are_of_the_upright_image(orientation: int, kind: str) -> None:
    """However the camera was held, size and corners are those of the picture as a person sees it."""
    exif = Image.Exif()
    exif[274] = orientation
    way = STORED[orientation]
    stored = card() if way is None else card().transpose(way)
    picture = read(as_file(stored, kind, exif=exif))

    assert (WIDE, HIGH) == (picture.width, picture.height)
    assert [[]] == [far_from(one.corners) for one in picture.decoded]


def on_clear_ground(mode: str) -> Image.Image:
    """Black bars on full transparency, whose hidden colour is black too."""
    levels = np.asarray(card())
    clear = np.zeros((HIGH, WIDE, 4), np.uint8)
    clear[..., 3] = 255 - levels
    return Image.fromarray(clear).convert(mode)


def deep(low: int, high: int) -> Image.Image:
    return Image.fromarray((low + np.asarray(card(), dtype=np.float64) / 255 * (high - low)).astype(np.uint16))


def heic(image: Image.Image, **settings: Any) -> bytes:
    out = io.BytesIO()
    pillow_heif.from_pillow(image.convert("RGB")).save(out, **settings)
    return out.getvalue()


def palette_with_clear_white() -> bytes:
    image = card().convert("P")
    return as_file(image, transparency=image.getpixel((0, 0)))


FILES = {
    "grey": lambda: as_file(card()),
    "one bit": lambda: as_file(card().convert("1")),
    "palette": lambda: as_file(card().convert("RGB").quantize(8)),
    "palette with transparency": palette_with_clear_white,
    "RGBA on clear ground": lambda: as_file(on_clear_ground("RGBA")),
    "grey with alpha": lambda: as_file(on_clear_ground("LA")),
    "16 bits": lambda: as_file(deep(0, 65535)),
    "10 of 16 bits": lambda: as_file(deep(0, 1023)),
    "pale 16 bits": lambda: as_file(deep(40000, 50000)),
    "JPEG": lambda: as_file(card().convert("RGB"), "JPEG"),
    "progressive JPEG": lambda: as_file(card().convert("RGB"), "JPEG", progressive=True),
    "CMYK JPEG": lambda: as_file(card().convert("CMYK"), "JPEG"),
    "WebP": lambda: as_file(card(), "WEBP"),
    "MPO of two frames": lambda: as_file(card().convert("RGB"), "MPO", save_all=True, append_images=[card()]),
    "HEIC": lambda: heic(card()),
    "AVIF": lambda: as_file(card().convert("RGB"), "AVIF"),
}


@pytest.mark.parametrize("name", list(FILES))
def test_every_kind_of_file_is_read(name: str) -> None:
    """The way a file stores its pixels makes no difference."""
    assert [TEXT] == texts(read(FILES[name]()))


def read_only(grey: NDArray[np.uint8], *shape: int) -> NDArray[np.uint8]:
    return np.broadcast_to(grey if not shape else grey[..., None], (*grey.shape, *shape))


ARRAYS = {
    "grey": lambda grey: grey,
    "read-only grey": read_only,
    "read-only RGB": lambda grey: read_only(grey, 3),
    "grey as one channel": lambda grey: grey[..., None],
    "part of a larger RGB": lambda grey: np.pad(grey, 9)[9:-9, 9:-9, None].repeat(4, axis=2)[..., 2::-1],
    "RGB": lambda grey: np.repeat(grey[..., None], 3, axis=2),
    "RGBA": lambda grey: np.dstack([grey, grey, grey, np.full_like(grey, 255)]),
    "16 bits": lambda grey: grey.astype(np.uint16) * 257,
    "not contiguous": lambda grey: np.asfortranarray(grey),
}


@pytest.mark.parametrize("name", list(ARRAYS))
def test_arrays_are_read(name: str) -> None:
    """Pixels in memory are read like a file."""
    assert [TEXT] == texts(read(ARRAYS[name](np.asarray(card()))))


def test_path_is_read(tmp_path: Path) -> None:
    """A path names a file to read."""
    path = tmp_path / "card.png"
    path.write_bytes(as_file(card()))

    assert [TEXT] == texts(read(path))


def test_a_card_upside_down_begins_at_the_lower_right() -> None:
    """The first corner is where reading begins, not the upper left of the picture."""
    (one,) = read(as_file(card().rotate(180))).decoded
    turned = [(WIDE - 1 - x, HIGH - 1 - y) for x, y in one.corners]

    assert [] == far_from(turned)


def test_two_cards_are_read_from_the_top() -> None:
    """Each of two equal cards has its own reading, if they lie further apart than half their length."""
    apart = np.full((100, WIDE), 255, np.uint8)
    picture = read(np.vstack([np.asarray(card()), apart, np.asarray(card())]))

    assert [TEXT, TEXT] == texts(picture)
    assert [True, False] == [one.corners[0][1] < HIGH for one in picture.decoded]


NO_PIXELS = {
    "empty": (b"", "not a picture"),
    "text": (b"number,title\n1,saddle\n", "not a picture"),
    "PDF": (b"%PDF-1.4\n%%EOF\n", "not a picture"),
    "truncated JPEG": (as_file(card().convert("RGB"), "JPEG")[:3000], "damaged or not whole"),
    "truncated PNG": (as_file(card())[:400], "damaged or not whole"),
    "JPEG without its header": (as_file(card().convert("RGB"), "JPEG")[200:], "not a picture"),
    "torn HEIC": (heic(card())[:300], r"damaged or not whole \(no HEIC that can be opened\)"),
    "just above the limit": (png_header(10_001, 10_000), "too many pixels"),
    "bomb": (png_header(60_000, 60_000), "too many pixels"),
}


@pytest.mark.parametrize("name", list(NO_PIXELS))
def test_what_gives_no_pixels_is_said(name: str) -> None:
    """Each file that can't be read is an error in words, and never anything else."""
    data, words = NO_PIXELS[name]
    with pytest.raises(ImageError, match=words):
        read(data)


def test_heic_is_turned_once() -> None:
    """A phone's HEIC that says it was held upright gives the picture as a person sees it."""
    exif = Image.Exif()
    exif[274] = 6
    stored = card().transpose(STORED[6])
    picture = read(heic(stored, exif=exif.tobytes()))

    assert (WIDE, HIGH) == (picture.width, picture.height)
    assert [[]] == [far_from(one.corners) for one in picture.decoded]


def test_heic_without_its_part_is_said(tmp_path: Path) -> None:
    """Where pillow-heif is not installed, a HEIC file is an error that names what to install; JPEG is read."""
    here, photo = tmp_path / "card.heic", tmp_path / "card.jpg"
    here.write_bytes(heic(card()))
    photo.write_bytes(as_file(card(), "JPEG"))
    code = (
        "import sys; sys.modules['pillow_heif'] = None\n"
        "from pathlib import Path; from scanflow.vision import ImageError, read\n"
        "print([one.text for one in read(Path(sys.argv[2])).decoded])\n"
        "for image in (Path(sys.argv[1]), Path(sys.argv[1]).read_bytes()):\n"
        "    try: read(image)\n"
        "    except ImageError as error: print(error)\n"
    )
    command = [sys.executable, "-c", code, str(here), str(photo)]
    done = subprocess.run(command, capture_output=True, text=True, check=True, cwd=Path(__file__).parents[2])

    first, *errors = done.stdout.splitlines()
    assert f"['{TEXT}']" == first
    words = "This picture is in HEIC, which needs pillow-heif: pip install pillow-heif. Or send the photo as JPEG."
    assert [words, words] == errors


def test_missing_file_and_folder_are_said(tmp_path: Path) -> None:
    """A path that is no file is an error in words."""
    for path in (tmp_path / "none.jpg", tmp_path):
        with pytest.raises(ImageError, match="can't be opened"):
            read(path)


def test_no_byte_flipped_in_a_file_gives_another_text() -> None:
    """A damaged file reads as what it was, as nothing, or as an error."""
    random = np.random.default_rng(5)
    whole: NDArray[np.uint8] = np.frombuffer(as_file(card().convert("RGB"), "JPEG"), np.uint8)
    for _ in range(150):
        damaged = whole.copy()
        damaged[random.integers(0, whole.size, 3)] = random.integers(0, 256, 3)
        try:
            seen = set(texts(read(damaged.tobytes())))
        except ImageError:
            continue
        assert set() == seen - {TEXT}
