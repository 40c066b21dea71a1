"""Finish against the profile itself, drawn and measured."""

import math

import numpy
import pytest

from jobcards.source import COMMON, GEOMETRY
from jobcards.trade.finish import scallop_height, turned_ridge, turned_roughness
from tests.outside.check import Check, run

CHECKS = [
    # 0.1 mm a turn with a 0.4 mm nose: 3.1 µm from peak to valley, 0.8 µm Ra.
    Check("finish.turned_ridge", {"feed": 0.1, "nose_radius": 0.4}, 0.003125, 1e-9, COMMON),
    Check("finish.turned_ridge", {"feed": 0.004, "nose_radius": 1 / 32}, 0.000064, 1e-9, COMMON),
    Check("finish.turned_roughness", {"feed": 0.1, "nose_radius": 0.4}, 0.0008, 5e-6, COMMON),
    Check("finish.feed_for_roughness", {"roughness": 0.0008, "nose_radius": 0.4}, 0.1, 5e-4, COMMON),
    # A 3-4-5 triangle under the ridge.
    Check("finish.scallop_height", {"step": 0.06, "radius": 0.05}, 0.01, 1e-9, GEOMETRY),
    Check("finish.scallop_height", {"step": 0.1, "radius": 0.05}, 0.05, 1e-9, GEOMETRY),
    Check("finish.step_for_scallop", {"height": 0.01, "radius": 0.05}, 0.06, 1e-9, GEOMETRY),
]


@pytest.mark.parametrize("check", CHECKS, ids=str)
def test_outside_value(check: Check) -> None:
    run(check)


@pytest.mark.parametrize(("feed", "nose"), [(0.1, 0.8), (0.05, 0.4), (0.003, 0.03125)])
def test_the_profile_of_feed_marks(feed: float, nose: float) -> None:
    """One arc of the nose, taken at many points: its height, and its mean distance from its mean line."""
    across = numpy.linspace(-feed / 2, feed / 2, 200001)
    profile = nose - numpy.sqrt(nose**2 - across**2)
    assert turned_ridge(feed, nose) == pytest.approx(float(profile.max()), rel=0.005)
    roughness = float(numpy.abs(profile - profile.mean()).mean())
    assert turned_roughness(feed, nose) == pytest.approx(roughness, rel=0.005)


@pytest.mark.parametrize(("step", "radius"), [(0.02, 0.125), (1.0, 3.0), (0.2, 0.25)])
def test_the_ridge_where_two_passes_meet(step: float, radius: float) -> None:
    """The lower of two circles a step apart, looked at along the way from one to the other."""
    across = numpy.linspace(0, step, 100001)
    first = radius - numpy.sqrt(radius**2 - across**2)
    second = radius - numpy.sqrt(radius**2 - (step - across) ** 2)
    assert scallop_height(step, radius) == pytest.approx(float(numpy.minimum(first, second).max()), rel=1e-6)
    assert math.isclose(scallop_height(step, radius), step**2 / (8 * radius), rel_tol=0.2)
