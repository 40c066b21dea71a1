"""The shipped jobs together use the whole trade that the language knows: what none of them shows, nobody has tried."""

from collections.abc import Iterator
from dataclasses import fields
from functools import cache

import pytest

from jobcards.definition import load_job, load_shop, shop_for
from jobcards.definition.features import SHAPES
from jobcards.definition.job import AXIS_WAYS, CENTRED_BY, Job, Part, SetUp, Zero
from jobcards.definition.loading import job_paths, shop_paths
from jobcards.definition.processes import Heat

PROCESSES = ("square_up", "saw", "heat", "grind", "assemble", "lay_out", "inspect", "keep_zero")
IN_PLACE_OF_HOLDERS = {"stop", "table keys", "steady rest", "guide"}  # named by keys of their own
BY_KEYS = {"against_stop": "stop", "trued_by": "table keys", "rest_on": "steady rest"}


@cache
def jobs() -> tuple[Job, ...]:
    """All shipped jobs."""
    return tuple(load_job(path) for path in job_paths())


def parts() -> Iterator[Part]:
    """All parts of all jobs."""
    for job in jobs():
        yield from job.parts.values()


def set_ups() -> Iterator[SetUp]:
    """All set-ups, also of the alternatives."""
    for part in parts():
        yield from part.route
        for other in part.alternatives.values():
            yield from other.route


def kinds(of: str) -> dict[str, str]:
    """What the shops have under a heading, and of which kind it is."""
    return {name: thing.kind for path in shop_paths() for name, thing in getattr(load_shop(path), of).items()}


@pytest.mark.parametrize("shape", sorted(shape for shape, _ in SHAPES))
def test_every_shape_is_made(shape: str) -> None:
    assert any(feature.shape == shape for part in parts() for feature in part.features.values())


@pytest.mark.parametrize("kind", sorted(set(kinds("machines").values())))
def test_every_machine_is_used(kind: str) -> None:
    assert any(kinds("machines")[set_up.machine] == kind for set_up in set_ups())


@pytest.mark.parametrize("kind", sorted(set(kinds("holding").values()) - IN_PLACE_OF_HOLDERS))
def test_every_holder_is_used(kind: str) -> None:
    holding = kinds("holding")
    assert any(kind in {holding.get(s.hold.holder), holding.get(s.hold.on)} for s in set_ups() if s.hold is not None)


@pytest.mark.parametrize("key", sorted(BY_KEYS))
def test_every_help_in_holding_is_used(key: str) -> None:
    assert any(getattr(set_up.hold, key) for set_up in set_ups() if set_up.hold is not None)


def test_a_guide_is_used() -> None:
    assert any(operation.guide for set_up in set_ups() for operation in set_up.operations)


@pytest.mark.parametrize("support", ["centre", "steady rest"])
def test_every_support_is_used(support: str) -> None:
    assert any(set_up.hold is not None and set_up.hold.support == support for set_up in set_ups())


@pytest.mark.parametrize("process", PROCESSES)
def test_every_process_is_used(process: str) -> None:
    assert any(getattr(set_up, process) for set_up in set_ups())


@pytest.mark.parametrize("treatment", [entry.name for entry in fields(Heat) if "kind" in entry.metadata])
def test_every_treatment_is_used(treatment: str) -> None:
    assert any(set_up.heat is not None and getattr(set_up.heat, treatment) for set_up in set_ups())


@pytest.mark.parametrize("way", AXIS_WAYS)
def test_every_way_to_an_axis_is_used(way: str) -> None:
    assert any(touch.axis == way for set_up in set_ups() for touch in set_up.zero)


@pytest.mark.parametrize("key", [e.name for e in fields(Zero) if "kind" in e.metadata and e.name != "measured_from"])
def test_every_kind_of_zero_is_used(key: str) -> None:
    assert any(getattr(touch, key) for set_up in set_ups() for touch in set_up.zero)


@pytest.mark.parametrize("way", CENTRED_BY)
def test_every_way_over_a_tables_axis_is_used(way: str) -> None:
    assert any(set_up.hold is not None and set_up.hold.centre and set_up.hold.centred_by == way for set_up in set_ups())


def test_in_the_mix_the_issue_asks_for() -> None:
    """At least three in millimetres, two for beginners, one family of sizes; inexact dividing told as such."""
    assert sum(job.units == "mm" for job in jobs()) >= 3
    assert sum(job.level == "beginner" for job in jobs()) >= 2
    assert any(job.variants for job in jobs())
    assert any(set_up.hold is not None and set_up.hold.nearest for set_up in set_ups())


def test_each_job_is_worked_out_for_a_shop_of_its_units() -> None:
    assert all(load_shop(shop_for(job)).units == job.units for job in jobs())
