"""Every refusal, hold and finding has its words, in one place."""

from __future__ import annotations

import re
from enum import StrEnum
from pathlib import Path

import pytest

import scanflow
from scanflow.domain.counts.findings import FindingKind
from scanflow.domain.derive import OrderState, SlotState
from scanflow.domain.life import Condition, Hold, LineState, ParcelState, ReturnState, StayState
from scanflow.domain.things import ChannelStatus
from scanflow.domain.verdict import HAND_OVER, Reason
from scanflow.domain.words import (
    AT_THE_DOOR,
    CONDITIONS,
    FINDINGS,
    HOLDS,
    LINES,
    ORDERS,
    PARCELS,
    REFUSALS,
    RETURNS,
    SLOTS,
    STATUSES,
    STAYS,
)

HOUSE = Path(scanflow.__file__).parent


@pytest.mark.parametrize("reason", Reason)
def test_a_refusal_has_its_words(reason: Reason) -> None:
    """A heading, a sentence, and what it is called among all that goes wrong."""
    said = REFUSALS[reason]
    assert all((said.heading, said.sentence, said.trouble))


def test_a_refusal_at_the_door_has_its_words() -> None:
    """Whatever is asked before a parcel leaves has a heading and a sentence, filled by its holds' words alone."""
    said = [AT_THE_DOOR[reason] for reason, _ in HAND_OVER]
    assert all(each.heading and each.sentence.format(why="Not this thing") for each in said)


STATES = {
    LineState: LINES,
    OrderState: ORDERS,
    SlotState: SLOTS,
    StayState: STAYS,
    ParcelState: PARCELS,
    ChannelStatus: STATUSES,
    ReturnState: RETURNS,
    Condition: CONDITIONS,
}


@pytest.mark.parametrize("states", STATES, ids=lambda each: each.__name__)
def test_a_state_has_its_words(states: type[StrEnum]) -> None:
    """Each state of a line, an order, a slot, a stay and a parcel, each meaning of a status, each state of a
    return and each condition of its things, and none but these.
    """
    assert set(states) == set(STATES[states])
    assert all(STATES[states].values())


def test_a_hold_and_a_finding_have_their_words() -> None:
    """There is a row for each, and a finding's says what is amiss, why, what to do, and how trouble calls it: a place
    to look at again is none.
    """
    assert (set(Hold), set(FindingKind)) == (set(HOLDS), set(FINDINGS))
    assert all(HOLDS.values())
    assert all(all((said.amiss, said.why, said.todo)) for said in FINDINGS.values())
    assert [FindingKind.UNREADABLE] == [kind for kind, said in FINDINGS.items() if not said.trouble]


def test_a_reason_and_a_finding_of_one_name_are_called_alike() -> None:
    """Trouble counts both by their names."""
    found = {str(kind): said.trouble for kind, said in FINDINGS.items() if said.trouble}
    both = {str(reason): said.trouble for reason, said in REFUSALS.items() if reason in found}
    assert {"slot_free": found["slot_free"]} == both


NAMES = {"reasons": {*Reason} - {*OrderState}, "holds": {*Hold}, "findings": {*FindingKind}}


@pytest.mark.parametrize("names", NAMES.values(), ids=list(NAMES))
def test_no_script_or_page_has_a_table_of_its_own(names: set[str]) -> None:
    """Nowhere but there do two of them stand in a row with words: `name: "Words"`."""
    row = re.compile(rf"""\b({"|".join(names)})["']?: ["'`]""")
    files = [*HOUSE.rglob("*.js"), *HOUSE.rglob("*.html")]
    assert [] == [each.name for each in files if len(set(row.findall(each.read_text(encoding="utf-8")))) > 1]
