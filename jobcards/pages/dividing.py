"""How the work is turned on between cuts: a row a station, with the crank's turns and holes or the table's reading."""

from jobcards.pages.html import Html, element, join, table
from jobcards.pages.writing import Writer, tick
from jobcards.planning.card import Cut, SetUpPlan, Station
from jobcards.planning.number import Number

HEAD_COLUMNS = {"turns": "Whole turns", "holes": "Holes on", "circle": "Circle"}
TABLE_COLUMNS = {"turns": "Whole turns", "dial": "Dial"}


def stations(writer: Writer, set_up: SetUpPlan, cut: Cut) -> Html:
    """The table of stations; nothing for work that is cut where it lies."""
    moved = [station for station in cut.stations if station.move]
    if not moved:
        return Html("")
    on_table = any("dial" in station.move for station in moved)
    columns = TABLE_COLUMNS if on_table else HEAD_COLUMNS
    columns = {name: words for name, words in columns.items() if any(name in s.move for s in moved)}
    inexact = any(station.error is not None for station in cut.stations)
    heads = ("", "Angle", *columns.values(), *(["Out by"] if inexact else []), "Done")
    rows = (
        station_row(writer, f"{set_up.id}.{cut.id}.station.{n}", s, columns, inexact)
        for n, s in enumerate(cut.stations)
    )
    way = f"{cut.way} " if cut.way else ""
    what = f"Turn the table {way}to" if on_table else "Turn the crank on by"
    return element(
        "div", element("p", element("b", what)), table(heads, rows, class_="stations stack"), class_="turning"
    )


def station_row(writer: Writer, key: str, station: Station, columns: dict[str, str], inexact: bool) -> tuple[str, ...]:
    """One station: what is cut there, the drawing's angle, the move, how far it is out, a box to tick."""
    moves = [writer.large(station.move[name], unit=name == "dial") if name in station.move else "–" for name in columns]
    if not station.move:
        moves = ["as it stands", *[""] * (len(columns) - 1)]
    out = [writer.number(station.error) if station.error is not None else "–"] if inexact else []
    return (writer.line(station.label), writer.number(station.angle), *moves, *out, tick(key))


def move_in_short(writer: Writer, cut: Cut) -> Html:
    """For the wall: the move from cut to cut, or the table's first reading and how many there are."""
    moved = [station for station in cut.stations if station.move]
    if not moved:
        return Html("")
    last = moved[-1].move
    if "dial" in last:
        told = join(
            (join([strong(writer, s.move["turns"]), " turns ", strong(writer, s.move["dial"])]) for s in moved), ", "
        )
        way = f"{cut.way} " if cut.way else ""
        return join([f"table {way}to ", told])
    words = ["turn on ", strong(writer, last["turns"]), " turns"]
    if "holes" in last:
        words += [" + ", strong(writer, last["holes"]), " holes of ", strong(writer, last["circle"])]
    return join(words)


def strong(writer: Writer, number: Number) -> Html:
    """A number to be read from a step away."""
    return element("b", writer.number(number, number.unit == "deg"), class_="figure")
