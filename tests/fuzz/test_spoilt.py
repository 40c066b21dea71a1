"""A definition spoilt anyhow ends in a card or in clear problems; never in a traceback or a hang."""

from pathlib import Path

import pytest

from tests.fuzz.outcome import outcome

SEEDS = 240  # in twelve lots; many more by hand: tests/fuzz/run.py


@pytest.mark.parametrize("lot", range(12))
def test_a_spoilt_definition_ends_well(tmp_path: Path, lot: int) -> None:
    ends = {seed: outcome(seed, tmp_path) for seed in range(lot, SEEDS, 12)}
    assert {seed: end.fault for seed, end in ends.items() if end.fault} == {}
