"""Figures for clamps and for long or slender work."""

from jobcards.drawing.figures.figure import figure
from jobcards.drawing.figures.marks import (
    call,
    centre_line,
    held,
    line,
    motion,
    rectangle,
    say,
    size,
    tool,
    tool_axis,
    work,
)
from jobcards.drawing.paper import HIDDEN, Sheet


@figure(
    "clamping.clamp_share",
    "clamping.clamp_reach",
    "clamping.clamp_clearance",
    title="A strap clamp",
    description="A strap clamp over the edge of the work: the bolt stands between heel block and work, and the "
    "nearer it is to the work, the more of its pull the work gets. The strap reaches over the work by its nose "
    "less the gap.",
)
def strap(sheet: Sheet) -> None:
    held(sheet, rectangle(-40, -5, 46, 0))
    held(sheet, rectangle(-36, 0, -26, 17))
    work(sheet, rectangle(0, 0, 40, 17))
    held(sheet, rectangle(-36, 17, 8, 23))
    held(sheet, rectangle(-12, -5, -8, 30), rectangle(-15, 23, -5, 27))
    centre_line(sheet, (-10, -9), (-10, 34))
    tool(sheet, rectangle(20, 13, 32, 34))
    tool_axis(sheet, (26, 10), (26, 35.5))
    line(sheet, (0, 0), (0, -8))
    size(sheet, "bolt to heel", (-31, 17), (-10, 27), along="x", off=43)
    size(sheet, "bolt to work", (-10, 27), (4, 23), along="x", off=43, put="after")
    size(sheet, "gap", (-10, -9), (0, 0), along="x", off=-12, put="before")
    size(sheet, "nose", (-10, -9), (8, 17), along="x", off=-19, put="before")
    size(sheet, "reach", (0, -8), (8, 17), along="x", off=-12, put="after")
    size(sheet, "cutter", (20, 34), (32, 34), along="x", off=37, put="after")
    size(sheet, "cut edge", (0, -12), (26, 10), along="x", off=-25)


@figure(
    "clamping.overhang",
    title="Work longer than the jaws",
    description="Work held in the middle of the jaws, seen from above, hangs over at both ends.",
)
def over_ends(sheet: Sheet) -> None:
    held(sheet, rectangle(16, -12, 56, 0))
    held(sheet, rectangle(16, 12, 56, 24))
    work(sheet, rectangle(0, 0, 72, 12))
    size(sheet, "length", (0, 12), (72, 12), along="x", off=30)
    size(sheet, "jaw width", (16, -12), (56, -12), along="x", off=-18)
    size(sheet, "overhang", (56, -12), (72, 0), along="x", off=-18, put="after")


@figure(
    "clamping.longest_stick_out",
    "clamping.give_free",
    "clamping.give_centred",
    title="Slender work gives under the cut",
    description="Work held in the chuck and free at its end: the force of the cut bends it, and the end gives way.",
)
def give(sheet: Sheet) -> None:
    held(sheet, rectangle(-14, -18, -6, 18))
    held(sheet, rectangle(-6, 6, 8, 14), rectangle(-6, -14, 8, -6))
    sheet.draw([(8, 6), (56, 6), (56, -6), (8, -6)], HIDDEN)
    upper = [(8 + 48 * t, 6 + 9 * t * t * (3 - t) / 2) for t in (k / 12 for k in range(13))]
    lower = [(x + 1.5 * (x - 8) / 48, y - 12) for x, y in upper]
    work(sheet, [(-6, 6), *upper, *lower[::-1], (-6, -6)])
    motion(sheet, (50, -24), (50, 0.5))
    say(sheet, "chuck", -10, 21)
    size(sheet, "stick out", (8, 14), (56, 15), along="x", off=22)
    size(sheet, "give", (57, -6), lower[-1], along="y", off=62, put="right")
    call(sheet, "force", (50, -16), (40, -18))
    size(sheet, "diameter", (18, -6), (18, 6), put="right")
