"""All drawings of a card, by what they show."""

from collections.abc import Mapping
from dataclasses import dataclass, field

from jobcards.pages.html import Html, drawing, element


@dataclass(frozen=True)
class Pictures:
    """Finished SVG drawings: the head, each part and each set-up by its id, the part after each (set-up, cut)."""

    head: str = ""
    parts: Mapping[str, str] = field(default_factory=dict)
    set_ups: Mapping[str, str] = field(default_factory=dict)
    after: Mapping[tuple[str, str], str] = field(default_factory=dict)


def figure(svg: str, class_: str, *caption: str) -> Html:
    """A drawing with what it shows written below; nothing when there is no drawing. The search leaves it out."""
    if not svg:
        return Html("")
    below = element("figcaption", *caption) if caption else Html("")
    return element("figure", drawing(svg), below, class_=f"drawing {class_}", data_search_exclude="")
