"""Slips on rounds, at the table and at the door."""

from __future__ import annotations

from rehearsal import restoring
from rehearsal.service import Json
from rehearsal.slips_stock import YES, StockSlips
from rehearsal.told import Told
from rehearsal.world import Bought, Box, Label, Sale, Thing


class Slipping(StockSlips):
    """People who make each kind of slip that their habit has, and are honest in all else."""

    scanless = False
    dead = entering = False
    unsent: list[tuple[float, str, str]]

    def neighbour(self, thing: Thing) -> Thing | None:
        near = [each for each in self.world.at(thing.place) if each is not thing and each.card is not None]
        return self.random.choice(near) if near else None

    # the account

    def in_the_evening(self) -> None:
        """The shop is backed up, by those who will need it."""
        if self.slips("yesterday's backup restored"):
            self.evening = restoring.back_up(self)

    def at_noon(self) -> None:
        if self.evening is not None:
            restoring.restore(self, self.evening)
            self.evening = None

    evening: restoring.Evening | None = None

    # the round

    def walk(self) -> None:
        self.unsent = []
        self.scanless = self.slips("whole round without scans")
        self.dead = self.slips("phone without network")
        super().walk()
        self.scanless = self.dead = False

    def send_late(self) -> None:
        """The phone has network again: what it kept goes out, oldest first, with its age."""
        for at, name, code in getattr(self, "unsent", ()):
            self.scan("bin", code, round=name, age_ms=round((self.calls.now + 20 - at) * 1000))
        self.unsent = []
        self.entering = True
        self.enter_sheets()
        self.entering = False

    def pull(self, stop: Json) -> Thing | None:
        thing = super().pull(stop)
        if thing is None:
            return None
        if self.slips("right thing not seen", thing):
            return None
        other = self.neighbour(thing)
        if other is not None and self.slips("neighbour pulled", thing, other):
            return other
        return thing

    def read_at_bin(self, name: str, stop: Json, thing: Thing) -> Json:
        code = thing.card.code if thing.card else stop["code"]
        if self.scanless:
            self.of_last("whole round without scans", thing)
            return YES
        if self.dead:
            self.of_last("phone without network", thing)
            self.unsent.append((self.calls.now, name, code))
            return YES
        if self.slips("picked without a scan", thing):
            return YES
        return super().read_at_bin(name, stop, thing)

    def of_last(self, kind: str, thing: Thing) -> None:
        """The last slip of this kind is about this thing too."""
        last = next(each for each in reversed(self.habit.made) if each.kind == kind)
        last.things = (*last.things, thing)

    def into_basket(self, stop: Json, thing: Thing) -> None:
        other = self.neighbour(thing)
        if other is not None and self.slips("neighbour taken after the right scan", thing, other):
            thing = other
        super().into_basket(stop, thing)
        used = [n for n, sale in self.world.baskets.items() if n != stop["basket"] and self.world.at(f"basket {n}")]
        if used and self.slips("wrong basket", thing, orders=tuple(self.world.baskets[n] for n in used)):
            self.world.put(thing, f"basket {self.random.choice(used)}")

    def refused_at_bin(self, stop: Json, thing: Thing, answer: Json) -> None:
        if self.slips("refusal ignored at the bin", thing):
            self.into_basket(stop, thing)

    # on paper

    def written(self, thing: Thing) -> str:
        figure = super().written(thing)
        if figure and self.slips("another figure written down", thing):
            return self.random.choice("0123456789".replace(figure, ""))
        return figure

    def enter_sheets(self) -> None:
        """At times the sheet lies about until the day's boxes are packed."""
        things = [thing for sheet in self.sheets for _, thing, _ in sheet.stops if thing is not None]
        if not self.entering and things and self.slips("paper entered late", *things):
            return
        super().enter_sheets()

    # labels

    def label_for(self, box: Box) -> Label:
        """At times the label of the box beside it is scanned and stuck on this one."""
        others = [each for each in self.world.boxes if each is not box and not each.gone and each.label is None]
        wrong = others and box.label is None
        if wrong and self.slips("label scanned for the wrong parcel", *box.things, orders=(box.sale, others[0].sale)):
            return super().label_for(others[0])
        return super().label_for(box)

    # the table

    def into_box(self, box: Box, thing: Thing) -> None:
        others = [each for each in self.at_hand(box) if each is not thing]
        if others and thing.card and self.slips("another thing under the right card", thing, *others[:1]):
            if self.scan("table", thing.card.code, table=box.table)["verdict"] == "accepted":
                self.world.put(others[0], box.place)
            return
        super().into_box(box, thing)
        if thing.place == box.place:
            self.after_packing(box, thing)

    def at_hand(self, box: Box) -> list[Thing]:
        """What lies about the table: on it, and in other baskets."""
        return [each for each in self.world.things if each.place.startswith(("table", "basket"))]

    def after_packing(self, box: Box, thing: Thing) -> None:
        others = [each for each in self.world.boxes if each is not box and not each.closed]
        if others and self.slips("wrong box", thing, orders=tuple(each.sale for each in others[:1])):
            self.world.put(thing, others[0].place)
        if thing.card and not box.closed and self.slips("packed thing read elsewhere", thing):
            self.scan("shelf", thing.card.code, bin=self.random.choice(self.world.bins()))
            self.world.put(thing, self.random.choice(self.world.bins()))

    def refused_at_table(self, box: Box, thing: Thing, answer: Json) -> None:
        super().refused_at_table(box, thing, answer)
        if self.slips("refusal ignored at the table", thing, orders=(box.sale,)):
            self.world.put(thing, box.place)

    def open_box(self, sale: Sale, table: str) -> Box | None:
        """At times the slip of the order beside it is taken, and its box filled from this basket."""
        others = [each for each in self.world.baskets.values() if each is not sale and not each.done]
        if others and self.slips("wrong order's box opened", orders=(sale, others[0])):
            sale = others[0]
        early = self.scanned_early(sale, table)
        box = super().open_box(sale, table)
        if box is not None and early is not None:
            self.world.put(early, box.place)
        return box

    def scanned_early(self, sale: Sale, table: str) -> Thing | None:
        """A thing of this order whose card had a yes before any box was open."""
        baskets = [number for number, each in self.world.baskets.items() if each is sale]
        things = [thing for number in baskets for thing in self.world.at(f"basket {number}") if thing.card is not None]
        if not things or self.open_at(table) or not self.slips("scanned before the box was opened", things[0]):
            return None
        code = self.card_at_table(things[0])
        return things[0] if code and self.scan("table", code, table=table)["verdict"] == "accepted" else None

    def closes_early(self) -> bool:
        return self.slips("closed early")

    def finish(self, box: Box) -> None:
        if not box.closed and len(box.things) > 1 and self.slips("taken out without a scan", *box.things):
            self.world.put(box.things[-1], f"table {box.table or 'main'}")
        if not box.closed and box.table and box.things and box.things[0].card:
            thing = box.things[0]
            if self.slips("said to be taken out and left in", thing, orders=(box.sale,)) and thing.card:
                self.scan("table", thing.card.code, table=box.table, take_out=True)
        super().finish(box)
        again = box.closed and self.slips("closed box opened again", *box.things, orders=(box.sale,))
        if again and self.open_again(box):
            super().finish(box)

    # doubts and holds

    def sees_another(self, thing: Thing, code: str) -> bool:
        if self.world.record.get(code) is thing and self.slips("right thing doubted", thing):
            return True
        return super().sees_another(thing, code)

    def choose(self, sale: Sale, bought: Bought, line: Json) -> None:
        if line["stay"] and self.slips("held line settled without a look", bought.thing, orders=(sale,)):
            self.calls.form(f"/lines/{line['id']}/settle", hold=line["hold"])
            return
        super().choose(sale, bought, line)

    def report_missing(self) -> None:
        """Between round and table somebody says of a thing that it is missing, or another; or a buyer thinks again."""
        late = "cancelled by the buyer after the pick"
        kinds = {"reported missing and there", "right thing doubted in its basket", late}
        for order in self.listed("waiting", "picking") if kinds & set(self.habit.chances) else ():
            for line in order["lines"]:
                thing = self.world.record.get(line["code"] or "")
                if thing is None or line["state"] not in ("waiting", "picked"):
                    continue
                if self.slips("reported missing and there", thing):
                    self.miss(line["id"], line["code"])
                elif line["state"] == "picked" and self.slips("right thing doubted in its basket", thing):
                    self.not_this(line["id"], line["code"])
                elif line["state"] == "picked" and self.slips(late, thing):
                    sale = self.sale_of(order)
                    self.cancel(sale, next((each for each in sale.bought if each.line == line["id"]), None))

    # the door

    def hand_over(self) -> None:
        boxes = [box for box in self.world.boxes if self.mine(box.sale)]
        closed = [box for box in boxes if box.closed and not box.gone and box.slip is not None]
        if len(closed) > 1 and closed[0].slip is not closed[1].slip:
            sales = (closed[0].sale, closed[1].sale)
            if self.slips("slips of two boxes swapped", *closed[0].things, *closed[1].things, orders=sales):
                closed[0].slip, closed[1].slip = closed[1].slip, closed[0].slip
        labelled = [box for box in closed if box.label is not None]
        if len(labelled) > 1:
            one, other = labelled[:2]
            if self.slips("labels of two boxes swapped", *one.things, *other.things, orders=(one.sale, other.sale)):
                one.label, other.label = other.label, one.label
        for box in closed:
            if not box.gone and self.slips("left the house without a scan", *box.things, orders=(box.sale,)):
                self.leaves(box, box.parcel, Told())
        for box in boxes:
            if not box.closed and self.slips("open box carried to the door", *box.things, orders=(box.sale,)):
                self.hand_over_one(box)
        super().hand_over()
