"""What is turned inside a bore: tapers, threads and grooves as numbers."""

from collections.abc import Mapping

from jobcards.definition.features import Feature, bored
from jobcards.planning.card import FeaturePlan
from jobcards.planning.number import Number
from jobcards.planning.shapes.lathe_tapers import both_ends
from jobcards.planning.shapes.place import Planner
from jobcards.planning.taps import thread_sizes
from jobcards.planning.work import Work
from jobcards.trade import milling, thread_bores, threads
from jobcards.trade.formula import CannotBeDone


def depth_of(
    work: Work, feature_id: str, name: str, written: bored.TaperBore | bored.BoreThread, part: Mapping[str, Number]
) -> Number:
    """How far in a shape goes: as written, or the part's whole length."""
    if isinstance(written.depth, str):
        return part["length"]
    depth = work.expression(f"{feature_id}.depth", written.depth, f"{name}: depth")
    if depth.value > part["length"].value + 1e-9:
        raise CannotBeDone(f"{name} goes in {depth.shown}; the part is {part['length'].shown} long")
    return depth


def plan_taper_bore(
    work: Work, feature_id: str, name: str, written: Feature, part: Mapping[str, Number]
) -> FeaturePlan:
    """A tapered bore: its mouth, its far end and the half angle."""
    assert isinstance(written, bored.TaperBore)
    depth = depth_of(work, feature_id, name, written, part)
    ends = both_ends(work, feature_id, name, written, depth)
    if ends["large"].value >= part["diameter"].value:
        raise CannotBeDone(f"{name} opens to {ends['large'].shown} and leaves no wall in {part['diameter'].shown}")
    through = isinstance(written.depth, str)
    return FeaturePlan(name, "taper bore", written.enters, {**ends, "depth": depth}, through=through)


def plan_bore_thread(
    work: Work, feature_id: str, name: str, written: Feature, part: Mapping[str, Number]
) -> FeaturePlan:
    """A thread in a bore: its sizes, and how wide the bore under it may be."""
    assert isinstance(written, bored.BoreThread)
    depth = depth_of(work, feature_id, name, written, part)
    diameter, pitch = thread_sizes(work, feature_id, name, written.thread)
    if diameter.value >= part["diameter"].value:
        raise CannotBeDone(f"{name} of {diameter.shown} leaves no wall in {part['diameter'].shown}")
    numbers = work.of(feature_id)
    least = numbers.length("bore-least", threads.minor_diameter, f"{name}: bore, least", diameter=diameter, pitch=pitch)
    most = numbers.length(
        "bore-most",
        milling.support_height,
        f"{name}: bore, most",
        base=least,
        rise=bore_tolerance(work, feature_id, name, written.thread),
    )
    sizes = {"diameter": diameter, "thread pitch": pitch, "depth": depth, "bore least": least, "bore most": most}
    through = isinstance(written.depth, str)
    return FeaturePlan(name, "bore thread", written.enters, sizes, through=through, thread=written.thread)


def bore_tolerance(work: Work, feature_id: str, name: str, designation: str) -> Number:
    """How much wider than the least the bore may be: class 2B of an inch thread, 6H of a metric one."""
    thread = threads.read_thread(designation)
    number_id, label = f"{feature_id}.bore-tolerance", f"{name}: tolerance of the bore"
    if thread.unit == "in":
        sizes = (thread.diameter, thread.pitch)
        return work.ledger.told(number_id, thread_bores.bore_tolerance_2b, label, work.unit, *sizes)
    return work.ledger.told(number_id, thread_bores.bore_tolerance_6h, label, work.unit, thread.pitch)


def plan_bore_groove(
    work: Work, feature_id: str, name: str, written: Feature, part: Mapping[str, Number]
) -> FeaturePlan:
    """A groove round the inside of a bore: both sides from the end that it counts from."""
    assert isinstance(written, bored.BoreGroove)
    near = work.expression(f"{feature_id}.near", written.at, f"{name}: nearer side, from the {written.enters}")
    width = work.expression(f"{feature_id}.width", written.width, f"{name}: along the axis")
    far = work.of(feature_id).length(
        "far", milling.support_height, f"{name}: farther side, from the {written.enters}", base=near, rise=width
    )
    diameter = work.expression(f"{feature_id}.diameter", written.diameter, f"{name}: across its bottom")
    if near.value < 0 or far.value > part["length"].value + 1e-9:
        raise CannotBeDone(f"{name} runs from {near.shown} to {far.shown}; the part is {part['length'].shown} long")
    if diameter.value >= part["diameter"].value:
        raise CannotBeDone(f"{name} of {diameter.shown} leaves no wall in {part['diameter'].shown}")
    return FeaturePlan(
        name, "bore groove", written.enters, {"diameter": diameter, "width": width, "near": near, "far": far}
    )


PLANNERS: dict[type, Planner] = {
    bored.TaperBore: plan_taper_bore,
    bored.BoreThread: plan_bore_thread,
    bored.BoreGroove: plan_bore_groove,
}
