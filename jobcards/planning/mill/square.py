"""A sawn blank milled square on all its faces: the hold of each face, and how much comes off."""

from collections.abc import Mapping

from jobcards.definition import shop as kit
from jobcards.definition.job import Part, SetUp, SquareUp
from jobcards.planning import rates
from jobcards.planning.card import BlankPlan, Cut, CutterPlan, HoldPlan, SetUpPlan, ShapePlan
from jobcards.planning.grind import size_to_leave
from jobcards.planning.mill.vise import Needs, plan_vise
from jobcards.planning.mill.zero import OPPOSITE
from jobcards.planning.number import Number
from jobcards.planning.orientation import Lie, lie
from jobcards.planning.route import Route, finished
from jobcards.planning.shapes import AXES, BLOCK
from jobcards.planning.stock import ACROSS
from jobcards.planning.words import Line, Words, line
from jobcards.planning.work import Work, slug
from jobcards.trade import cutting, milling, setups
from jobcards.trade.setups import FACES

TINY = 1e-9


def plan_squaring(
    work: Work,
    set_up_id: str,
    set_up: SetUp,
    part: Part,
    shape: ShapePlan,
    blank: BlankPlan,
    steps: list[float],
    ground: Mapping[str, Number],
) -> tuple[Cut, ...]:
    """One cut for each face in the order given, each with its own hold."""
    assert set_up.square_up is not None
    done: list[str] = []
    off: dict[str, Number] = {}
    cuts: list[Cut] = []
    for face in set_up.square_up.order:
        cut_id = f"{set_up_id}-{slug(face)}"
        end = FACES[face][0] == 0
        name = set_up.square_up.end_cutter if end and set_up.square_up.end_cutter else set_up.square_up.cutter
        cutter = work.shop.cutters[name]
        tool = rates.plan_cutter(work, name, cutter)
        up, jaw = held_for(face, done, end, shape)
        lying = lie(up, jaw, shape)
        second = OPPOSITE[face] in done
        sizes = {"leave": size_to_leave(work, cut_id, shape, face, ground)} if second else {}
        sizes["take off"] = taken_off(work, cut_id, face, blank, ground.get(face))
        sizes.update({"for grinding": ground[face]} if face in ground else {})
        hold = hold_for(work, cut_id, set_up, up, jaw, lying, off, shape, blank, sizes["take off"], end)
        if end:
            check_flutes(work, set_up.square_up, tool, lying)
        cuts.append(
            face_cut(
                work, cut_id, part, face, end, second, tool, cutter, sizes, lying, hold, done, steps, set_up.machine
            )
        )
        done.append(face)
        off[face] = sizes["take off"]
    return tuple(cuts)


def held_for(face: str, done: list[str], end: bool, shape: ShapePlan) -> tuple[str, str]:
    """Which face is up and which is against the fixed jaw: a finished face goes to the jaw, and under the work.

    For its ends the block lies flat, so that the side of the cutter reaches down over them.
    """
    if end:
        flat = [f for f in ("back", "front") if f in done] or ["back"]
        side = [f for f in ("bottom", "top") if f in done] or ["bottom"]
        lower, upright = (flat, side) if shape.sizes["thickness"].value <= shape.sizes["height"].value else (side, flat)
        return OPPOSITE[lower[0]], upright[0]
    square = [f for f in ("front", "back", "bottom", "top") if FACES[f][0] != FACES[face][0]]
    finished = [f for f in square if f in done]
    return face, (finished or square)[0]


def check_flutes(work: Work, asked: SquareUp, tool: CutterPlan, lying: Lie) -> None:
    """The side of the cutter reaches down over the whole end."""
    high, flutes = lying.along("z"), tool.sizes.get("flute length")
    if flutes is None or flutes.value >= high.value - TINY:
        return
    mark = asked.place("end_cutter" if asked.end_cutter else "cutter")
    if any(problem.mark == mark for problem in work.problems):
        return
    work.problem(
        mark,
        f"the ends are {high.shown} high as they are cut, and the {tool.name.text} has flutes {flutes.shown} long",
        "write ends with: and a cutter with longer flutes",
    )


def taken_off(work: Work, cut_id: str, face: str, blank: BlankPlan, ground: Number | None) -> Number:
    """How much metal stands outside the finished face, less what is left there for grinding."""
    outside = outside_of(work, cut_id, face, blank)
    if ground is None:
        return outside
    return work.of(cut_id).length(
        "mill-off", milling.left_to_take, f"to mill off the {face}, with metal left for grinding",
        full=outside, taken=ground,
    )  # fmt: skip


def outside_of(work: Work, cut_id: str, face: str, blank: BlankPlan) -> Number:
    """How much metal stands outside the finished face."""
    axis, end = FACES[face]
    outside = blank.outside[{0: "left end", 1: "bottom", 2: "back"}[axis]]
    if end < 0:
        return outside
    full = blank.outside[f"whole {AXES[axis]}"]
    return work.of(cut_id).length("take-off", milling.left_to_take, f"to take off the {face}", full=full, taken=outside)


def across(
    work: Work, cut_id: str, lying: Lie, axis: str, off: Mapping[str, Number], shape: ShapePlan, blank: BlankPlan
) -> Number:
    """The work's size along a machine axis as it is now: the blank's, less what is off one face, or finished."""
    drawing = lying.drawing_axis(axis)
    name = BLOCK[AXES.index(drawing)]
    pair = [face for face, (number, _) in FACES.items() if AXES[number] == drawing]
    milled = [face for face in pair if face in off]
    if len(milled) == 2:
        return shape.sizes[name]
    if not milled:
        return blank.sizes[ACROSS[name]]
    full = blank.sizes[ACROSS[name]]
    return work.of(cut_id).length(
        f"{name}-now", milling.left_to_take, f"{name} as it is now", full=full, taken=off[milled[0]]
    )


def hold_for(
    work: Work,
    cut_id: str,
    set_up: SetUp,
    up: str,
    jaw: str,
    lying: Lie,
    done: Mapping[str, Number],
    shape: ShapePlan,
    blank: BlankPlan,
    off: Number,
    end: bool,
) -> HoldPlan:
    """The vise, with the parallels that keep the cutter clear of the jaws."""
    clear = work.rule("clearance")
    above = (
        clear
        if end
        else work.of(cut_id).length("above", milling.support_height, "work wanted above the jaws", base=off, rise=clear)
    )
    height = across(work, cut_id, lying, "z", done, shape, blank)
    opening = across(work, cut_id, lying, "y", done, shape, blank)
    return plan_vise(work, cut_id, set_up, up, jaw, "", lying, height, opening, Needs(above=above))


def face_cut(
    work: Work,
    cut_id: str,
    part: Part,
    face: str,
    end: bool,
    second: bool,
    tool: CutterPlan,
    cutter: kit.Cutter,
    sizes: dict[str, Number],
    lying: Lie,
    hold: HoldPlan,
    done: list[str],
    steps: list[float],
    machine: str,
) -> Cut:
    """One face: how much comes off or what size it comes to, in passes."""
    operation = "side milling" if end else "face milling"
    speeds = rates.spindle_speed(work, cut_id, part.material, cutter, "milling", tool.sizes["diameter"], steps, machine)
    feeds = rates.milling_feed(work, cut_id, part.material, tool, speeds["speed"])
    passes = rates.plan_depths(
        work, cut_id, part.material, sizes["take off"], operation, tool.sizes["diameter"] if end else None
    )
    run = work.of(cut_id).length(
        "travel",
        setups.travel_for_cut,
        "table travel for one stroke",
        length=lying.along("y" if end else "x"),
        cutter=tool.sizes["diameter"],
        clear=work.rule("clearance"),
    )
    if end:
        sizes["overhang"] = work.rule("overhang")
    strokes = rates.plan_strokes(work, cut_id, sizes["take off"] if end else lying.along("y"), tool.sizes["diameter"])
    rounds = work.of(cut_id).count(
        "rounds", cutting.strokes_in_all, "strokes in all", passes=passes["all passes"], strokes=strokes
    )
    time = rates.feed_time(work, cut_id, run, feeds["feed"], rounds)
    title = line("Mill the {face} {how}", face=face, how="with the side of the cutter" if end else "level")
    words = face_words(face, end, second, hold, sizes, passes, done)
    if end and 2 * lying.along("x").value < hold.sizes["jaw width"].value:
        words.insert(1, packing_words(hold))
    return Cut(
        cut_id,
        "end" if end else "face",
        f"{face} face",
        title,
        tool,
        (),
        sizes,
        {**speeds, **feeds, **passes, "travel": run, "time": time},
        tuple(words),
        (Words(reason(face, end, done, lying.shape)),),
        hold=hold,
        face=face,
    )


def face_words(
    face: str,
    end: bool,
    second: bool,
    hold: HoldPlan,
    sizes: dict[str, Number],
    passes: dict[str, Number],
    done: list[str],
) -> list[Line]:
    """What to do for one face; a round bar while the face that the moving jaw presses on is not finished yet."""
    said: list[Line] = []
    if end:
        said.append(line("Let the {face} stand out {overhang} beside the jaws.", face=face, overhang=sizes["overhang"]))
    if not done:
        said.append(line("The blank is still rough: put a thin strip of soft sheet between it and each jaw."))
    elif OPPOSITE[hold.fixed_jaw] not in done and not end:
        said.append(
            line(
                "Put a round bar between the work and the moving jaw, so that the finished face lies flat on the "
                "fixed jaw."
            )
        )
    if second:
        said.append(
            line(
                "Bring the size to {size}; about {off} has to come off. Measure before the last pass.",
                size=sizes["leave"],
                off=sizes["take off"],
            )
        )
    else:
        said.append(line("Take off {off}.", off=sizes["take off"]))
    said.append(rates.depth_words(passes))
    if "for grinding" in sizes:
        said.append(line("This leaves {left} on the {face} for grinding.", left=sizes["for grinding"], face=face))
    return said


def packing_words(hold: HoldPlan) -> Line:
    """Work that hangs out at one end of the jaws leaves their other end empty, and the moving jaw goes askew."""
    return line(
        "Put a piece of the same width, {opening}, between the jaws at their other end: the moving jaw then closes "
        "square and does not let go.",
        opening=hold.sizes["opening"],
    )


def reason(face: str, end: bool, done: list[str], shape: ShapePlan) -> str:
    """Why this face comes now."""
    if not done:
        first = "The largest face first" if is_largest(face, shape) else "This face first"
        return f"{first}: every other face is squared from it."
    if end:
        return "The ends last: lying on a finished face against a finished edge, they come square both ways."
    if OPPOSITE[face] in done:
        return "Its opposite is finished and lies on the parallels, so the two come parallel."
    return "The first face lies against the fixed jaw, so this one comes square to it."


def is_largest(face: str, shape: ShapePlan) -> bool:
    """Whether no face of the part is larger: the size square to it is the least."""
    return shape.sizes[BLOCK[FACES[face][0]]].value <= min(shape.sizes[name].value for name in BLOCK)


def square_set_up(route: Route, set_up: SetUp, set_up_id: str, mill: kit.Mill) -> SetUpPlan:
    """The blank squared on all faces."""
    assert set_up.square_up is not None
    cuts = plan_squaring(
        route.work, set_up_id, set_up, route.part, route.shape, route.blank, mill.spindle_steps, route.ground
    )
    route.standing = {face: route.ground[face] for face in set_up.square_up.order if face in route.ground}
    return finished(route, set_up, set_up_id, "square", None, (), cuts)
