"""The drawn room, read back from its SVG."""

from __future__ import annotations

import xml.etree.ElementTree as ET
from dataclasses import replace

import pytest

from scanflow.domain.things import Bin
from scanflow.planning.drawing import front_view, plan_view
from scanflow.planning.room import Shape, next_rack

SVG = "{http://www.w3.org/2000/svg}"
SHAPE = Shape(2, 3, 0.3, 1.0, 0.5, 0.4, racks_per_side=2, aisle_pitch=1.8)
BINS = [Bin("A-1-1", "A", 1, 1, "D"), Bin("A-2-3", "A", 2, 3, "C"), Bin("E-1-2", "E", 1, 2, "D")]


def racks_of(count: int):
    racks = []
    for _ in range(count):
        racks.append(next_rack(racks, shape=SHAPE))
    return racks


def rect(group: ET.Element) -> tuple[float, ...]:
    """x, y, width and height of the first rectangle of a group."""
    found = group.find(f"{SVG}rect")
    return tuple(float(found.get(name)) for name in ("x", "y", "width", "height"))


def groups(svg: str, name: str) -> list[ET.Element]:
    return [group for group in ET.fromstring(svg).iter(f"{SVG}g") if group.get("class") == name]


def test_the_plan_is_to_scale() -> None:
    """From above every rack is as deep and wide as it is, in mm, beside its aisle; no two overlap; all is in view."""
    svg = plan_view(racks_of(6), SHAPE)
    drawn = {group.get("data-rack"): rect(group) for group in groups(svg, "rack")}
    assert ["A", "B", "C", "D", "E", "F"] == list(drawn)
    assert {(500.0, 1000.0)} == {each[2:] for each in drawn.values()}
    assert (-900.0, -1000.0) == drawn["A"][:2]  # 0.8 m to walk, half of it on either side of the aisle's middle
    assert (400.0, -1000.0) == drawn["B"][:2]
    assert (-900.0, -2000.0) == drawn["C"][:2]
    assert (1800.0 - 900.0, -1000.0) == drawn["E"][:2]
    corners = list(drawn.values())
    for at, (x, y, w, h) in enumerate(corners):
        for x2, y2, w2, h2 in corners[at + 1 :]:
            assert x + w <= x2 or x2 + w2 <= x or y + h <= y2 or y2 + h2 <= y
    left, top, width, height = map(float, ET.fromstring(svg).get("viewBox").split())
    assert all(left <= x and x + w <= left + width and top <= y and y + h <= top + height for x, y, w, h in corners)


@pytest.mark.parametrize("table", [-3.0, 0.9, 12.0])
def test_the_table_stands_where_it_is(table: float) -> None:
    """Its middle is as far from the first aisle's as it was said, and it is in view."""
    svg = plan_view(racks_of(6), replace(SHAPE, table=table))
    x, _, width, _ = rect(groups(svg, "table")[0])
    left, _, wide, _ = map(float, ET.fromstring(svg).get("viewBox").split())
    assert 1000 * table == x + width / 2
    assert left <= x < x + width <= left + wide


def test_the_front_is_to_scale() -> None:
    """In front every bin is as wide as it is, in its position, and stands on the floor of its tier."""
    svg = front_view(racks_of(5), BINS, SHAPE)
    drawn = {group.get("data-bin"): rect(group) for group in groups(svg, "bin")}
    assert {"A-1-1", "A-2-3", "E-1-2"} == set(drawn)
    x, y, width, height = drawn["A-1-1"]
    assert (50.0, 300.0, 800.0) == (x, width, y + height)
    x, y, _, height = drawn["A-2-3"]
    assert (650.0, 400.0) == (x, y + height)
    assert {(0.0, 0.0, 1000.0, 800.0)} == {rect(group) for group in groups(svg, "rack")}


@pytest.mark.parametrize("draw", [lambda racks: plan_view(racks), lambda racks: front_view(racks, BINS)])
def test_a_metre_is_drawn(draw) -> None:
    """Every drawing has a scale of one metre, which is 1000 units, and a title."""
    svg = draw(racks_of(2))
    (scale,) = groups(svg, "scale")
    assert "h1000v" in scale.find(f"{SVG}path").get("d")
    assert "1 m" == scale.find(f"{SVG}text").text
    assert ET.fromstring(svg).find(f"{SVG}title").text


def words(group: ET.Element) -> list[str | None]:
    return [text.text for text in group.iter(f"{SVG}text")]


def test_a_bin_says_which_it_is() -> None:
    """Its tier and position, and its section, within its width; the tiers are numbered beside the rack."""
    svg = front_view(racks_of(1), BINS[:2], SHAPE)
    assert {"A-1-1": ["1-1", "D"], "A-2-3": ["2-3", "C"]} == {
        group.get("data-bin"): words(group) for group in groups(svg, "bin")
    }
    (rack,) = groups(svg, "rack")
    assert ["A", "1", "2"] == [text.text for text in rack.findall(f"{SVG}text")]
    assert "Front of rack A" == ET.fromstring(svg).find(f"{SVG}title").text


def test_where_one_is_and_what_was_looked_at() -> None:
    """The bin that is here has a thick line, the word and the current link; squares are full once looked at."""
    svg = front_view(racks_of(1), BINS[:2], SHAPE, link=str, here="A-2-3", looked={"A-1-1"})
    here, other = groups(svg, "bin here")[0], groups(svg, "bin")[0]
    assert (["2-3", "C", "here"], ["1-1", "D"]) == (words(here), words(other))
    assert ("30", None) == tuple(each.find(f"{SVG}rect").get("stroke-width") for each in (here, other))
    links = {link.get("href"): link for link in ET.fromstring(svg).iter(f"{SVG}a")}
    assert [None, "true"] == [links[name].get("aria-current") for name in ("A-1-1", "A-2-3")]
    assert ["A-1-1, section D, looked at", "A-2-3, section C"] == [link.get("aria-label") for link in links.values()]
    assert [1, 0] == [len(mark.findall(f"{SVG}path")) for mark in groups(svg, "mark")]


def test_fills_and_links_are_the_callers() -> None:
    """A section is filled as told and else left empty, a bin leads where told, and no name can break the drawing."""
    odd = Bin('"><x', "A", 1, 2, "<Q>")
    svg = front_view(racks_of(5), [*BINS, odd], SHAPE, fills={"D": "url(#dots)"}, link=lambda name: f"/bins/{name}?a&b")
    fills = {group.get("data-bin"): group.find(f"{SVG}rect").get("fill") for group in groups(svg, "bin")}
    assert {"A-1-1": "url(#dots)", "A-2-3": "none", "E-1-2": "url(#dots)", '"><x': "none"} == fills
    leads = {link.get("href") for link in ET.fromstring(svg).iter(f"{SVG}a")}
    assert {"/bins/A-1-1?a&b", "/bins/A-2-3?a&b", "/bins/E-1-2?a&b", '/bins/"><x?a&b'} == leads


def test_an_empty_room() -> None:
    """A room without racks is a table and a scale."""
    assert [] == groups(plan_view([]), "rack")
    assert 1 == len(groups(plan_view([]), "table"))
    assert [] == groups(front_view([], []), "bin")
