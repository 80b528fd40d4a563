"""What a count comes to: from what stands where by the shop's account, and what was seen, to what is amiss.

Nothing here guesses. A photo shows what is there, never what is not: another thing may hide a card in all of them. So
nothing is missing but where someone went through a place by hand, and what was not looked at is not either. What shows
in the photos of two bins side by side is one card; one that a photo without labels shows, and that belongs in a bin
beside it, hangs there until somebody has looked into that. A slot that changed since the count began is left out; and
of each slot there is one finding at most.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Collection, Iterator, Mapping, Sequence
from dataclasses import asdict, dataclass
from enum import StrEnum
from typing import Any

from scanflow.domain.counts.seen import Card, CardAtPlace, SlotAccount, doubtful_places, seen_cards
from scanflow.domain.counts.shelf_view import near
from scanflow.domain.counts.stocktake import TRAY, Certainty, Look
from scanflow.domain.life import CardState, LineState


class FindingKind(StrEnum):
    """`missing`: its place was looked at well enough, and it was seen nowhere. `elsewhere`: seen in another bin only.

    `twin`: one code at two places. `slot_free`: a card on a shelf, and nothing stands in its slot. `in_tray`: a card in
    the tray whose thing is in stock. `card_due`: a card that should be back and is not, or is and nobody said so.
    `unknown`: a card that the shop does not have. `unreadable`: a place to look at again, for cards are missed there
    that may be those that could not be read, or that no photo shows.
    `suspect`: a card on its shelf whose thing counts as picked or packed, or is not the one, as a person said.
    """

    MISSING = "missing"
    ELSEWHERE = "elsewhere"
    TWIN = "twin"
    SLOT_FREE = "slot_free"
    IN_TRAY = "in_tray"
    CARD_DUE = "card_due"
    UNKNOWN = "unknown"
    UNREADABLE = "unreadable"
    SUSPECT = "suspect"


@dataclass(frozen=True, slots=True)
class Finding:
    """One thing amiss. `subject` is a slot code, a foreign card's text, or a place.

    `bin` is the slot's own, `places` are where it was seen, or could not be read; `looks` the keys of the looks that
    show it, for what is missing those of its place. `read`, `unread` and `expected` count the cards there. `doubtful`
    as of a place.
    """

    kind: FindingKind
    subject: str
    bin: str | None = None
    places: tuple[str, ...] = ()
    certainty: Certainty | None = None
    looks: tuple[str, ...] = ()
    read: int | None = None
    unread: int | None = None
    expected: int | None = None
    doubtful: bool = False

    @property
    def id(self) -> str:
        return f"{self.kind}-{self.subject}"

    @property
    def code(self) -> str | None:
        """The slot it is about, None where it is about none of the shop's."""
        return None if self.kind in (FindingKind.UNKNOWN, FindingKind.UNREADABLE) else self.subject

    def as_dict(self) -> dict[str, Any]:
        """Plain JSON values; `from_dict` takes them back."""
        return asdict(self)

    @classmethod
    def from_dict(cls, kept: Mapping[str, Any]) -> Finding:
        certainty = kept["certainty"]
        return cls(
            **{
                **kept,
                "kind": FindingKind(kept["kind"]),
                "certainty": Certainty(certainty) if certainty else None,
                "places": tuple(kept["places"]),
                "looks": tuple(kept["looks"]),
            }
        )


@dataclass(frozen=True, slots=True)
class CountedPlace:
    """What is known of one place: codes expected there, what was read, how many cards nobody could read.

    `unseen` are those expected that were seen nowhere. `unclear` are those of its `looks` in which a card could not be
    read. `sure`: gone through by hand. `doubtful`: one of its photos and one of a bin beside it have a single card in
    common, which is at home there: it may be one that both show, or two.
    """

    expected: frozenset[str]
    read: frozenset[str]
    unseen: frozenset[str]
    unread: int
    looks: tuple[str, ...]
    unclear: tuple[str, ...]
    looked: bool
    sure: bool
    doubtful: bool = False

    @property
    def well(self) -> bool:
        """Whether what was not seen here is not here."""
        return self.looked and self.unread == 0 and (self.sure or not (self.unseen or self.doubtful))


def places(
    names: Sequence[str],
    room: Mapping[str, SlotAccount],
    looks: Sequence[Look],
    changed: Collection[str] = (),
    settled: Collection[str] = (),
) -> dict[str, CountedPlace]:
    """Each place of the area. At `settled` ones a person has looked: what could not be read is no card of the shop."""
    expected: defaultdict[str, set[str]] = defaultdict(set)
    for each in room.values():
        if each.place is not None and each.code not in changed:
            expected[each.place].add(each.code)
    by_place: defaultdict[str, list[Look]] = defaultdict(list)
    for look in sorted(looks, key=lambda look: look.key):
        by_place[look.place].append(look)
    seen = seen_cards(room, looks)
    codes = {subject for subject, ours in seen if ours}
    doubtful = doubtful_places(room, looks)
    by_hand = {name: [look for look in by_place[name] if not look.by_eye] for name in names}
    gone_through = {name for name in names if any(look.whole and look.closer is None for look in by_hand[name])}
    return {
        name: CountedPlace(
            expected=frozenset(expected[name]),
            read=frozenset(subject for (subject, _), at in seen.items() if name in at),
            unseen=frozenset(expected[name]) - codes,
            unread=0 if name in settled else _unread((by_hand if name in gone_through else by_place)[name]),
            looks=tuple(look.key for look in by_place[name]),
            unclear=tuple(look.key for look in by_place[name] if look.unread),
            looked=any(look.whole and look.closer is None for look in by_place[name]),
            sure=name in gone_through,
            doubtful=name in doubtful,
        )
        for name in names
    }


def _unread(looks: Sequence[Look]) -> int:
    """The cards of one place that no look could read.

    A closer look reads some of those of the look it names. A look that reads all that another read, and as many more
    as that one could not, has read them too. Nothing else takes an unread card away, for two looks may show two parts
    of a bin.
    """
    closer: defaultdict[str, set[str]] = defaultdict(set)
    for look in looks:
        if look.closer is not None:
            closer[look.closer] |= look.texts
    left = 0
    for look in looks:
        if look.unread and look.closer is None and not any(_covers(other, look) for other in looks):
            left += max(0, look.unread - len(closer[look.key] - look.texts))
    return left


def _covers(other: Look, look: Look) -> bool:
    return other.unread == 0 and other.texts >= look.texts and len(other.texts) >= len(look.texts) + look.unread


def findings(
    names: Sequence[str],
    room: Mapping[str, SlotAccount],
    looks: Sequence[Look],
    changed: Collection[str] = (),
    settled: Collection[str] = (),
) -> tuple[Finding, ...]:
    """What is amiss in the places of an area (`names`): by kind, then by subject, whatever the order of the looks.

    `changed`: codes of slots that changed since the count began. `settled` as in `places`.
    """
    known = places(names, room, looks, changed, settled)
    seen = seen_cards(room, looks)
    found = [*_of_cards(room, seen, known, changed), *_absent(room, seen, known, changed), *_unreadable(known)]
    order = list(FindingKind)
    return tuple(sorted(found, key=lambda each: (order.index(each.kind), each.subject)))


def _worst(*ways: Certainty) -> Certainty:
    return Certainty.MATCHED if Certainty.MATCHED in ways else Certainty.DECODED


def _of_cards(
    room: Mapping[str, SlotAccount],
    seen: Mapping[Card, Mapping[str, CardAtPlace]],
    known: Mapping[str, CountedPlace],
    changed: Collection[str],
) -> Iterator[Finding]:
    """What is wrong with cards that were seen, in a place that is counted or away from it."""
    for (subject, ours), at in seen.items():
        own = room.get(subject) if ours else None
        if subject in changed and ours:
            continue
        if known.keys().isdisjoint(at) and (own is None or own.place not in known):
            continue
        kind = _amiss(own, at) if own is not None else FindingKind.UNKNOWN
        if kind is FindingKind.ELSEWHERE and own is not None and _may_be_at_home(own, at, known):
            continue
        if kind is not None:
            yield Finding(
                kind,
                subject,
                own.bin if own is not None else None,
                tuple(sorted(at)),
                _worst(*(each.certainty for each in at.values())),
                tuple(key for place in sorted(at) for key in at[place].looks),
            )


def _amiss(own: SlotAccount, at: Mapping[str, CardAtPlace]) -> FindingKind | None:
    """What it means that a card of the shop was seen at these places; None where it belongs there."""
    if len(at) > 1 or any(each.twice for each in at.values()):
        return FindingKind.TWIN
    ((place, how),) = at.items()
    if place == TRAY:
        if own.taken:
            return FindingKind.IN_TRAY
        return None if own.card is CardState.TRAY else FindingKind.CARD_DUE
    if not own.taken:
        return FindingKind.SLOT_FREE
    if place != own.bin:
        return FindingKind.ELSEWHERE
    return FindingKind.SUSPECT if how.doubted or own.line in (LineState.PICKED, LineState.PACKED) else None


def _may_be_at_home(own: SlotAccount, at: Mapping[str, CardAtPlace], known: Mapping[str, CountedPlace]) -> bool:
    """Whether a card seen in a photo of a bin beside its own may hang in that: nobody has looked into it."""
    ((place, how),) = at.items()
    home = known.get(own.bin)
    return not how.told and near(place, own.bin) and (home is None or not home.looked)


def _absent(
    room: Mapping[str, SlotAccount],
    seen: Mapping[Card, object],
    known: Mapping[str, CountedPlace],
    changed: Collection[str],
) -> Iterator[Finding]:
    """Cards that were seen nowhere though their places were looked at well enough."""
    tray = known.get(TRAY)
    for own in room.values():
        if (own.code, True) in seen or own.code in changed:
            continue
        if own.place is None:
            due = not own.taken and own.card in (CardState.DUE, CardState.HAND)
            if due and tray is not None and tray.well:
                yield Finding(FindingKind.CARD_DUE, own.code, own.bin, looks=tray.looks)
            continue
        spots = {own.place, own.where} if own.taken else {own.place}
        if all(spot in known and known[spot].well for spot in spots):
            here = known[own.place]
            yield Finding(
                FindingKind.MISSING,
                own.code,
                own.place,
                looks=here.looks,
                read=len(here.read),
                unread=here.unread,
                expected=len(here.expected),
            )


def _unreadable(known: Mapping[str, CountedPlace]) -> Iterator[Finding]:
    """Places where somebody has to look again: cards are missed there, and nothing says that they are gone."""
    for name, here in known.items():
        hidden = bool(here.unseen) and (here.unread > 0 or (here.looked and not here.sure))
        if hidden or (here.doubtful and here.looked and not here.sure):
            yield Finding(
                FindingKind.UNREADABLE,
                name,
                name,
                (name,),
                Certainty.UNREAD,
                here.unclear or here.looks,
                read=len(here.read),
                unread=here.unread,
                expected=len(here.expected),
                doubtful=not hidden,
            )
