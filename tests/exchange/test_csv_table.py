import csv
import io

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from scanflow.exchange.csv_table import MAX_BROKEN, MAX_BYTES, MAX_COLUMNS, MAX_ROWS, CsvRow, FileError, read_table

ENCODINGS = {
    "utf-8": ("utf-8", b""),
    "utf-8 with byte order mark": ("utf-8", b"\xef\xbb\xbf"),
    "utf-16 little end first": ("utf-16-le", b"\xff\xfe"),
    "utf-16 big end first": ("utf-16-be", b"\xfe\xff"),
}
HEADER = ["number", "reference", "title"]


def written(
    rows: list[list[str]], delimiter: str = ",", lineterminator: str = "\r\n", quoting: int = csv.QUOTE_MINIMAL
):
    """The rows as a program writes them."""
    out = io.StringIO(newline="")
    csv.writer(out, delimiter=delimiter, lineterminator=lineterminator, quoting=quoting).writerows(rows)
    return out.getvalue()


def cells(data: bytes) -> list[tuple[str, ...]]:
    table = read_table(data)
    return [table.headers, *(row.cells for row in table.rows)]


# RFC 4180, section 2: its seven rules and their examples, with cells of ours
@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n", [("aaa", "bbb", "ccc"), ("zzz", "yyy", "xxx")]),  # 1
        ("aaa,bbb,ccc\r\nzzz,yyy,xxx", [("aaa", "bbb", "ccc"), ("zzz", "yyy", "xxx")]),  # 2: no last line break
        ('"aaa","bbb","ccc"\r\nzzz,yyy,xxx', [("aaa", "bbb", "ccc"), ("zzz", "yyy", "xxx")]),  # 5
        ('aaa,b,c\r\n"aaa","b\r\nbb","ccc"\r\n', [("aaa", "b", "c"), ("aaa", "b\r\nbb", "ccc")]),  # 6
        ('a,b,c\r\n"a,a","b""bb",c\r\n', [("a", "b", "c"), ("a,a", 'b"bb', "c")]),  # 6, 7
        ('a,b\r\n"","x"\r\n', [("a", "b"), ("", "x")]),  # 5: a cell may be quoted and empty
        ('a,b\r\n"""x""",""""\r\n', [("a", "b"), ('"x"', '"')]),  # 7: a quote first, last, and alone
        ('a,b\r\n"x\r\n\r\ny",z\r\n', [("a", "b"), ("x\r\n\r\ny", "z")]),  # 6: a blank line inside a cell
        ("a,b\r\nx,\r\n", [("a", "b"), ("x", "")]),  # 4: the last cell is empty, and no comma follows it
        ("a,b\r\n x , y\r\n", [("a", "b"), (" x ", " y")]),  # 4: spaces are part of a cell
        ('a,b\n24" wheel,x\n', [("a", "b"), ('24" wheel', "x")]),  # a quote inside an unquoted cell
        ("a,b\rx,y\rz,w", [("a", "b"), ("x", "y"), ("z", "w")]),  # line ends of old
    ],
)
def test_rfc_4180(text, expected):
    """Quotes, separators and line breaks inside cells are read as RFC 4180 has them."""
    assert expected == cells(text.encode())


@pytest.mark.parametrize("delimiter", [",", ";", "\t"])
@pytest.mark.parametrize("encoding", ENCODINGS)
def test_every_encoding_and_separator(encoding, delimiter):
    """The same table comes out of every encoding and separator."""
    rows = [HEADER, ["1001", "D014-07T", "Sattel, „Leder“; braun\tżółty"], ["1002", "C041", 'Lamp 6"\r\nchrome']]
    name, mark = ENCODINGS[encoding]
    table = read_table(mark + written(rows, delimiter).encode(name))
    assert [tuple(row) for row in rows[1:]] == [row.cells for row in table.rows]
    assert tuple(HEADER) == table.headers


def test_windows_1252():
    """What isn't UTF-8 is read as Windows-1252."""
    table = read_table("number;title\n1;Sättel – 5 €\n".encode("cp1252"))
    assert ("1", "Sättel – 5 €") == table.rows[0].cells


@pytest.mark.parametrize(
    ("text", "delimiter"),
    [
        ("order no;title, size;ref\n1;Lamp, red;D001\n2;Saddle, brown;D002\n", ";"),
        ("number,title\n1,a;b;c;d\n2,a;b;c\n", ","),
        ("number\ttitle\n1\tRim, 36 holes; used\n", "\t"),
        ('"number";"title"\n"1";"a,b"\n"2";"c,d"\n', ";"),
        ('number,title\n1,"a;b\n;;;;\n"\n', ","),
        ('number,title\n1,"never closed\n', ","),
        ("number,reference,title\n1,D001\n2,D002,Lamp,red,old\n3,D003,a\n", ","),
    ],
)
def test_separator(text, delimiter):
    """Other separators inside cells, quoted or not, don't mislead."""
    header = next(csv.reader([text.splitlines()[0]], delimiter=delimiter))
    assert tuple(header) == read_table(text.encode()).headers


@pytest.mark.parametrize("sign", [";", ",", "\t", "|"])
@pytest.mark.parametrize("written", ["sep={}", "SEP={}", '"sep={}"'])
@pytest.mark.parametrize("mark", [b"", b"\xef\xbb\xbf"])
def test_a_first_line_that_names_the_separator(sign, written, mark):
    """`sep=` tells the separator, whatever else would; it is no row, and the header is the second."""
    body = f"{written.format(sign)}\r\nnumber{sign}title\r\n1{sign}a?b?c\r\n".replace("?", "," if sign != "," else ";")
    table = read_table(mark + body.encode())
    expected = (("number", "title"), [3], ())
    assert expected == (table.headers, [row.number for row in table.rows], table.above)


@pytest.mark.parametrize(
    ("above", "wide"),
    [
        ("Orders of the fair", False),
        ("Orders of the fair\n\nmade on Monday", False),
        ("Orders, of the fair", True),
        ("From;2026-11-01\nTo;2026-11-28", True),
        ("Orders of the fair;;;;;", False),
    ],
)
@pytest.mark.parametrize("rows", [2, 5])
def test_title_lines_above_the_header(above, wide, rows):
    """A line with one cell is no header, nor one with two where most rows have five or more; they are kept apart."""
    columns = "number;reference;title;listing;paid" if wide else "number;reference;title"
    body = "1;D014;Lamp;L-1;yes\n" if wide else "1;D014;Lamp, red\n"
    table = read_table(f"{above}\n{columns}\n{body * rows}".encode())
    assert tuple(columns.split(";")) == table.headers
    expected = ([line for line in above.split("\n") if line], rows)
    assert expected == ([";".join(row.cells) for row in table.above], len(table.rows))


def test_a_narrow_header_stays_the_header():
    """A header of two columns is one, though the text of a row has many separators more."""
    table = read_table(b"number,reference\n1,D014,Lamp,red,old,chrome\n2,D015\n3,D016\n")
    expected = ("number", "reference")
    assert expected == table.headers


def test_text_above_a_table_has_an_end():
    """More lines than a title has are no title: the first one is the header, as in a file of one column."""
    table = read_table(("a line\n" * 30 + "number,reference\n1,D014\n").encode())
    expected = ("a line",)
    assert expected == table.headers


def test_rows_are_numbered_as_in_the_file():
    """Rows keep their number among all records: the header is 1, blank rows count though they are left out, and a
    record of several lines is one."""
    table = read_table(b'a,b\n1,"x\ny"\n\n,\n , \n2,z\n')
    expected = [CsvRow(2, ("1", "x\ny")), CsvRow(6, ("2", "z"))]
    assert expected == list(table.rows)


@pytest.mark.parametrize(
    ("broken", "cells_of_it"),
    [('2,"Lamp,D002', ("2", "Lamp", "D002")), ('2,"Lamp" red,D002', ("2", 'Lamp" red', "D002"))],
)
def test_an_open_quote_swallows_no_row(broken, cells_of_it):
    """A row whose quotes are broken is marked, and the rows after it are read as if it weren't there."""
    table = read_table(f'number,title,reference\n1,"a",D001\n{broken}\n3,"Saddle",D003\n4,x,D004\n'.encode())
    expected = [
        CsvRow(2, ("1", "a", "D001")),
        CsvRow(3, cells_of_it, broken=True),
        CsvRow(4, ("3", "Saddle", "D003")),
        CsvRow(5, ("4", "x", "D004")),
    ]
    assert expected == list(table.rows)


def test_broken_quotes_throughout():
    """Where quotes are broken all over, the file is refused rather than guessed at."""
    rows = '1,"x" y\n' * (MAX_BROKEN + 1)
    with pytest.raises(FileError, match="quotation marks"):
        read_table(f"a,b\n{rows}".encode())


@pytest.mark.parametrize(
    ("data", "words"),
    [
        (b"", "is empty"),
        (b"\xef\xbb\xbf", "is empty"),
        (b"\r\n ,\r\n\r\n", "is empty"),
        (b"number,reference\r\n", "no rows"),
        (b"number,reference\r\n,\r\n", "no rows"),
        (b"PK\x03\x04\x14\x00", "save it as CSV"),
        (b"\xd0\xcf\x11\xe0\xa1\xb1", "save it as CSV"),
        (b"%PDF-1.7", "save it as CSV"),
        (b"number,reference\n1,D0\x0001\n", "not a text file"),
        ("number,reference\n1,D001\n".encode("utf-16-le"), "not a text file"),
        (b"\xff\xfe\x00", "not a text file"),
        (b"number\n\xff\x81\n", "not a text file"),
        (b"a\n" + b"x" * MAX_BYTES, "larger than 10 MB"),
        (b"a\n" + b"x\n" * (MAX_ROWS + 1), "more than 50000 rows"),
        (b"a\n1\n" + b"\r\n" * 4_900_000, "more than 50000 rows"),
        (b"a\n" + (b'"' + b"\n" * 1_001 + b'x"\n') * 1_000, "more than 50000 rows"),
    ],
)
def test_files_that_are_no_table(data, words):
    """What can't be read as a table is refused with a sentence that says what it is."""
    with pytest.raises(FileError, match=words):
        read_table(data)


def test_the_limits_are_allowed():
    """A file of exactly as many rows and bytes as allowed is read."""
    most = MAX_ROWS
    assert most == len(read_table(b"a,b\n" + b"x,y\n" * MAX_ROWS).rows)
    data = b"a,b\n" + b"x,y" * 1_000 + b"\n"
    most = 1
    assert most == len(read_table(data + b" " * (MAX_BYTES - len(data))).rows)


TEXT = st.text(st.characters(exclude_categories=["Cs"], exclude_characters="\0"), max_size=12)
LATIN = st.text(st.sampled_from("aZ09 ,;\t\"'\r\n-éß€–"), max_size=12)


@settings(max_examples=300)
@given(
    st.data(),
    st.sampled_from([*ENCODINGS.values(), ("cp1252", b"")]),
    st.sampled_from([",", ";", "\t"]),
    st.sampled_from([("\r\n", csv.QUOTE_MINIMAL), *((end, csv.QUOTE_ALL) for end in ("\r\n", "\n", "\r"))]),
)
def test_what_a_program_writes_comes_back(data, encoding, delimiter, ending):
    """Any cells that a program wrote in any separator, encoding, line end and way of quoting are read as they were."""
    name, mark = encoding
    cell = LATIN if name == "cp1252" else TEXT
    rows = data.draw(st.lists(st.lists(cell, min_size=3, max_size=3).filter(lambda r: any(c.strip() for c in r))))
    rows.append(["1", "é", "x"])
    table = read_table(mark + written([HEADER, *rows], delimiter, *ending).encode(name))
    expected = [CsvRow(number, tuple(row)) for number, row in enumerate(rows, start=2)]
    assert expected == list(table.rows)


@settings(max_examples=500)
@given(st.lists(st.sampled_from([b"a", b"1", b",", b";", b"\t", b'"', b'"', b"\n", b"\r\n", b"\r", b" ", b"\xe9"])))
def test_no_line_disappears(pieces):
    """Whatever the bytes, every line with something in it is inside some row, or the file is refused as a whole."""
    data = b"".join(pieces)
    try:
        table = read_table(data)
    except FileError:
        return
    kept = "".join("".join(row.cells) for row in (*table.above, *table.rows)) + "".join(table.headers)
    for char in "a1é":
        assert data.decode("cp1252").count(char) == kept.count(char)


def test_a_file_of_too_many_columns_is_said():
    """As many columns as are taken are read; one more is an error in words, and quickly, whatever stands below."""
    head = [f"column {number}" for number in range(MAX_COLUMNS)]
    assert head == list(read_table(written([head, head]).encode()).headers)
    with pytest.raises(FileError, match="more than 200 columns"):
        read_table(written([[*head, "one more"], head]).encode())


def test_of_columns_that_are_named_alike_the_first_counts():
    """A cell is looked up by its header without surrounding spaces."""
    table = read_table(b"number , number,title\n1, 2 ,\n")
    assert ["1", "", ""] == [table.cell(table.rows[0], name) for name in ("number", "title", "none")]
