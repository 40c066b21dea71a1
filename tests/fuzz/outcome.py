"""What becomes of a spoilt definition: a card with its dry run and pages, or problems; anything else is a fault."""

import signal
import traceback
from dataclasses import dataclass
from pathlib import Path
from types import FrameType

from jobcards.definition import ProblemsFound, load_family, load_shop, shop_for
from jobcards.dryrun import dry_run
from jobcards.pages.card import card_page
from jobcards.pages.record import record_page
from jobcards.pages.rehearsal import rehearsals
from jobcards.pages.wall import wall_page
from jobcards.planning import plan_card, problems_of
from tests.fuzz.mutate import spoilt

LONGEST = 60  # seconds; a generous bound on a busy machine, against a hang


@dataclass(frozen=True)
class Outcome:
    """How it ended, and for a fault where in our code."""

    kind: str
    fault: str = ""


class Hangs(Exception):
    """It took too long."""


def stop(number: int, frame: FrameType | None) -> None:
    raise Hangs


def outcome(seed: int, folder: Path) -> Outcome:
    """Read, plan, dry-run and write the pages of one spoilt definition."""
    text, name = spoilt(seed)
    path = folder / f"{name}.yml"
    path.write_bytes(text.encode("utf-8", "surrogatepass"))
    signal.signal(signal.SIGALRM, stop)
    signal.alarm(LONGEST)
    try:
        jobs = load_family(path)
        cards = [plan_card(job, load_shop(shop_for(job))) for job in jobs[:2]]
        for card in cards:
            run = dry_run(card)
            told = rehearsals(card, run)
            assert card_page(card, told) and wall_page(card, "") and record_page(card, "")
        return Outcome("card")
    except ProblemsFound as found:
        unclear = [
            problem for problem in found.problems if not (problem.wrong and problem.instead and problem.mark.line)
        ]
        if unclear or not found.problems:
            return Outcome("problems", f"unclear: {unclear[:1]}")
        return Outcome("problems", lost(path, found))
    except Exception as fault:
        ours = [frame for frame in traceback.extract_tb(fault.__traceback__) if "jobcards" in frame.filename]
        where = " < ".join(f"{Path(f.filename).parent.name}/{Path(f.filename).name}:{f.lineno}" for f in ours[-1:-4:-1])
        return Outcome("fault", f"{type(fault).__name__}: {str(fault)[:90]!r} at {where}")
    finally:
        signal.alarm(0)


def lost(path: Path, found: ProblemsFound) -> str:
    """The checker tells what was found and what stands behind it; anything else is a fault."""
    try:
        told = {problem.mark for problem in problems_of(path)}
    except Exception as fault:
        return f"the checker fails: {type(fault).__name__}: {str(fault)[:90]!r}"
    missing = [problem for problem in found.problems if problem.mark not in told]
    return f"the checker leaves out: {missing[0]}" if missing else ""
