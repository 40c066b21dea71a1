"""The work must go where the card says that it is held."""

from jobcards.dryrun import dry_run
from jobcards.dryrun.reading import published
from tests.planning.cards import shipped


def test_a_head_that_would_lie_in_the_block_is_told() -> None:
    """The jack's screw lies by its stem in the V; its head is 3/4 long and thicker, and must stand out wholly."""
    card = shipped("screw-jack")
    shown = {**published(card), "screw-tommy-hole.stick-out-of-the-head": "0.7431"}
    assert dry_run(card).passed
    faults = dry_run(card, shown).part("screw").faults
    assert faults == ("screw-tommy-hole: the work does not go in: it would lie in the v-block",)


def test_a_head_stands_out_with_room() -> None:
    """3/4 of head, and the usual 1/10 of room."""
    assert published(shipped("screw-jack"))["screw-tommy-hole.stick-out-of-the-head"] == "0.8500"
