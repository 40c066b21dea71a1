"""Materials by their names, and the table they stand in."""

from collections import Counter

import pytest

from jobcards.tables import table
from jobcards.trade.formula import CannotBeDone
from jobcards.trade.materials import material, material_names, names_of, nearest

ROWS = table("materials").rows


def test_no_name_means_two_materials() -> None:
    names = Counter(name.lower() for row in ROWS for name in names_of(row))
    assert [name for name, times in names.items() if times > 1] == []


@pytest.mark.parametrize("row", ROWS, ids=lambda row: row["name"])
def test_every_name_finds_its_row(row: dict[str, str]) -> None:
    for name in names_of(row):
        assert material(f" {name.upper()} ").name == row["name"]
    assert material(row["group"]).group == row["group"]


@pytest.mark.parametrize("name", material_names())
def test_every_material_is_whole(name: str) -> None:
    known = material(name)
    assert known.cuts_like in ("soft", "plain", "tough")
    assert known.hardening in ("none", "case", "oil", "water")
    assert 0.03 < known.density_inch < 0.35 and 1 < known.density_metric < 9
    assert 5e-6 < known.expansion_fahrenheit < 70e-6
    assert 0.05 < known.unit_power < 1.5
    assert known.hardness and known.source.kind == "from memory"


def test_a_row_read_in_full() -> None:
    cast = material("gray cast iron")
    assert (cast.group, cast.density_inch, cast.density_metric, cast.unit_power) == ("cast iron", 0.26, 7.2, 0.7)
    assert (cast.expansion_fahrenheit, cast.expansion_celsius) == pytest.approx((6.0e-6, 10.8e-6))
    assert (cast.hardness, cast.hardening) == ("160-220 HB", "none") and cast.note.startswith("cut it dry")
    assert material("O1").note == ""


def test_a_material_nobody_knows() -> None:
    with pytest.raises(CannotBeDone, match="no material is called 'alluminium'; write aluminium"):
        material("alluminium")


def test_what_to_write_instead() -> None:
    assert nearest("brss", ["brass", "nylon"]) == "write brass"
    assert nearest("xyz", ["brass", "nylon", "brass", "bronze"]) == "write brass, nylon or bronze"
    assert nearest("Brass", ["brass", "nylon"]) == "write brass"
