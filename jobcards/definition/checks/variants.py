"""A variant changes sizes that are there, and its card has an address of its own."""

import re
import unicodedata
from collections.abc import Iterator, Mapping
from pathlib import Path

from jobcards.definition.model import Mark
from jobcards.definition.problem import Problem, advise
from jobcards.definition.size import StatedSize

Variants = Mapping[str, Mapping[str, StatedSize]]


def address(stem: str, variant: str) -> str:
    """The address of a variant's card: the file's name and the variant's, in lower case with hyphens.

    >>> address("clamp", "4-1/2 in Länge"), address("clamp", "")
    ('clamp-4-1-2-in-lange', 'clamp')
    """
    plain = unicodedata.normalize("NFKD", variant).encode("ascii", "ignore").decode().lower()
    return "-".join([stem, *re.findall(r"[a-z0-9]+", plain)])


def check_variants(
    variants: Variants,
    names: Mapping[str, Mark],
    places: Mapping[str, Mapping[str, Mark]],
    sizes: Mapping[str, Mark],
    file: Path,
) -> Iterator[Problem]:
    """The problems of the variants. `names`, `places` and `sizes`: where the keys stand."""
    taken = {path.stem for path in file.parent.glob("*.yml")} if variants else set()
    for variant, changed in variants.items():
        slug = address(file.stem, variant)
        if slug in taken:
            wrong = f"the variant “{variant}” would have the address {slug}, which is taken"
            yield Problem(names[variant], wrong, "call it something else, with letters from a to z or digits")
        taken.add(slug)
        for size in changed:
            if size not in sizes:
                wrong = f"“{size}” is not a size of this job, so no variant can change it"
                yield Problem(places[variant][size], wrong, advise(size, sizes))
