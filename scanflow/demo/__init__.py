"""The example shop: made, printed, photographed, and run for a day through a real service."""

from __future__ import annotations

import tempfile
import time
from collections import Counter
from collections.abc import Callable
from dataclasses import asdict, dataclass
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

from scanflow.demo import day, pictures, room
from scanflow.demo.service import NoService, RunningService
from scanflow.demo.steps import Steps, Unexpected
from scanflow.storage.program import PROGRAM, typed
from scanflow.vision.workers import Readers

__all__ = ["FolderInUse", "NoService", "Unexpected", "new_folder", "run", "tell"]

NEEDS_A_PAGE = "`retired` needs a card given up as lost; that is said on a page, so it is not part of this day."


class FolderInUse(Exception):
    """The folder for the example shop holds something already."""


@dataclass(frozen=True, slots=True)
class Report:
    """What the day came to. Paths as text; `readings` counts pictures' readings by the decoders that read them."""

    data: str
    seconds: float
    scans: int
    refusals: list[dict[str, str]]
    readings: dict[str, int]
    photographs: list[str]
    cards: list[str]
    orders: dict[str, int]
    ledger: int
    command: str

    def as_dict(self) -> dict[str, Any]:
        return asdict(self)


def new_folder(wanted: Path | None) -> Path:
    """The folder wanted, made if need be, or a new one for scratch; `FolderInUse` if it is not empty."""
    if wanted is None:
        return Path(tempfile.mkdtemp(prefix="scanflow-demo-"))
    wanted.mkdir(parents=True, exist_ok=True)
    if any(wanted.iterdir()):
        raise FolderInUse(f"{wanted} is not empty. Choose an empty folder or a new one for the example shop.")
    return wanted.resolve()


def run(data: Path, say: Callable[[str], None]) -> Report:
    """Make the shop in an empty folder and run its day; `Unexpected` or `NoService` where it goes wrong."""
    begun, now = time.perf_counter(), datetime.now(UTC)
    cards, photos, files = (data / name for name in ("cards", "photos", "orders"))
    for folder in (cards, photos, files):
        folder.mkdir()
    say(f"The example shop, in {data}")
    sheets = pictures.print_cards(cards)
    say(f"  {len(sheets)} sheets of cards are printed: {cards}")
    say(f"  {room.make(data, now)} things are in stock, put away over the last days.")
    with Readers(1) as readers, RunningService(data) as service:
        say(f"  The service runs at {service.address}; all that follows goes through it.")
        steps = Steps(service, pictures.Photographer(sheets, photos), readers, say)
        day.run(day.Day(steps, files, now))
        orders = Counter(order["state"] for order in steps.call("GET", "/api/orders?limit=500")["orders"])
        entries = steps.call("GET", "/api/health")["ledger"]
    return Report(
        data=str(data),
        seconds=round(time.perf_counter() - begun, 1),
        scans=steps.scans,
        refusals=[asdict(refusal) for refusal in steps.refusals],
        readings=dict(steps.engines),
        photographs=[str(path) for path in sorted(photos.iterdir())],
        cards=[str(path) for path in sorted(cards.iterdir())],
        orders=dict(orders),
        ledger=entries,
        command=f"{PROGRAM} {typed('serve', '--data', str(data))}",
    )


def tell(report: Report, say: Callable[[str], None]) -> None:
    """The end of the story: what was refused, and where everything is."""
    say("Refusals met")
    for refusal in report.refusals:
        say(f"    {refusal['station']:<5}  {refusal['reason']:<16}  {refusal['advice']}")
    say(f"    {NEEDS_A_PAGE}")
    say("In figures")
    say(f"    {report.scans} scans, {len(report.photographs)} with a photograph; {report.ledger} entries in the ledger")
    say(f"    read by {', '.join(f'{name}: {count}' for name, count in sorted(report.readings.items()))}")
    say(f"    orders: {', '.join(f'{count} {state}' for state, count in sorted(report.orders.items()))}")
    say(f"    {report.seconds} s")
    say("Where everything is")
    say(f"    photographs  {Path(report.data, 'photos')}")
    say(f"    cards        {Path(report.data, 'cards')}")
    say(f"    order files  {Path(report.data, 'orders')}")
    say("Open the shop with")
    say(f"    {report.command}")
