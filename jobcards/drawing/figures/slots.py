"""Figures for T-slots and keyways."""

import numpy as np

from jobcards.drawing.figures.figure import figure
from jobcards.drawing.figures.marks import centre_line, cross, diameter, line, rectangle, size, tool, work
from jobcards.drawing.paper import HIDDEN, Sheet, arc


@figure(
    "slots.tslot_neck_room",
    "slots.tslot_undercut",
    "slots.tslot_lip",
    title="A T-slot and its cutter",
    description="A throat from above and a wider undercut below it, cut with a T-slot cutter whose neck stands "
    "free in the throat. The lip is left above the head of the slot.",
)
def tslot(sheet: Sheet) -> None:
    throat, cutter, neck, depth, head = 9.0, 18.0, 5.5, 30.0, 13.0
    shoulder = head - depth
    left = [(-29, 0), (-throat, 0), (-throat, shoulder), (-cutter, shoulder), (-cutter, -depth)]
    work(sheet, [*left, *((-x, y) for x, y in left[::-1]), (29, -40), (-29, -40)])
    left = [(-neck, 8), (-neck, shoulder), (-cutter, shoulder), (-cutter, -depth)]
    tool(sheet, [*left, *((-x, y) for x, y in left[::-1])])
    centre_line(sheet, (0, -43), (0, 11))
    size(sheet, "neck", (-neck, 8), (neck, 8), along="x", off=20, put="after")
    size(sheet, "room", (neck, -8), (throat, -8), along="x", off=-8, put="after")
    size(sheet, "throat", (-throat, 0), (throat, 0), along="x", off=14, put="before")
    size(sheet, "cutter", (-cutter, -depth), (cutter, -depth), along="x", off=-46)
    size(sheet, "depth", (29, 0), (cutter, -depth), along="y", off=35, put="right")
    size(sheet, "head", (-cutter, -depth), (-cutter, shoulder), along="y", off=-35, put="left")
    size(sheet, "lip", (-cutter, shoulder), (-29, 0), along="y", off=-35, put="left")


@figure(
    "slots.keyway_depth",
    "slots.keyway_over",
    title="A keyway in a shaft",
    description="The end of a shaft with a keyway. The cutter is fed from its touch at the top of the shaft by "
    "the depth; the depth at the side is measured at the wall of the keyway; over is from the floor to the far "
    "side.",
)
def keyway(sheet: Sheet) -> None:
    radius, width, side = 19.0, 14.0, 8.0
    wall = float(np.sqrt(radius**2 - (width / 2) ** 2))
    reach = float(np.degrees(np.arcsin(width / 2 / radius)))
    floor = wall - side
    rim = arc((0, 0), radius, 90 + reach, 450 - reach)
    work(sheet, [*rim, (width / 2, floor), (-width / 2, floor)])
    sheet.draw(arc((0, 0), radius, 90 - reach, 90 + reach), HIDDEN)
    cross(sheet, (0, 0), 2)
    size(sheet, "width", (-width / 2, wall), (width / 2, wall), along="x", off=radius + 6)
    size(sheet, "side", (width / 2, wall), (width / 2, floor), along="y", off=26, put="right")
    size(sheet, "depth", (0, radius), (-width / 2, floor), along="y", off=-26, put="left")
    size(sheet, "over", (-width / 2, floor), (0, -radius), along="y", off=-26, put="left")
    diameter(sheet, "shaft", (0, 0), radius, -40, 6)


@figure(
    "slots.hub_over",
    title="The keyway of a hub over its key",
    description="A bore with a keyway above it that holds the key with a clearance. The measure runs from the "
    "roof of the keyway to the far side of the bore.",
)
def hub(sheet: Sheet) -> None:
    radius, width, side, height, clearance = 16.0, 13.0, 7.0, 12.0, 2.5
    wall = float(np.sqrt(radius**2 - (width / 2) ** 2))
    reach = float(np.degrees(np.arcsin(width / 2 / radius)))
    roof = wall - side + height + clearance
    bore = [*arc((0, 0), radius, 90 + reach, 450 - reach), (width / 2, roof), (-width / 2, roof)]
    work(sheet, rectangle(-24, -20, 24, 27), bore)
    sheet.draw(rectangle(-width / 2 + 0.3, wall - side, width / 2 - 0.3, roof - clearance), HIDDEN, closed=True)
    line(sheet, (-width / 2, wall - side), (width / 2, wall - side))
    size(sheet, "clearance", (width / 2, roof), (width / 2, roof - clearance), along="y", off=37, put="before")
    size(sheet, "over", (-width / 2, roof), (0, -radius), along="y", off=-29, put="left")
    size(sheet, "height", (width / 2, roof - clearance), (width / 2, wall - side), along="y", off=49, put="right")
    size(sheet, "width", (-width / 2, roof), (width / 2, roof), along="x", off=33)
    diameter(sheet, "bore", (0, 0), radius, -20, 16)
