"""T-slots, dovetails, V-grooves and worked edges of a block as numbers, with what they are checked by."""

from collections.abc import Mapping

from jobcards.definition.features import Feature, milled
from jobcards.planning.card import FeaturePlan
from jobcards.planning.number import Number
from jobcards.planning.pins import pin_near
from jobcards.planning.shapes.milled import (
    Block,
    block_size,
    check_floor,
    check_walls,
    closed_ends,
    cross_axis,
    straight_axis,
    walls,
)
from jobcards.planning.shapes.place import ALONG, Planner
from jobcards.planning.work import Work
from jobcards.trade import angles, dovetails, slots, vees
from jobcards.trade import milling as sums


def middle(work: Work, feature_id: str, name: str, feature: milled.Across) -> Number:
    """Where the middle of what runs across a face stands."""
    across = cross_axis(feature.enters, feature.along)
    return work.expression(f"{feature_id}.centre", feature.centre, f"{name}: middle, {ALONG[across]}")  # type: ignore[attr-defined]


def plan_t_slot(work: Work, feature_id: str, name: str, slot: Feature, block: Block) -> FeaturePlan:
    """A T-slot: neck, head, the reach under the lips and the whole depth."""
    assert isinstance(slot, milled.TSlot)
    words = {"neck width": slot.neck_width, "neck depth": slot.neck_depth}
    words |= {"head width": slot.head_width, "head height": slot.head_height}
    sizes = {
        key: work.expression(f"{feature_id}.{key.replace(' ', '-')}", written, f"{name}: {key}")
        for key, written in words.items()
    }
    centre = middle(work, feature_id, name, slot)
    sizes["depth"] = work.of(feature_id).length(
        "depth", sums.support_height, f"{name}: whole depth", base=sizes["neck depth"], rise=sizes["head height"]
    )
    sizes["undercut"] = work.of(feature_id).length(
        "undercut",
        slots.tslot_undercut,
        f"{name}: reach under each lip",
        cutter=sizes["head width"],
        throat=sizes["neck width"],
    )
    sizes["centre"] = centre
    sizes.update(walls(work, feature_id, name, centre, sizes["neck width"]))
    sizes.update(walls(work, feature_id, name, centre, sizes["head width"], "head"))
    sizes.update(ends_under(work, feature_id, name, slot, block, ("head width", "neck"), sizes))
    check_depth(work, feature_id, slot, "neck_depth", name, sizes["depth"], block)
    across = cross_axis(slot.enters, slot.along)
    check_walls(work, feature_id, slot, "centre", name, sizes["head low"], sizes["head high"], across, block)
    return FeaturePlan(name, slot.shape, slot.enters, sizes, along=slot.along)


def ends_under(
    work: Work,
    feature_id: str,
    name: str,
    slot: milled.RunsOut,
    block: Block,
    widths: tuple[str, str],
    sizes: Mapping[str, Number],
) -> dict[str, Number]:
    """Closed ends where it is widest, and those of its opening: the lip is as wide there as along its sides."""
    wide, opening = widths
    found = closed_ends(work, feature_id, name, slot, block, sizes[wide])
    check_long(work, name, slot, {**sizes, **found}, wide)
    of = work.of(feature_id)
    if "from" in found:
        found[f"{opening} from"] = of.length(
            "opening-from",
            sums.support_height,
            f"{name}: {opening}, begins",
            base=found["from"],
            rise=sizes["undercut"],
        )
    if "to" in found:
        found[f"{opening} to"] = of.length(
            "opening-to", sums.left_to_take, f"{name}: {opening}, ends", full=found["to"], taken=sizes["undercut"]
        )
    return found


def check_long(work: Work, name: str, slot: milled.RunsOut, sizes: Mapping[str, Number], wide: str) -> None:
    """What is closed at both ends is at least as long as it is wide: its ends are round."""
    if "from" in sizes and "length" in sizes and sizes["length"].value < sizes[wide].value - 1e-9:
        work.problem(
            slot.place("length"),
            f"“{name}” is {sizes['length'].shown} long and {sizes[wide].shown} wide; its ends are round",
            "make it longer",
        )


def check_depth(
    work: Work, feature_id: str, feature: milled.Across, field: str, name: str, depth: Number, block: Block
) -> None:
    """Something is left under the floor of what runs across a face."""
    feature.marks.setdefault("depth", feature.place(field))
    check_floor(work, feature_id, feature, name, depth, block_size(block, straight_axis(feature.enters)))


def plan_dovetail(work: Work, feature_id: str, name: str, tail: Feature, block: Block) -> FeaturePlan:
    """A dovetail slot or tongue: both widths, and the measure over or between pins."""
    assert isinstance(tail, milled.DovetailSlot | milled.DovetailTongue)
    sizes = {
        "narrow width": work.expression(f"{feature_id}.narrow", tail.narrow_width, f"{name}: narrow width"),
        "height": work.expression(f"{feature_id}.height", tail.height, f"{name}: height"),
        "angle": work.expression(f"{feature_id}.angle", tail.angle, f"{name}: flank from the floor", "deg"),
    }
    sizes["depth"] = sizes["height"]
    sizes["wide width"] = work.of(feature_id).length(
        "wide",
        dovetails.dovetail_wide,
        f"{name}: wide width",
        narrow=sizes["narrow width"],
        height=sizes["height"],
        angle=sizes["angle"],
    )
    sizes.update(dovetail_pins(work, feature_id, name, tail, sizes))
    sizes["centre"] = middle(work, feature_id, name, tail)
    sizes.update(walls(work, feature_id, name, sizes["centre"], sizes["narrow width"]))
    sizes.update(walls(work, feature_id, name, sizes["centre"], sizes["wide width"], "wide"))
    if isinstance(tail, milled.DovetailSlot) and (tail.start is not None or tail.length is not None):
        sizes["undercut"] = work.of(feature_id).length(
            "undercut",
            slots.tslot_undercut,
            f"{name}: reach under each flank",
            cutter=sizes["wide width"],
            throat=sizes["narrow width"],
        )
        sizes.update(ends_under(work, feature_id, name, tail, block, ("wide width", "narrow"), sizes))
    check_depth(work, feature_id, tail, "height", name, sizes["height"], block)
    across = cross_axis(tail.enters, tail.along)
    check_walls(work, feature_id, tail, "centre", name, sizes["wide low"], sizes["wide high"], across, block)
    return FeaturePlan(name, tail.shape, tail.enters, sizes, along=tail.along)


def dovetail_pins(
    work: Work,
    feature_id: str,
    name: str,
    tail: milled.DovetailSlot | milled.DovetailTongue,
    sizes: Mapping[str, Number],
) -> dict[str, Number]:
    """The pins, the largest that still lie on the flank, and what is measured over or between two of them."""
    height, angle = sizes["height"], sizes["angle"]
    largest = work.of(feature_id).length(
        "largest-pin", dovetails.largest_pin, f"{name}: largest pin that lies on the flank", height=height, angle=angle
    )
    if tail.pin is not None:
        pin = work.expression(f"{feature_id}.pin", tail.pin, f"{name}: pins")
        if pin.value > largest.value + 1e-9:
            work.problem(
                tail.place("pin"),
                f"a pin of {pin.shown} lies on the corners of “{name}”, not on its flanks",
                f"take one well under {largest.shown}",
            )
    else:
        middle = work.of(feature_id).length(
            "middle-pin",
            dovetails.middle_pin,
            f"{name}: pin that lies on the middle of the flank",
            height=height,
            angle=angle,
        )
        pin = pin_near(work, feature_id, name, middle)
    found = {"pin": pin, "largest pin": largest}
    if isinstance(tail, milled.DovetailTongue):
        found["over pins"] = work.of(feature_id).length(
            "over-pins",
            dovetails.over_pins,
            f"{name}: over the two pins",
            narrow=sizes["narrow width"],
            pin=pin,
            angle=angle,
        )
    else:
        found["between pins"] = work.of(feature_id).length(
            "between-pins",
            dovetails.between_pins,
            f"{name}: between the two pins",
            wide=sizes["wide width"],
            pin=pin,
            angle=angle,
        )
    return found


def plan_vee(work: Work, feature_id: str, name: str, vee: Feature, block: Block) -> FeaturePlan:
    """A V-groove: width from depth or depth from width, and the height over a pin laid in it."""
    assert isinstance(vee, milled.VGroove)
    sharp = work.nothing(f"{feature_id}.root", f"{name}: sharp at the bottom", "the job's definition")
    angle = work.expression(f"{feature_id}.angle", vee.angle, f"{name}: between its flanks", "deg")
    if vee.width is not None:
        width = work.expression(f"{feature_id}.width", vee.width, f"{name}: width at the face")
        depth = work.of(feature_id).length(
            "depth", vees.vee_depth, f"{name}: depth", width=width, root=sharp, angle=angle
        )
    else:
        assert vee.depth is not None
        depth = work.expression(f"{feature_id}.depth", vee.depth, f"{name}: depth")
        width = work.of(feature_id).length(
            "width", vees.vee_width, f"{name}: width at the face", depth=depth, root=sharp, angle=angle
        )
    if vee.pin is not None:
        pin = work.expression(f"{feature_id}.pin", vee.pin, f"{name}: pin")
    else:
        halfway = work.of(feature_id).length(
            "middle-pin",
            vees.vee_middle_pin,
            f"{name}: pin that lies on the middle of the flanks",
            width=width,
            angle=angle,
        )
        pin = pin_near(work, feature_id, name, halfway)
    sizes = {"width": width, "depth": depth, "angle": angle, "pin": pin}
    sizes["over the pin"] = work.of(feature_id).length(
        "over-pin", vees.vee_over_pin, f"{name}: face to the top of the pin", width=width, pin=pin, angle=angle
    )
    sizes["centre"] = middle(work, feature_id, name, vee)
    sizes.update(walls(work, feature_id, name, sizes["centre"], width))
    sizes.update(closed_ends(work, feature_id, name, vee, block, width))
    check_long(work, name, vee, sizes, "width")
    check_depth(work, feature_id, vee, "depth" if vee.depth is not None else "width", name, depth, block)
    across = cross_axis(vee.enters, vee.along)
    check_walls(work, feature_id, vee, "centre", name, sizes["low"], sizes["high"], across, block)
    return FeaturePlan(name, vee.shape, vee.enters, sizes, along=vee.along)


def plan_machined_chamfer(work: Work, feature_id: str, name: str, chamfer: Feature, block: Block) -> FeaturePlan:
    """A chamfer along some edges of a face: its size on the face, and how far down it goes."""
    assert isinstance(chamfer, milled.Chamfer)
    size = work.expression(f"{feature_id}.size", chamfer.size, f"{name}: measured on the {chamfer.enters}")
    if chamfer.angle is not None:
        angle = work.expression(f"{feature_id}.angle", chamfer.angle, f"{name}: from the {chamfer.enters}", "deg")
    else:
        angle = work.ledger.given(
            f"{feature_id}.angle", 45.0, "deg", f"{name}: from the {chamfer.enters}", "the job's definition"
        )
    depth = work.of(feature_id).length(
        "depth", angles.relief_drop, f"{name}: measured down from the face", distance=size, angle=angle
    )
    sizes = {"size": size, "angle": angle, "depth": depth}
    check_floor(work, feature_id, chamfer, name, depth, block_size(block, straight_axis(chamfer.enters)))
    return FeaturePlan(name, chamfer.shape, chamfer.enters, sizes, edges=tuple(chamfer.edges))


def plan_round(work: Work, feature_id: str, name: str, corner: Feature, block: Block) -> FeaturePlan:
    """Edges of a face rounded."""
    assert isinstance(corner, milled.CornerRound)
    radius = work.expression(f"{feature_id}.radius", corner.radius, f"{name}: radius")
    check_floor(work, feature_id, corner, name, radius, block_size(block, straight_axis(corner.enters)))
    return FeaturePlan(
        name, corner.shape, corner.enters, {"radius": radius, "depth": radius}, edges=tuple(corner.edges)
    )


PLANNERS: dict[type, Planner] = {
    milled.TSlot: plan_t_slot,
    milled.DovetailSlot: plan_dovetail,
    milled.DovetailTongue: plan_dovetail,
    milled.VGroove: plan_vee,
    milled.Chamfer: plan_machined_chamfer,
    milled.CornerRound: plan_round,
}
