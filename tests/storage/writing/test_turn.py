"""Turns are given in the order in which they were asked for."""

from __future__ import annotations

import threading
import time

from scanflow.storage.writing.turn import Turn


def test_who_waits_longest_is_next() -> None:
    """Also before who had it last and asks again at once; who gave up waiting is left out."""
    turn, order = Turn(), []
    assert (True, False) == (turn.take(0), turn.take(0.01))

    def wait(name: str) -> None:
        assert turn.take(10)
        order.append(name)
        turn.give()

    threads = []
    for name in "abc":
        threads.append(threading.Thread(target=wait, args=(name,)))
        threads[-1].start()
        while len(turn._waiting) < len(threads):
            time.sleep(0.001)
    turn.give()
    wait("last")
    for thread in threads:
        thread.join()
    assert ["a", "b", "c", "last"] == order
