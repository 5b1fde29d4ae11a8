"""What an editor wants to know of each puzzle, in words and as data for the report.

In: a proof. Out: sentences, and plain dictionaries for JSON. They are worked out in `review/notes.py` (a puzzle with
one solution) and `review/repair.py` (one with several); this asks the one that fits.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from bookmaker.phrases import Phrasebook
from bookmaker.proof.findings import Proof
from bookmaker.review.notes import Notes, notes_of, repair_sentences, sentences
from bookmaker.review.repair import Repair, repair
from bookmaker.solve.verdict import Several, Unique


@dataclass(frozen=True, slots=True)
class EditorNotes:
    """`found` is None where there is nothing to work on: no solution, or an undecided search."""

    sentences: tuple[str, ...]
    found: Notes | Repair | None


def editor_notes(proof: Proof) -> EditorNotes:
    """Notes on one puzzle; takes a few proofs' time, since each given and mark is tried without."""
    puzzle = proof.entry.puzzle
    if isinstance(proof.verdict, Unique) and proof.grade is not None:
        notes = notes_of(puzzle, proof.verdict.solution, proof.grade.path)
        return EditorNotes(tuple(sentences(notes, puzzle.grid)), notes)
    if isinstance(proof.verdict, Several):
        mended = repair(puzzle, (proof.verdict.first, proof.verdict.second))
        return EditorNotes(tuple(repair_sentences(mended, puzzle.grid)), mended)
    return EditorNotes((), None)


def notes_report(proof: Proof, notes: EditorNotes) -> dict[str, Any]:
    """The notes for the JSON report."""
    words = Phrasebook(proof.entry.puzzle.grid)
    name = words.cell
    data: dict[str, Any] = {"sentences": list(notes.sentences)}
    match notes.found:
        case Notes() as found:
            data |= {
                "fixed_shapes": [{"kind": s.noun, "cells": [name(c) for c in s.cells]} for s in found.fixed],
                "classic_once_filled": found.classic_once_filled,
                "needless_givens": [name(cell) for cell in found.needless_givens],
                "needless_marks": [
                    {"kind": s.noun, "cells": [name(c) for c in s.cells]} for s in found.needless_shapes
                ],
                "needless_rules": list(found.needless_rules),
                "unused_rules": list(found.unused),
                "mirrors": [
                    {"map": words.say(f"turn-{mirror.name}"), "digits": list(mirror.digits[1:])}
                    for mirror in found.mirrors
                ],
                "bottlenecks": [
                    {"step": p.first + 1, "openings": p.openings, "filled": p.filled, "kind": words.technique(p.reason)}
                    for p in found.narrow
                ],
            }
        case Repair() as found:
            data |= {
                "differing_cells": [name(cell) for cell in found.differing],
                "solutions": found.solutions,
                "all_seen": found.complete,
                "settled_by": [[[name(cell), digit] for cell, digit in givens] for givens in found.settling],
            }
    return data
