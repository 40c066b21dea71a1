"""What a wall sheet tells of milled shapes: the strokes that make the size, and how it is measured."""

from jobcards.pages import wall, wall_strokes
from jobcards.pages.html import plain
from jobcards.pages.writing import Writer
from jobcards.planning.card import Card
from jobcards.planning.words import as_text
from tests.planning import test_closed_ends, test_tilted_head, test_tilted_work
from tests.planning.test_inspection import shipped


def test_every_finishing_stroke_is_told() -> None:
    """A closed slot has four walls; a rough stroke down its middle is not told."""
    card = shipped("t-nuts-and-step-clamps")
    cut = next(cut for set_up in card.set_ups for cut in set_up.cuts if cut.kind == "plunged strokes")
    strokes = list(zip(cut.positions[::2], cut.positions[1::2], strict=True))
    told = wall_strokes.told(strokes)
    assert [as_text(start.label).split(",")[0] for start, _ in told] == [
        f"finish the {side} wall" for side in ("far", "right", "near", "left")
    ]
    assert len(told) < len(strokes)


def test_pins_and_what_is_read_over_them_are_always_on_the_sheet() -> None:
    for slug, count in (("dovetail-stop", 2), ("v-block-pair", 1), ("equalising-clamp", 1), ("grip-plate", 1)):
        card = shipped(slug)
        block = wall.limits_block(Writer(), wall.close_limits(card))
        text = plain(block.html)
        over_pins = [row for row in card.inspection if row.pin]
        assert len(over_pins) == count
        for row in over_pins:
            assert f"{row.lower.shown} to {row.upper.shown}" in text
            assert row.pin is not None and f"of {row.pin.shown}" in text


def test_a_hand_tool_takes_no_line_of_its_own() -> None:
    card = shipped("dovetail-stop")
    deburr = next(set_up for set_up in card.set_ups if set_up.kind == "bench")
    lines = [plain(each) for each in wall.set_up_block(Writer(), card, deburr).lines]
    assert any(each.startswith("file: corners") for each in lines)


def told_of(card: Card, title: str) -> str:
    """What the sheet tells of a set-up."""
    set_up = next(each for each in card.set_ups if each.title.text == title)
    return " ".join(plain(each) for each in wall.set_up_block(Writer(), card, set_up).lines)


def test_which_way_a_head_leans_is_told_beside_its_tilt() -> None:
    nose = told_of(test_tilted_head.demo(), "nose")
    assert "head leans right, tilt 30°" in nose and nose.count("30°") == 1
    vee = told_of(test_tilted_head.demo(), "long vee")
    assert vee.index("head leans toward you") < vee.index("scribed")  # it is tilted before zero is found


def test_a_scribed_line_does_not_read_as_a_touched_edge() -> None:
    """The groove's middle, 0.600 in from the back, is set by eye; the back itself is not touched."""
    told = told_of(test_tilted_head.demo(), "long vee")
    assert "line scribed 0.600 from back: y −0.6000" in told and "back: y −0.6000" not in told.replace("from back", "")


def test_chuck_and_collet_are_told_apart() -> None:
    card = shipped("screw-jack")
    held = [wall.hold_line(Writer(), each.hold) for each in card.set_ups if each.kind == "lathe"]
    assert held
    for line, set_up in zip(held, (each for each in card.set_ups if each.kind == "lathe"), strict=True):
        assert set_up.hold is not None and plain(line).startswith(set_up.hold.holder.text)


def test_of_a_closed_slot_each_pass_is_told_beside_the_finishing_strokes() -> None:
    card = shipped("t-nuts-and-step-clamps")
    cut = next(cut for set_up in card.set_ups for cut in set_up.cuts if cut.kind == "plunged strokes")
    set_up = next(each for each in card.set_ups if cut in each.cuts)
    told = told_of(card, set_up.title.text)
    down, middle = cut.positions[0], cut.positions[2]
    assert down.x and middle.x and cut.positions[3].x
    ways = {middle.x.shown, cut.positions[3].x.shown, down.x.shown}
    assert "each pass" in told and "then once" in told and all(way in told for way in ways)


def test_what_tilted_work_is_set_against_and_touched_at_is_told() -> None:
    told = told_of(test_tilted_work.demo(), "vee")
    assert "right end high, on the 45 degree block" in told
    assert "scribed line: x 0.0000" in told and "scribed line: z 0.0000" in told
    assert "head leans" not in told


def test_where_a_cutter_goes_down_into_the_work_is_told() -> None:
    """Way in at 2 and at 2-1/2 from the left end."""
    told = told_of(test_closed_ends.demo(), "bottom")
    assert told.count("down at x −2.0000 y −1.0000") == 2  # end mill and T-slot cutter
    assert "down at x −2.5000 y −1.2500" in told_of(test_closed_ends.demo(), "back")
    assert "down at" not in told_of(test_closed_ends.demo(), "top")
