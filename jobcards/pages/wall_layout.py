"""Arranging the blocks of a wall sheet so that they fill one page of A4 or Letter and never more.

Heights are estimated from the widths of the characters and where a line may break; a test prints the sheets and looks.
"""

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from jobcards.pages.html import Html, element, join, plain

# What both papers hold inside their margins, less the head of the sheet, in mm.
WIDTH = 190.0
HEIGHT = 232.0
GAP = 4.0  # between columns
POINT = 25.4 / 72
FIGURE = re.compile(r'class="figure"')
CLASS = re.compile(r'class="([a-z-]+)"')
PIECES = re.compile(r"(<[^>]*>)|([^<]+)")
AFTER = 4.0  # points: the space after a reading


@dataclass(frozen=True)
class Size:
    """A way to set the sheet: its columns and type sizes in points. The style sheet has the same under `wall-NAME`."""

    name: str
    columns: int
    text: float
    figure: float


SIZES = (
    Size("large", 2, 10.0, 13.0),
    Size("roomy", 2, 9.0, 12.0),
    Size("close", 3, 8.5, 11.5),
    Size("tight", 3, 8.0, 11.0),
)
NEVER = 1000  # columns: more than there can be
LEADING = 1.1
NARROW, WIDE = frozenset(" .,:;'|!ijltfrI()/-·"), frozenset("mwMW%@")
BLOCK_FRAME = 3.2  # lines around a block and the space below it, mm
TICK = 5.5  # mm
BOLD = 1.06
FILLED = 0.99  # how much of a line is taken to be there, since the widths of letters are estimates


@dataclass(frozen=True)
class Block:
    """One framed block: the lines in it."""

    class_: str
    lines: tuple[Html, ...]

    @property
    def html(self) -> Html:
        """The block as it stands on the page."""
        return element("section", join(self.lines), class_=f"wall-block {self.class_}")

    def height(self, size: Size) -> float:
        """Estimated height in mm when set in this size."""
        column = (WIDTH - GAP * (size.columns - 1)) / size.columns - 4.0
        return BLOCK_FRAME + sum(line_height(line, size, column) for line in self.lines)


def line_height(line: Html, size: Size, column: float) -> float:
    """Estimated height of one line of a block, which may run over, in mm."""
    title = "wall-title" in line
    pieces = pieces_of(line, size)
    room = (column - (TICK if title else 0.0)) * FILLED / POINT
    rows, used = 1, 0.0
    for width in pieces:
        if used and width > AFTER and used + width > room:  # a space alone begins no line
            rows, used = rows + 1, 0.0
        used += width
    tall = size.figure if title or FIGURE.search(line) else size.text
    return rows * tall * LEADING * POINT + 0.5


def pieces_of(line: Html, size: Size) -> list[float]:
    """Widths in points of the pieces that a line is not broken in: words, readings and, in two columns, places."""
    together = {"reading", "figure", *({"wall-place"} if size.columns == 2 else ())}
    widths, open_, large, held = [0.0], list[tuple[bool, bool]](), 0, 0
    whole = "wall-title" in line
    for tag, text in PIECES.findall(line):
        if tag.startswith("</"):
            was_held, was_large = open_.pop() if open_ else (False, False)
            held, large = held - was_held, large - was_large
            widths += [AFTER * was_held, 0.0] if was_held and not held else []
        elif tag and not tag.startswith("<input"):
            name = CLASS.search(tag)
            kept = name is not None and name[1] in together
            figure = name is not None and name[1] == "figure"
            open_.append((kept, figure))
            held, large = held + kept, large + figure
        for place, word in enumerate(re.split("( )", plain(Html(text)))):
            if place % 2 and not held:
                widths.append(0.0)
            height = size.figure if large or whole else size.text
            widths[-1] += text_width(word) * height * (BOLD if whole else 1.0)
    return widths


def text_width(text: str) -> float:
    """Width of a text in the sheet's sans-serif type, as a multiple of the type size.

    >>> text_width("0.0470") == 5 * 0.56 + 0.3
    True
    """
    return sum(0.3 if c in NARROW else 0.85 if c in WIDE else 0.68 if c.isupper() else 0.56 for c in text)


@dataclass(frozen=True)
class Layout:
    """The chosen size and the blocks of each column, in the order of the card."""

    name: str
    columns: tuple[tuple[Block, ...], ...]
    fits: bool


def arrange(blocks: Sequence[Block]) -> Layout:
    """The largest size in which all blocks fit; the smallest one when none does.

    In each size the blocks stand in order or, where that does not fit, with the last one at the foot of a column
    before the last.
    """
    for size in SIZES:
        for columns in (fill(blocks, size), *last_apart(blocks, size)):
            if all(sum(block.height(size) for block in column) <= HEIGHT for column in columns):
                return Layout(size.name, columns, fits=True)
    return Layout(size.name, fill(blocks, size), fits=False)


def last_apart(blocks: Sequence[Block], size: Size) -> Iterator[tuple[tuple[Block, ...], ...]]:
    """The ways to keep room for the last block at the foot of one column and let the others follow in order."""
    if not blocks:
        return
    *others, last = blocks
    for place in range(size.columns):
        columns: list[list[Block]] = [[] for _ in range(size.columns)]
        room = [HEIGHT - (last.height(size) if each == place else 0) for each in range(size.columns)]
        now = 0
        for block in others:
            if block.height(size) > room[now] and now + 1 < size.columns:
                now += 1
            columns[now].append(block)
            room[now] -= block.height(size)
        columns[place].append(last)
        yield tuple(map(tuple, columns))


def fill(blocks: Sequence[Block], size: Size) -> tuple[tuple[Block, ...], ...]:
    """The blocks in columns, so that the tallest column is as low as can be."""
    heights = [block.height(size) for block in blocks]
    limit = lowest_limit(heights, size.columns)
    columns: list[list[Block]] = [[]]
    used = 0.0
    for block, height in zip(blocks, heights, strict=True):
        if columns[-1] and used + height > limit + 1e-9:
            columns.append([])
            used = 0.0
        columns[-1].append(block)
        used += height
    return tuple(tuple(column) for column in columns)


def lowest_limit(heights: Sequence[float], columns: int) -> float:
    """The lowest column height at which the blocks, in order, take no more than so many columns.

    >>> lowest_limit([3, 1, 2, 2], 2)
    4
    """
    runs = sorted({sum(heights[i:j]) for i in range(len(heights)) for j in range(i + 1, len(heights) + 1)})
    return next((limit for limit in runs if columns_needed(heights, limit) <= columns), sum(heights))


def columns_needed(heights: Sequence[float], limit: float) -> int:
    """How many columns of this height the blocks take, in order; `NEVER` when one block is taller."""
    if not heights:
        return 1
    if max(heights) > limit + 1e-9:
        return NEVER
    count, used = 1, 0.0
    for height in heights:
        if used + height > limit + 1e-9:
            count, used = count + 1, 0.0
        used += height
    return count
