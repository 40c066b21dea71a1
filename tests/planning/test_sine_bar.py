"""Work on a sine bar in the vise."""

from pathlib import Path

import pytest

from jobcards.definition import ProblemsFound
from tests.planning.cards import changed


def test_a_bar_wider_than_the_work_is_told(tmp_path: Path) -> None:
    """The rocker is 7/8 thick; the jaws would close on a bar that is 1 wide and let the work fall through."""
    with pytest.raises(ProblemsFound) as found:
        changed(tmp_path, shop=(("width: 1/2, blocks", "width: 1, blocks"),))
    told = [problem.wrong for problem in found.value.problems]
    assert told == ["the sine bar is 1 wide, and the jaws close to 0.8750 on the work"] * 2
