"""What the words of a channel's status column may mean: a guess, which a person looks at before it counts."""

from __future__ import annotations

import re

from scanflow.domain.things import ChannelStatus

_WORDS = (
    (
        ChannelStatus.CANCELLED,
        "off cancel canceled cancelled cancellation void voided refunded refund rejected declined",
    ),
    (ChannelStatus.PACK, "unshipped unsent unfulfilled undispatched"),
    (ChannelStatus.ASIDE, "unpaid pending draft hold held review authorised authorized unconfirmed"),
    (ChannelStatus.SENT, "sent shipped dispatched delivered fulfilled completed complete done closed archived"),
    (ChannelStatus.PACK, "paid open new ready confirmed processing accepted cleared sold"),
)
"""The first row that has one of the words decides. (common practice, no source)"""

_NOT_YET = re.compile(r"\b(not|to be|awaiting|waiting|wait|ready)\b")
_PAYING = re.compile(r"\b(paid|payment|pay|cleared|clearing)\b")


def guess(value: str) -> ChannelStatus | None:
    """What a status seems to mean, None where its words say nothing.

    >>> guess("Awaiting payment"), guess("To be sent"), guess("Paid"), guess("Blue")
    (<ChannelStatus.ASIDE: 'aside'>, <ChannelStatus.PACK: 'pack'>, <ChannelStatus.PACK: 'pack'>, None)
    """
    words = " ".join(re.findall(r"[^\W_]+", value.casefold()))
    if _NOT_YET.search(words):
        return ChannelStatus.ASIDE if _PAYING.search(words) else ChannelStatus.PACK
    found = set(words.split())
    return next((meaning for meaning, names in _WORDS if found & set(names.split())), None)
