"""Authored texts as lines: plain words, emphasis, and the sizes they name."""

from jobcards.definition.text import plain
from jobcards.planning.number import Number
from jobcards.planning.words import Authored, Line, Piece, Ref


def authored(text: str, sizes: dict[str, Number]) -> Line:
    """A text of the definition as a line; `{size}` becomes the number, all else stays characters."""
    out: list[Piece] = []
    for kind, piece in plain(text, sizes):
        if kind == "size":
            out.append(Ref(sizes[piece]))
        elif piece:
            out.append(Authored(piece, "job", emphasis=kind == "emphasis"))
    return tuple(out)
