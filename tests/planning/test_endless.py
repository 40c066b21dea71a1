"""Definitions that ask for what has no end: told at once, within a second or so and 300 MB, in a process of its own."""

import resource
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]
CLAMP = (ROOT / "jobcards/jobs/equalising-clamp.yml").read_text(encoding="utf-8")
GUIDE = (ROOT / "tests/jobs/metric-guide.yml").read_text(encoding="utf-8")
MEMORY, SECONDS = 300 * 2**20, 15  # the time is a bound on a hang, not a measure
PLACES = "at: [{x: length/2 - screw spacing/2, y: height/2}, {x: length/2 + screw spacing/2, y: height/2}]"
ROW = "row: {start: {x: 5, y: height/2}, along: x, pitch: 1, count: 1000000000}"
GRID = "grid: {start: {x: 5, y: 5}, along: x, pitch: 1, count: 200, then along: y, then pitch: 1, then count: 200}"
CIRCLE = "circle: {centre: {x: length/2, y: height/2}, diameter: 10, count: 1000000000}"
ENDLESS = {
    "a row of holes": (GUIDE, PLACES, ROW),
    "a grid of holes": (GUIDE, PLACES, GRID),
    "a circle of holes": (GUIDE, PLACES, CIRCLE),
    "grooves": (CLAMP, "serration pitch: 3/16 ±0.002", "serration pitch: 0.00001 ±0.000001"),
    "passes at the lathe": (GUIDE, "diameter: 22,", "diameter: 99999,"),
    "passes at the mill": (GUIDE, "width: 28, thickness: 22", "width: 28, thickness: 990000"),
    "a long block": (GUIDE, "length: 60 ±0.1", "length: 990000 ±0.1"),
    "a long row of signs": (GUIDE, "length: length + 3", "length: " + "-" * 5000 + "length"),
    "a power of powers": (GUIDE, "length: length + 3", "length: 9e999999"),
    "not a number": (GUIDE, "length: length + 3", "length: nan"),
    "no end": (GUIDE, "length: length + 3", "length: inf"),
    "nothing divided": (GUIDE, "length: length + 3", "length: length/(length - length)"),
    "too many variants": (
        GUIDE, "variants:\n", "variants:\n" + "".join(f"  v{n}: {{length: {60 + n}}}\n" for n in range(190)),
    ),
}  # fmt: skip
CODE = """
import sys
from pathlib import Path
from jobcards.planning import problems_of
print(*problems_of(Path(sys.argv[1])), sep="\\n")
"""


@pytest.mark.parametrize("name", ENDLESS)
def test_it_is_told_within_bounds(tmp_path: Path, name: str) -> None:
    text, old, new = ENDLESS[name]
    assert old in text
    path = tmp_path / "endless.yml"
    path.write_text(text.replace(old, new), encoding="utf-8")

    def bounded() -> None:
        resource.setrlimit(resource.RLIMIT_AS, (MEMORY, MEMORY))
        resource.setrlimit(resource.RLIMIT_CPU, (SECONDS, SECONDS))

    command = [sys.executable, "-c", CODE, str(path)]
    run = subprocess.run(command, cwd=ROOT, capture_output=True, text=True, preexec_fn=bounded, check=False)
    assert (run.returncode, run.stderr) == (0, "")
    lines = run.stdout.splitlines()
    assert 1 <= len(lines) <= 60
    assert all(line.startswith(f"{path.as_posix()}:") and "; " in line for line in lines), lines
