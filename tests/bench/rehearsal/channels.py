"""Three channels with files of their own, and honest people who load them, by the page or by a call."""

from __future__ import annotations

import csv
import io
import re
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from datetime import UTC, datetime
from random import Random

from form_fields import fields_of

from rehearsal.service import Calls
from rehearsal.stockroom import Stockroom
from rehearsal.tally import Tally
from rehearsal.world import Bought, Sale

ASIDE, PACK, CANCELLED, SENT = "aside", "pack", "cancelled", "sent"


@dataclass(frozen=True, slots=True)
class ChannelFile:
    """What a channel's file looks like. `header`: the heading by what its column holds, in the order of the columns.

    `words`: its own words in the status column by what they mean. `complete`: it lists all that is open.
    """

    name: str
    header: Mapping[str, str]
    words: Mapping[str, str] = field(default_factory=dict)
    complete: bool = False


_NORTH = ("Purchase", "Market", "Bought on", "Our mark", "What", "Offer", "Light")
_SOUTH = ("number", "channel", "ordered_at", "ship_by", "reference", "title", "listing")
NORTH = ChannelFile(
    "north",
    dict(zip(("number", "channel", "ordered_at", "reference", "title", "listing", "status"), _NORTH, strict=True)),
    {ASIDE: "Amber", PACK: "Green", CANCELLED: "Red", SENT: "Blue"},
)
SOUTH = ChannelFile("south", {name: name for name in _SOUTH}, complete=True)
EAST = ChannelFile("east", {"number": "No", "reference": "Mark", "title": "Thing", "listing": "Advert"})
CHANNELS = {each.name: each for each in (NORTH, SOUTH, EAST)}


def stages(sale: Sale, those: Iterable[Bought]) -> list[str]:
    """What its channel would say of each row now."""
    if sale.unpaid:
        return [CANCELLED if each.off else ASIDE for each in those]
    return [CANCELLED if each.off else SENT if sale.done else PACK for each in those]


class Loader(Stockroom):
    old_rows = 0.1
    """The chance that a file has an order, too, that was sent before anybody here heard of it."""

    def __init__(self, calls: Calls, random: Random, tally: Tally) -> None:
        super().__init__(calls, random, tally)
        self.filed_before: set[str] = set()
        """Channels whose columns are remembered, so that a program may send their files."""

        self.explained: dict[str, str] = {}
        """What the service was told that the words of the status column mean."""

    def meanings(self, words: set[str]) -> dict[str, str]:
        """What a person takes these words of a file's status column to mean."""
        return {word.casefold(): meant for meant, word in NORTH.words.items() if word.casefold() in words}

    def load(self, channel: ChannelFile, rows: dict[Sale, list[Bought]], into: str, *, part: bool) -> None:
        data, odd = self.csv_of(channel, rows)
        asked = {word.casefold() for word in channel.words.values() if f",{word}\r\n".encode() in data}
        if channel.name in self.filed_before and asked <= set(self.explained) and self.chance(0.3):
            refused = self.load_by_call(channel, data, into, part=part)
        else:
            refused = self.load_by_page(channel, data, into, self.meanings(asked), part=part)
        if refused != odd:
            self.tally.refused_call(f"rows refused: {refused - odd}", data.decode())

    def csv_of(self, channel: ChannelFile, rows: dict[Sale, list[Bought]]) -> tuple[bytes, int]:
        """The file, and how many of its rows are of orders that nobody here knows and that were sent."""
        text = io.StringIO()
        writer = csv.DictWriter(text, list(channel.header), extrasaction="ignore")
        writer.writerow(dict(channel.header))
        when = datetime.fromtimestamp(self.calls.now, UTC).isoformat()
        for sale, those in rows.items():
            for bought, stage in zip(those, stages(sale, those), strict=True):
                cells = {"number": sale.number, "channel": sale.channel, "ordered_at": when, "ship_by": ""}
                cells |= {"reference": bought.reference, "title": bought.title, "listing": bought.listing}
                writer.writerow({**cells, "status": channel.words.get(stage, "")})
        odd = int(bool(channel.words) and self.chance(self.old_rows))
        if odd:
            number = f"before-{self.random.randrange(10**6)}"
            old = {"number": number, "channel": channel.name, "ordered_at": when, "reference": "D001-01K"}
            writer.writerow({**old, "title": "", "listing": "", "status": channel.words[SENT]})
        return text.getvalue().encode(), odd

    def load_by_call(self, channel: ChannelFile, data: bytes, into: str, *, part: bool) -> int:
        more = {"channel": into, **({"part": "true"} if part else {})}
        status, answer = self.calls.send_file("/api/orders/import", "orders.csv", data, **more)
        assert status == 200, answer
        return len(answer["refused"])

    def load_by_page(self, channel: ChannelFile, data: bytes, into: str, meant: dict[str, str], *, part: bool) -> int:
        """A file is chosen, what it is taken to say is looked at and put right until it is so, and it is loaded."""
        page = self.calls.upload("/orders/load", "orders.csv", data)[1].decode()
        for _ in range(4):
            shown = fields_of(page)
            wanted = answers(channel, shown, into, meant, part=part)
            step = "apply" if wanted == shown else "look"
            page = self.calls.upload("/orders/load", "orders.csv", data, **{**wanted, "step": step})[1].decode()
            if step == "apply":
                break
        assert "<h1>The file is loaded" in page, page
        self.filed_before.add(channel.name)
        self.explained |= meant
        told = re.search(r"([0-9]+) rows? refused", page)
        return int(told[1]) if told else 0


def answers(
    channel: ChannelFile, shown: dict[str, str], into: str, meant: dict[str, str], *, part: bool
) -> dict[str, str]:
    """What a person makes of the form."""
    wanted = dict(shown)
    for name in shown:
        if name.startswith("column-"):
            wanted[name] = channel.header.get(name.removeprefix("column-"), "")
        elif name.startswith("status "):
            wanted[name] = meant[name.rsplit(" ", 1)[1]]
    if "absent" in shown:
        wanted["absent"] = "part" if part else "hold"
    if "channel" in shown:
        wanted["channel"] = into
    return wanted
