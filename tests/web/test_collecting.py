"""Long collections of garbage wait while a large file is looked at."""

import gc

import pytest

from scanflow.web.collecting import uncollected


def test_garbage_waits_until_the_last_one_is_done() -> None:
    """Also where one of two works inside the other, or one fails."""

    @uncollected
    def fail() -> None:
        assert not gc.isenabled()
        raise LookupError

    @uncollected
    def two() -> bool:
        with pytest.raises(LookupError):
            fail()
        return gc.isenabled()

    assert (False, True) == (two(), gc.isenabled())
