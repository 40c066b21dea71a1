"""Shaping: strokes a minute from cutting speed, stroke and the time the ram takes each way, and how long it takes."""

from jobcards.source import ARITHMETIC, COMMON
from jobcards.trade.formula import formula
from jobcards.trade.guards import not_negative, positive


@formula(
    title="Strokes a minute, inch",
    text="strokes = 12 * cutting_speed * ratio / (stroke * (1 + ratio))",
    source=ARITHMETIC,
)
def strokes_inch(cutting_speed: float, stroke: float, ratio: float) -> float:
    """Strokes a minute that give a mean cutting speed on the way out.

    Args:
        cutting_speed [ft/min]: mean speed of the cutting stroke
        stroke [in]: length of stroke, run-in and run-out with it
        ratio [1]: time of the cutting stroke over time of the return, 1.5 on most crank shapers
    Returns [strokes/min]: there-and-back strokes a minute
    Raises CannotBeDone: when a value is not more than zero.

    >>> round(strokes_inch(60, 8, 1.5), 3)
    54.0
    """
    positive(cutting_speed=cutting_speed, stroke=stroke, ratio=ratio)
    return 12 * cutting_speed * ratio / (stroke * (1 + ratio))


@formula(
    title="Strokes a minute, metric",
    text="strokes = 1000 * cutting_speed * ratio / (stroke * (1 + ratio))",
    source=ARITHMETIC,
)
def strokes_metric(cutting_speed: float, stroke: float, ratio: float) -> float:
    """Strokes a minute that give a mean cutting speed on the way out.

    Args:
        cutting_speed [m/min]: mean speed of the cutting stroke
        stroke [mm]: length of stroke, run-in and run-out with it
        ratio [1]: time of the cutting stroke over time of the return, 1.5 on most crank shapers
    Returns [strokes/min]: there-and-back strokes a minute
    Raises CannotBeDone: when a value is not more than zero.

    >>> round(strokes_metric(18, 200, 1.5), 3)
    54.0
    """
    positive(cutting_speed=cutting_speed, stroke=stroke, ratio=ratio)
    return 1000 * cutting_speed * ratio / (stroke * (1 + ratio))


@formula(
    title="Cutting speed of a shaper, inch",
    text="cutting_speed = strokes * stroke * (1 + ratio) / (12 * ratio)",
    source=ARITHMETIC,
)
def shaper_speed_inch(strokes: float, stroke: float, ratio: float) -> float:
    """The mean cutting speed that a number of strokes a minute really gives.

    Args:
        strokes [strokes/min]: there-and-back strokes a minute
        stroke [in]: length of stroke
        ratio [1]: time of the cutting stroke over time of the return, 1.5 on most crank shapers
    Returns [ft/min]: mean speed of the cutting stroke
    Raises CannotBeDone: when a value is not more than zero.

    >>> round(shaper_speed_inch(54, 8, 1.5), 3)
    60.0
    """
    positive(strokes=strokes, stroke=stroke, ratio=ratio)
    return strokes * stroke * (1 + ratio) / (12 * ratio)


@formula(title="Length of stroke", text="stroke = work + run_in + run_out", source=COMMON)
def stroke_length(work: float, run_in: float, run_out: float) -> float:
    """The stroke to set: the work, enough before it for the clapper to drop, and a little after it.

    Args:
        work [length]: length of the work in the direction of the stroke
        run_in [length]: before the cut, commonly half an inch
        run_out [length]: past the cut, commonly a quarter of an inch
    Returns [length]: length of stroke
    Raises CannotBeDone: when the work is not more than zero or another is less than zero.

    >>> stroke_length(4.5, 0.5, 0.25)
    5.25
    """
    positive(work=work)
    not_negative(run_in=run_in, run_out=run_out)
    return work + run_in + run_out


@formula(title="Shaping time", text="time = width / (feed * strokes)", source=ARITHMETIC)
def shaping_time(width: float, feed: float, strokes: float) -> float:
    """How long one pass over a width takes.

    Args:
        width [length]: width across which the feed goes
        feed [length]: feed for each stroke
        strokes [strokes/min]: there-and-back strokes a minute
    Returns [min]: time of a pass
    Raises CannotBeDone: when a value is not more than zero.

    >>> round(shaping_time(2, 0.01, 50), 3)
    4.0
    """
    positive(width=width, feed=feed, strokes=strokes)
    return width / (feed * strokes)
