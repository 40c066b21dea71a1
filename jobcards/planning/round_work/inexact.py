"""What dividing that is not exact does to each place: how far it is out, and whether that is accepted."""

from jobcards.planning.card import FeaturePlan, Station
from jobcards.planning.number import Number, Show
from jobcards.planning.words import Line, line
from jobcards.planning.work import Work
from jobcards.trade import dividing, side_milling
from jobcards.trade.formula import CannotBeDone

NONE = 1e-9
FINE = Show(places=4)


def accept(error: Number, nearest: Number | None, place: str) -> Number | None:
    """The error of a place, or nothing where there is none. Raises CannotBeDone when more than is accepted."""
    if abs(error.value) <= NONE:
        return None
    if nearest is not None and abs(error.value) > nearest.value + NONE:
        raise CannotBeDone(f"{place} comes out {error.shown}° off, and {nearest.shown}° is accepted")
    return error


def angle_of(work: Work, move_id: str, move: dict[str, Number], ratio: Number) -> Number:
    """The angle that counted turns and holes really give."""
    return work.of(move_id).angle(
        "index-angle",
        dividing.angle_of_move,
        "angle that the move gives",
        turns=move["turns"],
        holes=move.get("holes", 0.0),
        circle=move.get("circle", 1.0),
        ratio=ratio,
        show=FINE,
    )


def error_of_division(work: Work, cut_id: str, move: dict[str, Number], ratio: Number, divisions: Number) -> Number:
    """How far one even move misses its division."""
    given = angle_of(work, cut_id, move, ratio)
    return work.of(cut_id).angle(
        "index-error", dividing.move_error, "error of one move", angle=given, divisions=divisions, show=FINE
    )


def error_after(work: Work, station_id: str, start: Number | float, index: int, each: Number) -> Number:
    """How far a place is out after so many even moves."""
    return work.of(station_id).angle(
        "error", dividing.place_error, "how far the place is out", start=start, index=index, each=each, show=FINE
    )


def inexact_words(work: Work, cut_id: str, feature: FeaturePlan, stations: tuple[Station, ...]) -> list[Line]:
    """What the errors come to: at the place that is farthest out, at its radius, and over the whole circle."""
    out = [station for station in stations if station.error is not None]
    if not out:
        return []
    worst = max((s.error for s in out if s.error is not None), key=lambda error: abs(error.value))
    radius = work.of(cut_id).length(
        "error-radius", side_milling.half_width, "radius that the error is told at", width=across(feature)
    )
    off = work.of(cut_id).length(
        "error-at-radius", dividing.error_at_radius, "how far out at that radius", radius=radius, error=worst
    )
    told = {"worst": worst, "off": off, "radius": radius}
    if f"{cut_id}.index-error" not in work.ledger:
        return [
            line(
                "Set to the nearest mark, the place farthest out is off by {worst}: {off} at a radius of {radius}. "
                "Each reading is counted from the start, so the errors do not add up.",
                **told,
            )
        ]
    each = work.ledger[f"{cut_id}.index-error"]
    said = [
        line(
            "No circle of these plates divides it exactly. Each move is off by {each}, and it adds up: the place "
            "farthest out is off by {worst}, {off} at a radius of {radius}. More than nothing is too far.",
            each=each,
            **told,
        )
    ]
    if feature.sizes["count"].value == feature.sizes.get("of", feature.sizes["count"]).value:
        said.append(closing_words(work, cut_id, feature.sizes["count"]))
    return said


def closing_words(work: Work, cut_id: str, divisions: Number) -> Line:
    """The error that is built up when the work has come round."""
    built = work.of(cut_id).angle(
        "error-built-up",
        dividing.error_built_up,
        "error built up over all divisions",
        divisions=divisions,
        angle=work.ledger[f"{cut_id}.index-angle"],
        show=FINE,
    )
    return line(
        "One move more after the last would end {built} off where it began; the gap from the last to the first takes "
        "that up.",
        built=built,
    )


def across(feature: FeaturePlan) -> Number:
    """The circle that a feature's places stand on: its own, or the outside of the round."""
    return feature.sizes["circle"] if "circle" in feature.sizes else feature.sizes["round"]
