"""Finding zero: what the readout is set to at each touch, and what stays after a flip."""

from dataclasses import dataclass

from jobcards.definition import shop as kit
from jobcards.definition.job import SetUp
from jobcards.definition.job import Zero as ZeroWords
from jobcards.planning.card import Touch
from jobcards.planning.number import Number, Show
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


@dataclass(frozen=True)
class Zeros:
    """The zero of a set-up: for each machine axis the place on the drawing that reads nothing; with the touches."""

    places: dict[str, Number]
    touches: tuple[Touch, ...]
    jaw: str
    stop: str


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
    return Zeros(places, tuple(touches), set_up.hold.against_fixed_jaw, set_up.hold.against_stop)


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
    if asked.middle_from:
        return [middle_touch(work, zero_id, asked.middle_from, lying, tip, step)]
    return between_touches(work, zero_id, asked, lying, tip, step)


def edge_as_it_is(work: Work, zero_id: str, axis: str, side: int, face: str, lying: Lie) -> Number:
    """What an edge is to read: nothing, or what still stands on it for grinding, to the side it looks to."""
    label = f"the {face} is to read"
    nothing = work.ledger.given(f"{zero_id}.{axis}-edge", 0.0, work.unit, label, "how this set-up lies")
    if face not in lying.standing:
        return nothing
    of, left = work.of(zero_id), lying.standing[face]
    if side > 0:
        return of.length(f"{axis}-rough-edge", locating.reading_from_zero, label, position=left, origin=nothing)
    return of.length(f"{axis}-rough-edge", locating.incremental_move, label, start=left, target=nothing)


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


def flat_axis(lying: Lie, face: str) -> tuple[str, int]:
    """The machine axis and side of a face that is touched from beside."""
    axis, side = lying.side(face)
    return axis, side


def edge_touch(
    work: Work, zero_id: str, face: str, lying: Lie, tip: tuple[str, Number], step: float
) -> tuple[Touch, Number]:
    """Touch an edge; the edge itself becomes zero."""
    axis, side = flat_axis(lying, face)
    edge = edge_as_it_is(work, zero_id, axis, side, face, lying)
    preset = work.of(zero_id).length(
        f"{axis}-preset",
        locating.preset_at_touch,
        f"readout {axis.upper()} while the tip touches the {face}",
        edge=edge,
        tip=tip[1],
        side=side,
        show=Show(step=step),
    )
    said = line(
        "Touch the {face} with the {finder} from the {where}; set {axis} to {preset}. The edge is then zero: the "
        "tip's middle stands half of {tip} outside it.",
        face=face,
        finder=from_shop(tip[0]),
        where=where(axis, side),
        axis=axis.upper(),
        preset=preset,
        tip=tip[1],
    )
    return Touch(axis, "edge", face, side, preset, from_shop(tip[0]), tip[1], said), face_place(work, lying.shape, face)


def middle_touch(
    work: Work, zero_id: str, face: str, lying: Lie, tip: tuple[str, Number], step: float
) -> tuple[Touch, Number]:
    """Touch one end; the middle of the known length becomes zero."""
    axis, side = flat_axis(lying, face)
    length = length_as_it_is(work, zero_id, axis, face, lying)
    preset = work.of(zero_id).length(
        f"{axis}-preset",
        locating.preset_for_middle,
        f"readout {axis.upper()} while the tip touches the {face}",
        length=length,
        tip=tip[1],
        side=side,
        show=Show(step=step),
    )
    said = line(
        "Touch the {face} with the {finder} from the {where}; set {axis} to {preset}. The middle is then zero: "
        "half of {length} and half of the tip, {tip}.",
        face=face,
        finder=from_shop(tip[0]),
        where=where(axis, side),
        axis=axis.upper(),
        preset=preset,
        length=length,
        tip=tip[1],
    )
    return Touch(axis, "middle", face, side, preset, from_shop(tip[0]), tip[1], said), middle_place(
        work, zero_id, lying, axis
    )


def middle_place(work: Work, zero_id: str, lying: Lie, axis: str) -> Number:
    """The middle of the part along a machine axis, on the drawing."""
    corner = face_place(work, lying.shape, "bottom")
    return work.of(zero_id).length(
        f"{axis}-middle", stackups.mean, f"middle of the part along {axis.upper()}", low=corner, high=lying.along(axis)
    )


def between_touches(
    work: Work, zero_id: str, asked: ZeroWords, lying: Lie, tip: tuple[str, Number], step: float
) -> list[tuple[Touch, Number]]:
    """Touch both edges; the middle of the two readings becomes zero, and the tip's size falls out."""
    out = []
    for face in asked.middle_between:
        axis, side = flat_axis(lying, face)
        preset = work.of(zero_id).length(
            f"{axis}-preset-{slug(face)}",
            locating.preset_for_middle,
            f"readout {axis.upper()} while the tip touches the {face}",
            length=length_as_it_is(work, zero_id, axis, face, lying),
            tip=tip[1],
            side=side,
            show=Show(step=step),
        )
        said = line(
            "Touch the {face} from the {where}; {axis} should read {preset}. Half of any difference between the "
            "two ends is the correction.",
            face=face,
            where=where(axis, side),
            axis=axis.upper(),
            preset=preset,
        )
        out.append(
            (
                Touch(axis, "between", face, side, preset, from_shop(tip[0]), tip[1], said),
                middle_place(work, zero_id, lying, axis),
            )
        )
    return out


def line_touch(work: Work, zero_id: str, asked: ZeroWords, lying: Lie, step: float) -> tuple[Touch, Number]:
    """Set the cutter to a scribed line by eye; the face that the line is measured from becomes zero."""
    axis, side = flat_axis(lying, asked.measured_from)
    assert asked.line is not None
    distance = work.expression(f"{zero_id}.{axis}-line", asked.line, f"scribed line, from the {asked.measured_from}")
    edge = work.ledger.given(
        f"{zero_id}.{axis}-edge", 0.0, work.unit, f"the {asked.measured_from} is to read", "how this set-up lies"
    )
    from_finished = line_as_it_will_be(work, zero_id, axis, asked.measured_from, distance, lying)
    if side < 0:
        preset = work.of(zero_id).length(
            f"{axis}-preset",
            locating.reading_from_zero,
            f"readout {axis.upper()} at the scribed line",
            position=from_finished,
            origin=edge,
            show=Show(step=step),
        )
    else:
        preset = work.of(zero_id).length(
            f"{axis}-preset",
            locating.incremental_move,
            f"readout {axis.upper()} at the scribed line",
            start=from_finished,
            target=edge,
            show=Show(step=step),
        )
    said = line(
        "Scribe a line {distance} from the {face}. Bring the cutter's corner or point to it by eye and set {axis} to "
        "{preset}. By eye a line is held to about a hair's width: enough for the first of a row, not for a fit.",
        distance=distance,
        face=asked.measured_from,
        axis=axis.upper(),
        preset=preset,
    )
    return Touch(axis, "line", asked.measured_from, side, preset, None, None, said, distance), face_place(
        work, lying.shape, asked.measured_from
    )


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
    edge = left or work.ledger.given(
        f"{zero_id}.z-edge", 0.0, work.unit, "the touched face is to read", "how this set-up lies"
    )
    height = work.of(zero_id).length(
        "z-preset",
        locating.layout_height,
        "height of the cutter's end at the touch",
        base=edge,
        position=paper[1],
        show=Show(step=step),
    )
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


def where(axis: str, side: int) -> str:
    """From which side the tip comes."""
    return {("x", -1): "left", ("x", 1): "right", ("y", -1): "near side", ("y", 1): "far side"}[(axis, side)]
