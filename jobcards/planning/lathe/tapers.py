"""Tapers: by the compound set to the half angle, by the tailstock set over, or short ones by a form tool.

What is chosen follows from the hold and the tool: between centres the tailstock is set over, a form tool with an angle
cuts by itself, and all else is done with the compound.
"""

from jobcards.definition.job import Operation
from jobcards.planning import rates
from jobcards.planning.card import Cut, CutterPlan, FeaturePlan, Position
from jobcards.planning.lathe.common import Turning, common, dial_place, outside_dial, texts
from jobcards.planning.lathe.diameters import nose_words, turned_diameters
from jobcards.planning.lathe.outline import standing
from jobcards.planning.lathe.touching import a_little, half_of, touch_anew
from jobcards.planning.number import Number, Show
from jobcards.planning.words import Line, line
from jobcards.planning.work import from_job, from_shop
from jobcards.trade import tapers, turned_tapers

CLOSE = 0.01  # degrees: how near a form tool's angle must be


def plan_taper(turn: Turning, cut_id: str, operation: Operation, feature: FeaturePlan) -> Cut | None:
    """A taper whose thin end looks to the free end, in passes; each starts at the thin end."""
    work = turn.work
    if feature.toward != turn.free_end:
        work.problem(
            operation.place("cut"),
            f"the thin end of “{feature.name}” looks to the {feature.toward}, and the {turn.free_end} stands out",
            "turn the taper in a set-up where its thin end stands out",
        )
        return None
    cutter = work.shop.cutters[operation.cutter]
    if cutter.kind == "form tool":
        return plan_formed(turn, cut_id, operation, feature)
    if turn.set_up.hold is not None and turn.set_up.hold.holder in between_centres(turn):
        return plan_set_over(turn, cut_id, operation, feature)
    return plan_compound(turn, cut_id, operation, feature)


def between_centres(turn: Turning) -> list[str]:
    """The names under which the shop has centres."""
    return [name for name, thing in turn.work.shop.holding.items() if getattr(thing, "kind", "") == "centres"]


def passes(turn: Turning, cut_id: str, feature: FeaturePlan, near: Number) -> tuple[tuple[Position, ...], Number]:
    """A setting of the cross slide for each pass, with the tool at the thin end; and how many passes."""
    sizes = dict(feature.sizes)
    met = turn.met(turn.far(sizes))
    if met.value < sizes["large"].value - 1e-6:
        turn.work.problem(
            turn.part.features[feature.name].mark,
            f"“{feature.name}” is {sizes['large'].shown} at its thick end, and the work is {met.shown} by then",
            "turn it to the thick end's diameter first",
        )
    reached = turned_diameters(turn, cut_id, met, sizes["small"])
    out = []
    for index, diameter in enumerate(reached, start=1):
        place_id = f"{cut_id}-{index}"
        label = line("thin end to {diameter}", diameter=diameter)
        out.append(dial_place(turn, place_id, label, outside_dial(turn, place_id, diameter), near))
    count = turn.work.ledger.counted(f"{cut_id}.passes", len(reached), "passes")
    return tuple(out), count


def thin_end(turn: Turning, cut_id: str, feature: FeaturePlan) -> Number:
    """The thin end from the faced end."""
    return turn.from_free_end(
        turn.near(dict(feature.sizes)), f"{feature.name}: thin end, from the faced end", f"{cut_id}.near"
    )


def plan_compound(turn: Turning, cut_id: str, operation: Operation, feature: FeaturePlan) -> Cut | None:
    """The compound stands at the half angle and is fed by hand from the thin end to the thick one."""
    work, sizes = turn.work, dict(feature.sizes)
    met = turn.met(turn.far(sizes))
    tool, found = common(turn, cut_id, operation, "turning", "turning", "finishing", met)
    half = sizes["half angle"]
    instead = "turn it between centres with the tailstock set over"
    travel, scale = set_compound(turn, cut_id, operation, half, sizes["length"], instead)
    near = thin_end(turn, cut_id, feature)
    moved = "Swinging the compound has moved the tool."
    anew, touched = touch_anew(turn, cut_id, operation, near, a_little(turn, feature, cut_id), moved)
    positions, count = passes(turn, cut_id, feature, near)
    time = rates.feed_time(work, cut_id, travel, found["feed"], count)
    words = [
        line(
            "Set the compound so that its travel makes {half} with the axis, the end toward the headstock wider. That "
            "is half of the angle that both sides make together.",
            half=half,
        ),
        scale_words(turn, scale),
        *anew,
        line(
            "Lock the carriage with the tool {near} from the faced end; set the cross slide, pass by pass.", near=near
        ),
        way_out(turn, feature, travel),
        *gauge_words(feature),
        *nose_words(turn, cut_id, tool, found["feed a turn"], False),
    ]
    extra = {"scale": scale, "travel": travel, **touched}
    return taper_cut(
        turn, cut_id, operation, feature, "taper by compound", tool, positions,
        {**found, "passes": count, "time": time}, words, extra,
    )  # fmt: skip


def way_out(turn: Turning, feature: FeaturePlan, travel: Number) -> Line:
    """How far the compound is fed: out of the cut at the thick end, or up to a shoulder that stands there."""
    far = turn.far(dict(feature.sizes)).value
    beyond = far - 1e-6 if turn.free_end == "right end" else far + 1e-6
    bar = turn.route.blank.sizes["diameter"]
    large = feature.sizes["large"].value
    if 0 < beyond < turn.length.value and standing(turn.route.turned, beyond, bar).value > large + 1e-6:
        return line(
            "Feed with the compound only, {travel}, and stop there: a shoulder stands at the thick end, and the tool "
            "must not run into it.",
            travel=travel,
        )
    return line(
        "Feed with the compound only, {travel} and a little more, out of the cut at the thick end.", travel=travel
    )


def set_compound(
    turn: Turning, cut_id: str, operation: Operation, half: Number, length: Number, instead: str
) -> tuple[Number, Number]:
    """The compound's travel along the side of a taper, and what its scale shows; a problem when it travels less."""
    work = turn.work
    travel = work.of(cut_id).length(
        "travel-of-compound", tapers.taper_side, "travel of the compound along the side", length=length, half=half
    )
    if turn.lathe.compound_travel is not None:
        most = work.shop_length("shop-compound.travel", turn.lathe.compound_travel, "how far the compound travels")
        if travel.value > most.value:
            work.problem(
                operation.place("cut"),
                f"the side of “{operation.cut}” is {travel.shown} long, and the compound travels {most.shown}",
                f"{instead}, or shorten it",
            )
    scale = work.of(cut_id).angle(
        "scale",
        turned_tapers.compound_scale,
        "what the compound's scale shows",
        half=half,
        from_cross=1.0 if counts_from_cross(turn) else 0.0,
        show=Show(places=2),
    )
    return travel, scale


def counts_from_cross(turn: Turning) -> bool:
    """Whether the compound's scale shows nothing along the cross slide, not along the axis."""
    return turn.lathe.compound_counts_from == "cross slide"


def scale_words(turn: Turning, scale: Number) -> Line:
    """What the compound's scale is set to."""
    return line(
        "This compound's scale shows nothing when the compound lies along the {line}: set it to {scale}.",
        line=from_shop("cross slide" if counts_from_cross(turn) else "lathe's axis"),
        scale=scale,
    )


def plan_set_over(turn: Turning, cut_id: str, operation: Operation, feature: FeaturePlan) -> Cut | None:
    """The tailstock is set over and the taper turned with the carriage's own feed."""
    work, sizes = turn.work, dict(feature.sizes)
    met = turn.met(turn.far(sizes))
    tool, found = common(turn, cut_id, operation, "turning", "turning", "finishing", met)
    over = work.of(cut_id).length(
        "set-over",
        tapers.set_over,
        "tailstock set over",
        large=sizes["large"],
        small=sizes["small"],
        length=sizes["length"],
        work=turn.length,
    )
    if turn.lathe.set_over is not None:
        most = work.shop_length("shop-tailstock.set-over", turn.lathe.set_over, "how far the tailstock sets over")
        if over.value > most.value:
            work.problem(
                operation.place("cut"),
                f"“{feature.name}” asks the tailstock to be set over {over.shown}, and it goes {most.shown}",
                "turn it with the compound, in steps if it is long",
            )
    near = thin_end(turn, cut_id, feature)
    moved = "The work has moved with the tailstock."
    little, half = a_little(turn, feature, cut_id), sizes["half angle"]
    anew, touched = touch_anew(turn, cut_id, operation, near, little, moved, lies_over=half)
    told_if_not_last(turn, operation)
    positions, count = passes(turn, cut_id, feature, near)
    time = rates.feed_time(work, cut_id, sizes["length"], found["feed"], count)
    words = [
        line(
            "Set the tailstock over {over} toward you, so that the thin end comes nearer to the tool. Measure it with "
            "an indicator on the tailstock's barrel.",
            over=over,
        ),
        *anew,
        line("The whole length between the centres counts, {length}, not only that of the taper.", length=turn.length),
        line("Feed from {near} from the faced end toward the headstock, {run} along.", near=near, run=sizes["length"]),
        *gauge_words(feature),
        *nose_words(turn, cut_id, tool, found["feed a turn"], False),
        line("Bring the tailstock back to the line of centres and try it with an indicator."),
    ]
    return taper_cut(
        turn, cut_id, operation, feature, "taper by set-over", tool, positions,
        {**found, "passes": count, "time": time}, words, {"set-over": over, **touched},
    )  # fmt: skip


def told_if_not_last(turn: Turning, operation: Operation) -> None:
    """With the tailstock back in line the dial holds no more: nothing may be turned after it in the same set-up."""
    if operation is not turn.set_up.operations[-1]:
        turn.work.problem(
            operation.place("cut"),
            f"“{operation.cut}” is turned with the tailstock set over, and more is cut after it in the same set-up",
            "make it the last operation: the dial holds no more once the tailstock is back in line",
        )


def plan_formed(turn: Turning, cut_id: str, operation: Operation, feature: FeaturePlan) -> Cut | None:
    """A short taper with a tool ground to its angle, fed straight in."""
    work, sizes = turn.work, dict(feature.sizes)
    cutter = work.shop.cutters[operation.cutter]
    met = turn.met(turn.far(sizes))
    tool, found = common(turn, cut_id, operation, "parting", "parting", "roughing", met)
    if cutter.angle is None or cutter.width is None:
        work.problem(
            operation.place("cutter"), f"“{operation.cutter}” has no angle and width", "take a form tool that has"
        )
        return None
    ground = tool.sizes["flank angle"]
    if abs(ground.value - sizes["half angle"].value) > CLOSE:
        work.problem(
            operation.place("cutter"),
            f"the tool is ground to {ground.shown}°, and “{feature.name}” stands at {sizes['half angle'].shown}°",
            "take a tool of that angle, or turn it with the compound",
        )
    if tool.sizes["width"].value < sizes["length"].value:
        work.problem(
            operation.place("cutter"),
            f"the tool is {tool.sizes['width'].shown} wide, and “{feature.name}” {sizes['length'].shown} long",
            "turn it with the compound",
        )
    near = thin_end(turn, cut_id, feature)
    anew, touched = touch_anew(turn, cut_id, operation, near, half_of(turn, cut_id, sizes["length"]))
    dial = outside_dial(turn, cut_id, sizes["small"])
    position = dial_place(turn, cut_id, line("thin end at"), dial, near)
    time = rates.feed_time(work, cut_id, sizes["length"], found["feed"], None)
    words = [
        *anew,
        line(
            "The tool's edge stands at {angle} to the axis. Bring its end to {near} from the faced end and feed "
            "straight in until the thin end is {small}.",
            angle=ground,
            near=near,
            small=sizes["small"],
        ),
        line("Run slowly and with oil; ease off when it chatters."),
    ]
    return taper_cut(
        turn, cut_id, operation, feature, "taper by form", tool, (position,), {**found, "time": time}, words,
        {"angle": ground, **touched},
    )  # fmt: skip


def gauge_words(feature: FeaturePlan) -> list[Line]:
    """How a taper is tried."""
    return [
        line(
            "Before the last pass try it: blue it and turn it in its socket where there is one. Finished it measures "
            "{large} at the thick end and {small} at the thin one.",
            large=feature.sizes["large"],
            small=feature.sizes["small"],
        )
    ]


def taper_cut(
    turn: Turning,
    cut_id: str,
    operation: Operation,
    feature: FeaturePlan,
    kind: str,
    tool: CutterPlan,
    positions: tuple[Position, ...],
    found: dict[str, Number],
    words: list[Line],
    extra: dict[str, Number],
) -> Cut:
    """The cut with all that is published for it."""
    said, sizes = texts(turn, operation), dict(feature.sizes)
    return Cut(
        cut_id,
        kind,
        feature.name,
        line("Turn {feature}", feature=from_job(feature.name)),
        tool,
        positions,
        {"half angle": sizes["half angle"], "taper length": sizes["length"], "diameter": sizes["small"], **extra},
        found,
        tuple(words),
        why=said["why"],
        check=said["check"],
        caution=said["caution"],
    )


CUTS = {"taper": plan_taper}
