"""Whether cutters and the edge finder's tip keep clear of the clamps: all in the drawing's own places."""

import math
from collections.abc import Iterator, Sequence

from jobcards.definition.job import SetUp
from jobcards.planning.card import ClampPlan, Cut, HoldPlan, Touch
from jobcards.planning.mill.clamp_words import edge_axis
from jobcards.planning.mill.zero import Zeros
from jobcards.planning.orientation import Lie
from jobcards.planning.shapes.place import AXES
from jobcards.planning.work import Work
from jobcards.trade.setups import FACES

Span = tuple[float, float]
Place = tuple[float, float]
BESIDE = ("edge", "middle", "between")
IN_STROKES = ("strokes", "plunged strokes")
FAR = 1e6


def check_clamp_room(
    work: Work, set_up: SetUp, lying: Lie, zeros: Zeros, hold: HoldPlan, cuts: tuple[Cut, ...], base: str
) -> None:
    """No cutter and no tip may meet a clamp. `base`: the face that the noses bear on."""
    spaces = [space_of(clamp, hold, lying, base) for clamp in hold.clamps]
    assert set_up.hold is not None
    clear = work.rule("clearance").value
    marks = {(operation.cut, operation.cutter): operation.place("cut") for operation in set_up.operations}
    for cut in cuts:
        wide = max(widths_of(cut), default=0.0)
        tool = cut.cutter.name.text if cut.cutter else "cutter"
        low = -cut.sizes["depth"].value if "depth" in cut.sizes else 0.0
        for clamp, space in zip(hold.clamps, spaces, strict=True):
            if upper(space, lying) < low - clear:
                continue
            if any(apart(way, flat(space, lying)) < wide / 2 + clear - 1e-9 for way in ways_of(cut, lying, zeros)):
                work.problem(
                    marks.get((cut.feature, tool), set_up.mark),
                    f"cutting “{cut.feature}”, the {tool} would meet the clamp over the {clamp.over}",
                    "put the clamp elsewhere, or cut this in a set-up of its own, clamps moved: keep zero: true",
                )
                break
    for touch in zeros.touches:
        check_touch(work, set_up, lying, touch, list(zip(hold.clamps, spaces, strict=True)))


def check_touch(
    work: Work, set_up: SetUp, lying: Lie, touch: Touch, clamps: Sequence[tuple[ClampPlan, list[Span]]]
) -> None:
    """An edge is touched in its middle, and no clamp may stand there."""
    if touch.kind not in BESIDE or touch.tip is None:
        return
    radius = touch.tip.value / 2
    middle = [lying.along(axis).value / 2 for axis in ("x", "y")]
    place = 0 if touch.axis == "x" else 1
    end = FACES[touch.face][1]
    middle[place] = lying.along(touch.axis).value + radius if end > 0 else -radius
    at = (middle[0], middle[1])
    for clamp, space in clamps:
        if upper(space, lying) >= -touch.tip.value and apart((at, at), flat(space, lying)) < radius - 1e-9:
            asked = next((z for z in set_up.zero if touch.face in (z.edge, z.middle_from, *z.middle_between)), None)
            work.problem(
                asked.mark if asked is not None else set_up.mark,
                f"the {touch.face} is touched in its middle, and the clamp over the {clamp.over} stands there",
                "touch another face, or move the clamp along its edge with at:",
            )
            return


def widths_of(cut: Cut) -> Iterator[float]:
    """How wide the cutter sweeps; a corner-rounding cutter where it meets its shank."""
    if "diameter" in cut.sizes:
        yield cut.sizes["diameter"].value
    tool = cut.cutter.sizes if cut.cutter is not None else {}
    if "diameter" in tool:
        yield tool["diameter"].value
    if "tip" in tool and "radius" in tool:
        yield tool["tip"].value + 2 * tool["radius"].value


def space_of(clamp: ClampPlan, hold: HoldPlan, lying: Lie, base: str) -> list[Span]:
    """The box round a clamp with its stud and nut, along the drawing's axes."""
    block = [lying.shape.sizes[name].value for name in ("length", "height", "thickness")]
    sizes = {name: number.value for name, number in hold.sizes.items()}
    across, end = FACES[clamp.over]
    up, out = FACES[base]
    along = edge_axis(clamp.over, base)
    spans: list[Span] = [(0.0, 0.0)] * 3
    outer = sizes["clamp length"] - sizes["reach"]
    edge = block[across] if end > 0 else 0.0
    inner, outer = edge - end * sizes["reach"], edge + end * outer
    spans[across] = (min(inner, outer), max(inner, outer))
    half = sizes["clamp width"] / 2
    spans[along] = (clamp.at.value - half, clamp.at.value + half)
    face = block[up] if out > 0 else 0.0
    high = face + out * sizes["stands up"]
    spans[up] = (min(face, high), max(face, high))
    return spans


def upper(space: list[Span], lying: Lie) -> float:
    """How high a space reaches, counted from the face that is up."""
    axis = AXES.index(lying.drawing_axis("z"))
    low, high = space[axis]
    return high - lying.along("z").value if lying.sign("z") > 0 else -low


def flat(space: list[Span], lying: Lie) -> tuple[Span, Span]:
    """What a space covers seen from above: along the drawing's axes that lie along the table and across it."""
    first, second = (space[AXES.index(lying.drawing_axis(axis))] for axis in ("x", "y"))
    return first, second


def ways_of(cut: Cut, lying: Lie, zeros: Zeros) -> Iterator[tuple[Place, Place]]:
    """The ways of the spindle's axis from place to place, on the drawing; a hole is a way that ends where it begins."""
    places = []
    for position in cut.positions:
        spans: list[Span] = []
        for axis, number in (("x", position.x), ("y", position.y)):
            if number is None or axis not in zeros.places:
                spans.append((-FAR, FAR))
            else:
                at = zeros.places[axis].value + lying.sign(axis) * number.value
                spans.append((at, at))
        places.append(spans)
    if cut.kind in IN_STROKES:
        for one, other in zip(places[::2], places[1::2], strict=False):
            yield (one[0][0], one[1][0]), (other[0][1], other[1][1])
        return
    for (left, right), (near, far) in places:
        yield (left, near), (right, far)


def apart(way: tuple[Place, Place], rect: tuple[Span, Span]) -> float:
    """How far a straight way keeps from a rectangle; 0 where it crosses it.

    >>> apart(((0.0, 3.0), (4.0, 3.0)), ((1.0, 2.0), (0.0, 1.0)))
    2.0
    >>> apart(((0.0, 0.5), (4.0, 0.5)), ((1.0, 2.0), (0.0, 1.0)))
    0.0
    """
    if crosses(way, rect):
        return 0.0
    (low_x, high_x), (low_y, high_y) = rect
    ends = [math.hypot(beyond(x, rect[0]), beyond(y, rect[1])) for x, y in way]
    corners = [to_way((x, y), way) for x in (low_x, high_x) for y in (low_y, high_y)]
    return min(ends + corners)


def beyond(value: float, span: Span) -> float:
    """How far a value lies outside a span."""
    return max(span[0] - value, value - span[1], 0.0)


def to_way(point: Place, way: tuple[Place, Place]) -> float:
    """How far a point is from a straight way."""
    (x, y), (x1, y1), (x2, y2) = point, *way
    long = (x2 - x1) ** 2 + (y2 - y1) ** 2
    along = 0.0 if long == 0 else max(0.0, min(1.0, ((x - x1) * (x2 - x1) + (y - y1) * (y2 - y1)) / long))
    return math.hypot(x - x1 - along * (x2 - x1), y - y1 - along * (y2 - y1))


def crosses(way: tuple[Place, Place], rect: tuple[Span, Span]) -> bool:
    """Whether a straight way goes through a rectangle."""
    start, end = 0.0, 1.0
    for axis in (0, 1):
        first, step = way[0][axis], way[1][axis] - way[0][axis]
        low, high = rect[axis]
        if step == 0:
            if not low <= first <= high:
                return False
            continue
        enter, leave = sorted(((low - first) / step, (high - first) / step))
        start, end = max(start, enter), min(end, leave)
    return start <= end
