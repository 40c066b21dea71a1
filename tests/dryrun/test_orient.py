"""How the work lies: faces by name, against what one sees standing before the machine."""

import numpy as np
import pytest

from jobcards.dryrun.faults import CannotFollow
from jobcards.dryrun.orient import OUTWARD, Placement, on_spindle, seated, tilted, turn_of
from jobcards.dryrun.solids import box, extent

BLOCK = box((0, 0, 0), (4.0, 1.0, 2.0))

# Up, against the fixed jaw, and the face that then looks to the right: seen with a block in the hand.
SEEN = [
    ("front", "top", "right end"),
    ("top", "back", "right end"),
    ("top", "front", "left end"),
    ("bottom", "front", "right end"),
    ("back", "top", "left end"),
    ("back", "bottom", "right end"),
    ("front", "left end", "top"),
    ("back", "right end", "top"),
    ("right end", "top", "back"),
    ("left end", "top", "front"),
]


@pytest.mark.parametrize(("up", "jaw", "right"), SEEN)
def test_which_face_looks_to_the_right(up: str, jaw: str, right: str) -> None:
    lying = Placement(turn_of(up, jaw), np.zeros(3))
    assert lying.outward(up).tolist() == [0, 0, 1]
    assert lying.outward(jaw).tolist() == [0, 1, 0]
    assert lying.outward(right).tolist() == [1, 0, 0]


def test_every_turn_is_a_turn_and_no_mirror_image() -> None:
    turns = [turn_of(up, jaw) for up in OUTWARD for jaw in OUTWARD if np.dot(OUTWARD[up], OUTWARD[jaw]) == 0]
    assert len(turns) == 24
    assert all(np.linalg.det(turn) == pytest.approx(1.0) for turn in turns)
    assert len({turn.tobytes() for turn in turns}) == 24


@pytest.mark.parametrize("jaw", ["top", "bottom"])
def test_a_face_cannot_be_up_and_against_the_jaw(jaw: str) -> None:
    with pytest.raises(CannotFollow, match="cannot be up"):
        turn_of("top", jaw)


@pytest.mark.parametrize(("side", "x"), [(-1, (0.0, 4.0)), (1, (-4.0, 0.0)), (0, (-2.0, 2.0))])
def test_the_work_touches_jaw_stop_and_parallels(side: int, x: tuple[float, float]) -> None:
    low, high = extent(seated(BLOCK, turn_of("top", "back"), side, 0.75).on_machine(BLOCK))
    assert (low[0], high[0]) == pytest.approx(x)
    assert (low[1], high[1]) == pytest.approx((-2.0, 0.0))
    assert (low[2], high[2]) == pytest.approx((0.75, 1.75))


def test_there_and_back_is_nothing() -> None:
    placement = seated(BLOCK, tilted(turn_of("bottom", "front"), 7.0, "right end"), 1, 1.0)
    back = placement.on_part(placement.on_machine(BLOCK))
    assert extent(back) == (pytest.approx((0, 0, 0), abs=1e-12), pytest.approx((4, 1, 2), abs=1e-12))


@pytest.mark.parametrize("high_end", ["left end", "right end"])
def test_the_high_end_stands_higher_by_length_times_sine(high_end: str) -> None:
    """A 5-inch bar at 30° rises 2.500 (geometry); here 4 inches rise 2.000."""
    turn = tilted(turn_of("bottom", "front"), 30.0, high_end)
    ends = {end: (turn @ np.array([x, 0.0, 0.0]))[2] for end, x in (("left end", 0.0), ("right end", 4.0))}
    low_end = "left end" if high_end == "right end" else "right end"
    assert ends[high_end] - ends[low_end] == pytest.approx(2.0)


def test_an_end_across_the_vise_cannot_be_raised() -> None:
    with pytest.raises(CannotFollow, match="does not lie along the vise"):
        tilted(turn_of("front", "left end"), 3.0, "left end")


@pytest.mark.parametrize("out", ["left end", "right end"])
def test_the_end_that_stands_out_of_the_chuck(out: str) -> None:
    placement = on_spindle(BLOCK, out, 1.5)
    low, high = extent(placement.on_machine(BLOCK))
    assert (low[2], high[2]) == pytest.approx((-2.5, 1.5))
    assert placement.outward(out).tolist() == [0, 0, 1]
    assert np.linalg.det(placement.turn) == pytest.approx(1.0)
