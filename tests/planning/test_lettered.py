"""The letters of places: one for each place of a set-up, the same for every cut and in the picture."""

from jobcards.drawing.set_up_above import places_of
from jobcards.planning.words import as_text
from tests.planning.test_inspection import shipped


def test_holes_of_several_features_have_one_run_of_letters() -> None:
    card = shipped("tap-guide-block")
    holes = next(set_up for set_up in card.set_ups if set_up.title.text == "guide holes")
    told = [as_text(position.label) for cut in holes.cuts for position in cut.positions if position.letter]
    assert told[:4] == ["quarter hole, a", "five-sixteenths hole, b", "three-eighths hole, c", "half-inch hole, d"]
    assert told[4:] == [label for label in told[:4] for _ in range(2)]  # drilled and reamed one after the other


def test_a_place_gone_to_again_keeps_its_letter() -> None:
    card = shipped("dovetail-stop")
    holes = next(set_up for set_up in card.set_ups if set_up.title.text == "slot and screw holes")
    told = {as_text(position.label) for cut in holes.cuts for position in cut.positions if position.letter}
    assert told == {"screw holes, a", "screw holes, b", "screw heads, a", "screw heads, b"}


def test_the_picture_has_the_letters_of_the_table() -> None:
    for slug in ("tap-guide-block", "faceplate-fixture", "parallel-clamp", "tram-bar"):
        for set_up in shipped(slug).set_ups:
            if set_up.kind != "mill":
                continue
            for letter, place in places_of(set_up):
                assert not letter or as_text(place.label).endswith(f", {letter}")


def test_a_single_place_needs_no_letter() -> None:
    card = shipped("vise-stop")
    front = next(set_up for set_up in card.set_ups if set_up.title.text == "front")
    assert not any(position.letter for cut in front.cuts for position in cut.positions)
