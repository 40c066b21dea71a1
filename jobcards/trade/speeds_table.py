"""Looking up where to begin: cutting speed, chip load, drill feed, lathe feed and depth of cut of a material.

The tables are in inch units. A metric value is the inch one turned over and rounded to two figures, which is finer
than any of them is known.
"""

from dataclasses import dataclass, replace

from jobcards.source import Source, published
from jobcards.tables import Row, Table, number, table
from jobcards.trade.cutting import reduced_speed
from jobcards.trade.formula import CannotBeDone
from jobcards.trade.guards import positive
from jobcards.trade.materials import material, nearest

MM_PER_INCH = 25.4
M_PER_FOOT = 0.3048
HAIR = 1e-9

OTHER_NAMES = {"hss": "high-speed steel", "facing": "turning", "spotting": "drilling", "centre drilling": "drilling"}
MILLING = ("end milling", "face milling", "side milling", "slotting", "fly cutting")

# The part of the drilling speed that these run at.
PART_OF_DRILLING = {"reaming": 0.5, "counterboring": 0.25, "countersinking": 0.25, "spotfacing": 0.25}
REAMING = published("War Department TM 1-420", "29 November 1940", "paragraph 37: half the drilling speed")


@dataclass(frozen=True)
class TableValue:
    """A value looked up: amount, unit, source, and the range in use where the table gives one."""

    value: float
    unit: str
    source: Source
    span: tuple[float, float] | None = None


def cutting_speed(material_name: str, cutter_material: str, operation: str, unit: str) -> TableValue:
    """The cutting speed to begin with, in ft/min or m/min.

    Raises CannotBeDone when the material, cutter, operation or unit is not in the table, with the nearest that is.

    >>> cutting_speed("mild steel", "high-speed steel", "drilling", "ft/min").value
    80.0
    >>> cutting_speed("mild steel", "high-speed steel", "reaming", "m/min").value
    12.0
    """
    cutter = OTHER_NAMES.get(cutter_material.lower(), cutter_material)
    known = material(material_name)
    if operation in PART_OF_DRILLING:
        low, high, start = read_speeds(known.group, cutter, "drilling")
        part = PART_OF_DRILLING[operation]
        low, high, start = (reduced_speed(speed, part) for speed in (low, high, start))
    else:
        low, high, start = read_speeds(known.group, cutter, "milling" if operation in MILLING else operation)
    source = replace(REAMING, table="cutting_speeds") if operation == "reaming" else speeds_source(known.group, cutter)
    low, high, start = (to_unit(speed, unit, "ft/min", "m/min", M_PER_FOOT) for speed in (low, high, start))
    return TableValue(start, unit, source, (low, high))


def speeds_row(group: str, cutter: str) -> Row:
    """The row of the cutting speeds of a material group and cutter material."""
    rows = table("cutting_speeds").rows
    for row in rows:
        if (row["group"], row["cutter"]) == (group, cutter):
            return row
    cutters = [row["cutter"] for row in rows if row["group"] == group]
    raise CannotBeDone(f"no cutting speeds for {cutter!r} cutters in {group}; {nearest(cutter, cutters)}")


def speeds_source(group: str, cutter: str) -> Source:
    """Where the cutting speeds of a material group and cutter material come from."""
    return table("cutting_speeds").source_of(speeds_row(group, cutter))


def read_speeds(group: str, cutter: str, operation: str) -> tuple[float, float, float]:
    """Lowest, highest and starting speed in ft/min, as the table has them.

    >>> read_speeds("cast iron", "high-speed steel", "milling")
    (50.0, 80.0, 60.0)
    """
    row = speeds_row(group, cutter)
    wanted = OTHER_NAMES.get(operation, operation)
    if wanted not in row:
        every = [key for row in table("cutting_speeds").rows for key in row if isinstance(row[key], list)]
        if wanted in every:
            raise CannotBeDone(f"{wanted} in {group} with {cutter} has no speed here; use a high-speed steel cutter")
        raise CannotBeDone(f"no cutting speed for {operation!r}; {nearest(operation, [*every, *PART_OF_DRILLING])}")
    low, high, start = (float(speed) for speed in row[wanted])
    return low, high, start


def chip_load(material_name: str, cutter: str, diameter: float, unit: str) -> TableValue:
    """Feed for each tooth of an end mill of a diameter, or of a face mill or fly cutter, in inches or mm.

    `diameter` is in the same unit as the result, in or mm. Raises CannotBeDone when it is larger than the table goes.

    >>> chip_load("mild steel", "end mill", 0.5, "in").value
    0.002
    >>> chip_load("mild steel", "face mill", 63, "mm").value
    0.1
    """
    chart = table("chip_loads")
    row = row_where(chart, group=material(material_name).group)
    inches = positive_inches(diameter, unit)
    if cutter in ("face mill", "fly cutter"):
        return inch_value(number(row, "face mill"), unit, chart.source_of(row))
    sizes = [float(key) for key in row if key[0].isdigit()]
    if cutter != "end mill":
        raise CannotBeDone(f"no chip load for {cutter!r}; {nearest(cutter, ['end mill', 'face mill', 'fly cutter'])}")
    if inches > max(sizes) + HAIR:
        raise CannotBeDone(f"no chip load for an end mill of {inches:g} in; the table ends at {max(sizes):g} in")
    column = min(size for size in sizes if inches <= size + HAIR)
    return inch_value(number(row, f"{column:g}"), unit, chart.source_of(row))


def drill_feed(material_name: str, diameter: float, unit: str) -> TableValue:
    """Feed a turn of a twist drill, in inches or mm; `diameter` is in the same unit.

    Raises CannotBeDone when the drill is larger than the table goes.

    >>> drill_feed("mild steel", 0.5, "in").value
    0.005
    >>> drill_feed("brass", 10, "mm").value
    0.15
    """
    chart = table("drill_feeds")
    inches = positive_inches(diameter, unit)
    for row in chart.rows:
        if inches <= number(row, "up to") + HAIR:
            return ranged_value(row, material(material_name).cuts_like, unit, chart.source_of(row))
    raise CannotBeDone(f"no feed for a drill of {inches:g} in; the table ends at {chart.rows[-1]['up to']} in")


def turning_feed(material_name: str, operation: str, stage: str, unit: str) -> TableValue:
    """Feed a turn for turning, boring or parting, roughing or finishing, in inches or mm.

    >>> turning_feed("mild steel", "turning", "finishing", "in").value
    0.003
    >>> turning_feed("O1", "turning", "roughing", "mm").value
    0.15
    """
    chart = table("lathe_feeds")
    row = row_where(chart, operation=OTHER_NAMES.get(operation, operation), stage=stage)
    return ranged_value(row, material(material_name).cuts_like, unit, chart.source_of(row))


def depth_of_cut(material_name: str, operation: str, stage: str, unit: str, diameter: float) -> TableValue:
    """Deepest pass to begin with, in inches or mm; `diameter` is the cutter's, in the same unit, 0 when it has none.

    On a lathe it is the depth on the radius. Raises CannotBeDone when the depth goes by a diameter and none is given.

    >>> depth_of_cut("mild steel", "slotting", "roughing", "in", 0.5).value
    0.125
    >>> depth_of_cut("aluminium", "turning", "roughing", "mm", 0).value
    1.5
    """
    chart = table("cut_depths")
    row = row_where(chart, operation=OTHER_NAMES.get(operation, operation), stage=stage)
    amount = number(row, material(material_name).cuts_like)
    if row["of"] == "inches":
        return inch_value(amount, unit, chart.source_of(row))
    positive_inches(diameter, unit)
    return TableValue(amount * diameter, unit, chart.source_of(row))


def row_where(chart: Table, **wanted: str) -> Row:
    """The row of a table that has the wanted words under these headings; else what could be written instead."""
    rows = list(chart.rows)
    for heading, word in wanted.items():
        matching = [row for row in rows if row[heading] == word]
        if not matching:
            choices = nearest(word, [row[heading] for row in rows])
            raise CannotBeDone(f"the table of {chart.title.lower()} has no {heading} {word!r}; {choices}")
        rows = matching
    return rows[0]


def ranged_value(row: Row, cuts_like: str, unit: str, source: Source) -> TableValue:
    """The starting value of a row by how the material cuts, with the row's range."""
    start, low, high = (inch_value(number(row, key), unit, source).value for key in (cuts_like, "low", "high"))
    return TableValue(start, unit, source, (low, high))


def inch_value(inches: float, unit: str, source: Source) -> TableValue:
    """An inch value of a table, handed back in inches or mm."""
    return TableValue(to_unit(inches, unit, "in", "mm", MM_PER_INCH), unit, source)


def positive_inches(size: float, unit: str) -> float:
    """A cutter's diameter in inches, from inches or mm.

    >>> positive_inches(12.7, "mm")
    0.5
    """
    positive(diameter=size)
    known_unit(unit, "in", "mm")
    return size if unit == "in" else size / MM_PER_INCH


def to_unit(amount: float, unit: str, inch: str, metric: str, factor: float) -> float:
    """An amount of the inch tables in the unit asked for; the metric one keeps two figures.

    >>> to_unit(100, "m/min", "ft/min", "m/min", 0.3048)
    30.0
    """
    known_unit(unit, inch, metric)
    return amount if unit == inch else float(f"{amount * factor:.2g}")


def known_unit(unit: str, inch: str, metric: str) -> None:
    """Refuse a unit that is neither the inch one nor the metric one."""
    if unit not in (inch, metric):
        raise CannotBeDone(f"{unit!r} is no unit for this; write {inch} or {metric}")
