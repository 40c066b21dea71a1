"""What is milled and drilled into a turned part, as drawn: round its axis, at angles told on its right end.

Each is made looking up, as if the part's top were its outside there, and turned to where it looks.
"""

from collections.abc import Callable, Iterable, Iterator
from dataclasses import replace

from jobcards.dryrun.solids import Solid, box, cylinder, laid, moved
from jobcards.dryrun.target import holes
from jobcards.dryrun.target.place import BEYOND, TOUCHES, Block
from jobcards.planning.card import Cut, FeaturePlan

UP = 90.0  # the drawing's angle of what looks up
FULL = 360.0
# a feature, the part's size, the cut that finishes it, its rough cuts: what one of them takes out, looking up
Maker = Callable[[FeaturePlan, Block, Cut | None, list[Cut]], Iterator[Solid]]


def round_work(feature: FeaturePlan, size: Block, cut: Cut | None, rough: list[Cut]) -> Iterator[Solid]:
    """All that one feature takes out, evenly round the axis."""
    count, first = round(feature.sizes["count"].value), feature.sizes["angle"].value
    for solid in MAKERS[feature.shape](feature, size, cut, rough):
        for index in range(count):
            yield looking_to(solid, first + index * FULL / count)


def looking_to(solid: Solid, angle: float) -> Solid:
    """A solid that looks up, turned about the part's axis to look to an angle, counter-clockwise from the right end."""
    return solid.rotate((angle - UP, 0.0, 0.0))


def cross_hole(feature: FeaturePlan, size: Block, cut: Cut | None, rough: Iterable[Cut]) -> Iterator[Solid]:
    """A hole straight down from the outside of the round."""
    across = feature.sizes["round"].value
    here = (size[0], across, size[2])
    plain = replace(feature, shape="tapped hole" if feature.thread else "hole", enters="top")
    for solid in holes.REMOVERS[plain.shape](plain, here, cut):
        yield moved(solid, y=-across / 2)
    for solid in holes.as_drilled(plain, here, rough):
        yield moved(solid, y=-across / 2)


def flat(feature: FeaturePlan, size: Block, cut: Cut | None, rough: Iterable[Cut]) -> Iterator[Solid]:
    """All above the level of a flat, between its ends."""
    level = feature.sizes["round"].value / 2 - feature.sizes["depth"].value
    low, high = ends(feature, size)
    wide = size[1]
    yield box((low, level, -wide), (high, wide, wide))


def keyway(feature: FeaturePlan, size: Block, cut: Cut | None, rough: Iterable[Cut]) -> Iterator[Solid]:
    """A slot over the axis; a closed end is as round as the cutter."""
    width = made_width(feature, cut)
    floor, top = feature.sizes["round"].value / 2 - feature.sizes["depth"].value, size[1]
    low, high = ends(feature, size)
    own = cut.cutter.sizes["diameter"].value if cut is not None and cut.cutter is not None else width
    if width / 2 < own < width - TOUCHES:  # there and back beside the axis: its ends keep the cutter's radius
        corners = [(x, z) for x in (low + own / 2, high - own / 2) for z in (-(width - own) / 2, (width - own) / 2)]
        yield Solid.batch_hull([moved(laid(cylinder(own, floor, top), "y"), x=x, z=z) for x, z in corners])
        return
    middles = [low + width / 2, high - width / 2]
    solid = box((middles[0], floor, -width / 2), (middles[1], top, width / 2))
    for middle in middles:
        solid += moved(laid(cylinder(width, floor, top), "y"), x=middle)
    yield solid


def made_width(feature: FeaturePlan, cut: Cut | None) -> float:
    """The width at the middle of its limits, or that of a cutter that comes within them."""
    wanted = feature.sizes["width"]
    if cut is None or cut.cutter is None:
        return wanted.value
    own = cut.cutter.sizes["diameter"].value
    low, high = wanted.tolerance or (0.0, 0.0)
    return own if low - 1e-9 <= own - wanted.value <= high + 1e-9 else wanted.value


def ends(feature: FeaturePlan, size: Block) -> tuple[float, float]:
    """From where to where along the part; beyond it where the feature runs out at an end."""
    low, high = feature.sizes["from"].value, feature.sizes["to"].value
    over = BEYOND * max(size)
    return (low - over if low <= TOUCHES else low), (high + over if high >= size[0] - TOUCHES else high)


def end_slot(feature: FeaturePlan, size: Block, cut: Cut | None) -> Iterator[Solid]:
    """Slots right across an end, evenly round: each counts twice on its way round."""
    wide, deep, over = made_width(feature, cut), feature.sizes["depth"].value, BEYOND * max(size)
    low, high = (size[0] - deep, size[0] + over) if feature.enters == "right end" else (-over, deep)
    count = round(feature.sizes["count"].value)
    slot = box((low, -over, -wide / 2), (high, over, wide / 2))
    for index in range(count):
        yield looking_to(slot, feature.sizes["angle"].value + index * FULL / 2 / count)


MAKERS: dict[str, Maker] = {
    "cross hole": cross_hole,
    **dict.fromkeys(("flat", "two flats", "square", "hexagon"), flat),
    "shaft keyway": keyway,
}
