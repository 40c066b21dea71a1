"""What is tried with a gauge or its fellow, since no single size tells whether it is good: threads."""

from jobcards.planning.card import FeaturePlan, PartPlan, TriedRow
from jobcards.planning.words import Authored, Line, line
from jobcards.planning.work import from_job

OUTSIDE = ("turned thread",)


def plan_tried(parts: tuple[PartPlan, ...]) -> tuple[TriedRow, ...]:
    """A row for each thread of each part."""
    return tuple(
        TriedRow(part.name, named(feature), how(feature), tool(feature))
        for part in parts
        for feature in part.shape.features
        if feature.thread
    )


def named(feature: FeaturePlan) -> Line:
    """The thread and where it is."""
    return line("{name}, {thread}", name=from_job(feature.name), thread=thread_of(feature))


def thread_of(feature: FeaturePlan) -> Authored:
    """A thread as the definition writes it."""
    return from_job(feature.thread)


def how(feature: FeaturePlan) -> Line:
    """How it is tried, and how far it must go."""
    if feature.shape in OUTSIDE:
        return line("goes on by hand as far as the thread is cut, without shake")
    if feature.through:
        return line("goes in by hand and out at the far side, without shake")
    if "depth" not in feature.sizes:
        return line("goes in by hand, without shake")
    return line("goes in by hand {depth} deep, without shake", depth=feature.sizes["depth"])


def tool(feature: FeaturePlan) -> Line:
    """What it is tried with."""
    fellow = "go ring, or a nut" if feature.shape in OUTSIDE else "go plug, or a screw"
    return line(fellow)


def to_try_with(parts: tuple[PartPlan, ...]) -> list[Line]:
    """The gauges or their fellows, for the list of things to gather."""
    return [
        (*tool(feature), *line(", {thread}", thread=thread_of(feature)))
        for part in parts
        for feature in part.shape.features
        if feature.thread
    ]
