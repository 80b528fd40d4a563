"""What a channel offers comes as a file whose columns are guessed."""

from __future__ import annotations

import pytest

from scanflow.domain.offered import OfferedRow
from scanflow.exchange import csv_table, listings_csv
from scanflow.workflow.ports import Invalid


@pytest.mark.parametrize(
    "header", ["reference,listing id,title", "SKU;Item number;Title", "stock number\tlisting no\titem title"]
)
def test_columns_are_guessed_by_the_trades_words(header: str) -> None:
    """Whatever stands between the cells."""
    mark = next(each for each in ",;\t" if each in header)
    file = f"{header}\r\n{mark.join(('D001-019', 'L-1', 'Saddle'))}\r\n".encode()
    assert (OfferedRow(2, "D001-019", "L-1", "Saddle"),) == listings_csv.read(file)


def test_references_are_found_by_their_cells() -> None:
    """A column with a name of its own is taken where most of its cells are references."""
    file = b"Label,Listing\nD001-019,L-1\nD002-011,L-2\n"
    assert ["D001-019", "D002-011"] == [row.reference for row in listings_csv.read(file)]


def test_a_row_that_cannot_be_read_says_why() -> None:
    """Its cells may stand under the wrong headers, or an id is longer than any."""
    rows = listings_csv.read(f"reference,listing\nD001-019\nD001-019,{'x' * 201}\nD001-019,L-1\n".encode())
    assert ["This row has 1 cell, the header 2 columns.", "Listing id has at most 200 characters.", ""] == [
        row.bad for row in rows
    ]


@pytest.mark.parametrize(
    ("file", "code"), [(b"", "bad_file"), (b"PK\x03\x04", "bad_file"), (b"colour,size\nred,9\n", "bad_columns")]
)
def test_a_file_that_names_no_thing_is_refused(file: bytes, code: str) -> None:
    """Neither its references nor its ids have a column, or it is no table."""
    with pytest.raises(Invalid) as refused:
        listings_csv.read(file)
    assert ("/file", code) == (refused.value.pointer, refused.value.code)


def test_one_of_the_two_is_enough() -> None:
    """A file may have references alone, or ids alone."""
    for header, fits in (("reference", True), ("listing id", True), ("title", False)):
        table = csv_table.read_table(f"{header},colour\nx,y\n".encode())
        assert fits is listings_csv.usable(listings_csv.guess(table))
