"""What holds the work, as solids: vise, parallels, stop, sine bar, chuck or collet. A cutter must meet none of them."""

import math
from collections.abc import Mapping

from jobcards.dryrun.faults import CannotFollow
from jobcards.dryrun.orient import Placement
from jobcards.dryrun.reading import Reader
from jobcards.dryrun.revolved import radii_at
from jobcards.dryrun.solids import Solid, box, cone, corners, cylinder, extent, prism, ring
from jobcards.planning.card import HoldPlan

Fixtures = Mapping[str, Solid]
PLATE = 10  # a faceplate is about so many times as wide as thick
MOST = 1e-6  # two sizes closer than this are the same

TILTED = ("sine bar in vise", "angle gauge in vise")
VISES = ("vise", *TILTED)
SPINDLES = ("chuck", "collet", "between centres", "faceplate", "mandrel")


def vise_fixtures(
    hold: HoldPlan, read: Reader, work: Solid, middle: float | None = None, rises: int = 1
) -> dict[str, Solid]:
    """Vise, parallels and stop round the work as it stands on the machine.

    The jaws and parallels stand with their middle at `middle` along the table: by default under the middle of the work.
    The moving jaw is closed on the work. The stop lies along the fixed jaw, no higher than the jaws. A sine bar
    rises toward plus x or, with `rises` -1, toward minus.
    """
    low, high = extent(work)
    centre = (low[0] + high[0]) / 2 if middle is None else middle

    def size(name: str) -> float:
        return read.size(hold.sizes, name)

    half, depth, thick = size("jaw width") / 2, size("jaw depth"), size("jaw thickness")
    left, right, near = centre - half, centre + half, low[1]
    solids = {
        "fixed jaw": box((left, 0.0, 0.0), (right, thick, depth)),
        "moving jaw": box((left, near - thick, 0.0), (right, near, depth)),
        "bed": box((left, near - thick, -thick), (right, thick, 0.0)),
    }
    if hold.kind != "sine bar in vise" and "parallel thickness" in hold.sizes:
        length, thickness = size("parallel length") or 2 * half, size("parallel thickness")
        solids["parallel"] = pair_of_parallels(length, thickness, size("parallel height"), centre, near)
    if hold.stop_side:
        face = low[0] if hold.stop_side < 0 else high[0]
        thickness, reach = size("stop thickness"), size("stop reach")
        outer = face + hold.stop_side * thickness
        solids["stop"] = box((min(face, outer), -reach, 0.0), (max(face, outer), 0.0, min(depth, high[2])))
    if hold.kind == "sine bar in vise":
        solids["sine bar"] = sine_bar(hold, read, work, rises)
    return {name: solid for name, solid in solids.items() if not solid.is_empty()}


def pair_of_parallels(length: float, thickness: float, height: float, centre: float, near: float) -> Solid:
    """Two parallels along the jaws: one at the fixed jaw, one at the moving jaw, whose face is at y = `near`."""
    left, right = centre - length / 2, centre + length / 2
    at_fixed = box((left, -thickness, 0.0), (right, 0.0, height))
    return at_fixed + box((left, near, 0.0), (right, near + thickness, height))


def tilt_of(hold: HoldPlan, read: Reader) -> float:
    """The angle in degrees that the stack under the sine bar really gives, from the stack and the bar as published.

    An angle gauge gives its own.
    """
    if hold.kind == "angle gauge in vise":
        return read(hold.sizes["tilt"])
    stack, length = read.size(hold.sizes, "stack"), read.size(hold.sizes, "sine bar length")
    if not 0 < stack < length:
        raise CannotFollow(f"a stack of {stack:g} gives no angle on a sine bar of {length:g}")
    return math.degrees(math.asin(stack / length))


def seat_height(hold: HoldPlan, read: Reader) -> float:
    """How high over the bed the work's lowest corner stands: on parallels, or, about, on the sine bar's low end."""
    return read.size(hold.sizes, "sine bar height" if hold.kind == "sine bar in vise" else "parallel height")


def sine_bar(hold: HoldPlan, read: Reader, work: Solid, side: int) -> Solid:
    """The sine bar under the tilted work, rising toward plus x (`side` 1) or minus; its top is the work's seat.

    The work is set on it, gripped, and the bar may be taken out before cutting; a cutter that would meet it is reported
    all the same.
    """
    points, (low, high) = corners(work), extent(work)
    tilt = math.radians(tilt_of(hold, read))
    length, height = read.size(hold.sizes, "sine bar length"), read.size(hold.sizes, "sine bar height")
    # The underside lies on the bar's top, and the lowest corner on that line: `run` along it to the middle of the work.
    seat_x, _, seat_z = points[points[:, 2].argmin()]
    run = ((low[0] + high[0]) / 2 - seat_x) * side / math.cos(tilt)
    outline = []
    for along, drop in ((-1, 0.0), (1, 0.0), (1, height), (-1, height)):
        distance = run + along * length / 2
        x = distance * math.cos(tilt) + drop * math.sin(tilt)
        outline.append((seat_x + side * x, seat_z + distance * math.sin(tilt) - drop * math.cos(tilt)))
    width = min(read.size(hold.sizes, "sine bar width") or high[1] - low[1], high[1] - low[1])
    middle = (low[1] + high[1]) / 2
    return prism(outline, middle - width / 2, middle + width / 2, "y")


def chuck_fixture(hold: HoldPlan, read: Reader, work: Solid, corner: float = 0.0) -> dict[str, Solid]:
    """Chuck jaws or collet as a ring round the work, its face at z = 0; its edge clears a radius in a corner."""
    low, high = extent(work)
    if hold.kind == "faceplate":
        across, packing = read(hold.sizes["plate diameter"]), read.size(hold.sizes, "packing")
        return {"chuck": cylinder(across, low[2] - packing - across / PLATE, low[2] - packing)}
    held = read.size(hold.sizes, "held diameter") or 2 * high[0]
    grip = read.size(hold.sizes, "grip") or -low[2]
    if grip <= MOST:
        raise CannotFollow(f"the {hold.holder.text} holds nothing of the work")
    if hold.kind == "mandrel":
        bar = min(held, 2 * radii_at(work, high[2] - MOST)[1])  # the hole as it is by now
        return {"chuck": cylinder(bar, low[2] - grip / 2, high[2] + grip / 2)}
    solids = {"chuck": ring(held, held + 2 * grip, -grip, 0.0)}
    if corner > 0:
        solids["chuck"] -= cone(-corner, held, corner, held + 4 * corner)
    return solids


def tail_centre(hold: HoldPlan, read: Reader, work: Solid) -> dict[str, Solid]:
    """The tailstock's centre where the card has one; it is brought up as soon as its hole is there."""
    return {"centre": centre_in(work, read(hold.sizes["centre point"]))} if "centre point" in hold.sizes else {}


def steady_rest(hold: HoldPlan, read: Reader, placement: Placement) -> dict[str, Solid]:
    """The fingers of a steady rest, as a ring round the diameter that they close on, where the card has one."""
    if "rest place" not in hold.sizes:
        return {}
    place, width = read(hold.sizes["rest place"]), read(hold.sizes["rest width"])
    middle = float((placement.turn @ (place, 0.0, 0.0) + placement.shift)[2])
    inner, outer = read(hold.sizes["rest diameter"]), 2 * read(hold.sizes["rest largest"])
    return {"steady rest": ring(inner, outer, middle - width / 2, middle + width / 2)}


def centre_in(work: Solid, point: float) -> Solid:
    """The tailstock's centre in the hole of the end that stands out, as far as it stands outside."""
    end = extent(work)[1][2]
    mouth = 2 * radii_at(work, end - MOST)[1]
    rise = (point - mouth) / 2 / math.tan(math.radians(30))
    if rise <= 0:
        return cylinder(point, end, end + 2 * point)
    return cone(end, mouth, end + rise, point) + cylinder(point, end + rise, end + 2 * point)
