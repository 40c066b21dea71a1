"""What is milled and drilled into a turned part: the sizes of cross holes, flats, squares, hexagons and keyways."""

from collections.abc import Mapping

from jobcards.definition import features as drawn
from jobcards.definition.features import Feature
from jobcards.definition.features import round_work as shapes
from jobcards.planning.card import FeaturePlan
from jobcards.planning.number import Number
from jobcards.planning.shapes import turned
from jobcards.planning.shapes.place import Planner
from jobcards.planning.shapes.threads import plan_tapped
from jobcards.planning.work import Work, slug
from jobcards.trade import drilling, milling, round_work, segments, slots

UP = 90.0
ROUND = "round"  # in place of a face: what enters from the outside of the round


def plan_cross_hole(work: Work, feature_id: str, name: str, hole: Feature, part: Mapping[str, Number]) -> FeaturePlan:
    """A hole square to the axis; through, it is as deep as the round is thick there."""
    assert isinstance(hole, shapes.CrossHole)
    at = work.expression(f"{feature_id}.at", hole.at, f"{name}: centre, from the left end")
    sizes: dict[str, Number] = {}
    if hole.thread:
        tapped = drawn.Tapped(
            shape=hole.shape, enters=ROUND, thread=hole.thread, depth=hole.depth, percent=hole.percent
        )
        sizes.update(plan_tapped(work, feature_id, name, tapped))
    elif hole.diameter is not None:
        sizes["diameter"] = work.expression(f"{feature_id}.diameter", hole.diameter, f"{name}: diameter")
    radius = sizes["diameter"].value / 2
    here = round_at(work, feature_id, name, hole, part, (at.value - radius, at.value + radius))
    through = hole.depth == "through"
    if through:
        sizes["depth"] = here
    else:
        sizes["depth"] = work.expression(f"{feature_id}.depth", hole.depth, f"{name}: depth")  # type: ignore[arg-type]
    sizes["fall"] = work.of(feature_id).length(
        "fall",
        drilling.cross_hole_fall,
        f"{name}: how far its rim falls away to the sides",
        shaft=here,
        hole=sizes["diameter"],
    )
    sizes |= {"round": here, "at": at, **around(work, feature_id, name, hole)}
    axis = work.nothing("round-axis", "the axis of the round", "the job's definition")
    return FeaturePlan(name, hole.shape, ROUND, sizes, ({"x": at, "z": axis},), through, thread=hole.thread)


def plan_flat(work: Work, feature_id: str, name: str, flat: Feature, part: Mapping[str, Number]) -> FeaturePlan:
    """A flat: how deep, what is left over it, how wide it comes out."""
    assert isinstance(flat, shapes.Flat)
    sizes = along(work, feature_id, name, flat)
    here = round_at(work, feature_id, name, flat, part, (sizes["from"].value, sizes["to"].value))
    sizes |= depth_and_over(work, feature_id, name, flat, here)
    sizes["flat width"] = work.of(feature_id).length(
        "flat-width", segments.flat_width, f"{name}: width that the flat comes to", diameter=here, depth=sizes["depth"]
    )
    sizes |= {"round": here, **around(work, feature_id, name, flat)}
    left_enough(work, flat, name, sizes)
    if flat.count % 2 == 0:
        sizes["opposite"] = work.of(feature_id).length(
            "opposite",
            milling.left_to_take,
            f"{name}: from flat to flat opposite",
            full=sizes["over"],
            taken=sizes["depth"],
        )
    return FeaturePlan(name, flat.shape, ROUND, sizes)


def plan_polygon(work: Work, feature_id: str, name: str, polygon: Feature, part: Mapping[str, Number]) -> FeaturePlan:
    """Two flats, a square or a hexagon: how deep each flat lies, and whether the bar gives sharp corners."""
    assert isinstance(polygon, shapes.Polygon)
    sizes = along(work, feature_id, name, polygon)
    here = round_at(work, feature_id, name, polygon, part, (sizes["from"].value, sizes["to"].value))
    across = work.expression(f"{feature_id}.across", polygon.across, f"{name}: across the flats")
    sides = shapes.SIDES[polygon.shape]
    sizes |= around(work, feature_id, name, polygon)
    sizes["count"] = work.ledger.counted(
        f"{feature_id}.sides", sides, f"{name}: flats", "the job's definition", "as given"
    )
    sizes["depth"] = work.of(feature_id).length(
        "depth", segments.polygon_depth, f"{name}: depth of each flat below the outside", diameter=here, flats=across
    )
    sizes |= {"across": across, "round": here}
    if sides > 2:
        sizes["corners"] = work.of(feature_id).length(
            "corners",
            segments.round_for_polygon,
            f"{name}: round that gives sharp corners",
            flats=across,
            sides=sizes["count"],
        )
        if sizes["corners"].value > here.value + 1e-9 and not polygon.round_corners:
            work.problem(
                polygon.place("across"),
                f"sharp corners of the {polygon.shape} want a round of {sizes['corners'].shown}, not {here.shown}",
                "turn it larger, write a smaller size, or write round corners: true",
            )
    return FeaturePlan(name, polygon.shape, ROUND, sizes)


def plan_keyway(work: Work, feature_id: str, name: str, keyway: Feature, part: Mapping[str, Number]) -> FeaturePlan:
    """A keyway in a shaft: its floor from the top of the shaft, whichever way the drawing tells it."""
    assert isinstance(keyway, shapes.ShaftKeyway)
    sizes = along(work, feature_id, name, keyway)
    here = round_at(work, feature_id, name, keyway, part, (sizes["from"].value, sizes["to"].value))
    width = work.expression(f"{feature_id}.width", keyway.width, f"{name}: width")
    if keyway.side_depth is not None:
        side = work.expression(f"{feature_id}.side-depth", keyway.side_depth, f"{name}: depth at its sides")
        sizes["side depth"] = side
        sizes["depth"] = work.of(feature_id).length(
            "depth", slots.keyway_depth, f"{name}: depth below the top of the shaft", shaft=here, width=width, side=side
        )
        sizes["over"] = work.of(feature_id).length(
            "over", slots.keyway_over, f"{name}: floor to the far side", shaft=here, width=width, side=side
        )
    else:
        sizes |= depth_and_over(work, feature_id, name, keyway, here)
    sizes |= {"width": width, "round": here, **around(work, feature_id, name, keyway)}
    left_enough(work, keyway, name, sizes)
    return FeaturePlan(name, keyway.shape, ROUND, sizes)


def along(work: Work, feature_id: str, name: str, feature: shapes.AlongTheAxis) -> dict[str, Number]:
    """Where along the part it begins and ends."""
    begin = work.expression(f"{feature_id}.from", feature.start, f"{name}: begins, from the left end")
    length = work.expression(f"{feature_id}.length", feature.length, f"{name}: length")
    end = work.of(feature_id).length(
        "to", milling.support_height, f"{name}: ends, from the left end", base=begin, rise=length
    )
    return {"from": begin, "length": length, "to": end}


def around(work: Work, feature_id: str, name: str, feature: shapes.AroundTheAxis) -> dict[str, Number]:
    """Which way the first one looks, and how many there are."""
    label = f"{name}: which way it looks, on the right end from the right round by the top"
    if feature.angle is None:
        angle = work.ledger.given(f"{feature_id}.angle", UP, "deg", label, "the job's definition", formula="up")
    else:
        angle = work.expression(f"{feature_id}.angle", feature.angle, label, "deg")
    count = work.ledger.counted(
        f"{feature_id}.count", feature.count, f"{name}: how many", "the job's definition", "as given"
    )
    return {"angle": angle, "count": count}


def depth_and_over(
    work: Work, feature_id: str, name: str, feature: shapes.Flat | shapes.ShaftKeyway, here: Number
) -> dict[str, Number]:
    """The depth below the outside and what is left to the far side, one from the other."""
    if feature.over is not None:
        over = work.expression(f"{feature_id}.over", feature.over, f"{name}: to the far side of the round")
        depth = work.of(feature_id).length(
            "depth", milling.left_to_take, f"{name}: depth below the outside", full=here, taken=over
        )
        return {"depth": depth, "over": over}
    assert feature.depth is not None
    depth = work.expression(f"{feature_id}.depth", feature.depth, f"{name}: depth below the outside")
    over = work.of(feature_id).length(
        "over", segments.over_flat, f"{name}: to the far side of the round", diameter=here, depth=depth
    )
    return {"depth": depth, "over": over}


def left_enough(work: Work, feature: Feature, name: str, sizes: Mapping[str, Number]) -> None:
    """Metal must be left round the axis: between flats evenly round it, and under a single one."""
    depth, here, count = sizes["depth"].value, sizes["round"].value, sizes["count"].value
    mark = feature.place("over" if "over" in feature.marks else "depth")
    if depth >= here:
        work.problem(
            mark, f"“{name}” would be {sizes['depth'].shown} deep in a round of {sizes['round'].shown}", "write less"
        )
    elif count > 1 and round_work.left_to_axis(here, depth) <= 0:
        wrong = f"{sizes['count'].shown} of them {sizes['depth'].shown} deep leave nothing of {sizes['round'].shown}"
        work.problem(mark, wrong, "write less than half of the diameter")
    elif depth > here / 2 + 1e-9:
        work.problem(
            mark, f"“{name}” goes past the axis of a round of {sizes['round'].shown}", "write at most half of it"
        )


def round_at(
    work: Work, feature_id: str, name: str, feature: Feature, sizes: Mapping[str, Number], reach: tuple[float, float]
) -> Number:
    """The diameter of the round where a feature stands; it must not stand across a step."""
    part_id = feature_id.removesuffix(f"-{slug(name)}")
    part = next(p for p in work.job.parts.values() if any(f is feature for f in p.features.values()))
    low, high = reach
    if low < -1e-9 or high > sizes["length"].value + 1e-9:
        work.problem(
            feature.mark, f"“{name}” reaches beyond the ends of the part", f"the part is {sizes['length'].shown} long"
        )
        return sizes["diameter"]
    for other, step in part.features.items():
        if not isinstance(step, drawn.TurnedDiameter):
            continue
        found = turned.plan_diameter(work, f"{part_id}-{slug(other)}", other, step, sizes).sizes
        begin, end = found["from"].value, found["to"].value
        if begin - 1e-9 <= low and high <= end + 1e-9:
            return found["diameter"]
        if low < end - 1e-9 and high > begin + 1e-9:
            work.problem(feature.mark, f"“{name}” stands across an end of “{other}”", "keep it on one diameter")
            return found["diameter"]
    return sizes["diameter"]


PLANNERS: dict[type, Planner] = {
    shapes.CrossHole: plan_cross_hole,
    shapes.Flat: plan_flat,
    shapes.Polygon: plan_polygon,
    shapes.ShaftKeyway: plan_keyway,
}
