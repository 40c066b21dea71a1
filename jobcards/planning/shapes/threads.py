"""The thread of a tapped hole, and the size of hole that its percentage asks for."""

from jobcards.definition import features as drawn
from jobcards.planning.number import WHOLE, Number
from jobcards.planning.taps import thread_sizes
from jobcards.planning.work import Work
from jobcards.trade import tapping


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
