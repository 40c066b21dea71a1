"""A thread by its name, and the tap that cuts it, as numbers."""

from jobcards.definition import shop as kit
from jobcards.planning.number import WHOLE, Number
from jobcards.planning.work import Work
from jobcards.trade import tapping
from jobcards.trade.deviations import converted
from jobcards.trade.threads import ISO_68, read_thread

TAPS = ("tap", "hand tap")


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


def tap_sizes(work: Work, prefix: str, name: str, cutter: kit.Cutter) -> dict[str, Number]:
    """Outside diameter, pitch and chamfer of a tap; nothing for another cutter."""
    if cutter.kind not in TAPS or not cutter.thread:
        return {}
    diameter, pitch = thread_sizes(work, prefix, name, cutter.thread)
    chamfer = work.of(prefix).length(
        "chamfer",
        tapping.tap_chamfer,
        f"{name}: tip ahead of the first full thread",
        pitch=pitch,
        chamfer_threads=chamfer_threads(work, cutter.chamfer),
    )
    return {"diameter": diameter, "thread pitch": pitch, "chamfer": chamfer}


def chamfer_threads(work: Work, kind: str) -> Number:
    """Threads of the chamfer of a taper, plug or bottoming tap."""
    label = f"threads of a {kind} tap's chamfer, the most"
    return work.ledger.told(f"chamfer-{kind}", tapping.chamfer_threads, label, "1", kind, show=WHOLE)
