"""Thin work in the vise: half of its height is grip enough; where that is not there the message says what is short."""

from pathlib import Path

import pytest

from jobcards.definition import load_job, load_shop
from jobcards.dryrun import dry_run
from jobcards.planning import plan_card, problems_of
from tests.planning.cards import SHOP

SPACER = Path(__file__).parents[1] / "definition" / "good" / "spacer.yml"


def spacer(folder: Path, thickness: str, bar: str) -> Path:
    """The spacer block made thinner."""
    text = SPACER.read_text(encoding="utf-8").replace("thickness: 3/4", f"thickness: {thickness}")
    path = folder / SPACER.name
    path.write_text(text.replace("thickness: 7/8", f"thickness: {bar}"), encoding="utf-8")
    return path


def test_half_inch_plate_is_held_and_touched(tmp_path: Path) -> None:
    """The finder's tip reaches 0.150 down, and 1/4 is to be held: of the pairs by eighths under jaws 1-3/4 deep, 1-3/8
    leaves 0.125 above the jaws, and 1-1/2 leaves 0.250."""
    card = plan_card(load_job(spacer(tmp_path, "1/2", "5/8")), load_shop(SHOP))
    hold = card.set_ups[1].hold
    assert hold is not None
    assert (hold.sizes["parallel height"].value, hold.sizes["grip"].value) == (1.5, 0.25)
    assert dry_run(card).passed


def test_plate_too_thin_is_told_with_what_is_short(tmp_path: Path) -> None:
    """0.150 above and half of 1/4 in the jaws are more than 1/4."""
    told = [str(problem) for problem in problems_of(spacer(tmp_path, "1/4", "3/8"))]
    said = next(line for line in told if ":27:" in line)
    assert "the work is 0.2500 high as it lies here: at least 0.125 must be between the jaws and 0.1500 above" in said
    assert "edge finder" in said and "add a pair" not in said


@pytest.mark.parametrize("thickness", ["3/4", "7/8"])
def test_thicker_work_is_held_by_three_eighths_at_least(thickness: str, tmp_path: Path) -> None:
    """3/8 of 3/4 is half of it; above that the rule stays 3/8."""
    card = plan_card(load_job(spacer(tmp_path, thickness, "1")), load_shop(SHOP))
    hold = card.set_ups[1].hold
    assert hold is not None and hold.sizes["grip"].value >= 0.375
