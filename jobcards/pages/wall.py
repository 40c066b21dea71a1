"""The wall sheet: one printed page with what is set and read at the machine, large."""

from collections.abc import Collection, Iterable, Iterator, Mapping, Sequence
from functools import partial
from itertools import groupby

from jobcards.pages import html, qr, wall_strokes
from jobcards.pages.dividing import move_in_short
from jobcards.pages.html import Html, element, escape, heading, join
from jobcards.pages.wall_layout import Block, Layout, arrange
from jobcards.pages.wall_sizes import sizes_told
from jobcards.pages.writing import Writer, furniture, owned, tick
from jobcards.planning.bought import in_short
from jobcards.planning.card import Card, Cut, FeaturePlan, HoldPlan, InspectionRow, Position, SetUpPlan, Touch
from jobcards.planning.number import Number

QUIET = "---\nsearch:\n  exclude: true\nhide:\n  - navigation\n  - toc\n---\n\n"
# More places than this are shown as the first and the last one, or as pitch and count.
MOST_PLACES = 4
MOST_HOLES = 24  # no pitch and count tells where the holes of a circle or a grid are
HOLES = ("spot", "drill", "plunge", "counterbore", "bore", "ream", "tap", "countersink", "lay out")
MOST_PASSES = 2  # closed slots of one cutter that the passes are told of
MOST_LIMITS = (8, 6, 4)  # fewer where the set-ups of a long route take the room
SETS_NOTHING = ("assemble",)  # its steps stand on the card
SET_RATES = ("speed", "feed", "strokes")
MILL, LATHE = ("x", "y", "z"), ("x", "compound", "z")  # what the readings of a place are called
ONE_STROKE = 2  # a place to begin at and one to end at
LAST_PASS = ("turn", "turn bore", "bore taper", "thread", "bore thread", "taper by compound", "taper by set-over")
UNSAID = ("in", "mm", "1")  # the head of the sheet tells the unit of every length
FINE = {"in": 0.012, "mm": 0.3}  # limits this close together are worth a line on the wall


def wall_page(card: Card, site_url: str = "") -> str:
    """The finished page."""
    writer = Writer()
    layout = arranged(writer, card)
    columns = (element("div", *(block.html for block in column), class_="wall-column") for column in layout.columns)
    sheet = element(
        "div",
        element("div", *columns, class_="wall-columns"),
        class_=f"wall wall-{layout.name}",
        data_card=card.slug,
        data_fingerprint=card.fingerprint,
        data_marks=qr.marks(card),
    )
    return QUIET + html.page(
        [heading(1, writer.authored(card.title)), marks_line(card, site_url, "wall/index.html"), sheet]
    )


def arranged(writer: Writer, card: Card) -> Layout:
    """The blocks on the page. Where a long route takes the room, the list of limits is shortened, and at last what is
    bought and done by hand is left to the card.
    """
    ways = [(most, False) for most in MOST_LIMITS] + [(MOST_LIMITS[-1], True)]
    layouts = (arrange(all_blocks(writer, card, most, brief)) for most, brief in ways)
    return next((layout for layout in layouts if layout.fits), arrange(all_blocks(writer, card, *ways[-1])))


def all_blocks(writer: Writer, card: Card, most: int = MOST_LIMITS[0], brief: bool = False) -> list[Block]:
    """The set-ups in order, what is bought, and last the limits to measure to, so many at most."""
    blocks = [set_up_block(writer, card, each, brief) for each in card.set_ups]
    blocks += [bought_block(writer, card)] if card.bought and not brief else []
    measured = close_limits(card, most)
    return [*blocks, limits_block(writer, measured)] if measured else blocks


def marks_line(card: Card, site_url: str, page: str) -> Html:
    """What tells this sheet from an older one, and the way back to the card."""
    back = html.link("../index.html", "Back to the card", class_="screen-only")
    stale = element("p", hidden="", class_="stale", data_stale="", role="status")
    unit = {"in": "inches", "mm": "millimetres"}[card.unit]
    lengths = f"Lengths in {unit}; depths below the face touched. "
    told = element("p", furniture(qr.marks(card)), ". ", lengths, back, class_="marks")
    return element("div", qr.code(card, site_url, page), told, stale, class_="sheet-head")


def set_up_block(writer: Writer, card: Card, set_up: SetUpPlan, brief: bool = False) -> Block:
    """Everything to set for one set-up; in brief, nothing of what is done by hand."""
    part = next(part for part in card.parts if part.id == set_up.part)
    features = {feature.name: feature for feature in part.shape.features}
    lines = [title_line(writer, card, set_up)]
    lines += [row("hold", held) for held in [hold_line(writer, set_up.hold)] if held]
    lines += [row("first", leaning) for leaning in [lean_line(writer, set_up.cuts)] if leaning]
    lines += [row("zero", join([touch_line(writer, touch) for touch in set_up.zero], " "))] if set_up.zero else []
    common = common_places(set_up.cuts)
    if common:
        lines.append(row("places", "all at ", join((position(writer, each) for each in common), " and ")))
    told = [cut for cut in set_up.cuts if set_up.kind not in SETS_NOTHING and not (brief and cut.kind == "hand")]
    for cuts in runs(told):
        lines += run_lines(writer, cuts, features, places=not common, again=repeated(set_up.cuts))
    return Block("wall-set-up", tuple(lines))


def title_line(writer: Writer, card: Card, set_up: SetUpPlan) -> Html:
    """Number, part and title, with a box to tick."""
    part = next(part for part in card.parts if part.id == set_up.part)
    pieces = [" × ", writer.number(part.quantity)] if part.quantity.value > 1 else []
    named = [writer.authored(part.name), *pieces, ": ", writer.authored(set_up.title)]
    told = join([writer.number(set_up.number), " ", *named])
    return row("title", join([tick(f"wall.{set_up.id}"), told]))


def row(class_: str, *content: str) -> Html:
    """A line of a block."""
    return element("p", *content, class_=f"wall-{class_}")


def lean_line(writer: Writer, cuts: Sequence[Cut]) -> Html:
    """Which way the head leans, and how far: it is set before zero is found. All cuts of a set-up want it alike."""
    cut = next((each for each in cuts if each.lean and "tilt" in each.sizes), None)
    return join([f"head leans {cut.lean}, tilt ", strong(writer, cut.sizes["tilt"])]) if cut is not None else Html("")


AWAY = {"table clamps": "on the far side", "angle plate": "on the angle plate"}
HEELS = {"heel": "heels"}
UPRIGHT = ("rotary table", "bored jaws")  # what round work stands in


def hold_line(writer: Writer, hold: HoldPlan | None) -> Html:
    """How the work is held, in a few words."""
    if hold is None or hold.kind == "hand":
        return Html("")
    told: list[str] = [writer.authored(hold.holder)] if hold.out or hold.kind in UPRIGHT else []
    told += [f"{hold.up} up"] if hold.up else []
    told += [f"{hold.fixed_jaw} {AWAY.get(hold.kind, 'to fixed jaw')}"] if hold.fixed_jaw else []
    if hold.clamps:
        over = " and ".join(dict.fromkeys(clamp.over for clamp in hold.clamps if clamp.over))
        places = join([strong(writer, clamp.at) for clamp in hold.clamps if clamp.at is not None], " and ")
        told.append(f"clamps over {over}" if over else join(["clamps ", places, " from the left end"]))
    told += [f"{hold.stop} to stop"] if hold.stop else []
    told += [f"{hold.high_end} high"] if hold.high_end else []
    told += [join(["on the ", writer.authored(hold.set_by)])] if hold.set_by is not None else []
    told += [f"{hold.out} out"] if hold.out else []
    named = {"parallel height": "parallels", "stack": "stack", "stick-out": "stands out", "angle up": "angle up"}
    if hold.clamps:
        named = {"parallel height": "packing", **HEELS} if "parallel thickness" in hold.sizes else HEELS
    if hold.kind == "sine bar in vise":
        del named["parallel height"]  # what the work stands on there is the bar itself
    told += [join([f"{word} ", strong(writer, hold.sizes[key])]) for key, word in named.items() if key in hold.sizes]
    return join(told, ", ")


NAMED = {"round top": "top of the round", "tilted line": "scribed line"}  # what is touched, where it is no face


def touch_line(writer: Writer, touch: Touch) -> Html:
    """One touch: where, and the number to set there."""
    if touch.kind == "kept":
        return element("span", f"{touch.axis} as before", class_="reading")
    round_side = {-1: "near side", 1: "far side"}.get(touch.side, "") if touch.kind.startswith("round ") else ""
    face = NAMED.get(touch.kind, touch.face or round_side)
    if touch.kind == "line" and touch.distance is not None:  # the face itself is not touched
        line = join(["line scribed ", writer.number(touch.distance, unit=False), f" from {face}: {touch.axis} "])
        return element("span", line, strong(writer, touch.preset), class_="reading")
    where = f"{face}: {touch.axis} " if face else f"{touch.axis} "
    return element("span", where, strong(writer, touch.preset), class_="reading")


def strong(writer: Writer, number: Number, unit: bool = False) -> Html:
    """A number to be read from a step away."""
    return element("b", writer.number(number, unit or number.unit not in UNSAID), class_="figure")


def runs(cuts: Sequence[Cut]) -> list[list[Cut]]:
    """The cuts in order, those together that the same cutter makes at the same speed and feed."""
    return [
        list(run) for _, run in groupby(cuts, key=lambda cut: (cut.cutter, shown(cut, "speed"), shown(cut, "feed")))
    ]


def shown(cut: Cut, key: str) -> str:
    """A rate as it is read; nothing when it has none."""
    return cut.rates[key].shown if key in cut.rates else ""


def common_places(cuts: Sequence[Cut]) -> tuple[Position, ...]:
    """The places, where several cuts all go to the same few."""
    read = {
        tuple((axis.shown if axis else "") for place in cut.positions for axis in place_axes(place)) for cut in cuts
    }
    if len(cuts) > 1 and len(read) == 1 and 0 < len(cuts[0].positions) <= MOST_PLACES:
        return cuts[0].positions
    return ()


def place_axes(place: Position) -> tuple[Number | None, Number | None, Number | None]:
    """The three readings of a place."""
    return (place.x, place.y, place.z)


def run_lines(
    writer: Writer,
    cuts: Sequence[Cut],
    features: Mapping[str, FeaturePlan],
    places: bool = True,
    again: Collection[str] = (),
) -> list[Html]:
    """The cutter with speed and feed, then what it cuts: where to and how deep."""
    first = cuts[0]
    rates = [strong(writer, first.rates[key], unit=True) for key in SET_RATES if key in first.rates]
    cutter = [writer.authored(first.cutter.name)] if first.cutter else []
    many = sum(cut.kind == "plunged strokes" for cut in cuts) > MOST_PASSES
    told = [
        element(
            "span", cut_told(writer, cut, features.get(cut.feature), places, cut.id in again, many), class_="wall-step"
        )
        for cut in cuts
    ]
    if not rates:  # a hand tool needs no line of its own
        return [row("cut", join([*(join([each, ":"]) for each in cutter), *told], " "))]
    return [row("tool", join([*cutter, *rates], " ")), row("cut", join(told, " "))]


def repeated(cuts: Sequence[Cut]) -> set[str]:
    """The cuts, by their ids, that go to the same many places as one before them."""
    seen: set[tuple[str, ...]] = set()
    found = set()
    for cut in cuts:
        places = tuple(axis.shown for place in cut.positions for axis in place_axes(place) if axis)
        if len(cut.positions) > MOST_PLACES and places in seen:
            found.add(cut.id)
        seen.add(places)
    return found


def cut_told(
    writer: Writer, cut: Cut, feature: FeaturePlan | None, places: bool, again: bool = False, many: bool = False
) -> Html:
    """One cut: its name, its sizes, its places unless they have been told; of many slots only what makes the size."""
    sizes = [join([f"{name} ", strong(writer, number)]) for name, number in sizes_told(cut).items()]
    if cut.kind in wall_strokes.KINDS and (passes := cut.rates.get("all passes")) and passes.value > 1:
        sizes.append(join(["in ", strong(writer, passes), " passes"]))
    where: Iterable[str] = place_lines(writer, cut, feature, many) if places else ()
    if places and again:
        where = ("same places",)
    turned = [move_in_short(writer, cut)] if any(station.move for station in cut.stations) else []
    return join([name_of(writer, cut, feature), *sizes, *where, *turned], " ")


def name_of(writer: Writer, cut: Cut, feature: FeaturePlan | None) -> Html:
    """What is cut, in a word: the feature, the face, or else the operation's title."""
    if feature:
        return owned(feature.name, "job")
    return escape(cut.face) if cut.face else writer.line(cut.title)


def place_lines(writer: Writer, cut: Cut, feature: FeaturePlan | None, many: bool = False) -> Iterator[Html]:
    """Where to go. Many grooves are told by the first, the pitch and the count; many passes by the last one."""
    in_a_row = feature is not None and {"pitch", "count"} <= set(feature.sizes)
    if cut.kind in ("grooves", "vee grooves") and feature and in_a_row and cut.positions:
        first = join(["first ", position(writer, cut.positions[0])])
        pitch = join(["then every ", strong(writer, feature.sizes["pitch"])])
        yield join([first, pitch, join(["in all ", strong(writer, feature.sizes["count"])])], " ")
    elif cut.kind in LAST_PASS and len(cut.positions) > 1:
        yield join(["last pass ", position(writer, cut.positions[-1], LATHE)])
    elif cut.kind in wall_strokes.KINDS:
        large = partial(strong, writer)
        if cut.kind == "plunged strokes":
            yield join(["down at ", position(writer, cut.positions[0])])
            each_pass = () if many else wall_strokes.roughing(cut.positions)
            alone = len(each_pass) == ONE_STROKE  # the other axis stays where the cutter went down
            rough = list(wall_strokes.stroke_lines(each_pass, large, still_told=alone))
            yield from [join(["each pass ", join(rough, ", "), ", then once"])] if rough else []
        elif not many and cut.rates.get("all passes") and cut.rates["all passes"].value > 1:
            first, last = wall_strokes.first_and_last(cut.positions, large)
            yield from (
                [join(["each pass ", first, *([" on to ", last] if last else []), ", then once"])] if first else []
            )
        yield from wall_strokes.stroke_lines(cut.positions, large)
    elif len(cut.positions) > (MOST_HOLES if cut.kind in HOLES else MOST_PLACES):
        yield join(["first ", position(writer, cut.positions[0]), ", last ", position(writer, cut.positions[-1])])
    else:
        yield from (position(writer, each) for each in cut.positions)


def position(writer: Writer, place: Position, names: Sequence[str] = MILL) -> Html:
    """The readings of one place."""
    axes = ((axis, number) for axis, number in zip(names, place_axes(place), strict=True) if number)
    told = (element("span", f"{axis} ", strong(writer, number), class_="reading") for axis, number in axes)
    return element("span", join(told, " "), class_="wall-place")


def bought_block(writer: Writer, card: Card) -> Block:
    """What is bought ready made."""
    return Block(
        "wall-bought", (row("title", "Bought"), *(row("limit", writer.line(in_short(each))) for each in card.bought))
    )


def close_limits(card: Card, most: int = MOST_LIMITS[0]) -> Sequence[InspectionRow]:
    """What is read over pins, and the sizes with the closest limits, in the order of the record."""
    over_pins = [row for row in card.inspection if row.pin]
    spreads = sorted(row.upper.value - row.lower.value for row in card.inspection if row.aim.unit in FINE)
    if not spreads:
        return over_pins
    limit = min(FINE[card.unit], spreads[min(len(spreads), most) - 1])
    close = [
        row
        for row in card.inspection
        if not row.pin
        and (row.aim.unit == "deg" if row.aim.unit not in FINE else row.upper.value - row.lower.value <= limit)
    ]
    kept = {id(row) for row in (*over_pins, *close[: max(most - len(over_pins), 0)])}
    return [row for row in card.inspection if id(row) in kept]


def limits_block(writer: Writer, rows: Iterable[InspectionRow]) -> Block:
    """The limits to measure to."""
    lines = [row("title", "Measure")]
    for each in rows:
        span = join([strong(writer, each.lower), " to ", strong(writer, each.upper)])
        lines.append(row("limit", join([writer.authored(each.part), " ", writer.line(each.what), " ", span])))
    return Block("wall-limits", tuple(lines))
