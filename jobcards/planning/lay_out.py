"""Marking out on the surface plate: height-gauge settings for every line, standing on left end, bottom and back."""

from collections.abc import Mapping

from jobcards.definition.job import SetUp
from jobcards.planning.card import Cut, FeaturePlan, Position, SetUpPlan
from jobcards.planning.letters import letter
from jobcards.planning.number import Number, Show
from jobcards.planning.rates import TENTHS
from jobcards.planning.route import Route, finished
from jobcards.planning.words import Line, line
from jobcards.planning.work import Work, from_job, slug
from jobcards.trade import holes, locating, stackups, times

STANDING = {"x": "left end", "y": "bottom", "z": "back"}
FEW_LINES = 8  # more lines than these and their edges are not listed too: dividers scribe the circles


def lay_out_set_up(route: Route, set_up: SetUp, set_up_id: str) -> SetUpPlan | None:
    """Every feature named, line by line."""
    if route.shape.kind != "block":
        route.work.problem(set_up.place("lay_out"), "only a block is marked out so", "leave lay out out")
        return None
    named = [f for name in set_up.lay_out for f in route.shape.features if f.name == name]
    cuts = tuple(lay_out_feature(route, set_up_id, feature) for feature in named)
    instrument = next((name for name, tool in route.work.shop.instruments.items() if "height" in name), "")
    notes = [
        line(
            "Coat the face with marking ink and let it dry. Stand the squared block on the face named, clean and "
            "without burrs, against an angle plate if it is tall, and scribe each line at the height given."
        ),
        line("Punch lightly where two lines cross, look with a glass, and only then punch to start a drill."),
    ]
    if not instrument:
        notes.append(line("The shop file names no height gauge: a rule held upright will do for rough work only."))
    return finished(route, set_up, set_up_id, "lay out", None, (), cuts, notes)


def lay_out_feature(route: Route, set_up_id: str, feature: FeaturePlan) -> Cut:
    """The lines of one feature; the heights are kept for whoever drills where they cross."""
    work, cut_id = route.work, f"{set_up_id}-{slug(feature.name)}"
    marks = tuple(
        {axis: height_of(work, cut_id, axis, number) for axis, number in place.items()} for place in feature.places
    )
    route.marked[feature.name] = marks
    lines = lines_of(marks)
    positions = tuple(
        at_height(label(feature, letters, len(marks)), axis, height) for (axis, _), (height, letters) in lines.items()
    )
    steps: list[Line] = []
    if len(lines) <= FEW_LINES:
        steps += [
            edges(work, cut_id, feature, axis, height, number)
            for number, ((axis, _), (height, _)) in enumerate(lines.items())
        ]
    steps += dividers(work, cut_id, feature)
    count = work.ledger.counted(f"{cut_id}.lines", len(lines), "lines to scribe")
    time = work.of(cut_id).time(times.time_of_each, show=TENTHS, count=count, each=work.rule("layout time"))
    title = line("Mark out {feature} on the {face}", feature=from_job(feature.name), face=feature.enters)
    return Cut(cut_id, "lay out", feature.name, title, None, positions, {}, {"time": time}, tuple(steps), rough=True)


def at_height(told: Line, axis: str, height: Number) -> Position:
    """A line at a height over the plate, standing on the face that its axis begins at."""
    x, y, z = (height if axis == way else None for way in STANDING)
    return Position(told, x, y, z)


def height_of(work: Work, cut_id: str, axis: str, place: Number) -> Number:
    """What the height gauge is set to for one line."""
    plate = work.nothing("surface-plate", "the face it stands on, on the surface plate")
    return work.of(f"{cut_id}-{axis}-{slug(place.id)}").length(
        "height",
        locating.layout_height,
        f"height, standing on the {STANDING[axis]}",
        base=plate,
        position=place,
        show=Show(step=work.rule("layout step").value),
    )


def lines_of(marks: tuple[Mapping[str, Number], ...]) -> dict[tuple[str, str], tuple[Number, list[str]]]:
    """Each line once, those on one face together and from the lowest up, with the letters of the holes on it."""
    found: dict[tuple[str, str], tuple[Number, list[str]]] = {}
    for index, mark in enumerate(marks):
        for axis, height in mark.items():
            found.setdefault((axis, height.shown), (height, []))[1].append(letter(index))
    return dict(sorted(found.items(), key=lambda entry: (entry[0][0], entry[1][0].value)))


def label(feature: FeaturePlan, letters: list[str], count: int) -> Line:
    """Which holes stand on a line."""
    if count == 1:
        return line("{feature}", feature=from_job(feature.name))
    if len(letters) == count:
        return line("{feature}, all", feature=from_job(feature.name))
    return line("{feature}, {letters}", feature=from_job(feature.name), letters=" ".join(letters))


def edges(work: Work, cut_id: str, feature: FeaturePlan, axis: str, height: Number, number: int) -> Line:
    """Heights of the lower and upper edge of the holes on a line: the finished hole just touches them."""
    numbers = work.of(f"{cut_id}-{axis}-{letter(number)}")
    diameter, show = feature.sizes["diameter"], Show(step=work.rule("layout step").value)
    low = numbers.length(
        "low", holes.wall_to_edge, "height of the lower edge", distance=height, diameter=diameter, show=show
    )
    high = numbers.length(
        "high", holes.upper_edge, "height of the upper edge", centre=height, diameter=diameter, show=show
    )
    return line(
        "On the {face}, line {height}: edges at {low} and {high}.",
        face=STANDING[axis],
        height=height,
        low=low,
        high=high,
    )


def dividers(work: Work, cut_id: str, feature: FeaturePlan) -> list[Line]:
    """The circle round each place, and the step round a circle of holes."""
    nothing = work.nothing(f"{cut_id}.point", "the dividers' point")
    radius = work.of(cut_id).length(
        "radius", stackups.half_tolerance, "dividers: half of the diameter", low=nothing, high=feature.sizes["diameter"]
    )
    said = [line("Round each place a circle with the dividers at {radius}, as a witness of the drill.", radius=radius)]
    if "chord" in feature.sizes:
        said.append(
            line(
                "Check round the circle with the dividers at {chord}, from each place to the next.",
                chord=feature.sizes["chord"],
            )
        )
    return said
