"""One holding at the lathe."""

from jobcards.definition import shop as kit
from jobcards.definition.job import SetUp
from jobcards.planning.card import SetUpPlan
from jobcards.planning.lathe.common import Turning, bar_touches
from jobcards.planning.lathe.holding import plan_chuck
from jobcards.planning.lathe.operations import plan_lathe_cut
from jobcards.planning.route import Route, finished
from jobcards.planning.work import slug


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
    held = plan_chuck(work, set_up_id, set_up, route.part, route.shape, route.blank)
    if held is None:
        return None
    bar = route.blank.sizes["diameter"]
    outside = bar if held.kind == "chuck" else route.shape.sizes["diameter"]
    turn = Turning(work, set_up_id, set_up, route.part, route.shape, lathe, bar, set_up.hold.out, outside)
    touches = bar_touches(turn) if any(o.cut for o in set_up.operations) else ()
    cuts = []
    for operation in set_up.operations:
        done = operation.cut or f"{'face' if operation.face else 'part off'} {operation.face or operation.part_off}"
        cut = plan_lathe_cut(turn, f"{set_up_id}-{slug(done)}", operation, route.feature(operation))
        if cut is not None:
            cuts.append(cut)
    return finished(route, set_up, set_up_id, "lathe", held, touches, tuple(cuts))
