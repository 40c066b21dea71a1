"""Turning the work on between cuts: turns of the crank and holes on a plate, or degrees on a rotary table's dial."""

from dataclasses import dataclass

from jobcards.definition.problem import advise
from jobcards.definition.shop_dividing import DividingHead, Indexer, RotaryTable
from jobcards.planning.card import FeaturePlan, Station
from jobcards.planning.letters import suffix
from jobcards.planning.number import WHOLE, Number, Show
from jobcards.planning.round_work.inexact import FINE, accept, angle_of, error_after, error_of_division
from jobcards.planning.words import Authored, Line, line
from jobcards.planning.work import Work, slug
from jobcards.tables import table
from jobcards.trade import dividing, indexing, round_work
from jobcards.trade.formula import CannotBeDone

EXACT = 1e-9
FULL = 360.0
WAY = "The work turns clockwise as its right end is seen."
MINUTE = 1 / 60


@dataclass
class Turner:
    """A dividing head or rotary table in one set-up: which angle of the drawing is up now."""

    work: Work
    set_up_id: str
    name: str
    head: Indexer
    first: Number | None = None  # up at the start
    now: Number | None = None
    nearest: Number | None = None  # how far a place may be out where it cannot be had exactly
    off: Number | None = None  # how far the work is out now
    way: str = WAY

    @property
    def ratio(self) -> Number:
        """Turns of the crank for one turn of the work."""
        return self.work.ledger.given(
            f"shop-{slug(self.name)}.ratio",
            float(self.head.ratio),
            "1",
            f"turns of the crank of the {self.name} for one turn of the work",
            "the shop file",
            formula="as there is",
            show=WHOLE,
        )

    def stations(self, cut_id: str, feature: FeaturePlan) -> tuple[Station, ...]:
        """Every station of a cut that is made once or several times round the work. Raises CannotBeDone."""
        count = int(feature.sizes["count"].value)
        out: list[Station] = []
        base = self.off
        for index in range(count):
            angle = self.angle_of(cut_id, feature, index, count)
            label = line("{feature}", feature=Authored(feature.name, "job"))
            if count > 1:
                label += line(", {letter}", letter=suffix(index, count).removeprefix("-"))
            station_id = f"{cut_id}{suffix(index, count)}"
            even = feature.sizes.get("of", feature.sizes["count"]) if index else None
            out.append(self.go(label, station_id, angle, even, (cut_id, base, index)))
            base = base if index else self.off
        return tuple(out)

    def angle_of(self, cut_id: str, feature: FeaturePlan, index: int, count: int) -> Number:
        """Which angle of the drawing is up at a station."""
        if index == 0:
            return feature.sizes["angle"]
        return self.work.of(f"{cut_id}{suffix(index, count)}").angle(
            "up",
            round_work.station_angle,
            f"{feature.name}: angle of the drawing that is up",
            first=feature.sizes["angle"],
            index=index,
            count=feature.sizes.get("of", feature.sizes["count"]),
        )

    def go(
        self,
        label: Line,
        station_id: str,
        angle: Number,
        divisions: Number | None,
        even: tuple[str, Number | None, int],
    ) -> Station:
        """On to an angle. `divisions`: one of so many even moves round the work; `even`: the cut that they belong to,
        how far out its first place is, and how many moves from it.
        """
        if self.first is None or self.now is None:
            self.first = self.now = angle
            return Station(label, angle)
        start, self.now = self.now, angle
        if isinstance(self.head, RotaryTable):
            move = self.dial(station_id, angle)
            return Station(label, angle, move, error=self.off_the_mark(station_id, move["dial"]))
        assert isinstance(self.head, DividingHead)
        cut_id, base, index = even
        if divisions is not None:
            found, move = self.even_move(cut_id, divisions)
            if found.error:
                each = error_of_division(self.work, cut_id, move, self.ratio, divisions)
                self.off = error_after(self.work, station_id, base or 0.0, index, each)
        else:
            swing = self.swing(station_id, start, angle)
            if swing is None:
                return Station(label, angle, error=self.off)
            found, move = self.move_on(station_id, swing)
            if found.error:
                self.off = self.after_swing(station_id, move, swing)
        error = None if self.off is None else accept(self.off, self.nearest, "a place")
        return Station(label, angle, move, Authored(found.plate, "table") if found.holes else None, error)

    def after_swing(self, station_id: str, move: dict[str, Number], swing: Number) -> Number:
        """How far the work is out after a turn through an angle that the plates do not give exactly."""
        return self.work.of(station_id).angle(
            "error",
            dividing.swing_error,
            "how far the place is out",
            start=self.off or 0.0,
            angle=angle_of(self.work, station_id, move, self.ratio),
            wanted=swing,
            show=FINE,
        )

    def off_the_mark(self, station_id: str, dial: Number) -> Number | None:
        """How far a rotary table is out when its dial stands at the nearest mark."""
        error = self.work.of(station_id).angle(
            "error", dividing.mark_error, "how far the place is out", dial=dial, division=self.mark(), show=FINE
        )
        return accept(error, self.nearest, "a place")

    def plates(self) -> indexing.Plates:
        """The plates that the head has. Raises CannotBeDone with the nearest name of a set."""
        assert isinstance(self.head, DividingHead)
        try:
            return indexing.plate_set(self.head.plates)
        except CannotBeDone:
            sets = {row["set"] for row in table("dividing_plates").rows}
            raise CannotBeDone(
                f"there is no set of plates called “{self.head.plates}”; {advise(self.head.plates, sets)}"
            ) from None

    def even_move(self, cut_id: str, divisions: Number) -> tuple[indexing.Move, dict[str, Number]]:
        """The same move from division to division."""
        turns = self.work.of(cut_id).rate(
            "index",
            dividing.crank_turns,
            "turns of the crank from one to the next",
            "turns",
            divisions=divisions,
            ratio=self.ratio,
            show=Show(places=4),
        )
        search = indexing.nearest_simple_indexing if self.nearest else indexing.simple_indexing
        found = search(int(divisions.value), self.head.ratio, self.plates())
        return found, self.counted(cut_id, found, turns)

    def swing(self, station_id: str, start: Number, angle: Number) -> Number | None:
        """The angle from one direction to another, always the same way round; nothing where it is none."""
        swing = self.work.of(station_id).angle(
            "swing", round_work.angle_to_go, "angle that the work is turned on", start=start, target=angle
        )
        return None if swing.value < EXACT or FULL - swing.value < EXACT else swing

    def move_on(self, station_id: str, swing: Number) -> tuple[indexing.Move, dict[str, Number]]:
        """Through an angle."""
        turns = self.work.of(station_id).rate(
            "index",
            dividing.crank_turns_for_angle,
            "turns of the crank on to this angle",
            "turns",
            angle=swing,
            ratio=self.ratio,
            show=Show(places=4),
        )
        search = indexing.nearest_angular_indexing if self.nearest else indexing.angular_indexing
        found = search(swing.value, self.head.ratio, self.plates())
        return found, self.counted(station_id, found, turns)

    def counted(self, move_id: str, found: indexing.Move, turns: Number) -> dict[str, Number]:
        """Whole turns, holes and the circle as numbers."""
        told = {"turns": (found.turns, "whole turns of the crank")}
        if found.holes:
            told["holes"] = (found.holes, f"holes on beyond them, {found.plate}")
            told["circle"] = (found.circle, f"holes in the circle, {found.plate}")
        source = table("dividing_plates").source
        return {
            name: self.work.ledger.given(
                f"{move_id}.index-{name}",
                float(value),
                "1",
                label,
                source,
                formula=(
                    "the circle of the plates that comes nearest to these turns"
                    if found.error
                    else "the circle of the plates that gives these turns exactly"
                ),
                inputs=(turns.id,),
                show=WHOLE,
            )
            for name, (value, label) in told.items()
        }

    def dial(self, station_id: str, angle: Number) -> dict[str, Number]:
        """A rotary table's reading from its zero: whole turns of the handle, then degrees on its dial."""
        assert isinstance(self.head, RotaryTable) and self.first is not None
        mark = self.mark()
        from_zero = self.work.of(station_id).angle(
            "table", round_work.angle_to_go, "angle of the table from its zero", start=self.first, target=angle
        )
        turns = self.work.of(station_id).count(
            "table-turns",
            dividing.table_whole_turns,
            "whole turns of the handle from zero",
            angle=from_zero,
            ratio=self.ratio,
        )
        minutes = abs(mark.value / MINUTE - round(mark.value / MINUTE)) < EXACT
        dial = self.work.of(station_id).angle(
            "dial",
            dividing.table_dial,
            "dial of the handle after them",
            angle=from_zero,
            ratio=self.ratio,
            show=Show(step=mark.value, minutes=minutes, places=None if minutes else 3),
        )
        return {"turns": turns, "dial": dial}

    def mark(self) -> Number:
        """One mark of a rotary table's dial."""
        assert isinstance(self.head, RotaryTable)
        value = self.head.division.value({})
        shown = Show(minutes=True) if value < 1 else Show()
        return self.work.ledger.given(
            f"shop-{slug(self.name)}.division", value, "deg", "one mark of its dial", "the shop file", show=shown
        )


def index_words(turner: Turner, cut_id: str, stations: tuple[Station, ...], last_cut: bool) -> list[Line]:
    """How the work is turned on from station to station; the count is proved after the last cut of the set-up."""
    moved = [station for station in stations if station.move]
    if not moved:
        return []
    if isinstance(turner.head, RotaryTable):
        return [
            line(
                "Turn the table to each reading in turn, always from the same side, and lock it before the cut. {way}",
                way=turner.way,
            ),
        ]
    said = [line("Turn on before each cut after the first, and lock the spindle before the cut. {way}", way=WAY)]
    last = moved[-1]
    if "holes" in last.move:
        arms = turner.work.of(cut_id).count(
            "sector", round_work.sector_holes, "holes between the sector arms", holes=last.move["holes"]
        )
        said.append(
            line(
                "Sector arms on the circle of {circle}, {plate}: {arms} holes between them with the one that the pin "
                "is in, for {holes} spaces.",
                circle=last.move["circle"],
                plate=last.plate or Authored("", "table"),
                arms=arms,
                holes=last.move["holes"],
            )
        )
    exact = all(station.error is None for station in stations)
    if exact and last_cut and len(stations) > 1 and stations[0].angle is turner.first:
        said.append(line("One move more after the last cut brings the pin back to where it began: the count is right."))
    return said
