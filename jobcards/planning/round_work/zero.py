"""Finding the axis of round work: from both sides, from one side, with a cutter and paper, or with an indicator."""

from collections.abc import Mapping, Sequence

from jobcards.definition.job import SetUp
from jobcards.definition.job import Zero as ZeroWords
from jobcards.planning.card import FeaturePlan, Touch
from jobcards.planning.mill.zero import Zeros, edge_touch, paper_of, tip_of, where
from jobcards.planning.number import Number, Show
from jobcards.planning.orientation import Lie
from jobcards.planning.rates import plan_cutter
from jobcards.planning.words import line
from jobcards.planning.work import Work, from_shop
from jobcards.trade import locating, round_work

SIDES = {"near side": (-1,), "far side": (1,), "both sides": (-1, 1)}
Placed = tuple[Touch, Number]


def plan_round_zero(
    work: Work, zero_id: str, set_up: SetUp, lying: Lie, cuts: Sequence[FeaturePlan], held: Number, step: float
) -> Zeros:
    """The touches of a set-up of round work; across the table and, standing, along it too, zero is the axis."""
    hold = set_up.hold
    assert hold is not None
    places: dict[str, Number] = {}
    touches: list[Touch] = []
    touched = cuts[0].sizes.get("round", held) if cuts else held
    for asked in set_up.zero:
        if asked.axis == "indicator" or (hold.up and asked.axis):
            found = swung(work, zero_id, asked, bool(hold.up))
        elif asked.axis:
            found = axis_touches(work, zero_id, set_up, asked, touched, step)
        else:
            found = end_touch(work, zero_id, set_up, asked, lying, step)
        for touch, place in found:
            touches.append(touch)
            places[touch.axis] = place
    return Zeros(places, tuple(touches), "", "")


def round_axis(work: Work) -> Number:
    """The axis of the round, on the drawing."""
    return work.nothing("round-axis", "the axis of the round", "the job's definition")


def swung(work: Work, zero_id: str, asked: ZeroWords, standing: bool) -> list[Placed]:
    """An indicator swung in the spindle round the work: the spindle then stands over the axis."""
    if not standing:
        work.problem(asked.place("axis"), "an indicator is swung round work that stands on its end", "write both sides")
        return []
    words = {
        "x": "Swing an indicator in the spindle round the work and move the table until it reads the same all round; "
        "set {axis} to {preset}.",
        "y": "At the same place set {axis} to {preset}. The axis of the work is then zero both ways.",
    }
    return swung_touches(work, zero_id, words)


def swung_touches(work: Work, zero_id: str, words: Mapping[str, str]) -> list[Placed]:
    """The readout set to nothing both ways with the spindle over an axis; `words` for each machine axis."""
    nothing = work.nothing(f"{zero_id}.swung", "readout with the spindle over the axis")
    return [
        (
            Touch(axis, "swung", "", 0, nothing, None, None, line(words[axis], axis=axis.upper(), preset=nothing)),
            round_axis(work),
        )
        for axis in ("x", "y")
    ]


def axis_touches(
    work: Work, zero_id: str, set_up: SetUp, asked: ZeroWords, diameter: Number, step: float
) -> list[Placed]:
    """The round touched on its side: with the edge finder, or with the first cutter and paper."""
    way = asked.axis.removeprefix("cutter at the ")
    if way != asked.axis:
        return cutter_touch(work, zero_id, set_up, asked, diameter, SIDES[way][0], step)
    tip = tip_of(work)
    if tip is None:
        work.problem(asked.mark, "the shop has no edge finder", "write axis: cutter at the near side")
        return []
    sides = SIDES[way]
    out = []
    for side in sides:
        preset = work.of(zero_id).length(
            "y-preset" if len(sides) == 1 else f"y-preset-{'far' if side > 0 else 'near'}",
            locating.preset_for_middle,
            f"readout Y while the tip touches the {where('y', side)} of the round",
            length=diameter,
            tip=tip[1],
            side=side,
            show=Show(step=step),
        )
        words = (
            "Touch the round from the {where} at the height of its axis; Y reads {preset} if the size is exact. "
            "Whatever it reads, set it halfway between that and {preset}: the axis is then zero."
            if side != sides[0]
            else "Touch the round from the {where} at the height of its axis with the {finder}; set Y to {preset}: "
            "half of {size} and half of the tip, {tip}." + (" The axis is then zero." if len(sides) == 1 else "")
        )
        said = line(words, where=where("y", side), finder=from_shop(tip[0]), preset=preset, size=diameter, tip=tip[1])
        kind = "round side" if len(sides) == 1 else "round pair"
        out.append((Touch("y", kind, "", side, preset, from_shop(tip[0]), tip[1], said), round_axis(work)))
    return out


def cutter_touch(
    work: Work, zero_id: str, set_up: SetUp, asked: ZeroWords, diameter: Number, side: int, step: float
) -> list[Placed]:
    """The first cutter of the set-up, stopped, beside the round with paper between."""
    paper = paper_of(work)
    name = set_up.operations[0].cutter
    tool = plan_cutter(work, name, work.shop.cutters[name])
    if paper is None or "diameter" not in tool.sizes:
        lacks = "the shop has no paper feeler" if paper is None else f"“{name}” has no diameter to touch with"
        work.problem(asked.mark, lacks, "write axis: both sides")
        return []
    preset = work.of(zero_id).length(
        "y-preset",
        round_work.preset_beside_round,
        f"readout Y while the cutter drags the paper on the {where('y', side)} of the round",
        diameter=diameter,
        cutter=tool.sizes["diameter"],
        paper=paper[1],
        side=side,
        show=Show(step=step),
    )
    said = line(
        "With the spindle stopped, bring the side of the {cutter} to the round from the {where} until it just drags "
        "{finder} {paper} thick; set Y to {preset}: half of {size}, half of the cutter and the paper.",
        cutter=tool.name,
        where=where("y", side),
        finder=from_shop(paper[0]),
        paper=paper[1],
        preset=preset,
        size=diameter,
    )
    touch = Touch("y", "round side", "", side, preset, from_shop(paper[0]), tool.sizes["diameter"], said)
    return [(touch, round_axis(work))]


def end_touch(work: Work, zero_id: str, set_up: SetUp, asked: ZeroWords, lying: Lie, step: float) -> list[Placed]:
    """An end touched along the table, where lengths count from."""
    hold, tip = set_up.hold, tip_of(work)
    assert hold is not None
    if asked.edge not in ("left end", "right end") or hold.up:
        instead = "write axis: indicator" if hold.up else "write edge: with an end, and axis: for across the table"
        work.problem(asked.mark, "round work has no edge to touch there", instead)
        return []
    if tip is None:
        work.problem(asked.mark, "the shop has no edge finder", "add one to the shop file")
        return []
    on_head = hold.on == ""
    if on_head and asked.edge != hold.out:
        work.problem(asked.place("edge"), f"the {asked.edge} is in the chuck", "touch the end that stands out")
    return [edge_touch(work, zero_id, asked.edge, lying, tip, step)]
