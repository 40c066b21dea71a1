"""While one card is being written, its page is shown at once; what is slow follows a moment later.

The dry run and the drawings that a change calls for are made by another process (`draughtsman.py`). Until they are
there, a box stands in the place of each. Then a file in the folder JOBCARDS_BELL is written, which the site engine
watches, and the page is made again with everything on it: the same page as in any other build.
"""

import json
import os
import subprocess
import sys
import threading
from collections.abc import Sequence
from pathlib import Path
from typing import Any

from jobcards.pages import draughtsman
from jobcards.pages.drawn import draw, is_drawn
from jobcards.pages.on_disk import PACKAGE
from jobcards.pages.pictures import Pictures
from jobcards.pages.rehearsal import Rehearsal, from_plain
from jobcards.pages.worked import Worked

AGAIN, TIMES = 2.0, 30  # seconds until the bell is rung once more, should nobody have heard it, and how often
MOST = 1000  # dry runs and drawings held
FOLLOWS = (
    '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 300 40" role="img"><title>Follows in a moment</title>'
    '<text x="150" y="24" text-anchor="middle" font-size="11" fill="currentColor">Dry run and drawing follow in a '
    "moment.</text></svg>"
)


class Helper:
    """The other process, and what has come from it."""

    def __init__(self, bell: Path) -> None:
        self.bell = bell
        self.made: dict[str, Any] = {}  # by the keys of the drawings, the newest last
        self.asked: set[str] = set()  # the names of the cards asked for
        self.owed: dict[tuple[str, str, str], str] = {}  # the cards shown without, the latest of each
        self.failed: set[str] = set()  # the cards that it could not make
        self.gone = False
        self.paid = threading.Condition()
        paths = os.pathsep.join([str(PACKAGE.parent), *filter(None, [os.environ.get("PYTHONPATH")])])
        self.process = subprocess.Popen(
            [sys.executable, "-m", draughtsman.__name__],
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            env=os.environ | {"PYTHONPATH": paths},
            start_new_session=True,  # Ctrl-C is for the engine; this one ends with its input
            text=True,
            encoding="utf-8",
        )
        threading.Thread(target=self.listen, daemon=True).start()

    def ask(self, worked: Worked) -> None:
        """Let a card be dry-run and drawn, unless that was asked before."""
        self.owed[worked.origin] = worked.name
        if worked.name in self.asked:
            return
        self.asked.add(worked.name)
        assert self.process.stdin is not None
        try:
            print(json.dumps([worked.name, *worked.origin]), file=self.process.stdin, flush=True)
        except OSError:
            self.gone = True

    def listen(self) -> None:
        """Take the answers as they come, and ring for each."""
        assert self.process.stdout is not None
        for line in self.process.stdout:
            answer = json.loads(line)
            name = answer["name"]
            if answer["made"] is None:
                self.failed.add(name)
            else:
                older = {key: thing for key, thing in self.made.items() if key not in answer["made"]}
                self.made = dict([*older.items(), *answer["made"].items()][-MOST:])
            threading.Thread(target=self.ring, args=(name,), daemon=True).start()
        self.gone = True

    def ring(self, name: str) -> None:
        """Write the file that the engine watches, again if nobody heard it, until the card is shown whole."""
        for count in range(TIMES):
            if name not in self.owed.values():
                return
            try:
                (self.bell / "done").write_text(f"{name} {count}", encoding="utf-8")
            except OSError:
                return  # the folder is gone: all is over
            with self.paid:
                self.paid.wait(AGAIN)

    def settle(self, worked: Worked) -> None:
        """The card is shown whole, or in another way."""
        self.owed.pop(worked.origin, None)
        self.asked.discard(worked.name)
        with self.paid:
            self.paid.notify_all()


HELPERS: list[Helper] = []
MADE: set[str] = set()


def once() -> bool:
    """Whether the pages that every card shares were made already, while one card is being written; then they stay."""
    bell = os.environ.get("JOBCARDS_BELL", "")
    there = bell in MADE
    if bell:
        MADE.add(bell)
    return there


def shown_now(worked: Worked) -> tuple[Sequence[Rehearsal], Pictures]:
    """The dry run and the drawings of a card: all of them, or while it is being written what there is of them."""
    bell = os.environ.get("JOBCARDS_BELL")
    if not bell or is_drawn(worked):
        return worked.rehearsals, draw(worked)
    if not HELPERS:
        HELPERS.append(Helper(Path(bell)))
    helper = HELPERS[0]
    if helper.gone or worked.name in helper.failed:
        helper.settle(worked)
        return worked.rehearsals, draw(worked)
    made, run = helper.made, draughtsman.run_key(worked.card)
    keys = [*draughtsman.keys_of(worked.card)]
    if run in made and all(key in made for key, _ in keys):
        helper.settle(worked)
    else:
        helper.ask(worked)
    return tuple(map(from_plain, made.get(run, ()))), gathered({which: made.get(key, FOLLOWS) for key, which in keys})


def gathered(drawn: dict[tuple[str, ...], str]) -> Pictures:
    """Drawings by what they show; those of which there are none are left out."""
    there = {which: svg for which, svg in drawn.items() if svg}
    return Pictures(
        head=there.get(("head",), ""),
        parts={which[1]: svg for which, svg in there.items() if which[0] == "part"},
        set_ups={which[1]: svg for which, svg in there.items() if which[0] == "set-up"},
        after={(which[1], which[2]): svg for which, svg in there.items() if which[0] == "after"},
    )


def stop() -> None:
    """Let the helper go; another one is taken when it is needed."""
    while HELPERS:
        stdin = HELPERS.pop().process.stdin
        if stdin is not None:
            stdin.close()
