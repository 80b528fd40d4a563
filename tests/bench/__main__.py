"""Measures: `python -m tests.bench` runs every bench, `python -m tests.bench NAME...` those of these names."""

import sys
from importlib import import_module
from pathlib import Path

BENCHES = sorted(path.stem.removesuffix("_bench") for path in Path(__file__).parent.glob("*_bench.py"))


def main() -> None:
    wanted = sys.argv[1:] or BENCHES
    unknown = [name for name in wanted if name not in BENCHES]
    if unknown:
        sys.exit(f"There is no bench {', '.join(unknown)}. There are: {', '.join(BENCHES)}.")
    for place, name in enumerate(wanted):
        print(f"{chr(10) if place else ''}# {name}", flush=True)
        import_module(f"tests.bench.{name}_bench").main()


if __name__ == "__main__":
    main()
