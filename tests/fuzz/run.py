"""Many spoilt definitions, by hand: `python -m tests.fuzz.run FIRST COUNT` from the top of the repository.

Prints what does not end in a card or in clear problems, and how many ended in which.
"""

import sys
import tempfile
import time
from collections import Counter
from pathlib import Path

from tests.fuzz.outcome import outcome


def main(first: int, count: int) -> int:
    """Try so many seeds from the first on. Returns the exit code."""
    ends: Counter[str] = Counter()
    faults: Counter[str] = Counter()
    slowest = (0.0, 0)
    with tempfile.TemporaryDirectory() as folder:
        for seed in range(first, first + count):
            begun = time.perf_counter()
            end = outcome(seed, Path(folder))
            slowest = max(slowest, (time.perf_counter() - begun, seed))
            ends[end.kind] += 1
            if end.fault and faults[end.fault] == 0:
                print(f"seed {seed}: {end.fault}", flush=True)
            faults[end.fault] += bool(end.fault)
            if (seed - first) % 500 == 499:
                print(seed - first + 1, dict(ends), flush=True)
    print(dict(ends), f"slowest {slowest[0]:.1f} s at seed {slowest[1]}")
    print(*(f"{times} times: {fault}" for fault, times in faults.most_common() if fault), sep="\n")
    return 1 if +faults else 0


if __name__ == "__main__":
    sys.exit(main(int(sys.argv[1]), int(sys.argv[2])))
