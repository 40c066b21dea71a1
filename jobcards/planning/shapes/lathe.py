"""Grooves, bores, knurls, rounded corners and centre holes of turned parts."""

from collections.abc import Mapping

from jobcards.definition.features import Feature, lathe
from jobcards.planning.card import FeaturePlan
from jobcards.planning.number import WHOLE, Number
from jobcards.planning.shapes.place import Planner
from jobcards.planning.taps import thread_sizes
from jobcards.planning.work import Work, slug
from jobcards.trade import centre_drills, milling, tapping
from jobcards.trade.formula import CannotBeDone


def along(work: Work, feature_id: str, name: str, written: Feature, start: str, length: str) -> dict[str, Number]:
    """Where a shape begins and ends, from the left end."""
    begin = work.expression(f"{feature_id}.from", getattr(written, start), f"{name}: begins, from the left end")
    run = work.expression(f"{feature_id}.length", getattr(written, length), f"{name}: along the axis")
    end = work.of(feature_id).length(
        "to", milling.support_height, f"{name}: ends, from the left end", base=begin, rise=run
    )
    return {"from": begin, "length": run, "to": end}


def within(name: str, sizes: Mapping[str, Number], part: Mapping[str, Number]) -> None:
    """Refuse a shape that runs past the end of the part."""
    if sizes["to"].value > part["length"].value + 1e-9 or sizes["from"].value < -1e-9:
        raise CannotBeDone(
            f"{name} runs from {sizes['from'].shown} to {sizes['to'].shown}; the part is {part['length'].shown} long"
        )


def plan_groove(work: Work, feature_id: str, name: str, written: Feature, part: Mapping[str, Number]) -> FeaturePlan:
    """A groove round the part."""
    assert isinstance(written, lathe.TurnedGroove)
    sizes = along(work, feature_id, name, written, "at", "width")
    within(name, sizes, part)
    diameter = work.expression(f"{feature_id}.diameter", written.diameter, f"{name}: across its bottom")
    if diameter.value >= part["diameter"].value:
        raise CannotBeDone(f"{name} is {diameter.shown} across, no less than the part")
    return FeaturePlan(name, written.shape, "", {"diameter": diameter, "width": sizes.pop("length"), **sizes})


def plan_bore(work: Work, feature_id: str, name: str, written: Feature, part: Mapping[str, Number]) -> FeaturePlan:
    """A bore from an end."""
    assert isinstance(written, lathe.TurnedBore)
    through = written.depth == "through"
    depth = (
        part["length"]
        if isinstance(written.depth, str)
        else work.expression(f"{feature_id}.depth", written.depth, f"{name}: depth")
    )
    diameter = work.expression(f"{feature_id}.diameter", written.diameter, f"{name}: diameter")
    if diameter.value >= part["diameter"].value:
        raise CannotBeDone(f"{name} of {diameter.shown} leaves no wall in {part['diameter'].shown}")
    sizes = {"diameter": diameter, "depth": depth}
    if written.corner_radius is not None:
        sizes["corner radius"] = work.expression(
            f"{feature_id}.corner-radius", written.corner_radius, f"{name}: most round its bottom"
        )
    return FeaturePlan(name, "turned bore", written.enters, sizes, through=through)


def plan_tapped_end(
    work: Work, feature_id: str, name: str, written: Feature, part: Mapping[str, Number]
) -> FeaturePlan:
    """A tapped hole in an end: the thread, and the hole that three quarters of it asks for."""
    assert isinstance(written, lathe.TappedEnd)
    diameter, pitch = thread_sizes(work, feature_id, name, written.thread)
    depth = work.expression(f"{feature_id}.depth", written.depth, f"{name}: depth of full thread")
    hole = work.of(feature_id).length(
        "hole",
        tapping.tap_drill,
        f"{name}: hole that leaves this much thread",
        diameter=diameter,
        pitch=pitch,
        percent=work.rule("thread percent"),
    )
    sizes = {"diameter": diameter, "thread pitch": pitch, "depth": depth, "hole": hole}
    return FeaturePlan(name, "tapped end", written.enters, sizes, thread=written.thread)


def plan_centre(work: Work, feature_id: str, name: str, written: Feature, part: Mapping[str, Number]) -> FeaturePlan:
    """A centre hole by the table of centre drills."""
    assert isinstance(written, lathe.CentreHole)
    found = {}
    for which, function in (
        ("body", centre_drills.centre_body),
        ("pilot", centre_drills.centre_pilot),
        ("pilot length", centre_drills.centre_pilot_length),
    ):
        found[which] = work.ledger.told(
            f"{feature_id}.{slug(which)}",
            function,
            f"{name}: {which} of the centre drill",
            work.unit,
            written.size,
            work.unit,
        )
    if written.mouth is not None:
        mouth = work.expression(f"{feature_id}.mouth", written.mouth, f"{name}: across its mouth")
    else:
        mouth = work.of(feature_id).length(
            "mouth",
            centre_drills.centre_mouth,
            f"{name}: across its mouth",
            body=found["body"],
            part=work.rule("centre mouth"),
        )
    if mouth.value > found["body"].value:
        raise CannotBeDone(f"a mouth of {mouth.shown} is wider than the body of the centre drill")
    depth = work.of(feature_id).length(
        "depth",
        centre_drills.centre_depth,
        f"{name}: depth to the tip",
        mouth=mouth,
        pilot=found["pilot"],
        pilot_length=found["pilot length"],
    )
    sizes = {"mouth": mouth, "pilot": found["pilot"], "pilot length": found["pilot length"], "depth": depth}
    return FeaturePlan(name, "centre hole", written.enters, sizes)


def plan_knurl(work: Work, feature_id: str, name: str, written: Feature, part: Mapping[str, Number]) -> FeaturePlan:
    """A knurl: where it is and how coarse."""
    assert isinstance(written, lathe.Knurl)
    sizes = along(work, feature_id, name, written, "start", "length")
    within(name, sizes, part)
    pitch = work.expression(f"{feature_id}.pitch", written.pitch, f"{name}: from ridge to ridge")
    return FeaturePlan(name, "knurl", "", {"pitch": pitch, **sizes}, toward=written.pattern, dry_run=False)


def plan_radius(work: Work, feature_id: str, name: str, written: Feature, part: Mapping[str, Number]) -> FeaturePlan:
    """A rounded corner: its radius, and where its shoulder or end stands."""
    assert isinstance(written, lathe.TurnedRadius)
    if written.at is not None:
        place = work.expression(f"{feature_id}.at", written.at, f"{name}: its shoulder, from the left end")
    elif written.on == "right end":
        place = part["length"]
    else:
        place = work.ledger.given(
            f"{feature_id}.at",
            0.0,
            work.unit,
            f"{name}: its end, from the left end",
            "the job's definition",
            show=WHOLE,
        )
    radius = work.expression(f"{feature_id}.radius", written.radius, f"{name}: radius")
    return FeaturePlan(name, "turned radius", written.on, {"radius": radius, "at": place})


PLANNERS: dict[type, Planner] = {
    lathe.TurnedGroove: plan_groove,
    lathe.TurnedBore: plan_bore,
    lathe.TappedEnd: plan_tapped_end,
    lathe.CentreHole: plan_centre,
    lathe.Knurl: plan_knurl,
    lathe.TurnedRadius: plan_radius,
}
