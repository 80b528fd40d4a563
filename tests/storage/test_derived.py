"""What is derived by SQL, held to the domain."""

from __future__ import annotations

from furnished import furnish

from scanflow.domain.derive import must_go_back, order_state, slot_state
from scanflow.domain.things import Line, Slot
from scanflow.shop import Shop
from scanflow.storage import order_views, slot_views


def test_states_are_those_of_the_domain(shop: Shop) -> None:
    """What pages count and list by SQL is what the rules derive from the things themselves."""
    room = furnish(shop, 40)
    with shop.looking() as unit:
        states = {order.id: order_state(unit.find(Line, order=order.id)).value for order in room.orders}
        listed = {row.id: row.state for row in order_views.order_list(unit.connection, [], 0, 1000)}
        facts = [unit.facts(slot.code) for slot in unit.find(Slot)]
        derived = {
            each.slot.code: (slot_state(each.slot, each.stay), must_go_back(each.slot, each.stay, each.live_line))
            for each in facts
            if each
        }
        shown = {row.code: (row.state, bool(row.away)) for row in slot_views.slot_list(unit.connection, limit=1000)}
        counts = order_views.order_counts(unit.connection)

    assert states == listed
    assert derived == shown
    assert {state: list(states.values()).count(state) for state in set(states.values())} == counts
    assert {"held", "waiting", "picking", "released", "cancelled"} <= set(counts)
    assert any(away for _, away in derived.values())
