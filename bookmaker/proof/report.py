"""Proofs as a report: the JSON that other programs read.

In: a manifest and its proofs, in the order to show them. Out: plain lists and dictionaries.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any, assert_never

from bookmaker.grade.model import Step
from bookmaker.manifest.model import Manifest
from bookmaker.proof.model import Proof
from bookmaker.puzzle.grid import Grid
from bookmaker.puzzle.puzzle import digits_text
from bookmaker.solve.verdict import NoSolution, Several, Undecided, Unique, Verdict


def verdict_word(verdict: Verdict) -> str:
    """unique, none, several or undecided."""
    match verdict:
        case Unique():
            return "unique"
        case NoSolution():
            return "none"
        case Several():
            return "several"
        case Undecided():
            return "undecided"
        case _ as never:
            assert_never(never)


def report(manifest: Manifest, proofs: tuple[Proof, ...]) -> dict[str, Any]:
    """The whole report, ready for JSON. Effort is rounded to 0.001; seconds are wall time and differ between runs."""
    return {"book": manifest.title, "puzzles": [puzzle_report(manifest.band_names, proof) for proof in proofs]}


def puzzle_report(band_names: Sequence[str], proof: Proof) -> dict[str, Any]:
    """One puzzle's part of the report."""
    entry, graded = proof.entry, proof.grade
    first, second = _solutions(proof.verdict)
    return {
        "id": entry.id,
        "title": entry.title,
        "setter": entry.setter,
        "size": entry.puzzle.grid.size,
        "grid": entry.puzzle.grid.called,
        "givens": entry.puzzle.givens_text,
        "rules": [rule.kind for rule in entry.puzzle.rules],
        "verdict": verdict_word(proof.verdict),
        "prover": None if isinstance(proof.verdict, Undecided) else str(proof.verdict.prover),
        "solution": first,
        "other_solution": second,
        "solutions_counted": proof.tally.solutions if proof.tally else None,
        "count_complete": proof.tally.complete if proof.tally else None,
        "band": graded.band if graded else None,
        "band_name": band_names[graded.band - 1] if graded else None,
        "effort": round(graded.effort, 3) if graded else None,
        "hardest": graded.path.hardest.technique if graded and graded.path.hardest else None,
        "singles_only": graded.singles_only if graded else None,
        "reached_by_logic": graded.path.reached if graded else None,
        "steps": [_step(entry.puzzle.grid, step) for step in graded.path.steps] if graded else None,
        "seconds": round(proof.seconds, 4),
    }


def _solutions(verdict: Verdict) -> tuple[str | None, str | None]:
    match verdict:
        case Unique(solution):
            return digits_text(solution), None
        case Several(first, second):
            return digits_text(first), digits_text(second)
        case Undecided(_, found):
            return (digits_text(found) if found else None), None
        case NoSolution():
            return None, None
        case _ as never:
            assert_never(never)


def _step(grid: Grid, step: Step) -> dict[str, Any]:
    return {
        "technique": step.technique,
        "rung": step.rung,
        "cells": [grid.name(cell) for cell in step.cells],
        "placed": [[grid.name(cell), digit] for cell, digit in step.placed],
        "removed": [[grid.name(cell), digit] for cell, digit in step.removed],
        "because": step.because,
        "effort": round(step.effort, 3),
    }
