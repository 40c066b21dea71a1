"""One operation: the numbers first and large, then where to go, then the steps, the reason and the check."""

from collections.abc import Mapping

from jobcards.pages.dividing import stations
from jobcards.pages.html import Html, element, join, table
from jobcards.pages.pictures import Pictures, figure
from jobcards.pages.writing import Writer, tick
from jobcards.planning.card import Cut, Position, SetUpPlan
from jobcards.planning.number import Number

# Rates that are set at the machine. The others ("wanted speed", "cutting speed") stand in the working of the numbers.
SET_AT_THE_MACHINE = {
    "speed": "spindle", "feed": "feed", "strokes": "strokes", "stroke": "stroke",
    "passes": "passes", "pass depth": "each pass",
}  # fmt: skip
# Sizes that are set or measured, in this order. What else a cut carries stands in its steps and in the working.
SET_OR_MEASURED = (
    "take off", "leave", "diameter", "touch", "depth", "across", "over", "head over", "along", "length",
    "whole length", "half angle", "scale", "travel", "set-over", "infeed angle", "infeed", "mouth", "width", "radius",
    "pitch", "count", "tilt", "angle", "flat", "size", "overhang",
    "for grinding", "temperature", "soak", "case", "time at heat", "least", "aim", "most",
)  # fmt: skip
LATHE_AXES = {"x": "Cross slide", "y": "Compound", "z": "Carriage"}
# Marking out: heights over the surface plate, with the block standing on each of three faces.
STANDING = {"x": "Height, on the left end", "y": "Height, on the bottom", "z": "Height, on the back"}
AXES = {"lathe": LATHE_AXES, "lay out": STANDING}
BY_TAILSTOCK = ("centre drill", "lathe spot", "lathe drill", "lathe ream", "lathe tap")


def operation(writer: Writer, set_up: SetUpPlan, cut: Cut, pictures: Pictures) -> Html:
    """The block of one operation."""
    key = f"{set_up.id}.{cut.id}"
    return element(
        "section",
        element("h3", tick(key), element("span", writer.line(cut.title))),
        tool(writer, cut),
        figure(pictures.after.get((set_up.id, cut.id), ""), "part-after", "After this operation"),
        figures(writer, numbers_to_set(cut), in_all(cut)),
        own_hold(writer, cut),
        readings(writer, set_up, cut),
        stations(writer, set_up, cut),
        element("p", element("b", "Then:")) if cut.hold and cut.steps else "",
        writer.sentences(cut.steps, "steps", "ol"),
        writer.labelled("Caution:", cut.caution, "caution one-line"),
        writer.labelled("Why:", cut.why, "why"),
        writer.labelled("Check:", cut.check, "check"),
        class_="operation",
    )


def tool(writer: Writer, cut: Cut) -> Html:
    """The cutter."""
    if cut.cutter is None:
        return Html("")
    time = join([", about ", writer.number(cut.rates["time"])]) if "time" in cut.rates else Html("")
    rough = " Leaves metal for a later cut." if cut.rough else ""
    return element("p", "With ", element("b", writer.authored(cut.cutter.name)), time, ".", rough, class_="tool")


def numbers_to_set(cut: Cut) -> Mapping[str, Number]:
    """What is dialled in for a cut, under the name it goes by at the machine."""
    sizes = {name: cut.sizes[name] for name in SET_OR_MEASURED if name in cut.sizes}
    rates = {label: cut.rates[name] for name, label in SET_AT_THE_MACHINE.items() if name in cut.rates}
    return {**sizes, **rates}


def figures(writer: Writer, numbers: Mapping[str, Number], more: Mapping[str, str] | None = None) -> Html:
    """Numbers with their names, the number large, and a few words more after some; nothing when there are none."""
    if not numbers:
        return Html("")
    boxes = (
        element("div", element("dt", name), element("dd", writer.large(number, unit=True), (more or {}).get(name, "")))
        for name, number in numbers.items()
    )
    return element("dl", *boxes, class_="figures")


def in_all(cut: Cut) -> dict[str, str]:
    """What stands beside the passes: that a light one follows."""
    return {"passes": " and a light one"} if {"passes", "last pass"} <= set(cut.rates) else {}


def own_hold(writer: Writer, cut: Cut) -> Html:
    """How the work is held where this operation has a hold of its own."""
    if cut.hold is None:
        return Html("")
    return element(
        "div", element("p", element("b", "Hold:")), writer.sentences(cut.hold.instructions, "hold-steps", "ol")
    )


def readings(writer: Writer, set_up: SetUpPlan, cut: Cut) -> Html:
    """Where to go: one row a position, each with a box to tick; nothing when there are no positions."""
    axes = axes_of(cut.positions)
    if not axes:
        return Html("")
    unit = unit_of(cut)
    heads = ["", *(axis_name(set_up, cut, axis, unit) for axis in axes), "Done"]
    rows = (
        (
            writer.line(position.label),
            *(writer.large(getattr(position, axis)) for axis in axes),
            tick(f"{set_up.id}.{cut.id}.{place}"),
        )
        for place, position in enumerate(cut.positions)
        if position.label  # the end of a way that the next row begins with has none
    )
    return table(heads, rows, class_="readings stack")


def axes_of(positions: tuple[Position, ...]) -> list[str]:
    """The axes that any position has a reading for."""
    return [axis for axis in "xyz" if any(getattr(position, axis) is not None for position in positions)]


def unit_of(cut: Cut) -> str:
    """The unit of the readings."""
    return next(number.unit for position in cut.positions for number in (position.x, position.y, position.z) if number)


def axis_name(set_up: SetUpPlan, cut: Cut, axis: str, unit: str) -> str:
    """How the axis is called at this machine, with the unit of its readings."""
    name = AXES.get(set_up.kind, {}).get(axis, axis)
    if axis == "z" and cut.kind in BY_TAILSTOCK:
        name = "Tailstock"
    return f"{name} ({unit})"
