"""The hexagon locking screw by pencil, in millimetres.

Sources: arithmetic and geometry of the drawing; thread of 60° with a nose flat an eighth of the pitch (ISO 68-1 form);
common practice for the compound at 29°, presets and spindle steps; a dividing head of 40 turns.
"""

import pytest

from jobcards.definition import load_job
from jobcards.planning import plan_card
from tests.planning.cards import CLAMP, kit_for

JOB = load_job(CLAMP.with_name("hex-locking-screw.yml"))
CARD = plan_card(JOB, kit_for(JOB))
PENCIL = {
    # from 22 to 10.975 across; this dial reads the infeed: 11.025 / 2 = 5.5125, to half a mark of 0.02
    "screw-shank-end-shank-6.dial": "5.51",
    # 15 + 4 + 20 + 5 from the faced end to the collar
    "screw-shank-end-shank.length": "44.000",
    # 56 and 0.5 to face off
    "screw-shank-end.part-off": "56.500",
    # M10 6g of ISO 965-2, pitch diameter 8.862 to 8.994, middle 8.928; the flat nose stands 0.3248 * 1.5 = 0.487 under
    # the pitch line: (9.85 - 8.928) / 2 + 0.487 = 0.948; along the compound / cos 29°
    "screw-shank-end-thread.infeed": "1.084",
    # 20 - 16.925 / cos 30° = 20 - 19.543
    "requirement-corners-of-the-hexagon": "0.457",
    # at the worst 19.9 - 17 / cos 30° = 19.9 - 19.630
    "requirement-corners-of-the-hexagon.worst-low": "0.270",
    # 11.2 - 11
    "requirement-shank-in-the-clamp.worst-low": "0.200",
}


@pytest.mark.parametrize(("number_id", "expected"), PENCIL.items())
def test_by_pencil(number_id: str, expected: str) -> None:
    assert CARD.ledger[number_id].shown == expected


def test_held_by_its_shank_only_the_head_stands_out() -> None:
    """The collar lies against collet and jaws; what is behind goes in: the head is 12 long."""
    for set_up in ("screw-head-end", "screw-hexagon"):
        hold = next(plan for plan in CARD.set_ups if plan.id == set_up).hold
        assert hold is not None
        assert hold.sizes["stick-out"].published == pytest.approx(12.0)
        assert hold.sizes["grip"].published == pytest.approx(15.0)


def test_six_flats_are_six_and_two_thirds_turns_apart() -> None:
    """40 / 6 = 6 and two thirds turns: a circle of a number of holes that three divides."""
    cut = next(plan for plan in CARD.set_ups if plan.id == "screw-hexagon").cuts[0]
    assert len(cut.stations) == 6
    assert cut.sizes["depth"].published == pytest.approx((20 - 16.925) / 2, abs=0.001)
    angles = [station.angle.value for station in cut.stations]
    assert sorted(angle % 360 for angle in angles) == pytest.approx([30, 90, 150, 210, 270, 330])
