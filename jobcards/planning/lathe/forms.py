"""Chamfers, rounded corners and knurls."""

from jobcards.definition.job import Operation
from jobcards.planning import rates
from jobcards.planning.card import Cut, FeaturePlan, Position
from jobcards.planning.lathe.common import Turning, common, spindle, texts
from jobcards.planning.lathe.ground import chamfer_to_cut
from jobcards.planning.words import line
from jobcards.planning.work import from_job
from jobcards.trade import turning


def plan_chamfer(turn: Turning, cut_id: str, operation: Operation, feature: FeaturePlan) -> Cut:
    """A chamfer on the free end."""
    work, said = turn.work, texts(turn, operation)
    tool, found = common(turn, cut_id, operation, "turning", "turning", "finishing", turn.at_end())
    size = chamfer_to_cut(turn, cut_id, feature)
    time = rates.feed_time(work, cut_id, size, found["feed"], None)
    words = [line("Touch the corner, then feed in until the chamfer is {size} wide along the work.", size=size)]
    return Cut(
        cut_id,
        "turn chamfer",
        feature.name,
        line("Chamfer {feature}", feature=from_job(feature.name)),
        tool,
        (),
        {"size": size},
        {**found, "time": time},
        tuple(words),
        why=said["why"],
        check=said["check"],
        caution=said["caution"],
    )


def plan_radius(turn: Turning, cut_id: str, operation: Operation, feature: FeaturePlan) -> Cut | None:
    """A corner rounded with a tool of just that radius."""
    work, said = turn.work, texts(turn, operation)
    cutter = work.shop.cutters[operation.cutter]
    radius = feature.sizes["radius"]
    if feature.enters != turn.free_end:
        work.problem(
            operation.place("cut"),
            f"“{feature.name}” looks to the {feature.enters}, and the {turn.free_end} stands out",
            "move it to the other set-up",
        )
        return None
    tool, found = common(turn, cut_id, operation, "parting", "parting", "roughing", turn.met(feature.sizes["at"]))
    if cutter.kind != "form tool" or "radius" not in tool.sizes:
        work.problem(
            operation.place("cutter"), f"“{operation.cutter}” rounds no corner", "take a form tool with a radius"
        )
        return None
    if abs(tool.sizes["radius"].value - radius.value) > 1e-6:
        work.problem(
            operation.place("cutter"),
            f"the tool rounds {tool.sizes['radius'].shown}, and “{feature.name}” is {radius.shown}",
            "take the tool of that radius",
        )
    place = turn.from_free_end(feature.sizes["at"], f"{feature.name}: from the faced end", f"{cut_id}.place")
    time = rates.feed_time(work, cut_id, radius, found["feed"], None)
    words = [
        line(
            "Bring the tool's hollow onto the corner {place} from the faced end and feed in until both its ends just "
            "meet the work.",
            place=place,
        ),
        line("A form tool cuts along its whole edge: run slowly and with oil, and ease off when it chatters."),
    ]
    return Cut(
        cut_id,
        "turn radius",
        feature.name,
        line("Round {feature}", feature=from_job(feature.name)),
        tool,
        (Position(line("corner at"), None, None, place),),
        {"radius": radius},
        {**found, "time": time},
        tuple(words),
        why=said["why"],
        check=said["check"],
        caution=said["caution"],
    )


def plan_knurl(turn: Turning, cut_id: str, operation: Operation, feature: FeaturePlan) -> Cut | None:
    """A knurl pressed in; the diameter grows by about a part of its pitch."""
    work, said, sizes = turn.work, texts(turn, operation), dict(feature.sizes)
    met = turn.met(turn.far(sizes))
    tool = rates.plan_cutter(work, operation.cutter, work.shop.cutters[operation.cutter])
    found = spindle(turn, cut_id, operation, "threading", met)
    if tool.kind != "knurling tool" or "ridges" not in tool.sizes:
        work.problem(operation.place("cutter"), f"“{operation.cutter}” is no knurling tool", "take a knurling tool")
        return None
    if abs(tool.sizes["ridges"].value - sizes["pitch"].value) > 1e-6:
        work.problem(
            operation.place("cutter"),
            f"the tool's ridges are {tool.sizes['ridges'].shown} apart, and the knurl's {sizes['pitch'].shown}",
            "take the tool of that pitch, or write its pitch on the drawing",
        )
    grown = work.of(cut_id).length(
        "grown",
        turning.knurled_diameter,
        "about the diameter over the knurl",
        start=met,
        pitch=sizes["pitch"],
        factor=work.rule("knurl growth"),
    )
    turn.route.knurled.append((sizes["from"].value, sizes["to"].value, grown))
    far = turn.from_free_end(turn.far(sizes), f"{feature.name}: ends, from the faced end", f"{cut_id}.far")
    near = turn.from_free_end(turn.near(sizes), f"{feature.name}: begins, from the faced end", f"{cut_id}.near")
    words = [
        line(
            "A {pattern} knurl on {met}, from {near} to {far} from the faced end.",
            pattern=feature.toward,
            met=met,
            near=near,
            far=far,
        ),
        line("Press in hard at once, look whether the ridges fall into one another, then feed along with oil."),
        line("It grows to about {grown}. This is pressed, not cut, and is not dry-run.", grown=grown),
    ]
    return Cut(
        cut_id,
        "knurl",
        feature.name,
        line("Knurl {feature}", feature=from_job(feature.name)),
        tool,
        (),
        {"pitch": sizes["pitch"], "length": far},
        {**found, "time": work.rule("hand time")},
        tuple(words),
        why=said["why"],
        check=said["check"],
        caution=said["caution"],
    )


CUTS = {"turned chamfer": plan_chamfer, "turned radius": plan_radius, "knurl": plan_knurl}
