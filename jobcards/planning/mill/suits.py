"""Whether an end mill suits what it is to cut: no wider, no rounder, and able to get in."""

from jobcards.planning.card import FeaturePlan
from jobcards.planning.mill.cut import MillCut
from jobcards.planning.number import Number

OPENINGS = {"T-slot": "neck width", "dovetail slot": "narrow width"}
FIRST_CUTS = ("T-slot", "dovetail slot", "dovetail tongue")
ANGLE_HAIR = 0.02  # degrees: two angles closer than this are the same


def wrong_cutter(asked: MillCut, wrong: str, instead: str) -> None:
    """A problem at the operation's cutter."""
    asked.work.problem(asked.operation.place("cutter"), wrong, instead)


def end_mill_suits(asked: MillCut, hole_there: bool = False) -> bool:
    """No wider than the opening, no rounder than the corners, and able to go down where it has to.

    `hole_there`: a hole of the drawing lets it in.
    """
    work, sizes, diameter = asked.work, asked.feature.sizes, asked.tool.sizes["diameter"]
    mark, name, before = asked.operation.place("cutter"), asked.feature.name, len(work.problems)
    opening = opening_of(asked.feature)
    over = 0.0 if opening is None or asked.feature.shape in FIRST_CUTS else above(opening)
    if opening is not None and diameter.value > opening.value + over + 1e-9:
        work.problem(
            mark,
            f"“{asked.operation.cutter}” is {diameter.shown} across, and “{name}” is {opening.shown} wide",
            "take a cutter no wider than that",
        )
        return False  # what else may be wrong with it is of no account
    corner = sizes.get("corner radius")
    if corner is not None and diameter.value / 2 > corner.value + above(corner) + 1e-9:
        work.problem(
            mark,
            f"“{asked.operation.cutter}” leaves a radius of half its {diameter.shown}, and the corners of “{name}” may "
            f"have {corner.shown} at most",
            "take a smaller cutter, or allow a larger corner radius",
        )
    if closed_all_round(asked.feature) and not asked.cutter.centre_cutting and not hole_there:
        hole = asked.route.opened.get(start_hole(name))
        if hole is None or 2 * hole.value < diameter.value:
            work.problem(
                mark,
                f"“{asked.operation.cutter}” does not cut at its centre, and “{name}” is closed all round",
                "take a centre-cutting end mill, or drill a start hole first: the same cut with a drill, rough: true",
            )
    if asked.feature.shape in FIRST_CUTS and not asked.operation.rough:
        work.problem(
            mark,
            f"an end mill alone does not finish a {asked.feature.shape}",
            "mark this cut `rough: true`, and add one with the cutter for it",
        )
    return len(work.problems) == before


def opening_of(feature: FeaturePlan) -> Number | None:
    """The width an end mill has to go into; nothing where one side is open."""
    if feature.shape in ("step", "dovetail tongue"):
        return None
    return feature.sizes[OPENINGS.get(feature.shape, "width")]


def above(number: Number) -> float:
    """How far a size may be over."""
    return number.tolerance[1] if number.tolerance else 0.0


def below(number: Number) -> float:
    """How far a size may be under."""
    return -number.tolerance[0] if number.tolerance else 0.0


def closed_all_round(feature: FeaturePlan) -> bool:
    """Whether a cutter can only come in from above."""
    return "from" in feature.sizes and "to" in feature.sizes


def start_hole(name: str) -> str:
    """Under which name a feature's start hole is kept."""
    return f"{name}: start hole"


def roughed(name: str) -> str:
    """Under which name it is kept that a feature has been roughed out."""
    return f"{name}: roughed"


def makes_width(asked: MillCut) -> bool:
    """Whether the cutter makes the opening by itself; a first cut only at the very middle of the limits."""
    opening, diameter = opening_of(asked.feature), asked.tool.sizes["diameter"]
    if asked.feature.shape in FIRST_CUTS:
        return opening is not None and abs(diameter.value - opening.value) <= 1e-9
    return as_wide(diameter, opening)


def as_wide(diameter: Number, opening: Number | None) -> bool:
    """Whether a cutter's size lies within the limits of what it is to make."""
    if opening is None:
        return False
    off = diameter.value - opening.value
    return -below(opening) - 1e-9 <= off <= above(opening) + 1e-9
