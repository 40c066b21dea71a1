"""One operation on a hole, worked out."""

from jobcards.planning import rates
from jobcards.planning.card import Cut
from jobcards.planning.holes import checks, feeds, words
from jobcards.planning.holes.boring import bore_passes, bore_words
from jobcards.planning.holes.cut import KIND_BY_CUTTER, KIND_BY_HAND, TITLES, HoleCut, hole_under
from jobcards.planning.holes.depths import Depth, cut_depth
from jobcards.planning.number import Number
from jobcards.planning.words import Line, line
from jobcards.planning.work import from_job


def plan_hole(asked: HoleCut) -> Cut | None:
    """One operation on a hole: where, how deep, how fast, with what to look out for."""
    work, feature, tool = asked.work, asked.feature, asked.tool
    kind = asked.kind
    if not kind or ("diameter" not in tool.sizes and kind != "bore"):
        where = "by hand" if asked.by_hand else "here"
        kinds = KIND_BY_HAND if asked.by_hand else KIND_BY_CUTTER
        instead = f"take a {', '.join(kinds)}"
        if not asked.by_hand and asked.cutter.kind in KIND_BY_HAND:
            where, instead = "in a machine", "use it in a set-up at the bench, machine: bench, after this one"
        asked.problem(f"“{asked.operation.cutter}” does not make a hole {where}", instead)
        return None
    diameter = feature.sizes["diameter"] if kind == "bore" else tool.sizes["diameter"]
    before = len(work.problems)
    checks.check_kind(asked)
    checks.check_diameter(asked, diameter)
    checks.check_pilot(asked)
    if len(work.problems) > before:
        return None
    depth = cut_depth(asked)
    checks.check_reach(work, asked.operation, tool, depth.tip)
    said, sizes, caution = own_words(asked)
    sizes = {"diameter": diameter, "depth": depth.tip, **({"full depth": depth.full} if depth.full else {}), **sizes}
    found, bored = hole_rates(asked, diameter, depth)
    sizes.update({f"pass {index}": number for index, number in enumerate(bored, start=1)})
    steps = [
        *(bore_words(bored, feature) if bored else []),
        *said,
        *words.peck_words(found),
        *words.depth_words(asked, depth, hole_under(asked.route, feature)),
    ]
    if kind in ("tap", "hand tap"):
        steps += words.tap_words(asked, feeds.plan_turns(asked, depth.tip), depth.through)
    if kind != "spot":
        asked.route.opened[feature.name] = diameter
    return Cut(
        asked.id,
        kind,
        feature.name,
        line(TITLES[kind], feature=from_job(feature.name)),
        tool,
        asked.positions,
        sizes,
        found,
        tuple(steps),
        asked.text("why"),
        asked.text("check"),
        (*asked.text("caution"), *caution),
        rough=asked.operation.rough,
        through=depth.through,
    )


def own_words(asked: HoleCut) -> tuple[list[Line], dict[str, Number], Line]:
    """What is said of one kind of cut only, with its sizes and its caution."""
    if asked.feature.shape == "tapped hole" and asked.kind == "drill":
        percent = checks.check_tap_drill(asked)
        if percent is not None:
            return words.percent_words(asked, percent), {"percent": percent}, words.tough_words(asked, percent)
    if asked.kind in ("ream", "hand ream"):
        left = checks.check_reaming(asked)
        if left is not None:
            return words.reaming_words(asked, left), {"left": left}, ()
    return [], {}, ()


def hole_rates(asked: HoleCut, diameter: Number, depth: Depth) -> tuple[dict[str, Number], list[Number]]:
    """Speed, feed, pecks and time, and the passes of a boring head; by hand only the time.

    A tap in a blind hole has to be stopped in time by whoever stands there, so it turns at the slowest step.
    """
    work = asked.work
    if asked.by_hand:
        return {"time": rates.time_by_rule(work, asked.id, "hand time")}, []
    blind_tap = asked.kind == "tap" and not depth.through
    speeds = asked.speed(asked.feature.sizes["diameter"] if asked.kind == "countersink" else diameter, blind_tap)
    feed = feeds.plan_feed(asked, diameter, speeds["speed"])
    rounds = work.ledger.counted(f"{asked.id}.count", len(asked.positions), "positions", "the job's definition")
    bored: list[Number] = []
    if asked.kind == "bore":
        bored = bore_passes(work, asked.id, asked.route.part, diameter, asked.before)
        rounds = work.ledger.counted(f"{asked.id}.rounds", len(bored), "passes")
        speeds["passes"] = rounds
    time = rates.feed_time(work, asked.id, depth.tip, feed["feed"], rounds)
    return {**speeds, **feed, **feeds.plan_pecks(asked, depth.tip), "time": time}, bored
