"""Lettering on paper: widths as matplotlib draws them, no overlap, nothing off the sheet."""

import itertools

import pytest
from matplotlib.backends.backend_agg import FigureCanvasAgg
from matplotlib.figure import Figure
from matplotlib.text import Text

from jobcards.drawing.leader import box_meets_lines, segments_of
from jobcards.drawing.paper import EM, FONT, POINT, Box, Piece, Sheet, amount, tolerance, words
from jobcards.planning.number import Number
from tests.drawing.drawn import every_drawing

NAMES = sorted(name for name, drawing in every_drawing().items() if drawing.sheet.letters)


def number(value: float, shown: str, unit: str = "in", limits: tuple[float, float] | None = None) -> Number:
    return Number("n", value, unit, shown, "label", "as given", (), "the job", limits)


def as_drawn(sheet: Sheet) -> list[Box]:
    """The box of each piece of lettering as matplotlib's own renderer has it, in mm."""
    figure = Figure(figsize=(sheet.width / 25.4, sheet.height / 25.4), dpi=254)
    canvas = FigureCanvasAgg(figure)
    renderer = canvas.get_renderer()
    boxes = []
    for letters in sheet.letters:
        text = Text(
            letters.x * 10,
            letters.y * 10,
            letters.piece.text,
            fontsize=letters.size / POINT,
            family=FONT,
            parse_math=False,
        )
        text.set_figure(figure)
        found = text.get_window_extent(renderer)
        boxes.append(Box(found.x0 / 10, found.y0 / 10, found.x1 / 10, found.y1 / 10))
    return boxes


@pytest.mark.parametrize("name", NAMES)
def test_no_lettering_overlaps_or_leaves_the_sheet(name: str) -> None:
    sheet = every_drawing()[name].sheet
    boxes = as_drawn(sheet)
    said = [letters.piece.text for letters in sheet.letters]
    for (first, one), (second, other) in itertools.combinations(zip(said, boxes, strict=True), 2):
        assert not one.grown(-0.15).meets(other.grown(-0.15)), f"{first!r} meets {second!r}"
    for text, box in zip(said, boxes, strict=True):
        assert box.within(Box(0, 0, sheet.width, sheet.height)), f"{text!r} leaves the sheet"


@pytest.mark.parametrize("name", NAMES)
def test_no_line_runs_through_lettering(name: str) -> None:
    sheet = every_drawing()[name].sheet
    lines = segments_of(sheet)
    for letters in sheet.letters:
        box = letters.box
        core = Box(box.left + 0.2, box.low + 0.25 * letters.size, box.right - 0.2, box.high - 0.15 * letters.size)
        assert not box_meets_lines(core, lines), f"a line runs through {letters.piece.text!r}"


@pytest.mark.parametrize("name", sorted(every_drawing()))
def test_no_line_leaves_the_sheet(name: str) -> None:
    sheet = every_drawing()[name].sheet
    assert sheet.bounds().within(Box(-0.01, -0.01, sheet.width + 0.01, sheet.height + 0.01))


def test_words_hold_no_digit() -> None:
    with pytest.raises(ValueError, match="must belong to a number"):
        words("2 holes")


def test_an_amount_is_the_number_as_shown() -> None:
    assert amount(number(0.75, "0.7506"), "⌀") == (Piece("⌀0.7506", "n"),)
    assert amount(number(3.0, "3.00", "deg"))[0].text == "3.00°"
    assert amount(number(3.0, "3°30′", "deg"))[0].text == "3°30′"
    assert amount(number(1.5, "1.5000"), unit=True)[0].text == "1.5000\u00a0in"


@pytest.mark.parametrize(
    ("limits", "text"),
    [
        ((-0.003, 0.003), "±0.0030"),
        ((0.0, 0.0012), "+0.0012/0"),
        ((-0.002, -0.001), "−0.0010/−0.0020"),
        ((-0.0025, 0.0), "0/−0.0025"),
    ],
)
def test_deviations_are_written_as_on_a_drawing(limits: tuple[float, float], text: str) -> None:
    assert tolerance(number(1.0, "1.0000", limits=limits)) == (Piece(text, "n", small=True),)


def test_a_size_without_limits_has_no_deviations() -> None:
    assert tolerance(number(1.0, "1.0000")) == ()


def test_rows_stand_where_they_are_written() -> None:
    sheet = Sheet(100.0, 50.0)
    box = sheet.write((words("upper"), words("lower row")), 20.0, 30.0, across="left", up="top")
    assert (box.left, box.high) == (20.0, 30.0)
    upper, lower = sheet.letters
    assert lower.y == pytest.approx(upper.y - 1.16 * EM)
    assert all(letters.box.within(box.grown(0.05 * EM)) for letters in sheet.letters)


def test_a_leading_space_is_reckoned_with_though_it_is_not_drawn() -> None:
    sheet = Sheet(100.0, 50.0)
    sheet.write(((*words("a"), *words(" b")),), 0.0, 0.0, across="left")
    assert sheet.letters[1].piece.text == "b"
    assert sheet.letters[1].x > sheet.letters[0].box.right + 0.2 * EM
