"""What stands on the built pages is what a fresh calculation gives, and nothing on a card is unowned."""

import json
from functools import cache
from pathlib import Path

import pytest

from jobcards.pages.build import JOBS, ROOT, slugs
from jobcards.pages.numbers import as_record
from jobcards.pages.record_keeping import jobs, numbers_of
from jobcards.pages.worked import Worked, work_out
from tests.pages.reading import PageReader

PAGES = ("index.html", "wall/index.html", "record/index.html")
each_job = pytest.mark.parametrize("slug", slugs())
each_page = pytest.mark.parametrize("page", PAGES)


def fresh(slug: str) -> Worked:
    return work_out(JOBS / f"{slug}.yml")


@cache
def page_of(folder: Path, page: str) -> PageReader:
    return PageReader((folder / page).read_text(encoding="utf-8"))


@each_job
def test_numbers_json_equals_a_fresh_calculation(site: Path, slug: str) -> None:
    published = json.loads((site / "jobs" / slug / "numbers.json").read_text(encoding="utf-8"))
    worked = fresh(slug).numbers
    assert [(n["id"], n["value"], n["shown"], n["unit"]) for n in published] == [
        (n.id, n.value, n.shown, n.unit) for n in worked
    ]
    known = {n["id"] for n in published}
    assert all(set(n["inputs"]) <= known for n in published)


@each_job
@each_page
def test_numbers_read_off_a_page_are_the_published_ones(site: Path, slug: str, page: str) -> None:
    worked = {number.id: number for number in fresh(slug).numbers}
    read = page_of(site / "jobs" / slug, page)
    assert read.numbers
    for shown in read.numbers:
        assert (shown.id, float(shown.value), shown.text) == (
            shown.id,
            worked[shown.id].value,
            worked[shown.id].shown,
        )


@each_job
def test_every_published_number_is_on_the_card_and_its_id_there_once(site: Path, slug: str) -> None:
    read = page_of(site / "jobs" / slug, "index.html")
    firsts = [shown.id for shown in read.numbers if shown.first]
    assert sorted(firsts) == sorted(number.id for number in fresh(slug).numbers)
    assert {shown.id for shown in read.numbers if not shown.first} <= set(firsts)


@each_job
@each_page
def test_no_id_stands_twice_on_a_page(site: Path, slug: str, page: str) -> None:
    ids = page_of(site / "jobs" / slug, page).ids
    assert sorted(ids) == sorted(set(ids))


@each_job
@each_page
def test_no_digit_on_a_page_is_unowned(site: Path, slug: str, page: str) -> None:
    assert page_of(site / "jobs" / slug, page).unowned == []


@each_job
def test_the_dry_run_of_a_published_card_agrees(slug: str) -> None:
    for rehearsal in fresh(slug).rehearsals:
        assert rehearsal.passed, (slug, rehearsal)


@pytest.mark.parametrize("record", sorted((ROOT / "tests" / "published").glob("*.json")), ids=lambda path: path.stem)
def test_a_recorded_card_still_shows_the_recorded_numbers(record: Path) -> None:
    """When a number was meant to change: python3 scripts/record_numbers.py SLUG, and say why in the pull request."""
    assert json.loads(as_record(numbers_of(jobs()[record.stem]))) == json.loads(record.read_text(encoding="utf-8"))
