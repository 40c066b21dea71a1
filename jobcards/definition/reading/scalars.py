"""Single values read: names, words, dates, numbers. Each takes a scalar and its kind, or raises ProblemsFound."""

import re
from collections.abc import Callable
from datetime import date

from jobcards.definition import kinds
from jobcards.definition.problem import advise, found
from jobcards.definition.reading.yaml_nodes import Scalar
from jobcards.definition.size import FIT_CLASS
from jobcards.definition.syntax.dimension import BUILT_IN
from jobcards.definition.text import SIZE_NAME

NAME = re.compile(r"[^\W_](?:[^\W_]|[ \-/.,'])*")
LONGEST_NAME = 60
RESERVED = ("in", "mm", "deg", "pi", *BUILT_IN)


def name(node: Scalar, kind: kinds.Kind) -> str:
    """A short name; nothing that could pass for a path or a mark-up."""
    text = node.text
    if len(text) > LONGEST_NAME:
        raise found(node.words, f"the name has {len(text)} characters", f"write at most {LONGEST_NAME}")
    doubtful = text != " ".join(text.split()) or ".." in text or "//" in text or text[-1:] in ("/", ".", ",", "-")
    if doubtful or not NAME.fullmatch(text):
        raise found(
            node.words, f"“{text}” is no name", "use letters, digits, spaces and - / . , ' as in “3/4 end mill”"
        )
    return text


def size_name(node: Scalar, kind: kinds.Kind) -> str:
    """The name of a size; it must be readable inside an expression."""
    text = node.text
    if len(text) > LONGEST_NAME or not re.fullmatch(SIZE_NAME, text):
        instead = "use letters, digits and single spaces, a letter first, as in “pin length”"
        raise found(node.words, f"“{text[:LONGEST_NAME]}” is no name for a size", instead)
    if text in RESERVED:
        raise found(node.words, f"“{text}” has a meaning of its own in expressions", "give the size a longer name")
    return text


def choice(node: Scalar, words: tuple[str, ...]) -> str:
    """One of a few words."""
    if node.text not in words:
        raise found(node.words, f"“{node.text[:60]}” cannot stand here", advise(node.text, words))
    return node.text


def flag(node: Scalar, kind: kinds.Kind) -> bool:
    """true or false."""
    return choice(node, ("true", "false")) == "true"


def fit(node: Scalar, kind: kinds.Kind) -> str:
    """A class of fit."""
    if not re.fullmatch(FIT_CLASS, node.text):
        instead = "write it as RC5 hole, RC5 shaft, H7 or g6"
        raise found(node.words, f"“{node.text[:20]}” is no class of fit", instead)
    return node.text


def whole(node: Scalar, kind: kinds.Kind) -> int:
    """A whole number between limits."""
    assert isinstance(kind, kinds.Whole)
    if not re.fullmatch(r"[0-9]{1,9}", node.text) or not kind.least <= int(node.text) <= kind.most:
        instead = f"write a whole number from {kind.least} to {kind.most}"
        raise found(node.words, f"“{node.text[:20]}” cannot stand here", instead)
    return int(node.text)


def number(node: Scalar, kind: kinds.Kind) -> float:
    """A plain number between limits."""
    assert isinstance(kind, kinds.Number)
    written = re.fullmatch(r"[0-9]{1,9}(?:\.[0-9]{1,9})?|\.[0-9]{1,9}", node.text)
    if not written or not kind.least <= float(node.text) <= kind.most:
        instead = f"write a number from {kind.least:g} to {kind.most:.0f}"
        raise found(node.words, f"“{node.text[:20]}” cannot stand here", instead)
    return float(node.text)


def day(node: Scalar, kind: kinds.Kind) -> str:
    """A date of this century, year first."""
    try:
        if not re.fullmatch(r"20[0-9]{2}-[0-9]{2}-[0-9]{2}", node.text):
            raise ValueError
        date.fromisoformat(node.text)
    except ValueError:
        raise found(node.words, f"“{node.text[:20]}” is no date", "write it year first, as in 2026-11-24") from None
    return node.text


SCALARS: dict[type[kinds.Kind], Callable[[Scalar, kinds.Kind], object]] = {
    kinds.Name: name,
    kinds.Fit: fit,
    kinds.Whole: whole,
    kinds.Number: number,
    kinds.Flag: flag,
    kinds.Date: day,
}
WANTED: dict[type[kinds.Kind], str] = {
    kinds.Text: "a text",
    kinds.Name: "a name",
    kinds.Length: "a length",
    kinds.Angle: "an angle",
    kinds.Value: "a number or an expression",
    kinds.Toleranced: "a size",
    kinds.Tolerance: "a tolerance",
    kinds.Fit: "a class of fit",
    kinds.Number: "a number",
    kinds.Whole: "a whole number",
    kinds.Flag: "true or false",
    kinds.Date: "a date",
    kinds.Choice: "one word",
    kinds.Through: "a depth or the word through",
}
