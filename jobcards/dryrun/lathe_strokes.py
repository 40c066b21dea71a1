"""What tools take at the lathe besides plain turning: grooves, tapers, bores, holes in an end, rounded corners.

Everything follows from what is published and how a lathe works: a compound set to an angle carries the tool along a
line at that angle to the axis; a tailstock that is set over tilts the work; in a bore a dial that is wound back moves
the tool away from the axis. A thread and a knurl take nothing here: their stretch stays a plain cylinder, and the
published infeed of a thread is held against its pitch.
"""

import math
from collections.abc import Callable, Mapping

from jobcards.dryrun.faults import CannotFollow
from jobcards.dryrun.revolved import bottom_fillet, centre_hole, drilled_hole, outside_cone, radii_at, rounding
from jobcards.dryrun.solids import Solid, cylinder, extent, ring
from jobcards.dryrun.turned_stroke import AtLathe, Stroke, nose_of
from jobcards.planning.card import Cut

MARKED = ("thread", "bore thread", "knurl")
AT_END = 1e-6


def place(cut: Cut, lathe: AtLathe) -> list[tuple[float, float]]:
    """The radius and the height z of each published position."""
    out = []
    for position in cut.positions:
        if position.x is None or position.z is None:
            raise CannotFollow(f"the card gives {cut.id} no dial setting or no length")
        out.append((lathe.radius(lathe.read(position.x)), lathe.end - lathe.read(position.z)))
    if not out:
        raise CannotFollow(f"the card gives {cut.id} nowhere to go")
    return out


def in_from_end(cut: Cut, lathe: AtLathe) -> float:
    """How far a tool goes in from the end."""
    if not cut.positions or cut.positions[-1].z is None:
        raise CannotFollow(f"the card does not tell how far in to go in {cut.id}")
    return lathe.read(cut.positions[-1].z)


def one(solid: Solid) -> Stroke:
    """A sweep that takes what it meets."""
    return Stroke(solid, solid)


def groove(cut: Cut, lathe: AtLathe) -> list[Stroke]:
    """The tool straight in: its nearer edge stands at z, its width lies toward the headstock."""
    width = lathe.read(cut.sizes["tool width"])
    return [one(ring(2 * radius, lathe.outer, z - width, z)) for radius, z in place(cut, lathe)]


def sloped(cut: Cut, lathe: AtLathe, half: float, along: float, farther: float = 0.0) -> list[Stroke]:
    """The tool from the thin end toward the headstock, along a line at an angle to the axis, `along` the axis.

    `farther`: how much farther from the work's axis it stands there than the dial tells.
    """
    rise = math.tan(math.radians(half))
    strokes = []
    for dialled, z in place(cut, lathe):
        radius = dialled + farther
        over = min(0.05 * along, 0.5 * radius / rise) if abs(z - lathe.end) < AT_END else 0.0
        low, high = z - along, z + over
        strokes.append(
            one(outside_cone(lathe.outer, low, 2 * (radius + along * rise), high, 2 * (radius - over * rise)))
        )
    return strokes


def by_compound(cut: Cut, lathe: AtLathe) -> list[Stroke]:
    """The compound carries the tool along its own line: the angle is from the axis, the travel along the line.

    The angle is what the scale is set to, counted from the line that this lathe's scale counts from.
    """
    shown = lathe.read(cut.sizes["scale"])
    half = 90.0 - shown if lathe.compound_from_cross else shown
    travel = lathe.read(cut.sizes["travel"])
    if not 0 < half < 90:
        raise CannotFollow(f"{cut.id}: a compound at {shown:g}° turns no taper")
    return sloped(cut, lathe, half, travel * math.cos(math.radians(half)))


def by_set_over(cut: Cut, lathe: AtLathe) -> list[Stroke]:
    """The work lies tilted between its centres by what the tailstock is set over."""
    (_, _, low), (_, _, high) = extent(lathe.work)
    over, length = lathe.read(cut.sizes["set-over"]), high - low
    if not 0 < over < length:
        raise CannotFollow(f"{cut.id}: a set-over of {over:g} gives no taper on work {length:g} long")
    rate = over / length
    toward = rate * (place(cut, lathe)[-1][1] - low)
    half, along = math.degrees(math.asin(rate)), lathe.read(cut.sizes["taper length"])
    return sloped(cut, lathe, half, along, moved(cut, lathe, toward, rate, low))


def moved(cut: Cut, lathe: AtLathe, toward: float, rate: float, low: float) -> float:
    """How much farther from the axis the tool cuts than the dial tells, once the tailstock is set over.

    The work has come toward the tool by `toward` at the thin end, so that it cuts deeper. A dial set anew knows of what
    it has come at the place touched, and of no more.
    """
    if "touch dial" not in cut.sizes:
        return -toward
    touched = lathe.end - lathe.read(cut.sizes["touch place"])
    return rate * (touched - low) - toward


def by_form(cut: Cut, lathe: AtLathe) -> list[Stroke]:
    """A tool whose whole edge stands at the angle, as wide as it is."""
    if cut.cutter is None or "width" not in cut.cutter.sizes:
        raise CannotFollow(f"{cut.id}: the form tool has no width")
    return sloped(cut, lathe, lathe.read(cut.sizes["angle"]), lathe.read(cut.cutter.sizes["width"]))


def bore(cut: Cut, lathe: AtLathe) -> list[Stroke]:
    """From the touch on the hole's wall: a dial that counts back moves the tool outward. The bottom is cut across."""
    touched = radii_at(lathe.work, lathe.end - AT_END)[1]
    if touched <= 0:
        raise CannotFollow(f"{cut.id}: there is no hole whose wall could be touched")
    strokes, nose = [], nose_of(cut, lathe.read)
    for position in cut.positions:
        if position.x is None or position.z is None:
            raise CannotFollow(f"the card gives {cut.id} no dial setting or no depth")
        radius = touched - lathe.read(position.x) * lathe.infeed_of_dial
        if radius <= 0:
            raise CannotFollow(f"{cut.id}: the dial setting goes past the centre")
        bottom = lathe.end - lathe.read(position.z)
        solid = cylinder(2 * radius, bottom, lathe.end + radius)
        strokes.append(one(solid - bottom_fillet(radius, bottom, nose) if nose > 0 else solid))
    return strokes


def centre(cut: Cut, lathe: AtLathe) -> list[Stroke]:
    """A centre drill's own shape, its tip as deep as the card says."""
    pilot, length = lathe.read(cut.sizes["pilot"]), lathe.read(cut.sizes["pilot length"])
    return [one(centre_hole(pilot, length, in_from_end(cut, lathe), lathe.end, pilot / 4))]


def drill(cut: Cut, lathe: AtLathe) -> list[Stroke]:
    """A drill's own shape, its tip as deep as the card says."""
    if cut.cutter is None or not {"diameter", "point"} <= set(cut.cutter.sizes):
        raise CannotFollow(f"{cut.id}: the drill has no diameter or point")
    across, point = (lathe.read(cut.cutter.sizes[name]) for name in ("diameter", "point"))
    return [one(drilled_hole(across, point, in_from_end(cut, lathe), lathe.end, across))]


def straight(cut: Cut, lathe: AtLathe) -> list[Stroke]:
    """A reamer, or a tap as a cylinder of its thread's outside diameter."""
    across = lathe.read(cut.sizes["diameter"])
    return [one(cylinder(across, lathe.end - in_from_end(cut, lathe), lathe.end + across))]


def radius(cut: Cut, lathe: AtLathe) -> list[Stroke]:
    """A hollow form tool brought onto the corner that is there."""
    size, corner = lathe.read(cut.sizes["radius"]), lathe.end - in_from_end(cut, lathe)
    outer, _ = radii_at(lathe.work, corner - min(size / 10, 1e-3))
    return [one(rounding(outer, corner, size, 1))]


def far_corner(cut: Cut, lathe: AtLathe) -> Solid:
    """The corner at the far end of the part, beside the nick, taken off at 45°."""
    size, corner = lathe.read(cut.sizes["size"]), lathe.end - in_from_end(cut, lathe)
    near = min(size / 10, 1e-3)
    outer, beside = radii_at(lathe.work, corner + near)[0], radii_at(lathe.work, corner - near)[0]
    if beside > outer - size:
        raise CannotFollow(f"{cut.id}: no nick beside the corner lets the tool in as deep as the chamfer")
    over = size / 4  # on into the nick, so that no face of the sweep lies on the work
    return outside_cone(lathe.outer, corner - over, 2 * (outer - size - over), corner + size, 2 * outer)


def marked_sweep(cut: Cut, lathe: AtLathe) -> Solid:
    """Where a threading or knurling tool passes, just clear of the work: it must not meet what holds it."""
    length = lathe.read(cut.sizes["length"])
    if cut.kind == "bore thread":
        return cylinder(lathe.read(cut.sizes["diameter"]), lathe.end - length, lathe.end + length / 10)
    across = lathe.read(cut.sizes["diameter"]) if "diameter" in cut.sizes else 2 * lathe.touched_radius
    return ring(across, lathe.outer, lathe.end - length, lathe.end)


STROKES: Mapping[str, Callable[[Cut, AtLathe], list[Stroke]]] = {
    "turn groove": groove,
    "nick": groove,
    "taper by compound": by_compound,
    "taper by set-over": by_set_over,
    "taper by form": by_form,
    "turn bore": bore,
    "centre drill": centre,
    "lathe drill": drill,
    "lathe spot": drill,
    "lathe ream": straight,
    "lathe tap": straight,
    "turn radius": radius,
}
