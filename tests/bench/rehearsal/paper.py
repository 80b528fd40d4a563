"""The same world walked with paper alone: `python tests/bench/rehearsal/paper.py [--days N] [--service]`.

Numbers are written into listings, orders are printed as a list, cards hang on things, and eyes compare titles. No
service says no. With `--service` people slip at the same rates before the service. Rates are nominal human error
probabilities of NUREG/CR-1278 (1983), from memory; what that has not is marked as an assumption.
"""

from __future__ import annotations

import argparse
import sys
from collections import Counter
from pathlib import Path
from random import Random

sys.path[:0] = [str(Path(__file__).parents[place]) for place in (1, 2, 3)]

from rehearsal import life, report  # noqa: E402
from rehearsal.service import empty_shop  # noqa: E402
from rehearsal.world import SECTIONS, Bought, Box, Card, Sale, Thing, World  # noqa: E402

WRONG_CARD = 0.003
"""Table 20-12: the wrong one of similar things that labels alone tell apart. From memory."""

WRITING = 0.003
"""Table 20-10: a number of more than three digits is written down wrongly, 0.001; here it is three times, from the card
into the listing, the order, and the list. From memory."""

NEIGHBOUR = 0.003
"""Table 20-13: the wrong one of a group that is clearly labelled. From memory."""

OMITTED = 0.003
"""Table 20-7: an item of a long list with ticks is left out. From memory."""

UNSEEN = 0.1
"""Table 20-22: who checks another's routine work with written material overlooks an error. From memory."""

WRONG_BOX = 0.003
"""Table 20-12 again: a thing, or a slip, is laid into or onto the box beside the right one. From memory."""

SOLD_TWICE = 0.01
"""A thing sells on two channels before one listing is ended: an assumption."""

SERVICE = {
    "another card hung than the one read": WRONG_CARD,
    "mistyped reference": WRITING,
    "neighbour pulled": NEIGHBOUR,
    "neighbour taken after the right scan": NEIGHBOUR,
    "right thing not seen": OMITTED,
    "wrong basket": WRONG_BOX,
    "wrong box": WRONG_BOX * UNSEEN,
    "slips of two boxes swapped": WRONG_BOX,
    "another thing under the right card": NEIGHBOUR * UNSEEN,
    "sold twice": SOLD_TWICE,
}
"""The same slips before the service, by their kinds there; those after the last scan are overlooked as on paper."""


class Paper:
    """`listed` says which number a listing bears; `why` counts what was wrong with boxes that left, by its slip."""

    def __init__(self, seed: int) -> None:
        self.random = Random(seed)
        self.world = World(self.random)
        for section, (count, per_bin) in SECTIONS.items():
            for n in range(1, count + 1):
                code = f"{section}{n:03}"
                self.world.homes[code] = f"{section}-{(n - 1) // per_bin + 1}"
                self.world.cards.append(Card(code))
        self.numbers = self.left = self.wrong_boxes = 0
        self.why: Counter[str] = Counter()

    def slips(self, rate: float) -> bool:
        return self.random.random() < rate

    def overlooked(self, rate: float) -> bool:
        """A slip that the look at the table does not see."""
        return self.slips(rate) and self.slips(UNSEEN)

    def store(self) -> None:
        thing = self.world.new_thing()
        cards = [card for card in self.world.in_tray() if card.code.rstrip("0123456789") == thing.section]
        if not cards:
            self.world.things.remove(thing)
            return
        card = told = self.random.choice(cards)
        if len(cards) > 1 and self.slips(WRONG_CARD):
            card = self.random.choice([each for each in cards if each is not told])
        self.world.hang(card, thing)
        self.world.put(thing, self.world.homes[card.code])
        thing.code = told.code
        thing.reference = self.written(told.code)

    def written(self, code: str) -> str:
        if not self.slips(WRITING):
            return code
        return code[:-1] + self.random.choice("0123456789".replace(code[-1], ""))

    def sell(self) -> Sale | None:
        free = [thing for thing in self.world.things if thing.here and thing.sale is None and thing.reference]
        if not free:
            return None
        chosen = self.random.sample(free, min(len(free), self.random.choice((1, 1, 1, 2, 2, 3))))
        self.numbers += 1
        sale = Sale(str(self.numbers), "", [Bought(each, each.reference, each.listed, "") for each in chosen])
        for thing in chosen:
            thing.sale = sale
        return sale

    def pick(self, bought: Bought) -> tuple[Thing | None, str]:
        """The thing that goes into the box, and the slip by which it is the wrong one."""
        if self.overlooked(OMITTED):
            return None, "left out"
        found = self.world.bearing(bought.reference)
        if found is None:
            return bought.thing, ""  # looked for by its title
        if found is not bought.thing and not self.slips(UNSEEN):
            return bought.thing, ""
        near = [each for each in self.world.at(found.place) if each is not found]
        if near and self.overlooked(NEIGHBOUR):
            return self.random.choice(near), "neighbour"
        return found, "" if found is bought.thing else "wrong card or number"

    def day(self) -> None:
        for _ in range(self.random.randint(2, 4)):
            self.store()
        sales = [sale for _ in range(self.random.randint(1, 3)) if (sale := self.sell()) is not None]
        boxes = [self.pack(sale) for sale in sales]
        if len(boxes) > 1 and self.slips(WRONG_BOX):
            boxes[0].slip, boxes[1].slip = boxes[1].slip, boxes[0].slip
            self.why["slips swapped"] += 1
        for box in boxes:
            self.leave(box)

    def pack(self, sale: Sale) -> Box:
        box = Box(len(self.world.boxes) + 1, "main", sale, "", slip=sale)
        self.world.boxes.append(box)
        for bought in sale.bought:
            thing, why = self.pick(bought)
            if why:
                self.why[why] += 1
            if thing is None or not thing.here:
                continue
            others = [each for each in self.world.boxes[:-1] if not each.gone]
            into = others[-1] if others and self.overlooked(WRONG_BOX) else box
            self.why["wrong box"] += into is not box
            self.world.put(thing, into.place)
            self.world.take_off(thing, "tray")
        if self.slips(SOLD_TWICE):
            self.why["sold twice: the second buyer gets nothing"] += 1
        return box

    def leave(self, box: Box) -> None:
        wanted = {id(each.thing) for each in (box.slip or box.sale).bought}
        self.left += 1
        self.wrong_boxes += wanted != {id(thing) for thing in box.things}
        self.world.hand_over(box)
        for bought in box.sale.bought:
            if not bought.delivered:
                bought.thing.sale = None


def main() -> None:
    parser = argparse.ArgumentParser(prog="paper", description=__doc__)
    parser.add_argument("--days", type=int, default=10_000)
    parser.add_argument("--service", action="store_true", help="the same rates before the service, 1 day in 20")
    asked = parser.parse_args()
    left = wrong = 0
    why: Counter[str] = Counter()
    for seed in range((asked.days + life.DAYS - 1) // life.DAYS):
        paper = Paper(seed)
        for _ in range(life.DAYS):
            paper.day()
        left, wrong = left + paper.left, wrong + paper.wrong_boxes
        why.update(paper.why)
    print(f"paper alone, {asked.days:,} days: boxes that left wrong {report.share(wrong, left)}")
    print(f"by their slips: {dict(why)}")
    if asked.service:
        before_the_service(asked.days // 20)


def before_the_service(days: int) -> None:
    with empty_shop() as empty:
        seeds = range((days + life.DAYS - 1) // life.DAYS)
        lives = [life.rehearse(empty, seed, SERVICE, eyes=1 - UNSEEN) for seed in seeds]
    boxes, wrong = sum(each["boxes"] for each in lives), sum(each["left_wrong"] for each in lives)
    print(f"the service, {days:,} days: boxes that left wrong {report.share(wrong, boxes)}")


if __name__ == "__main__":
    main()
