"""What an editor wants to know of a puzzle besides its grade.

In: a puzzle with its proven solution and path. Out: `Notes`, and `sentences` that say them plainly. For a puzzle with
several solutions see `repair.py`.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from bookmaker.grade.automorphism import Automorphism, automorphisms
from bookmaker.grade.bottlenecks import Bottleneck, bottlenecks_of
from bookmaker.grade.solve_path import SolvePath
from bookmaker.logic.forced import forced
from bookmaker.logic.singles import openings
from bookmaker.logic.state import ground_of, start
from bookmaker.logic.technique import ladder
from bookmaker.phrases import Phrasebook
from bookmaker.puzzle.grid import Grid
from bookmaker.reasons import Reason, Rung
from bookmaker.review.repair import Repair
from bookmaker.review.shapes import (
    Shape,
    classic_once_filled,
    needless_givens,
    needless_rules,
    needless_shapes,
    shapes_of,
    without_rule,
)
from bookmaker.rules.common.contract import Rule, RuledPuzzle
from bookmaker.rules.common.words.wording import cells_listed, counted, listed, symbol
from bookmaker.solve.verdict import Solution


@dataclass(frozen=True, slots=True)
class Notes:
    """`fixed` are shapes whose digits all follow from their rule and the houses alone.

    `classic_once_filled`: once what is fixed is filled in, no rule is needed any more. Givens, shapes and rules are
    needless one at a time: without any one of them the puzzle stays unique. `unused` are rules without which every step
    of the path can be made.
    """

    fixed: tuple[Shape, ...]
    classic_once_filled: bool
    needless_givens: tuple[int, ...]
    needless_shapes: tuple[Shape, ...]
    needless_rules: tuple[str, ...]
    mirrors: tuple[Automorphism, ...]
    unused: tuple[str, ...]
    narrow: tuple[Bottleneck, ...]


def notes_of(puzzle: RuledPuzzle, solution: Solution, path: SolvePath) -> Notes:
    """Notes on a puzzle with one solution."""
    filling: dict[int, int] = {}
    fixed: list[Shape] = []
    for rule in puzzle.rules:
        digits = forced(puzzle, rule)
        filling |= digits
        fixed += [shape for shape in shapes_of(rule, puzzle) if all(cell in digits for cell in shape.cells)]
    return Notes(
        fixed=tuple(fixed),
        classic_once_filled=classic_once_filled(puzzle, filling),
        needless_givens=needless_givens(puzzle),
        needless_shapes=needless_shapes(puzzle),
        needless_rules=tuple(rule.title for rule in needless_rules(puzzle)),
        mirrors=automorphisms(puzzle, solution),
        unused=tuple(rule.title for rule in puzzle.rules if not _used(puzzle, rule, path)),
        narrow=bottlenecks_of(path, len(puzzle.grid.cells)),
    )


def _used(puzzle: RuledPuzzle, rule: Rule, path: SolvePath) -> bool:
    """Is there a step that cannot be made without the rule?"""
    state = start(ground_of(without_rule(puzzle, rule)))
    techniques = [technique for rung in ladder() for technique in rung]
    for step in path.steps:
        if step.placed and step.rung <= Rung.NAKED:
            if not {(o.cell, o.digit) for o in openings(state)} >= set(step.placed):
                return True
        elif step.removed:
            standing = set(state.present(step.removed))
            same = (t for t in techniques if t.rung == step.rung)
            if standing and not any(
                standing <= set(finding.removed) and _alike(finding.reason(), step.reason)
                for technique in same
                for finding in technique.find(state)
            ):
                return True
        elif step.placed and step.reason.kind == rule.kind:  # filled in because its marks leave no freedom
            return True
        for cell, digit in step.placed:
            state.place(cell, digit)
        state.remove(step.removed)
    return False


def _alike(one: Reason, other: Reason) -> bool:
    """Are they of one technique, or of marks of one kind?"""
    return (one.technique, one.kind) == (other.technique, other.kind)


def sentences(notes: Notes, grid: Grid) -> Iterator[str]:
    """The notes in plain words, the weightiest first."""
    words = Phrasebook(grid)
    for noun, where in _by_noun(notes.fixed, grid):
        yield f"Marks that leave no freedom: {noun} {where}."
    if notes.classic_once_filled:
        yield "Becomes a classic once its forced marks are filled."
    for title in notes.needless_rules:
        yield f"Redundant rule (one solution is left without it): “{title}”."
    for title in notes.unused:
        if title not in notes.needless_rules:
            yield f"Never used in the path: “{title}”."
    if notes.needless_givens:
        yield f"Redundant givens (any one may go): {cells_listed(grid, notes.needless_givens)}."
    for noun, where in _by_noun(notes.needless_shapes, grid):
        yield f"Redundant marks (any one may go): {noun} {where}."
    for mirror in notes.mirrors:
        relabelled = ", ".join(" and ".join(map(symbol, cycle)) for cycle in mirror.swapped)
        digits = f" with {relabelled} exchanged" if relabelled else ""
        yield f"The puzzle maps to itself by {words.say(f'turn-{mirror.name}')}{digits}: deductions come in pairs."
    for point in notes.narrow:
        yield narrow_sentence(words, point)


def narrow_sentence(words: Phrasebook, point: Bottleneck) -> str:
    """Where a solver gets stuck, and on what."""
    if point.lone_naked_single:
        return words.sentence("note-lone-naked-single", filled=str(point.filled))
    technique = words.technique(point.reason)
    return words.sentence("note-narrow", filled=str(point.filled), n=point.openings, technique=technique)


def repair_sentences(found: Repair, grid: Grid) -> Iterator[str]:
    """What would settle a puzzle with several solutions, in plain words."""
    where = f"{len(found.differing)} cells: {cells_listed(grid, found.differing)}"
    if found.complete:
        yield f"There are {found.solutions:,} solutions; they differ in {where}."
    else:
        yield f"There are at least {found.solutions:,} solutions; those looked at differ in {where}."
    if found.settling:
        said = " and ".join(f"{grid.symbol(digit)} in {grid.name(cell)}" for cell, digit in found.settling[0])
        more = len(found.settling) - 1
        others = f" (so would {counted(more, 'other choice')})" if more else ""
        yield f"With {said} given, one solution would be left{others}."
    elif found.complete:
        yield "No one or two further givens would leave a single solution."


def _by_noun(shapes: Iterable[Shape], grid: Grid) -> Iterator[tuple[str, str]]:
    """Each noun once, with where its shapes stand: “cage”, “r1c2–r2c2 and r4c2–r5c2”."""
    places: dict[str, list[str]] = {}
    for shape in shapes:
        places.setdefault(shape.noun, []).append(_ends(shape, grid))
    return ((noun, listed(where)) for noun, where in places.items())


def _ends(shape: Shape, grid: Grid) -> str:
    """“r1c2–r2c2” for a shape that hangs together; “r1c2 with r5c4” for two cells far apart."""
    first, last = grid.name(shape.cells[0]), grid.name(shape.cells[-1])
    if len(shape.cells) == 1:
        return first
    far_apart = len(shape.cells) == 2 and not grid.touching(*shape.cells)
    return f"{first} with {last}" if far_apart else f"{first}–{last}"
