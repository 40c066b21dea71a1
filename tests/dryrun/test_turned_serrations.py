"""Rows of grooves cut with the work a quarter turn round: along the table at the mill, and not at all on the shaper."""

from pathlib import Path

import pytest

from jobcards.definition import ProblemsFound, load_job, load_shop
from jobcards.dryrun import dry_run
from jobcards.planning import Card, plan_card
from tests.planning.cards import CLAMP, SHOP
from tests.planning.test_tilted_head import worked

PLATE = CLAMP.with_name("grip-plate.yml").read_text(encoding="utf-8")
AT_MILL, AT_SHAPER = PLATE.index("      - set-up: serrations\n"), PLATE.index("    alternatives:")
AS_IT_IS = "against fixed jaw: back, against stop: left end"
TURNED = "against fixed jaw: left end, against stop: front"


def plate(folder: Path, mill: str = AS_IT_IS, shaper: str = AS_IT_IS) -> Card:
    """The plate with its grooves cut held otherwise at the mill or on the shaper."""
    path = folder / "plate.yml"
    text = (
        PLATE[:AT_MILL] + PLATE[AT_MILL:AT_SHAPER].replace(AS_IT_IS, mill) + PLATE[AT_SHAPER:].replace(AS_IT_IS, shaper)
    )
    path.write_text(text, encoding="utf-8")
    return plan_card(load_job(path), load_shop(SHOP))


def test_upright_grooves_along_the_table_come_out_as_drawn(tmp_path: Path) -> None:
    card = plate(tmp_path, mill=TURNED)
    (cut,) = next(s.cuts for s in card.set_ups if s.title.text == "serrations")
    assert all(place.x is None and place.y is not None for place in cut.positions)
    run = dry_run(card)
    assert run.passed, run.findings()


def test_the_shaper_tells_that_they_lie_across_its_stroke(tmp_path: Path) -> None:
    with pytest.raises(ProblemsFound) as found:
        plate(tmp_path, shaper=TURNED)
    assert [p.wrong for p in found.value.problems] == [
        "the grooves of “serrations” lie across the stroke of the shaper"
    ]


def test_leaning_grooves_along_the_table_come_out_with_the_head_nodded(tmp_path: Path) -> None:
    """The back up and the left end at the fixed jaw: the flank toward the left end looks away from you."""
    swap = (
        "up: back, against fixed jaw: top, against stop: left end",
        "up: back, against fixed jaw: left end, against stop: bottom",
    )
    card = worked(tmp_path, (swap,))
    (cut,) = next(s.cuts for s in card.set_ups if s.title.text == "teeth")
    assert cut.lean == "away from you"
    run = dry_run(card)
    assert run.passed, run.findings()
