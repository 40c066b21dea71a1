"""What tools take inside a bore at the lathe, beyond boring straight: tapers by the compound, and grooves.

The tool touched the wall of the hole as it really is; a dial that counts back moves it away from the axis.
"""

import math
from collections.abc import Callable, Mapping

from jobcards.dryrun.faults import CannotFollow
from jobcards.dryrun.revolved import radii_at
from jobcards.dryrun.solids import Solid, cone, cylinder
from jobcards.dryrun.turned_stroke import AtLathe, Stroke
from jobcards.planning.card import Cut

AT_END = 1e-6
HAIR = 1e-6


def wall_touched(cut: Cut, lathe: AtLathe) -> float:
    """The radius of the hole at the end that stands out."""
    touched = radii_at(lathe.work, lathe.end - AT_END)[1]
    if touched <= 0:
        raise CannotFollow(f"{cut.id}: there is no hole whose wall could be touched")
    return touched


def from_wall(cut: Cut, lathe: AtLathe, touched: float) -> list[tuple[float, float]]:
    """The radius and the height z of each published position, from the touch on a wall."""
    out = []
    for position in cut.positions:
        if position.x is None or position.z is None:
            raise CannotFollow(f"the card gives {cut.id} no dial setting or no depth")
        out.append((touched - lathe.read(position.x) * lathe.infeed_of_dial, lathe.end - lathe.read(position.z)))
    if not out or min(radius for radius, _ in out) <= 0:
        raise CannotFollow(f"{cut.id}: the dial setting goes past the centre, or there is none")
    return out


def taper(cut: Cut, lathe: AtLathe) -> list[Stroke]:
    """The compound carries the bar inward and toward the axis along its own line, no farther than it travels."""
    shown = lathe.read(cut.sizes["scale"])
    half = 90.0 - shown if lathe.compound_from_cross else shown
    if not 0 < half < 90:
        raise CannotFollow(f"{cut.id}: a compound at {shown:g}° bores no taper")
    along = lathe.read(cut.sizes["travel"]) * math.cos(math.radians(half))
    rise = math.tan(math.radians(half))
    return [swept(radius, z, along, rise) for radius, z in from_wall(cut, lathe, wall_touched(cut, lathe))]


def swept(radius: float, z: float, along: float, rise: float) -> Stroke:
    """A cone that closes inward from a radius at z; it ends where it would come to a point."""
    run = min(along, radius / rise * (1 - HAIR))
    over = radius / 4
    low, high = z - run, z + over
    solid = cone(low, 2 * (radius - run * rise), high, 2 * (radius + over * rise))
    return Stroke(solid, solid)


def groove(cut: Cut, lathe: AtLathe) -> list[Stroke]:
    """The tool straight out into the wall: its nearer edge stands at z, its width lies toward the headstock."""
    width = lathe.read(cut.sizes["tool width"])
    strokes = []
    for radius, z in from_wall(cut, lathe, wall_touched(cut, lathe)):
        solid: Solid = cylinder(2 * radius, z - width, z)
        strokes.append(Stroke(solid, solid))
    return strokes


STROKES: Mapping[str, Callable[[Cut, AtLathe], list[Stroke]]] = {"bore taper": taper, "bore groove": groove}
