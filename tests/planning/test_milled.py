"""Milled shapes by pencil: every expected value was worked on paper from the demo's drawing, not by the code.

Sources: geometry (a dovetail over and between pins, a pin in a V); common practice, no source, for the half cutter off
a wall, 0.100 clear of the work, 0.010 left for finishing, half a cutter from stroke to stroke, and which way is
conventional: the spindle turns clockwise seen from above, and the metal lies to the left of the cutter's way.
"""

from functools import cache
from itertools import pairwise
from pathlib import Path

import pytest

from jobcards.definition import ProblemsFound, load_job, load_shop, shop_paths
from jobcards.planning import Card, plan_card
from jobcards.planning.card import Cut
from jobcards.planning.words import as_text

DEMO = Path(__file__).parents[1] / "jobs" / "milled-shapes.yml"
SHOP = next(path for path in shop_paths() if path.stem == "evening-workshop")


def worked(folder: Path | None = None, *swaps: tuple[str, str]) -> Card:
    """The demo's card, with words of its definition swapped for others."""
    if folder is None:
        return plan_card(load_job(DEMO), load_shop(SHOP))
    text = DEMO.read_text(encoding="utf-8")
    for old, new in swaps:
        assert old in text, old
        text = text.replace(old, new)
    path = folder / DEMO.name
    path.write_text(text, encoding="utf-8")
    return plan_card(load_job(path), load_shop(SHOP))


@cache
def demo() -> Card:
    """The demo's card as it is."""
    return worked()


def cut_of(card: Card, cut_id: str) -> Cut:
    """A cut by its id."""
    return next(cut for set_up in card.set_ups for cut in set_up.cuts if cut.id == cut_id)


def strokes(card: Card, cut_id: str) -> list[tuple[str, str, str, str]]:
    """The strokes of a cut as x from, y from, x to, y to."""
    places = [(p.x.shown, p.y.shown) for p in cut_of(card, cut_id).positions if p.x is not None and p.y is not None]
    return [(*start, *end) for start, end in zip(places[::2], places[1::2], strict=True)]


LAST_STROKES = {
    # Wall 5/16 from the front, 1-1/4 - 5/16 = 0.9375 from the back, which reads nothing and is the far side. Half of
    # 3/4 outside it: 1.3125 toward you. Clear of the ends: 0.375 + 0.100. The metal is on the far side: to the right.
    "bar-top-rebate-3-4-end-mill": [("−0.4750", "−1.3125", "4.4750", "−1.3125")],
    # Neck 7/16 about 0.700: half of 1/16 off the middle. The bottom is the far side and reads nothing.
    "bar-front-t-slot-3-8-end-mill": [
        ("2.2875", "−0.7315", "−2.2875", "−0.7315"),
        ("−2.2875", "−0.6690", "2.2875", "−0.6690"),
    ],
    # Head 13/16, cutter 25/32: half of 1/32 off the middle.
    "bar-front-t-slot-25-32-t-slot-cutter": [
        ("2.4905", "−0.7155", "−2.4905", "−0.7155"),
        ("−2.4905", "−0.6845", "2.4905", "−0.6845"),
    ],
    # Bottom up, back to the jaw: x runs back. (0.5025 - 0.375) / 2 = 0.06375 off the middle at 2. The right-hand wall
    # on the machine has its metal to the right: toward you. The left-hand one away from you.
    "bar-bottom-groove-3-8-end-mill": [
        ("−1.9365", "0.2875", "−1.9365", "−1.5375"),
        ("−2.0640", "−1.5375", "−2.0640", "0.2875"),
    ],
    # Open at the right end, closed 2-3/4 from the left end: 2.75 + 3/16. Middle at 0.250 + 0.188.
    "bar-bottom-key-slot-3-8-end-mill": [("−4.2875", "−0.4380", "−2.9375", "−0.4380")],
    # Pocket 1-1/4 by 7/8 about x = 1 (3 from the right end), y = 3/4: 0.625 - 0.1875 and 0.4375 - 0.1875; clockwise.
    "bar-back-recess-3-8-end-mill": [
        ("2.5625", "1.0000", "3.4375", "1.0000"),
        ("3.4375", "1.0000", "3.4375", "0.5000"),
        ("3.4375", "0.5000", "2.5625", "0.5000"),
        ("2.5625", "0.5000", "2.5625", "1.0000"),
    ],
    # In the middle of 3/8 to 1-1/8; the ends of the way are half a cutter inside.
    "bar-back-long-hole-3-8-end-mill": [
        ("1.0000", "0.7500", "1.0000", "0.5625"),
        ("1.0000", "0.5625", "1.0000", "0.9375"),
    ],
    # 45°: half of the 1/8 flat and 0.030 off the edge. The left end is the right-hand side here.
    "bar-back-edges-chamfer-mill": [
        ("4.0925", "−0.4125", "4.0925", "1.9125"),
        ("−0.0925", "1.9125", "−0.0925", "−0.4125"),
    ],
    # Half of the 1/4 tip outside the back, the metal toward you: to the left along the back.
    "bar-bottom-rounded-1-8-corner-rounding-cutter": [("0.3500", "0.1250", "−4.3500", "0.1250")],
    # Floor 1 + 2 * 0.375 / tan 60° = 1.4330 wide; 0.7165 - 0.5 = 0.2165 off the middle, 1.125 from the back.
    "slide-slot-slot-dovetail-cutter": [
        ("3.6000", "−1.3415", "−0.6000", "−1.3415"),
        ("−0.6000", "−0.9085", "3.6000", "−0.9085"),
    ],
    # The tongue's foot from 1 to 2: half a cutter outside it, 2.5 and 0.5 from the left end.
    "slide-tongue-tongue-dovetail-cutter": [("2.8500", "2.5000", "−0.6000", "2.5000")],
    "slide-tongue-vee-v-cutter": [("−0.4750", "1.5000", "2.7250", "1.5000")],
}


@pytest.mark.parametrize(("cut_id", "expected"), LAST_STROKES.items())
def test_the_last_strokes_by_pencil(cut_id: str, expected: list[tuple[str, str, str, str]]) -> None:
    assert strokes(demo(), cut_id)[-len(expected) :] == expected


PENCIL = {
    "bar-rebate.wall": "0.9375",
    "bar-t-slot.depth": "0.6438",  # 0.300 + 11/32
    "bar-t-slot.undercut": "0.1875",  # (13/16 - 7/16) / 2
    "bar-key-slot.proud": "0.1250",  # 1/4 - 1/8
    "bar-back-edges-chamfer-mill.depth": "0.0925",  # 1/16 and 0.030 below it
    "slide-slot.wide": "1.4330",
    "slide-slot.between-pins": "0.7500",  # 1.4330 - 0.25 * (1 + 1 / tan 30°)
    "slide-slot.largest-pin": "0.5000",  # 0.375 / cos² 30°
    "slide-tongue.pin": "0.2080",  # 0.3125 / (2 cos² 30°) = 0.2083, to the thousandth that a pin gauge has
    "slide-tongue.over-pins": "1.5683",  # 1 + 0.208 * 2.7321
    "slide-vee.depth": "0.2500",
    "slide-vee.pin": "0.3540",  # 0.5 / (2 cos 45°) = 0.3536, to the thousandth
    "slide-vee.over-pin": "0.1773",  # 0.177 * (1 + 1.4142) - 0.25
    # 12 * 80 / (pi * 25/32) = 391: the step below is 325; 8 teeth of half of 0.004
    "bar-front-t-slot-25-32-t-slot-cutter.rpm": "325",
    "bar-front-t-slot-25-32-t-slot-cutter.feed": "5.2",
    # 0.200 in all: 0.190 in three passes no deeper than a quarter of 3/8, then 0.010
    "bar-back-recess-3-8-end-mill.passes": "3",
    "bar-back-recess-3-8-end-mill.pass-depth": "0.0633",
    "bar-back-recess-3-8-end-mill.all-passes": "4",
}


@pytest.mark.parametrize(("number_id", "expected"), PENCIL.items())
def test_by_pencil(number_id: str, expected: str) -> None:
    assert demo().ledger[number_id].shown == expected


def test_no_stroke_is_wider_apart_than_half_the_cutter() -> None:
    for cut_id in ("bar-back-recess-3-8-end-mill", "slide-slot-slot-3-4-end-mill", "bar-bottom-groove-3-8-end-mill"):
        cut = cut_of(demo(), cut_id)
        assert cut.cutter is not None
        half = cut.cutter.sizes["diameter"].value / 2
        x, y = ({round(getattr(p, axis).published, 4) for p in cut.positions} for axis in "xy")
        across = sorted(x if "groove" in cut_id else y)
        assert max(b - a for a, b in pairwise(across)) <= half + 0.001


def test_the_cutter_is_said_to_go_down_beside_the_work_or_into_it() -> None:
    beside, into = (cut_of(demo(), f"bar-{name}-3-8-end-mill") for name in ("bottom-groove", "back-recess"))
    assert (beside.kind, into.kind) == ("strokes", "plunged strokes")
    assert "beside the work" in as_text(beside.steps[0])
    assert "feed straight down" in as_text(into.steps[0])


def test_a_start_hole_lets_a_cutter_in_that_cannot_go_down(tmp_path: Path) -> None:
    """The tip of the drill stays 0.010 above the floor at 0.200, in the middle of the pocket."""
    swap = (
        "- {cut: recess, with: 3/8 end mill}",
        "- {cut: recess, with: 17/64 drill, rough: true}\n          - {cut: recess, with: 7/16 end mill}",
    )
    card = worked(tmp_path, swap, ("corner radius: 3/16", "corner radius: 1/4"))
    hole, mill = (cut_of(card, f"bar-back-recess-{name}") for name in ("17-64-drill", "7-16-end-mill"))
    assert hole.kind == "drill" and hole.sizes["depth"].shown == "0.1900"
    assert [(p.x.shown, p.y.shown) for p in hole.positions if p.x and p.y] == [("3.0000", "0.7500")]
    assert [(p.x.shown, p.y.shown) for p in mill.positions[:1] if p.x and p.y] == [("3.0000", "0.7500")]
    assert "start hole" in as_text(mill.steps[0])


def test_roughing_leaves_metal_that_finishing_takes(tmp_path: Path) -> None:
    swap = (
        "- {cut: recess, with: 3/8 end mill}",
        "- {cut: recess, with: 3/8 end mill, rough: true}\n          - {cut: recess, with: 1/4 end mill}",
    )
    card = worked(tmp_path, swap)
    rough, fine = (cut_of(card, f"bar-back-recess-{name}-end-mill") for name in ("3-8", "1-4"))
    assert rough.sizes["depth"].shown == "0.1900" and rough.sizes["leave"].shown == "0.0100"
    assert max(p.x.value for p in rough.positions if p.x) == pytest.approx(3.4375 - 0.010)
    assert fine.sizes["depth"].shown == "0.200"
    assert max(p.x.value for p in fine.positions if p.x) == pytest.approx(3.625 - 0.125)


def test_a_thin_wall_is_told(tmp_path: Path) -> None:
    card = worked(tmp_path, ("side: 1/4", "side: 1/32"))
    assert any(as_text(told).startswith("key slot leaves only 1/32") for told in card.warnings)


PROBLEMS = [
    ([("{cut: groove, with: 3/8", "{cut: groove, with: 3/4")], "is 3/4 across, and “groove” is 0.5025 wide"),
    ([("corner radius: 3/16", "corner radius: 1/8")], "leaves a radius of half its 3/8, and the corners of “recess”"),
    ([("{cut: recess, with: 3/8", "{cut: recess, with: 7/16")], "does not cut at its centre"),
    (
        [("3/8 end mill, rough: true}", "3/8 end mill}"), ("- {cut: T-slot, with: 25/32 T-slot cutter}", "")],
        "does not finish",
    ),
    ([("- {cut: T-slot, with: 3/8 end mill, rough: true}\n", "\n")], "nothing is milled out"),
    ([("head width: 13/16", "head width: 3/4")], "is 25/32 across, and the head of “T-slot” is 3/4 wide"),
    ([("head height: 11/32", "head height: 3/8")], "is 11/32 high, the head 3/8"),
    ([("neck width: 7/16", "neck width: 3/8")], "does not pass"),
    ([("neck depth: 0.300", "neck depth: 0.700")], "reaches 1, and “T-slot” is 1.0438 deep"),
    ([("height: 3/8, angle: 60°", "height: 3/8, angle: 55°")], "cuts 60° and “slot” is 55°"),
    ([("height: 3/8, angle: 60°", "height: 1/2, angle: 60°")], "cuts 7/16, and “slot” is 1/2"),
    ([("narrow width: 1, height: 3/8", "narrow width: 1/2, height: 3/8")], "is 3/4 across, and “slot” is 1/2 wide"),
    ([("pin: 1/4}", "pin: 5/8}")], "a pin of 5/8 lies on the corners of “slot”"),
    ([("angle: 90°, width: 1/2", "angle: 60°, width: 1/2")], "cuts 90° and “vee” is 60°"),
    ([("angle: 90°, width: 1/2", "angle: 90°, width: 7/8")], "“vee” is 7/8 wide, and “V-cutter” 3/4"),
    ([("size: 1/16}", "size: 1/16, angle: 30°}")], "leaves 45° on a level face"),
    ([("size: 1/16}", "size: 1/4}")], "is too small"),
    ([("radius: 1/8}", "radius: 3/16}")], "rounds to 1/8, and “rounded” is 3/16"),
    ([("centre: length/2, width: slot width", "centre: 1/8, width: slot width")], "breaks out of the part"),
    ([("edge: front, width: 5/16, depth: 1/4", "edge: front, width: 5/16, depth: 1-1/2")], "is 1-1/2 deep"),
    ([("{cut: groove, with: 3/8 end mill}", "{cut: groove, with: 17/64 drill}")], "a drill only makes a start hole"),
    ([("{cut: groove, with: 3/8 end mill}", "{cut: groove, with: chamfer mill}")], "does not mill a slot"),
    ([("zero: [{edge: left end}, {edge: front}]", "zero: [{edge: left end}]")], "no zero is found along x"),
    (
        [
            (
                "- {cut: groove, with: 3/8 end mill}",
                "- {cut: groove, with: 3/8 end mill, rough: true}\n          - {cut: groove, with: 3/8 end mill}",
            )
        ],
        "cut twice with the same cutter",
    ),
    (
        [("{cut: recess, with: 3/8", "{cut: recess, with: 1/4"), ("depth: 0.200", "depth: 1-1/16")],
        "deep and the flutes are",
    ),
]


@pytest.mark.parametrize(("swaps", "says"), PROBLEMS, ids=[says for _, says in PROBLEMS])
def test_what_cannot_be_made_is_told_where_it_stands(tmp_path: Path, swaps: list[tuple[str, str]], says: str) -> None:
    with pytest.raises(ProblemsFound) as found:
        worked(tmp_path, *swaps)
    told = [str(problem) for problem in found.value.problems]
    assert any(says in line for line in told), told
    assert all(line.split(":")[1].isdigit() and "; " in line for line in told)


TILTED = (
    "          - {cut: vee, with: V-cutter}",
    "      - set-up: vee\n"
    "        machine: knee mill\n"
    "        hold: {in: vise, up: bottom, against fixed jaw: front, against stop: right end, on: parallels}\n"
    "        zero: [{line: 1-1/2, from: right end}]\n"
    "        operations:\n"
    "          - {cut: vee, with: 3/4 end mill}",
)


def test_a_square_v_is_cut_with_the_head_tilted(tmp_path: Path) -> None:
    """The right end is zero and the bottom lies up, front to the jaw: the middle of 3 reads 1-1/2 from it."""
    cut = cut_of(worked(tmp_path, TILTED), "slide-vee-vee-3-4-end-mill")
    assert cut.kind == "grooves"
    assert (cut.sizes["tilt"].shown, cut.sizes["depth"].shown) == ("45", "0.2500")
    assert [abs(p.x.published) for p in cut.positions if p.x is not None] == [1.5]


@pytest.mark.parametrize(
    ("swap", "says"),
    [
        (("zero: [{line: 1-1/2, from: right end}]", "zero: [{edge: right end}]"), "tilting the head moves the axis"),
        (("angle: 90°, width: 1/2", "angle: 80°, width: 1/2"), "the corner of an end mill is square"),
        (("width: 1/2", "width: 1-1/2"), "take a larger end mill"),
    ],
)
def test_a_tilted_head_that_will_not_do_is_told(tmp_path: Path, swap: tuple[str, str], says: str) -> None:
    with pytest.raises(ProblemsFound) as found:
        worked(tmp_path, TILTED, swap)
    assert any(says in str(problem) for problem in found.value.problems), found.value
