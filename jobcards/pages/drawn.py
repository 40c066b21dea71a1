"""All drawings of a job that was worked out."""

from jobcards.drawing import card_picture, part_drawing, set_up_picture, state_picture
from jobcards.pages.pictures import Pictures
from jobcards.pages.worked import Worked


def draw(worked: Worked) -> Pictures:
    """The head, the parts, the set-ups at a machine, and the work after each operation."""
    card, run = worked.card, worked.run
    set_ups = {each.id: set_up_picture(card, each, run) for each in card.set_ups}
    states = [state for part in run.parts for state in part.states if state.cut_id]
    return Pictures(
        head=card_picture(card, run).svg,
        parts={part.id: part_drawing(card, part).svg for part in card.parts},
        set_ups={set_up_id: drawing.svg for set_up_id, drawing in set_ups.items() if drawing},
        after={(state.set_up_id, state.cut_id): state_picture(card, run, state).svg for state in states},
    )
