"""All drawings of a job that was worked out."""

from dataclasses import replace
from functools import partial
from typing import Any

from jobcards.drawing import card_picture, part_drawing, set_up_picture, state_picture
from jobcards.dryrun import State
from jobcards.pages import on_disk
from jobcards.pages.kept import kept, part_key
from jobcards.pages.pictures import Pictures
from jobcards.pages.worked import Worked
from jobcards.planning.card import Card, PartPlan, SetUpPlan


def draw(worked: Worked) -> Pictures:
    """All drawings, as they were kept or drawn now."""
    name = f"{worked.name}-drawn"
    if (told := on_disk.found(name)) is None:
        told = as_plain(draw_all(worked))
        on_disk.keep(name, told)
    return from_plain(told)


def is_drawn(worked: Worked) -> bool:
    """Whether its drawings are kept."""
    return (on_disk.folder() / f"{worked.name}-drawn.json").is_file()


def as_plain(pictures: Pictures) -> dict[str, Any]:
    """All drawings in plain lists and mappings."""
    after = [[*key, svg] for key, svg in pictures.after.items()]
    return {"head": pictures.head, "parts": dict(pictures.parts), "set_ups": dict(pictures.set_ups), "after": after}


def from_plain(told: dict[str, Any]) -> Pictures:
    """All drawings again."""
    after = {(set_up_id, cut_id): svg for set_up_id, cut_id, svg in told["after"]}
    return Pictures(told["head"], told["parts"], told["set_ups"], after)


def draw_all(worked: Worked) -> Pictures:
    """The head, the parts, the set-ups at a machine, and the work after each operation."""
    card, run = worked.card, worked.run
    steps = steps_of(card)
    states = [state for part in run.parts for state in part.states if state.cut_id]
    states += [s for part in run.alternatives for s in part.states if s.cut_id and s.set_up_id in steps]
    set_ups = {set_up_id: set_up_svg(worked, *step) for set_up_id, step in steps.items()}
    return Pictures(
        head=kept(head_key(card), lambda: card_picture(card, run).svg),
        parts={part.id: part_svg(worked, part) for part in card.parts},
        set_ups={set_up_id: svg for set_up_id, svg in set_ups.items() if svg},
        after={(s.set_up_id, s.cut_id): state_svg(worked, s, *steps[s.set_up_id]) for s in states},
    )


def steps_of(card: Card) -> dict[str, tuple[PartPlan, SetUpPlan]]:
    """Every set-up with its part by its id; those of an alternative with the part made that way."""
    steps = {set_up.id: (part, set_up) for part in card.parts for set_up in part.set_ups}
    other = {
        set_up.id: (replace(part, set_ups=part.route_of(way)), set_up)
        for part in card.parts
        for way in part.alternatives
        for set_up in way.set_ups
    }
    return steps | other


def part_svg(worked: Worked, part: PartPlan) -> str:
    """The dimensioned drawing of a part."""
    return kept(sheet_key(worked.card, part), lambda: part_drawing(worked.card, part).svg)


def set_up_svg(worked: Worked, part: PartPlan, set_up: SetUpPlan) -> str:
    """A set-up as it stands at the machine; nothing for one at the bench."""
    key = set_up_key(worked.card, part, set_up)
    drawing = kept(key, partial(set_up_picture, worked.card, set_up, worked.run))
    return drawing.svg if drawing else ""


def state_svg(worked: Worked, state: State, part: PartPlan, set_up: SetUpPlan) -> str:
    """The work after an operation."""
    key = after_key(worked.card, part, set_up, state.cut_id)
    return kept(key, lambda: state_picture(worked.card, worked.run, state).svg)


def head_key(card: Card) -> str:
    """Tells the picture at the head of a card from any other drawing, and so on below."""
    return f"head {card.picture} " + " ".join(part_key(card, part) for part in card.parts)


def sheet_key(card: Card, part: PartPlan) -> str:
    return f"part {part_key(card, part)}"


def set_up_key(card: Card, part: PartPlan, set_up: SetUpPlan) -> str:
    return f"set-up {set_up.id} {part_key(card, part, set_up)}"


def after_key(card: Card, part: PartPlan, set_up: SetUpPlan, cut_id: str) -> str:
    return f"after {cut_id} {part_key(card, part, set_up)}"
