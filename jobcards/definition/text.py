"""Authored texts: `*word*` is emphasis, `{size name}` shows a size, and every other character stands for itself."""

import re
from collections.abc import Container, Iterator

SIZE_NAME = r"[^\W\d_][^\W_]*(?: [^\W_]+)*"
PIECE = re.compile(rf"\*(?P<emphasis>[^\s*{{}}](?:[^*{{}}]*[^\s*{{}}])?)\*|(?<!\{{)\{{(?P<size>{SIZE_NAME})\}}(?!\}})")
MEANT_AS_SIZE = re.compile(r"(?<![{\w$])\{(?P<size>[ ]*[^\W\d_][\w\- ]*)\}(?!\})")


def plain(text: str, sizes: Container[str]) -> list[tuple[str, str]]:
    """A text cut into pieces: ("words", …), ("emphasis", …) and ("size", name); nothing else is read into it.

    >>> plain("Keep *both* edges {daylight} apart, <b>not</b> {more}.", {"daylight": 0.1})
    [('words', 'Keep '), ('emphasis', 'both'), ('words', ' edges '), ('size', 'daylight'),
     ('words', ' apart, <b>not</b> {more}.')]
    """
    pieces: list[tuple[str, str]] = []
    words = ""
    end = 0
    for found in PIECE.finditer(text):
        words += text[end : found.start()]
        end = found.end()
        if found["size"] and found["size"] not in sizes:
            words += found[0]
            continue
        pieces += [("words", words)] if words else []
        pieces.append(("emphasis", found["emphasis"]) if found["emphasis"] else ("size", found["size"]))
        words = ""
    words += text[end:]
    return [*pieces, ("words", words)] if words else pieces


def sizes_meant(text: str) -> Iterator[tuple[str, int]]:
    """The sizes that a text means to show, each with its offset; a misspelt one is among them.

    >>> list(sizes_meant("at {pin lenght}, not {{ this }}"))
    [('pin lenght', 4)]
    """
    for found in MEANT_AS_SIZE.finditer(text):
        yield found["size"], found.start("size")
