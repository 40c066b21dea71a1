"""The order of work: every set-up on one line, with its reason."""

from jobcards.pages.html import Html, element, heading, join, table
from jobcards.pages.writing import Writer
from jobcards.planning.card import Card, SetUpPlan


def order_of_work(writer: Writer, card: Card) -> list[Html]:
    """A table of all set-ups. Places where one may stop are marked."""
    names = {part.id: part.name for part in card.parts}
    rows = (
        (
            writer.large(set_up.number),
            writer.authored(names[set_up.part]),
            writer.authored(set_up.title),
            writer.authored(set_up.machine),
            reason(writer, set_up),
        )
        for set_up in card.set_ups
    )
    heads = ("No.", "Part", "Set-up", "Machine", "Why here")
    return [heading(2, "Order of work"), table(heads, rows, class_="order stack")]


def reason(writer: Writer, set_up: SetUpPlan) -> Html:
    """Why it comes here, and whether one may stop after it."""
    stop = element("span", "May stop after this", class_="may-stop") if set_up.stopping_point else Html("")
    return join([writer.line(set_up.why), " ", stop])
