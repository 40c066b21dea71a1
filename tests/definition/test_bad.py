"""Definitions that must fail, each with the exact lines it must produce; and good ones that must not."""

from pathlib import Path

import pytest

from jobcards.definition import Job, ProblemsFound, Shop, job_paths, load_job, load_shop, shop_paths

HERE = Path(__file__).parent
BAD = sorted((HERE / "bad").glob("*.yml"))
GOOD = sorted((HERE / "good").glob("*.yml"))


def load(path: Path) -> Job | Shop:
    """A shop's file is named so; all others are jobs."""
    return load_shop(path) if path.stem.startswith("shop-") else load_job(path)


@pytest.mark.parametrize("path", BAD, ids=lambda path: path.stem)
def test_a_bad_definition_is_told_in_these_lines(path: Path) -> None:
    with pytest.raises(ProblemsFound) as caught:
        load(path)
    assert str(caught.value).splitlines() == path.with_suffix(".txt").read_text(encoding="utf-8").splitlines()


@pytest.mark.parametrize("path", BAD, ids=lambda path: path.stem)
def test_every_line_says_where_what_and_what_to_write(path: Path) -> None:
    lines = path.with_suffix(".txt").read_text(encoding="utf-8").splitlines()
    count = len(path.read_text(encoding="utf-8").splitlines())
    assert lines
    for line in lines:
        file, row, column, said = line.split(":", 3)
        assert file == f"tests/definition/bad/{path.name}"
        assert 1 <= int(row) <= count + 1
        assert int(column) >= 1
        wrong, parted, instead = said.strip().partition("; ")
        assert wrong and parted and instead
        assert "Traceback" not in line and "yaml." not in line


def test_every_case_has_its_lines_and_there_are_many() -> None:
    assert {path.stem for path in BAD} == {path.stem for path in (HERE / "bad").glob("*.txt")}
    assert len(BAD) >= 40


@pytest.mark.parametrize("path", GOOD, ids=lambda path: path.stem)
def test_a_good_definition_is_read(path: Path) -> None:
    assert load(path).slug == path.stem


@pytest.mark.parametrize("path", job_paths(), ids=lambda path: path.stem)
def test_the_jobs_of_the_site_are_read(path: Path) -> None:
    assert load_job(path).slug == path.stem


@pytest.mark.parametrize("path", shop_paths(), ids=lambda path: path.stem)
def test_the_shops_of_the_site_are_read(path: Path) -> None:
    assert load_shop(path).slug == path.stem


@pytest.mark.parametrize("name", ["ten-in-a-block", "ten-in-a-pin", "ten-in-a-clamp"])
def test_ten_mistakes_are_ten_problems_each_on_its_own_line(name: str) -> None:
    """Counted by hand when the files were written: one mistake, one problem."""
    lines = (HERE / "bad" / f"{name}.txt").read_text(encoding="utf-8").splitlines()
    assert len(lines) == 10
    assert len({line.split(":")[1] for line in lines}) == 10
