"""Strap clamps, overhang in the vise, stick-out from the chuck, and how much a bar gives way under the tool.

Lengths are all in one unit; forces and stiffness in units that belong to it (lb and lb/in², N and N/mm²).
"""

from math import pi

from jobcards.source import ARITHMETIC, COMMON, Source
from jobcards.trade.formula import CannotBeDone, formula
from jobcards.trade.guards import not_negative, positive, whole

BEAMS = Source("from memory", "beam formulas of the handbooks")
FREE_DIAMETERS = 3.0
"""Diameters a bar may stick out of a chuck with its end free; common practice."""
CENTRED_DIAMETERS = 10.0
"""Diameters a bar may stick out of a chuck with a centre at its end; common practice."""
NUT_AND_END = 1.5
"""A nut is about as high as its stud is thick, and the stud stands out by half of that; common practice."""


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


@formula(
    title="Place of a clamp that shares an edge", text="place = length * (2 * index - 1) / (2 * count)", source=COMMON
)
def shared_place(length: float, index: int, count: int) -> float:
    """Where along an edge a clamp stands when several share it evenly: each in the middle of its own piece.

    Args:
        length [length]: length of the edge
        index [1]: which clamp, from 1
        count [1]: clamps on that edge
    Returns [length]: from the beginning of the edge
    Raises CannotBeDone: when the length is not more than 0, or there is no such clamp

    >>> [shared_place(8.0, index, 2) for index in (1, 2)]
    [2.0, 6.0]
    """
    positive(length=length)
    whole(1, index=index, count=count)
    if index > count:
        raise CannotBeDone(f"clamp {index:g} of {count:g} is one too many")
    return length * (2 * index - 1) / (2 * count)


@formula(title="Stud beside the work", text="gap = stud / 2 + room", source=COMMON)
def stud_gap(stud: float, room: float) -> float:
    """How far the middle of a clamp's stud stands from the edge of the work, as near as it can.

    Args:
        stud [length]: across the stud
        room [length]: left between the stud and the work
    Returns [length]: middle of the stud to the edge
    Raises CannotBeDone: when the stud is not more than 0 or the room is less

    >>> stud_gap(0.5, 0.0625)
    0.3125
    """
    positive(stud=stud)
    not_negative(room=room)
    return stud / 2 + room


@formula(title="Stud to where the strap bears", text="apart = gap + reach / 2", source=COMMON)
def bolt_to_work(gap: float, reach: float) -> float:
    """From the stud to the middle of the nose on the work.

    Args:
        gap [length]: middle of the stud to the edge of the work
        reach [length]: how far the nose goes over the work
    Returns [length]: stud to the middle of the nose
    Raises CannotBeDone: when the gap is less than 0 or the reach not more

    >>> bolt_to_work(0.3125, 0.625)
    0.625
    """
    not_negative(gap=gap)
    positive(reach=reach)
    return gap + reach / 2


@formula(title="Stud to the heel", text="apart = length - reach - gap", source=COMMON)
def bolt_to_heel(length: float, reach: float, gap: float) -> float:
    """From the stud to the end of the strap that lies on the heel block.

    Args:
        length [length]: length of the strap
        reach [length]: how far its nose goes over the work
        gap [length]: middle of the stud to the edge of the work
    Returns [length]: stud to heel
    Raises CannotBeDone: when the strap is too short to reach a heel block behind the stud

    >>> bolt_to_heel(4.0, 0.625, 0.3125)
    3.0625
    """
    positive(length=length, reach=reach)
    not_negative(gap=gap)
    if length <= reach + gap:
        raise CannotBeDone(f"a strap {length:g} long has nothing left behind its stud; take a longer one")
    return length - reach - gap


@formula(title="Heel of a clamp", text="heel = top + rise", source=COMMON)
def heel_height(top: float, rise: float) -> float:
    """Height of a clamp's heel block: a little more than the work, so that the nose bears and not the heel.

    A strap that slopes down to its heel presses on the work's edge alone and pushes it away.

    Args:
        top [length]: height of what the nose bears on
        rise [length]: how much higher the heel is set
    Returns [length]: height of the heel block
    Raises CannotBeDone: when the top is not more than 0 or the rise is less

    >>> heel_height(1.75, 0.0625)
    1.8125
    """
    positive(top=top)
    not_negative(rise=rise)
    return top + rise


@formula(title="How high a clamp stands up", text="up = strap + 1.5 * stud", source=COMMON)
def stands_up(strap: float, stud: float) -> float:
    """How far strap, nut and the stud's end stand above the work: the nut as high as the stud is thick, and its end.

    Args:
        strap [length]: thickness of the strap
        stud [length]: across the stud
    Returns [length]: above the face that the nose bears on
    Raises CannotBeDone: when a size is not more than 0

    >>> stands_up(0.5, 0.5)
    1.25
    """
    positive(strap=strap, stud=stud)
    return strap + NUT_AND_END * stud


@formula(
    title="What the work takes up of an angle plate",
    text="wanted = work + 2 * (length - reach) - heel",
    source=ARITHMETIC,
)
def between_heels(work: float, length: float, reach: float, heel: float) -> float:
    """How wide a plate must be for the work with a clamp on both sides: the middle of each heel block stands on it.

    Args:
        work [length]: width of the work
        length [length]: length of a strap, whose end lies on the heel block
        reach [length]: how far its nose goes over the work
        heel [length]: width of the heel block along the strap
    Returns [length]: width wanted
    Raises CannotBeDone: when a size is not more than 0, or the strap ends on the work

    >>> between_heels(2.0, 4.0, 0.625, 1.0)
    7.75
    """
    positive(work=work, length=length, reach=reach, heel=heel)
    if length <= reach + heel:
        raise CannotBeDone(f"a strap {length:g} long has no room for a heel block beside the work; take a longer one")
    return work + 2 * (length - reach) - heel


@formula(title="Work above the angle plate", text="above = seat + work - plate", source=ARITHMETIC)
def above_plate(seat: float, work: float, plate: float) -> float:
    """How far work clamped to an angle plate stands above it; less than 0 when the plate is the higher.

    Args:
        seat [length]: height of what the work stands on, over the table
        work [length]: height of the work as it stands
        plate [length]: height of the plate's upright face over the table
    Returns [length]: above the plate
    Raises CannotBeDone: when the work or the plate has no height

    >>> above_plate(1.0, 6.0, 5.0)
    2.0
    """
    not_negative(seat=seat)
    positive(work=work, plate=plate)
    return seat + work - plate


@formula(title="Stud beside a V-block", text="off = block / 2 + gap", source=COMMON)
def stud_off_axis(block: float, gap: float) -> float:
    """How far a stud stands from the axis of round work in V-blocks, beside the blocks.

    Args:
        block [length]: width of the V-block
        gap [length]: middle of the stud to the block's side
    Returns [length]: middle of the stud to the axis
    Raises CannotBeDone: when the block has no width or the gap is less than 0

    >>> stud_off_axis(2.0, 0.3125)
    1.3125
    """
    positive(block=block)
    not_negative(gap=gap)
    return block / 2 + gap


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
