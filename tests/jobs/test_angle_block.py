"""The angle blocks by pencil. Source: geometry (sine bar, 5 in between its rolls)."""

import math

import pytest

from jobcards.definition.loading import load_family, load_shop
from jobcards.planning import plan_card
from tests.planning.cards import CLAMP, SHOP

FAMILY = {job.slug: job for job in load_family(CLAMP.with_name("angle-block.yml"))}
# 5 sin 5° = 0.4358, 5 sin 3° = 0.2617, 5 sin 10° = 0.8682; a rise of 2 sin of the angle at the touched corner
STACKS = {
    "angle-block": ("0.4358", 5),
    "angle-block-3-degrees": ("0.2617", 3),
    "angle-block-10-degrees": ("0.8682", 10),
}


def test_the_family_is_three() -> None:
    assert sorted(FAMILY) == sorted(STACKS)


@pytest.mark.parametrize("slug", STACKS)
def test_stack_and_raise(slug: str) -> None:
    stack, angle = STACKS[slug]
    card = plan_card(FAMILY[slug], load_shop(SHOP))
    assert card.ledger["block-sloped-face.stack"].shown == stack
    depth = card.ledger["block-sloped-face-sloped-face-3-4-end-mill.depth"]
    assert depth.published == pytest.approx(2 * math.sin(math.radians(angle)), abs=0.0003)
    low = card.ledger["requirement-height-left-at-the-low-end"]
    assert low.value == pytest.approx(1.25 - 2 * math.tan(math.radians(angle)))
