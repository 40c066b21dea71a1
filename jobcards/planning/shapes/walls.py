"""Holes that stand too near an edge or one another: a caution on the card, since the drawing may mean it so."""

from itertools import combinations

from jobcards.planning.card import FeaturePlan, ShapePlan
from jobcards.planning.letters import letter
from jobcards.planning.number import Number
from jobcards.planning.shapes.place import AXES, BLOCK
from jobcards.planning.words import line
from jobcards.planning.work import Work, from_job, slug
from jobcards.trade import holes
from jobcards.trade.setups import FACES

SHAPES = ("hole", "counterbore", "tapped hole", "countersink")
HAIR = 1e-6
Standing = tuple[FeaturePlan, int]  # a feature, and which of its places


def check_walls(work: Work, part_id: str, shape: ShapePlan) -> None:
    """Warn, once for each feature or pair of features, where the metal left is thin."""
    if shape.kind != "block":
        return
    standing = [
        (feature, index)
        for feature in shape.features
        if feature.shape in SHAPES
        for index in range(len(feature.places))
        if inside(feature, index, shape)
    ]
    told: set[frozenset[str]] = set()
    for one in standing:
        if frozenset((one[0].name,)) not in told and thin_edge(work, part_id, shape, one):
            told.add(frozenset((one[0].name,)))
    for one, other in combinations(standing, 2):
        pair = frozenset((one[0].name, other[0].name, "both"))
        if pair not in told and thin_between(work, part_id, shape, one, other):
            told.add(pair)


def inside(feature: FeaturePlan, index: int, shape: ShapePlan) -> bool:
    """Whether a place lies on the face; one beside it is meant to break out."""
    place = feature.places[index]
    return len(place) == 2 and all(0 < n.value < across(shape, axis).value for axis, n in place.items())


def across(shape: ShapePlan, axis: str) -> Number:
    """The block's size along an axis."""
    return shape.sizes[BLOCK[AXES.index(axis)]]


def thin_edge(work: Work, part_id: str, shape: ShapePlan, one: Standing) -> bool:
    """Warn of a hole that leaves too little metal at the nearest edge."""
    feature, index = one
    diameter, least = feature.sizes["diameter"], work.rule("wall beside a hole")
    axis, place = min(
        feature.places[index].items(),
        key=lambda entry: min(entry[1].value, across(shape, entry[0]).value - entry[1].value),
    )
    near = min(place.value, across(shape, axis).value - place.value)
    if holes.wall_to_edge(near, diameter.value) >= least.value - HAIR:
        return False
    wall_id = f"{part_id}-{slug(feature.name)}-{letter(index)}-edge"
    distance = place
    if near < place.value - HAIR:
        distance = work.of(wall_id).length(
            "distance", holes.axes_apart, "from the hole to the edge", x1=place, y1=0.0, x2=across(shape, axis), y2=0.0
        )
    wall = work.of(wall_id).length(
        "wall", holes.wall_to_edge, "metal between hole and edge", distance=distance, diameter=diameter
    )
    work.warnings.append(
        line(
            "{hole}: {wall} of metal is left at the edge, less than {least}. It may bulge or break out; move it in, or "
            "drill it before the edge is milled.",
            hole=from_job(feature.name),
            wall=wall,
            least=least,
        )
    )
    return True


def thin_between(work: Work, part_id: str, shape: ShapePlan, one: Standing, other: Standing) -> bool:
    """Warn of two parallel holes that leave too little metal between them, as far as they lie beside each other."""
    first, second = (feature.places[index] for feature, index in (one, other))
    if set(first) != set(second) or not side_by_side(shape, one[0], other[0]):
        return False
    (x1, y1), (x2, y2) = (tuple(place[axis] for axis in sorted(place)) for place in (first, second))
    apart = holes.axes_apart(x1.value, y1.value, x2.value, y2.value)
    wide, narrow = one[0].sizes["diameter"], other[0].sizes["diameter"]
    least = work.rule("wall beside a hole")
    if apart < HAIR or holes.wall_between(apart, wide.value, narrow.value) >= least.value - HAIR:
        return False
    wall_id = "-".join(
        [part_id, *(f"{slug(feature.name)}-{letter(index)}" for feature, index in (one, other)), "between"]
    )
    distance = work.of(wall_id).length("apart", holes.axes_apart, "from axis to axis", x1=x1, y1=y1, x2=x2, y2=y2)
    wall = work.of(wall_id).length(
        "wall", holes.wall_between, "metal between the two", apart=distance, first=wide, second=narrow
    )
    said = (
        "{one} and {other} run into one another: {wall} between them."
        if wall.value < 0
        else "{one} and {other}: {wall} of metal is left between them, less than {least}."
    )
    names = [from_job(feature.name) for feature, _ in (one, other)]
    work.warnings.append(line(said, one=names[0], other=names[1], wall=wall, least=least))
    return True


def side_by_side(shape: ShapePlan, one: FeaturePlan, other: FeaturePlan) -> bool:
    """Whether two holes of one direction reach the same depth anywhere."""
    axis = FACES[one.enters][0]
    spans = []
    for feature in (one, other):
        whole = shape.sizes[BLOCK[axis]].value
        depth = whole if feature.through else feature.sizes["depth"].value
        spans.append((whole - depth, whole) if FACES[feature.enters][1] > 0 else (0.0, depth))
    (low, high), (bottom, top) = spans
    return low < top - HAIR and bottom < high - HAIR
