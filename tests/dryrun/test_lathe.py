"""The lathe's shapes dry-run: the demonstrations pass, and mistakes that have spoiled parts are caught."""

import math
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

import pytest

from jobcards import quantity
from jobcards.dryrun import dry_run
from jobcards.dryrun.reading import published
from jobcards.dryrun.results import DryRun
from jobcards.dryrun.revolved import centre_hole, outside_cone, radii_at, rounding
from jobcards.dryrun.solids import SIDES, Solid, cylinder, laid
from jobcards.planning.card import Card, SetUpPlan
from tests.dryrun.mistakes import concerned
from tests.planning.cards import changed_card, shipped
from tests.planning.lathe_cards import INFEED, PLUG, SPINDLE, lathe_card

FACETS = math.sin(2 * math.pi / SIDES) * SIDES / (2 * math.pi)  # area of ninety-six facets over that of their circle


@pytest.mark.parametrize("path", [SPINDLE, PLUG], ids=lambda path: path.stem)
def test_the_demonstrations_pass(path: Path) -> None:
    run = dry_run(lathe_card(path))
    assert run.passed, run.findings()


def test_with_a_dial_that_reads_the_infeed_too(tmp_path: Path) -> None:
    run = dry_run(changed_card(tmp_path, SPINDLE, shop=(INFEED,)))
    assert run.passed, run.findings()


def test_threads_and_knurls_are_said_to_be_left_out() -> None:
    assert dry_run(lathe_card(SPINDLE)).part("spindle").skipped == (
        "spindle-thread-end-stem-thread",
        "spindle-tail-end-grip",
    )


def misread(card: Card, change: Callable[[float], float], *ids: str) -> DryRun:
    """The dry run with some published numbers changed."""
    shown = published(card)
    for number_id in ids:
        shown[number_id] = quantity.show(change(quantity.parse_shown(shown[number_id])), "in", 4)
    return dry_run(concerned(card, ids), shown)


MISTAKES: dict[str, tuple[Path, Callable[[float], float], str]] = {
    "half-diameter dial": (SPINDLE, lambda v: v / 2, "spindle-thread-end-nose-4.dial"),
    "dial doubled in the groove": (SPINDLE, lambda v: v / 2, "spindle-thread-end-thread-relief.dial"),
    "bore dial the wrong way": (SPINDLE, lambda v: -v, "spindle-tail-end-tail-bore-boring-bar-3.dial"),
    "whole angle for half": (SPINDLE, lambda v: 90 - 2 * (90 - v), "spindle-thread-end-seat.scale"),
    "scale from the wrong line": (SPINDLE, lambda v: 90 - v, "spindle-thread-end-seat.scale"),
    "set-over of the whole taper": (PLUG, lambda v: 2 * v, "plug-between-centres-long-taper.set-over"),
    "dial not set anew after the set-over": (PLUG, lambda v: v + 0.0625, "plug-between-centres-long-taper-touch.dial"),
    "groove from the far side": (SPINDLE, lambda v: v + 0.15625, "spindle-thread-end-thread-relief.near"),
    "infeed of the thread straight in": (SPINDLE, lambda v: v * 0.8746, "spindle-thread-end-stem-thread-15.infeed"),
    "thread as deep as the basic form": (SPINDLE, lambda v: v - 0.0023, "spindle-thread-end-stem-thread-15.infeed"),
    "infeed from the thread's full size": (SPINDLE, lambda v: v + 0.0028, "spindle-thread-end-stem-thread-15.infeed"),
    "drill's point forgotten": (PLUG, lambda v: v - 0.06, "stud-stud-tapped.depth"),
    "faced short at the second end": (SPINDLE, lambda v: v - 0.01, "spindle-nose.from"),
    "a blunter tool than the card's": (SPINDLE, lambda v: 4 * v, "shop-turning-tool.nose-radius"),
    "stopped where the diameter ends": (SPINDLE, lambda v: v - 1 / 64, "spindle-tail-end-body.past-end"),
    "a blunter bar than the card's": (SPINDLE, lambda v: 4 * v, "shop-boring-bar.nose-radius"),
    "centre hole too deep": (SPINDLE, lambda v: v + 0.02, "spindle-right-centre.depth"),
}


@pytest.mark.parametrize("name", MISTAKES)
def test_a_mistake_is_caught(name: str) -> None:
    path, change, number_id = MISTAKES[name]
    assert not misread(lathe_card(path), change, number_id).passed


def test_what_a_taper_takes_off_a_bar() -> None:
    """A frustum's volume by the closed form, facets and all."""
    taken = outside_cone(2.0, 0.0, 1.5, 2.0, 1.0)
    cone = math.pi * 2.0 / 12 * (1.5**2 + 1.5 * 1.0 + 1.0)
    assert taken.volume() == pytest.approx(FACETS * (math.pi * 2.0 - cone), rel=1e-9)


def test_what_a_rounded_corner_takes() -> None:
    """Pappus: the spandrel (1 - pi/4) r², its middle 0.2234 r inside the corner."""
    size, radius = 0.125, 0.5
    bar = cylinder(2 * radius, 0.0, 1.0)
    gone = bar.volume() - (bar - rounding(radius, 1.0, size, 1)).volume()
    area = (1 - math.pi / 4) * size**2
    assert gone == pytest.approx(FACETS * 2 * math.pi * area * (radius - size * 0.2234), rel=5e-3)


def test_the_mouth_of_a_centre_hole() -> None:
    """A tip 0.1770 deep with a pilot of 7/64 by 7/64 opens to 3/16 at the face."""
    solid = cylinder(1.0, -1.0, 0.0) - centre_hole(7 / 64, 7 / 64, 0.17703, 0.0, 0.05)
    assert radii_at(solid, -1e-9)[1] == pytest.approx(0.1875 / 2, abs=1e-4)
    assert radii_at(solid, -0.1)[1] == pytest.approx(7 / 128, abs=1e-6)
    assert radii_at(solid, -0.5) == (pytest.approx(0.5), 0.0)


def untouched(path: Path) -> DryRun:
    """The dry run of a demonstration that never touches anew."""
    card = lathe_card(path)
    parts = [replace(part, set_ups=tuple(map(without_touch, part.set_ups))) for part in card.parts]
    return dry_run(replace(card, parts=tuple(parts)), published(card))


def test_a_set_over_without_a_new_touch_is_caught() -> None:
    """The tailstock brings the work 1/16 nearer to the tool: by the old dial the thin end comes 1/8 too thin."""
    assert untouched(PLUG).part("plug").largest_deviation > 0.06


def test_a_touch_on_work_that_lies_over_counts_for_its_thin_end() -> None:
    """A tenth of an inch from the end of a Morse taper: by the size touched there the taper comes 0.005 too thin."""
    card = shipped("die-holder")
    assert dry_run(card).part("arbor").passed
    taken_as_it_is = misread(card, lambda v: v - 0.005, "arbor-taper-taper-touch.dial")
    assert taken_as_it_is.part("arbor").largest_deviation > 0.002


def test_another_tool_without_a_new_touch_is_told() -> None:
    faults = untouched(SPINDLE).part("spindle").faults
    assert faults == (
        "spindle-thread-end-thread-relief: the cross-slide dial was not set with the grooving tool as it stands",
    )


def without_touch(set_up: SetUpPlan) -> SetUpPlan:
    """A set-up whose set-over taper forgets to touch again."""
    cuts = set_up.cuts
    kept = [{name: size for name, size in cut.sizes.items() if name != "touch dial"} for cut in cuts]
    return replace(set_up, cuts=tuple(replace(cut, sizes=sizes) for cut, sizes in zip(cuts, kept, strict=True)))


SUPPORTED = (
    "hold: {in: three-jaw chuck, out: right end}",
    "hold: {in: three-jaw chuck, out: right end, support: centre}",
)
FACED_FIRST = """          - {face: right end, with: facing tool}
          - {cut: right centre, with: No. 3 centre drill}
"""
FACED_AFTER = """          - {cut: right centre, with: No. 3 centre drill}
          - {face: right end, with: facing tool}
"""


def test_a_centre_brought_up_after_its_hole_is_in_nobodys_way(tmp_path: Path) -> None:
    run = dry_run(changed_card(tmp_path, SPINDLE, SUPPORTED))
    assert run.passed, run.findings()
    turned = run.part("spindle").states[-1]
    cut = next(s for s in run.part("spindle").states if s.cut_id == "spindle-thread-end-nose")
    assert "centre" in cut.fixtures
    assert "centre" not in turned.fixtures  # the other end is held by its nose alone


def test_a_tool_that_runs_into_the_centre_is_told(tmp_path: Path) -> None:
    run = dry_run(changed_card(tmp_path, SPINDLE, SUPPORTED, (FACED_FIRST, FACED_AFTER)))
    assert {hit.hits for hit in run.part("spindle").collisions} == {"centre"}
    assert {hit.cut_id for hit in run.part("spindle").collisions} == {"spindle-thread-end-face-right-end"}


NOSE = 1 / 64
HALF_UP = NOSE * (1 - math.sqrt(3) / 2)  # a quarter of a circle, at half of its height: what is left beside the wall


def upright(work: Solid) -> Solid:
    """A turned part with its left end at z = 0 and its axis along z."""
    return laid(work, "y")


def test_the_nose_leaves_its_radius_in_a_shoulder() -> None:
    """The nose of 0.750 ends 2 from the left end at the collar of 1: beside that the work is a little thicker."""
    work = upright(dry_run(lathe_card(SPINDLE)).part("spindle").result)
    assert radii_at(work, 2 + NOSE / 2)[0] == pytest.approx(0.375 + HALF_UP, abs=2e-4)
    assert radii_at(work, 2 + 2 * NOSE)[0] == pytest.approx(0.375, abs=1e-4)


def test_the_bars_nose_leaves_its_radius_round_the_bottom() -> None:
    """The bore of 0.501 is 1.250 deep from the left end."""
    work = upright(dry_run(lathe_card(SPINDLE)).part("spindle").result)
    assert radii_at(work, 1.25 - NOSE / 2)[1] == pytest.approx(0.2505 - HALF_UP, abs=3e-4)
    assert radii_at(work, 1.25 - 2 * NOSE)[1] == pytest.approx(0.2505, abs=3e-4)


def test_an_undercut_clears_the_corner() -> None:
    """The stem's groove begins at its shoulder, so there is no radius beside it."""
    work = upright(dry_run(lathe_card(SPINDLE)).part("spindle").result)
    assert radii_at(work, 3.25 + NOSE / 2)[0] == pytest.approx(0.195, abs=3e-4)
