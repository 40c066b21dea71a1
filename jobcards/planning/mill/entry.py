"""The hole that lets a cutter into what is closed at both ends: on its middle line, wide, deep and made before."""

from jobcards.planning.card import FeaturePlan
from jobcards.planning.mill.cut import MillCut
from jobcards.planning.mill.suits import closed_all_round, opening_of
from jobcards.planning.number import Number
from jobcards.planning.shapes.milled import cross_axis

HOLES = ("hole", "counterbore")
ON_LINE = 0.002  # of the hole's diameter: how far its middle may lie off the slot's
HAIR = 1e-9


def holes_on_line(asked: MillCut) -> list[tuple[FeaturePlan, Number]]:
    """Holes of the same face on the middle line of a shape, between its ends; each with its place along."""
    feature, found = asked.feature, []
    across = cross_axis(feature.enters, feature.along)
    low, high = feature.sizes["low"].value, feature.sizes["high"].value
    for hole in asked.route.shape.features:
        if hole.shape not in HOLES or hole.enters != feature.enters:
            continue
        for place in hole.places:
            if across not in place or feature.along not in place:
                continue
            off = abs(place[across].value - (low + high) / 2)
            between = feature.sizes["from"].value < place[feature.along].value < feature.sizes["to"].value
            if off <= ON_LINE * hole.sizes["diameter"].value and between:
                found.append((hole, place[feature.along]))
    return found


def lets_in(asked: MillCut, hole: FeaturePlan) -> bool:
    """Made before, wider than the cutter and as deep as it goes."""
    diameter, deep = asked.tool.sizes["diameter"].value, asked.feature.sizes["depth"].value
    made = asked.route.opened.get(hole.name)
    wide = made is not None and min(made.value, hole.sizes["diameter"].value) > diameter + HAIR
    return wide and (hole.through or hole.sizes["depth"].value >= deep - HAIR)


def entry_place(asked: MillCut) -> Number | None:
    """Where along a shape that is closed all round a cutter can go down in a hole; nothing when nowhere."""
    if not closed_all_round(asked.feature):
        return None
    return next((place for hole, place in holes_on_line(asked) if lets_in(asked, hole)), None)


def fits_opening(asked: MillCut) -> bool:
    """Whether the cutter goes down in the opening that is milled already, wherever it likes."""
    opening = opening_of(asked.feature)
    return opening is not None and asked.tool.sizes["diameter"].value < opening.value - HAIR


def needs_entry(asked: MillCut) -> bool:
    """Whether a cutter that cannot be fed down gets in; if not, what is wrong is told where it stands."""
    if not closed_all_round(asked.feature) or fits_opening(asked) or entry_place(asked) is not None:
        return True
    name, tool, diameter = asked.feature.name, asked.operation.cutter, asked.tool.sizes["diameter"]
    found = holes_on_line(asked)
    if not found:
        asked.work.problem(
            asked.route.part.features[name].place("length"),
            f"“{name}” is closed at both ends, and “{tool}” cannot be fed straight down",
            "draw a hole on its middle line, wider than the cutter and as deep, and cut it first; or let it run out "
            "at one end",
        )
        return False
    hole, _ = found[0]
    depth = asked.feature.sizes["depth"]
    if hole.name not in asked.route.opened:
        asked.work.problem(
            asked.operation.place("cutter"),
            f"the hole “{hole.name}” that lets “{tool}” in is not made yet",
            "cut it before",
        )
        return False
    deep = "goes through" if hole.through else f"is {hole.sizes['depth'].shown} deep"
    asked.work.problem(
        asked.route.part.features[hole.name].mark,
        f"“{hole.name}” is {hole.sizes['diameter'].shown} across and {deep}; “{tool}” is {diameter.shown} across and "
        f"goes {depth.shown} down",
        "make the hole wider than the cutter, and as deep as it goes",
    )
    return False
