"""Titles of one thing as the person who stored it and the listing that sells it honestly write them."""

from __future__ import annotations

from random import Random

GOODS = (
    "leather saddle", "sprung saddle", "rear derailleur", "front derailleur", "crank set", "left crank arm",
    "dynamo lamp", "bottle dynamo", "front wheel", "rear wheel", "track hub", "coaster brake hub", "quill stem",
    "drop handlebar", "seat post", "chain guard", "rat trap pedals", "centre pull brakes", "brake levers",
    "mudguard set", "luggage rack", "bottom bracket", "freewheel", "frame pump", "bell",
)  # fmt: skip
DETAILS = (
    "chrome", "steel", "alloy", "honey brown", "black", "copper rivets", "5 speed", "8-speed", "6 volt", "27.2 mm",
    "170 mm", "700c", "26 inch", "36 holes", "long cage", "narrow", "ladies", "touring", "racing", "with bolts",
)  # fmt: skip
ADDED = (
    "used", "good condition", "vintage", "reclaimed", "cleaned", "tested", "no box", "1970s", "green", "size M",
    "spare part", "bicycle", "fast dispatch", "see pictures", "some scratches", "rare",
)  # fmt: skip
RESPELLED = (("-speed", " speed"), ("27.2 mm", "27.2mm"), ("170 mm", "170mm"), ("centre", "center"), ("set", "sets"))


def stored(random: Random) -> str:
    """What is written down when the thing is put away: often short."""
    details = random.sample(DETAILS, random.choice((0, 0, 1, 1, 2, 3)))
    return ", ".join([random.choice(GOODS).capitalize(), *details])


def of_one_kind(random: Random) -> str:
    """Of a shop that sells one kind of thing, whose titles differ in details alone."""
    return ", ".join(["Rear derailleur", *random.sample(DETAILS, random.choice((1, 2, 2, 3, 3, 4)))])


def listed(random: Random, title: str) -> str:
    """What the listing says of the same thing: none, one or several of an honest seller's changes."""
    for change in random.sample(_CHANGES, random.choice((0, 1, 1, 2, 3))):
        title = change(random, title)
    return title


def described(random: Random, title: str) -> str:
    """As `listed`, and with true details that nobody wrote down when the thing was put away."""
    return listed(random, ", ".join([title, *random.sample(DETAILS, random.randint(1, 2))]))


def _with_more(random: Random, title: str) -> str:
    more = random.sample(ADDED, random.randint(1, 4))
    place = random.randint(0, len(more))
    return " ".join([*more[:place], title, *more[place:]])


def _cut(random: Random, title: str) -> str:
    """As channels cut titles: at a count of characters, in the middle of a word too."""
    return title[: random.randint(32, 80)]


def _reordered(random: Random, title: str) -> str:
    words = title.replace(",", "").split()
    random.shuffle(words)
    return " ".join(words)


def _upper(_: Random, title: str) -> str:
    return title.upper()


def _respelled(random: Random, title: str) -> str:
    return title.replace(*random.choice(RESPELLED))


_CHANGES = (_with_more, _cut, _reordered, _upper, _respelled)
