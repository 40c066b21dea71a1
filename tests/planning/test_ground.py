"""Diameters ground at the lathe: what is refused, and what the dry run catches. Values: drawing arithmetic."""

from pathlib import Path

import pytest

from jobcards.dryrun import dry_run
from jobcards.dryrun.reading import published
from tests.planning.cards import CLAMP, assert_refused, shipped

JOB = CLAMP.with_name("drill-bushings.yml")
REFUSED = {
    "to size before the wheel": (
        ("            with: turning tool\n            rough: true\n", "            with: turning tool\n"),
        "was cut to size",
    ),
    "held by its outside": (("in: mandrel, by: guide", "in: mandrel, by: body"), "a mandrel holds work by a bore"),
    "no such mandrel": (("bore: 1/4 E7", "bore: 0.240 E7"), "“1/4 reamer” does not make"),
}


@pytest.mark.parametrize("name", REFUSED)
def test_refused(name: str, tmp_path: Path) -> None:
    swap, told = REFUSED[name]
    assert_refused(tmp_path, JOB, swap, told)


@pytest.mark.parametrize(
    ("number_id", "wrong"),
    [
        ("bushing-grind-the-outside-body-finished.dial", "0.0040"),  # read as infeed
        ("bushing-grind-the-outside-body-finished.dial", "−0.0080"),  # the wheel drawn back
        ("bushing-outside-and-bore-mouth-edge.for-grinding", "0.0156"),  # the drawing's, which grinding narrows
        ("bushing-other-end-lead.for-grinding", "0.0313"),
    ],
)
def test_one_wrong_number_is_caught(number_id: str, wrong: str) -> None:
    card = shipped("drill-bushings")
    told = dict(published(card))
    assert told[number_id] != wrong
    told[number_id] = wrong
    part = dry_run(card, told).parts[0]
    assert part.faults or part.collisions or part.largest_deviation > part.allowed_deviation
