"""Work tilted in the vise: what may be cut on it, how it is set at its angle, and where zero is.

A bevel and a chamfer are then cut level. A square V-groove is cut with the corner of an end mill: at half of square its
end cuts one flank, its side the other.
"""

from collections.abc import Sequence
from dataclasses import replace

from jobcards.definition.job import SetUp
from jobcards.definition.shop_vise import AngleGauge
from jobcards.planning.card import FeaturePlan, HoldPlan, Touch
from jobcards.planning.mill.sine_bar import plan_sine_hold
from jobcards.planning.mill.suits import ANGLE_HAIR
from jobcards.planning.mill.vise import Needs, plan_vise
from jobcards.planning.mill.zero import Zeros
from jobcards.planning.number import HOW_IT_LIES, Number
from jobcards.planning.orientation import Lie, face_place
from jobcards.planning.route import Route
from jobcards.planning.words import Line, line
from jobcards.planning.work import Work, from_shop, slug
from jobcards.trade import angles, locating, side_milling, tilted
from jobcards.trade import milling as sums
from jobcards.trade.setups import FACES

SHAPES = ("bevel", "chamfer", "V-groove")
HAIR = 1e-6


def tilted_features(route: Route, set_up: SetUp) -> list[FeaturePlan]:
    """What is cut on tilted work: every feature of a set-up that has a high end, or a bevel, which needs one."""
    found = [feature for o in set_up.operations if (feature := route.feature(o)) is not None]
    high = set_up.hold is not None and bool(set_up.hold.high_end)
    return found if high else [feature for feature in found if feature.shape == "bevel"]


def tilt_for(work: Work, set_up_id: str, feature: FeaturePlan) -> Number:
    """How far the work is tilted for a feature: its angle from the face; for a V half of what is left of square."""
    if feature.shape != "V-groove":
        return feature.sizes["angle"]
    return work.of(f"{set_up_id}-{slug(feature.name)}").angle(
        "work-tilt", side_milling.flank_from_end, "tilt of the work from level", point=feature.sizes["angle"]
    )


def suits(route: Route, set_up: SetUp, set_up_id: str, lying: Lie, features: Sequence[FeaturePlan]) -> bool:
    """All want the same tilt, lie across it, and fall toward the end that stands high; if not, problems are told."""
    work, hold, before = route.work, set_up.hold, len(route.work.problems)
    assert hold is not None
    first = features[0]
    for feature in features:
        operation = next(o for o in set_up.operations if o.cut == feature.name)
        mark = operation.place("cut")
        if feature.shape == "note":
            continue
        if feature.shape not in SHAPES:
            wrong = f"the work is tilted in this set-up, and “{feature.name}” wants it level"
            work.problem(mark, wrong, "give it a set-up of its own")
            continue
        if feature.enters != hold.up or not hold.high_end:
            continue  # told where it is cut, and where it is held
        if feature.shape == "V-groove" and lying.side(hold.high_end)[0] != cross_machine_axis(lying, feature):
            wrong = f"“{feature.name}” runs along the slope of the tilted work"
            work.problem(mark, wrong, "hold it so that the groove lies across the table")
            continue
        toward = [feature.toward] if feature.shape == "bevel" else list(feature.edges)
        if feature.shape != "V-groove" and toward != [hold.high_end]:
            faces = " and the ".join(toward)
            wrong = f"“{feature.name}” falls toward the {faces}, and the {hold.high_end} stands high"
            instead = f"write high end: {toward[0]}" if len(toward) == 1 else "cut one edge at a time"
            work.problem(hold.place("high_end"), wrong, instead)
            continue
        if first.shape in SHAPES and apart(work, set_up_id, first, feature):
            wrong = f"“{feature.name}” wants another tilt than “{first.name}” in this set-up"
            work.problem(mark, wrong, "give it a set-up of its own")
    return len(work.problems) == before


def cross_machine_axis(lying: Lie, feature: FeaturePlan) -> str:
    """The machine axis of the table that lies across a groove."""
    return "x" if lying.drawing_axis("y") == feature.along else "y"


def apart(work: Work, set_up_id: str, one: FeaturePlan, other: FeaturePlan) -> bool:
    """Whether two features want the work tilted otherwise."""
    tilts = [tilt_for(work, set_up_id, feature).value for feature in (one, other)]
    return abs(tilts[0] - tilts[1]) > ANGLE_HAIR


def plan_tilted_hold(
    route: Route, set_up: SetUp, set_up_id: str, lying: Lie, features: Sequence[FeaturePlan]
) -> HoldPlan | None:
    """On a sine bar, or set against an angle gauge."""
    work, hold = route.work, set_up.hold
    assert hold is not None
    tilt = tilt_for(work, set_up_id, next(f for f in features if f.shape in SHAPES))
    block = work.shop.holding.get(hold.on)
    if not isinstance(block, AngleGauge):
        return plan_sine_hold(work, set_up_id, set_up, lying, route.shape, tilt)
    own = work.shop_angle(f"shop-{slug(hold.on)}.angle", block.angle, "angle of the block")
    if abs(own.value - tilt.value) > ANGLE_HAIR:
        work.problem(
            hold.place("on"),
            f"“{hold.on}” sets the work at {own.shown}°, and it wants {tilt.shown}°",
            "take a block of that angle, or a sine bar",
        )
        return None
    height = work.of(set_up_id).length(
        "tilted-height",
        tilted.tilted_height,
        "lowest corner to highest corner",
        length=lying.along("x"),
        thickness=lying.along("z"),
        angle=own,
    )
    above = max((room_above(work, set_up_id, lying, hold.high_end, f, own) for f in features), key=lambda n: n.value)
    held = plan_vise(
        work,
        set_up_id,
        set_up,
        hold.up,
        hold.against_fixed_jaw,
        hold.against_stop,
        lying,
        height,
        lying.along("y"),
        Needs(above),
    )
    return replace(
        held,
        kind="angle gauge in vise",
        sizes={**held.sizes, "tilt": own},
        high_end=hold.high_end,
        set_by=from_shop(hold.on),
        instructions=tuple(block_words(set_up, held, own)),
    )


def room_above(work: Work, set_up_id: str, lying: Lie, high_end: str, feature: FeaturePlan, tilt: Number) -> Number:
    """What must stand above the jaws, down from the highest corner: the cutter crosses them."""
    of = work.of(f"{set_up_id}-{slug(feature.name)}")
    if feature.shape == "V-groove":
        line_down = of.length(
            "line-down",
            angles.raise_for_flat,
            "highest corner down to the groove's middle line",
            distance=from_face(work, lying, feature, high_end),
            angle=tilt,
        )
        bottom = of.length(
            "bottom-down",
            tilted.groove_bottom_down,
            "down from there to the groove's bottom",
            depth=feature.sizes["depth"],
            tilt=tilt,
        )
        deep = of.length("low", sums.support_height, "highest corner down to the cut", base=line_down, rise=bottom)
    else:
        start = feature.sizes["start" if feature.shape == "bevel" else "size"]
        deep = of.length("low", angles.raise_for_flat, "highest corner down to the cut", distance=start, angle=tilt)
    return of.length("above", sums.support_height, "work wanted above the jaws", base=deep, rise=work.rule("clearance"))


def from_face(work: Work, lying: Lie, feature: FeaturePlan, face: str) -> Number:
    """How far a groove's middle stands from a face at one end of it."""
    centre = feature.sizes["centre"]
    if FACES[face][1] < 0:
        return centre
    return work.of(f"{slug(feature.name)}-from-{slug(face)}").length(
        "centre",
        locating.flipped_position,
        f"{feature.name}: middle, from the {face}",
        length=face_place(work, lying.shape, face),
        position=centre,
    )


def block_words(set_up: SetUp, held: HoldPlan, tilt: Number) -> list[Line]:
    """How the work is set at its angle and gripped."""
    hold = set_up.hold
    assert hold is not None
    said = [
        line(
            "The {up} up, the {jaw} against the fixed jaw, the {high} high: the work stands on its lowest corner.",
            up=hold.up,
            jaw=hold.against_fixed_jaw,
            high=hold.high_end,
        )
    ]
    if hold.against_stop:
        where = "right" if held.stop_side > 0 else "left"
        said.append(
            line("The {stop} is to the {where}, its corner against the stop.", stop=hold.against_stop, where=where)
        )
    if "parallel thickness" in held.sizes:
        said.append(
            line("Under the corner parallels {height} high, one along each jaw.", height=held.sizes["parallel height"])
        )
    said.append(
        line(
            "Lay the {block}, {tilt}, under the work and press the work down on its slope; tighten, check the slope "
            "with a protractor, then take the block out before cutting.",
            block=from_shop(hold.on),
            tilt=tilt,
        )
    )
    said.append(
        line(
            "The jaws grip {grip} up from the corner; {proud} stands above them. Take light cuts, pushing the work "
            "down.",
            grip=held.sizes["grip"],
            proud=held.sizes["proud"],
        )
    )
    return said


def plan_tilted_zero(work: Work, set_up: SetUp, set_up_id: str, lying: Lie, groove: FeaturePlan) -> Zeros | None:
    """The cutter's corner on the scribed middle line of the groove: X and height both read nothing there."""
    hold = set_up.hold
    assert hold is not None
    lines = [zero for zero in set_up.zero if zero.line is not None and zero.measured_from]
    across = [zero for zero in lines if lying.side(zero.measured_from)[0] == "x"]
    wanted = from_face(work, lying, groove, hold.high_end)
    instead = (
        f"set the cutter's corner to the groove's middle line: zero: [{{line: {wanted.shown}, from: {hold.high_end}}}]"
    )
    if len(set_up.zero) != 1 or len(across) != 1:
        mark = set_up.zero[0].mark if set_up.zero else set_up.mark
        work.problem(mark, f"on tilted work zero is found by the middle line of “{groove.name}” alone", instead)
        return None
    asked = across[0]
    assert asked.line is not None
    distance = work.expression(f"{set_up_id}.x-line", asked.line, f"scribed line, from the {asked.measured_from}")
    if abs(distance.value - from_face(work, lying, groove, asked.measured_from).value) > HAIR:
        wrong = f"the line at {distance.shown} from the {asked.measured_from} is not the middle of “{groove.name}”"
        work.problem(asked.place("line"), wrong, instead)
        return None
    nothing = work.ledger.given(f"{set_up_id}.line-reads", 0.0, work.unit, "the scribed line is to read", HOW_IT_LIES)
    side = lying.side(asked.measured_from)[1]
    said = line(
        "Bring the cutter's corner by eye to the groove's middle line on the {up}, {distance} from the {face}, and set "
        "X and the height to {nothing} there. By eye a line is held to about a hair's width.",
        up=hold.up,
        distance=distance,
        face=asked.measured_from,
        nothing=nothing,
    )
    touch = Touch("x", "tilted line", asked.measured_from, side, nothing, None, None, said, distance, hold.up)
    also = line("The knee's height is set at the same touch of the line: depths count down from it.")
    up = Touch("z", "tilted line", asked.measured_from, 1, nothing, None, None, also, distance, hold.up)
    return Zeros({"x": groove.sizes["centre"]}, (touch, up), hold.against_fixed_jaw, hold.against_stop)
