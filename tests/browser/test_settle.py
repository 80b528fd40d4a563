"""A held line is settled by scanning: the card of the thing goes where the page asks for it."""

from __future__ import annotations

from furnished import furnish
from live_shop import Live, sign_in, type_fast
from playwright.sync_api import Page, expect

from labels.slot_code import card_text
from scanflow.domain.orders.incoming import IncomingLine, IncomingOrder
from scanflow.domain.things import Line
from scanflow.workflow import orders
from scanflow.workflow.orders import receiving


def test_a_doubt_is_settled_by_a_scan(live: Live, page: Page) -> None:
    """Its own card settles it at once, wherever the focus is; the card of another thing only offers that one."""
    order = furnish(live.shop, 4).orders[0]
    with live.shop.looking() as unit:
        line = unit.find(Line, order=order.id)[0]
    live.shop.act("owner", lambda unit: orders.hold(unit, line.id, orders.NotThis(why="It is a lamp")))
    sign_in(page, live)
    page.goto(f"/lines/{line.id}")
    expect(page.locator(".face")).to_contain_text("“It is a lamp”")
    type_fast(page, card_text("S001"))
    expect(page.get_by_role("button", name="It is S001")).to_be_visible()
    with live.shop.looking() as unit:
        before = unit.get(Line, line.id)
    type_fast(page, card_text("D001"))
    page.wait_for_url(f"**/orders/{order.id}")
    with live.shop.looking() as unit:
        after = unit.get(Line, line.id)
    assert before is not None and after is not None
    assert [1, 0] == [len(before.holds), len(after.holds)]


def test_the_second_click_of_a_double_one_settles_nothing(live: Live, page: Page) -> None:
    """It may come when the page of the next held line stands there, with its button at the same place."""
    incoming = IncomingOrder("H-1", lines=(IncomingLine("X1", "Bell"),))
    live.shop.act("owner", lambda unit: receiving.receive(unit, incoming))
    with live.shop.looking() as unit:
        (line,) = unit.find(Line)
    sign_in(page, live)
    page.goto(f"/lines/{line.id}")
    page.locator("details:has(form[action$='/cancel']) > summary").click()
    box = page.locator("form[action$='/cancel'] button").bounding_box()
    assert box is not None
    page.mouse.move(box["x"] + 9, box["y"] + 9)
    for click, state in ((2, "unbound"), (1, "cancelled")):
        page.mouse.down(click_count=click)
        page.mouse.up(click_count=click)
        page.wait_for_timeout(300)
        with live.shop.looking() as unit:
            assert state == unit.find(Line)[0].state
