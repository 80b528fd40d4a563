"""The owner's password: which ones are refused, and how one is kept and compared.

The rules are those of OWASP ASVS 5.0.0, section 6.2: at least eight characters (6.2.1), as many as one likes up to
`LONGEST` (6.2.9), of any kind (6.2.5), compared as they came (6.2.8); neither one of the most common passwords (6.2.4)
nor made of words that everybody here knows (6.2.11).
"""

from __future__ import annotations

import gzip
import re
import threading
from collections.abc import Iterable
from functools import cache
from importlib.resources import files

from argon2 import PasswordHasher
from argon2.exceptions import VerifyMismatchError

SHORTEST_PASSWORD = 8
LONGEST = 1000

WORDS = ("scanflow", "owner", "password", "passwort", "stockroom", "admin")
"""What everybody knows of any shop (6.1.2); its own name comes with it."""

ADVICE = "Choose another one, such as four words that don't belong together."

AT_ONCE = 2
"""Passwords that are hashed at a time, of 19 MiB each: more of them wait."""

PASSWORDS = PasswordHasher(time_cost=2, memory_cost=19456, parallelism=1)
"""Argon2id with OWASP's least settings."""

_turn = threading.BoundedSemaphore(AT_ONCE)
_FIGURES = str.maketrans("0134578@$!", "oieastbasi")


class WeakPassword(Exception):
    """The password is refused; the words say why, and what to do."""


def hashed(password: str) -> str:
    """What is kept of a password."""
    with _turn:
        return PASSWORDS.hash(password)


def matches(kept: str, password: str) -> bool:
    """Whether a password is the one that is kept as this hash."""
    try:
        with _turn:
            return PASSWORDS.verify(kept, password)
    except VerifyMismatchError:
        return False


def check_new(password: str, shop: str) -> None:
    """`WeakPassword` if nobody should have this password in a shop of this name."""
    if len(password) < SHORTEST_PASSWORD:
        raise WeakPassword(f"A password has at least {SHORTEST_PASSWORD} characters. Write a longer one.")
    if len(password) > LONGEST:
        raise WeakPassword(f"A password has at most {LONGEST} characters. Write a shorter one.")
    if len(set(password.casefold())) == 1 or not password.strip():
        raise WeakPassword(f"This password repeats one character. {ADVICE}")
    if password.casefold() in common():
        raise WeakPassword(f"This is one of the most common passwords. {ADVICE}")
    if _made_of(password, (*WORDS, shop, *re.findall(r"\w{3,}", shop))):
        raise WeakPassword(f"This password is a name that everybody here knows. {ADVICE}")


@cache
def common() -> frozenset[str]:
    """The most common passwords of eight characters or more, in lower case: `common_passwords.LICENSE.txt`."""
    kept = files("scanflow.storage.access").joinpath("common_passwords.txt.gz").read_bytes()
    return frozenset(gzip.decompress(kept).decode().splitlines())


def _made_of(password: str, words: Iterable[str]) -> bool:
    """Whether its letters, also where figures stand for some, are these words and nothing else."""
    known = {_letters(each) for each in words} - {""}
    plain = password.casefold()
    bare = (re.sub(around, "", plain) for around in (r"[\W\d_]+$", r"^[\W\d_]+|[\W\d_]+$"))
    return any(_is_made_of(_letters(each), known) for each in (plain, *(each.translate(_FIGURES) for each in bare)))


def _is_made_of(letters: str, words: Iterable[str]) -> bool:
    ends = {0}
    for at in range(len(letters)):
        if at in ends:
            ends |= {at + len(word) for word in words if letters.startswith(word, at)}
    return letters != "" and len(letters) in ends


def _letters(text: str) -> str:
    return "".join(each for each in text.casefold() if each.isalpha())
