"""One shop's days: orders come, things are stored, walked for, packed, handed over and put back."""

from __future__ import annotations

from collections.abc import Callable

from rehearsal.service import DAY, OPENING
from rehearsal.slips_rounds import Slipping


def of(at: float) -> int:
    """The number of the day of a time, from 0 on."""
    return int((at - OPENING) // DAY)


def furnish(person: Slipping, seed: int, ways: set[str]) -> None:
    """Most shops scan at the bin and let parcels close by themselves; a few things stand there at the beginning.

    Every third binds labels, every fifth walks with paper at times, every sixth has cards of another system. `ways`:
    what else this one has, for slips that can't be made without.
    """
    person.furnish()
    chosen = {"auto_close": seed % 4 != 1, "scan_at_bin": seed % 5 != 2, "slip_closes": seed % 7 == 3}
    chosen |= {"bind_labels": seed % 3 == 2, "check": seed % 6 == 5, "paper": seed % 5 == 3}
    on = {name for name, by_seed in chosen.items() if by_seed} | ways | ({"scan_at_bin"} if "paper" in ways else set())
    person.on_paper = 0.5 if "paper" in on and "check" not in on else 0.0
    person.settings(on - {"paper"})
    for _ in range(20):
        person.put_away()


def live(person: Slipping, number: int, work: Callable[[Slipping], None]) -> None:
    """Day `number`, from 0 on; `work` is how its orders are walked for and packed."""
    person.calls.now = max(person.calls.now, OPENING + number * DAY)
    person.bring_back()
    for _ in range(person.random.randint(2, 4)):
        person.put_away()
    if person.chance(0.2):
        person.two_put_away()
    person.orders_come()
    person.minds_change(0.02)
    person.called_off(person.late)
    person.on_the_floor()
    if number % 8 == 7:
        person.count_with_a_phone()
    work(person)
    person.photos_come(len(person.photos) // 2)
    person.minds_change(0.01)
    person.called_off(person.late)
    person.hand_over()
    person.offer_again()
    if number % 8 == 7:
        person.count()
    person.in_the_evening()


def work(person: Slipping) -> None:
    """What is there is done as far as it can be."""
    person.settle_all()
    person.walk()
    person.at_noon()
    person.minds_change(0.02)
    person.called_off(person.late if person.still_sells else 0.0)
    person.report_missing()
    if person.chance(0.5):
        person.send_late()
    person.pack()
    person.send_late()
    person.duties()
    person.tidy()
    person.cards_back()


def wind_down(person: Slipping, days: int) -> None:
    """No more orders come: honest people go on until all has ended that pages lead to an end."""
    person.still_sells = False
    for _ in range(days):
        person.calls.now += DAY
        person.bring_back()
        person.file_right(1.0)
        person.tell_news()
        work(person)
        person.hand_over()
