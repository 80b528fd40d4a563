"""Rows go out as CSV."""

import csv

import pytest

from scanflow.exchange import csv_out


def test_each_row_stands_under_its_columns():
    """Cells stand in the order of the columns, quoted where they must be; what is not known is empty."""
    written = csv_out.text(
        ("code", "title"), [{"title": 'Lamp, "red"', "code": "D001"}, {"code": "D002", "title": None}]
    )
    assert [["code", "title"], ["D001", 'Lamp, "red"'], ["D002", ""]] == list(csv.reader(written.splitlines()))


@pytest.mark.parametrize("title", ["=1+1", "+1", "-1", "@SUM(A1)", "\tx"])
def test_no_cell_is_a_formula(title):
    """What a spreadsheet would reckon with is told as text."""
    assert ["title", f"'{title}"] == csv_out.text(("title",), [{"title": title}]).split("\r\n")[:-1]
