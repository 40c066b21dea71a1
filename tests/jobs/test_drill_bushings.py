"""The drill bushings by pencil.

Sources: ISO 286-1:2010, tables 2 to 5 (p6 from 10 to 18 mm: +18 to +29 µm; E7 from 6 to 10 mm: +25 to +40 µm; H7: 0 to
+18 µm); grinding allowance: common practice; depth of case: ASM Handbook, volume 4 (Harris); the closing of a pressed
bush: elasticity of thick rings, both of one steel, the outer one wide; the bore closes by grip * bore / outside.
"""

import pytest

from jobcards.definition.loading import load_family, load_shop
from jobcards.dryrun import dry_run
from jobcards.planning import plan_card
from tests.planning.cards import CLAMP, SHOP

FAMILY = {job.slug: job for job in load_family(CLAMP.with_name("drill-bushings.yml"))}
CARDS = {name: plan_card(job, load_shop(SHOP)) for name, job in FAMILY.items()}
CARD = CARDS["drill-bushings"]
PENCIL = {
    # 0.500 and the middle of 18 and 29 µm: 23.5 / 25400 = 0.0009
    "size-outside": "0.5009",
    # 0.250 and the middle of 25 and 40 µm: 32.5 / 25400 = 0.0013
    "size-bore": "0.2513",
    # 0.5009 and 0.008 for a part less than 2 in long
    "bushing-outside-and-bore-body.for-grinding": "0.5089",
    # half of 0.008 is ground off each corner: 1/64 + 0.004 and 1/32 + 0.004
    "bushing-outside-and-bore-mouth-edge.for-grinding": "0.0196",
    "bushing-other-end-lead.for-grinding": "0.0353",
    # 0.025 and 0.004 that is ground off
    "bushing-harden-the-case-case.case": "0.0290",
    # 10 to the power of 6700/2135 = 1375; (0.029 * 1375 / 31.6)² = 1.59
    "bushing-harden-the-case-case.hours": "1.6",
    # 0.008 off the diameter, on a dial that reads the diameter
    "bushing-grind-the-outside-body-finished.dial": "0.0080",
    # 0.004 in passes of 0.0005
    "bushing-grind-the-outside-body.passes": "8",
    # 0.0009 - 0.0004, in µm 23.5 - 9 = 14.5
    "requirement-grip-in-the-plate": "0.0006",
    # 0.25128 - 0.00057 * 0.5017 - 0.24955
    "requirement-drill-play-after-pressing": "0.0014",
}


@pytest.mark.parametrize(("number_id", "expected"), PENCIL.items())
def test_by_pencil(number_id: str, expected: str) -> None:
    assert CARD.ledger[number_id].shown == expected


def test_the_press_never_lets_go() -> None:
    """p6 begins where H7 ends: 18 µm both."""
    assert CARD.ledger["requirement-grip-in-the-plate.worst-low"].value == pytest.approx(0, abs=1e-6)


@pytest.mark.parametrize("slug", sorted(CARDS))
def test_every_size_of_the_family_is_made_as_drawn(slug: str) -> None:
    for part in dry_run(CARDS[slug]).parts:
        assert part.largest_deviation <= part.allowed_deviation
        assert not part.collisions and not part.faults


def test_the_bore_is_finished_before_the_outside_is_ground_on_it() -> None:
    done = [cut.kind for set_up in CARD.parts[0].set_ups for cut in set_up.cuts if cut.feature in ("guide", "body")]
    assert done == ["turn", "lathe drill", "lathe ream", "hand", "grind round"]
