"""What every way of holding round work at the mill asks: the diameter held, its angle, how far it stands out."""

from jobcards.definition.job import Hold, SetUp
from jobcards.planning.card import FeaturePlan, ShapePlan
from jobcards.planning.number import Number, Show
from jobcards.planning.words import Line, line
from jobcards.planning.work import Work, from_job
from jobcards.trade import holding

MOST_FREE = 3.0  # diameters standing out without a centre, as on the lathe


def named_by(shape: ShapePlan, hold: Hold) -> FeaturePlan | None:
    """The turned diameter that the definition says it is held by."""
    return next((f for f in shape.features if f.name == hold.by and f.shape == "turned diameter"), None)


def held_diameter(work: Work, hold: Hold, shape: ShapePlan) -> tuple[Number, Number | None]:
    """The diameter that is held, and the length of it where the definition names a feature."""
    feature = named_by(shape, hold)
    if hold.by and feature is None:
        work.problem(hold.place("by"), f"“{hold.by}” is not a turned diameter", "name a turned diameter of the part")
    if feature is None:
        return shape.sizes["diameter"], None
    return feature.sizes["diameter"], feature.sizes["length"]


def at_the_end(feature: FeaturePlan, length: float, right: bool) -> bool:
    """Whether a diameter reaches the end that is in the jaws."""
    return feature.sizes["from"].value < 1e-9 if right else feature.sizes["to"].value > length - 1e-9


def check_end(work: Work, set_up: SetUp, shape: ShapePlan) -> None:
    """It is held by a diameter that reaches its lower end."""
    hold = set_up.hold
    assert hold is not None
    feature = named_by(shape, hold)
    if feature is not None and not at_the_end(feature, shape.sizes["length"].value, hold.up == "right end"):
        work.problem(
            hold.place("by"), f"“{hold.by}” does not reach the end that stands in the jaws", "turn the part over"
        )


def angle_words(hold: Hold, angle: Number) -> Line:
    """Which way the drawing's angles lie."""
    where = "to the right, away from the axis" if hold.up else "up"
    return line(
        "Angles count on the right end from the right round by the top. {angle} is {where} to begin with.",
        angle=angle,
        where=where,
    )


def steady(work: Work, set_up_id: str, set_up: SetUp, out: Number, diameter: Number) -> Number:
    """Stick-out in diameters; a warning where it asks for a centre."""
    ratio = work.of(set_up_id).rate(
        "ratio",
        holding.stick_out_ratio,
        "stick-out in diameters",
        "1",
        stick_out=out,
        diameter=diameter,
        show=Show(places=1),
    )
    assert set_up.hold is not None
    if ratio.value > MOST_FREE and not set_up.hold.support:
        work.warnings.append(
            line(
                "In the set-up {set_up} the work stands out {ratio} diameters: support its end with a centre.",
                set_up=from_job(set_up.title),
                ratio=ratio,
            )
        )
    return ratio
