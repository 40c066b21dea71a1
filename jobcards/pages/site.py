"""All files that are made for the site: the pages of every job, the index of cards, the formulas, the tables."""

import json
import os
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path

from jobcards.definition import ProblemsFound, job_paths, shop_paths
from jobcards.definition.schema import job_schema, shop_schema
from jobcards.pages import formulas, index, meanwhile, tables
from jobcards.pages.ahead import draw_ahead
from jobcards.pages.card import card_page, published
from jobcards.pages.html import Html
from jobcards.pages.numbers import as_json
from jobcards.pages.record import record_page
from jobcards.pages.to_mend import to_mend_page
from jobcards.pages.used import used_on
from jobcards.pages.wall import wall_page
from jobcards.pages.worked import Worked, every_card
from jobcards.planning import problems_of
from jobcards.planning.card import Card


@dataclass(frozen=True)
class SiteFile:
    """A file of the site: its path below the site's root (a page ends in .md) and what is in it."""

    path: str
    content: str | bytes
    told: str = ""  # for the terminal: what is wrong with the definition


def site_files(site_url: str = "", only: str = "", shop: str = "", forgiving: bool = False) -> Iterator[SiteFile]:
    """Every file that is made. `only` leaves out all jobs but the one; `shop` names another shop than the jobs' own.

    `forgiving` puts a page with what there is to mend in the place of a card that cannot be made; else such a
    definition raises ProblemsFound.
    """
    kit = next((path for path in shop_paths() if path.stem == shop), None)
    made: list[Worked] = []
    for path in job_paths():
        if only in ("", path.stem):
            try:
                made += every_card(path, kit)
            except ProblemsFound as found:
                if not forgiving:
                    raise
                problems = problems_of(path, kit) or found.problems  # those that stand behind others as well
                told = "\n".join(map(str, problems))
                yield SiteFile(f"jobs/{path.stem}/index.md", to_mend_page(path, problems), told)
    cards = [each.card for each in made]
    if not only:
        draw_ahead(made)
    for each in made:
        yield from job_files(each, site_url)
    yield SiteFile("jobs/index.md", index.index_page(cards))
    yield from schemas()
    if not meanwhile.once():
        yield from reference_files(cards)


def schemas() -> Iterator[SiteFile]:
    """What an editor needs to help while a job or a shop is written."""
    for name, schema in (("job", job_schema()), ("shop", shop_schema())):
        yield SiteFile(f"schema/{name}.json", json.dumps(schema, ensure_ascii=False, indent=1) + "\n")


def reference_files(cards: Sequence[Card]) -> Iterator[SiteFile]:
    """The formulas and the tables, each with the cards that use it."""
    users = used_on(cards, "key")
    for topic, entries in formulas.topics().items():
        yield SiteFile(f"formulas/{formulas.place(topic)}/index.md", formulas.topic_page(topic, entries, users))
    users = used_on(cards, "table")
    for name in tables.names():
        yield SiteFile(f"tables/{tables.place(name)}/index.md", tables.table_page(name, users.get(name, Html(""))))


def job_files(worked: Worked, site_url: str) -> Iterator[SiteFile]:
    """The files of one job."""
    card = worked.card
    rehearsals, pictures = meanwhile.shown_now(worked)
    folder = f"jobs/{card.slug}"
    sound = all(each.passed for each in rehearsals)
    told = "" if sound else f"{card.slug}: the dry run does not agree with the drawing. Do not cut to this card."
    yield SiteFile(f"{folder}/index.md", card_page(card, rehearsals, pictures), told)
    yield SiteFile(f"{folder}/wall/index.md", wall_page(card, site_url))
    yield SiteFile(f"{folder}/record/index.md", record_page(card, site_url))
    yield SiteFile(f"{folder}/numbers.json", as_json(published(card, rehearsals)))
    yield SiteFile(f"{folder}/job.yml", worked.definition)


def list_of_cards() -> Html:
    """The cards, for the home page."""
    only = os.environ.get("JOBCARDS_ONLY", "")
    made = (card for path in job_paths() if only in ("", path.stem) for card in sound_cards(path))
    return index.card_table((each.card for each in made), "jobs/")


def sound_cards(path: Path) -> list[Worked]:
    """The cards of a job; none while there is something to mend in it, which its own page tells."""
    kit = next((shop for shop in shop_paths() if shop.stem == os.environ.get("JOBCARDS_SHOP")), None)
    try:
        return every_card(path, kit)
    except ProblemsFound:
        return []
