"""Figures for the lathe: the dial, stick-out for parting, the jaws of a chuck with four."""

from jobcards.drawing.figures.figure import figure
from jobcards.drawing.figures.marks import (
    call_thing,
    centre_line,
    held,
    label,
    line,
    rectangle,
    size,
    tool,
    work,
)
from jobcards.drawing.paper import HIDDEN, Sheet, circle


@figure(
    "turning.dial_setting",
    "turning.diameter_after",
    "turning.rough_diameter",
    title="What the dial reads",
    description="Work turned from its start to its finish diameter. The tool comes in by half the difference; "
    "a dial that reads the diameter shows all of it, a dial that reads the infeed shows half.",
)
def dial(sheet: Sheet) -> None:
    held(sheet, rectangle(-10, -24, -2, 24))
    work(sheet, [(-2, -17), (28, -17), (28, -11), (60, -11), (60, 11), (28, 11), (28, 17), (-2, 17)])
    centre_line(sheet, (-14, 0), (66, 0))
    line(sheet, (29, -17), (44, -17))
    tool(sheet, [(28, -11), (29, -17.5), (35, -23), (35, -34), (24, -34), (24, -20)])
    size(sheet, "start", (10, -17), (10, 17), put="right", part=0.7)
    size(sheet, "finish", (60, -11), (60, 11), along="y", off=66, put="right", part=0.75)
    size(sheet, "dial", (42, -17), (44, -11), along="y", off=42, put="before")


@figure(
    "turning.stick_out",
    title="How far to let the bar stand out",
    description="A bar in the chuck stands out by the length of the piece, what facing takes, the width of the "
    "parting tool, and clearance to the jaws.",
)
def stick_out(sheet: Sheet) -> None:
    held(sheet, rectangle(-12, -18, -6, 18))
    held(sheet, rectangle(-6, 7, 6, 15), rectangle(-6, -15, 6, -7))
    work(sheet, rectangle(-6, -7, 62, 7))
    for x in (16, 21, 58):
        sheet.draw([(x, -7), (x, 7)], HIDDEN)
    tool(sheet, rectangle(16, 8, 21, 26))
    centre_line(sheet, (-16, 0), (67, 0))
    size(sheet, "length", (21, -7), (58, -7), along="x", off=-13)
    size(sheet, "facing", (58, -7), (62, -7), along="x", off=-13, put="after")
    size(sheet, "clearance", (6, -15), (16, -7), along="x", off=-27, put="before")
    size(sheet, "parting", (16, 26), (21, 26), along="x", off=31, put="after")
    size(sheet, "stick out", (6, -15), (62, -7), along="x", off=-20)


@figure(
    "turning.jaw_move",
    title="Truing work in a chuck with four jaws",
    description="An indicator reads high on one side and low on the other; the work is pushed by half the "
    "difference toward the jaw with the lower reading.",
)
def truing(sheet: Sheet) -> None:
    held(sheet, rectangle(-26, -5, -14, 5), rectangle(22, -5, 34, 5))
    work(sheet, circle((4, 0), 18))
    centre_line(sheet, (-30, 0), (40, 0))
    centre_line(sheet, (0, -22), (0, 22))
    centre_line(sheet, (4, -22), (4, 22))
    size(sheet, "move", (0, 22), (4, 22), along="x", off=26, put="after")
    sheet.write(label("low"), -20, 9)
    sheet.write(label("high"), 28, 9)
    call_thing(sheet, "spindle", (0, -19), (-10, -24))


@figure(
    "turning.boring_dial",
    "turning.rough_bore",
    title="Boring: the dial counts back",
    description="A bore opened from its start to its finish: the tool moves outward, so the dial counts back "
    "from the touch.",
)
def boring(sheet: Sheet) -> None:
    for side in (-1, 1):
        work(sheet, [(0, side * 9), (26, side * 9), (26, side * 14), (56, side * 14), (56, side * 24), (0, side * 24)])
    centre_line(sheet, (-4, 0), (76, 0))
    tool(sheet, [(26, -13.6), (29, -9), (74, -9), (74, -2), (27, -2)])
    size(sheet, "start", (12, -9), (12, 9), put="right", part=0.75)
    size(sheet, "finish", (56, -14), (56, 14), along="y", off=62, put="right", part=0.78)
