"""Figure for a thread cut with the compound set over."""

import numpy as np

from jobcards.drawing.figures.figure import figure
from jobcards.drawing.figures.marks import angle, at_angle, centre_line, line, motion, size, tool, work
from jobcards.drawing.figures.threads import profile
from jobcards.drawing.paper import Sheet


@figure(
    "screw_cutting.compound_infeed",
    "screw_cutting.depth_flat_nose",
    "screw_cutting.depth_round_root",
    "screw_cutting.depth_sharp_tool",
    "screw_cutting.infeed_after_pass",
    title="A thread cut with the compound set over",
    description="The tool is fed along the compound, which stands at the compound angle from square to the "
    "work; it travels further than the thread is deep.",
)
def infeed(sheet: Sheet) -> None:
    pitch, turn = 26.0, 29.0
    depth = pitch * 17 * np.sqrt(3) / 48
    top = profile(pitch, 3, 0.0, depth)[1:-1]
    start, end = top[0][0], top[-1][0]
    work(sheet, [*top, (end, -depth - 9), (start, -depth - 9)])
    centre_line(sheet, (start - 3, -depth - 9), (end + 3, -depth - 9))
    flat = pitch / 8 * 2
    run = depth * np.tan(np.radians(30))
    root = (pitch + pitch / 2, -depth)
    tool(
        sheet,
        [
            (root[0] - flat / 2, -depth + 0.4),
            (root[0] + flat / 2, -depth + 0.4),
            (root[0] + flat / 2 + run + 4, 7.3),
            (root[0] - flat / 2 - run - 4, 7.3),
        ],
    )
    begin = at_angle(root, 90 - turn, depth / np.cos(np.radians(turn)))
    line(sheet, root, (root[0], 22))
    line(sheet, root, at_angle(root, 90 - turn, 41))
    motion(sheet, at_angle(begin, 90 - turn, 22), at_angle(begin, 90 - turn, 10))
    angle(sheet, "compound angle", root, 34, 90 - turn, 90, put="end")
    size(sheet, "infeed", root, begin, off=-26, put="right")
    size(sheet, "depth", (start, 0), (pitch - pitch / 16 - run, -depth), along="y", off=-5, put="left")
    size(sheet, "pitch", (0, 0), (pitch, 0), along="x", off=7)
