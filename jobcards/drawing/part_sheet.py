"""The drawing of a finished part: its views, dimensions and notes on one sheet."""

import numpy as np

from jobcards.drawing import milled_views
from jobcards.drawing.block_views import end_view, front_view, label_bevels, label_holes, label_outside, top_view
from jobcards.drawing.detail import SERRATED, mark_place, profile_view, serrations_detail
from jobcards.drawing.dimension import FIRST, lay
from jobcards.drawing.mesh import Mesh, View, mesh_of
from jobcards.drawing.paper import EM, Box, Piece, Rows, Sheet, amount, words
from jobcards.drawing.svg import Drawing, finish
from jobcards.drawing.turned_views import turned_sheet
from jobcards.drawing.views import FRONT, TOP, Drawn, name_view, third_angle
from jobcards.dryrun.target import drawn_part
from jobcards.planning.card import Card, PartPlan, ShapePlan
from jobcards.planning.words import as_text

WIDTH = 180.0  # mm: a page less its margins
MARGIN = 1.5
HIGHEST = 60.0  # mm: no front view is drawn higher than this
GUTTER = 2.2 * EM  # between views
TRIES = 4  # at making it narrower, where lettering takes more room than thought
UNITS = {"in": "inches", "mm": "millimetres"}


def part_drawing(card: Card, part: PartPlan) -> Drawing:
    """The dimensioned drawing of one part of a card."""
    solid = drawn_part(part)
    drawn = solid.to_mesh64()
    mesh = mesh_of(np.asarray(drawn.vert_properties)[:, :3], np.asarray(drawn.tri_verts))
    if part.shape.kind == "turned":
        sheet = turned_sheet(mesh, part.shape, WIDTH - 2 * MARGIN, solid)
    else:
        sheet = block_sheet(mesh, part.shape, WIDTH - 2 * MARGIN)
    notes(sheet, part.shape, card.unit)
    sheet.trim(MARGIN)
    title = f"Drawing: {part.name.text}"
    return finish(sheet, f"drawing-{part.id}", title, description(card, part))


def block_sheet(mesh: Mesh, shape: ShapePlan, width: float) -> Sheet:
    """Front, top and end view as large as the width allows, with a detail where there are serrations."""
    across = shape.sizes["length"].value + (shape.sizes["thickness"].value if needs_end(shape) else 0.0)
    largest = HIGHEST / shape.sizes["height"].value
    scale = min(largest, 0.6 * width / across)
    for _ in range(2):
        box = arranged(mesh, shape, scale)[0].bounds()
        around = box.right - box.left - across * scale
        scale = min(largest, (width - around) / across)
    sheet, views = arranged(mesh, shape, scale)
    for _ in range(TRIES):
        over = sheet.bounds().right - sheet.bounds().left - width
        if over <= 0:
            break
        # The lettering does not shrink with the views, and may have found other places.
        scale -= (over + EM) / across
        sheet, views = arranged(mesh, shape, scale)
    for row in (f for f in shape.features if f.shape in SERRATED):
        detail = serrations_detail(views[profile_view(row)], shape, row)
        box = detail.bounds()
        detail.moved(sheet.bounds().left - box.left, sheet.bounds().low - GUTTER - box.high)
        join(sheet, detail)
    return sheet


def needs_end(shape: ShapePlan) -> bool:
    """An end view is drawn where something enters an end, or a recess shows its depth there."""
    return milled_views.needs_end(shape) or any(
        f.enters in {"left end", "right end"}
        or (f.shape in {"counterbore", "partial bore"} and f.enters in {"front", "back"})
        for f in shape.features
    )


def arranged(mesh: Mesh, shape: ShapePlan, scale: float) -> tuple[Sheet, dict[View, Drawn]]:
    """All views at a scale, arranged as third-angle projection asks; and those that rows of grooves show in."""
    front = front_view(mesh, shape, scale)
    milled_views.place_milled(front, shape)
    whole = view_sheet(front, slope_room(shape))
    mark_rows(whole, front, shape)
    label_bevels(whole, front, shape, ("top", "bottom"), zone(whole, front))
    for feature in shape.features:
        if feature.shape == "partial bore" and feature.enters in {"front", "back"}:
            label_outside(whole, front, shape, feature, zone(whole, front))
    label_holes(whole, front, shape, ("front", "back"), zone(whole, front))
    milled_views.label_milled(whole, front, shape, zone(whole, front))
    name_view(whole, "front", (front.body.left + front.body.right) / 2, whole.bounds().low - 0.4 * EM)
    bounds = whole.bounds()
    if needs_end(shape):
        end = end_view(mesh, shape, scale)
        milled_views.place_milled(end, shape)
        beside = view_sheet(end)
        label_holes(beside, end, shape, ("left end", "right end"), zone(beside, end))
        milled_views.label_milled(beside, end, shape, zone(beside, end))
        name_view(beside, "right end", (end.body.left + end.body.right) / 2, beside.bounds().low - 0.4 * EM)
        beside.moved(bounds.right + GUTTER - beside.bounds().left, 0.0)
        join(whole, beside)
    top = top_view(mesh, shape, scale)
    milled_views.place_milled(top, shape)
    above = view_sheet(top)
    mark_rows(above, top, shape)
    label_bevels(above, top, shape, ("back", "front"), zone(above, top))
    label_holes(above, top, shape, ("top", "bottom"), zone(above, top))
    milled_views.label_milled(above, top, shape, zone(above, top))
    name_view(above, "top", (top.body.left + top.body.right) / 2, above.bounds().low - 0.4 * EM)
    above.moved(0.0, bounds.high + GUTTER - above.bounds().low)
    join(whole, above)
    return whole, {FRONT: front, TOP: top}


def mark_rows(sheet: Sheet, view: Drawn, shape: ShapePlan) -> None:
    """A frame round the first grooves of each row that the view shows in profile."""
    for row in (f for f in shape.features if f.shape in SERRATED and profile_view(f) is view.view):
        mark_place(sheet, view, shape, row)


def slope_room(shape: ShapePlan) -> dict[str, float]:
    """Room between view and dimensions on a side where the angle of a slope is lettered."""
    return {("above" if f.enters == "top" else "below"): 4.2 * EM for f in shape.features if f.shape == "bevel"}


def view_sheet(view: Drawn, room: dict[str, float] | None = None) -> Sheet:
    """One view with its dimensions, on a sheet of its own with the part's zero at zero."""
    sheet = Sheet(WIDTH)
    view.put(sheet)
    lay(
        sheet, view.dimensions, view.body, view.scale, {side: max(FIRST, first) for side, first in (room or {}).items()}
    )
    return sheet


def zone(sheet: Sheet, view: Drawn) -> Box:
    """Where lettering of a view may stand: over its dimensions, and some way above."""
    box = sheet.bounds()
    return Box(box.left, box.low, max(box.right, view.body.right + 1.0), max(box.high, view.body.high + 9.0 * EM))


def join(sheet: Sheet, other: Sheet) -> None:
    """Put what stands on another sheet on this one."""
    sheet.strokes += other.strokes
    sheet.letters += other.letters
    sheet.measured += other.measured


def notes(sheet: Sheet, shape: ShapePlan, unit: str) -> None:
    """The notes and the projection symbol, below everything."""
    box = sheet.bounds()
    rows: list[Rows] = [
        (words(f"All sizes in {UNITS[unit]}, at the middle of their limits.", small=True),),
        (words("Where no limits stand, see the inspection record, or they follow from the others.", small=True),),
        (words("Do not measure the drawing.", small=True),),
    ]
    for feature in shape.features:
        if feature.shape == "broken corners":
            size = feature.sizes["size"]
            shown = tuple(Piece(p.text, p.number, True) for p in amount(size))
            rows.append(((Piece("Sharp corners broken about ", small=True), *shown, Piece(".", small=True)),))
    y = box.low - 1.2 * EM
    written = [
        sheet.write(block, box.left, y - 1.3 * EM * row, across="left", up="top") for row, block in enumerate(rows)
    ]
    beside = max(lettering.right for lettering in written) + 2.0 * EM
    third_angle(sheet, max(box.right - 8.0 * EM, beside), box.low - 2.4 * EM)


def description(card: Card, part: PartPlan) -> str:
    """What the drawing shows, for a reader who cannot see it."""
    unit = UNITS[card.unit]
    sizes = ", ".join(f"{name} {number.shown}" for name, number in part.shape.sizes.items())
    features = "; ".join(
        f"{feature.name}: {feature.shape}"
        + "".join(
            f", {name} {number.shown}{'°' if number.unit == 'deg' else ''}" for name, number in feature.sizes.items()
        )
        for feature in part.shape.features
    )
    note = as_text(part.note)
    return f"{part.name.text}. {note} Sizes in {unit}: {sizes}. {features}."
