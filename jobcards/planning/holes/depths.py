"""How deep a cut on a hole goes, as touched at the machine: to the tip of the tool."""

from dataclasses import dataclass

from jobcards.planning.card import CutterPlan
from jobcards.planning.holes.cut import KIND_BY_CUTTER, KIND_BY_HAND, HoleCut, finisher
from jobcards.planning.holes.into_bore import metal_before_bore
from jobcards.planning.holes.under import check_metal_under
from jobcards.planning.number import Number
from jobcards.planning.shapes.place import BLOCK
from jobcards.planning.taps import chamfer_threads
from jobcards.planning.work import Work
from jobcards.trade import drilling, milling, tapping
from jobcards.trade.setups import FACES


@dataclass(frozen=True)
class Depth:
    """Depth of the tool's tip below the face, whether it comes through, and how deep the full diameter then goes."""

    tip: Number
    through: bool = False
    full: Number | None = None


def cut_depth(asked: HoleCut) -> Depth:
    """How deep below the face, by the kind of cut."""
    if asked.kind == "spot":
        return Depth(asked.work.rule("spot depth"))
    metal = metal_before_bore(asked)
    if metal is not None:
        name = "point" if asked.kind == "drill" else "beyond"
        return Depth(through_depth(asked, beyond(asked.work, asked.id, asked.tool, name), metal), True)
    if asked.kind in ("tap", "hand tap"):
        return tap_depth(asked)
    if asked.kind in ("countersink", "hand countersink"):
        return Depth(asked.feature.sizes["depth"])
    if asked.feature.through:
        return Depth(through_depth(asked, beyond(asked.work, asked.id, asked.tool, "point")), True)
    if asked.kind == "drill" and "point" in asked.tool.sizes:
        return drill_depth(asked)
    return Depth(asked.feature.sizes["depth"])


def through_depth(asked: HoleCut, past: Number, metal: Number | None = None) -> Number:
    """Depth of a cut right through: the work, or the metal before a bore, and what the cutter goes on."""
    return asked.work.of(asked.id).length(
        "depth",
        milling.through_depth,
        "depth below the face, cut through",
        thickness=metal or asked.feature.sizes["depth"],
        breakthrough=past,
    )


def beyond(work: Work, cut_id: str, tool: CutterPlan, name: str) -> Number:
    """How far a cutter that comes through goes on below the work: a drill's point and a tap's chamfer on top of it."""
    past = work.rule("breakthrough")
    if tool.kind == "drill" and "point" in tool.sizes:
        return work.of(cut_id).length(
            name,
            drilling.tip_depth,
            "how far the drill's tip goes on below the work",
            diameter=tool.sizes["diameter"],
            point_angle=tool.sizes["point"],
            full_depth=past,
        )
    if "chamfer" in tool.sizes:
        return work.of(cut_id).length(
            name,
            milling.support_height,
            "how far the tap's tip goes on below the work",
            base=tool.sizes["chamfer"],
            rise=past,
        )
    return past


def drill_depth(asked: HoleCut) -> Depth:
    """A blind drilled hole: full diameter to where it is wanted, the point beyond it.

    A hole that another cutter leaves flat at the bottom is drilled with the tip no deeper than that bottom.
    """
    last = finisher(asked.route, asked.feature)
    ends = {**KIND_BY_HAND, **KIND_BY_CUTTER}.get(last.kind, "") if last is not None else "drill"
    if ends in ("bore", "plunge", "counterbore"):
        return Depth(asked.feature.sizes["depth"])
    full = full_depth(asked, ends)
    tip = asked.work.of(asked.id).length(
        "depth",
        drilling.tip_depth,
        "depth of the drill's tip below the face",
        full_depth=full,
        diameter=asked.tool.sizes["diameter"],
        point_angle=asked.tool.sizes["point"],
    )
    shape, enters = asked.route.shape, asked.feature.enters
    if shape.kind == "block" and enters in FACES:
        thick = shape.sizes[BLOCK[FACES[enters][0]]]
        check_metal_under(asked.work, asked.operation, asked.feature, tip, thick, asked.id)
    return Depth(tip, False, full)


def full_depth(asked: HoleCut, ends: str) -> Number:
    """How deep the full diameter is drilled: the hole's depth, and room for the reamer's or the tap's end below it."""
    depth = asked.feature.sizes["depth"]
    if ends in ("ream", "hand ream"):
        return asked.work.of(asked.id).length(
            "full",
            milling.support_height,
            "full diameter of the drill, with room below the reamer",
            base=depth,
            rise=asked.work.rule("reamer room"),
        )
    if ends in ("tap", "hand tap"):
        last = finisher(asked.route, asked.feature)
        assert last is not None
        threads = chamfer_threads(asked.work, last.chamfer)
        return asked.work.of(asked.id).length(
            "full",
            tapping.blind_hole_depth,
            "full diameter of the drill, with room below the tap",
            full_thread=depth,
            pitch=asked.feature.sizes["thread pitch"],
            chamfer_threads=threads,
            spare=asked.work.rule("tap room"),
        )
    return depth


def tap_depth(asked: HoleCut) -> Depth:
    """How far the tap's tip goes: full thread and then the chamfer.

    A tap that comes before another in a blind hole goes no deeper than that one, so that its own thread ends higher.
    """
    chamfer = asked.tool.sizes["chamfer"]
    if asked.feature.through:
        return Depth(through_depth(asked, beyond(asked.work, asked.id, asked.tool, "beyond")), True)
    full, last = asked.feature.sizes["depth"], finisher(asked.route, asked.feature)
    rough = asked.operation.rough and last is not None and bool(last.thread)
    ends = last_chamfer(asked) if rough else chamfer
    tip = asked.work.of(asked.id).length(
        "depth", milling.support_height, "depth of the tap's tip below the face", base=full, rise=ends
    )
    if not rough:
        return Depth(tip, False, full)
    if tip.value <= chamfer.value:
        asked.problem(
            f"“{asked.operation.cutter}” has a chamfer of {chamfer.shown} and goes in {tip.shown}: it cuts no full "
            "thread",
            "leave it out",
        )
        return Depth(tip, False, full)
    short = asked.work.of(asked.id).length(
        "full", milling.left_to_take, "depth of full thread by this tap", full=tip, taken=chamfer
    )
    return Depth(tip, False, short)


def last_chamfer(asked: HoleCut) -> Number:
    """Tip of the tap that finishes a thread, ahead of its first full thread."""
    last = finisher(asked.route, asked.feature)
    return asked.work.of(asked.id).length(
        "last-chamfer",
        tapping.tap_chamfer,
        "tip of the last tap ahead of its full thread",
        pitch=asked.feature.sizes["thread pitch"],
        chamfer_threads=chamfer_threads(asked.work, last.chamfer if last is not None else "plug"),
    )
