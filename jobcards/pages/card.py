"""The page of a card: all its sections in the order they are wanted at the machine."""

from collections.abc import Sequence

from jobcards.pages import alternatives, head, html, order, proof, set_up, sheet
from jobcards.pages.html import Html
from jobcards.pages.pictures import Pictures
from jobcards.pages.rehearsal import Rehearsal
from jobcards.pages.used import used_section
from jobcards.pages.writing import Writer
from jobcards.planning.card import Card
from jobcards.planning.number import Number


def published(card: Card, rehearsals: Sequence[Rehearsal]) -> list[Number]:
    """All numbers of a card: those of the plan, then what came of the dry run."""
    return [
        *card.ledger,
        *(number for each in rehearsals for number in (each.deviation, each.allowed, each.difference)),
    ]


def card_page(card: Card, rehearsals: Sequence[Rehearsal] = (), pictures: Pictures = Pictures()) -> str:  # noqa: B008
    """The finished page."""
    writer = Writer()
    blocks: list[Html] = [
        *head.title_block(writer, card),
        proof.stop_notice(rehearsals),
        head.picture(pictures),
        *head.lessons(writer, card),
        *head.general_cautions(writer, card),
        *head.gather_list(writer, card),
        *head.cut_list(writer, card),
        *head.part_drawings(writer, card, pictures),
        *order.order_of_work(writer, card),
        *(block for each in card.set_ups for block in set_up.set_up_section(writer, card, each, pictures)),
        *alternatives.alternatives(writer, card, pictures),
        *proof.inspection(writer, card),
        *proof.requirements(writer, card),
        *proof.dry_run_section(writer, card, rehearsals),
        *sheet.working_sheet(writer, published(card, rehearsals)),
        *sheet.revisions(writer, card),
        *used_section(published(card, rehearsals)),
    ]
    return html.page(blocks)
