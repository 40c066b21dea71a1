"""What cannot be done on the other routes is told where it stands; and what is not there to hold by."""

from pathlib import Path

import pytest

from jobcards.definition import ProblemsFound
from jobcards.planning.words import as_text
from tests.planning.jaws import JAW, changed_jaw

HARDEN = "        heat: {harden: {}, temper: {to: light straw}}"
SQUARE = "      - set-up: square the blank"
HOLE = "      - {set-up: before, machine: knee mill, hold: {in: vise, up: front, against fixed jaw: top}, "
HOLE += "zero: [{edge: left end}, {edge: top}], operations: [{cut: screw hole, with: spot drill, rough: true}]}\n"
INSTEAD = "        instead of: [teeth]"
Swap = tuple[str, str]
NONE: Swap = ("title: Hardened", "title: Hardened")


@pytest.mark.parametrize(
    ("swap", "shop", "words"),
    [
        (
            (HARDEN, "        heat: {harden: {}}\n        stopping point: Supper."),
            NONE,
            "must not be left as it comes out",
        ),
        (("to: light straw", "to: lite straw"), NONE, "no temper colour; write “light straw”"),
        (
            ("tool steel, oil hardening", "low-carbon steel, cold drawn"),
            NONE,
            "does not harden through; write case harden:",
        ),
        (("{harden: {}, temper: {to: light straw}}", "{harden: {to: 2200}}"), NONE, "the furnace gets to 2000"),
        (("faces: [back, front], leave", "faces: [back, back], leave"), NONE, "the back is ground twice"),
        (("order: [front, top, bottom, back,", "order: [front, top, bottom,"), NONE, "nothing is left on the back"),
        (("machine: power saw", "machine: lathe"), NONE, "saw is not done on the lathe; write machine: power saw"),
        (("with: saw blade", "with: file"), NONE, "“file” is no saw blade; write saw blade"),
        (("angle: 90° ±0.5°", "angle: 60° ±0.5°"), NONE, "the tool is ground to 90° and the groove is 60°"),
        (("root: 0.005", "root: 0.010"), NONE, "tip is 0.005 wide and the bottom of the groove 0.010"),
        (("angle: angle, root", "tilt: 45°, angle: angle, root"), NONE, "cut by shaper tool have no tilt"),
        (("inspect: [step width, hole]", "inspect: [step widht, hole]"), NONE, "no size is called “step widht”"),
        (("check: [hole wall]", "check: [hole walls]"), NONE, "no requirement is called “hole walls”"),
        ((INSTEAD, "        instead of: [tooth]"), NONE, "no set-up called “tooth”; write “teeth”"),
        ((INSTEAD, "        instead of: [teeth, ledge]"), NONE, "by the alternative, the feature “ledge”"),
        ((INSTEAD, "        instead of: [ledge]"), NONE, "by the alternative, “teeth” was cut to size"),
        (("set-up: teeth at the mill", "set-up: ledge"), NONE, "there is a set-up called “ledge” already"),
        (
            ("shape: step, from: bottom, edge: left end", "shape: step, from: bottom, edge: front"),
            NONE,
            "across the stroke",
        ),
        (NONE, ("stroke: 7", "stroke: 1"), "the shaper strokes 1 and this wants"),
        (NONE, ("hottest: 2000", "hottest: 1200"), "the furnace gets to 1200 and the work wants 1475 °F"),
        (NONE, ("surface grinder, length: 12, width: 6", "surface grinder, length: 2, width: 2"), "the chuck is"),
        ((SQUARE, HOLE + SQUARE), NONE, "still as sawn when it lies against the fixed jaw in “before”"),
        ((SQUARE, HOLE + SQUARE), NONE, "zero is taken from the left end, which is still as sawn"),
    ],
)
def test_problem(tmp_path: Path, swap: Swap, shop: Swap, words: str) -> None:
    other = () if shop == NONE else (shop,)
    with pytest.raises(ProblemsFound) as found:
        changed_jaw(tmp_path, swap, shop=other)
    told = [str(problem) for problem in found.value.problems]
    assert any(words in line for line in told), told
    assert all(line.count(":") >= 3 for line in told)


def ledge_before_teeth(depth: str) -> list[Swap]:
    """A deep step along the back, cut before the teeth are."""
    text = JAW.read_text(encoding="utf-8")
    first, second, end = (text.index(f"      - set-up: {title}") for title in ("teeth\n", "ledge\n", "measure"))
    return [
        (text[first:end], text[second:end] + text[first:second]),
        ("edge: left end, width: step width, depth: step depth", f"edge: back, width: 1/8, depth: {depth}"),
        ("up: bottom, against fixed jaw: front, against stop: left end", "up: bottom, against fixed jaw: left end"),
        ("zero: [{line: step width, from: left end}]", "zero: [{line: 1/8, from: back}]"),
        ("inspect: [step width, hole]", "inspect: [hole]"),
        ("  step width: 3/16 ±0.005\n", ""),
        ("  step depth: 1/8 ±0.005\n", ""),
    ]


def test_a_face_that_is_cut_away_does_not_hold(tmp_path: Path) -> None:
    """A step 0.75 deep along the back; jaws 1-1/8 deep over parallels of 1/2 grip 0.625 of it."""
    with pytest.raises(ProblemsFound) as found:
        changed_jaw(tmp_path, *ledge_before_teeth("0.75"), shop=(("jaw depth: 1-3/4", "jaw depth: 1-1/8"),))
    told = [str(problem) for problem in found.value.problems]
    assert any(
        "nothing is left of the back where the jaws grip in “teeth”: “screw hole”, “ledge” took it" in line
        for line in told
    ), told


def test_a_face_mostly_cut_away_is_a_caution(tmp_path: Path) -> None:
    """A step 0.6 deep, and about a whole inch gripped: less than half is left."""
    card = changed_jaw(tmp_path, *ledge_before_teeth("0.6"))
    told = [as_text(warning) for warning in card.warnings]
    assert any("teeth: less than half of the back is left" in line for line in told), told


def test_limits_closer_than_the_process_are_a_caution(tmp_path: Path) -> None:
    card = changed_jaw(tmp_path, ("hole: 17/64 +0.006/-0.001", "hole: 17/64 +0.001/-0"))
    told = [as_text(warning) for warning in card.warnings]
    assert any("hole is asked between" in line and "drilling holds" in line for line in told), told


def test_a_thickness_that_only_grinding_holds(tmp_path: Path) -> None:
    """0.750 ±0.0005 is held by grinding, and not by the shaper."""
    card = changed_jaw(tmp_path)
    assert not card.warnings
    grind = "      - set-up: grind the faces\n        machine: surface grinder\n"
    grind += "        grind: {faces: [back, front], leave: 0.010, with: grinding wheel}\n"
    told = [as_text(warning) for warning in changed_jaw(tmp_path, (grind, "")).warnings]
    assert any("thickness is asked between" in line and "shaping holds" in line for line in told), told
