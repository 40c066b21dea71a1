"""Variants: the same job with some sizes changed, each a card of its own."""

from pathlib import Path

import pytest

from jobcards.definition import ProblemsFound, load_family, load_job
from tests.definition.write import problems, written

PARTS = "parts:\n"


def variants(text: str) -> tuple[str, str]:
    """The change that gives the spacer these variants."""
    return PARTS, f"variants:\n{text}{PARTS}"


def test_each_has_its_sizes_its_title_and_its_address(tmp_path: Path) -> None:
    path = written(tmp_path, variants("  3 in long: {length: 3 ±0.010}\n  tall: {height: 1-1/8}\n"))
    plain, long, tall = load_family(path)
    assert (plain.slug, long.slug, tall.slug) == ("changed", "changed-3-in-long", "changed-tall")
    assert (long.title, long.sizes["length"].nominal, long.sizes["length"].upper) == (
        "Spacer block, 3 in long",
        3,
        3.01,
    )
    assert (plain.sizes["length"].nominal, tall.sizes["length"].nominal) == (2, 2)
    assert tall.sizes["height"].nominal == 1.125
    assert {job.family for job in (plain, long, tall)} == {
        (
            ("changed", "Spacer block"),
            ("changed-3-in-long", "Spacer block, 3 in long"),
            ("changed-tall", "Spacer block, tall"),
        )
    }


def test_a_size_that_is_not_there_cannot_be_changed(tmp_path: Path) -> None:
    assert problems(tmp_path, variants("  long: {lenght: 3}\n")) == [
        "14:10: “lenght” is not a size of this job, so no variant can change it; write “length”"
    ]


def test_what_is_wrong_in_one_variant_alone_is_told_with_its_name(tmp_path: Path) -> None:
    path = written(tmp_path, variants("  tall: {height: 2}\n"))
    assert load_job(path).slug == "changed"
    with pytest.raises(ProblemsFound, match=r"in the variant “tall”: the blank is 1\.25 where"):
        load_family(path)


def test_two_cards_cannot_have_one_address(tmp_path: Path) -> None:
    (tmp_path / "changed-long.yml").write_text("", encoding="utf-8")
    told = problems(tmp_path, variants("  long: {length: 3}\n"))
    assert told[0].startswith("14:3: the variant “long” would have the address changed-long, which is taken; ")
    again = problems(tmp_path, variants("  3é: {length: 3}\n  3e: {length: 4}\n"))
    assert again[0].startswith("15:3: the variant “3e” would have the address changed-3e, which is taken; ")


def test_there_are_twelve_at_most(tmp_path: Path) -> None:
    text = "".join(f"  v{n}: {{length: {2 + n}}}\n" for n in range(12))
    assert len(load_family(written(tmp_path, variants(text)))) == 13
    assert (
        problems(tmp_path, variants(text + "  v12: {length: 5}\n"))[0] == "14:3: there are 13 entries; write at most 12"
    )


def test_a_size_used_by_a_variant_alone_is_used(tmp_path: Path) -> None:
    path = written(tmp_path, ("  bore:", "  extra: 1\n  bore:"), variants("  long: {length: 2 + extra}\n"))
    assert load_family(path)[1].sizes["length"].nominal == 3


def test_no_such_variant(tmp_path: Path) -> None:
    with pytest.raises(KeyError):
        load_job(written(tmp_path), "long")
