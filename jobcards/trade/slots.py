"""T-slots and keyways: room for the cutter, depths from the touch, what to measure, and key sizes by table.

Lengths are all in one unit; key tables are asked in inches or in millimetres by name.
"""

from jobcards.source import COMMON, GEOMETRY, published
from jobcards.tables import Row, number, table
from jobcards.trade.formula import CannotBeDone, formula
from jobcards.trade.guards import not_negative, positive
from jobcards.trade.segments import flat_depth

KEY_TABLES = published(
    "ANSI B17.1 (inch square keys) and DIN 6885-1 (metric)", "1967 and 1968", "key sizes by shaft diameter"
)


@formula(title="Side room of a T-slot cutter's neck", text="room = (throat - neck) / 2", source=COMMON)
def tslot_neck_room(throat: float, neck: float) -> float:
    """Room each side of a T-slot cutter's neck in the throat that was milled first.

    Args:
        throat [length]: width of the throat
        neck [length]: diameter of the cutter's neck
    Returns [length]: room on each side
    Raises CannotBeDone: when the neck does not pass the throat

    >>> round(tslot_neck_room(0.500, 0.4375), 5)
    0.03125
    """
    positive(throat=throat, neck=neck)
    if neck >= throat:
        raise CannotBeDone(f"a cutter with a neck of {neck:g} does not pass a throat of {throat:g}; take a smaller one")
    return (throat - neck) / 2


@formula(title="Undercut of a T-slot", text="undercut = (cutter - throat) / 2", source=GEOMETRY)
def tslot_undercut(cutter: float, throat: float) -> float:
    """How far a T-slot reaches under the lip on each side.

    Args:
        cutter [length]: width of the wide part: the diameter of the T-slot cutter
        throat [length]: width of the throat
    Returns [length]: reach under each lip
    Raises CannotBeDone: when the cutter is no wider than the throat

    >>> tslot_undercut(0.875, 0.500)
    0.1875
    """
    positive(cutter=cutter, throat=throat)
    if cutter <= throat:
        raise CannotBeDone(f"a cutter of {cutter:g} undercuts nothing in a throat of {throat:g}; take a wider one")
    return (cutter - throat) / 2


@formula(title="Lip over a T-slot", text="lip = depth - head", source=GEOMETRY)
def tslot_lip(depth: float, head: float) -> float:
    """Thickness of the lip over a T-slot.

    Args:
        depth [length]: whole depth, from the face to the floor
        head [length]: height of the wide part: the width of the T-slot cutter
    Returns [length]: thickness of the lip
    Raises CannotBeDone: when nothing is left of the lip

    >>> tslot_lip(0.875, 0.375)
    0.5
    """
    positive(depth=depth, height_of_the_head=head)
    if head >= depth:
        raise CannotBeDone(f"a head {head:g} high leaves no lip in a depth of {depth:g}; go deeper")
    return depth - head


@formula(
    title="Keyway depth from the touch on the shaft",
    text="depth = shaft / 2 - sqrt((shaft / 2)**2 - (width / 2)**2) + side",
    source=GEOMETRY,
)
def keyway_depth(shaft: float, width: float, side: float) -> float:
    """Feed from the cutter's touch on the top of the shaft to the floor of the keyway.

    Half of a square key lies in the shaft, measured at the side of the keyway, not from the top of the shaft.

    Args:
        shaft [length]: diameter of the shaft
        width [length]: width of the keyway
        side [length]: depth of the keyway at its side: half the height of a square key
    Returns [length]: feed from the touch
    Raises CannotBeDone: when the keyway is wider than the shaft, or goes through its axis

    >>> round(keyway_depth(1.000, 0.250, 0.125), 4)
    0.1409
    """
    positive(side_depth=side)
    depth = flat_depth(shaft, width) + side
    if depth >= shaft / 2:
        raise CannotBeDone(f"a keyway {depth:.4f} deep reaches the axis of a shaft of {shaft:g}; take a smaller key")
    return depth


@formula(
    title="Keyway floor to the far side of the shaft",
    text="over = shaft / 2 + sqrt((shaft / 2)**2 - (width / 2)**2) - side",
    source=GEOMETRY,
)
def keyway_over(shaft: float, width: float, side: float) -> float:
    """What a micrometer reads from the floor of the keyway to the far side of the shaft.

    Args:
        shaft [length]: diameter of the shaft
        width [length]: width of the keyway
        side [length]: depth of the keyway at its side
    Returns [length]: floor to the far side
    Raises CannotBeDone: when the keyway is wider than the shaft, or goes through its axis

    >>> round(keyway_over(1.000, 0.250, 0.125), 4)
    0.8591
    """
    return shaft - keyway_depth(shaft, width, side)


@formula(
    title="Hub keyway to the far side of the bore",
    text="over = bore / 2 + sqrt((bore / 2)**2 - (width / 2)**2) - side + height + clearance",
    source=GEOMETRY,
)
def hub_over(bore: float, width: float, side: float, height: float, clearance: float) -> float:
    """What is measured in a hub, from the roof of its keyway to the far side of the bore.

    Args:
        bore [length]: diameter of the bore
        width [length]: width of the keyway
        side [length]: depth of the shaft's keyway at its side
        height [length]: height of the key
        clearance [length]: room over the key
    Returns [length]: roof to the far side
    Raises CannotBeDone: when the key is wider than the bore, or lies wholly in the shaft

    >>> round(hub_over(1.000, 0.250, 0.125, 0.250, 0.005), 4)
    1.1141
    """
    positive(height_of_the_key=height)
    not_negative(clearance=clearance)
    if height <= side:
        raise CannotBeDone(f"a key {height:g} high is wholly sunk in a keyway {side:g} deep; take a higher key")
    return keyway_over(bore, width, side) + height + clearance


def key_row(shaft: float, unit: str) -> Row:
    """The row of tables/keys.yml for a shaft, by its diameter in inches ("in") or millimetres ("mm").

    Raises CannotBeDone: when the table has no key for the shaft

    >>> key_row(1.0, "in")["width"]
    '0.25'
    """
    positive(shaft=shaft)
    rows = [row for row in table("keys").rows if row["unit"] == unit]
    for row in rows:
        if number(row, "over") < shaft <= number(row, "to"):
            return row
    raise CannotBeDone(
        f"the table has no key for a shaft of {shaft:g} {unit}; it goes from over {rows[0]['over']} to {rows[-1]['to']}"
        if rows
        else f"the table of keys has no sizes in {unit!r}; write 'in' or 'mm'"
    )


@formula(title="Width of the key for a shaft", text="by the table of keys", source=KEY_TABLES, worded=True)
def key_width(shaft: float, unit: str) -> float:
    """Width of the usual key for a shaft.

    Args:
        shaft [length]: diameter of the shaft, in the unit named
        unit [1]: "in" for inch square keys, "mm" for metric keys
    Returns [length]: width of the key
    Raises CannotBeDone: when the table has no key for the shaft

    >>> key_width(25, "mm")
    8.0
    """
    return number(key_row(shaft, unit), "width")


@formula(title="Side depth of the shaft keyway", text="by the table of keys", source=KEY_TABLES, worded=True)
def key_side_depth(shaft: float, unit: str) -> float:
    """Depth of the shaft's keyway: at its side for inch keys, from the top of the shaft (t1) for metric ones.

    Args:
        shaft [length]: diameter of the shaft, in the unit named
        unit [1]: "in" for inch square keys, "mm" for metric keys
    Returns [length]: depth in the shaft
    Raises CannotBeDone: when the table has no key for the shaft

    >>> key_side_depth(25, "mm")
    4.0
    """
    return number(key_row(shaft, unit), "shaft_depth")
