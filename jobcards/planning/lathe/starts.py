"""A hole on the axis started with a centre drill or a spot drill, so that the drill does not wander."""

from jobcards.definition.job import Operation
from jobcards.planning.card import Cut, FeaturePlan
from jobcards.planning.lathe.common import Turning, tailstock_show
from jobcards.planning.lathe.ends import drilled, pointed
from jobcards.planning.number import Number
from jobcards.planning.words import Line, line
from jobcards.planning.work import from_job, slug
from jobcards.trade import centre_drills, drilling
from jobcards.trade.formula import CannotBeDone

STARTERS = ("centre drill", "spot drill")
HOLES = ("turned bore", "tapped end", "taper bore")


def is_start(turn: Turning, operation: Operation, feature: FeaturePlan | None) -> bool:
    """Whether an operation only starts a hole on the axis."""
    kind = turn.work.shop.cutters[operation.cutter].kind
    return kind in STARTERS and feature is not None and feature.shape in HOLES


def plan_start(turn: Turning, cut_id: str, operation: Operation, feature: FeaturePlan) -> Cut | None:
    """A hole started: its mouth stays smaller than the hole, so that nothing of it is left."""
    work, name = turn.work, operation.cutter
    if not operation.rough:
        work.problem(
            operation.place("cutter"), f"“{name}” only starts “{feature.name}”", "write rough: true, and drill it after"
        )
        return None
    if feature.name in turn.route.opened:
        work.problem(operation.place("cut"), f"“{feature.name}” is drilled already", "start it before it is drilled")
        return None
    centre = work.shop.cutters[name].kind == "centre drill"
    found = centre_start(turn, cut_id, operation) if centre else spot_start(turn, cut_id, operation)
    if found is None:
        return None
    mouth = found["mouth"]
    if mouth.value > feature.sizes["diameter"].value:
        work.problem(
            operation.place("cutter"),
            f"“{name}” opens a mouth of {mouth.shown}, and “{feature.name}” is {feature.sizes['diameter'].shown}",
            "take a smaller one",
        )
    words = start_words(found)
    title = line("Start {feature}", feature=from_job(feature.name))
    shape = {key: number for key, number in found.items() if key != "depth"}
    kind = "centre drill" if centre else "lathe spot"
    return drilled(turn, cut_id, operation, feature, kind, found["depth"], mouth, words, shape, title)


def start_words(found: dict[str, Number]) -> list[Line]:
    """How far in."""
    return [
        line(
            "Feed in by the tailstock until its tip stands {depth} deep: the mouth is then {mouth} across. The drill "
            "takes it away.",
            depth=found["depth"],
            mouth=found["mouth"],
        )
    ]


def centre_start(turn: Turning, cut_id: str, operation: Operation) -> dict[str, Number] | None:
    """Sizes and depth of a centre drill that starts a hole."""
    work, size = turn.work, turn.work.shop.cutters[operation.cutter].size
    found: dict[str, Number] = {}
    tellers = {
        "body": centre_drills.centre_body,
        "pilot": centre_drills.centre_pilot,
        "pilot length": centre_drills.centre_pilot_length,
    }
    try:
        for which, function in tellers.items():
            label = f"{which} of the centre drill"
            found[which] = work.ledger.told(f"{cut_id}.{slug(which)}", function, label, work.unit, size, work.unit)
    except CannotBeDone as error:
        work.problem(operation.place("cutter"), str(error), "write its size in the shop file")
        return None
    numbers = work.of(cut_id)
    found["mouth"] = numbers.length(
        "mouth",
        centre_drills.centre_mouth,
        "across the mouth of the start",
        body=found.pop("body"),
        part=work.rule("centre mouth"),
    )
    found["depth"] = numbers.length(
        "depth",
        centre_drills.centre_depth,
        "depth of the centre drill's tip",
        mouth=found["mouth"],
        pilot=found["pilot"],
        pilot_length=found["pilot length"],
        show=tailstock_show(turn),
    )
    return found


def spot_start(turn: Turning, cut_id: str, operation: Operation) -> dict[str, Number] | None:
    """The depth of a spot drill and the mouth that it opens."""
    work = turn.work
    tool = pointed(turn, operation)
    if tool is None:
        return None
    depth = work.rule("spot depth")
    mouth = work.of(cut_id).length(
        "mouth",
        drilling.countersink_diameter,
        "across the mouth of the spot",
        depth=depth,
        hole=0.0,
        angle=tool.sizes["point"],
    )
    return {"mouth": mouth, "depth": depth}
