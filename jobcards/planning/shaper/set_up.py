"""One holding on the shaper: the vise stands with its jaws across the stroke, the fixed jaw takes the thrust."""

from jobcards.definition import shop as kit
from jobcards.definition.job import Operation, SetUp
from jobcards.planning.card import Cut, SetUpPlan
from jobcards.planning.mill.vise import Needs, plan_vise
from jobcards.planning.mill.zero import Zeros, plan_zero, surface_touch
from jobcards.planning.operation import face_is_up
from jobcards.planning.orientation import Lie, lie
from jobcards.planning.route import Route, finished
from jobcards.planning.serrated_cuts import SHAPED as SERRATED
from jobcards.planning.shaper import areas, vee
from jobcards.planning.shaper.cut import Shaped, ShaperCut, dial_step
from jobcards.planning.shaper.square import shaper_square
from jobcards.planning.stated import stated_cut
from jobcards.planning.words import line
from jobcards.planning.work import slug
from jobcards.trade import milling as sums

SHAPED: dict[str, Shaped] = {**SERRATED, **areas.SHAPED, **vee.SHAPED}


def shaper_set_up(route: Route, set_up: SetUp, set_up_id: str, shaper: kit.Shaper) -> SetUpPlan | None:
    """Squaring, or features cut in the vise with the table's dial set at a scribed line."""
    work, hold = route.work, set_up.hold
    if hold is None or route.shape.kind != "block":
        work.problem(
            set_up.mark, "the shaper holds a block in its vise", "write `hold:` with in, up, against fixed jaw"
        )
        return None
    if not isinstance(work.shop.holding.get(hold.holder), kit.Vise):
        work.problem(hold.place("holder"), f"“{hold.holder}” does not hold work on the shaper", "write a vise")
        return None
    if set_up.square_up is not None:
        return shaper_square(route, set_up, set_up_id, shaper)
    for zero in set_up.zero:
        if zero.line is None:
            work.problem(zero.mark, "a shaper has no edge finder", "set the tool to a scribed line: {line: …, from: …}")
            return None
    lying = lie(hold.up, hold.against_fixed_jaw, route.shape, route.standing)
    step = dial_step(work, shaper).value
    zeros = plan_zero(work, set_up_id, set_up, lying, step)
    held = plan_vise(
        work, set_up_id, set_up, hold.up, hold.against_fixed_jaw, hold.against_stop, lying,
        lying.along("z"), lying.along("y"), shaper_needs(route, set_up, set_up_id),
    )  # fmt: skip
    cuts = tuple(
        c for o in set_up.operations if (c := shaper_cut(route, set_up, set_up_id, o, lying, zeros, shaper)) is not None
    )
    touch = surface_touch(work, set_up_id, "surface", hold.up, step, route.standing.get(hold.up), shaper=True)
    route.zeros, route.parallels = zeros, held.sizes.get("parallel height")
    notes = [line("Set the jaws across the stroke, so that the fixed jaw takes the thrust of the ram.")]
    if len({operation.cutter for operation in set_up.operations}) > 1:
        notes.append(line("A tool that is changed stands elsewhere: bring each to the line and to the face anew."))
    touches = zeros.touches + ((touch,) if touch else ())
    return finished(route, set_up, set_up_id, "shaper", held, touches, cuts, notes)


def shaper_needs(route: Route, set_up: SetUp, set_up_id: str) -> Needs:
    """Work above the jaws: the deepest cut and clearance, since the ram strokes right across them."""
    work = route.work
    clear = work.rule("clearance")
    above = [clear]
    for operation in set_up.operations:
        feature = route.feature(operation)
        if feature is not None and "depth" in feature.sizes:
            above.append(
                work.of(f"{set_up_id}-{slug(operation.cut)}").length(
                    "above", sums.support_height, "work wanted above the jaws", base=feature.sizes["depth"], rise=clear
                )
            )
    return Needs(max(above, key=lambda n: n.value), None, None)


def shaper_cut(
    route: Route, set_up: SetUp, set_up_id: str, operation: Operation, lying: Lie, zeros: Zeros, shaper: kit.Shaper
) -> Cut | None:
    """One operation, by the shape it cuts."""
    work, feature = route.work, route.feature(operation)
    if feature is None:
        work.problem(operation.mark, "on the shaper an operation cuts a feature", "write `cut:` with a feature")
        return None
    if feature.shape == "note":
        return stated_cut(route, set_up_id, operation)
    if feature.shape not in SHAPED:
        work.problem(operation.place("cut"), f"“{feature.name}” is not cut on the shaper here", "do it at the mill")
        return None
    if not face_is_up(work, set_up, operation, feature):
        return None
    cut_id = f"{set_up_id}-{slug(operation.cut)}-{slug(operation.cutter)}"
    return SHAPED[feature.shape](ShaperCut(route, set_up, cut_id, operation, feature, lying, zeros, shaper))
