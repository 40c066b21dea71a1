"""What holds for a job as a whole: its issues in order, its picture, its requirements."""

from collections.abc import Collection, Iterator, Sequence
from itertools import pairwise

from jobcards.definition.checks.known import Known, told
from jobcards.definition.job import Requirement, Revision
from jobcards.definition.model import Mark
from jobcards.definition.problem import Problem, ProblemsFound, advise, article


def check_revisions(revisions: Sequence[Revision]) -> Iterator[Problem]:
    """Oldest first, each letter once."""
    for before, after in pairwise(revisions):
        if after.date < before.date:
            yield Problem(after.place("date"), "this issue is older than the one above", "put the oldest first")
    letters = [revision.letter for revision in revisions]
    for number, revision in enumerate(revisions):
        if revision.letter in letters[:number]:
            wrong = f"the revision {revision.letter} is there already"
            yield Problem(revision.place("letter"), wrong, "write the next letter")


def check_picture(picture: str | None, mark: Mark, parts: Collection[str]) -> Iterator[Problem]:
    """The picture shows a part of the job."""
    if picture and picture not in parts:
        yield Problem(mark, f"“{picture}” is not a part of this job", advise(picture, parts))


def check_requirement(requirement: Requirement, known: Known) -> Iterator[Problem]:
    """The limits are of the value's kind and in order."""
    limits = [limit for limit in (requirement.at_least, requirement.at_most) if limit]
    if not all(known.ready(expression) for expression in (requirement.value, *limits)):
        return
    try:
        kind = requirement.value.kind(known.kinds, known.functions)
        for limit in limits:
            given = limit.kind(known.kinds, known.functions)
            bare = limit.is_bare(known.kinds, known.functions) and kind != "angle"
            if given != kind and not bare:
                wrong = f"is a limit of another kind than the value, {article(kind)}"
                instead = "write it with °, as in 4°" if kind == "angle" else f"write {article(kind)}"
                yield told(limit, wrong, instead)
                return
    except ProblemsFound:
        return
    low, high = known.value(requirement.at_least), known.value(requirement.at_most)
    if low is not None and high is not None and low > high:
        wrong = f"at least {low:.6g} is more than at most {high:.6g}"
        yield Problem(requirement.place("at_least"), wrong, "exchange the two")
