"""What the inspection record asks for: reachable sizes, all of them, and over pins what no caliper reaches."""

from functools import cache
from pathlib import Path

import pytest

from jobcards.definition import load_job
from jobcards.planning import Card, plan_card
from jobcards.planning.card import InspectionRow
from jobcards.planning.words import as_text
from tests.planning.cards import CLAMP, changed, kit_for

TESTS = Path(__file__).parents[1]


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
    assert limits(rows(card, "third step")["depth"]) == pytest.approx((11.95, 12.05))
    assert limits(rows(card, "first step")["depth"]) == pytest.approx((3.95, 4.05))


def test_two_features_of_one_size_are_both_measured() -> None:
    card = shipped("faceplate-fixture")
    assert all("width" in rows(card, f"{side} slot") for side in ("left", "right", "upper", "lower"))


def test_a_broken_edge_has_the_tolerance_of_an_edge() -> None:
    """ISO 2768-1, table 2, class m: an edge over 0.5 to 3 mm ±0.2."""
    edge = rows(shipped("tapping-handle"), "long edges")["chamfer"]
    assert limits(edge) == pytest.approx((0.8, 1.2))


def test_a_height_gauge_measures_blocks_and_no_round_work() -> None:
    """A diameter is spanned; a small chamfer is read with a caliper, not with a height gauge."""
    for slug in ("hex-locking-screw", "drill-bushings", "screw-jack"):
        for row in shipped(slug).inspection:
            assert row.instrument is None or row.instrument.text != "height gauge and plate", as_text(row.what)
    for row in shipped("vise-stop").inspection:
        if "corner" in as_text(row.what) or "chamfer" in as_text(row.what):
            assert row.instrument is not None and row.instrument.text != "height gauge and plate"


def test_every_thread_is_tried_whether_it_goes_through_or_not() -> None:
    card = shipped("tapping-handle")
    threads = [feature for part in card.parts for feature in part.shape.features if feature.thread]
    assert threads and len(card.tried) == len(threads)
    for feature, row in zip(threads, card.tried, strict=True):
        assert feature.thread in as_text(row.what)
        if feature.through:
            assert "far side" in as_text(row.how)
    gathered = " ".join(as_text(item) for group in card.gather for item in group.items)
    assert all(feature.thread in gathered for feature in threads)


def test_a_place_is_measured_from_the_edge_that_the_drawing_counts_from(tmp_path: Path) -> None:
    """A screw at 1/2 ±0.005 from the right end of a strap 4 long is not measured as 3-1/2 from the left."""
    strap = (TESTS / "jobs" / "slotted-strap.yml").read_text(encoding="utf-8")
    far = tmp_path / "strap.yml"
    far.write_text(strap.replace("{x: screw from the heel", "{x: length - screw from the heel"), encoding="utf-8")
    for path, edge in ((TESTS / "jobs" / "slotted-strap.yml", "left end"), (far, "right end")):
        job = load_job(path)
        card = plan_card(job, kit_for(job))
        found = rows(card, "jacking screw")
        assert set(found) == {f"middle from the {edge}"}  # half the width has no limits of its own
        assert limits(found[f"middle from the {edge}"]) == pytest.approx((0.495, 0.505))
        assert limits(rows(card, "stud slot")["beginning from the left end"]) == pytest.approx((1.74, 1.76))


def test_a_diameter_under_a_knurl_is_read_before_the_knurl() -> None:
    """What is knurled over has no diameter left to read; where the knurl leaves some of it, it is read there."""
    told = []
    for slug in ("screw-jack", "tapping-handle", "die-holder"):
        for part in shipped(slug).parts:
            for knurl in (f for f in part.shape.features if f.shape == "knurl"):
                ends = knurl.sizes["from"].value, knurl.sizes["to"].value
                for feature in (f for f in part.shape.features if f.shape == "turned diameter"):
                    low, high = feature.sizes["from"].value, feature.sizes["to"].value
                    row = rows(shipped(slug), feature.name).get("diameter")
                    if row is not None and ends[0] < high and ends[1] > low:
                        covered = ends[0] <= low and ends[1] >= high
                        assert as_text(row.when).startswith("Read it before" if covered else "Read it beside")
                        told.append(feature.name)
    assert told
