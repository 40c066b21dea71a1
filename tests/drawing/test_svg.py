"""What every drawing of a card must be: the same bytes, its own ids, owned digits, legible, and nothing that runs."""

import hashlib
import os
import re
import subprocess
import sys
from pathlib import Path
from xml.etree import ElementTree

import numpy as np
import pytest

from jobcards.drawing import part_drawing
from tests.drawing.drawn import every_drawing
from tests.planning.cards import clamp

SVG = "{http://www.w3.org/2000/svg}"
NAMES = sorted(every_drawing())
ROOT = Path(__file__).parents[2]
PHONE = 390 - 26  # px: a phone's width less the page's margins
FRESH = """
import hashlib
from tests.drawing.drawn import every_drawing
print(hashlib.sha256("".join(d.svg for _, d in sorted(every_drawing().items())).encode()).hexdigest())
"""


def test_a_drawing_is_the_same_bytes_twice() -> None:
    card = clamp()
    for part in card.parts:
        assert part_drawing(card, part).svg == every_drawing()[f"drawing-{part.id}"].svg


def test_a_fresh_process_draws_the_same_bytes() -> None:
    here = hashlib.sha256("".join(d.svg for _, d in sorted(every_drawing().items())).encode()).hexdigest()
    environment = dict(os.environ, PYTHONHASHSEED="7", PYTHONPATH=str(ROOT))
    done = subprocess.run(
        [sys.executable, "-c", FRESH], cwd=ROOT, env=environment, capture_output=True, text=True, check=True
    )
    assert done.stdout.strip() == here


def test_no_id_stands_in_two_drawings() -> None:
    ids = [found for drawing in every_drawing().values() for found in re.findall(r'\sid="([^"]*)"', drawing.svg)]
    assert len(ids) == len(set(ids)) == 2 * len(every_drawing())


@pytest.mark.parametrize("name", NAMES)
def test_nothing_in_a_drawing_runs_or_points_outside(name: str) -> None:
    svg = every_drawing()[name].svg
    root = ElementTree.fromstring(svg)
    tags = {element.tag.removeprefix(SVG) for element in root.iter()}
    assert tags <= {"svg", "title", "desc", "g", "path", "text"}
    attributes = {key for element in root.iter() for key in element.attrib}
    assert attributes <= {
        "class",
        "viewBox",
        "width",
        "role",
        "aria-labelledby",
        "id",
        "d",
        "x",
        "y",
        "transform",
        "style",
        "data-number",
        "data-furniture",
    }
    assert "url(" not in svg and "<?xml" not in svg and "#000000" not in svg
    assert len(svg.encode()) < 60_000


@pytest.mark.parametrize("name", NAMES)
def test_every_digit_belongs_to_a_number(name: str) -> None:
    ledger = clamp().ledger
    root = ElementTree.fromstring(every_drawing()[name].svg)
    owned = {
        text: group
        for group in root.iter(f"{SVG}g")
        if "data-number" in group.attrib
        for text in group.iter(f"{SVG}text")
    }
    for text in root.iter(f"{SVG}text"):
        said = text.text or ""
        if not any(c.isdigit() for c in said):
            continue
        assert text in owned, f"{said!r} is unowned"
        number = ledger[owned[text].attrib["data-number"]]
        if said.startswith(("±", "+", "−")) and number.tolerance is not None and number.shown not in said:
            digits = re.findall(r"[0-9.]+", said)
            deviations = sorted({round(abs(limit), 9) for limit in number.tolerance})
            assert sorted(map(float, digits)) == pytest.approx(deviations, abs=6e-5)
        else:
            assert said.strip("⌀R()°") == number.shown.strip("°")


@pytest.mark.parametrize("name", [name for name in NAMES if name.startswith("set-up-")])
def test_lettering_of_a_set_up_can_be_read_on_a_phone(name: str) -> None:
    root = ElementTree.fromstring(every_drawing()[name].svg)
    width = float(root.attrib["viewBox"].split()[2])
    sizes = [float(re.findall(r"font-size: ([\d.]+)px", text.attrib["style"])[0]) for text in root.iter(f"{SVG}text")]
    assert sizes and min(sizes) * PHONE / width >= 9.0


@pytest.mark.parametrize("name", NAMES)
def test_a_drawing_is_described(name: str) -> None:
    drawing = every_drawing()[name]
    root = ElementTree.fromstring(drawing.svg)
    assert (root.findtext(f"{SVG}title"), root.findtext(f"{SVG}desc")) == (drawing.title, drawing.description)
    assert root.attrib["role"] == "img" and root.attrib["aria-labelledby"] == f"{name}-title {name}-desc"
    assert len(drawing.description) > 15


@pytest.mark.parametrize("name", NAMES)
def test_nothing_is_left_black_by_default(name: str) -> None:
    """What has no fill of its own would stay black on a dark ground."""
    root = ElementTree.fromstring(every_drawing()[name].svg)
    for element in [*root.iter(f"{SVG}path"), *root.iter(f"{SVG}text")]:
        assert "fill: " in element.attrib["style"]


@pytest.mark.parametrize("name", NAMES)
def test_every_point_drawn_is_written_within_a_hair(name: str) -> None:
    """Points are written to a tenth of a unit, each from the one before: that must not add up along a line."""
    drawing = every_drawing()[name]
    written = np.array(sorted({point for path in paths(drawing.svg) for point in points(path)}))
    sheet = drawing.sheet
    drawn = np.vstack([loop for stroke in sheet.strokes for loop in stroke.loops])
    unit = 25.4 / 72
    wanted = np.column_stack([drawn[:, 0], sheet.height - drawn[:, 1]]) / unit
    for point in wanted[:: max(1, len(wanted) // 400)]:
        assert np.abs(written - point).max(axis=1).min() < 0.08, (name, point)


def paths(svg: str) -> list[str]:
    return [path.attrib["d"] for path in ElementTree.fromstring(svg).iter(f"{SVG}path")]


def points(path: str) -> list[tuple[float, float]]:
    """The places a path goes through, as a reader of SVG finds them."""
    found, x, y = [], 0.0, 0.0
    for command, numbers in re.findall(r"([Ml])([^Mlz]*)", path):
        amounts = [float(each) for each in re.findall(r"-?[\d.]+", numbers)]
        for across, down in zip(amounts[::2], amounts[1::2], strict=True):
            x, y = (across, down) if command == "M" else (x + across, y + down)
            found.append((round(x, 4), round(y, 4)))
    return found
