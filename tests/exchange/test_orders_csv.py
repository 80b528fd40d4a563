import csv
import io
from datetime import date
from time import process_time

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from scanflow.domain.orders.incoming import IncomingLine, IncomingOrder
from scanflow.domain.orders.loaded import RefusedRow
from scanflow.exchange.csv_table import MAX_ROWS, CsvTable, FileError, read_table
from scanflow.exchange.dates import DateOrder
from scanflow.exchange.mapping import ColumnMapping, MappingError, guess, missing
from scanflow.exchange.orders_csv import Parsed, orders

COLUMNS = ("number", "channel", "ordered_at", "ship_by", "reference", "title", "listing")
HEADER = ",".join(COLUMNS)
CANONICAL = ColumnMapping({name: name for name in COLUMNS})

SAMPLE = [
    ["1001", "web", "2026-11-03", "2026-11-05", "D014-07T", "Derailleur, long cage", "L-1"],
    ["1002", "web", "2026-11-03 14:05", "", "C041", 'Saddle "touring"\r\nbrown', ""],
    ["1001", "web", "2026-11-04", "", "D001", "Chain tool", "L-2"],
    ["1001", "fair", "", "", "W999", "Wheel 26”", ""],
]
SAMPLE_ORDERS = (
    IncomingOrder(
        "1001",
        "web",
        "2026-11-03",
        "2026-11-05",
        (IncomingLine("D014-07T", "Derailleur, long cage", "L-1"), IncomingLine("D001", "Chain tool", "L-2")),
    ),
    IncomingOrder("1002", "web", "2026-11-03T14:05:00", None, (IncomingLine("C041", 'Saddle "touring"\r\nbrown'),)),
    IncomingOrder("1001", "fair", lines=(IncomingLine("W999", "Wheel 26”"),)),
)


def parsed(body: str, header: str = HEADER, mapping: ColumnMapping | None = None) -> Parsed:
    table = read_table(f"{header}\n{body}".encode())
    return orders(table, mapping or guess(table))


def written(rows: list[list[str]], delimiter: str, encoding: str) -> bytes:
    out = io.StringIO(newline="")
    csv.writer(out, delimiter=delimiter).writerows([COLUMNS, *rows])
    return out.getvalue().encode(encoding)


def accounted(found: Parsed) -> list[int]:
    """The numbers of all rows that are lines, say the same as one, or are refused."""
    same = [warning.row for warning in found.warnings if warning.code == "same_row"]
    return sorted([*(row for rows in found.rows.values() for row in rows), *(row.row for row in found.refused), *same])


@pytest.mark.parametrize("delimiter", [",", ";", "\t"])
@pytest.mark.parametrize("encoding", ["utf-8", "utf-8-sig", "utf-16", "cp1252"])
def test_the_same_orders_from_every_kind_of_file(encoding, delimiter):
    """Rows of one channel and number are one order, in the order of the file, whatever the file's make."""
    table = read_table(written(SAMPLE, delimiter, encoding))
    rows = {("web", "1001"): (2, 4), ("web", "1002"): (3,), ("fair", "1001"): (5,)}
    expected = Parsed(SAMPLE_ORDERS, (), rows)
    assert expected == orders(table, guess(table))


@pytest.mark.parametrize(
    ("row", "bad", "reference"),
    [
        ("1001,,,,,Lamp,", "This row has no reference.", ""),
        ("1001,,,,D014,Lamp, red,L-1", "This row has 8 cells, the header 7 columns.", "D014"),
        ("1001,,,,D014", "This row has 5 cells, the header 7 columns.", "D014"),
        ('1001,,,,D014,"Lamp,', "The quotation marks of this row don't close.", "D014"),
        (f"1001,,,,D014,{'x' * 501},", "Title has at most 500 characters.", "D014"),
        (f"1001,,,,D014,Lamp,{'x' * 201}", "Listing has at most 200 characters.", "D014"),
    ],
)
def test_a_row_that_cannot_be_read_is_a_bad_line_of_its_order(row, bad, reference):
    """The row stays with its order, with the reason, and the other rows are as they would be without it."""
    found = parsed(f"1001,,,,C041,Saddle,\n{row}\n1001,,2026-11-03,,D001,,\n")
    first, line, last = found.orders[0].lines
    assert (bad, reference) == (line.bad, line.reference)
    expected = (IncomingLine("C041", "Saddle"), IncomingLine("D001"))
    assert expected == (first, last)
    expected = ("2026-11-03", None)
    assert expected == (found.orders[0].ordered_at, found.orders[0].ship_by)


def test_blank_cells_beyond_the_header_do_no_harm():
    """Separators that a spreadsheet leaves at the end of a row don't make it bad."""
    expected = (IncomingLine("D014", "Lamp", "L-1"),)
    assert expected == parsed("1001,,,,D014,Lamp,L-1,, ,\n").orders[0].lines


@pytest.mark.parametrize(
    ("row", "code"),
    [(",web,,,D014,Lamp,", "no_number"), ('"10\n01",,,,D014,,', None), (f"{'9' * 101},,,,D014,,", "bad_number")],
)
def test_a_row_without_a_number_is_listed(row, code):
    """A row that belongs to no order is refused with its number in the file, a code and what it says."""
    found = parsed(f"1001,,,,C041,,\n{row}\n\n,,,,,,\n1002,,,,D001,,\n")
    assert ([] if code is None else [(3, code)]) == [(refused.row, refused.code) for refused in found.refused]
    assert all("D014" in refused.text for refused in found.refused)
    expected = [2, 3, 6]
    assert expected == accounted(found)


def test_only_what_is_mapped_is_told():
    """The text of a refused row holds nothing of the columns that nobody asked for, as they may be a buyer's."""
    found = parsed(",D014,12 Elm Street\n", "number,reference,address")
    expected = (RefusedRow(2, "no_number", "This row has no order number: D014"),)
    assert expected == found.refused


def test_the_first_date_that_is_given_counts():
    """Of an order's dates the first in the file counts, per date; blank cells don't."""
    found = parsed("1,,,2026-11-09,D001,,\n1,,2026-11-03,2026-11-08,D002,,\n1,,2026-11-02,,D003,,\n")
    expected = ("2026-11-03", "2026-11-09")
    assert expected == (found.orders[0].ordered_at, found.orders[0].ship_by)


def test_one_date_decides_for_the_file():
    """A date that can be read one way only decides the order of day and month of all, unless the mapping says it."""
    rows = "1,,01/02/2026,,D001,,\n2,,,25/11/2026,D002,,\n"
    expected = "2026-02-01"
    assert expected == parsed(rows).orders[0].ordered_at
    told = parsed(rows, mapping=ColumnMapping(CANONICAL.columns, DateOrder.MONTH_FIRST))
    expected = ("2026-01-02", None)
    assert expected == (told.orders[0].ordered_at, told.orders[1].ship_by)
    expected = "“25/11/2026” can't be read as a date. The row is taken without it."
    assert expected == told.warnings[0].text
    expected = ("Row 3 proves it", "Row 3 speaks against it")
    assert expected == tuple(
        words for words, each in zip(expected, (parsed(rows), told), strict=True) if words in each.dates
    )


@pytest.mark.parametrize("ordered", ["soon", "9999-12-31", "2026-02-30", "2026-11-03 10:30 IST"])
def test_a_date_that_cannot_be_read_warns_and_never_holds(ordered):
    """The line is taken as it would be with the date left out; the row is listed, and another row may give the date."""
    found = parsed(f"1001,,{ordered},2026-11-05,D014,Lamp,\n1001,,2026-11-03,,D001,,\n")
    lines = (IncomingLine("D014", "Lamp"), IncomingLine("D001"))
    expected = (IncomingOrder("1001", "", "2026-11-03", "2026-11-05", lines),)
    assert expected == found.orders
    expected = (RefusedRow(2, "bad_time", f"“{ordered}” can't be read as a date. The row is taken without it."),)
    assert expected == found.warnings


@pytest.mark.parametrize("row", ["5 rows", "1001", "Total,,,,,,", "Sum,web,,,,,"])
def test_what_asks_for_nothing_is_no_order(row):
    """A row with a number alone is a count or a sum below the rows: it is refused, and makes no order."""
    found = parsed(f"1001,,,,C041,Saddle,\n{row}\n")
    expected = [(3, "no_order")]
    assert expected == [(refused.row, refused.code) for refused in found.refused]
    expected = (IncomingOrder("1001", lines=(IncomingLine("C041", "Saddle"),)),)
    assert expected == found.orders


def test_a_sum_of_quantities_is_no_order():
    """A sum below the column of quantities asks for nothing either."""
    found = parsed("1001,C041,1\nTotal,,1\n", "number,reference,quantity")
    expected = ([(3, "no_order")], 1)
    assert expected == ([(refused.row, refused.code) for refused in found.refused], len(found.orders))


def test_lines_above_the_header_are_told():
    """A title line and `sep=` make no order; the title is listed, and rows keep their numbers in the file."""
    data = f"sep=;\nOrders of the fair\n\n{HEADER.replace(',', ';')}\n1001;;;;C041;Saddle;\n".encode()
    table = read_table(data)
    found = orders(table, guess(table))
    expected = (RefusedRow(2, "above_header", "This line stands above the header: Orders of the fair"),)
    assert expected == found.warnings
    expected = {("", "1001"): (5,)}
    assert expected == found.rows


def test_a_row_twice_counts_once():
    """The same row again makes no second line, whatever columns that nobody asked for say; it is listed."""
    header = f"{HEADER},paid"
    found = parsed("1,,,,C041,Saddle,,a\n1,,,,D001,,,\n1,,,,C041,Saddle,,b\n2,,,,C041,Saddle,,\n", header)
    expected = (RefusedRow(4, "same_row", "This row says the same as row 2. It counts once."),)
    assert expected == found.warnings
    expected = {("", "1"): (2, 3), ("", "2"): (5,)}
    assert expected == found.rows


@pytest.mark.parametrize("other", ["1,,,,C041,Lamp,", "1,,2026-11-03,,C041,Saddle,", "1,,,,c041,Saddle,"])
def test_a_row_that_says_something_else_is_a_line(other):
    """Rows of one reference that differ in anything are lines each: a person is to look at them."""
    found = parsed(f"1,,,,C041,Saddle,\n{other}\n")
    expected = ({("", "1"): (2, 3)}, ())
    assert expected == (found.rows, found.warnings)


def test_bad_rows_are_lines_however_alike():
    """Of rows without a reference nobody knows whether they mean one thing: each is a line."""
    found = parsed("1,,,,,Saddle,\n1,,,,,Saddle,\n")
    expected = 2
    assert expected == len(found.orders[0].lines)


@pytest.mark.parametrize(
    ("cell", "expected"),
    [
        *(("", ""), ("1", ""), ("1.0", ""), ("1,00", ""), ("01", ""), ("2", "2"), ("2.00", "2"), ("0", "0")),
        *(("1,000", "1,000"), ("1.5", "1.5"), ("two", "two"), ("-1", "-1")),
    ],
)
def test_quantities(cell, expected):
    """One is nothing to be told of; any other quantity is, as it is written, and makes no bad row."""
    line = parsed(f'7,D014,"{cell}"\n', "number,reference,qty").orders[0].lines[0]
    assert (expected, None) == (line.quantity, line.bad)


def test_spaces_around_numbers():
    """Spaces around and inside a number make no other order."""
    found = parsed(" 10  01 ,web,,,D001,,\n10 01, web ,,,D002,,\n")
    expected = [("web", "10 01")]
    assert expected == list(found.rows)


@pytest.mark.parametrize(
    ("columns", "words"),
    [
        ({"number": "number"}, "No column holds the reference"),
        ({"number": "number", "reference": "SKU"}, "no column 'SKU'"),
    ],
)
def test_a_mapping_that_does_not_fit(columns, words):
    """A mapping without a required column, or with one that the file lacks, is refused as a whole."""
    with pytest.raises(MappingError, match=words):
        parsed("1001,,,,D014,,\n", mapping=ColumnMapping(columns))


CELL = st.text(st.characters(exclude_categories=["Cs"], exclude_characters="\0"), max_size=10).map(str.strip)
NUMBER = st.text("0123456789AB-", min_size=1, max_size=6)
LINE = st.builds(IncomingLine, CELL.map(lambda cell: cell or "D014"), CELL, CELL)
DATE = st.none() | st.dates(date(2000, 1, 1), date(2199, 12, 31)).map(str)


@settings(max_examples=200)
@given(
    st.dictionaries(
        st.tuples(NUMBER, NUMBER),
        st.tuples(DATE, DATE, st.lists(LINE, min_size=1, max_size=4, unique=True)),
        min_size=1,
    ),
    st.sampled_from([",", ";", "\t"]),
    st.sampled_from(["utf-8", "utf-8-sig", "utf-16"]),
)
def test_any_orders_come_back(wanted, delimiter, encoding):
    """Orders that a program wrote into a file are read back equal."""
    expected = tuple(
        IncomingOrder(number, channel, ordered_at, ship_by, tuple(lines))
        for (channel, number), (ordered_at, ship_by, lines) in wanted.items()
    )
    rows = [
        [
            order.number,
            order.channel,
            order.ordered_at or "",
            order.ship_by or "",
            line.reference,
            line.title,
            line.listing,
        ]
        for order in expected
        for line in order.lines
    ]
    assert expected == orders(read_table(written(rows, delimiter, encoding)), CANONICAL).orders


GARBAGE = st.lists(st.sampled_from([*b'1D4,,,;\t"""\n\n\r ', 0xE9, 0xC3]), max_size=80).map(bytes) | st.binary(
    max_size=80
)


@settings(max_examples=500)
@given(GARBAGE)
def test_every_row_is_accounted_for(garbage):
    """Whatever the bytes below the header, every row that isn't blank is one line of an order, or is listed."""
    try:
        table = read_table(HEADER.encode() + b"\n" + garbage)
    except FileError:
        return
    found = orders(table, CANONICAL)
    assert [row.number for row in table.rows] == accounted(found)
    same = sum(warning.code == "same_row" for warning in found.warnings)
    assert len(table.rows) == sum(len(order.lines) for order in found.orders) + len(found.refused) + same


@settings(max_examples=200)
@given(st.binary(max_size=200))
def test_any_file_at_all(data):
    """Any bytes are a table or an error with a sentence, and guessing never fails."""
    try:
        table = read_table(data)
    except FileError:
        return
    assert isinstance(table, CsvTable)
    mapping = guess(table)
    if not missing(mapping, table.headers):
        assert [row.number for row in table.rows] == accounted(orders(table, mapping))


def test_the_largest_file_is_read_in_seconds():
    """As many rows as allowed, with dates and quotes, take less than the patience of a person at a page."""
    row = '{0},web,11/{1:02}/2026,2026-12-01 10:00,D{2:03}-07T,"Lamp, chrome; ""old""",L-{0}\r\n'
    body = "".join(row.format(number // 2, number % 28 + 1, number % 1000) for number in range(MAX_ROWS))
    begin = process_time()
    found = parsed(body)
    assert [*range(2, MAX_ROWS + 2)] == accounted(found)
    assert process_time() - begin < 20  # takes about 1 s; a quadratic step would take minutes
