"""Proofs as a report: the JSON that other programs read.

In: a manifest and its proofs, in the order to show them. Out: plain lists and dictionaries.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any, assert_never

from bookmaker.grade.bands import figure
from bookmaker.grade.solve_path import Step
from bookmaker.manifest.entries import Manifest
from bookmaker.phrases import Phrasebook
from bookmaker.phrases.claims import reason_said
from bookmaker.proof.findings import Proof
from bookmaker.puzzle.grid import Grid
from bookmaker.puzzle.puzzle import digits_text
from bookmaker.reasons import Reason
from bookmaker.reasons.claims import name_of, spoken
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
    """The whole report, ready for JSON. Effort is rounded to 0.001, difficulty cut off there, so that its first digit
    is the band; seconds are wall time and differ between runs."""
    titles = [chapter.title for chapter in manifest.chapters]
    chapters = [titles[proof.entry.chapter] if titles else "" for proof in proofs]
    puzzles = zip(proofs, chapters, strict=True)
    return {
        "book": manifest.title,
        "puzzles": [puzzle_report(manifest.band_names, proof, chapter) for proof, chapter in puzzles],
    }


def puzzle_report(band_names: Sequence[str], proof: Proof, chapter: str = "") -> dict[str, Any]:
    """One puzzle's part of the report; `chapter` is the title of the one it stands in, if the book has chapters."""
    entry, graded = proof.entry, proof.grade
    first, second = _solutions(proof.verdict, entry.puzzle.grid.symbols)
    words = Phrasebook(entry.puzzle.grid)
    return {
        "id": entry.id,
        "title": entry.title,
        "setter": entry.setter,
        "chapter": chapter or None,
        "shown": str(entry.shown) if entry.shown else None,
        "permission": entry.permission or None,
        "size": entry.puzzle.grid.size,
        "grid": entry.puzzle.grid.called,
        "givens": entry.puzzle.givens_text,
        "rules": [*dict.fromkeys(rule.kind for rule in entry.puzzle.rules)],
        "verdict": verdict_word(proof.verdict),
        "prover": None if isinstance(proof.verdict, Undecided) else str(proof.verdict.prover),
        "solution": first,
        "other_solution": second,
        "solutions_counted": proof.tally.solutions if proof.tally else None,
        "count_complete": proof.tally.complete if proof.tally else None,
        "band": graded.band if graded else None,
        "band_name": band_names[graded.band - 1] if graded else None,
        "difficulty": float(figure(graded.difficulty, 3)) if graded else None,
        "effort": round(graded.effort, 3) if graded else None,
        "hardest": words.technique(proof.hardest) if proof.hardest else None,
        "singles_only": graded.singles_only if graded else None,
        "reached_by_logic": graded.path.reached if graded else None,
        "steps": [_step(words, step) for step in graded.path.steps] if graded else None,
        "seconds": round(proof.seconds, 4),
    }


def _solutions(verdict: Verdict, symbols: str) -> tuple[str | None, str | None]:
    match verdict:
        case Unique(solution):
            return digits_text(solution, symbols), None
        case Several(first, second):
            return digits_text(first, symbols), digits_text(second, symbols)
        case Undecided(_, found):
            return (digits_text(found, symbols) if found else None), None
        case NoSolution():
            return None, None
        case _ as never:
            assert_never(never)


def _step(words: Phrasebook, step: Step) -> dict[str, Any]:
    name = words.cell
    return {
        "technique": words.technique(step.reason),
        "rung": step.rung,
        "cells": [name(cell) for cell in step.cells],
        "placed": [[name(cell), digit] for cell, digit in step.placed],
        "removed": [[name(cell), digit] for cell, digit in step.removed],
        "reason": _reason(words.grid, step.reason),
        "sentence": reason_said(words, step.reason, step.removed),
        "effort": round(step.effort, 3),
    }


def _reason(grid: Grid, reason: Reason) -> dict[str, Any]:
    """Why a step holds, as data: the technique, the kind of rule and the mark if one allows it, the claim, and what the
    claim speaks of."""
    of, mark = spoken(reason.claim), reason.mark
    return {
        "technique": reason.technique,
        "kind": reason.kind or None,
        "mark": mark and {"cells": [grid.name(cell) for cell in mark.cells], "printed": mark.value or None},
        "claim": name_of(reason.claim),
        "cells": [grid.name(cell) for cell in of.cells],
        "digits": list(of.digits),
        "houses": [{"kind": house.kind, "number": house.number} for house in of.houses],
    }
