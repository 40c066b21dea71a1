"""The register of figures: each explains one or more formulas of a topic, and is drawn once in a process."""

from collections.abc import Callable
from dataclasses import dataclass
from functools import cache

from jobcards.drawing.paper import Sheet
from jobcards.drawing.svg import Drawing, finish

Draw = Callable[[Sheet], None]
NARROWEST, MARGIN = 80.0, 1.5  # mm


@dataclass(frozen=True)
class Figure:
    """A figure: its id, what it shows, the formulas it explains, and how it is drawn."""

    id: str
    title: str
    description: str
    explains: tuple[str, ...]
    draw: Draw

    @property
    def drawing(self) -> Drawing:
        """The figure as a drawing. All lengths and angles in it are made up for the eye: it shows names, no numbers."""
        return drawn(self)


FIGURES: dict[str, Figure] = {}  # key of a formula -> its figure


def figure(*explains: str, title: str, description: str) -> Callable[[Draw], Draw]:
    """Register a figure for formulas, named as in the register of formulas: `topic.function`.

    In black stand the names of the formulas' own arguments and results; words in grey say what a thing is.
    """

    def register(draw: Draw) -> Draw:
        topic = draw.__module__.rsplit(".", 1)[-1]
        entry = Figure(f"figure-{topic}-{draw.__name__}".replace("_", "-"), title, description, explains, draw)
        for key in explains:
            if key in FIGURES and FIGURES[key].id != entry.id:
                raise ValueError(f"{key} has two figures: {FIGURES[key].id} and {entry.id}")
            FIGURES[key] = entry
        return draw

    return register


@cache
def drawn(entry: Figure) -> Drawing:
    """Draw a figure on a sheet just wide enough, 80 mm or more."""
    sheet = Sheet(NARROWEST)
    entry.draw(sheet)
    box = sheet.bounds()
    sheet.width = max(NARROWEST, box.right - box.left + 2 * MARGIN)
    sheet.trim(MARGIN)
    return finish(sheet, entry.id, entry.title, entry.description)
