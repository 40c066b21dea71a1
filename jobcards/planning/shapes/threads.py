"""The thread of a tapped hole, and the size of hole that its percentage asks for."""

from jobcards.definition import features as drawn
from jobcards.planning.number import WHOLE, Number
from jobcards.planning.work import Work
from jobcards.trade import tapping
from jobcards.trade.deviations import converted
from jobcards.trade.threads import ISO_68, read_thread


def plan_tapped(work: Work, feature_id: str, name: str, tapped: drawn.Tapped) -> dict[str, Number]:
    """Outside diameter, pitch, percentage wanted, and the hole that would leave just that."""
    diameter, pitch = thread_sizes(work, feature_id, name, tapped.thread)
    percent = work.ledger.given(
        f"{feature_id}.percent",
        tapped.percent,
        "1",
        f"{name}: per cent of thread wanted",
        "the job's definition",
        show=WHOLE,
    )
    hole = work.of(feature_id).length(
        "hole",
        tapping.tap_drill,
        f"{name}: hole that leaves this much thread",
        diameter=diameter,
        pitch=pitch,
        percent=percent,
    )
    return {"diameter": diameter, "thread pitch": pitch, "percent": percent, "hole": hole}


def thread_sizes(work: Work, thread_id: str, name: str, designation: str) -> tuple[Number, Number]:
    """Outside diameter and pitch of a thread, in the job's unit."""
    thread = read_thread(designation)
    found = (("major", thread.diameter, "outside diameter of the thread"), ("thread-pitch", thread.pitch, "pitch"))
    diameter, pitch = (
        work.ledger.given(
            f"{thread_id}.{key}",
            converted(size, thread.unit, work.unit),
            work.unit,
            f"{name}: {label}",
            ISO_68,
            formula="from the thread's name",
        )
        for key, size, label in found
    )
    return diameter, pitch
