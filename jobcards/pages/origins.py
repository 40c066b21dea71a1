"""Which line of a definition a published number comes from."""

from collections.abc import Iterator

from jobcards.definition import Job, Mark
from jobcards.planning.work import slug


def line_of(job: Job, number_id: str) -> str:
    """The line of the definition that a number belongs to, as `FILE:LINE`; nothing for one of the shop or a table.

    A size leads to its own line, all else to its feature, operation, set-up, part, requirement or bought thing.
    """
    thing = number_id.partition(".")[0].removeprefix("dry-run.")
    fitting = [(name, mark) for name, mark in places(job) if thing == name or thing.startswith(f"{name}-")]
    if not fitting:
        return ""
    _, mark = max(fitting, key=lambda entry: len(entry[0]))
    return f"{mark.file}:{mark.line}"


def places(job: Job) -> Iterator[tuple[str, Mark]]:
    """How the ids of numbers begin, and where in the file what they belong to stands."""
    for size in job.sizes.values():
        yield f"size-{slug(size.name)}", size.mark
    for name, requirement in job.requirements.items():
        yield f"requirement-{slug(name)}", requirement.mark
    for name, thing in job.bought.items():
        yield f"bought-{slug(name)}", thing.mark
    for part_name, part in job.parts.items():
        part_id = slug(part_name)
        yield part_id, part.mark
        for name, feature in part.features.items():
            yield f"{part_id}-{slug(name)}", feature.mark
        for set_up in part.route:
            set_up_id = f"{part_id}-{slug(set_up.title)}"
            yield set_up_id, set_up.mark
            for operation in set_up.operations:
                if operation.cut:
                    yield f"{set_up_id}-{slug(operation.cut)}", operation.mark
                    yield f"{set_up_id}-{slug(operation.cut)}-{slug(operation.cutter)}", operation.mark
