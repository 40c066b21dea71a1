"""An expression cut into its words: numbers in shop notation, names, signs."""

import re
from dataclasses import dataclass

from jobcards.definition.syntax.tree import Shape
from jobcards.quantity import ANGLE, NUMBER, NotAQuantity, convert, degrees_of, read_number

LITERAL = re.compile(rf"(?P<number>{NUMBER})(?:[ ]*(?P<unit>(?:mm|in)(?!\w)|[\"″”]))?")
WORDS = re.compile(r"[^\W\d_]\w*(?: +\w+)*")
POWER_OF_TEN = re.compile(r"[0-9.]+[eE][-+]?[0-9]+")
FORMULA = re.compile(r"[A-Za-z_]\w*(?:\.\w+)?(?=[ ]*\()")
SIGNS = {"+": "+", "-": "-", "−": "-", "–": "-", "*": "*", "×": "*", "·": "*", "/": "/", "(": "(", ")": ")", ",": ","}
MIXED_AFTER_FRACTION = re.compile(r"(?:-|[ ]+)[0-9]+/[0-9]")


class Misread(Exception):
    """What cannot be read, at an offset into the text."""

    def __init__(self, offset: int, wrong: str, instead: str) -> None:
        super().__init__(wrong)
        self.offset, self.wrong, self.instead = offset, wrong, instead


@dataclass(frozen=True)
class Token:
    """A word of an expression; `kind` is number, name, formula, sign or end."""

    kind: str
    text: str
    offset: int
    value: float = 0.0
    shape: Shape = "bare"


def tokens(text: str, unit: str) -> list[Token]:
    """The words of an expression, the last of kind `end`. Raises Misread.

    >>> [token.text for token in tokens("pin length/2 - 1-1/4", "in")]
    ['pin length', '/', '2', '-', '1-1/4', '']
    """
    found: list[Token] = []
    offset = 0
    while offset < len(text):
        if text[offset] == " ":
            offset += 1
            continue
        token, end = next_token(text, offset, unit, found[-1].text if found else "")
        found.append(token)
        offset = end
    return [*found, Token("end", "", len(text))]


def next_token(text: str, offset: int, unit: str, before: str) -> tuple[Token, int]:
    """The word that starts at an offset, and where it ends."""
    sign = SIGNS.get(text[offset])
    if sign:
        return Token("sign", sign, offset), offset + 1
    if text[offset] in "0123456789.":
        return number_token(text, offset, unit, before)
    for kind, pattern in (("formula", FORMULA), ("name", WORDS)):
        word = pattern.match(text, offset)
        if word:
            return Token(kind, re.sub(" +", " ", word[0]), offset), word.end()
    raise Misread(
        offset, f"“{text[offset]}” has no meaning in an expression", "use + - * / ( ) numbers and names of sizes"
    )


def number_token(text: str, offset: int, unit: str, before: str) -> tuple[Token, int]:
    """A number with the unit that was written after it, if any."""
    try:
        power = POWER_OF_TEN.match(text, offset)
        if power:
            raise NotAQuantity(f"“{power[0]}” is not how a shop writes numbers; write it out, as in 0.001 or 1000")
        angle = ANGLE.match(text, offset)
        if angle:
            value = degrees_of(angle["degrees"], angle["minutes"], angle["seconds"])
            return Token("number", angle[0], offset, value, "angle"), angle.end()
        literal = LITERAL.match(text, offset)
        if not literal:
            raise NotAQuantity(f"“{text[offset : offset + 12]}” is not a number")
        refuse_doubtful_fraction(text, literal, before)
        value = read_number(literal["number"])
    except NotAQuantity as error:
        wrong, _, instead = str(error).partition("; ")
        raise Misread(offset, wrong, instead or "write it as 1-1/4, 3 1/8 or 0.219") from None
    if literal["unit"]:
        value = convert(value, "mm" if literal["unit"] == "mm" else "in", unit)
    return Token("number", literal[0], offset, value, "length" if literal["unit"] else "bare"), literal.end()


def refuse_doubtful_fraction(text: str, literal: re.Match[str], before: str) -> None:
    """Raise Misread where a fraction can be read in two ways, as in a/1/4 or 1/4-1/8."""
    number = literal["number"]
    if not re.fullmatch(r"[0-9]+/[0-9]+", number):
        return
    if before == "/":
        raise Misread(
            literal.start(), f"“/{number}” can be read in two ways", f"write /({number}) if you divide by {number}"
        )
    if MIXED_AFTER_FRACTION.match(text, literal.end("number")):
        raise Misread(
            literal.start(),
            f"“{number}” runs into the next fraction",
            "put spaces around the minus sign, as in 1/4 - 1/8",
        )
