"""Chamfers and V-grooves on tilted work, by pencil, and what is told when they cannot be. Source: geometry."""

from functools import cache
from pathlib import Path

import pytest

from jobcards.definition import ProblemsFound, load_job, load_shop
from jobcards.planning import Card, plan_card
from jobcards.planning.card import SetUpPlan
from jobcards.planning.words import as_text
from tests.planning.cards import SHOP, changed_card

DEMO = Path(__file__).parents[1] / "jobs" / "tilted-work.yml"
Swap = tuple[str, str]


def worked(folder: Path, *swaps: Swap, shop: tuple[Swap, ...] = ()) -> Card:
    """The demo's card with words of its definition or of the shop file swapped."""
    return changed_card(folder, DEMO, *swaps, shop=shop)


@cache
def demo() -> Card:
    """The demo's card as it is."""
    return plan_card(load_job(DEMO), load_shop(SHOP))


def set_up(card: Card, title: str) -> SetUpPlan:
    """A set-up by its title."""
    return next(s for s in card.set_ups if s.title.text == title)


def test_a_chamfer_on_tilted_work_is_raised_by_its_size_times_the_sine() -> None:
    """1/4 at 45° is 0.1768, at 15° of 1/2 0.1294: to the half thousandth."""
    depths = [set_up(demo(), title).cuts[0].sizes["depth"].shown for title in ("corner", "ramp")]
    assert depths == ["0.1770", "0.1295"]
    assert [set_up(demo(), title).cuts[0].kind for title in ("corner", "ramp")] == ["slope", "slope"]


def test_both_flanks_of_a_v_from_the_line_at_its_middle() -> None:
    """0.300 deep, square to a face that stands at 45°: 0.2121 toward the high right end and as much down."""
    plan = set_up(demo(), "vee")
    (cut,) = plan.cuts
    (place,) = cut.positions
    assert (cut.kind, cut.lean, cut.sizes["depth"].shown) == ("cornered vee", "right", "0.2120")
    assert place.x is not None and place.x.shown == "0.2120"
    assert [(touch.axis, touch.kind, touch.preset.value) for touch in plan.zero] == [
        ("x", "tilted line", 0.0),
        ("z", "tilted line", 0.0),
    ]


def test_with_the_left_end_high_the_bottom_lies_to_the_left(tmp_path: Path) -> None:
    card = worked(tmp_path, ("45 degree block, high end: right end", "45 degree block, high end: left end"))
    (cut,) = set_up(card, "vee").cuts
    (place,) = cut.positions
    assert cut.lean == "left" and place.x is not None and place.x.shown == "−0.2120"


def test_the_angle_gauge_is_gathered_and_taken_out_before_cutting() -> None:
    hold = set_up(demo(), "corner").hold
    assert hold is not None and hold.kind == "angle gauge in vise"
    assert hold.sizes["tilt"].shown == "45"
    # the block stands (2 + 1-1/2) sin 45° = 2.4749 high; jaws 1-3/4, parallels 1/2
    assert (hold.sizes["grip"].shown, hold.sizes["proud"].shown) == ("1.2500", "1.2249")
    assert any("take the block out before cutting" in as_text(said) for said in hold.instructions)
    holding = next(group for group in demo().gather if group.title == "Holding")
    assert any("45 degree block" in as_text(item) for item in holding.items)


CORNER = "up: top, against fixed jaw: back, on: 45 degree block, high end: left end"
PROBLEMS: list[tuple[tuple[Swap, ...], str]] = [
    (
        ((CORNER, CORNER.replace("left end", "right end")),),
        "“corner” falls toward the left end, and the right end stands",
    ),
    ((("edges: left end, size", "edges: [left end, right end], size"),), "cut one edge at a time"),
    ((("size: 1/4}", "size: 1/4, angle: 30°}"),), "“45 degree block” sets the work at 45°, and it wants 30°"),
    (
        ((CORNER, CORNER.replace(", high end: left end", "")),),
        "the end that stands higher on the 45 degree block is missing",
    ),
    (((CORNER, CORNER.replace("left end", "top")),), "the top cannot stand higher while the top is up"),
    ((("angle: 90°, width: 0.600", "angle: 80°, width: 0.600"),), "“45 degree block” sets the work at 45°"),
    (
        (("centre: 1.200, angle", "centre: 1.200, start: 1/2, angle"),),
        "“vee” has a closed end, and the corner of an end",
    ),
    ((("along: y, centre: 1.200", "along: x, centre: 0.700"),), "“vee” runs along the slope of the tilted work"),
    ((("{line: 1.200, from: left end}", "{line: 1.000, from: left end}"),), "is not the middle of “vee”"),
    ((("{line: 1.200, from: left end}", "{edge: left end}"),), "by the middle line of “vee” alone"),
    ((("{cut: vee, with: 3/4 end mill}", "{cut: vee, with: V-cutter}"),), "has no square corner for “vee”"),
    (
        (("{cut: vee, with: 3/4 end mill}", "{cut: vee, with: 3/8 end mill}"),),
        "is 0.4243 long, and the cutter's diameter 3/8",
    ),
    ((("{cut: corner, with: 3/4 end mill}", "{cut: corner, with: chamfer mill}"),), "does not mill tilted work level"),
    (
        (
            (
                "          - {cut: corner, with: 3/4 end mill}",
                "          - {cut: corner, with: 3/4 end mill}\n          - {cut: slot, with: 3/8 end mill}",
            ),
            (
                "      vee: {",
                "      slot: {shape: slot, from: top, along: z, centre: 1, width: 1/2, depth: 1/8}\n      vee: {",
            ),
        ),
        "the work is tilted in this set-up, and “slot” wants it level",
    ),
    (
        (
            (
                "          - {cut: corner, with: 3/4 end mill}",
                "          - {cut: corner, with: 3/4 end mill}\n          - {cut: other, with: 3/4 end mill}",
            ),
            (
                "      vee: {",
                "      other: {shape: bevel, from: top, toward: left end, start: 1/2, angle: 5°}\n      vee: {",
            ),
        ),
        "“other” wants another tilt than “corner” in this set-up",
    ),
]


@pytest.mark.parametrize(("swaps", "says"), PROBLEMS, ids=[says for _, says in PROBLEMS])
def test_what_cannot_be_is_told(tmp_path: Path, swaps: tuple[Swap, ...], says: str) -> None:
    with pytest.raises(ProblemsFound) as found:
        worked(tmp_path, *swaps)
    assert any(says in str(problem) for problem in found.value.problems), found.value
