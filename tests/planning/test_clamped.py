"""Work under strap clamps: the demo by pencil, and what would not hold told where it is written.

The pencil work is geometry of the demo's drawing and of the invented shop's clamps; the rules are common practice.
"""

from functools import cache
from pathlib import Path

import pytest

from jobcards.definition import ProblemsFound, load_job, load_shop, problem
from jobcards.planning import plan_card
from jobcards.planning.card import Card
from jobcards.planning.words import as_text
from tests.planning.cards import SHOP, changed_card

DEMO = Path(__file__).parents[1] / "jobs" / "clamped.yml"
POST = "{over: top, at: 2}, {over: bottom, at: 2}"
HIGH = ((POST, "{over: top, at: 4-3/4}, {over: bottom, at: 2}"), ("width: 1/2, depth: 1/4", "width: 1/2, depth: 7/8"))
LEDGES = "{over: top, at: 5-1/2}, {over: bottom, at: 5-1/2}"
MOVED = "{over: top, at: 2-1/2}, {over: bottom, at: 2-1/2}"


@cache
def demo() -> Card:
    """The demo worked out for the evening workshop."""
    return plan_card(load_job(DEMO), load_shop(SHOP))


def problems(folder: Path, *swaps: tuple[str, str], shop: tuple[tuple[str, str], ...] = ()) -> list[problem.Problem]:
    """What is told of the demo with words swapped."""
    try:
        changed_card(folder, DEMO, *swaps, shop=shop)
    except ProblemsFound as error:
        return error.problems
    return []


PENCIL = {
    # the plate is 1 thick and lies on the table; the heel 1/16 higher
    "plate-tray-and-left-ledge.top": "1.0000",
    "plate-tray-and-left-ledge.heel": "1.0625",
    # on packing 1 high: 1 + 1 + 1/16
    "plate-bolt-holes.heel": "2.0625",
    # half of a 1/2 stud and 0.060
    "clamps-table-clamps.gap": "0.3100",
    # strap 1/2, nut 1/2, end 1/4
    "clamps-table-clamps.up": "1.2500",
    # 4 - 0.625 - 0.310 = 3.065 to the heel, 0.310 + 0.3125 = 0.6225 to the nose: 3.065 / 3.6875
    "clamps-table-clamps.share": "0.83",
    # one clamp alone on an edge of 8 stands in its middle
    "plate-bolt-holes-bottom-clamp-2.at": "4.0000",
    # 1 thick, keys 3/8
    "cover-channel.above-keys": "0.6250",
    # a post of 6 against a plate of 5, on the table and on packing of 1
    "post-right-end.proud": "1.0000",
    "post-left-end.proud": "2.0000",
    # from the plate: 1-1/2 thick and 1/16
    "post-left-end.heel": "1.5625",
    # 2 wide; straps 4 long, 5/8 of it on the post, stand out 3-3/8 on each side, half a heel of 1 less
    "post-left-end.plate-wanted": "7.7500",
    # two clamps, one on each edge of 6, each in its middle
    "post-left-end-top-clamp-1.at": "3.0000",
    # right end up: the bottom looks to the right; the screw stands 1/2 from it and 3/4 from the back
    "post-right-end-foot-screw-no-7-drill.x": "−0.5000",
    "post-right-end-foot-screw-no-7-drill.y": "−0.7500",
    # a round of 1 in a square V open 1-1/2, by geometry: 1/2 + 0.7071 - 3/4 over a block of 1-3/4; 1/16 more
    "shaft-shaft-from-above.over-block": "0.4571",
    "shaft-shaft-from-above.heel": "2.2696",
    # the block's half, 1, and 0.310; 4 - 0.3125 - 1.310 to the heel: 2.3775 / 3.6875
    "shaft-shaft-from-above.stud-off": "1.3100",
    "shaft-shaft-from-above.share": "0.64",
    # 14 - 11
    "shaft-shaft-from-above.stick-out": "3.0000",
    # right end out, to the right: the hole at 9 is 5 to the left of it
    "shaft-shaft-from-above-pin-hole-17-64-drill.x": "−5.0000",
    # the zero is kept: the right wall stands at 8 - 1/2, half the cutter farther out
    "plate-right-ledge-right-ledge-1-end-mill-finish-left.axis-x": "8.0000",
}


@pytest.mark.parametrize(("number_id", "expected"), PENCIL.items())
def test_by_pencil(number_id: str, expected: str) -> None:
    assert demo().ledger[number_id].shown == expected


def test_the_work_is_trued_the_zero_kept_and_the_studs_named() -> None:
    first, second, _ = demo().parts[0].set_ups
    assert first.hold is not None and second.hold is not None
    said = " ".join(as_text(words) for words in first.hold.instructions)
    assert "sweep an indicator in the spindle along the top where no clamp stands," in said
    assert "5-1/2 in from the left end" in said.replace("\u00a0", " ")
    assert "Move the clamps one after the other" in " ".join(as_text(words) for words in second.hold.instructions)
    assert [touch.kind for touch in second.zero] == ["kept", "kept", "surface"]
    held = next(group for group in demo().gather if group.title == "Holding")
    assert any("heel blocks 2.0625" in as_text(item) for item in held.items)
    assert {"strap clamps", "nose of a clamp"} <= {caution.key for caution in demo().cautions}


@pytest.mark.parametrize(
    ("swaps", "shop", "wrong"),
    [
        # nose at the left end reaches over the ledge that is milled there
        ([(LEDGES, f"{{over: left end}}, {LEDGES}")], (), "would meet the clamp over the left end"),
        ([(LEDGES, "{over: top, at: 4}, {over: bottom, at: 4}")], (), "the bottom is touched in its middle"),
        ([(MOVED, "{over: left end}, {over: top, at: 2-1/2}")], (), "bears on what is cut away: “left ledge” took it"),
        ([(MOVED, "{over: top, at: 2-1/2}")], (), "under one clamp the work turns"),
        ([(MOVED, "{over: front}, {over: bottom}")], (), "has no edge to come over at the front"),
        ([(LEDGES, "{over: top, at: 9}, {over: bottom, at: 5-1/2}")], (), "bears on air"),
        ([("on: packing, ", "")], (), "a cutter that comes through wants"),
        ([("on: packing", "on: parallels")], (), "nothing in “parallels” is so broad"),
        ([("{over: top, at: 2}, {over: bottom}", "{over: left end}, {over: bottom}")], (), "would press on air"),
        ([("y: height/2}, {x: 6-1/2", "y: 0.9}, {x: 6-1/2")], (), "comes through over the packing under the bottom"),
        ([(f"top, clamps: [{MOVED}", f"bottom, clamps: [{MOVED}")], (), "keeps its zero only where it stays"),
        ([(f"top, clamps: [{LEDGES}", f"top, on: packing, clamps: [{LEDGES}"), (f"top, clamps: [{MOVED}",
          "top, on: packing, clamps: [{over: left end}, {over: left end}")], (), "the packing lies under the edges"),
        ([("on: packing, clamps: [{over: top, at: 2}, {over: bottom}]}", f"clamps: [{MOVED}]}}\n"
          "        square up: {order: [front], with: 2-1/2 face mill}")], (), "a block is squared in the vise"),
        ([(f"far side: top, clamps: [{LEDGES}]", "far side: top")], (), "where the clamps stand is missing"),
        ([(f"far side: top, clamps: [{LEDGES}]", "far side: top, against: top")], (), "both say which"),
        ([(f"top, clamps: [{LEDGES}]", f"back, clamps: [{LEDGES}]")], (), "cannot look away from you"),
        ([], (("number: 4, length: 4, width: 1,", "number: 1, length: 4, width: 1,"),), "the shop has 1"),
        ([], (("stud: 1/2, lowest", "stud: 3/4, lowest"),), "do not go into T-slots of 5/8"),
        ([], (("lowest: 0, highest: 6", "lowest: 0, highest: 2"),), "the heels would stand 2.0625 high"),
        ([], (("pitch: 2-1/2", "pitch: 6-1/2"),), "cannot all stand in T-slots"),
        ([], (("    T-slots: {width: 5/8, pitch: 2-1/2}\n", ""),), "tells of no T-slots"),
        ([("{over: left end, at: 1}", "{over: top, at: 1}")], (), "the keys stand at the top"),
        ([("trued by: keys", "trued by: keys, on: packing")], (), "do not meet work 1 to 2.0000 over the table"),
        ([("trued by: keys", "trued by: packing")], (), "does not stand in a T-slot"),
        ([("trued by: keys", "trued by: kees")], (), "“kees” is not in the shop"),
        ([("far side: top, trued by: keys", "far side: left end, trued by: keys")], (), "stand at the left end"),
        ([], (("kind: table keys, height: 3/8", "kind: table keys, height: 15/16"),), "above the keys, and cutter"),
        ([(POST, "{over: left end}, {over: top}")], (), "is up or below"),
        ([("against: back, clamps: [{over: top, at: 2}", "clamps: [{over: top, at: 2}")], (), "against is missing"),
        ([("against: back, clamps: [{over: top, at: 2}", "far side: back, clamps: [{over: top, at: 2}")], (),
         "far side is not for work in “angle plate”"),
        ([(POST, "{over: top, at: 1/2}, {over: bottom, at: 2}")], (),
         "in the foot of the angle plate"),
        ([(POST, "{over: top, at: 5}, {over: bottom, at: 2}")], (),
         "above the upright of the angle plate"),
        (HIGH, (), "cutting “saddle”, the 3/8 end mill would meet the clamp over the top"),
        ([], (("width: 10, height: 5,", "width: 3, height: 5,"),), "the work wants 7.7500 of plate"),
        ([], (("width: 10, height: 5,", "width: 6, height: 2,"),), "more than half"),
        ([], (("width: 10, height: 5,", "width: 6, height: 5-3/4,"),), "cutter and tip want"),
        ([("on: V-block, ", "")], (), "round work under clamps rolls"),
        ([("{at: 3}, {at: 11}", "{over: top}, {at: 11}")], (), "round work has no edge"),
        ([("{at: 3}, {at: 11}", "{at: 3}, {at: 5}")], (), "stand in each other's way"),
        ([("{at: 3}, {at: 11}", "{at: 1}, {at: 11}")], (), "stands out beyond the work"),
        ([("{at: 3}, {at: 11}", "{at: 3}, {at: 9}")], (), "would meet the clamp and its V-block 9 from the left end"),
        ([("{at: 3}, {at: 11}", "{at: 5.6}, {at: 12}")], (), "cutting “middle keyway”, the 1/4 end mill would meet"),
        ([("{at: 3}, {at: 11}", "{at: 2}, {at: 12.45}")], (), "cutting “end flat”, the 1/2 end mill would meet"),
        ([("{at: 3}, {at: 11}", "{at: 2}, {at: 6}, {at: 11}")], (), "3 V-blocks are wanted"),
        ([("length: 14, diameter: 1}", "length: 14, diameter: 1/2}")], (), "lies below the top of the V-block"),
        ([("width: height, thickness: thickness,", "width: height, thickness: 1-1/8,")], (), "still as sawn"),
    ],
)  # fmt: skip
def test_what_would_not_hold_is_told(
    tmp_path: Path, swaps: list[tuple[str, str]], shop: tuple[tuple[str, str], ...], wrong: str
) -> None:
    told = [str(found) for found in problems(tmp_path, *swaps, shop=shop)]
    assert any(wrong in words for words in told), told


def test_a_clamp_in_the_way_is_told_at_the_cut(tmp_path: Path) -> None:
    told = problems(tmp_path, (LEDGES, f"{{over: left end}}, {LEDGES}"))
    line = DEMO.read_text(encoding="utf-8").splitlines().index("          - {cut: left ledge, with: 1 end mill}") + 1
    assert any(found.mark.line == line and "would meet the clamp" in found.wrong for found in told)


def test_the_vise_takes_no_clamps(tmp_path: Path) -> None:
    held = f"far side: top, clamps: [{LEDGES}"
    swap = (
        f"in: table clamps, up: front, {held}",
        f"in: vise, up: front, {held.replace('far side', 'against fixed jaw')}",
    )
    assert any("holds without clamps" in found.wrong for found in problems(tmp_path, swap))


def test_keys_bring_every_piece_true() -> None:
    channel = next(one for one in demo().set_ups if one.title.text == "channel")
    assert channel.hold is not None
    said = " ".join(as_text(words) for words in (*channel.hold.instructions, *channel.notes))
    assert "against both while the clamps are nipped" in said
    assert "indicator" not in said
    assert "set Y on every piece" not in said
