"""The touch on top of round work that lies: depths count from it, so it must find whole metal for every cutter."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from jobcards.definition.job import SetUp
from jobcards.planning.card import FeaturePlan, HoldPlan, ShapePlan, Touch
from jobcards.planning.mill.zero import paper_height, paper_of
from jobcards.planning.number import Number
from jobcards.planning.rates import plan_cutter
from jobcards.planning.words import line
from jobcards.planning.work import Work, from_shop, slug
from jobcards.trade import locating, milling, side_milling, stackups

TINY = 1e-9
IN_JAWS = ("dividing head", "rotary table")


@dataclass(frozen=True)
class Span:
    """A piece of the part along its axis, counted from the left end."""

    low: Number
    high: Number

    @property
    def long(self) -> float:
        """How long it is."""
        return self.high.value - self.low.value


def top_touch(
    work: Work,
    zero_id: str,
    set_up: SetUp,
    shape: ShapePlan,
    held: HoldPlan,
    feature: FeaturePlan,
    step: float,
) -> Touch | None:
    """The cutter on top of the round with paper between.

    One cutter is touched where it begins to cut; where others follow, beside all cuts, on metal that stays.
    """
    paper = paper_of(work)
    if paper is None:
        work.problem(work.job.mark, "the shop has no paper feeler", "add one to the shop file's finders")
        return None
    cutters = {operation.cutter for operation in set_up.operations}
    beside = whole_place(work, zero_id, set_up, shape, held, feature) if len(cutters) > 1 else None
    place = beside or middle_along(work, zero_id, feature)
    edge = work.nothing(f"{zero_id}.z-edge", "the top of the round is to read")
    preset = paper_height(work, zero_id, edge, paper[1], step)
    where = "beside all cuts, where it stays {size} across" if beside else "where it is still {size} across"
    anew = "." if beside else ", beside what is cut already." if len(cutters) > 1 else ", before it cuts there."
    said = line(
        "With the spindle stopped, raise the knee until the cutter just drags {finder} {paper} thick on top of the "
        f"round, {{place}} from the left end, {where}; set the height to {{preset}}. Depths count down from the top "
        f"there. Do this anew for each cutter{anew}",
        finder=from_shop(paper[0]),
        paper=paper[1],
        place=place,
        size=feature.sizes["round"],
        preset=preset,
    )
    return Touch("z", "round top", "", 1, preset, from_shop(paper[0]), paper[1], said, place)


def middle_along(work: Work, zero_id: str, feature: FeaturePlan) -> Number:
    """The middle of a feature along the part."""
    if "at" in feature.sizes:
        return feature.sizes["at"]
    return work.of(zero_id).length(
        "touch",
        stackups.mean,
        "where the top is touched, from the left end",
        low=feature.sizes["from"],
        high=feature.sizes["to"],
    )


def whole_place(
    work: Work, zero_id: str, set_up: SetUp, shape: ShapePlan, held: HoldPlan, feature: FeaturePlan
) -> Number | None:
    """A place near the first cut that no cut takes away, as thick as there and out of the jaws; none: nothing."""
    stretch = reachable(work, zero_id, set_up, shape, held, feature)
    if stretch is None:
        return None
    cuts = sorted(spans_cut(work, zero_id, shape, stretch), key=lambda span: span.low.value)
    begin = feature.sizes["at"].value if "at" in feature.sizes else feature.sizes["from"].value
    wanted = work.rule("clearance")
    free = [gap for gap in gaps(stretch, cuts) if gap.long >= wanted.value - TINY]
    if not free:
        return None
    gap = min(free, key=lambda one: max(one.low.value - begin, begin - one.high.value, 0.0))
    numbers, told = work.of(zero_id), "where the top is touched, from the left end"
    if gap.long < 2 * wanted.value:
        return numbers.length("touch", stackups.mean, told, low=gap.low, high=gap.high)
    if gap.low.value >= begin - TINY:
        return numbers.length("touch", milling.support_height, told, base=gap.low, rise=wanted)
    return numbers.length("touch", milling.left_to_take, told, full=gap.high, taken=wanted)


def reachable(
    work: Work, zero_id: str, set_up: SetUp, shape: ShapePlan, held: HoldPlan, feature: FeaturePlan
) -> Span | None:
    """The piece of the part that is as thick as where the first cut is, and where no cutter meets the jaws."""
    whole = Span(work.nothing(f"{zero_id}.left-end", "the left end"), shape.sizes["length"])
    begin = feature.sizes["at"].value if "at" in feature.sizes else feature.sizes["from"].value
    across = feature.sizes["round"].value
    low, high = next(
        (
            (one.sizes["from"], one.sizes["to"])
            for one in shape.features
            if one.shape == "turned diameter"
            and abs(one.sizes["diameter"].value - across) < TINY
            and one.sizes["from"].value - TINY <= begin < one.sizes["to"].value + TINY
        ),
        (whole.low, whole.high),
    )
    if held.kind in IN_JAWS:
        free = clear_of_jaws(work, zero_id, set_up, whole, held)
        low = free.low if free.low.value > low.value else low
        high = free.high if free.high.value < high.value else high
    return Span(low, high) if low.value < high.value - TINY else None


def clear_of_jaws(work: Work, zero_id: str, set_up: SetUp, whole: Span, held: HoldPlan) -> Span:
    """What stands out of the jaws, which are higher than the work, less half of the widest cutter."""
    numbers, out = work.of(zero_id), held.sizes["stick-out"]
    names = {operation.cutter for operation in set_up.operations}
    across = [plan_cutter(work, name, work.shop.cutters[name]).sizes.get("diameter") for name in sorted(names)]
    widest = max((one for one in across if one is not None), key=lambda one: one.value, default=None)
    half = (
        numbers.length("half-cutter", side_milling.half_width, "half of the widest cutter", width=widest)
        if widest is not None
        else work.nothing(f"{zero_id}.half-cutter", "half of the widest cutter")
    )
    room = numbers.length(
        "clear-out",
        milling.left_to_take,
        "as far as a cutter comes, from the end that is out",
        full=out,
        taken=half if half.value < out.value else out,
    )
    if held.out == "left end":
        return Span(whole.low, room)
    name = "where the cutters clear the jaws, from the left end"
    return Span(numbers.length("jaws", locating.flipped_position, name, length=whole.high, position=room), whole.high)


def spans_cut(work: Work, zero_id: str, shape: ShapePlan, stretch: Span) -> Iterator[Span]:
    """What every shape but the turned diameters takes of the part along its axis, as far as it lies in a stretch."""
    for feature in shape.features:
        sizes = feature.sizes
        if feature.shape == "turned diameter" or feature.enters in ("left end", "right end"):
            continue
        if "at" in sizes and "diameter" in sizes and "round" in sizes:
            span = across_hole(work, zero_id, feature)
        elif "from" in sizes and "to" in sizes:
            span = Span(sizes["from"], sizes["to"])
        else:
            continue
        if span.low.value < stretch.high.value - TINY and span.high.value > stretch.low.value + TINY:
            yield span


def across_hole(work: Work, zero_id: str, feature: FeaturePlan) -> Span:
    """A cross hole along the axis: from edge to edge."""
    numbers, sizes = work.of(f"{zero_id}-{slug(feature.name)}"), feature.sizes
    half = numbers.length("half", side_milling.half_width, f"{feature.name}: half across", width=sizes["diameter"])
    name = f"{feature.name}: its edge, from the left end"
    return Span(
        numbers.length("left", milling.left_to_take, name, full=sizes["at"], taken=half),
        numbers.length("right", milling.support_height, name, base=sizes["at"], rise=half),
    )


def gaps(stretch: Span, cuts: Sequence[Span]) -> Iterator[Span]:
    """What the cuts leave of a stretch."""
    low = stretch.low
    for cut in cuts:
        if cut.low.value > low.value:
            yield Span(low, cut.low)
        if cut.high.value > low.value:
            low = cut.high
    if stretch.high.value > low.value:
        yield Span(low, stretch.high)
