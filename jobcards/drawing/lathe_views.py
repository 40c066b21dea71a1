"""What else a lathe makes, on the drawing of a turned part: a half section for bores, and leaders with their sizes."""

import numpy as np

from jobcards.drawing.dimension import Dimension, linear
from jobcards.drawing.leader import point_out
from jobcards.drawing.mesh import Mesh, mesh_of
from jobcards.drawing.paper import EM, THIN, Box, Piece, Points, Row, Rows, Sheet, amount, tolerance, words
from jobcards.drawing.views import Drawn
from jobcards.dryrun.revolved import radii_at
from jobcards.dryrun.solids import Solid, box
from jobcards.planning.card import FeaturePlan, ShapePlan

IN_AN_END = ("turned bore", "taper bore", "bore thread", "bore groove", "tapped end", "centre hole")
HATCH = 0.75 * EM  # from line to line, on paper
RIDGE = 0.6 * EM  # from ridge to ridge of a knurl, on paper
LEANS = 0.577  # of the ridges of a crossed one: 30° to the axis
HOLLOW = ("turned bore", "bore thread", "tapped end")
WIDTHS = ("hole", "diameter", "bore least")
HAIR = 1e-6
SHARES = 10  # places looked at along a bore
ALIKE = 0.01  # part of a diameter
UPRIGHT = ((0.0, 1.0, 0.0, 0.0), (0.0, 0.0, 1.0, 0.0), (1.0, 0.0, 0.0, 0.0))  # the part's axis along z
GAP = (Piece(" ", small=True),)


def opened(shape: ShapePlan) -> bool:
    """Whether the part is drawn in half section: where something goes into an end on the axis."""
    return any(f.shape in IN_AN_END for f in shape.features)


def quarter_cut(solid: Solid, shape: ShapePlan) -> Mesh:
    """The part with its upper front quarter taken away, so that the side view shows its upper half in section."""
    length, across = shape.sizes["length"].value, shape.sizes["diameter"].value
    rest = (solid - box((-length, 0.0, 0.0), (2 * length, across, across))).to_mesh64()
    return mesh_of(np.asarray(rest.vert_properties)[:, :3], np.asarray(rest.tri_verts))


def hatch(sheet: Sheet, solid: Solid, scale: float) -> None:
    """Thin lines at 45° over the metal that the section cuts, above the axis."""
    loops = [np.asarray(loop, dtype=float) for loop in solid.slice(0.0).to_polygons()]
    sheet.draw_all(lines_over(loops, scale), THIN)


def lines_over(loops: list[Points], scale: float) -> list[Points]:
    """Lines at 45° inside closed outlines and above the axis, on paper."""
    edges = [(a * scale, b * scale) for loop in loops for a, b in zip(loop, np.roll(loop, -1, axis=0), strict=True)]
    offsets = [y - x for edge in edges for x, y in edge]
    out: list[Points] = []
    for step in range(int(np.floor(min(offsets) / HATCH)), int(np.ceil(max(offsets) / HATCH)) + 1):
        offset = (step + 0.5) * HATCH
        meetings = sorted(x for a, b in edges for x in meeting(a, b, offset))
        for start, end in zip(meetings[::2], meetings[1::2], strict=False):
            low = max(start, -offset)  # y is more than nothing
            if end > low + 1e-6:
                out.append(np.array([[low, low + offset], [end, end + offset]]))
    return out


def meeting(a: Points, b: Points, offset: float) -> list[float]:
    """Where an edge meets the line y = x + offset, if it does: its x."""
    first, second = a[1] - a[0] - offset, b[1] - b[0] - offset
    if (first < 0) == (second < 0):
        return []
    return [float(a[0] + (b[0] - a[0]) * first / (first - second))]


def lengths(view: Drawn, shape: ShapePlan) -> list[Dimension]:
    """Places and lengths of tapers, grooves, threads and bores along the part, above the view."""
    out: list[Dimension] = []
    top = view.body.high
    whole = shape.sizes["length"].value
    for feature in shape.features:
        sizes = feature.sizes
        if feature.shape in ("taper", "turned thread", "knurl"):
            start, end = (sizes[name].value * view.scale for name in ("from", "to"))
            out.append(linear(sizes["length"], (start, top), (end, top), "above"))
        elif feature.shape in ("turned groove", "undercut") and sizes["from"].value > 0:
            out.append(linear(sizes["from"], (0.0, top), (sizes["from"].value * view.scale, top), "above", short=True))
        elif feature.shape in ("turned bore", "taper bore", "bore thread", "tapped end") and not feature.through:
            depth = sizes["depth"].value
            start, end = (whole - depth, whole) if feature.enters == "right end" else (0.0, depth)
            out.append(linear(sizes["depth"], (start * view.scale, top), (end * view.scale, top), "above"))
    return out


def label_all(sheet: Sheet, view: Drawn, shape: ShapePlan, solid: Solid) -> None:
    """A leader to each shape that has no dimension of its own, with its sizes."""
    body = sheet.bounds()
    zone = Box(body.left - 10 * EM, body.low - 10 * EM, body.right + 14 * EM, body.high + 12 * EM)
    for feature in shape.features:
        rows = told(feature)
        if feature.shape == "knurl":
            sheet.draw_all(crossed(view, shape, feature, solid), THIN)
        if rows and not drilled_out(shape, feature):
            x, radius = spot(feature, shape, solid)
            point_out(sheet, rows, view.at(x, radius), 0.0, zone)
        if feature.shape == "bore thread":
            whole, depth = shape.sizes["length"].value, feature.sizes["depth"].value
            low, high = (whole - depth, whole) if feature.enters == "right end" else (0.0, depth)
            outer = feature.sizes["diameter"].value / 2
            sheet.draw([view.at(low, outer), view.at(high, outer)], THIN)
        if feature.shape == "turned thread":
            root = feature.sizes["root"].value / 2
            ends = [feature.sizes[name].value for name in ("from", "to")]
            for side in (-root, root):
                sheet.draw([view.at(end, side) for end in ends], THIN)


def drilled_out(shape: ShapePlan, feature: FeaturePlan) -> bool:
    """Whether nothing is left of a centre hole in the finished part: a wider hole goes in at the same end."""
    if feature.shape != "centre hole":
        return False
    holes = (f for f in shape.features if f.enters == feature.enters and f.shape in IN_AN_END and f is not feature)
    widths = (min(f.sizes[name].value for name in WIDTHS if name in f.sizes) for f in holes if f.shape in HOLLOW)
    return any(width >= feature.sizes["mouth"].value - HAIR for width in widths)


def crossed(view: Drawn, shape: ShapePlan, feature: FeaturePlan, solid: Solid) -> list[Points]:
    """The lines of a knurl over all that is seen of it: crossing, or along the axis; below it in a half section.

    They stop at the chamfers of the ends.
    """
    chamfers = {f.enters: f.sizes["size"].value for f in shape.features if f.shape == "turned chamfer"}
    begin, end = feature.sizes["from"].value, feature.sizes["to"].value
    radius = outside_at(solid, (begin + end) / 2) * view.scale
    low = max(begin, chamfers.get("left end", 0.0)) * view.scale
    high = min(end, shape.sizes["length"].value - chamfers.get("right end", 0.0)) * view.scale
    bottom, top = -radius, 0.0 if opened(shape) else radius
    if feature.toward == "straight":
        levels = np.arange(bottom + RIDGE, top, RIDGE)
        return [np.array([[low, level], [high, level]]) for level in levels]
    out: list[Points] = []
    for slope in (LEANS, -LEANS):
        rise = slope * (high - low)
        for start in np.arange(bottom - abs(rise), top + abs(rise), RIDGE):
            inside = sorted((level - start) / slope for level in (bottom, top))
            left, right = max(0.0, inside[0]), min(high - low, inside[1])
            if right - left > HAIR:
                out.append(np.array([[low + x, start + slope * x] for x in (left, right)]))
    return out


def spot(feature: FeaturePlan, shape: ShapePlan, solid: Solid) -> tuple[float, float]:
    """Where a leader points: along the part, and above or below the axis."""
    sizes, whole = feature.sizes, shape.sizes["length"].value
    if feature.shape in IN_AN_END:
        inward, across = into_end(feature)
        if feature.shape == "turned bore":
            inward = where_seen(feature, shape, solid, inward)
        return (whole - inward if feature.enters == "right end" else inward), across / 2
    if feature.shape == "turned radius":
        rounded = sizes["radius"].value
        way = 1 if feature.enters == "right end" else -1
        outer = outside_at(solid, sizes["at"].value - way * 1.01 * rounded)
        return sizes["at"].value - way * 0.29 * rounded, outer - 0.29 * rounded
    if feature.shape == "turned diameter":
        ends = [sizes[name].value for name in ("from", "to")]
        beside = [min(max(end + way, 0.0), whole) for end, way in zip(ends, (-HAIR, HAIR), strict=True)]
        wide = [outside_at(solid, place) for place in beside]
        return ends[wide.index(max(wide))], sizes["diameter"].value / 2
    middle = (sizes["from"].value + sizes["to"].value) / 2
    return middle, outside_at(solid, middle)


def into_end(feature: FeaturePlan) -> tuple[float, float]:
    """How far in from its end a leader points to a shape on the axis, and how wide it is there."""
    sizes = {name: number.value for name, number in feature.sizes.items()}
    if feature.shape == "bore groove":
        return (sizes["near"] + sizes["far"]) / 2, sizes["diameter"]
    if feature.shape == "taper bore":
        return 0.3 * sizes["depth"], 0.7 * sizes["large"] + 0.3 * sizes["small"]
    if feature.shape == "bore thread":
        return 0.4 * sizes["depth"], sizes["bore least"]
    inward = 0.6 if feature.shape == "turned bore" else 0.3  # a bore may open to something wider at its mouth
    return inward * sizes["depth"], sizes["mouth" if "mouth" in sizes else "diameter"]


def where_seen(feature: FeaturePlan, shape: ShapePlan, solid: Solid, inward: float) -> float:
    """How far in a bore's own wall is there to point to; a wider hole may have taken it at the place meant for it."""
    depth, across = feature.sizes["depth"].value, feature.sizes["diameter"].value
    whole = shape.sizes["length"].value
    for place in (inward, *(depth * share / SHARES for share in range(1, SHARES))):
        x = whole - place if feature.enters == "right end" else place
        if abs(2 * radii_at(solid.transform(UPRIGHT), x)[1] - across) < across * ALIKE:
            return place
    return inward


def outside_at(solid: Solid, x: float) -> float:
    """The radius of the part at a place along it."""
    return radii_at(solid.transform(UPRIGHT), x)[0]


def told(feature: FeaturePlan) -> Rows:
    """What a leader says of a shape."""
    sizes = feature.sizes
    if feature.shape == "turned diameter":
        corner = sizes.get("corner radius")
        return () if corner is None else ((*amount(corner, "R"), *words(" at most in the corner", small=True)),)
    if feature.shape in ("turned groove", "undercut"):
        across: Row = (*amount(sizes["diameter"], "⌀"), *GAP, *tolerance(sizes["diameter"]))
        return (across, (*amount(sizes["width"]), *words(" wide", small=True)))
    if feature.shape in ("taper", "taper bore"):
        ends: Row = (*amount(sizes["large"], "⌀"), *words(" to "), *amount(sizes["small"], "⌀"))
        return (ends, (*amount(sizes["half angle"]), *words(" to the axis", small=True)))
    if feature.shape == "turned thread":
        return ((Piece(feature.thread, sizes["diameter"].id),),)
    if feature.shape == "bore groove":
        bottom: Row = (*amount(sizes["diameter"], "⌀"), *GAP, *tolerance(sizes["diameter"]))
        return (bottom, (*amount(sizes["width"]), *words(" wide, ", small=True), *amount(sizes["near"])),
                words(f"from the {feature.enters}", small=True))  # fmt: skip
    if feature.shape == "bore thread":
        said: Row = (Piece(feature.thread, sizes["diameter"].id),)
        return (said, words("through", small=True)) if feature.through else (said,)
    if feature.shape == "turned bore":
        row: Row = (*amount(sizes["diameter"], "⌀"), *GAP, *tolerance(sizes["diameter"]))
        corner = sizes.get("corner radius")
        if corner is not None:
            return (row, (*amount(corner, "R"), *words(" at most round its bottom", small=True)))
        return (row, words("through", small=True)) if feature.through else (row,)
    if feature.shape == "tapped end":
        return ((Piece(feature.thread, sizes["diameter"].id),), words("full thread as deep as shown", small=True))
    if feature.shape == "centre hole":
        return ((*amount(sizes["mouth"], "⌀"), *words(" centre", small=True)),)
    if feature.shape == "knurl":
        return ((*words(f"{feature.toward} knurl, pitch ", small=True), *amount(sizes["pitch"])),)
    if feature.shape == "turned radius":
        return (amount(sizes["radius"], "R"),)
    return ()
