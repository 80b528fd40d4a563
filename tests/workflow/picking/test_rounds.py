"""One walk through the room for the orders that wait."""

from dataclasses import replace
from datetime import UTC, datetime
from itertools import pairwise, permutations

import pytest
from room_in_memory import RoomInMemory

from scanflow.domain.closing import ClosingDays
from scanflow.domain.life import NotAllowed, RoundState
from scanflow.domain.things import Bin, Line, Order, Rack, Stop
from scanflow.planning.room import spot
from scanflow.planning.walking import Ladder
from scanflow.workflow import orders, stock
from scanflow.workflow.picking import rounds
from scanflow.workflow.picking.rounds import LeftOut
from scanflow.workflow.ports import Invalid, Missing


def test_a_round_takes_all_that_wait_each_order_in_its_basket():
    """Without orders named, all waiting lines get a stop, and each order a basket, the most urgent first."""
    room = RoomInMemory("D001", "D003", "D005")
    room.order("1", "D001", "D005", ship_by="2026-03-09")
    room.order("2", "D003", ship_by="2026-03-03")
    walk = room.round()
    stops = room.unit.find(Stop, round=walk.id)
    assert ["A-1-1", "A-1-2", "A-1-3"] == sorted(stop.bin for stop in stops)
    assert [2, 1, 2] == [room.line(code).basket for code in ("D001", "D003", "D005")]


@pytest.mark.parametrize(
    ("most", "taken"), [(1, "D001 D002"), (2, "D001 D002"), (3, "D001 D002 D003"), (9, "D001 D002 D003 D004")]
)
def test_a_round_of_at_most_so_many_things(most, taken):
    """Whole orders are taken, the most urgent first, until one is too many; the first is taken in any case."""
    room = RoomInMemory("D001", "D002", "D003", "D004")
    room.order("1", "D004", ship_by="2026-03-09")
    room.order("2", "D001", "D002", ship_by="2026-03-03")
    room.order("3", "D003", ship_by="2026-03-04")
    walk, left_out = rounds.open_round(room.unit, rounds.OpenRound(), most=most)
    walked = [room.unit.get(Line, stop.line) for stop in room.unit.find(Stop, round=walk.id)]
    codes = sorted(code for code in ("D001", "D002", "D003", "D004") if room.line(code) in walked)
    assert (taken, ()) == (" ".join(codes), left_out)


@pytest.mark.parametrize(("baskets", "taken"), [(0, "123"), (1, "2"), (2, "23"), (9, "123")])
def test_a_round_of_as_many_orders_as_there_are_baskets(baskets, taken):
    """Of all that wait, whoever asks; orders that were chosen are all on it."""
    room = RoomInMemory("D001", "D002", "D003")
    room.unit.set_settings(replace(room.unit.settings, baskets=baskets))
    made = [room.order(n, code, ship_by=f"2026-03-0{day}") for n, code, day in (("1", "D001", 9), ("2", "D002", 3))]
    made.append(room.order("3", "D003", ship_by="2026-03-04"))
    walk, _ = rounds.open_round(room.unit, rounds.OpenRound())
    assert taken == "".join(order.number for order in made if room.lines(order)[0].round == walk.id)
    rounds.close_round(room.unit, walk.id)
    chosen, _ = rounds.open_round(room.unit, rounds.OpenRound(orders=[order.id for order in made]))
    assert [chosen.id] * 3 == [room.lines(order)[0].round for order in made]


def test_stops_stand_in_the_order_to_walk():
    """Along the rack the bins come one after the other, there or back."""
    room = RoomInMemory("D001", "D003", "D005")
    room.order("1", "D003", "D005", "D001")
    bins = [stop.bin for stop in room.unit.find(Stop, round=room.round().id)]
    assert sorted(bins) in (bins, bins[::-1])


@pytest.mark.parametrize(("table", "walk"), [("0", "BDCA"), ("4", "DCAB")])
def test_a_round_is_short_from_where_the_table_stands(table, walk):
    """With the table on the other side, another order of the same four racks is the shortest there is."""
    room = RoomInMemory()
    stock.measure_racks(room.unit, stock.MeasureRacks(table=table))
    places = {"A": (0, 3.0), "B": (1, 0.0), "C": (2, 6.0), "D": (3, 0.0)}
    for rack, (aisle, start) in places.items():
        stock.add_section(room.unit, stock.AddSection(code=f"S{rack}", name="Things", slots_per_bin=1, colour="pink"))
        stock.add_slots(room.unit, f"S{rack}", stock.AddSlots(count=1, rack=rack))
        stock.place_rack(room.unit, rack, stock.PlaceRack(aisle=aisle, start=start))
        stock.put_away(room.unit, stock.PutAway(title="thing", section=f"S{rack}"))
    room.order("1", *(f"S{rack}001" for rack in places))
    bins = [stop.bin[0] for stop in room.unit.find(Stop, round=room.round().id)]
    shape = room.unit.settings.racks.shape()
    spots = [spot(Rack(rack, *places[rack]), Bin("", rack, 1, 1, ""), shape) for rack in "ABCD"]
    shortest = min(_walk(spots, order, shape) for order in permutations(range(4)))
    assert pytest.approx(shortest) == _walk(spots, ["ABCD".index(rack) for rack in bins], shape)
    assert walk == "".join(bins)


def _walk(spots, order, shape):
    """Metres from the table past these spots and back."""
    ladder = Ladder(4, shape.aisle_pitch, 7.1, shape.table)
    places = [(shape.table, 0.0), *(ladder.node(spots[at]) for at in order), (shape.table, 0.0)]
    return sum(ladder.distance(a, b) for a, b in pairwise(places))


def test_a_thing_seen_in_another_bin_is_walked_to_there():
    """The stop is at the bin where the card was seen last."""
    room = RoomInMemory("D001")
    room.order("1", "D001")
    room.scan("shelf", "D001", bin="A-1-3")
    assert ["A-1-3"] == [stop.bin for stop in room.unit.find(Stop, round=room.round().id)]


def test_who_is_left_out_and_why():
    """Held orders, orders on an open round and those with nothing waiting stay behind, and a round for them is over."""
    room = RoomInMemory("D001", "D002", "D003")
    held, walking, done = (room.order(str(n), f"D00{n}") for n in (1, 2, 3))
    room.pick("D003")
    orders.hold(room.unit, room.line("D001").id, orders.NotThis(why="hm"))
    room.round(walking)
    walk, left_out = rounds.open_round(room.unit, rounds.OpenRound(orders=[held.id, walking.id, done.id]))
    assert (LeftOut(held.id, "held"), LeftOut(walking.id, "on_round"), LeftOut(done.id, "not_waiting")) == left_out
    assert RoundState.CLOSED is walk.state


def test_what_was_not_picked_waits_for_another_round():
    """After a round is closed its lines may go on the next."""
    room = RoomInMemory("D001")
    room.order("1", "D001")
    first = room.round()
    rounds.close_round(room.unit, first.id)
    second = room.round()
    assert (RoundState.OPEN, second.id) == (second.state, room.line("D001").round)


def test_a_round_is_closed_once():
    """A closed round can't be closed, an unknown one is missing, and a round needs orders that exist."""
    room = RoomInMemory("D001")
    room.order("1", "D001")
    walk = room.round()
    rounds.close_round(room.unit, walk.id)
    with pytest.raises(NotAllowed):
        rounds.close_round(room.unit, walk.id)
    with pytest.raises(Missing):
        rounds.close_round(room.unit, "none")
    with pytest.raises(Invalid) as refusal:
        rounds.open_round(room.unit, rounds.OpenRound(orders=["none"]))
    assert ("/orders/0", "unknown_order") == (refusal.value.pointer, refusal.value.code)


def test_only_waiting_lines_of_an_order_get_a_stop():
    """What is picked already keeps its basket and gets no second stop."""
    room = RoomInMemory("D001", "D002")
    order = room.order("1", "D001", "D002")
    room.pick("D001")
    walk = room.round(order)
    assert [room.line("D002").id] == [stop.line for stop in room.unit.find(Stop, round=walk.id)]
    assert 2 == len(room.unit.find(Line, order=order.id))


@pytest.mark.parametrize(("closed", "taken"), [((), "12"), (("sunday",), "13"), (("saturday", "sunday"), "13")])
def test_a_round_takes_first_what_would_be_late_after_a_closed_day(closed, taken):
    """What is due on a closed Sunday is due by the end of the Saturday, or with the Saturday's by the end of the Friday
    where that is closed too: so it goes before what waits without a day since the Sunday morning.

    7 March 2026 is a Saturday (from a calendar).
    """
    room = RoomInMemory("D001", "D002", "D003")
    room.unit.set_settings(replace(room.unit.settings, baskets=2, closing=ClosingDays(closed)))
    room.order("1", "D001", ship_by="2026-03-07T18:00:00Z")
    room.unit.at = datetime(2026, 3, 8, 9, tzinfo=UTC)
    room.order("2", "D002")
    room.order("3", "D003", ship_by="2026-03-08")
    walk = room.round()
    lines = [room.unit.get(Line, stop.line) for stop in room.unit.find(Stop, round=walk.id)]
    baskets = {line.basket: room.unit.get(Order, line.order).number for line in lines}
    assert taken == "".join(number for _, number in sorted(baskets.items()))
