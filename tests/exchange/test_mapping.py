import pytest
from hypothesis import given
from hypothesis import strategies as st

from scanflow.exchange.csv_table import read_table
from scanflow.exchange.dates import DateOrder
from scanflow.exchange.mapping import FIELDS, ColumnMapping, MappingError, guess, missing, signature

CANONICAL = "number,channel,ordered_at,ship_by,reference,title,listing"


def guessed(text: str) -> ColumnMapping:
    return guess(read_table(text.encode()))


def test_the_canonical_header():
    """The header of our own format maps every field to itself, also with a quantity and a status behind them."""
    mapping = guessed(f"{CANONICAL},status,quantity\n1,,,,D014-07T,,,,\n")
    assert {name: name for name in FIELDS} == mapping.columns
    mapping = guessed(f"{CANONICAL}\n1,,,,D014-07T,,\n")
    assert {name: name for name in FIELDS if name not in ("quantity", "status")} == mapping.columns


@pytest.mark.parametrize(
    ("header", "expected"),
    [
        (
            "Sale number;Date of sale;Item description;Stock number;Dispatch by;Listing no",
            {
                "number": "Sale number",
                "ordered_at": "Date of sale",
                "title": "Item description",
                "reference": "Stock number",
                "ship_by": "Dispatch by",
                "listing": "Listing no",
            },
        ),
        ("SKU;order_id;Description", {"reference": "SKU", "number": "order_id", "title": "Description"}),
        (
            "Order no.;Shop;Ordered on;Deliver by;Item number;Item;Ref.",
            {
                "number": "Order no.",
                "channel": "Shop",
                "ordered_at": "Ordered on",
                "ship_by": "Deliver by",
                "listing": "Item number",
                "title": "Item",
                "reference": "Ref.",
            },
        ),
        (
            "Our order number (long);Item title in full;Stock code",
            {"number": "Our order number (long)", "title": "Item title in full", "reference": "Stock code"},
        ),
        ("Name;Street;Quantity;Buyer reference;Note on item", {"quantity": "Quantity"}),
        ("Order no;SKU;Qty", {"number": "Order no", "reference": "SKU", "quantity": "Qty"}),
        ("Order no;SKU;Item count", {"number": "Order no", "reference": "SKU"}),
    ],
)
def test_columns_by_their_headers(header, expected):
    """The trade's general words are recognised whatever their case and marks; others are left alone."""
    assert expected == guessed(f"{header}\n{';'.join('x' for _ in header.split(';'))}\n").columns


def test_the_reference_by_its_cells():
    """A column full of references is the one, whatever its header and whatever another column is called."""
    text = "Order no,SKU,Remarks\n1,white-23,D014-07T\n2,black-24,d014 07t\n3,,\n4,red-1,see note\n"
    expected = {"number": "Order no", "reference": "Remarks"}
    assert expected == guessed(text).columns


def test_the_named_reference_column_stays():
    """Where no column's cells look like references, or several do, the one that is named so is taken."""
    assert guessed("Order no,Where,SKU\n1,D014,C041\n").columns["reference"] == "SKU"
    assert guessed("Order no,Where,SKU\n1,here,old-1\n").columns["reference"] == "SKU"


def test_the_order_of_dates():
    """Day or month first is remembered when the file proves it."""
    proven = guessed("number,order date,sku\n1,25/11/2026,D014\n2,01/02/2026,D015\n")
    assert proven.date_order is DateOrder.DAY_FIRST
    assert guessed("number,order date,sku\n1,11/03/2026,D014\n").date_order is None


@pytest.mark.parametrize(
    ("columns", "expected"),
    [
        ({}, ("number", "reference")),
        ({"number": "Order no"}, ("reference",)),
        ({"number": "Order no", "reference": "gone"}, ("reference",)),
        ({"number": "Order no", "reference": "SKU"}, ()),
    ],
)
def test_required_fields(columns, expected):
    """Number and reference must have a column that the file has."""
    assert expected == missing(ColumnMapping(columns), ("Order no", "SKU"))


@given(st.dictionaries(st.sampled_from(FIELDS), st.text()), st.sampled_from([None, *DateOrder]))
def test_a_mapping_is_stored_and_restored(columns, order):
    """What was stored comes back equal."""
    mapping = ColumnMapping(columns, order)
    assert mapping == ColumnMapping.from_json(mapping.to_json())


@pytest.mark.parametrize(
    "text",
    [
        "",
        "[]",
        "1",
        "{}",
        '{"columns": 5}',
        '{"columns": {"number": 5}}',
        '{"columns": {"buyer": "Name"}}',
        '{"columns": {}, "date_order": "year-first"}',
    ],
)
def test_what_is_no_mapping(text):
    """Anything else is refused, an unknown field too."""
    with pytest.raises(MappingError):
        ColumnMapping.from_json(text)


def test_signature():
    """The same headers in another order are the same file format; one header more is another."""
    assert signature(["number", "sku"]) == signature(["sku", "number"])
    assert signature(["number", "sku"]) != signature(["number", "sku", "title"])
    assert signature(["a", "b"]) != signature(['a", "b'])
