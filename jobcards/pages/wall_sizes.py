"""Which sizes of a cut stand on the wall sheet, by its kind."""

from jobcards.planning.card import Cut
from jobcards.planning.number import Number

# The place itself says the rest.
SIZES_OF = {
    "spot": ("depth",),
    "drill": ("depth",),
    "plunge": ("depth",),
    "counterbore": ("depth",),
    "bore": ("diameter", "depth"),
    "ream": ("depth",),
    "tap": ("depth",),
    "countersink": ("depth",),
    "hand tap": ("depth",),
    "hand ream": (),
    "hand countersink": (),
    "lay out": (),
    "grooves": ("depth",),
    "tilted edges": ("touch", "depth"),
    "slope": ("depth", "angle"),
    "cornered vee": ("depth",),
    "strokes": ("depth",),
    "plunged strokes": ("depth",),
    "vee grooves": ("depth", "angle"),
    "shaped": ("depth",),
    "shaped vee": ("depth", "head over", "along"),
    "saw": ("length",),
    "harden": ("temperature", "soak"),
    "case harden": ("temperature", "time at heat"),
    "temper": ("temperature", "soak"),
    "assemble": (),
    "measure": ("least", "most"),
    "flats": ("depth", "across", "over"),
    "keyway": ("depth", "over"),
    "turn": ("diameter",),
    "turn chamfer": ("size",),
    "part off": (),
    "nick": ("diameter",),
    "turn groove": ("diameter",),
    "taper by compound": ("scale", "travel"),
    "taper by set-over": ("set-over", "touch place", "touch dial"),
    "taper by form": ("angle",),
    "turn radius": ("radius",),
    "thread": ("infeed angle", "length"),
    "bore thread": ("infeed angle", "length"),
    "bore groove": ("diameter",),
    "knurl": ("pitch", "length"),
    "turn bore": ("diameter",),
    "bore taper": ("scale", "travel"),
    "centre drill": ("mouth",),
    "lathe drill": (),
    "lathe spot": (),
    "lathe ream": (),
    "lathe tap": (),
}
LEAVE_OR_TAKE = ("leave", "take off", "size")


def sizes_told(cut: Cut) -> dict[str, Number]:
    """The sizes that the wall tells of a cut: those of its kind, or else what it leaves or takes off."""
    if cut.kind in SIZES_OF:
        return {name: cut.sizes[name] for name in SIZES_OF[cut.kind] if name in cut.sizes}
    return {
        name: cut.sizes[name]
        for name in LEAVE_OR_TAKE
        if name in cut.sizes and (name == "leave" or "leave" not in cut.sizes)
    }
