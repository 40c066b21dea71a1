"""Clamps and stick-out: refusals."""

from collections.abc import Callable

import pytest
from hypothesis import given
from hypothesis import strategies as st

from jobcards.trade import clamping as topic
from jobcards.trade.formula import CannotBeDone

REFUSED = [
    (topic.clamp_share, {"bolt_to_heel": 0.0, "bolt_to_work": 1.0}, "the bolt to heel"),
    (topic.clamp_share, {"bolt_to_heel": 1.0, "bolt_to_work": 0.0}, "the bolt to work"),
    (topic.clamp_reach, {"nose": 0.0, "gap": 0.0}, "the bolt to nose"),
    (topic.clamp_reach, {"nose": 1.0, "gap": -0.1}, "the gap"),
    (topic.clamp_reach, {"nose": 1.0, "gap": 1.0}, "ends short of work 1 away; move the bolt up"),
    (topic.clamp_clearance, {"cut_edge": -1.0, "cutter": 1.0, "reach": 0.0}, "the cut edge"),
    (topic.clamp_clearance, {"cut_edge": 1.0, "cutter": 0.0, "reach": 0.0}, "the cutter"),
    (topic.clamp_clearance, {"cut_edge": 1.0, "cutter": 1.0, "reach": -0.1}, "the reach"),
    (topic.overhang, {"length": 0.0, "jaw_width": 1.0}, "the length"),
    (topic.overhang, {"length": 1.0, "jaw_width": 0.0}, "the jaw width"),
    (topic.longest_stick_out, {"diameter": 0.0, "centred": 0}, "the diameter"),
    (topic.longest_stick_out, {"diameter": 1.0, "centred": 2}, "one centre at its free end"),
    (topic.longest_stick_out, {"diameter": 1.0, "centred": -1}, "whole number, 0 or more"),
    (topic.give_free, {"force": -1.0, "stick_out": 1.0, "diameter": 1.0, "stiffness": 1.0}, "the force"),
    (topic.give_free, {"force": 1.0, "stick_out": 0.0, "diameter": 1.0, "stiffness": 1.0}, "the stick out"),
    (topic.give_free, {"force": 1.0, "stick_out": 1.0, "diameter": 0.0, "stiffness": 1.0}, "the diameter"),
    (topic.give_free, {"force": 1.0, "stick_out": 1.0, "diameter": 1.0, "stiffness": 0.0}, "the stiffness"),
    (topic.give_centred, {"force": -1.0, "stick_out": 1.0, "diameter": 1.0, "stiffness": 1.0}, "the force"),
    (topic.give_centred, {"force": 1.0, "stick_out": 0.0, "diameter": 1.0, "stiffness": 1.0}, "the stick out"),
    (topic.give_centred, {"force": 1.0, "stick_out": 1.0, "diameter": 0.0, "stiffness": 1.0}, "the diameter"),
    (topic.give_centred, {"force": 1.0, "stick_out": 1.0, "diameter": 1.0, "stiffness": 0.0}, "the stiffness"),
]


@pytest.mark.parametrize(("function", "given_sizes", "says"), REFUSED)
def test_it_refuses_and_says_why(function: Callable[..., float], given_sizes: dict[str, float], says: str) -> None:
    with pytest.raises(CannotBeDone) as refusal:
        function(**given_sizes)
    assert says in str(refusal.value)


ALLOWED = [
    (topic.clamp_reach, {"nose": 1.0, "gap": 0.0}, 1.0),
    (topic.give_free, {"force": 0.0, "stick_out": 1.0, "diameter": 1.0, "stiffness": 1.0}, 0.0),
    (topic.give_centred, {"force": 0.0, "stick_out": 1.0, "diameter": 1.0, "stiffness": 1.0}, 0.0),
    (topic.clamp_clearance, {"cut_edge": 0.0, "cutter": 1.0, "reach": 0.0}, -0.5),
]


@pytest.mark.parametrize(("function", "given_sizes", "comes_to"), ALLOWED)
def test_it_goes_up_to_the_limit(
    function: Callable[..., float], given_sizes: dict[str, float], comes_to: float
) -> None:
    assert function(**given_sizes) == pytest.approx(comes_to, abs=1e-9)


@given(heel=st.floats(min_value=0.1, max_value=10), work=st.floats(min_value=0.1, max_value=10))
def test_work_and_heel_share_the_whole_pull(heel: float, work: float) -> None:
    assert topic.clamp_share(heel, work) + topic.clamp_share(work, heel) == pytest.approx(1)
