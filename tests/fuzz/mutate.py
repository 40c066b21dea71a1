"""Definitions spoilt at random, as a slip of the pen or ill will spoils them; the same seed spoils the same way."""

import random
import re
from collections.abc import Callable, Sequence
from pathlib import Path

from jobcards.definition import job_paths

ROOT = Path(__file__).resolve().parents[2]
SEEDS = sorted(
    [*job_paths(), *(ROOT / "tests/jobs").glob("*.yml"), *(ROOT / "tests/definition/good").glob("[!s]*.yml")]
)
SEEDS += [ROOT / "tests/definition/good/spacer.yml"]
NUMBER = re.compile(r"(?<![\w.])(?:\d+-\d+/\d+|\d+/\d+|\d*\.\d+|\d+)(?![\w.])")
WORD = re.compile(r"[a-z][a-z-]+(?: [a-z-]+)*")
STRANGE = (
    "0", "-1", "1e9", "999999", "1000000000", "0.0000001", "1/0", "nan", "inf", "-inf", "9" * 40, "45°", "1000°",
    "12 mm", "5 in", "through", "~", "null", "true", "[]", "{}", "''", "é", "\u202e", "\u200b", "\x07", "💥", "../../x",
    "{length}", "{{ x }}", "length", "length*length", "length/0", "sqrt(-1)", "(((1)))", "1" + "+1" * 120,
    "2*" * 90 + "2",
    "<b>x</b>", "!!python/object:x", "*a", "&a x", "1/4-20", "M6", "H7", "±0.001", "+0.001/-0", "&#x0;",
)  # fmt: skip


def another_number(text: str, dice: random.Random) -> str:
    """One number made another: a neighbour, a multiple, or something strange."""
    found = list(NUMBER.finditer(text))
    if not found:
        return text
    at = dice.choice(found)
    scaled = (str(dice.choice([0, 1, 2, 3, 5, 7, 10, 40, 200])), f"{dice.uniform(0, 8):.3f}", f"-{at[0]}", f"{at[0]}0")
    return text[: at.start()] + dice.choice([*scaled, dice.choice(STRANGE)]) + text[at.end() :]


def another_word(text: str, dice: random.Random) -> str:
    """One word of the file put in the place of another."""
    found = list(WORD.finditer(text))
    at, other = dice.choice(found), dice.choice(found)
    return text[: at.start()] + other[0] + text[at.end() :]


def something_strange(text: str, dice: random.Random) -> str:
    """A word made something that does not belong there."""
    at = dice.choice(list(WORD.finditer(text)))
    return text[: at.start()] + dice.choice(STRANGE) + text[at.end() :]


def a_line(text: str, dice: random.Random) -> str:
    """A line left out, written twice, moved, or set in or out."""
    lines = text.split("\n")
    at, to = dice.randrange(len(lines)), dice.randrange(len(lines))
    change = dice.randrange(4)
    if change == 0:
        del lines[at]
    elif change == 1:
        lines.insert(at, lines[at])
    elif change == 2:
        lines.insert(to, lines.pop(at))
    else:
        lines[at] = lines[at][2:] if dice.random() < 0.5 else "  " + lines[at]
    return "\n".join(lines)


def a_character(text: str, dice: random.Random) -> str:
    """A character left out or put in."""
    at = dice.randrange(len(text))
    return text[:at] + dice.choice(["", *"{}[]:,-#&*!|>'\"%@` \n\t°±/0"]) + text[at + dice.randrange(2) :]


CHANGES: Sequence[Callable[[str, random.Random], str]] = (
    another_number, another_number, another_number, another_word, another_word, something_strange, a_line, a_character,
)  # fmt: skip


def spoilt(seed: int) -> tuple[str, str]:
    """A definition with one to four changes, and the name of the file it was made from."""
    dice = random.Random(seed)
    path = SEEDS[seed % len(SEEDS)]
    text = path.read_text(encoding="utf-8")
    for _ in range(dice.choice([1, 1, 1, 2, 2, 3, 4])):
        text = dice.choice(CHANGES)(text, dice)
    return text, path.stem
