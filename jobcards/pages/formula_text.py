"""A formula's text laid out for reading: names apart from signs, powers raised, numbers put in for an example."""

import re
from collections.abc import Mapping

from jobcards.pages.html import Html, element, join

TOKEN = re.compile(r"[A-Za-z_]\w*|\d+(?:\.\d+)?|\*\*|\S")
WORDS = {
    "sqrt": "√", "pi": "π", "asin": "arcsin", "acos": "arccos", "atan": "arctan",
    "sin": "sin", "cos": "cos", "tan": "tan",
    "abs": "size of", "floor": "round down", "ceil": "round up", "min": "smaller of", "max": "larger of",
}  # fmt: skip
SIGNS = {"*": " × ", "/": " / ", "+": " + ", "-": " − ", "=": " = ", ",": ", "}
RAISED = {"2": "²", "3": "³", "4": "⁴"}
GUARD = re.compile(r" [+-] 0\.0{6,}1\b")  # keeps a whole number from being rounded up; nothing to read
BEFORE_SIGN = {"", "(", ",", "*", "/", "=", "**"}  # a minus after one of these belongs to what follows


def laid_out(text: str) -> Html:
    """The formula with its names set off.

    >>> from jobcards.pages.html import plain
    >>> plain(laid_out("rate = 2 * bolt_length**2 / sqrt(-side)"))
    'rate = 2 × bolt length² / √(−side)'
    """
    return join(_pieces(text, {}))


def put_in(text: str, numbers: Mapping[str, str]) -> Html:
    """The right-hand side with numbers in the place of names; a name without one stays.

    >>> from jobcards.pages.html import plain
    >>> plain(put_in("preset = edge + side * tip / 2", {"edge": "0.5", "side": "−1", "tip": "0.2"}))
    'preset = 0.5 + (−1) × 0.2 / 2'
    """
    return join(_pieces(text, numbers))


def _pieces(text: str, numbers: Mapping[str, str]) -> list[str]:
    """The formula's tokens as they are shown."""
    tokens = TOKEN.findall(GUARD.sub("", text))
    shown: list[str] = []
    place = 0
    while place < len(tokens):
        token, before = tokens[place], tokens[place - 1] if place else ""
        if token == "**" and place + 1 < len(tokens):
            power = tokens[place + 1]
            shown.append(RAISED.get(power, " to the power "))
            place += 2 if power in RAISED else 1
            continue
        if token == "-" and before in BEFORE_SIGN:
            shown.append("−")
        elif token in WORDS:
            shown.append(WORDS[token])
        elif token.isidentifier():
            shown.append(_name(token.replace("_", " "), numbers))
        else:
            shown.append(SIGNS.get(token, token))
        place += 1
    return shown


def _name(name: str, numbers: Mapping[str, str]) -> str:
    """A name, or the number that stands for it; one with a sign, and a fraction, in brackets."""
    number = numbers.get(name, "")
    if not number:
        return element("em", name)
    return f"({number})" if number.startswith("−") or " " in number else number
