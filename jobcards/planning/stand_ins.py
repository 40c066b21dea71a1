"""What a job asks for and the shop has not got: the card is worked out as if it were there, and warns of it.

Only a cutter named by size and kind is understood so; another name that is not in the shop file is a problem.
"""

import math
from dataclasses import replace

from jobcards import quantity
from jobcards.definition import shop as kit
from jobcards.definition.cutter_names import NamedCutter, read_cutter
from jobcards.definition.expression import Expression, parse
from jobcards.definition.job import Operation, SetUp
from jobcards.definition.model import Mark
from jobcards.planning.card import FeaturePlan
from jobcards.planning.route import Route
from jobcards.planning.words import Line, line
from jobcards.planning.work import UNIT, Work, from_job, from_shop, slug
from jobcards.tables import Row, number, table

HAIR = 1e-6
SIZING = ("drill", "reamer", "counterbore")  # these leave their own size


def bring_stand_ins(route: Route, set_up: SetUp) -> None:
    """Put a cutter as usually sold in the place of each that a set-up names by size and kind and the shop lacks."""
    for operation in set_up.operations:
        stand_in(route.work, set_up, operation.cutter, operation.place("cutter"), operation, route.feature(operation))
    if set_up.square_up is not None:
        for field_name in ("cutter", "end_cutter"):
            stand_in(route.work, set_up, getattr(set_up.square_up, field_name), set_up.square_up.place(field_name))


def stand_in(
    work: Work,
    set_up: SetUp,
    name: str,
    mark: Mark,
    operation: Operation | None = None,
    feature: FeaturePlan | None = None,
) -> None:
    """One cutter, if it is named by size and kind and is not there."""
    named = read_cutter(name, work.unit)
    if named is None or is_there(work, name, named):
        return
    cutters = dict(work.shop.cutters)
    choices = {other: cutter for other, cutter in cutters.items() if cutter.kind == named.kind and not cutter.assumed}
    work.shop = replace(work.shop, cutters={**cutters, name: usual_cutter(work, named, mark)})
    work.warnings.append(advice(work, set_up, name, nearest_that_would_do(work, named, choices, operation, feature)))


def is_there(work: Work, name: str, named: NamedCutter) -> bool:
    """Whether the shop has it; in a shop of the other unit the same words may mean another size."""
    cutter = work.shop.cutters.get(name)
    if cutter is None or cutter.diameter is None or cutter.assumed or UNIT[work.shop.units] == work.unit:
        return cutter is not None
    return abs(across(work, cutter) - named.diameter) < HAIR


def across(work: Work, cutter: kit.Cutter) -> float:
    """The diameter of a cutter of the shop in the job's unit."""
    assert cutter.diameter is not None
    return quantity.convert(cutter.diameter.value({}), UNIT[work.shop.units], work.unit)


def usual_cutter(work: Work, named: NamedCutter, mark: Mark) -> kit.Cutter:
    """The cutter as it is usually sold, in the words and the unit of the shop file."""
    row: Row = next(row for row in table("usual_cutters").rows if row["kind"] == named.kind)
    unit = UNIT[work.shop.units]

    def length(text: str) -> Expression:
        return parse(text, mark, unit)

    flutes = quantity.convert(named.diameter, work.unit, unit) * number(row, "flutes")
    return kit.Cutter(
        kind=named.kind,
        diameter=length(named.written.removesuffix(f" {unit}")),
        teeth=int(row["teeth"]),
        material=named.material,
        flute_length=length(f"{flutes:.4f}"),
        centre_cutting=row.get("centre cutting") == "true",
        point=parse(f"{row['point']}°", mark, unit) if "point" in row else None,
        assumed=True,
        mark=mark,
    )


def nearest_that_would_do(
    work: Work,
    named: NamedCutter,
    choices: dict[str, kit.Cutter],
    operation: Operation | None,
    feature: FeaturePlan | None,
) -> tuple[str, bool] | None:
    """The nearest in size of the shop's cutters of the kind, and whether it would do in the place of the one named."""
    sized = {name: across(work, cutter) for name, cutter in choices.items() if cutter.diameter is not None}
    least, most = 0.0, named.diameter if operation is not None else math.inf  # any will do to square a block
    if operation is not None and feature is not None and "diameter" in feature.sizes and named.kind in SIZING:
        wanted = feature.sizes["diameter"]
        low, high = wanted.tolerance or (0.0, 0.0)
        least, most = (0.0, wanted.value) if operation.rough else (wanted.value + low, wanted.value + high)
    doing = {name: size for name, size in sized.items() if least - HAIR <= size <= most + HAIR}
    near = min(doing or sized, key=lambda name: abs(sized[name] - named.diameter), default=None)
    return (near, bool(doing)) if near is not None else None


def advice(work: Work, set_up: SetUp, name: str, near: tuple[str, bool] | None) -> Line:
    """The warning: what is missing, and what there is instead."""
    lacking = line(
        "{set_up}: the shop has no {cutter}. The card is worked out as if it had.",
        set_up=from_job(set_up.title),
        cutter=from_job(name),
    )
    if near is None:
        return (*lacking, *line(" It has nothing of that kind: borrow or buy one."))
    cutter = work.shop.cutters[near[0]]
    assert cutter.diameter is not None
    size = work.shop_length(f"shop-{slug(near[0])}.diameter", cutter.diameter, "diameter")
    words = (
        " The nearest that would do is the {near}, {size} across: name it in the definition to have its card."
        if near[1]
        else " The nearest is the {near}, {size} across, which would not do here: borrow or buy one."
    )
    return (*lacking, *line(words, near=from_shop(near[0]), size=size))
