"""What a set-up at the mill must be told besides: the flip, the travels, the slack of the screws."""

from jobcards.definition import shop as kit
from jobcards.definition.job import SetUp
from jobcards.planning.card import Cut
from jobcards.planning.mill.kept_zero import flipped_axes
from jobcards.planning.mill.zero import Zeros
from jobcards.planning.number import Number, Show
from jobcards.planning.orientation import Lie
from jobcards.planning.words import Line, line
from jobcards.planning.work import Work, from_shop
from jobcards.trade import locating, setups, stackups


def flip_notes(work: Work, set_up_id: str, set_up: SetUp, lying: Lie, before: Zeros) -> list[Line]:
    """What a wrong length does to a feature that is cut from both sides with one zero."""
    out: list[Line] = []
    for axis, face in flipped_axes(set_up, lying, before):
        length = lying.along(axis)
        limits = [f"{length.id}.lower", f"{length.id}.upper"]
        if not all(limit in work.ledger for limit in limits):
            continue
        error = work.of(set_up_id).length(
            f"{axis}-error",
            stackups.half_tolerance,
            "most the length may be out",
            low=work.ledger[limits[0]],
            high=work.ledger[limits[1]],
        )
        apart = work.of(set_up_id).length(
            f"{axis}-mismatch", locating.flip_mismatch, "how far the two sides then come apart", length_error=error
        )
        out.append(
            line(
                "After the flip the {face} is the datum along {axis}. If the part is not {length} long, the cuts "
                "from the two sides come apart by the whole error: {error} too long or too short makes a step "
                "of {apart}.",
                face=face,
                axis=axis.upper(),
                length=length,
                error=error,
                apart=apart,
            )
        )
    return out


def travel_notes(
    work: Work, set_up_id: str, set_up: SetUp, cuts: tuple[Cut, ...], lying: Lie, mill: kit.Mill
) -> list[Line]:
    """The table's travel against what the set-up asks for: the work, the cutter and room to step aside."""
    widest = max(
        (cut.cutter.sizes["diameter"] for cut in cuts if cut.cutter and "diameter" in cut.cutter.sizes),
        key=lambda n: n.value,
        default=None,
    )
    if widest is None:
        return []
    out: list[Line] = []
    for axis in ("x", "y"):
        there = work.shop_length(
            f"shop-travel.{axis}", getattr(mill.travel, axis), f"travel of the machine along {axis.upper()}"
        )
        needed = work.of(set_up_id).length(
            f"travel-{axis}",
            setups.travel_for_cut,
            f"travel wanted along {axis.upper()}",
            length=lying.along(axis),
            cutter=widest,
            clear=work.rule("clearance"),
            show=Show(places=2 if work.unit == "in" else 0),
        )
        spare = work.of(set_up_id).length(
            f"spare-{axis}", setups.travel_to_spare, f"travel to spare along {axis.upper()}", there=there, needed=needed
        )
        if spare.value < 0:
            work.problem(
                set_up.mark,
                f"along {axis.upper()} the set-up wants {needed.shown} of travel and the machine has {there.shown}",
                "hold the work the other way",
            )
        out.append(
            line(
                "{axis}: the set-up wants {needed} of travel; the {machine} has {there}.",
                axis=axis.upper(),
                needed=needed,
                machine=from_shop(set_up.machine),
                there=there,
            )
        )
    return out


def backlash_notes(work: Work, set_up_id: str, cuts: tuple[Cut, ...], mill: kit.Mill) -> list[Line]:
    """From which side to arrive, worked for the first position, for whoever sets by the handwheel."""
    first = next((position.x for cut in cuts for position in cut.positions if position.x is not None), None)
    if first is None:
        return []
    slack = work.shop_length("shop-handwheel.backlash", mill.handwheel.backlash, "slack of the table screws")
    mark = work.shop_length("shop-handwheel.division", mill.handwheel.division, "one mark of its dial")
    past: Number = work.of(set_up_id).length(
        "overrun",
        locating.overrun_position,
        "where to go first, to arrive with the readings growing",
        target=first,
        backlash=slack,
        direction=1,
        show=Show(step=mark.value),
    )
    return [
        line(
            "By handwheel: arrive with the readings growing. Coming from the other side, for {target} go back to "
            "{past} or beyond first; the screws have {slack} of slack.",
            target=first,
            past=past,
            slack=slack,
        )
    ]
