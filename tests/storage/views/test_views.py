"""Rows for lists: what every card bears that exists."""

from __future__ import annotations

from calls import Calls

from labels.slot_code import card_text
from scanflow.shop import Shop
from scanflow.vision import Book, photographs
from scanflow.workflow import stock
from scanflow.workflow.stock import cards


def book_of(shop: Shop) -> Book:
    with shop.looking() as unit:
        return photographs.book(unit)


def test_the_book_holds_every_card(shop: Shop, calls: Calls) -> None:
    """Cards on items, in the tray and lost ones of every section, with adopted texts; an empty room has none."""
    assert Book([]) == book_of(shop)
    codes = calls.section("D", 3) + calls.section("LP", 2)
    calls.put_away()
    shop.act("owner", lambda unit: stock.lose_card(unit, "D002"))

    assert Book(map(card_text, codes)) == book_of(shop)


def test_adopted_cards_stand_in_the_book(shop: Shop, calls: Calls) -> None:
    """In a room whose cards need no check the bare codes count too, and texts that Code 128 can't carry don't.

    Bars may say an adopted text as it was written, in capitals, or without the hyphens: the book has all three.
    """
    codes = calls.section("D", 3)
    shop.act("owner", lambda unit: cards.choose_check(unit, "none"))
    for text in ("3600081500", "Größe 3", "ab-0123"):
        shop.act("owner", lambda unit, text=text: cards.adopt(unit, cards.Adopt(text=text, code="D002")))
    adopted = ["3600081500", "ab-0123", "AB-0123", "AB0123"]

    assert Book([*map(card_text, codes), *codes, *adopted]) == book_of(shop)
    shop.act("owner", lambda unit: cards.choose_check(unit, "mod_11_10"))
    assert Book([*map(card_text, codes), *adopted]) == book_of(shop)
