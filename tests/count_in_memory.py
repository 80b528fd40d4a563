"""A small room that is counted, with a short word for each thing done there."""

from __future__ import annotations

from room_in_memory import RoomInMemory

from labels.slot_code import card_text
from scanflow.domain.counts.stocktake import Certainty, Look, Stocktake
from scanflow.workflow.counts import looks, resolving, stocktakes, taking_back
from scanflow.workflow.counts.looks import IncomingLook, LabelReading
from scanflow.workflow.counts.resolving import Resolve
from scanflow.workflow.counts.stocktakes import TrackedFinding


class CountInMemory(RoomInMemory):
    """The room, and a count of all of it. D001 and D002 hang in A-1-1, D003 and D004 in A-1-2, the others in A-1-3."""

    def __init__(self, *codes: str, area: str = "room") -> None:
        super().__init__(*codes)
        self.count = self.open(area)

    def open(self, area: str = "room") -> Stocktake:
        self.count = stocktakes.open_count(self.unit, stocktakes.OpenCount(area=area))
        return self.count

    def look(self, place: str | None, *codes: str, unread: int = 0, matched: str = "", **more: object) -> Look:
        """The cards of these slots are seen at a place; a text that is no code stands as it is."""
        self.keys += 1
        texts = [LabelReading(card_text(code) if len(code) == 4 else code) for code in codes]
        texts += [LabelReading(card_text(matched), Certainty.MATCHED)] if matched else []
        texts += [LabelReading(None, Certainty.UNREAD)] * unread
        said = {"key": f"look-{self.keys}", "body": f"{place} {texts}", "place": place} | more
        return looks.look(self.unit, self.count.id, IncomingLook(texts=tuple(texts), **said))  # type: ignore[arg-type]

    def state(self) -> stocktakes.CountState:
        return stocktakes.state(self.unit, self.count.id)

    def found(self) -> list[str]:
        """What is not resolved."""
        return [each.finding.id for each in self.state().found if each.resolved is None]

    def resolve(self, finding: str, how: str, **more: object) -> TrackedFinding:
        return resolving.resolve(self.unit, self.count.id, finding, Resolve(how=how, **more))  # type: ignore[arg-type]

    def undo(self, finding: str) -> TrackedFinding:
        return taking_back.undo(self.unit, self.count.id, finding)
