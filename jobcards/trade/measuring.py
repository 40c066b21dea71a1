"""Measuring: whether an instrument is good enough, balls and chords where no caliper reaches, and temperature."""

from collections.abc import Mapping
from math import sqrt

from jobcards.source import ARITHMETIC, COMMON, GEOMETRY, published
from jobcards.trade.degrees import sin, tan
from jobcards.trade.formula import CannotBeDone, formula
from jobcards.trade.guards import between, finite, not_negative, positive

REFERENCE_CELSIUS = 20.0
REFERENCE_FAHRENHEIT = 68.0
REFERENCE = published("ISO 1", "2022", "reference temperature 20 °C")


@formula(
    title="Tolerance over uncertainty",
    text="ratio = tolerance / (2 * uncertainty)",
    source=published("ANSI/NCSL Z540.3", "2006", "test uncertainty ratio"),
)
def uncertainty_ratio(tolerance: float, uncertainty: float) -> float:
    """How many times the instrument's whole uncertainty fits into the whole tolerance: ten is good, four the least.

    Args:
        tolerance [length]: whole width of the tolerance, upper limit less lower limit
        uncertainty [length]: plus-and-minus uncertainty of the measurement
    Returns [1]: ratio
    Raises CannotBeDone: when either is not more than zero.

    >>> round(uncertainty_ratio(0.010, 0.0005), 3)
    10.0
    """
    positive(tolerance=tolerance, uncertainty=uncertainty)
    return tolerance / (2 * uncertainty)


def instrument_for(tolerance: float, instruments: Mapping[str, float], ratio: float) -> str:
    """The plainest instrument that is still good enough: the most uncertain one that keeps the ratio.

    `instruments` gives each one's plus-and-minus uncertainty. Raises CannotBeDone, naming the best there is, when
    none keeps the ratio.

    >>> instrument_for(0.002, {"caliper": 0.001, "micrometer": 0.0001, "comparator": 0.00002}, 10)
    'micrometer'
    """
    if not instruments:
        raise CannotBeDone("the shop lists no instruments for this; add one to the shop's file")
    ratios = {name: uncertainty_ratio(tolerance, uncertainty) for name, uncertainty in instruments.items()}
    good = [name for name in ratios if ratios[name] >= ratio * (1 - 1e-9)]
    if good:
        return min(good, key=lambda name: (ratios[name], name))
    best = max(ratios, key=lambda name: ratios[name])
    raise CannotBeDone(
        f"no instrument here measures a tolerance of {tolerance:g} {ratio:g} times over; "
        f"the best is {best} with {ratios[best]:.2g} times"
    )


@formula(
    title="Gauge pin of a set",
    text="the wanted diameter, to the nearest whole step of the set",
    source=COMMON,
    worded=True,
)
def pin_of_set(wanted: float, step: float) -> float:
    """The gauge pin of a set that comes nearest to a wanted diameter.

    Args:
        wanted [length]: diameter wanted
        step [length]: step from one pin of the set to the next
    Returns [length]: diameter of the pin
    Raises CannotBeDone: when a size is not more than 0, or the pin would be thinner than the first of the set

    >>> round(pin_of_set(0.35355, 0.001), 4)
    0.354
    """
    positive(wanted=wanted, step=step)
    count = round(wanted / step)
    if count < 1:
        raise CannotBeDone(
            f"a pin of {wanted:g} is thinner than the first of a set that goes by {step:g}; measure it otherwise"
        )
    return count * step


@formula(
    title="Upper limit to accept at",
    text="accept = upper - uncertainty",
    source=published("ISO 14253-1", "2017", "decision rules, conformity"),
)
def accept_upper(upper: float, uncertainty: float) -> float:
    """The largest reading that proves a size is inside its upper limit.

    Args:
        upper [length]: upper limit
        uncertainty [length]: plus-and-minus uncertainty of the measurement
    Returns [length]: largest reading to accept
    Raises CannotBeDone: when the uncertainty is less than zero.

    >>> round(accept_upper(0.750, 0.0002), 4)
    0.7498
    """
    finite(upper=upper)
    not_negative(uncertainty=uncertainty)
    return upper - uncertainty


@formula(
    title="Lower limit to accept at",
    text="accept = lower + uncertainty",
    source=published("ISO 14253-1", "2017", "decision rules, conformity"),
)
def accept_lower(lower: float, uncertainty: float) -> float:
    """The smallest reading that proves a size is inside its lower limit.

    Args:
        lower [length]: lower limit
        uncertainty [length]: plus-and-minus uncertainty of the measurement
    Returns [length]: smallest reading to accept
    Raises CannotBeDone: when the uncertainty is less than zero.

    >>> round(accept_lower(0.748, 0.0002), 4)
    0.7482
    """
    finite(lower=lower)
    not_negative(uncertainty=uncertainty)
    return lower + uncertainty


@formula(
    title="Bore by two balls",
    text="bore = (lower + upper) / 2 + sqrt(((lower + upper) / 2)**2 - (height - (lower + upper) / 2)**2)",
    source=GEOMETRY,
)
def bore_by_two_balls(lower: float, upper: float, height: float) -> float:
    """A bore that no bore gauge fits, from two balls lying in it on a flat and the height over the upper one.

    Args:
        lower [length]: diameter of the ball that lies on the flat
        upper [length]: diameter of the ball that rests on it and on the wall
        height [length]: from the flat to the top of the upper ball
    Returns [length]: diameter of the bore
    Raises CannotBeDone: when a ball is not more than zero, or no bore gives such a height.

    >>> round(bore_by_two_balls(0.5, 0.5, 0.9), 4)
    0.8
    """
    positive(lower=lower, upper=upper, height=height)
    apart = (lower + upper) / 2
    rise = height - apart
    if not max(apart, upper) < height < lower + upper:
        raise CannotBeDone(
            f"balls of {lower:g} and {upper:g} one on the other stand more than {max(apart, upper):g} and less than "
            f"{lower + upper:g} high, not {height:g}; the upper one must rest on the lower and on the wall"
        )
    bore = apart + sqrt(apart**2 - rise**2)
    if bore < max(lower, upper):
        raise CannotBeDone(f"a bore of {bore:g} would not let in a ball of {max(lower, upper):g}; measure again")
    return bore


@formula(
    title="Countersink by a ball",
    text="diameter = tan(angle / 2) * (ball / sin(angle / 2) + ball - 2 * height)",
    source=GEOMETRY,
)
def countersink_by_ball(ball: float, height: float, angle: float) -> float:
    """The diameter of a countersink at the face, from how far a ball in it stands up.

    Args:
        ball [length]: diameter of the ball
        height [length]: of the top of the ball over the face; less than zero when it lies below
        angle [deg]: included angle of the countersink
    Returns [length]: diameter of the countersink at the face
    Raises CannotBeDone: when the ball rests on the rim and not in the cone, or the angle is not below 180.

    >>> round(countersink_by_ball(0.5, 0.25, 90), 4)
    0.7071
    """
    positive(ball=ball)
    finite(height=height)
    between(0, 180, angle=angle)
    # The ball touches the cone below its own centre by half its diameter times the sine of the half angle.
    touch = height - ball / 2 - ball / 2 * sin(angle / 2)
    if touch > 1e-9 * ball:
        raise CannotBeDone(
            f"a ball of {ball:g} standing {height:g} up rests on the rim of the countersink; use a smaller ball"
        )
    return tan(angle / 2) * (ball / sin(angle / 2) + ball - 2 * height)


@formula(title="Radius from chord and height", text="radius = chord**2 / (8 * height) + height / 2", source=GEOMETRY)
def radius_from_chord(chord: float, height: float) -> float:
    """The radius of an arc, from a straight edge laid across it or a part of its own chord.

    Args:
        chord [length]: length of the chord
        height [length]: of the arc over the middle of the chord
    Returns [length]: radius
    Raises CannotBeDone: when a size is not more than zero.

    >>> round(radius_from_chord(4, 0.5), 6)
    4.25
    """
    positive(chord=chord, height=height)
    return chord**2 / (8 * height) + height / 2


@formula(
    title="Height of an arc over its chord",
    text="height = radius - sqrt(radius**2 - (chord / 2)**2)",
    source=GEOMETRY,
)
def height_of_arc(chord: float, radius: float) -> float:
    """How far an arc stands over the middle of its chord: what a radius gauge of the wrong radius would show as light.

    Args:
        chord [length]: length of the chord
        radius [length]: radius of the arc
    Returns [length]: height of the arc
    Raises CannotBeDone: when a size is not more than zero or the chord is longer than the diameter.

    >>> round(height_of_arc(4, 4.25), 6)
    0.5
    """
    positive(chord=chord, radius=radius)
    if chord > 2 * radius:
        raise CannotBeDone(f"a chord of {chord:g} is longer than the diameter {2 * radius:g}; measure it again")
    return radius - sqrt(radius**2 - (chord / 2) ** 2)


@formula(title="Supports of a straight edge", text="apart = length / sqrt(3)", source=COMMON)
def straight_edge_supports(length: float) -> float:
    """How far apart to support a straight edge or long gauge so that its ends stay parallel (the Airy points).

    Args:
        length [length]: length of the straight edge
    Returns [length]: distance between the two supports, the same overhang at both ends
    Raises CannotBeDone: when the length is not more than zero.

    >>> round(straight_edge_supports(12), 3)
    6.928
    """
    positive(length=length)
    return length / sqrt(3)


@formula(
    title="Growth with temperature", text="growth = length * coefficient * temperature_difference", source=ARITHMETIC
)
def expansion(length: float, coefficient: float, temperature_difference: float) -> float:
    """How much longer a piece is when warmer; less than zero when it is colder.

    Args:
        length [length]: length at the reference temperature
        coefficient [1/°F]: expansion for each degree (1/°C when the difference is in °C)
        temperature_difference [°F]: how much warmer the piece is than the reference temperature
    Returns [length]: growth
    Raises CannotBeDone: when the length is less than zero or a value is no number.

    >>> round(expansion(10.048, 6.5e-6, 31), 4)
    0.002
    """
    not_negative(length=length)
    finite(coefficient=coefficient, temperature_difference=temperature_difference)
    return length * coefficient * temperature_difference


@formula(
    title="Reading of a warm part",
    text="reading = length * (1 + part * part_difference) / (1 + gauge * gauge_difference)",
    source=REFERENCE,
)
def warm_reading(length: float, part: float, part_difference: float, gauge: float, gauge_difference: float) -> float:
    """What an instrument shows on a part of the right size when part and instrument are warm: the reading to aim for.

    A steel part and a steel micrometer at the same temperature grow alike, and the reading is right.

    Args:
        length [length]: size wanted at the reference temperature
        part [1/°F]: expansion of the part for each degree
        part_difference [°F]: how much warmer the part is than the reference temperature
        gauge [1/°F]: expansion of the instrument for each degree
        gauge_difference [°F]: how much warmer the instrument is than the reference temperature
    Returns [length]: reading
    Raises CannotBeDone: when the length is less than zero or a value is no number.

    >>> round(warm_reading(4.0, 13.1e-6, 20, 6.5e-6, 20), 4)
    4.0005
    """
    not_negative(length=length)
    finite(part=part, part_difference=part_difference, gauge=gauge, gauge_difference=gauge_difference)
    return length * (1 + part * part_difference) / (1 + gauge * gauge_difference)
