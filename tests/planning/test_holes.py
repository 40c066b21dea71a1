"""Holes by pencil: every expected value was worked on paper from the drawing's sizes, not by the code.

Sources: geometry and arithmetic; thread sizes ASME B1.1; percentage of thread on the charts' 1.299 pitches; a plug
tap's chamfer of 5 threads, pecks of three and one diameters, and what is left for a reamer are common practice, no
source;
clearance hole 9/32 for a 1/4 screw ASME B18.2.8; flat head 0.531 at 82° ASME B18.3.
"""

from pathlib import Path

import pytest

from jobcards.definition import ProblemsFound
from jobcards.planning.words import as_text
from tests.planning.hole_cards import plate, spoilt

PENCIL = {
    # six on 1-1/2 about (1.500, 1.500), the first at 30°: 1.5 + 0.75 cos 30° = 2.14952, 1.5 + 0.75 sin 30° = 1.875
    "plate-holes-tapped-circle-no-7-drill-a.x": "2.1495",
    "plate-holes-tapped-circle-no-7-drill-a.y": "1.8750",
    "plate-holes-tapped-circle-no-7-drill-b.x": "1.5000",
    "plate-holes-tapped-circle-no-7-drill-b.y": "2.2500",
    "plate-holes-tapped-circle-no-7-drill-e.y": "0.7500",
    # neighbours of a hexagon stand as far apart as its radius
    "plate-tapped-circle.chord": "0.7500",
    # three of a circle of four on 1/2, on the top: the first up on the drawing, that is toward the back, then left
    "plate-edge-edge-circle-17-64-drill-a.x": "3.0000",
    "plate-edge-edge-circle-17-64-drill-a.y": "−0.1875",
    "plate-edge-edge-circle-17-64-drill-b.x": "2.7500",
    "plate-edge-edge-circle-17-64-drill-b.y": "−0.4375",
    "plate-edge-edge-circle-17-64-drill-c.y": "−0.6875",
    # a row of three from 3.000 every 0.750; a grid of three by two, 0.625 between its rows
    "plate-holes-screw-row-9-32-drill-c.x": "4.5000",
    "plate-holes-plain-grid-17-64-drill-f.x": "4.5000",
    "plate-holes-plain-grid-17-64-drill-f.y": "1.8750",
    # 1/4 less 0.75 of 1.299 / 20; No. 7 is 0.201 and leaves (0.250 - 0.201) / 0.06495
    "plate-tapped-circle.hole": "0.2013",
    "plate-holes-tapped-circle-no-7-drill.percent": "75",
    "thread-basis": "1.299",
    # 1/2 of thread, 5 threads of 1/20, 0.060 for chips; the point of 118° is 0.201 / 2 / tan 59° longer
    "plate-holes-tapped-circle-no-7-drill.full": "0.8100",
    "plate-holes-tapped-circle-no-7-drill.depth": "0.8704",
    "plate-holes-tapped-circle-1-4-20-tap.depth": "0.7500",
    "plate-holes-tapped-circle-1-4-20-tap.turns": "15.0",
    # 1/2 less 31/64; drilled 0.100 deeper than the reamed 1/2, and the point 0.1455
    "plate-holes-dowel-hole-1-2-reamer.left": "0.0156",
    "plate-holes-blind-dowel-31-64-drill.depth": "0.7455",
    # half of 80 ft/min at 1/2: 306 rpm, the step below
    "plate-holes-dowel-hole-1-2-reamer.wanted": "306",
    "plate-holes-dowel-hole-1-2-reamer.rpm": "210",
    # 7/8 + 0.060 + 0.0845 of point: over three diameters of 9/32, one more peck does it
    "plate-holes-screw-row-9-32-drill.depth": "1.0195",
    "plate-holes-screw-row-9-32-drill.pecks": "2",
    # 0.531 / 2 / tan 41°, and (0.531 - 0.28125) / 2 / tan 41°
    "plate-holes-screw-heads-82-degree-countersink.from-the-rim": "0.1437",
    "plate-screw-heads.depth": "0.3054",
    # 0.1875 from the back, less half of 17/64
    "plate-edge-circle-a-edge.wall": "0.0547",
}


@pytest.mark.parametrize(("number_id", "expected"), PENCIL.items())
def test_by_pencil(number_id: str, expected: str) -> None:
    assert plate("holes").ledger[number_id].shown == expected


METRIC = {
    # four on 28 about (25, 25), the first at 45°: 25 + 14 / √2 = 34.8995, shown to the readout's 0.005
    "plate-holes-tapped-5-drill-a.x": "34.900",
    "plate-holes-tapped-5-drill-c.x": "15.100",
    # M6 of 1 mm: 10 of thread, 5 threads, 1.5 for chips; a 5 mm drill is the short rule's 76.98 per cent
    "plate-holes-tapped-5-drill.full": "16.500",
    "plate-holes-tapped-5-drill.percent": "77",
    # ISO 273, medium: 6.6; a head of 6, half a millimetre below
    "plate-screw-holes.diameter": "6.600",
    "plate-screw-heads.depth": "6.500",
}


@pytest.mark.parametrize(("number_id", "expected"), METRIC.items())
def test_by_pencil_in_millimetres(number_id: str, expected: str) -> None:
    assert plate("holes-metric").ledger[number_id].shown == expected


LAID_OUT = {
    # x from the left end, y from the bottom, to a thousandth: 4/3 and 1-7/16
    "1.3330": ("dowel hole", "x"),
    "1.4380": ("dowel hole", "y"),
    "3.2500": ("tapped row, c", "x"),
    "0.5000": ("tapped row, all", "y"),
}


def test_heights_for_marking_out() -> None:
    set_up = next(s for s in plate("holes-by-layout").set_ups if s.kind == "lay out")
    found = {
        getattr(position, axis).shown: (as_text(position.label), axis)
        for cut in set_up.cuts
        for position in cut.positions
        for axis in "xyz"
        if getattr(position, axis) is not None
    }
    assert found.items() >= LAID_OUT.items()


def test_edges_of_a_marked_hole_are_half_its_diameter_away() -> None:
    """Threads of 1/4 about 0.750: 0.625 and 0.875."""
    set_up = next(s for s in plate("holes-by-layout").set_ups if s.kind == "lay out")
    assert "edges at 0.6250\u00a0in and 0.8750\u00a0in" in as_text(set_up.cuts[0].steps[0])


def test_turns_of_a_hand_tap() -> None:
    """5/8 thick, 5 threads of 1/20 of chamfer and 0.060 clear: 0.935 at 20 turns an inch."""
    assert plate("holes-by-layout").ledger["plate-by-hand-tapped-row-1-4-20-hand-tap.turns"].shown == "18.7"


def test_a_thin_wall_is_a_caution_not_a_problem() -> None:
    warnings = [as_text(warning) for warning in plate("holes").warnings]
    assert any("edge circle: 0.0547" in warning for warning in warnings)


def test_tough_metal_asks_for_less_thread(tmp_path: Path) -> None:
    card = spoilt("holes", tmp_path, ("material: low-carbon steel, cold drawn", "material: 304"))
    cut = next(c for s in card.set_ups for c in s.cuts if c.id == "plate-holes-tapped-circle-no-7-drill")
    assert "65 per cent holds as well" in as_text(cut.caution)


def test_a_lower_percentage_takes_a_larger_drill(tmp_path: Path) -> None:
    """55 of 0.06495 off 0.250 leaves 0.2143; of the shop's drills No. 7 is the only one between 50 and 83."""
    card = spoilt("holes", tmp_path, ("thread: 1/4-20,", "thread: 1/4-20, percent: 55,"))
    assert card.ledger["plate-tapped-circle.hole"].shown == "0.2143"
    larger = spoilt(
        "holes",
        tmp_path,
        ("thread: 1/4-20,", "thread: 1/4-20, percent: 55,"),
        (
            (
                "  No. 7 drill:",
                "  No. 3 drill: {kind: drill, diameter: 0.213, point: 118°, flute length: 2}\n  No. 7 drill:",
            ),
        ),
    )
    assert "plate-holes-tapped-circle-no-3-drill.percent" in larger.ledger


WITH_PEN = "          - {cut: tapped circle, with: tap drill, rough: true}\n"


@pytest.mark.parametrize(
    ("name", "swap", "shop", "words"),
    [
        ("holes", (WITH_PEN, ""), (), ("no hole to tap yet", "drill it first")),
        (
            "holes",
            ("with: tap drill", "with: letter F drill"),
            (),
            ("leaves nothing", "smaller cutter"),
        ),
        (
            "holes",
            ("{cut: tapped circle, with: 1/4-20 tap}", "{cut: tapped circle, with: 5/16-18 tap}"),
            (("  1/4-20 tap:", "  5/16-18 tap: {kind: tap, thread: 5/16-18, flute length: 1}\n  1/4-20 tap:"),),
            ("cuts 5/16-18, and “tapped circle” is 1/4-20", "take a 1/4-20 tap"),
        ),
        (
            "holes",
            ("{cut: dowel hole, with: 31/64 drill", "{cut: dowel hole, with: 17/64 drill"),
            (),
            ("is left to ream", "31/64 drill"),
        ),
        ("holes", ("with: 82 degree", "with: 90 degree"), (), ("has 90", "countersink of that angle")),
        (
            "holes",
            ("{cut: screw row, with: 9/32 drill}", "{cut: screw row, with: 17/64 drill}"),
            (),
            ("cuts 17/64, and “screw row”", "take a cutter of that size"),
        ),
        (
            "holes",
            ("title: Plate", "title: Plate"),
            (("flute length: 4-1/4", "flute length: 1"),),
            ("flutes are 1 long",),
        ),
        (
            "holes",
            ("pitch: row pitch, count: 3}}\n      screw heads", "pitch: 0, count: 3}}\n      screw heads"),
            (),
            ("at one place",),
        ),
        (
            "holes-by-layout",
            ("lay out: [tapped row, dowel hole]", "lay out: [tapped row]"),
            (),
            ("“dowel hole” has not been marked out", "lay out: [dowel hole]"),
        ),
        (
            "holes-by-layout",
            ("guide: tap guide", "guide: tap guid"),
            (),
            ("no guide called “tap guid”", "write “tap guide”"),
        ),
        (
            "holes-by-layout",
            ("title: Plate", "title: Plate"),
            (("stroke: 3-1/4", "stroke: 1/2"),),
            ("the spindle comes down 1/2", "at a mill"),
        ),
        (
            "holes-by-layout",
            ("title: Plate", "title: Plate"),
            (("throat: 6", "throat: 1/4"),),
            ("farther than 1/4 from every edge", "at a mill"),
        ),
        (
            "holes-by-layout",
            ("machine: drill press\n", "machine: drill press\n        zero: [{edge: bottom}]\n"),
            (),
            ("no readout", "lay out"),
        ),
        (
            "holes-by-layout",
            ("{cut: dowel hole, with: 1/4 hand reamer}", "{cut: dowel hole, with: 1/2 reamer}"),
            (),
            ("does not make a hole by hand",),
        ),
    ],
)
def test_problem(
    tmp_path: Path, name: str, swap: tuple[str, str], shop: tuple[tuple[str, str], ...], words: tuple[str, ...]
) -> None:
    with pytest.raises(ProblemsFound) as found:
        spoilt(name, tmp_path, swap, shop)
    told = [str(problem) for problem in found.value.problems]
    assert any(all(word in line for word in words) for line in told), told
