"""Proofs as a table on the screen, and a remark on a puzzle that needs mending."""

from __future__ import annotations

import unicodedata

from bookmaker.audit import HOW_TO_INSTALL, auditor
from bookmaker.grade.contradiction import contradiction, contradiction_words
from bookmaker.manifest.model import Manifest
from bookmaker.phrases import Phrasebook
from bookmaker.proof import Proof
from bookmaker.proof.report import verdict_word
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.solve.verdict import NoSolution, Several, Undecided

HEADINGS = ("no.", "title", "setter", "rules", "verdict", "band", "effort", "hardest step")
_TO_THE_RIGHT = (0, 6)


def proof_table(manifest: Manifest, proofs: tuple[Proof, ...]) -> str:
    """A line a puzzle under a line of headings, in columns."""
    rows = [HEADINGS, *(_row(manifest, number, proof) for number, proof in enumerate(proofs, start=1))]
    widths = [max(_width(row[i]) for row in rows) for i in range(len(HEADINGS))]
    return "\n".join(_line(row, widths) for row in rows)


def remark(proof: Proof) -> str:
    """What is wrong with a puzzle that is not proven unique; empty for one that is."""
    entry, grid = proof.entry, proof.entry.puzzle.grid
    name = f"“{entry.title or entry.id}”"
    match proof.verdict:
        case NoSolution():
            return f"{name} has no solution: {contradiction_words(contradiction(entry.puzzle), entry.puzzle)}"
        case Several() as several:
            return f"{name} has {_how_many(proof)}; two of them differ in {_cells(grid, several.differing)}"
        case Undecided(budget, _):
            more = "and so did the second prover" if auditor() else f"a second prover may settle it: {HOW_TO_INSTALL}"
            return f"{name} is undecided: the search ended after {budget:,} nodes without an answer; {more}"
        case _:
            return ""


def _how_many(proof: Proof) -> str:
    if proof.tally is None:
        return "more than one solution"
    return f"{'' if proof.tally.complete else 'at least '}{proof.tally.solutions:,} solutions"


def _cells(grid: Grid, cells: tuple[int, ...], most: int = 6) -> str:
    named = ", ".join(grid.name(cell) for cell in cells[:most])
    return named if len(cells) <= most else f"{named} and {len(cells) - most} more cells"


def _row(manifest: Manifest, number: int, proof: Proof) -> tuple[str, ...]:
    entry, graded = proof.entry, proof.grade
    verdict = verdict_word(proof.verdict)
    if proof.tally and proof.tally.solutions != 1:
        verdict += f" ({'' if proof.tally.complete else '≥ '}{proof.tally.solutions:,})"
    return (
        str(number),
        entry.title or entry.id,
        entry.setter or "–",
        _kinds(entry.puzzle),
        verdict,
        manifest.band_names[graded.band - 1] if graded else "–",
        f"{graded.effort:.0f}" if graded else "–",
        _hardest(proof),
    )


def _kinds(puzzle: RuledPuzzle) -> str:
    """What the puzzle is: its grid, unless that is the usual one and rules say more, and its rules."""
    kinds = [rule.kind for rule in puzzle.rules]
    return ", ".join(kinds if puzzle.grid.box and kinds else [puzzle.grid.called, *kinds])


def _hardest(proof: Proof) -> str:
    if proof.grade is None or proof.hardest is None:
        return "–"
    name = Phrasebook(proof.entry.puzzle.grid).technique(proof.hardest)
    return name + ("" if proof.grade.path.reached else " (not reached by logic)")


def _width(text: str) -> int:
    return sum(2 if unicodedata.east_asian_width(c) in "WF" else not unicodedata.combining(c) for c in text)


def _line(row: tuple[str, ...], widths: list[int]) -> str:
    padded = []
    for index, (text, width) in enumerate(zip(row, widths, strict=True)):
        space = " " * (width - _width(text))
        padded.append(space + text if index in _TO_THE_RIGHT else text + space)
    return "  ".join(padded).rstrip()
