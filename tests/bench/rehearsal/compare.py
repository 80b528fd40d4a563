"""Truth beside account: what the service has of each thing, card and order, and what is so."""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import Any

from rehearsal.people import Person
from rehearsal.world import Thing

ENDED = ("released", "cancelled", "returned")


@dataclass(frozen=True, slots=True)
class Amiss:
    """`known`: the service itself lists it as something to be done, so nobody is misled."""

    what: str
    thing: str = ""
    code: str = ""
    order: str = ""
    known: bool = False


def compare(person: Person) -> list[Amiss]:
    slots = {slot["code"]: slot for slot in person.calls.get("/api/slots?limit=500")["slots"]}
    orders = person.all_orders()
    known = _known(person, orders)
    by_stay = {slot["stay"]: code for code, slot in slots.items() if slot["stay"]}
    found = [Amiss(f"order {each['state']}", order=each["number"]) for each in orders if each["state"] not in ENDED]
    for thing in person.world.things:
        code = by_stay.get(thing.stay, "") if thing.stay else ""
        what = _of_thing(person, thing, code)
        if what:
            found.append(Amiss(what, str(thing.n), code or thing.code, known=code in known))
    for card in person.world.cards:
        slot = slots[card.code]
        if slot["state"] == "free" and card.place not in ("tray", "gone"):
            what = f"number free, card {card.place}"
            found.append(Amiss(what, code=card.code, known=card.code in known or card.place == "pile"))
    return found


def _known(person: Person, orders: list[dict[str, Any]]) -> set[str]:
    """The slots of which the service says that something is to be done."""
    duties = set(re.findall(r'href="/slots/([A-Z]+[0-9]+)"', person.calls.page("/slots?state=away")))
    today = person.calls.page("/")
    for line in (line for order in orders for line in order["lines"]):
        if line["code"] and (line["holds"] or line["state"] in ("short", "picked", "packed")):
            duties.add(line["code"])
    return duties | set(
        re.findall(r"\b((?:D|LP)[0-9]{3})\b", today[today.find("issing") :] if "issing" in today else "")
    )


def _of_thing(person: Person, thing: Thing, code: str) -> str:
    """What the account does not have as it is; empty if it does. `code` is the slot in which the account has it."""
    if not thing.here:
        return "thing has left, and counts as stored" if code else ""
    standing = thing.place in person.world.bins()
    if not code:
        return "thing stands in a bin without an account" if standing else ""
    if thing.boxed or thing.place.startswith("basket"):
        return ""
    if thing.place != person.world.homes[code]:
        return "thing is not in its bin"
    return "" if thing.card is not None and thing.card.code == code else "another card or none hangs on it"
