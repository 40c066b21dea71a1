"""Solids of revolution round z beyond cylinders and cones, and what the work measures at a place along z."""

import math

import manifold3d
import numpy as np

from jobcards.dryrun.solids import SIDES, Solid, cone, cylinder, drill

ARC = 24  # chords in a quarter of a rounded corner
NOSE_ARC = 6  # and in that which a tool's nose leaves
CENTRE = 30.0  # degrees: half of a centre's 60
PILOT_POINT = 118.0


def radii_at(solid: Solid, z: float) -> tuple[float, float]:
    """The outer radius of a solid round z at a height, and that of the hole in it; nothing where there is none."""
    outer, hole = 0.0, 0.0
    for outline in solid.slice(z).to_polygons():
        points = np.asarray(outline)
        x, y = points[:, 0], points[:, 1]
        area = float((x * np.roll(y, -1) - np.roll(x, -1) * y).sum())
        radius = float(np.hypot(x, y).max())
        if area > 0:
            outer = max(outer, radius)
        else:
            hole = max(hole, radius)
    return outer, hole


def rounding(radius: float, corner: float, size: float, way: int) -> Solid:
    """What a rounded corner takes off an edge at height `corner` that looks toward plus (way 1) or minus."""
    over = size / 4
    middle = radius - size
    arc = [
        (middle + size * math.sin(step / ARC * math.pi / 2), -size + size * math.cos(step / ARC * math.pi / 2))
        for step in range(ARC + 1)
    ]
    outline = [(middle, over), *arc, (radius + over, -size), (radius + over, over)]
    section = manifold3d.CrossSection([[(r, z) for r, z in outline]], manifold3d.FillRule.NonZero)
    solid = section.revolve(SIDES)
    if way < 0:
        solid = solid.scale((1.0, 1.0, -1.0))
    return solid.translate((0.0, 0.0, corner))


def fillet(radius: float, corner: float, size: float, way: int) -> Solid:
    """What a tool's nose leaves in the corner of a shoulder at height `corner`, on the side plus (way 1) or minus.

    It reaches a little into the metal beside it, so that no face lies on the work's.

    >>> left = fillet(1.0, 0.0, 0.1, 1) - cylinder(2.0, -1.0, 1.0) - cylinder(3.0, -1.0, 0.0)
    >>> round(left.volume() / (2 * math.pi), 3)  # Pappus: (1 - pi/4) of the radius squared, 1.0223 from the axis
    0.002
    """
    into = size / 4
    arc = [
        (radius + size - size * math.sin(turn), size - size * math.cos(turn))
        for turn in (step / NOSE_ARC * math.pi / 2 for step in range(NOSE_ARC + 1))
    ]
    outline = [(radius - into, -into), (radius + size, -into), *arc, (radius - into, size)]
    section = manifold3d.CrossSection([[(r, z) for r, z in outline]], manifold3d.FillRule.NonZero)
    solid = section.revolve(SIDES)
    return (solid if way > 0 else solid.scale((1.0, 1.0, -1.0))).translate((0.0, 0.0, corner))


def bottom_fillet(radius: float, bottom: float, size: float) -> Solid:
    """What a boring bar's nose leaves round the bottom of a bore that goes down to a height."""
    into = size / 4
    arc = [
        (radius - size + size * math.sin(turn), size - size * math.cos(turn))
        for turn in (step / NOSE_ARC * math.pi / 2 for step in range(NOSE_ARC + 1))
    ]
    outline = [(radius - size, -into), (radius + into, -into), (radius + into, size), *arc[::-1]]
    section = manifold3d.CrossSection([[(r, z) for r, z in outline]], manifold3d.FillRule.NonZero)
    return section.revolve(SIDES).translate((0.0, 0.0, bottom))


def outside_cone(outer: float, low: float, low_diameter: float, high: float, high_diameter: float) -> Solid:
    """All that lies outside of a frustum between two heights: what a taper takes off.

    >>> round(outside_cone(2.0, 0.0, 1.0, 1.0, 1.0).volume() / cylinder(2.0, 0.0, 1.0).volume(), 6)
    0.75
    """
    slope = (high_diameter - low_diameter) / (high - low)
    beyond = 0.01 * (high - low)
    kept = cone(low - beyond, low_diameter - slope * beyond, high + beyond, high_diameter + slope * beyond)
    return cylinder(outer, low, high) - kept


def centre_hole(pilot: float, pilot_length: float, depth: float, face: float, over: float) -> Solid:
    """What a centre drill takes: its tip `depth` below the face, the pilot, and above it the countersink of 60°."""
    rise = math.tan(math.radians(CENTRE))
    corner = face - depth + pilot_length
    tip = pilot / 2 / math.tan(math.radians(PILOT_POINT / 2))
    high = face + over
    hole = drill(pilot, face - depth + tip, high, PILOT_POINT)
    return hole + cone(corner, pilot, high, pilot + 2 * (high - corner) * rise)


def drilled_hole(diameter: float, point: float, depth: float, face: float, over: float) -> Solid:
    """What a drill takes whose tip goes `depth` below the face."""
    tip = diameter / 2 / math.tan(math.radians(point / 2))
    return drill(diameter, face - depth + tip, face + over, point)
