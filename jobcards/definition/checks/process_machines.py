"""A process is done on a machine that does it, with a tool that the shop has."""

from collections.abc import Iterator

from jobcards.definition.job import SetUp
from jobcards.definition.model import Mark
from jobcards.definition.problem import Problem, listed
from jobcards.definition.shop import Bench, Furnace, Saw, Shop, SurfaceGrinder

DONE_ON: dict[str, tuple[type, ...]] = {
    "saw": (Saw, Bench),
    "heat": (Furnace,),
    "grind": (SurfaceGrinder,),
    "assemble": (Bench,),
}
TOOL_OF = {"saw": "saw blade", "grind": "grinding wheel"}


def process_cutters(setup: SetUp) -> list[tuple[str, Mark, str]]:
    """The tools of a process: name, place, and the kind it must be."""
    given = [(name, getattr(setup, name)) for name in TOOL_OF if getattr(setup, name) is not None]
    return [(process.cutter, process.place("cutter"), TOOL_OF[name]) for name, process in given]


def check_process_in(setup: SetUp, shop: Shop) -> Iterator[Problem]:
    """The problems of a process in a shop."""
    machine = shop.machines.get(setup.machine)
    for name, kinds in DONE_ON.items():
        if getattr(setup, name) is None:
            continue
        there = [called for called, thing in shop.machines.items() if isinstance(thing, kinds)]
        if machine is not None and not isinstance(machine, kinds):
            what = {"heat": "heat treatment is"}.get(name, f"{name} is")
            instead = f"write machine: {listed(there)}" if there else "add a machine for it to the shop file"
            yield Problem(setup.place("machine"), f"{what} not done on the {setup.machine}", instead)
    if not setup.operations and not setup.square_up and isinstance(machine, (Saw, Furnace, SurfaceGrinder)):
        asked = {Saw: "saw", Furnace: "heat", SurfaceGrinder: "grind"}[type(machine)]
        if getattr(setup, asked) is None and not setup.inspect:
            yield Problem(setup.mark, f"what is done on the {setup.machine} is missing", f"write {asked}:")
    if isinstance(machine, (Saw, Furnace)):
        for operation in setup.operations:
            wrong = f"nothing is cut to a drawing's shape on the {setup.machine}"
            yield Problem(operation.place("cut"), wrong, "make it at the mill, the lathe or the bench")
    if isinstance(machine, (Saw, Furnace, SurfaceGrinder)) and setup.square_up:
        wrong = f"a sawn blank is not squared up on the {setup.machine}"
        yield Problem(setup.place("square_up"), wrong, "square it up at the mill or on the shaper first")
    for name, mark, kind in process_cutters(setup):
        cutter = shop.cutters.get(name)
        if cutter is not None and cutter.kind != kind:
            alike = [called for called, tool in shop.cutters.items() if tool.kind == kind]
            yield Problem(mark, f"“{name}” is no {kind}", f"write {listed(alike)}" if alike else f"add a {kind}")
