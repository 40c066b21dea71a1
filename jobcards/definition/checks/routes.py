"""A route cuts every feature once to size, and each set-up says how the work is held and how zero is set."""

from collections.abc import Collection, Iterator

from jobcards.definition.checks.clamped import check_clamps
from jobcards.definition.checks.processes import (
    check_alternative,
    check_processes,
    does_something,
    with_alternative,
)
from jobcards.definition.features import ENDS, FACES
from jobcards.definition.job import Alternative, Hold, Operation, Part, SetUp, Zero
from jobcards.definition.problem import Problem, advise, nearest

OPPOSITE = {"front": "back", "top": "bottom", "left end": "right end"}
OPPOSITE |= {other: face for face, other in OPPOSITE.items()}


def check_route(name: str, part: Part, bought: Collection[str] = ()) -> Iterator[Problem]:
    """The problems of a part's route. `bought`: diameters that stay as the bar comes."""
    titles: dict[str, int] = {}
    zeroed = False
    for number, setup in enumerate(part.route):
        first = titles.setdefault(setup.title, setup.mark.line)
        if first != setup.mark.line:
            wrong = f"a set-up called “{setup.title}” stands in line {first} already"
            yield Problem(setup.place("title"), wrong, "call one of them something else")
        yield from check_setup(setup, part, first=number == 0, zeroed=zeroed)
        zeroed = bool(setup.zero) or setup.keep_zero
    yield from check_cut(name, part, bought)
    for called, alternative in part.alternatives.items():
        yield from check_other_way(name, part, called, alternative, bought)


def check_other_way(
    name: str, part: Part, called: str, alternative: Alternative, bought: Collection[str] = ()
) -> Iterator[Problem]:
    """The problems of an alternative: its own set-ups, and every feature cut once by the route it gives."""
    wrong = list(check_alternative(part, called, alternative))
    yield from wrong
    if wrong:
        return
    other = with_alternative(part, alternative)
    zeroed = False
    for number, setup in enumerate(other.route):
        if setup in alternative.route:
            yield from check_setup(setup, part, first=number == 0, zeroed=zeroed)
        zeroed = bool(setup.zero) or setup.keep_zero
    known = set(check_cut(name, part, bought))
    for problem in check_cut(name, other, bought):
        if problem not in known:
            yield Problem(alternative.place("route"), f"by the alternative, {problem.wrong}", problem.instead)


def check_setup(setup: SetUp, part: Part, first: bool, zeroed: bool) -> Iterator[Problem]:
    """The problems of one set-up by itself. `zeroed`: the set-up before has a zero that can be kept."""
    if not setup.operations and not setup.square_up and not does_something(setup):
        yield Problem(setup.mark, f"nothing is done in the set-up “{setup.title}”", "write operations: or square up:")
    if setup.keep_zero and setup.zero:
        yield Problem(setup.place("keep_zero"), "the zero is both kept and set anew", "leave keep zero or zero out")
    elif setup.keep_zero and first:
        yield Problem(setup.place("keep_zero"), "there is no set-up before whose zero could be kept", "write zero:")
    elif setup.keep_zero and not zeroed:
        yield Problem(setup.place("keep_zero"), "the set-up before has no zero that could be kept", "write zero: here")
    yield from check_processes(setup, part)
    if setup.square_up:
        yield from check_square_up(setup, part)
    if setup.hold:
        yield from check_hold(setup.hold, setup, part)
    for zero in setup.zero:
        yield from check_zero(zero)
    for operation in setup.operations:
        yield from check_operation(operation, part)


def check_square_up(setup: SetUp, part: Part) -> Iterator[Problem]:
    """Only a block is squared up, each face once."""
    assert setup.square_up
    order = setup.square_up.order
    if not part.block:
        yield Problem(setup.place("square_up"), "a turned part is not squared up", "leave square up out")
    for face in dict.fromkeys(order):
        if order.count(face) > 1:
            yield Problem(setup.square_up.place("order"), f"the {face} is cut twice", "name each face once")
    if not setup.hold:
        yield Problem(setup.mark, "what holds the block is missing", "write hold: {in: vise}")


def check_hold(hold: Hold, setup: SetUp, part: Part) -> Iterator[Problem]:
    """The faces of a hold must be possible together."""
    yield from check_clamps(hold)
    if hold.by and hold.by not in part.features:
        yield Problem(hold.place("by"), f"“{hold.by}” is not a feature of this part", advise(hold.by, part.features))
    if part.turned and not hold.up:
        if not hold.out:
            yield Problem(hold.mark, "the end that stands out is missing", "write out: right end or out: left end")
        return
    if part.turned and hold.up in ENDS and not hold.out:
        return  # standing on its other end
    if hold.out:
        yield Problem(hold.place("out"), "out is for work on the lathe", "leave it out, and say which face is up")
    if setup.square_up:
        return
    if (hold.away and not hold.against_fixed_jaw) or hold.clamps:
        if not hold.up:
            yield Problem(hold.mark, f"the face {WHERE['up']} is missing", "write up: and the face")
        yield from check_lies(hold)
        return
    for face, key in ((hold.up, "up"), (hold.against_fixed_jaw, "against fixed jaw")):
        if not face:
            yield Problem(hold.mark, f"the face {WHERE[key]} is missing", f"write {key}: and the face")
    yield from check_faces(hold)


WHERE = {"up": "toward the spindle", "against fixed jaw": "against the fixed jaw"}


def check_lies(hold: Hold) -> Iterator[Problem]:
    """Out of the vise too the face that looks away from you stands at right angles to the one that is up."""
    if hold.up and hold.away and square_to(hold.up, hold.away):
        name = "far_side" if hold.far_side else "against"
        wrong = f"the {hold.away} cannot look away from you while the {hold.up} is up"
        yield Problem(hold.place(name), wrong, f"write {free(hold.up)}")


def check_faces(hold: Hold) -> Iterator[Problem]:
    """Up, fixed jaw and stop stand at right angles to each other."""
    up, jaw, stop = hold.up, hold.against_fixed_jaw, hold.against_stop
    if up and jaw and square_to(up, jaw):
        wrong = f"the {jaw} cannot be against the fixed jaw while the {up} is up"
        yield Problem(hold.place("against_fixed_jaw"), wrong, f"write {free(up)}")
    elif up and jaw and stop and (square_to(up, stop) or square_to(jaw, stop)):
        wrong = f"the {stop} cannot be against the stop while the {up} is up and the {jaw} against the fixed jaw"
        yield Problem(hold.place("against_stop"), wrong, f"write {free(up, jaw)}")
    if hold.high_end and hold.high_end in (up, jaw, OPPOSITE.get(up), OPPOSITE.get(jaw)):
        wrong = f"the {hold.high_end} cannot stand higher while the {up} is up and the {jaw} against the fixed jaw"
        yield Problem(hold.place("high_end"), wrong, "turn the work so that the slope runs along the jaws")


def square_to(face: str, other: str) -> bool:
    """Whether two faces are the same or opposite, so not at right angles."""
    return other in (face, OPPOSITE[face])


def free(*taken: str) -> str:
    """The faces at right angles to those taken."""
    left = [face for face in FACES if not any(square_to(other, face) for other in taken)]
    return " or ".join([", ".join(left[:-1]), left[-1]])


def check_zero(zero: Zero) -> Iterator[Problem]:
    """Exactly one way to set an axis, with what belongs to it."""
    ways = ("edge", "middle_from", "middle_between", "line", "axis")
    given = [way for way in ways if getattr(zero, way)]
    if len(given) != 1:
        wrong = "no way of setting zero is written" if not given else "zero is set in two ways at once"
        yield Problem(zero.mark, wrong, "write one of edge, middle from, middle between, line and axis")
        return
    if zero.line and not zero.measured_from:
        yield Problem(zero.mark, "the edge that the line is measured from is missing", "write from: left end")
    if zero.measured_from and not zero.line:
        yield Problem(zero.place("measured_from"), "from belongs to a line", "leave it out")
    if zero.middle_between:
        pair = zero.middle_between
        if len(pair) != 2 or OPPOSITE[pair[0]] != pair[1]:
            instead = "write two opposite faces, as in [left end, right end]"
            yield Problem(zero.place("middle_between"), "a middle lies between two opposite faces", instead)


def check_operation(operation: Operation, part: Part) -> Iterator[Problem]:
    """Exactly one thing is done, and what is cut exists."""
    given = [name for name in ("cut", "face", "part_off") if getattr(operation, name)]
    if len(given) != 1:
        wrong = "nothing is cut here" if not given else "two things are cut in one operation"
        yield Problem(operation.mark, wrong, "write one of cut, face and part off")
        return
    if operation.cut and operation.cut not in part.features:
        wrong = f"“{operation.cut}” is not a feature of this part"
        yield Problem(operation.place("cut"), wrong, advise(operation.cut, part.features))
    if not operation.cut and not part.turned:
        wrong = "an end is faced or cut off on the lathe only"
        yield Problem(operation.place(given[0]), wrong, "write cut: and the feature")


def check_cut(name: str, part: Part, bought: Collection[str] = ()) -> Iterator[Problem]:
    """Every feature is cut to size, once; a diameter as large as the bar stays as it is bought."""
    finished: dict[str, int] = {}
    misspelt: set[str] = set()
    for setup in part.route:
        for operation in setup.operations:
            if operation.cut not in part.features:
                if operation.cut and (meant := nearest(operation.cut, part.features)):
                    misspelt.add(meant)  # told where it stands
                continue
            if operation.cut in finished:
                wrong = f"“{operation.cut}” was cut to size in line {finished[operation.cut]} already"
                yield Problem(operation.place("cut"), wrong, "write rough: true in the earlier one, or leave one out")
            elif not operation.rough:
                finished[operation.cut] = operation.mark.line
    for feature in part.features:
        if feature not in finished and feature not in misspelt and feature not in bought:
            mark = part.features[feature].mark
            yield Problem(mark, f"the feature “{feature}” of “{name}” is never cut to size", "cut it in the route")
