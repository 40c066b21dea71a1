"""The dimensioned views of a block: front, top above it and right end beside it, as in third-angle projection."""

from collections import defaultdict
from collections.abc import Iterable, Mapping
from dataclasses import dataclass

import numpy as np

from jobcards.drawing.detail import SERRATED, face_in_view, profile_view
from jobcards.drawing.dimension import TAIL, Dimension, arrow, linear
from jobcards.drawing.hole_words import rows_of
from jobcards.drawing.leader import point_out
from jobcards.drawing.mesh import Mesh
from jobcards.drawing.paper import EM, THIN, Box, Measured, Piece, Row, Rows, Sheet, amount, arc, tolerance, words
from jobcards.drawing.views import FRONT, OVER, RIGHT_END, TOP, Drawn, view_of
from jobcards.planning.card import FeaturePlan, ShapePlan
from jobcards.planning.number import Number

ROUND = ("hole", "partial bore", "counterbore", "tapped hole", "countersink")
MOUTHS = ("counterbore", "countersink")  # they share the leader of the hole they are on
FACE_VIEWS = {"front": FRONT, "back": FRONT, "top": TOP, "bottom": TOP, "left end": RIGHT_END, "right end": RIGHT_END}
STRAIGHT = {"front": "z", "back": "z", "top": "y", "bottom": "y", "left end": "x", "right end": "x"}
ALONG = {"x": "length", "y": "height", "z": "thickness"}
AT_PLUS = ("front", "top", "right end")  # the faces that stand at the part's sizes and not at nothing


@dataclass(frozen=True)
class Alike:
    """Round features that show the same and stand at the same places: one leader does for all."""

    features: tuple[FeaturePlan, ...]

    @property
    def first(self) -> FeaturePlan:
        """The one whose numbers are lettered."""
        return self.features[0]


def front_view(mesh: Mesh, shape: ShapePlan, scale: float) -> Drawn:
    """The front view: length, height, what enters the front or back, and slopes and grooves in profile."""
    view = view_of(mesh, FRONT, scale)
    length, height = (shape.sizes[name] for name in ("length", "height"))
    for axis, number in (("x", length), ("y", height)):
        overall(view, axis, number, {"x": "below", "y": "left"}[axis])
    positions(view, shape, ("front", "back"), {"x": "below", "y": "left"})
    for feature in shape.features:
        if feature.shape == "bevel":
            start, end = feature.sizes["start"], length.value if feature.toward == "right end" else 0.0
            way = -1.0 if feature.toward == "right end" else 1.0
            level = height.value if feature.enters == "top" else 0.0
            ends = view.at(end, level), view.at(end + way * start.value, level)
            view.dimensions.append(linear(start, *ends, "above" if feature.enters == "top" else "below"))
    first_grooves(view, shape)
    axes_of_holes(view, shape)
    return view


def first_grooves(view: Drawn, shape: ShapePlan) -> None:
    """Where the first groove of each row stands that the view shows in profile."""
    for row in (f for f in shape.features if f.shape in SERRATED and profile_view(f) is view.view):
        surface, inward = face_in_view(shape, row)
        first, depth = row.sizes["first"], row.sizes["depth"].value
        ends = (0.0, surface * view.scale), (first.value * view.scale, (surface + inward * depth) * view.scale)
        view.dimensions.append(linear(first, *ends, "above" if inward < 0 else "below"))


def top_view(mesh: Mesh, shape: ShapePlan, scale: float) -> Drawn:
    """The view from above: the thickness, and what enters the top or bottom."""
    view = view_of(mesh, TOP, scale)
    overall(view, "z", shape.sizes["thickness"], "left")
    positions(view, shape, ("top", "bottom"), {"x": "above", "z": "right"})
    first_grooves(view, shape)
    axes_of_holes(view, shape)
    return view


def end_view(mesh: Mesh, shape: ShapePlan, scale: float) -> Drawn:
    """The view of the right end, with what enters the ends."""
    view = view_of(mesh, RIGHT_END, scale)
    positions(view, shape, ("left end", "right end"), {"z": "below", "y": "right"})
    axes_of_holes(view, shape)
    return view


def overall(view: Drawn, axis: str, number: Number, side: str) -> None:
    """A size of the block over all, on one side of the view."""
    corner = {axis: number.value}
    start, end = np.array(view.at()), np.array(view.at(**corner))
    line = 1 if side in {"above", "below"} else 0
    edge = {"below": view.body.low, "above": view.body.high, "left": view.body.left, "right": view.body.right}[side]
    start[line] = end[line] = edge
    view.dimensions.append(linear(number, tuple(start.tolist()), tuple(end.tolist()), side))


def positions(view: Drawn, shape: ShapePlan, faces: tuple[str, ...], sides: Mapping[str, str]) -> None:
    """Where the round features of some faces stand: each distance once."""
    found: dict[tuple[str, float], list[Dimension]] = defaultdict(list)
    for feature in shape.features:
        if feature.shape not in ROUND or feature.enters not in faces:
            continue
        radius = feature.sizes["diameter"].value * view.scale / 2
        for place in feature.places:
            view.centre_cross(view.at(**{axis: number.value for axis, number in place.items()}), radius)
        if "circle" in feature.sizes:
            ring(view, feature)
        for index, place in enumerate(told(feature)):
            centre = {axis: number.value for axis, number in place.items()}
            for axis, number in place.items():
                if 0 <= number.value <= shape.sizes[ALONG[axis]].value:
                    shown, datum = counted(shape, feature, axis, number) if index == 0 else (number, 0.0)
                    wanted = position(view, centre, axis, shown, sides[axis], radius, datum)
                    found[(axis, round(number.value, 9))].append(wanted)
    for (axis, _), dimensions in found.items():
        outward = 1.0 if sides[axis] in {"above", "right"} else -1.0
        view.dimensions.append(max(dimensions, key=lambda d: outward * d.end[1 - d.level_axis]))


def told(feature: FeaturePlan) -> tuple[Mapping[str, Number], ...]:
    """The places that are dimensioned: all that are written out, the first of a row, the middle of a circle."""
    if "circle" in feature.sizes:
        return ({axis: feature.sizes[f"centre {axis}"] for axis in feature.places[0]},)
    return feature.places[:1] if "pitch" in feature.sizes else feature.places


def ring(view: Drawn, feature: FeaturePlan) -> None:
    """The circle through the middles, and its centre."""
    centre = view.at(**{axis: number.value for axis, number in told(feature)[0].items()})
    view.centre_cross(centre, EM)
    view.rings.append((centre, feature.sizes["circle"].value / 2 * view.scale))


def counted(shape: ShapePlan, feature: FeaturePlan, axis: str, number: Number) -> tuple[Number, float]:
    """The distance that is dimensioned, and where it begins: the author's own where he gave it limits."""
    own = feature.counted.get(axis)
    if own is None:
        return number, 0.0
    return own.size, shape.sizes[ALONG[axis]].value if own.edge in AT_PLUS else 0.0


def position(
    view: Drawn, centre: Mapping[str, float], axis: str, number: Number, side: str, radius: float, datum: float = 0.0
) -> Dimension:
    """One distance of a centre from its datum; the extension line goes on from the end of the centre line."""
    start, end = np.array(view.at(**{axis: datum})), np.array(view.at(**centre))
    line = 1 if side in {"above", "below"} else 0
    start[line] = {"below": view.body.low, "above": view.body.high, "left": view.body.left, "right": view.body.right}[
        side
    ]
    outward = 1.0 if side in {"above", "right"} else -1.0
    past = outward * (end[line] + outward * (radius + OVER))
    end[line] = outward * min(past, max(outward * start[line] + OVER, outward * (end[line] + outward * OVER)))
    return linear(number, tuple(start.tolist()), tuple(end.tolist()), side)


def axes_of_holes(view: Drawn, shape: ShapePlan) -> None:
    """The centre lines of round features seen from the side."""
    for feature in shape.features:
        if feature.shape not in ROUND or FACE_VIEWS[feature.enters] is view.view:
            continue
        straight = STRAIGHT[feature.enters]
        size = shape.sizes[ALONG[straight]].value
        depth = size if feature.through else feature.sizes["depth"].value
        ends = (size, size - depth) if feature.enters in {"front", "top", "right end"} else (0.0, depth)
        for place in feature.places:
            centre = {axis: number.value for axis, number in place.items()}
            view.centre_line(view.at(**centre, **{straight: ends[0]}), view.at(**centre, **{straight: ends[1]}))


def alike_of(shape: ShapePlan, faces: Iterable[str]) -> list[Alike]:
    """The round features that enter some faces, those that show the same gathered."""
    found: dict[tuple[object, ...], list[FeaturePlan]] = defaultdict(list)
    for feature in shape.features:
        if feature.shape in ROUND and feature.enters in faces:
            places = tuple(
                tuple(sorted((axis, round(n.value, 9)) for axis, n in place.items())) for place in feature.places
            )
            shown = tuple(feature.sizes[name].shown for name in ("diameter", "depth"))
            found[(feature.shape, feature.through, shown, places)].append(feature)
    return [Alike(tuple(features)) for features in found.values()]


def label_holes(sheet: Sheet, view: Drawn, shape: ShapePlan, faces: tuple[str, ...], within: Box) -> None:
    """A leader with diameter and depth to each kind of round feature; a hole and its counterbore share one."""
    rest = alike_of(shape, faces)
    while rest:
        group = [rest.pop(0)]
        feature = group[0].first
        if feature.shape in {"hole", "tapped hole"}:
            group += [other for other in rest if other.first.shape in MOUTHS and same(other.first, feature)]
            rest = [other for other in rest if other not in group]
        widest = max((alike.first.sizes["diameter"] for alike in group), key=lambda number: number.value)
        place = {axis: number.value for axis, number in feature.places[-1].items()}
        centre, radius = view.at(**place), widest.value / 2 * view.scale
        partial = feature.shape == "partial bore" or not inside(centre, radius, view.body)
        rows = tuple(
            row
            for alike in group
            for row in rows_of(alike.first, tuple(f.enters for f in alike.features), many=alike is group[0])
        )
        point_out(sheet, rows, centre, radius, within, only_in=view.body.grown(-0.3) if partial else None)
        sheet.measured.append(Measured(widest, 2 * radius / view.scale))


def inside(centre: tuple[float, float], radius: float, body: Box) -> bool:
    """Whether a whole circle lies in the view's outline."""
    return Box(centre[0], centre[1], centre[0], centre[1]).grown(radius).within(body)


def label_outside(sheet: Sheet, view: Drawn, shape: ShapePlan, feature: FeaturePlan, within: Box) -> None:
    """How far a bore's centre stands outside the edge: between the edge and the centre line, just beside the bore."""
    outside = feature.sizes.get("centre outside")
    centre = {axis: number.value for axis, number in feature.places[0].items()}
    axis = next((a for a, value in centre.items() if not 0 <= value <= shape.sizes[ALONG[a]].value), None)
    if outside is None or axis is None:
        return
    edge = {**centre, axis: 0.0 if centre[axis] < 0 else shape.sizes[ALONG[axis]].value}
    largest = max(
        f.sizes["diameter"].value for f in shape.features if f.shape in ROUND and f.places and same(f, feature)
    )
    at_centre, at_edge = np.array(view.at(**centre)), np.array(view.at(**edge))
    out = (at_centre - at_edge) / np.linalg.norm(at_centre - at_edge)
    beside = np.array([-out[1], out[0]]) if out[0] else np.array([1.0, 0.0])
    far = beside * (largest / 2 * view.scale + 1.6 * EM)
    inner, outer = at_edge + far, at_centre + far
    sheet.draw([at_centre + far * 0.9, outer + beside * 0.5 * EM], THIN)
    sheet.draw_all([[inner, inner - out * TAIL], [outer, outer + out * TAIL]], THIN)
    arrow(sheet, inner, -out, size=0.7 * EM)
    arrow(sheet, outer, out, size=0.7 * EM)
    rows = (amount(outside), words("centre outside", small=True))
    angles = (-15, -30, -45, 15, 195, 210, 225) if out[1] < 0 else (15, 30, 45, -15, 165, 150, 135)
    tail = outer + out * TAIL
    point_out(sheet, rows, (float(tail[0]), float(tail[1])), 0.0, within, angles=angles, head=False)
    drawn = float(np.linalg.norm(outer - inner)) / view.scale
    sheet.measured.append(Measured(outside, drawn, (tuple(inner.tolist()), tuple(outer.tolist()))))


def same(one: FeaturePlan, other: FeaturePlan) -> bool:
    """Whether two features stand at the same places."""
    return [{a: n.value for a, n in p.items()} for p in one.places] == [
        {a: n.value for a, n in p.items()} for p in other.places
    ]


def label_bevels(sheet: Sheet, view: Drawn, shape: ShapePlan, faces: tuple[str, str], within: Box) -> None:
    """The angle of each slope of two faces seen edge on; where two ends show the same, it is lettered once, for both.

    The first of the faces is the upper one in the view.
    """
    known: list[Number] = []
    bevels = [f for f in shape.features if f.shape == "bevel" and f.enters in faces]
    for feature in bevels:
        angle = feature.sizes["angle"]
        if angle in known:
            continue
        known.append(angle)
        alike = sum(1 for other in bevels if other.sizes["angle"] == angle)
        label_bevel(sheet, view, shape, feature, feature.enters == faces[0], within, "both ends" if alike == 2 else "")


def label_bevel(
    sheet: Sheet, view: Drawn, shape: ShapePlan, feature: FeaturePlan, top: bool, within: Box, more: str
) -> None:
    """The angle of a slope: the face's line runs on past the start of the slope, and an arc stands between the two."""
    angle, start = feature.sizes["angle"], feature.sizes["start"]
    length, right = shape.sizes["length"].value, feature.toward == "right end"
    axis, size = ("y", "height") if feature.enters in {"top", "bottom"} else ("z", "thickness")
    level_of_face = shape.sizes[size].value if feature.enters in {"top", "front"} else 0.0
    corner = view.at(**{"x": length - start.value if right else start.value, axis: level_of_face})
    way = 1.0 if right else -1.0
    reach = start.value * view.scale
    sheet.draw([corner, (corner[0] + way * (reach + EM), corner[1])], THIN)
    level = 0.0 if right else 180.0
    turn = -angle.value if (right == top) else angle.value
    radius = 0.8 * reach
    spread = np.degrees(1.4 * EM / radius)
    outer = np.sign(turn) * spread
    sheet.draw(arc(corner, radius, level - outer, level), THIN)
    sheet.draw(arc(corner, radius, level + turn, level + turn + outer), THIN)
    for at, sign in ((level, -1.0), (level + turn, 1.0)):
        tip = arc(corner, radius, at, at + 1)[0]
        along = np.radians(at + 90 * np.sign(turn) * sign)
        arrow(sheet, tip, (np.cos(along), np.sin(along)), size=0.7 * EM)
    end = arc(corner, radius, level - outer, level)[0]
    first: Row = (*amount(angle), Piece(" ", small=True), *tolerance(angle))
    rows: Rows = (first, words(more, small=True)) if more else (first,)
    away = tuple(range(15, 180, 15)) if top else tuple(range(195, 360, 15))
    point_out(sheet, rows, (float(end[0]), float(end[1])), 0.0, within, angles=away, head=False)
    sheet.measured.append(Measured(angle, abs(turn)))
