"""The card texts that exist: what a label whose bars can't be decoded may be matched against."""

from __future__ import annotations

import hashlib
import json
from collections.abc import Iterable
from dataclasses import dataclass, field


@dataclass(frozen=True, init=False)
class Book:
    """Card texts, each once and sorted, so that two books of the same texts are equal; ``digest`` names the content.

    It must hold every card ever printed or adopted, retired ones too: a card that is missing here can look like one
    that is not. ValueError for a text that Code 128 can't carry.

    >>> Book(["D0145", "A0018", "D0145"]).texts
    ('A0018', 'D0145')
    """

    texts: tuple[str, ...] = field(repr=False, hash=False)
    digest: str

    def __init__(self, texts: Iterable[str]) -> None:
        unique = tuple(sorted(set(texts)))
        for text in unique:
            if not text or not text.isascii():
                raise ValueError(f"“{text}” can't be on a card: Code 128 holds one or more ASCII characters.")
        object.__setattr__(self, "texts", unique)
        object.__setattr__(self, "digest", hashlib.sha256(json.dumps(unique).encode()).hexdigest())

    def __len__(self) -> int:
        return len(self.texts)
