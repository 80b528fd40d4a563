"""What titles say of each other, and which thing in stock a title fits best."""

import pytest

from scanflow.domain.orders.titles import Stocked, Titled, differ, shared_words


@pytest.mark.parametrize(
    ("one", "other", "share"),
    [("a b c d", "A, B", 1.0), ("a b c d", "a x", 0.5), ("a b", "c d", 0.0), ("", "a", 1.0), ("…", "a", 1.0)],
)
def test_shared_words(one, other, share):
    """The share counts whole words without case, of the shorter title; nothing to compare counts as alike."""
    assert share == shared_words(one, other)


@pytest.mark.parametrize(
    ("one", "other", "differs"),
    [
        ("Rear wheel, 26 inch", "REAR WHEEL 26 INCH!", False),
        ("Rear wheel", "Front wheel", True),
        ("Rear wheel", "Wheel rear", True),
        ("Rear wheel", "Rear wheel, chrome", True),
        ("", "Rear wheel", False),
        ("Rear wheel", "…", False),
    ],
)
def test_titles_differ_in_words(one, other, differs):
    """Case and punctuation tell no titles apart, and what says nothing contradicts nothing."""
    assert differs is differ(one, other)


def titled(place, title):
    return Titled(f"i{place}", f"s{place}", f"D00{place}", title)


ROOM = (
    titled(1, "Rear wheel"),
    titled(2, "Rear wheel, 26 inch"),
    titled(3, "Rear wheel, chrome, with tyre"),
    titled(4, "Brass bell"),
)


@pytest.mark.parametrize(
    ("said", "ours", "code"),
    [
        ("Rear wheel", 1, None),
        ("Rear wheel", 2, "D001"),
        ("Wheel", 2, None),
        ("Brass bell", 1, "D004"),
        ("Rear wheel, 26 inch, used", 3, "D002"),
        ("REAR WHEEL 26 inch", 1, "D002"),
        ("Rear wheel, 26 inch, used", 1, None),
        ("Rear wheel, chrome, used", 1, None),
        ("Front wheel", 2, None),
        ("Quill stem", 2, None),
        ("", 2, None),
    ],
)
def test_another_thing_fits_better(said, ours, code):
    """What shares more words does; where the title has all of ours, only what has the very words of the title."""
    thing = ROOM[ours - 1]
    closer = Stocked(ROOM).closer(said, thing.title, thing.item)
    assert code == (closer and closer.code)


def test_of_no_thing_the_one_that_shares_most_is_closest():
    """A line that is bound to nothing is told the best of all things, the first of equals."""
    found = [Stocked(ROOM).closer(said) for said in ("a chrome wheel", "wheel", "quill stem")]
    assert ["D003", "D001", None] == [each and each.code for each in found]
