"""A definition to begin with: small, commented, and such that its card can be made at once."""

import re
from datetime import date
from pathlib import Path

from jobcards.definition.checks.variants import address
from jobcards.definition.reading.scalars import LONGEST_NAME, NAME

HEAD = """\
# One file is one job. Change the words after each colon; what may stand there is on the page "Add a job".
# A line like this one, from # on, is a note to yourself and is not read.
title: {title}
scenario: Say here where the sizes come from. If you made them up, say that they are invented.
summary: One or two sentences on what it is and what it is for.
level: beginner                       # beginner, some practice or experienced
units: inch                           # inch or mm, for every length written without one
revisions:
  - {{letter: A, date: {today}, change: First issue.}}

"""
BLOCK = """\
# The sizes of the drawing, each with a name. A tolerance follows the size; without one the general tolerance applies.
sizes:
  length: 2-1/2 ±0.005
  height: 1 ±0.005
  thickness: 3/4 ±0.005
  hole: 17/64 +0.006/-0.001
  hole spacing: 1-1/2 ±0.005

parts:
  block:
    material: low-carbon steel, cold drawn
    # Length runs from the left end to the right end (x), height from the bottom (y), thickness from the back (z).
    block: {length: length, height: height, thickness: thickness}
    blank: {shape: flat bar, width: 1-1/4, thickness: 7/8, length: length + 1/8}
    # The shapes on it. `from` is the face a shape is cut into; `at` its place or places on that face.
    features:
      holes:
        {shape: hole, from: front, diameter: hole, depth: through,
         at: [{x: length/2 - hole spacing/2, y: height/2}, {x: length/2 + hole spacing/2, y: height/2}]}
      corners: {shape: broken corners, size: 0.015}
    # The set-ups, in the order they are done. Say how the work is held; the readings follow from that.
    route:
      - set-up: square the blank
        machine: knee mill
        why: Every later set-up stands on these faces.
        hold: {in: vise, on: parallels}
        square up:
          order: [front, top, bottom, back, left end, right end]
          with: 2-1/2 face mill
          ends with: 3/4 end mill
      - set-up: holes
        machine: knee mill
        hold: {in: vise, up: front, against fixed jaw: top, against stop: left end, on: parallels}
        zero: [{middle from: left end}, {edge: bottom}]
        operations:
          - cut: holes
            with: spot drill
            rough: true
            why: A long drill starts where the spot is.
          - cut: holes
            with: 17/64 drill
            check: Look that both holes come out clean at the back.
      - set-up: deburr
        machine: bench
        operations:
          - {cut: corners, with: file}

# What must come out right: a sum of sizes, with limits. The card tells what the tolerances do to it.
requirements:
  metal beside a hole:
    value: (length - hole spacing - hole)/2
    at least: 1/4
    why: A thin wall breaks out.
"""
TURNED = """\
# The sizes of the drawing, each with a name. A tolerance follows the size; without one the general tolerance applies.
# `reference: true` marks a size that only follows from others: it has no tolerance of its own.
sizes:
  head diameter: 3/4 ±0.005
  head length: 1/4 ±0.005
  shank diameter: 1/2 ±0.001
  shank length: 1 ±0.005
  whole length: {size: head length + shank length, reference: true}

parts:
  pin:
    material: low-carbon steel, cold drawn
    # Lengths run from the left end to the right end.
    turned: {length: whole length, diameter: head diameter}
    blank: {shape: round bar, diameter: 1, length: whole length + 1-3/4}
    # The shapes on it. `from` is where a diameter begins, counted from the left end.
    features:
      head: {shape: turned diameter, diameter: head diameter, from: 0, length: head length}
      shank: {shape: turned diameter, diameter: shank diameter, from: head length, length: shank length}
      nose: {shape: turned chamfer, on: right end, size: 1/32}
    # The set-ups, in the order they are done. Say how the work is held; the readings follow from that.
    route:
      - set-up: shank end
        machine: lathe
        why: Head and shank are turned at one chucking, so they run true to each other.
        hold: {in: three-jaw chuck, out: right end}
        operations:
          - {face: right end, with: facing tool}
          - {cut: head, with: turning tool}
          - {cut: shank, with: turning tool, check: Measure cold before the last pass and after it.}
          - {cut: nose, with: chamfering tool}
          - {part off: left end, with: parting tool}
      - set-up: head end
        machine: lathe
        hold: {in: collet, by: shank, out: left end}
        operations:
          - {face: left end, with: facing tool}

# What must come out right: a sum of sizes, with limits. The card tells what the tolerances do to it.
requirements:
  shoulder under the head:
    value: (head diameter - shank diameter)/2
    at least: 0.1
    why: The head must carry the load.
"""


class CannotBegin(Exception):
    """Why no file was written, and what to do."""


def begin(title: str, turned: bool, folder: Path) -> Path:
    """Write the definition of a new job. Raises CannotBegin when the title will not do or the file is there.

    A title may be any name, as in “Stop for the drill press”; the file is named after it.
    """
    title = " ".join(title.split())
    if not title or len(title) > LONGEST_NAME or not NAME.fullmatch(title) or re.search(r"\.\.|//|[/.,\-]$", title):
        raise CannotBegin(
            f"“{title[:80]}” will not do as a title; use letters, digits, spaces and - / . , ' and at most "
            f"{LONGEST_NAME} of them."
        )
    stem = address("", title).strip("-")
    if not stem:
        raise CannotBegin("The file is named after the title; use some letters from a to z in it.")
    path = folder / f"{stem}.yml"
    text = HEAD.format(title=quoted(title), today=date.today().isoformat()) + (TURNED if turned else BLOCK)
    try:
        with path.open("x", encoding="utf-8") as new:
            new.write(text)
    except FileExistsError:
        raise CannotBegin(f"There is {path.name} already; it was left as it is. Choose another title.") from None
    return path


def quoted(title: str) -> str:
    """A title as YAML takes it for text, whatever is in it.

    >>> quoted("Stop for the drill"), quoted("Jig's base"), quoted("2026")
    ("'Stop for the drill'", "'Jig''s base'", "'2026'")
    """
    return "'" + title.replace("'", "''") + "'"
