"""Putting away, looking up, moving and taking out, as a person does it with forms."""

from __future__ import annotations

import re

import pytest
from clients import SQLITE_ONLY
from flask.testing import FlaskClient
from furnished import furnish, reference

from labels import slot_code
from scanflow.domain.advice import ONCE_MORE
from scanflow.domain.life import CardState, StayState
from scanflow.domain.things import Item, Section, Slot, Stay
from scanflow.domain.words import MISREAD
from scanflow.shop import Shop
from scanflow.workflow import stock
from scanflow.workflow.stock import cards

pytestmark = SQLITE_ONLY


def said(html: str) -> str:
    """The sentence of a refusal."""
    found = re.search(r'<p class="said" role="alert">([^<]*)</p>', html)
    return found[1] if found else ""


def test_put_away_with_the_card_in_hand(shop: Shop, client: FlaskClient) -> None:
    """The card decides the slot; the answer shows the bin, the plate and the reference for the listing."""
    furnish(shop, 1)
    text = slot_code.card_text("S003")
    response = client.post("/put-away", data={"text": text, "title": "Leather saddle"}, follow_redirects=True)
    assert (200, True) == (response.status_code, slot_code.reference("S003", 1) in response.text)
    with shop.looking() as unit:
        slot, stay = unit.get(Slot, "S003"), unit.find(Stay, code="S003")[0]
        assert slot is not None
        assert f"Put it in {slot.bin}" in response.text
        item = unit.get(Item, stay.item)
    assert item is not None
    assert "Leather saddle" == item.title


def test_put_away_by_section(shop: Shop, client: FlaskClient) -> None:
    """A section names the card to fetch and its bin, keeps what was typed, and stores by that card's scan."""
    furnish(shop, 1)
    typed = {"section": "D", "title": "Rear derailleur", "notes": "a scratch", "packing": "two screws"}
    named = client.post("/put-away", data=typed, follow_redirects=True).text
    assert (True, True) == ("Fetch card D002" in named, "kept for you until" in named)
    assert ("Rear derailleur", "a scratch") == (field(named, "title"), typed_notes(named))
    answer = client.post("/put-away", data=typed | {"text": slot_code.card_text("D002")})
    with shop.looking() as unit:
        stay = unit.get(Stay, answer.headers["Location"].rsplit("/", 1)[1])
        assert stay is not None
        item = unit.get(Item, stay.item)
    assert item is not None
    assert ("D002", "two screws") == (stay.code, item.packing)
    changed = client.post(f"/stays/{stay.id}/edit", data={"title": "Rear derailleur", "notes": "", "packing": "flat"})
    assert (303, True) == (changed.status_code, "flat" in client.get(f"/stays/{stay.id}").text)


def test_another_card_than_the_fetched_one(shop: Shop, client: FlaskClient) -> None:
    """The card in hand counts, and the number that was kept is for anybody again."""
    furnish(shop, 1)
    client.post("/put-away", data={"section": "D"})
    client.post("/put-away", data={"section": "D", "text": slot_code.card_text("D004"), "title": "Bell"})
    with shop.looking() as unit:
        slots = {slot.code: slot for slot in unit.find(Slot, section="D")}
    assert ("D004", None, 1) == (slots["D004"].code, slots["D002"].fetch, slots["D004"].turns)


def test_a_section_that_names_nothing(shop: Shop, client: FlaskClient) -> None:
    """A full or unknown section is refused on the page, which keeps what was typed."""
    furnish(shop, 0)
    shop.act("owner", lambda unit: [stock.put_away(unit, stock.PutAway(title="Bell", section="D")) for _ in range(5)])
    answers = [client.post("/put-away", data={"section": code, "title": "Bell"}) for code in ("D", "Q")]
    assert [(409, "Bell"), (422, "Bell")] == [(answer.status_code, field(answer.text, "title")) for answer in answers]


def field(html: str, name: str) -> str:
    """What stands in a field."""
    found = re.search(rf'name="{name}"[^>]* value="([^"]*)"', html)
    return found[1] if found else ""


def typed_notes(html: str) -> str:
    found = re.search(r"<textarea[^>]*>([^<]*)</textarea>", html)
    return found[1] if found else ""


@pytest.fixture
def unchecked(shop: Shop) -> Shop:
    """A room that takes cards without a check: 0421 stands for S003."""
    furnish(shop, 1)
    shop.act("owner", lambda unit: cards.choose_check(unit, "none"))
    shop.act("owner", lambda unit: cards.adopt(unit, cards.Adopt(text="0421", code="S003")))
    return shop


def test_a_card_without_a_check_is_looked_at_twice(unchecked: Shop, client: FlaskClient) -> None:
    """The first look is kept and another asked for; two that agree store it, two that differ are the first of two."""
    fields = {"text": "0421", "title": "Saddle"}
    first = client.post("/put-away", data=fields)
    assert (422, ONCE_MORE, "0421", "", "Saddle") == (
        first.status_code,
        said(first.text),
        *(field(first.text, name) for name in ("looked", "text", "title")),
    )
    other = client.post("/put-away", data=fields | {"looked": "S001"})
    assert (422, "0421") == (other.status_code, field(other.text, "looked"))
    assert 303 == client.post("/put-away", data=fields | {"looked": "0421"}).status_code


def test_the_second_look_is_no_title(unchecked: Shop, client: FlaskClient) -> None:
    """Where the second scan went into the title it is the second look, and what it is still has to be said."""
    answer = client.post("/put-away", data={"text": "0421", "title": "0421"})
    expected = (422, "Title is needed.", "0421", "0421", "")
    html = answer.text
    assert expected == (answer.status_code, said(html), *(field(html, name) for name in ("looked", "text", "title")))


def test_a_printed_card_is_believed_at_once(unchecked: Shop, client: FlaskClient) -> None:
    """A card of ours has its check in that room too."""
    assert 303 == client.post("/put-away", data={"text": slot_code.card_text("S004"), "title": "Saddle"}).status_code


def test_a_move_by_a_card_without_a_check(unchecked: Shop, client: FlaskClient) -> None:
    """It is asked for once more, in the field that is open then; two looks move the thing."""
    with unchecked.looking() as unit:
        stay = unit.find(Stay)[0].id
    first = client.post(f"/stays/{stay}/move", data={"to": "0421"})
    assert (422, ONCE_MORE, "0421") == (first.status_code, said(first.text), field(first.text, "looked"))
    assert re.search(r'<input id="to"[^>]* autofocus', first.text)
    client.post(f"/stays/{stay}/move", data={"to": "0421", "looked": "0421"})
    with unchecked.looking() as unit:
        assert [("D001", StayState.MOVED), ("S003", StayState.STORED)] == [(s.code, s.state) for s in unit.find(Stay)]


@pytest.mark.parametrize(
    ("fields", "status", "sentence"),
    [
        ({"title": "Saddle"}, 422, "Scan the card in your hand, or choose a section."),
        ({"code": "D002"}, 422, "Title is needed."),
        ({"text": "D0010", "title": "x"}, 422, MISREAD),
        ({"text": "D0016", "title": "x"}, 409, "Slot D001 already holds Rear derailleur 1. Take another card."),
    ],
)
def test_put_away_refused(shop: Shop, client: FlaskClient, fields: dict[str, str], status: int, sentence: str) -> None:
    """A refusal is said on the page, which keeps what was typed, and nothing is stored."""
    furnish(shop, 1)
    response = client.post("/put-away", data=fields | {"notes": "a scratch"})
    assert (status, sentence) == (response.status_code, said(response.text))
    assert "a scratch" in response.text
    with shop.looking() as unit:
        assert 1 == len(unit.find(Stay))


def test_story_of_a_moved_thing(shop: Shop, client: FlaskClient) -> None:
    """A move is told on the story of the item, which leads on to where it is now."""
    stay = furnish(shop, 1).stays[0]
    response = client.post(f"/stays/{stay.id}/move", data={"to": slot_code.card_text("S002")}, follow_redirects=True)
    assert ("thing no. 1 in S002" in response.text, "thing no. 1 in D001" in response.text) == (True, True)
    old = client.get(f"/stays/{stay.id}").text
    assert "Go to where it is now" in old


def test_a_move_says_what_to_carry(shop: Shop, client: FlaskClient) -> None:
    """Thing and both cards; of a thing that is in a basket nothing is carried to a bin."""
    told = "Carry it to bin A-1-1 and put card D005 on it. Bring card S001 to the tray."
    picked, stored = furnish(shop, 2).stays
    move = client.post(f"/stays/{stored.id}/move", data={"to": slot_code.card_text("D005")}, follow_redirects=True)
    assert told in move.text
    move = client.post(f"/stays/{picked.id}/move", data={"to": slot_code.card_text("S002")}, follow_redirects=True)
    assert ("thing no. 1 in S002" in move.text, "Carry it to bin" in move.text) == (True, False)


def test_moves_that_are_refused(shop: Shop, client: FlaskClient) -> None:
    """A taken slot or a text that is no slot is refused on the page."""
    stays = furnish(shop, 5).stays
    taken = client.post(f"/stays/{stays[0].id}/move", data={"to": stays[1].code})
    wrong = client.post(f"/stays/{stays[0].id}/move", data={"to": "somewhere"})
    assert (409, 422) == (taken.status_code, wrong.status_code)
    assert ("already holds" in said(taken.text), "This is not the text of a card." == said(wrong.text)) == (True, True)


def test_withdraw_needs_a_reason(shop: Shop, client: FlaskClient) -> None:
    """A thing leaves the stock only with a reason; then its card is due."""
    stay = furnish(shop, 4).stays[1]
    assert 422 == client.post(f"/stays/{stay.id}/withdraw", data={"reason": " "}).status_code
    assert 303 == client.post(f"/stays/{stay.id}/withdraw", data={"reason": "Broken in the bin"}).status_code
    with shop.looking() as unit:
        after, slot = unit.get(Stay, stay.id), unit.get(Slot, stay.code)
    assert after is not None
    assert slot is not None
    assert (StayState.WITHDRAWN, CardState.DUE) == (after.state, slot.card)


def test_change_of_words(shop: Shop, client: FlaskClient) -> None:
    """Title, listing and notes are changed together; a title can't be emptied."""
    stay = furnish(shop, 1).stays[0]
    fields = {"title": "Rear derailleur, cleaned", "listing": "L9", "notes": ""}
    assert 303 == client.post(f"/stays/{stay.id}/edit", data=fields).status_code
    assert 422 == client.post(f"/stays/{stay.id}/edit", data=fields | {"title": ""}).status_code
    with shop.looking() as unit:
        assert Item(stay.item, "Rear derailleur, cleaned", "") == unit.get(Item, stay.item)


def test_lost_card(shop: Shop, client: FlaskClient) -> None:
    """A card that is reported lost retires its number; a second report is refused."""
    furnish(shop, 1)
    assert 303 == client.post("/slots/D003/lost").status_code
    assert "Slot D003, card is lost" in client.get("/slots/D003").text
    assert 409 == client.post("/slots/D003/lost").status_code


def test_search_leads_to_the_one_thing(shop: Shop, client: FlaskClient) -> None:
    """A code, a card, a reference, an order number or a slip leads straight to its page; words list what has them."""
    room = furnish(shop, 9)
    stay, order = room.stays[0], room.orders[0]
    expected = {
        "d001": "/slots/D001",
        slot_code.card_text("D001"): "/slots/D001",
        reference(stay): f"/stays/{stay.id}",
        order.number: f"/orders/{order.id}",
        slot_code.slip_text(order.slip): f"/orders/{order.id}",
    }
    found = {words: client.get("/search", query_string={"q": words}).headers.get("Location") for words in expected}
    assert expected == found
    html = client.get("/search?q=SADDLE leather").text
    assert 2 == html.count("Leather saddle")
    assert "Nothing found." in client.get("/search?q=100%25").text


@pytest.mark.parametrize(
    ("words", "path"),
    [
        ("D3", "/slots/D003"),
        ("d 03", "/slots/D003"),
        ("A-1-1", "/shelf?bin=A-1-1"),
        ("a-1-1", "/shelf?bin=A-1-1"),
        ("D", "/slots?section=D"),
        ("Z-9-9", None),
        ("D0029", None),  # a card of D002, misread: it is not slot 29
        ("D9999", None),
    ],
)
def test_a_part_of_the_room_is_found_by_what_people_call_it(
    shop: Shop, client: FlaskClient, words: str, path: str | None
) -> None:
    """A slot by its number without noughts, a bin by its name, a section by its letters."""
    furnish(shop, 3)
    assert path == client.get("/search", query_string={"q": words}).headers.get("Location")


def test_notes_and_parts_of_a_code_are_found(shop: Shop, client: FlaskClient) -> None:
    """Each word may stand in the title, in the notes or in the code."""
    room = furnish(shop, 3)
    rusty = stock.ChangeItem(notes="Rust under the left rail")
    shop.act("owner", lambda unit: stock.change_item(unit, room.stays[1].id, rusty))
    for words in ("rust RAIL", "S00 rust"):
        page = client.get("/search", query_string={"q": words}).text
        assert (1, True) == (page.count("/stays/"), f"/stays/{room.stays[1].id}" in page)
    alike = [stay for stay in room.stays if stay.code.startswith("D00")]
    assert len(alike) == client.get("/search?q=D00").text.count("/stays/")


def test_a_list_while_one_still_types(shop: Shop, client: FlaskClient) -> None:
    """A number that leads to one order leads nowhere yet: another may follow it."""
    room = furnish(shop, 3)
    number = room.orders[0].number
    assert 303 == client.get("/search", query_string={"q": number}).status_code
    listed = client.get("/search", query_string={"q": number, "list": "yes"})
    assert (200, True) == (listed.status_code, f"/orders/{room.orders[0].id}" in listed.text)


def test_a_section_is_found_by_its_name(shop: Shop, client: FlaskClient) -> None:
    """Whatever the case of its letters."""
    furnish(shop, 3)
    with shop.looking() as unit:
        section = unit.find(Section)[0]
    found = client.get("/search", query_string={"q": section.name.upper()})
    assert f"/slots?section={section.code}" == found.headers["Location"]


def test_the_next_card_begins_the_next_thing(shop: Shop, client: FlaskClient) -> None:
    """The page of what was stored takes the next card, and the form opens with it and asks for the title."""
    furnish(shop, 1)
    stored = client.post(
        "/put-away", data={"text": slot_code.card_text("D003"), "title": "Bell"}, follow_redirects=True
    )
    field_of_next = re.search(r'<input id="next-card" name="text"[^>]*data-takes=""', stored.text)
    form = client.get("/put-away", query_string={"text": slot_code.card_text("D004")}).text
    title = re.search(r'<input id="title"[^>]*>', form)
    assert field_of_next is not None and title is not None
    assert (slot_code.card_text("D004"), True) == (field(form, "text"), "autofocus" in title[0])


def test_a_bin_is_counted_from_its_own_page(shop: Shop, client: FlaskClient) -> None:
    """One link leads to the count of this bin, where it is begun."""
    furnish(shop, 1)
    assert 'href="/counts?area=bin:A-1-1"' in client.get("/shelf?bin=A-1-1").text
    assert 'name="area" value="bin:A-1-1"' in client.get("/counts?area=bin:A-1-1").text


def test_a_number_that_was_scanned_into_the_title(unchecked: Shop, client: FlaskClient) -> None:
    """It is taken out of it, and nothing is stored: the next card was meant. A title may end with such a number."""
    for text, code in (("0410", "S003"), ("0411", "S004")):
        unchecked.act("owner", lambda unit, t=text, c=code: cards.adopt(unit, cards.Adopt(text=t, code=c)))
    fields = {"text": "0410", "looked": "0410"}
    page = client.post("/put-away", data=fields | {"title": "Brass bell0411"})
    assert (422, True) == (page.status_code, "0411" in said(page.text))
    assert 'value="Brass bell"' in page.text
    assert 303 == client.post("/put-away", data=fields | {"title": "Brass bell, like 0411"}).status_code
