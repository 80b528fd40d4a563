"""Who may see and do what on the pages, in one place. What is not named here is the owner's alone.

The calls of the API say theirs where they are declared (`api.contract`).
"""

from __future__ import annotations

from flask import g, request

from scanflow.storage.access import Role
from scanflow.web.door.visitors import OPEN, need

HELPERS = frozenset(
    {
        "today.show",
        "edges.show",
        "search_page.show",
        *("look_page.show", "look_page.look_at"),
        *("put_away.show", "put_away.store", "put_away.stored"),
        *("order_page.index", "order_page.show", "order_page.pack", "order_page.change"),
        *("round_page.index", "round_page.show", "round_page.start", "round_page.close"),
        *("table_page.show", "table_page.open_parcel", "table_page.close", "table_page.set_aside"),
        *("table_page.reopen", "order_page.take_back", "closing_page.show"),
        *("tray_page.show", "shelf_page.show", "scanner_page.show", "look_page.show", "look_page.look_at"),
        *("slot_page.index", "slot_page.show", "slot_page.lose_card"),
        *("slot_page.story", "slot_page.doubted", "slot_page.edit", "slot_page.move", "slot_page.exchange"),
        "slot_page.photo",
        *("paper_page.order_slip", "paper_page.order_slips", "paper_page.round_slips", "paper_page.sheet"),
        *("paper_page.entry", "paper_page.enter", "hand_over_page.show", "hand_over_page.scan"),
        *("count_page.index", "count_page.start", "count_page.due", "count_page.show", "count_page.picture"),
        *("count_page.close", "count_page.cancel", "count_report.show"),
        *("count_findings.show", "count_findings.resolve", "count_findings.undo"),
        *("plan_page.show", "plan_page.made", "section_page.show", "room_page.show"),
    }
)
"""Endpoints for helpers too: scan, put away, pack, look."""


def may(endpoint: str) -> bool:
    """Whether the visitor may use a page: links to others are not shown."""
    visitor = g.get("visitor")
    if visitor is None or endpoint in OPEN:
        return endpoint in OPEN
    return visitor.role is Role.OWNER or (visitor.role is Role.HELPER and endpoint in HELPERS)


def admit() -> None:
    """`Problem` 403 unless the visitor may use the page that is asked for. A program has the API."""
    if not may(request.endpoint or ""):
        need(Role.OWNER, *([Role.HELPER] if request.endpoint in HELPERS else []))
