"""How deep work goes into what holds it at the lathe, how far it then stands out, and how much must be held."""

from jobcards.definition import shop as kit
from jobcards.definition.job import SetUp
from jobcards.planning.lathe.reach import blank_over, cuts_outside, furthest
from jobcards.planning.number import Number
from jobcards.planning.route import Route
from jobcards.planning.words import Line, line
from jobcards.planning.work import Work, slug
from jobcards.trade import milling, turning


def present(route: Route, set_up_id: str) -> Number:
    """How long the piece is when it is put in the chuck."""
    if not route.parted and not any(end in route.done for end in ("left end", "right end")):
        return route.blank.sizes["length"]
    if (route.to_length and route.parted) or {"left end", "right end"} <= route.faced:
        return route.shape.sizes["length"]
    if route.parted:
        return route.work.of(set_up_id).length(
            "present", milling.support_height, "length of the piece", base=route.shape.sizes["length"],
            rise=route.work.rule("facing"),
        )  # fmt: skip
    return route.work.of(set_up_id).length(
        "present", milling.left_to_take, "length of the piece", full=route.blank.sizes["length"],
        taken=route.work.rule("facing"),
    )  # fmt: skip


def is_long_enough(route: Route, set_up_id: str, set_up: SetUp, out: Number) -> bool:
    """Whether the piece is longer than what has to stand out; a problem when it is not."""
    whole, hold = present(route, set_up_id), set_up.hold
    assert hold is not None
    if whole.value > out.value:
        return True
    first = (
        f"write `by:` and the diameter it is held by, so that the {hold.holder} takes the piece itself"
        if route.parted and not hold.by
        else "write a longer blank, or cut less in this set-up"
    )
    route.work.problem(
        hold.place("holder"),
        f"the piece is {whole.shown} long here, and {out.shown} of it would have to stand out of the {hold.holder}",
        first,
    )
    return False


def least_grip(route: Route, set_up_id: str) -> Number:
    """The least length to hold; of a short piece a part of its own length is enough."""
    work = route.work
    least, whole = work.rule("least chuck grip"), present(route, set_up_id)
    part = work.rule("short piece grip")
    if whole.value * part.value >= least.value:
        return least
    return work.of(set_up_id).length(
        "least-grip", turning.short_grip, "least to hold of so short a piece", length=whole, part=part
    )


def said_to_stand_out(route: Route, set_up_id: str, set_up: SetUp, needed: Number) -> Number | None:
    """How far the work stands out where the definition says it; a problem when its cuts ask for more."""
    hold = set_up.hold
    assert hold is not None
    if hold.stands_out is None:
        return None
    out = route.work.expression(f"{set_up_id}.stands-out", hold.stands_out, "how far the work stands out")
    if out.value < needed.value - 1e-9:
        route.work.problem(
            hold.place("stands_out"),
            f"the work stands out {out.shown}, and its cuts and the room before the jaws ask for {needed.shown}",
            "let it stand out farther, or leave `stands out` away",
        )
    return out


def asked_for(route: Route, set_up_id: str, set_up: SetUp, short: bool) -> Number:
    """How far a plain diameter stands out for its cuts. `short`: no farther than they ask."""
    work, hold = route.work, set_up.hold
    assert hold is not None
    facing, room = blank_over(route, set_up_id, hold.out), work.rule("chuck clearance")
    label = "part standing out of what holds it"
    if short and not cuts_outside(route, set_up):
        corners = [
            f.sizes["size"] for o in set_up.operations if (f := route.feature(o)) and f.shape == "turned chamfer"
        ]
        if not corners:
            return work.of(set_up_id).length("least-out", milling.support_height, label, base=facing, rise=room)
        reach = max(corners, key=lambda n: n.value)
    else:
        reach = furthest(route, set_up_id, set_up)
    return work.of(set_up_id).length(
        "least-out" if short else "stick-out",
        turning.stick_out,
        label,
        length=reach,
        facing=facing,
        parting=0.0,
        clearance=room,
    )


def left_inside(route: Route, set_up_id: str, set_up: SetUp, chuck: kit.Chuck, across: Number, asked: Number) -> Number:
    """How far the work stands out of a chuck: what is longer than the jaws goes on into the chuck's own hole.

    When it is thicker than that hole, or than the spindle's, it goes in no farther than the jaws are long.
    """
    work, hold = route.work, set_up.hold
    assert hold is not None
    hole = narrowest(work, set_up, chuck)
    if hole is None or across.value <= hole.value:
        return asked
    depth = work.shop_length(f"shop-{slug(hold.holder)}.depth", chuck.jaw_depth, "length of the jaws")
    whole = present(route, set_up_id)
    if whole.value - asked.value <= depth.value + 1e-9:
        return asked
    return work.of(set_up_id).length(
        "pushed-in", milling.left_to_take, "piece that does not go in between the jaws", full=whole, taken=depth
    )


def narrowest(work: Work, set_up: SetUp, chuck: kit.Chuck) -> Number | None:
    """The narrower of the holes in chuck and spindle; nothing where the shop does not tell."""
    assert set_up.hold is not None
    lathe, found = work.shop.machines[set_up.machine], []
    if chuck.bore is not None:
        found.append(work.shop_length(f"shop-{slug(set_up.hold.holder)}.bore", chuck.bore, "hole through the chuck"))
    if isinstance(lathe, kit.Lathe) and lathe.spindle_bore is not None:
        found.append(work.shop_length("shop-spindle.bore", lathe.spindle_bore, "hole through the spindle"))
    return min(found, key=lambda n: n.value, default=None)


def dial_in(work: Work, set_up_id: str, runout: Number) -> list[Line]:
    """How work in a four-jaw chuck is brought to run true: opposite jaws, by half of what the indicator swings."""
    swing = work.rule("first indicator swing")
    move = work.of(set_up_id).length("jaw-move", turning.jaw_move, "to push the work over", high=swing, low=0.0)
    return [
        line(
            "Dial it in with an indicator on the work, chuck turned by hand, two opposite jaws at a time: push the "
            "work over by half of what the needle swings between them. A swing of {swing} asks {move}. Ease the jaw on "
            "the low side first, then tighten the other.",
            swing=swing,
            move=move,
        ),
        line("Go on with the other two until the needle swings no more than {runout} all round.", runout=runout),
    ]
