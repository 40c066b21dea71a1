"""What is wrong with a thread's published numbers. No metal is taken for it: its stretch stays plain.

Fed in along the compound the tool must come to the depth of the form; it must start where there is no metal; and the
way that the carriage goes, spindle forward, must cut the hand of the drawing, with the compound feeding the same way.
"""

import math

from jobcards.dryrun.revolved import radii_at
from jobcards.dryrun.turned_stroke import AtLathe
from jobcards.planning.card import Cut, FeaturePlan
from jobcards.trade.threads import read_thread

FLAT_NOSE = 3 * math.sqrt(3) / 8  # depth of a 60 degree thread in pitches, with a flat of an eighth of the pitch
CLOSE = 0.02  # of the depth
INSIDE = "bore thread"


def faults(cut: Cut, lathe: AtLathe, feature: FeaturePlan | None) -> list[str]:
    """What is wrong with a thread that a single point cuts; nothing for what a die or a knurl does."""
    if cut.kind not in ("thread", INSIDE) or not cut.positions or feature is None:
        return []
    return [*depth_faults(cut, lathe, feature), *way_faults(cut, lathe, feature)]


def depth_faults(cut: Cut, lathe: AtLathe, feature: FeaturePlan) -> list[str]:
    """The last pass leaves a pitch diameter within its limits outside; inside it comes from the wall as it is to the
    full size.
    """
    last = cut.positions[-1].y
    if last is None:
        return [f"{cut.id}: the card does not tell how far the compound goes in"]
    straight_in = lathe.read(last) * math.cos(math.radians(lathe.read(cut.sizes["infeed angle"])))
    begins, ends = (lathe.read(cut.sizes[name]) for name in ("begins", "ends"))
    middle = lathe.end - (max(begins, ends) + max(0.0, min(begins, ends))) / 2
    if cut.kind != INSIDE:
        return pitch_diameter_faults(cut, lathe, feature, radii_at(lathe.work, middle)[0] - straight_in)
    middle = lathe.end - lathe.read(cut.sizes["length"]) / 2
    wanted = feature.sizes["diameter"].value / 2 - radii_at(lathe.work, middle)[1]
    if abs(straight_in - wanted) > CLOSE * FLAT_NOSE * lathe.read(cut.sizes["thread pitch"]):
        return [f"{cut.id}: the last pass is {straight_in:.4f} deep, and the thread wants {wanted:.4f}"]
    return []


def pitch_diameter_faults(cut: Cut, lathe: AtLathe, feature: FeaturePlan, flat: float) -> list[str]:
    """A nose that is flat an eighth of the pitch stands so far under the pitch line as its flank is wide there."""
    made = 2 * flat + FLAT_NOSE * lathe.read(cut.sizes["thread pitch"])
    least, most = (lathe.read(feature.sizes[f"pitch diameter, {word}"]) for word in ("least", "most"))
    if least <= made <= most:
        return []
    return [f"{cut.id}: the last pass leaves a pitch diameter of {made:.4f}, and its limits are {least} to {most}"]


def way_faults(cut: Cut, lathe: AtLathe, feature: FeaturePlan) -> list[str]:
    """The carriage goes the way of the thread's hand, out of where the tool stands free, and the compound with it."""
    begins, ends = (lathe.read(cut.sizes[name]) for name in ("begins", "ends"))
    toward_headstock = ends > begins
    found = []
    if toward_headstock == read_thread(feature.thread).left:
        made = "right" if toward_headstock else "left"
        found.append(f"{cut.id}: the passes cut a {made}-hand thread, and the drawing has {feature.thread}")
    feeds_toward_headstock = (cut.handle == "tailstock") != (cut.kind == INSIDE)
    if feeds_toward_headstock != toward_headstock:
        found.append(f"{cut.id}: the compound, its handle toward the {cut.handle}, feeds against the carriage's way")
    outer, hole = radii_at(lathe.work, lathe.end - begins)
    half = feature.sizes["diameter"].value / 2
    in_metal = hole < half if cut.kind == INSIDE else outer > root_of(feature)
    if in_metal and outer > 0:
        found.append(f"{cut.id}: a pass begins in metal, {begins:.4f} from the faced end")
    return found


def root_of(feature: FeaturePlan) -> float:
    """The radius at the root of a thread on the outside, cut with a flat of an eighth of the pitch."""
    return feature.sizes["diameter"].value / 2 - FLAT_NOSE * feature.sizes["thread pitch"].value
