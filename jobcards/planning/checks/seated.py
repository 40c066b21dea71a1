"""A holding in the vise says one parallel where nothing of the work is left over the other."""

from dataclasses import replace

from jobcards.planning.card import HoldPlan, PartPlan, SetUpPlan
from jobcards.planning.checks.worked import Worked, beside
from jobcards.planning.mill.zero import OPPOSITE
from jobcards.planning.words import Line, as_text, line

NOTHING_LEFT = 0.98  # cut away by more than this, a face lies on nothing


def seated(plan: PartPlan) -> PartPlan:
    """The part with the words of every holding in the vise true to what is left of the work by then."""
    if plan.shape.kind != "block":
        return plan
    ways = tuple(
        replace(way, set_ups=tuple(one for one in followed(plan, plan.route_of(way)) if one.id in ids_of(way.set_ups)))
        for way in plan.alternatives
    )
    return replace(plan, set_ups=followed(plan, plan.set_ups), alternatives=ways)


def ids_of(set_ups: tuple[SetUpPlan, ...]) -> set[str]:
    """The ids of set-ups."""
    return {set_up.id for set_up in set_ups}


def followed(plan: PartPlan, route: tuple[SetUpPlan, ...]) -> tuple[SetUpPlan, ...]:
    """The set-ups of a route, followed from the first cut."""
    worked = Worked(plan.shape)
    out = []
    for set_up in route:
        hold = set_up.hold
        if hold is not None and hold.kind == "vise" and "parallel thickness" in hold.sizes:
            set_up = replace(set_up, hold=on_what_is_left(plan, worked, hold))
        out.append(set_up)
        for cut in set_up.cuts:
            if not cut.rough:
                worked.cut(cut.feature)
    return tuple(out)


def on_what_is_left(plan: PartPlan, worked: Worked, hold: HoldPlan) -> HoldPlan:
    """The holding, with one parallel where the other would carry nothing."""
    seat, thickness = OPPOSITE[hold.up], hold.sizes["parallel thickness"]
    jaws = {"fixed": hold.fixed_jaw, "moving": OPPOSITE[hold.fixed_jaw]}
    carrying = [
        jaw
        for jaw, face in jaws.items()
        if worked.away(seat, beside(plan.shape, seat, face, thickness.value)) <= NOTHING_LEFT
    ]
    if len(carrying) != 1:
        return hold
    told = line(
        "One parallel {height} high and {thickness} thick, along the {jaw} jaw: nothing of the {seat} is left over a "
        "second one. Tap the work down until it does not slide.",
        height=hold.sizes["parallel height"],
        thickness=thickness,
        jaw=carrying[0],
        seat=seat,
    )
    return replace(hold, instructions=tuple(told if of_parallels(each) else each for each in hold.instructions))


def of_parallels(instruction: Line) -> bool:
    """Whether an instruction tells where the parallels lie."""
    return as_text(instruction).startswith("Parallels ")
