"""Drawings of a card as inline SVG: the parts, the set-ups, and the work after each operation.

Each is a pure function that returns a `Drawing` (svg, title, description); the same card gives the same bytes.
"""

from jobcards.drawing.isometric import card_picture, state_picture
from jobcards.drawing.part_sheet import part_drawing
from jobcards.drawing.set_ups import set_up_picture
from jobcards.drawing.svg import Drawing

__all__ = ["Drawing", "card_picture", "part_drawing", "set_up_picture", "state_picture"]
