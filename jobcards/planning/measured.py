"""In which way each size of a milled shape is measured: words for the record, the size, the kind of measuring."""

MILLED: dict[str, tuple[tuple[str, str, str], ...]] = {
    "step": (("{name}, width", "width", "depth"), ("{name}, depth", "depth", "depth")),
    "slot": (
        ("{name}, width", "width", "inside"),
        ("{name}, depth", "depth", "depth"),
        ("{name}, length", "length", "inside"),
    ),
    "key slot": (
        ("{name}, width", "width", "inside"),
        ("{name}, depth", "depth", "depth"),
        ("{name}, length", "length", "inside"),
    ),
    "pocket": (
        ("{name}, length", "length", "inside"),
        ("{name}, width", "width", "inside"),
        ("{name}, depth", "depth", "depth"),
    ),
    "T-slot": (
        ("{name}, width of the neck", "neck width", "inside"),
        ("{name}, depth of the neck", "neck depth", "depth"),
        ("{name}, width of the head", "head width", "inside"),
        ("{name}, height of the head", "head height", "inside"),
    ),
    "dovetail slot": (("{name}, narrow width", "narrow width", "inside"), ("{name}, height", "height", "depth")),
    "dovetail tongue": (("{name}, narrow width", "narrow width", "outside"), ("{name}, height", "height", "depth")),
    "V-groove": (("{name}, width at the face", "width", "position"), ("{name}, angle", "angle", "angle")),
    "chamfer": (("{name}", "size", "position"),),
    "corner round": (("{name}, radius", "radius", "position"),),
}
