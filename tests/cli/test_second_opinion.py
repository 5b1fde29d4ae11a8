"""`bookmaker proof --second-opinion`: agreement is said, disagreement ends with 1 and names the puzzle."""

from __future__ import annotations

from pathlib import Path

import pytest

import bookmaker.proof.second_opinion as second
from bookmaker.solve.verdict import NoSolution
from tests.cli.running import run


@pytest.mark.parametrize("workers", [1, 2])
def test_the_provers_agree(folder: Path, workers: int) -> None:
    result = run("proof", folder, "--second-opinion", "--workers", workers)
    assert result.exit_code == 0, result.output
    assert "second opinion: the same on one puzzle" in result.stderr


def test_a_disagreement_is_an_error(folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(second, "second_opinion", lambda puzzle: NoSolution())
    result = run("proof", folder, "--second-opinion")
    assert result.exit_code == 1
    assert "“Worked”: the provers disagree" in result.stderr


def test_where_it_is_not_installed(folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(second, "auditor", lambda: "")
    result = run("proof", folder, "--second-opinion")
    assert result.exit_code == 1
    assert "pip install 'bookmaker[audit]'" in result.stderr
    assert result.stdout == ""
