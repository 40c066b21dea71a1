"""One set-up of a card: how the work is held, where zero is, and the operations in it."""

from jobcards.pages.head import caution_box
from jobcards.pages.html import Html, element, heading, join, table
from jobcards.pages.operation import figures, operation
from jobcards.pages.pictures import Pictures, figure
from jobcards.pages.writing import Writer, tick
from jobcards.planning.card import Card, HoldPlan, SetUpPlan, Touch
from jobcards.planning.number import Number

# Sizes of a hold that are set by hand and so are shown large; the others stand in the instructions and the drawing.
SET_BY_HAND = ("parallel height", "stack", "stick-out", "held diameter")


def set_up_section(writer: Writer, card: Card, set_up: SetUpPlan, pictures: Pictures, letter: str = "") -> list[Html]:
    """The whole section: a heading for the list of contents, then one block. An alternative's set-up has a letter."""
    return [
        heading(2, writer.number(set_up.number), f"{letter}. ", writer.authored(set_up.title)),
        element(
            "div",
            where(writer, card, set_up),
            writer.labelled("Why now:", set_up.why, "why"),
            caution_box(writer, [each for each in card.cautions if set_up.id in each.set_ups]),
            before_holding(writer, set_up),
            element(
                "div",
                figure(pictures.set_ups.get(set_up.id, ""), "set-up-picture"),
                holding(writer, set_up.hold),
                zero(writer, set_up),
                class_="held",
            ),
            writer.sentences(set_up.notes, "notes"),
            *(operation(writer, set_up, cut, pictures) for cut in set_up.cuts),
            after(writer, set_up),
            class_="set-up",
        ),
    ]


def where(writer: Writer, card: Card, set_up: SetUpPlan) -> Html:
    """Part, machine and time on one line."""
    name = next(part.name for part in card.parts if part.id == set_up.part)
    told = [writer.authored(name), writer.authored(set_up.machine)]
    if set_up.time:
        told.append(join(["about ", writer.number(set_up.time)]))
    return element("p", join(told, " · "), class_="where")


def before_holding(writer: Writer, set_up: SetUpPlan) -> Html:
    """What is done before the work is held and zero is found."""
    if not set_up.first:
        return Html("")
    return element("div", element("h3", "First"), writer.sentences(set_up.first, "first-steps", "ol"), class_="first")


def holding(writer: Writer, hold: HoldPlan | None) -> Html:
    """How the work is held: sizes set by hand, large, then the instructions in order."""
    if hold is None or (hold.kind == "hand" and not hold.instructions):
        return Html("")
    return element(
        "div",
        element("h3", "Hold"),
        figures(writer, set_by_hand(hold)),
        writer.sentences(hold.instructions, "hold-steps", "ol"),
        class_="hold",
    )


def set_by_hand(hold: HoldPlan) -> dict[str, Number]:
    """The sizes shown large; of clamped work the packing, where there is any, and the heel blocks."""
    if not hold.clamps:
        told = {name: hold.sizes[name] for name in SET_BY_HAND if name in hold.sizes}
        if hold.kind == "sine bar in vise":  # no parallels there: the height to which the bar brings the work
            return {("under the high end" if n == "parallel height" else n): number for n, number in told.items()}
        return told
    packing = {"packing": hold.sizes["parallel height"]} if "parallel thickness" in hold.sizes else {}
    return {**packing, **{name: hold.sizes[name] for name in ("heel", "stick-out") if name in hold.sizes}}


def zero(writer: Writer, set_up: SetUpPlan) -> Html:
    """Each touch with the number that the readout or dial is set to, large."""
    if not set_up.zero:
        return Html("")
    kept = all(touch.kind == "kept" for touch in set_up.zero)
    rows = [touch_row(writer, f"{set_up.id}.zero.{place}", touch) for place, touch in enumerate(set_up.zero)]
    unit = set_up.zero[0].preset.unit
    heads = ("Axis", "Touch", f"Set to ({unit})", "Done")
    return element(
        "div",
        element("h3", "Zero, as before" if kept else "Zero"),
        table(heads, rows, class_="zero stack"),
        class_="zeroing",
    )


def touch_row(writer: Writer, key: str, touch: Touch) -> tuple[str, ...]:
    """Axis, what to do, the preset, a box to tick."""
    told = [writer.line(touch.instruction)]
    if touch.finder and touch.tip:
        told.append(element("small", writer.authored(touch.finder), ", ", writer.number(touch.tip)))
    return (
        element("b", touch.axis, class_="axis"),
        join(told, " "),
        "as it was" if touch.kind == "kept" else writer.large(touch.preset),
        tick(key),
    )


def after(writer: Writer, set_up: SetUpPlan) -> Html:
    """What to do before going on, and whether one may stop here."""
    steps = writer.sentences(set_up.after, "after-steps")
    before = join([element("h3", "Before the next set-up"), steps]) if steps else Html("")
    return join([before, writer.labelled("A good place to stop.", set_up.stopping_point, "stopping-point")])
