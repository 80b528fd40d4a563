"""sample_images/ through the real decoders: a floor of reads for each condition, and never a wrong text."""

from collections import Counter, defaultdict
from pathlib import Path

import make_samples
import pytest
from PIL import Image

from scanflow.vision import Book, read
from scanflow.vision.workers import Readers

# Texts read of those in the folder's pictures. The hardest pictures of some conditions are beyond both decoders.
FLOORS = {
    "straight": 4,
    "tilted": 5,
    "upside_down": 3,
    "sideways": 2,
    "perspective": 3,
    "blurred": 2,
    "noisy": 4,
    "dim": 4,
    "low_contrast": 4,
    "bagged": 4,
    "far": 3,
    "two_cards": 8,
    "adopted": 4,
    "no_code": 0,
    "small_bars": 24,
    "filed": 20,
    "not_in_book": 0,
}


def beside(image: Path) -> list[str]:
    return sorted(image.with_suffix(".txt").read_text(encoding="utf-8").split())


@pytest.fixture(scope="module")
def seen() -> dict[Path, list[str]]:
    """What is read in every sample, by workers."""
    images = sorted(make_samples.ROOT.glob("*/*.jpg"))
    with Readers() as readers:
        pictures = {image: readers.read(image, book_of(image.parent.name)) for image in images}
    return {image: sorted(one.text for one in picture.readings if one.text) for image, picture in pictures.items()}


def book_of(condition: str) -> Book | None:
    return Book(make_samples.BOOK) if condition in make_samples.BOOKED else None


@pytest.mark.parametrize("condition", list(FLOORS))
def test_reads_reach_the_floor(condition: str, seen: dict[Path, list[str]]) -> None:
    """No condition is read worse than it was."""
    right = [text for image, texts in seen.items() if image.parent.name == condition for text in texts]

    assert FLOORS[condition] <= len(right)


def test_nothing_is_misread(seen: dict[Path, list[str]]) -> None:
    """Every text read stands in its picture, once for each card; pictures without a code read as nothing."""
    wrong = {image.name: extra for image, texts in seen.items() if (extra := Counter(texts) - Counter(beside(image)))}

    assert {} == wrong


def test_samples_are_what_the_command_makes() -> None:
    """Making the samples again gives the same names and texts."""
    made = {name: sorted(texts) for name, texts, _ in make_samples.samples()}
    images = make_samples.ROOT.glob("*/*.jpg")
    there = {image.relative_to(make_samples.ROOT).with_suffix("").as_posix(): beside(image) for image in images}

    assert made == there


@pytest.mark.parametrize("condition", sorted(FLOORS))
def test_samples_are_made_as_they_are_kept(condition: str) -> None:
    """The first picture of each condition, made again, has the kept one's size and reads the same."""
    name, _, take = next(sample for sample in make_samples.samples() if sample[0].startswith(f"{condition}/"))
    kept = make_samples.ROOT / f"{name}.jpg"
    again, before = (read(picture, book_of(condition)) for picture in (take(), kept))

    assert Image.open(kept).size == (again.width, again.height)
    assert [one.text for one in before.readings] == [one.text for one in again.readings]


def test_samples_are_many_small_and_named() -> None:
    """At least 30 pictures in named conditions and 10 without a code, each below 400 kB and all below 5 MB."""
    sizes: dict[str, list[int]] = defaultdict(list)
    for image in make_samples.ROOT.glob("*/*.jpg"):
        sizes[image.parent.name].append(image.stat().st_size)
    without = sizes.pop("no_code")

    assert set(FLOORS) == {*sizes, "no_code"}
    assert 30 <= sum(map(len, sizes.values()))
    assert 10 <= len(without)
    every = [size for folder in (*sizes.values(), without) for size in folder]
    assert 400_000 > max(every)
    assert 5_000_000 > sum(every)
