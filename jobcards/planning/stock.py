"""Blanks, their weight, and what to saw from which bar."""

from jobcards import quantity
from jobcards.definition.expression import Expression
from jobcards.definition.job import Part
from jobcards.planning.card import BlankPlan, CutListRow, PartPlan, ShapePlan
from jobcards.planning.number import AS_UNIT, Number, Show
from jobcards.planning.shapes import AXES, BLOCK
from jobcards.planning.words import Line, line
from jobcards.planning.work import Work
from jobcards.trade import every_formula, milling, stackups, stock
from jobcards.trade.materials import material

ACROSS = {"length": "length", "height": "width", "thickness": "thickness"}  # the part's size and the blank's
HAIR = 1e-9
BY_RULE = {"in": Show(places=2), "mm": Show(places=1)}  # no finer is marked out or stopped at a saw


def plan_blank(work: Work, part_id: str, part: Part, shape: ShapePlan) -> BlankPlan:
    """The piece of stock of a part, what stands out beyond the finished part, and its weight."""
    written = part.blank
    sizes = {
        name: work.expression(
            f"{part_id}-blank.{name}",
            value,
            f"blank of the {part_id}: {name}",
            show=sawn(work, value) if name == "length" else AS_UNIT,
        )
        for name in ("width", "thickness", "diameter", "length")
        if (value := getattr(written, name)) is not None
    }
    if written.shape == "flat bar":
        outside = outside_numbers(work, part_id, shape, sizes)
        volume_unit = f"{work.unit}³"
        volume = work.of(f"{part_id}-blank").rate(
            "volume",
            stock.flat_bar_volume,
            "volume of the blank",
            volume_unit,
            width=sizes["width"],
            thickness=sizes["thickness"],
            length=sizes["length"],
        )
        text = line(
            "flat bar {width} × {thickness}, {how} {length} long",
            how="bought" if outside["whole x"].value <= HAIR else "sawn",
            **{n: sizes[n] for n in ("width", "thickness", "length")},
        )
    else:
        outside = round_outside(work, part_id, shape, sizes)
        volume = work.of(f"{part_id}-blank").rate(
            "volume",
            stock.round_bar_volume,
            "volume of the blank",
            f"{work.unit}³",
            diameter=sizes["diameter"],
            length=sizes["length"],
        )
        text = line("round bar {diameter}, sawn {length} long", diameter=sizes["diameter"], length=sizes["length"])
    return BlankPlan(written.shape, sizes, outside, weigh(work, f"{part_id}-blank", part, volume), text)


def sawn(work: Work, written: Expression) -> Show:
    """A worked length to saw to, as a rule tells it: in sixty-fourths or else hundredths of an inch, tenths of a mm."""
    if not written.names:
        return AS_UNIT  # as it is written
    fraction = quantity.show_fraction(written.value(work.env, every_formula())) if work.unit == "in" else None
    return BY_RULE[work.unit] if fraction is None else Show(text_as_written=fraction)


def round_outside(work: Work, part_id: str, shape: ShapePlan, sizes: dict[str, Number]) -> dict[str, Number]:
    """How far round bar stands out: faced off the free end, and all the rest at the other."""
    whole = work.of(f"{part_id}-blank").length(
        "whole-x",
        milling.left_to_take,
        "bar over the part in all, along its length",
        full=sizes["length"],
        taken=shape.sizes["length"],
    )
    side = work.of(f"{part_id}-blank").length(
        "outside-r",
        stackups.half_tolerance,
        "bar outside the part, on the radius",
        low=shape.sizes["diameter"],
        high=sizes["diameter"],
    )
    return {"right end": work.rule("facing"), "whole x": whole, "side": side}


def outside_numbers(work: Work, part_id: str, shape: ShapePlan, sizes: dict[str, Number]) -> dict[str, Number]:
    """How far the blank stands out beyond the finished part on each side; the part lies in the middle."""
    out: dict[str, Number] = {}
    for axis, name in enumerate(BLOCK):
        stock, finished = sizes[ACROSS[name]], shape.sizes[name]
        low = {0: "left end", 1: "bottom", 2: "back"}[axis]
        out[low] = work.of(f"{part_id}-blank").length(
            f"outside-{AXES[axis]}",
            stackups.half_tolerance,
            f"blank outside the part at each side, along its {name}",
            low=finished,
            high=stock,
        )
        out[f"whole {AXES[axis]}"] = work.of(f"{part_id}-blank").length(
            f"whole-{AXES[axis]}",
            milling.left_to_take,
            f"blank over the part in all, along its {name}",
            full=stock,
            taken=finished,
        )
    return out


def weigh(work: Work, number_id: str, part: Part, volume: Number) -> Number:
    """Weight of a volume of the part's material."""
    known = material(part.material)
    if work.unit == "in":
        density = work.ledger.given(
            f"{number_id}.density",
            known.density_inch,
            "lb/in³",
            f"density, {known.name}",
            known.source,
            formula="from the table",
        )
        return work.of(number_id).rate(
            "weight", stock.weight, "weight of the blank", "lb", volume=volume, density=density
        )
    density = work.ledger.given(
        f"{number_id}.density",
        known.density_metric,
        "g/cm³",
        f"density, {known.name}",
        known.source,
        formula="from the table",
    )
    return work.of(number_id).rate(
        "weight", stock.weight_metric, "weight of the blank", "kg", volume=volume, density=density
    )


def plan_cut_list(work: Work, parts: tuple[PartPlan, ...]) -> tuple[CutListRow, ...]:
    """Pieces to saw, bar by bar: those of one section and material together."""
    bars: dict[tuple[object, ...], list[PartPlan]] = {}
    for part in parts:
        section = tuple(round(number.value, 6) for name, number in part.blank.sizes.items() if name != "length")
        bars.setdefault((part.material.text, part.blank.shape, section, to_size(part)), []).append(part)
    return tuple(cut_list_row(work, index, group) for index, group in enumerate(bars.values(), start=1))


def to_size(part: PartPlan) -> bool:
    """Whether a block is bought as long as it is drawn: nothing is sawn then, nor cleaned up."""
    return part.blank.shape == "flat bar" and part.blank.outside["whole x"].value <= HAIR


def cut_list_row(work: Work, index: int, group: list[PartPlan]) -> CutListRow:
    """One bar: its pieces, the length they need with a saw cut each, and the weight."""
    row_id = f"bar-{chr(ord('a') + index - 1)}"
    bought = to_size(group[0])
    kerf = work.nothing(f"{row_id}.no-kerf", "nothing is sawn", "the job's definition") if bought else work.rule("kerf")
    lengths: list[Number] = []
    pieces: list[Line] = []
    for part in group:
        nothing = work.nothing(f"{row_id}-{part.id}.nothing", "nothing more is cleaned or held", "the job's definition")
        lengths.append(
            work.of(f"{row_id}-{part.id}").length(
                "length",
                stock.bar_needed,
                f"bar for the {part.id}",
                count=part.quantity,
                length=part.blank.sizes["length"],
                cleaning=nothing,
                kerf=kerf,
                held=nothing,
                show=BY_RULE[work.unit],
            )
        )
        pieces.append(
            line(
                "{count} of {length} for the {part}",
                count=part.quantity,
                length=part.blank.sizes["length"],
                part=part.name,
            )
        )
    needed = work.of(row_id).length(
        "length",
        stock.bar_in_all,
        "bar in all, with a saw cut to each piece",
        lengths=lengths,
        show=BY_RULE[work.unit],
    )
    weight = work.of(row_id).rate(
        "weight",
        stock.weight_in_all,
        "weight of the pieces",
        group[0].blank.weight.unit,
        counts=[part.quantity for part in group],
        weights=[part.blank.weight for part in group],
    )
    first = group[0].blank
    section = (
        line(
            "{material}: flat bar {width} × {thickness}",
            material=group[0].material,
            width=first.sizes["width"],
            thickness=first.sizes["thickness"],
        )
        if first.shape == "flat bar"
        else line("{material}: round bar {diameter}", material=group[0].material, diameter=first.sizes["diameter"])
    )
    return CutListRow(section, tuple(pieces), needed, weight, bought)
