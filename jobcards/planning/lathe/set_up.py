"""One holding at the lathe."""

from jobcards.definition import shop as kit
from jobcards.definition.job import Operation, SetUp
from jobcards.planning.card import Cut, HoldPlan, SetUpPlan
from jobcards.planning.lathe.by_diameter import seated
from jobcards.planning.lathe.common import Turning, bar_touches, standing_out
from jobcards.planning.lathe.holding import plan_chuck
from jobcards.planning.lathe.operations import plan_lathe_cut
from jobcards.planning.lathe.rests import clear_of_rest, with_rest
from jobcards.planning.lathe.slender import check_slender
from jobcards.planning.lathe.touching import MOVES_THE_TOOL, first_by_dial
from jobcards.planning.route import Route, finished
from jobcards.planning.work import slug

OUTSIDE = (
    "turn",
    "turn groove",
    "taper by compound",
    "taper by set-over",
    "taper by form",
    "thread",
    "knurl",
    "turn radius",
)


def lathe_set_up(route: Route, set_up: SetUp, set_up_id: str, lathe: kit.Lathe) -> SetUpPlan | None:
    """One holding at the lathe."""
    work = route.work
    if set_up.hold is None or route.shape.kind != "turned":
        work.problem(
            set_up.mark,
            "a set-up at the lathe holds a turned part",
            "write `hold:` with in and out, and `turned:` for the part",
        )
        return None
    route.to_length = parted_to_length(route, set_up)
    held = plan_chuck(route, set_up_id, set_up)
    if held is None:
        return None
    outside = [f for f in route.shape.features if f.shape == "turned diameter"]  # a bore is held by a mandrel inside
    by = next((f for f in outside if set_up.hold.by and f.name == set_up.hold.by), None)
    seat = by is not None and seated(route, set_up.hold.out, by)
    bar = standing_out(route, set_up.hold.out, by, seat)
    turn = Turning(route, set_up_id, set_up, lathe, bar, set_up.hold.out, by, seat, first_by_dial(route, set_up))
    held = with_rest(route, set_up_id, set_up, held)
    check_slender(route, set_up_id, set_up, held, bar)
    touches = bar_touches(turn) if any(o.cut for o in set_up.operations) else ()
    cuts: list[Cut] = []
    taken: set[str] = set()
    for operation in set_up.operations:
        cut_id = name_cut(set_up_id, operation, taken)
        cut = plan_lathe_cut(turn, cut_id, operation, route.feature(operation))
        if cut is not None:
            cuts.append(cut)
            turn.tool = "" if cut.kind in MOVES_THE_TOOL else turn.tool
        route.done.append(operation.cut or operation.face or operation.part_off)
        route.faced |= {operation.face} - {""}
    clear_of_rest(turn, held)
    if not route.parted:
        clear_of_jaws(turn, held, cuts)
    return finished(route, set_up, set_up_id, "lathe", held, touches, tuple(cuts))


def parted_to_length(route: Route, set_up: SetUp) -> bool:
    """Whether the part comes to its length when it is parted off: the end cut there is faced in no set-up after it."""
    if route.parted:
        return route.to_length
    ends = {operation.part_off for operation in set_up.operations if operation.part_off}
    titles = [other.title for other in route.part.route]
    later = route.part.route[titles.index(set_up.title) + 1 :] if set_up.title in titles else []
    return bool(ends) and not any(operation.face in ends for other in later for operation in other.operations)


def name_cut(set_up_id: str, operation: Operation, taken: set[str]) -> str:
    """An id of its own for each cut: what is cut, and the tool where it is cut twice."""
    done = operation.cut or f"{'face' if operation.face else 'part off'} {operation.face or operation.part_off}"
    cut_id = f"{set_up_id}-{slug(done)}"
    if cut_id in taken:
        cut_id = f"{cut_id}-{slug(operation.cutter)}"
    taken.add(cut_id)
    return cut_id


def clear_of_jaws(turn: Turning, held: HoldPlan, cuts: list[Cut]) -> None:
    """Nothing on the outside is cut so far in that the tool meets what holds the work."""
    out, room = held.sizes["stick-out"], turn.work.rule("chuck clearance")
    for cut in cuts:
        length = cut.sizes.get("length")
        if cut.kind in OUTSIDE and length is not None and length.value > out.value - room.value + 1e-9:
            turn.work.problem(
                turn.part.features[cut.feature].mark,
                f"“{cut.feature}” is cut as far as {length.shown} from the end, and {out.shown} stands out: "
                f"less than {room.shown} is left before the jaws",
                "hold the work by another diameter, or turn it in another set-up",
            )
