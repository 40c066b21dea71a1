"""Diameters turned pass by pass: dial settings from the touch on the bar, lengths from the faced end."""

from jobcards.definition.job import Operation
from jobcards.planning import rates
from jobcards.planning.card import Cut, CutterPlan, FeaturePlan, Position
from jobcards.planning.lathe.common import Turning, common, dial_place, outside_dial, texts
from jobcards.planning.lathe.ground import diameter_to_turn, is_wheel, plan_ground
from jobcards.planning.lathe.shoulders import check_corner, fine_shoulder, turned_length
from jobcards.planning.lathe.touching import touch_anew
from jobcards.planning.number import Number, Show
from jobcards.planning.words import Line, line
from jobcards.planning.work import from_job
from jobcards.trade import cutting, stackups, turning
from jobcards.trade import finish as finishes


def plan_diameter(turn: Turning, cut_id: str, operation: Operation, feature: FeaturePlan) -> Cut | None:
    """A diameter turned from the free end, in roughing passes and one light last pass; a rough cut leaves that one."""
    if is_wheel(turn.work, operation.cutter):
        return plan_ground(turn, cut_id, operation, feature)
    work, said, sizes = turn.work, texts(turn, operation), dict(feature.sizes)
    met = turn.met(turn.far(sizes))
    tool, found = common(turn, cut_id, operation, "turning", "turning", "finishing", met)
    rough = rates.lathe_feed(work, f"{cut_id}.rough-feed", turn.part.material, "turning", "roughing", found["speed"])
    found |= {"roughing feed a turn": rough["feed a turn"], "roughing feed": rough["feed"]}
    finish = diameter_to_turn(turn, cut_id, feature)
    length = turn.from_free_end(turn.far(sizes), f"{feature.name}: length from the faced end", f"{cut_id}.length")
    shoulder = check_corner(turn, operation, feature, tool)
    length = turned_length(turn, cut_id, feature, tool, length)
    end = work.nothing(f"{cut_id}-touch.end", "the faced end")
    anew, touched = touch_anew(turn, cut_id, operation, end, work.rule("clearance"))
    reached = turned_diameters(turn, cut_id, met, finish)
    if operation.rough and len(reached) > 1 and feature.name not in turn.route.ground:
        reached = reached[:-1]
    positions = tuple(
        turning_pass(turn, cut_id, index, diameter, length) for index, diameter in enumerate(reached, start=1)
    )
    count = work.ledger.counted(f"{cut_id}.passes", len(reached), "passes")
    time = rates.feed_time(work, cut_id, length, found["feed"], count)
    words = [*anew, line("Turn to {length} from the faced end.", length=length)]
    if not operation.rough:
        words.append(
            line(
                "Before the last pass stop, let the work cool, and measure. Take what is still over from what you "
                "measure."
            )
        )
        words += fine_shoulder(turn, feature)
        words += nose_words(turn, cut_id, tool, found["feed a turn"], shoulder)
    turn.turned_to(turn.far(sizes), reached[-1])
    return Cut(
        cut_id,
        "turn",
        feature.name,
        line("Turn {feature}", feature=from_job(feature.name)),
        tool,
        positions,
        {"diameter": reached[-1], "length": length, **touched},
        {**found, "passes": count, "time": time},
        tuple(words),
        why=said["why"],
        check=said["check"],
        caution=said["caution"],
        rough=operation.rough,
    )


def nose_words(turn: Turning, cut_id: str, tool: CutterPlan, feed: Number, shoulder: bool) -> list[Line]:
    """What the tool's nose leaves: the finish that feed and nose can give, and the fillet in a shoulder."""
    nose = tool.sizes.get("nose radius")
    if nose is None or nose.value <= 0:
        return []
    said = []
    if feed.value <= 2 * nose.value:
        rough = turn.work.of(cut_id).length(
            "ridges",
            finishes.turned_roughness,
            "roughness that feed and nose leave",
            feed=feed,
            nose_radius=nose,
            show=Show(places=6),
        )
        inch = turn.work.unit == "in"
        fine = turn.work.of(cut_id).rate(
            "roughness", finishes.roughness_fine, "roughness that feed and nose leave", "µin" if inch else "µm",
            roughness=rough, factor=1e6 if inch else 1e3, show=Show(places=0 if inch else 1),
        )  # fmt: skip
        said.append(line("Feed and nose leave a roughness of about {fine}; real work comes out rougher.", fine=fine))
    if shoulder:
        said.append(
            line("The nose leaves a fillet of {nose} in the corner: see that what fits there clears it.", nose=nose)
        )
    return said


def turned_diameters(turn: Turning, cut_id: str, now: Number, finish: Number) -> list[Number]:
    """The diameters after each pass; the last is the finished one."""
    work = turn.work
    light = rates.deepest_pass(work, turn.part.material, "turning", "finishing", None)
    heavy = rates.deepest_pass(work, turn.part.material, "turning", "roughing", None)
    if abs(finish.value - turn.route.blank.sizes["diameter"].value) < 1e-9:
        work.problem(
            turn.part.mark,
            f"nothing is to turn from {now.shown} to {finish.shown}: it stays as the bar comes",
            "leave its cut out of the route, or write a larger blank",
        )
        return [finish]
    if now.value <= finish.value:
        work.problem(
            turn.part.mark,
            f"nothing is left to turn from {now.shown} to {finish.shown}",
            "write a larger blank, or turn the larger diameter first",
        )
        return [finish]
    rough = work.of(cut_id).length(
        "rough", turning.rough_diameter, "diameter before the last pass", finish=finish, allowance=light
    )
    if rough.value >= now.value - 1e-9:
        return [finish]
    total = work.of(cut_id).length(
        "rough-total", stackups.half_tolerance, "to take on the radius before the last pass", low=rough, high=now
    )
    count = work.of(cut_id).count("rough-passes", cutting.passes, "passes before the last", total=total, depth=heavy)
    each = work.of(cut_id).length(
        "rough-depth", cutting.pass_depth, "on the radius, each pass", total=total, count=count
    )
    out: list[Number] = []
    last = now
    for index in range(1, int(count.value)):
        last = work.of(cut_id).length(
            f"pass-{index}", turning.diameter_after, "diameter after this pass", start=last, dial=each, reads_diameter=0
        )
        out.append(last)
    return [*out, rough, finish]


def turning_pass(turn: Turning, cut_id: str, index: int, diameter: Number, length: Number) -> Position:
    """One pass: the dial from the touch on the bar, and how far along."""
    place_id = f"{cut_id}-{index}"
    dial = outside_dial(turn, place_id, diameter)
    return dial_place(turn, place_id, line("to {diameter}", diameter=diameter), dial, length)
