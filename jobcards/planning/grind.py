"""Faces of a block ground to size, and the metal that every set-up before leaves on them."""

from collections.abc import Iterator, Mapping

from jobcards.definition import shop as kit
from jobcards.definition.job import Operation, Part, SetUp
from jobcards.planning.card import Cut, HoldPlan, SetUpPlan, ShapePlan
from jobcards.planning.mill.zero import OPPOSITE
from jobcards.planning.number import Number
from jobcards.planning.rates import grinding_time, plan_cutter, plan_passes
from jobcards.planning.route import Route, finished
from jobcards.planning.shapes import BLOCK
from jobcards.planning.stated import stated_cut
from jobcards.planning.words import Line, line
from jobcards.planning.work import Work, from_shop, slug
from jobcards.trade import heat, heat_tables
from jobcards.trade.setups import FACES


def left_for_grinding(work: Work, part_id: str, part: Part, shape: ShapePlan) -> dict[str, Number]:
    """What squaring leaves on each face that a later set-up grinds."""
    out: dict[str, Number] = {}
    for set_up in part.route:
        if set_up.grind is None or shape.kind != "block":
            continue
        for face in set_up.grind.faces:
            number_id = f"{part_id}-{slug(face)}.for-grinding"
            label = f"left on the {face} for grinding"
            if set_up.grind.leave is not None:
                out[face] = work.expression(number_id, set_up.grind.leave, label)
            else:
                longest = max(number.value for number in shape.sizes.values())
                found = heat_tables.grinding_allowance(longest, "face", work.unit)
                out[face] = work.looked_up(number_id, found, label)
    return out


def size_to_leave(work: Work, cut_id: str, shape: ShapePlan, face: str, standing: Mapping[str, Number]) -> Number:
    """The size across a face and its opposite, with what stands on either for grinding."""
    size = shape.sizes[BLOCK[FACES[face][0]]]
    there = [standing[side] for side in (face, OPPOSITE[face]) if side in standing]
    if not there:
        return size
    return work.of(cut_id).length(
        f"leave-{len(there)}",
        heat.size_before_grinding,
        "size to leave, with the allowance for grinding",
        finished=size,
        allowance=there[0],
        faces=len(there),
    )


def grind_set_up(route: Route, set_up: SetUp, set_up_id: str, grinder: kit.SurfaceGrinder) -> SetUpPlan | None:
    """One face after the other on the magnetic chuck: the first is cleaned up, its opposite brings the size.

    A shape that is only told in words may be ground too, in words.
    """
    cuts = [*in_words(route, set_up, set_up_id), *ground_faces(route, set_up, set_up_id, grinder)]
    tall = any(stands_tall(cut.face, route.shape) for cut in cuts if cut.face)
    notes = (
        [line("The work stands higher than it is wide: block it in on the magnet, steel on every side.")]
        if tall
        else []
    )
    notes += [line("Dress the wheel before the last passes, and let it spark out: pass it over without any more feed.")]
    return finished(route, set_up, set_up_id, "grind", None, (), tuple(cuts), notes)


def stands_tall(face: str, shape: ShapePlan) -> bool:
    """Whether work that lies with a face up is higher than it is wide."""
    high = BLOCK[FACES[face][0]]
    return shape.sizes[high].value > min(shape.sizes[name].value for name in BLOCK if name != high)


def in_words(route: Route, set_up: SetUp, set_up_id: str) -> Iterator[Cut]:
    """What is ground as the author tells it; any other operation is a problem."""
    for operation in set_up.operations:
        feature = route.feature(operation)
        if feature is not None and feature.shape == "note":
            yield stated_cut(route, set_up_id, operation)
        else:
            refuse(route.work, operation)


def ground_faces(route: Route, set_up: SetUp, set_up_id: str, grinder: kit.SurfaceGrinder) -> Iterator[Cut]:
    """Each face of `grind:` on which something is left."""
    asked = set_up.grind
    for face in asked.faces if asked is not None else ():
        if face in route.standing:
            check_chuck(route, set_up, face, grinder)
            yield ground_face(route, set_up, f"{set_up_id}-{slug(face)}", face)
            del route.standing[face]
        elif asked is not None:
            route.work.problem(
                asked.place("faces"),
                f"nothing is left on the {face} for grinding",
                f"square it first, or leave the {face} out",
            )


def refuse(work: Work, operation: Operation) -> None:
    """Only whole faces are ground here; what else may be ground is told in words."""
    work.problem(
        operation.place("cut"),
        f"“{operation.cut}” is not ground here: only whole faces of a block are, flat on the magnetic chuck",
        "mill it to size, or draw it as shape: note, whose words say how it is set on the sine plate or blocked up, "
        "and what is left for grinding",
    )


def ground_face(route: Route, set_up: SetUp, cut_id: str, face: str) -> Cut:
    """A face ground: all that was left on it, or to the finished size where its opposite is finished."""
    work = route.work
    assert set_up.grind is not None
    off = route.standing[face]
    rest = {side: number for side, number in route.standing.items() if side != face}
    sizes: dict[str, Number] = {"take off": off}
    if OPPOSITE[face] not in rest:
        sizes["leave"] = size_to_leave(work, cut_id, route.shape, face, rest)
    passes = plan_passes(work, cut_id, off, work.rule("grinding pass"))
    time = grinding_time(work, cut_id, passes["passes"])
    name = set_up.grind.cutter
    return Cut(
        cut_id,
        "grind",
        f"{face} face",
        line("Grind the {face}", face=face),
        plan_cutter(work, name, work.shop.cutters[name]),
        (),
        sizes,
        {**passes, "time": time},
        tuple(ground_words(face, sizes, passes)),
        hold=HoldPlan(
            "magnetic chuck", from_shop(set_up.machine), {}, face, side_of(face), instructions=(laid_down(face),)
        ),
        face=face,
    )


def laid_down(face: str) -> Line:
    """How the work is laid on the chuck."""
    return line("Clean chuck and work, stone off every burr, and lay it down with the {face} up.", face=face)


def side_of(face: str) -> str:
    """A face at right angles to the one that is ground, to lie toward the back of the chuck."""
    return "back" if FACES[face][0] != 2 else "top"


def ground_words(face: str, sizes: Mapping[str, Number], passes: Mapping[str, Number]) -> list[Line]:
    """What to do on the chuck."""
    said = [
        line("Touch the highest spot with the wheel turning, then {off} has to come off.", off=sizes["take off"]),
        line("No more than {each} a pass, {count} passes.", each=passes["pass depth"], count=passes["passes"]),
    ]
    if "leave" in sizes:
        said.append(line("Bring the size to {size}; measure cold before the last passes.", size=sizes["leave"]))
    return said


def check_chuck(route: Route, set_up: SetUp, face: str, grinder: kit.SurfaceGrinder) -> None:
    """The work lies on the chuck."""
    work = route.work
    across = sorted((n for i, n in enumerate(BLOCK) if i != FACES[face][0]), key=lambda n: route.shape.sizes[n].value)
    room = [
        work.shop_length(f"shop-grinder.{word}", getattr(grinder, word), f"{word} of the magnetic chuck")
        for word in ("width", "length")
    ]
    for name, there in zip(across, sorted(room, key=lambda n: n.value), strict=True):
        if route.shape.sizes[name].value > there.value + 1e-9:
            work.problem(
                set_up.place("grind"),
                f"the chuck is {there.shown} and the {name} of the work {route.shape.sizes[name].shown}",
                "have it ground in a larger shop",
            )
