"""In place of a card that cannot be made: what there is to mend, and where."""

from collections.abc import Sequence
from pathlib import Path

from jobcards.definition import Problem
from jobcards.pages.html import Html, element, heading, page, table
from jobcards.pages.writing import owned


def to_mend_page(path: Path, problems: Sequence[Problem]) -> str:
    """The page with the problems of a definition, each beside the line it is about."""
    lines = path.read_bytes().decode("utf-8", "replace").splitlines()
    rows = [
        (
            f"{problem.mark.line}, {problem.mark.column}",
            written(lines, problem),
            owned(problem.wrong, "job"),
            owned(problem.instead, "job"),
        )
        for problem in problems
    ]
    told = "The card is made as soon as this is mended and the file is saved; this page then shows it."
    return page(
        [
            heading(1, f"{path.stem}: to mend"),
            element("p", told),
            table(("Line, column", "It says", "What is wrong", "What to do"), rows, class_="keys stack"),
        ]
    )


def written(lines: Sequence[str], problem: Problem) -> Html:
    """The line of the file that a problem is about, cut to a length that can be read."""
    place = problem.mark.line - 1
    text = lines[place].strip()[:80] if 0 <= place < len(lines) else ""
    return element("span", owned(text, "job"), class_="as-written")
