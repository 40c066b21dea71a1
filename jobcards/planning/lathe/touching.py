"""Which tool the dials were set with. Another tool, or a compound that was swung, stands elsewhere: it touches anew."""

from jobcards.definition.job import Operation, SetUp
from jobcards.planning.card import FeaturePlan
from jobcards.planning.lathe.common import Turning, outside_dial
from jobcards.planning.number import Number
from jobcards.planning.route import Route
from jobcards.planning.words import Line, line
from jobcards.planning.work import from_shop
from jobcards.trade import cutting, milling, tapers

MOVES_THE_TOOL = ("taper by compound", "thread", "turn bore", "bore taper", "bore thread", "bore groove")
BY_DIAL = ("turned diameter", "turned groove", "undercut", "taper")  # cut to settings of the cross slide's dial


def first_by_dial(route: Route, set_up: SetUp) -> str:
    """The first tool of a set-up that is brought to settings of the cross slide's dial: it makes the first touch."""
    for operation in set_up.operations:
        feature = route.feature(operation)
        if feature is not None and feature.shape in BY_DIAL:
            return operation.cutter
    return ""


def touch_anew(
    turn: Turning,
    cut_id: str,
    operation: Operation,
    near: Number,
    farther: Number,
    moved: str = "",
    end: bool = True,
    lies_over: Number | None = None,
) -> tuple[list[Line], dict[str, Number]]:
    """What to do before a cut when its tool is not the one that set the dials, or when it was moved since.

    It touches what stands `farther` on than the near side of the cut. `moved` tells what has moved tool or work, if
    anything did; `end`, whether the end is touched too; `lies_over`, the half angle of a taper that the work lies over
    by: its near side then stands nearer to the tool than the place touched. Nothing for the tool that touched last.
    """
    if turn.tool == operation.cutter and not moved:
        return [], {}
    turn.tool = operation.cutter
    work = turn.work
    place = work.of(f"{cut_id}-touch").length(
        "place", milling.support_height, "where the tool touches, from the faced end", base=near, rise=farther
    )
    stands = turn.stands_at(place)
    not_on_a_knurl(turn, operation, place)
    counts = stands if lies_over is None else at_thin_end(turn, cut_id, stands, farther, lies_over)
    again = outside_dial(turn, f"{cut_id}-touch", counts)
    said = line(
        (moved or "The dials were set with another tool.")
        + " Touch the work anew with the {tool} {place} from the faced end, where it is {stands} across, and set the "
        "cross-slide dial to {again}." + (" Touch the faced end and set the carriage dial to {zero}." if end else ""),
        tool=from_shop(operation.cutter),
        place=place,
        stands=stands,
        again=again,
        zero=work.nothing(f"{turn.set_up_id}.zero", "the dial at the touch"),
    )
    touched = {"touch dial": again, "touch place": place}
    if lies_over is None:
        return [said], touched
    why = line(
        "The work lies over, and its thin end stands nearer to the tool: a cut that just meets the place touched "
        "leaves {counts} there, and the dial counts for that end.",
        counts=counts,
    )
    return [said, why], touched


def at_thin_end(turn: Turning, cut_id: str, stands: Number, distance: Number, half: Number) -> Number:
    """The thin end of a taper whose side goes through the place touched."""
    return turn.work.of(f"{cut_id}-touch").length(
        "thin-end", tapers.diameter_along, "thin end of a cut that just meets the place touched",
        large=stands, distance=distance, half=half,
    )  # fmt: skip


def not_on_a_knurl(turn: Turning, operation: Operation, place: Number) -> None:
    """A knurl has no diameter that a dial could be set by."""
    left = turn.length.value - place.value if turn.free_end == "right end" else place.value
    if any(begin < left < end for begin, end, _ in turn.route.knurled):
        turn.work.problem(
            operation.place("cut"),
            f"the {operation.cutter} would be touched on a knurl, and nobody can tell how large that is",
            "cut this before the knurl",
        )


def half_of(turn: Turning, cut_id: str, width: Number) -> Number:
    """The middle of a narrow shape: half of its width."""
    return turn.work.of(f"{cut_id}-touch").length("half", cutting.pass_depth, "half of its width", total=width, count=2)


def a_little(turn: Turning, feature: FeaturePlan, cut_id: str) -> Number:
    """A little way on, past a chamfer that may be there; half of a shape that is shorter than twice that."""
    clear, length = turn.work.rule("clearance"), feature.sizes["length"]
    return clear if 2 * clear.value <= length.value else half_of(turn, cut_id, length)
