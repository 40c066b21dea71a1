"""Figures of the formula pages: their names are real, nothing overlaps, the same bytes each time, no numbers."""

import hashlib
import itertools
import os
import re
import subprocess
import sys
from pathlib import Path
from xml.etree import ElementTree

import numpy as np
import pytest

from jobcards.drawing.figures import FIGURES, Figure, every_figure
from jobcards.drawing.figures.figure import drawn, figure
from jobcards.drawing.figures.marks import angle, size
from jobcards.drawing.leader import box_meets_lines, segments_of
from jobcards.drawing.paper import LINE, QUIET, Box, Sheet
from jobcards.trade import every_formula
from jobcards.trade.formula import FORMULAS, Formula

SVG = "{http://www.w3.org/2000/svg}"
ROOT = Path(__file__).parents[2]
PHONE = 390 - 26  # px: a phone's width less the page's margins
BY_ID = {each.id: each for each in every_figure().values()}
IDS = sorted(BY_ID)
every_formula()
# Topics with no picture to draw: tables and look-ups, temperatures, speeds and sums.
WITHOUT = {
    "drills", "gauge_blocks", "general_tolerances", "hole_sequence", "screw_heads", "stackups", "standard_tapers",
    "thread_limits", "thread_bores", "cautions", "materials", "times",
}  # fmt: skip
FRESH = """
import hashlib
from jobcards.drawing.figures import every_figure
found = {each.id: each.drawing.svg for each in every_figure().values()}
print(hashlib.sha256("".join(svg for _, svg in sorted(found.items())).encode()).hexdigest())
"""


def names_of(entry: Formula) -> set[str]:
    """The names of a formula's arguments, and of its result."""
    names = {q.name for q in entry.parameters} | (set() if entry.worded else {entry.text.partition("=")[0].strip()})
    return {name.replace("_", " ") for name in names}


def said(one: Figure, colour: str) -> set[str]:
    return {letters.piece.text for letters in one.drawing.sheet.letters if letters.colour == colour}


def test_every_key_is_a_formula_that_is_registered() -> None:
    assert set(FIGURES) - set(FORMULAS) == set()
    assert all(key in one.explains for key, one in FIGURES.items())


def test_a_figure_stands_in_the_file_of_its_topic() -> None:
    for key, one in FIGURES.items():
        assert one.draw.__module__.rsplit(".", 1)[-1] == key.split(".")[0], key


def test_every_topic_with_geometry_has_a_figure() -> None:
    topics = {entry.topic for entry in FORMULAS.values()}
    assert topics - {key.split(".")[0] for key in FIGURES} <= WITHOUT


@pytest.mark.parametrize("name", IDS)
def test_what_is_lettered_in_black_is_a_name_of_its_formulas(name: str) -> None:
    one = BY_ID[name]
    assert said(one, LINE) <= set().union(*(names_of(FORMULAS[key]) for key in one.explains))
    assert {letters.colour for letters in one.drawing.sheet.letters} <= {LINE, QUIET}
    for key in one.explains:
        assert said(one, LINE) & names_of(FORMULAS[key]), f"{key} finds none of its names in {name}"


def test_a_figure_holds_no_number() -> None:
    for one in BY_ID.values():
        assert not any(c.isdigit() for letters in one.drawing.sheet.letters for c in letters.piece.text)
        assert not any(c.isdigit() for c in one.title + one.description), one.id


@pytest.mark.parametrize("name", IDS)
def test_nothing_overlaps_or_leaves_the_sheet(name: str) -> None:
    sheet = BY_ID[name].drawing.sheet
    lines, paper = segments_of(sheet), Box(0.0, 0.0, sheet.width, sheet.height)
    for one, other in itertools.combinations(sheet.letters, 2):
        assert not one.box.grown(-0.15).meets(other.box.grown(-0.15)), f"{one.piece.text!r} meets {other.piece.text!r}"
    for letters in sheet.letters:
        box = letters.box
        core = Box(box.left + 0.2, box.low + 0.25 * letters.size, box.right - 0.2, box.high - 0.15 * letters.size)
        assert not box_meets_lines(core, lines), f"a line runs through {letters.piece.text!r}"
        assert box.within(paper)
    assert sheet.bounds().within(paper)


@pytest.mark.parametrize("name", IDS)
def test_it_is_small_legible_and_described(name: str) -> None:
    drawing = BY_ID[name].drawing
    assert 80.0 <= drawing.sheet.width <= 100.0 and drawing.sheet.height <= 80.0
    root = ElementTree.fromstring(drawing.svg)
    width = float(root.attrib["viewBox"].split()[2])
    sizes = [float(re.findall(r"font-size: ([\d.]+)px", text.attrib["style"])[0]) for text in root.iter(f"{SVG}text")]
    assert sizes and min(sizes) * PHONE / width >= 9.0
    assert (root.findtext(f"{SVG}title"), root.findtext(f"{SVG}desc")) == (drawing.title, drawing.description)
    assert len(drawing.description) > 40 and len(drawing.svg.encode()) < 40_000


@pytest.mark.parametrize("name", IDS)
def test_colours_follow_the_page(name: str) -> None:
    svg = BY_ID[name].drawing.svg
    assert "#000000" not in svg and "url(" not in svg and "<?xml" not in svg
    for element in ElementTree.fromstring(svg).iter():
        if element.tag in {f"{SVG}path", f"{SVG}text"}:
            assert "fill: " in element.attrib["style"]


def test_no_id_stands_in_two_figures() -> None:
    ids = [found for one in BY_ID.values() for found in re.findall(r'\sid="([^"]*)"', one.drawing.svg)]
    assert len(ids) == len(set(ids)) == 2 * len(BY_ID)
    assert all(found.startswith("figure-") for found in ids)


def test_a_figure_is_drawn_once_in_a_process_and_alike_again() -> None:
    one = BY_ID["figure-locating-touch"]
    assert one.drawing is one.drawing
    assert drawn.__wrapped__(one).svg == one.drawing.svg


def test_a_fresh_process_draws_the_same_bytes() -> None:
    here = hashlib.sha256("".join(BY_ID[name].drawing.svg for name in IDS).encode()).hexdigest()
    environment = dict(os.environ, PYTHONHASHSEED="7", PYTHONPATH=str(ROOT))
    done = subprocess.run(
        [sys.executable, "-c", FRESH], cwd=ROOT, env=environment, capture_output=True, text=True, check=True
    )
    assert done.stdout.strip() == here


def test_a_formula_cannot_have_two_figures() -> None:
    with pytest.raises(ValueError, match="two figures"):
        figure("locating.preset_at_touch", title="again", description="again")(lambda sheet: None)


@pytest.mark.parametrize(("end", "along", "off"), [((30.0, 12.0), "", 9.0), ((30.0, 12.0), "x", 20.0)])
def test_a_size_is_as_long_as_what_it_measures(end: tuple[float, float], along: str, off: float) -> None:
    """The tips of the two arrows lie as far apart as the points, or as their levels."""
    sheet = Sheet(80.0)
    size(sheet, "length", (0.0, 0.0), end, off=off, along=along)
    tips = [stroke.loops[0][0] for stroke in sheet.strokes if stroke.closed]
    assert len(tips) == 2
    assert np.linalg.norm(tips[1] - tips[0]) == pytest.approx(30.0 if along else float(np.hypot(*end)))
    assert tips[0] == pytest.approx([0.0, 20.0] if along else np.array([-12.0, 30.0]) / np.hypot(12.0, 30.0) * 9.0)


def test_an_angle_has_its_arrows_on_its_two_sides() -> None:
    sheet = Sheet(80.0)
    angle(sheet, "tilt", (5.0, 5.0), 20.0, 10.0, 70.0)
    tips = [stroke.loops[0][0] for stroke in sheet.strokes if stroke.closed]
    turns = [float(np.degrees(np.arctan2(y - 5.0, x - 5.0))) for x, y in tips]
    assert turns == pytest.approx([10.0, 70.0])
