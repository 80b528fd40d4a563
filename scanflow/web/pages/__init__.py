"""Pages for a person at a phone or a desktop, one blueprint per noun."""

from scanflow.web.pages import (
    account_page,
    amiss_page,
    backup_page,
    card_pages,
    check_page,
    closing_page,
    count_findings,
    count_pages,
    count_report,
    device_page,
    edges,
    forms,
    hand_over_page,
    installed,
    ledger_page,
    login,
    look_page,
    order_file_page,
    order_pages,
    pairing,
    paper_page,
    plan_page,
    put_away,
    rights,
    room_page,
    round_pages,
    scanner_page,
    search_page,
    section_page,
    settings_page,
    shown,
    slot_pages,
    stations,
    table_page,
    today,
    trouble_page,
    trust,
)

today.blueprint.record_once(lambda state: shown.register(state.app))
today.blueprint.record_once(lambda state: forms.register(state.app))

FRONT_DOOR = (login.blueprint, pairing.blueprint, trust.blueprint, installed.blueprint)
"""What needs nobody, or anybody."""

BLUEPRINTS = (
    *FRONT_DOOR,
    today.blueprint,
    put_away.blueprint,
    order_pages.blueprint,
    order_file_page.blueprint,
    round_pages.blueprint,
    paper_page.blueprint,
    table_page.blueprint,
    hand_over_page.blueprint,
    closing_page.blueprint,
    stations.tray,
    stations.shelf,
    slot_pages.blueprint,
    plan_page.blueprint,
    section_page.blueprint,
    room_page.blueprint,
    count_pages.blueprint,
    count_findings.blueprint,
    count_report.blueprint,
    card_pages.blueprint,
    check_page.blueprint,
    look_page.blueprint,
    search_page.blueprint,
    ledger_page.blueprint,
    trouble_page.blueprint,
    amiss_page.blueprint,
    settings_page.blueprint,
    scanner_page.blueprint,
    device_page.blueprint,
    account_page.blueprint,
    backup_page.blueprint,
    edges.blueprint,
)

for _blueprint in BLUEPRINTS:
    if _blueprint not in FRONT_DOOR:
        _blueprint.before_request(rights.admit)
        forms.guard(_blueprint)
        _blueprint.before_request(shown.note_seq)
