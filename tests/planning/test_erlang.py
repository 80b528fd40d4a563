"""Loss systems against tables, scipy's special functions and simulations by ciw."""

from __future__ import annotations

from statistics import mean, stdev

import ciw
import numpy as np
import pytest
from scipy.special import gammaincc, gammaln
from scipy.stats import t as student

from scanflow.planning.erlang import batch_blocking, blocking, load_for, places_for

# computed by the recursion with an independent program
TABLE = [
    (5, 0.7621, 1.3608, 2.2185),
    (10, 3.0920, 4.4612, 6.2157),
    (15, 6.0772, 8.1080, 10.6327),
    (20, 9.4115, 12.0306, 15.2493),
    (50, 32.512, 37.901, 44.533),
    (100, 75.242, 84.064, 95.240),
    (1000, 930.33, 971.20, 1036.4),
]


def reference(load: float, places: float) -> float:
    """Erlang's formula for any real number of places, by scipy's regularized incomplete gamma function."""
    return np.exp(places * np.log(load) - load - gammaln(places + 1)) / gammaincc(places + 1, load)


@pytest.mark.parametrize(
    ("places", "load", "share"),
    [(0, 3, 1), (1, 1, 1 / 2), (2, 1, 1 / 5), (3, 2, 4 / 19), (10, 5, 0.0183846)],  # computed by the recursion
)
def test_small_values(places: int, load: float, share: float) -> None:
    """The formula has the values that the recursion gives by hand."""
    assert pytest.approx(share, rel=1e-5) == blocking(load, places)


@pytest.mark.parametrize(("places", "low", "middle", "high"), TABLE)
def test_the_load_that_places_carry(places: int, low: float, middle: float, high: float) -> None:
    """The loads carried at 0.1, 1 and 5 per cent are those of the table, to its last figure."""
    loads = [load_for(risk, lambda load: blocking(load, places)) for risk in (0.001, 0.01, 0.05)]
    assert pytest.approx([low, middle, high], rel=6e-5) == loads


@pytest.mark.parametrize(
    ("load", "risk", "places"),
    [
        (33.33, 0.01, 45),  # published traffic tables: 33.33 erlang at 1 % need 45 lines
        (300, 0.01, 324),  # computed by the recursion with an independent program, and the two below
        (300, 0.001, 344),
        (300, 0.0001, 359),
    ],
)
def test_the_places_a_load_needs(load: float, risk: float, places: int) -> None:
    """The fewest places for a risk are as published, and one fewer is too few."""
    assert places == places_for(risk, lambda count: blocking(load, count))
    assert blocking(load, places - 1) > risk


@pytest.mark.parametrize("load", [0.001, 0.5, 0.99, 1, 1.01, 3, 10, 100, 700])
@pytest.mark.parametrize("places", [0.001, 0.3, 0.999, 1, 1.5, 7.25, 120.7])
def test_any_real_number_of_places(load: float, places: float) -> None:
    """Between whole numbers of places the formula is the one of the incomplete gamma function."""
    assert pytest.approx(reference(load, places), rel=1e-11) == blocking(load, places)


@pytest.mark.parametrize(("load", "places"), [(0.5, 3), (4.4612, 10), (84.064, 100), (971.2, 1000)])
def test_batches_of_one(load: float, places: int) -> None:
    """Batches of one item each are Erlang's case."""
    assert pytest.approx(blocking(load, places), rel=1e-9) == batch_blocking(load, places, [1, 1])


@pytest.mark.parametrize(
    "wrong",
    [
        lambda: blocking(0, 3),
        lambda: blocking(1, -1),
        lambda: blocking(1, 3, 0),
        lambda: blocking(float("inf"), 3),
        lambda: batch_blocking(1, 3, []),
        lambda: batch_blocking(1, 3, [0]),
        lambda: places_for(0, lambda count: 0.0),
        lambda: load_for(1, lambda load: 0.0),
    ],
)
def test_numbers_without_sense(wrong) -> None:
    """No load, no places, no batch or a certain risk is an error."""
    with pytest.raises(ValueError, match="must"):
        wrong()


EXPONENTIAL = ciw.dists.Exponential(1.0)
EQUAL = ciw.dists.Deterministic(1.0)
LOGNORMAL = ciw.dists.Lognormal(-0.5, 1.0)  # mean 1


def simulated(load, places, stays, batch=1, arrivals=None, until=500.0) -> tuple[float, float]:
    """Share of items blocked in eight simulated histories, and half the width of its 99.9 % confidence interval."""
    shares = []
    for seed in range(8):
        network = ciw.create_network(
            arrival_distributions=[arrivals or ciw.dists.Exponential(load / batch)],
            service_distributions=[stays],
            number_of_servers=[places],
            queue_capacities=[0],
            batching_distributions=[ciw.dists.Deterministic(batch)],
        )
        ciw.seed(seed)
        simulation = ciw.Simulation(network)
        simulation.simulate_until_max_time(until)
        seen = [record.record_type for record in simulation.get_all_records() if record.arrival_date > 20]
        shares.append(seen.count("rejection") / len(seen))
    return mean(shares), student.ppf(0.9995, len(shares) - 1) * stdev(shares) / len(shares) ** 0.5


@pytest.mark.parametrize("stays", [EXPONENTIAL, EQUAL, LOGNORMAL], ids=["exponential", "equal", "lognormal"])
def test_only_the_mean_stay_matters(stays) -> None:
    """A simulation with stays of any distribution agrees with the formula, within its own confidence interval."""
    share, half = simulated(6.2157, 10, stays)
    assert pytest.approx(blocking(6.2157, 10), abs=half) == share
    assert half < 0.02


def test_batches_that_leave_one_by_one() -> None:
    """A simulation of batches with exponential stays agrees with the exact share; Hayward's is too low there."""
    share, half = simulated(10, 20, EXPONENTIAL, batch=5)
    assert pytest.approx(batch_blocking(10, 20, [5]), abs=half) == share
    assert blocking(10, 20, 3) < share - half


def test_batches_that_leave_together() -> None:
    """A simulation of batches with equal stays agrees with Hayward's approximation; the other share is too low."""
    share, half = simulated(10, 20, EQUAL, batch=5)
    assert pytest.approx(blocking(10, 20, 5), abs=half) == share
    assert batch_blocking(10, 20, [5]) < share - half


def test_batches_at_fixed_intervals() -> None:
    """Batches that come like a clock are blocked less than those that come at random."""
    share, half = simulated(10, 20, EXPONENTIAL, batch=5, arrivals=ciw.dists.Deterministic(0.5), until=200)
    assert share + half < batch_blocking(10, 20, [5])
