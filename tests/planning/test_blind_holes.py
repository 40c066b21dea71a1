"""What is left below a blind hole at the mill, and a plug tap before a bottoming one, by pencil.

Sources: threads of a tap's chamfer, room for chips and metal below a hole: common practice, no source; the point of a
118 degree drill from geometry.
"""

from pathlib import Path

import pytest

from jobcards.definition import ProblemsFound
from jobcards.dryrun import dry_run
from jobcards.dryrun.reading import published
from jobcards.planning import Card
from jobcards.planning.words import as_text
from tests.planning.hole_cards import plate, spoilt

TAP = "          - {cut: tapped circle, with: 1/4-20 tap}\n"
BOTH = TAP.replace("tap}", "tap, rough: true}") + TAP.replace("1/4-20 tap", "1/4-20 bottoming tap")
PENCIL = {
    # 1/2 of thread, 2 threads of 1/20, 0.060 for chips; the point of No. 7 is 0.201 / 2 / tan 59° = 0.0604
    "plate-holes-tapped-circle-no-7-drill.full": "0.6600",
    "plate-holes-tapped-circle-no-7-drill.depth": "0.7204",
    # both tips go to 1/2 + 2 threads; the plug tap's chamfer is 5 threads long
    "plate-holes-tapped-circle-1-4-20-tap.depth": "0.6000",
    "plate-holes-tapped-circle-1-4-20-tap.full": "0.3500",
    "plate-holes-tapped-circle-1-4-20-bottoming-tap.depth": "0.6000",
}


@pytest.fixture(scope="module")
def both_taps(tmp_path_factory: pytest.TempPathFactory) -> Card:
    return spoilt("holes", tmp_path_factory.mktemp("taps"), (TAP, BOTH))


@pytest.mark.parametrize("number_id", PENCIL)
def test_a_plug_tap_before_a_bottoming_one(both_taps: Card, number_id: str) -> None:
    assert both_taps.ledger[number_id].shown == PENCIL[number_id]


def test_both_taps_by_dry_run(both_taps: Card) -> None:
    assert all(run.passed for run in dry_run(both_taps).parts)


def test_a_plug_tap_that_takes_all_leaves_nothing_to_the_other(both_taps: Card) -> None:
    shown = published(both_taps) | {"plate-holes-tapped-circle-1-4-20-tap.depth": "0.7500"}
    assert any("takes nothing off" in fault for run in dry_run(both_taps, shown).parts for fault in run.faults)


def test_next_to_nothing_left_below_is_a_caution() -> None:
    """7/8 less 0.8704."""
    assert any("0.0046" in as_text(said) and "tapped circle" in as_text(said) for said in plate("holes").warnings)


def test_a_point_that_comes_out_is_a_problem(tmp_path: Path) -> None:
    """5/8 of thread is an eighth deeper: 0.9954 in a plate of 7/8."""
    with pytest.raises(ProblemsFound, match=r"goes 0\.9954 deep and comes out of the far side"):
        spoilt("holes", tmp_path, ("tap depth: 1/2", "tap depth: 5/8"))


def test_a_blind_hole_is_told_to_be_blind() -> None:
    said = {
        cut.feature: " ".join(as_text(step) for step in cut.steps)
        for set_up in plate("holes").parts[0].set_ups
        for cut in set_up.cuts
        if cut.kind == "tap"
    }
    assert "The hole is blind" in said["tapped circle"]
