"""Sign-ins that were refused, as the ledger tells of them: together, so that nobody makes it grow without end."""

from __future__ import annotations

import threading
from datetime import datetime, timedelta

from scanflow.house import Job
from scanflow.shop import Shop
from scanflow.web.door.addresses import network
from scanflow.workflow import access

MINUTE = timedelta(minutes=1)
OTHERS = "others"


class RefusedSignIns:
    """Counts them for each address until they are told; `MOST` addresses at a time, what more there are together."""

    MOST = 20

    def __init__(self) -> None:
        self._lock = threading.Lock()
        self._tries: dict[str, tuple[datetime, int]] = {}

    def note(self, address: str | None, at: datetime) -> None:
        """One more from this address (`request.remote_addr`)."""
        with self._lock:
            named = network(address or "")
            if named not in self._tries and len(self._tries) >= self.MOST:
                named = OTHERS
            since, tries = self._tries.get(named, (at, 0))
            self._tries[named] = (since, tries + 1)

    def tell(self, shop: Shop) -> None:
        """One entry of the ledger for each address."""
        with self._lock:
            told, self._tries = self._tries, {}

        if told:
            shop.act("scanflow", lambda unit: access.refused(unit, told))

    def job(self) -> Job:
        """Tells of them each minute."""
        return Job("tell of refused sign-ins", MINUTE, self.tell)
