"""The JSON API, one blueprint per noun."""

from scanflow.web.api import changes, health, ledger, openapi, orders, parcels
from scanflow.web.api import counts as stocktakes
from scanflow.web.api.orders import channels, lines, returns
from scanflow.web.api.parcels import hand_over
from scanflow.web.api.picking import rounds, scans
from scanflow.web.api.stock import doubts, file, listings, sections, slots, stays

BLUEPRINTS = tuple(
    noun.blueprint
    for noun in (
        health,
        openapi,
        sections,
        slots,
        stays,
        file,
        channels,
        orders,
        lines,
        doubts,
        listings,
        rounds,
        parcels,
        hand_over,
        returns,
        scans,
        stocktakes,
        ledger,
        changes,
    )
)
