"""Slender work at the lathe: how many diameters stand out, or lie between two supports, and what steadies them."""

from jobcards.definition.job import SetUp
from jobcards.planning.card import HoldPlan
from jobcards.planning.number import Number, Show
from jobcards.planning.route import Route
from jobcards.planning.words import line
from jobcards.planning.work import from_job
from jobcards.trade import holding

TAKEN_HOLD_OF = ("chuck", "collet", "between centres")


def check_slender(route: Route, set_up_id: str, set_up: SetUp, held: HoldPlan, bar: Number) -> None:
    """A caution where work stands out farther than it is stiff, with a centre in its end or without one."""
    if held.kind not in TAKEN_HOLD_OF:
        return
    work, supported = route.work, "centre point" in held.sizes or "rest place" in held.sizes
    most = work.rule("longest with a centre" if supported else "longest unsupported")
    out = held.sizes["stick-out"]
    if holding.stick_out_ratio(out.value, bar.value) <= most.value:
        return
    ratio = work.of(set_up_id).rate(
        "ratio", holding.stick_out_ratio, "stick-out in diameters", "1", stick_out=out, diameter=bar,
        show=Show(places=1),
    )  # fmt: skip
    if supported:
        said = line(
            "In the set-up {set_up} {ratio} diameters lie between what drives the work and what supports it: it bends "
            "away from the tool and comes out thick in the middle. Let a follow rest run with the tool, or set a "
            "steady rest; take light cuts with a sharp tool, and measure along it.",
            set_up=from_job(set_up.title),
            ratio=ratio,
        )
    elif not any(operation.cut for operation in set_up.operations):
        said = line(
            "In the set-up {set_up} the work stands out {ratio} diameters, and its end is faced, where no centre can "
            "stand: hold more of it, or let a steady rest carry it beside that end.",
            set_up=from_job(set_up.title),
            ratio=ratio,
        )
    else:
        said = line(
            "In the set-up {set_up} the work stands out {ratio} diameters: support its end with a centre.",
            set_up=from_job(set_up.title),
            ratio=ratio,
        )
    work.warnings.append(said)
