"""Sizes of the drawing: a text such as `4-1/2 ±0.005` or `3/4 RC5 hole`, and the limits that come of it."""

import re
from dataclasses import dataclass

from jobcards.definition.expression import Expression, parse
from jobcards.definition.kinds import Fit, Flag, Text, Tolerance, Value, key
from jobcards.definition.model import Mark, Model
from jobcards.definition.problem import found
from jobcards.quantity import ANGLE, LENGTH, NUMBER, NotAQuantity, read_angle, read_length
from jobcards.source import Source

AMOUNT = rf"{NUMBER}(?:[ ]*(?:mm|in|[\"″”]|°(?:[0-9.]+['′](?:[0-9.]+[\"″])?)?|deg))?"
BOTH_WAYS = re.compile(rf"(?P<rest>.*?)[ ]*(?:±|\+/-|\+/−)[ ]*(?P<amount>{AMOUNT})")
EACH_WAY = re.compile(rf"(?P<rest>.*?)[ ]*(?P<one>(?:^|(?<=[ ]))[-+−]{AMOUNT})[ ]*/[ ]*(?P<other>[-+−]{AMOUNT})")
FIT_CLASS = r"(?:RC|LC|LT|LN|FN)[0-9]{1,2} (?:hole|shaft)|[A-Za-z]{1,2}[0-9]{1,2}"
WITH_FIT = re.compile(rf"(?P<rest>[-+−]?[ ]*{AMOUNT})[ ]+(?P<fit>{FIT_CLASS})")
STRANGE_TOLERANCE = re.compile(r"(?:±|\+/-|\+/−|\+-).*")
STRANGE_FIT = re.compile(rf"{AMOUNT}[ ]+(?P<word>(?!(?:mm|in|deg)\b)[^\W\d_][\w ]*)")


@dataclass(frozen=True)
class Deviations:
    """How far a size may be off: upper and lower, with their signs, in the job's unit or degrees."""

    upper: float
    lower: float
    text: str
    shape: str


@dataclass(kw_only=True)
class StatedSize(Model):
    """A size as stated: what it is, and how far it may be off."""

    size: Expression = key(Value(), "the size, or an expression of other sizes", "flange thickness + shank length")
    tolerance: Deviations | None = key(Tolerance(), "how far it may be off", "±0.005", default=None)
    fit: str = key(Fit(), "a class of fit in place of a tolerance", "RC5 hole", default="")
    reference: bool = key(
        Flag(), "true: follows from the other sizes, with no tolerance of its own", "true", default=False
    )
    note: str = key(Text(), "what it is for", "between rocker and base", default="")


@dataclass(frozen=True)
class Size:
    """A size worked out: `nominal` as on the drawing, the limits, and `aim`, the middle of them."""

    name: str
    text: str
    mark: Mark
    expression: Expression
    nominal: float
    lower: float
    upper: float
    aim: float
    kind: str
    tolerance_text: str
    fit: str
    origin: str
    source: Source
    note: str = ""


def read_deviations(text: str, mark: Mark, unit: str) -> Deviations:
    """A tolerance as written: `±0.005`, `+0.005/-0`, `±0°30'`. Raises ProblemsFound."""
    both, each = BOTH_WAYS.fullmatch(text), EACH_WAY.fullmatch(text)
    if both and not both["rest"]:
        amount, shape = amount_of(both["amount"], mark, unit)
        upper, lower = amount, -amount
    elif each and not each["rest"]:
        (one, shape), (other, second) = (amount_of(each[side], mark, unit) for side in ("one", "other"))
        if shape != second and "angle" in (shape, second):
            raise found(mark, f"“{text}” mixes a length and an angle", "write both with °, as in +0.5°/-0°")
        upper, lower = max(one, other), min(one, other)
    else:
        raise found(mark, f"“{text[:40]}” is no tolerance", "write it as ±0.005 or +0.005/-0")
    if not upper > lower:
        raise found(mark, f"“{text}” leaves nothing to work to", "write limits that differ, as in ±0.005 or +0.005/-0")
    return Deviations(upper, lower, text, shape)


def amount_of(text: str, mark: Mark, unit: str) -> tuple[float, str]:
    """A signed amount of a tolerance and its shape: angle, length, or bare when no unit was written."""
    try:
        if ANGLE.fullmatch(text):
            return read_angle(text), "angle"
        written = LENGTH.fullmatch(text)
        return read_length(text, unit), "length" if written and written["unit"] else "bare"
    except NotAQuantity as error:
        wrong, _, instead = str(error).partition("; ")
        raise found(mark, wrong, instead) from None


def read_stated(text: str, mark: Mark, unit: str) -> StatedSize:
    """A size with its tolerance or fit in one text. Raises ProblemsFound.

    >>> read_stated("0.130 +0.002/-0", Mark(), "in").tolerance
    Deviations(upper=0.002, lower=-0.0, text='+0.002/-0', shape='bare')
    >>> read_stated("3/4 RC5 hole", Mark(), "in").fit
    'RC5 hole'
    """
    with_fit = WITH_FIT.fullmatch(text)
    if with_fit:
        return StatedSize(size=parse(with_fit["rest"], mark, unit), fit=with_fit["fit"], mark=mark)
    for pattern in (BOTH_WAYS, EACH_WAY):
        split = pattern.fullmatch(text)
        if split and split["rest"]:
            rest = split["rest"].rstrip()
            tolerance = text[len(split["rest"]) :].strip()
            place = Mark(mark.file, mark.line, mark.column + text.index(tolerance, len(rest)))
            return StatedSize(
                size=parse(rest, mark, unit), tolerance=read_deviations(tolerance, place, unit), mark=mark
            )
    refuse_strange_ending(text, mark)
    return StatedSize(size=parse(text, mark, unit), mark=mark)


def refuse_strange_ending(text: str, mark: Mark) -> None:
    """Raise ProblemsFound where something stands after the size that is meant as a tolerance or a fit."""
    begun = STRANGE_TOLERANCE.search(text)
    if begun:
        place = Mark(mark.file, mark.line, mark.column + begun.start())
        raise found(place, f"“{begun[0][:40]}” is no tolerance", "write it as ±0.005 or +0.005/-0")
    word = STRANGE_FIT.fullmatch(text)
    if word:
        place = Mark(mark.file, mark.line, mark.column + word.start("word"))
        raise found(place, f"“{word['word'][:40]}” is no class of fit", "write it as RC5 hole, RC5 shaft, H7 or g6")
