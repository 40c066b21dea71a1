"""Numbers as a person reads them, the shop's own sizes in the card's unit, and what a wrong card comes to."""

from dataclasses import replace

import pytest

from jobcards.dryrun import dry_run
from jobcards.dryrun.faults import CannotFollow
from jobcards.dryrun.reading import Reader, lathe_of, mill_of, published, true_tip
from tests.dryrun.handmade import Bench, words


@pytest.mark.parametrize(
    ("shown", "read"), [("−0.1000", -0.1), ("1-1/4", 1.25), ("5/8", 0.625), ("22°30′", 22.5), ("1.663", 1.663)]
)
def test_what_is_read_is_what_is_shown(shown: str, read: float) -> None:
    bench = Bench()
    number = replace(bench.number(99.0), shown=shown)
    assert Reader({number.id: shown})(number) == read


def test_what_is_not_published_or_no_number_cannot_be_read() -> None:
    number = Bench().number(1.0)
    with pytest.raises(CannotFollow, match="not published"):
        Reader({})(number)
    with pytest.raises(CannotFollow, match="cannot be read"):
        Reader({number.id: "about an inch"})(number)


def test_the_shops_tip_in_a_metric_card() -> None:
    """0.200 in is 5.08 mm; paper 0.0035 in is 0.0889 mm."""
    bench = Bench()
    card = bench.card(bench.part(bench.block(1, 1, 1), bench.bar_blank(1, 1, 1)))
    metric = replace(card, unit="mm")
    assert true_tip(card, words("edge finder"), 0.0) == pytest.approx(0.2)
    assert true_tip(metric, words("edge finder"), 0.0) == pytest.approx(5.08)
    assert true_tip(metric, words("paper"), 0.0) == pytest.approx(0.0889)
    assert true_tip(metric, None, 7.0) == 7.0
    assert mill_of(card, words("lathe")) is None and lathe_of(card, words("lathe")) is not None
    assert lathe_of(card, words("knee mill")) is None and mill_of(card, words("no such machine")) is None


def test_a_cut_in_the_air_is_told() -> None:
    bench = Bench()
    shape = bench.block(2.0, 1.0, 1.0)
    zero = (bench.touch("x", "edge", "left end", -1, -0.1, "edge finder"), bench.on_paper("top"))
    zero += (bench.touch("y", "edge", "back", 1, 0.1, "edge finder"),)
    mill = bench.cutter(diameter=0.5)
    cut = bench.cut("plunge", bench.at(3.0, -0.5), cutter=mill, diameter=0.5, depth=0.25)
    set_up = bench.set_up("mill", bench.vise("top", "back", "left end", -1), zero, cut)
    run = dry_run(bench.card(bench.part(shape, bench.bar_blank(2.0, 1.0, 1.0), set_up)))
    assert run.parts[0].largest_deviation == 0.0
    assert not run.passed
    assert run.findings() == [f"part: {cut.id} takes nothing off: there is no metal where it cuts"]


@pytest.mark.parametrize("kind", ["turn", "knurl"])
def test_a_cut_that_the_machine_does_not_make(kind: str) -> None:
    bench = Bench()
    cut = bench.cut(kind, bench.at(0.0, 0.0), depth=0.1)
    set_up = bench.set_up("mill", bench.vise("top", "back", "left end", -1), (bench.on_paper("top"),), cut)
    run = dry_run(bench.card(bench.part(bench.block(2, 1, 1), bench.bar_blank(2, 1, 1), set_up)))
    assert "is not one for the mill" in run.findings()[0]


def test_hand_work_is_told_and_left_out() -> None:
    bench = Bench()
    filed = bench.cut("hand", feature="corners")
    part = bench.part(bench.block(2, 1, 1), bench.bar_blank(2, 1, 1), bench.set_up("bench", None, (), filed))
    run = dry_run(bench.card(part))
    assert run.passed
    assert run.part("part").skipped == (filed.id,)
    assert run.part("part").states == ()
    with pytest.raises(KeyError):
        run.part("no such part")


def test_every_number_of_the_ledger_is_published() -> None:
    bench = Bench()
    card = bench.card(bench.part(bench.block(1, 1, 1), bench.bar_blank(1, 1, 1)))
    assert set(published(card)) == {number.id for number in bench.ledger}
