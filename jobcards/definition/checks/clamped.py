"""Work under strap clamps: the faces go together, and every clamp comes over an edge that is there."""

from collections.abc import Iterator

from jobcards.definition.job import Hold
from jobcards.definition.model import Model
from jobcards.definition.problem import Problem
from jobcards.definition.shop import Parallels, VBlock, Vise
from jobcards.definition.shop_clamping import AnglePlate, Packing, TableClamps
from jobcards.definition.shop_dividing import RotaryTable

WAYS = {"against_fixed_jaw": "against fixed jaw", "far_side": "far side", "against": "against"}
FACING = {Vise: "against_fixed_jaw", TableClamps: "far_side", AnglePlate: "against"}


def check_clamps(hold: Hold) -> Iterator[Problem]:
    """The problems of a hold's clamps and of its far side by themselves."""
    given = [name for name in WAYS if getattr(hold, name)]
    if len(given) > 1:
        wrong = f"{WAYS[given[0]]} and {WAYS[given[1]]} both say which face looks away from you"
        yield Problem(hold.place(given[1]), wrong, "keep the one that belongs to what holds the work")
    base = hold.against or hold.up
    for clamp in hold.clamps:
        if clamp.over and base and straight(clamp.over) == straight(base):
            wrong = f"a clamp has no edge to come over at the {clamp.over}"
            yield Problem(clamp.place("over"), wrong, f"name a face at right angles to the {base}")
    if len(hold.clamps) == 1:
        yield Problem(hold.place("clamps"), "under one clamp the work turns", "write two clamps at least")


def straight(face: str) -> str:
    """What a face is square to, as a name for the pair of it and its opposite."""
    return {"left end": "ends", "right end": "ends", "top": "edges", "bottom": "edges"}.get(face, "sides")


def check_clamped_in(hold: Hold, holder: Model | None, stands: Model | None, round_work: bool) -> Iterator[Problem]:
    """What each kind of holder asks for, and what does not belong to it."""
    on_rotary = isinstance(holder, RotaryTable) and bool(hold.clamps or hold.centre)
    clamped = isinstance(holder, TableClamps | AnglePlate) or on_rotary
    if hold.clamps and holder is not None and not clamped:
        yield Problem(hold.place("clamps"), f"“{hold.holder}” holds without clamps", "leave clamps out")
    if clamped and not hold.clamps:
        yield Problem(hold.mark, "where the clamps stand is missing", "write clamps: [{over: left end}, …]")
    if hold.trued_by and not isinstance(holder, TableClamps):
        yield Problem(hold.place("trued_by"), "keys true work that is clamped to the table", "leave trued by out")
    wanted = "far_side" if on_rotary else ""
    wanted = next((key for model, key in FACING.items() if isinstance(holder, model)), wanted)
    if on_rotary and not hold.centre:
        instead = "write centre: and a hole, a circle of holes or a round end"
        yield Problem(hold.mark, "what stands over the table's axis is missing", instead)
    for name in ("centre", "centred_by"):
        if name in hold.marks and not isinstance(holder, RotaryTable):
            wrong = f"“{hold.holder}” does not turn, so nothing is centred on it"
            yield Problem(hold.place(name), wrong, "leave it out")
    for name, words in WAYS.items():
        if wanted and name != wanted and getattr(hold, name):
            instead = f"write {WAYS[wanted]}: and the face" if not round_work else "leave it out"
            yield Problem(hold.place(name), f"{words} is not for work in “{hold.holder}”", instead)
    if isinstance(holder, TableClamps) and round_work:
        yield from check_round(hold, stands)
    if clamped and not round_work:
        if not hold.away:
            yield Problem(hold.mark, f"{WAYS[wanted]} is missing", f"write {WAYS[wanted]}: and the face")
        for clamp in hold.clamps:
            if not clamp.over:
                yield Problem(clamp.mark, "the edge that the clamp comes over is missing", "write over: left end")
            elif hold.against and hold.up and straight(clamp.over) == straight(hold.up):
                wrong = f"on an angle plate no clamp stands over the {clamp.over}, which is up or below"
                yield Problem(clamp.place("over"), wrong, "write over: and a face at the work's left or right")
        if hold.against_stop:
            wrong = "the work stop belongs to the vise"
            yield Problem(hold.place("against_stop"), wrong, "leave it out, and touch that face for zero")
        if stands is not None and not isinstance(stands, Parallels | Packing):
            yield Problem(hold.place("on"), f"“{hold.on}” does not lie under clamped work", "write on: packing")


def check_round(hold: Hold, stands: Model | None) -> Iterator[Problem]:
    """Round work under clamps lies in V-blocks, one under each clamp."""
    if not isinstance(stands, VBlock):
        yield Problem(hold.mark, "round work under clamps rolls", "write on: the V-blocks of the shop")
    for clamp in hold.clamps:
        if clamp.over:
            yield Problem(clamp.place("over"), "round work has no edge", "leave over out, and say at: how far along")
        if clamp.at is None:
            yield Problem(clamp.mark, "where along the work the clamp stands is missing", "write at: from the left end")
