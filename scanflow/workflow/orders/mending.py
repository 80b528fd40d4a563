"""Which rows of an order that comes again put right those that couldn't be read before."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Sequence

from labels import slot_code
from scanflow.domain.life import Hold, LineState
from scanflow.domain.orders.incoming import IncomingLine
from scanflow.domain.things import Line

Way = Callable[[Line | IncomingLine], str]


def by_reference(line: Line | IncomingLine) -> str:
    """The reference, however it is written."""
    return slot_code.compact(line.reference)


def by_title(line: Line | IncomingLine) -> str:
    """The title, whatever its case."""
    return line.title.strip().casefold()


def pairs(lines: Sequence[Line], wanted: Sequence[IncomingLine], last: bool = True) -> dict[int, Line]:
    """The line that each row mends, by the row's place: of the same reference, else the same title, else, where `last`
    says so, the only one that is left for the only row that is left.
    """
    bad = [line for line in lines if line.state is LineState.UNBOUND and line.has(Hold.BAD_ROW)]
    standing = Counter(by_reference(line) for line in lines if line not in bad)
    rows: dict[int, IncomingLine] = {}
    for place, row in enumerate(wanted):
        if standing[by_reference(row)]:
            standing[by_reference(row)] -= 1
        elif row.bad is None:
            rows[place] = row
    found: dict[int, Line] = {}
    for way in (by_reference, by_title):
        _pair(bad, rows, found, way)
    if last and len(bad) == len(rows) == 1:
        found |= dict.fromkeys(rows, bad[0])
    return found


def _pair(bad: list[Line], rows: dict[int, IncomingLine], found: dict[int, Line], way: Way) -> None:
    """Move what is alike by this `way` from `bad` and `rows` to `found`; what says nothing is like nothing."""
    for place, row in list(rows.items()):
        line = next((each for each in bad if way(each) and way(each) == way(row)), None)
        if line is not None:
            bad.remove(line)
            del rows[place]
            found[place] = line
