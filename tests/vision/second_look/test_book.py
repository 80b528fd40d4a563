"""The book of card texts: equal by content, and only what Code 128 can carry."""

import pytest

from scanflow.vision import Book


def test_order_and_repetition_change_nothing() -> None:
    """The same texts in any order, some of them twice, are the same book with the same digest."""
    one, other = Book(["D0145", "A0018", "box-17"]), Book(iter(["box-17", "D0145", "A0018", "D0145"]))

    assert ("A0018", "D0145", "box-17") == one.texts
    assert 3 == len(one)
    assert (one, hash(one), one.digest) == (other, hash(other), other.digest)


def test_other_texts_are_another_book() -> None:
    """One text more, or the same characters cut otherwise, give another digest."""
    books = [Book([]), Book(["D0145"]), Book(["D0145", "D0153"]), Book(["D0145D0153"]), Book(["D0145\nD0153"])]

    assert 5 == len(set(books)) == len({book.digest for book in books})


@pytest.mark.parametrize("text", ["", "Größe", "D0145—"])
def test_a_text_that_bars_can_not_carry_is_refused(text: str) -> None:
    """An empty text and one beyond ASCII are named, with the reason."""
    with pytest.raises(ValueError, match=f"“{text}” can't be on a card: Code 128 holds one or more ASCII characters"):
        Book(["D0145", text])


def test_the_digest_is_the_same_in_every_process() -> None:
    """It names the content in messages between processes, so it may not depend on a process's own hashing."""
    assert "1fe61f2fe2b1c400f1ead6d04f3fe416759fc347d4cc3cd3e69f95b85710236e" == Book(["D0145"]).digest
