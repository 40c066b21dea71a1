"""Work under clamps by the published numbers: it comes out as drawn, and what spoils parts and cutters is caught."""

from dataclasses import replace
from pathlib import Path

import pytest

from jobcards import quantity
from jobcards.dryrun import dry_run
from jobcards.dryrun.reading import published
from jobcards.planning.card import Card, SetUpPlan
from jobcards.planning.mill import set_up as mill
from tests.planning.cards import changed_card
from tests.planning.test_clamped import DEMO, HIGH, LEDGES, MOVED, demo


def set_up(title: str) -> SetUpPlan:
    """A set-up of the demo."""
    return next(one for one in demo().set_ups if one.title.text == title)


def findings(shown: dict[str, str], part_id: str) -> list[str]:
    """What is found when one part is made with some numbers read wrongly."""
    parts = tuple(part for part in demo().parts if part_id.startswith(part.id))
    return dry_run(replace(demo(), parts=parts), shown).findings()


def unchecked(folder: Path, monkeypatch: pytest.MonkeyPatch, *swaps: tuple[str, str]) -> Card:
    """The demo with words swapped, planned without looking whether cutters clear the clamps."""
    monkeypatch.setattr(mill, "check_clamp_room", lambda *_: None)
    return changed_card(folder, DEMO, *swaps)


def test_the_demo_comes_out_as_drawn() -> None:
    run = dry_run(demo())
    assert run.findings() == []
    assert run.passed


def test_moved_clamps_leave_the_work_where_it_lies() -> None:
    run = dry_run(demo()).parts[0]
    before = run.start_of("plate-tray-and-left-ledge").placement
    after = run.start_of("plate-right-ledge").placement
    assert (before.matrix == after.matrix).all()
    assert run.start_of("plate-right-ledge").fixtures != run.start_of("plate-tray-and-left-ledge").fixtures


def test_a_clamp_at_the_plate_beside_the_cut_is_met(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    found = dry_run(unchecked(tmp_path, monkeypatch, *HIGH)).findings()
    assert any("the 3/8 end mill meets the clamp over the top" in words for words in found)


def test_a_clamp_in_the_cutters_way_is_met(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    card = unchecked(tmp_path, monkeypatch, (MOVED, f"{{over: right end}}, {MOVED}"))
    hits = {(hit.cutter, hit.hits.split(",")[0]) for hit in dry_run(card).parts[0].collisions}
    assert ("1 end mill", "clamp over the right end") in hits


def test_a_tip_that_comes_down_on_a_clamp_is_met(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    card = unchecked(tmp_path, monkeypatch, (LEDGES, "{over: top, at: 4}, {over: bottom, at: 4}"))
    assert any("edge finder" in found and "over the bottom" in found for found in dry_run(card).findings())


@pytest.mark.parametrize(
    ("number", "value", "found"),
    [
        # moved along its edge onto the tray's way out: the clamp's place is read as 1/2
        ("plate-tray-and-left-ledge.top-clamp-1", 0.5, "the 1 end mill meets the clamp over the top"),
        # a heel lower than the work
        ("plate-tray-and-left-ledge.heel", 0.75, "slopes down to its heel"),
        # a clamp beside the work
        ("plate-bolt-holes.top-clamp-1", 8.4, "bears on air"),
        # the same at the angle plate: up to where the saddle and the screw are cut, and out of the plate
        ("post-right-end.top-clamp-1", 5.6, "the 3/8 end mill meets the clamp over the top"),
        ("post-right-end.bottom-clamp-2", 5.6, "presses where nothing is under the work"),
        # a plate as narrow as the post's heels stand apart
        ("shop-angle-plate.plate-width", 6.0, "the heel of the clamp over the top stands on air"),
        # a plate as high as the work meets the saddle's cutter and the tip at the back
        ("shop-angle-plate.plate-height", 6.0, "the 3/8 end mill meets the angle plate"),
        ("shop-angle-plate.plate-height", 6.2, "the edge finder meets the angle plate"),
        # shafts in V-blocks: the clamp over the keyway, over the hole, beyond the end; a low heel
        ("shaft-shaft-from-above.clamp-1", 7.0, "the 1/4 end mill meets the clamp"),
        ("shaft-shaft-from-above.clamp-2", 9.0, "the 17/64 drill meets the clamp"),
        ("shaft-shaft-from-above.clamp-1", -2.0, "over V-block 1 bears on air"),
        ("shaft-shaft-from-above.heel", 2.0, "slope down to their heels"),
        # packing half as broad
        ("shop-packing-1.thickness", 0.25, "presses where nothing is under the work"),
    ],
)
def test_what_is_read_wrongly_is_found(number: str, value: float, found: str) -> None:
    shown = published(demo())
    shown[number] = quantity.show(value, "in", 4)
    part = {
        "shop-angle-plate.plate-height": "post",
        "shop-angle-plate.plate-width": "post",
        "shop-packing-1.thickness": "plate",
        "shop-keys.key-length": "cover",
    }.get(number, number)
    told = findings(shown, part)
    assert any(found in words for words in told), told


def test_keys_as_high_and_as_long_as_the_work_are_met_by_the_tip() -> None:
    shown = {**published(demo()), "shop-keys.key-length": "8.0000", "shop-keys.key-height": "1.0000"}
    assert any("the edge finder meets the key" in words for words in findings(shown, "cover"))


@pytest.mark.parametrize("title", ["tray and left ledge", "bolt holes", "right end", "shaft from above"])
def test_a_wrong_sign_at_the_touch_is_found(title: str) -> None:
    touch = next(one for one in set_up(title).zero if one.axis == "x")
    shown = published(demo())
    shown[touch.preset.id] = quantity.show(-touch.preset.value, "in", 4)
    assert any("off the drawing" in words or "no metal" in words for words in findings(shown, set_up(title).part))


def test_a_wrong_depth_is_found() -> None:
    cut = set_up("right ledge").cuts[0]
    shown = published(demo())
    shown[cut.sizes["depth"].id] = quantity.show(0.27, "in", 4)
    assert not dry_run(demo(), shown).passed


def test_work_turned_over_keeps_no_zero() -> None:
    moved = set_up("right ledge")
    assert moved.hold is not None
    turned = replace(moved, hold=replace(moved.hold, fixed_jaw="bottom"))
    part = demo().parts[0]
    ups = tuple(turned if one is moved else one for one in part.set_ups)
    card = replace(demo(), parts=(replace(part, set_ups=ups),))
    assert any("does not lie as before" in found for found in dry_run(card).findings())
