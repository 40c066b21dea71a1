"""Times: what the cuts of an operation, the operations of a set-up and the set-ups of a job take together."""

from collections.abc import Sequence

from jobcards.source import ARITHMETIC
from jobcards.trade.cutting import cutting_time
from jobcards.trade.formula import formula
from jobcards.trade.guards import not_negative, whole


@formula(title="Time of a cut", text="time = rounds * (length / feed + handling) + change", source=ARITHMETIC)
def time_of_cut(rounds: int, length: float, feed: float, handling: float, change: float) -> float:
    """Minutes of an operation that feeds the same length again and again: strokes, passes or holes.

    Args:
        rounds [1]: how often the feed runs
        length [length]: travel of the feed each time
        feed [length/min]: feed
        handling [min]: going back and setting, each time
        change [min]: putting the tool in, once
    Returns [min]: time of the operation
    Raises CannotBeDone: when the rounds are no whole number from 1 up, the feed is not more than zero, or another is
        less than zero.

    >>> time_of_cut(rounds=4, length=4.5, feed=6, handling=0.25, change=3)
    7.0
    """
    whole(1, rounds=rounds)
    not_negative(handling=handling, change=change)
    return rounds * (cutting_time(length, feed) + handling) + change


@formula(
    title="Time of passes with a tool to put in", text="time = passes * (each + handling) + change", source=ARITHMETIC
)
def time_of_passes(passes: int, each: float, handling: float, change: float) -> float:
    """Minutes of an operation by the time of one pass, as on the shaper.

    Args:
        passes [1]: how many
        each [min]: one pass
        handling [min]: going back and setting, each time
        change [min]: putting the tool in, once
    Returns [min]: time of the operation
    Raises CannotBeDone: when the passes are no whole number from 1 up or a time is less than zero.

    >>> time_of_passes(passes=6, each=4.5, handling=0.5, change=3)
    33.0
    """
    return grinding_time(passes, each, handling) + change_time(change)


@formula(title="Grinding time", text="time = passes * (each + handling)", source=ARITHMETIC)
def grinding_time(passes: int, each: float, handling: float) -> float:
    """Minutes of grinding a face or a diameter; the wheel is on the machine already.

    Args:
        passes [1]: how many
        each [min]: one pass
        handling [min]: setting, each time
    Returns [min]: time of the operation
    Raises CannotBeDone: when the passes are no whole number from 1 up or a time is less than zero.

    >>> grinding_time(passes=12, each=1.5, handling=0.5)
    24.0
    """
    whole(1, passes=passes)
    not_negative(each=each, handling=handling)
    return passes * (each + handling)


@formula(title="Time of single-point threading", text="time = cutting + passes * handling + change", source=ARITHMETIC)
def threading_time(cutting: float, passes: int, handling: float, change: float) -> float:
    """Minutes of cutting a thread with a tool: the half-nut closed, and the winding back after each pass.

    Args:
        cutting [min]: time with the half-nut closed, all passes
        passes [1]: how many
        handling [min]: winding out, back and in, each time
        change [min]: putting the tool in, once
    Returns [min]: time of the operation
    Raises CannotBeDone: when the passes are no whole number from 1 up or a time is less than zero.

    >>> threading_time(cutting=2.5, passes=20, handling=0.5, change=3)
    15.5
    """
    whole(1, passes=passes)
    not_negative(cutting=cutting, handling=handling, change=change)
    return cutting + passes * handling + change


@formula(title="Time of things alike", text="time = count * each", source=ARITHMETIC)
def time_of_each(count: int, each: float) -> float:
    """Minutes of a number of things that take equally long: lines to scribe, steps of putting together.

    Args:
        count [1]: how many
        each [min]: time of one
    Returns [min]: time of all
    Raises CannotBeDone: when the count is no whole number from 0 up or the time is less than zero.

    >>> time_of_each(count=3, each=2.5)
    7.5
    """
    whole(0, count=count)
    not_negative(each=each)
    return count * each


@formula(title="Time of a heat", text="time = held + setting", source=ARITHMETIC)
def time_of_heat(held: float, setting: float) -> float:
    """Minutes of a heat: making ready, and what the work is held at heat.

    Args:
        held [min]: time at heat
        setting [min]: making ready
    Returns [min]: time of the operation
    Raises CannotBeDone: when a time is less than zero.

    >>> time_of_heat(held=30, setting=20)
    50
    """
    not_negative(held=held, setting=setting)
    return held + setting


@formula(title="Minutes from hours", text="minutes = hours * 60", source=ARITHMETIC)
def minutes_of_hours(hours: float) -> float:
    """A time in minutes.

    Args:
        hours [h]: the time
    Returns [min]: the same time
    Raises CannotBeDone: when the time is less than zero.

    >>> minutes_of_hours(2.5)
    150.0
    """
    not_negative(hours=hours)
    return hours * 60


@formula(
    title="Time of a set-up",
    text="setting and the time of each operation together; the operations as often as there are pieces",
    source=ARITHMETIC,
    worded=True,
)
def time_of_set_up(setting: float, pieces: int, operations: Sequence[float]) -> float:
    """Minutes of a set-up: made ready once, its operations done on every piece.

    Args:
        setting [min]: making ready, once
        pieces [1]: pieces that go through one after another
        operations [min]: time of each operation on one piece
    Returns [min]: time of the set-up
    Raises CannotBeDone: when the pieces are no whole number from 1 up or a time is less than zero.

    >>> time_of_set_up(setting=20, pieces=2, operations=[5, 2.5])
    35.0
    """
    whole(1, pieces=pieces)
    not_negative(setting=setting)
    return setting + pieces * together(operations)


@formula(title="Time of a job", text="the times of all set-ups together", source=ARITHMETIC, worded=True)
def time_of_job(set_ups: Sequence[float]) -> float:
    """Minutes of a whole job.

    Args:
        set_ups [min]: time of each set-up
    Returns [min]: time of the job
    Raises CannotBeDone: when a time is less than zero.

    >>> time_of_job([20, 35, 12.5])
    67.5
    """
    return together(set_ups)


def together(times: Sequence[float]) -> float:
    """The sum of times, none of which runs backwards."""
    for time in times:
        not_negative(time=time)
    return sum(times)


def change_time(change: float) -> float:
    """The time of putting a tool in."""
    not_negative(change=change)
    return change
