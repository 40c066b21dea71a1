"""Holding in the vise: parallels chosen so that cutter and edge finder have room, the grip that is left, and what is
beside it.
"""

import math
from collections.abc import Mapping
from dataclasses import dataclass

from jobcards import quantity
from jobcards.definition import shop as kit
from jobcards.definition.expression import parse
from jobcards.definition.job import SetUp
from jobcards.definition.model import Model
from jobcards.planning.card import HoldPlan
from jobcards.planning.number import Number
from jobcards.planning.orientation import Lie
from jobcards.planning.words import Line, line
from jobcards.planning.work import UNIT, Work, from_job, from_shop, slug
from jobcards.trade import holding, turning


@dataclass(frozen=True)
class Needs:
    """What a set-up asks of its holding: work above the jaws, and room below it; with the reason for each."""

    above: Number | None = None
    below: Number | None = None
    keep: Number | None = None  # the parallels of the set-up before, when its zero is kept


def of_kind(work: Work, model: type[Model]) -> tuple[str, Model] | None:
    """The first thing of a kind that the shop's holding list has."""
    return next(((name, thing) for name, thing in work.shop.holding.items() if isinstance(thing, model)), None)


def vise_sizes(work: Work, name: str, vise: kit.Vise) -> dict[str, Number]:
    """The vise's own sizes."""
    words = {
        "jaw width": "jaw_width",
        "jaw depth": "jaw_depth",
        "jaw thickness": "jaw_thickness",
        "largest opening": "opening",
    }
    return work.shop_lengths(f"shop-{slug(name)}", vise, words)


def stop_sizes(work: Work) -> dict[str, Number]:
    """The work stop's sizes, if the shop has one."""
    found = of_kind(work, kit.Stop)
    if found is None:
        return {}
    sizes = work.shop_lengths(f"shop-{slug(found[0])}", found[1], {"thickness": "thickness", "reach": "reach"})
    return {f"stop {words}": number for words, number in sizes.items()}


def plan_vise(
    work: Work,
    hold_id: str,
    set_up: SetUp,
    up: str,
    jaw: str,
    stop: str,
    lying: Lie,
    height: Number,
    opening: Number,
    needs: Needs,
) -> HoldPlan:
    """Work in the vise on parallels: which pair, how much is gripped, what stands above the jaws."""
    assert set_up.hold is not None
    holder = work.shop.holding.get(set_up.hold.holder)
    if not isinstance(holder, kit.Vise):
        raise AssertionError("checked before")
    sizes = vise_sizes(work, set_up.hold.holder, holder)
    sizes["opening"] = opening
    if opening.value > sizes["largest opening"].value:
        work.problem(
            set_up.hold.place("against_fixed_jaw"),
            f"the vise opens {sizes['largest opening'].shown} and the work is {opening.shown} across",
            "hold it by other faces",
        )
    sizes.update(stop_sizes(work) if stop else {})
    found = of_kind(work, kit.Parallels)
    chosen = choose_pair(work, found, sizes["jaw depth"], height, needs) if found else None
    chosen = chosen or (pair_to_get(work, hold_id, set_up, found, sizes["jaw depth"], height, needs) if found else None)
    zero = work.nothing("vise-bed", "work lying on the bed of the vise")
    if chosen is None:
        sizes["parallel height"] = zero
        if needs.above is not None or needs.below is not None:
            wrong, instead = short_of(work, sizes["jaw depth"], height, needs)
            work.problem(set_up.hold.place("on"), wrong, instead)
    else:
        sizes.update(pair_sizes(work, *chosen))
    sizes["grip"] = work.of(hold_id).length(
        "grip",
        holding.grip_depth,
        "height held by the jaws",
        jaw_depth=sizes["jaw depth"],
        parallel_height=sizes["parallel height"],
        work_height=height,
    )
    sizes["proud"] = work.of(hold_id).length(
        "proud", holding.proud, "work standing above the jaws", work_height=height, grip=sizes["grip"]
    )
    side = lying.side(stop)[1] if stop else 0
    return HoldPlan(
        "vise",
        from_shop(set_up.hold.holder),
        sizes,
        up,
        jaw,
        stop,
        side,
        instructions=tuple(vise_words(up, jaw, stop, side, sizes, chosen)),
    )


def least_held(work: Work, height: Number) -> float:
    """How much of the work must be between the jaws: of thin work a share of its height is enough."""
    least = work.rule("least grip").value
    return least if height.value >= 2 * least else turning.short_grip(height.value, work.rule("thin grip").value)


def short_of(work: Work, jaw_depth: Number, height: Number, needs: Needs) -> tuple[str, str]:
    """Why no pair of parallels does, and what to do."""
    least = least_held(work, height)
    if needs.keep is not None:
        return (
            f"on the parallels of the set-up before, {needs.keep.shown} high, cutter and finder do not clear the vise "
            "and what comes through",
            "set zero anew: write zero: in place of keep zero:",
        )
    if needs.above is not None and height.value < needs.above.value + least - 1e-9:
        return (
            f"the work is {height.shown} high as it lies here: at least {least:.4g} must be between the jaws and "
            f"{needs.above.shown} above them ({needs.above.label})",
            "cut it from another face, or make the part thicker; where the edge finder asks for the room, touch "
            "another edge, or write a line: in the place of an edge",
        )
    if needs.below is not None and needs.below.value > jaw_depth.value - least + 1e-9:
        return (
            f"under the work {needs.below.shown} must stay free for what comes through, and {least:.4g} of it must be "
            f"between jaws that are {jaw_depth.shown} deep",
            "hold it by other faces, or let nothing come so far through",
        )
    low = max(jaw_depth.value - height.value + (needs.above.value if needs.above else 0.0), 0.0)
    low = max(low, needs.below.value if needs.below else 0.0)
    return (
        f"only parallels between {low:.4g} and {jaw_depth.value - least:.4g} high would do here, and no usual pair is",
        "hold it by other faces, or add such a pair to the shop file",
    )


def choose_pair(
    work: Work, found: tuple[str, Model], jaw_depth: Number, height: Number, needs: Needs
) -> tuple[str, kit.ParallelPair, Number] | None:
    """The lowest pair that lifts the work enough, with no less than the least grip: low pairs grip most."""
    name, parallels = found
    assert isinstance(parallels, kit.Parallels)
    convert = UNIT[work.shop.units], work.unit
    least = least_held(work, height)
    fitting = []
    for pair in parallels.pairs:
        tall = quantity.convert(pair.height.value({}), *convert)
        grip = min(jaw_depth.value - tall, height.value)
        above = height.value - grip
        if tall >= jaw_depth.value or grip < least - 1e-9:
            continue
        if needs.keep is not None and abs(tall - needs.keep.value) > 1e-9:
            continue
        if needs.above is not None and above < needs.above.value - 1e-9:
            continue
        if needs.below is not None and tall < needs.below.value - 1e-9:
            continue
        fitting.append((tall, pair))
    if not fitting:
        return None
    length = work.shop_length(f"shop-{slug(name)}.length", parallels.length, "length of the parallels")
    return name, min(fitting, key=lambda entry: entry[0])[1], length


def pair_to_get(
    work: Work, hold_id: str, set_up: SetUp, found: tuple[str, Model], jaw_depth: Number, height: Number, needs: Needs
) -> tuple[str, kit.ParallelPair, Number] | None:
    """The lowest usual pair that would do where the shop has none, with a warning; nothing where none could do."""
    name, parallels = found
    assert isinstance(parallels, kit.Parallels)
    step, least = work.rule("parallel step").value, least_held(work, height)
    lift = jaw_depth.value - height.value + (needs.above.value if needs.above is not None else 0.0)
    wanted = max(lift, needs.below.value if needs.below is not None else 0.0, step)
    tall = math.ceil(wanted / step - 1e-9) * step if needs.keep is None else needs.keep.value
    if tall < wanted - 1e-9 or tall >= jaw_depth.value or min(jaw_depth.value - tall, height.value) < least - 1e-9:
        return None
    convert = work.unit, UNIT[work.shop.units]
    near = min(parallels.pairs, key=lambda pair: abs(pair.height.value({}) - quantity.convert(tall, *convert)))
    written = parse(f"{quantity.convert(tall, *convert):.4f}", parallels.mark, convert[1])
    pair = kit.ParallelPair(height=written, thickness=near.thickness, assumed=True, mark=parallels.mark)
    there = work.shop_lengths(f"shop-{slug(name)}-{slug(near.height.text)}", near, {"height": "height"})
    wanted_pair = pair_sizes(work, name, pair, jaw_depth)["parallel height"]
    work.warnings += (
        []
        if needs.keep is not None
        else [
            line(
                "{set_up}: no pair of the shop's parallels lets cutter and finder clear and grips enough. The card is "
                "worked out with a pair {wanted} high; the nearest there is {near}.",
                set_up=from_job(set_up.title),
                wanted=wanted_pair,
                near=there["height"],
            )
        ]
    )
    length = work.shop_length(f"shop-{slug(name)}.length", parallels.length, "length of the parallels")
    return name, pair, length


def pair_sizes(work: Work, name: str, pair: kit.ParallelPair, length: Number) -> dict[str, Number]:
    """The chosen pair's sizes. The id is the pair's height, so that the same pair is the same number everywhere."""
    pair_id = f"{'pair' if pair.assumed else 'shop'}-{slug(name)}-{slug(pair.height.text)}"
    sizes = work.shop_lengths(pair_id, pair, {"height": "height", "thickness": "thickness"})
    return {"parallel height": sizes["height"], "parallel thickness": sizes["thickness"], "parallel length": length}


def vise_words(
    up: str,
    jaw: str,
    stop: str,
    side: int,
    sizes: Mapping[str, Number],
    chosen: tuple[str, kit.ParallelPair, Number] | None,
) -> list[Line]:
    """What to do, in order."""
    said = [line("{up} up, {jaw} against the fixed jaw.", up=f"The {up}", jaw=f"the {jaw}")]
    if stop:
        where = "right" if side > 0 else "left"
        said.append(line("Slide the work against the stop on the {where} with its {stop}.", where=where, stop=stop))
    if chosen:
        said.append(
            line(
                "Parallels {height} high and {thickness} thick, one along each jaw. Tap the work down until "
                "neither slides.",
                height=sizes["parallel height"],
                thickness=sizes["parallel thickness"],
            )
        )
    said.append(line("The jaws grip {grip}; {proud} stands above them.", grip=sizes["grip"], proud=sizes["proud"]))
    return said
