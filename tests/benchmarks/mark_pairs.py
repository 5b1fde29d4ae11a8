"""The table of all pairs of kinds: stacked on each other, set in the layouts, printed, and both found.

    python tests/benchmarks/mark_pairs.py [LAYOUT…]

Every pair (a kind with itself too, and lines with one that runs along them the other way round) becomes a puzzle, its
cells as large as the layout makes them beside its key. Wanted: the composer finds no mark out of sight, each mark is
found in the pixels of the printed grid, and preflight reads every mark of every grid back from the file.
"""

from __future__ import annotations

import sys
from contextlib import suppress
from pathlib import Path
from time import perf_counter

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))

from bookmaker.book.contents import BookPuzzle
from bookmaker.book.rulestext import rules_text
from bookmaker.display.items import Document, Group, Page
from bookmaker.ink.pdf import pdf_bytes
from bookmaker.language import catalogue
from bookmaker.layout import load_layout
from bookmaker.layout.art.gridart import draw_grid
from bookmaker.layout.pages.filling import Slot
from bookmaker.layout.pages.puzzles import place_puzzles
from bookmaker.manifest.entries import Entry
from bookmaker.preflight import inspect
from bookmaker.proof.findings import Proof
from bookmaker.puzzle.grid import CLASSIC
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules.common.contract import Rule
from bookmaker.solve.verdict import Undecided
from bookmaker.source.diagnostics import BookErrors, Place
from tests.layout.sightings import Stack, unseen
from tests.rules.stacks import stacks

LAYOUTS = "a4-book", "a4-book-six", "a4-large-print", "a4-handout"

AT_ONCE = 60
"""Stacks drawn at a time."""

HERE = Place("pairs")


def puzzle_of(number: int, name: str, rules: tuple[Rule, ...]) -> BookPuzzle:
    puzzle = Puzzle(CLASSIC, (0,) * len(CLASSIC.cells), rules)
    return BookPuzzle(number, f"{number}", puzzle, HERE, name, rules_text(catalogue("en"), puzzle), None, None)


def printed(slots: list[Slot], weight: float) -> bytes:
    """The grids, a page each."""
    pages = []
    for slot in slots:
        block = slot.block
        grid = draw_grid(block.puzzle.puzzle, block.cell, f"grid {block.puzzle.id}", weight=weight)
        side = (CLASSIC.size + 6) * block.cell
        pages.append(Page(side, side, (Group((grid,), 3 * block.cell, 3 * block.cell),), ""))
    return pdf_bytes(Document("pairs", "", "", tuple(pages)))


def table(name: str) -> bool:
    """Print what is lost in a layout; is nothing?"""
    began = perf_counter()
    layout, all_stacks = load_layout(name), [*stacks()]
    puzzles = [puzzle_of(at, f"{one} + {other}", rules) for at, (one, other, rules) in enumerate(all_stacks, start=1)]
    slots: list[Slot] = []
    for puzzle in puzzles:
        with suppress(BookErrors):  # where the marks leave too little room for their figures, the layout says so
            slots += (slot for (slot,) in place_puzzles([puzzle], layout, layout.depth, spread=True))
    lost: dict[str, list[str]] = {}
    for slot in slots:
        try:
            tuple(slot.block.draw(True, {}))
        except BookErrors as errors:
            lost.setdefault(slot.block.puzzle.title, []).extend(one.text for one in errors.diagnostics)
    weight = layout.puzzles.weight
    for at in range(0, len(slots), AT_ONCE):
        here = slots[at : at + AT_ONCE]
        found = unseen([Stack(slot.block.puzzle.puzzle.rules, slot.block.cell, weight) for slot in here])
        for slot, names in zip(here, found, strict=True):
            if names:
                lost.setdefault(slot.block.puzzle.title, []).extend(names)
    printable = [slot.block.puzzle for slot in slots]
    proofs = [Proof(Entry(p.id, p.puzzle, HERE), Undecided(0), None) for p in printable]
    report = inspect(printed(slots, weight), "pairs.pdf", proofs, folded=False)
    differing = [one.text for one in report.diagnostics if one.code.startswith(("mark", "lines"))]
    cells = [slot.block.cell / 72 * 25.4 for slot in slots]
    pairs = len({(one, other) for one, other, _ in all_stacks})
    print(
        f"{name}: {len(slots)} stacks of {pairs} pairs, {len(puzzles) - len(slots)} more refused, "
        f"cells of {min(cells):.1f} to {max(cells):.1f} mm, "
        f"{len(slots) - len(lost)} with all marks found; preflight read {sum(report.marks.values())} marks, "
        f"{len(differing)} not as drawn ({perf_counter() - began:.0f} s)"
    )
    for title, names in lost.items():
        print(f"    {title}: {', '.join(names)}")
    for text in differing:
        print(f"    {text}")
    return not lost and not differing


if __name__ == "__main__":
    passed = [table(name) for name in sys.argv[1:] or LAYOUTS]
    sys.exit(0 if all(passed) else 1)
