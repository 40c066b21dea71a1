"""Finding zero: what the readout is set to at each touch, and what stays after a flip."""

from dataclasses import dataclass

from jobcards.definition import shop as kit
from jobcards.definition.job import Hold, SetUp
from jobcards.definition.job import Zero as ZeroWords
from jobcards.planning.card import Touch
from jobcards.planning.number import AS_UNIT, HOW_IT_LIES, Number, Show
from jobcards.planning.orientation import Lie, face_place
from jobcards.planning.words import Line, line
from jobcards.planning.work import Work, from_shop, slug
from jobcards.trade import heat, locating, milling, stackups

OPPOSITE = {
    "front": "back",
    "back": "front",
    "top": "bottom",
    "bottom": "top",
    "left end": "right end",
    "right end": "left end",
}
TOUCHED = {
    "edge": "Touch the {face} with the {finder} from the {where}; set {axis} to {preset}. The edge is then zero: the "
    "tip's middle stands half of {tip} outside it.",
    "ground later": "Touch the {face} with the {finder} from the {where}; set {axis} to {preset}. The edge then reads "
    "{length}, and zero is the {face} as it will be ground: the tip's middle stands half of {tip} outside the edge.",
    "middle": "Touch the {face} with the {finder} from the {where}; set {axis} to {preset}. The middle is then zero: "
    "half of {length} and half of the tip, {tip}.",
    "between": "Touch the {face} with the {finder} from the {where}; set {axis} to {preset}.",
    "between, second": "Touch the {face} from the {where}; {axis} reads {preset} if the size is exact. Whatever it "
    "reads, set it halfway between that and {preset}: the middle is then zero.",
}


@dataclass(frozen=True)
class Zeros:
    """The zero of a set-up: for each machine axis the place on the drawing that reads nothing; with the touches."""

    places: dict[str, Number]
    touches: tuple[Touch, ...]
    jaw: str
    stop: str
    hold: Hold | None = None  # work under clamps: how it lay, since it may stay while they are moved


def finder(work: Work, kind: str) -> tuple[str, kit.Finder] | None:
    """The shop's edge finder or feeler."""
    return next(((name, thing) for name, thing in work.shop.finders.items() if thing.kind == kind), None)


def tip_of(work: Work) -> tuple[str, Number] | None:
    """The edge finder and the diameter of its tip."""
    found = finder(work, "edge finder")
    if found is None or found[1].tip is None:
        return None
    return found[0], work.shop_length(f"shop-{slug(found[0])}.tip", found[1].tip, "diameter of the edge finder's tip")


def paper_of(work: Work) -> tuple[str, Number] | None:
    """The paper feeler and its thickness."""
    found = finder(work, "paper")
    if found is None or found[1].thickness is None:
        return None
    return found[0], work.shop_length(
        f"shop-{slug(found[0])}.thickness", found[1].thickness, "thickness of the paper feeler"
    )


def plan_zero(work: Work, zero_id: str, set_up: SetUp, lying: Lie, step: float) -> Zeros:
    """The touches of a set-up, as the definition asks for them."""
    assert set_up.hold is not None
    places: dict[str, Number] = {}
    touches: list[Touch] = []
    for asked in set_up.zero:
        again = [axis for axis in {lying.side(face)[0] for face in faces_of(asked)} if axis in places]
        if again:
            work.problem(
                asked.mark,
                f"{again[0].upper()} is set twice in this set-up; the second touch would undo the first",
                "leave one of the two out",
            )
            continue
        for touch, place in plan_touch(work, zero_id, asked, lying, step):
            touches.append(touch)
            places[touch.axis] = place
    hold = set_up.hold
    return Zeros(places, tuple(touches), hold.against_fixed_jaw, hold.against_stop, hold if hold.clamps else None)


def faces_of(asked: ZeroWords) -> list[str]:
    """The faces that a line of `zero:` names."""
    return [face for face in (asked.edge, asked.middle_from, asked.measured_from, *asked.middle_between) if face]


def plan_touch(work: Work, zero_id: str, asked: ZeroWords, lying: Lie, step: float) -> list[tuple[Touch, Number]]:
    """One line of `zero:` as touches, each with the place on the drawing that its axis then reads nothing at."""
    level = [face for face in faces_of(asked) if lying.side(face)[0] == "z"]
    if level:
        work.problem(
            asked.mark,
            f"the {level[0]} lies level here and cannot be touched from beside",
            "name a face that stands upright in this set-up",
        )
        return []
    if asked.line is not None:
        return [line_touch(work, zero_id, asked, lying, step)]
    tip = tip_of(work)
    if tip is None:
        work.problem(
            asked.mark, "the shop has no edge finder", "add one to the shop file, or set out a line and use `line:`"
        )
        return []
    if asked.edge:
        return [edge_touch(work, zero_id, asked.edge, lying, tip, step)]
    kind, faces = ("middle", [asked.middle_from]) if asked.middle_from else ("between", asked.middle_between)
    touches = [touch_beside(work, zero_id, kind, face, lying, tip, step, face != faces[0]) for face in faces]
    return [(touch, middle_place(work, zero_id, lying, touch.axis)) for touch in touches]


def edge_as_it_is(work: Work, zero_id: str, axis: str, side: int, face: str, lying: Lie) -> Number:
    """What an edge is to read: nothing, or what still stands on it for grinding, to the side it looks to."""
    label = f"the {face} is to read"
    nothing = work.ledger.given(f"{zero_id}.{axis}-edge", 0.0, work.unit, label, HOW_IT_LIES)
    if face not in lying.standing:
        return nothing
    return from_edge(work, zero_id, f"{axis}-rough-edge", -side, label, lying.standing[face], nothing)


def length_as_it_is(work: Work, zero_id: str, axis: str, face: str, lying: Lie) -> Number:
    """The length whose middle is found from a face: with twice what stands on that face for grinding."""
    length = lying.along(axis)
    if face not in lying.standing:
        return length
    return work.of(zero_id).length(
        f"{axis}-rough-length-{slug(face)}",
        heat.size_before_grinding,
        f"length as if both ends stood out like the {face}",
        finished=length,
        allowance=lying.standing[face],
        faces=2,
    )


def line_as_it_will_be(work: Work, zero_id: str, axis: str, face: str, distance: Number, lying: Lie) -> Number:
    """How far a scribed line stands from the face as it will be ground."""
    if face not in lying.standing:
        return distance
    return work.of(zero_id).length(
        f"{axis}-line-then",
        milling.left_to_take,
        f"scribed line, from the {face} as it will be",
        full=distance,
        taken=lying.standing[face],
    )


def edge_touch(
    work: Work, zero_id: str, face: str, lying: Lie, tip: tuple[str, Number], step: float
) -> tuple[Touch, Number]:
    """Touch an edge; the edge itself becomes zero."""
    return touch_beside(work, zero_id, "edge", face, lying, tip, step), face_place(work, lying.shape, face)


def touch_beside(
    work: Work,
    zero_id: str,
    kind: str,
    face: str,
    lying: Lie,
    tip: tuple[str, Number],
    step: float,
    second: bool = False,
) -> Touch:
    """Touch a face from beside with the edge finder; what becomes zero goes by the kind of touch."""
    axis, side = lying.side(face)
    name = f"{axis}-preset-{slug(face)}" if kind == "between" else f"{axis}-preset"
    label = f"readout {axis.upper()} while the tip touches the {face}"
    show = Show(step=step)
    if kind == "edge":
        known = edge_as_it_is(work, zero_id, axis, side, face, lying)
        preset = work.of(zero_id).length(
            name, locating.preset_at_touch, label, edge=known, tip=tip[1], side=side, show=show
        )
    else:
        known = length_as_it_is(work, zero_id, axis, face, lying)
        preset = work.of(zero_id).length(
            name, locating.preset_for_middle, label, length=known, tip=tip[1], side=side, show=show
        )
    finder = from_shop(tip[0])
    said = line(
        TOUCHED["ground later" if kind == "edge" and face in lying.standing else kind + (", second" if second else "")],
        face=face,
        finder=finder,
        where=where(axis, side),
        axis=axis.upper(),
        preset=preset,
        length=known,
        tip=tip[1],
    )
    return Touch(axis, kind, face, side, preset, finder, tip[1], said)


def middle_place(work: Work, zero_id: str, lying: Lie, axis: str) -> Number:
    """The middle of the part along a machine axis, on the drawing."""
    corner = face_place(work, lying.shape, "bottom")
    return work.of(zero_id).length(
        f"{axis}-middle", stackups.mean, f"middle of the part along {axis.upper()}", low=corner, high=lying.along(axis)
    )


def line_touch(work: Work, zero_id: str, asked: ZeroWords, lying: Lie, step: float) -> tuple[Touch, Number]:
    """Set the cutter to a scribed line by eye; the face that the line is measured from becomes zero."""
    face = asked.measured_from
    axis, side = lying.side(face)
    assert asked.line is not None
    distance = work.expression(f"{zero_id}.{axis}-line", asked.line, f"scribed line, from the {face}")
    edge = work.nothing(f"{zero_id}.{axis}-edge", f"the {face} is to read")
    there = line_as_it_will_be(work, zero_id, axis, face, distance, lying)
    label = f"readout {axis.upper()} at the scribed line"
    preset = from_edge(work, zero_id, f"{axis}-preset", side, label, there, edge, Show(step=step))
    said = line(
        "Bring the cutter's corner or point by eye to the line scribed {distance} from the {face}, and set {axis} to "
        "{preset}. By eye a line is held to about a hair's width: enough for the first of a row, not for a fit.",
        distance=distance,
        face=face,
        axis=axis.upper(),
        preset=preset,
    )
    touch = Touch(axis, "line", face, side, preset, None, None, said, distance)
    return touch, face_place(work, lying.shape, face)


def from_edge(
    work: Work, zero_id: str, name: str, side: int, label: str, distance: Number, edge: Number, show: Show = AS_UNIT
) -> Number:
    """The reading of a place that lies a distance into the work (or, with the side turned, out of it) from an edge."""
    if side < 0:
        return work.of(zero_id).length(
            name, locating.reading_from_zero, label, position=distance, origin=edge, show=show
        )
    return work.of(zero_id).length(name, locating.incremental_move, label, start=distance, target=edge, show=show)


def surface_touch(
    work: Work, zero_id: str, kind: str, face: str, step: float, left: Number | None = None, shaper: bool = False
) -> Touch | None:
    """The cutter's end on the upper face with paper between; the knee then reads nothing at the face itself.

    `left` is what stands on the face for grinding: zero is then the face as it will be.
    """
    paper = paper_of(work)
    if paper is None:
        work.problem(work.job.mark, "the shop has no paper feeler", "add one to the shop file's finders")
        return None
    edge = left or work.nothing(f"{zero_id}.z-edge", "the touched face is to read")
    height = paper_height(work, zero_id, edge, paper[1], step)
    words = {
        "surface": "With the spindle stopped, raise the knee until the cutter just drags {finder} {tip} thick on "
        "the {face}; set the height to {preset}. The face is then zero and depths count down from it. Do this "
        "anew for each cutter.",
        "corner": "With the spindle stopped, raise the knee until the cutter just drags {finder} {tip} thick on "
        "the corner that stands highest, at the {face}; set the height to {preset}. The corner is then zero.",
        "shaper": "With the ram stopped over the work, feed the tool down until it just drags {finder} {tip} thick on "
        "the {face}; set the dial of the tool slide to {preset}. The face is then zero and depths count down from it.",
    }
    said: Line = line(
        words["shaper" if shaper else kind], finder=from_shop(paper[0]), tip=paper[1], face=face, preset=height
    )
    if left is not None:
        said += line(" Zero is the {face} as it will be ground: {left} still stands on it.", face=face, left=left)
    return Touch("z", kind, face, 1, height, from_shop(paper[0]), paper[1], said)


def paper_height(work: Work, zero_id: str, edge: Number, paper: Number, step: float) -> Number:
    """What the height is set to while the cutter's end drags the paper on a face that is to read `edge`."""
    label, show = "height of the cutter's end at the touch", Show(step=step)
    return work.of(zero_id).length("z-preset", locating.layout_height, label, base=edge, position=paper, show=show)


def where(axis: str, side: int) -> str:
    """From which side the tip comes."""
    return {("x", -1): "left", ("x", 1): "right", ("y", -1): "near side", ("y", 1): "far side"}[(axis, side)]
