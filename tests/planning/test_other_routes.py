"""Saw, shaper, furnace, grinder, assembly and measuring by pencil; metal left for grinding; alternatives.

Sources: geometry and arithmetic of the drawing's sizes; shaper speed, feed and soak: common practice, no source;
hardening range of O1, 1450 to 1500 °F: value from memory; light straw at 458 °F: a steel-working text of the 1920s;
depth of case: ASM Handbook volume 4, 0.0250 in for the root of an hour at 1700 °F.
"""

import math
from pathlib import Path

import pytest

from jobcards.planning.words import as_text
from tests.planning.jaws import changed_jaw, jaw

CARD = jaw()

PENCIL = {
    # (0.125 - 0.015 - 0.005) / (2 tan 45°); 0.5 to 2.5 every 0.125
    "jaw-teeth.depth": "0.0525",
    "jaw-teeth.count": "17",
    "jaw-teeth-teeth-shaper-v-tool-1.x": "0.5000",
    "jaw-teeth-teeth-shaper-v-tool-17.x": "2.5000",
    # 3/4 with 1/2 before and 1/4 past it; 12 * 30 * 1.5 / (1.5 * 2.5) = 144, the step below is 118
    "jaw-teeth-teeth-shaper-v-tool.stroke": "1.5000",
    "jaw-teeth-teeth-shaper-v-tool.wanted": "144",
    "jaw-teeth-teeth-shaper-v-tool.strokes": "118",
    # half of 90°; 0.0525 / cos 45° = 0.07425
    "jaw-teeth-teeth-shaper-v-tool.head": "45",
    "jaw-teeth-teeth-shaper-v-tool.flank": "0.0742",
    # a tool 1/8 wide with its right side at the wall, 3/16 from the end; and at the end itself
    "jaw-ledge-ledge-shaper-roughing-tool-wall.left-side": "0.0630",
    "jaw-ledge-ledge-shaper-roughing-tool-edge.left-side": "−0.1250",
    # (7/8 - 3/4) / 2 less 0.010; 3/4 and twice 0.010
    "jaw-square-the-blank-front.mill-off": "0.0525",
    "jaw-square-the-blank-back.leave-2": "0.7700",
    # 0.010 still on the front, and a paper of 0.0035
    "jaw-screw-hole.z-preset": "0.0135",
    # 30 minutes an inch of 3/4
    "jaw-harden-harden.heat": "1475",
    "jaw-harden-harden.soak": "23",
    "jaw-harden-temper.heat": "458",
    # 0.010 at 0.0005 a pass
    "jaw-grind-the-faces-back.passes": "20",
}


@pytest.mark.parametrize(("number_id", "expected"), PENCIL.items())
def test_by_pencil(number_id: str, expected: str) -> None:
    assert CARD.ledger[number_id].shown == expected


def test_the_reader_is_told_what_is_left_for_grinding() -> None:
    front = next(cut for cut in CARD.set_ups[1].cuts if cut.face == "front")
    assert "This leaves 0.010\u00a0in on the front for grinding." in [as_text(step) for step in front.steps]


def test_what_must_not_be_left_and_what_is_looked_for() -> None:
    heat = next(set_up for set_up in CARD.set_ups if set_up.kind == "heat")
    assert [cut.kind for cut in heat.cuts] == ["harden", "temper"]
    assert "magnet" in as_text(heat.cuts[0].check)
    keys = {caution.key for caution in CARD.cautions if heat.id in caution.set_ups}
    assert {"hot metal", "quench", "unknown steel", "hard steel"} <= keys


def test_hardened_and_not_tempered_is_to_go_straight_on(tmp_path: Path) -> None:
    card = changed_jaw(tmp_path, ("heat: {harden: {}, temper: {to: light straw}}", "heat: {harden: {}}"))
    heat = next(set_up for set_up in card.set_ups if set_up.kind == "heat")
    assert any("straight on to tempering" in as_text(said) for said in heat.after)


@pytest.mark.parametrize(
    ("to", "heat", "colour"), [("460", "460", "light straw"), ("blue", "572", "blue"), ("350", "350", "")]
)
def test_tempered_to_a_heat_or_a_colour(tmp_path: Path, to: str, heat: str, colour: str) -> None:
    card = changed_jaw(tmp_path, ("{to: light straw}", f"{{to: {to}}}"))
    cut = next(cut for set_up in card.set_ups for cut in set_up.cuts if cut.kind == "temper")
    assert cut.sizes["temperature"].shown == heat
    told = " ".join(as_text(step) for step in cut.steps)
    assert (f"when {colour} comes" in told) if colour else ("comes" not in told)


def test_case_hardened_deeper_by_what_is_ground_off(tmp_path: Path) -> None:
    """(0.020 + 0.010) / 0.0250 squared: 1.44 hours at 1700 °F."""
    card = changed_jaw(
        tmp_path,
        ("material: tool steel, oil hardening", "material: low-carbon steel, cold drawn"),
        ("{harden: {}, temper", "{case harden: {depth: 0.020, at: 1700}, temper"),
    )
    cut = next(cut for set_up in card.set_ups for cut in set_up.cuts if cut.kind == "case harden")
    assert cut.sizes["case"].value == pytest.approx(0.030)
    assert cut.sizes["time at heat"].value == pytest.approx(1.44, abs=0.01)
    assert any("total depth of case" in as_text(step) for step in cut.steps)


def test_without_a_word_the_table_says_what_to_leave(tmp_path: Path) -> None:
    """3 in long: 0.008 on a face by the table of allowances. Common practice."""
    card = changed_jaw(tmp_path, ("leave: 0.010, ", ""))
    assert card.ledger["jaw-front.for-grinding"].value == pytest.approx(0.008)


def test_assembly_and_measuring_tell_sizes_and_limits() -> None:
    together = CARD.set_ups[-1]
    assert [cut.kind for cut in together.cuts] == ["assemble", "measure"]
    assert as_text(together.cuts[0].steps[0]) == "Push the screw through the 0.2681\u00a0in hole."
    assert together.cuts[1].sizes["aim"].value == pytest.approx(0.75 - (17 / 64 + 0.0025) / 2)
    measured = next(set_up for set_up in CARD.set_ups if set_up.kind == "inspect").cuts[0]
    assert [measured.sizes[name].value for name in ("least", "aim", "most")] == pytest.approx([0.1825, 0.1875, 0.1925])


def test_a_shape_in_words_is_said_not_to_be_dry_run() -> None:
    stamp = next(cut for set_up in CARD.set_ups for cut in set_up.cuts if cut.feature == "stamp")
    assert stamp.kind == "hand" and as_text(stamp.check)
    assert "It is not drawn" in " ".join(as_text(step) for step in stamp.steps)


def test_the_alternative_has_numbers_of_its_own_and_stands_for_one_set_up() -> None:
    (way,) = CARD.parts[0].alternatives
    assert (way.name.text, way.replaces) == ("with the mill", ("jaw-teeth",))
    (mill,) = way.set_ups
    assert mill.number.shown == "4" and mill.id.startswith("jaw-with-the-mill-")
    assert {number.id for number in CARD.ledger if number.id.startswith(mill.id)}
    assert way.route == tuple(mill.id if s.id == "jaw-teeth" else s.id for s in CARD.set_ups)
    # 12 * 45 / (pi * 1/2) = 344 turns asked for; the step below is 325
    assert CARD.ledger[f"{mill.id}-teeth-small-v-cutter.rpm"].shown == "325"
    assert math.isclose(CARD.ledger[f"{mill.id}-teeth-small-v-cutter.wanted"].value, 12 * 45 / math.pi / 0.5)
