"""Round work stood upright in the chuck of a rotary table: by which diameter, and on what. Common practice."""

from pathlib import Path

import pytest

from jobcards.definition import ProblemsFound, load_job, load_shop
from jobcards.planning import Card, plan_card
from jobcards.planning.words import as_text
from tests.planning.cards import SHOP, swapped

JOB = Path("tests/jobs/round-work.yml")


def planned(folder: Path, *swaps: tuple[str, str]) -> Card:
    """The flange and screw with words swapped."""
    return plan_card(load_job(swapped(JOB, folder / JOB.name, swaps)), load_shop(SHOP))


def said(card: Card) -> str:
    """How the flange is put into the chuck."""
    hold = next(s.hold for s in card.set_ups if s.id == "flange-holes")
    assert hold is not None
    return " ".join(as_text(each) for each in hold.instructions).replace("\N{NO-BREAK SPACE}", " ")


def test_only_a_diameter_that_reaches_down_to_the_jaws_is_held(tmp_path: Path) -> None:
    """The rim is the flange's upper end here; the jaws close on the hub under it."""
    with pytest.raises(ProblemsFound, match="“rim” does not reach the end that stands in the jaws"):
        planned(tmp_path, ("by: hub, up: left end", "by: rim, up: left end"))


def test_short_work_stands_on_packing_and_long_work_on_the_chuck(tmp_path: Path) -> None:
    """1 long, half of it is gripped, half of the jaws' 1 is left; 2-1/2 long, the jaws take all of their length."""
    assert "on equal packing 0.5000 in over" in said(planned(tmp_path))
    assert "gripped 1 in, its left end up, pressed down on the chuck's face" in said(
        planned(tmp_path, ("hub length: 5/8", "hub length: 2-1/8"))
    )
