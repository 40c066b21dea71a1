"""What a job names and the shop has not got, as another shop file has it under the same name."""

import copy
from collections.abc import Mapping
from dataclasses import fields, replace
from typing import Any, TypeVar

from jobcards import quantity
from jobcards.definition import kinds, load_shop, shop_paths
from jobcards.definition import shop as kit
from jobcards.definition.expression import Expression, parse
from jobcards.definition.job import Hold, SetUp
from jobcards.definition.model import Mark, Model
from jobcards.definition.shop_drilling import DrillPress
from jobcards.planning.words import Line, line
from jobcards.planning.work import Work, from_job, from_shop

M = TypeVar("M", bound=Model)
FINDERS = ("edge finder", "paper")
KILOWATTS = 0.745699872  # one horsepower of 550 foot-pounds a second


def lending(first: str) -> list[kit.Shop]:
    """The shop files there are, those in some units before the others."""
    return sorted((load_shop(path) for path in shop_paths()), key=lambda shop: shop.units != first)


def lent_cutter(work: Work, name: str) -> kit.Cutter | None:
    """A cutter that another shop has under that name, in the unit of this shop; sizes in a name are in the job's."""
    for shop in lending(work.job.units):
        if name in shop.cutters and shop.units == work.job.units:
            return replace(in_unit(shop.cutters[name], shop.unit, work.shop.unit), assumed=True)
    return None


def in_unit(thing: M, one: str, other: str) -> M:
    """A thing with its lengths and its power in another unit."""
    if one == other:
        return copy.copy(thing)
    given = {entry.name: (entry.metadata.get("kind"), getattr(thing, entry.name)) for entry in fields(thing)}
    changed: dict[str, Any] = {name: turned(kind, value, one, other) for name, (kind, value) in given.items()}
    if isinstance(changed.get("power"), Expression):
        factor = KILOWATTS if other == "mm" else 1 / KILOWATTS
        changed["power"] = written(changed["power"].value({}) * factor, changed["power"].mark, other)
    return replace(thing, **changed)


def turned(kind: object, value: Any, one: str, other: str) -> Any:  # noqa: ANN401 - whatever a shop file may say
    """A value of a shop file in another unit: a length, or what holds lengths; anything else as it is."""
    if isinstance(kind, kinds.Length) and isinstance(value, Expression):
        return written(quantity.convert(value.value({}), one, other), value.mark, other)
    if isinstance(value, Model):
        return in_unit(value, one, other)
    if isinstance(value, list):
        return [in_unit(each, one, other) if isinstance(each, Model) else each for each in value]
    return value


def written(amount: float, mark: Mark, unit: str) -> Expression:
    """A number as if it stood in a shop file of that unit."""
    return parse(f"{amount:.12g}", mark, unit)


def bring_lent(work: Work, set_up: SetUp) -> None:
    """Bring what holds and finds for a set-up, and its machine, where the shop has none of that name."""
    hold = set_up.hold
    machine = work.shop.machines.get(set_up.machine) or lend(work, set_up, "machines", set_up.machine)
    named = [hold.holder, hold.on, hold.trued_by] if hold else []
    named += [operation.guide for operation in set_up.operations]
    for name in named:
        if name and name not in work.shop.holding:
            lend(work, set_up, "holding", name)
    for kind in implied(hold) if hold else ():
        if not any(getattr(thing, "kind", "") == kind for thing in work.shop.holding.values()):
            for name in of_kind(work, kind):
                lend(work, set_up, "holding", name)
    if isinstance(machine, kit.Mill | DrillPress):
        for name in FINDERS:
            if not any(finder.kind == name for finder in work.shop.finders.values()):
                lend(work, set_up, "finders", name)


def implied(hold: Hold) -> list[str]:
    """The kinds of things that a hold needs without naming them."""
    needed = {
        "stop": hold.against_stop,
        "centres": hold.support == "centre",
        "steady rest": hold.support == "steady rest",
        "table clamps": hold.clamps,
    }
    return [name for name, asked in needed.items() if asked]


def of_kind(work: Work, kind: str) -> list[str]:
    """What there is of a kind in the first shop that has any, by name."""
    for shop in lending(work.job.units):
        if names := [name for name, thing in shop.holding.items() if getattr(thing, "kind", "") == kind]:
            return names
    return []


def lend(work: Work, set_up: SetUp, which: str, name: str) -> Model | None:
    """Put a thing of another shop into the shop, and warn of it; nothing where no shop has one of that name."""
    for shop in lending(work.shop.units if which == "machines" else work.job.units):
        lent: Model | None = getattr(shop, which).get(name)
        if lent is not None:
            there: Mapping[str, Model] = getattr(work.shop, which)
            alike = [other for other, thing in there.items() if is_alike(lent, thing)]
            work.warnings.append(told(set_up, name, alike))
            thing = in_unit(lent, shop.unit, work.shop.unit)
            changed: dict[str, Any] = {which: {**there, name: thing}}
            work.shop = replace(work.shop, **changed)
            return thing
    return None


def is_alike(one: Model, other: Model) -> bool:
    """Whether two things do the same."""
    return type(one) is type(other) and getattr(one, "kind", "") == getattr(other, "kind", "")


def told(set_up: SetUp, name: str, alike: list[str]) -> Line:
    """The warning: what is missing, and what there is instead."""
    lacking = line(
        "{set_up}: the shop has no {thing}. The card is worked out as if it had.",
        set_up=from_job(set_up.title),
        thing=from_job(name),
    )
    if not alike:
        return (*lacking, *line(" It has nothing of that kind: borrow or buy one."))
    words = " What it has of that kind is the {near}: name it in the definition to have its card."
    return (*lacking, *line(words, near=from_shop(alike[0])))
