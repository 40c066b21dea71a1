"""What a card says fits the part in hand. Expected: the drawing's sizes; the sayings are common practice, no source."""

import pytest

from jobcards.planning.card import Card, Cut
from jobcards.planning.checks.worked import Worked
from jobcards.planning.grind import stands_tall
from jobcards.planning.words import as_text
from tests.planning.cards import shipped


def first_squared(card: Card, part: str) -> Cut:
    """The first face that is squared of a part."""
    return next(set_up.cuts[0] for set_up in card.set_ups if set_up.kind == "square" and set_up.part == part)


@pytest.mark.parametrize(
    ("slug", "part", "largest"),
    [
        ("equalising-clamp", "rocker", True),  # front 4-1/2 by 1-1/4, top 4-1/2 by 7/8
        ("parallel-clamp", "upper-jaw", True),  # front and top alike
        ("v-block-pair", "v-block", False),  # front 2 by 1-1/2, top 2 by 1-3/4
        ("grip-plate", "plate", False),  # front 4 by 5/8, top 4 by 1-1/4
    ],
)
def test_the_largest_face_comes_first_only_where_it_is_the_largest(slug: str, part: str, largest: bool) -> None:
    cut = first_squared(shipped(slug), part)
    assert cut.face == "front"
    assert as_text(cut.why).startswith("The largest face first" if largest else "This face first")


def test_only_tall_work_is_blocked_in_on_the_magnet() -> None:
    card = shipped("v-block-pair")
    blocks = next(s for s in card.set_ups if s.kind == "grind")  # 1-1/2 high, 1-3/4 wide
    assert not any("higher than it is wide" in as_text(note) for note in blocks.notes)
    assert stands_tall("left end", card.parts[0].shape)  # 2 high, 1-1/2 wide


def slope(card: Card) -> Cut:
    """The first slope of a card."""
    return next(cut for set_up in card.set_ups for cut in set_up.cuts if cut.kind == "slope")


def test_a_slope_s_line_is_scribed_where_the_flat_grows_to_it() -> None:
    """The rocker's relief is cut with its bottom up; turned end for end, the front lies against the fixed jaw."""
    assert [as_text(each) for each in slope(shipped("equalising-clamp")).first] == [
        "On the bottom scribe a line 1.6250\u00a0in from the left end, where the slope shall start."
    ]


def test_a_slope_that_runs_out_at_the_other_end_has_no_line() -> None:
    """The angle block is 2 long and slopes over all of it: there is nothing to scribe on."""
    cut = slope(shipped("angle-block"))
    assert cut.first == ()
    assert any("just reaches the edge of the right end at the last pass" in as_text(each) for each in cut.steps)


def test_what_is_told_in_words_goes_by_its_name() -> None:
    cuts = [cut for set_up in shipped("v-block-pair").set_ups for cut in set_up.cuts if cut.kind == "hand"]
    assert as_text(cuts[0].title) == "Numbers stamped"


def test_each_flank_of_a_tongue_goes_by_the_side_of_it() -> None:
    """The stop's back lies away from you: the flank by the back, worked from Y about nothing, is the far one."""
    cuts = [cut for set_up in shipped("dovetail-stop").set_ups for cut in set_up.cuts if cut.feature == "tongue"]
    assert len(cuts) == 2  # an end mill, then the dovetail cutter
    for cut in cuts:
        last = {as_text(p.label).split(",")[0]: p.y.value for p in cut.positions if p.finishing and p.y is not None}
        assert set(last) == {"finish its far side", "finish its near side"}
        assert last["finish its far side"] > -0.5 > -1.5 > last["finish its near side"]


def test_beside_a_tongue_metal_is_taken_and_the_tongue_stays() -> None:
    """The stop is 2 square; its tongue is 1.4105 wide at the bottom: 0.2948 goes on each side of it, by pencil."""
    (shape,) = (part.shape for part in shipped("dovetail-stop").parts if part.id == "stop")
    worked = Worked(shape)
    worked.cut("tongue")
    assert worked.away("bottom", ((0, 2), (0.30, 1.70))) == 0
    assert worked.away("bottom", ((0, 2), (0, 0.2947))) == 1
    assert worked.away("front", ((0, 2), (0, 1.25))) == pytest.approx(0.3585 / 1.25)


def test_work_that_stays_in_the_vise_is_not_tapped_down_anew() -> None:
    """The faceplate fixture is bored, then its circle of holes is drilled without loosening the vise."""
    (hold,) = (s.hold for s in shipped("faceplate-fixture").set_ups if s.title.text == "circle of holes")
    assert hold is not None
    told = [as_text(each) for each in hold.instructions]
    assert told[0].startswith("The work stays in the vise as it is, the front up")
    assert not any("Tap the work down" in each or "Slide the work" in each for each in told)


def test_work_that_is_turned_over_is_held_anew() -> None:
    (hold,) = (s.hold for s in shipped("equalising-clamp").set_ups
               if s.part == "rocker" and s.title.text == "pin seat, other side")  # fmt: skip
    assert hold is not None
    assert any("Tap the work down" in as_text(each) for each in hold.instructions)


def test_a_plate_bought_to_length_is_not_sawn() -> None:
    """The setting plate comes machined square to 8: no saw cut of 0.094 is added to it. The rocker is sawn."""
    card = shipped("setting-plate")
    assert "bought 8.0000\u00a0in long" in as_text(card.parts[0].blank.text)
    assert card.cut_list[0].bar_needed.shown == "8.00"
    assert "saw" not in as_text(card.gather[0].items[0])
    assert "sawn" in as_text(shipped("equalising-clamp").parts[0].blank.text)


def test_a_round_is_tried_with_a_radius_gauge() -> None:
    """A caliper and a height gauge find no radius on an eighth of a circle."""
    rows = [row for row in shipped("setting-plate").inspection if as_text(row.what).startswith("rounded")]
    assert [row.instrument.text for row in rows if row.instrument] == ["radius gauges"] * 2


def test_the_way_back_is_told_as_the_dial_can_show_it() -> None:
    """For 1.3858, shown as 1.3860 on a readout of 0.0005, less 0.012: marks of 0.001 can only tell 1.374."""
    (circle,) = (s for s in shipped("faceplate-fixture").set_ups if s.title.text == "circle of holes")
    assert any("go back to 1.3740\u00a0in or beyond first" in as_text(note) for note in circle.notes)


@pytest.mark.parametrize(
    ("slug", "feature", "back"),
    [
        ("setting-plate", "tray", True),  # rows of strokes beside each other, all to the right, then all to the left
        ("faceplate-fixture", "left slot", False),  # down, and once to and fro
        ("v-block-pair", "front groove", False),  # a single stroke
    ],
)
def test_the_way_back_is_told_where_strokes_go_the_same_way(slug: str, feature: str, back: bool) -> None:
    cut = next(cut for set_up in shipped(slug).set_ups for cut in set_up.cuts if cut.feature == feature)
    assert any("go back the way you came" in as_text(step) for step in cut.steps) is back
