"""A CSV file as a table of cells: encoding, separator and quotes found out, no row lost.

RFC 4180, and what spreadsheets make of it: UTF-8 with or without byte order mark, UTF-16 with one, else Windows-1252;
comma, semicolon or tab between cells, or what a first line like `sep=|` names; title lines above the header; any line
ends.
"""

import csv
import io
import re
from collections import Counter
from collections.abc import Iterator, Sequence
from contextlib import suppress
from dataclasses import dataclass, field
from itertools import islice

from scanflow.domain.words import units

MAX_BYTES = 10_000_000
MAX_ROWS = 50_000  # below the header, blank ones too
MAX_COLUMNS = 200
MAX_LINES = 20 * MAX_ROWS  # a row has several where its cells hold line breaks
MAX_BROKEN = 20  # rows with broken quotes; with more of them the separator or the file is not what it seems
DELIMITERS = (",", ";", "\t")

_SAMPLE = 200  # records that decide the separator and which of them is the header
_MOST_TITLES = 20  # lines above a header
_NAMED = re.compile(r'"?sep=([^\w\s"]|\t)"?[\r\n]*', re.IGNORECASE)  # first line of some spreadsheets' files
_BOMS = ((b"\xef\xbb\xbf", "utf-8"), (b"\xff\xfe", "utf-16-le"), (b"\xfe\xff", "utf-16-be"))
_OTHER_FILES = (
    (b"PK\x03\x04", "a spreadsheet or a zip file"),
    (b"\xd0\xcf\x11\xe0", "a spreadsheet"),
    (b"%PDF", "a PDF"),
)


class FileError(ValueError):
    """A file that can't be read as a table; the message is a sentence for the person who chose it."""


@dataclass(frozen=True, slots=True)
class CsvRow:
    """A record: `number` is its place in the file, 1 for the first; `broken` where its quotes don't close."""

    number: int
    cells: tuple[str, ...]
    broken: bool = False

    @property
    def blank(self) -> bool:
        return not self.filled

    @property
    def filled(self) -> int:
        """How many of its cells hold something."""
        return sum(bool(cell.strip()) for cell in self.cells)


@dataclass(frozen=True, slots=True)
class CsvTable:
    """`headers` without surrounding spaces; `rows` below the header and `above` it, without wholly blank ones."""

    headers: tuple[str, ...]
    rows: tuple[CsvRow, ...]
    above: tuple[CsvRow, ...] = ()
    _places: dict[str, int] = field(init=False, repr=False, compare=False)

    def __post_init__(self) -> None:
        places = {header: place for place, header in reversed([*enumerate(self.headers)])}
        object.__setattr__(self, "_places", places)

    def cell(self, row: CsvRow, header: str) -> str:
        """The cell under a header, without surrounding spaces; empty where the row or the table is too narrow."""
        index = self._places.get(header, len(row.cells))
        return row.cells[index].strip() if index < len(row.cells) else ""

    def misfit(self, row: CsvRow) -> str:
        """Why the cells of a row may stand under the wrong headers, as a sentence; empty where they do not."""
        if row.broken:
            return "The quotation marks of this row don't close."
        width = len(self.headers)
        if len(row.cells) < width or any(cell.strip() for cell in row.cells[width:]):
            return f"This row has {units(len(row.cells), 'cell')}, the header {units(width, 'column')}."
        return ""


def read_table(data: bytes) -> CsvTable:
    """The table in a file's bytes; FileError where there is none.

    The header is the first record that is neither blank nor a title line, which has one cell, or two where most
    records have five or more.
    """
    if len(data) > MAX_BYTES:
        raise FileError(f"This file is larger than {MAX_BYTES // 1_000_000} MB; split it.")
    text = _decode(data)
    lines = list(islice(io.StringIO(text, newline=""), MAX_LINES + 1))
    named = _NAMED.fullmatch(lines[0]) if lines else None
    delimiter = named[1] if named else _guess_delimiter(lines)
    records = list(islice(_records(lines, delimiter), MAX_ROWS + 2))
    if len(records) > MAX_ROWS + 1 or len(lines) > MAX_LINES:
        raise FileError(f"This file has more than {MAX_ROWS} rows; split it.")
    filled = [row for row in records[1 if named else 0 :] if not row.blank]
    if not filled:
        raise FileError("This file is empty.")
    place = _header_place(filled[:_SAMPLE])
    above, header, rows = filled[:place], filled[place], filled[place + 1 :]
    if len(header.cells) > MAX_COLUMNS:
        raise FileError(f"This file has more than {MAX_COLUMNS} columns; leave out those that are not needed.")
    if not rows:
        raise FileError("This file has a header, but no rows below it.")
    return CsvTable(tuple(cell.strip() for cell in header.cells), tuple(rows), tuple(above))


def _decode(data: bytes) -> str:
    for magic, what in _OTHER_FILES:
        if data.startswith(magic):
            raise FileError(f"This is {what}, not a CSV file; open it and save it as CSV.")
    for bom, encoding in _BOMS:
        if data.startswith(bom):
            candidates, data = [encoding], data[len(bom) :]
            break
    else:
        candidates = ["utf-8", "cp1252"]
    for encoding in candidates:
        try:
            text = data.decode(encoding)
        except UnicodeDecodeError:
            continue
        if "\0" in text:
            break
        return text
    raise FileError("This is not a text file that can be read; save it as CSV in UTF-8.")


def _guess_delimiter(lines: list[str]) -> str:
    """The separator that cuts most records into as many cells, counted in cells; of equals the first. One that cuts
    the first record goes before those for which a title line stands above the header.
    """

    def alike(delimiter: str) -> tuple[bool, float]:
        sample = [CsvRow(0, tuple(cells)) for cells in _sample(lines, delimiter)]
        widths = Counter(len(row.cells) for row in sample if len(row.cells) > 1)
        cells = max((width * count for width, count in widths.items()), default=0)
        return cells >= len(sample) and _header_place(sample) == 0, cells / max(len(sample), 1)

    return max(DELIMITERS, key=alike)


def _header_place(rows: Sequence[CsvRow]) -> int:
    """The place of the header among records that aren't blank; 0 where too many would stand above it."""
    filled = Counter(row.filled for row in rows)
    usual = max(filled, key=lambda count: (filled[count], count), default=0)
    titles = 2 if usual >= 5 and filled[usual] > 1 else 1
    place = next((place for place, row in enumerate(rows) if row.filled > titles), 0)
    return place if place <= _MOST_TITLES else 0


def _sample(lines: list[str], delimiter: str) -> list[list[str]]:
    reader = csv.reader(lines, delimiter=delimiter)
    sample: list[list[str]] = []
    with suppress(csv.Error):  # a quote that never closes: what came before it decides
        sample.extend(cells for cells in islice(reader, _SAMPLE) if any(cell.strip() for cell in cells))
    return sample


def _records(lines: list[str], delimiter: str) -> Iterator[CsvRow]:
    """Every record of the file, blank ones too. Where quotes break, the line that began the record is taken as it
    stands, so that a quote left open doesn't swallow the rows below it.
    """
    number, start, broken = 0, 0, 0
    while start < len(lines):
        reader = csv.reader(islice(lines, start, None), delimiter=delimiter, strict=True)
        begin = start
        try:
            for cells in reader:
                number += 1
                start = begin + reader.line_num
                yield CsvRow(number, tuple(cells))
        except csv.Error:
            number, broken = number + 1, broken + 1
            if broken > MAX_BROKEN:
                message = f"The quotation marks of more than {MAX_BROKEN} rows don't close, the last in row {number}."
                raise FileError(message) from None
            yield CsvRow(number, tuple(cell.strip('"') for cell in lines[start].rstrip("\r\n").split(delimiter)), True)
            start += 1
