"""Speed, feed, passes and time of an operation, from the material, the cutter and the machine's own steps."""

from jobcards.definition import shop as kit
from jobcards.planning.card import CutterPlan
from jobcards.planning.number import WHOLE, Number, Show
from jobcards.planning.taps import tap_sizes
from jobcards.planning.words import Line, line
from jobcards.planning.work import Work, from_shop, slug
from jobcards.trade import cutting, milling, speeds_table, times

LENGTHS = {
    "diameter": "diameter",
    "flute length": "flute_length",
    "pilot": "pilot",
    "nose radius": "nose_radius",
    "width": "width",
    "flat": "flat",
    "reach": "reach",
    "neck": "neck",
    "tip": "tip",
    "smallest": "smallest",
    "largest": "largest",
    "radius": "radius",
    "ridges": "pitch",
}
TENTHS = Show(places=1)
HAIR = 1e-3


def speed_units(work: Work) -> tuple[str, str, str]:
    """Units of cutting speed, feed a minute and feed a turn in this job."""
    return ("ft/min", "in/min", "in/rev") if work.unit == "in" else ("m/min", "mm/min", "mm/rev")


def plan_cutter(work: Work, name: str, cutter: kit.Cutter) -> CutterPlan:
    """A cutter of the shop as numbers."""
    prefix = f"shop-{slug(name)}"
    sizes = work.shop_lengths(prefix, cutter, LENGTHS)
    if cutter.point is not None:
        sizes["point"] = work.shop_angle(f"{prefix}.point", cutter.point, "point angle")
    if cutter.angle is not None:
        sizes["flank angle"] = work.shop_angle(f"{prefix}.angle", cutter.angle, "flank from the cutter's end")
    sizes["teeth"] = work.ledger.given(
        f"{prefix}.teeth", float(cutter.teeth), "1", "teeth", "the shop file", formula="as there is", show=WHOLE
    )
    sizes.update(tap_sizes(work, prefix, name, cutter))
    return CutterPlan(from_shop(name), cutter.kind, sizes)


def spindle_speed(
    work: Work,
    cut_id: str,
    material: str,
    cutter: kit.Cutter,
    operation: str,
    diameter: Number,
    steps: list[float],
    machine: str,
    slowest: bool = False,
) -> dict[str, Number]:
    """Cutting speed, the speed it asks for at a diameter, and the machine's step not above it, or its slowest."""
    per_minute, _, _ = speed_units(work)
    found = speeds_table.cutting_speed(material, cutter.material, operation, per_minute)
    table_id = f"table-{slug(material)}-{slug(cutter.material)}-{slug(operation)}"
    speed = work.looked_up(table_id, found, f"cutting speed, {operation}", WHOLE)
    formula = cutting.spindle_speed_inch if work.unit == "in" else cutting.spindle_speed_metric
    wanted = work.of(cut_id).rate(
        "wanted", formula, "spindle speed asked for", "rpm", cutting_speed=speed, diameter=diameter, show=WHOLE
    )
    step = work.ledger.given(
        f"{cut_id}.rpm",
        min(steps) if slowest else cutting.lower_step(steps, wanted.value),
        "rpm",
        "spindle speed: the machine's slowest step" if slowest else "spindle speed: the machine's step not above it",
        f"the shop file, {machine}",
        formula="the slowest step of the spindle" if slowest else "the nearest lower step of the spindle",
        inputs=(wanted.id,),
        show=WHOLE,
    )
    if step.value > wanted.value * (1 + HAIR):
        slow = line(
            "{machine}: its slowest step, {step}, is faster than the {wanted} asked for with {size} across. Feed "
            "gently with plenty of oil and watch the edge, or take a slower machine.",
            machine=from_shop(machine),
            step=step,
            wanted=wanted,
            size=diameter,
        )
        work.warnings += [] if slow in work.warnings else [slow]
    return {"cutting speed": speed, "wanted speed": wanted, "speed": step}


def milling_feed(work: Work, cut_id: str, material: str, cutter: CutterPlan, speed: Number) -> dict[str, Number]:
    """Chip load and table feed of an end mill."""
    found = speeds_table.chip_load(material, cutter.kind, cutter.sizes["diameter"].value, work.unit)
    load = work.looked_up(f"table-{slug(material)}-chip-load-{slug(cutter.name.text)}", found, "feed for each tooth")
    _, per_minute, _ = speed_units(work)
    feed = work.of(cut_id).rate(
        "feed", cutting.table_feed, "table feed", per_minute, rpm=speed, teeth=cutter.sizes["teeth"], chip_load=load
    )
    return {"chip load": load, "feed": feed}


def drilling_feed(
    work: Work, cut_id: str, material: str, diameter: Number, speed: Number, plunged: bool = False
) -> dict[str, Number]:
    """Feed a turn and a minute of a drill; an end mill fed straight down takes a part of it."""
    _, per_minute, per_turn = speed_units(work)
    found = speeds_table.drill_feed(material, diameter.value, work.unit)
    turn = work.ledger.given(
        f"table-{slug(material)}-drill-feed-{slug(diameter.id)}",
        found.value,
        per_turn,
        "drill feed a turn",
        found.source,
        formula="from the table",
    )
    if plunged:
        turn = work.of(cut_id).rate(
            "feed-a-turn",
            cutting.reduced_speed,
            "feed a turn straight down",
            per_turn,
            cutting_speed=turn,
            factor=work.rule("plunge feed"),
        )
    feed = work.of(cut_id).rate(
        "feed", cutting.feed_per_minute, "feed down", per_minute, rpm=speed, feed_per_turn=turn, show=TENTHS
    )
    return {"feed a turn": turn, "feed": feed}


def lathe_feed(work: Work, cut_id: str, material: str, operation: str, stage: str, speed: Number) -> dict[str, Number]:
    """Feed a turn and a minute on the lathe."""
    _, per_minute, per_turn = speed_units(work)
    found = speeds_table.turning_feed(material, operation, stage, work.unit)
    turn = work.ledger.given(
        f"table-{slug(material)}-{operation}-{stage}",
        found.value,
        per_turn,
        f"feed a turn, {operation}, {stage}",
        found.source,
        formula="from the table",
    )
    feed = work.of(cut_id).rate(
        "feed", cutting.feed_per_minute, "feed", per_minute, rpm=speed, feed_per_turn=turn, show=TENTHS
    )
    return {"feed a turn": turn, "feed": feed}


def deepest_pass(work: Work, material: str, operation: str, stage: str, diameter: Number | None) -> Number:
    """The deepest pass of the table for an operation."""
    found = speeds_table.depth_of_cut(material, operation, stage, work.unit, diameter.value if diameter else 0.0)
    by = f"-{slug(diameter.id)}" if diameter else ""
    return work.looked_up(
        f"table-{slug(material)}-depth-{slug(operation)}-{stage}{by}", found, f"deepest pass, {operation}, {stage}"
    )


def plan_strokes(work: Work, cut_id: str, total: Number, widest: Number) -> Number:
    """How many strokes side by side cover a width."""
    return work.of(cut_id).count("strokes", cutting.passes, "strokes side by side", total=total, depth=widest)


def plan_depths(
    work: Work, cut_id: str, material: str, total: Number, operation: str, diameter: Number | None
) -> dict[str, Number]:
    """Roughing passes and a light last one: how many, how deep, and all passes together."""
    deepest = deepest_pass(work, material, operation, "roughing", diameter)
    light = deepest_pass(work, material, operation, "finishing", None)
    if total.value <= 2 * light.value + 1e-9:
        why = "no more than two light passes deep"
        one = work.ledger.counted(f"{cut_id}.all-passes", 1, "passes in all", formula=why, inputs=(total.id, light.id))
        return {"last pass": total, "all passes": one}
    rest = work.of(cut_id).length(
        "rough", milling.left_to_take, "to take before the last pass", full=total, taken=light
    )
    found = plan_passes(work, cut_id, rest, deepest)
    every = work.of(cut_id).count("all-passes", cutting.passes_with_light_one, "passes in all", passes=found["passes"])
    return {**found, "last pass": light, "all passes": every}


def plan_through(
    work: Work, cut_id: str, material: str, total: Number, operation: str, diameter: Number
) -> dict[str, Number]:
    """Passes alike, the last one out below the work: a light one would cut nothing but air there."""
    found = plan_passes(work, cut_id, total, deepest_pass(work, material, operation, "roughing", diameter))
    every = work.ledger.same(f"{cut_id}.all-passes", found["passes"], "passes in all", "all passes alike", WHOLE)
    return {**found, "all passes": every}


def depth_words(found: dict[str, Number]) -> Line:
    """The passes in words."""
    if "passes" not in found:
        return line("One pass.")
    if "last pass" not in found:
        if found["passes"].value == 1:
            return line("One pass, out below the work.")
        return line(
            "{count} passes of {each}; the last comes out below the work.",
            count=found["passes"],
            each=found["pass depth"],
        )
    if found["passes"].value == 1:
        return line(
            "One pass of {each}, then a light one of {last}.", each=found["pass depth"], last=found["last pass"]
        )
    return line(
        "{count} passes of {each}, then a light one of {last}.",
        count=found["passes"],
        each=found["pass depth"],
        last=found["last pass"],
    )


def plan_passes(work: Work, cut_id: str, total: Number, deepest: Number) -> dict[str, Number]:
    """How many passes, and how deep each is."""
    count = work.of(cut_id).count("passes", cutting.passes, "passes", total=total, depth=deepest)
    each = work.of(cut_id).length("pass-depth", cutting.pass_depth, "depth of each pass", total=total, count=count)
    return {"passes": count, "pass depth": each}


def time_by_rule(work: Work, cut_id: str, rule: str) -> Number:
    """A time that a rule of practice says as a whole."""
    return work.ledger.same(f"{cut_id}.time", work.rule(rule), "time", rule, WHOLE)


def feed_time(work: Work, cut_id: str, length: Number, feed: Number, rounds: Number | None) -> Number:
    """Time to feed a length, once for each round, with the going back."""
    return work.of(cut_id).time(
        times.time_of_cut,
        show=TENTHS,
        rounds=rounds or work.ledger.counted("once", 1, "the feed runs once"),
        length=length,
        feed=feed,
        handling=work.rule("handling"),
        change=work.rule("tool change time"),
    )


def grinding_time(work: Work, cut_id: str, passes: Number) -> Number:
    """Time to grind a face or a diameter in so many passes."""
    each, handling = work.rule("grinding pass time"), work.rule("handling")
    return work.of(cut_id).time(times.grinding_time, passes=passes, each=each, handling=handling)
