"""All drawings of the shipped job, made once, and small solids to draw."""

from collections.abc import Iterator
from functools import cache

import numpy as np
from manifold3d import Manifold

from jobcards.drawing import Drawing, card_picture, part_drawing, set_up_picture, state_picture
from jobcards.drawing.mesh import Mesh, mesh_of
from jobcards.dryrun import DryRun, dry_run
from tests.planning.cards import clamp


@cache
def run() -> DryRun:
    """The dry run of the equalising clamp."""
    return dry_run(clamp())


@cache
def every_drawing() -> dict[str, Drawing]:
    """Every drawing of the clamp's card, by the id it has on a page."""
    return {drawing_id(drawing): drawing for drawing in made()}


def made() -> Iterator[Drawing]:
    """The drawings in the order of the card."""
    card = clamp()
    yield card_picture(card, run())
    for part in card.parts:
        yield part_drawing(card, part)
    for set_up in card.set_ups:
        picture = set_up_picture(card, set_up, run())
        if picture is not None:
            yield picture
    for part_run in run().parts:
        for state in part_run.states:
            yield state_picture(card, run(), state)


def drawing_id(drawing: Drawing) -> str:
    """The id that a drawing's own ids begin with."""
    return drawing.svg.split('aria-labelledby="', 1)[1].split("-title", 1)[0]


def mesh(solid: Manifold) -> Mesh:
    """A solid's mesh."""
    found = solid.to_mesh64()
    return mesh_of(np.asarray(found.vert_properties)[:, :3], np.asarray(found.tri_verts))


def block(*size: float) -> Manifold:
    """A block with one corner at zero."""
    return Manifold.cube(size)


def bored(solid: Manifold, diameter: float, x: float, y: float, low: float, high: float) -> Manifold:
    """A solid with a round hole along z."""
    return solid - Manifold.cylinder(high - low, diameter / 2, diameter / 2, 96).translate((x, y, low))
