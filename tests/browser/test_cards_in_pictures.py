"""Pictures are looked at in a browser: chosen, shown with their outlines, enlarged, listed."""

from __future__ import annotations

from pathlib import Path

import control_names
import pytest
from calls import photo
from furnished import furnish
from live_shop import Live, sign_in
from playwright.sync_api import Page

SAMPLES = Path(__file__).parents[2] / "sample_images"


@pytest.mark.parametrize("width", [390, 1280])
def test_pictures_are_chosen_and_shown(live: Live, page: Page, tmp_path: Path, width: int) -> None:
    """Two pictures chosen at once are both shown, in full width and enlarged; cards lead to their slots."""
    furnish(live.shop, 25)
    (tmp_path / "bin.png").write_bytes(photo("D001", "D002"))
    page.set_viewport_size({"width": width, "height": 800})
    sign_in(page, live)
    page.goto("/look")
    page.set_input_files("#pictures", [tmp_path / "bin.png", SAMPLES / "no_code" / "ean13_a.jpg"])
    page.get_by_role("button", name=control_names.LOOK_AT_PICTURES).click()
    picture = page.get_by_role("img", name=control_names.OUTLINED.format("bin.png", "2"))
    picture.wait_for()
    narrow = picture.bounding_box()
    page.locator(".seen").first.get_by_label(control_names.LARGER).press("Space")
    wide = picture.bounding_box()

    assert narrow and wide and wide["width"] == pytest.approx(3 * narrow["width"], rel=0.01)
    assert page.evaluate("document.documentElement.scrollWidth <= document.documentElement.clientWidth")
    assert ["bin.png", "ean13_a.jpg"] == page.locator(".seen h2").all_inner_texts()
    page.locator(".seen a.title").first.click()
    page.wait_for_url("**/slots/D001")
