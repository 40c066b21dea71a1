"""The route of a part, set-up by set-up, by the kind of machine."""

from collections.abc import Mapping
from dataclasses import replace

from jobcards.definition import shop as kit
from jobcards.definition.checks.shop import check_setup_in
from jobcards.definition.job import Part, SetUp
from jobcards.definition.problem import Problem
from jobcards.definition.shop_drilling import DrillPress
from jobcards.planning.assemble import assemble_set_up, inspect_set_up
from jobcards.planning.bench import bench_set_up
from jobcards.planning.card import BlankPlan, SetUpPlan, ShapePlan
from jobcards.planning.drill_press import drill_press_set_up
from jobcards.planning.grind import grind_set_up, left_for_grinding
from jobcards.planning.heat import heat_set_up
from jobcards.planning.holes.tap_drill import all_named, with_tap_drills
from jobcards.planning.lathe.ground import left_on_diameters
from jobcards.planning.lathe.set_up import lathe_set_up
from jobcards.planning.lay_out import lay_out_set_up
from jobcards.planning.mill.set_up import mill_set_up
from jobcards.planning.mill.square import square_set_up
from jobcards.planning.number import NameTaken
from jobcards.planning.rotary.set_up import on_rotary_table, rotary_set_up
from jobcards.planning.round_work.set_up import round_set_up
from jobcards.planning.route import Route
from jobcards.planning.saw import saw_set_up
from jobcards.planning.shaper.set_up import shaper_set_up
from jobcards.planning.stand_ins import bring_stand_ins, bring_wheels
from jobcards.planning.work import Work, slug
from jobcards.trade.formula import CannotBeDone


def plan_route(
    work: Work,
    part_id: str,
    part: Part,
    shape: ShapePlan,
    blank: BlankPlan,
    count: int,
    own: Mapping[str, str] | None = None,
) -> tuple[SetUpPlan, ...]:
    """Every set-up of a part, numbered on from `count`. `own`: what the ids of some begin with, by their titles."""
    bring_wheels(work, part)
    ground = left_for_grinding(work, part_id, part, shape) | left_on_diameters(work, part_id, part, shape)
    route = Route(work, part_id, part, shape, blank, count, ground=ground, own=own or {})
    plans: list[SetUpPlan] = []
    for set_up in part.route:
        try:
            made = plan_set_up(route, set_up)
        except CannotBeDone as error:
            work.problem(set_up.mark, str(error), f"look at the set-up “{set_up.title}”")
            continue
        except NameTaken:
            wrong = f"“{set_up.title}” comes to the same name as another set-up together with one of its cuts"
            work.problem(set_up.place("title"), wrong, "give the set-up another title")
            continue
        if made is not None:
            plans.append(made)
    return tuple(plans)


def plan_set_up(route: Route, set_up: SetUp) -> SetUpPlan | None:
    """One set-up, by the kind of its machine."""
    work = route.work
    set_up = with_tap_drills(route, set_up)
    if not all_named(set_up):
        route.untold |= {operation.cut for operation in set_up.operations}
        return None  # told already
    bring_stand_ins(route, set_up)
    lacking = list(check_setup_in(set_up, work.shop))
    work.problems += lacking
    left = apart_from(route, set_up, lacking)
    if left is None:
        return None
    set_up = left
    machine = work.shop.machines[set_up.machine]
    route.count += 1
    set_up_id = f"{route.own.get(set_up.title, route.part_id)}-{slug(set_up.title)}"
    if set_up.assemble is not None:
        return assemble_set_up(route, set_up, set_up_id)
    if set_up.lay_out:
        return lay_out_set_up(route, set_up, set_up_id)
    if isinstance(machine, DrillPress):
        return drill_press_set_up(route, set_up, set_up_id, machine)
    if set_up.inspect:
        return inspect_set_up(route, set_up, set_up_id)
    if set_up.saw is not None and isinstance(machine, kit.Saw | kit.Bench):
        return saw_set_up(route, set_up, set_up_id, machine)
    if isinstance(machine, kit.Shaper):
        return shaper_set_up(route, set_up, set_up_id, machine)
    if isinstance(machine, kit.Furnace):
        return heat_set_up(route, set_up, set_up_id, machine)
    if isinstance(machine, kit.SurfaceGrinder):
        return grind_set_up(route, set_up, set_up_id, machine)
    if isinstance(machine, kit.Mill) and set_up.square_up is not None:
        return square_set_up(route, set_up, set_up_id, machine)
    if isinstance(machine, kit.Mill) and route.shape.kind == "turned":
        return round_set_up(route, set_up, set_up_id, machine)
    if isinstance(machine, kit.Mill) and on_rotary_table(route, set_up):
        return rotary_set_up(route, set_up, set_up_id, machine)
    if isinstance(machine, kit.Mill):
        return mill_set_up(route, set_up, set_up_id, machine)
    if isinstance(machine, kit.Lathe):
        return lathe_set_up(route, set_up, set_up_id, machine)
    return bench_set_up(route, set_up, set_up_id)


def apart_from(route: Route, set_up: SetUp, lacking: list[Problem]) -> SetUp | None:
    """What can be planned of a set-up beside its problems: not a shape whose cutter is unknown, now or later on."""
    wrong = {problem.mark for problem in lacking}
    unknown = [o for o in set_up.operations if o.place("cutter") in wrong]
    route.untold |= {operation.cut for operation in unknown if operation.cut}
    if len(lacking) > len(unknown):
        route.untold |= {operation.cut for operation in set_up.operations}
        return None
    left = [o for o in set_up.operations if o not in unknown and o.cut not in route.untold]
    if set_up.operations and not left and set_up.square_up is None:
        return None
    return set_up if len(left) == len(set_up.operations) else replace(set_up, operations=left)
