"""Pictures of things on pages: sent with a form, shown wherever a thing is picked, packed or looked up."""

from __future__ import annotations

import re
from io import BytesIO

from clients import SQLITE_ONLY, client_of
from flask import Flask
from flask.testing import FlaskClient
from furnished import furnish
from paperwork import jpeg

from labels import slot_code
from scanflow.domain.access import Role
from scanflow.domain.life import Hold
from scanflow.domain.things import Item, Line, Stay
from scanflow.shop import Shop
from scanflow.storage.views import picking as round_views
from scanflow.vision import photographs
from scanflow.workflow.stock import photos

pytestmark = SQLITE_ONLY


def sent(client: FlaskClient, path: str, data: bytes, **fields: str) -> tuple[int, str, str]:
    """Status, address and page that follow a form with a picture."""
    form = {**fields, "photo": (BytesIO(data), "photo.jpg")} if data else fields
    answer = client.post(path, data=form, content_type="multipart/form-data")
    return answer.status_code, answer.headers.get("Location", ""), answer.text


def photo_of(shop: Shop, stay_id: str) -> str | None:
    with shop.looking() as unit:
        stay = unit.get(Stay, stay_id)
        item = unit.get(Item, stay.item) if stay else None
    assert item is not None
    return item.photo


def test_a_thing_is_put_away_with_its_picture(client: FlaskClient, shop: Shop) -> None:
    """Both in one step; the page that follows shows it."""
    furnish(shop, 4)
    status, where, _ = sent(client, "/put-away", jpeg(), code="D002", title="Rear derailleur")
    shown = re.findall(r'src="(/api/stays/[^"]+)"', client.get(where).text)
    assert (303, 1) == (status, len(shown))
    assert "image/jpeg" == client.get(shown[0].replace("&amp;", "&")).mimetype


def test_no_picture_is_needed_and_a_bad_one_keeps_the_form(client: FlaskClient, shop: Shop) -> None:
    """Without a file it is put away; with one that is no picture nothing is, and what was typed stands again."""
    furnish(shop, 4)
    assert 303 == sent(client, "/put-away", b"", code="D002", title="Bare")[0]
    status, _, page = sent(client, "/put-away", b"no picture", code="D003", title="Rear derailleur 99")
    with shop.looking() as unit:
        titles = [item.title for item in unit.find(Item)]
    assert (422, True, False) == (status, 'value="Rear derailleur 99"' in page, "Rear derailleur 99" in titles)


def test_a_helper_takes_a_picture_later(app: Flask, shop: Shop) -> None:
    """From the page after putting away, or from its story; each leads back to where it was sent from."""
    room, helper = furnish(shop, 4), client_of(app, shop, Role.HELPER)
    stay = room.stays[1].id
    assert (303, f"/put-away/{stay}") == sent(helper, f"/stays/{stay}/photo", jpeg(), back="stored")[:2]
    first = photo_of(shop, stay)
    assert (303, f"/stays/{stay}") == sent(helper, f"/stays/{stay}/photo", jpeg("#903020"))[:2]
    assert None not in (first, photo_of(shop, stay)) and first != photo_of(shop, stay)
    assert 422 == sent(helper, f"/stays/{stay}/photo", b"no picture")[0]
    assert 422 == sent(helper, f"/stays/{stay}/photo", b"")[0]
    assert 404 == sent(helper, "/stays/none/photo", jpeg())[0]


def test_it_is_shown_where_the_thing_is_handled(client: FlaskClient, shop: Shop) -> None:
    """At the bin, at the table, on the slot's and the stay's page, with words for who can't see it."""
    room = furnish(shop, 25)
    assert room.round is not None
    photo = photographs.photo(shop.readers, jpeg())
    for stay in room.stays:
        shop.act("owner", lambda unit, name=stay.id: photos.keep(unit, name, photo))
    with shop.looking() as unit:
        stop = next(each for each in round_views.round_stops(unit.connection, room.round.id) if each.state == "waiting")
    for address in (f"/rounds/{room.round.id}", "/table", f"/slots/{stop.code}", f"/stays/{stop.stay}"):
        page = client.get(address).text
        pictures = re.findall(r'src="(/api/stays/[^"]+)" alt="(Picture of [^"]+)"', page)
        assert (address, True) == (address, bool(pictures))
        assert {photo.hash} == {re.search("hash=([0-9a-f]+)", each)[1] for each, _ in pictures}  # type: ignore[index]
        assert (address, True) == (address, "Not this thing" in page)


def test_the_last_scan_can_be_doubted(client: FlaskClient, shop: Shop) -> None:
    """Beside its picture stands one press that holds its line, back on the same round."""
    room = furnish(shop, 25)
    assert room.round is not None
    with shop.looking() as unit:
        stop = next(each for each in round_views.round_stops(unit.connection, room.round.id) if each.state == "waiting")
    photo = photographs.photo(shop.readers, jpeg())
    shop.act("owner", lambda unit: photos.keep(unit, stop.stay, photo))
    body = {"station": "bin", "round": room.round.id, "key": "one", "text": slot_code.card_text(stop.code)}
    assert "accepted" == client.post("/api/scans", json=body).get_json()["verdict"]
    page = client.get(f"/rounds/{room.round.id}").text
    last = re.search(r'<div class="last">.*?</div>', page, re.DOTALL)
    assert last is not None and photo.hash in last[0] and f"{stop.code}: not this thing" in last[0]
    fields = dict(re.findall(r'name="(words|round)" value="([^"]+)"', last[0]))
    action = re.search(r'action="(/lines/[^"]+/hold)"', last[0])
    assert action is not None
    assert f"/rounds/{room.round.id}" == client.post(action[1], data=fields).headers["Location"]
    with shop.looking() as unit:
        line = unit.get(Line, stop.id)
    assert line is not None and Hold.SUSPECT is line.hold
    assert f"{stop.code}: not this thing" not in client.get(f"/rounds/{room.round.id}").text
