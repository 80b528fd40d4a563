"""Which passwords are refused (OWASP ASVS 5.0.0, section 6.2), and how they are compared."""

from __future__ import annotations

import threading
import time
import tomllib
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

import pytest

from scanflow.storage.access import passwords
from scanflow.storage.access.passwords import WeakPassword, check_new

HOUSE = Path(__file__).parents[3]
SHOP = "Anna's spare wheels"


@pytest.mark.parametrize(
    "password",
    [
        *("", "seven-7", "password", "PassWord", "12345678", "qwertyuiop", "iloveyou"),  # 6.2.1, 6.2.4
        *("        ", "aaaaaaaa", "AaAaAaAa", "77777777", "\t \t \t \t "),
        *("scanflow", "Scanfl0w2026", "scanflow-scanflow", "ownerowner", "annas spare wheels"),  # 6.2.11
        *("AnnasSpareWheels1", "sparewheels!", "5pareWheels", "stockroom99"),
    ],
)
def test_refused(password: str) -> None:
    """Short ones, the most common ones, one character repeated, and the names of shop and program with additions."""
    with pytest.raises(WeakPassword, match=r"\w+\.?$"):
        check_new(password, SHOP)


@pytest.mark.parametrize(
    "password",
    [
        *("lowercaseletters", "59281734", "!!??!!??", "пароль без цифр", "🚲🚲🚲🚲🛠🛠🛠🛠"),  # 6.2.5
        *("four words of mine", " leading and trailing ", "w" * 63 + "W!", "ab" * 500),  # 6.2.8, 6.2.9
    ],
)
def test_taken(password: str) -> None:
    """Eight characters or more of any kind, with no rule for what must be among them, up to a thousand."""
    check_new(password, SHOP)


def test_common_passwords_that_fit_the_rule() -> None:
    """At least 3,000 of them have eight characters or more (6.2.4), and the file ships with its licence."""
    assert len(passwords.common()) >= 3000
    assert {True} == {
        len(each) >= passwords.SHORTEST_PASSWORD and each == each.casefold() for each in passwords.common()
    }
    data = tomllib.loads((HOUSE / "pyproject.toml").read_text())["tool"]["setuptools"]["package-data"]
    shipped = {
        each.name for glob in data["scanflow.storage.access"] for each in (HOUSE / "scanflow/storage/access").glob(glob)
    }
    assert {"common_passwords.txt.gz", "common_passwords.LICENSE.txt"} == shipped


def test_compared_as_it_came() -> None:
    """Every character counts to the last, in its case, with the spaces around it (6.2.8)."""
    kept = passwords.hashed("a" * 100 + "b ")
    tries = ["a" * 100 + "b ", "a" * 100 + "b", "a" * 100 + "B ", "a" * 100 + "c ", "a" * 72]
    assert [True, False, False, False, False] == [passwords.matches(kept, each) for each in tries]


def test_few_at_a_time(monkeypatch: pytest.MonkeyPatch) -> None:
    """However many are compared at once, two are hashed at a time, and all get their answer."""
    kept, real, lock = passwords.hashed("the right one"), passwords.PASSWORDS, threading.Lock()
    running, most = 0, 0

    class Watched:
        def verify(self, hashed: str, password: str) -> bool:
            nonlocal running, most
            with lock:
                running += 1
                most = max(most, running)
            time.sleep(0.01)
            try:
                return real.verify(hashed, password)
            finally:
                with lock:
                    running -= 1

    monkeypatch.setattr(passwords, "PASSWORDS", Watched())
    with ThreadPoolExecutor(10) as threads:
        answers = list(threads.map(lambda n: passwords.matches(kept, "the right one" if n % 2 else "x"), range(10)))
    assert (5, 2) == (sum(answers), most)
