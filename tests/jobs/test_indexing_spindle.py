"""The indexing spindle by pencil.

Sources: Morse 2 of ASME B5.10 (0.700 at the gauge line, 0.59941 in a foot); ISO 286 for f7, h7 and H7 (micrometres,
turned into inches); geometry of a keyway in a round shaft; common practice for the compound and the presets.
"""

import pytest

from jobcards.dryrun import dry_run
from jobcards.dryrun.reading import published
from tests.planning.cards import shipped

CARD = shipped("indexing-spindle")
PENCIL = {
    # the piece of 4.125 less 0.020 faced off, 0.060 to come through, and the point: 0.25 / tan 59° = 0.1502
    "spindle-tail-draw-bore-1-2-drill.depth": "4.315",
    # the bearing runs from 0.500 + 0.875 to 3.125: its middle
    "spindle-nose-and-socket.rest-place": "2.2500",
    # from the bearing's shoulder, which lies against the jaws: 4.000 - 1.375
    "spindle-nose-and-socket-face-right-end.leave": "2.6250",
    # 0.59941 / 12 in one: 2.625 of it take 0.1311 off 0.7000
    "spindle-socket.small": "0.5689",
    # counted from the cross slide: 90 - atan(0.59941 / 24)
    "spindle-nose-and-socket-socket-long-boring-bar.scale": "88.57",
    # from the touch in 17/32: 0.7000 - 0.53125, and a dial that reads the diameter
    "spindle-nose-and-socket-socket-long-boring-bar-5.dial": "−0.1690",
    # 0.1275 at the sides, and the crown over them: 0.5623 - sqrt(0.5623² - 0.1255²) = 0.0142
    "spindle-keyway.depth": "0.1417",
    # 1.1246 - 0.1417
    "spindle-keyway.over": "0.9829",
    # the height was set on the wheel seat, which is thicker than the tail: (1.1246 - 0.7470) / 2
    "spindle-keyway-and-square-square-1-2-end-mill.below-touch": "0.1888",
    # a quarter of forty turns
    "spindle-keyway-and-square-square-1-2-end-mill.index": "10.0000",
    # 31.75 mm: f7 is -25 to -50, H7 is 0 to +25 micrometres
    "requirement-play-of-the-bearing.worst-low": "0.0010",
    "requirement-play-of-the-bearing.worst-high": "0.0030",
    # sqrt(0.5623² - 0.1255²) - 0.1275 - 0.2525
    "requirement-metal-between-key-and-draw-bore": "0.1681",
}


@pytest.mark.parametrize(("number_id", "expected"), PENCIL.items())
def test_by_pencil(number_id: str, expected: str) -> None:
    assert CARD.ledger[number_id].shown == expected


@pytest.mark.parametrize(
    ("number_id", "wrong"),
    [
        ("spindle-nose-and-socket-socket-long-boring-bar.scale", "91.43"),  # the half angle to the other side
        (
            "spindle-nose-and-socket-socket-long-boring-bar-5.dial",
            "−0.3380",
        ),  # the dial taken for one that reads the infeed
        ("spindle-nose-and-socket.rest-place", "3.2500"),  # on the nose
        ("spindle-keyway-and-square-square-1-2-end-mill.below-touch", "0.0953"),  # as if it had been set on the tail
    ],
)
def test_a_wrong_number_is_found(number_id: str, wrong: str) -> None:
    assert not dry_run(CARD, published(CARD) | {number_id: wrong}).passed
