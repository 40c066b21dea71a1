"""The same cut with the block held every way round: whichever face is up and which one at the jaw, it comes out."""

from itertools import permutations
from pathlib import Path

import pytest

from jobcards.definition import load_job, load_shop
from jobcards.dryrun import dry_run
from jobcards.planning import plan_card
from tests.planning.cards import SHOP

AXIS = {"front": "z", "back": "z", "top": "y", "bottom": "y", "left end": "x", "right end": "x"}
LOW = {"x": "left end", "y": "bottom", "z": "back"}
WAYS = [(up, jaw) for up, jaw in permutations(AXIS, 2) if AXIS[up] != AXIS[jaw]]
BLOCK = """title: Block held every way round
scenario: Invented for the tests.
summary: One cut.
level: some practice
units: inch
revisions:
  - {letter: A, date: 2026-11-25, change: First issue.}
sizes: {length: 2-1/4 ±0.005, height: 2 ±0.005, thickness: 1-3/4 ±0.005}
parts:
  block:
    material: low-carbon steel, cold drawn
    block: {length: length, height: height, thickness: thickness}
    blank: {shape: flat bar, width: height, thickness: thickness, length: length}
    features:
      the cut: FEATURE
    route:
      - set-up: only
        machine: knee mill
        hold: {in: vise, HOLD}
ZERO
        operations: [{cut: the cut, with: 3/4 end mill}]
"""


def comes_out(folder: Path, feature: str, hold: str, zero: str = "") -> list[str]:
    """What the dry run finds."""
    path = folder / "block.yml"
    path.write_text(BLOCK.replace("FEATURE", feature).replace("HOLD", hold).replace("ZERO\n", zero), encoding="utf-8")
    run = dry_run(plan_card(load_job(path), load_shop(SHOP)))
    return [*map(str, run.findings()), *([] if run.passed else ["not as drawn"])]


@pytest.mark.parametrize(("up", "jaw"), WAYS[::2])
def test_a_chamfer_with_the_head_tilted(tmp_path: Path, up: str, jaw: str) -> None:
    """At 25° the cutter's end makes it; at the edge by the fixed jaw the head nods, at an end of the vise it tilts."""
    edge = next(face for face in AXIS if AXIS[face] not in (AXIS[up], AXIS[jaw])) if up in LOW.values() else jaw
    feature = f"{{shape: chamfer, from: {up}, edges: {edge}, size: 0.2, angle: 25°}}"
    assert comes_out(tmp_path, feature, f"up: {up}, against fixed jaw: {jaw}, on: parallels") == []


@pytest.mark.parametrize(("up", "jaw"), WAYS[1::2])
def test_a_v_on_tilted_work(tmp_path: Path, up: str, jaw: str) -> None:
    """The groove away from you, the end high that comes last of the two along the vise."""
    cross = next(axis for axis in "xyz" if axis not in (AXIS[up], AXIS[jaw]))
    high = next(face for face in reversed(AXIS) if AXIS[face] == cross)
    feature = f"{{shape: V-groove, from: {up}, along: {AXIS[jaw]}, centre: 0.9, angle: 90°, width: 0.5}}"
    hold = f"up: {up}, against fixed jaw: {jaw}, on: 45 degree block, high end: {high}"
    assert comes_out(tmp_path, feature, hold, f"        zero: [{{line: 0.9, from: {LOW[cross]}}}]\n") == []
