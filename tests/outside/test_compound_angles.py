"""Compound angles against turned planes; protractor; what is left by a head out of tram."""

import numpy as np
import pytest
from scipy.spatial.transform import Rotation

from jobcards.source import COMMON, GEOMETRY
from jobcards.trade import compound_angles
from tests.outside.check import Check, run

CHECKS = [
    # atan of the root of 2/3; 45 degrees by symmetry; acos of 3/4; atan of 1/2.
    Check("compound_angles.tilt_from_views", {"front": 30.0, "side": 30.0}, 39.2315, 5e-05, GEOMETRY),
    Check("compound_angles.tilt_from_views", {"front": 20.0, "side": 0.0}, 20.0, 1e-09, GEOMETRY),
    Check("compound_angles.turn_from_views", {"front": 30.0, "side": 30.0}, 45.0, 1e-09, GEOMETRY),
    Check("compound_angles.turn_from_views", {"front": 45.0, "side": 60.0}, 60.0, 1e-09, GEOMETRY),
    Check("compound_angles.tilt_from_turns", {"first": 30.0, "second": 30.0}, 41.4096, 5e-05, GEOMETRY),
    Check("compound_angles.tilt_from_turns", {"first": 60.0, "second": 0.0}, 60.0, 1e-09, GEOMETRY),
    Check("compound_angles.second_tilt", {"front": 30.0, "side": 30.0}, 26.5651, 5e-05, GEOMETRY),
    Check("compound_angles.slope_in_view", {"tilt": 45.0, "turn": 60.0}, 26.5651, 5e-05, GEOMETRY),
    Check("compound_angles.slope_in_view", {"tilt": 45.0, "turn": 0.0}, 45.0, 1e-09, GEOMETRY),
    # 22 degrees 30 minutes is the sixth mark of five minutes.
    Check("compound_angles.protractor_reading", {"whole_degrees": 22, "mark": 6}, 22.5, 1e-09, COMMON),
    Check("compound_angles.protractor_reading", {"whole_degrees": 9, "mark": 11}, 9.916666666666666, 1e-09, COMMON),
    Check("compound_angles.protractor_mark", {"angle": 22.5}, 6, 0, COMMON),
    Check("compound_angles.protractor_mark", {"angle": 14.26}, 3, 0, COMMON),
    # 3, 4, 5: a cutter of 1.0 over a width of 0.6 reaches 0.1 ahead; leaning 30 degrees it digs half of that.
    Check("compound_angles.tram_hollow", {"cutter": 1.0, "width": 0.6, "tilt": 30.0}, 0.05, 1e-09, GEOMETRY),
    Check("compound_angles.tram_hollow", {"cutter": 1.0, "width": 1.0, "tilt": 30.0}, 0.25, 1e-09, GEOMETRY),
    Check("compound_angles.tram_step", {"over": 2.0, "tilt": 45.0}, 2.0, 1e-09, GEOMETRY),
    Check("compound_angles.tram_step", {"over": 2.0, "tilt": 0.1}, 0.0034907, 1e-07, GEOMETRY),
    Check("compound_angles.hole_run_off", {"depth": 2.0, "tilt": 45.0}, 2.0, 1e-09, GEOMETRY),
    Check("compound_angles.hole_run_off", {"depth": 1.0, "tilt": 0.1}, 0.0017453, 1e-07, GEOMETRY),
]


@pytest.mark.parametrize("check", CHECKS, ids=str)
def test_outside_value(check: Check) -> None:
    run(check)


def turned(normal: np.ndarray, about: str, angle: float) -> np.ndarray:
    """A direction turned about a fixed axis."""
    return Rotation.from_euler(about, angle, degrees=True).apply(normal)


@pytest.mark.parametrize(("front", "side"), [(30.0, 30.0), (10.0, 25.0), (5.0, 60.0)])
def test_a_plane_with_its_two_slopes(front: float, side: float) -> None:
    """z = x tan(front) + y tan(side): the angle of its normal from upright, and the direction of its fall."""
    across, up = np.tan(np.radians(front)), np.tan(np.radians(side))
    normal = np.array([-across, -up, 1.0]) / np.sqrt(across**2 + up**2 + 1)
    assert compound_angles.tilt_from_views(front, side) == pytest.approx(np.degrees(np.arccos(normal[2])))
    assert compound_angles.turn_from_views(front, side) == pytest.approx(np.degrees(np.arctan2(up, across)))
    # First tilt in the front view (about -y), then about the tilted x line: turned the other way round in fixed axes.
    second = compound_angles.second_tilt(front, side)
    built = turned(turned(np.array([0.0, 0.0, 1.0]), "x", second), "y", -front)
    assert built == pytest.approx(normal)


@pytest.mark.parametrize(("first", "second"), [(30.0, 30.0), (12.0, 40.0)])
def test_two_tilts_one_on_top_of_the_other(first: float, second: float) -> None:
    normal = turned(turned(np.array([0.0, 0.0, 1.0]), "x", second), "y", -first)
    assert compound_angles.tilt_from_turns(first, second) == pytest.approx(np.degrees(np.arccos(normal[2])))
