"""The head tilted: how far it goes and which way, that all cuts of a set-up want it alike, and how it is told."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from jobcards.definition.job import SetUp
from jobcards.planning.card import Cut, Position
from jobcards.planning.mill.cut import MillCut
from jobcards.planning.number import Number, Show
from jobcards.planning.words import Line, line
from jobcards.planning.work import Work
from jobcards.trade import angles

TILTED = ("grooves", "tilted edges")
NAMES = {("x", -1): "left", ("x", 1): "right", ("y", -1): "toward you", ("y", 1): "away from you"}
HALF_SQUARE = 45.0  # degrees: tilted so far, both flanks of a square corner lie alike
HAIR = 1e-6
SAID = {
    "left": "Tilt the head {tilt} so that the spindle's upper end leans to the left, seen from in front.",
    "right": "Tilt the head {tilt} so that the spindle's upper end leans to the right, seen from in front.",
    "toward you": "Nod the head {tilt} so that the spindle's upper end leans toward you.",
    "away from you": "Nod the head {tilt} so that the spindle's upper end leans away from you, toward the column.",
}


@dataclass(frozen=True)
class Leaning:
    """Which way the spindle's upper end leans: along a machine axis, to a side of it; and how far."""

    axis: str
    side: int
    tilt: Number

    @property
    def name(self) -> str:
        """In words, as a card's cut has it."""
        return NAMES[(self.axis, self.side)]


def most(asked: MillCut, axis: str) -> Number | None:
    """How far the head goes in the plane of an axis; nothing when it does not go that way."""
    if axis == "x":
        return asked.work.shop_angle("shop-head-tilts", asked.mill.head_tilts, "how far the head tilts")
    if asked.mill.head_nods is None:
        return None
    return asked.work.shop_angle("shop-head-nods", asked.mill.head_nods, "how far the head nods")


def can_lean(asked: MillCut, axis: str, tilt: Number, instead: str) -> bool:
    """The head goes that far that way; if not, that is a problem."""
    limit, name = most(asked, axis), asked.feature.name
    if limit is None:
        asked.work.problem(
            asked.operation.mark,
            f"the head tilts sideways only, and “{name}” lies along the table",
            "hold the work a quarter turn round, or write head nods: in the shop file if it does",
        )
        return False
    if tilt.value <= limit.value + 1e-9:
        return True
    does = "tilts" if axis == "x" else "nods"
    what = "the grooves need" if asked.feature.shape == "serrations" else f"“{name}” needs"
    asked.work.problem(asked.operation.mark, f"the head {does} {limit.shown}° and {what} {tilt.shown}°", instead)
    return False


def groove_leaning(asked: MillCut, axis: str, tilt: Number) -> Leaning:
    """For grooves whose flank toward the left end, bottom or back is to stand at the tilt from upright.

    That flank is cut by the cutter's side, so the head leans toward it. At half of square both flanks are alike.
    """
    alike = abs(tilt.value - HALF_SQUARE) < HAIR
    return Leaning(axis, -1 if alike else -asked.lying.sign(axis), tilt)


def position(label: Line, axis: str, got: Number, hand: Mapping[str, Number]) -> Position:
    """A place across the grooves, told by the reading of one axis."""
    return Position(label, got if axis == "x" else None, got if axis == "y" else None, hand=hand)


def check_same(work: Work, set_up: SetUp, cuts: Sequence[Cut]) -> None:
    """Every cut of a set-up wants the head as the first tilted one has it; others are a problem where they stand."""
    first = next((cut for cut in cuts if cut.kind in TILTED), None)
    if first is None:
        return
    for cut in cuts:
        if (cut.kind in TILTED and stands(cut) == stands(first)) or cut.kind == "hand":
            continue
        wants = "wants it otherwise" if cut.kind in TILTED else "wants it upright"
        operation = next(o for o in set_up.operations if o.cut == cut.feature)
        work.problem(
            operation.place("cut"),
            f"the head is tilted for “{first.feature}” in this set-up, and “{cut.feature}” {wants}",
            "give it a set-up of its own",
        )


def stands(cut: Cut) -> tuple[str, str]:
    """How the head stands for a tilted cut."""
    return cut.lean, cut.sizes["tilt"].shown


def notes(work: Work, set_up_id: str, cuts: Sequence[Cut]) -> tuple[list[Line], list[Line]]:
    """What a set-up says of its tilted head, first of all and after; nothing where it stands upright."""
    cut = next((cut for cut in cuts if cut.kind in TILTED), None)
    return tilt_notes(work, set_up_id, cut.sizes["tilt"], cut.lean) if cut is not None else ([], [])


def tilt_notes(work: Work, set_up_id: str, tilt: Number, lean: str) -> tuple[list[Line], list[Line]]:
    """How the head is tilted, and how it is brought back square."""
    sweep, largest = work.rule("tram sweep"), work.rule("tram reading")
    out = work.of(set_up_id).angle(
        "tram",
        angles.tram_angle,
        "angle that is still out at that reading",
        reading=largest,
        sweep=sweep,
        show=Show(places=3),
    )
    before = [
        line(
            f"{SAID[lean]} The scale is only a guide: check with the protractor between the table and the cutter's "
            "side.",
            tilt=tilt,
        ),
        line("With the head tilted, the quill no longer moves straight up and down: set depth with the knee."),
    ]
    after = [
        line("Do not leave the machine with its head tilted: whoever comes to it next trusts it to be square."),
        line(
            "Back to square: indicator in the spindle, sweep a circle {sweep} across on the clean table, left to "
            "right and front to back.",
            sweep=sweep,
        ),
        line(
            "Nudge the head until the readings differ by no more than {most}. That is {out} out of square.",
            most=largest,
            out=out,
        ),
    ]
    return before, after
