"""A zero kept over a flip against the same stop and jaw: where it then stands on the drawing."""

from jobcards.definition.job import Hold, SetUp
from jobcards.planning.card import Touch
from jobcards.planning.mill.zero import OPPOSITE, Zeros
from jobcards.planning.number import Number
from jobcards.planning.orientation import Lie
from jobcards.planning.route import Route
from jobcards.planning.words import Line, line
from jobcards.planning.work import Work
from jobcards.trade import locating
from jobcards.trade.setups import FACES


def keep_zero(work: Work, zero_id: str, set_up: SetUp, lying: Lie, before: Zeros) -> Zeros:
    """The zero carried over a flip against the same stop and jaw; places on the drawing follow from the new faces."""
    assert set_up.hold is not None
    if set_up.hold.clamps or before.hold is not None:
        return clamps_moved(work, zero_id, set_up, lying, before)
    pairs = {before.jaw: set_up.hold.against_fixed_jaw, before.stop: set_up.hold.against_stop}
    places: dict[str, Number] = {}
    touches: list[Touch] = []
    for old, new in pairs.items():
        if not old or not new:
            work.problem(
                set_up.place("keep_zero"),
                "a zero can only be kept against the same stop and jaw",
                "name the face against the stop in both set-ups",
            )
            continue
        axis, _ = lying.side(new)
        if axis not in before.places:
            continue
        if (old in lying.standing) != (new in lying.standing):
            work.problem(
                set_up.place("keep_zero"),
                f"metal for grinding stands on only one of the {old} and the {new}",
                "find zero anew in this set-up",
            )
            continue
        if new == old:
            places[axis] = before.places[axis]
        elif new == OPPOSITE[old]:
            places[axis] = work.of(zero_id).length(
                f"{axis}-kept",
                locating.flipped_position,
                f"place on the drawing where {axis.upper()} reads nothing after the flip",
                length=lying.along(axis),
                position=before.places[axis],
            )
        else:
            work.problem(
                set_up.place("keep_zero"),
                f"the {new} takes the place of the {old}, which is not a flip",
                "find zero anew in this set-up",
            )
            continue
        nothing = work.nothing(f"{zero_id}.{axis}-nothing", f"{axis.upper()} is left as it was")
        touches.append(
            Touch(
                axis,
                "kept",
                new,
                lying.side(new)[1],
                nothing,
                None,
                None,
                line("{axis}: leave the zero as it was.", axis=axis.upper()),
            )
        )
    in_order = tuple(sorted(touches, key=lambda touch: touch.axis))
    return Zeros(places, in_order, set_up.hold.against_fixed_jaw, set_up.hold.against_stop)


def stays_in_vise(route: Route, set_up: SetUp) -> bool:
    """Whether a single piece is still in the vise as the set-up before held it: nothing is loosened."""
    place = [each.title for each in route.part.route].index(set_up.title)
    hold, last = set_up.hold, route.part.route[place - 1] if place else None
    if not set_up.keep_zero or hold is None or last is None or last.hold is None or hold.clamps:
        return False
    alone = route.work.ledger[f"{route.part_id}.quantity"].value == 1
    return alone and last.machine == set_up.machine and lay(last.hold) == lay(hold)


def lay(hold: Hold) -> tuple[str, ...]:
    """In what the work lies, and which way round."""
    return hold.holder, hold.up, hold.away, hold.against_stop, hold.on, hold.high_end


def as_it_is(hold: Hold) -> Line:
    """What is said of work that stays."""
    return line(
        "The work stays in the vise as it is, the {up} up, the {jaw} against the fixed jaw. Loosen nothing: its zero "
        "would be lost.",
        up=hold.up,
        jaw=hold.away,
    )


def clamps_moved(work: Work, zero_id: str, set_up: SetUp, lying: Lie, before: Zeros) -> Zeros:
    """The zero of work that stays where it lies while its clamps are moved, one after the other."""
    assert set_up.hold is not None
    now, then = set_up.hold, before.hold
    if then is None or (now.holder, now.up, now.away, now.on) != (then.holder, then.up, then.away, then.on):
        work.problem(
            set_up.place("keep_zero"),
            "work under clamps keeps its zero only where it stays as it lies while they are moved",
            "hold it as in the set-up before, or find zero anew",
        )
    elif now.on and edges_of(now) != edges_of(then):
        work.problem(
            set_up.hold.place("clamps"),
            "the packing lies under the edges that were clamped before, and the new clamps would press on air",
            "clamp over the same two edges, or lay the work flat on the table",
        )
    touches = []
    for axis in sorted(before.places):
        nothing = work.ledger.given(
            f"{zero_id}.{axis}-nothing", 0.0, work.unit, f"{axis.upper()} is left as it was", "how this set-up lies"
        )
        said = line(
            "{axis}: leave the zero as it was. One touch like the last one tells whether the work has moved.",
            axis=axis.upper(),
        )
        far = next(face for face in FACES if lying.side(face) == (axis, 1))
        touches.append(Touch(axis, "kept", far, 1, nothing, None, None, said))
    return Zeros(dict(before.places), tuple(touches), "", "", now)


def edges_of(hold: Hold) -> set[int]:
    """The drawing axes along which the clamped faces look."""
    return {FACES[clamp.over][0] for clamp in hold.clamps if clamp.over}


def flipped_axes(set_up: SetUp, lying: Lie, before: Zeros) -> list[tuple[str, str]]:
    """The machine axes on which a kept zero now counts from the opposite face, each with the new face."""
    assert set_up.hold is not None
    if before.hold is not None:
        return []
    pairs = ((before.jaw, set_up.hold.against_fixed_jaw), (before.stop, set_up.hold.against_stop))
    return [(lying.side(new)[0], new) for old, new in pairs if old and new == OPPOSITE[old]]
