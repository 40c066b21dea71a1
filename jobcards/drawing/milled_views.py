"""Milled shapes on a block's drawing: in the view that shows their outline, where they stand and what they measure.

What runs right across shows its outline in the view along it; what is closed shows it in the view of its face.
"""

import math
from collections.abc import Callable, Iterator

import numpy as np

from jobcards.drawing.block_views import AT_PLUS, counted
from jobcards.drawing.dimension import linear
from jobcards.drawing.leader import point_out
from jobcards.drawing.mesh import View
from jobcards.drawing.paper import EM, Box, Piece, Row, Rows, Sheet, amount, tolerance, words
from jobcards.drawing.views import FRONT, RIGHT_END, TOP, Drawn
from jobcards.planning.card import FeaturePlan, ShapePlan
from jobcards.planning.number import Number

STRAIGHT = {"front": "z", "back": "z", "top": "y", "bottom": "y", "left end": "x", "right end": "x"}
ALONG_VIEW = {"x": RIGHT_END, "y": TOP, "z": FRONT}
BLOCK = {"x": "length", "y": "height", "z": "thickness"}
SIDES = {FRONT: {"x": "below", "y": "left"}, TOP: {"x": "above", "z": "right"}, RIGHT_END: {"z": "below", "y": "right"}}
ROOM = 11.0 * EM  # for lettering beside a narrow view
GAP: Row = (Piece(" ", small=True),)


def closed(feature: FeaturePlan) -> bool:
    """Whether its ends are closed, so that its outline shows on its face."""
    return "from" in feature.sizes or "to" in feature.sizes


def cross_axis(feature: FeaturePlan) -> str:
    """The axis of its face across what runs along it."""
    return next(axis for axis in "xyz" if axis not in (feature.along, STRAIGHT[feature.enters]))


def edge_along(feature: FeaturePlan, edge: str) -> str:
    """The axis that a worked edge runs along."""
    return next(axis for axis in "xyz" if axis not in (STRAIGHT[edge], STRAIGHT[feature.enters]))


def shown_edge(feature: FeaturePlan) -> str:
    """The edge that is lettered: one that the front view shows as a corner, or else the next best."""
    order = ("z", "y", "x")
    return min(feature.edges, key=lambda edge: order.index(edge_along(feature, edge)))


def view_of(feature: FeaturePlan) -> View | None:
    """The view that shows its outline; nothing for a shape of another family."""
    if feature.edges:
        return ALONG_VIEW[edge_along(feature, shown_edge(feature))]
    if feature.shape == "round end":
        return ALONG_VIEW[STRAIGHT[feature.enters]]
    if not feature.along:
        return None
    return ALONG_VIEW[STRAIGHT[feature.enters] if closed(feature) else feature.along]


def needs_end(shape: ShapePlan) -> bool:
    """Whether the view of the right end shows the outline of any."""
    return any(view_of(feature) is RIGHT_END for feature in shape.features)


def of_view(shape: ShapePlan, view: Drawn) -> Iterator[FeaturePlan]:
    """The milled shapes that a view shows in outline."""
    return (feature for feature in shape.features if view_of(feature) is view.view)


def place_milled(view: Drawn, shape: ShapePlan) -> None:
    """Where the milled shapes of a view stand: each distance once."""
    known = {(d.side, round(d.start[d.level_axis], 3), round(d.end[d.level_axis], 3)) for d in view.dimensions}
    for feature in of_view(shape, view):
        for axis, number in places(feature):
            side = SIDES[view.view][axis]
            shown, datum = counted(shape, feature, axis, number)
            start, end = np.array(view.at(**{axis: datum})), np.array(view.at(**{axis: number.value}))
            line = 1 if side in {"above", "below"} else 0
            edges = {"below": view.body.low, "above": view.body.high, "left": view.body.left, "right": view.body.right}
            start[line] = end[line] = edges[side]
            short = axis not in feature.counted
            dimension = linear(shown, tuple(start.tolist()), tuple(end.tolist()), side, short=short)
            key = (side, round(dimension.start[dimension.level_axis], 3), round(dimension.end[dimension.level_axis], 3))
            if key not in known:
                known.add(key)
                view.dimensions.append(dimension)


def places(feature: FeaturePlan) -> Iterator[tuple[str, Number]]:
    """The distances that tell where it stands, each with its axis: middle or side, and where a closed end begins."""
    if feature.places:
        yield from feature.places[0].items()
        return
    if feature.edges:
        return
    for name in ("centre", "low"):
        if name in feature.sizes:
            yield cross_axis(feature), feature.sizes[name]
            break
    if "from" in feature.sizes:
        yield feature.along, feature.sizes["from"]


def label_milled(sheet: Sheet, view: Drawn, shape: ShapePlan, within: Box) -> None:
    """A leader with its sizes to each milled shape of a view."""
    room = Box(within.left, within.low, within.right + (ROOM if view.view is RIGHT_END else 0.0), within.high)
    for feature in of_view(shape, view):
        point_out(sheet, ROWS[feature.shape](feature), spot(view, shape, feature), 0.0, room)


def spot(view: Drawn, shape: ShapePlan, feature: FeaturePlan) -> tuple[float, float]:
    """A point on its outline, a little inside it."""
    straight = STRAIGHT[feature.enters]
    surface = shape.sizes[BLOCK[straight]].value if feature.enters in AT_PLUS else 0.0
    inward = -1.0 if feature.enters in AT_PLUS else 1.0
    if feature.edges:
        edge = shown_edge(feature)
        across, wide = STRAIGHT[edge], feature.sizes.get("size", feature.sizes.get("radius"))
        assert wide is not None
        at_edge = shape.sizes[BLOCK[across]].value if edge in AT_PLUS else 0.0
        back = -1.0 if edge in AT_PLUS else 1.0
        share = 0.5 if "size" in feature.sizes else 0.293  # the middle of the chamfer, or of the arc
        return view.at(
            **{
                across: at_edge + back * share * wide.value,
                straight: surface + inward * share * feature.sizes["depth"].value,
            }
        )
    if closed(feature):
        low, high = feature.sizes["low"].value, feature.sizes["high"].value
        begin = feature.sizes["from"].value if "from" in feature.sizes else 0.0
        end = feature.sizes["to"].value if "to" in feature.sizes else shape.sizes[BLOCK[feature.along]].value
        return view.at(**{cross_axis(feature): high if high < end else low, feature.along: begin + 0.6 * (end - begin)})
    if feature.shape == "round end":
        return on_arc(view, feature)
    floor = surface + inward * feature.sizes["depth"].value
    if feature.shape == "step":
        # Near the floor: of a stair's lower step the upper part of the wall is gone.
        return view.at(**{cross_axis(feature): feature.sizes["wall"].value, straight: floor + 0.2 * (surface - floor)})
    if feature.shape == "dovetail tongue":
        middle = (feature.sizes["high"].value + feature.sizes["wide high"].value) / 2
        return view.at(**{cross_axis(feature): middle, straight: (surface + floor) / 2})
    if feature.shape == "V-groove":
        low, high = feature.sizes["low"].value, feature.sizes["high"].value
        return view.at(**{cross_axis(feature): high - (high - low) / 4, straight: (surface + floor) / 2})
    high = next(feature.sizes[name].value for name in ("head high", "wide high", "high") if name in feature.sizes)
    low = next(feature.sizes[name].value for name in ("head low", "wide low", "low") if name in feature.sizes)
    return view.at(**{cross_axis(feature): low + 0.75 * (high - low), straight: floor})


def on_arc(view: Drawn, feature: FeaturePlan) -> tuple[float, float]:
    """A point on a rounded end, halfway from its middle to its upper or right side."""
    middle = {axis: number.value for axis, number in feature.places[0].items()}
    turn = math.radians(feature.sizes["half arc"].value / 2)
    radius, toward = feature.sizes["radius"].value, STRAIGHT[feature.toward]
    cross = next(axis for axis in middle if axis != toward)
    out = 1.0 if feature.toward in AT_PLUS else -1.0
    return view.at(
        **{
            toward: middle[toward] + out * radius * math.cos(turn),
            cross: middle[cross] + radius * math.sin(turn),
        }
    )


def with_limits(number: Number, after: str = "", before: str = "") -> Row:
    """A size with its deviations, and a word after it."""
    deviation = tolerance(number)
    return (
        *(words(f"{before} ", small=True) if before else ()),
        *amount(number),
        *(GAP if deviation else ()),
        *deviation,
        *(words(f" {after}", small=True) if after else ()),
    )


def deep(feature: FeaturePlan) -> Row:
    """The depth, or that it goes through."""
    return words("through", small=True) if feature.through else with_limits(feature.sizes["depth"], "deep")


def step_rows(feature: FeaturePlan) -> Rows:
    """Width and depth."""
    return (with_limits(feature.sizes["width"], "wide"), deep(feature))


def slot_rows(feature: FeaturePlan) -> Rows:
    """Width, depth, length and the largest radius in its corners."""
    long = (with_limits(feature.sizes["length"], "long"),) if "length" in feature.sizes else ()
    ends = round_ends(feature, "corners at most ")
    return (with_limits(feature.sizes["width"], "wide"), *long, deep(feature), *ends)


def round_ends(feature: FeaturePlan, said: str) -> Rows:
    """The radius of closed ends, where there are any."""
    if "corner radius" not in feature.sizes:
        return ()
    return ((*words(said, small=True), *amount(feature.sizes["corner radius"], "R ")),)


def closed_rows(feature: FeaturePlan, said: str) -> Rows:
    """How long what has closed ends is where it is widest, and their radius."""
    long = (with_limits(feature.sizes["length"], "long over all"),) if "length" in feature.sizes else ()
    return (*long, *round_ends(feature, said))


def t_slot_rows(feature: FeaturePlan) -> Rows:
    """Neck and head."""
    at = feature.sizes
    return (
        (*with_limits(at["neck width"], before="neck"), *words(" × ", small=True), *amount(at["neck depth"])),
        (*with_limits(at["head width"], before="head"), *words(" × ", small=True), *amount(at["head height"])),
        *closed_rows(feature, "head ends at most "),
    )


def dovetail_rows(feature: FeaturePlan) -> Rows:
    """The narrow width, the height, the angle, and the measure over or between pins."""
    at = feature.sizes
    over = "over pins" if "over pins" in at else "between pins"
    foot = "at its foot" if feature.shape == "dovetail tongue" else "at the face"
    return (
        with_limits(at["narrow width"], foot),
        (*amount(at["height"]), *words(" high, ", small=True), *amount(at["angle"])),
        (*amount(at[over]), *words(f" {over} ", small=True), *amount(at["pin"], "⌀")),
        *closed_rows(feature, "floor ends at most "),
    )


def vee_rows(feature: FeaturePlan) -> Rows:
    """The angle, the width and the depth."""
    at = feature.sizes
    return (
        (*amount(at["angle"]), *words(" V", small=True)),
        with_limits(at["width"], "wide"),
        with_limits(at["depth"], "deep"),
        *closed_rows(feature, "end at the face "),
    )


def chamfer_rows(feature: FeaturePlan) -> Rows:
    """The size on the face and the angle; on which edges."""
    at = feature.sizes
    return ((*amount(at["size"]), *words(" × ", small=True), *amount(at["angle"])), *on_edges(feature))


def round_rows(feature: FeaturePlan) -> Rows:
    """The radius; on which edges."""
    return (amount(feature.sizes["radius"], "R "), *on_edges(feature))


def on_edges(feature: FeaturePlan) -> Rows:
    """Which edges: the face and the face that meets it there."""
    return tuple(words(f"{feature.enters}/{edge}", small=True) for edge in feature.edges)


ROWS: dict[str, Callable[[FeaturePlan], Rows]] = {
    "step": step_rows,
    "slot": slot_rows,
    "key slot": slot_rows,
    "pocket": slot_rows,
    "T-slot": t_slot_rows,
    "dovetail slot": dovetail_rows,
    "dovetail tongue": dovetail_rows,
    "V-groove": vee_rows,
    "chamfer": chamfer_rows,
    "corner round": round_rows,
    "round end": round_rows,
}
