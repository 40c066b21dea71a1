"""The dimensioned views of a turned part: the side with its axis lying level, and the right end beside it."""

from jobcards.drawing import lathe_views
from jobcards.drawing.block_views import label_holes
from jobcards.drawing.dimension import Dimension, lay, linear
from jobcards.drawing.hidden_lines import Lines
from jobcards.drawing.leader import point_out
from jobcards.drawing.mesh import Mesh
from jobcards.drawing.paper import EM, Box, Measured, Piece, Row, Sheet, amount, tolerance, words
from jobcards.drawing.round_views import label_end, lengths, round_features
from jobcards.drawing.views import FRONT, RIGHT_END, Drawn, name_view, view_of
from jobcards.dryrun.solids import Solid
from jobcards.planning.card import FeaturePlan, ShapePlan
from jobcards.planning.number import Number

HIGHEST = 46.0  # mm: no view is drawn higher than this
WIDEST = 75.0
SMALLER, SMALLEST = 0.85, 0.5  # how much a view is taken down where its lettering is too wide, and the least of it


def turned_sheet(mesh: Mesh, shape: ShapePlan, width: float, solid: Solid, part_of: float = 1.0) -> Sheet:
    """Side and end view of a turned part with all dimensions, smaller where the lettering asks for it."""
    scale = part_of * min(HIGHEST / shape.sizes["diameter"].value, WIDEST / shape.sizes["length"].value)
    half = lathe_views.opened(shape)
    side = side_view(lathe_views.quarter_cut(solid, shape) if half else mesh, shape, scale)
    side.dimensions += lengths(side, shape) + lathe_views.lengths(side, shape)
    sheet = Sheet(width)
    if half:  # a half section shows its inside above the axis, and needs no hidden lines
        side.lines = Lines(side.lines.visible, ())
        lathe_views.hatch(sheet, solid, scale)
    side.put(sheet)
    lay(sheet, side.dimensions, side.body, scale)
    for feature in shape.features:
        if feature.shape == "turned chamfer":
            label_chamfer(sheet, side, shape, feature)
    lathe_views.label_all(sheet, side, shape, solid)
    bounds = sheet.bounds()
    end = view_of(mesh, RIGHT_END, scale)
    end.centre_cross((0.0, 0.0), end.body.right)
    beside = Sheet(width)
    end.put(beside)
    label_end(beside, end, shape)
    holed = any(f.enters in ("left end", "right end") and f.places for f in shape.features)
    if holed:
        box = beside.bounds()
        zone = Box(box.left, box.low - 8 * EM, box.right + 12 * EM, box.high + 8 * EM)
        label_holes(beside, end, shape, ("left end", "right end"), zone)
    named = "side, upper half in section" if half else "side"
    name_view(sheet, named, (side.body.left + side.body.right) / 2, bounds.low - 0.4 * EM)
    wide = bounds.right - bounds.left + 2.2 * EM + beside.bounds().right - beside.bounds().left > width
    if holed or round_features(shape) or wide:  # there is no room beside the side view: it stands in a row of its own
        box = beside.bounds()
        name_view(beside, "right end", 0.0, min(box.low, end.body.low) - 0.4 * EM)
        middle = (side.body.left + side.body.right - box.left - box.right) / 2
        beside.moved(middle, sheet.bounds().low - 1.2 * EM - box.high)
    else:
        name_view(beside, "right end", 0.0, bounds.low - 0.4 * EM)
        beside.moved(bounds.right + 2.2 * EM - beside.bounds().left, 0.0)
    sheet.strokes += beside.strokes
    sheet.letters += beside.letters
    box = sheet.bounds()
    if box.right - box.left > width and part_of > SMALLEST:
        return turned_sheet(mesh, shape, width, solid, part_of * SMALLER)
    return sheet


def side_view(mesh: Mesh, shape: ShapePlan, scale: float) -> Drawn:
    """The side view: lengths from the left end below it, diameters at its ends."""
    view = view_of(mesh, FRONT, scale)
    length = shape.sizes["length"]
    view.centre_line(view.at(0.0), view.at(length.value))
    low = view.body.low
    steps = [f for f in shape.features if f.shape == "turned diameter"]
    for step in steps:
        start, end = (-radius_beside(steps, step.sizes[name].value) * scale for name in ("from", "to"))
        ends = (step.sizes["from"].value * scale, start), (step.sizes["to"].value * scale, end)
        view.dimensions.append(linear(step.sizes["length"], *ends, "below"))
    if len(steps) != 1 or steps[0].sizes["length"].value < length.value - 1e-9:
        brackets = ("(", ")") if steps else ("", "")  # a size that follows from others stands in brackets
        ends = (0.0, low), (view.body.right, low)
        view.dimensions.append(linear(length, *ends, "below", before=brackets[0], after=brackets[1], short=bool(steps)))
    for step in steps:
        view.dimensions.append(diameter(view, step, length.value))
    largest = shape.sizes["diameter"]
    if steps and all(step.sizes["diameter"].value < largest.value - 1e-9 for step in steps):
        radius = largest.value / 2 * scale
        view.dimensions.append(linear(largest, (0.0, -radius), (0.0, radius), "left", before="⌀"))
    return view


def radius_beside(steps: list[FeaturePlan], place: float) -> float:
    """The smaller radius that meets a shoulder."""
    meeting = [
        s.sizes["diameter"].value / 2
        for s in steps
        if abs(place - s.sizes["from"].value) < 1e-9 or abs(place - s.sizes["to"].value) < 1e-9
    ]
    return min(meeting)


def diameter(view: Drawn, step: FeaturePlan, length: float) -> Dimension:
    """A diameter across the side view, dimensioned at the nearer end."""
    number: Number = step.sizes["diameter"]
    left = (step.sizes["from"].value + step.sizes["to"].value) / 2 < length / 2
    x = (step.sizes["from"].value if left else step.sizes["to"].value) * view.scale
    radius = number.value / 2 * view.scale
    return linear(number, (x, -radius), (x, radius), "left" if left else "right", before="⌀")


def label_chamfer(sheet: Sheet, view: Drawn, shape: ShapePlan, feature: FeaturePlan) -> None:
    """The size of a chamfer, with a leader to the middle of its slope."""
    size = feature.sizes["size"]
    right = feature.enters == "right end"
    x = shape.sizes["length"].value - size.value / 2 if right else size.value / 2
    step = next(
        (
            s
            for s in shape.features
            if s.shape == "turned diameter" and s.sizes["from"].value <= x <= s.sizes["to"].value
        ),
        None,
    )
    across = (step.sizes["diameter"] if step else shape.sizes["diameter"]).value
    row: Row = (*amount(size), Piece(" ", small=True), *tolerance(size))
    box = sheet.bounds()
    zone = Box(box.left, box.low, box.right + 14 * EM, box.high + 5 * EM)
    angles = (60, 45, 75, 30) if right else (120, 135, 105, 150)
    point_out(
        sheet,
        (row, words("chamfer, both legs alike", small=True)),
        view.at(x, (across - size.value) / 2),
        0.0,
        zone,
        angles=angles,
    )
    sheet.measured.append(Measured(size, size.value))
