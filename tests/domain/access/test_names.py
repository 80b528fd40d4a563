"""No name in the ledger passes for the owner's, the house's, or another one."""

from __future__ import annotations

import doctest

import pytest

from scanflow.domain.access import names
from scanflow.domain.access.names import BadName, NameTaken

LOOKALIKES = [
    "owner",
    "OWNER",
    "0wner",
    "O w n e r",
    "ówner",
    "ｏｗｎｅｒ",
    "ovvner",
    "Owner.",
    "scanflow",
    "scanflow orders",
]


@pytest.mark.parametrize("name", [*LOOKALIKES, "Scanf1ow", "scanfIow", "\N{MATHEMATICAL BOLD SMALL O}wner"])
def test_nobody_is_called_like_the_owner_or_the_house(name: str) -> None:
    """In no case, width, spacing, with no marks and no figures that look like letters."""
    with pytest.raises(NameTaken):
        names.fit(name)


@pytest.mark.parametrize(
    "name",
    [
        *("", " \t", "??", "x" * 41, "blue\x00phone", "blue\u200bphone", "\u202eenohp", "\ud800"),
        *("\N{CYRILLIC SMALL LETTER O}wner", "\N{GREEK SMALL LETTER OMICRON}wner", "\N{ARMENIAN SMALL LETTER OH}wner"),
    ],
)
def test_a_name_can_be_read(name: str) -> None:
    """Empty ones, signs alone, long ones, unseen characters and letters of several scripts are refused in words."""
    with pytest.raises(BadName, match=r"\w+\. ?"):
        names.fit(name)


@pytest.mark.parametrize(
    "name", ["Blue phone", "Anna’s phone", "Телефон 2", "Αθήνα", "李 phone", "ñandú", "Owner's phone", "iPhone"]
)
def test_ordinary_names(name: str) -> None:
    """Names of one script, with marks, figures and signs, are kept as they are written."""
    assert name == names.fit(name)


def test_composed() -> None:
    """A letter and its mark are kept as one character, so that the same name is the same text."""
    assert "ñ" == names.fit("n\N{COMBINING TILDE}")


def test_doctests() -> None:
    assert doctest.testmod(names, optionflags=doctest.IGNORE_EXCEPTION_DETAIL).failed == 0
