"""How the sizes of turned shapes are measured, for the inspection record: words, size, way of measuring."""

Ways = tuple[tuple[str, str, str], ...]

TURNED: dict[str, Ways] = {
    "turned groove": (("{name}, width", "width", "inside"), ("{name}, across its bottom", "diameter", "outside")),
    "undercut": (("{name}, width", "width", "inside"), ("{name}, across its bottom", "diameter", "outside")),
    "taper": (
        ("{name}, thick end", "large", "outside"),
        ("{name}, thin end", "small", "outside"),
        ("{name}, length", "length", "position"),
    ),
    "turned thread": (
        ("{name}, over three wires", "over wires", "outside"),
        ("{name}, length", "length", "position"),
    ),
    "turned bore": (("{name}, diameter", "diameter", "inside"), ("{name}, depth", "depth", "depth")),
    "taper bore": (("{name}, mouth", "large", "inside"), ("{name}, depth", "depth", "depth")),
    "bore groove": (("{name}, width", "width", "inside"), ("{name}, across its bottom", "diameter", "inside")),
    "bore thread": (("{name}, full thread", "depth", "depth"),),
    "tapped end": (("{name}, full thread", "depth", "depth"),),
    "centre hole": (("{name}, across its mouth", "mouth", "outside"),),
    "knurl": (("{name}, length", "length", "position"),),
    "turned radius": (("{name}", "radius", "radius"),),
}
