"""What PyYAML says about a text it cannot read, said again for someone who does not know YAML."""

import yaml

from jobcards.definition.model import Mark
from jobcards.definition.problem import Problem

QUOTES = "put the whole text in quotes"
NEIGHBOURS = "indent it like its neighbours"
ALIAS = ("a text beginning with * is an alias to YAML", QUOTES)
ANCHOR = ("a text beginning with & is an anchor to YAML", QUOTES)
TAG = ("a text beginning with ! is a tag to YAML", QUOTES)
SAID = {
    "mapping values are not allowed": (
        "a second “: ” stands in this line, or the indentation is off",
        f"{QUOTES}, or {NEIGHBOURS}",
    ),
    "scanning an alias": ALIAS,
    "scanning an anchor": ANCHOR,
    "scanning a tag": TAG,
    "found undefined tag handle": TAG,
    "cannot start any token": ("a text cannot begin with this character", QUOTES),
    "could not find expected ':'": (
        "a key is without its “: ”, or a line is not indented enough",
        "write “key: value”, or indent the line more",
    ),
    "scanning a double-quoted scalar": (
        "a backslash or a missing end spoils this quoted text",
        "close the quote, or use single quotes",
    ),
    "scanning a quoted scalar": ("a quote is not closed", "close the quote"),
    "parsing a flow mapping": (
        "a “{” is not closed, or a comma is missing inside it",
        "close it with “}”, or put a text that begins with { in quotes",
    ),
    "parsing a flow sequence": (
        "a “[” is not closed, or a comma is missing inside it",
        "close it with “]”, or put a text that begins with [ in quotes",
    ),
    "parsing a block mapping": (
        "this does not belong to the keys above it",
        f"{NEIGHBOURS}, and put a text that begins with a quote, {{ or [ in quotes whole",
    ),
    "parsing a block collection": ("this does not belong to the dashes above it", NEIGHBOURS),
    "sequence entries are not allowed": ("a dash cannot stand here", "put the list on the lines below its key"),
    "expected the node content": ("a value is missing or stands wrong here", "write the value after the key"),
    "expected '<document start>'": ("this belongs to nothing above it", f"leave it out, or {NEIGHBOURS}"),
}
# What was begun here is missed only lines later; the place where it began is told.
LEFT_OPEN = ("simple key", "quoted scalar", "a flow")


def explained(error: yaml.MarkedYAMLError, file: str) -> Problem:
    """The problem behind an error of PyYAML, with its place."""
    said = f"{error.context or ''} {error.problem or ''}"
    place, begun = error.problem_mark or error.context_mark, error.context_mark
    if place and begun and begun.line < place.line and any(words in said for words in LEFT_OPEN):
        place = begun
    mark = Mark(file, place.line + 1, place.column + 1) if place else Mark(file, 1, 1)
    for words, (wrong, instead) in SAID.items():
        if words in said:
            return Problem(mark, wrong, instead)
    return Problem(mark, "this cannot be read as YAML", "look at the indentation, the colons and the quotes")
