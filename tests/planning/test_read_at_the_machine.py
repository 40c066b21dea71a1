"""What a machinist found in reading cards with a pencil: each was once told so that it could not be done.

Sources: common practice, no source; flute lengths from the shop file; geometry of the drawing.
"""

from pathlib import Path

import pytest

from jobcards.definition import load_job
from jobcards.planning import Card, plan_card
from jobcards.planning.words import as_text
from tests.planning.cards import CLAMP, assert_refused, kit_for, shipped


def told(card: Card, title: str) -> str:
    """All that is said in a set-up, its touches and its own holds."""
    plan = next(one for one in card.set_ups if one.title.text == title)
    lines = [touch.instruction for touch in plan.zero]
    lines += [step for cut in plan.cuts for step in cut.steps]
    return " ".join(as_text(line).replace("\N{NO-BREAK SPACE}", " ") for line in lines)


@pytest.mark.parametrize(
    ("slug", "title", "place"),
    [
        # the handle's hole is 0.253 wide at 1.3125, 0.100 to its right; to its left are the jaws
        ("die-holder", "cross holes", "1.5390 in from the left end"),
        # the keyway begins at 0.625; the seat at 0.500: their middle
        ("indexing-spindle", "keyway and square", "0.5625 in from the left end"),
        # the tommy hole is 0.379 wide at 1.875
        ("turnbuckle", "tommy hole", "2.1645 in from the left end"),
    ],
)
def test_the_height_is_touched_where_no_cutter_takes_it_away(slug: str, title: str, place: str) -> None:
    said = told(shipped(slug), title)
    assert "beside all cuts" in said and place in said


def test_one_cutter_is_touched_where_it_begins() -> None:
    """A hexagon all over the head leaves no other place, and needs none."""
    job = load_job(CLAMP.with_name("hex-locking-screw.yml"))
    assert "where it is still 20.00 mm across" in told(plan_card(job, kit_for(job)), "hexagon")


def test_where_every_place_is_cut_the_next_cutter_is_touched_beside() -> None:
    """The tang runs to 1/8 of the jaws; an end mill of 3/4 would meet them there."""
    assert "Do this anew for each cutter, beside what is cut already" in told(
        shipped("turnbuckle"), "tang and pin hole"
    )


def test_an_end_higher_than_the_flutes_is_refused(tmp_path: Path) -> None:
    """1-3/4 by 1-1/2: it lies flat, 1-1/2 high, which flutes of 1-5/8 reach and flutes of 3/4 do not."""
    assert_refused(
        tmp_path,
        CLAMP.with_name("v-block-pair.yml"),
        ("ends with: 3/4 end mill", "ends with: 1/4 end mill"),
        "the ends are 1.5000 high as they are cut, and the 1/4 end mill has flutes 3/4 long",
    )


def test_a_round_bar_as_long_as_the_face_at_the_moving_jaw_is_rough() -> None:
    """Front, top, bottom, back: for top and bottom the back is still as it was sawn or drawn."""
    cuts = next(one for one in shipped("vise-stop").set_ups if one.title.text == "square the blank").cuts
    with_bar = [cut.face for cut in cuts if "round bar" in " ".join(as_text(step) for step in cut.steps)]
    assert with_bar == ["top", "bottom"]


def test_a_tap_in_a_blind_hole_turns_at_the_slowest_step() -> None:
    """The mill's slowest step is 80; through the vise stop's block the chart's speed is taken."""
    taps = {
        slug: [c for s in shipped(slug).set_ups for c in s.cuts if c.kind == "tap"]
        for slug in ("boring-bar", "vise-stop")
    }
    assert [cut.rates["speed"].shown for cut in taps["boring-bar"]] == ["80"]
    assert "last threads by hand" in told(shipped("boring-bar"), "set screw")
    assert [cut.rates["speed"].value > 80 for cut in taps["vise-stop"]] == [True]
    assert "wind itself out" in told(shipped("vise-stop"), "front")


def test_a_shoulder_finer_than_the_carriages_dial_is_crept_up_to() -> None:
    """0.632 ±0.002 by a dial with marks 0.005 apart; the screw jack's lengths are coarser than that."""
    assert "marks, 0.005 in, are coarser" in told(shipped("swing-stop"), "shank end")
    assert "are coarser" not in told(shipped("screw-jack"), shipped("screw-jack").set_ups[1].title.text)


def test_a_counterbore_is_touched_by_its_teeth() -> None:
    assert "it is the teeth that touch the paper" in told(shipped("grip-plate"), "screw holes")


def test_an_edge_that_is_ground_later_is_told_as_it_reads() -> None:
    said = told(shipped("v-block-pair"), "front groove")
    assert "The edge then reads 0.0060 in, and zero is the bottom as it will be ground" in said


def test_what_is_tried_and_measured_with_is_gathered() -> None:
    things = {
        slug: " ".join(as_text(item) for group in shipped(slug).gather for item in group.items)
        for slug in ("dovetail-stop", "turnbuckle", "indexing-spindle", "die-holder")
    }
    assert "two pins, 1/4" in things["dovetail-stop"] and "round bar for the moving jaw" in things["dovetail-stop"]
    assert "three wires" in things["turnbuckle"] and "centre gauge" in things["turnbuckle"]
    assert "steady rest" in things["indexing-spindle"]
    assert "driving plate and dog" in things["die-holder"] and "marking blue" in things["die-holder"]
