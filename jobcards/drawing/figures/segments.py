"""Figures for flats on rounds and for polygons."""

import numpy as np

from jobcards.drawing.figures.figure import figure
from jobcards.drawing.figures.marks import at_angle, cross, diameter, size, work
from jobcards.drawing.paper import HIDDEN, THIN, Sheet, arc, circle


@figure(
    "segments.flat_width",
    "segments.flat_depth",
    "segments.over_flat",
    title="A flat on a round",
    description="A round with a flat milled on top: its width, its depth below the top of the round, and the "
    "measure over the flat to the far side.",
)
def flat(sheet: Sheet) -> None:
    radius, depth = 19.0, 9.0
    reach = float(np.degrees(np.arccos((radius - depth) / radius)))
    half = radius * np.sin(np.radians(reach))
    work(sheet, arc((0, 0), radius, 90 + reach, 450 - reach))
    sheet.draw(arc((0, 0), radius, 90 - reach, 90 + reach), HIDDEN)
    cross(sheet, (0, 0), 2)
    size(sheet, "width", (-half, radius - depth), (half, radius - depth), along="x", off=radius + 6)
    size(sheet, "depth", (0, radius), (half, radius - depth), along="y", off=26, put="right")
    size(sheet, "over", (half, radius - depth), (0, -radius), along="y", off=26, put="right")
    diameter(sheet, "diameter", (0, 0), radius, 200, 5)


@figure(
    "segments.round_for_polygon",
    "segments.polygon_depth",
    "segments.polygon_from_round",
    title="A polygon from a round",
    description="A hexagon standing in the round it is milled from: across the corners is the diameter, across "
    "the flats is smaller, and each flat lies a depth below the top of the round.",
)
def polygon(sheet: Sheet) -> None:
    radius = 19.0
    flats = radius * np.cos(np.radians(30))
    sheet.draw(circle((0, 0), radius), THIN, closed=True)
    work(sheet, [at_angle((0, 0), 60 * k, radius) for k in range(6)])
    cross(sheet, (0, 0), 2)
    size(sheet, "diameter", (-radius, 0), (radius, 0), along="x", off=-radius - 6)
    size(sheet, "flats", (-radius / 2, flats), (-radius / 2, -flats), along="y", off=-26, put="left")
    size(sheet, "depth", (0, radius), (radius / 2, flats), along="y", off=26, put="before")
