"""Ten mistakes in a definition are ten problems, told at once: those of reading, of the sizes, of route and planning.

Each file was written with ten mistakes counted by hand; one mistake, one problem, and no other in its wake.
"""

from pathlib import Path

import pytest

from jobcards.definition import job_paths
from jobcards.planning import problems_of

ROOT = Path(__file__).resolve().parents[2]
TENS = sorted((ROOT / "tests").glob("*/bad/ten-in-a-*.yml"))
# What is wrong with the two files here, by line, as it was put in.
PUT_IN = {
    "ten-in-a-plate": {7: "no date", 14: "never used", 15: "kg", 18: "steal", 20: "a second time", 25: "lenth",
                       40: "reamr", 41: "no hole to tap yet", 48: "1/2 end mill", 55: "slot widht"},
    "ten-in-a-stud": {4: "practise", 7: "washer", 13: "±0,001", 20: "0.625", 37: "shnak", 45: "x and y and z",
                      57: "shank", 59: "knee mil", 63: "cuts 1/4", 66: "empty"},
}  # fmt: skip


@pytest.mark.parametrize("path", TENS, ids=lambda path: path.stem)
def test_ten_mistakes_are_ten_problems_and_no_others(path: Path) -> None:
    told = [str(problem) for problem in problems_of(path)]
    assert told == path.with_suffix(".txt").read_text(encoding="utf-8").splitlines()
    assert len(told) == 10
    assert len(TENS) == 5


@pytest.mark.parametrize("name", PUT_IN)
def test_each_is_told_in_its_line(name: str) -> None:
    problems = problems_of(ROOT / "tests" / "planning" / "bad" / f"{name}.yml")
    assert [problem.mark.line for problem in problems] == list(PUT_IN[name])
    for problem, words in zip(problems, PUT_IN[name].values(), strict=True):
        assert words in problem.wrong


@pytest.mark.parametrize(
    ("swaps", "wanted"),
    [
        # a slip in a key of the head, and a hole that no drill of its route can make: reading and planning
        ((("summary:", "sumary:"), ("with: 17/64 drill", "with: 9/32 drill")), [(3, "sumary"), (31, "9/32 drill")]),
        # a size that is not there, in one place, and a face that is gone, in another
        ((("y: height/2", "y: hight/2"), ("edge: bottom", "edge: botom")), [(19, "hight"), (28, "botom")]),
        # an unknown material no longer hides what is wrong with the set-ups
        ((("steel, cold drawn", "stone"), ("in: vise, up", "in: vize, up")), [(15, "stone"), (27, "vize")]),
        # one unreadable value in a part no longer hides its other values
        ((("thickness: 7/8", "thickness: seven"), ("diameter: bore", "diameter: 45°")), [(17, "seven"), (19, "45°")]),
    ],
)
def test_a_mistake_of_one_kind_hides_none_of_another(
    swaps: tuple[tuple[str, str], ...], wanted: list[tuple[int, str]], tmp_path: Path
) -> None:
    text = (ROOT / "tests" / "definition" / "good" / "spacer.yml").read_text(encoding="utf-8")
    for old, new in swaps:
        assert old in text
        text = text.replace(old, new)
    path = tmp_path / "spacer.yml"
    path.write_text(text, encoding="utf-8")
    told = problems_of(path)
    assert [(problem.mark.line, word) for problem, (_, word) in zip(told, wanted, strict=True)] == wanted
    for problem, (_, word) in zip(told, wanted, strict=True):
        assert word in problem.wrong


def test_a_sound_job_has_none() -> None:
    assert problems_of(next(path for path in job_paths() if path.stem == "vise-stop")) == []
