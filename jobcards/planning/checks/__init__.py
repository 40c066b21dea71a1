"""What is looked at before anything is printed: faces to hold by, tolerances that a process holds and a gauge tells."""

from jobcards.definition.job import Part
from jobcards.planning.card import InspectionRow, PartPlan
from jobcards.planning.checks.chamfers import check_chamfers
from jobcards.planning.checks.faces import check_faces
from jobcards.planning.checks.held import check_held
from jobcards.planning.checks.tolerances import check_instruments, check_processes
from jobcards.planning.work import Work

__all__ = ["check_card"]


def check_card(work: Work, parts: tuple[PartPlan, ...], inspection: tuple[InspectionRow, ...]) -> None:
    """Every check of a planned card: problems, or cautions at the head of the card."""
    for name, plan in zip(work.job.parts, parts, strict=True):
        check_part(work, work.job.parts[name], plan)
    check_instruments(work, inspection)


def check_part(work: Work, part: Part, plan: PartPlan) -> None:
    """The checks of a part, by its route and by every other way."""
    check_faces(work, part, plan, part.route, plan.set_ups)
    check_held(work, part, plan.shape, plan.blank)
    check_chamfers(work, part, plan.shape)
    check_processes(work, plan, plan.set_ups)
    for way in plan.alternatives:
        written = part.alternatives[way.name.text].route
        check_faces(work, part, plan, [*part.route, *written], plan.route_of(way))
        check_processes(work, plan, way.set_ups)
