"""Pages for a person at a phone or a desktop, one blueprint per noun."""

from scanflow.web.pages import (
    card_pages,
    check_page,
    edges,
    ledger_page,
    login,
    order_file_page,
    order_pages,
    plan_page,
    put_away,
    room_page,
    round_pages,
    search_page,
    section_page,
    settings_page,
    shown,
    slot_pages,
    stations,
    table_page,
    today,
)

today.blueprint.record_once(lambda state: shown.register(state.app))

BLUEPRINTS = (
    login.blueprint,
    today.blueprint,
    put_away.blueprint,
    order_pages.blueprint,
    order_file_page.blueprint,
    round_pages.blueprint,
    table_page.blueprint,
    stations.tray,
    stations.shelf,
    slot_pages.blueprint,
    plan_page.blueprint,
    section_page.blueprint,
    room_page.blueprint,
    card_pages.blueprint,
    check_page.blueprint,
    search_page.blueprint,
    ledger_page.blueprint,
    settings_page.blueprint,
    edges.blueprint,
)

for _blueprint in BLUEPRINTS:
    if _blueprint is not login.blueprint:
        _blueprint.before_request(shown.staff_only)
