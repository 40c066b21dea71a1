"""What cannot be made as written is said where it stands, in the trade's words, with what to write instead."""

from pathlib import Path

import pytest

from jobcards.definition import ProblemsFound
from tests.planning.cards import changed


@pytest.mark.parametrize(
    ("swap", "shop", "words"),
    [
        (
            ("with: 11/16 end mill", "with: 11/16 endmill"),
            (),
            ("“11/16 endmill” is not a cutter of the shop", "write “11/16 end mill”"),
        ),
        (("machine: lathe", "machine: lath"), (), ("“lath” is not a machine of the shop", "write “lathe”")),
        (("in: collet", "in: colet"), (), ("“colet” is not in the shop's holding list", "write “collet”")),
        (
            ("with: 17/64 drill", "with: 7/16 counterbore"),
            (),
            ("cuts 7/16, and “screw holes”", "take a cutter of that size"),
        ),
        (
            ("up: back, against fixed jaw: right end", "up: front, against fixed jaw: right end"),
            (),
            ("“back recess” is cut from the back", "hold the part with its back up"),
        ),
        (
            ("serration tilt: 45°", "serration tilt: 50°"),
            (),
            ("the head tilts 45° and the grooves need 50°", "V-cutter"),
        ),
        (("daylight: 3/32 ±", "daylight: 0.8 ±"), (), ("misses the work", "look at the sizes of “seat”")),
        (("relief angle: 3° ±0.25°", "relief angle: 30° ±0.25°"), (), ("jaw", "protractor")),
        (("pin length + 1-3/4", "pin length + 1/2"), (), ("left in the chuck", "longer blank")),
        (
            ("zero: [{edge: bottom}, {middle from: left end}]", "zero: [{middle from: left end}]"),
            (),
            ("no zero is found along x", "add a touch"),
        ),
        (
            ("zero: [{edge: top}, {middle from: right end}]", "zero: [{edge: top}, {middle from: right end}]"),
            (("x: 22", "x: 2"),),
            ("the set-up wants", "hold the work the other way"),
        ),
        (
            ("title: Eq", "title: Eq"),
            (("centre cutting: true", "centre cutting: false"),),
            ("does not cut at its centre", "centre-cutting"),
        ),
        (
            ("title: Eq", "title: Eq"),
            (("opening: 6", "opening: 4"),),
            ("the vise opens 4 and the work is 4.5000 across", "hold it by other faces"),
        ),
        (
            ("zero: [{line: first serration, from: left end}]", "zero: [{edge: back}]"),
            (),
            ("no zero is found along x", "add a touch"),
        ),
        (("title: Eq", "title: Eq"), (("reach: 5/8", "reach: 1/4"),), ("the parting tool reaches 1/4", "longer blade")),
        (
            ("title: Eq", "title: Eq"),
            (("flute length: 2-5/8", "flute length: 1"),),
            ("the flutes are 1 long", "longer cutter"),
        ),
    ],
)
def test_problem(
    tmp_path: Path, swap: tuple[str, str], shop: tuple[tuple[str, str], ...], words: tuple[str, str]
) -> None:
    with pytest.raises(ProblemsFound) as found:
        changed(tmp_path, swap, shop=shop)
    told = [str(problem) for problem in found.value.problems]
    assert any(all(word in line for word in words) for line in told), told
    assert all(line.count(":") >= 3 for line in told)


def test_a_requirement_that_fails_is_a_warning_on_the_card(tmp_path: Path) -> None:
    card = changed(tmp_path, ("flange thickness: 0.125 +0/-0.002", "flange thickness: 0.129 +0/-0.002"))
    assert not next(r for r in card.requirements if r.name.text == "flange below the face").holds
    assert card.warnings


def test_another_revision_has_another_fingerprint(tmp_path: Path) -> None:
    from tests.planning.cards import clamp

    assert changed(tmp_path, ("serration pitch: 3/16", "serration pitch: 1/8")).fingerprint != clamp().fingerprint


def test_a_requirement_below_nothing_is_a_fit_that_presses(tmp_path: Path) -> None:
    """Seat bore less 1: some 0.25 under; the card tells it, and the sum of its limits is no fault."""
    card = changed(
        tmp_path, ("value: seat bore - pin shank\n    at least: 0.001", "value: seat bore - 1\n    at least: -1")
    )
    clearance = next(r for r in card.requirements if r.name.text == "running clearance")
    assert clearance.likely_low.value <= clearance.value.value <= clearance.likely_high.value < 0


@pytest.mark.parametrize(
    ("zero", "words"),
    [
        ("[{edge: bottom}, {middle from: left end}, {edge: right end}]", ("Y is set twice", "leave one")),
        ("[{edge: bottom}, {middle from: left end}, {edge: back}]", ("the back lies level here", "stands upright")),
    ],
)
def test_a_touch_that_cannot_be(tmp_path: Path, zero: str, words: tuple[str, str]) -> None:
    with pytest.raises(ProblemsFound) as found:
        changed(tmp_path, ("zero: [{edge: bottom}, {middle from: left end}]", f"zero: {zero}"))
    assert any(all(word in str(problem) for word in words) for problem in found.value.problems)


def test_a_tool_of_the_wrong_kind_at_the_lathe(tmp_path: Path) -> None:
    with pytest.raises(ProblemsFound) as found:
        changed(tmp_path, ("with: parting tool", "with: turning tool"))
    assert any("does not part off" in str(problem) for problem in found.value.problems)
