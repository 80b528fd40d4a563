"""Counts of one rehearsed shop: what was refused or held, and what left the house wrong."""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass, field
from typing import Any


@dataclass(frozen=True, slots=True)
class Wrong:
    """A box that left with a wrong thing, or without one that was said to be in it.

    `against`: what was told against it before it left; then it is an escape.
    """

    at: float
    order: str
    thing: str
    code: str
    how: str
    against: str


@dataclass(slots=True)
class Tally:
    """Counts by station or kind; `examples` are the first of each, with their words."""

    scans: Counter[str] = field(default_factory=Counter)
    refused: Counter[str] = field(default_factory=Counter)
    rightly: Counter[str] = field(default_factory=Counter)
    held: Counter[str] = field(default_factory=Counter)
    calls_refused: Counter[str] = field(default_factory=Counter)
    lines: int = 0
    examples: dict[str, str] = field(default_factory=dict)
    noticed: list[tuple[float, str, str, str]] = field(default_factory=list)
    """When something was refused or held, what, and of which card and order."""

    handed_over: int = 0
    left_wrong: int = 0
    """Boxes, of those handed over."""

    wrong: list[Wrong] = field(default_factory=list)

    def scanned(self, station: str, answer: dict[str, Any], at: float, code: str = "", *, wanted: bool = True) -> None:
        """`code` is that of the card in hand, whatever was read of it.

        `wanted`: that the buyer still wants what was scanned; else a refusal is as it should be.
        """
        self.scans[station] += 1
        if answer["verdict"] == "refused":
            kind = f"{station}: {answer['reason']}"
            self.refused[kind] += wanted
            self.rightly[kind] += not wanted
            self.examples.setdefault(kind, answer["advice"])
            self.noticed.append((at, kind, answer.get("code") or code, answer.get("order_number") or ""))

    def refused_call(self, kind: str, said: str) -> None:
        self.calls_refused[kind] += 1
        self.examples.setdefault(kind, said)

    def received(self, order: dict[str, Any], at: float, *, unpaid: bool = False) -> None:
        """`unpaid`: it is right that it waits for its money."""
        for line in order["lines"]:
            if line["hold"] and not (unpaid and line["hold"] == "not_cleared"):
                kind = str(line["hold"])
                self.held[kind] += 1
                self.examples.setdefault(kind, f"{line['why']} ({line['reference']}, {line['title']})")
                self.noticed.append((at, f"order: {kind}", line["code"] or "", order["number"]))

    def left(
        self,
        at: float,
        box: Any,
        inside: list[Any],
        lines: list[Any],
        against: dict[str, str],
        taken_in: dict[int, str],
        by_channel: dict[str, str],
    ) -> None:
        """A box is handed over: `inside` is what truly lies in it, `lines` what the service takes to be in it.

        What its buyer did not buy is too much; what the service says is in it, and is not, is missing. `by_channel`:
        what its channel said against each line's leaving.
        """
        self.handed_over += 1
        before = len(self.wrong)
        sale = box.to
        wanted = {id(each.thing) for order in sale.all for each in order.bought if not each.off}
        for thing in inside:
            if id(thing) in wanted:
                continue
            told = next((against[line["id"]] for line in lines if line["stay"] == thing.stay), taken_in[thing.n])
            self.wrong.append(Wrong(at, sale.number, str(thing.n), thing.code, "too much", told))
        bought = {each.line: each for order in box.sale.all for each in order.bought}
        for line in lines:
            each = bought.get(line["id"])
            if each is not None and not each.off and each.thing not in inside:
                self.wrong.append(
                    Wrong(at, sale.number, str(each.thing.n), line["code"], "missing", against[line["id"]])
                )
        unpaid = {each.line for order in box.sale.all for each in order.bought if order.unpaid and not each.off}
        for line in lines:
            said = by_channel[line["id"]]
            if said or line["id"] in unpaid:
                how = "against its channel" if said else "not paid"
                thing = str(bought[line["id"]].thing.n) if line["id"] in bought else ""
                self.wrong.append(Wrong(at, sale.number, thing, line["code"], how, said))
        self.left_wrong += len(self.wrong) > before
