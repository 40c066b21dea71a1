"""The reader of tables, and what every table owes."""

from pathlib import Path

import pytest

import jobcards.tables
from jobcards.source import Source
from jobcards.tables import number, read_source, table

NAMES = sorted(path.stem for path in Path(jobcards.tables.__file__).parent.glob("*.yml"))


@pytest.mark.parametrize("name", NAMES)
def test_every_table_has_a_title_a_source_and_rows(name: str) -> None:
    chart = table(name)
    assert chart.name == name and chart.title and isinstance(chart.source, Source) and chart.rows
    for row in chart.rows:
        assert row and isinstance(chart.source_of(row), Source)


def test_a_table_is_read_once() -> None:
    assert table("materials") is table("materials")


def test_a_row_with_a_source_of_its_own() -> None:
    chart = table("cutting_speeds")
    own = [row for row in chart.rows if "source" in row]
    assert own and all(chart.source_of(row).kind == "published" for row in own)
    assert chart.source_of({"group": "wood"}) == chart.source


def test_a_source_as_written() -> None:
    assert read_source({"kind": "geometry"}) == Source("geometry")
    with pytest.raises(ValueError, match="unknown kind of source 'hearsay'"):
        read_source({"kind": "hearsay"})


def test_numbers_stay_as_they_stand() -> None:
    assert number({"size": "1.10"}, "size") == 1.1
    with pytest.raises(ValueError, match="wants a plain number under 'size'"):
        number({"size": "1:20"}, "size")
