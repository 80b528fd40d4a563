"""A day in the example shop, told as it happens; each step says what has to come of it."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import datetime
from pathlib import Path

from labels import slot_code
from scanflow.demo import goods, orders
from scanflow.demo.goods import KINDS, STORED
from scanflow.demo.steps import Json, Steps, named

SECOND_LIFE = "Leather touring saddle, oxblood, hardly used"


@dataclass(slots=True)
class Day:
    """The steps, and what they have made so far: orders by their number."""

    steps: Steps
    folder: Path
    now: datetime
    orders: dict[str, Json] = field(default_factory=dict)

    def line(self, number: str, code: str) -> Json:
        """The line of an order that asked for what first stood in this slot."""
        names = (code, slot_code.reference(code, 1), orders.MISTYPED)
        return next(line for line in self.orders[number]["lines"] if line["reference"] in names)

    def hold_now(self, number: str, code: str) -> str | None:
        """The gravest hold of that line as it stands."""
        name = self.line(number, code)["id"]
        order = self.steps.call("GET", f"/api/orders/{self.orders[number]['id']}")
        hold: str | None = next(line["hold"] for line in order["lines"] if line["id"] == name)
        return hold

    def settle_doubt(self, number: str, code: str) -> None:
        """Seen, and it is the thing: its card says so."""
        told = self.steps.call("GET", f"/api/stays/{self.line(number, code)['stay']}/doubts")["doubts"]
        body = {"how": "seen", "text": slot_code.card_text(code)}
        self.steps.call("POST", f"/api/doubts/{told[0]['id']}/settle", body)

    def settle(self, number: str, code: str, **body: str) -> None:
        self.steps.call("POST", f"/api/lines/{self.line(number, code)['id']}/settle", body)

    def cancel(self, number: str, code: str | None = None) -> None:
        body = {"line": self.line(number, code)["id"]} if code else {}
        self.steps.call("POST", f"/api/orders/{self.orders[number]['id']}/cancel", body)

    def open_parcel(self, number: str) -> Json:
        self.steps.say(f"  The parcel of {number} is opened by choosing the order.")
        return self.steps.call("POST", "/api/parcels", {"orders": [self.orders[number]["id"]]}, want=201)


def run(day: Day) -> None:
    """From putting away to the cards in the tray; leaves work for whoever opens the shop."""
    put_away(day)
    offer_on_both(day)
    orders_come_in(day)
    offers_are_taken_down(day)
    questions_are_settled(day)
    round_ = walk(day)
    wrong_cards_at_the_bin(day, round_)
    pack(day, round_)
    pack_with_second_thoughts(day)
    round_is_over(day, round_)
    cards_go_back(day)
    slot_is_used_again(day)
    what_is_left(day)


def put_away(day: Day) -> None:
    """Two more things in each section: one in the lowest free slot, one by the card in hand."""
    steps = day.steps
    steps.say(f"Putting away {2 * len(KINDS)} more things")
    for kind in KINDS:
        for code, where in (
            (kind.slot(STORED + 1), {"section": kind.code}),
            (kind.slot(STORED + 2), {"text": slot_code.card_text(kind.slot(STORED + 2))}),
        ):
            body = {"title": goods.title_of(code), "listing": goods.listing_of(code), **where}
            stay = steps.call("POST", "/api/stays", body, want=201)
            steps.check(f"The slot of {body['title']}", code, stay["code"])
        steps.say(f"    {kind.name}: up to {stay['code']}, in bin {stay['bin']}; reference {stay['reference']}")
    steps.say("  A card that is on another thing already:")
    steps.call("POST", "/api/stays", {"title": "Bell", "text": slot_code.card_text("L003")}, want="taken")
    saddle_bin, pedal_bin = _bin_of(day, "S015"), _bin_of(day, "P015")
    steps.say(f"  {named('S015')} is held before the wrong bin, then before its own:")
    steps.show("shelf", "S015", want="wrong_bin", bin=pedal_bin)
    steps.show("shelf", "S015", bin=saddle_bin)


def offer_on_both(day: Day) -> None:
    """One thing is offered twice: whoever buys it first has it."""
    steps, code = day.steps, goods.ON_BOTH
    steps.say(f"{named(code)} is offered at the fair and on the shop's own site")
    slots = steps.call("GET", f"/api/slots?section={slot_code.section_of(code)}")["slots"]
    stay = next(slot["stay"] for slot in slots if slot["code"] == code)
    for channel, listing in ((orders.FAIR, goods.listing_of(code)), (orders.SITE, f"site-{goods.listing_of(code)}")):
        offer = steps.call("POST", f"/api/stays/{stay}/listings", {"listing": listing, "channel": channel})
        steps.check(f"The offer of {code} on {channel}", "up", offer["state"])


def offers_are_taken_down(day: Day) -> None:
    """What one channel sold is taken down on the other, before it is sold twice."""
    steps = day.steps
    duties = steps.call("GET", "/api/listings?state=to_take_down")["listings"]
    steps.say(f"Offers to take down, whose things are sold: {len(duties)}")
    offer = next(each for each in duties if each["code"] == goods.ON_BOTH)
    steps.check(f"Where {goods.ON_BOTH} is offered still", orders.SITE, offer["channel"])
    steps.say(f"    {offer['listing']} on {offer['channel']}, {offer['title']}: sold at the fair, and taken down now.")
    offer = steps.call("POST", f"/api/listings/{offer['id']}/ended")
    steps.check("The offer once it is down", "ended", offer["state"])


def _bin_of(day: Day, code: str) -> str:
    listed = day.steps.call("GET", f"/api/slots?section={slot_code.section_of(code)}")
    return str(next(slot["bin"] for slot in listed["slots"] if slot["code"] == code))


def orders_come_in(day: Day) -> None:
    """From the shop's site one by one, and from a file."""
    steps = day.steps
    steps.say(f"Orders: {len(orders.SITE_ORDERS)} from the shop's site, one by one")
    for number in orders.SITE_ORDERS:
        order = steps.call("POST", "/api/orders", orders.site_order(number, day.now), want=201)
        steps.check(f"State of order {number}", "waiting", order["state"])
        day.orders[number] = order
    steps.say("  One is sent twice, and nothing changes.")
    steps.call("POST", "/api/orders", orders.site_order("1041", day.now), want=200)
    loaded = _load(day, "fair-1.csv", orders.FAIR_ROWS)
    steps.check("New orders of the file", 13, loaded["loaded"])
    steps.check("Rows that are in no order", ["no_number"], [row["code"] for row in loaded["refused"]])
    steps.say(f"    row {loaded['refused'][0]['row']} is in no order: {loaded['refused'][0]['text']}")
    again = _load(day, "fair-1.csv", orders.FAIR_ROWS)
    steps.check("New, changed and same orders of the file loaded again", (0, 0, 13), _counts(again))
    later = _load(day, "fair-2.csv", tuple(row for row in orders.FAIR_ROWS if row != orders.GONE_LATER))
    steps.check("New, changed and same orders of the later file", (0, 1, 12), _counts(later))
    for order in steps.call("GET", "/api/orders?limit=500")["orders"]:
        day.orders[order["number"]] = order


def _load(day: Day, name: str, rows: tuple[orders.FairRow, ...]) -> Json:
    file = day.folder / name
    orders.write_fair_file(file, rows, day.now)
    reply = day.steps.service.upload("/api/orders/import", {}, "file", file)
    loaded = day.steps.expect(reply, 200, f"Loading {name}")
    told = ("loaded", "changed", "unchanged")
    day.steps.say(f"  {name}: {', '.join(f'{loaded[key]} {key}' for key in told)}, {len(loaded['held'])} lines held.")
    return loaded


def _counts(loaded: Json) -> tuple[int, int, int]:
    return loaded["loaded"], loaded["changed"], loaded["unchanged"]


HELD = {
    ("F203", "D010"): "doubtful",
    ("F204", "C009"): "unknown_code",
    ("F205", "L002"): "already_sold",
    ("F206", "P008"): "bad_row",
    ("F208", "H014"): "stale_code",
    ("F209", "BL012"): "not_in_file",
}


def questions_are_settled(day: Day) -> None:
    """Six lines are held; a person settles two, cancels one, and leaves three for later."""
    steps = day.steps
    steps.say("Lines that a person has to settle")
    for (number, code), hold in HELD.items():
        line = day.line(number, code)
        steps.check(f"Hold of {number}, {code}", hold, line["hold"])
        steps.say(f"    {number} {line['reference']}: held, {hold.replace('_', ' ')}. {line['why']}")
    stays = {slot["code"]: slot["stay"] for slot in steps.call("GET", "/api/slots?section=C")["slots"]}
    steps.say("  F204 means C009, and its buyer says so: settled. F209 wants BL012 all the same: settled.")
    day.settle("F204", "C009", stay=stays["C009"])
    day.settle("F209", "BL012")
    steps.say("  F208 is cancelled; so is F202, whose buyer thought better of it.")
    day.cancel("F208")
    day.cancel("F202")


def walk(day: Day) -> Json:
    """A round for six orders: each stop is scanned, with the slips that happen on any day."""
    steps = day.steps
    numbers = ("1041", "1042", "1043", "1044", "1045", "1046")
    round_ = steps.call("POST", "/api/rounds", {"orders": [day.orders[n]["id"] for n in numbers]}, want=201)
    stops = round_["stops"]
    steps.say(f"A round for {len(numbers)} orders: {len(stops)} stops, from {stops[0]['bin']} to {stops[-1]['bin']}")
    for place, stop in enumerate(stops):
        if stop["code"] == "L009":
            steps.say("  L009 is not where it should be, which is said, and found behind its neighbour.")
            steps.call("POST", f"/api/lines/{stop['line']}/short", {"note": "not in its bin"})
        answer = steps.show("bin", stop["code"], round=round_["id"])
        steps.check(f"Line of {stop['code']}", "picked", answer["line_state"])
        if place == 0:
            steps.say("  The scanner beeps twice:")
            steps.again(answer, round=round_["id"])
        if place == 2:
            steps.say("  The first card again, two stops later:")
            steps.show("bin", stops[0]["code"], want="already_picked", round=round_["id"])
        if stop["code"] == "H011":
            steps.say("  H011 was put into the wrong basket: undone, then scanned again.")
            line = steps.call("POST", f"/api/scans/{answer['key']}/undo", {})
            steps.check("The line after the undo", "waiting", line["state"])
            steps.show("bin", stop["code"], round=round_["id"])
    return round_


def wrong_cards_at_the_bin(day: Day, round_: Json) -> None:
    """Each is refused for its own reason."""
    steps, at = day.steps, {"round": round_["id"]}
    steps.say("Wrong cards on that round")
    steps.show("bin", "S001", want="unreadable", steady=False, **at)
    steps.show("bin", "S002", "S003", want="many_codes", **at)
    steps.type("bin", "D0079", want="bad_check", **at)
    steps.show("bin", goods.STRANGER, want="unknown_code", **at)
    steps.show("bin", "S017", want="slot_free", **at)
    steps.show("bin", "S004", want="not_ordered", **at)
    steps.show("bin", "S011", want="cancelled", **at)
    steps.show("bin", "D010", want="held", **at)
    steps.show("bin", "W005", want="not_on_round", **at)
    steps.say("  P006 does not look like its picture: “not this thing”.")
    steps.call("POST", f"/api/lines/{day.line('1044', 'P006')['id']}/hold", {"why": "These pedals have no reflectors."})


def pack(day: Day, round_: Json) -> None:
    """Order 1041, with every wrong card that a table may see; 1043 is packed while it is set aside."""
    steps = day.steps
    steps.say("At the packing table")
    steps.show("table", "S003", want="no_parcel")
    parcel = day.open_parcel("1041")
    steps.show("table", "S003", want="unreadable", steady=False)
    steps.show("table", "S003", "D007", want="many_codes")
    steps.type("table", "S0034", want="bad_check")
    steps.show("table", goods.STRANGER, want="unknown_code")
    steps.say(f"  The heart of it: {named('C005')} is picked, but for order 1042.")
    steps.show("table", "C005", want="other_order")
    steps.show("table", "S003")
    answer = steps.show("table", "L002")
    steps.say("  The scanner beeps twice; then the first card again:")
    steps.again(answer)
    steps.show("table", "S003", want="already_packed")
    steps.say("  Its card is read at a bin, though it counts as packed: the parcel is held until it is scanned there.")
    steps.show("bin", "S003", want="already_packed", round=round_["id"])
    steps.check("Hold of S003", "misplaced", day.hold_now("1041", "S003"))
    steps.show("table", "S003")
    steps.show("table", "S017", want="slot_free")
    steps.show("table", "S004", want="not_ordered")
    steps.say("  L002 comes out for another look, by a scan; the scanner beeps twice, which packs nothing:")
    answer = steps.show("table", "L002", take_out=True)
    steps.again(answer)
    steps.say("  1043 is urgent, so the parcel of 1041 is set aside.")
    steps.call("POST", f"/api/parcels/{parcel['id']}/set-aside", {})
    _pack_one_and_undo(day)
    steps.say("  Back to 1041: its slip opens its parcel again.")
    steps.beep("table", parcel["slip"])
    steps.show("table", "H002", want="already_released")
    steps.say("  L002 goes in again.")
    steps.show("table", "L002")
    answer = steps.show("table", "D007")
    steps.check("Cards due from 1041", ["D007", "L002", "S003"], sorted(answer["released"]))


def _pack_one_and_undo(day: Day) -> None:
    """An order of one thing: its scan closes the parcel; a second beep and an undo don't get lost in that."""
    steps = day.steps
    day.open_parcel("1043")
    answer = steps.show("table", "H002")
    steps.check("The parcel of 1043", "closed", answer["parcel_state"])
    steps.again(answer)
    steps.say("  The bubble wrap was forgotten: undone, which opens the parcel again; then packed.")
    line = steps.call("POST", f"/api/scans/{answer['key']}/undo", {})
    steps.check("The line after the undo", "picked", line["state"])
    steps.show("table", "H002")


def pack_with_second_thoughts(day: Day) -> None:
    """Buyers change their minds while their things lie on the table."""
    steps = day.steps
    steps.say("Orders that change while they are packed")
    day.cancel("1045", "S008")
    day.open_parcel("1045")
    steps.show("table", "S008", want="cancelled")
    steps.show("table", "L009")
    steps.say("  S008 goes back to its bin.")
    steps.show("shelf", "S008", bin=_bin_of(day, "S008"))
    parcel = day.open_parcel("1046")
    steps.show("table", "D002")
    steps.say("  The buyer of 1046 no longer wants D002, which lies in the box:")
    day.cancel("1046", "D002")
    steps.show("table", "D002", want="held")
    steps.call("POST", f"/api/parcels/{parcel['id']}/close", {"partial": True}, want="still_in_box")
    answer = steps.show("table", "D002", take_out=True)
    steps.check("The line of D002 once it is out", "cancelled", answer["line_state"])
    steps.show("table", "H011")
    day.open_parcel("1044")
    steps.show("table", "P006", want="held")
    steps.say("  The picture of P006 was an old one: its card is scanned beside a new one, which settles the doubt.")
    day.settle_doubt("1044", "P006")
    steps.show("table", "P006")
    steps.show("table", "W003")


def round_is_over(day: Day, round_: Json) -> None:
    """It is closed, and refuses what is scanned after that."""
    steps = day.steps
    steps.say("The round is over")
    steps.call("POST", f"/api/rounds/{round_['id']}/close", {})
    steps.show("bin", "S001", want="closed", round=round_["id"])
    parcel = day.open_parcel("1047")
    steps.show("table", "S001", want="not_picked")
    steps.call("POST", f"/api/parcels/{parcel['id']}/set-aside", {})


def cards_go_back(day: Day) -> None:
    """Three cards come back to the tray; a number is not given again before its card was seen."""
    steps = day.steps
    steps.say("Cards go back to the tray")
    steps.say("  D007 is free, but where is its card?")
    steps.call("POST", "/api/stays", {"title": "Front derailleur, brazed on", "code": "D007"}, want="card_due")
    for code in ("S003", "L002", "D007"):
        answer = steps.show("tray", code)
    steps.show("tray", "S004", want="not_released")
    steps.say("  The network drops an answer, so the phone sends its scan again, and gets the same answer:")
    body = {"station": "tray", "key": answer["key"] + "-again", "text": slot_code.card_text("D007"), "via": "wedge"}
    first, second = (steps.call("POST", "/api/scans", body) for _ in range(2))
    steps.check("The answer to the same key", first | {"replayed": True}, second)
    steps.scans += 1


def slot_is_used_again(day: Day) -> None:
    """Its old listing does not find the new thing."""
    steps = day.steps
    steps.say("A slot is used again")
    stay = steps.call("POST", "/api/stays", {"title": SECOND_LIFE, "section": "S"}, want=201)
    steps.check("The lowest free slot and its turn", ("S003", 2), (stay["code"], stay["turn"]))
    steps.say(f"    “{SECOND_LIFE}” stands in S003, turn 2; reference {stay['reference']}")
    steps.say("  Somebody orders from the old listing of S003:")
    late = {"number": "1052", "channel": orders.SITE, "lines": [orders.line("S003")]}
    day.orders["1052"] = steps.call("POST", "/api/orders", late, want=201)
    line = day.line("1052", "S003")
    steps.check("Hold of 1052", "already_sold", line["hold"])
    steps.say(f"    1052 {line['reference']}: held, already sold. {line['why']}")


def what_is_left(day: Day) -> None:
    """A second round has begun, a parcel stands half packed, some orders wait and some are held."""
    steps = day.steps
    steps.say("Left for you: a round that has begun, a parcel half packed, orders that wait or are held, cards due")
    numbers = ("1048", "1049", "F207", "F210", "F211")
    round_ = steps.call("POST", "/api/rounds", {"orders": [day.orders[n]["id"] for n in numbers]}, want=201)
    steps.show("bin", round_["stops"][0]["code"], round=round_["id"])
    day.open_parcel("1042")
    steps.show("table", "C005")
