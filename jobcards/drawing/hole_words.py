"""What is lettered at a round feature: how many, how large, how deep, and where a pattern of them stands."""

from jobcards.drawing.paper import Piece, Row, Rows, amount, tolerance, words
from jobcards.planning.card import FeaturePlan
from jobcards.planning.number import Number

COUNTS = ("none", "", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve")
KINDS = {"counterbore": "counterbored ", "tapped hole": "full thread "}


def rows_of(feature: FeaturePlan, faces: tuple[str, ...], *, many: bool) -> Rows:
    """A leader's rows: count and diameter or thread, depth, pattern, and the faces where it enters from both."""
    rows: Rows = (size_row(feature, many), *depth_rows(feature), *(pattern_rows(feature) if many else ()))
    return (*rows, words(" and ".join(faces), small=True)) if len(faces) > 1 else rows


def size_row(feature: FeaturePlan, many: bool) -> Row:
    """How many, and the diameter with its limits; for a thread its name, for a countersink its angle too."""
    number = len(feature.places)
    count = COUNTS[number] if number < len(COUNTS) else "all"
    before = words(f"{count} ") if count and many else ()
    diameter = feature.sizes["diameter"]
    if feature.thread:
        return (*before, Piece(feature.thread, diameter.id))
    gap = (Piece(" ", small=True),)
    row: Row = (*before, *amount(diameter, "⌀"), *gap, *tolerance(diameter))
    if feature.shape == "countersink":
        row = (*row, *words("× "), *amount(feature.sizes["angle"]))
    return row


def depth_rows(feature: FeaturePlan) -> Rows:
    """Through, or how deep."""
    if feature.shape == "countersink":
        return (words("countersunk", small=True),)
    if feature.through:
        return (words("through", small=True),)
    row = (
        *words(KINDS.get(feature.shape, ""), small=True),
        *small(feature.sizes["depth"]),
        *words(" deep", small=True),
    )
    return (row,)


def pattern_rows(feature: FeaturePlan) -> Rows:
    """The pitch of a row and of the rows of a grid; the circle and the direction of the first hole."""
    sizes = feature.sizes
    if "circle" in sizes:
        return (
            (*words("on a circle ", small=True), *small(sizes["circle"], "⌀")),
            (*words("first at ", small=True), *small(sizes["first"])),
        )
    if "row pitch" in sizes:
        pitches = (*small(sizes["pitch"]), *words(" and ", small=True), *small(sizes["row pitch"]))
        return ((*pitches, *words(" apart", small=True)),)
    return ((*small(sizes["pitch"]), *words(" apart", small=True)),) if "pitch" in sizes else ()


def small(number: Number, before: str = "") -> Row:
    """A number in small lettering."""
    return tuple(Piece(piece.text, piece.number, True) for piece in amount(number, before))
