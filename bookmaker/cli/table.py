"""Proofs as a table on the screen."""

from __future__ import annotations

import unicodedata
from collections.abc import Collection, Mapping, Sequence

from bookmaker.grade.bands import figure
from bookmaker.manifest.entries import Manifest
from bookmaker.phrases import Phrasebook
from bookmaker.proof import Proof
from bookmaker.proof.report import verdict_word
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.rules.common.words.wording import listed, number
from bookmaker.solve.learning import learner
from bookmaker.solve.verdict import Prover, Undecided

HEADINGS = ("no.", "title", "setter", "rules", "verdict", "band", "difficulty", "hardest step")
_TO_THE_RIGHT = (0, 6)

LEAST = {1: 14, 2: 10, 3: 12, 6: 5, 7: 14}
"""Columns that may be cut short (of the difficulty only its heading), and the least width that is left of them."""

LEFT_OUT = (2, 3, 7)
"""What is left out, in this order, where the rest finds no room: setter, rules, hardest step."""

GAP = "  "


def proof_table(manifest: Manifest, proofs: tuple[Proof, ...], columns: int | None = None) -> str:
    """A line a puzzle under a line of headings, no wider than so many `columns` of a terminal.

    Where there is too little room, long texts are cut short; where that does not do, what can be missed best is left
    out.
    """
    rows = [HEADINGS, *(_row(manifest, number, proof) for number, proof in enumerate(proofs, start=1))]
    widths = {at: max(_width(row[at]) for row in rows) for at in range(len(HEADINGS))}
    if columns:
        _narrow(widths, columns)
    return "\n".join(_line(row, widths, _TO_THE_RIGHT) for row in rows)


def in_columns(rows: Sequence[tuple[str, ...]], to_the_right: Collection[int] = ()) -> str:
    """Rows of text under each other in columns, some of them flush right."""
    widths = {at: max(map(_width, column)) for at, column in enumerate(zip(*rows, strict=True))}
    return "\n".join(_line(row, widths, to_the_right) for row in rows)


def _narrow(widths: dict[int, int], columns: int) -> None:
    """Make the widest texts narrower, or leave columns out, until all fit."""
    for out in (None, *LEFT_OUT):
        widths.pop(out, None) if out is not None else None
        over = sum(widths.values()) + len(GAP) * (len(widths) - 1) - columns
        spare = {at: widths[at] - least for at, least in LEAST.items() if widths.get(at, 0) > least}
        if over <= sum(spare.values()):
            break
    for _ in range(min(max(over, 0), sum(spare.values()))):
        widest = max((at for at in spare if widths[at] > LEAST[at]), key=lambda at: widths[at])
        widths[widest] -= 1


def decided_by_learning(proofs: tuple[Proof, ...]) -> str:
    """Which puzzles the search alone has not decided; empty if it has decided all."""
    names = [
        f"“{proof.entry.title or proof.entry.id}”"
        for proof in proofs
        if not isinstance(proof.verdict, Undecided) and proof.verdict.prover is Prover.LEARNING
    ]
    shown = listed(names if len(names) <= NAMED else [*names[:NAMED], f"{number(len(names) - NAMED)} more"])
    return f"too hard for the search, and decided by clause learning ({learner()}): {shown}" if names else ""


NAMED = 10
"""Puzzles that a line names; of the others it says how many."""


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
        figure(graded.difficulty) if graded else "–",
        _hardest(proof),
    )


def _kinds(puzzle: RuledPuzzle) -> str:
    """What the puzzle is: its grid, unless that is the usual one and rules say more, and its rules."""
    kinds = [*dict.fromkeys(rule.kind for rule in puzzle.rules)]
    return ", ".join(kinds if puzzle.grid.called == "classic" and kinds else [puzzle.grid.called, *kinds])


def _hardest(proof: Proof) -> str:
    if proof.grade is None or proof.hardest is None:
        return "–"
    name = Phrasebook(proof.entry.puzzle.grid).technique(proof.hardest)
    return name + ("" if proof.grade.path.reached else " (not reached by logic)")


def _width(text: str) -> int:
    return sum(2 if unicodedata.east_asian_width(c) in "WF" else not unicodedata.combining(c) for c in text)


def _line(row: tuple[str, ...], widths: Mapping[int, int], to_the_right: Collection[int]) -> str:
    padded = []
    for at, width in widths.items():
        text = _cut(row[at], width)
        space = " " * (width - _width(text))
        padded.append(space + text if at in to_the_right else text + space)
    return GAP.join(padded).rstrip()


def _cut(text: str, width: int) -> str:
    """The text, or as much of its beginning as fits with an ellipsis after it."""
    if _width(text) <= width:
        return text
    while _width(text) >= width:
        text = text[:-1]
    return text.rstrip(" ,") + "…"
