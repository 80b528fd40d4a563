"""A look that is no good, of another bin or blurred, is taken out of its count."""

from __future__ import annotations

from scanflow.domain.life import StocktakeState
from scanflow.domain.stocktake import Looked, Stocktake
from scanflow.domain.things import Item, Photo
from scanflow.workflow.ports import Missing, Refused, Unit, must


def drop_look(unit: Unit, count_id: str, key: str) -> Stocktake:
    """Take a look out, with those that show a part of it from nearer; their photos are deleted for good.

    What was resolved by it stays resolved. Refused: `closed` where the count is over.
    """
    count = must(unit, Stocktake, count_id)
    look = unit.get(Looked, key)
    if look is None or look.stocktake != count_id:
        raise Missing("There is no such look in this count.")
    if count.state is not StocktakeState.OPEN:
        raise Refused("closed", f"This count is {count.state}. Its looks stay.")
    closer = unit.find(Looked, closer=key)
    for each in (*closer, look):  # the look last: those point to it
        unit.drop(Looked, each.key)
        if each.photo and not unit.find(Looked, photo=each.photo) and not unit.find(Item, photo=each.photo):
            unit.drop(Photo, each.photo)
    dropped = sorted(each.key for each in (look, *closer))
    unit.record("look dropped", {"stocktake": count_id, "place": look.place, "keys": dropped})
    return count
