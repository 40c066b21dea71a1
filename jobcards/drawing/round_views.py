"""What is milled and drilled into a turned part, on its drawing: lengths on the side, the rest on the right end."""

import math

from jobcards.drawing.dimension import Dimension, arrow, linear
from jobcards.drawing.leader import point_out
from jobcards.drawing.paper import CENTRE, EM, THIN, Box, Piece, Row, Rows, Sheet, amount, arc, tolerance, words
from jobcards.drawing.views import Drawn
from jobcards.planning.card import FeaturePlan, ShapePlan

ROUND = "round"
END_SLOT = "end slot"
OUT = 0.8  # how far out on a slot its leader points, in parts of the radius
TINY = 1e-9
SWEEP = 40.0  # of the arrow that tells which way angles count


def round_features(shape: ShapePlan) -> list[FeaturePlan]:
    """What stands round the axis."""
    return [feature for feature in shape.features if feature.enters == ROUND]


def lengths(view: Drawn, shape: ShapePlan) -> list[Dimension]:
    """Where they stand along the part, above the side view: each from the left end, and how long it is."""
    out: list[Dimension] = []
    whole = shape.sizes["length"].value
    for feature in round_features(shape):
        sizes = feature.sizes
        top = sizes["round"].value / 2 * view.scale
        if "at" in sizes:
            out.append(linear(sizes["at"], (0.0, view.body.high), (sizes["at"].value * view.scale, top), "above"))
            view.centre_line(
                view.at(sizes["at"].value, -sizes["round"].value / 2), (sizes["at"].value * view.scale, top)
            )
            continue
        start, end = sizes["from"].value, sizes["to"].value
        out.append(linear(sizes["length"], (start * view.scale, top), (end * view.scale, top), "above"))
        if start > TINY and end < whole - TINY:
            out.append(linear(sizes["from"], (0.0, view.body.high), (start * view.scale, top), "above"))
    return out


def label_end(sheet: Sheet, end: Drawn, shape: ShapePlan) -> None:
    """On the right end: which way angles count, and what each feature is, with a leader to where it looks."""
    features = [*round_features(shape), *(f for f in shape.features if f.shape == END_SLOT)]
    if not features:
        return
    radius = shape.sizes["diameter"].value / 2 * end.scale
    angle_mark(sheet, radius)
    box = sheet.bounds()
    zone = Box(box.left - 20 * EM, box.low - 5 * EM, box.right + 16 * EM, box.high + 5 * EM)
    for feature in features:
        angle = math.radians(feature.sizes["angle"].value)
        reach = reach_of(feature) * end.scale
        point_out(sheet, told(feature), (reach * math.cos(angle), reach * math.sin(angle)), 0.0, zone)


def angle_mark(sheet: Sheet, radius: float) -> None:
    """The line that angles count from, to the right, and the way they count."""
    outer = radius + 1.6 * EM
    sheet.draw([(0.0, 0.0), (outer + 0.8 * EM, 0.0)], CENTRE)
    bow = arc((0.0, 0.0), outer, 0.0, SWEEP)
    sheet.draw(bow, THIN)
    turn = math.radians(SWEEP)
    arrow(sheet, bow[-1], (math.sin(turn), -math.cos(turn)))
    sheet.write((words("angles count", small=True), words("from here", small=True)), outer + EM, 0.0, across="left")


def reach_of(feature: FeaturePlan) -> float:
    """How far from the axis the feature shows on the end: a flat or floor at its level, a hole at the outside."""
    sizes = feature.sizes
    half = sizes["round"].value / 2
    if feature.shape == END_SLOT:
        return OUT * half
    return half if "at" in sizes else half - sizes["depth"].value


def told(feature: FeaturePlan) -> Rows:
    """What a feature is, its sizes, and which way it looks."""
    sizes = feature.sizes
    rows: list[Row] = []
    if feature.shape == "cross hole":
        thread = (Piece(feature.thread, sizes["diameter"].id),)
        rows.append(thread if feature.thread else sized(feature, "diameter", before="⌀"))
        if feature.through:
            rows.append(words("through", small=True))
        else:
            rows.append((*amount(sizes["depth"]), *words(" full thread" if feature.thread else " deep", small=True)))
    elif "across" in sizes:
        rows.append((*sized(feature, "across"), *words(f" {feature.shape}", small=True)))
    elif feature.shape == END_SLOT:
        rows.append((*sized(feature, "width"), *words(f" slot in the {feature.enters}", small=True)))
        rows.append((*amount(sizes["depth"]), *words(" deep", small=True)))
    elif feature.shape == "shaft keyway":
        rows.append((*sized(feature, "width"), *words(" keyway", small=True)))
        rows.append((*amount(sizes["over"]), *words(" floor to far side", small=True)))
    elif "opposite" in sizes:
        rows.append((*amount(sizes["opposite"]), *words(" flat to flat opposite", small=True)))
    else:
        rows.append((*sized(feature, "over"), *words(" flat to far side", small=True)))
    count = sizes["count"]
    if "across" in sizes:
        rows.append((*words("first flat looks to ", small=True), *amount(sizes["angle"])))
    elif count.value > 1:
        rows.append((*amount(count), *words(" evenly, first to ", small=True), *amount(sizes["angle"])))
    else:
        way = "runs to " if feature.shape == END_SLOT else "looks to "
        rows.append((*words(way, small=True), *amount(sizes["angle"])))
    return tuple(rows)


def sized(feature: FeaturePlan, name: str, before: str = "") -> Row:
    """A size with its tolerance."""
    number = feature.sizes[name]
    return (*amount(number, before), *words(" ", small=True), *tolerance(number))
