"""What is done before the work is held, and what a pass, a saw cut or a pair of pieces is called."""

from pathlib import Path

import pytest

from jobcards.definition import load_job
from jobcards.planning import plan_card
from jobcards.planning.card import SetUpPlan
from jobcards.planning.words import as_text
from tests.planning.cards import kit_for
from tests.planning.test_inspection import TESTS, shipped
from tests.planning.test_tilted_head import demo

CUT_THROUGH = [
    (slug, cut)
    for slug in ("tram-bar", "setting-plate")
    for set_up in shipped(slug).set_ups
    for cut in set_up.cuts
    if cut.through and cut.kind in ("strokes", "plunged strokes")
]


def holding_of(set_up: SetUpPlan) -> str:
    """What is said while the work is being held and touched."""
    assert set_up.hold is not None
    return " ".join(map(as_text, (*set_up.hold.instructions, *(touch.instruction for touch in set_up.zero))))


def test_a_line_is_scribed_before_the_work_is_held() -> None:
    lined = [
        set_up
        for slug in ("t-nuts-and-step-clamps", "v-block-pair", "equalising-clamp")
        for set_up in shipped(slug).set_ups
        if any(touch.kind in ("line", "tilted line") for touch in set_up.zero)
    ]
    assert lined
    for set_up in lined:
        first = " ".join(map(as_text, set_up.first))
        assert "scribe" in first and "scribe a line" not in holding_of(set_up).lower()


def test_the_head_is_tilted_before_anything_is_touched() -> None:
    leaning = [set_up for set_up in demo().set_ups if any("tilt" in cut.sizes for cut in set_up.cuts)]
    assert leaning
    for set_up in leaning:
        assert any("leans" in as_text(each) for each in set_up.first)
        assert not any("leans" in as_text(note) for note in set_up.notes)


def test_no_light_pass_is_made_below_the_work() -> None:
    assert CUT_THROUGH
    for _, cut in CUT_THROUGH:
        assert "last pass" not in cut.rates
        deep = cut.rates["pass depth"].value * cut.rates["passes"].value
        assert deep == pytest.approx(cut.sizes["depth"].value)


@pytest.mark.parametrize("slug", ["v-block-pair", "t-nuts-and-step-clamps"])
def test_two_pieces_are_both_and_more_are_counted(slug: str) -> None:
    card = shipped(slug)
    for part in card.parts:
        said = " ".join(as_text(note) for set_up in part.set_ups for note in set_up.notes)
        assert "all 2 pieces" not in said.lower()
        if part.quantity.value == 2:
            assert "oth pieces" in said
        elif part.quantity.value > 2:
            assert f"ll {part.quantity.shown} pieces" in said


def test_a_saw_is_set_with_a_rule() -> None:
    for slug in ("equalising-clamp", "hex-locking-screw"):
        card = shipped(slug)
        finest = {"in": 2, "mm": 1}[card.unit]
        for set_up in (s for s in card.set_ups if s.kind == "saw"):
            for number in (set_up.cuts[0].sizes["length"], card.ledger[f"{set_up.id}-saw.kerf"]):
                assert "/" in number.shown or len(number.shown.partition(".")[2]) <= finest
        for bar in card.cut_list:
            assert len(bar.bar_needed.shown.partition(".")[2]) <= finest


def test_work_at_the_bench_is_held_as_the_definition_says(tmp_path: Path) -> None:
    """Else whoever wrote `hold:` there finds nothing of it on the card."""
    strap = (TESTS / "jobs" / "slotted-strap.yml").read_text(encoding="utf-8")
    held = tmp_path / "strap.yml"
    vise = "machine: bench\n        hold: {in: vise, up: front, against fixed jaw: top}\n"
    held.write_text(strap.replace("machine: bench\n", vise), encoding="utf-8")
    job = load_job(held)
    bench = next(s for s in plan_card(job, kit_for(job)).set_ups if s.kind == "bench")
    assert bench.hold is not None and bench.hold.kind == "hand"
    (said,) = map(as_text, bench.hold.instructions)
    assert "vise" in said and "the front up" in said and "the top toward the fixed jaw" in said
