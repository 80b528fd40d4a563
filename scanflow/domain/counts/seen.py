"""Where the cards of a count belong by the account, and where its looks show them."""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Collection, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass

from scanflow.domain.counts.shelf_view import near
from scanflow.domain.counts.stocktake import TRAY, Certainty, Look, Read
from scanflow.domain.life import CardState, LineState


@dataclass(frozen=True, slots=True)
class SlotAccount:
    """One slot by the shop's account.

    `bin` is its own, `where` the bin that its thing was last seen in. `line` is the state of the live line that wants
    the thing. `away`: the thing is known to be off the shelves, on a round or at a table.
    """

    code: str
    bin: str
    taken: bool
    card: CardState
    where: str
    line: LineState | None = None
    away: bool = False

    @property
    def home(self) -> str:
        """Where its card belongs, though it may be under way."""
        return self.bin if self.taken else TRAY

    @property
    def place(self) -> str | None:
        """Where its card should be seen, None where that is nowhere that is counted."""
        if self.taken:
            return None if self.away else self.bin
        return TRAY if self.card is CardState.TRAY else None


@dataclass(frozen=True, slots=True)
class CardAtPlace:
    """One card at one place: how well it was read at best, by which looks, whether one shows it twice, whether its
    thing is doubted, whether it is `told` that it is there: by a hand that held it, or by labels in the picture.
    """

    certainty: Certainty
    looks: tuple[str, ...]
    twice: bool = False
    doubted: bool = False
    told: bool = False


Card = tuple[str, bool]
"""A slot code and True, or the text of no card of the shop and False."""


Views = list[tuple[Look, Read]]


def _sightings(looks: Sequence[Look]) -> dict[Card, Views]:
    sightings: defaultdict[Card, Views] = defaultdict(list)
    for look in sorted(looks, key=lambda look: look.key):
        for read in look.reads:
            if read.certainty is not Certainty.UNREAD:
                sightings[read.code or read.text, read.code is not None].append((look, read))
    return sightings


def doubtful_places(room: Mapping[str, SlotAccount], looks: Sequence[Look]) -> set[str]:
    """Places as `CountedPlace` has it: what a single card says of how photos overlap, it says of itself."""
    common: defaultdict[tuple[str, str], list[str]] = defaultdict(list)
    for (subject, ours), views in _sightings(looks).items():
        home = room[subject].home if ours and subject in room else ""
        eyed = {place for look, read in views if look.by_eye for place in read.bins or (look.place,)}
        for one in {look.place for look, read in views if look.by_eye and not read.bins}:
            for other in eyed:
                if near(one, other):
                    common[one, other].append(home)
    return {one for (one, _), homes in common.items() if len(homes) == 1 and homes != [one]}


def seen_cards(room: Mapping[str, SlotAccount], looks: Sequence[Look]) -> dict[Card, dict[str, CardAtPlace]]:
    """Each card → the places where it was seen, and how."""
    sightings = _sightings(looks)
    beside = _overlaps(sightings.values())
    seen: dict[Card, dict[str, CardAtPlace]] = {}
    for (subject, ours), views in sightings.items():
        own = room[subject].home if ours and subject in room else None
        at: dict[str, CardAtPlace] = {}
        seen[subject, ours] = at
        for place, look, read in _placed(views, own, beside):
            before = at.get(place, CardAtPlace(read.certainty, ()))
            twice = before.twice or look.key in before.looks
            keys = tuple(dict.fromkeys((*before.looks, look.key)))
            doubted = before.doubted or read.doubted
            told = before.told or bool(read.bins) or not look.by_eye
            at[place] = CardAtPlace(_best(before.certainty, read.certainty), keys, twice, doubted, told)
    return seen


def _overlaps(cards: Iterable[Sequence[tuple[Look, Read]]]) -> dict[str, set[str]]:
    """Bin → those near it that its photos show a part of, where no label tells: a card in them was seen there too."""
    beside: defaultdict[str, set[str]] = defaultdict(set)
    for views in cards:
        places = {place for look, read in views for place in read.bins or (look.place,)}
        for one in {look.place for look, read in views if look.by_eye and not read.bins}:
            beside[one] |= {other for other in places if near(one, other)}
    return beside


def _placed(
    views: Sequence[tuple[Look, Read]], own: str | None, beside: Mapping[str, Collection[str]]
) -> Iterator[tuple[str, Look, Read]]:
    """The sightings of one card, each with its place.

    One that may be in either of several is where the card was surely seen, else where all may have it, else where it
    belongs if that is among them: one card that shows in two photos is no twin, and none that shows beside its bin is
    elsewhere.
    """
    may = [
        (read.bins or (look.place, *sorted(beside.get(look.place, ()) if look.by_eye else ())), look, read)
        for look, read in views
    ]
    sure = {where[0] for where, _, _ in may if len(where) == 1}
    often = Counter(place for where, _, _ in may for place in where)
    for where, look, read in sorted(may, key=lambda each: len(each[0]) > 1):
        place = max(where, key=lambda place: (place in sure, often[place] == len(may), place == own, often[place]))
        sure.add(place)
        yield place, look, read


def _best(*ways: Certainty) -> Certainty:
    return Certainty.DECODED if Certainty.DECODED in ways else Certainty.MATCHED
