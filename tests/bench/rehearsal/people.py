"""Honest people on their rounds, at the table and at the door."""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from random import Random

from rehearsal.channels import CHANNELS
from rehearsal.selling import PATIENCE, Seller
from rehearsal.service import Calls, Json
from rehearsal.tally import Tally
from rehearsal.told import Reading, Told
from rehearsal.world import Box, Label, Sale, Thing

WANTED = ("unbound", "waiting", "picked", "short")
NOT_TAKEN = {"verdict": "refused", "reason": "not_taken", "advice": "The page of the round says why."}


@dataclass(slots=True)
class Sheet:
    """A round's printed sheet: each stop, the thing that was fetched for it, and what was written beside it."""

    name: str
    stops: list[tuple[Json, Thing | None, str]] = field(default_factory=list)


class Person(Seller):
    """`eyes`: how often the thing in hand is compared with the picture that the page shows."""

    eyes = 1.0

    def __init__(self, calls: Calls, random: Random, tally: Tally) -> None:
        super().__init__(calls, random, tally)
        self.sheets: list[Sheet] = []
        """Rounds on paper that are not entered yet."""

        self.misfiled, self.doubles = [], set()

    table, spare = "main", 0
    """Where this person packs, and after which number the baskets begin that no round names."""

    auto_close = True
    scan_at_bin = True
    slip_closes = False

    bind_labels = False
    on_paper = 0.0
    """How many of the rounds are walked with a printed sheet."""

    def settings(self, chosen: set[str]) -> None:
        """`chosen`: the settings that are on, by their fields; `check` for cards without one."""
        self.auto_close, self.scan_at_bin = "auto_close" in chosen, "scan_at_bin" in chosen
        self.slip_closes, self.bind_labels = "slip_closes" in chosen, "bind_labels" in chosen
        fields = {name: "none" if name == "check" else "yes" for name in sorted(chosen)}
        status, _ = self.calls.form("/settings", name="Rehearsal", zone="UTC", hand_overs="yes", **fields)
        assert status == 303, status
        for each in CHANNELS.values():
            if each.complete:
                self.calls.post("/api/channels", name=each.name, complete=True)
        self.adopted = "check" in chosen
        if self.adopted:
            self.adopt()

    # the round

    def walk(self) -> None:
        self.look_for_missing()
        if not self.scan_at_bin:
            self.fetch_without_round()
            return
        status, location = self.calls.form("/rounds", **self.orders_to_walk())
        if status != 303:
            return
        name = location.rsplit("/", 1)[1]
        known = {sale.id for sale in self.world.sales}
        all_stops = self.calls.get(f"/api/rounds/{name}")["stops"]
        stops = [stop for stop in all_stops if stop["state"] == "waiting" and stop["order"] in known]
        if self.on_paper and self.chance(self.on_paper):
            self.sheets.append(self.walk_on_paper(name, stops))
            self.enter_sheets()
        else:
            for stop in stops:
                self.stop(name, stop)
        self.calls.form(f"/rounds/{name}/close")

    # a round on paper

    def walk_on_paper(self, name: str, stops: list[Json]) -> Sheet:
        """The sheet says what to fetch; beside each stop the last figure of the card in hand is written."""
        sheet = Sheet(name)
        for stop in stops:
            thing = self.pull(stop)
            if thing is not None and self.sees_another(thing, stop["code"]):
                thing = None
            written = self.written(thing) if thing is not None else ""
            sheet.stops.append((stop, thing, written))
            if thing is not None:
                self.into_basket(stop, thing)
        return sheet

    def written(self, thing: Thing) -> str:
        return self.text_of(thing.card.code)[-1] if thing.card is not None else ""

    def enter_sheets(self) -> None:
        """What was written down is typed, stop by stop; what is not taken goes back."""
        while self.sheets:
            self.enter(self.sheets.pop(0))

    def enter(self, sheet: Sheet) -> None:
        shown = self.calls.page(f"/rounds/{sheet.name}/paper")
        names = dict(re.findall(r'Last digit of card (\S+) <input class="digit" name="digit-([^"]+)"', shown))
        fields, entered = {}, []
        for stop, thing, written in sheet.stops:
            number = names.get(stop["code"])
            if number is not None and written:
                fields[f"digit-{number}"] = written
                entered.append((stop, thing))
            elif number is not None:
                fields[f"gone-{number}"] = "yes"
                stay = self.stay_at(stop["code"])
                self.told.missed[stay] = self.calls.now + 20
        self.calls.form(f"/rounds/{sheet.name}/paper", **fields)
        now = {stop["line"]: stop["state"] for stop in self.calls.get(f"/api/rounds/{sheet.name}")["stops"]}
        for stop, thing in entered:
            taken = now[stop["line"]] in ("picked", "packed", "released")
            self.tally.scanned("paper", {"verdict": "accepted"} if taken else NOT_TAKEN, self.calls.now, stop["code"])
            if taken:
                self.told.read(stop["code"], self.entered_pick())
            elif thing.here and not thing.boxed:
                self.world.put(thing, f"table {self.table}")

    def entered_pick(self) -> Reading:
        return Reading(self.calls.now, "paper", "", "", True, packs=False, takes_out=False)

    def orders_to_walk(self) -> dict[str, list[str]]:
        """Of a round's form: nothing asks for all that waits."""
        return {}

    def stop(self, name: str, stop: Json) -> None:
        thing = self.pull(stop)
        if thing is None:
            self.miss(stop["line"], stop["code"], round=name)
            return
        answer = self.read_at_bin(name, stop, thing)
        if answer["verdict"] != "accepted":
            self.refused_at_bin(stop, thing, answer)
        elif self.sees_another(thing, stop["code"]):
            self.not_this(stop["line"], stop["code"], round=name)
        else:
            self.into_basket(stop, thing)

    def read_at_bin(self, name: str, stop: Json, thing: Thing) -> Json:
        code = thing.card.code if thing.card else stop["code"]
        return self.scan("bin", code, round=name)

    def pull(self, stop: Json) -> Thing | None:
        """The thing with this card in the bin that the page names, or where its words say that it lies."""
        found = self.world.bearing(stop["code"], stop["bin"])
        if found is None:
            found = self.world.bearing(stop["code"])
            if found is not None and not found.place.startswith(("basket", "table")):
                return None
        return found

    def into_basket(self, stop: Json, thing: Thing) -> None:
        sale = next(sale for sale in self.world.sales if sale.id == stop["order"])
        number = stop["basket"] or 0
        self.world.baskets[number] = sale
        self.world.put(thing, f"basket {number}")

    def refused_at_bin(self, stop: Json, thing: Thing, answer: Json) -> None:
        """The thing is left where it is."""

    def miss(self, line: str, code: str, **where: str) -> None:
        status, _ = self.calls.form(f"/lines/{line}/short", words="", **where)
        stay = self.stay_at(code)
        if status == 303 and stay:
            self.told.missed[stay] = self.calls.sent
            self.tally.noticed.append((self.calls.now, "bin: missing", code, ""))

    def not_this(self, line: str, code: str, **where: str) -> None:
        words = "After a scan a person said: not this thing."
        status, _ = self.calls.form(f"/lines/{line}/hold", words=words, **where)
        stay = self.stay_at(code)
        if status == 303 and stay:
            self.told.doubted[stay] = words
            self.tally.noticed.append((self.calls.now, "not this thing", code, ""))

    def stay_at(self, code: str) -> str:
        thing = self.world.record.get(code)
        return thing.stay if thing is not None else ""

    def sees_another(self, thing: Thing, code: str) -> bool:
        return self.world.record.get(code) is not thing and self.chance(self.eyes)

    def look_for_missing(self) -> None:
        """What was missing is looked for everywhere; what is found is said to be there, else its buyer is told."""
        for order in self.listed("held", "waiting"):
            for line in order["lines"]:
                if line["state"] == "short":
                    self.look_for(self.sale_of(order), line)

    def look_for(self, sale: Sale, line: Json) -> None:
        bought = next((each for each in sale.bought if each.line == line["id"]), None)
        if bought is None:
            return  # another channel's, as a file was loaded as the wrong one's
        thing = self.world.pictured(line["stay"])
        if thing is not None and thing.here and not thing.boxed and self.chance(0.7):
            self.put_right(thing)
        elif self.calls.now - self.told.missed.get(line["stay"], self.calls.now) > PATIENCE:
            self.give_up(bought, line)

    def fetch_without_round(self) -> None:
        """In a shop that does not scan at its bins each order's things are fetched by its page."""
        for sale in filter(self.mine, self.world.sales):
            lines = self.order(sale)["lines"] if sale.id and not sale.done else []
            waiting = [line for line in lines if line["state"] == "waiting" and not line["holds"]]
            number = self.basket_for(sale) if waiting else 0
            for line in waiting:
                home = self.world.homes[line["code"]]
                stop = {"code": line["code"], "bin": home, "line": line["id"], "order": sale.id, "basket": number}
                thing = self.pull(stop)
                if thing is None:
                    self.miss(line["id"], line["code"])
                elif not thing.place.startswith("basket"):
                    self.into_basket(stop, thing)

    def basket_for(self, sale: Sale) -> int:
        baskets = self.world.baskets
        number = next((n for n, each in baskets.items() if each is sale), max((self.spare, *baskets)) + 1)
        baskets[number] = sale
        return number

    # the table

    def pack(self) -> None:
        """Each basket that has something in it is packed, at one table or at two in turns."""
        self.gather()
        baskets = self.world.baskets.items()
        full = [(n, sale) for n, sale in baskets if self.mine(sale) and self.world.at(f"basket {n}")]
        while full:
            boxes = []
            for table in ("main", "window") if self.two_tables() else (self.table,):
                if full:
                    number, sale = full.pop()
                    box = self.open_box(sale, table)
                    if box is not None:
                        boxes.append((box, self.world.at(f"basket {number}")))
                    else:
                        self.empty(number)
            self.fill(boxes)
            for box, _ in boxes:
                self.finish(box)
        self.finish_what_is_aside()

    def gather(self) -> None:
        """What an order's page has in a basket, and is not there, is brought, or said to be missing."""
        for order in self.listed("picking", "packing", "waiting"):
            sale = self.sale_of(order)
            for line in order["lines"] if self.mine(sale) else ():
                thing = self.world.record.get(line["code"] or "")
                if line["state"] != "picked" or line["holds"] or thing is None:
                    continue
                own = self.box_of(sale, closed=False)
                if own is not None and thing in own.things:
                    self.scan_in_box(own, thing)
                elif not thing.here or thing.boxed:
                    self.miss(line["id"], line["code"])
                elif self.world.baskets.get(self.basket_of(thing)) is not sale:
                    self.carry(sale, thing)

    def scan_in_box(self, box: Box, thing: Thing) -> None:
        """It lies in its box already, though no scan says so."""
        if self.lay_open(box):
            self.into_box(box, thing)
            self.finish(box)

    def finish_what_is_aside(self) -> None:
        """The table's page lists the parcels that were set aside: what is complete by now is closed."""
        for box in list(self.world.boxes):
            if self.mine(box.sale) and not box.closed and not box.table and self.lay_open(box):
                self.finish(box)

    def basket_of(self, thing: Thing) -> int:
        return int(thing.place.split()[1]) if thing.place.startswith("basket") else 0

    def carry(self, sale: Sale, thing: Thing) -> None:
        used = {n for n in self.world.baskets if self.world.at(f"basket {n}")}
        number = next((n for n in used if self.world.baskets[n] is sale), max({self.spare, *used}) + 1)
        self.world.baskets[number] = sale
        self.world.put(thing, f"basket {number}")

    def two_tables(self) -> bool:
        return self.chance(0.2)

    def empty(self, number: int) -> None:
        """Nothing of that order is left to pack: what lies in its basket is put back later."""
        for thing in self.world.at(f"basket {number}"):
            self.world.put(thing, f"table {self.table}")

    def fill(self, boxes: list[tuple[Box, list[Thing]]]) -> None:
        while open_ := [pair for pair in boxes if pair[1]]:
            box, things = self.random.choice(open_)
            self.into_box(box, things.pop())
            if box.things and self.still_sells and not self.calls.helps:
                self.called_off(self.late, box.sale)

    def into_box(self, box: Box, thing: Thing) -> None:
        """Its card is scanned, and at a yes it is laid into the box."""
        code = self.card_at_table(thing)
        if code is None:
            self.world.put(thing, f"table {box.table}")
            return
        answer = self.scan("table", code, table=box.table)
        if answer["verdict"] == "accepted" and self.sees_another(thing, code) and answer["line"]:
            self.not_this(answer["line"], code, table=box.table)
            self.world.put(thing, f"table {box.table}")
        elif answer["verdict"] == "accepted":
            self.world.put(thing, box.place)
        else:
            self.refused_at_table(box, thing, answer)

    def card_at_table(self, thing: Thing) -> str | None:
        return thing.card.code if thing.card else None

    def refused_at_table(self, box: Box, thing: Thing, answer: Json) -> None:
        self.world.put(thing, f"table {box.table}")

    def open_box(self, sale: Sale, table: str) -> Box | None:
        """By the slip, or by choosing its order; the box that was set aside for it is taken up again."""
        if self.open_at(table) and not self.put_aside_what_is_open(table):
            return None
        before = self.box_of(sale, closed=False)
        if before is not None and before.table:
            return None
        sales = before.sales if before is not None else self.go_together(sale)
        if len(sales) == 1 and self.chance(0.5):
            answer = self.scan_slip(sale, table)
            parcel = answer["parcel"] if answer.get("parcel_state") == "open" else ""
        else:
            status, _ = self.calls.form("/table/open", order=[each.id for each in sales], table=table)
            parcel = self.shown_at(table) if status == 303 else ""
        if not parcel:
            return None
        if before is None:
            self.world.boxed += 1
            before = Box(self.world.boxed, table, sale, parcel, sales=sales)
            self.world.boxes.append(before)
        before.table, before.parcel = table, parcel
        return before

    def go_together(self, sale: Sale) -> tuple[Sale, ...]:
        """This order, with another one of its buyer that has something left to pack and no box yet."""
        other = sale.joined
        if other is None or not other.id or other.done or self.box_of(other, closed=False) is not None:
            return (sale,)
        ended = self.order(other)["state"] in ("released", "cancelled", "returned")
        return (sale,) if ended else (sale, other)

    def scan_slip(self, sale: Sale, table: str) -> Json:
        body = {"station": "table", "key": self.calls.key(), "text": sale.slip, "via": "wedge", "table": table}
        _, answer = self.calls.post("/api/scans", **body)
        self.tally.scanned("table", answer, self.calls.now, wanted=self.goes_out(sale))
        return answer if answer["verdict"] == "accepted" else {}

    def goes_out(self, sale: Sale) -> bool:
        return not sale.unpaid and any(not each.off for each in sale.bought)

    def shown_at(self, table: str) -> str:
        found = re.search(r'action="/table/([^/"?]+)/(?:close|set-aside)', self.calls.page(f"/table?table={table}"))
        return found[1] if found else ""

    def put_aside_what_is_open(self, table: str) -> bool:
        box = next(box for box in self.world.boxes if box.table == table and not box.closed)
        self.set_aside(box)
        return box.closed or box.table != table

    def set_aside(self, box: Box) -> None:
        """An empty one is no parcel any more."""
        status, _ = self.calls.form(f"/table/{box.parcel}/set-aside", table=box.table)
        if status != 303 and self.calls.get(f"/api/parcels/{box.parcel}")["state"] == "closed":
            self.seal(box)  # the last scan had closed it
            return
        if status != 303:
            self.tally.refused_call(f"set aside: {status}", box.parcel)
            return
        box.table = ""
        if self.calls.get(f"/api/parcels/{box.parcel}")["state"] == "dropped":
            for thing in list(box.things):
                self.world.put(thing, f"table {self.table}")
            self.world.boxes.remove(box)

    def finish(self, box: Box) -> None:
        """Close what is complete, now and then a part; set aside what is not."""
        parcel = self.calls.get(f"/api/parcels/{box.parcel}")
        if parcel["state"] == "open":
            packed = [line for line in parcel["lines"] if line["parcel"] == box.parcel and line["state"] == "packed"]
            missing = [line for line in parcel["lines"] if line["state"] in WANTED or self.stands_still(line)]
            parcel = self.close(box, packed, missing)
        if parcel["state"] == "closed" and not box.closed:
            self.seal(box)

    def stands_still(self, line: Json) -> bool:
        return bool(line["holds"]) and line["state"] not in ("cancelled", "returned", "released")

    def close(self, box: Box, packed: list[Json], missing: list[Json]) -> Json:
        if packed and not missing:
            self.close_whole(box)
        elif packed and not any(line["holds"] for line in packed) and self.closes_early():
            self.calls.form(f"/table/{box.parcel}/close", table=box.table, partial="yes")
        else:
            self.set_aside(box)
        found: Json = self.calls.get(f"/api/parcels/{box.parcel}")
        if found["state"] == "closed":
            self.told.closed[box.parcel] = self.calls.now
        return found

    def closes_early(self) -> bool:
        return self.chance(0.2)

    def close_whole(self, box: Box) -> None:
        if self.slip_closes:
            for sale in box.sales:
                self.scan_slip(sale, box.table)
        else:
            self.calls.form(f"/table/{box.parcel}/close", table=box.table)

    def seal(self, box: Box) -> None:
        """The cards come off, the box is closed, and its slip is laid on it."""
        for thing in box.things:
            self.card_off(thing)
        box.closed, box.slip = True, box.sale
        if self.bind_labels:
            self.label(box)

    def label(self, box: Box) -> None:
        """The slip on the box chooses its parcel; its shipping label is scanned, and stuck on."""
        label = self.label_for(box)
        wrong = next((each for each in self.world.boxes if each is not box and each.label is label), None)
        if wrong is None:
            self.put_label(box, box.slip or box.sale, label)
        else:
            self.label_is_on(wrong, box)

    def label_for(self, box: Box) -> Label:
        """What is stuck on it, or the one that was printed for it."""
        return box.label or self.printed_for(box)

    def printed_for(self, box: Box) -> Label:
        sale = box.slip or box.sale
        return self.world.labels.setdefault(box.n, Label(f"LABEL-{sale.number}-{sale.channel}-{box.n}", sale))

    def label_is_on(self, wrong: Box, box: Box) -> None:
        """This box's label is on another one, which is opened again for it; if that has left, one is printed again."""
        self.tally.noticed.append((self.calls.now, "label: on another box", "", wrong.sale.number))
        label = self.printed_for(box)
        if not wrong.gone and self.open_again(wrong):
            wrong.label = None
            self.put_label(box, box.slip or box.sale, label)
            self.finish(wrong)
            return
        self.world.labels[box.n] = again = Label(f"{label.text}-AGAIN", label.sale)
        self.put_label(box, box.slip or box.sale, again)

    def put_label(self, box: Box, sale: Sale, label: Label) -> None:
        status, location = self.calls.form("/hand-over", text=sale.slip, parcel="")
        found = re.search(r"parcel=([^&]+)", location)
        if status == 303 and found:
            status, _ = self.calls.form("/hand-over", text=label.text, parcel=found[1])
        if status == 303:
            box.label = label
        else:
            self.tally.refused_call(f"label: {status}", f"{label.text} on the box of {sale.number}")

    def card_off(self, thing: Thing) -> None:
        self.world.take_off(thing)

    def open_again(self, box: Box) -> bool:
        """A closed box that is still here: its cards are hung on its things again."""
        table = box.table or self.table
        if self.open_at(table):
            self.put_aside_what_is_open(table)
        status, _ = self.calls.form(f"/table/{box.parcel}/reopen", table=table)
        if status != 303:
            self.tally.refused_call(f"reopen: {status}", box.parcel)
            return False
        box.closed, box.slip, box.table = False, None, table
        for thing in box.things:
            card = next(
                (card for card in self.world.cards if card.code == thing.code and card.place in ("pile", "tray")), None
            )
            if card is not None and thing.card is None:
                self.world.hang(card, thing)
        return True

    def lay_open(self, box: Box) -> bool:
        """Its box lies open at its table, whatever lies there now is set aside."""
        if box.table:
            return True
        return self.open_box(box.sale, self.table) is box

    # the door

    def hand_over(self) -> None:
        for box in list(self.world.boxes):
            if self.mine(box.sale) and box.closed and not box.gone and self.chance(0.9):
                self.hand_over_one(box)

    def hand_over_one(self, box: Box) -> None:
        text, told = box.label.text if box.label else (box.slip or box.sale).slip, self.told.so_far()
        _, answer = self.calls.post("/api/hand-over", key=self.calls.key(), text=text)
        if "verdict" not in answer:
            self.tally.refused_call(f"hand-over: {answer.get('code')}", answer.get("detail", ""))
            return
        stays = any(sale.unpaid or any(each.off for each in sale.bought) for sale in box.to.all)
        self.tally.scanned("hand-over", answer, self.calls.now, wanted=not stays)
        if answer["verdict"] == "accepted":
            self.leaves(box, answer["parcel"], told)
        elif answer["reason"] in ("held", "cancelled"):
            self.stays_here(box, answer)

    def leaves(self, box: Box, parcel: str, told: Told) -> None:
        """`told`: what the service had been told when it was asked; nothing if nobody asked."""
        lines = self.calls.get(f"/api/parcels/{parcel}")["lines"]
        mine = [line for line in lines if line["parcel"] == parcel]
        against = {line["id"]: told.against(line["code"], line["stay"], line["id"], parcel) for line in mine}
        now = {line["code"]: line["stay"] for line in mine}  # a reading of a number that went on was the other thing's
        its_own = {thing.n: now.get(thing.code, thing.stay) == thing.stay for thing in box.things}
        taken_in = {thing.n: told.taken_in(thing.code, parcel) if its_own[thing.n] else "" for thing in box.things}
        by_channel = {line["id"]: told.by_channel(line["id"]) for line in mine}
        self.tally.left(self.calls.now, box, list(box.things), mine, against, taken_in, by_channel)
        self.world.hand_over(box)

    def stays_here(self, box: Box, answer: Json) -> None:
        """It is opened again; where a number is another thing's by now, what is wanted no more is taken back."""
        if self.open_again(box):
            self.settle_all()
            if box in self.world.boxes and not box.closed:
                self.finish(box)
            return
        for sale in box.sales:
            self.take_back(sale, [each for each in sale.bought if each.off])
        if not box.things:
            self.world.boxes.remove(box)

    # the end of the day

    def tidy(self) -> None:
        """What lies on a table goes back; what no order wants any more is taken out of its basket."""
        for thing in list(self.world.things):
            if thing.place.startswith(("table", "aside")):
                self.put_back(thing)
