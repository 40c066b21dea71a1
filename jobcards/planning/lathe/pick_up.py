"""How each pass of a thread finds the groove again: the half-nut opened between passes, or kept closed."""

from jobcards.definition.job import Operation
from jobcards.planning.lathe.common import Turning
from jobcards.planning.words import Line, line
from jobcards.trade.threads import Thread

HAIR = 1e-6
IN_INCH, IN_MM = "threads per inch", "mm of pitch"


def check_gears(turn: Turning, operation: Operation, thread: Thread) -> None:
    """The lathe's gears cut this thread; where the shop file lists threads of one kind only, it cuts no other."""
    lathe, inch = turn.lathe, thread.unit == "in"
    able, other = lathe.threads_per_inch, lathe.metric_pitches
    what, key, wanted = IN_INCH, "threads per inch", thread.threads_per_inch
    if not inch:
        able, other, what, key, wanted = other, able, IN_MM, "metric pitches", thread.pitch
    if not able and other:
        turn.work.problem(
            operation.place("cut"),
            f"the lathe's gears cut no {'inch' if inch else 'metric'} threads",
            f"cut it with a tap or a die, or add `{key}` to the lathe of the shop file if it has transposing gears",
        )
    elif able and all(abs(each - wanted) > HAIR for each in able):
        nearest = min(able, key=lambda each: abs(each - wanted))
        turn.work.problem(
            operation.place("cut"),
            f"the lathe's gears do not cut {wanted:g} {what}",
            f"cut it with a die, or take {nearest:g}",
        )


def leadscrew_pitch(turn: Turning) -> tuple[float, str] | None:
    """The pitch of the leadscrew and its unit, where the shop file tells it."""
    screw = turn.lathe.leadscrew
    if screw is None or screw <= 0:
        return None
    return (1 / screw, "in") if turn.work.shop.units == "inch" else (screw, "mm")


def pick_up_words(turn: Turning, thread: Thread) -> Line:
    """When the half-nut may be opened between passes: never with transposing gears."""
    told = leadscrew_pitch(turn)
    if told is None:
        return line("Keep the half-nut closed from the first pass to the last; wind back with the spindle reversed.")
    pitch, unit = told
    if unit != thread.unit:
        return line(
            "The leadscrew is of the other measure, and transposing gears stand between: the half-nut stays closed "
            "from the first pass to the last, or the thread is lost. At the end of a pass wind the tool out, stop, and "
            "run the spindle backward to the beginning."
        )
    if abs(pitch / thread.pitch - round(pitch / thread.pitch)) < HAIR:
        return line("The leadscrew's pitch holds this thread's a whole number of times: close the half-nut anywhere.")
    return line(
        "Close the half-nut at the same mark of the threading dial each time; without one keep it closed and wind back "
        "with the spindle reversed."
    )
