"""What is said of work under strap clamps: how it lies, what trues it, where the clamps stand."""

from collections.abc import Iterator, Mapping

from jobcards.definition.job import SetUp
from jobcards.planning.card import ClampPlan
from jobcards.planning.number import Number
from jobcards.planning.orientation import Lie
from jobcards.planning.shapes.place import ALONG, AXES
from jobcards.planning.words import Line, line
from jobcards.planning.work import Work
from jobcards.trade.setups import FACES


def edge_axis(over: str, base: str) -> int:
    """The drawing axis along the edge between two faces."""
    return next(axis for axis in range(3) if axis not in (FACES[over][0], FACES[base][0]))


def lies_words(up: str, sizes: Mapping[str, Number], clamps: tuple[ClampPlan, ...], lying: Lie) -> Iterator[Line]:
    """How the work lies."""
    if "parallel thickness" not in sizes:
        yield line("Wipe the table; no chip and no burr under the work. {up} up, flat on the table.", up=f"The {up}")
        return
    across = lying.side(clamps[0].over)[0] == "x"
    yield line(
        "Wipe the table. {up} up, on two pieces of packing {height} high and {thickness} broad: one under the {one}, "
        "one under the {other}, where the clamps press.",
        up=f"The {up}",
        height=sizes["parallel height"],
        thickness=sizes["parallel thickness"],
        one="left edge" if across else "near edge",
        other="right edge" if across else "far edge",
    )


def trued_words(work: Work, set_up: SetUp, lying: Lie, clamps: tuple[ClampPlan, ...]) -> Iterator[Line]:
    """What brings the work true along the table."""
    assert set_up.hold is not None
    face, between = trued_faces(set_up.hold.away, lying, clamps)
    if set_up.keep_zero:
        yield line(
            "The work stays as it lies. Move the clamps one after the other, two of them always tight, and sweep "
            "the {face}{between} again: within {true} it has not moved.",
            face=face,
            between=between,
            true=work.rule("edge trued"),
        )
        return
    yield line(
        "The {far} away from you. Nip the clamps, sweep an indicator in the spindle along the {face}{between}, and tap "
        "the work until it reads the same from end to end within {true}.",
        far=set_up.hold.away,
        face=face,
        between=between,
        true=work.rule("edge trued"),
    )


def trued_faces(far: str, lying: Lie, clamps: tuple[ClampPlan, ...]) -> tuple[str, str]:
    """The face along the table that an indicator runs along, free of clamps if there is one, and where along it."""
    near = next(face for face in FACES if lying.side(face) == ("y", -1))
    taken = {clamp.over for clamp in clamps}
    face = next((face for face in (far, near) if face not in taken), far)
    return face, " where no clamp stands" if face in taken else ""


def clamp_words(
    clamps: tuple[ClampPlan, ...], base: str, sizes: Mapping[str, Number], *, on_plate: bool = False
) -> Iterator[Line]:
    """Where the clamps stand and how. `base`: the face that their noses bear on."""
    for clamp in clamps:
        yield line(
            "A clamp over the {over}, its middle {at} {start}.",
            over=clamp.over,
            at=clamp.at,
            start=ALONG[AXES[edge_axis(clamp.over, base)]],
        )
    yield line(
        "Each nose bears {reach} on the work; the stud stands {gap} from the edge, as near as it goes, so that the "
        "work gets {share} of its pull. Heel blocks {heel} high{whence}, a little higher than the work: never lower.",
        reach=sizes["reach"],
        gap=sizes["stud gap"],
        share=sizes["share"],
        heel=sizes["heel"],
        whence=" from the plate" if on_plate else "",
    )
    yield line(
        "Pull all nuts tight and sweep once more. The studs stand {up} {where}: look where the spindle and the holder "
        "go.",
        up=sizes["stands up"],
        where="out of the work toward you" if on_plate else "above the work",
    )
