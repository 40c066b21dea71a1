"""Threads in a bore, by single point: bored first, fed outward with the compound, tried with a screw or gauge."""

from jobcards.definition.features import bored as drawn
from jobcards.definition.job import Operation
from jobcards.planning import rates
from jobcards.planning.card import Cut, FeaturePlan
from jobcards.planning.lathe.bores import check_bar
from jobcards.planning.lathe.common import Turning, spindle, texts
from jobcards.planning.lathe.open_holes import open_hole
from jobcards.planning.lathe.pick_up import check_gears
from jobcards.planning.lathe.thread_ways import (
    Relief,
    relief_is_cut,
    relief_wanted,
    way_of,
    without_relief,
)
from jobcards.planning.lathe.threads import infeeds, setting_words, sizes_of_cut, threading_time
from jobcards.planning.number import Number
from jobcards.planning.words import Line, line
from jobcards.planning.work import from_job
from jobcards.trade import screw_cutting
from jobcards.trade.threads import read_thread

HAIR = 1e-6


def plan_bore_thread(turn: Turning, cut_id: str, operation: Operation, feature: FeaturePlan) -> Cut | None:
    """The compound at twenty-nine degrees, the tool on the side toward you, fed outward from the wall of the bore."""
    work, said, sizes = turn.work, texts(turn, operation), dict(feature.sizes)
    written = turn.part.features[feature.name]
    assert isinstance(written, drawn.BoreThread)
    tool = rates.plan_cutter(work, operation.cutter, work.shop.cutters[operation.cutter])
    if tool.kind != "threading tool" or "reach" not in tool.sizes:
        work.problem(
            operation.place("cutter"),
            f"“{operation.cutter}” cuts no thread in a bore",
            "take a threading tool that the shop file gives a reach; a small thread is a tapped end",
        )
        return None
    thread = read_thread(written.thread)
    check_gears(turn, operation, thread)
    before = open_hole(turn, feature.name, sizes["depth"])
    if not bore_suits(turn, operation, feature, before):
        return None
    assert before is not None
    check_bar(turn, operation, tool.sizes, before, sizes["depth"])
    relief = check_relief(turn, cut_id, operation, feature, thread.left)
    found = spindle(turn, cut_id, operation, "threading", sizes["diameter"], slowest=True)
    angle = work.rule("thread infeed angle")
    numbers = work.of(cut_id)
    depth = numbers.length(
        "deep", screw_cutting.depth_in_bore, "thread from the wall of the bore", diameter=sizes["diameter"], bore=before
    )
    infeed = numbers.length(
        "infeed", screw_cutting.compound_infeed, "travel of the compound for the whole depth", depth=depth,
        compound_angle=angle,
    )  # fmt: skip
    positions, count = infeeds(turn, cut_id, infeed)
    near = work.nothing(f"{cut_id}.near", f"{feature.name}: begins, from the faced end")
    way = way_of(turn, cut_id, thread.left, True, sizes["thread pitch"], near, sizes["depth"], relief)
    time = threading_time(turn, cut_id, sizes["depth"], sizes["thread pitch"], found["speed"], count)
    words = [
        *setting_words(turn, cut_id, thread, written.thread, angle, way),
        *infeed_words(before, depth, infeed),
        *trying_words(feature),
    ]
    return Cut(
        cut_id,
        "bore thread",
        feature.name,
        line("Thread the bore {feature}, {thread}", feature=from_job(feature.name), thread=from_job(written.thread)),
        tool,
        positions,
        sizes_of_cut(sizes, depth, angle, infeed, sizes["depth"], way),
        {**found, "passes": count, "time": time},
        tuple(words),
        why=said["why"],
        check=said["check"],
        caution=said["caution"],
        handle=way.handle,
    )


def bore_suits(turn: Turning, operation: Operation, feature: FeaturePlan, before: Number | None) -> bool:
    """The bore is there as deep as the thread, and of a diameter that the standard allows under it."""
    least, most = feature.sizes["bore least"], feature.sizes["bore most"]
    if before is None:
        turn.work.problem(
            operation.place("cut"),
            f"“{feature.name}” has no bore as deep as the thread",
            f"add a turned bore of {least.shown} to {most.shown}, and bore it first",
        )
        return False
    if not least.value - HAIR <= before.value <= most.value + HAIR:
        turn.work.problem(
            operation.place("cut"),
            f"“{feature.name}” is to be cut in a bore of {before.shown}, and {feature.thread} wants {least.shown} to "
            f"{most.shown}",
            "bore it to that first",
        )
        return False
    return True


def check_relief(turn: Turning, cut_id: str, operation: Operation, feature: FeaturePlan, left: bool) -> Relief | None:
    """A groove at the bottom of the thread: wide and deep enough, and cut before; one that goes through needs none."""
    sizes = feature.sizes
    wanted = relief_wanted(turn, cut_id, sizes["thread pitch"])
    end = sizes["depth"].value
    for groove in turn.shape.features:
        if groove.shape != "bore groove" or groove.enters != feature.enters:
            continue
        near, far = groove.sizes["near"], groove.sizes["far"]
        if near.value - HAIR <= end <= far.value + HAIR:
            relief_is_cut(turn, operation, groove, wanted)
            if groove.sizes["diameter"].value < sizes["diameter"].value - HAIR:
                turn.work.problem(
                    turn.part.features[groove.name].place("diameter"),
                    f"the relief “{groove.name}” is {groove.sizes['diameter'].shown} across, and the thread goes out "
                    f"to {sizes['diameter'].shown}",
                    "make it wider across",
                )
            return Relief(groove, near, far)
    if left or not feature.through:
        without_relief(turn, operation, feature, left, wanted)
    return None


def infeed_words(before: Number, depth: Number, infeed: Number) -> list[Line]:
    """How the tool is fed outward in a bore, and how it is drawn clear."""
    return [
        line(
            "Set the tool square with a centre gauge, its point toward you. Touch the wall of the bore, {before}: "
            "compound and cross slide both to nothing. The compound is drawn toward you, so its dial counts backwards: "
            "the settings are how far.",
            before=before,
        ),
        line(
            "At the end of each pass wind the cross slide inward until the point is clear of the wall, go back, the "
            "cross slide to nothing again, and set the compound on. Mark the depth on the bar.",
        ),
        line(
            "The depth is that of a tool whose nose is flat an eighth of the pitch: {depth} straight out, which is "
            "{infeed} along the compound. That leaves the least pitch diameter: the bar springs, so go over it without "
            "infeed, then on by a mark at a time until the go end of the gauge runs in.",
            depth=depth,
            infeed=infeed,
        ),
    ]


def trying_words(feature: FeaturePlan) -> list[Line]:
    """How a thread in a bore is tried."""
    return [
        line("After a first scratch count the threads against a rule or gauge before going on."),
        line(
            "Try it with a thread plug gauge, or a screw known to be to size: the go end runs in over the whole of "
            "{depth} by hand; the no-go end catches and stops within a few turns.",
            depth=feature.sizes["depth"],
        ),
    ]


CUTS = {"bore thread": plan_bore_thread}
