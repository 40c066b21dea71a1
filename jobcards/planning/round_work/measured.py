"""How the sizes of what is milled into round work are measured: words, the size, the way."""

ROUND: dict[str, tuple[tuple[str, str, str], ...]] = {
    "cross hole": (
        ("{name}, diameter", "diameter", "inside"),
        ("{name}, from the left end", "at", "position"),
    ),
    "flat": (
        ("{name}, to the far side", "over", "outside"),
        ("{name}, depth", "depth", "depth"),
        ("{name}, length", "length", "depth"),
    ),
    **dict.fromkeys(
        ("two flats", "square", "hexagon"),
        (("{name}, across the flats", "across", "outside"), ("{name}, length", "length", "depth")),
    ),
    "end slot": (("{name}, width", "width", "inside"), ("{name}, depth", "depth", "depth")),
    "shaft keyway": (
        ("{name}, width", "width", "inside"),
        ("{name}, floor to the far side", "over", "outside"),
        ("{name}, length", "length", "inside"),
    ),
}
