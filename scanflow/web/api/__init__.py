"""The JSON API, one blueprint per noun."""

from scanflow.web.api import (
    changes,
    doubts,
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
        scans,
        stocktakes,
        ledger,
        changes,
    )
)
