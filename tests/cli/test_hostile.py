"""A short campaign of hostile specs; ``tests/campaigns`` holds the long one and its table."""

from __future__ import annotations

from math import inf

import pytest

from campaigns.hostile import campaign, run
from campaigns.specs import KINDS, case

SEED, COUNT = 7, 160


def test_every_spec_is_taken_or_refused_with_its_places() -> None:
    # Without a limit of time: that depends on the machine.
    tally = campaign(range(COUNT), SEED, slow=inf)
    assert [f"{each.number}: {each.faults}" for each in tally.bad] == []
    assert set(tally.codes) == set(KINDS)
    ends = {code for codes in tally.codes.values() for code in codes}
    assert ends == {0, 1, 2}


def test_a_case_is_made_again_by_its_number() -> None:
    assert case(SEED, 11) == case(SEED, 11)
    assert case(SEED, 11) != case(SEED + 1, 11)


@pytest.mark.parametrize(
    ("raised", "told"),
    [(RuntimeError("nobody thought of this"), "exit 70"), (SystemExit(3), "exit 3")],
)
def test_what_ends_badly_is_noticed(
    tmp_path: object, monkeypatch: pytest.MonkeyPatch, raised: BaseException, told: str
) -> None:
    def fail(*_: object) -> None:
        raise raised

    monkeypatch.chdir(str(tmp_path))
    monkeypatch.delenv("RODWRIGHT_DEBUG", raising=False)
    monkeypatch.setattr("rodwright.read_spec", fail)
    assert any(told in fault for fault in run(1, SEED, inf).faults)
