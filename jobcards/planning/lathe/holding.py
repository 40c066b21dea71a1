"""Held at the lathe: bar in a chuck, a finished diameter in collet or jaws, between centres, on a faceplate."""

from jobcards.definition import shop as kit
from jobcards.definition.job import SetUp
from jobcards.planning.card import HoldPlan
from jobcards.planning.lathe.by_diameter import plan_in_collet, plan_on_diameter
from jobcards.planning.lathe.centres import bring_up_centre, plan_between_centres, plan_on_faceplate
from jobcards.planning.lathe.chucked import dial_in, is_long_enough, least_grip, left_inside, present, said_to_stand_out
from jobcards.planning.lathe.ground import plan_on_mandrel
from jobcards.planning.lathe.outline import largest
from jobcards.planning.lathe.reach import blank_over, furthest
from jobcards.planning.number import Number
from jobcards.planning.route import Route
from jobcards.planning.words import Line, line
from jobcards.planning.work import from_shop, slug
from jobcards.trade import milling, turning


def plan_chuck(route: Route, set_up_id: str, set_up: SetUp) -> HoldPlan | None:
    """How a set-up at the lathe holds the work."""
    work, hold = route.work, set_up.hold
    assert hold is not None
    holder = work.shop.holding.get(hold.holder)
    if isinstance(holder, kit.Chuck) and hold.by:
        return plan_on_diameter(route, set_up_id, set_up, holder)
    if isinstance(holder, kit.Chuck):
        return plan_bar_in_chuck(route, set_up_id, set_up, holder)
    if isinstance(holder, kit.Collet):
        return plan_in_collet(route, set_up_id, set_up, holder)
    if isinstance(holder, kit.Centres):
        return plan_between_centres(route, set_up_id, set_up, holder)
    if isinstance(holder, kit.Mandrel):
        return plan_on_mandrel(route, set_up_id, set_up, holder)
    if isinstance(holder, kit.Faceplate):
        return plan_on_faceplate(route, set_up_id, set_up, holder)
    work.problem(
        hold.place("holder"),
        f"“{hold.holder}” does not hold work on the lathe",
        "write a chuck, a collet, centres or a faceplate of the shop file",
    )
    return None


def plan_bar_in_chuck(route: Route, set_up_id: str, set_up: SetUp, chuck: kit.Chuck) -> HoldPlan | None:
    """How far the bar stands out, and how much of it is held."""
    work, shape, blank, hold = route.work, route.shape, route.blank, set_up.hold
    assert hold is not None
    parting = next((o.cutter for o in set_up.operations if o.part_off), "")
    tool = work.shop.cutters.get(parting)
    width: Number | float = (
        work.shop_lengths(f"shop-{slug(parting)}", tool, {"width": "width"})["width"]
        if tool is not None and tool.width is not None
        else 0.0
    )
    facing = blank_over(route, set_up_id, hold.out)
    both = (
        work.of(set_up_id).length("facing", milling.support_height, "faced off both ends", base=facing, rise=facing)
        if parting and not route.to_length
        else facing
    )
    needed = work.of(set_up_id).length(
        "stick-out",
        turning.stick_out,
        "bar standing out of the jaws",
        length=shape.sizes["length"] if parting else furthest(route, set_up_id, set_up),
        facing=both,
        parting=width,
        clearance=work.rule("chuck clearance"),
    )
    asked = said_to_stand_out(route, set_up_id, set_up, needed) or needed
    if not is_long_enough(route, set_up_id, set_up, asked):
        return None
    place = held_place(route, hold.out)
    held = largest(route.turned, place, place, blank.sizes["diameter"])
    out = left_inside(route, set_up_id, set_up, chuck, held, asked)
    grip = work.of(set_up_id).length(
        "grip", milling.left_to_take, "bar left in the chuck", full=present(route, set_up_id), taken=out
    )
    least = least_grip(route, set_up_id)
    if grip.value < least.value - 1e-9:
        work.problem(
            hold.place("holder"),
            f"only {grip.shown} of the blank is left in the chuck; {least.shown} is the least",
            "write a longer blank",
        )
    sizes = {"stick-out": out, "grip": grip, "held diameter": held}
    said = chuck_words(route, set_up_id, set_up, chuck, out, grip)
    if bring_up_centre(route, set_up_id, set_up, sizes, said):
        said[-1] += line(" Leave room for the tool beside it.")
    return HoldPlan(
        "chuck", from_shop(hold.holder), sizes, out=hold.out, support=hold.support, instructions=tuple(said)
    )


def held_place(route: Route, out: str) -> float:
    """A place of the work that is in the chuck: its other end."""
    return 0.0 if out == "right end" else route.shape.sizes["length"].value


def chuck_words(route: Route, set_up_id: str, set_up: SetUp, chuck: kit.Chuck, out: Number, grip: Number) -> list[Line]:
    """Putting bar into the chuck; a chuck whose jaws move one by one is dialled in."""
    work, hold = route.work, set_up.hold
    assert hold is not None
    runout = work.shop_length(f"shop-{slug(hold.holder)}.runout", chuck.runout, "how far out of true it runs")
    said = [
        line(
            "Bar in the {chuck}, standing out {out}; {grip} is left inside. Take the key out.",
            chuck=from_shop(hold.holder),
            out=out,
            grip=grip,
        )
    ]
    if chuck.jaws == "one by one":
        return [*said, *dial_in(work, set_up_id, runout)]
    return [
        *said,
        line(
            "The bar may run out {runout}. All that must be true to one another is turned without taking it out.",
            runout=runout,
        ),
    ]
