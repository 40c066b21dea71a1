"""Where the readout's zero comes to lie, against places worked out by hand."""

import pytest

from jobcards.dryrun.faults import CannotFollow
from jobcards.dryrun.orient import seated, turn_of
from jobcards.dryrun.reading import Reader
from jobcards.dryrun.solids import box
from jobcards.dryrun.zero import Origins, Standing, find_zero
from jobcards.planning.card import Touch
from tests.dryrun.handmade import Bench

PLATE = box(
    (0, 0, 0), (4.0, 1.0, 2.0)
)  # top up, back to the jaw, left end at the stop: x 0 to 4, y -2 to 0, z 0.5 to 1.5


def zero(bench: Bench, *touches: Touch, before: Origins | None = None) -> Origins:
    placement = seated(PLATE, turn_of("top", "back"), -1, 0.5)
    part = bench.part(bench.block(4, 1, 2), bench.bar_blank(4, 1, 2))
    read = Reader({n.id: n.shown for n in bench.ledger})
    return find_zero(touches, Standing(placement.on_machine(PLATE), placement), bench.card(part), read, before or {})


@pytest.mark.parametrize(
    ("face", "side", "preset", "axis", "place"),
    [
        ("left end", -1, -0.1, "x", 0.0),
        ("right end", 1, 4.1, "x", 0.0),  # tip 0.200: at the right touch the readout is set to +4.100
        ("right end", 1, 0.1, "x", 4.0),
        ("back", 1, 0.1, "y", 0.0),
        ("front", -1, -0.1, "y", -2.0),
        ("front", -1, -1.1, "y", -1.0),  # middle of a width of 2.000
    ],
)
def test_an_edge(face: str, side: int, preset: float, axis: str, place: float) -> None:
    bench = Bench()
    found = zero(bench, bench.touch(axis, "edge", face, side, preset, "edge finder"))
    assert found == {axis: pytest.approx(place)}


def test_the_middle_between_two_touches_needs_no_tip() -> None:
    """Presets for a tip that is not the one used, alike at both ends: the middle is found all the same."""
    bench = Bench()
    both = [bench.touch("x", "between", f, s, s * 2.25, "edge finder") for f, s in (("left end", -1), ("right end", 1))]
    assert zero(bench, *both) == {"x": pytest.approx(2.0)}


def test_a_scribed_line_and_a_surface() -> None:
    bench = Bench()
    line = bench.touch("x", "line", "right end", 1, -0.75, distance=0.75)
    assert zero(bench, line, bench.on_paper("top")) == {"x": pytest.approx(4.0), "z": pytest.approx(1.5)}


def test_paper_that_was_forgotten_in_the_preset_stays_in_the_depth() -> None:
    bench = Bench()
    assert zero(bench, bench.touch("z", "surface", "top", 1, 0.0, "paper")) == {"z": pytest.approx(1.5035)}


def test_a_kept_zero_stays_where_it_was_on_the_machine() -> None:
    bench = Bench()
    assert zero(bench, bench.touch("x", "kept", "", -1, 0.0), before={"x": 1.25}) == {"x": 1.25}
    with pytest.raises(CannotFollow, match="none can be kept"):
        zero(bench, bench.touch("y", "kept", "", -1, 0.0), before={"x": 1.25})


@pytest.mark.parametrize(
    ("axis", "face", "side", "says"),
    [
        ("x", "left end", 1, "inside the work"),
        ("y", "left end", -1, "does not look that way"),
        ("x", "top", -1, "does not look that way"),
    ],
)
def test_touches_that_cannot_be(axis: str, face: str, side: int, says: str) -> None:
    bench = Bench()
    with pytest.raises(CannotFollow, match=says):
        zero(bench, bench.touch(axis, "edge", face, side, 0.0, "edge finder"))
