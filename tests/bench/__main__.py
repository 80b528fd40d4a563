"""Measures: `python tests/bench` runs every bench, `python tests/bench NAME...` those of these names."""

import sys
from importlib import import_module
from pathlib import Path

HERE = Path(__file__).parent
BENCHES = sorted(path.stem.removesuffix("_bench") for path in HERE.glob("*_bench.py"))


def main() -> None:
    wanted = sys.argv[1:] or BENCHES
    unknown = [name for name in wanted if name not in BENCHES]
    if unknown:
        sys.exit(f"There is no bench {', '.join(unknown)}. There are: {', '.join(BENCHES)}.")
    sys.path[:0] = [str(HERE), str(HERE.parent)]
    for place, name in enumerate(wanted):
        print(f"{chr(10) if place else ''}# {name}", flush=True)
        import_module(f"{name}_bench").main()


if __name__ == "__main__":
    main()
