"""What titles say of each other: the words they share, and which thing in stock a title fits best."""

from __future__ import annotations

import re
from collections import defaultdict
from collections.abc import Iterable
from dataclasses import dataclass
from functools import lru_cache
from itertools import chain


@dataclass(frozen=True, slots=True)
class Titled:
    """A thing by its words: `stay` and `code` are those of its latest stay."""

    item: str
    stay: str
    code: str
    title: str


def words_in_order(title: str) -> list[str]:
    """The words of a title, without case."""
    return re.findall(r"\w+", title.casefold())


@lru_cache(maxsize=20_000)
def words_of(title: str) -> frozenset[str]:
    """Kept, for the titles of a room are cut into words again for each order that comes by itself."""
    return frozenset(words_in_order(title))


def shared_words(one: str, other: str) -> float:
    """The share of the shorter title's words that the other has too, 0 to 1; 1 when either has none."""
    mine, theirs = words_of(one), words_of(other)
    if not mine or not theirs:
        return 1.0
    return len(mine & theirs) / min(len(mine), len(theirs))


def differ(one: str, other: str) -> bool:
    """Whether two titles say different words, case and punctuation aside; one that says nothing differs from none.

    >>> differ("Rear derailleur, long cage", "REAR DERAILLEUR – long cage"), differ("Bell", "Brass bell")
    (False, True)
    """
    mine, theirs = words_in_order(one), words_in_order(other)
    return bool(mine and theirs) and mine != theirs


class Stocked:
    """The things in stock by the words of their titles: made once, asked for many titles."""

    def __init__(self, things: Iterable[Titled]) -> None:
        self._things = [(thing, words_of(thing.title)) for thing in things]
        self._having: dict[str, list[int]] = defaultdict(list)
        self._called: dict[frozenset[str], list[Titled]] = defaultdict(list)
        for place, (thing, words) in enumerate(self._things):
            self._called[words].append(thing)
            for word in words:
                self._having[word].append(place)

    def closer(self, title: str, ours: str = "", item: str = "") -> Titled | None:
        """The thing that shares the most words with `title`, if it shares more than our own `item`, called `ours`.

        A thing with the very words of `title` is closer than ours if that has others. Where `title` has every word of
        `ours`, only such a thing is: a listing may tell what nobody wrote down when ours was put away.
        """
        wanted, own = words_of(title), words_of(ours)
        if wanted == own:
            return None
        exact = next((thing for thing in self._called.get(wanted, ()) if thing.item != item), None) if wanted else None
        if exact is not None or (own and own <= wanted):
            return exact
        most, best = len(wanted & own), None
        for place in self._sharing(wanted, most):
            thing, words = self._things[place]
            count = len(wanted & words)
            if count > most and thing.item != item:
                most, best = count, thing
        return best

    def _sharing(self, wanted: frozenset[str], most: int) -> list[int]:
        """The places of all things that share more than `most` of these words, among others.

        Each of them has at least one of any `len(wanted) - most` words: the rarest lead to few things.
        """
        rarest = sorted(wanted, key=lambda word: (len(self._having.get(word, ())), word))[: len(wanted) - most]
        return sorted(set(chain.from_iterable(self._having.get(word, ()) for word in rarest)))
