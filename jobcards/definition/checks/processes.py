"""A set-up does one kind of thing; heat treatment has its heats; an alternative stands for set-ups that are there."""

from collections.abc import Iterator
from dataclasses import replace

from jobcards.definition.features import Placed
from jobcards.definition.job import Alternative, Part, SetUp
from jobcards.definition.problem import Problem, advise

PROCESSES = {
    "saw": "saw",
    "heat": "heat",
    "grind": "grind",
    "assemble": "assemble",
    "inspect": "inspect",
    "lay_out": "lay out",
}


def does_something(setup: SetUp) -> bool:
    """Whether a set-up is one of the processes that need no operations."""
    return any(getattr(setup, name) for name in PROCESSES)


def check_processes(setup: SetUp, part: Part) -> Iterator[Problem]:
    """One process a set-up, with what it needs."""
    given = [words for name, words in PROCESSES.items() if getattr(setup, name)]
    given += ["square up"] if setup.square_up else []
    given += ["operations"] if setup.operations else []
    if len(given) > 1 and given != ["square up", "operations"]:
        yield Problem(setup.mark, f"{' and '.join(given)} in one set-up", "make a set-up of each")
    for name in setup.lay_out:
        if name not in part.features:
            wrong = f"“{name}” is not a feature of this part"
            yield Problem(setup.place("lay_out"), wrong, advise(name, part.features))
        elif not isinstance(part.features[name], Placed):
            wrong = f"“{name}” is no hole to be marked out"
            instead = "name holes; the middle line of a slot is scribed where zero: asks for a line"
            yield Problem(setup.place("lay_out"), wrong, instead)
    if setup.heat and not (setup.heat.harden or setup.heat.case_harden or setup.heat.temper):
        yield Problem(setup.heat.mark, "no heat treatment is written", "write harden, case harden or temper")
    if setup.heat and setup.heat.harden and setup.heat.case_harden:
        yield Problem(setup.heat.place("case_harden"), "a steel is hardened through or in its case", "leave one out")
    if setup.grind and not part.block:
        instead = "state it as a feature with shape: note, and leave metal for it"
        yield Problem(setup.place("grind"), "only the faces of a block are ground here", instead)
    if setup.grind:
        for face in dict.fromkeys(setup.grind.faces):
            if setup.grind.faces.count(face) > 1:
                yield Problem(setup.grind.place("faces"), f"the {face} is ground twice", "name each face once")
    if setup.stopping_point and left_hard(setup):
        wrong = "work must not be left as it comes out of the quench"
        yield Problem(setup.place("stopping_point"), wrong, "temper first, or leave the stopping point out")


def left_hard(setup: SetUp) -> bool:
    """Whether the work is hard and not tempered at the end of a set-up."""
    return bool(setup.heat and (setup.heat.harden or setup.heat.case_harden) and not setup.heat.temper)


def exchanged(part: Part, alternative: Alternative) -> list[SetUp]:
    """The route with the alternative's set-ups in the place of those it stands for.

    They stand where the first of those stood.
    """
    route: list[SetUp] = []
    put_in = False
    for setup in part.route:
        if setup.title not in alternative.instead_of:
            route.append(setup)
        elif not put_in:
            route += alternative.route
            put_in = True
    return route


def check_alternative(part: Part, name: str, alternative: Alternative) -> Iterator[Problem]:
    """What it stands for is in the route, and its own set-ups have names of their own."""
    titles = [setup.title for setup in part.route]
    for title in alternative.instead_of:
        if title not in titles:
            wrong = f"the route has no set-up called “{title}”"
            yield Problem(alternative.place("instead_of"), wrong, advise(title, titles))
    own: list[str] = []
    for setup in alternative.route:
        if setup.title in [*titles, *own]:
            wrong = f"there is a set-up called “{setup.title}” already"
            yield Problem(setup.place("title"), wrong, f"call it something else, as in “{setup.title}, {name}”")
        own.append(setup.title)


def with_alternative(part: Part, alternative: Alternative) -> Part:
    """The part made by the alternative route."""
    return replace(part, route=exchanged(part, alternative))


def every_setup(part: Part) -> list[SetUp]:
    """The set-ups of the route, then those of its alternatives."""
    return [*part.route, *(setup for other in part.alternatives.values() for setup in other.route)]
