"""Finish: the marks that feed and tool nose leave, and the ridges between passes of a ball cutter.

These are the heights that geometry leaves. Real work is rougher: vibration, a built-up edge and a worn nose add to it.
"""

import math

from jobcards.source import GEOMETRY
from jobcards.trade.formula import CannotBeDone, formula
from jobcards.trade.guards import positive


def ridges_meet(spacing: float, radius: float) -> None:
    """Refuse a feed or step so wide that a nose of this radius leaves metal standing between two passes."""
    positive(spacing=spacing, radius=radius)
    if spacing > 2 * radius:
        raise CannotBeDone(f"a radius of {radius:g} leaves a rib when moved by {spacing:g}; move it by less")


@formula(title="Ridge height, turned", text="height = feed**2 / (8 * nose_radius)", source=GEOMETRY)
def turned_ridge(feed: float, nose_radius: float) -> float:
    """Peak-to-valley height of the feed marks of a round-nosed tool.

    Args:
        feed [length]: feed a turn
        nose_radius [length]: nose radius of the tool
    Returns [length]: peak-to-valley height
    Raises CannotBeDone: when a size is not more than zero or the feed is more than twice the nose radius.

    >>> round(turned_ridge(0.004, 0.03125), 7)
    6.4e-05
    """
    ridges_meet(feed, nose_radius)
    return feed**2 / (8 * nose_radius)


@formula(title="Average roughness, turned", text="roughness = feed**2 / (18 * sqrt(3) * nose_radius)", source=GEOMETRY)
def turned_roughness(feed: float, nose_radius: float) -> float:
    """Average roughness Ra of the feed marks of a round-nosed tool: about a quarter of the ridge height.

    Args:
        feed [length]: feed a turn
        nose_radius [length]: nose radius of the tool
    Returns [length]: roughness Ra
    Raises CannotBeDone: when a size is not more than zero or the feed is more than twice the nose radius.

    >>> round(turned_roughness(0.1, 0.4) * 1000, 2)
    0.8
    """
    ridges_meet(feed, nose_radius)
    return feed**2 / (18 * math.sqrt(3) * nose_radius)


@formula(title="Roughness in millionths", text="fine = roughness * factor", source=GEOMETRY)
def roughness_fine(roughness: float, factor: float) -> float:
    """A roughness in the small unit it is spoken of: millionths of an inch, or thousandths of a millimetre.

    Args:
        roughness [length]: roughness in the length's own unit
        factor [1]: 1000000 for inches, 1000 for millimetres
    Returns [1]: roughness in the small unit
    Raises CannotBeDone: when a size is not more than zero.

    >>> roughness_fine(0.0008, 1000)
    0.8
    """
    positive(roughness=roughness, factor=factor)
    return roughness * factor


@formula(title="Feed for a roughness", text="feed = sqrt(18 * sqrt(3) * nose_radius * roughness)", source=GEOMETRY)
def feed_for_roughness(roughness: float, nose_radius: float) -> float:
    """The coarsest feed a turn that geometry allows for an average roughness Ra.

    Args:
        roughness [length]: roughness Ra wanted
        nose_radius [length]: nose radius of the tool
    Returns [length]: feed a turn
    Raises CannotBeDone: when a size is not more than zero or the roughness is more than the nose can leave.

    >>> round(feed_for_roughness(0.0008, 0.4), 3)
    0.1
    """
    positive(roughness=roughness, nose_radius=nose_radius)
    feed = math.sqrt(18 * math.sqrt(3) * nose_radius * roughness)
    ridges_meet(feed, nose_radius)
    return feed


@formula(
    title="Scallop height of a ball cutter",
    text="height = radius - sqrt(radius**2 - (step / 2)**2)",
    source=GEOMETRY,
)
def scallop_height(step: float, radius: float) -> float:
    """Height of the ridges that a ball-nosed cutter leaves between two passes on a flat.

    Args:
        step [length]: step from pass to pass
        radius [length]: radius of the ball
    Returns [length]: height of the ridges
    Raises CannotBeDone: when a size is not more than zero or the step is more than the ball's diameter.

    >>> round(scallop_height(0.06, 0.05), 6)
    0.01
    """
    ridges_meet(step, radius)
    return radius - math.sqrt(radius**2 - (step / 2) ** 2)


@formula(
    title="Step for a scallop height",
    text="step = 2 * sqrt(2 * radius * height - height**2)",
    source=GEOMETRY,
)
def step_for_scallop(height: float, radius: float) -> float:
    """The widest step from pass to pass that keeps the ridges of a ball-nosed cutter to a height.

    Args:
        height [length]: height of the ridges allowed
        radius [length]: radius of the ball
    Returns [length]: step from pass to pass
    Raises CannotBeDone: when a size is not more than zero or the height is more than the ball's radius.

    >>> round(step_for_scallop(0.01, 0.05), 6)
    0.06
    """
    positive(height=height, radius=radius)
    if height > radius:
        raise CannotBeDone(f"ridges of {height:g} are higher than the ball's radius {radius:g}; give a lower ridge")
    return 2 * math.sqrt(2 * radius * height - height**2)
