"""Cards of another system at the stations of a running shop, on both databases."""

from __future__ import annotations

from pathlib import Path

import pytest
from calls import Calls, bars
from flat_scene import Flat, flat

from labels import slot_code
from labels.slot_code import card_text
from scanflow.domain.advice import ONCE_MORE
from scanflow.domain.things import Alias
from scanflow.shop import Shop
from scanflow.workflow.ports import Refused
from scanflow.workflow.stock import cards

SMALL = Flat(px=1.0, labels=1, foreign=0, size=(300, 240))
"""One label of a pixel a module, which no decoder reads."""
BOX_17 = Path(__file__).parents[4] / "sample_images" / "adopted" / "code39_box-17.jpg"


@pytest.fixture
def adopted(shop: Shop, calls: Calls) -> Shop:
    """A shop that takes cards without a check; section D has numbers of two digits, BOX-17 stands for D02."""
    calls.post("/api/sections", 201, code="D", name="Derailleurs", slots_per_bin=4, digits=2)
    calls.post("/api/sections/D/slots", 201, count=4)
    shop.act("owner", lambda unit: cards.choose_check(unit, "none"))
    shop.act("owner", lambda unit: cards.adopt(unit, cards.Adopt(text="BOX-17", code="D02")))
    return shop


@pytest.mark.parametrize(("digits", "code"), [(2, "D01"), (None, "D001"), (6, "D000001")])
def test_a_section_may_have_numbers_of_another_width(calls: Calls, digits: int | None, code: str) -> None:
    """`digits` is how wide its numbers are, 3 where it is left out."""
    more = {"digits": digits} if digits else {}
    calls.post("/api/sections", 201, code="D", name="Derailleurs", slots_per_bin=4, **more)
    assert {"codes": [code]} == calls.post("/api/sections/D/slots", 201, count=1)


@pytest.mark.parametrize("digits", [1, 7, "3"])
def test_widths_that_no_section_has(calls: Calls, digits: object) -> None:
    """Fewer than two digits, more than six, or a text."""
    calls.post("/api/sections", 422, code="D", name="Derailleurs", slots_per_bin=4, digits=digits)


def test_two_scans_of_a_bare_code_pick_and_pack(adopted: Shop, calls: Calls) -> None:
    """The first look is answered with the code and what to do; the second does it, at the bin and at the table."""
    stay = calls.post("/api/stays", 201, title="Rear derailleur", text="D01")
    order = calls.order("1001", stay)
    walk = calls.post("/api/rounds", 201)
    scan = {"text": "D01", "via": "wedge"}
    picks = [calls.post("/api/scans", **scan, station="bin", round=walk["id"], key=f"pick-{n}") for n in range(2)]
    calls.post("/api/parcels", 201, orders=[order["id"]])
    packs = [calls.post("/api/scans", **scan, station="table", key=f"pack-{n}") for n in range(2)]
    expected = [("bad_check", "D01", ONCE_MORE, False)] * 2
    assert expected == [(a["reason"], a["code"], a["advice"], a["changed"]) for a in (picks[0], packs[0])]
    assert ["picked", "released"] == [picks[1]["line_state"], packs[1]["line_state"]]


@pytest.mark.parametrize(
    ("reference", "title", "bound"),
    [
        ("BOX-17", "Chain guard", ("D02", "waiting", None)),
        ("box 17", "", ("D02", "waiting", None)),
        ("BOX-17", "Velvet curtain", ("D02", "waiting", "doubtful")),
        ("BOX-18", "Chain guard", (None, "unbound", "unknown_code")),
    ],
)
def test_an_order_may_say_the_adopted_number(
    adopted: Shop, calls: Calls, reference: str, title: str, bound: tuple[str | None, str, str | None]
) -> None:
    """It means the thing that stands there now, as a bare slot code does, and is held where its title is another."""
    calls.post("/api/stays", 201, title="Chain guard", code="D02")
    [line] = calls.post("/api/orders", 201, number="1", lines=[{"reference": reference, "title": title}])["lines"]
    assert bound == (line["code"], line["state"], line["hold"])


def test_a_reference_outweighs_an_adopted_number_of_the_same_signs(adopted: Shop, calls: Calls) -> None:
    """It has a check character. The number was adopted before there was a section whose reference it could be."""
    reference = slot_code.reference("EF01", 1)
    adopted.act("owner", lambda unit: cards.adopt(unit, cards.Adopt(text=slot_code.compact(reference), code="D01")))
    calls.post("/api/stays", 201, title="Chain guard", code="D01")
    calls.post("/api/sections", 201, code="EF", name="Saddles", slots_per_bin=4, digits=2)
    calls.post("/api/sections/EF/slots", 201, count=1)
    calls.post("/api/stays", 201, title="Saddle", code="EF01")
    [line] = calls.post("/api/orders", 201, number="1", lines=[{"reference": reference}])["lines"]
    assert ("EF01", "waiting", None) == (line["code"], line["state"], line["hold"])


def test_a_photograph_that_both_engines_read_needs_no_second(adopted: Shop, calls: Calls) -> None:
    """A Code 39 card with a text of its own, photographed: picked at once, and its text stands in the ledger."""
    stay = calls.post("/api/stays", 201, title="Crank", text="box-17")
    calls.order("1001", stay)
    walk = calls.post("/api/rounds", 201)
    answer = calls.upload("/api/scans", station="bin", round=walk["id"], key="photo", image=BOX_17.read_bytes())
    assert ("accepted", "D02", "picked") == (answer["verdict"], answer["code"], answer["line_state"])
    entry = calls.get("/api/ledger?limit=500")["entries"][-1]
    assert ("scan", ["BOX-17"]) == (entry["kind"], entry["data"]["text"])


def test_an_alias_is_kept(adopted: Shop) -> None:
    """Aliases are found again by text and by slot, given to another slot, and refused where another card has them."""
    adopted.act("owner", lambda unit: cards.adopt(unit, cards.Adopt(text="BOX-17", code="D03")))
    with adopted.looking() as unit:
        kept = (Alias("BOX17", "D03", "BOX-17"),)
        assert (kept, ()) == (unit.find(Alias, code="D03"), unit.find(Alias, code="D02"))
        assert kept[0] == unit.get(Alias, "BOX17")
    with pytest.raises(Refused):
        adopted.act("owner", lambda unit: cards.adopt(unit, cards.Adopt(text=card_text("D01"), code="D03")))


@pytest.mark.parametrize(
    ("picture", "certainty"),
    [(bars("AB-0123"), "decoded"), (flat(3, SMALL, ["AB-0123"]).jpeg, "matched")],
    ids=["decoded", "matched"],
)
def test_a_count_finds_the_slot_of_a_text_with_a_hyphen(
    adopted: Shop, calls: Calls, picture: bytes, certainty: str
) -> None:
    """Bars that say the hyphen are decoded, or too small for that, matched: either way the card is that of its slot."""
    adopted.act("owner", lambda unit: cards.adopt(unit, cards.Adopt(text="AB-0123", code="D03")))
    count = calls.post("/api/stocktakes", 201, area="room")["id"]
    look = calls.upload(f"/api/stocktakes/{count}/looks", key="photo", place="A-1-1", image=picture)
    assert [("AB0123", "D03", certainty)] == [(one["text"], one["code"], one["certainty"]) for one in look["reads"]]


def test_the_default_shop_takes_none_of_it(calls: Calls) -> None:
    """Without the setting a bare code is refused as ever, and never a second time otherwise."""
    calls.section("D", 1)
    calls.put_away()
    scans = [calls.post("/api/scans", station="shelf", bin="A-1-1", key=f"k{n}", text="D001") for n in range(2)]
    assert [("bad_check", None)] * 2 == [(answer["reason"], answer["code"]) for answer in scans]
    assert [True, True] == ["check digit" in answer["advice"] for answer in scans]
