"""What the example shop's buyers ordered over the last days: by the shop's own site, and a file of a fair's orders."""

from __future__ import annotations

import csv
from dataclasses import dataclass
from datetime import datetime, timedelta
from pathlib import Path
from typing import Any

from labels import slot_code
from scanflow.demo import goods

SITE, FAIR = "site", "fair"
HEADER = ("Order no", "Channel", "Ordered on", "Ship by", "Reference", "Title", "Listing id")

# number: days since it was ordered, days until it has to leave, the slots of what was bought
SITE_ORDERS = {
    "1041": (2, 0, ("S003", "D007", "L002")),
    "1042": (3, 0, ("C005", "BL004")),
    "1043": (2, 0, ("H002",)),
    "1044": (2, 1, ("P006", "W003")),
    "1045": (2, 1, ("L009", "S008")),
    "1046": (1, 1, ("D002", "H011")),
    "1047": (1, 2, ("S001", "P010")),
    "1048": (1, 2, ("C011", "L005")),
    "1049": (1, 2, ("H009",)),
    "1050": (1, 3, ("D012",)),
    "1051": (0, 3, ("BL007", "C002")),
}


@dataclass(frozen=True, slots=True)
class FairRow:
    """A row of the fair's file, as the fair's helper wrote it: `reference` and `title` where not right.

    `stray`: a cell more than the header has.
    """

    number: str
    code: str
    reference: str | None = None
    title: str | None = None
    listing: bool = True
    stray: str = ""


MISTYPED = "C009-01X"
GONE_LATER = FairRow("F209", "BL012")

FAIR_ROWS = (
    FairRow("F201", "W005"),
    FairRow("F201", "P002"),
    FairRow("F202", "S011"),
    FairRow("F203", "D010", title="Rusty unicycle seat post", listing=False),
    FairRow("F204", "C009", reference=MISTYPED),
    FairRow("F205", "L002"),
    FairRow("F206", "P008", stray="comes on Friday"),
    FairRow("F207", "H006", reference="H006"),
    FairRow("F208", "H014", reference="H014", listing=False),
    FairRow("F209", "BL010"),
    GONE_LATER,
    FairRow("F210", "W009"),
    FairRow("F211", "L012"),
    FairRow("F212", "P011"),
    FairRow("F213", "S012"),
    FairRow("", "L011"),
)


def site_order(number: str, now: datetime) -> dict[str, Any]:
    """The body of POST /api/orders."""
    ago, ahead, codes = SITE_ORDERS[number]
    return {
        "number": number,
        "channel": SITE,
        "ordered_at": (now - timedelta(days=ago, minutes=7)).isoformat(timespec="seconds"),
        "ship_by": (now + timedelta(days=ahead, hours=4)).isoformat(timespec="seconds"),
        "lines": [line(code) for code in codes],
    }


def line(code: str, turn: int = 1) -> dict[str, str]:
    """A line as the site sends it, of what first stood in this slot."""
    return {
        "reference": slot_code.reference(code, turn),
        "title": goods.title_of(code),
        "listing": goods.listing_of(code),
    }


def write_fair_file(out: Path, rows: tuple[FairRow, ...], now: datetime) -> None:
    """The fair's orders as its helper's spreadsheet saves them: semicolons, days first, Windows-1252."""
    yesterday, soon = ((now + timedelta(days=days)).strftime("%d.%m.%Y") for days in (-1, 2))
    with out.open("w", encoding="windows-1252", newline="") as file:
        writer = csv.writer(file, delimiter=";")
        writer.writerow(HEADER)
        for row in rows:
            reference = row.reference or slot_code.reference(row.code, 1)
            listing = goods.listing_of(row.code) if row.listing else ""
            title = row.title or goods.title_of(row.code)
            cells = (row.number, FAIR, f"{yesterday} 10:30", soon, reference, title, listing)
            writer.writerow((*cells, row.stray) if row.stray else cells)
