"""Prints how many wrong references the words of titles catch, and how many honest ones they doubt.

A wrong reference names another thing than the buyer's title means; an honest one names that thing. In rooms of the
demo's goods and of goods of one kind the rules are asked alone and together. Then 10,000 orders of one section's like
titles come, each with the reference of another thing (goal: 99 % held), and how long a line of a file takes is shown.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterable
from random import Random
from statistics import median
from tempfile import TemporaryDirectory
from time import perf_counter

import titles as written
from filled_shop import AT, fill
from room_in_memory import RoomInMemory
from sqlalchemy import text

from labels import slot_code
from scanflow.demo import goods
from scanflow.domain.orders.incoming import IncomingLine, IncomingOrder
from scanflow.domain.orders.titles import Stocked, Titled, shared_words, words_of
from scanflow.domain.things import Stay
from scanflow.storage.database import Database
from scanflow.workflow import orders, stock
from scanflow.workflow.orders import file as order_file
from scanflow.workflow.orders import receiving

ROOM, ROOMS = 300, 10
WRONG = 10_000
SMALL = 12
LARGE, LINES, CALLS = 10_000, 750, 30


def closer(stocked: Stocked, ours: Titled, said: str) -> bool:
    return stocked.closer(said, ours.title, ours.item) is not None


def more(stocked: Stocked, ours: Titled, said: str) -> bool:
    """Any other thing that shares more, also where the title has every word of ours."""
    least = len(words_of(said) & words_of(ours.title))
    best = stocked.closer(said, item=ours.item)
    return best is not None and len(words_of(said) & words_of(best.title)) > least


def half(stocked: Stocked, ours: Titled, said: str) -> bool:
    return shared_words(said, ours.title) < 0.5


def none(stocked: Stocked, ours: Titled, said: str) -> bool:
    return bool(words_of(said)) and not words_of(said) & words_of(ours.title)


Rule = Callable[[Stocked, Titled, str], bool]
RULES: dict[str, tuple[Rule, ...]] = {
    "another thing shares more": (more,),
    "another thing fits better": (closer,),
    "less than half is shared": (half,),
    "nothing is shared": (none,),
    "fits better, or less than half": (closer, half),
    "fits better, or nothing is shared": (closer, none),
}


def of_demo(_: Random) -> list[str]:
    return [kind.title(number) for kind in goods.KINDS for number in range(1, 16)]


def of_many_kinds(random: Random) -> list[str]:
    return [written.stored(random) for _ in range(ROOM)]


def of_few(random: Random) -> list[str]:
    return [written.stored(random) for _ in range(SMALL)]


def of_one_kind(random: Random) -> list[str]:
    return [written.of_one_kind(random) for _ in range(ROOM)]


ROOMS_OF = {
    "demo's goods": of_demo,
    f"{SMALL} things of many kinds": of_few,
    f"{ROOM} things of many kinds": of_many_kinds,
    f"{ROOM} things of one kind": of_one_kind,
}


def room(stored: Iterable[str]) -> list[Titled]:
    return [Titled(f"i{n}", f"s{n}", f"D{n:04}", title) for n, title in enumerate(stored, 1)]


def measure(name: str, stored: Callable[[Random], list[str]], listed: Callable[[Random, str], str]) -> None:
    """The bought thing may stand in the room, or have left it: then nothing in stock is what the title means."""
    caught: dict[str, Counter[str]] = {rule: Counter() for rule in RULES}
    tried: Counter[str] = Counter()
    for seed in range(ROOMS):
        random = Random(seed)
        things = room(stored(random))
        stocked = Stocked(things)
        for bought in things:
            said = listed(random, bought.title)
            wrong = random.choice([each for each in things if each.title != bought.title])
            without = Stocked(each for each in things if each is not bought) if random.random() < 0.1 else None
            cases = [("honest", stocked, bought), ("wrong", stocked, wrong)]
            cases += [("wrong, and it has left", without, wrong)] if without else []
            for case, around, named in cases:
                tried[case] += 1
                for rule, parts in RULES.items():
                    caught[rule][case] += any(part(around, named, said) for part in parts)
    print(f"{name}: " + ", ".join(f"{count} {case}" for case, count in tried.items()))
    for rule, counts in caught.items():
        shares = "".join(f"{case} {counts[case] / tried[case]:8.2%}   " for case in tried)
        print(f"  doubted where {rule:36} {shares}")


def of_one_section(name: str, listed: Callable[[Random, str], str], ids: float) -> None:
    """Exact references of one section's like titles, each of another thing, as real orders: how many are held.

    `ids`: how many of the lines have the listing id of the thing that was bought; it is known of seven in ten things.
    """
    held = tried = 0
    for seed in range(-(-WRONG // ROOM)):
        random = Random(seed)
        room = RoomInMemory()
        stock.add_section(room.unit, stock.AddSection(code="Q", name="Section Q", slots_per_bin=10, colour="pink"))
        stock.add_slots(room.unit, "Q", stock.AddSlots(count=ROOM))
        stays = {}
        for number, title in enumerate(of_one_kind(random)):
            known = f"L{number}" if random.random() < 0.7 else ""
            stays[number] = stock.put_away(room.unit, stock.PutAway(section="Q", title=title, listing=known)), title
        for number, (_, title) in stays.items():
            named = next((each for each, ours in _after(stays, number) if ours != title), None)
            if named is None or tried == WRONG:
                continue
            listing = f"L{number}" if random.random() < ids else ""
            reference = slot_code.reference(named.code, named.turn)
            line = IncomingLine(reference, listed(random, title), listing)
            order, _ = receiving.receive(room.unit, IncomingOrder(f"{number}", "fair", lines=(line,)))
            tried += 1
            held += any(each.holds for each in room.lines(order))
            orders.cancel(room.unit, order.id, orders.Cancel())
    print(f"{tried:,} wrong references of like titles, {name}, {ids:.0%} with listing ids: {held / tried:.2%} held")


def _after(stays: dict[int, tuple[Stay, str]], number: int) -> Iterable[tuple[Stay, str]]:
    """All others, from the next one on."""
    return (stays[(number + place) % len(stays)] for place in range(1, len(stays)))


def pace() -> None:
    """How long orders hold the write lock over a large room of goods of one kind, as a file and as calls."""
    random = Random(0)
    with TemporaryDirectory() as folder:
        database = Database(f"sqlite:///{folder}/shop.db")
        fill(database, LARGE, 0)
        with database.engine.connect() as connection:
            items = connection.execute(text("SELECT item FROM stays WHERE state = 'stored' ORDER BY n")).scalars().all()
        names = {item: written.of_one_kind(random) for item in items}
        with database.engine.begin() as connection:
            rows = [{"item": item, "title": title} for item, title in names.items()]
            connection.execute(text("UPDATE items SET title = :title WHERE id = :item"), rows)
        sold = [_order(random, item[2:], title) for item, title in random.sample(list(names.items()), LINES + CALLS)]
        file, calls = sold[:LINES], sold[LINES:]
        begin = perf_counter()
        with database.writing(AT, "bench") as unit:
            order_file.load(unit, file, {})
        took = perf_counter() - begin
        print(f"a file of {LINES} lines over {LARGE} things: {took:.2f} s, {1000 * took / LINES:.2f} ms a line")
        times = []
        for each in calls:
            begin = perf_counter()
            with database.writing(AT, "bench") as unit:
                receiving.receive(unit, each)
            times.append(1000 * (perf_counter() - begin))
        print(f"an order of one line by itself: median {median(times):.1f} ms, worst {max(times):.1f} ms")
        database.close()


def _order(random: Random, code: str, title: str) -> IncomingOrder:
    line = IncomingLine(slot_code.reference(code, 2), written.described(random, title), f"L{code}")
    return IncomingOrder(f"of {code}", "fair", lines=(line,))


def main() -> None:
    for name, stored in ROOMS_OF.items():
        measure(f"{name}, titles as stored", stored, lambda _, title: title)
        measure(f"{name}, titles as listings write them", stored, written.listed)
        measure(f"{name}, listings that add details", stored, written.described)
    for ids in (0.0, 0.8):
        of_one_section("as stored", lambda _, title: title, ids)
        of_one_section("as listings write them", written.listed, ids)
    pace()


if __name__ == "__main__":
    main()
