"""The arithmetic camera: pictures of a page as asked for, the same every time."""

import io

import numpy as np
from numpy.typing import NDArray
from pictures import TEXT, card, texts
from PIL import Image

from scanflow.demo.snapshot import photograph
from scanflow.vision import read

PAGE = np.asarray(card().convert("RGB"))


def levels(jpeg: bytes) -> NDArray[np.float64]:
    return np.asarray(Image.open(io.BytesIO(jpeg)).convert("L"), dtype=np.float64)


def test_the_same_arguments_give_the_same_bytes() -> None:
    """A seed fixes the noise; another seed gives another picture."""
    first, again, other = (photograph(PAGE, seed=seed, tilt=5, glare=0.5) for seed in (1, 1, 2))

    assert first == again
    assert first != other


def test_a_photograph_is_read() -> None:
    """What is photographed at a usual angle is read back, and lies the way it was laid."""
    for tilt, right in ((0, True), (8, True), (180, False)):
        picture = read(photograph(PAGE, seed=3, size=800, tilt=tilt, perspective=0.1))
        (begin, end, *_) = picture.decoded[0].corners

        assert [TEXT] == texts(picture)
        assert right == (begin[0] < end[0])


def test_tilt_is_clockwise_in_degrees() -> None:
    """The line of the text falls to the right by the tilt asked for."""
    (one,) = read(photograph(PAGE, seed=3, size=900, tilt=10)).decoded
    (begin, end, *_) = one.corners

    assert 7 < np.degrees(np.arctan2(end[1] - begin[1], end[0] - begin[0])) < 13


def test_size_is_the_longer_side() -> None:
    """The picture's longer side is as asked, its shape that of the turned page."""
    upright = levels(photograph(PAGE, seed=1, size=500)).shape
    turned = levels(photograph(PAGE, seed=1, size=500, tilt=90)).shape

    assert 500 == upright[1] == turned[0]
    assert upright[0] < 500 > turned[1]


def test_perspective_shortens_the_far_edge() -> None:
    """With a perspective of 0.4 the upper edge of the page is six tenths of the lower one."""
    white = levels(photograph(np.full_like(PAGE, 255), seed=1, size=1000, perspective=0.4, noise=0)) > 200
    rows = np.flatnonzero(white.any(axis=1))
    upper, lower = (int(white[row].sum()) for row in (rows[0] + 3, rows[-1] - 3))

    assert 0.6 == round(upper / lower, 1)


def test_light_contrast_noise_and_blur_do_as_named() -> None:
    """Each setting changes what it names: the mean, the spread, the grain, the sharpest step."""
    plain = levels(photograph(PAGE, seed=1, noise=0))

    assert 0.4 == round(levels(photograph(PAGE, seed=1, noise=0, light=0.4)).mean() / plain.mean(), 1)
    assert 0.5 == round(levels(photograph(PAGE, seed=1, noise=0, contrast=0.5)).std() / plain.std(), 1)
    grain = levels(photograph(PAGE, seed=1, noise=20, quality=100))[:40, :40].std()
    assert 15 < grain < 25
    steps = [np.abs(np.diff(levels(photograph(PAGE, seed=1, noise=0, blur=blur)))).max() for blur in (0.5, 4)]
    assert steps[0] > 2 * steps[1]
