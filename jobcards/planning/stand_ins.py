"""What a job asks for and the shop has not got: the card is worked out as if it were there, and warns of it.

A cutter is understood by its size and kind, or as another shop file has it under the same name; so is what holds the
work and finds its place, and the machine. A name that no shop knows is a problem.
"""

import math
from collections.abc import Iterator
from dataclasses import replace

from jobcards import quantity
from jobcards.definition import shop as kit
from jobcards.definition.checks.process_machines import process_cutters
from jobcards.definition.cutter_names import NamedCutter, read_cutter
from jobcards.definition.expression import Expression, parse
from jobcards.definition.job import Operation, Part, SetUp
from jobcards.definition.model import Mark
from jobcards.planning.borrowed import bring_lent, lent_cutter
from jobcards.planning.card import FeaturePlan
from jobcards.planning.route import Route
from jobcards.planning.words import Line, line
from jobcards.planning.work import UNIT, Work, from_job, from_shop, slug
from jobcards.tables import Row, number, table

HAIR = 1e-6
SIZING = ("drill", "reamer", "counterbore")  # these leave their own size
POINT_IS_NO_MATTER = ("drill", "spot drill")


def bring_stand_ins(route: Route, set_up: SetUp) -> None:
    """Put what is usual in the place of each thing that a set-up names and the shop lacks, and warn of it."""
    bring_lent(route.work, set_up)
    for operation in set_up.operations:
        stand_in(route.work, set_up, operation.cutter, operation.place("cutter"), operation, route.feature(operation))
    if set_up.square_up is not None:
        for field_name in ("cutter", "end_cutter"):
            stand_in(route.work, set_up, getattr(set_up.square_up, field_name), set_up.square_up.place(field_name))
    for name, mark, _ in process_cutters(set_up):
        stand_in(route.work, set_up, name, mark)


def bring_wheels(work: Work, part: Part) -> None:
    """Grinding wheels first of all: what is turned before they come leaves metal for them."""
    for set_up in part.route:
        for operation in set_up.operations:
            lent = lent_cutter(work, operation.cutter)
            if lent is not None and lent.kind == "grinding wheel":
                stand_in(work, set_up, operation.cutter, operation.place("cutter"))


def stand_in(
    work: Work,
    set_up: SetUp,
    name: str,
    mark: Mark,
    operation: Operation | None = None,
    feature: FeaturePlan | None = None,
) -> None:
    """One cutter, if another shop has it or its name tells it, and it is not there."""
    named = read_cutter(name, work.unit)
    if not name or is_there(work, name, named):
        return
    wanted = lent_cutter(work, name) or (usual_cutter(work, named, mark) if named is not None else None)
    if wanted is None:
        return
    cutters = dict(work.shop.cutters)
    near = nearest_that_would_do(work, wanted, operation, feature)
    work.shop = replace(work.shop, cutters={**cutters, name: wanted})
    work.warnings.append(advice(work, set_up, name, near))


def is_there(work: Work, name: str, named: NamedCutter | None) -> bool:
    """Whether the shop has it; in a shop of the other unit the same words may mean another size."""
    cutter = work.shop.cutters.get(name)
    if named is None or cutter is None or cutter.diameter is None or cutter.assumed or work.shop.unit == work.unit:
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

    diameters = number(row, "long flutes" if named.long else "flutes")
    flutes = quantity.convert(named.diameter, work.unit, unit) * diameters
    return kit.Cutter(
        kind=named.kind,
        diameter=length(named.written.removesuffix(f" {unit}")),
        teeth=int(row["teeth"]),
        material=named.material,
        thread=named.thread,
        chamfer=named.chamfer,
        flute_length=length(f"{flutes:.4f}"),
        centre_cutting=row.get("centre cutting") == "true",
        point=parse(f"{row['point']}°", mark, unit) if "point" in row else None,
        assumed=True,
        mark=mark,
    )


def nearest_that_would_do(
    work: Work, wanted: kit.Cutter, operation: Operation | None, feature: FeaturePlan | None
) -> tuple[str, bool] | None:
    """The nearest in size of the shop's cutters of the kind, and whether it would do in the place of the one named."""
    there = {
        name: cutter
        for name, cutter in work.shop.cutters.items()
        if cutter.kind == wanted.kind and not cutter.assumed and (cutter.diameter is None) == (wanted.diameter is None)
    }
    named = across(work, wanted) if wanted.diameter is not None else 0.0
    sizes = {name: across(work, cutter) if cutter.diameter is not None else 0.0 for name, cutter in there.items()}
    least, most = 0.0, named if operation is not None else math.inf  # any will do to square a block
    if operation is not None and feature is not None and "diameter" in feature.sizes and wanted.kind in SIZING:
        asked = feature.sizes["diameter"]
        low, high = asked.tolerance or (0.0, 0.0)
        least, most = (0.0, asked.value) if operation.rough else (asked.value + low, asked.value + high)
    doing = [
        name
        for name, cutter in there.items()
        if least - HAIR <= sizes[name] <= most + HAIR and [*form(work, cutter)] == [*form(work, wanted)]
    ]
    near = min(doing or sizes, key=lambda name: abs(sizes[name] - named), default=None)
    return (near, bool(doing)) if near is not None else None


def form(work: Work, cutter: kit.Cutter) -> Iterator[str]:
    """What must be the same in a cutter that would do: the form that it leaves in the work."""
    yield from (cutter.thread, cutter.size)
    for name in ("angle", "point"):
        angle: Expression | None = getattr(cutter, name) if cutter.kind not in POINT_IS_NO_MATTER else None
        yield f"{angle.value({}):.3f}" if angle is not None else ""
    for name in ("radius", "width", "neck", "pitch", "flat"):
        size: Expression | None = getattr(cutter, name)
        yield f"{quantity.convert(size.value({}), work.shop.unit, 'mm'):.2f}" if size is not None else ""


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
    if cutter.diameter is None:
        words = " What it has of that kind is the {near}"
        words += ": name it in the definition to have its card." if near[1] else ", which would not do here."
        return (*lacking, *line(words, near=from_shop(near[0])))
    size = work.shop_length(f"shop-{slug(near[0])}.diameter", cutter.diameter, "diameter")
    words = (
        " The nearest that would do is the {near}, {size} across: name it in the definition to have its card."
        if near[1]
        else " The nearest is the {near}, {size} across, which would not do here: borrow or buy one."
    )
    return (*lacking, *line(words, near=from_shop(near[0]), size=size))
