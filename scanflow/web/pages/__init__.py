"""Pages for a person at a phone or a desktop, one blueprint per noun."""

from scanflow.web.pages import counts as count_pages
from scanflow.web.pages import edges, forms, installed, rights, shown
from scanflow.web.pages import orders as order_pages
from scanflow.web.pages import planning as plan_page
from scanflow.web.pages.access import account as account_page
from scanflow.web.pages.access import devices as device_page
from scanflow.web.pages.access import login, pairing, trust
from scanflow.web.pages.counts import findings as count_findings
from scanflow.web.pages.counts import report as count_report
from scanflow.web.pages.orders import file as order_file_page
from scanflow.web.pages.parcels import closing as closing_page
from scanflow.web.pages.parcels import hand_over as hand_over_page
from scanflow.web.pages.parcels import table as table_page
from scanflow.web.pages.picking import paper as paper_page
from scanflow.web.pages.picking import rounds as round_pages
from scanflow.web.pages.picking import scanner as scanner_page
from scanflow.web.pages.picking import stations
from scanflow.web.pages.shop import amiss as amiss_page
from scanflow.web.pages.shop import backups as backup_page
from scanflow.web.pages.shop import ledger as ledger_page
from scanflow.web.pages.shop import settings as settings_page
from scanflow.web.pages.shop import today
from scanflow.web.pages.shop import trouble as trouble_page
from scanflow.web.pages.stock import cards as card_pages
from scanflow.web.pages.stock import check as check_page
from scanflow.web.pages.stock import look as look_page
from scanflow.web.pages.stock import put_away
from scanflow.web.pages.stock import room as room_page
from scanflow.web.pages.stock import search as search_page
from scanflow.web.pages.stock import section as section_page
from scanflow.web.pages.stock import slots as slot_pages

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
