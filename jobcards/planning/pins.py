"""Flanks are measured over and between pins: which pin, what is read, and the limits of the reading."""

from jobcards.planning.card import FeaturePlan
from jobcards.planning.measured import Measured
from jobcards.planning.number import Number
from jobcards.planning.words import line
from jobcards.planning.work import Work, from_job
from jobcards.trade import dovetails, grooves, measuring, vees
from jobcards.trade import milling as sums
from jobcards.trade.formula import CannotBeDone

ENDS = ("lower", "upper")
OTHER = {"lower": "upper", "upper": "lower"}


def pin_near(work: Work, feature_id: str, name: str, wanted: Number) -> Number:
    """The pin of a usual set that comes nearest to the one wanted."""
    return work.of(feature_id).length(
        "pin", measuring.pin_of_set, f"{name}: pin", wanted=wanted, step=work.rule("gauge pin step")
    )


def pin_measures(work: Work, feature_id: str, feature: FeaturePlan) -> list[Measured]:
    """What is read over or between pins on a feature; nothing where pins do not help, or find no room at a limit."""
    try:
        return read_over_pins(work, feature_id, feature)
    except CannotBeDone:
        return []


def read_over_pins(work: Work, feature_id: str, feature: FeaturePlan) -> list[Measured]:
    """The reading, its limits entered beside it. Raises CannotBeDone."""
    sizes, name = feature.sizes, from_job(feature.name)
    if feature.shape == "dovetail tongue":
        over_tongue(work, feature)
        told = line("{name}, over two pins of {pin}", name=name, pin=sizes["pin"])
        return [Measured(told, sizes["over pins"], "outside", pin=sizes["pin"])]
    if feature.shape == "dovetail slot":
        between_in_slot(work, feature)
        told = line("{name}, between two pins of {pin}", name=name, pin=sizes["pin"])
        at = line("Worked for a slot {height} deep: measure the depth first.", height=sizes["height"])
        return [Measured(told, sizes["between pins"], "inside", pin=sizes["pin"], note=at)]
    told = line("{name}, from the face to the top of a pin of {pin}", name=name, pin=sizes.get("pin", "its own"))
    if feature.shape == "V-groove":
        over_vee(work, feature)
        return [Measured(told, sizes["over the pin"], "place", pin=sizes["pin"])]
    if feature.shape in ("serrations", "upright serrations"):
        pin, reading = over_serrations(work, feature_id, feature)
        told = line("{name}, from the crests to the top of a pin of {pin}", name=name, pin=pin)
        return [Measured(told, reading, "place", pin=pin)]
    return []


def over_tongue(work: Work, feature: FeaturePlan) -> None:
    """The limits over the pins, from those of the narrow width."""
    sizes = feature.sizes
    reading = sizes["over pins"]
    for end, limit in limits_of(work, sizes["narrow width"]):
        work.of(reading.id).length(
            end,
            dovetails.over_pins,
            f"{reading.label}, {end} limit",
            narrow=limit,
            pin=sizes["pin"],
            angle=sizes["angle"],
        )


def between_in_slot(work: Work, feature: FeaturePlan) -> None:
    """The limits between the pins, from those of the narrow width, in a slot of the depth aimed at."""
    sizes = feature.sizes
    reading, pin, angle = sizes["between pins"], sizes["pin"], sizes["angle"]
    for end, limit in limits_of(work, sizes["narrow width"]):
        wide = work.of(reading.id).length(
            f"wide-{end}",
            dovetails.dovetail_wide,
            f"{feature.name}: wide width, {end} limit",
            narrow=limit,
            height=sizes["height"],
            angle=angle,
        )
        work.of(reading.id).length(
            end, dovetails.between_pins, f"{reading.label}, {end} limit", wide=wide, pin=pin, angle=angle
        )


def over_vee(work: Work, feature: FeaturePlan) -> None:
    """The limits over the pin: the wider the groove, the lower it lies."""
    sizes = feature.sizes
    reading, pin, angle = sizes["over the pin"], sizes["pin"], sizes["angle"]
    widths = limits_of(work, sizes["width"])
    if not widths:
        sharp = work.ledger[sizes["width"].inputs[1]] if sizes["width"].key else None
        widths = tuple(
            (
                end,
                work.of(reading.id).length(
                    f"width-{end}",
                    vees.vee_width,
                    f"{feature.name}: width at the face, {end} limit",
                    depth=limit,
                    root=sharp,
                    angle=angle,
                ),
            )
            for end, limit in limits_of(work, sizes["depth"])
            if sharp is not None
        )
    for end, width in widths:
        work.of(reading.id).length(
            OTHER[end],
            vees.vee_over_pin,
            f"{reading.label}, {OTHER[end]} limit",
            width=width,
            pin=pin,
            angle=angle,
        )


def over_serrations(work: Work, feature_id: str, feature: FeaturePlan) -> tuple[Number, Number]:
    """The pin, and how far it stands over the crests: the wider the flat, the higher."""
    of, sizes, name = work.of(feature_id), feature.sizes, feature.name
    upright = feature.shape == "upright serrations"
    if upright:
        wanted = of.length(
            "middle-pin",
            vees.vee_middle_pin,
            f"{name}: pin that lies on the middle of the flanks",
            width=sizes["width"],
            angle=sizes["angle"],
        )
    else:
        wanted = of.length(
            "middle-pin",
            grooves.serration_pin,
            f"{name}: pin that lies on the middle of the flank",
            depth=sizes["depth"],
            tilt=sizes["tilt"],
        )
    pin = pin_near(work, feature_id, name, wanted)

    def over(what: str, label: str, flat: Number) -> Number:
        if upright:
            width = of.length(
                f"{what}.width", sums.left_to_take, f"{label}: width of the groove", full=sizes["pitch"], taken=flat
            )
            return of.length(what, vees.vee_over_pin, label, width=width, pin=pin, angle=sizes["angle"])
        depth = of.length(
            f"{what}.depth",
            grooves.serration_depth,
            f"{label}: depth",
            pitch=sizes["pitch"],
            flat=flat,
            tilt=sizes["tilt"],
        )
        return of.length(what, grooves.serration_over_pin, label, depth=depth, pin=pin, tilt=sizes["tilt"])

    label = f"{name}: crests to the top of the pin"
    reading = over("over-pin", label, sizes["flat"])
    for end, flat in limits_of(work, sizes["flat"]):
        over(f"over-pin.{end}", f"{label}, {end} limit", flat)
    return pin, reading


def limits_of(work: Work, size: Number) -> tuple[tuple[str, Number], ...]:
    """Both limits of a size; nothing where it has none."""
    ids = ((end, f"{size.id}.{end}") for end in ENDS)
    return tuple((end, work.ledger[limit]) for end, limit in ids if limit in work.ledger)
