"""Yesterday's backup is put back in the middle of a day: the room goes on, and the account is of the evening before."""

from __future__ import annotations

from dataclasses import dataclass

from rehearsal.counting import Counting
from rehearsal.service import Json
from rehearsal.told import Told
from rehearsal.world import Bought, Box, Sale, Thing

LIVE = ("unbound", "waiting", "picked", "packed", "short")


@dataclass(frozen=True, slots=True)
class Evening:
    """What the account knew as it was backed up."""

    told: Told
    record: dict[str, Thing]


def back_up(person: Counting) -> Evening:
    person.calls.house.back_up()
    return Evening(person.told.so_far(), dict(person.world.record))


def restore(person: Counting, evening: Evening) -> None:
    """The people know what they did since: orders come again, things are stored again, what lies in baskets is picked
    again, and boxes are packed again.
    """
    person.calls.restore()
    person.told, person.world.record = evening.told, evening.record
    person.sheets = [sheet for sheet in person.sheets if is_known(person, f"/api/rounds/{sheet.name}")]
    if person.counted and not is_known(person, f"/api/stocktakes/{person.counted}"):
        person.counted = person.begin_count()
    for box in [box for box in person.world.boxes if not box.gone]:
        unpack(person, box)
    for thing in person.world.things:
        forget_what_is_unknown(person, thing)
    known = person.by_number(person.all_orders())
    person.filed_before.clear()
    person.explained.clear()
    person.misfiled.clear()
    for sale in person.world.sales:
        order = known.get(sale.key)
        sale.id, sale.said = (order["id"] if order is not None else ""), ()
        sale.account = sale.account if order is not None else ""
        if order is not None:
            what_left_since(person, sale, order)
    store_again(person)
    again = [sale for sale in person.world.sales if not sale.id and not sale.done and to_send(sale)]
    person.receive(again, by_file=True)
    for sale in again:
        for bought in sale.bought:
            if bought.off or bought.delivered:
                person.calls.form(f"/lines/{bought.line}/cancel")
    person.receive([sale for sale in person.news() if not sale.done], by_file=True)
    person.settle_all()
    person.walk()


def is_known(person: Counting, path: str) -> bool:
    return person.calls.send("GET", path)[0] != 404


def to_send(sale: Sale) -> bool:
    return any(not each.off and not each.delivered for each in sale.bought)


def unpack(person: Counting, box: Box) -> None:
    """A box that has not left is opened, and its things lie in a basket again, each with its own card."""
    for thing in list(box.things):
        cards = [card for card in person.world.cards if card.code == thing.code and card.place in ("pile", "tray")]
        if cards and thing.card is None:
            person.world.hang(cards[0], thing)
        person.carry(box.sale, thing)
    person.world.boxes.remove(box)


def forget_what_is_unknown(person: Counting, thing: Thing) -> None:
    """Of what was stored since there is no page any more."""
    if thing.stay and not is_known(person, f"/api/stays/{thing.stay}"):
        thing.stay = thing.code = ""


def what_left_since(person: Counting, sale: Sale, order: Json) -> None:
    """What its buyer has got by now is taken off the order, and out of stock; what was cancelled since is so again."""
    for bought, line in zip(sale.bought, order["lines"], strict=False):
        bought.line = line["id"]
        if line["state"] in LIVE and (bought.delivered or bought.off):
            person.told.off.add(bought.line)
            person.calls.form(f"/lines/{line['id']}/cancel")
        if not bought.thing.here and line["stay"] == bought.thing.stay:
            withdraw(person, bought)


def withdraw(person: Counting, bought: Bought) -> None:
    stay = bought.thing.stay
    if person.calls.get(f"/api/stays/{stay}")["state"] == "stored":
        person.calls.form(f"/stays/{stay}/withdraw", reason="It left before the backup was put back.")


def store_again(person: Counting) -> None:
    """What was stored since hangs with its card in its bin; it is told again, and gets the same number."""
    for thing in person.world.things:
        if thing.here and not thing.stay and thing.card is not None and thing.reference:
            place = thing.place
            if person.store(thing, thing.card):
                person.world.put(thing, place)
