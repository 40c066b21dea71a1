"""A problem of a definition, as it is told to the one who wrote it."""

from collections.abc import Iterable
from dataclasses import dataclass
from difflib import get_close_matches

from jobcards.definition.model import Mark

MOST_PROBLEMS = 50  # nobody reads more than that at once


@dataclass(frozen=True)
class Problem:
    """Where it stands, what is wrong, and what to write instead.

    >>> str(Problem(Mark("jobs/clamp.yml", 3, 9), "“heigth” is no size", "write “height”"))
    'jobs/clamp.yml:3:9: “heigth” is no size; write “height”'
    """

    mark: Mark
    wrong: str
    instead: str

    def __str__(self) -> str:
        return f"{self.mark}: {self.wrong}; {self.instead}"


class ProblemsFound(Exception):
    """All the problems of a definition, in the order of the file."""

    def __init__(self, problems: Iterable[Problem]) -> None:
        unlike = set(problems)
        self.problems: list[Problem] = sorted(unlike, key=lambda p: (p.mark.file, p.mark.line, p.mark.column, str(p)))
        super().__init__("\n".join(map(str, self.problems)))


def found(mark: Mark, wrong: str, instead: str) -> ProblemsFound:
    """One problem, ready to be raised."""
    return ProblemsFound([Problem(mark, wrong, instead)])


def nearest(word: str, words: Iterable[str]) -> str | None:
    """The word most like it, if one is much like it.

    >>> nearest("heigth", ["height", "length"])
    'height'
    """
    known = list(words)
    by_lower = {entry.lower(): entry for entry in known}
    close = get_close_matches(word.lower(), by_lower, n=1, cutoff=0.6)
    return by_lower[close[0]] if close else None


def listed(words: Iterable[str], most: int = 12) -> str:
    """Words to choose from, in the order given: `a, b or c`."""
    known = list(words)
    if len(known) > most:
        return ", ".join(known[:most]) + " …"
    return known[0] if len(known) == 1 else ", ".join(known[:-1]) + " or " + known[-1] if known else "nothing"


def article(word: str) -> str:
    """The word with a or an before it: `a length`, `an angle`."""
    return f"an {word}" if word[0] in "aeiou" else f"a {word}"


def advise(word: str, words: Iterable[str]) -> str:
    """What to write instead of a word that is not one of those."""
    known = list(words)
    close = nearest(word, known)
    return f"write “{close}”" if close else f"write {listed(known)}" if known else "leave it out"
