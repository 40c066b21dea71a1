"""How deep a drill and a tap go from the tailstock, and what is left below them."""

from jobcards.definition.job import Operation
from jobcards.planning.card import CutterPlan, FeaturePlan
from jobcards.planning.holes.cut import finisher
from jobcards.planning.holes.under import check_metal_under
from jobcards.planning.lathe.common import Turning, past_parting, tailstock_show
from jobcards.planning.lathe.open_holes import open_hole
from jobcards.planning.number import AS_UNIT, Number, Show
from jobcards.planning.taps import chamfer_threads
from jobcards.trade import drilling, milling, tapping


def drill_depth(turn: Turning, cut_id: str, operation: Operation, feature: FeaturePlan, tool: CutterPlan) -> Number:
    """How far in the drill's tip goes, from the faced end."""
    work = turn.work
    label = "depth to the drill's tip, from the faced end"
    if feature.through:
        beyond = tip_of(turn, f"{cut_id}.beyond", "how far the tip goes on", work.rule("breakthrough"), tool)
        stock = through_stock(turn, cut_id)
        return work.of(cut_id).length(
            "depth",
            milling.through_depth,
            label,
            thickness=stock,
            breakthrough=beyond,
            show=tailstock_show(turn),
        )
    if operation.rough and feature.shape == "turned bore":
        below = open_hole(turn, "", feature.sizes["depth"])
        if below is None or below.value >= tool.sizes["diameter"].value:
            return feature.sizes["depth"]  # the flat bottom takes the point with it
        return tip_of(turn, f"{cut_id}.depth", label, feature.sizes["depth"], tool, tailstock_show(turn), below)
    full = below_thread(turn, cut_id, feature) if feature.shape == "tapped end" else feature.sizes["depth"]
    depth = tip_of(turn, f"{cut_id}.depth", label, full, tool, tailstock_show(turn))
    check_metal_under(work, operation, feature, depth, turn.length, cut_id)
    return depth


def tip_of(
    turn: Turning,
    number_id: str,
    label: str,
    full: Number,
    tool: CutterPlan,
    show: Show = AS_UNIT,
    across: Number | None = None,
) -> Number:
    """Depth of a drill's tip, whose full diameter goes to a depth, or that of its cone that is so wide `across`."""
    return turn.work.ledger.work(
        number_id,
        drilling.tip_depth,
        label,
        turn.work.unit,
        full_depth=full,
        diameter=across or tool.sizes["diameter"],
        point_angle=tool.sizes["point"],
        show=show,
    )


def last_chamfer(turn: Turning, feature: FeaturePlan) -> Number:
    """Threads of the chamfer of the tap that brings a thread to its depth."""
    last = finisher(turn.route, feature)
    return chamfer_threads(turn.work, last.chamfer if last is not None and last.thread else "plug")


def below_thread(turn: Turning, cut_id: str, feature: FeaturePlan) -> Number:
    """How deep the drill's full diameter goes for a thread, with room for the chamfer of the tap that finishes it."""
    return turn.work.of(cut_id).length(
        "full",
        tapping.blind_hole_depth,
        "depth at the drill's full diameter",
        full_thread=feature.sizes["depth"],
        pitch=feature.sizes["thread pitch"],
        chamfer_threads=last_chamfer(turn, feature),
        spare=turn.work.rule("tap spare"),
    )


def tapped_depth(turn: Turning, cut_id: str, operation: Operation, feature: FeaturePlan, tool: CutterPlan) -> Number:
    """How deep full thread goes by this tap: one that comes before another stops where that one's tip will stand."""
    wanted, last = feature.sizes["depth"], finisher(turn.route, feature)
    if not operation.rough or last is None or not last.thread:
        return wanted
    numbers = turn.work.of(cut_id)
    ahead = numbers.length(
        "last-chamfer",
        tapping.tap_chamfer,
        "tip of the last tap ahead of its full thread",
        pitch=feature.sizes["thread pitch"],
        chamfer_threads=last_chamfer(turn, feature),
    )
    tip = numbers.length("tip", milling.support_height, "how deep the tap's tip goes", base=wanted, rise=ahead)
    if tip.value <= tool.sizes["chamfer"].value:
        turn.work.problem(
            operation.place("cutter"),
            f"“{operation.cutter}” has a chamfer of {tool.sizes['chamfer'].shown} and goes in {tip.shown}: "
            "it cuts no full thread",
            "leave it out",
        )
        return wanted
    return numbers.length(
        "depth", milling.left_to_take, "full thread by this tap", full=tip, taken=tool.sizes["chamfer"]
    )


def through_stock(turn: Turning, cut_id: str) -> Number:
    """How much metal a hole that goes through has to pass: the part and its parting groove, or the whole piece."""
    past = past_parting(turn, cut_id)
    if past is not None:
        return past
    other = "left end" if turn.free_end == "right end" else "right end"
    if turn.route.parted or other in turn.route.done:
        spare = turn.work.rule("facing")
        return turn.length if other in turn.route.done else turn.work.of(cut_id).length(
            "stock", milling.support_height, "part, and what is still to be faced off", base=turn.length, rise=spare
        )  # fmt: skip
    return turn.work.of(cut_id).length(
        "stock",
        milling.left_to_take,
        "the piece, less what was faced off",
        full=turn.route.blank.sizes["length"],
        taken=turn.work.rule("facing"),
    )
