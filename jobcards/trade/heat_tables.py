"""Looking up heats: how a steel is hardened, the colours of tempering and of hot steel, the grinding allowance."""

from dataclasses import dataclass

from jobcards.source import Source
from jobcards.tables import Row, number, table
from jobcards.trade.formula import CannotBeDone
from jobcards.trade.guards import finite, positive
from jobcards.trade.heat import celsius_from_fahrenheit
from jobcards.trade.materials import material, nearest
from jobcards.trade.speeds_table import MM_PER_INCH, TableValue, inch_value, positive_inches


@dataclass(frozen=True)
class Hardening:
    """How a steel is hardened: heats in °F; soak in minutes for each inch of section, and the shortest; the quench."""

    material: str
    low: float
    high: float
    colour: str
    quench: str
    soak: float
    least: float
    temper_low: float
    temper_high: float
    note: str
    source: Source

    @property
    def middle(self) -> float:
        """The middle of the range of heats, in °F."""
        return (self.low + self.high) / 2

    def soak_for_each(self, unit: str) -> float:
        """Minutes of soak for each inch or millimetre of section."""
        return self.soak if unit == "in" else self.soak / MM_PER_INCH


def hardening(material_name: str) -> Hardening:
    """How to harden a material; raises CannotBeDone when it does not harden, naming those that do.

    >>> hardening("O1").quench, hardening("O1").colour
    ('oil, warm', 'light cherry red')
    """
    chart = table("hardening")
    known = material(material_name)
    for row in chart.rows:
        if row["material"] == known.name:
            low, high, soak, least = (number(row, key) for key in ("low", "high", "soak", "least"))
            tempers = number(row, "temper low"), number(row, "temper high")
            colour = heat_colour((low + high) / 2)
            source = chart.source_of(row)
            return Hardening(known.name, low, high, colour, row["quench"], soak, least, *tempers, row["note"], source)
    steels = ", ".join(row["material"] for row in chart.rows)
    raise CannotBeDone(f"{known.name} does not harden in the fire; those that do: {steels}")


def heat_shown(fahrenheit: float, unit: str) -> float:
    """A heat of a table in °F, or in °C to the whole degree, finer than which no table is.

    >>> heat_shown(1450, "°F"), heat_shown(1450, "°C")
    (1450, 788)
    """
    return fahrenheit if unit == "°F" else round(celsius_from_fahrenheit(fahrenheit))


def temper_colour(temperature: float) -> str:
    """The colour nearest to a tempering heat in °F; raises CannotBeDone when it lies past the colours.

    >>> temper_colour(460), temper_colour(530)
    ('light straw', 'purple')
    """
    return colour_near("temper_colours", temperature, margin=15)


def heat_colour(temperature: float) -> str:
    """The colour nearest to that of steel at a heat in °F; raises CannotBeDone when it does not glow.

    >>> heat_colour(1400)
    'full cherry red'
    """
    return colour_near("heat_colours", temperature, margin=100)


def temper_temperature(colour: str) -> TableValue:
    """The heat in °F at which a temper colour comes, with its span.

    >>> temper_temperature("light straw").value, temper_temperature("light straw").span
    (458.0, (443.0, 473.0))
    """
    chart = table("temper_colours")
    for row in chart.rows:
        if row["colour"] == colour:
            middle, within = number(row, "temperature"), number(row, "within")
            return TableValue(middle, "°F", chart.source_of(row), (middle - within, middle + within))
    raise CannotBeDone(f"no temper colour is called {colour!r}; {nearest(colour, [r['colour'] for r in chart.rows])}")


def colour_near(name: str, temperature: float, margin: float) -> str:
    """The colour of the row whose heat is nearest, no further past either end of the table than the margin."""
    finite(temperature=temperature)
    rows = table(name).rows
    first, last = number(rows[0], "temperature"), number(rows[-1], "temperature")
    if not first - margin <= temperature <= last + margin:
        raise CannotBeDone(
            f"steel has no colour to judge by at {temperature:g} °F; from {first:g} to {last:g} °F it has"
        )

    def away(row: Row) -> float:
        return abs(number(row, "temperature") - temperature)

    return str(min(rows, key=away)["colour"])


def grinding_allowance(longest: float, on: str, unit: str) -> TableValue:
    """What to leave for grinding on a `face` or a `diameter` of a hardened part, in or mm, by its longest size.

    >>> grinding_allowance(3.5, "face", "in").value
    0.008
    >>> grinding_allowance(75, "diameter", "mm").value
    0.3
    """
    chart = table("grinding_allowances")
    if on not in ("face", "diameter"):
        raise CannotBeDone(f"no grinding allowance for a {on}; write face or diameter")
    positive(longest=longest)
    inches = positive_inches(longest, unit)
    for row in chart.rows:
        if inches <= number(row, "up to") + 1e-9:
            return inch_value(number(row, on), unit, chart.source_of(row))
    raise CannotBeDone(f"no grinding allowance for {longest:g} {unit} long; the table ends at {row['up to']} in")
