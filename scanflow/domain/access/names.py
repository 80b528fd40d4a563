"""Names of tokens and devices, as the ledger says them: none passes for the owner, the house, or another name."""

from __future__ import annotations

import unicodedata

LONGEST_NAME = 40

SINGLE = "owner"
FAMILY = "scanflow"
"""Who acts without a token or a device: the owner, and the house with its commands (`scanflow orders`)."""

_LOOKS_LIKE = str.maketrans("01i|!3@45$", "olllleaass")
"""Figures and signs that pass for letters."""

_WITH_ANY = frozenset({"CJK", "HIRAGANA", "KATAKANA", "HANGUL"})
"""Scripts that are written beside Latin letters and look like none of them."""


class BadName(Exception):
    """Nothing may have this name; the words say why, and what to do."""


class NameTaken(BadName):
    """Something else has the name, or one that is the same but for case, spaces or form of letters."""

    def __init__(self, name: str) -> None:
        super().__init__(f"The name {name} is taken. Choose another name.")


def fit(name: str) -> str:
    """A name as it is kept: one line, single spaces, composed (Unicode NFC). `BadName`, `NameTaken` for one that only
    the owner or the house has.

    >>> fit("  Blue\\tphone ")
    'Blue phone'
    >>> fit("Owner")
    Traceback (most recent call last):
    NameTaken: The name Owner is taken. Choose another name.
    """
    kept = unicodedata.normalize("NFC", " ".join(name.split()))
    if not 1 <= len(kept) <= LONGEST_NAME:
        raise BadName(f"Write a name of at most {LONGEST_NAME} characters.")
    if not kept.isprintable():  # control, format and direction characters, surrogates, private use
        raise BadName("This name has characters that can't be seen. Write it with letters and figures.")
    if len(_scripts(kept)) > 1:
        raise BadName("This name mixes letters of several scripts, which look alike. Write it in one of them.")
    skeleton = _skeleton(kept)
    if not skeleton:
        raise BadName("Write a name with letters or figures.")
    if skeleton == SINGLE or skeleton.startswith(FAMILY):
        raise NameTaken(kept)
    return kept


def key(name: str) -> str:
    """What two names that are the same have alike.

    >>> key("Blue Phone") == key("blue  phone") == key("ｂlue phone")
    True
    """
    return " ".join(unicodedata.normalize("NFKC", name).casefold().split())


def _scripts(name: str) -> set[str]:
    """The scripts of its letters, as their Unicode names begin. NFKC first: wide and styled letters are plain ones."""
    letters = (each for each in unicodedata.normalize("NFKC", name) if unicodedata.category(each) in ("Lu", "Ll", "Lo"))
    return {unicodedata.name(each, "?").split()[0] for each in letters} - _WITH_ANY


def _skeleton(name: str) -> str:
    """Its letters and figures as they look at a glance, without marks."""
    plain = unicodedata.normalize("NFKD", name).casefold()
    return "".join(each for each in plain.translate(_LOOKS_LIKE) if each.isalnum()).replace("vv", "w")
