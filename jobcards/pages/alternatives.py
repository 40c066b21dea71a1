"""Other ways to do a piece of the route, each a section of its own after the route."""

from string import ascii_lowercase

from jobcards.pages.html import Html, element, heading, join
from jobcards.pages.pictures import Pictures
from jobcards.pages.set_up import set_up_section
from jobcards.pages.writing import Writer
from jobcards.planning.card import AlternativePlan, Card, PartPlan


def alternatives(writer: Writer, card: Card, pictures: Pictures) -> list[Html]:
    """The alternatives of every part; nothing when there are none."""
    return [
        block
        for part in card.parts
        for way in part.alternatives
        for block in alternative(writer, card, part, way, pictures)
    ]


def alternative(writer: Writer, card: Card, part: PartPlan, way: AlternativePlan, pictures: Pictures) -> list[Html]:
    """What it stands for and why, then its set-ups, lettered after the number of the first one it stands for."""
    replaced = [set_up for set_up in part.set_ups if set_up.id in way.replaces]
    names = [join([writer.number(each.number), ". ", writer.authored(each.title)]) for each in replaced]
    told = element("p", "Instead of ", join(names, ", "), ". All other set-ups stay as they are.", class_="instead-of")
    head = heading(2, "Another way: ", writer.authored(part.name), ", ", writer.authored(way.name))
    blocks = [head, element("div", told, writer.labelled("Why:", way.why, "why"), class_="alternative")]
    for letter, set_up in zip(ascii_lowercase, way.set_ups, strict=False):
        blocks += set_up_section(writer, card, set_up, pictures, letter)
    return blocks


def name_of(writer: Writer, card: Card, run_id: str) -> Html:
    """The part, or the part and the other way it was made by, of a dry run."""
    for part in card.parts:
        if part.id == run_id:
            return writer.authored(part.name)
        for way in part.alternatives:
            if way.id == run_id:
                return join([writer.authored(part.name), ", ", writer.authored(way.name)])
    raise KeyError(run_id)
