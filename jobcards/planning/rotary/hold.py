"""A block clamped on a rotary table: which straps go on it, what it lies on, what trues it, which way it turns."""

import math
from collections.abc import Iterator

from jobcards.definition.job import SetUp
from jobcards.definition.shop_clamping import TableClamps
from jobcards.definition.shop_dividing import RotaryTable
from jobcards.planning.card import ClampPlan, HoldPlan
from jobcards.planning.mill.clamp_words import clamp_words, edge_axis
from jobcards.planning.mill.clamped import (
    check_number,
    clamp_places,
    heel_of,
    in_job,
    strap_sizes,
    top_over,
)
from jobcards.planning.mill.vise import Needs
from jobcards.planning.number import Number
from jobcards.planning.orientation import Lie
from jobcards.planning.rotary.centre import Centre
from jobcards.planning.shapes.patterns import DRAWN
from jobcards.planning.shapes.place import ALONG, AXES
from jobcards.planning.words import Line, line
from jobcards.planning.work import Work, from_shop, slug
from jobcards.trade import stackups
from jobcards.trade.setups import FACES

KIND = "on rotary table"
TINY = 1e-9
WAYS = {True: "clockwise", False: "anticlockwise"}


def seen_as_drawn(lying: Lie, up: str) -> bool:
    """Whether the face that is up looks from above as the drawing shows it, and not mirrored as from behind."""
    (across, rightward), (upward_axis, upward) = DRAWN[up]
    signs = {lying.drawing_axis(axis): lying.sign(axis) for axis in ("x", "y")}
    turned = lying.drawing_axis("x") != across
    drawn = (1 if rightward else -1) * (1 if upward else -1)
    return (signs[across] * signs[upward_axis] * drawn > 0) != turned


def right_at_first(lying: Lie, up: str) -> float:
    """The drawing's angle that looks to the right on the machine while the table reads nothing."""
    (across, rightward), (_, upward) = DRAWN[up]
    axis, sign = lying.drawing_axis("x"), lying.sign("x")
    if axis == across:
        return 0.0 if (sign > 0) == rightward else 180.0
    return 90.0 if (sign > 0) == upward else 270.0


def plan_rotary_hold(
    work: Work,
    set_up_id: str,
    set_up: SetUp,
    lying: Lie,
    centre: Centre,
    needs: Needs,
    centred: list[Line],
) -> HoldPlan | None:
    """How the block is clamped on the table. `centred`: what brings its middle over the axis."""
    hold = set_up.hold
    assert hold is not None
    table = work.shop.holding[hold.holder]
    assert isinstance(table, RotaryTable)
    shop_id = f"shop-{slug(hold.holder)}"
    own = {
        "table diameter": work.shop_length(f"{shop_id}.diameter", table.diameter, "across the rotary table's face"),
        "table thickness": work.shop_length(f"{shop_id}.thickness", table.thickness, "from its base to its face"),
    }
    straps = straps_for(work, set_up, lying, centre, own["table diameter"])
    if straps is None:
        return None
    name, kit = straps
    sizes = {**own, **strap_sizes(work, set_up_id, name, kit)}
    top = top_over(work, set_up_id, set_up, lying, needs, sizes, "rotary table")
    clamps = clamp_places(work, set_up_id, set_up, lying.shape, hold.up)
    heel_of(work, set_up_id, set_up, sizes, top)
    check_number(work, set_up, kit)
    if "parallel thickness" in sizes:
        sizes["packing at"] = packing_at(work, set_up_id, clamps)
        check_packing(work, set_up, clamps, sizes)
    stood = list(clamp_words(clamps, hold.up, sizes))
    first = right_at_first(lying, hold.up)
    sizes["angle up"] = work.ledger.given(
        f"{set_up_id}.right", first, "deg", "angle of the drawing that is to the right at first", "how this set-up lies"
    )
    said = [
        *lies_words(set_up, sizes, lying, clamps),
        *(centred if hold.centred_by == "plug" else []),
        *stood[:-1],
        trued_words(work, set_up, lying, clamps),
        *(centred if hold.centred_by != "plug" else []),
        stood[-1],
    ]
    return HoldPlan(
        KIND,
        from_shop(hold.holder),
        sizes,
        hold.up,
        hold.far_side,
        instructions=tuple(said),
        clamps=clamps,
        centre=hold.centre,
        way=WAYS[seen_as_drawn(lying, hold.up)],
    )


def packing_at(work: Work, set_up_id: str, clamps: tuple[ClampPlan, ...]) -> Number:
    """The middle of the packing along its edges: halfway between the outermost clamps."""
    places = sorted((clamp.at for clamp in clamps), key=lambda at: at.value)
    return work.of(set_up_id).length(
        "packing-at", stackups.mean, "middle of the packing, along the edge", low=places[0], high=places[-1]
    )


def check_packing(work: Work, set_up: SetUp, clamps: tuple[ClampPlan, ...], sizes: dict[str, Number]) -> None:
    """Two pieces lie under two opposite edges, and every nose bears over one of them with its whole width."""
    hold = set_up.hold
    assert hold is not None
    if len({FACES[clamp.over][0] for clamp in clamps}) > 1:
        work.problem(
            hold.place("clamps"),
            "two pieces of packing lie under two opposite edges, and some clamps would press on air",
            "put all clamps over two opposite faces",
        )
        return
    half, wide = sizes["parallel length"].value / 2, sizes["clamp width"].value / 2
    if any(abs(clamp.at.value - sizes["packing at"].value) > half - wide + TINY for clamp in clamps):
        work.problem(
            hold.place("clamps"),
            f"the clamps stand farther apart than the packing reaches, which is {sizes['parallel length'].shown} long",
            "put them nearer together, or lay the work on longer packing",
        )


def straps_for(work: Work, set_up: SetUp, lying: Lie, centre: Centre, across: Number) -> tuple[str, TableClamps] | None:
    """The first set of straps whose heels stand on the table, all of them."""
    hold = set_up.hold
    assert hold is not None
    sets = [(name, thing) for name, thing in work.shop.holding.items() if isinstance(thing, TableClamps)]
    for name, straps in sets:
        if all(far <= across.value / 2 + TINY for far in heels_off_axis(work, set_up, lying, centre, straps)):
            return name, straps
    wrong = "the shop has no strap clamps"
    if sets:
        wrong = f"the heels of no strap clamps of the shop would stand on the rotary table, {across.shown} across"
    work.problem(hold.place("clamps"), wrong, "put the clamps over other edges, or add shorter straps to the shop file")
    return None


def heels_off_axis(work: Work, set_up: SetUp, lying: Lie, centre: Centre, straps: TableClamps) -> Iterator[float]:
    """How far from the table's axis the outermost corner of each strap stands."""
    hold = set_up.hold
    assert hold is not None
    out = in_job(work, straps.length) - in_job(work, straps.reach)
    half = in_job(work, straps.width) / 2
    for clamp in clamp_places(work, f"{slug(set_up.title)}-try", set_up, lying.shape, hold.up):
        across, end = FACES[clamp.over]
        along = AXES[edge_axis(clamp.over, hold.up)]
        edge = lying.shape.sizes[("length", "height", "thickness")[across]].value if end > 0 else 0.0
        away = abs(edge - centre[AXES[across]].value) + out
        yield math.hypot(away, abs(clamp.at.value - centre[along].value) + half)


def lies_words(set_up: SetUp, sizes: dict[str, Number], lying: Lie, clamps: tuple[ClampPlan, ...]) -> Iterator[Line]:
    """How the work lies on the table."""
    hold = set_up.hold
    assert hold is not None
    yield line(
        "The {table} lying flat in the middle of the machine's table, clamped down, its own lock free. "
        "Bring the spindle over its axis before anything lies on it: X and Y below.",
        table=from_shop(hold.holder),
    )
    if "parallel thickness" in sizes:
        across = lying.side(clamps[0].over)[0] == "x"
        yield line(
            "{up} up, on two pieces of packing {height} high and {thickness} broad: one under the {one}, one under the "
            "{other}, their middles {at} {start}, where the clamps press.",
            at=sizes["packing at"],
            start=ALONG[AXES[edge_axis(clamps[0].over, hold.up)]],
            up=f"The {hold.up}",
            height=sizes["parallel height"],
            thickness=sizes["parallel thickness"],
            one="left edge" if across else "near edge",
            other="right edge" if across else "far edge",
        )
    else:
        yield line("{up} up, flat on the rotary table; no chip under it.", up=f"The {hold.up}")


def trued_words(work: Work, set_up: SetUp, lying: Lie, clamps: tuple[ClampPlan, ...]) -> Line:
    """What brings the work true to the machine, and the table's dial to nothing."""
    hold = set_up.hold
    assert hold is not None
    taken = {clamp.over for clamp in clamps}
    near = next(face for face in FACES if lying.side(face) == ("y", -1))
    face = next((face for face in (hold.far_side, near) if face not in taken), hold.far_side)
    return line(
        "The {far} away from you. Nip the clamps, sweep an indicator along the {face}{between}, and turn the rotary "
        "table until it reads the same from end to end within {true}. Lock it; set its dial and its ring to nothing.",
        far=hold.far_side,
        face=face,
        between=" between the clamps" if face in taken else "",
        true=work.rule("edge trued"),
    )
