"""The wall sheet: one printed page with what is set and read at the machine, large."""

from collections.abc import Iterable, Iterator, Sequence

from jobcards.pages import html, qr
from jobcards.pages.html import Html, element, heading, join
from jobcards.pages.wall_layout import Block, arrange
from jobcards.pages.writing import Writer, furniture, tick
from jobcards.planning.card import Card, Cut, FeaturePlan, HoldPlan, InspectionRow, Position, SetUpPlan, Touch
from jobcards.planning.number import Number

QUIET = "---\nsearch:\n  exclude: true\nhide:\n  - navigation\n  - toc\n---\n\n"
# More places than this are shown as the first and the last one, or as pitch and count.
MOST_PLACES = 4
MOST_LIMITS = 10
FINE = {"in": 0.012, "mm": 0.3}  # limits this close together are worth a line on the wall


def wall_page(card: Card, site_url: str = "") -> str:
    """The finished page."""
    writer = Writer()
    blocks = [set_up_block(writer, card, each) for each in card.set_ups]
    measured = close_limits(card)
    if measured:
        blocks.append(limits_block(writer, measured))
    layout = arrange(blocks)
    columns = (element("div", *(block.html for block in column), class_="wall-column") for column in layout.columns)
    sheet = element(
        "div",
        element("div", *columns, class_="wall-columns"),
        class_=f"wall wall-{layout.name}",
        data_card=card.slug,
        data_fingerprint=card.fingerprint,
    )
    return QUIET + html.page(
        [heading(1, writer.authored(card.title)), marks_line(card, site_url, "wall/index.html"), sheet]
    )


def marks_line(card: Card, site_url: str, page: str) -> Html:
    """What tells this sheet from an older one, and the way back to the card."""
    back = html.link("../index.html", "Back to the card", class_="screen-only")
    stale = element("p", hidden="", class_="stale", data_stale="", role="status")
    told = element("p", furniture(qr.marks(card)), " ", back, class_="marks")
    return element("div", qr.code(card, site_url, page), told, stale, class_="sheet-head")


def set_up_block(writer: Writer, card: Card, set_up: SetUpPlan) -> Block:
    """Everything to set for one set-up."""
    part = next(part for part in card.parts if part.id == set_up.part)
    features = {feature.name: feature for feature in part.shape.features}
    lines = [title_line(writer, card, set_up)]
    lines += [row("hold", held) for held in [hold_line(writer, set_up.hold)] if held]
    lines += [row("zero", join([touch_line(writer, touch) for touch in set_up.zero], " "))] if set_up.zero else []
    for cut in set_up.cuts:
        lines += cut_lines(writer, cut, features.get(cut.feature), tool_known=same_tool(set_up, cut))
    return Block("wall-set-up", tuple(lines))


def title_line(writer: Writer, card: Card, set_up: SetUpPlan) -> Html:
    """Number, part and title, with a box to tick."""
    name = next(part.name for part in card.parts if part.id == set_up.part)
    told = join([writer.number(set_up.number), " ", writer.authored(name), ": ", writer.authored(set_up.title)])
    return row("title", join([tick(f"wall.{set_up.id}"), told]))


def row(class_: str, *content: str) -> Html:
    """A line of a block."""
    return element("p", *content, class_=f"wall-{class_}")


def hold_line(writer: Writer, hold: HoldPlan | None) -> Html:
    """How the work is held, in a few words."""
    if hold is None or hold.kind == "hand":
        return Html("")
    told: list[str] = []
    told += [f"{hold.up} up"] if hold.up else []
    told += [f"{hold.fixed_jaw} to the fixed jaw"] if hold.fixed_jaw else []
    told += [f"{hold.stop} to the stop"] if hold.stop else []
    told += [f"{hold.high_end} high"] if hold.high_end else []
    told += [f"{hold.out} out"] if hold.out else []
    named = {"parallel height": "parallels", "stack": "stack", "stick-out": "stands out"}
    told += [join([f"{word} ", strong(writer, hold.sizes[key])]) for key, word in named.items() if key in hold.sizes]
    return join(told, ", ")


def touch_line(writer: Writer, touch: Touch) -> Html:
    """One touch: where, and the number to set there."""
    if touch.kind == "kept":
        return element("span", f"{touch.axis} as before")
    return element(
        "span", f"{touch.axis} at {touch.face} = " if touch.face else f"{touch.axis} = ", strong(writer, touch.preset)
    )


def strong(writer: Writer, number: Number, unit: bool = False) -> Html:
    """A number to be read from a step away."""
    return element("b", writer.number(number, unit), class_="figure")


def same_tool(set_up: SetUpPlan, cut: Cut) -> bool:
    """Is the cutter still in the spindle, turning as fast?"""
    place = set_up.cuts.index(cut)
    if place == 0:
        return False
    before = set_up.cuts[place - 1]
    return before.cutter == cut.cutter and before.rates.get("speed") == cut.rates.get("speed")


def cut_lines(writer: Writer, cut: Cut, feature: FeaturePlan | None, tool_known: bool) -> list[Html]:
    """One operation: the cutter with speed and feed, then where to and how deep."""
    lines: list[Html] = []
    if cut.cutter and not tool_known:
        rates = [strong(writer, cut.rates[key], unit=True) for key in ("speed", "feed") if key in cut.rates]
        lines.append(row("tool", join([writer.authored(cut.cutter.name), *rates], " ")))
    sizes = [join([f"{name} ", strong(writer, number)]) for name, number in cut.sizes.items()]
    if cut.sizes or cut.positions:
        lines.append(row("cut", join([element("span", writer.line(cut.title), class_="wall-name"), *sizes], " ")))
    return lines + [row("place", each) for each in place_lines(writer, cut, feature)]


def place_lines(writer: Writer, cut: Cut, feature: FeaturePlan | None) -> Iterator[Html]:
    """Where to go. Many grooves are told by the first, the pitch and the count; many passes by the last one."""
    if cut.kind == "grooves" and feature and {"pitch", "count"} <= set(feature.sizes) and cut.positions:
        first = join(["first ", position(writer, cut.positions[0])])
        pitch = join(["then every ", strong(writer, feature.sizes["pitch"])])
        yield join([first, pitch, join(["count ", strong(writer, feature.sizes["count"])])], ", ")
    elif cut.kind == "turn" and len(cut.positions) > 1:
        yield join(["last pass ", position(writer, cut.positions[-1])])
    elif len(cut.positions) > MOST_PLACES:
        yield join(["first ", position(writer, cut.positions[0]), ", last ", position(writer, cut.positions[-1])])
    else:
        yield from (position(writer, each) for each in cut.positions)


def position(writer: Writer, place: Position) -> Html:
    """The readings of one place."""
    axes = ((axis, number) for axis, number in (("x", place.x), ("y", place.y), ("z", place.z)) if number)
    return join([element("span", f"{axis} ", strong(writer, number), class_="reading") for axis, number in axes], " ")


def close_limits(card: Card) -> Sequence[InspectionRow]:
    """The sizes with the closest limits, in the order of the record."""
    spreads = sorted(row.upper.value - row.lower.value for row in card.inspection if row.aim.unit in FINE)
    if not spreads:
        return []
    limit = min(FINE[card.unit], spreads[min(len(spreads), MOST_LIMITS) - 1])
    kept = [row for row in card.inspection if row.aim.unit in FINE and row.upper.value - row.lower.value <= limit]
    return kept[:MOST_LIMITS]


def limits_block(writer: Writer, rows: Iterable[InspectionRow]) -> Block:
    """The limits to measure to."""
    lines = [row("title", "Measure")]
    for each in rows:
        span = join([strong(writer, each.lower), " to ", strong(writer, each.upper)])
        lines.append(row("limit", join([writer.authored(each.part), " ", writer.line(each.what), " ", span])))
    return Block("wall-limits", tuple(lines))
