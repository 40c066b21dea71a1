"""All drawings of a job that was worked out."""

from jobcards.drawing import card_picture, part_drawing, set_up_picture, state_picture
from jobcards.pages.pictures import Pictures
from jobcards.pages.worked import Worked


def draw(worked: Worked) -> Pictures:
    """The head, the parts, the set-ups at a machine, and the part after each operation."""
    card, run = worked.card, worked.run
    return Pictures(
        head=card_picture(card, run).svg,
        parts={part.id: part_drawing(card, part).svg for part in card.parts},
        set_ups={each.id: set_up_picture(card, each).svg for each in card.set_ups if each.kind != "bench"},
        after={
            (state.set_up_id, state.cut_id): state_picture(run, state).svg
            for part in run.parts
            for state in part.states
            if state.cut_id
        },
    )
