"""What the inspection record asks for: reachable sizes, all of them, and over pins what no caliper reaches."""

from functools import cache
from pathlib import Path

import pytest

from jobcards.definition import load_job
from jobcards.planning import Card, plan_card
from jobcards.planning.card import InspectionRow
from jobcards.planning.words import as_text
from tests.planning.cards import CLAMP, changed, kit_for


@cache
def shipped(slug: str) -> Card:
    job = load_job(CLAMP.with_name(f"{slug}.yml"))
    return plan_card(job, kit_for(job))


def rows(card: Card, feature: str) -> dict[str, InspectionRow]:
    """The rows of a feature, by what is measured."""
    told = ((as_text(row.what), row) for row in card.inspection)
    return {what.removeprefix(f"{feature}, "): row for what, row in told if what.startswith(feature)}


def limits(row: InspectionRow) -> tuple[float, float]:
    return row.lower.value, row.upper.value


def test_a_tongue_is_measured_over_pins_whose_limits_follow_from_the_narrow_width() -> None:
    """Pencil: a pin in a 60° corner takes 2.73205 of its diameter, so 0.9950 to 0.9980 and 0.68301 for 1/4 pins."""
    found = rows(shipped("dovetail-stop"), "tongue")
    assert set(found) == {"height", "over two pins of 1/4\u00a0in"}
    over = found["over two pins of 1/4\u00a0in"]
    assert limits(over) == pytest.approx((1.67801, 1.68101), abs=1e-5)
    assert over.pin is not None and over.pin.value == 0.25
    assert over.instrument is not None and over.instrument.text == "micrometer, second size"


def test_a_slot_is_measured_between_pins_at_the_depth_that_is_aimed_at() -> None:
    """Pencil: 1.0000 and 1.0030 narrow are 0.43474 wider 0.3765 down; less 0.68301 for the pins."""
    found = rows(shipped("dovetail-stop"), "slot")
    between = found["between two pins of 1/4\u00a0in"]
    assert limits(between) == pytest.approx((0.75173, 0.75473), abs=1e-5)
    assert "0.3765" in as_text(between.note)


def test_the_wider_a_v_the_lower_its_pin() -> None:
    """Pencil: a 1/2 pin in a square V tops out 0.60355 over the bottom, which is half the width below the face."""
    over = rows(shipped("v-block-pair"), "V")["from the face to the top of a pin of 1/2\u00a0in"]
    assert limits(over) == pytest.approx((0.60355 - 0.3520, 0.60355 - 0.3480), abs=1e-5)


def test_serrations_are_measured_over_a_pin() -> None:
    """Pencil, 45°: a groove is (pitch less flat)/2 deep; the pin's top is 1.20711 pins over the bottom."""
    for slug, pitch, flats in (("equalising-clamp", 0.1875, (0.012, 0.028)), ("grip-plate", 0.125, (0.007, 0.023))):
        over = next(row for row in shipped(slug).inspection if row.pin and "crests" in as_text(row.what))
        assert over.pin is not None
        expected = [over.pin.value * 1.207107 - (pitch - flat) / 2 for flat in flats]
        assert limits(over) == pytest.approx(expected, abs=1e-5)


def test_a_flat_that_may_come_out_sharp_is_measured_without_a_pin(tmp_path: Path) -> None:
    """The lower limit of the flat is less than nothing: no depth goes with it, and the card is still made."""
    card = changed(tmp_path, ("serration flat: 0.020 ±0.008", "serration flat: 0.020 ±0.025"))
    assert "flat on top" in rows(card, "serrations")
    assert not any(row.pin for row in card.inspection)


@pytest.mark.parametrize(("slug", "feature"), [("vise-stop", "slot"), ("faceplate-fixture", "left slot")])
def test_a_slot_right_through_has_no_depth(slug: str, feature: str) -> None:
    assert "width" in rows(shipped(slug), feature)
    assert "depth" not in rows(shipped(slug), feature)


def test_every_tread_of_a_stair_is_measured() -> None:
    """ISO 2768-1, table 1, class m: over 6 to 30 mm ±0.2, over 30 to 120 mm ±0.3; the stated sizes keep their own."""
    card = shipped("t-nuts-and-step-clamps")
    names = [f"{name} step" for name in ("first", "second", "third", "fourth")]
    assert all(set(rows(card, name)) == {"width", "depth"} for name in names)
    assert limits(rows(card, "first step")["width"]) == pytest.approx((31.7, 32.3))
    assert limits(rows(card, "third step")["depth"]) == pytest.approx((11.8, 12.2))
    assert limits(rows(card, "first step")["depth"]) == pytest.approx((3.95, 4.05))


def test_two_features_of_one_size_are_both_measured() -> None:
    card = shipped("faceplate-fixture")
    assert all("width" in rows(card, f"{side} slot") for side in ("left", "right", "upper", "lower"))


def test_a_broken_edge_has_the_tolerance_of_an_edge() -> None:
    """ISO 2768-1, table 2, class m: an edge over 0.5 to 3 mm ±0.2."""
    edge = rows(shipped("tapping-handle"), "long edges")["long edges"]
    assert limits(edge) == pytest.approx((0.8, 1.2))
