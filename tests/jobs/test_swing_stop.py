"""The swing stop by pencil.

Sources: arithmetic and geometry of the drawing; ASME B18.3's flat head of 82° for the 1/4 screw; a rotary table of 90
turns; common practice for breakthrough, clearance, presets and the tap's chamfer.
"""

import math
from pathlib import Path

import pytest

from jobcards.definition import ProblemsFound
from jobcards.dryrun import dry_run
from tests.planning.cards import CLAMP, changed_card, shipped

CARD = shipped("swing-stop")
GRID = "plate-grid-of-holes-post-holes-17-64-drill"
BACK = "plate-countersinks-post-screw-heads-82-degree-countersink"
EYE = "arm-round-end-eye-1-2-end-mill"
PENCIL = {
    # the third of the first row, and the last of all: 1.5 + 2 and 0.719 + 0.813
    f"{GRID}-c.x": "3.5000",
    f"{GRID}-f.y": "1.5320",
    # turned end for end, the left end lies to the right: the same places to the left of it
    f"{BACK}-c.x": "−3.5000",
    f"{BACK}-f.y": "1.5320",
    "plate-countersinks.x-preset": "0.1000",
    # from the rim of the hole to that of the head: (0.531 - 0.2656) / 2 / tan 41°; all of the cone 0.2655 / tan 41°
    f"{BACK}.from-the-rim": "0.1526",
    "plate-post-screw-heads.depth": "0.3054",
    # the middle of the full round stands half the width from the end: 4.75 - 0.5625
    "arm-eye.x-middle": "4.1875",
    # corners of the square end from there: 0.5625 * 1.4142
    f"{EYE}.reach": "0.7955",
    # round and half of the cutter: 0.5625 + 0.25
    f"{EYE}-5.x": "0.8125",
    # a hundredth is left for it
    f"{EYE}-4.x": "0.8225",
    # half round, 3.1416 * (0.7395 + 0.25)
    f"{EYE}.travel": "3.1094",
    # the piece is 0.9445 long; half of it stands in the jaws, whose own half is more
    "post-driver-slot.stick-out": "0.4723",
    # half of the head, half of the cutter and a tenth clear: 0.375 + 0.0625 + 0.1
    "post-driver-slot-slot-1-8-end-mill-right.along": "0.5375",
    # 1/2 + 3/8 beyond: a screw of 7/8 through a plate of 1/2
    "requirement-screw-in-the-post": "0.3750",
    # 4.1875 - 3.5 where the arm turns in the last column
    "requirement-nose-beyond-the-plate": "0.6875",
    # 0.813 - 0.5625 - 0.2495
    "requirement-arm-square-to-the-rows": "0.0010",
    # 0.5005 - 0.4990
    "requirement-play-of-the-arm": "0.0015",
    "requirement-shake-under-the-head.worst-low": "0.0030",
}


@pytest.mark.parametrize(("number_id", "expected"), PENCIL.items())
def test_by_pencil(number_id: str, expected: str) -> None:
    assert CARD.ledger[number_id].shown == expected


def test_the_arm_turns_half_round_past_the_cutter() -> None:
    """From a quarter before to a quarter after: 270° is 67 turns and 2°, 90° is 22 turns and 2°, at 4° a turn."""
    cut = next(cut for set_up in CARD.set_ups for cut in set_up.cuts if cut.id == EYE)
    moves = [(station.move["turns"].shown, station.move["dial"].shown) for station in cut.stations]
    assert moves == [("67", "2°00′"), ("22", "2°00′")]
    assert 67 * 4 + 2 == 270 and 22 * 4 + 2 == 90


def test_the_drilled_end_of_the_thread_stays_under_the_slot() -> None:
    """A No. 7 drill, its point of 118° included, ends in the head's metal below the slot."""
    tip = CARD.ledger["post-shank-end-screw-thread-no-7-drill.depth"].value
    full = CARD.ledger["post-shank-end-screw-thread-no-7-drill.full"].value
    assert tip - full == pytest.approx(0.1005 / math.tan(math.radians(59)), abs=0.001)
    assert tip + 1 / 16 < 0.3125 + 0.632 - 0.125


def test_the_dry_run_leaves_what_is_drawn() -> None:
    """Every part is cut as drawn, and no cutter meets vise, jaws, clamps or packing."""
    run = dry_run(CARD)
    assert [part.part_id for part in run.parts] == ["plate", "arm", "post"]
    assert run.passed


WRONG = [
    # clamps near the pivot stand where the cutter comes round
    (("at: 1-3/4}, {over: bottom, at: 1-3/4}", "at: 4}, {over: bottom, at: 4}"), "would meet the clamp"),
    # a screw's cone is not cut into the face where no hole opens, nor by a cutter of another angle
    (("with: 82 degree countersink", "with: 90 degree countersink"), "take a countersink of that angle"),
    # jaws bored to the head cannot hold a post that stands on its shank
    (("by: shank, up: left end}", "by: head, up: left end}"), "does not reach the end that stands in the jaws"),
]


@pytest.mark.parametrize(("swap", "told"), WRONG)
def test_a_wrong_holding_or_cutter_is_told(tmp_path: Path, swap: tuple[str, str], told: str) -> None:
    with pytest.raises(ProblemsFound) as found:
        changed_card(tmp_path, CLAMP.with_name("swing-stop.yml"), swap)
    assert told in str(found.value)
