"""V-grooves on the shaper come out as drawn, and not when the head, the slide or the table is set wrongly."""

import pytest

from jobcards import quantity
from jobcards.dryrun import dry_run
from jobcards.dryrun.reading import published
from jobcards.planning.number import Number
from tests.planning.test_shaped_vee import cut_of, demo


def passes(number: Number, value: float) -> bool:
    """Whether the part comes out right with one number read as something else."""
    return dry_run(demo(), {**published(demo()), number.id: quantity.show(value, number.unit, 4)}).passed


def test_the_demo_comes_out_as_drawn() -> None:
    run = dry_run(demo())
    assert run.passed and run.findings() == []


@pytest.mark.parametrize(
    ("feature", "size", "by"),
    [
        ("square V", "depth", 0.01),
        ("square V", "depth", -0.01),
        ("wide V", "along", 0.02),
        ("wide V", "along", -0.02),
        ("wide V", "head over", 1.0),
        ("wide V", "head over", -1.0),
        ("wide V", "head over", 55.0),  # the whole angle set in place of half of it
    ],
)
def test_a_size_misread(feature: str, size: str, by: float) -> None:
    number = cut_of(feature).sizes[size]
    assert not passes(number, min(number.value + by, 89.0))


@pytest.mark.parametrize("feature", ["square V", "wide V"])
def test_the_table_to_the_wrong_side(feature: str) -> None:
    number = cut_of(feature).positions[0].x
    assert number is not None and not passes(number, -number.value)
