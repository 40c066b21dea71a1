"""The screw jack by pencil.

Sources: arithmetic and geometry of the drawing; thread of 60° with a nose flat an eighth of the pitch (ASME B1.1 form);
common practice for the compound at 29°, presets and spindle steps.
"""

import pytest

from jobcards.planning.words import as_text
from tests.planning.cards import shipped

CARD = shipped("screw-jack")
PENCIL = {
    # atan((1.125 - 0.9375) / 2 / 1) = atan 0.09375 = 5.356; the scale counts from the cross slide: 90 - 5.356
    "body-neck-end-cone.scale": "84.64",
    # sqrt(1 + 0.09375²) = 1.0044
    "body-neck-end-cone.travel-of-compound": "1.0044",
    # from the bar touched at 1-1/2, a dial that reads the diameter: 1.5 - 0.9375
    "body-neck-end-cone-4.dial": "0.5625",
    # 12 * 80 / (3.1416 * 0.421875) = 724; the step below is 540
    "body-neck-end-screw-thread.rpm": "540",
    # the part and 0.020 to face off
    "body-neck-end.part-off": "2.0200",
    # 1/2-13 2A of ASME B1.1, pitch diameter 0.4435 to 0.4485, middle 0.446; the flat nose stands 0.3248 / 13 = 0.02498
    # under the pitch line: (0.495 - 0.446) / 2 + 0.02498 = 0.04948; along the compound / cos 29°
    "screw-thread-thread.infeed": "0.0566",
    # touched on the head, part of which stands out of the jaws: 0.875 - 0.3875
    "screw-thread-thread-relief.dial": "0.4875",
    # 1.5 - 11/64 - 0.75
    "requirement-thread-held-at-full-rise": "0.5781",
    # and at the worst 0.010 + 0.005 + 0.010 less
    "requirement-thread-held-at-full-rise.worst-low": "0.5531",
    # 2 + 0.75 + 0.6875
    "requirement-highest-height": "3.4375",
}


@pytest.mark.parametrize(("number_id", "expected"), PENCIL.items())
def test_by_pencil(number_id: str, expected: str) -> None:
    assert CARD.ledger[number_id].shown == expected


def test_the_tap_drill_is_the_usual_one() -> None:
    """27/64 for 1/2-13: common practice, published in every tap-drill table."""
    drilled = next(cut for set_up in CARD.set_ups for cut in set_up.cuts if cut.kind == "lathe drill")
    assert drilled.cutter is not None
    assert drilled.cutter.sizes["diameter"].published == pytest.approx(0.421875)


def test_the_compound_stops_before_the_base() -> None:
    """The cone's thick end lies against the base, 1-1/2 across."""
    cone = next(cut for set_up in CARD.set_ups for cut in set_up.cuts if cut.feature == "cone")
    said = " ".join(as_text(step) for step in cone.steps)
    assert "1.0044" in said and "stop there: a shoulder" in said
    assert "out of the cut" not in said
