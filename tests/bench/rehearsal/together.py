"""Two people who work at the same time: each walks a round, packs at a table and goes to the door, with a token each.

The second is a helper: what a helper may not do waits for the owner. Who does something in the room holds its `hands`;
they are free while a call is on its way, so the service is asked by both at once, and the other goes on meanwhile.
Which call comes first is not the seed's to say, so such days are no replays.
"""

from __future__ import annotations

from random import Random
from threading import Lock, Thread

from rehearsal import day
from rehearsal.service import Calls, Json
from rehearsal.slips_rounds import Slipping
from rehearsal.world import Bought, Box, Sale


class Mate(Slipping):
    """One of two people at work: `share` are the orders that are this one's today."""

    share: frozenset[str] = frozenset()

    def mine(self, sale: Sale) -> bool:
        return sale.number in self.share

    def two_tables(self) -> bool:
        return False

    def orders_to_walk(self) -> dict[str, list[str]]:
        return {"order": [sale.id for sale in self.world.sales if self.mine(sale) and sale.id and not sale.done]}

    def cancel(self, sale: Sale, bought: Bought | None) -> None:
        """A box at the other's table is not opened while that one packs there: the buyer is answered later."""
        box = self.box_of(sale, closed=True)
        if box is None or box.table in ("", self.table) or not self.open_at(box.table):
            super().cancel(sale, bought)

    def at_once(self) -> None:
        """What both do at the same time."""
        self.walk()
        self.minds_change(0.05)
        self.pack()
        self.send_late()
        self.hand_over()


class Helper(Mate):
    """What a helper may not do is the owner's, once both are through."""

    def look_for_missing(self) -> None:
        """The owner looks."""

    def minds_change(self, chance: float) -> None:
        """Buyers write to the owner; meanwhile a thing is put away."""
        self.put_away()

    def settle_all(self) -> None:
        """Held lines are the owner's to settle."""

    def stays_here(self, box: Box, answer: Json) -> None:
        """A box that must not leave stands there for the owner."""


def two_of(owner: Slipping, calls: Calls) -> tuple[Mate, Helper]:
    """The same people's ways and room, each with calls, chance and a table of their own."""
    mate = Mate(owner.calls, owner.random, owner.tally)
    helper = Helper(calls, Random(owner.random.random()), owner.tally)
    for each in (mate, helper):
        each.__dict__.update({name: value for name, value in vars(owner).items() if name not in ("calls", "random")})
    mate.sheets, helper.sheets = [], []
    mate.spare, helper.spare, helper.table = 100, 200, "window"
    return mate, helper


def work(owner: Slipping, calls: Calls) -> None:
    """A day's work by two at once; then the owner alone does what is left."""
    calls.sign_in()
    owner.settle_all()
    mate, helper = two_of(owner, calls)
    numbers = [sale.number for sale in owner.world.sales if not sale.done]
    helper.share = frozenset(number for number in numbers if owner.chance(0.5))
    mate.share = frozenset(numbers) - helper.share
    hands, broken = Lock(), list[BaseException]()
    owner.calls.watch.hands = hands

    def help_out() -> None:
        with hands:
            try:
                helper.at_once()
            except BaseException as error:
                broken.append(error)

    thread = Thread(target=help_out)
    with hands:
        thread.start()
        try:
            mate.at_once()
        finally:
            hands.release()
            thread.join()
            hands.acquire()
            owner.calls.watch.hands = None
    if broken:
        raise broken[0]
    day.work(owner)
