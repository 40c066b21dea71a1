"""Figures for compound angles and for a head out of tram."""

import numpy as np

from jobcards.drawing.figures.figure import figure
from jobcards.drawing.figures.marks import angle, at_angle, centre_line, edge, line, say, size, work
from jobcards.drawing.paper import HIDDEN, Points, Sheet


@figure(
    "compound_angles.tilt_from_views",
    "compound_angles.turn_from_views",
    "compound_angles.tilt_from_turns",
    "compound_angles.second_tilt",
    "compound_angles.slope_in_view",
    title="A face that slopes in two views",
    description="The same face seen from the front and from the side: it slopes by one angle in the front view "
    "and by another in the side view. Seen from above, the true slope runs downhill at a turn from the front.",
)
def two_views(sheet: Sheet) -> None:
    front, side = 16.0, 24.0
    rise = np.tan(np.radians([front, side]))
    work(sheet, [(0, 0), (36, 0), (36, 12), (0, 12 + 36 * rise[0])])
    line(sheet, (0, 12), (36, 12))
    angle(sheet, "front", (36, 12), 24, 180 - front, 180)
    work(sheet, [(48, 0), (74, 0), (74, 12 + 26 * rise[1]), (48, 12)])
    line(sheet, (48, 12), (74, 12))
    angle(sheet, "side", (48, 12), 14, 0, side)
    say(sheet, "from the front", 18, -4)
    say(sheet, "from the side", 61, -4)
    work(sheet, [(0, -38), (36, -38), (36, -12), (0, -12)])
    turn = float(np.degrees(np.arctan(rise[1] / rise[0])))
    start = (6.0, -34.0)
    line(sheet, start, (32, start[1]))
    edge(sheet, start, at_angle(start, turn, 21))
    angle(sheet, "turn", start, 13, 0, turn)
    say(sheet, "from above", 18, -42)
    true = float(np.degrees(np.arctan(np.hypot(*rise))))
    work(sheet, [(48, -38), (76, -38), (76, -30), (48, -30 + 28 * np.tan(np.radians(true)))])
    line(sheet, (48, -30), (76, -30))
    angle(sheet, "tilt", (76, -30), 17, 180 - true, 180)
    say(sheet, "along the turn", 62, -42)


def cutter_path(radius: float, lean: float, about: tuple[float, float]) -> Points:
    """The lowest edge of a leaning face mill, seen along the cut."""
    turn = np.radians(np.linspace(180, 360, 37))
    return np.array(about) + np.column_stack([radius * np.cos(turn), radius * lean * np.sin(turn)])


@figure(
    "compound_angles.tram_hollow",
    title="The hollow left by a head out of tram",
    description="Seen along the cut, a face mill that leans along the feed cuts with an ellipse: the face "
    "comes out hollow in the middle of its width.",
)
def hollow(sheet: Sheet) -> None:
    radius, flat, half = 32.0, 0.32, 24.0
    path = cutter_path(radius, flat, (0, 14))
    depth = radius * flat * float(np.sqrt(1 - (half / radius) ** 2))
    rim = 14 - depth
    inside = path[abs(path[:, 0]) < half]
    work(sheet, [(-half, rim), *inside, (half, rim), (half, -14), (-half, -14)])
    sheet.draw(path, HIDDEN)
    centre_line(sheet, (0, -17), (0, 16))
    size(sheet, "width", (-half, -14), (half, -14), along="x", off=-20)
    size(sheet, "cutter", (-radius, 14), (radius, 14), along="x", off=20)
    line(sheet, (0, rim), (half, rim))
    size(sheet, "hollow", (half, rim), (0, 14 - radius * flat), along="y", off=31, put="after")


@figure(
    "compound_angles.tram_step",
    "compound_angles.hole_run_off",
    title="What a head out of tram does",
    description="The spindle leans across the cut by the tilt. Strokes that lie beside each other leave a "
    "step, and a hole runs off with its depth.",
)
def out_of_tram(sheet: Sheet) -> None:
    lean, over = 12.0, 18.0
    rise = float(over * np.tan(np.radians(lean)))
    steps = [point for k in range(3) for point in ((k * over - 20, 0.0), (k * over - 20 + over, rise))]
    work(sheet, [*steps, (34, -38), (-20, -38)])
    start = (25.0, rise / 2)
    end = at_angle(start, 270 - lean, 30)
    centre_line(sheet, (start[0], 12), (start[0], start[1] - 32))
    edge(sheet, start, end)
    angle(sheet, "tilt", start, 22, 270 - lean, 270, put="start")
    size(sheet, "over", (-20, 0), (-2, 0), along="x", off=9)
    size(sheet, "step", (-20, 0), (-2, rise), along="y", off=-25, put="left")
    size(sheet, "depth", start, end, along="y", off=40, put="right")
    size(sheet, "off", end, (start[0], start[1] - 32), along="x", off=-43, put="before")
