"""Clamps, overhang in the vise, stick-out from the chuck, and how much a bar gives way under the tool.

Lengths are all in one unit; forces and stiffness in units that belong to it (lb and lb/in², N and N/mm²).
"""

from math import pi

from jobcards.source import COMMON, Source
from jobcards.trade.formula import CannotBeDone, formula
from jobcards.trade.guards import not_negative, positive, whole

BEAMS = Source("from memory", "beam formulas of the handbooks")
FREE_DIAMETERS = 3.0
"""Diameters a bar may stick out of a chuck with its end free; common practice."""
CENTRED_DIAMETERS = 10.0
"""Diameters a bar may stick out of a chuck with a centre at its end; common practice."""


@formula(
    title="Clamp's pressure on the work", text="share = bolt_to_heel / (bolt_to_heel + bolt_to_work)", source=COMMON
)
def clamp_share(bolt_to_heel: float, bolt_to_work: float) -> float:
    """Share of the bolt's pull that a strap clamp puts on the work; the rest goes into the heel block.

    Args:
        bolt_to_heel [length]: from the bolt to the middle of the heel block
        bolt_to_work [length]: from the bolt to where the strap bears on the work
    Returns [1]: share, from 0 to 1
    Raises CannotBeDone: when a length is not more than 0

    >>> clamp_share(3.0, 1.0)
    0.75
    """
    positive(bolt_to_heel=bolt_to_heel, bolt_to_work=bolt_to_work)
    return bolt_to_heel / (bolt_to_heel + bolt_to_work)


@formula(title="Reach of a strap over the work", text="reach = nose - gap", source=COMMON)
def clamp_reach(nose: float, gap: float) -> float:
    """How far a strap clamp reaches over the work.

    Args:
        nose [length]: from the bolt to the nose of the strap
        gap [length]: from the bolt to the edge of the work
    Returns [length]: length of strap over the work
    Raises CannotBeDone: when the strap does not reach the work

    >>> clamp_reach(1.5, 0.75)
    0.75
    """
    positive(bolt_to_nose=nose)
    not_negative(gap=gap)
    if gap >= nose:
        raise CannotBeDone(
            f"a strap with its nose {nose:g} from the bolt ends short of work {gap:g} away; move the bolt up"
        )
    return nose - gap


@formula(title="Room between cutter and clamp", text="room = cut_edge - cutter / 2 - reach", source=COMMON)
def clamp_clearance(cut_edge: float, cutter: float, reach: float) -> float:
    """Room between a cutter and a clamp that reaches over the same edge; less than 0 when they meet.

    Args:
        cut_edge [length]: from the work's edge to the nearest place of the cutter's axis
        cutter [length]: diameter of the cutter, or of its holder where that comes down beside the clamp
        reach [length]: how far the clamp reaches over the edge
    Returns [length]: room
    Raises CannotBeDone: when a size is less than 0

    >>> clamp_clearance(1.5, 0.5, 0.75)
    0.5
    """
    positive(cutter=cutter)
    not_negative(cut_edge=cut_edge, reach=reach)
    return cut_edge - cutter / 2 - reach


@formula(title="Overhang beyond the jaws", text="overhang = max(0, (length - jaw_width) / 2)", source=COMMON)
def overhang(length: float, jaw_width: float) -> float:
    """How far work that lies in the middle of the vise stands out beyond each end of the jaws; 0 when it does not.

    Args:
        length [length]: length of the work
        jaw_width [length]: width of the jaws
    Returns [length]: overhang at each end
    Raises CannotBeDone: when a size is not more than 0

    >>> overhang(9.0, 6.0)
    1.5
    """
    positive(length=length, jaw_width=jaw_width)
    return max(0.0, (length - jaw_width) / 2)


@formula(
    title="Longest stick-out from the chuck",
    text="longest = diameter * (3 + 7 * centred)",
    source=COMMON,
)
def longest_stick_out(diameter: float, centred: int) -> float:
    """Rule for how far a bar may stick out of a chuck: 3 diameters with its end free, 10 with a centre.

    Args:
        diameter [length]: least diameter that is to be turned
        centred [1]: 1 with a centre at the free end, 0 without
    Returns [length]: longest stick-out
    Raises CannotBeDone: when the diameter is not more than 0 or the centre not 0 or 1

    >>> longest_stick_out(0.75, 0)
    2.25
    """
    positive(diameter=diameter)
    whole(0, centred=centred)
    if centred > 1:
        raise CannotBeDone(f"a bar has one centre at its free end, not {centred:g}; write 1 or 0")
    return diameter * (CENTRED_DIAMETERS if centred else FREE_DIAMETERS)


@formula(
    title="Give of a bar held at one end",
    text="give = 64 * force * stick_out**3 / (3 * pi * stiffness * diameter**4)",
    source=BEAMS,
)
def give_free(force: float, stick_out: float, diameter: float, stiffness: float) -> float:
    """How far the free end of a round bar gives way to a force there: the work turns that much tapered on each side.

    Args:
        force [force]: force across the bar at its end
        stick_out [length]: length outside the chuck
        diameter [length]: diameter of the bar
        stiffness [force/length²]: modulus of elasticity: steel about 30e6 lb/in² or 207000 N/mm²
    Returns [length]: give at the end
    Raises CannotBeDone: when a size is not more than 0

    >>> round(give_free(50, 3.0, 0.75, 30e6), 4)
    0.001
    """
    positive(stick_out=stick_out, diameter=diameter, stiffness=stiffness)
    not_negative(force=force)
    return 64 * force * stick_out**3 / (3 * pi * stiffness * diameter**4)


@formula(
    title="Give of a bar held by chuck and centre",
    text="give = 7 * force * stick_out**3 / (12 * pi * stiffness * diameter**4)",
    source=BEAMS,
)
def give_centred(force: float, stick_out: float, diameter: float, stiffness: float) -> float:
    """How far the middle of a round bar between chuck and centre gives way to a force there.

    Args:
        force [force]: force across the bar at its middle
        stick_out [length]: length from chuck to centre
        diameter [length]: diameter of the bar
        stiffness [force/length²]: modulus of elasticity: steel about 30e6 lb/in² or 207000 N/mm²
    Returns [length]: give at the middle
    Raises CannotBeDone: when a size is not more than 0

    >>> round(give_centred(50, 7.5, 0.75, 30e6), 4)
    0.0004
    """
    positive(stick_out=stick_out, diameter=diameter, stiffness=stiffness)
    not_negative(force=force)
    return 7 * force * stick_out**3 / (12 * pi * stiffness * diameter**4)
