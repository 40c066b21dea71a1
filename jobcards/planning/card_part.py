"""The part of a card: its finished shape with the worked sizes of every feature, and the piece of stock it is cut from.

Faces are named as on the drawing. Part coordinates: x from the left end, y from the bottom, z from the back.
"""

from collections.abc import Mapping
from dataclasses import dataclass, field

from jobcards.planning.number import Number
from jobcards.planning.words import Line


@dataclass(frozen=True)
class FeaturePlan:
    """A feature of the finished part with its worked sizes (each at the middle of its limits).

    sizes by shape: hole, partial bore, counterbore: "diameter", "depth" (through holes carry the part's size there);
    serrations: "pitch", "tilt", "flat", "first", "last", "depth", "count"; bevel: "start", "angle"; broken corners:
    "size";
    tapped hole: "diameter" (outside of the thread), "thread pitch", "depth" (of full thread), "hole" (wanted for the
    percentage); countersink: "diameter" at the face, "angle", "depth" (where its sides would meet);
    step: "width", "depth", "wall" (`toward` is its edge);
    slot, key slot, pocket: "width", "depth", "low", "high" (walls,
    as places on the drawing), where closed "from", "to", "corner radius"; T-slot: "neck …", "head …", walls "low",
    "high", "head low", "head high"; dovetail slot and tongue: "narrow width", "wide width", "height", "angle", walls,
    "pin", "between pins" or "over pins"; V-groove: "width", "depth", "angle", "centre", "pin", "over the pin"; chamfer:
    "size", "angle", "depth"; corner round: "radius";
    turned diameter: "diameter", "from", "to"; turned chamfer: "size";
    turned groove, undercut: "diameter", "width", "from", "to"; taper (`toward` its thin end): "large", "small",
    "half angle", "from", "to", "length"; turned thread: "diameter", "turn to", "thread pitch", "root", "thread depth",
    "wire", "over wires", "from", "to"; turned bore: "diameter", "depth"; taper bore (wide at the end it
    enters): "large", "small", "half angle", "depth"; tapped end: as a tapped hole; centre hole:
    "mouth", "pilot", "pilot length", "depth"; knurl: "pitch", "from", "to"; turned radius: "radius", "at";
    cross hole, flat, two flats, square, hexagon, shaft keyway (`enters` "round"): "angle" it looks to (0 right, 90 up
    on the right end), "count" evenly round, "depth" below the outside, "round" (diameter there); "at" or "from", "to",
    "length"; "across", "corners"; "over" (to the far side); "width". A worked extra may stand beside them
    round end (`toward` its end): "radius", "half arc", "direction", "width", "depth"; end slot (`enters` its end):
    "width", "depth", "angle" it runs to, "count", "of" (ends round the part);
    (partial bore: "centre outside", "chord", "arc", "seat depth", "over the pin").
    """

    name: str
    shape: str
    enters: str  # face it is cut into; for a turned chamfer the end it is on
    sizes: Mapping[str, Number]
    places: tuple[Mapping[str, Number], ...] = ()  # each with two of x, y, z in part coordinates
    through: bool = False
    toward: str = ""
    dry_run: bool = True
    thread: str = ""  # a thread as the definition writes it
    along: str = ""  # the drawing axis that a milled shape runs along
    edges: tuple[str, ...] = ()  # a chamfer or rounded corner: the faces that meet its face there
    counted: "Mapping[str, Counted]" = field(default_factory=dict)  # by axis: the distance that has limits of its own


@dataclass(frozen=True)
class Counted:
    """A distance that the drawing's author has given limits: to the middle, side or beginning of a feature, from an
    edge."""

    size: Number
    edge: str
    what: str


@dataclass(frozen=True)
class ShapePlan:
    """The finished part. kind "block": sizes length, height, thickness. kind "turned": sizes length, diameter."""

    kind: str
    sizes: Mapping[str, Number]
    features: tuple[FeaturePlan, ...]


@dataclass(frozen=True)
class BlankPlan:
    """The piece of stock. sizes: flat bar "width" (along y), "thickness" (along z), "length"; round bar "diameter",
    "length".

    `outside` tells how far the blank stands out beyond the finished part at its left end, bottom and back (turned:
    right end).
    """

    shape: str
    sizes: Mapping[str, Number]
    outside: Mapping[str, Number]
    weight: Number
    text: Line
