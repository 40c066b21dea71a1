"""Blocks on a rotary table against pencil work: readings of the table, places, edges, and what is refused.

Pencil work is plain arithmetic and geometry of the sizes in tests/jobs/rotary-table.yml: a table of 90 to 1 turns 4°
for each turn of its handle.
"""

from pathlib import Path

import pytest

from jobcards.definition import ProblemsFound, load_job, load_shop
from jobcards.planning import plan_card
from jobcards.planning.card import Cut, SetUpPlan
from jobcards.planning.words import as_text
from tests.planning.cards import SHOP, assert_refused, changed_card

JOB = Path("tests/jobs/rotary-table.yml")
CARD = plan_card(load_job(JOB), load_shop(SHOP))


def set_up(name: str) -> SetUpPlan:
    """A set-up of the card."""
    return next(each for each in CARD.set_ups if each.id == name)


def cut(name: str) -> Cut:
    """A cut of the card."""
    return next(each for s in CARD.set_ups for each in s.cuts if each.id == name)


PLATE, HUB = set_up("plate-holes-of-the-plate"), set_up("hub-holes-of-the-hub")
RING, BLIND = PLATE.cuts[-1], HUB.cuts[-1]


def test_the_table_is_turned_from_the_trued_edge_to_the_first_hole() -> None:
    """The edge lies along the table, so nothing is 0° to the right; 30° are 7 turns of 4° and 2°."""
    first = RING.stations[0]
    assert {name: number.shown for name, number in first.move.items()} == {"turns": "7", "dial": "2°00′"}


def test_seven_holes_from_thirty_degrees() -> None:
    """30° and 360/7 = 51.4286° more each time: 81.4286 is 20 turns and 1°25.7′, 132.857 is 33 and 0°51.4′."""
    shown = [tuple(number.shown for number in station.move.values()) for station in RING.stations[1:4]]
    assert shown == [("20", "1°26′"), ("33", "0°51′"), ("46", "0°17′")]


def test_the_circles_radius_is_the_only_reading() -> None:
    """Half of 1-3/8 to the right of the axis, and nothing across."""
    (place,) = RING.positions
    assert place.x is not None and place.x.value == pytest.approx(0.6875)
    assert place.y is not None and place.y.value == pytest.approx(0.0)


def test_the_edges_that_place_the_work() -> None:
    """The middle is 1-3/4 from the left end and 1-1/2 from the bottom; half of a 0.200 tip beyond each."""
    placed = {touch.axis: touch.preset.value for touch in PLATE.zero if touch.kind == "placed"}
    assert placed == pytest.approx({"x": -1.850, "y": -1.600})


def test_the_back_up_is_mirrored_and_the_table_goes_the_other_way() -> None:
    """Back up and left end away from you: the bottom, 270° on the drawing, looks to the right; angles grow clockwise
    from above, so the table goes anticlockwise. To 30° it is 120°: 30 turns. Of eight, 45° on is 11 turns and 1°.
    """
    assert HUB.hold is not None and HUB.hold.sizes["angle up"].value == 270
    assert (PLATE.hold and PLATE.hold.way, HUB.hold.way) == ("clockwise", "anticlockwise")
    shown = [tuple(number.shown for number in station.move.values()) for station in BLIND.stations]
    assert shown == [("30", "0°00′"), ("41", "1°00′"), ("52", "2°00′")]
    assert any("anticlockwise as seen from above" in as_text(step) for step in BLIND.steps)


def test_the_heels_of_the_straps_stand_on_the_table() -> None:
    """Straps 4 long would stand out to 2.25 - 5/8 + 4 = 5.6 from the axis of a table of radius 4: the short ones."""
    assert PLATE.hold is not None
    assert PLATE.hold.sizes["clamp length"].value == 1.875
    assert PLATE.hold.sizes["heel"].value == pytest.approx(0.5 + 0.625 + 0.0625)


EDGES = "centre: ring of holes, centred by: edges"
FIRST = "clamps: [{over: left end, at: 3/4}"
ZERO = "        zero: [{axis: indicator}]\n        operations:\n          - {cut: ring"
PLUG = "up: back, far side: left end, centre: hub bore, centred by: plug"
VISE = "against fixed jaw: top, on: parallels"
HOLES = "diameter: hole, depth: 1/4,\n         circle: {centre: {x: plate length/2"
REFUSED = [
    ((EDGES, "centre: ring of holes"), "nothing to sweep"),
    ((EDGES, "centred by: edges"), "what stands over the table's axis is missing"),
    ((EDGES, "centre: another ring, centred by: edges"), "is not a feature"),
    (("{in: rotary table, up: front, far side: top", "{in: rotary table, up: front"), "far side is missing"),
    ((f"on: narrow packing,\n           {FIRST}", FIRST), "wants"),
    ((FIRST, "clamps: [{over: left end}"), "is touched in its middle"),
    (("hole circle: 1-3/8", "hole circle: 2-1/4"), "which turns with the work"),
    ((ZERO, ZERO.replace("axis: indicator", "edge: bottom")), "zero is the table's axis"),
    ((PLUG, PLUG.replace("back", "front")), "is cut from the back"),
    (("hub bore, centred by: plug", "blind holes, centred by: plug"), "nothing to sweep"),
    ((f"{VISE}}}", f"{VISE}, centre: hub bore}}"), "does not turn"),
    ((f"{HOLES} - 1/4", HOLES), "not round about"),
]


@pytest.mark.parametrize(("swap", "told"), REFUSED, ids=[told for _, told in REFUSED])
def test_it_is_refused(tmp_path: Path, swap: tuple[str, str], told: str) -> None:
    assert_refused(tmp_path, JOB, swap, told)


def test_straps_that_are_all_too_long(tmp_path: Path) -> None:
    shop = (("{kind: table clamps, number: 4, length: 1-7/8", "{kind: table clamps, number: 4, length: 3-7/8"),)
    with pytest.raises(ProblemsFound, match="the heels of no strap clamps"):
        changed_card(tmp_path, JOB, shop=shop)


def test_a_plug_needs_a_hole_in_the_table(tmp_path: Path) -> None:
    with pytest.raises(ProblemsFound, match="does not tell the hole in the middle"):
        changed_card(tmp_path, JOB, shop=((", centre hole: 1", ""),))
