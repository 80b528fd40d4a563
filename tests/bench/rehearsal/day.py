"""One shop's days: orders come, things are stored, walked for, packed, handed over and put back."""

from __future__ import annotations

from random import Random

from rehearsal.people import Person
from rehearsal.report import Tally
from rehearsal.service import DAY, OPENING, Calls


def open_shop(kind: type[Person], calls: Calls, seed: int, tally: Tally) -> Person:
    """Most shops scan at the bin and let parcels close by themselves."""
    person = kind(calls, Random(seed), tally)
    person.furnish()
    person.settings(auto_close=seed % 4 != 1, scan_at_bin=seed % 5 != 2, slip_closes=seed % 7 == 3)
    for _ in range(8):
        person.put_away()
    return person


def live(person: Person, number: int) -> None:
    """Day `number`, from 0 on."""
    person.calls.now = max(person.calls.now, OPENING + number * DAY)
    for _ in range(person.random.randint(1, 4)):
        person.put_away()
    person.orders_come()
    person.minds_change(0.02)
    work(person)
    person.minds_change(0.01)
    person.hand_over()
    person.offer_again()


def work(person: Person) -> None:
    """What is there is done as far as it can be."""
    person.settle_all()
    person.walk()
    person.minds_change(0.02)
    person.pack()
    person.duties()
    person.tidy()
    person.cards_back()


def wind_down(person: Person, days: int) -> None:
    """No more orders come: honest people go on until all has ended that pages lead to an end."""
    for _ in range(days):
        person.calls.now += DAY
        work(person)
        person.hand_over()
