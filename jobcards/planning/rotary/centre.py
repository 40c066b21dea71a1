"""What stands over a rotary table's axis, and how it comes there: a bore swept or plugged, or two edges touched."""

from collections.abc import Iterator

from jobcards.definition.job import SetUp
from jobcards.definition.shop_dividing import RotaryTable
from jobcards.planning.card import FeaturePlan, Touch
from jobcards.planning.mill.zero import tip_of, where
from jobcards.planning.number import Number, Show
from jobcards.planning.orientation import Lie, face_place, reading
from jobcards.planning.round_work.zero import swung_touches
from jobcards.planning.route import Route
from jobcards.planning.words import Line, line
from jobcards.planning.work import Work, from_job, from_shop, slug
from jobcards.trade import locating
from jobcards.trade.setups import FACES

Centre = dict[str, Number]  # the place on the drawing, by the two axes of the face that is up
ALONG_TABLE = ("x", "y")


def find_centre(route: Route, set_up: SetUp, lying: Lie) -> tuple[FeaturePlan, Centre] | None:
    """The feature that stands over the axis and the place of its middle; what has none is a problem."""
    work, hold = route.work, set_up.hold
    assert hold is not None
    feature = next((f for f in route.shape.features if f.name == hold.centre), None)
    mark = hold.place("centre")
    if feature is None:
        work.problem(mark, f"“{hold.centre}” is not a feature of this part", "name one with a middle: a hole, a circle")
        return None
    middle = middle_of(feature)
    if middle is None or FACES[feature.enters][0] != FACES[hold.up][0]:
        work.problem(
            mark,
            f"“{feature.name}” has no one middle seen from the {hold.up}",
            "name a hole, a circle of holes or a round end of that face",
        )
        return None
    return feature, middle


def middle_of(feature: FeaturePlan) -> Centre | None:
    """The middle of a circle of holes, of a single hole or of a round end."""
    if "circle" in feature.sizes:
        return {name.removeprefix("centre "): n for name, n in feature.sizes.items() if name.startswith("centre ")}
    return dict(feature.places[0]) if len(feature.places) == 1 else None


def table_zero(work: Work, zero_id: str) -> list[Touch]:
    """The spindle over the table's axis, found in the hole in its middle before the work is laid on."""
    words = {
        "x": "Before the work is laid on: swing an indicator in the spindle round the hole in the table's middle and "
        "move the machine's table until it reads the same all round; set {axis} to {preset}.",
        "y": "At the same place set {axis} to {preset}. The table's axis is then zero both ways.",
    }
    return [touch for touch, _ in swung_touches(work, zero_id, words)]


def centring(
    route: Route, set_up: SetUp, set_up_id: str, lying: Lie, feature: FeaturePlan, centre: Centre, step: float
) -> tuple[list[Touch], list[Line], dict[str, Number]]:
    """Touches, words and sizes of the way in which the work is centred."""
    work, hold = route.work, set_up.hold
    assert hold is not None
    if hold.centred_by == "edges":
        touches = list(edges_placed(work, set_up, set_up_id, lying, centre, step))
        said = line(
            "Touch the two edges at the readings below: tap the work there until the finder tips just at them, true it "
            "again, and look at both once more. The centre of {feature} then stands over the axis.",
            feature=from_job(feature.name),
        )
        return touches, [said], {}
    if not single_hole(route, set_up, feature):
        return [], [], {}
    bore = feature.sizes["diameter"]
    if hold.centred_by == "indicator":
        said = line(
            "Swing the indicator in {feature}, {bore} across, and tap the work, not the machine's table, until it "
            "reads the same all round within {true}. Turn the rotary table once round: it must still read the same.",
            feature=from_job(feature.name),
            bore=bore,
            true=work.rule("edge trued"),
        )
        return [], [said], {"centred on": bore}
    return [], *plugged(work, set_up, feature, bore)


def single_hole(route: Route, set_up: SetUp, feature: FeaturePlan) -> bool:
    """A bore that is there already can be swept or plugged."""
    work, hold = route.work, set_up.hold
    assert hold is not None
    mark = hold.place("centred_by" if "centred_by" in hold.marks else "centre")
    if "circle" in feature.sizes or feature.shape not in ("hole", "counterbore"):
        work.problem(mark, f"there is nothing to sweep in the middle of “{feature.name}”", "write centred by: edges")
        return False
    if feature.name not in route.opened:
        work.problem(mark, f"“{feature.name}” is not there yet", "bore it before, or write centred by: edges")
        return False
    return True


def plugged(work: Work, set_up: SetUp, feature: FeaturePlan, bore: Number) -> tuple[list[Line], dict[str, Number]]:
    """A plug that fits the table's hole and the bore."""
    hold = set_up.hold
    assert hold is not None
    table = work.shop.holding[hold.holder]
    assert isinstance(table, RotaryTable)
    if table.centre_hole is None:
        work.problem(
            hold.place("centred_by"),
            f"the shop file does not tell the hole in the middle of the {hold.holder}",
            "write centre hole: there, or sweep the bore with an indicator",
        )
        return [], {}
    hole = work.shop_length(f"shop-{slug(hold.holder)}.centre-hole", table.centre_hole, "hole in the table's middle")
    if any(operation.cut == feature.name for operation in set_up.operations):
        work.problem(
            hold.place("centred_by"),
            f"the plug stands in “{feature.name}” while it is cut",
            "write centred by: indicator",
        )
    said = line(
        "A plug that fits the hole in the table's middle, {hole}, and {feature}, {bore}, without shake: set the work "
        "down on it. It stands no higher than the middle of the work's thickness. What it shakes is the error.",
        hole=hole,
        feature=from_job(feature.name),
        bore=bore,
    )
    return [said], {"centred on": bore, "table hole": hole}


def edges_placed(work: Work, set_up: SetUp, set_up_id: str, lying: Lie, centre: Centre, step: float) -> Iterator[Touch]:
    """The left and the near edge, each with the reading at which the finder must just touch it."""
    tip = tip_of(work)
    if tip is None:
        work.problem(set_up.mark, "the shop has no edge finder", "add one to the shop file")
        return
    taken = {clamp.over for clamp in set_up.hold.clamps} if set_up.hold is not None else set()
    for axis in ALONG_TABLE:
        faces = [face for face in FACES if lying.side(face)[0] == axis]
        face = min(faces, key=lambda face: (face in taken, lying.side(face)[1]))
        side = lying.side(face)[1]
        edge = reading(
            work,
            f"{set_up_id}.{axis}-edge-stands",
            f"reading {axis.upper()} of the {face}",
            lying,
            axis,
            face_place(work, lying.shape, face),
            centre[lying.drawing_axis(axis)],
            step,
        )
        preset = work.of(set_up_id).length(
            f"{axis}-preset",
            locating.preset_at_touch,
            f"readout {axis.upper()} while the tip touches the {face}",
            edge=edge,
            tip=tip[1],
            side=side,
            show=Show(step=step),
        )
        said = line(
            "Bring {axis} to {preset} and tap the work until its {face} just touches the {finder} on the {where}: half "
            "of the tip, {tip}, and the edge {edge} from the axis.",
            axis=axis.upper(),
            preset=preset,
            face=face,
            finder=from_shop(tip[0]),
            where=where(axis, side),
            tip=tip[1],
            edge=edge,
        )
        yield Touch(axis, "placed", face, side, preset, from_shop(tip[0]), tip[1], said)
