"""Code 128 (ISO/IEC 15417) with python-barcode's tables, always of minimal length.

python-barcode's own choice of code sets is one symbol too long for an odd count of digits, so the sets are chosen here.
"""

from functools import lru_cache
from itertools import groupby

from barcode.charsets import code128 as tables

QUIET = 10  # modules of white each side, ISO/IEC 15417 4.2; GS1 General Specifications 5.4.4
_STOP = 106
_SHIFT = 98
_LATCH = {"A": 101, "B": 100, "C": 99}
_CHARACTERS: dict[str, dict[str, int]] = {"A": tables.A, "B": tables.B}
PATTERNS: tuple[str, ...] = (*tables.CODES, tables.STOP + "11")
"""Modules of each symbol character value 0 to 106, bars as 1."""

_Symbols = tuple[int, ...]


def values(text: str) -> _Symbols:
    """Symbol character values: start, data with shifts and latches, check, stop.

    ValueError for an empty text or a character outside ASCII 0-127.

    >>> values("D0145")
    (104, 36, 99, 1, 45, 6, 106)
    """
    if not text or not text.isascii():
        raise ValueError(f"Code 128 holds one or more ASCII characters, not {text!r}")
    symbols = _shortest(text)
    return (*symbols, check_value(symbols), _STOP)


def check_value(symbols: _Symbols) -> int:
    """Symbol check character of start and data, weighted 1, 1, 2, 3 ... modulo 103 (ISO/IEC 15417 Annex A)."""
    return (symbols[0] + sum(weight * value for weight, value in enumerate(symbols))) % 103


@lru_cache(maxsize=256)
def widths(text: str) -> tuple[int, ...]:
    """Widths in modules of bar, space, bar ... from the first bar to the last."""
    return runs("".join(PATTERNS[value] for value in values(text)))


def runs(bits: str) -> tuple[int, ...]:
    """Widths in modules of the elements of such a pattern."""
    return tuple(len(list(run)) for _, run in groupby(bits))


def modules(text: str) -> int:
    """Length of the symbol in modules without its quiet zones.

    >>> modules("D0145"), modules("LP072")
    (79, 90)
    """
    return sum(widths(text))


def _shortest(text: str) -> _Symbols:
    """Start and data of least count: `best[i][s]` is the shortest way to have said text[:i] and stand in code set s.

    Between equals the way found first stays, code set B before C before A.
    """
    best: list[dict[str, _Symbols]] = [{} for _ in range(len(text) + 1)]
    best[0] = {code_set: (tables.START_CODES[code_set],) for code_set in "BCA"}
    for at, ways in enumerate(best):
        for code_set, way in list(ways.items()):
            for other, latch in _LATCH.items():
                if other != code_set:
                    _offer(ways, other, (*way, latch))
        for code_set, way in ways.items():
            for count, symbols in _steps(text[at : at + 2], code_set):
                _offer(best[at + count], code_set, way + symbols)
    return min((best[-1][code_set] for code_set in "BCA" if code_set in best[-1]), key=len)


def _offer(ways: dict[str, _Symbols], code_set: str, way: _Symbols) -> None:
    if code_set not in ways or len(way) < len(ways[code_set]):
        ways[code_set] = way


def _steps(ahead: str, code_set: str) -> list[tuple[int, _Symbols]]:
    """(characters said, symbols) of each way to go on inside a code set; `ahead` is the next two characters."""
    if code_set == "C":
        return [(2, (int(ahead),))] if len(ahead) == 2 and ahead.isdigit() else []
    steps: list[tuple[int, _Symbols]] = []
    char = ahead[:1]
    other = "B" if code_set == "A" else "A"
    if char in _CHARACTERS[code_set]:
        steps.append((1, (_CHARACTERS[code_set][char],)))
    elif char in _CHARACTERS[other]:
        steps.append((1, (_SHIFT, _CHARACTERS[other][char])))
    return steps
