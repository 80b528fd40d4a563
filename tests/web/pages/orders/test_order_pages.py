"""Orders on pages: loaded from a file, settled, cancelled, packed."""

from __future__ import annotations

import io
import re
from dataclasses import replace
from datetime import UTC, datetime

import pytest
from calls import Calls
from clients import SQLITE_ONLY
from flask.testing import FlaskClient
from form_fields import fields_of
from furnished import furnish, reference, scan
from paperwork import jpeg
from werkzeug.test import TestResponse

from labels.slot_code import card_text
from scanflow.domain.closing import WEEKDAYS, ClosingDays
from scanflow.domain.life import Hold, LineState, ParcelState
from scanflow.domain.orders.incoming import IncomingLine, IncomingOrder
from scanflow.domain.things import Channel, Doubt, Line, Order, Parcel, Photo, Station, Stay
from scanflow.exchange import order_files
from scanflow.shop import Shop, a_while
from scanflow.storage.unit import SqlUnit
from scanflow.vision import photographs
from scanflow.workflow.orders import file as order_file
from scanflow.workflow.orders.receiving import receive
from scanflow.workflow.parcels import OpenParcel, close_parcel, open_parcel
from scanflow.workflow.stock import photos
from scanflow.workflow.stock.doubts import missed

pytestmark = SQLITE_ONLY


def look_at(client: FlaskClient, text: str) -> TestResponse:
    """The page that shows how a file is understood."""
    file = {"file": (io.BytesIO(text.encode()), "orders.csv")}
    return client.post("/orders/load", data=file, content_type="multipart/form-data")


def orders(shop: Shop) -> list[str]:
    with shop.looking() as unit:
        return [order.number for order in unit.find(Order)]


def test_file_is_shown_before_it_is_loaded(shop: Shop, client: FlaskClient) -> None:
    """The first page changes nothing: it shows columns, samples, what would be held and what is refused."""
    stay = furnish(shop, 2).stays[1]
    rows = ("Order no;Shop;Item ref;Title", f"C-1;fair;{reference(stay)};Leather saddle", "C-1;fair;Q9;Bell")
    file = "\n".join((*rows, f";fair;{reference(stay)};Lost\n"))
    page = look_at(client, file)
    assert (200, ["B-1"]) == (page.status_code, orders(shop))
    for words in ("1 line held", "1 row refused", "Row 4", "No section Q."):
        assert words in page.text
    done = client.post("/orders/load", data=fields_of(page.text) | {"step": "apply"})
    assert (200, ["B-1", "C-1"]) == (done.status_code, orders(shop))
    assert ("The file is loaded" in done.text, "Row 4" in done.text) == (True, True)


def test_what_to_look_at_is_listed_and_how_dates_were_read(shop: Shop, client: FlaskClient) -> None:
    """Both pages list rows that warn and hold nothing, and say how dates are read and which row proves it."""
    stay = furnish(shop, 2).stays[1]
    row = f"C-1;{{}};{reference(stay)};Leather saddle"
    file = "\n".join(["sep=;", "Orders of the fair", "Order no;Order date;Ref;Title", *(row.format("soon"),) * 2, ""])
    page = look_at(client, file + "C-2;25/11/2026;Q014;Bell\n")
    page = client.post("/orders/load", data=fields_of(page.text) | {"channel": "fair", "step": "look"})
    done = client.post("/orders/load", data=fields_of(page.text) | {"step": "apply"})
    for text in (page.text, done.text):
        assert "Dates are read day first. Row 6 proves it: “25/11/2026”." in text
        assert "<strong>Row 2</strong> This line stands above the header: Orders of the fair" in text
        assert "<strong>Row 4</strong> “soon” can&#39;t be read as a date. The row is taken without it." in text
        assert "<strong>Row 5</strong> This row says the same as row 4. It counts once." in text
        assert "1 line held, 0 rows refused" in " ".join(text.split())


def test_file_again(shop: Shop, client: FlaskClient) -> None:
    """The same file again would change nothing; a later one without a line says what is gone."""
    stays = furnish(shop, 4).stays
    rows = [f"C-1,fair,{reference(stays[1])},Saddle", f"C-1,fair,{reference(stays[3])},Wheel"]
    first = look_at(client, "\n".join(["number,channel,reference,title", *rows]))
    client.post("/orders/load", data=fields_of(first.text) | {"step": "apply"})
    again = look_at(client, "\n".join(["number,channel,reference,title", *rows]))
    assert ("1 unchanged" in again.text, "Load 0 orders" in again.text) == (True, True)
    later = look_at(client, "\n".join(["number,channel,reference,title", rows[0]]))
    assert ("1 changed" in later.text, "The order came again without this line." in later.text) == (True, True)


def test_mapping_is_corrected_and_remembered(shop: Shop, client: FlaskClient) -> None:
    """A person says which column is which; the next file of these headers is understood without asking, and
    its channel is proposed.
    """
    stay = furnish(shop, 2).stays[1]
    file = f"Alpha,Beta,Gamma\nC-7,{reference(stay)},Leather saddle\n"
    page = look_at(client, file)
    assert (422, True) == (page.status_code, "No column holds the number; choose one." in page.text)
    fields = fields_of(page.text) | {
        "column-number": "Alpha",
        "column-title": "Gamma",
        "channel": "fair",
        "step": "apply",
    }
    seen = client.post("/orders/load", data=fields)
    assert ["B-1"] == orders(shop)  # what is loaded is what was looked at: corrected columns are shown first
    client.post("/orders/load", data=fields_of(seen.text) | {"step": "apply"})
    assert ["B-1", "C-7"] == orders(shop)
    again = fields_of(look_at(client, file.replace("C-7", "C-8")).text)
    assert ("Alpha", "Beta", "Gamma", "fair") == tuple(
        again[name] for name in ("column-number", "column-reference", "column-title", "channel")
    )


def test_a_file_without_a_channel_is_asked_whose_it_is(shop: Shop, client: FlaskClient) -> None:
    """Nothing is told of its orders before; orders that name no channel may be said to be of it too."""
    stay = furnish(shop, 2).stays[1]
    shop.act("owner", lambda unit: receive(unit, IncomingOrder("A-1", lines=(IncomingLine("Q1"),))))
    page = look_at(client, f"number,reference\nC-1,{reference(stay)}\n")
    assert (200, False) == (page.status_code, "new order" in page.text)
    fields = fields_of(page.text) | {"channel": "web", "step": "look"}
    page = client.post("/orders/load", data=fields)
    assert ("Here are 1 order and" in page.text, "new order" in page.text) == (True, True)
    page = client.post("/orders/load", data=fields_of(page.text) | {"claimed": "yes", "step": "look"})
    client.post("/orders/load", data=fields_of(page.text) | {"step": "apply"})
    with shop.looking() as unit:
        assert [("B-1", "fair"), ("A-1", "web"), ("C-1", "web")] == [
            (order.number, order.channel) for order in unit.find(Order)
        ]


def test_a_channel_is_the_same_however_it_is_spelt(shop: Shop, client: FlaskClient) -> None:
    """Capitals make no second channel; a row without a title is listed by what it has."""
    furnish(shop, 1)
    page = look_at(client, "number,reference\nC-1,Q9\n")
    page = client.post("/orders/load", data=fields_of(page.text) | {"channel": "FAIR", "step": "look"})
    client.post("/orders/load", data=fields_of(page.text) | {"step": "apply"})
    with shop.looking() as unit:
        assert {"fair"} == {order.channel for order in unit.find(Order)}
    assert "Q9, held" in " ".join(client.get("/orders").text.split())


def test_each_status_is_explained_once(shop: Shop, client: FlaskClient) -> None:
    """A guess is shown and may be changed; what nobody explains is left out; the next file needs no answer."""
    furnish(shop, 1)
    file = "number,channel,reference,status\n7,fair,Q1,Awaiting payment\n8,fair,Q2,Blue\n9,fair,Q3,Paid\n"
    page = look_at(client, file)
    first = {name: value for name, value in fields_of(page.text).items() if name.startswith("status ")}
    assert {"status fair awaiting payment": "aside", "status fair blue": "", "status fair paid": "pack"} == first
    assert ("nobody has said yet what the status “Blue” means" in page.text, True) == (True, "Row 3" in page.text)
    seen = client.post("/orders/load", data=fields_of(page.text) | {"status fair blue": "cancelled", "step": "apply"})
    assert ["B-1"] == orders(shop)  # what was changed is shown first
    client.post("/orders/load", data=fields_of(seen.text) | {"step": "apply"})
    assert ["B-1", "7", "8", "9"] == orders(shop)
    again = fields_of(look_at(client, file.replace("\n7,", "\n17,")).text)
    assert "cancelled" == again["status fair blue"]
    assert 422 == client.post("/channels", data={"name": "fair", "status Blue": "to the moon"}).status_code
    said = client.post("/channels", data={"name": "fair", "status Blue": "pack", "complete": "yes"})
    assert 303 == said.status_code
    with shop.looking() as unit:
        [channel] = unit.find(Channel)
    assert (("pack", "aside"), True) == (
        (channel.statuses["Blue"], channel.statuses["Awaiting payment"]),
        channel.complete,
    )


def test_what_a_complete_file_lacks_is_shown_first(shop: Shop, client: FlaskClient) -> None:
    """The person says whether the orders are held, or the file is a part; many of them are settled in one act."""
    furnish(shop, 1)
    client.post("/channels", data={"name": "fair", "complete": "yes"})
    rows = [f"{number},fair,Q{number}" for number in range(1, 5)]
    head = "number,channel,reference"
    first = look_at(client, "\n".join([head, *rows]))
    client.post("/orders/load", data=fields_of(first.text) | {"step": "apply"})
    page = look_at(client, "\n".join([head, rows[3]]))
    assert ("3 open orders of this channel" in page.text, "1, 2, 3" in page.text) == (True, True)
    part = client.post("/orders/load", data=fields_of(page.text) | {"absent": "part", "step": "look"})
    assert ("1 line held" in part.text, "4 lines held" in page.text) == (True, True)
    client.post("/orders/load", data=fields_of(page.text) | {"step": "apply"})
    listed = client.get("/orders?state=held").text
    assert "Keep all 3" in listed
    [many] = [form for form in re.findall(r"<form.*?</form>", listed, re.DOTALL) if "Cancel all 3" in form]
    done = client.post("/orders/many", data=fields_of(many))
    assert "3 lines cancelled." in done.text


def test_a_file_is_taken_back_from_its_page(shop: Shop, client: FlaskClient) -> None:
    """It is listed where files are loaded; once something of it is being picked it stays."""
    stays = furnish(shop, 4).stays
    page = look_at(client, f"number,channel,reference\nC-1,fair,{reference(stays[1])}\n")
    client.post("/orders/load", data=fields_of(page.text) | {"step": "apply"})
    [path] = re.findall(r"/orders/loads/[0-9a-f]+/back", client.get("/orders/load").text)
    done = client.post(path)
    assert "That file is taken back: 1 order." in done.text
    assert "C-1 (taken back)" in orders(shop)
    page = look_at(client, f"number,channel,reference\nC-1,fair,{reference(stays[1])}\n")
    client.post("/orders/load", data=fields_of(page.text) | {"step": "apply"})
    [path] = re.findall(r"/orders/loads/[0-9a-f]+/back", client.get("/orders/load").text)
    client.post("/rounds")
    again = client.post(path)
    assert (409, True) == (again.status_code, "is being picked" in again.text)


def test_files_that_can_not_be_read(client: FlaskClient) -> None:
    """Something else than a file of rows is refused with a sentence."""
    for text in ("", "number,reference\n", "PK\x03\x04zip"):
        page = look_at(client, text)
        assert (422, True) == (page.status_code, 'class="said"' in page.text), text
    assert 422 == client.post("/orders/load", data={"carried": "not base 64", "step": "apply"}).status_code


def test_settle(shop: Shop, client: FlaskClient) -> None:
    """A held line is settled as bound; an unbound one by choosing a thing; a thing that is wanted is refused."""
    room = furnish(shop, 12)
    with shop.looking() as unit:
        doubtful, unbound = (
            next(each for each in unit.find(Line) if each.has(Hold.DOUBTFUL)),
            next(each for each in unit.find(Line) if each.has(Hold.UNKNOWN_CODE)),
        )
        wanted = unit.find(Line, stay=room.stays[4].id)[0]
    assert "The title differs" in client.get(f"/lines/{doubtful.id}").text
    assert 303 == client.post(f"/lines/{doubtful.id}/settle").status_code
    assert 409 == client.post(f"/lines/{unbound.id}/settle", data={"stay": wanted.stay}).status_code
    assert 422 == client.post(f"/lines/{unbound.id}/settle").status_code
    assert 303 == client.post(f"/lines/{unbound.id}/settle", data={"stay": room.stays[1].id}).status_code
    with shop.looking() as unit:
        after = [unit.get(Line, line.id) for line in (doubtful, unbound)]
    assert [None, None] == [line.hold for line in after if line]
    assert room.stays[1].id == after[1].stay  # type: ignore[union-attr]


def doubts_of(shop: Shop, line_id: str) -> list[str]:
    """What is doubted of the thing of a line."""
    with shop.looking() as unit:
        line = unit.get(Line, line_id)
        stay = unit.get(Stay, line.stay or "") if line else None
        return [each.id for each in unit.find(Doubt, item=stay.item if stay else "", how=None)]


def holds_of(shop: Shop, line_id: str) -> tuple[LineState, list[Hold]]:
    with shop.looking() as unit:
        line = unit.get(Line, line_id)
    assert line is not None
    return line.state, [each.hold for each in line.holds]


def one_line(shop: Shop) -> tuple[str, Stay, Order]:
    """The line of an order, picked, its thing and the order."""
    room = furnish(shop, 2)
    with shop.looking() as unit:
        return unit.find(Line, order=room.orders[0].id)[0].id, room.stays[0], room.orders[0]


def test_each_hold_has_a_way_of_its_own(shop: Shop, client: FlaskClient) -> None:
    """A line with three holds shows each with its words; one after another is settled, and the next is shown."""
    line, stay, order = one_line(shop)
    lines = (IncomingLine(reference(stay), "Another title"),)
    shop.act("owner", lambda unit: receive(unit, IncomingOrder(order.number, order.channel, lines=lines)))
    shop.act("owner", lambda unit: receive(unit, IncomingOrder(order.number, order.channel)))
    client.post(f"/lines/{line}/hold", data={"words": "It is a lamp"})
    page = client.get(f"/lines/{line}").text
    for words in ("It is a lamp", "The order now says “Another title”", "The order came again without this line."):
        assert 1 == page.count(words), words
    for way in ("Seen: it is the right thing", "Corrected", f"It is {stay.code}", "Keep it", "Cancel it"):
        assert 1 == page.count(f">{way}</button>"), way

    (doubt,) = doubts_of(shop, line)
    wrong = client.post(f"/lines/{line}/doubts/{doubt}", data={"how": "seen", "text": card_text("D002")})
    assert (422, True) == (wrong.status_code, f"That is another card. Scan card {stay.code}." in wrong.text)
    here, after = f"/lines/{line}", [holds_of(shop, line)[1]]
    for path, fields, leads in (
        (f"{here}/doubts/{doubt}", {"how": "seen", "text": card_text(stay.code)}, here),
        (f"{here}/settle", {"hold": "not_in_file"}, here),
        (f"{here}/settle", {"hold": "changed_after_pick"}, f"/orders/{order.id}"),
    ):
        answer = client.post(path, data=fields)
        assert (303, leads) == (answer.status_code, answer.headers["Location"])
        after.append(holds_of(shop, line)[1])
    suspect, changed, gone = Hold.SUSPECT, Hold.CHANGED_AFTER_PICK, Hold.NOT_IN_FILE
    assert [[suspect, changed, gone], [changed, gone], [changed], []] == after
    assert 409 == client.post(f"{here}/settle", data={"hold": "doubtful"}).status_code
    assert 422 == client.post(f"{here}/settle", data={"hold": "tired"}).status_code


def test_a_line_that_left_the_file_is_cancelled_where_it_is_settled(shop: Shop, client: FlaskClient) -> None:
    """“Cancel it” stands beside “Keep it”, and leads to the order."""
    line, _, order = one_line(shop)
    shop.act("owner", lambda unit: receive(unit, IncomingOrder(order.number, order.channel)))
    answer = client.post(f"/lines/{line}/cancel")
    assert f"/orders/{order.id}" == answer.headers["Location"]
    assert (LineState.CANCELLED, [Hold.NOT_IN_FILE]) == holds_of(shop, line)
    assert "Keep it" not in client.get(f"/lines/{line}").text


def packed(shop: Shop) -> tuple[str, str]:
    """The line of a thing that is packed and not closed over, and the code of its slot."""
    line, stay, order = one_line(shop)
    shop.act("owner", lambda unit: unit.set_settings(replace(unit.settings, auto_close=False)))
    shop.act("owner", lambda unit: open_parcel(unit, OpenParcel(orders=(order.id,), table="two")))
    scan(shop, Station.TABLE, stay.code, table="two")
    return line, stay.code


def close(shop: Shop, line_id: str) -> None:
    def work(unit: SqlUnit) -> None:
        line = unit.get(Line, line_id)
        assert line is not None
        close_parcel(unit, line.parcel or "")

    shop.act("owner", work)


def test_what_is_packed_and_read_elsewhere_is_settled_at_the_table(shop: Shop, client: FlaskClient) -> None:
    """The page says where it was read and leads to its table; no button frees it, and another thing is no choice."""
    line, code = packed(shop)
    scan(shop, Station.SHELF, code, bin="B-1-1")
    page = client.get(f"/lines/{line}").text
    assert "its card was read in bin B-1-1" in page
    assert ("/table?table=two" in page, "/settle" in page, "another thing" in page) == (True, False, False)
    assert (409, [Hold.MISPLACED]) == (client.post(f"/lines/{line}/settle").status_code, holds_of(shop, line)[1])


def test_what_is_closed_over_and_read_elsewhere_is_looked_for_in_the_box(shop: Shop, client: FlaskClient) -> None:
    """Either somebody looked, and it is in the box, or the parcel is opened again at its table."""
    line, code = packed(shop)
    close(shop, line)
    scan(shop, Station.SHELF, code, bin="B-1-1")
    page = client.get(f"/lines/{line}").text
    for way in ("Looked: it is in the box", "Open the parcel again"):
        assert f">{way}</button>" in page, way
    (again,) = re.findall(r'action="(/table/[^"]+/reopen)"', page)
    opened = client.post(again, data={"table": "two"})
    assert "/table?table=two" == opened.headers["Location"]
    assert (LineState.PACKED, [Hold.MISPLACED]) == holds_of(shop, line)
    scan(shop, Station.TABLE, code, table="two", key="again")
    close(shop, line)
    scan(shop, Station.SHELF, code, bin="B-1-1", key="and-again")
    assert 303 == client.post(f"/lines/{line}/settle", data={"hold": "misplaced"}).status_code
    assert (LineState.RELEASED, []) == holds_of(shop, line)


def test_a_doubt_shows_the_picture_as_it_was(shop: Shop, client: FlaskClient) -> None:
    """Beside the one that the thing has now, on the page that settles it and on the thing's own."""
    line, stay, _ = one_line(shop)
    before, now = (Photo(letter * 64, letter.encode(), b"small " + letter.encode()) for letter in "ab")
    shop.act("owner", lambda unit: photos.keep(unit, stay.id, before))
    client.post(f"/lines/{line}/hold", data={"words": "It is a lamp"})
    shop.act("owner", lambda unit: photos.keep(unit, stay.id, now))
    (doubt,) = doubts_of(shop, line)
    for page in (f"/lines/{line}", f"/stays/{stay.id}"):
        assert ("As it was then" in client.get(page).text, "Its picture now" in client.get(page).text) == (True, True)
    assert [b"a", b"small a"] == [client.get(f"/doubts/{doubt}/photo{size}").data for size in ("", "?size=small")]
    assert 404 == client.get("/doubts/none/photo").status_code


def test_a_thing_that_no_order_wants_is_settled_on_its_own_page(shop: Shop, client: FlaskClient) -> None:
    """Its doubts stand there, each with the same two ways."""
    _, stay, _ = one_line(shop)
    shop.act("owner", lambda unit: missed(unit, stay.item, "Not in its bin"))
    here = f"/stays/{stay.id}"
    page = client.get(here).text
    for words in ("Not in its bin", "Seen: it is there", "Corrected"):
        assert words in page, words
    with shop.looking() as unit:
        (doubt,) = unit.find(Doubt, item=stay.item, how=None)
    assert 422 == client.post(f"{here}/doubts/{doubt.id}", data={"how": "seen"}).status_code
    seen = client.post(f"{here}/doubts/{doubt.id}", data={"how": "seen", "text": card_text(stay.code)})
    assert (303, here) == (seen.status_code, seen.headers["Location"])
    assert "Not in its bin" not in client.get(here).text.split("Ledger lines")[0]


def test_the_other_thing_is_offered_first(shop: Shop, client: FlaskClient, calls: Calls) -> None:
    """Where the order's words fit another thing better, that one comes first, beside the picture of each."""
    calls.section()
    named, *others = (calls.put_away(title) for title in ("Rear wheel 26 inch", "Rear wheel", "Rear wheel 28 inch"))
    photo = photographs.photo(shop.readers, jpeg())
    for stay in (named, *others):
        shop.act("owner", lambda unit, name=stay["id"]: photos.keep(unit, name, photo))
    lines = [{"reference": named["reference"], "title": "Wheel rear 28 inch"}]
    order = calls.post("/api/orders", 201, number="1", lines=lines)
    page = client.get(f"/lines/{order['lines'][0]['id']}").text
    assert f"{others[1]['code']}, “Rear wheel 28 inch”" in page
    assert ["D001", "D003", "D002"] == re.findall(r'alt="Picture of Rear wheel[^"]*".*?It is (D\d+)', page, re.DOTALL)


def test_both_orders_of_a_number_are_found(client: FlaskClient, calls: Calls) -> None:
    """The number as it was sent leads to a list of all orders that came under it."""
    calls.section()
    for title in ("Saddle", "Lamp"):
        calls.order("1001", calls.put_away(title))
    page = client.get("/search?q=1001")
    assert (200, 1, 1) == (page.status_code, page.text.count(">Order 1001<"), page.text.count(">Order 1001 (2)<"))
    assert 303 == client.get("/search?q=1001+(2)").status_code


def test_steps_of_a_line(shop: Shop, client: FlaskClient) -> None:
    """Missing, found, not this thing, cancelled and wanted after all: a doubt outlasts them until it is settled."""
    order = furnish(shop, 2).orders[0]
    with shop.looking() as unit:
        line = unit.find(Line, order=order.id)[0].id

    def state() -> tuple[LineState, Hold | None]:
        with shop.looking() as unit:
            now = unit.get(Line, line)
        assert now is not None
        return now.state, now.hold

    seen = [state()]
    for step in ("short", "found", "hold"):
        assert 303 == client.post(f"/lines/{line}/{step}").status_code
        seen.append(state())
    assert 409 == client.post(f"/lines/{line}/settle").status_code
    assert 303 == client.post(f"/orders/{order.id}/cancel", data={"line": line}).status_code
    seen.append(state())
    assert 303 == client.post(f"/lines/{line}/revive").status_code
    seen.append(state())
    waiting, short, cancelled = LineState.WAITING, LineState.SHORT, LineState.CANCELLED
    assert LineState.PICKED is seen[0][0]
    doubted = [(state, Hold.SUSPECT) for state in (waiting, cancelled, waiting)]
    assert [(short, None), (waiting, None), *doubted] == seen[1:]
    assert 409 == client.post(f"/lines/{line}/revive").status_code
    (doubt,) = doubts_of(shop, line)
    assert 303 == client.post(f"/lines/{line}/doubts/{doubt}", data={"how": "corrected"}).status_code
    assert (waiting, None) == state()


def test_parcels_on_the_table(shop: Shop, client: FlaskClient) -> None:
    """An order is chosen, its parcel closed only with something in it, set aside and dropped while empty."""
    order = furnish(shop, 2).orders[0]
    assert 303 == client.post("/table/open", data={"order": order.id, "table": "two"}).status_code
    with shop.looking() as unit:
        parcel = unit.find(Parcel, state=ParcelState.OPEN)[0]
    assert "two" == parcel.table
    refused = client.post(f"/table/{parcel.id}/close", data={"table": "two"})
    assert (409, True) == (refused.status_code, "Nothing is packed yet." in refused.text)
    assert 409 == client.post("/table/open", data={"order": order.id, "table": "two"}).status_code
    assert 303 == client.post(f"/table/{parcel.id}/set-aside", data={"table": "two"}).status_code
    assert "Which order do you pack?" in client.get("/table?table=two").text


def test_rounds(shop: Shop, client: FlaskClient) -> None:
    """A round shows one stop, leads through the rest, and ends; what was not picked waits for another one."""
    room = furnish(shop, 9)
    assert room.round is not None
    page = client.get(f"/rounds/{room.round.id}").text
    stops = re.search(r"<h1>(\d+) of (\d+) stops done</h1>", page)
    assert stops is not None
    assert int(stops[1]) < int(stops[2])
    assert 1 == page.count('class="plate "') + page.count('class="plate words')
    assert 303 == client.post(f"/rounds/{room.round.id}/close").status_code
    assert 409 == client.post(f"/rounds/{room.round.id}/close").status_code
    again = client.post("/rounds")
    assert (303, True) == (again.status_code, again.headers["Location"] != f"/rounds/{room.round.id}")


def test_a_load_that_was_cut_off_is_told_before_it_goes_on(
    client: FlaskClient, shop: Shop, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The check of the file says how many orders are in; loading it says what came of the whole."""
    monkeypatch.setattr("scanflow.shop.SLICE", 0.0)
    file = "number,reference,channel\n" + "".join(f"{number},nothing,fair\n" for number in range(1, 6))
    parsed = order_files.read(shop.looking, file.encode())
    with shop.looking() as unit:
        part = order_file.in_parts(unit, parsed.key, parsed.orders, parsed.rows, a_while)
    for _ in range(2):
        shop.act("owner", part)
    page = look_at(client, file)
    done = client.post("/orders/load", data=fields_of(page.text) | {"step": "apply"})
    assert "2 orders of it are in already" in page.text
    assert '<span class="figures">5</span></span><span class="under">new orders' in done.text
    assert "5 lines held" in done.text


def test_settling_goes_from_held_line_to_held_line(shop: Shop, client: FlaskClient) -> None:
    """After one is settled the next opens, those of the same order first; after the last one its order."""
    furnish(shop, 2)
    for number, references in (("H-1", ("X1", "X2")), ("H-2", ("X3",))):
        lines = tuple(IncomingLine(each, "Bell") for each in references)
        shop.act("owner", lambda unit, number=number, lines=lines: receive(unit, IncomingOrder(number, lines=lines)))
    with shop.looking() as unit:
        held = {line.reference: line for line in unit.find(Line) if line.reference.startswith("X")}
    path = f"/lines/{held['X2'].id}"
    visited = []
    for _ in range(3):
        settled = client.post(f"{path}/cancel", follow_redirects=False)
        path = settled.headers["Location"].partition("?")[0]
        visited.append(path)
    assert [f"/lines/{held['X1'].id}", f"/lines/{held['X3'].id}", f"/orders/{held['X3'].order}"] == visited


def test_lists_name_what_an_order_is_about(shop: Shop, client: FlaskClient) -> None:
    """One title and how many more; what was cancelled is not counted."""
    lines = tuple(IncomingLine(f"X{number}", title) for number, title in enumerate(("Bell", "Crank", "Saddle")))
    shop.act("owner", lambda unit: receive(unit, IncomingOrder("H-1", lines=lines)))

    def shown() -> list[str]:
        return re.findall(r'<a class="title" href="/orders/[^"]*">([^<]*)</a>', client.get("/orders").text)

    before = shown()
    with shop.looking() as unit:
        line = next(each for each in unit.find(Line) if each.title == "Crank")
    client.post(f"/lines/{line.id}/cancel")
    assert (["Bell and 2 more, held"], ["Bell and 1 more, held"]) == (before, shown())


@pytest.mark.parametrize(
    ("today", "closed", "words"),
    [
        (9, (), "due in 6 days"),
        (9, ("sunday",), "due in 5 days"),
        (9, ("sunday", "2026-03-11"), "due in 4 working days"),
        (12, ("sunday", "2026-03-13"), "due on the next working day"),
        (14, ("sunday",), "due today"),
        (15, (), "due today"),
        (15, ("sunday",), "1 day late"),
        (15, ("sunday", "2026-03-12/2026-03-14"), "4 days late"),
    ],
)
def test_an_order_is_due_on_the_last_open_day(
    shop: Shop, client: FlaskClient, today: int, closed: tuple[str, ...], words: str
) -> None:
    """On Today, in the lists and the search, and on its page, which says why; its own date stays.

    15 March 2026, by which it is to be shipped, is a Sunday (from a calendar).
    """
    shop.clock = lambda: datetime(2026, 3, today, 8, tzinfo=UTC)
    stay = furnish(shop, 2).stays[1]
    weekdays, dates = (tuple(each for each in closed if (each in WEEKDAYS) is named) for named in (True, False))
    closing = ClosingDays(weekdays, dates)
    shop.act("owner", lambda unit: unit.set_settings(replace(unit.settings, closing=closing)))
    incoming = IncomingOrder("C-1", ship_by="2026-03-15", lines=(IncomingLine(reference(stay)),))
    order = shop.act("owner", lambda unit: receive(unit, incoming))[0].id
    pages = [client.get(address).text for address in ("/", "/orders", f"/orders/{order}", "/search?q=C-")]
    shown = [
        re.findall(r"C-1\b.*?<span(?: class=\"late\")?>([^<]*(?:due|late)[^<]*)</span>", page, re.DOTALL)
        for page in pages
    ]
    assert [words] * 4 == [each[0] for each in shown]
    assert bool(closed) == ("You are closed that day: ship it by" in pages[2])
    with shop.looking() as unit:
        kept = unit.get(Order, order)
    assert kept is not None
    assert datetime(2026, 3, 15, 23, 59, 59, tzinfo=UTC) == kept.ship_by
