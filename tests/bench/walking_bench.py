"""Prints how long the order of a round's stops takes: `python -m tests.bench.walking_bench`."""

from random import Random
from statistics import median
from time import perf_counter

from scanflow.planning.walking import Ladder, ladder_tour

STOPS, ROUNDS = 60, 20


def main() -> None:
    ladder = Ladder(aisles=12, pitch=2.0, length=10.0, table=5.0)
    times = []
    for seed in range(ROUNDS):
        random = Random(seed)
        stops = [(random.randrange(ladder.aisles), random.uniform(0, ladder.length)) for _ in range(STOPS)]
        begin = perf_counter()
        ladder_tour(ladder, stops)
        times.append(1000 * (perf_counter() - begin))
    print(f"walking  {STOPS} stops  median {median(times):7.2f} ms  worst {max(times):7.2f} ms")


if __name__ == "__main__":
    main()
