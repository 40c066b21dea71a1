"""A card can be made for any shop file: what is missing is warned of, and the numbers still agree with the drawing."""

from pathlib import Path

import pytest

from jobcards.definition import ProblemsFound, job_paths, load_family, load_job, load_shop
from jobcards.definition.shop import Shop
from jobcards.dryrun import dry_run
from jobcards.planning import Card, plan_card
from jobcards.planning.words import as_text
from tests.planning.cards import SHOP, changed

POOR = """
title: The poor shop
scenario: Invented; a bench, an old vise and a file.
units: {units}
machines:
  bench: {{kind: bench}}
holding:
  old vise: {{kind: vise, jaw width: {width}, jaw depth: {depth}, jaw thickness: {jaw}, opening: {opening}}}
finders:
  paper: {{kind: paper, thickness: {paper}}}
cutters:
  file: {{kind: file}}
instruments:
  rule: {{kind: [outside, inside, depth, position], range: {{from: 0, to: {rule}}}, uncertainty: {step}}}
"""
INCH = {"width": "4", "depth": "1-1/4", "jaw": "1/2", "opening": "3-1/2", "paper": "0.0035", "rule": "6"}
METRIC = {"width": "100", "depth": "32", "jaw": "13", "opening": "90", "paper": "0.09", "rule": "150"}

# A lathe is lent in the units of the shop; an inch thread by single point then asks for gears that it has not got.
NO_GEARS = "the lathe's gears cut no inch threads"


def poor_shop(folder: Path, units: str) -> Shop:
    """Next to nothing is there."""
    sizes = INCH | {"step": "1/64"} if units == "inch" else METRIC | {"step": "0.5"}
    path = folder / "poor-shop.yml"
    path.write_text(POOR.format(units=units, **sizes), encoding="utf-8")
    return load_shop(path)


def warnings(card: Card) -> list[str]:
    return [as_text(line).replace("\u00a0", " ") for line in card.warnings]


@pytest.mark.parametrize("units", ["inch", "mm"])
@pytest.mark.parametrize("path", job_paths(), ids=lambda path: path.stem)
def test_every_shipped_job_has_a_card_in_a_shop_that_has_next_to_nothing(
    path: Path, units: str, tmp_path: Path
) -> None:
    shop = poor_shop(tmp_path, units)
    for job in load_family(path):
        try:
            card = plan_card(job, shop)
        except ProblemsFound as found:
            assert units == "mm" and job.units == "inch"
            assert all(NO_GEARS in problem.wrong for problem in found.problems), found
            continue
        told = warnings(card)
        assert any("the shop has no " in line and "The card is worked out as if it had" in line for line in told)
        assert len(told) == len(set(told)), "each is told once"


@pytest.mark.parametrize(
    ("slug", "units"), [("vise-stop", "inch"), ("tram-bar", "inch"), ("hex-locking-screw", "mm"), ("vise-stop", "mm")]
)
def test_and_its_numbers_agree_with_the_drawing(slug: str, units: str, tmp_path: Path) -> None:
    """What is lent comes over in the shop's own unit: a slip there would show as a part off its drawing."""
    path = next(path for path in job_paths() if path.stem == slug)
    assert dry_run(plan_card(load_job(path), poor_shop(tmp_path, units))).passed


def test_what_there_is_of_the_kind_is_named(tmp_path: Path) -> None:
    """The old vise is the nearest to the vise that the job asks for."""
    path = next(path for path in job_paths() if path.stem == "vise-stop")
    told = warnings(plan_card(load_job(path), poor_shop(tmp_path, "inch")))
    vise = next(line for line in told if "the shop has no vise." in line)
    assert vise.endswith("What it has of that kind is the old vise: name it in the definition to have its card.")
    tap = next(line for line in told if "the shop has no 1/4-20 tap." in line)
    assert tap.endswith("It has nothing of that kind: borrow or buy one.")


@pytest.mark.parametrize(
    ("there", "end"),
    [
        ("1/4-20 gun tap: {kind: tap, diameter: 1/4, thread: 1/4-20, flute length: 1}", "would do is the 1/4-20 gun"),
        ("1/4-28 tap: {kind: tap, diameter: 1/4, thread: 1/4-28, flute length: 1}", "nearest is the 1/4-28 tap"),
    ],
)
def test_only_a_tap_of_the_same_thread_would_do(there: str, end: str, tmp_path: Path) -> None:
    shop = tmp_path / "poor-shop.yml"
    poor_shop(tmp_path, "inch")
    shop.write_text(shop.read_text(encoding="utf-8").replace("cutters:\n", f"cutters:\n  {there}\n"), encoding="utf-8")
    path = next(path for path in job_paths() if path.stem == "vise-stop")
    told = warnings(plan_card(load_job(path), load_shop(shop)))
    assert end in next(line for line in told if "the shop has no 1/4-20 tap." in line)


def test_a_tap_named_by_its_thread_need_not_be_there(tmp_path: Path) -> None:
    """A usual one is taken: 3.3 diameters of flutes, by the table of usual cutters."""
    path = next(path for path in job_paths() if path.stem == "vise-stop")
    text = path.read_text(encoding="utf-8").replace("1/4-20", "5/16-24")
    job = tmp_path / path.name
    job.write_text(text, encoding="utf-8")
    card = plan_card(load_job(job), load_shop(SHOP))
    assert card.ledger["shop-5-16-24-tap.flute-length"].value == pytest.approx(3.3 * 5 / 16, abs=1e-4)
    told = next(line for line in warnings(card) if "the shop has no 5/16-24 tap." in line)
    assert "which would not do here" in told, "no other tap cuts that thread"


def test_no_drill_for_the_thread_takes_the_usual_one(tmp_path: Path) -> None:
    """1/4-20: 0.25 - 0.75 x 1.299/20 = 0.2013; the No. 7 drill is 0.201."""
    path = next(path for path in job_paths() if path.stem == "vise-stop")
    assert "with: tap drill" in path.read_text(encoding="utf-8")
    card = plan_card(load_job(path), poor_shop(tmp_path, "inch"))
    assert any("the shop has no No. 7 drill" in line for line in warnings(card))
    assert card.ledger["shop-no-7-drill.diameter"].value == pytest.approx(0.201)


def test_a_name_that_no_shop_knows_is_still_a_problem(tmp_path: Path) -> None:
    with pytest.raises(ProblemsFound, match="“chamfer mil” is not a cutter of the shop; write “chamfer mill”"):
        path = next(path for path in job_paths() if path.stem == "vise-stop")
        job = tmp_path / path.name
        text = path.read_text(encoding="utf-8")
        assert "chamfer mill" in text
        job.write_text(text.replace("chamfer mill", "chamfer mil"), encoding="utf-8")
        plan_card(load_job(job), load_shop(SHOP))


def test_the_job_of_its_own_shop_has_no_such_warning(tmp_path: Path) -> None:
    card = changed(tmp_path, ("title: Eq", "title: Eq"))
    assert not [line for line in warnings(card) if "the shop has no" in line]
