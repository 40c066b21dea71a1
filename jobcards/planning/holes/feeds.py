"""Speed, feed, pecks and turns of a cut on a hole."""

from jobcards.planning import rates
from jobcards.planning.holes.cut import HoleCut
from jobcards.planning.number import Number
from jobcards.planning.work import slug
from jobcards.trade import cutting, drilling, speeds_table, tapping

SINGLE_FEED = ("drill", "spot")


def plan_feed(asked: HoleCut, diameter: Number, speed: Number) -> dict[str, Number]:
    """Feed a turn and a minute, by the kind of cut."""
    if asked.kind == "ream":
        return reaming_feed(asked, diameter, speed)
    if asked.kind == "tap":
        return fed_at(asked, asked.tool.sizes["thread pitch"], speed)
    return rates.drilling_feed(
        asked.work, asked.id, asked.material, diameter, speed, plunged=asked.kind not in SINGLE_FEED
    )


def reaming_feed(asked: HoleCut, diameter: Number, speed: Number) -> dict[str, Number]:
    """A reamer is fed more for each turn than a drill of its size."""
    work = asked.work
    _, _, per_turn = rates.speed_units(work)
    found = speeds_table.drill_feed(asked.material, diameter.value, work.unit)
    drill = work.ledger.given(
        f"table-{slug(asked.material)}-drill-feed-{slug(diameter.id)}",
        found.value,
        per_turn,
        "drill feed a turn",
        found.source,
        formula="from the table",
    )
    turn = work.of(asked.id).rate(
        "feed-a-turn",
        drilling.reamer_feed,
        "feed a turn of the reamer",
        per_turn,
        drill_feed=drill,
        times=work.rule("reamer feed"),
    )
    return fed_at(asked, turn, speed)


def fed_at(asked: HoleCut, turn: Number, speed: Number) -> dict[str, Number]:
    """The feed a minute that goes with a feed a turn."""
    _, per_minute, _ = rates.speed_units(asked.work)
    feed = asked.work.of(asked.id).rate(
        "feed",
        cutting.feed_per_minute,
        "feed down",
        per_minute,
        rpm=speed,
        feed_per_turn=turn,
        show=rates.TENTHS,
    )
    return {"feed a turn": turn, "feed": feed}


def plan_pecks(asked: HoleCut, depth: Number) -> dict[str, Number]:
    """How often a drill is drawn out of a deep hole; nothing for one that is not deep."""
    if asked.kind != "drill":
        return {}
    work, diameter = asked.work, asked.tool.sizes["diameter"]
    first = work.rule("first peck")
    if depth.value <= drilling.peck_depth(diameter.value, first.value) + 1e-9:
        return {}
    # The depths of a peck belong to the drill, the count to the hole.
    of_drill = work.of(f"pecks-{slug(asked.operation.cutter)}")
    deep = of_drill.length("first", drilling.peck_depth, "depth of the first peck", diameter=diameter, times=first)
    each = of_drill.length(
        "each", drilling.peck_depth, "how much deeper each peck goes", diameter=diameter, times=work.rule("later peck")
    )
    count = work.of(asked.id).count("pecks", drilling.peck_count, "pecks", depth=depth, first=deep, each=each)
    return {"first peck": deep, "each peck": each, "pecks": count}


def plan_turns(asked: HoleCut, depth: Number) -> Number:
    """Turns of the tap's handle from its first bite to the depth."""
    return asked.work.of(asked.id).rate(
        "turns",
        tapping.tap_turns,
        "turns of the tap from its first bite",
        "1",
        depth=depth,
        pitch=asked.tool.sizes["thread pitch"],
        show=rates.TENTHS,
    )
