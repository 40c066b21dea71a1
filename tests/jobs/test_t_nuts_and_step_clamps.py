"""T-nuts and step clamps by pencil. Sources: arithmetic of the drawing; common practice for tap drill and speeds."""

import pytest

from jobcards.definition import load_job
from jobcards.planning import plan_card
from tests.planning.cards import CLAMP, kit_for

JOB = load_job(CLAMP.with_name("t-nuts-and-step-clamps.yml"))
CARD = plan_card(JOB, kit_for(JOB))
PENCIL = {
    # four nuts of 24 and three saw cuts of 3
    "size-strip-length": "105.00",
    # the stop is on the right, so X runs to the left: half of 24, and the last 3 * 27 further
    "nut-strip-threads-threads-m10-tap-a.x": "−12.000",
    "nut-strip-threads-threads-m10-tap-d.x": "−93.000",
    # 1000 * 24 / (3.1416 * 8.5) = 899; the step below is 880
    "nut-strip-threads-threads-8-5-drill.wanted": "899",
    "nut-strip-threads-threads-8-5-drill.rpm": "880",
    # 16, and 1.5 beyond, and the point: 4.25 / tan 59° = 2.554; 16 + 1.5 + 2.554, less what is rounded
    "nut-strip-threads-threads-8-5-drill.depth": "20.054",
    # 21.9 - 2 * 4.15 = 13.6; 14.015 - 13.6
    "requirement-play-of-the-neck-in-the-slot": "0.415",
    # walls of the strap's slot: 36 + 11.15 / 2 to 36 + 44; of the stair from the left end: 40 - 32 = 8
    "step-block-first-step.wall": "8.000",
    # atan(2 / (100 - 16)) = 1.364°
    "requirement-lean-of-the-strap-half-a-step-off": "1.36",
}


@pytest.mark.parametrize(("number_id", "expected"), PENCIL.items())
def test_by_pencil(number_id: str, expected: str) -> None:
    assert CARD.ledger[number_id].shown == expected


def test_every_step_of_the_stair_takes_one_rise_in_a_pass_and_a_light_one() -> None:
    """4.00 less the light pass of 0.25, on every step; counted from the face the fourth would need more passes."""
    stair = next(set_up for set_up in CARD.set_ups if set_up.title.text == "stair")
    assert [cut.rates["pass depth"].shown for cut in stair.cuts] == ["3.750"] * 4
    assert [cut.sizes["depth"].value for cut in stair.cuts] == pytest.approx([4, 8, 12, 16])


def test_the_time_of_a_batch_counts_every_piece() -> None:
    """10 minutes to set up, and each of four blanks 6 minutes at the saw."""
    sawing = next(set_up for set_up in CARD.set_ups if set_up.title.text == "saw the blanks")
    assert sawing.time is not None and sawing.time.value == pytest.approx(10 + 4 * 6)
