"""What is true in the rehearsed stock room, whatever the service believes: things, cards, bins, baskets, boxes."""

from __future__ import annotations

from dataclasses import dataclass, field
from random import Random

import titles

SECTIONS = {"D": (40, 8), "LP": (16, 4)}
"""Letters: slots, slots per bin."""

DESK = "desk"
"""Where things lie before they are stored."""

LOST = "lost"


@dataclass(eq=False, slots=True)
class Card:
    """`code` is what is printed on it. `place`: tray, pile (of cards to bring back), thing, box, gone, lost, shelf."""

    code: str
    place: str = "tray"


@dataclass(eq=False, slots=True)
class Thing:
    """`card` hangs on it. `place` is where it truly is: the name of a bin, `basket 3`, `table main`, `box 7`, `gone 7`.

    What its person was told when it was stored, and wrote beside its picture: `stay`, `code`, `reference`.
    """

    n: int
    title: str
    listed: str
    section: str
    listing: str
    card: Card | None = None
    place: str = DESK
    stay: str = ""
    code: str = ""
    reference: str = ""
    sale: Sale | None = None
    listings: dict[str, str] = field(default_factory=dict)
    """Its listing's id by channel, where that is another one than was written down."""

    def __repr__(self) -> str:
        return f"thing {self.n} ({self.code or 'not stored'}, {self.place})"

    @property
    def here(self) -> bool:
        return not self.place.startswith(("gone", LOST))

    @property
    def boxed(self) -> bool:
        return self.place.startswith("box")


@dataclass(eq=False, slots=True)
class Bought:
    """One thing of a sale as its buyer knows it.

    `reference` is what the listing said; `off`: the buyer wants it no more. `line` is the service's line for it.
    """

    thing: Thing
    reference: str
    title: str
    listing: str
    line: str = ""
    off: bool = False
    delivered: bool = False


@dataclass(eq=False, slots=True)
class Sale:
    number: str
    channel: str
    bought: list[Bought]
    id: str = ""
    slip: str = ""
    done: bool = False
    joined: Sale | None = None
    unpaid: bool = False
    """Its buyer has not paid yet, and does so, or calls it off, at `pays_at`."""

    pays_at: float = 0.0
    filed: bool = False
    """A file brought it; `account` is the channel that the account has it under, empty for its own."""

    account: str = ""
    said: tuple[str, ...] = ()
    """What its channel last said of its rows."""

    def __repr__(self) -> str:
        return f"order {self.number}"

    @property
    def key(self) -> tuple[str, str]:
        """Number and channel in the account."""
        return (self.number, self.account or self.channel)

    @property
    def all(self) -> tuple[Sale, ...]:
        """This order, and the one of the same buyer that may go with it."""
        return (self,) if self.joined is None else (self, self.joined)


@dataclass(frozen=True, eq=False, slots=True)
class Label:
    """A shipping label: what its bars say, and the order whose buyer's address it bears."""

    text: str
    sale: Sale


@dataclass(eq=False, slots=True)
class Box:
    """A box at a table: `slip` is the sale whose slip lies on it, `parcel` what its person takes it for.

    `sales` are the orders that are packed into it, `label` what is stuck on it.
    """

    n: int
    table: str
    sale: Sale
    parcel: str
    things: list[Thing] = field(default_factory=list)
    closed: bool = False
    gone: bool = False
    slip: Sale | None = None
    label: Label | None = None
    sales: tuple[Sale, ...] = ()

    @property
    def place(self) -> str:
        return f"box {self.n}"

    @property
    def to(self) -> Sale:
        """The order whose buyer gets it: the carrier reads the label, and who labels a box reads its slip."""
        return self.label.sale if self.label is not None else self.slip or self.sale

    def is_for(self, sale: Sale | None) -> bool:
        return sale is self.sale or sale in self.sales


class World:
    """`homes` says which bin bears a slot's number; that is printed on the shelves."""

    def __init__(self, random: Random) -> None:
        self.random = random
        self.homes: dict[str, str] = {}
        self.cards: list[Card] = []
        self.things: list[Thing] = []
        self.sales: list[Sale] = []
        self.boxes: list[Box] = []
        self.labels: dict[int, Label] = {}
        """By box: the shipping label that was printed for it."""
        self.boxed = self.made = 0
        """How many boxes and things there were so far: each has a number of its own."""
        self.baskets: dict[int, Sale] = {}
        self.record: dict[str, Thing] = {}
        """By slot: the thing that people wrote down for it last, with its picture."""

    def new_thing(self) -> Thing:
        title = titles.stored(self.random)
        section = self.random.choice(list(SECTIONS))
        listing = f"L{self.random.randrange(10**9)}"
        self.made += 1
        thing = Thing(self.made, title, titles.listed(self.random, title), section, listing)
        self.things.append(thing)
        return thing

    # what a person sees

    def in_tray(self, section: str = "") -> list[Card]:
        return [card for card in self.cards if card.place == "tray" and card.code.startswith(section)]

    def pile(self) -> list[Card]:
        """The cards that were taken off and are not in the tray yet."""
        return [card for card in self.cards if card.place == "pile"]

    def at(self, place: str) -> list[Thing]:
        return [thing for thing in self.things if thing.place == place]

    def bearing(self, code: str, place: str = "") -> Thing | None:
        """The thing in view on which this card hangs."""
        seen = (thing for thing in self.things if thing.here and place in ("", thing.place))
        return next((thing for thing in seen if thing.card is not None and thing.card.code == code), None)

    def pictured(self, stay: str) -> Thing | None:
        """The thing that the picture of a stay shows."""
        return next((thing for thing in self.things if thing.stay == stay), None)

    def box_of(self, parcel: str) -> Box | None:
        return next((box for box in self.boxes if box.parcel == parcel and not box.gone), None)

    def bins(self) -> list[str]:
        return sorted(set(self.homes.values()))

    # what happens

    def hang(self, card: Card, thing: Thing) -> None:
        """On this thing and no other; what hung there goes onto the pile."""
        for each in self.things:
            if each.card is card:
                each.card = None
        if thing.card is not None:
            thing.card.place = "pile"
        thing.card, card.place = card, "thing"

    def take_off(self, thing: Thing, to: str = "pile") -> Card | None:
        card, thing.card = thing.card, None
        if card is not None:
            card.place = to
        return card

    def put(self, thing: Thing, place: str) -> None:
        for box in self.boxes:
            if thing in box.things:
                box.things.remove(thing)
            if box.place == place:
                box.things.append(thing)
        thing.place = place

    def hand_over(self, box: Box) -> None:
        """The box leaves for the buyer of its label, or its slip."""
        box.gone = True
        for bought in (each for sale in box.to.all for each in sale.bought):
            bought.delivered |= bought.thing in box.things
        for thing in box.things:
            thing.place = f"gone {box.n}"
            if thing.card is not None:
                thing.card.place = "gone"
