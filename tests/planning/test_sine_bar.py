"""Work on a sine bar in the vise."""

from pathlib import Path

import pytest

from jobcards.definition import ProblemsFound
from jobcards.planning.words import as_text
from tests.planning.cards import changed, shipped


def test_a_bar_wider_than_the_work_is_told(tmp_path: Path) -> None:
    """The rocker is 7/8 thick; the jaws would close on a bar that is 1 wide and let the work fall through."""
    with pytest.raises(ProblemsFound) as found:
        changed(tmp_path, shop=(("width: 1/2, blocks", "width: 1, blocks"),))
    told = [problem.wrong for problem in found.value.problems]
    assert told == ["the sine bar is 1 wide, and the jaws close to 0.8750 on the work"] * 2


def test_the_low_end_stands_over_the_low_roll() -> None:
    """By pencil: the jaw's 3 rises by 3 sin 7° = 0.366 over a bar 1 high, so jaws 1-3/4 deep hold 0.384 there.

    With the raised roll of the bar, 5 long, right below that end, 1.609 would stand under it, and 0.141 be held.
    """
    hold = next(s.hold for s in shipped("parallel-clamp").set_ups if s.title.text == "slope of the upper jaw")
    assert hold is not None and hold.high_end == "right end"
    assert hold.sizes["grip"].shown == "0.3844"
    told = [as_text(each) for each in hold.instructions]
    assert any("its roll toward the right end raised on a stack of" in each for each in told)
    assert any("The left end comes over the other roll" in each for each in told)
