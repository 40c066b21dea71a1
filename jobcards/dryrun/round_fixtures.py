"""What holds round work at the mill, as solids: V-block and jaws, the jaws and body of a chuck, a tailstock's centre.

Where the shop file has no size for something, as for a chuck's body, it is taken as large as what it can hold.
"""

import math

from jobcards.dryrun.faults import CannotFollow
from jobcards.dryrun.reading import Reader
from jobcards.dryrun.solids import Solid, box, cone, cylinder, extent, laid, moved, prism, ring
from jobcards.planning.card import HoldPlan

NOSE = 0.01  # so much of a size may be off under a nose or in a V
CENTRE = 60.0  # the point of a tailstock's centre, whole angle


def round_fixtures(hold: HoldPlan, read: Reader, work: Solid) -> dict[str, Solid]:
    """The fixtures of one hold."""
    if hold.kind == "v-block in vise":
        return block_and_jaws(hold, read)
    held, grip = read.size(hold.sizes, "held diameter"), read.size(hold.sizes, "grip")
    if grip <= 0 or held <= 0:
        raise CannotFollow(f"the {hold.holder.text} holds nothing of the work")
    if hold.kind == "bored jaws":
        return soft_jaws(hold, read, held, grip)
    jaws = ring(held, held + 2 * grip, -grip, 0.0)
    face = -grip - read.size(hold.sizes, "room below")
    jaws += ring(held, held + 2 * grip, face, -grip)
    body = cylinder(held + 2 * grip, face - 2 * grip, face)
    if hold.up:
        return {"chuck": jaws, "rotary table": body}
    hollow = body - cylinder(held, face - 2 * grip, face)  # what is thinner than the diameter held goes in
    solids = {"chuck": laid(jaws, "x"), "dividing head": laid(hollow, "x")}
    if hold.kind == "rotary table":  # on edge: its face stands up behind the chuck
        rim = ring(held, read.size(hold.sizes, "table diameter"), face - 3 * grip, face - 2 * grip)
        solids = {"chuck": solids["chuck"] + solids["dividing head"], "rotary table": laid(rim, "x")}
    if hold.support:
        out = read.size(hold.sizes, "stick-out")
        point = held / 2 / math.tan(math.radians(CENTRE / 2))
        centre = cone(0.0, 0.0, point, held) + cylinder(held, point, point + held)
        solids["centre"] = moved(laid(centre, "x"), x=out)
    return solids


def vee_and_block(hold: HoldPlan, read: Reader) -> tuple[Solid, Solid]:
    """The V along x under the work, and the block that it is cut into, whose end is at x = 0."""

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
    return vee, box((-length, -side, bottom), (0.0, side, top))


def soft_jaws(hold: HoldPlan, read: Reader, held: float, grip: float) -> dict[str, Solid]:
    """Two soft jaws with the bore across their joint, its floor as deep as the grip; their top is z = 0."""
    wide, tall, thick = (read.size(hold.sizes, name) for name in ("jaw width", "jaw height", "jaw thickness"))
    half, bore = read.size(hold.sizes, "jaw gap") / 2, cylinder(held, -grip, tall)
    near = box((-wide / 2, -half - thick, -tall), (wide / 2, -half, 0.0))
    far = box((-wide / 2, half, -tall), (wide / 2, half + thick, 0.0))
    return {"near jaw": near - bore, "far jaw": far - bore}


def block_and_jaws(hold: HoldPlan, read: Reader) -> dict[str, Solid]:
    """The V-block with its end at x = 0, and the jaws beside it, level with that end."""

    def size(name: str) -> float:
        return read.size(hold.sizes, name)

    vee, block = vee_and_block(hold, read)
    (_, _, bottom), (_, side, _) = extent(block)
    wide, thick, depth = size("jaw width"), size("jaw thickness"), size("jaw depth")
    return {
        "v-block": block - vee,
        "fixed jaw": box((-wide, side, bottom), (0.0, side + thick, bottom + depth)),
        "moving jaw": box((-wide, -side - thick, bottom), (0.0, -side, bottom + depth)),
        "bed": box((-wide, -side - thick, bottom - thick), (0.0, side + thick, bottom)),
    }


def blocks_on_table(hold: HoldPlan, read: Reader, work: Solid) -> tuple[dict[str, Solid], list[str]]:
    """V-blocks on the table, a strap across the top over each; and what is wrong with how the work lies.

    The axis of the work is y = 0, z = 0; its ends are where the work was laid.
    """

    def size(name: str) -> float:
        return read.size(hold.sizes, name)

    vee, block = vee_and_block(hold, read)
    low, _ = extent(block)
    bottom, length = low[2], size("block length")
    ends = read.size(hold.sizes, "clamp length")
    solids = {"table": box((-10 * length, -ends, bottom - size("clamp thickness")), (10 * length, ends, bottom))}
    faults: list[str] = []
    (left, _, _), (right, _, _) = extent(work)
    top, half, nose = size("held diameter") / 2, size("clamp width") / 2, size("beyond the axis")
    far, stud = ends - nose, size("stud")
    for number, at in enumerate((read(clamp.at) for clamp in hold.clamps), start=1):
        x = left + at if hold.out == "right end" else right - at
        name = "" if number == 1 else f", {number}"
        here = moved(block - vee, x + length / 2)
        solids[f"v-block{name}"] = here
        solids[f"clamp{name}"] = box((x - half, -nose, top), (x + half, far, top + size("clamp thickness")))
        solids[f"heel{name}"] = box((x - half, far - 2 * half, bottom), (x + half, far, bottom + size("heel")))
        nut = top + size("clamp thickness")
        upright = cylinder(stud, bottom, top + size("stands up")) + cylinder(2 * stud, nut, nut + stud)
        solids[f"stud{name}"] = moved(upright, x, size("stud off"))
        under = work ^ box((x - half, -top, 0.0), (x + half, top, 2 * top))
        if (
            under.is_empty()
            or abs(extent(under)[1][2] - top) > NOSE * top
            or extent(under)[1][0] < x + half * (1 - NOSE)
        ):
            faults.append(f"the clamp over V-block {number} bears on air")
        if (here ^ work).volume() > NOSE * here.volume():
            faults.append(f"the work does not go down into V-block {number}")
    if size("heel") < top - bottom - 1e-6:
        faults.append("the clamps slope down to their heels and push the work away")
    return solids, faults
