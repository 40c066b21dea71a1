"""Figures for the ridges that a tool leaves."""

import numpy as np

from jobcards.drawing.figures.figure import figure
from jobcards.drawing.figures.marks import call, centre_line, size, tool, work
from jobcards.drawing.paper import CUT_LINE, Sheet, arc


@figure(
    "finish.turned_ridge",
    "finish.turned_roughness",
    "finish.feed_for_roughness",
    title="The ridges of a turned face",
    description="A tool with a round nose leaves a ridge a feed apart; the greater the nose radius, the lower "
    "the ridge.",
)
def turned(sheet: Sheet) -> None:
    feed, radius = 22.0, 17.0
    reach = float(np.degrees(np.arcsin(feed / 2 / radius)))
    low = radius
    floor = [point for k in range(3) for point in arc((k * feed, low), radius, 270 - reach, 270 + reach)]
    ridge = radius - float(np.sqrt(radius**2 - (feed / 2) ** 2))
    work(sheet, [*floor, (2.5 * feed, -14), (-0.5 * feed, -14)])
    nose = arc((2 * feed, low), radius, 215, 325)
    tool(sheet, [*nose, (2 * feed + 14, 28), (2 * feed - 14, 28)])
    sheet.draw([(2 * feed, low), nose[4]], CUT_LINE)
    call(sheet, "nose radius", nose[4], (10, 19))
    size(sheet, "feed", (feed / 2, ridge), (feed * 1.5, ridge), along="x", off=-20)
    size(sheet, "height", (-feed / 2, ridge), (0, 0), along="y", off=-16, put="left")
    centre_line(sheet, (2 * feed, low - 3), (2 * feed, low + 16))


@figure(
    "finish.scallop_height",
    "finish.step_for_scallop",
    title="Scallops of a ball-ended cutter",
    description="Passes of a ball-ended cutter a step apart leave ridges between them.",
)
def scallop(sheet: Sheet) -> None:
    step, radius = 20.0, 13.0
    reach = float(np.degrees(np.arcsin(step / 2 / radius)))
    floor = [point for k in range(3) for point in arc((k * step, radius), radius, 270 - reach, 270 + reach)]
    ridge = radius - float(np.sqrt(radius**2 - (step / 2) ** 2))
    work(sheet, [*floor, (2.5 * step, -12), (-0.5 * step, -12)])
    at = (2 * step, radius)
    tool(sheet, [*arc(at, radius, 180, 360), (at[0] + radius, 34), (at[0] - radius, 34)])
    sheet.draw([at, arc(at, radius, 215, 220)[0]], CUT_LINE)
    call(sheet, "radius", arc(at, radius, 215, 220)[0], (14, 18))
    centre_line(sheet, (at[0], radius - 3), (at[0], 38))
    size(sheet, "step", (step / 2, ridge), (step * 1.5, ridge), along="x", off=-18)
    size(sheet, "height", (-step / 2, ridge), (0, 0), along="y", off=-15, put="left")
