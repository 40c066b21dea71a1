"""Finding a row of a table by its name."""

from jobcards.tables import Row, table
from jobcards.trade.formula import CannotBeDone


def named_row(chart: str, column: str, name: str, missing: str, hint: str = "") -> Row:
    """The row of a table whose column holds a name; `missing` says what there is none of, `hint` what else to write.

    Raises CannotBeDone: when there is no such row, with all that there are.

    >>> named_row("tapers", "name", "Morse 2", "no taper is called Morse 2")["large"]
    '0.7000'
    """
    rows = table(chart).rows
    for row in rows:
        if row[column] == name:
            return row
    raise CannotBeDone(f"{missing}; write one of {', '.join(row[column] for row in rows)}{hint}")
