"""The picture of squaring a blank: a small view for each face in order, what is up, and what is at the fixed jaw."""

import numpy as np

from jobcards.drawing.mesh import View
from jobcards.drawing.paper import EM, Box, Piece, Row, Rows, Sheet, amount, words
from jobcards.drawing.set_up_marks import LETTERS, balloon
from jobcards.drawing.set_up_work import FROM_FRONT, FROM_RIGHT, OnMachine, between_states, draw_box, draw_work
from jobcards.dryrun.results import PartRun
from jobcards.planning.card import Cut, SetUpPlan

WIDTH = 106.0
COLUMNS = 2
HIGH = 22.0  # mm: the vise in each small view
GAP = 4.0


def square_picture(set_up: SetUpPlan, run: PartRun) -> Sheet:
    """All faces in order, in rows from the upper left."""
    sheet = Sheet(WIDTH)
    states = [state for state in run.states if state.set_up_id == set_up.id]
    before = run.start_of(set_up.id)
    across = WIDTH / COLUMNS
    top = 0.0
    small = []
    for number, (cut, state) in enumerate(zip((c for c in set_up.cuts if c.kind != "hand"), states, strict=False)):
        small.append(face_picture(cut, between_states(state, before, state), LETTERS[number], across - 2 * GAP))
        before = state
    for first in range(0, len(small), COLUMNS):
        row = small[first : first + COLUMNS]
        boxes = [picture.bounds() for picture in row]
        high = max(box.high for box in boxes)
        for column, (picture, box) in enumerate(zip(row, boxes, strict=True)):
            picture.moved((column + 0.5) * across - (box.left + box.right) / 2, top - high)
            sheet.strokes += picture.strokes
            sheet.letters += picture.letters
        top -= high - min(box.low for box in boxes) + GAP
    return sheet


def face_picture(cut: Cut, it: OnMachine, letter: str, width: float) -> Sheet:
    """One face: seen along the jaws, or from in front where an end is cut."""
    end = cut.kind == "end"
    view: View = FROM_FRONT if end else FROM_RIGHT
    vise = {name: box.seen(view, 1.0) for name, box in it.fixtures.items()}
    low = min(box.low for box in vise.values())
    points = np.vstack([it.before.corners, it.work.corners])
    seen = view.seen(points)[:, :2]
    left, right = (
        min(seen[:, 0].min(), *(b.left for b in vise.values())),
        max(seen[:, 0].max(), *(b.right for b in vise.values())),
    )
    high = max(seen[:, 1].max(), *(b.high for b in vise.values()))
    scale = float(min(HIGH / (high - low), width / (right - left)))
    sheet = Sheet(WIDTH)
    fixtures = {name: box.seen(view, scale) for name, box in it.fixtures.items()}
    for name in ("bed", "fixed jaw") if end else ("bed", "fixed jaw", "moving jaw"):
        draw_box(sheet, fixtures[name])
    if end:
        draw_box(sheet, fixtures["parallel"], fill="paper")
    else:
        parallels(sheet, it, cut, scale)
    draw_work(sheet, it, view, scale, hidden=False)
    bounds = sheet.bounds()
    if not end:
        jaw = fixtures["fixed jaw"]
        sheet.write(
            (words("fixed", small=True), words("jaw", small=True)),
            jaw.right + 0.4 * EM,
            jaw.high,
            across="left",
            up="top",
        )
    letters(sheet, cut, letter, bounds)
    return sheet


def parallels(sheet: Sheet, it: OnMachine, cut: Cut, scale: float) -> None:
    """The two parallels on edge, seen from their end."""
    if cut.hold is None or "parallel thickness" not in cut.hold.sizes or "parallel" not in it.fixtures:
        return
    box = it.fixtures["parallel"].seen(FROM_RIGHT, scale)
    thick = cut.hold.sizes["parallel thickness"].value * scale
    for left in (box.left, box.right - thick):
        draw_box(sheet, Box(left, box.low, left + thick, box.high), fill="paper")


def letters(sheet: Sheet, cut: Cut, letter: str, bounds: Box) -> None:
    """Under the small view: the face cut, what is against the fixed jaw, and how much comes off or is left."""
    hold = cut.hold
    rows: list[Row] = [words(f"{cut.face} cut" if cut.kind == "end" else f"{cut.face} up")]
    if hold is not None and hold.fixed_jaw:
        also = f", {hold.up} up" if cut.kind == "end" else ""
        rows.append(words(f"{hold.fixed_jaw} against fixed jaw{also}", small=True))
    for name, said in (("leave", "leave "), ("take off", "take off ")):
        if name in cut.sizes:
            shown = tuple(Piece(p.text, p.number) for p in amount(cut.sizes[name]))
            rows.append((*words(said, small=True), *shown))
            break
    block: Rows = tuple(rows)
    sheet.write(block, (bounds.left + bounds.right) / 2, bounds.low - 0.4 * EM, up="top")
    balloon(sheet, (bounds.left + 0.4 * EM, bounds.high + 1.0 * EM), letter)
