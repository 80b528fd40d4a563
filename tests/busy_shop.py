"""A shop in the middle of everything that can happen to its things, made by calls and pages as a shop makes them."""

from __future__ import annotations

import io
from collections.abc import Iterator
from datetime import datetime, timedelta
from typing import Any

from calls import Calls, photo
from clients import client_of, new_token
from flask import Flask
from PIL import Image

from labels.slot_code import card_text
from scanflow.domain.access import Role
from scanflow.exchange import csv_table, mapping
from scanflow.shop import Shop
from scanflow.workflow.stock import cards

FIRST_DAY = datetime.fromisoformat("2026-03-02T08:00:00+00:00")
PASSWORD = "cobbles-and-gravel"
GOODS = (
    ("D", "Derailleurs", "yellow", 30, "Rear derailleur"),
    ("S", "Saddles", "pink", 15, "Leather saddle"),
    ("L", "Lamps", "green", 15, "Dynamo lamp"),
    ("W", "Wheels", "blue", 15, "Front wheel"),
)
LABEL = "00340434161094042557"
ADOPTED = {"AB-0123": "D011", "ab-77-x": "S011", "BOX 9": "L010"}
"""What cards of another system bear, and the slots that they stand for."""


class Clock:
    """A minute for each look at it."""

    def __init__(self, now: datetime = FIRST_DAY) -> None:
        self.now = now

    def __call__(self) -> datetime:
        self.now += timedelta(minutes=1)
        return self.now


class BusyShop:
    """The shop as it is furnished; `stays` by their slots' codes, `orders` by their numbers."""

    def __init__(self, shop: Shop, app: Flask) -> None:
        self.shop, self.app = shop, app
        shop.clock = Clock()
        self.calls = Calls(client_of(app, shop, Role.OWNER))
        self.stays: dict[str, Any] = {}
        self.orders: dict[str, Any] = {}

    def scan(self, station: str, code: str, name: str, **spot: Any) -> Any:
        """The verdict on a slot's card; `name` says what for, and is the begin of the scan's key."""
        return self.calls.scan(station, code, key=f"{name}-{code}", **spot)

    def accepted(self, station: str, code: str, name: str, **spot: Any) -> None:
        answer = self.scan(station, code, name, **spot)
        assert "accepted" == answer["verdict"], (name, code, answer)

    def order(self, number: str, *codes: str, title: str = "", status: int = 201, **more: Any) -> None:
        """An order for the things in these slots, by their references; a text that is no taken slot stands as it is."""
        lines = []
        for code in codes:
            stay = self.stays.get(code)
            named = {"reference": stay["reference"], "title": title or stay["title"]} if stay else {"reference": code}
            named |= {"listing": f"fair-{code}"} if code in BROUGHT else {}
            lines.append(named)
        self.orders[number] = self.calls.post("/api/orders", status, number=number, channel="fair", lines=lines, **more)

    def line(self, number: str, place: int = 0) -> str:
        """The path of an order's line."""
        return f"/api/lines/{self.orders[number]['lines'][place]['id']}"

    def walk(self, *numbers: str) -> str:
        """A new round for these orders."""
        found = self.calls.post("/api/rounds", 201, orders=[self.orders[number]["id"] for number in numbers])
        assert found["stops"], numbers
        return str(found["id"])

    def parcel(self, number: str, table: str = "main") -> str:
        """The path of the order's parcel, opened."""
        opened = self.calls.post("/api/parcels", 201, orders=[self.orders[number]["id"]], table=table)
        return f"/api/parcels/{opened['id']}"

    def furnish(self) -> None:
        self._people()
        self._stock()
        self._settings()
        self._orders()
        self._first_round()
        self._table()
        self._second_round()
        self._what_went_wrong()
        self._returns()
        self._counts()

    def _people(self) -> None:
        """A password with a session, tokens, and a paired phone."""
        self.shop.act("owner", lambda unit: unit.access.set_password(PASSWORD))
        assert 302 <= self.app.test_client().post("/login", data={"password": PASSWORD}).status_code <= 303
        new_token(self.shop, "label printer", Role.PROGRAM)
        client_of(self.app, self.shop, Role.HELPER)
        link = self.shop.act("owner", lambda unit: unit.access.make_pairing_link())
        assert 303 == self.app.test_client().post(f"/pair/{link}", data={"name": "Blue phone"}).status_code

    def _stock(self) -> None:
        """Things in four sections, of which some were described anew, photographed, moved or withdrawn."""
        for code, name, colour, slots, _ in GOODS:
            self.calls.post("/api/sections", 201, code=code, name=name, slots_per_bin=10, colour=colour)
            self.calls.post(f"/api/sections/{code}/slots", 201, count=slots)
        for section, _, _, _, what in GOODS:
            for number in range(1, 13):
                words = {"title": f"{what} {number}", "listing": f"L-{section}{number}", "notes": "Scratched, “used”"}
                stay = self.calls.post("/api/stays", 201, section=section, **words)
                self.stays[stay["code"]] = stay
        headers = {"Idempotency-Key": "put-away-bell"}
        body = {"title": "Brass bell", "text": card_text("D013")}
        self.stays["D013"] = self.calls.client.post("/api/stays", json=body, headers=headers).get_json()
        self.calls.client.patch(self.at("D002"), json={"notes": "Cable is new", "packing": "Coil the cable"})
        self.calls.post(f"{self.at('S010')}/withdraw", reason="Cracked on inspection")
        self.calls.post(f"{self.at('W004')}/withdraw", reason="Bent beyond use")
        self.stays["S013"] = self.calls.post(f"{self.at('S009')}/move", to="S013")
        self._photos()
        rows = b"number,title,since\r\nL013,Carbide lamp,2026-01-10\r\nL014,Rear lamp,\r\n"
        assert 2 == self.calls.upload("/api/stock/load", file=rows)["stored"]
        self._offers()
        self.calls.post(f"{self.at('W012')}/reserve", **{"for": "Ann", "until": "2026-12-24"})
        out = self.calls.client.post(f"/stays/{self.stays['W011']['id']}/out", data={"where": "On the bench"})
        assert 303 == out.status_code

    def _offers(self) -> None:
        """Some things are offered on two channels; of one the id was written anew, another was taken down."""
        for code in ("W001", "S002", "D009", "W012", "L009"):
            for channel in ("fair", "corner"):
                self.calls.post(f"{self.at(code)}/listings", listing=f"{channel[0]}-{code}", channel=channel)
        self.calls.client.patch(self.at("D004"), json={"listing": "L-D004b"})
        offers = self.calls.get("/api/listings?limit=500")["listings"]
        ended = next(each["id"] for each in offers if each["listing"] == "c-L009")
        assert "ended" == self.calls.post(f"/api/listings/{ended}/ended")["state"]

    def at(self, code: str) -> str:
        """The path of the stay in a slot."""
        return f"/api/stays/{self.stays[code]['id']}"

    def _photos(self) -> None:
        for code, colour in (("D001", "peru"), ("S001", "sienna")):
            put = self.calls.client.put(f"{self.at(code)}/photo", data=picture(colour), content_type="image/png")
            assert 204 == put.status_code

    def _settings(self) -> None:
        """Cards of another system are taken, labels bound, racks measured, columns of order files remembered."""
        form = {"name": "Gears & Saddles", "zone": "UTC", "check": "none", "bind_labels": "yes"}
        form |= {"auto_close": "yes", "scan_at_bin": "yes"}
        assert 303 == self.calls.client.post("/settings", data=form).status_code
        measured = {"rack": "24 x 48 x 72 in", "bin": "23 x 8 x 6 in", "table": "1"}
        assert 303 == self.calls.client.post("/room", data=measured).status_code
        for text, code in ADOPTED.items():
            self.shop.act(
                "owner", lambda unit, text=text, code=code: cards.adopt(unit, cards.Adopt(text=text, code=code))
            )  # type: ignore[misc]

    def _orders(self) -> None:
        """Orders that are honest, and one for each reason to hold a line."""
        for number, codes in HONEST.items():
            self.order(number, *codes, ship_by=f"2026-03-{len(self.orders) % 20 + 3:02}T16:00:00+01:00")
        self.order("B-30", "D003", title="Bell with a crown")  # doubtful
        self.order("B-31", "D005", "Z999")  # unknown_code
        self.order("B-32", "D006", "D007")
        self.order("B-32", "D006", status=200)  # not_in_file
        self.order("B-33", "lamp")  # unbound
        self.order("B-34", "D006")  # already_sold
        self.order("B-35", "W004")  # withdrawn
        self.order("B-36", "L015")  # slot_free
        self.order("B-37", "W005", title="Bell with a crown")
        self.calls.post(f"{self.line('B-37')}/settle")
        self.calls.post(f"{self.line('B-17')}/hold", why="Another lamp, by the photo")  # suspect
        for number in ("B-08", "B-21"):
            self.calls.post(f"/api/orders/{self.orders[number]['id']}/cancel")
        self.calls.post(f"{self.line('B-21')}/revive")
        self.stays["D020"] = self.calls.post(f"{self.at('D008')}/move", to="D020")  # its line follows
        self.calls.post(f"{self.at('L012')}/sell", 201, note="Rings at noon", collected=True)
        self._order_file()

    def _order_file(self) -> None:
        statuses = {"Paid": "pack", "Not paid": "aside", "Off": "cancelled", "Gone": "sent"}
        self.calls.post("/api/channels", 201, name="Fair", statuses=statuses, complete=True)
        saddle = self.stays["S012"]["reference"]
        rows = f"Order,SKU,Name,Status\nF-1,{saddle},Leather saddle,paid\nF-2,Q7,Nothing,\nF-3,Q1,Bell,not paid\n"
        table = csv_table.read_table(rows.encode())
        columns = mapping.guess(table).to_json()
        signature = mapping.signature(table.headers)
        self.shop.act("owner", lambda unit: unit.mappings.save("Fair", signature, columns))
        first = self.calls.upload("/api/orders/import", file=rows.encode(), mapping="Fair", channel="Fair")
        later = "\n".join(row.replace("not paid", "paid") for row in rows.splitlines() if "F-2" not in row)
        second = self.calls.upload("/api/orders/import", file=later.encode(), channel="Fair")
        assert (3, 1) == (first["loaded"], second["changed"])

    def _first_round(self) -> None:
        """A round that is over: all was picked, the wrong card was refused, one scan was taken back."""
        walk = self.walk("B-01", "B-03", "B-04", "B-09", "B-13", "B-22", "B-23")
        assert "refused" == self.scan("bin", "D004", "free", round=walk)["verdict"]
        for code in ("W001", "W002", "S002", "S003", "S004", "S005", "L006", "L011", "S006", "S007", "W007", "W008"):
            self.accepted("bin", code, "pick", round=walk)
        self.calls.post("/api/scans/pick-W008/undo")
        self.calls.post(f"/api/rounds/{walk}/close")

    def _table(self) -> None:
        """Parcels closed, closed in part, reopened, dropped, set aside and open; a line cancelled in its box."""
        closed = self.parcel("B-01")
        assert "refused" == self.scan("table", "S002", "other")["verdict"]
        self.accepted("table", "W001", "pack")
        self.accepted("table", "W002", "pack")
        self.accepted("tray", "W001", "back")
        self.stays["W001"] = self.calls.post("/api/stays", 201, title="Rear wheel", section="W")
        self._label(closed)
        part = self.parcel("B-23")
        self.accepted("table", "W007", "pack")
        self.calls.post(f"{part}/close", partial=True)
        self.calls.post(f"{part}/reopen")
        self.calls.post(f"{part}/close", partial=True)
        later = part.rpartition("/")[2]
        assert 303 == self.calls.client.post(f"/table/{later}/later").status_code
        self.calls.post("/api/hand-over", key="gone", text=LABEL, carrier="The red van")
        self.calls.post(f"{self.parcel('B-22')}/set-aside")  # empty: dropped
        aside = self.parcel("B-04")
        self.accepted("table", "S004", "pack")
        self.calls.post(f"{aside}/set-aside")
        self.parcel("B-09", "second")
        self.accepted("table", "L006", "pack", table="second")
        self.calls.post(f"/api/orders/{self.orders['B-09']['id']}/cancel")
        self.parcel("B-03")
        self.accepted("table", "S002", "pack")
        self.order("B-13", "S006", title="Saddle with springs", status=200)  # changed_after_pick

    def _label(self, parcel: str) -> None:
        form = {"text": LABEL, "parcel": parcel.rpartition("/")[2]}
        assert 303 == self.calls.client.post("/hand-over", data=form).status_code

    def _second_round(self) -> None:
        """A round under way: one thing picked, one missing, the others wait."""
        walk = self.walk("B-05", "B-06", "B-07", "B-26")
        self.accepted("bin", "L002", "pick", round=walk)
        self.calls.post(f"{self.line('B-07')}/short", note="Not in its bin")
        for text in ("D0146", "hello", ""):
            answer = self.calls.post("/api/scans", station="bin", round=walk, key=f"bad-{text}", text=text)
            assert "refused" == answer["verdict"]

    def _what_went_wrong(self) -> None:
        """Cards that are lost, of a thing and of an empty slot; an ordering of what stood there before."""
        for code in ("L001", "W015"):
            assert 303 == self.calls.client.post(f"/slots/{code}/lost").status_code
        self.order("B-38", "D001", "W002")
        self.calls.post("/api/orders", 201, number="B-39", ordered_at="2026-03-01", lines=[{"reference": "W001"}])

    def _returns(self) -> None:
        """One that is expected, one that was checked, a parcel that nobody expects, and a thing that was never ours."""
        one, other = (line["id"] for line in self.orders["B-01"]["lines"])
        order = self.orders["B-01"]["id"]
        self.calls.post("/api/returns", 201, order=order, lines=[one], why="Too large", until="2026-03-20")
        back = self._arrived(order=order, lines=[other])
        self.calls.post(f"{back}/check", line=other, condition="check", text=card_text("D029"))
        self._arrived()
        self.calls.post(f"{self._arrived(why='Left at the door')}/check", condition="stays")

    def _arrived(self, **said: Any) -> str:
        """The path of a return that is here."""
        path = f"/api/returns/{self.calls.post('/api/returns', 201, **said)['id']}"
        self.calls.post(f"{path}/arrived")
        return path

    def _counts(self) -> None:
        """One that is closed and one that runs, each with findings put right and left; a sample; one given up."""
        done = Count(self, "section:S", "done")
        done.look("S", "S001", "S003", "S012", "Q077", "D010", doubts=[card_text("S001")])
        done.look("S", "S011", "S013", photo=True)
        found = done.findings()
        assert {"missing-S008", "elsewhere-S012", "elsewhere-D010", "unknown-Q0771"} <= found, found
        done.resolve("elsewhere-S012", "put_right")
        done.resolve("unknown-Q0771", "ignore", reason="A neighbour's")
        done.resolve("missing-S008", "found_later")
        self.calls.post(f"{done.path}/findings/missing-S008/undo")
        self.calls.post(f"{done.path}/close")
        runs = Count(self, "section:L", "runs")
        runs.look("L", "L003", "L004", "L005", "L007")
        runs.resolve("missing-L008", "lost")
        runs.resolve("missing-L009", "withdraw", reason="Nowhere to be found")
        self.calls.post("/api/stocktakes", 201, area="section:D", sample=1)
        given_up = self.calls.post("/api/stocktakes", 201, area="tray", note="Too late today")
        self.calls.post(f"/api/stocktakes/{given_up['id']}/cancel")


class Count:
    """A count of the busy shop, with a short word for each thing done there."""

    def __init__(self, busy: BusyShop, area: str, name: str) -> None:
        self.busy, self.name, self.looks = busy, name, 0
        self.path = f"/api/stocktakes/{busy.calls.post('/api/stocktakes', 201, area=area, note='Spring')['id']}"

    def bins(self, section: str) -> Iterator[str]:
        slots = self.busy.calls.get(f"/api/slots?section={section}&limit=500")["slots"]
        yield from dict.fromkeys(slot["bin"] for slot in slots)

    def look(self, section: str, *codes: str, photo: bool = False, **more: Any) -> None:
        """By hand into the section's first bin, or as a photo of its second."""
        self.looks += 1
        body = {"key": f"{self.name}-{self.looks}", "place": list(self.bins(section))[photo], **more}
        if photo:
            self.busy.calls.upload(f"{self.path}/looks", image=small_photo(*codes), **body)
        else:
            self.busy.calls.post(f"{self.path}/looks", texts=[card_text(code) for code in codes], **body)

    def findings(self) -> set[str]:
        return {each["id"] for each in self.busy.calls.get(f"{self.path}/findings")["findings"]}

    def resolve(self, finding: str, how: str, **more: Any) -> None:
        self.busy.calls.post(f"{self.path}/findings/{finding}/resolve", how=how, **more)


HONEST = {
    "B-01": ("W001", "W002"),
    "B-03": ("S002", "S003"),
    "B-04": ("S004", "S005"),
    "B-05": ("L002",),
    "B-06": ("L003",),
    "B-07": ("L004",),
    "B-08": ("L005",),
    "B-09": ("L006", "L011"),
    "B-13": ("S006",),
    "B-17": ("L007",),
    "B-18": ("D009",),
    "B-21": ("W006",),
    "B-22": ("S007",),
    "B-23": ("W007", "W008"),
    "B-26": ("D008",),
}
"""Number → the slots of what was ordered."""

BROUGHT = ("L002", "L003")
"""The slots of things whose orders bring a listing id that nobody knew."""


def picture(colour: str) -> bytes:
    """A small picture of a thing."""
    out = io.BytesIO()
    Image.new("RGB", (32, 24), colour).save(out, "PNG")
    return out.getvalue()


def small_photo(*codes: str) -> bytes:
    """A photo of these slots' cards that a reader reads and that weighs little."""
    out = io.BytesIO()
    Image.open(io.BytesIO(photo(*codes))).save(out, "JPEG", quality=40)
    return out.getvalue()


def furnish(shop: Shop, app: Flask) -> None:
    BusyShop(shop, app).furnish()
