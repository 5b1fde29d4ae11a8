"""The second opinion: one definition a kind, written without the engine, and what comes of it when the two differ."""

from __future__ import annotations

import ast
from collections.abc import Iterator
from pathlib import Path

import pytest

import bookmaker.crosscheck as room
import bookmaker.proof
import bookmaker.proof.second_opinion as second
from bookmaker.crosscheck import auditor, definition_of, second_opinion
from bookmaker.manifest.entries import Entry
from bookmaker.proof import Proof, find_out
from bookmaker.proof.cache import key_of
from bookmaker.puzzle.grid import CLASSIC
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import kinds
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.rules.thermometer import Thermometer
from bookmaker.solve.verdict import NoSolution, Prover, Several, Undecided, Unique, Verdict
from bookmaker.source.diagnostics import BookErrors, Place
from tests.digits import digits_from
from tests.published import PULP_SOLVED, WORKED

GIVENS, SOLUTION = WORKED, digits_from(PULP_SOLVED)

ROOM = Path(room.__file__).parent
FILES = sorted(ROOM.glob("*.py"))


def _puzzle(givens: str, *rules: Thermometer) -> RuledPuzzle:
    return Puzzle(CLASSIC, digits_from(givens), rules)


def _proof(verdict: Verdict) -> Proof:
    return Proof(Entry("worked", _puzzle(GIVENS), Place("book.yaml", 3, 5), title="Worked"), verdict, None)


def test_every_kind_has_a_definition_and_every_definition_a_kind() -> None:
    assert all(callable(definition_of(kind)) for kind in kinds().values())
    of_kinds = {kind.__module__.rpartition(".")[2] for kind in kinds().values()}
    assert {file.stem for file in FILES} == {*of_kinds, "common", "__init__"}


def _names(file: Path) -> Iterator[tuple[str, str]]:
    """What a file imports, each as (module, name), and the attributes it takes of anything, as (“.”, name)."""
    for node in ast.walk(ast.parse(file.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Import):
            yield from ((alias.name, "") for alias in node.names)
        elif isinstance(node, ast.ImportFrom):
            yield from ((node.module or "", alias.name) for alias in node.names)
        elif isinstance(node, ast.Attribute):
            yield ".", node.attr


@pytest.mark.parametrize("file", FILES, ids=lambda file: file.stem)
def test_a_definition_shares_nothing_with_what_it_checks(file: Path) -> None:
    """No constraints, no plain predicate, no houses of a rule, no tool of the rules: only the values of a rule."""
    for module, name in _names(file):
        assert (module, name) != (".", "constraints")
        assert (module, name) not in ((".", "holds"), (".", "houses"), (".", "deductions"))
        if module.startswith("bookmaker.solve"):
            assert module == "bookmaker.solve.verdict"
        if module.startswith("bookmaker.rules"):
            assert module == f"bookmaker.rules.{file.stem}" or name in ("Rule", "RuledPuzzle"), (module, name)
            assert name[0].isupper()
            assert not name.isupper()


def test_it_needs_no_engine(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(Thermometer, "constraints", lambda *_: pytest.fail("the engine's words were used"))
    rising = Thermometer(((3, 4, 5),))  # r1c4-r1c6 hold 6 7 8
    falling = Thermometer(((5, 4, 3),))
    assert second_opinion(_puzzle(GIVENS, rising)) == Unique(SOLUTION, prover=Prover.AUDIT)
    assert second_opinion(_puzzle(GIVENS, falling)) == NoSolution(prover=Prover.AUDIT)


def test_it_shows_two_solutions() -> None:
    opinion = second_opinion(_puzzle("." * 81))
    assert isinstance(opinion, Several)
    assert opinion.differing


def test_it_gives_up_when_its_patience_is_out() -> None:
    assert second_opinion(_puzzle("." * 81), patience=0.0) is None


@pytest.mark.parametrize("verdict", [Unique(SOLUTION), Undecided(7)])
def test_agreement_is_silent(verdict: Verdict) -> None:
    assert list(second.doubts([_proof(verdict)])) == []


@pytest.mark.parametrize("verdict", [NoSolution(), Several(SOLUTION, SOLUTION[::-1]), Unique(SOLUTION[::-1])])
def test_disagreement_names_the_puzzle(verdict: Verdict) -> None:
    (diagnostic,) = second.doubts([_proof(verdict)])
    assert diagnostic.code == "provers-disagree"
    assert not diagnostic.warning
    assert diagnostic.place == Place("book.yaml", 3, 5)
    assert "“Worked”" in diagnostic.text
    assert "5346789126721" in diagnostic.text


def test_giving_up_is_a_warning(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(second, "second_opinion", lambda puzzle: None)
    (diagnostic,) = second.doubts([_proof(Unique(SOLUTION))])
    assert diagnostic.warning
    assert "“Worked”" in diagnostic.text


def test_it_takes_no_part_in_a_proof(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(bookmaker.proof, "prove", lambda problem: Undecided(200_000))
    monkeypatch.setattr(room, "second_opinion", lambda puzzle: pytest.fail("the second prover was asked"))
    assert find_out(_puzzle(GIVENS)).verdict == Undecided(200_000)


def test_a_proof_is_the_same_whether_or_not_it_is_installed(monkeypatch: pytest.MonkeyPatch) -> None:
    with_it = key_of(_puzzle(GIVENS), 0)
    monkeypatch.setattr(room, "auditor", lambda: "")
    assert key_of(_puzzle(GIVENS), 0) == with_it


def test_the_way_to_install_it_is_said(monkeypatch: pytest.MonkeyPatch) -> None:
    assert auditor().startswith("ortools ")
    second.demand_auditor()
    monkeypatch.setattr(second, "auditor", lambda: "")
    with pytest.raises(BookErrors) as raised:
        second.demand_auditor()
    (diagnostic,) = raised.value.diagnostics
    assert "bookmaker[audit]" in diagnostic.hint
