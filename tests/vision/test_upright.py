"""Which files are opened as pictures: those of a few formats by name, and none by help of another program."""

from __future__ import annotations

import io
import os
import re
import subprocess
import sys
from pathlib import Path

import pytest
from pictures import TEXT, as_file, card, texts
from PIL import Image

from scanflow.vision import ImageError, read
from scanflow.vision.stored_pictures import opened, whole
from scanflow.vision.upright import accepted, taken

Image.init()
UNWRITTEN = {"BUFR", "GRIB", "HDF5", "WMF"}  # by Pillow alone
OTHERS = sorted(set(Image.SAVE) - {"JPEG", "MPO", "PNG", "WEBP", "AVIF", "HEIF"} - UNWRITTEN)
LOOP = b"%!PS-Adobe-3.0 EPSF-3.0\n%%BoundingBox: 0 0 200 100\n%%EndComments\n{ } loop"


def written(kind: str) -> bytes:
    """A card in this format, in the first mode that the format takes."""
    for mode in ("RGB", "L", "RGBA", "P", "1"):
        out = io.BytesIO()
        try:
            card().convert(mode).resize((256, 256)).save(out, kind)
        except (OSError, ValueError, KeyError):
            continue
        return out.getvalue()
    raise AssertionError(f"Pillow writes no {kind}")


@pytest.mark.filterwarnings("ignore:IM image format:DeprecationWarning")
@pytest.mark.parametrize("kind", OTHERS)
def test_no_other_format_of_pillow_is_opened(kind: str) -> None:
    """Whatever else Pillow can write is no picture here, and the words name what is."""
    with pytest.raises(ImageError, match="Send the photo as JPEG, PNG, WebP, HEIC or AVIF"):
        read(written(kind))


def test_postscript_starts_no_program(tmp_path: Path) -> None:
    """A body of PostScript is refused at once, and a gs that is there is not run; it would hang or fill the disk."""
    mark, fake = tmp_path / "started", tmp_path / "gs"
    fake.write_text(f"#!/bin/sh\ntouch {mark}\n")
    fake.chmod(0o755)
    code = (
        "import sys; from scanflow.vision import ImageError, read\n"
        "try: read(sys.stdin.buffer.read())\n"
        "except ImageError as error: print(error)\n"
    )
    environment = os.environ | {"PATH": f"{tmp_path}{os.pathsep}{os.environ['PATH']}"}
    command = [sys.executable, "-c", code]
    done = subprocess.run(
        command, input=LOOP, capture_output=True, env=environment, timeout=30, cwd=Path(__file__).parents[2]
    )

    assert b"not a picture" in done.stdout
    assert not mark.exists()


def test_a_file_field_takes_what_is_opened() -> None:
    """The media types of file fields are those of the formats that are opened, one list for both."""
    assert {"JPEG", "PNG", "WEBP", "HEIF", "AVIF"} == set(taken())
    assert "image/jpeg,image/png,image/webp,image/heic,image/heif,image/avif" == accepted()


def test_what_was_made_here_is_opened_as_nothing_else() -> None:
    """A picture made ready is opened again, upright and in colour; another format in its place is not."""
    exif = Image.Exif()
    exif[274] = 6  # EXIF 2.32, 4.6.5.1: the stored picture is to be turned by 90 degrees clockwise
    stored = as_file(card().transpose(Image.Transpose.ROTATE_90), "JPEG", exif=exif)
    shown = opened(whole(stored))

    assert ("RGB", card().size) == (shown.mode, shown.size)
    assert [TEXT] == texts(read(as_file(shown)))
    with pytest.raises(OSError):
        opened(as_file(card(), "PNG"))


def test_pictures_are_opened_in_three_places() -> None:
    """By format where they come in, and as JPEG what was made here or filmed by our own camera's process."""
    calls = re.compile(r"Image\.open\((.*)|(imdecode|imread)\(")
    house = Path(__file__).parents[2]
    found = {
        (path.as_posix().removeprefix(f"{house.as_posix()}/scanflow/vision/"), "formats=" in (call[1] or ""))
        for folder in ("scanflow", "labels")
        for path in (house / folder).rglob("*.py")
        for call in calls.finditer(path.read_text(encoding="utf-8"))
    }
    expected = {
        ("upright.py", True),
        ("stored_pictures.py", True),
        ("camera/sweep.py", False),
    }
    assert expected == found
