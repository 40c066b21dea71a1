"""Upright serrations, cut with a V-cutter or a shaper tool."""

from collections.abc import Mapping

from jobcards.definition import features as drawn
from jobcards.planning.card import FeaturePlan
from jobcards.planning.number import Number
from jobcards.planning.work import Work
from jobcards.trade import grooves, vees


def plan_upright(
    work: Work, feature_id: str, name: str, row: drawn.Serrations, block: Mapping[str, Number]
) -> FeaturePlan:
    """Pitch, whole angle, the flats on crest and root, and the depth that leaves them."""
    assert row.angle is not None
    nothing = work.nothing("sharp", "a sharp bottom or crest", "the job's definition")
    sizes = {
        "pitch": work.expression(f"{feature_id}.pitch", row.pitch, f"{name}: pitch"),
        "angle": work.expression(f"{feature_id}.angle", row.angle, f"{name}: whole angle of a groove", "deg"),
        "flat": work.expression(f"{feature_id}.flat", row.flat, f"{name}: flat left on top"),
        "root": nothing
        if row.root is None
        else work.expression(f"{feature_id}.root", row.root, f"{name}: flat at the bottom"),
        "first": work.expression(f"{feature_id}.first", row.first, f"{name}: first groove, from the left end"),
        "last": work.expression(f"{feature_id}.last", row.last, f"{name}: no groove beyond, from the left end"),
    }
    of = work.of(feature_id)
    for word, crest, label in (
        ("full depth", nothing, "depth at which the crests come to a point"),
        ("depth", sizes["flat"], "depth that leaves the flat"),
    ):
        sizes[word] = of.length(
            word.replace(" ", "-"),
            vees.serration_depth_vee,
            f"{name}: {label}",
            pitch=sizes["pitch"],
            crest=crest,
            root=sizes["root"],
            angle=sizes["angle"],
        )
    sizes["width"] = of.length(
        "width",
        vees.vee_width,
        f"{name}: width of a groove on top",
        depth=sizes["depth"],
        root=sizes["root"],
        angle=sizes["angle"],
    )
    sizes["count"] = of.count(
        "count",
        grooves.groove_count,
        f"{name}: grooves",
        first=sizes["first"],
        last=sizes["last"],
        pitch=sizes["pitch"],
    )
    return FeaturePlan(name, "upright serrations", row.enters, sizes)
