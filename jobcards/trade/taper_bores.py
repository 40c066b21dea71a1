"""Tapered bores measured with balls and plugs: where a ball lies, what it tells of the mouth, how a plug goes on in."""

from jobcards.source import GEOMETRY
from jobcards.trade.degrees import cos, tan
from jobcards.trade.formula import formula
from jobcards.trade.guards import between, finite, not_negative, positive

LARGEST_SET = 1000  # balls of so many sizes no set has


@formula(
    title="Top of a ball in a tapered bore",
    text="top = (mouth - ball / cos(half)) / (2 * tan(half)) - ball / 2",
    source=GEOMETRY,
)
def ball_top(mouth: float, ball: float, half: float) -> float:
    """How far the top of a ball lies below the face, in a bore that is widest at the face.

    Args:
        mouth [length]: diameter of the bore at the face
        ball [length]: diameter of the ball
        half [deg]: half angle, from the axis
    Returns [length]: from the face down to the top of the ball, less than 0 when it stands out
    Raises CannotBeDone: when a size is not more than 0 or the angle not between 0 and 90

    >>> round(ball_top(2.0, 1.0, 30), 4)
    0.2321
    """
    positive(mouth=mouth, ball=ball)
    between(0, 90, half_angle=half)
    return (mouth - ball / cos(half)) / (2 * tan(half)) - ball / 2


@formula(
    title="Where a ball touches a tapered bore",
    text="touches = (mouth - ball * cos(half)) / (2 * tan(half))",
    source=GEOMETRY,
)
def ball_touches(mouth: float, ball: float, half: float) -> float:
    """How far below the face a ball touches the bore's side all round.

    Args:
        mouth [length]: diameter of the bore at the face
        ball [length]: diameter of the ball
        half [deg]: half angle, from the axis
    Returns [length]: from the face down to the circle where it touches, less than 0 when it lies on the mouth's edge
    Raises CannotBeDone: when a size is not more than 0 or the angle not between 0 and 90

    >>> round(ball_touches(2.0, 1.0, 30), 4)
    0.9821
    """
    positive(mouth=mouth, ball=ball)
    between(0, 90, half_angle=half)
    return (mouth - ball * cos(half)) / (2 * tan(half))


@formula(
    title="Mouth of a tapered bore from a ball",
    text="mouth = 2 * tan(half) * (top + ball / 2) + ball / cos(half)",
    source=GEOMETRY,
)
def mouth_from_ball(top: float, ball: float, half: float) -> float:
    """Diameter of a tapered bore at the face, from a ball that lies in it.

    Args:
        top [length]: from the face down to the top of the ball, less than 0 when it stands out
        ball [length]: diameter of the ball
        half [deg]: half angle, from the axis
    Returns [length]: diameter at the face
    Raises CannotBeDone: when the ball is not more than 0 or the angle not between 0 and 90

    >>> round(mouth_from_ball(0.23205, 1.0, 30), 4)
    2.0
    """
    positive(ball=ball)
    finite(top=top)
    between(0, 90, half_angle=half)
    return 2 * tan(half) * (top + ball / 2) + ball / cos(half)


@formula(title="Balls that lie in a tapered bore", text="ball = step * number", source=GEOMETRY)
def ball_of_set(step: float, number: int) -> float:
    """Diameter of a ball of a set whose sizes rise by steps.

    Args:
        step [length]: from one ball of the set to the next
        number [1]: which of them, 1 for the smallest
    Returns [length]: diameter of the ball
    Raises CannotBeDone: when the step or the number is not more than 0

    >>> ball_of_set(1 / 32, 20)
    0.625
    """
    positive(step=step, number=number)
    return step * number


@formula(title="How a plug goes on in", text="deeper = change / (2 * tan(half))", source=GEOMETRY)
def plug_deeper(change: float, half: float) -> float:
    """How much deeper a taper plug goes in when the bore grows: bored so much too small, it stands out so far.

    Args:
        change [length]: change of the bore's diameter
        half [deg]: half angle, from the axis
    Returns [length]: along the axis
    Raises CannotBeDone: when the change is less than 0 or the angle not between 0 and 90

    >>> round(plug_deeper(0.001, 1.4307), 3)
    0.02
    """
    not_negative(change=change)
    between(0, 90, half_angle=half)
    return change / (2 * tan(half))


def balls_that_fit(mouth: float, half: float, depth: float, step: float, open_below: bool) -> list[int]:
    """The balls of a set that lie below the face and touch the taper's side, by their number, smallest first.

    In a bore with a bottom the ball must also clear it.

    >>> balls_that_fit(0.75, 8, 0.5, 1 / 32, True)
    [20]
    """
    out: list[int] = []
    most = int(mouth / step)
    if most > LARGEST_SET:
        return out
    for number in range(1, most + 1):
        ball = ball_of_set(step, number)
        top, touches = ball_top(mouth, ball, half), ball_touches(mouth, ball, half)
        if top > 0 and 0 < touches < depth and (open_below or top + ball < depth):
            out.append(number)
    return out
