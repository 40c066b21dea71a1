"""On a rotary table clamps and packing turn with the work: cutters keep clear of them, and swing past nothing."""

import math
from collections.abc import Iterator, Sequence
from dataclasses import replace
from itertools import pairwise

from jobcards.definition.job import SetUp
from jobcards.planning.card import Cut, FeaturePlan, HoldPlan, Touch
from jobcards.planning.mill.clamp_room import Place, Span, apart, check_touch, flat, space_of, upper, widths_of
from jobcards.planning.orientation import Lie
from jobcards.planning.route import Route
from jobcards.planning.shapes.place import AXES, BLOCK
from jobcards.trade.setups import FACES

TINY = 1e-9
PIECE = 5.0  # degrees: pieces of an arc


def check_rotary_room(
    route: Route, set_up: SetUp, lying: Lie, hold: HoldPlan, touches: Sequence[Touch], cuts: tuple[Cut, ...]
) -> None:
    """No cutter and no tip may meet a clamp, nor come through over the packing."""
    clear = route.work.rule("clearance").value
    marks = {operation.cut: operation for operation in set_up.operations}
    every = [space_of(clamp, hold, lying, hold.up) for clamp in hold.clamps]
    spaces = [(clamp.over, space) for clamp, space in zip(hold.clamps, every, strict=True)]
    for cut in cuts:
        feature = next(f for f in route.shape.features if f.name == cut.feature)
        half = max(widths_of(cut), default=0.0) / 2
        low = -cut.sizes["depth"].value if "depth" in cut.sizes else 0.0
        places = [(at, at) for at in places_of(feature, lying)]
        if cut.kind == "arc":
            places = list(round_the_arc(cut, feature, lying, hold))
        for over, space in spaces:
            near = upper(space, lying) >= low - clear
            if near and any(apart(way, flat(space, lying)) < half + clear - TINY for way in places):
                route.work.problem(
                    marks[cut.feature].place("cut"),
                    f"cutting “{cut.feature}”, the {cut.cutter.name.text if cut.cutter else 'cutter'} would meet the "
                    f"clamp over the {over}, which turns with the work",
                    "put the clamp elsewhere along its edge with at:, or over another edge",
                )
                break
        if feature.through and any(apart(w, r) < half - TINY for w in places for r in packing(hold, lying)):
            route.work.problem(
                marks[cut.feature].place("cut"),
                f"“{cut.feature}” comes through over the packing",
                "put the clamps over two other faces, or lay the work on narrower packing",
            )
    for touch in touches:
        if touch.kind == "placed":
            at_edge = replace(touch, kind="edge")
            check_touch(route.work, set_up, lying, at_edge, list(zip(hold.clamps, every, strict=True)))


def places_of(feature: FeaturePlan, lying: Lie) -> Iterator[Place]:
    """Where the axis stands over the work, along the drawing's axes that lie along the machine's X and Y."""
    first, second = (lying.drawing_axis(axis) for axis in ("x", "y"))
    for place in feature.places:
        yield place[first].value, place[second].value


def round_the_arc(cut: Cut, feature: FeaturePlan, lying: Lie, hold: HoldPlan) -> Iterator[tuple[Place, Place]]:
    """The ways of the axis round each arc, in short straight pieces."""
    ((first, second),) = places_of(feature, lying)
    signs = lying.sign("x"), lying.sign("y")
    grows = 1 if hold.way == "clockwise" else -1
    begin, end = (station.angle.value for station in cut.stations)
    span = (end - begin) * grows % 360 or 360.0
    steps = max(1, math.ceil(span / PIECE))
    for position in cut.positions:
        assert position.x is not None
        places: list[Place] = []
        for step in range(steps + 1):
            angle = math.radians(begin - hold.sizes["angle up"].value) * grows + math.radians(span * step / steps)
            across, up = position.x.value * math.cos(angle), position.x.value * math.sin(angle)
            places.append((first + signs[0] * across, second + signs[1] * up))
        yield from pairwise(places)


def packing(hold: HoldPlan, lying: Lie) -> list[tuple[Span, Span]]:
    """What the two pieces of packing cover, under the two edges that the clamps are over and their opposites."""
    if "parallel thickness" not in hold.sizes or not hold.clamps:
        return []
    thick, long = hold.sizes["parallel thickness"].value, hold.sizes["parallel length"].value
    axis = FACES[hold.clamps[0].over][0]
    out = []
    for low in (True, False):
        spans = {}
        for name in (lying.drawing_axis("x"), lying.drawing_axis("y")):
            size = lying.shape.sizes[BLOCK[AXES.index(name)]].value
            if AXES.index(name) == axis:
                spans[name] = (0.0, thick) if low else (size - thick, size)
            else:
                at = hold.sizes["packing at"].value
                spans[name] = (at - long / 2, at + long / 2)
        first, second = spans.values()
        out.append((first, second))
    return out
