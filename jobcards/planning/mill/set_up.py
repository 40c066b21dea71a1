"""One holding at the mill: how it is held, where zero is, and its operations by the shape they cut."""

from dataclasses import replace

from jobcards.definition import shop as kit
from jobcards.definition.job import Operation, SetUp
from jobcards.definition.shop_clamping import AnglePlate, TableClamps
from jobcards.planning import serrated_cuts
from jobcards.planning.card import Cut, FeaturePlan, HoldPlan, SetUpPlan
from jobcards.planning.holes.depths import beyond
from jobcards.planning.mill import angled, edges, formed, holes, milled, tilted_edges, tilted_head, tilted_work
from jobcards.planning.mill.angle_plate import plan_on_plate
from jobcards.planning.mill.clamp_room import check_clamp_room
from jobcards.planning.mill.clamped import plan_on_table
from jobcards.planning.mill.cut import MillCut, MillCutter
from jobcards.planning.mill.kept_zero import as_it_is, keep_zero, stays_in_vise
from jobcards.planning.mill.lettered import lettered
from jobcards.planning.mill.notes import backlash_notes, flip_notes, travel_notes
from jobcards.planning.mill.vise import Needs, plan_vise
from jobcards.planning.mill.zero import OPPOSITE, Zeros, plan_zero, surface_touch
from jobcards.planning.number import Number
from jobcards.planning.operation import face_is_up
from jobcards.planning.orientation import Lie, lie
from jobcards.planning.rates import plan_cutter
from jobcards.planning.route import Route, finished
from jobcards.planning.stated import stated_cut
from jobcards.planning.words import Line
from jobcards.planning.work import Work, slug
from jobcards.trade import milling as sums


def mill_set_up(route: Route, set_up: SetUp, set_up_id: str, mill: kit.Mill) -> SetUpPlan | None:
    """One holding at the mill."""
    work, hold = route.work, set_up.hold
    if hold is None or route.shape.kind != "block":
        work.problem(
            set_up.mark, "a set-up at the mill holds a block", "write `hold:` with up, against fixed jaw and in"
        )
        return None
    lying = lie(hold.up, hold.away, route.shape, route.standing)
    step = work.shop_length("shop-readout-step", mill.readout_step, "smallest step of the readout").value
    sloped = tilted_work.tilted_features(route, set_up)
    if sloped and not tilted_work.suits(route, set_up, set_up_id, lying, sloped):
        return None
    grooves = [feature for feature in sloped if feature.shape == "V-groove"]
    zeros: Zeros | None
    if grooves:
        zeros = tilted_work.plan_tilted_zero(work, set_up, set_up_id, lying, grooves[0])
    elif set_up.keep_zero and route.zeros is not None:
        zeros = keep_zero(work, set_up_id, set_up, lying, route.zeros)
    else:
        zeros = plan_zero(work, set_up_id, set_up, lying, step)
    held = hold_at_mill(route, set_up, set_up_id, lying, zeros, sloped, mill) if zeros is not None else None
    if held is None or zeros is None:
        return None
    if stays_in_vise(route, set_up):
        held = replace(held, instructions=(as_it_is(hold), held.instructions[-1]))
    cuts = tuple(
        c for o in set_up.operations if (c := mill_cut(route, set_up, set_up_id, o, lying, zeros, mill)) is not None
    )
    cuts = lettered(cuts)
    if held.clamps:
        check_clamp_room(work, set_up, lying, zeros, held, cuts, OPPOSITE[hold.against] if hold.against else hold.up)
    before, route.zeros, route.parallels = route.zeros, zeros, held.sizes.get("parallel height")
    touch = surface_touch(
        work,
        set_up_id,
        "corner" if sloped else "surface",
        hold.high_end if sloped else hold.up,
        step,
        None if sloped else route.standing.get(hold.up),
    )
    on_edges = bool(cuts) and all(cut.kind == "tilted edges" for cut in cuts)  # each touched by itself
    touches = zeros.touches + ((touch,) if touch and not on_edges and not grooves else ())
    tilted_head.check_same(work, set_up, cuts)
    first, after = tilted_head.notes(work, set_up_id, cuts)
    notes: list[Line] = []
    if set_up.keep_zero and before is not None:
        notes += flip_notes(work, set_up_id, set_up, lying, before)
    notes += travel_notes(work, set_up_id, set_up, cuts, lying, mill)
    notes += backlash_notes(work, set_up_id, cuts, mill)
    return finished(route, set_up, set_up_id, "mill", held, touches, cuts, notes, after, first=first)


def hold_at_mill(
    route: Route,
    set_up: SetUp,
    set_up_id: str,
    lying: Lie,
    zeros: Zeros,
    sloped: list[FeaturePlan],
    mill: kit.Mill | None = None,
) -> HoldPlan | None:
    """In the vise on parallels, tilted for what is cut on a slope, or under clamps on the table."""
    work, hold = route.work, set_up.hold
    assert hold is not None
    if mill is not None and not sloped and isinstance(work.shop.holding.get(hold.holder), TableClamps):
        return plan_on_table(work, set_up_id, set_up, lying, vise_needs(route, set_up, set_up_id, zeros), mill)
    if mill is not None and not sloped and isinstance(work.shop.holding.get(hold.holder), AnglePlate):
        return plan_on_plate(work, set_up_id, set_up, lying, vise_needs(route, set_up, set_up_id, zeros))
    if not isinstance(work.shop.holding.get(hold.holder), kit.Vise):
        work.problem(
            hold.place("holder"), f"“{hold.holder}” does not hold work at the mill", "write the name of a vise"
        )
        return None
    if sloped:
        return tilted_work.plan_tilted_hold(route, set_up, set_up_id, lying, sloped)
    needs = vise_needs(route, set_up, set_up_id, zeros)
    return plan_vise(
        work,
        set_up_id,
        set_up,
        hold.up,
        hold.against_fixed_jaw,
        hold.against_stop,
        lying,
        lying.along("z"),
        lying.along("y"),
        needs,
    )


def vise_needs(route: Route, set_up: SetUp, set_up_id: str, zeros: Zeros) -> Needs:
    """Room above the jaws for the tip and for cuts across them; room below for what comes through."""
    work = route.work
    clear = work.rule("clearance")
    above: list[Number] = [clear]
    below: list[Number] = []
    if any(t.axis == "y" and t.kind in ("edge", "middle", "between") for t in zeros.touches):
        above.append(work.rule("tip engagement"))
    for operation in set_up.operations:
        feature = route.feature(operation)
        if feature is None:
            continue
        if feature.shape == "serrations":
            above.append(
                work.of(set_up_id).length(
                    "above", sums.support_height, "work wanted above the jaws", base=feature.sizes["depth"], rise=clear
                )
            )
        if feature.shape == "chamfer" and by_tilted_head(work, operation):
            above.append(tilted_edges.room_beside(work, f"{set_up_id}-{slug(operation.cut)}", feature))
        elif feature.along or feature.edges:
            above += milled.room_beside(work, f"{set_up_id}-{slug(operation.cut)}", feature)
        if feature.through:
            below.append(room_below(route, set_up_id, operation, clear))
    keep = route.parallels if set_up.keep_zero else None
    return Needs(max(above, key=lambda n: n.value), max(below, key=lambda n: n.value, default=None), keep)


def by_tilted_head(work: Work, operation: Operation) -> bool:
    """Whether a chamfer is asked for with a square cutter, so that the head tilts for it."""
    return work.shop.cutters[operation.cutter].kind in tilted_edges.CUTTERS


def room_below(route: Route, set_up_id: str, operation: Operation, clear: Number) -> Number:
    """What a cutter that comes through wants below the work."""
    work = route.work
    tool = plan_cutter(work, operation.cutter, work.shop.cutters[operation.cutter])
    below_id = f"{set_up_id}-{slug(operation.cut)}-{slug(operation.cutter)}"
    past = beyond(work, below_id, tool, "tip")
    return work.of(below_id).length("below", sums.support_height, "room wanted below the work", base=past, rise=clear)


CUTS: dict[str, MillCutter] = {
    **holes.CUTS,
    **angled.CUTS,
    **serrated_cuts.CUTS,
    **milled.CUTS,
    **formed.CUTS,
    **edges.CUTS,
}


def mill_cut(
    route: Route, set_up: SetUp, set_up_id: str, operation: Operation, lying: Lie, zeros: Zeros, mill: kit.Mill
) -> Cut | None:
    """One operation at the mill, by the shape it cuts."""
    work, feature = route.work, route.feature(operation)
    if feature is None:
        work.problem(
            operation.mark, "at the mill an operation cuts a feature", "write `cut:` with a feature of the part"
        )
        return None
    assert set_up.hold is not None
    if feature.shape == "note":
        return stated_cut(route, set_up_id, operation)
    if feature.shape not in CUTS:
        work.problem(operation.place("cut"), f"“{feature.name}” is not cut at the mill", "do it at the bench")
        return None
    if not face_is_up(work, set_up, operation, feature):
        return None
    cut_id = f"{set_up_id}-{slug(operation.cut)}-{slug(operation.cutter)}"
    return CUTS[feature.shape](MillCut(route, set_up, cut_id, operation, feature, lying, zeros, mill))
