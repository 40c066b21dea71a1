"""Tapers and threads of turned parts: both ends and the half angle; depth, and limits of the pitch diameter."""

from collections.abc import Callable, Mapping

from jobcards.definition.features import Feature, bored, lathe
from jobcards.planning.card import FeaturePlan
from jobcards.planning.number import Number, Show
from jobcards.planning.shapes.lathe import along, within
from jobcards.planning.shapes.place import Planner
from jobcards.planning.taps import thread_sizes
from jobcards.planning.work import Work
from jobcards.trade import (
    milling,
    screw_cutting,
    stackups,
    standard_tapers,
    tapers,
    thread_limits,
    thread_wires,
    threads,
    turned_tapers,
)
from jobcards.trade.formula import CannotBeDone, formula_of

RATE = Show(places=5)
Tapered = lathe.Taper | bored.TaperBore


def plan_taper(work: Work, feature_id: str, name: str, written: Feature, part: Mapping[str, Number]) -> FeaturePlan:
    """A taper: both diameters and the half angle, from whatever the drawing gives."""
    assert isinstance(written, lathe.Taper)
    sizes = along(work, feature_id, name, written, "start", "length")
    within(name, sizes, part)
    ends = both_ends(work, feature_id, name, written, sizes["length"])
    return FeaturePlan(name, "taper", "", {**ends, **sizes}, toward=written.thin)


def both_ends(work: Work, feature_id: str, name: str, written: Tapered, length: Number) -> dict[str, Number]:
    """The diameters at both ends and the half angle."""
    given = {
        end: work.expression(f"{feature_id}.{end}", expression, f"{name}: diameter at the {word} end")
        for end, expression, word in (("large", written.large, "thick"), ("small", written.small, "thin"))
        if expression is not None
    }
    rate = rate_of(work, feature_id, name, written)
    if len(given) == 2:
        if rate is not None:
            raise CannotBeDone(f"{name} has two diameters and a rate; leave one of them out")
        large, small = given["large"], given["small"]
    else:
        large, small = other_end(work, feature_id, name, written, given, rate, length)
    half = work.of(feature_id).angle(
        "half-angle",
        tapers.half_angle,
        f"{name}: between its side and the axis",
        large=large,
        small=small,
        length=length,
        show=Show(places=3),
    )
    if half.value <= 0:
        raise CannotBeDone(f"both ends of {name} measure {large.shown}: there is no taper")
    return {"large": large, "small": small, "half angle": half}


def rate_of(work: Work, feature_id: str, name: str, written: Tapered) -> Number | None:
    """The rate on the diameter, where the drawing gives one."""
    if written.taper and written.half_angle is not None:
        raise CannotBeDone(f"{name} has a rate and a half angle; leave one of them out")
    label = f"{name}: change of diameter in one of length"
    if written.half_angle is not None:
        half = work.expression(f"{feature_id}.half", written.half_angle, f"{name}: half angle", "deg")
        return work.of(feature_id).rate("rate", turned_tapers.rate_of_half_angle, label, "1", half=half, show=RATE)
    if not written.taper:
        return None
    read = turned_tapers.read_taper(written.taper)
    if read.kind == "ratio":
        ratio = work.ledger.given(
            f"{feature_id}.ratio",
            read.amount,
            "1",
            f"{name}: length in which it changes by one",
            "the job's definition",
            show=Show(places=3 if read.amount % 1 else 0),
        )
        return work.of(feature_id).rate("rate", turned_tapers.rate_of_ratio, label, "1", ratio=ratio, show=RATE)
    foot_id, said, show = f"{feature_id}.per-foot", f"{name}: taper per foot", Show(places=5)
    if read.kind == "standard":
        foot = work.ledger.told(foot_id, standard_tapers.per_foot, said, "in/ft", read.name, show=show)
    else:
        foot = work.ledger.given(foot_id, read.amount, "in/ft", said, "the job's definition", show=show)
    return work.of(feature_id).rate("rate", turned_tapers.rate_of_foot, label, "1", taper=foot, show=RATE)


def other_end(
    work: Work,
    feature_id: str,
    name: str,
    written: Tapered,
    given: Mapping[str, Number],
    rate: Number | None,
    length: Number,
) -> tuple[Number, Number]:
    """Both ends from one of them and the rate; a standard taper brings its own thick end."""
    if rate is None:
        raise CannotBeDone(f"{name} has no rate and not both its diameters; write large and small, or taper")
    if "small" in given:
        large = work.of(feature_id).length(
            "large",
            turned_tapers.large_of_taper,
            f"{name}: diameter at the thick end",
            small=given["small"],
            rate=rate,
            length=length,
        )
        return large, given["small"]
    large = given.get("large") or standard_large(work, feature_id, name, written)
    small = work.of(feature_id).length(
        "small",
        turned_tapers.small_of_taper,
        f"{name}: diameter at the thin end",
        large=large,
        rate=rate,
        length=length,
    )
    return large, small


def standard_large(work: Work, feature_id: str, name: str, written: Tapered) -> Number:
    """The gauge line of a standard taper. Raises CannotBeDone when the drawing names no such taper and no end."""
    read = turned_tapers.read_taper(written.taper) if written.taper else None
    if read is None or read.kind != "standard":
        raise CannotBeDone(f"{name} has no diameter at either end; write large or small")
    label = f"{name}: diameter at the gauge line"
    return work.ledger.told(f"{feature_id}.large", standard_tapers.large_end, label, work.unit, read.name)


def plan_thread(work: Work, feature_id: str, name: str, written: Feature, part: Mapping[str, Number]) -> FeaturePlan:
    """A thread on the outside: its diameters, its depth with a flat-nosed tool, its limits and its wires."""
    assert isinstance(written, lathe.TurnedThread)
    sizes = along(work, feature_id, name, written, "start", "length")
    within(name, sizes, part)
    diameter, pitch = thread_sizes(work, feature_id, name, written.thread)
    numbers = work.of(feature_id)
    basic = numbers.length(
        "basic", threads.pitch_diameter, f"{name}: basic pitch diameter", diameter=diameter, pitch=pitch
    )
    upper, lower, most = limits(work, feature_id, name, written.thread, basic, diameter)
    wire = numbers.length("wire", thread_wires.best_wire, f"{name}: best wire", pitch=pitch)
    found = {
        "diameter": diameter,
        "turn to": most,
        "thread pitch": pitch,
        "root": numbers.length(
            "root", threads.root_diameter, f"{name}: root of the thread", diameter=diameter, pitch=pitch
        ),
        "thread depth": numbers.length(
            "depth", screw_cutting.depth_flat_nose, f"{name}: depth, tool with a flat nose", pitch=pitch
        ),
        "pitch diameter, most": upper,
        "pitch diameter, least": lower,
        "wire": wire,
        **sizes,
    }
    for which, end, limit in (("most", "upper", upper), ("least", "lower", lower)):
        found[f"over wires, {which}"] = numbers.length(
            f"over.{end}",
            thread_wires.over_wires_of_pitch_diameter,
            f"{name}: over three wires, {which}",
            pitch_diameter=limit,
            pitch=pitch,
            wire=wire,
        )
    found["over wires"] = numbers.length(
        "over",
        stackups.mean,
        f"{name}: over three wires, middle of the limits",
        low=found["over wires, least"],
        high=found["over wires, most"],
    )
    return FeaturePlan(name, "turned thread", "", found, thread=written.thread)


def limits(
    work: Work, feature_id: str, name: str, designation: str, basic: Number, diameter: Number
) -> tuple[Number, Number, Number]:
    """Most and least pitch diameter, and the most outside diameter: class 2A of an inch thread, 6g of a metric one."""

    def own(which: str, function: Callable[..., float], *sizes: float) -> Number:
        label = f"{name}: {formula_of(function).result.meaning}"
        return work.ledger.told(f"{feature_id}.{which}", function, label, work.unit, *sizes)

    thread = threads.read_thread(designation)
    if thread.unit == "in":
        engagement = (
            thread.diameter if thread.series in ("UNC", "UNF") else thread_limits.usual_engagement(thread.pitch)
        )
        whole = (thread.diameter, thread.pitch, engagement)
        tolerance = own("tolerance", thread_limits.tolerance_2a, *whole)
        allowance = own("allowance", thread_limits.allowance_2a, thread_limits.tolerance_2a(*whole))
    else:
        tolerance = own("tolerance", thread_limits.tolerance_6g, thread.diameter, thread.pitch)
        allowance = own("allowance", thread_limits.allowance_6g, thread.pitch)
    numbers = work.of(feature_id)
    upper = numbers.length("upper", milling.left_to_take, f"{name}: pitch diameter, most", full=basic, taken=allowance)
    lower = numbers.length("lower", milling.left_to_take, f"{name}: pitch diameter, least", full=upper, taken=tolerance)
    most = numbers.length(
        "turn-to", milling.left_to_take, f"{name}: outside diameter, most", full=diameter, taken=allowance
    )
    return upper, lower, most


PLANNERS: dict[type, Planner] = {lathe.Taper: plan_taper, lathe.TurnedThread: plan_thread}
