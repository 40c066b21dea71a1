"""All files that are made for the site: the pages of every job, the index of cards, the formulas, the tables."""

import json
from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from jobcards.definition import ProblemsFound, job_paths, load_job, shop_paths
from jobcards.definition.schema import job_schema, shop_schema
from jobcards.pages import formulas, tables
from jobcards.pages.card import card_page
from jobcards.pages.html import Html, element, heading, join, link, page, table
from jobcards.pages.numbers import as_json
from jobcards.pages.record import record_page
from jobcards.pages.to_mend import to_mend_page
from jobcards.pages.wall import wall_page
from jobcards.pages.worked import Worked, every_card
from jobcards.pages.writing import Writer, furniture, owned


@dataclass(frozen=True)
class SiteFile:
    """A file of the site: its path below the site's root (a page ends in .md) and what is in it."""

    path: str
    content: str | bytes
    told: str = ""  # for the terminal: what is wrong with the definition


def site_files(site_url: str = "", only: str = "", shop: str = "", forgiving: bool = False) -> Iterator[SiteFile]:
    """Every file that is made. `only` leaves out all but the one job; `shop` names another shop than the jobs' own.

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
                yield SiteFile(f"jobs/{path.stem}/index.md", to_mend_page(path, found.problems), str(found))
    for each in made:
        yield from job_files(each, site_url)
    yield SiteFile("jobs/index.md", index_page(made))
    if not only:
        yield from reference_files()


def reference_files() -> Iterator[SiteFile]:
    """The formulas, the tables and the schemas."""
    for name, schema in (("job", job_schema()), ("shop", shop_schema())):
        yield SiteFile(f"schema/{name}.json", json.dumps(schema, ensure_ascii=False, indent=1) + "\n")
    for topic, entries in formulas.topics().items():
        yield SiteFile(f"formulas/{formulas.place(topic)}/index.md", formulas.topic_page(topic, entries))
    for name in tables.names():
        yield SiteFile(f"tables/{tables.place(name)}/index.md", tables.table_page(name))


def job_files(worked: Worked, site_url: str) -> Iterator[SiteFile]:
    """The files of one job."""
    from jobcards.pages.drawn import draw

    card = worked.card
    folder = f"jobs/{card.slug}"
    yield SiteFile(f"{folder}/index.md", card_page(card, worked.rehearsals, draw(worked)))
    yield SiteFile(f"{folder}/wall/index.md", wall_page(card, site_url))
    yield SiteFile(f"{folder}/record/index.md", record_page(card, site_url))
    yield SiteFile(f"{folder}/numbers.json", as_json(worked.numbers))
    yield SiteFile(f"{folder}/job.yml", worked.definition)


def index_page(worked: Iterable[Worked]) -> str:
    """The list of all cards."""
    rows = [index_row(each) for each in worked]
    heads = ("Card", "Level", "Machines", "Time", "Issue", "Sheets")
    return page([heading(1, "Job cards"), table(heads, rows, class_="card-index stack")])


def index_row(worked: Worked) -> list[str]:
    """One card in the list. Its numbers have their working on the card itself, so here they are plain text."""
    card, writer = worked.card, Writer()
    machines = dict.fromkeys(set_up.machine.text for set_up in card.set_ups)
    return [
        join(
            [
                link(f"{card.slug}/index.html", element("b", writer.authored(card.title))),
                element("div", writer.line(card.summary)),
            ]
        ),
        writer.authored(card.level),
        ", ".join(machines),
        f"about {card.time.shown} {card.time.unit}",
        join([writer.authored(card.revisions[-1][0]), " ", furniture(card.fingerprint)]),
        join([link(f"{card.slug}/wall/index.html", "Wall"), " ", link(f"{card.slug}/record/index.html", "Record")]),
    ]


def list_of_cards() -> Html:
    """The cards by title, for the home page."""
    jobs = (load_job(path) for path in job_paths())
    items = (
        element("li", link(f"jobs/{job.slug}/index.html", owned(job.title, "job")), " (", owned(job.level, "job"), ")")
        for job in jobs
    )
    return element("ul", *items, class_="index")
