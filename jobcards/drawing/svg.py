"""A sheet as inline SVG: the same bytes every time, text kept as text, nothing that clashes with another drawing."""

import io
import re
from dataclasses import dataclass
from functools import lru_cache
from xml.etree import ElementTree

import matplotlib
from matplotlib.backends.backend_svg import FigureCanvasSVG
from matplotlib.figure import Figure
from matplotlib.patches import PathPatch
from matplotlib.path import Path
from matplotlib.text import Text
from matplotlib.transforms import Affine2D, Transform

from jobcards.drawing.paper import FONT, POINT, Lettering, Points, Sheet, Stroke

SVG = "http://www.w3.org/2000/svg"
OWNED = "number:"
SHADES = 8

# Colours by what they mean. Each is a CSS variable with a fallback that reads on light and dark ground and in print;
# docs/assets/drawings.css sets the variables for the dark palette. Black lines take the colour of the text.
COLOURS = {
    "line": ("#000000", "currentColor"),
    "cut": ("#c2410c", "var(--drawing-cut, #c2410c)"),
    "hold": ("#7b8794", "var(--drawing-hold, #7b8794)"),
    "hold-area": ("#dde2e7", "var(--drawing-hold-area, #dde2e7)"),
    "work-area": ("#f6f3ec", "var(--drawing-work-area, #f6f3ec)"),
    "cut-area": ("#fbd9c5", "var(--drawing-cut-area, #fbd9c5)"),
    "quiet": ("#555f6a", "var(--drawing-quiet, #6b7580)"),
    "paper": ("#fffffe", "var(--md-default-bg-color, #ffffff)"),
}
LIGHT, DARK = (0xF3, 0xF4, 0xF6), (0x8F, 0x98, 0xA3)
FRESH_LIGHT, FRESH_DARK = (0xFD, 0xDC, 0xC2), (0xD9, 0x82, 0x4F)


def _between(dark: tuple[int, int, int], light: tuple[int, int, int], step: int) -> str:
    part = step / (SHADES - 1)
    return "#" + "".join(f"{round(d + (b - d) * part):02x}" for d, b in zip(dark, light, strict=True))


for _step in range(SHADES):
    _plain, _fresh = _between(DARK, LIGHT, _step), _between(FRESH_DARK, FRESH_LIGHT, _step)
    COLOURS[f"shade-{_step}"] = (_plain, f"var(--drawing-shade-{_step}, {_plain})")
    COLOURS[f"fresh-{_step}"] = (_fresh, f"var(--drawing-fresh-{_step}, {_fresh})")

CSS_OF = dict(COLOURS.values())
STEP = re.compile(r"z|[ML]\s+\S+\s+\S+")
# What holds for all marks of a drawing unless they say otherwise.
WHOLE_STYLE = f"font-family: '{FONT}', sans-serif; stroke-linecap: round; stroke-linejoin: round"
USUAL = {("stroke-linecap", "round"), ("text-anchor", "start"), ("stroke-dashoffset", "0")}


@dataclass(frozen=True)
class Drawing:
    """A finished drawing: the SVG, its title, and a description for readers who cannot see it."""

    svg: str
    title: str
    description: str
    sheet: Sheet


def finish(sheet: Sheet, drawing_id: str, title: str, description: str) -> Drawing:
    """The sheet as inline SVG. `drawing_id` must be the drawing's own on its page."""
    with matplotlib.rc_context(
        {"svg.fonttype": "none", "svg.hashsalt": drawing_id, "font.family": [FONT], "path.simplify": False}
    ):
        figure = Figure(figsize=(sheet.width / 25.4, sheet.height / 25.4))
        FigureCanvasSVG(figure)
        figure.patch.set_visible(False)
        on_paper = Affine2D().scale(1 / 25.4) + figure.dpi_scale_trans
        for stroke in sheet.strokes:
            figure.add_artist(_artist(stroke, on_paper))
        for lettering in sheet.letters:
            figure.add_artist(_text(lettering, on_paper))
        raw = io.BytesIO()
        figure.savefig(
            raw, format="svg", transparent=True, metadata={"Date": None, "Creator": None, "Format": None, "Type": None}
        )
    svg = _clean(raw.getvalue().decode(), drawing_id, title, description)
    return Drawing(svg, title, description, sheet)


def _artist(stroke: Stroke, on_paper: Transform) -> PathPatch:
    """A matplotlib artist for lines or an area."""
    path = Path.make_compound_path(
        *(Path(loop, closed=False) if not stroke.closed else _loop(loop) for loop in stroke.loops)
    )
    dashes = tuple(length / stroke.pen.width for length in stroke.pen.dashes) if stroke.pen.width else ()
    return PathPatch(
        path,
        transform=on_paper,
        facecolor=COLOURS[stroke.fill][0] if stroke.fill else "none",
        edgecolor=COLOURS[stroke.pen.colour][0] if stroke.pen.width else COLOURS[stroke.fill][0],
        linewidth=(stroke.pen.width or 0.05) / POINT,
        linestyle=(0, dashes) if dashes else "solid",
        capstyle="butt" if dashes else "round",
        joinstyle="round",
    )


def _loop(points: Points) -> Path:
    """A closed path through points."""
    codes = [Path.MOVETO] + [Path.LINETO] * (len(points) - 1) + [Path.CLOSEPOLY]
    return Path([*points, points[0]], codes)


def _text(lettering: Lettering, on_paper: Transform) -> Text:
    """A matplotlib text on its baseline. Dollar signs stay characters."""
    text = Text(
        lettering.x,
        lettering.y,
        lettering.piece.text,
        transform=on_paper,
        fontsize=lettering.size / POINT,
        color=COLOURS[lettering.colour][0],
        ha="left",
        va="baseline",
        parse_math=False,
    )
    text.set_gid(OWNED + lettering.piece.number if lettering.piece.number else "words")
    return text


def _clean(raw: str, drawing_id: str, title: str, description: str) -> str:
    """The SVG without prolog, metadata, styles, and ids; numbers named; colours that follow the page."""
    source = ElementTree.fromstring(raw)
    _, _, width, height = (float(value) for value in source.attrib["viewBox"].split())
    root = ElementTree.Element(
        f"{{{SVG}}}svg",
        {
            "class": "drawing",
            "viewBox": f"0 0 {_short(width)} {_short(height)}",
            "width": "100%",
            "role": "img",
            "aria-labelledby": f"{drawing_id}-title {drawing_id}-desc",
            "style": WHOLE_STYLE,
        },
    )
    for tag, text in (("title", title), ("desc", description)):
        ElementTree.SubElement(root, f"{{{SVG}}}{tag}", {"id": f"{drawing_id}-{tag}"}).text = text
    for child in source:
        _copy(child, root)
    ElementTree.register_namespace("", SVG)
    return ElementTree.tostring(root, encoding="unicode")


def _copy(element: ElementTree.Element, into: ElementTree.Element) -> None:
    """Copy what is drawn; groups that say nothing are dropped and their contents kept."""
    tag = element.tag.rpartition("}")[2]
    if tag in {"metadata", "defs", "style"}:
        return
    if tag == "g":
        gid = element.get("id", "")
        if gid.startswith(OWNED):
            into = ElementTree.SubElement(into, f"{{{SVG}}}g", {"data-number": gid[len(OWNED) :]})
        for child in element:
            _copy(child, into)
        return
    kept = {key: value for key, value in element.attrib.items() if key in {"d", "x", "y", "transform", "style"}}
    if "d" in kept:
        kept["d"] = _short_path(kept["d"])
    kept.pop("transform", None)  # all lettering stands level
    for key in {"x", "y"} & set(kept):
        kept[key] = _short(float(kept[key]))
    if "style" in kept:
        kept["style"] = _style(kept["style"])
    copy = ElementTree.SubElement(into, f"{{{SVG}}}{tag}", kept)
    copy.text = element.text


@lru_cache(maxsize=1024)
def _style(style: str) -> str:
    """A style with the page's colours and the page's lettering."""
    for hexadecimal, css in CSS_OF.items():
        style = style.replace(hexadecimal, css)
    said = dict(piece.split(": ", 1) for piece in style.split("; "))
    if "stroke-dasharray" in said:
        said |= {"stroke-linecap": "butt"}
    kept = {name: value for name, value in said.items() if (name, value) not in USUAL and name != "font-family"}
    written = "; ".join(f"{name}: {value}" for name, value in ({"fill": "currentColor"} | kept).items())
    return re.sub(r"\d+\.\d{3,}", lambda m: _short(float(m[0])), written)


def _short_path(path: str) -> str:
    """Path data to a tenth of a unit, which is 0.04 mm: each point told by how far it lies from the one before.

    >>> _short_path("M 10.04 5 L 12.06 4.46 L 12.08 4.47 L 0 4.5 z M 1 1 L 1 1")
    'M10 5l2.1-.5-12.1 0zM1 1l0 0'
    """
    words: list[str] = []
    at, before = (0, 0), ""
    for command, *place in map(str.split, STEP.findall(path)):
        if place:
            to = (round(10 * float(place[0])), round(10 * float(place[1])))
            step = to if command == "M" else (to[0] - at[0], to[1] - at[1])
            if step != (0, 0) or "M" in (command, before):
                words += ["l" if before == "M" else command if command == "M" else "", *map(_tenths, step)]
            at = to
        else:
            words.append(command)
        before = command
    return re.sub(r" *([Mlz]) *| +(?=-)", r"\1", " ".join(filter(None, words)))


def _tenths(amount: int) -> str:
    """So many tenths, as short as may be.

    >>> _tenths(-5), _tenths(120), _tenths(0)
    ('-.5', '12', '0')
    """
    whole, tenths = divmod(abs(amount), 10)
    text = f"{whole or ''}.{tenths}" if tenths else f"{whole}"
    return f"-{text}" if amount < 0 else text


def _short(value: float) -> str:
    """A number with at most two decimals.

    >>> _short(12.3456), _short(-0.001), _short(4.0)
    ('12.35', '0', '4')
    """
    text = f"{value:.2f}".rstrip("0").rstrip(".")
    return "0" if text in {"-0", ""} else text
