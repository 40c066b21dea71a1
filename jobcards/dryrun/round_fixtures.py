"""What holds round work at the mill, as solids: V-block and jaws, the jaws and body of a chuck, a tailstock's centre.

Where the shop file has no size for something, as for a chuck's body, it is taken as large as what it can hold.
"""

import math

from jobcards.dryrun.faults import CannotFollow
from jobcards.dryrun.reading import Reader
from jobcards.dryrun.solids import Solid, box, cone, cylinder, laid, moved, prism, ring
from jobcards.planning.card import HoldPlan

CENTRE = 60.0  # the point of a tailstock's centre, whole angle


def round_fixtures(hold: HoldPlan, read: Reader, work: Solid) -> dict[str, Solid]:
    """The fixtures of one hold."""
    if hold.kind == "v-block in vise":
        return block_and_jaws(hold, read)
    held, grip = read.size(hold.sizes, "held diameter"), read.size(hold.sizes, "grip")
    if grip <= 0 or held <= 0:
        raise CannotFollow(f"the {hold.holder.text} holds nothing of the work")
    jaws = ring(held, held + 2 * grip, -grip, 0.0)
    face = -grip - read.size(hold.sizes, "room below")
    jaws += ring(held, held + 2 * grip, face, -grip)
    body = cylinder(held + 2 * grip, face - 2 * grip, face)
    if hold.up:
        return {"chuck": jaws, "rotary table": body}
    hollow = body - cylinder(held, face - 2 * grip, face)  # what is thinner than the diameter held goes in
    solids = {"chuck": laid(jaws, "x"), "dividing head": laid(hollow, "x")}
    if hold.support:
        out = read.size(hold.sizes, "stick-out")
        point = held / 2 / math.tan(math.radians(CENTRE / 2))
        centre = cone(0.0, 0.0, point, held) + cylinder(held, point, point + held)
        solids["centre"] = moved(laid(centre, "x"), x=out)
    return solids


def block_and_jaws(hold: HoldPlan, read: Reader) -> dict[str, Solid]:
    """The V-block with its V along x under the work, its end at x = 0, and the jaws beside it, level with that end."""

    def size(name: str) -> float:
        return read.size(hold.sizes, name)

    half = math.radians(size("block angle") / 2)
    if not 0 < half < math.pi / 2:
        raise CannotFollow("the V-block has no angle")
    apex = -size("held diameter") / 2 / math.sin(half)
    top = apex + size("opening") / 2 / math.tan(half)
    bottom, side, length = top - size("block height"), size("block width") / 2, size("block length")
    rise = 2 * (top - apex)
    spread = rise * math.tan(half)
    vee = prism([(0.0, apex), (-spread, apex + rise), (spread, apex + rise)], -2 * length, length, "x")
    block = box((-length, -side, bottom), (0.0, side, top)) - vee
    wide, thick, depth = size("jaw width"), size("jaw thickness"), size("jaw depth")
    return {
        "v-block": block,
        "fixed jaw": box((-wide, side, bottom), (0.0, side + thick, bottom + depth)),
        "moving jaw": box((-wide, -side - thick, bottom), (0.0, -side, bottom + depth)),
        "bed": box((-wide, -side - thick, bottom - thick), (0.0, side + thick, bottom)),
    }
