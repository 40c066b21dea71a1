"""What the tool takes at the lathe: z is the spindle's axis, the chuck's or collet's face is z = 0, the work is plus.

The dial of the cross slide reads nothing, or its preset, where the tool touched the bar's outside as it really is. What
a mark of the dial moves is the shop's affair: a dial that reads the diameter takes the diameter down by what it reads,
one that reads the infeed by twice that. Lengths count from the end as it stands: the faced one once it is faced.
The tool's nose leaves its radius in the corner of a shoulder; a chamfering or facing tool is taken as sharp. A shoulder
that stands out farther than what is held lies back against chuck or collet, whose corner clears such a radius.
"""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace

from jobcards.definition.shop import Lathe
from jobcards.dryrun import bore_strokes, lathe_strokes
from jobcards.dryrun.faults import CannotFollow
from jobcards.dryrun.orient import Placement, on_spindle
from jobcards.dryrun.reading import Reader, true_tip
from jobcards.dryrun.revolved import fillet, radii_at
from jobcards.dryrun.solids import Solid, corners, cylinder, extent, ring
from jobcards.dryrun.target.turned import chamfer
from jobcards.dryrun.turned_stroke import AtLathe, Stroke, nose_of
from jobcards.planning.card import Card, Cut, HoldPlan, PartPlan, Touch

BY_DIAL = ("turn", "grind round", "turn groove", "taper by compound", "taper by set-over", "taper by form")
MOVING = ("taper by compound", "thread", "turn bore", "bore taper", "bore thread", "bore groove")
SEATED = 0.02  # a shoulder is what stands out by more than a fiftieth of the diameter held


def touch_bar(touches: Sequence[Touch], work: Solid, card: Card, lathe: Lathe, read: Reader) -> AtLathe:
    """The lathe after the touches of a set-up."""
    radius, preset = standing_out(work), 0.0
    for touch in touches:
        if touch.kind == "bar":
            preset = read(touch.preset)
            radius += true_tip(card, touch.finder, 0.0)
        elif touch.kind != "end":
            raise CannotFollow(f"a touch of the kind “{touch.kind}” is not one for the lathe")
    infeed = 0.5 if lathe.cross_slide.reads == "diameter" else 1.0
    return AtLathe(work, read, radius, preset, infeed, lathe.compound_counts_from == "cross slide")


def standing_out(work: Solid) -> float:
    """The largest radius of what stands out of chuck or collet: there the tool touches."""
    points = corners(work)
    out = points[points[:, 2] > 0] if (points[:, 2] > 0).any() else points
    return float((out[:, :2] ** 2).sum(axis=1).max() ** 0.5)


def chucked(work: Solid, hold: HoldPlan, read: Reader, corner: float = 0.0) -> Placement:
    """The work in chuck or collet: seated by its shoulder where one lies before the collet, else by stick-out.

    `corner`: the radius that tools have left in the work's corners, which is no shoulder.
    """
    placed = on_spindle(work, hold.out, 0.0)
    held = read.size(hold.sizes, "held diameter")
    if hold.kind in ("collet", "chuck") and held > 0:
        points = corners(placed.on_machine(work))
        seat = max(held / 2 * (1 + SEATED), held / 2 + (1 + SEATED) * corner)
        wider = points[(points[:, :2] ** 2).sum(axis=1) > seat**2]
        if len(wider):
            return on_spindle(work, hold.out, -float(wider[:, 2].min()))
    if "stick-out" not in hold.sizes:
        raise CannotFollow("the card does not tell how far the work stands out")
    return on_spindle(work, hold.out, read(hold.sizes["stick-out"]))


def at_the_dial(cut: Cut, lathe: AtLathe) -> AtLathe:
    """The lathe with the dial as it stands for a cut: another tool, or one that was moved, must have touched anew."""
    if cut.kind in MOVING and cut.kind not in BY_DIAL:
        return replace(lathe, tool="")
    if cut.kind not in BY_DIAL or cut.cutter is None:
        return lathe
    tool = cut.cutter.name.text
    if "touch dial" in cut.sizes:
        z = lathe.end - lathe.read(cut.sizes["touch place"])
        lathe = replace(lathe, dial_radius=radii_at(lathe.work, z)[0], preset=lathe.read(cut.sizes["touch dial"]))
    elif lathe.tool not in (None, tool) or cut.kind == "taper by compound":
        raise CannotFollow(f"{cut.id}: the cross-slide dial was not set with the {tool} as it stands")
    return replace(lathe, tool="" if cut.kind in MOVING else tool)


def left_in_corners(part: PartPlan, read: Reader) -> float:
    """The largest radius that a tool leaves in a corner of a part."""
    return max((nose_of(cut, read) for s in part.set_ups for cut in s.cuts if cut.kind == "turn"), default=0.0)


def turn(cut: Cut, lathe: AtLathe) -> list[Stroke]:
    """A diameter turned down from the end, a position a pass."""
    strokes, nose = [], nose_of(cut, lathe.read)
    for position in cut.positions:
        if position.x is None or position.z is None:
            raise CannotFollow(f"the card gives {cut.id} no dial setting or no length")
        radius = lathe.radius(lathe.read(position.x))
        if radius <= 0:
            raise CannotFollow(f"{cut.id}: the dial setting goes past the centre")
        over = radius / 10 if lathe.supported else radius
        low = lathe.end - lathe.read(position.z)
        solid = ring(2 * radius, lathe.outer, low, lathe.end + over)
        if nose > 0:
            solid -= fillet(radius, low, nose, 1)
        strokes.append(Stroke(solid, solid))
    return strokes


def turn_face(cut: Cut, lathe: AtLathe) -> list[Stroke]:
    """An end faced: so far in from where it stands, to a size left in front of the seat, or to the whole length."""
    if "whole length" in cut.sizes:
        level = extent(lathe.work)[0][2] + lathe.read(cut.sizes["whole length"])
    elif "leave" in cut.sizes:
        level = lathe.read(cut.sizes["leave"])
    elif cut.positions and cut.positions[-1].z is not None:
        level = lathe.end - lathe.read(cut.positions[-1].z)
    else:
        raise CannotFollow(f"the card does not tell how much to face in {cut.id}")
    solid = cylinder(lathe.outer, level, max(lathe.end, level) + lathe.touched_radius)
    return [Stroke(solid, solid)]


def turn_chamfer(cut: Cut, lathe: AtLathe) -> list[Stroke]:
    """The corner of the end taken off at 45°, or, in a nick, that of the far end."""
    if cut.positions:
        return [Stroke(*[lathe_strokes.far_corner(cut, lathe)] * 2)]
    solid = chamfer(lathe.work, lathe.read(cut.sizes["size"]), 1, lathe.touched_radius)
    return [Stroke(solid, solid)]


def part_off(cut: Cut, lathe: AtLathe) -> list[Stroke]:
    """The work cut off the bar; the tool's edge toward the part stands at z, the rest stays in the chuck."""
    if not cut.positions or cut.positions[-1].z is None:
        raise CannotFollow(f"the card does not tell where to part off in {cut.id}")
    edge = lathe.end - lathe.read(cut.positions[-1].z)
    low = extent(lathe.work)[0][2]
    kerf = cylinder(lathe.outer, edge - lathe.read(cut.sizes["width"]), edge)
    return [Stroke(kerf, cylinder(lathe.outer, min(low, edge) - 1.0, edge))]


STROKES: Mapping[str, Callable[[Cut, AtLathe], list[Stroke]]] = {
    "turn": turn,
    "grind round": turn,
    "turn face": turn_face,
    "turn chamfer": turn_chamfer,
    "part off": part_off,
    **lathe_strokes.STROKES,
    **bore_strokes.STROKES,
}


def strokes_of(cut: Cut, lathe: AtLathe) -> list[Stroke]:
    """What a cut takes. Raises CannotFollow for a cut that no lathe makes."""
    if cut.kind not in STROKES:
        raise CannotFollow(f"a cut of the kind “{cut.kind}” is not one for the lathe")
    return STROKES[cut.kind](cut, lathe)
