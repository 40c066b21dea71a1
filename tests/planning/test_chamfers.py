"""A chamfer must leave something of the turned end it is on."""

from pathlib import Path

import pytest

from jobcards.planning import problems_of
from tests.planning.cards import CLAMP, swapped


@pytest.mark.parametrize(
    ("size", "told"),
    [
        ("0.24 ±0.010", None),
        # the bushing is 0.5009 across: half of it is 0.2504
        ("0.26 ±0.010", "“lead” is 0.2600, and the left end is 0.5009 across: nothing would be left of the end"),
        ("7.653 ±0.010", "“lead” is 7.6530, and the left end is 0.5009 across: nothing would be left of the end"),
    ],
)
def test_a_chamfer_leaves_some_of_the_end(tmp_path: Path, size: str, told: str | None) -> None:
    job = CLAMP.with_name("drill-bushings.yml")
    path = swapped(job, tmp_path / job.name, (("lead chamfer: 1/32 ±0.010", f"lead chamfer: {size}"),))
    found = {problem.wrong for problem in problems_of(path)}
    assert found == ({told} if told else set())
