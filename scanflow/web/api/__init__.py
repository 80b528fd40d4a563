"""The JSON API, one blueprint per noun."""

from scanflow.web.api import (
    changes,
    doubts,
    hand_over,
    health,
    ledger,
    lines,
    openapi,
    orders,
    parcels,
    rounds,
    scans,
    sections,
    slots,
    stays,
    stocktakes,
)

BLUEPRINTS = tuple(
    noun.blueprint
    for noun in (
        health,
        openapi,
        sections,
        slots,
        stays,
        orders,
        lines,
        doubts,
        rounds,
        parcels,
        hand_over,
        scans,
        stocktakes,
        ledger,
        changes,
    )
)
