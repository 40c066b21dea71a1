"""A block clamped to the upright face of an angle plate: what stands above it, where clamps can go, what trues it."""

from collections.abc import Iterator

from jobcards.definition.job import SetUp
from jobcards.definition.shop_clamping import AnglePlate, TableClamps
from jobcards.planning.card import ClampPlan, HoldPlan
from jobcards.planning.mill.clamp_words import clamp_words
from jobcards.planning.mill.clamped import check_number, clamp_places, heel_of, in_job, packing_for, strap_sizes
from jobcards.planning.mill.vise import Needs
from jobcards.planning.mill.zero import OPPOSITE
from jobcards.planning.number import Number
from jobcards.planning.orientation import Lie
from jobcards.planning.words import Line, line
from jobcards.planning.work import Work, from_shop, slug
from jobcards.trade import clamping

TINY = 1e-9
OWN = {"plate width": "width", "plate height": "height", "plate depth": "depth", "plate thickness": "thickness"}


def plan_on_plate(work: Work, hold_id: str, set_up: SetUp, lying: Lie, needs: Needs) -> HoldPlan | None:
    """A block against an angle plate, standing on the table or on what lies there."""
    hold = set_up.hold
    assert hold is not None
    plate = work.shop.holding.get(hold.holder)
    assert isinstance(plate, AnglePlate)
    sizes = work.shop_lengths(f"shop-{slug(hold.holder)}", plate, OWN)
    straps = straps_for(work, lying.along("x").value, sizes["plate width"].value)
    if straps is None:
        work.problem(hold.place("clamps"), "the shop has no strap clamps", "add table clamps to the shop file")
        return None
    sizes.update(strap_sizes(work, hold_id, straps[0], straps[1]))
    nothing = work.ledger.given("on-the-table", 0.0, work.unit, "work lying on the table", "how this set-up lies")
    above = needs.above.value if needs.above is not None else 0.0
    lift = sizes["plate height"].value + above - lying.along("z").value
    sizes.update(packing_for(work, set_up, needs, None, lift) or {"parallel height": nothing})
    sizes["proud"] = work.of(hold_id).length(
        "proud",
        clamping.above_plate,
        "work standing above the angle plate",
        seat=sizes["parallel height"],
        work=lying.along("z"),
        plate=sizes["plate height"],
    )
    base = OPPOSITE[hold.against]
    clamps = clamp_places(work, hold_id, set_up, lying.shape, base)
    heel_of(work, hold_id, set_up, sizes, lying.along("y"))
    check_number(work, set_up, straps[1])
    check_stands(work, set_up, lying, sizes, needs)
    check_heels(work, hold_id, set_up, lying, sizes)
    check_studs(set_up, lying, clamps, sizes, work)
    words = [*plate_words(work, set_up, sizes), *clamp_words(clamps, base, sizes, on_plate=True)]
    return HoldPlan(
        "angle plate", from_shop(hold.holder), sizes, hold.up, hold.against, instructions=tuple(words), clamps=clamps
    )


def straps_for(work: Work, across: float, plate: float) -> tuple[str, TableClamps] | None:
    """The first strap clamps whose heels stand on the plate beside the work; the first of all where none do."""
    sets = [(name, thing) for name, thing in work.shop.holding.items() if isinstance(thing, TableClamps)]
    fitting = (
        (name, straps)
        for name, straps in sets
        if clamping.between_heels(
            across, in_job(work, straps.length), in_job(work, straps.reach), in_job(work, straps.width)
        )
        <= plate + TINY
    )
    return next(fitting, sets[0] if sets else None)


def check_stands(work: Work, set_up: SetUp, lying: Lie, sizes: dict[str, Number], needs: Needs) -> None:
    """Enough stands above the plate for the cutter, no more than half of the work, and there is room below."""
    hold = set_up.hold
    assert hold is not None
    proud, tall = sizes["proud"], lying.along("z")
    if needs.above is not None and proud.value < needs.above.value - TINY:
        work.problem(
            hold.place("on"),
            f"the work stands {proud.shown} above the angle plate, and cutter and tip want {needs.above.shown}",
            "write on: packing, high enough, or take a lower plate",
        )
    if proud.value > tall.value / 2 + TINY:
        work.problem(
            hold.place("holder"),
            f"{proud.shown} of {tall.shown} would stand above the angle plate: more than half",
            "take a higher plate, or hold the work another way",
        )
    if needs.below is not None and sizes["parallel height"].value < needs.below.value - TINY:
        work.problem(
            hold.place("on"),
            f"a cutter that comes through wants {needs.below.shown} below the work, and the table is there",
            "write on: packing, as high as that",
        )


def check_heels(work: Work, hold_id: str, set_up: SetUp, lying: Lie, sizes: dict[str, Number]) -> None:
    """The plate is wide enough for a clamp on both sides: a heel block beyond its edge would stand on air."""
    hold = set_up.hold
    assert hold is not None
    wanted = work.of(hold_id).length(
        "plate-wanted",
        clamping.between_heels,
        "width of plate wanted",
        work=lying.along("x"),
        length=sizes["clamp length"],
        reach=sizes["reach"],
        heel=sizes["clamp width"],
    )
    if wanted.value > sizes["plate width"].value + TINY:
        work.problem(
            hold.place("holder"),
            f"with a clamp on each side the work wants {wanted.shown} of plate, and it is "
            f"{sizes['plate width'].shown}: the heels would stand on air",
            "clamp it to the table, or take a wider plate or shorter straps",
        )


def check_studs(set_up: SetUp, lying: Lie, clamps: tuple[ClampPlan, ...], sizes: dict[str, Number], work: Work) -> None:
    """Every stud goes through the plate's upright, above its foot."""
    hold = set_up.hold
    assert hold is not None
    low = sizes["plate thickness"].value + sizes["stud"].value / 2
    high = sizes["plate height"].value - sizes["stud"].value / 2
    tall, seat = lying.along("z").value, sizes["parallel height"].value
    for asked, clamp in zip(hold.clamps, clamps, strict=True):
        at = seat + (clamp.at.value if lying.sign("z") > 0 else tall - clamp.at.value)
        if not low - TINY <= at <= high + TINY:
            work.problem(
                asked.mark,
                f"the stud of the clamp over the {clamp.over} finds no slot: it would stand "
                f"{'in the foot' if at < low else 'above the upright'} of the angle plate",
                "write at: a place farther from there",
            )


def plate_words(work: Work, set_up: SetUp, sizes: dict[str, Number]) -> Iterator[Line]:
    """How plate and work are set up and trued."""
    hold = set_up.hold
    assert hold is not None
    true = work.rule("edge trued")
    yield line(
        "The {plate} on the table, its upright face toward you: sweep an indicator in the spindle along the face until "
        "it reads the same from side to side within {true}, bolt it down and sweep again. Then run it up the face: "
        "a plate out of upright by more than that is shimmed under its foot.",
        plate=from_shop(hold.holder),
        true=true,
    )
    if "parallel thickness" in sizes:
        yield line(
            "The {against} against the plate, the {up} up, standing on two pieces {height} high and {thickness} broad.",
            against=hold.against,
            up=hold.up,
            height=sizes["parallel height"],
            thickness=sizes["parallel thickness"],
        )
    else:
        yield line(
            "Wipe plate and table. The {against} against the plate, the {up} up, standing on the table.",
            against=hold.against,
            up=hold.up,
        )
    yield line(
        "Nip the clamps; run the indicator up a side of the work, clear of the clamps, and tap it until it stands "
        "upright within {true}.",
        true=true,
    )
    if sizes["proud"].value > 0:
        yield line("It stands {proud} above the plate.", proud=sizes["proud"])
