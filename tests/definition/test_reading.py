"""What is read lands where planning looks for it, with its place in the file."""

from pathlib import Path

import pytest

from jobcards.definition import Mark, ProblemsFound, check_shop, job_paths, load_job, load_shop, shop_for, shop_paths
from jobcards.definition import shop as kit
from jobcards.definition.features import Hole
from tests.definition.write import GOOD, loaded, problems, written

JOBS = {path.stem: path for path in job_paths()}
SHOP = next(path for path in shop_paths() if path.stem == "evening-workshop")


def test_a_job_is_read_into_its_models(tmp_path: Path) -> None:
    job = loaded(tmp_path)
    part = job.parts["spacer"]
    hole = part.features["bore"]
    assert isinstance(hole, Hole)
    assert (hole.shape, hole.enters, hole.depth) == ("hole", "front", "through")
    assert hole.at[0].x is not None and hole.at[0].x.value(job.env()) == 1.0
    assert hole.at[0].z is None
    assert part.quantity == 1
    assert part.block is not None and part.turned is None
    square, bore = part.route
    assert square.square_up is not None and square.square_up.order[-1] == "right end"
    assert bore.hold is not None and bore.hold.against_fixed_jaw == "top"
    assert [zero.edge for zero in bore.zero] == ["left end", "bottom"]
    assert bore.operations[0].cutter == "17/64 drill"
    assert not bore.operations[0].rough
    assert job.general_tolerance == "medium"
    assert job.requirements["wall"].at_most is None


def test_marks_tell_the_place_of_each_value() -> None:
    job = load_job(GOOD / "spacer.yml")
    file = "tests/definition/good/spacer.yml"
    operation = job.parts["spacer"].route[1].operations[0]
    assert operation.mark == Mark(file, 30, 13)
    assert operation.place("cutter") == Mark(file, 31, 19)
    assert operation.place("why") == operation.mark
    assert job.place("level") == Mark(file, 4, 8)
    assert job.sizes["bore"].mark == Mark(file, 12, 9)
    assert job.parts["spacer"].blank.length.mark == Mark(file, 17, 68)


def test_marks_point_into_quoted_texts(tmp_path: Path) -> None:
    assert problems(tmp_path, ("x: length/2", 'x: "length/2 + lenght"')) == [
        "19:76: “lenght” is not a size of this job; write “length”"
    ]


def test_a_text_over_several_lines_is_one_line(tmp_path: Path) -> None:
    job = loaded(tmp_path, ("summary: A block with a hole in the middle.", "summary: >-\n  A block\n  with a hole."))
    assert job.summary == "A block with a hole."


def test_what_yaml_would_turn_into_something_else_stays_text(tmp_path: Path) -> None:
    """1:20 is 80, 0123 is 83, no is false and 1.10 is 1.1 to plain YAML."""
    job = loaded(
        tmp_path, ("title: Spacer block", "title: 1.10"), ("letter: A", "letter: no"), ("length: 2 ±", "length: 02.0 ±")
    )
    assert (job.title, job.revisions[0].letter, job.sizes["length"].nominal) == ("1.10", "no", 2.0)
    assert problems(tmp_path, ("width: 1-1/4", "width: 1:20"))[0].startswith("17:38: “:” has no meaning")


def test_a_shop_is_read_into_its_models() -> None:
    shop = load_shop(SHOP)
    mill, vise = shop.machines["knee mill"], shop.holding["vise"]
    assert isinstance(mill, kit.Mill) and isinstance(vise, kit.Vise)
    assert mill.spindle_steps[0] == 80.0
    assert mill.head_tilts.value({}) == 45.0
    assert vise.jaw_depth.value({}) == 1.75
    assert shop.cutters["17/64 drill"].kind == "drill"
    assert shop.instruments["caliper"].kind == ["outside", "inside", "depth", "position"]
    assert shop.instruments["vernier protractor"].uncertainty.value({}) == pytest.approx(5 / 60)
    assert shop.unit == "in"


def test_the_clamp_has_the_limits_of_its_drawing() -> None:
    """Limits that its requirements rest on, worked by hand: RC5 at 3/4 by ANSI B4.1; the pin by addition."""
    job = load_job(JOBS["equalising-clamp"])
    assert job.limits()["seat bore"] == (0.75, 0.7512)
    assert job.limits()["pin shank"] == (0.7476, 0.7484)
    assert job.limits()["pin length"] == (pytest.approx(0.123 + 0.730), pytest.approx(0.125 + 0.735))


SHOP_CASES = [
    ("with: 17/64 drill", "with: 17/64 dril", "31:19: “17/64 dril” is not a cutter of the shop; write “17/64 drill”"),
    (
        "with: 3/4 end mill",
        "with: 3/4 endmill",
        "24:83: “3/4 endmill” is not a cutter of the shop; write “3/4 end mill”",
    ),
    ("machine: knee mill", "machine: kneemill", "22:18: “kneemill” is not a machine of the shop; write “knee mill”"),
    ("{in: vise, on", "{in: vice, on", "23:20: “vice” is not in the shop's holding list; write “vise”"),
    (
        "end, on: parallels",
        "end, on: paralels",
        "27:89: “paralels” is not in the shop's holding list; write “parallels”",
    ),
    (
        "end, on: parallels",
        "end, on: sine bar",
        "27:15: the end that stands higher on the sine bar is missing; write high end: left end",
    ),
    (
        "end, on: parallels",
        "end, on: parallels, high end: left end",
        "27:110: nothing stands higher on parallels; leave high end out",
    ),
    (
        "        hold: {in: vise, on: parallels}\n        square",
        "        square",
        "21:9: what holds the block is missing; write hold: {in: vise}",
    ),
    (
        "        hold: {in: vise, up: front, against fixed jaw: top, against stop: left end, on: parallels}\n",
        "",
        "25:9: how the work is held is missing; write hold: {in: vise, …}",
    ),
    ("machine: knee mill", "machine: bench", "24:20: this is done on a mill, not on the bench; choose a mill"),
    ("machine: knee mill", "machine: lathe", "24:20: this is done on a mill, not on the lathe; choose a mill"),
]


@pytest.mark.parametrize(("old", "new", "said"), SHOP_CASES)
def test_what_a_shop_does_not_have_is_told(tmp_path: Path, old: str, new: str, said: str) -> None:
    path = written(tmp_path, (old, new))
    try:
        told = check_shop(load_job(path), load_shop(SHOP))
    except ProblemsFound as error:
        told = error.problems
    assert str(told[0]).removeprefix(f"{path.as_posix()}:") == said


def test_a_mill_has_no_end_that_stands_out(tmp_path: Path) -> None:
    pin = (GOOD / "pin.yml").read_text(encoding="utf-8")
    path = written(tmp_path, ("machine: lathe", "machine: knee mill"), text=pin)
    told = [problem.wrong for problem in check_shop(load_job(path), load_shop(SHOP))]
    assert told == ["the knee mill is no lathe"]


def test_the_jobs_of_the_site_suit_the_shop_with_their_units() -> None:
    for path in JOBS.values():
        job = load_job(path)
        shop = load_shop(shop_for(job))
        assert shop.units == job.units
        assert check_shop(job, shop) == []


@pytest.mark.parametrize("middle", ["[left end]", "[left end, right end, left end]", "[left end, left end]"])
def test_a_middle_needs_two_opposite_edges(tmp_path: Path, middle: str) -> None:
    assert problems(tmp_path, ("{edge: left end}", f"{{middle between: {middle}}}")) == [
        "28:33: a middle lies between two opposite faces; write two opposite faces, as in [left end, right end]"
    ]


def test_bar_of_the_finished_size_will_do(tmp_path: Path) -> None:
    assert loaded(tmp_path, ("width: 1-1/4", "width: height")).title == "Spacer block"
    assert problems(tmp_path, ("width: 1-1/4", "width: height - 0.0001"))[0].startswith("17:37: the blank is 0.9999")
