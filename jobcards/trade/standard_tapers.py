"""Standard tapers by name: Morse and others, from tables/tapers.yml."""

from jobcards.source import published
from jobcards.tables import Row, number
from jobcards.trade.formula import CannotBeDone, formula
from jobcards.trade.looking_up import named_row

SERIES = published("ASME B5.10, Machine tapers: self holding and steep taper series", "1994", "Morse taper")


def taper_row(name: str) -> Row:
    """The row of a taper, by its name.

    Raises CannotBeDone: when the table has no such taper

    >>> taper_row("Morse 2")["large"]
    '0.7000'
    """
    return named_row("tapers", "name", name, f"no taper is called {name!r}")


@formula(title="Taper per foot of a standard taper", text="by the table of tapers", source=SERIES, worded=True)
def per_foot(name: str) -> float:
    """Taper per foot of a standard taper.

    Args:
        name [1]: its name, such as "Morse 2"
    Returns [in/ft]: taper per foot, on the diameter
    Raises CannotBeDone: when the table has no such taper

    >>> per_foot("Morse 1")
    0.59858
    """
    return number(taper_row(name), "per_foot")


@formula(title="Large end of a standard taper", text="by the table of tapers", source=SERIES, worded=True)
def large_end(name: str) -> float:
    """Diameter of a standard taper at its gauge line, the mouth of the socket.

    Args:
        name [1]: its name, such as "Morse 2"
    Returns [in]: diameter at the gauge line
    Raises CannotBeDone: when the table has no such taper, or it gives a rate only

    >>> large_end("Morse 2")
    0.7
    """
    row = taper_row(name)
    if "large" not in row:
        raise CannotBeDone(f"{name} is a rate of taper at any size; give the diameters of the job")
    return number(row, "large")
