"""What a job names and the shop has not got is a warning with the nearest, not a problem; in either unit."""

from pathlib import Path

import pytest

from jobcards.definition import ProblemsFound, load_family, load_job, load_shop, shop_paths
from jobcards.dryrun import dry_run
from jobcards.planning import Card, plan_card
from jobcards.planning.words import as_text
from tests.planning.cards import CLAMP, changed, clamp, kit_for

ROOT = Path(__file__).resolve().parents[2]
METRIC_SHOP = next(path for path in shop_paths() if path.stem == "metric-workshop")
GUIDE = ROOT / "tests" / "jobs" / "metric-guide.yml"


def warnings(card: Card) -> list[str]:
    return [as_text(line).replace("\u00a0", " ") for line in card.warnings]


def test_a_cutter_named_by_size_and_kind_is_warned_of_with_the_nearest_that_would_do(tmp_path: Path) -> None:
    """A rough cut in a 3/4 bore: what does is 5/8 or less."""
    card = changed(tmp_path, ("with: 11/16 end mill", "with: 5/8 end mill"))
    told = [line for line in warnings(card) if "5/8 end mill" in line]
    assert len(told) == 1, "once for the card, though two set-ups name it"
    assert told[0].startswith("pin seat: the shop has no 5/8 end mill.")
    assert card.ledger["shop-5-8-end-mill.diameter"].shown == "5/8"
    assert card.ledger["shop-5-8-end-mill.diameter"].source == "the job's definition; the shop has none"
    assert dry_run(card).passed


def test_the_nearest_drill_that_would_do_is_within_the_limits_of_the_hole(tmp_path: Path) -> None:
    """Hole 17/64 +0.006/-0.001 is 0.2646 to 0.2716: an H drill of 0.266 will do, and so will 17/64."""
    card = changed(tmp_path, ("with: 17/64 drill", "with: H drill"))
    told = next(line for line in warnings(card) if "H drill" in line)
    assert "The nearest that would do is the 17/64 drill, 17/64 in across" in told
    assert card.ledger["shop-h-drill.diameter"].value == pytest.approx(0.266)


def test_a_kind_that_the_shop_has_nothing_of(tmp_path: Path) -> None:
    shop = (("7/16 counterbore: {kind: counterbore", "7/16 plug: {kind: spot drill"),)
    card = changed(tmp_path, ("title: Eq", "title: Eq"), shop=shop)
    told = next(line for line in warnings(card) if "7/16 counterbore" in line)
    assert told.endswith("It has nothing of that kind: borrow or buy one.")


def test_a_name_that_tells_nothing_is_a_problem(tmp_path: Path) -> None:
    with pytest.raises(ProblemsFound, match="“boring hed” is not a cutter of the shop; write “boring head”"):
        changed(tmp_path, ("with: boring head", "with: boring hed"))


def test_a_spindle_too_fast_is_warned_of(tmp_path: Path) -> None:
    """1 in at 80 ft/min asks for 12 x 80 / (pi x 1) = 306 rpm, and the slowest step is made 500."""
    steps = ("spindle steps: [80, 135, 210, 325, 660, 1115, 1750, 2720]", "spindle steps: [500, 1000, 2720]")
    card = changed(tmp_path, ("title: Eq", "title: Eq"), shop=(steps,))
    assert any("its slowest step, 500 rpm, is faster than the" in line for line in warnings(card))
    assert not any("slowest step" in line for line in warnings(clamp()))


def test_parallels_that_are_wanted_are_told_with_the_nearest_there_are(tmp_path: Path) -> None:
    """Without the pairs from 5/8 to 1-1/2 the set-ups that go right through have no room below."""
    text = (ROOT / "jobcards/shops/evening-workshop.yml").read_text(encoding="utf-8")
    pairs = [line for line in text.splitlines() if line.startswith("      - {height: ")]
    middle = tuple((f"{line}\n", "") for line in pairs[1:-1])
    card = changed(tmp_path, ("title: Eq", "title: Eq"), shop=middle)
    told = [line for line in warnings(card) if "no pair of the shop's parallels" in line]
    assert told and all("high; the nearest there is 1/2 in." in line or "1-5/8 in." in line for line in told)
    assert dry_run(card).passed


def test_blocks_of_a_set_that_nobody_knows(tmp_path: Path) -> None:
    card = changed(tmp_path, ("title: Eq", "title: Eq"), shop=(("blocks: inch 81", "blocks: grandfather's"),))
    told = next(line for line in warnings(card) if "gauge blocks" in line)
    assert "known as grandfather's. The stack is of the set inch 81." in told
    assert dry_run(card).passed


def test_an_inch_job_in_a_metric_shop_has_converted_readouts() -> None:
    """Tip 6 mm = 0.2362 in, half of it 0.1181; the readout's step is 0.01 mm; metric blocks keep their own unit."""
    card = plan_card(load_job(CLAMP), load_shop(METRIC_SHOP))
    assert dry_run(card).passed
    assert card.ledger["shop-edge-finder.tip"].unit == "in"
    assert card.ledger["shop-edge-finder.tip"].value == pytest.approx(6 / 25.4)
    edge = next(n for n in card.ledger if n.id == "rocker-pin-seat.x-preset")
    assert abs(abs(edge.published) - 3 / 25.4) <= 0.5 * 0.01 / 25.4 + 5e-5
    blocks = [number for number in card.ledger if ".block-" in number.id]
    assert blocks and {number.unit for number in blocks} == {"mm"}


@pytest.mark.parametrize("shop", shop_paths(), ids=lambda path: path.stem)
def test_a_metric_job_can_be_made_in_any_shop(shop: Path) -> None:
    for job in load_family(GUIDE):
        card = plan_card(job, load_shop(shop))
        assert dry_run(card).passed
        assert not {n.unit for n in card.ledger} & {"in", "ft/min", "in/min", "in/rev", "lb", "in³"}


def test_a_metric_card_by_pencil() -> None:
    """Sizes, ISO fits and presets in millimetres.

    16 H7 is +0.018/0 and 16 g6 is -0.006/-0.017 (ISO 286-2, as in tests/outside/iso_286_2.csv); so the clearance is
    0.006 to 0.035. Tip 6, so an edge is set to 3; the middle of 60 to 33. Through 20: 1.5 more. 6.6 at 24 m/min asks
    for 1000 x 24 / (pi x 6.6) = 1157 rpm, and 880 is the step below.
    """
    job = load_job(GUIDE)
    shop = kit_for(job)
    assert shop.units == "mm"
    numbers = plan_card(job, shop).ledger
    assert (numbers["size-guide-bore.lower"].value, numbers["size-guide-bore.upper"].value) == (16, 16.018)
    assert (numbers["size-pin-shank.lower"].value, numbers["size-pin-shank.upper"].value) == (15.983, 15.994)
    clearance = next(r for r in plan_card(job, shop).requirements)
    assert clearance.worst_low.value == pytest.approx(0.006)
    assert clearance.worst_high.value == pytest.approx(0.035)
    presets = {
        n.id.rpartition(".")[2]: abs(n.published)
        for n in numbers
        if n.id.startswith("block-holes.") and "preset" in n.id
    }
    assert sorted(presets.values())[-2:] == [3, 33]
    assert numbers["block-holes-guide-boring-head.depth"].value == pytest.approx(21.5)
    assert numbers["block-holes-screw-holes-6-6-drill.rpm"].value == 880


def test_the_same_words_mean_another_size_in_a_shop_of_the_other_unit(tmp_path: Path) -> None:
    """An inch shop's “1 end mill” is no 1 mm end mill, and a job in mm that names one is not given it."""
    text = GUIDE.read_text(encoding="utf-8").replace("12 end mill", "1 end mill")
    path = tmp_path / GUIDE.name
    path.write_text(text, encoding="utf-8")
    evening = next(path for path in shop_paths() if path.stem == "evening-workshop")
    with pytest.raises(ProblemsFound, match=r"the cut is 21\.500 deep and the flutes are 1\.999 long"):
        plan_card(load_job(path), load_shop(evening))
