"""The setting plate by pencil. Sources: arithmetic of the drawing; geometry of the clamps; common practice."""

import pytest

from jobcards.planning.words import as_text
from tests.planning.cards import shipped

CARD = shipped("setting-plate")
PENCIL = {
    # 8 high on the table against a plate of 5
    "plate-hanger-holes-in-the-end.proud": "3.0000",
    # 6-1/2 wide; short straps 1-7/8 long, 1/2 of it on the plate, stand out 1-3/8 on each side, half a heel of 3/4 less
    "plate-hanger-holes-in-the-end.plate-wanted": "8.5000",
    # left end up, back away from you: x counts from the bottom at the left, the screws 2 from either edge
    "plate-hanger-holes-in-the-end-hanger-holes-no-7-drill-a.x": "2.0000",
    "plate-hanger-holes-in-the-end-hanger-holes-no-7-drill-b.x": "4.5000",
    # from the front, half of 5/8 (0.3125) away from you, as the readout shows it
    "plate-hanger-holes-in-the-end-hanger-holes-no-7-drill-a.y": "0.3125",
    # 1 of packing, 5/8 and 1/16
    "plate-stop-holes.heel": "1.6875",
    # flat on the table: 5/8 and 1/16
    "plate-tray-and-ends.heel": "0.6875",
    # two on an edge of 8: a quarter and three quarters; two on an end of 6-1/2: 1.625 and 4.875
    "plate-tray-and-ends-top-clamp-2.at": "6.0000",
    "plate-long-edges-left-end-clamp-1.at": "1.6250",
    # 0.625 - 0.250; 4 - 2 - 0.5 - 0.375
    "requirement-floor-under-the-tray": "0.3750",
    "requirement-metal-between-hanger-screw-and-tray": "1.1250",
}


@pytest.mark.parametrize(("number_id", "expected"), PENCIL.items())
def test_by_pencil(number_id: str, expected: str) -> None:
    assert CARD.ledger[number_id].shown == expected


def test_the_plate_keeps_its_zero_while_the_clamps_go_over_to_the_ends() -> None:
    edges = next(one for one in CARD.set_ups if one.title.text == "long edges")
    assert [touch.kind for touch in edges.zero] == ["kept", "kept", "surface"]
    assert edges.hold is not None
    assert {clamp.over for clamp in edges.hold.clamps} == {"left end", "right end"}
    assert any("Move the clamps one after the other" in as_text(said) for said in edges.hold.instructions)


def test_four_straps_are_all_there_are() -> None:
    assert max(len(one.hold.clamps) for one in CARD.set_ups if one.hold is not None) == 4
