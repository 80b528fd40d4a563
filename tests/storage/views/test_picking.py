"""What still wants walking to, by SQL and by the rules."""

from __future__ import annotations

from dataclasses import replace

from furnished import furnish

from scanflow.domain.derive import to_fetch, to_walk
from scanflow.domain.life import Hold, LineState, RoundState
from scanflow.domain.things import Line, Round, Stop
from scanflow.shop import Shop
from scanflow.storage.unit import SqlUnit
from scanflow.storage.views import picking as round_views
from scanflow.storage.views import room as room_views
from scanflow.workflow.picking import rounds


def mix(unit: SqlUnit) -> None:
    """Lines of two rounds, one of them closed, in every state, held and not."""
    lines = unit.find(Line)
    states = [LineState.WAITING, LineState.WAITING, *(state for state in LineState if state is not LineState.RELEASED)]
    for number, line in enumerate(lines):
        line = replace(line, state=states[number % len(states)], holds=()) if line.stay else line
        unit.put(line.held(Hold.DOUBTFUL, "Look at it.") if number % 3 == 0 else line)


def test_what_wants_walking_to_is_what_the_rules_say(shop: Shop) -> None:
    """Counts of what waits and walks, and of each round's stops, are what the rules derive from the lines."""
    room = furnish(shop, 40)
    assert room.round is not None
    walk = room.round.id
    shop.act("owner", mix)
    shop.act("owner", lambda unit: rounds.open_round(unit, rounds.OpenRound()))
    with shop.looking() as unit:
        lines = {line.id: line for line in unit.find(Line)}
        walks = [each for each in unit.find(Round) if each.state is RoundState.OPEN]
        left = {each.id: sum(to_walk(lines[s.line], each.id) for s in unit.find(Stop, round=each.id)) for each in walks}
        walking = sum(to_walk(line, each.id) for line in lines.values() for each in walks)
        expected = (sum(map(to_fetch, lines.values())) - walking, walking, {k: n for k, n in left.items() if n})
        counts = room_views.counts(unit.connection)
        shown = {row.id: row.waiting for row in round_views.open_rounds(unit.connection)}
    assert expected == (counts["waiting"], counts["walking"], shown)
    assert 0 < left[walk] < len(lines)
