"""Prints how long the order of a round's stops takes: `python -m tests.bench.walking_bench`."""

from random import Random
from statistics import median
from time import perf_counter

from scanflow.planning.salesman import room_tour
from scanflow.planning.walking import Ladder, ladder_tour

STOPS, ROUNDS = 60, 20


def main() -> None:
    ladder = Ladder(aisles=12, pitch=2.0, length=10.0, table=5.0)
    times: dict[str, list[float]] = {"ladder": [], "any room": []}
    gaps, excesses = [], []
    for seed in range(ROUNDS):
        random = Random(seed)
        stops = [(random.randrange(ladder.aisles), random.uniform(0, ladder.length)) for _ in range(STOPS)]
        begin = perf_counter()
        best = ladder_tour(ladder, stops)
        times["ladder"].append(perf_counter() - begin)
        nodes = [(ladder.table, 0.0), *(ladder.node(stop) for stop in stops)]
        distances = [[ladder.distance(a, b) for b in nodes] for a in nodes]
        begin = perf_counter()
        tour = room_tour(distances)
        times["any room"].append(perf_counter() - begin)
        gaps.append(tour.lower_bound / best.length)
        excesses.append(tour.length / best.length)
    for name, seconds in times.items():
        middle, worst = 1000 * median(seconds), 1000 * max(seconds)
        print(f"walking, {name:8}  {STOPS} stops  median {middle:7.2f} ms  worst {worst:7.2f} ms")
    print(f"walking, any room  tour {median(excesses):.3f} and bound {median(gaps):.3f} of the optimum (medians)")


if __name__ == "__main__":
    main()
