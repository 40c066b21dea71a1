"""A rotary table set on edge, its axis level: it then divides like a dividing head, and its rim stands high."""

from jobcards.definition.job import Hold
from jobcards.definition.shop_dividing import RotaryTable
from jobcards.planning.number import Number
from jobcards.planning.words import Line, line
from jobcards.planning.work import Work, from_shop
from jobcards.trade import side_milling


def on_edge(work: Work, hold: Hold, table: RotaryTable, shop_id: str, sizes: dict[str, Number]) -> list[Line]:
    """How it stands, its sizes entered; a table that lies flat only is a problem."""
    if not table.on_edge:
        work.problem(
            hold.place("holder"),
            f"the shop file does not say that the {hold.holder} stands on edge",
            "write on edge: true there, or hold the part in a dividing head",
        )
    across = work.shop_length(f"{shop_id}.diameter", table.diameter, "across the rotary table's face")
    sizes["table diameter"] = across
    rim = work.of(shop_id).length("rim", side_milling.half_width, "the table's rim above its axis", width=across)
    return [
        line(
            "At the left end of the machine's table the {table} set on edge, its axis level and along the table, "
            "bolted down: clock a test bar along its top and its side.",
            table=from_shop(hold.holder),
        ),
        line("Its rim stands {rim} above the axis: look where the spindle and the holder go.", rim=rim),
    ]
