"""The rules of a puzzle, from the field `rules`: a line for each kind, and where grids overlap, “in A:” for one grid.

In: the field and the grid. Out: the rules in their order, each with the letter of the grid it stands in; or diagnostics
at what is not right. One rule typed for the whole of a grid stands in each of several that overlap.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

from bookmaker.manifest.overlapfields import check_clues_free
from bookmaker.puzzle.grid import Grid
from bookmaker.rules import kinds
from bookmaker.rules.common.contract import Rule
from bookmaker.rules.common.parts import Form
from bookmaker.rules.common.words.wording import listed
from bookmaker.source.diagnostics import Collector, Place, nearest, quoted
from bookmaker.source.placed import Node, Table, Word

IN = "in "
"""Begins the name of the rules of one grid: “in A”."""

ANYWHERE = ""
"""The letter of a rule that does not stand in one grid only."""


def read_rules(node: Node, grid: Grid, collector: Collector) -> tuple[Rule, ...]:
    """The rules; faulty ones are reported and left out."""
    if isinstance(node, Word) and not node.value:
        return ()
    if not isinstance(node, Table):
        hint = "a line for each kind, such as “diagonals: both”; “bookmaker rules” lists the kinds"
        collector.error(node.place, "not-a-table", "“rules” should be lines of “kind: what is marked”", hint)
        return ()
    return tuple(rule for each in _listed(node, grid, collector) for rule in _read(each, grid, collector))


def rule_places(node: Node | None, grid: Grid) -> tuple[Place, ...]:
    """Where each of the rules read is typed, in the same order; for a field without mistakes."""
    found = _listed(node, grid, Collector()) if isinstance(node, Table) else ()
    return tuple(each.word.place for each in found for _ in each.squares)


@dataclass(frozen=True, slots=True)
class _Listed:
    """A rule's kind and body as typed, the letter of the grid in which they are read, and those in which it stands."""

    word: Word
    body: Node
    within: str
    squares: tuple[str, ...]


def _listed(node: Table, grid: Grid, collector: Collector) -> Iterator[_Listed]:
    for word, body in node.entries:
        kind = kinds().get(word.value)
        if word.value.startswith(IN):
            yield from _of_one_grid(word, body, grid, collector)
        elif kind and kind.form is Form.WHOLE:
            yield _Listed(word, body, grid.square_letters[0], grid.square_letters)
        else:
            yield _Listed(word, body, ANYWHERE, (ANYWHERE,))


def _of_one_grid(word: Word, body: Node, grid: Grid, collector: Collector) -> Iterator[_Listed]:
    """The rules under “in A”. A kind that does not speak of the lines of a grid is only read in it."""
    letter = word.value.removeprefix(IN).strip().upper()
    if not grid.overlaps:
        said = f"{quoted(word.value)} is for one of several grids that overlap, and this puzzle has one"
        collector.error(word.place, "unknown-grid", said, "leave out the line, and indent its rules less")
    elif letter not in grid.square_letters:
        hint = f"its grids are {listed(grid.square_letters)}"
        collector.error(word.place, "unknown-grid", f"the puzzle has no grid {quoted(letter)}", hint)
    elif not isinstance(body, Table):
        said = f"“{word.value}” should have lines of “kind: what is marked” below it"
        collector.error(body.place, "not-a-table", said, "such as “diagonals: both”, indented")
    else:
        for inner, inside in body.entries:
            kind = kinds().get(inner.value)
            yield _Listed(inner, inside, letter, (letter if kind and kind.in_one_square() else ANYWHERE,))


def _read(typed: _Listed, grid: Grid, collector: Collector) -> Iterator[Rule]:
    """The rule for each grid in which it stands."""
    word, kind = typed.word, kinds().get(typed.word.value)
    if kind is None:
        said = f"there is no rule kind {quoted(word.value)}"
        collector.error(word.place, "unknown-rule", said, nearest(word.value, kinds()))
    elif not stands_on(kind, grid, word.place, collector):
        return
    elif grid.overlaps and kind.in_one_square() and typed.within == ANYWHERE:
        said = f"“{word.value}” stands in one grid, and this puzzle has {len(grid.squares)}"
        collector.error(word.place, "which-grid", said, f"put it under “{IN}A:”, or the letter of another grid")
    elif rule := kind.read(typed.body, grid.square(typed.within), collector):
        check_signs(rule, grid, word.place, collector)
        for square in typed.squares:
            if square and kind.form is Form.EDGE:
                check_clues_free(rule, grid, square, word.place, collector)
            yield replace(rule, square=square)


def stands_on(kind: type[Rule], grid: Grid, place: Place, collector: Collector) -> bool:
    """Does a kind go with the shape of the grid? A diagnostic where it does not."""
    if kind.stands_on(grid):
        return True
    if kind.needs_regions and not grid.regions:
        said = f"“{kind.kind}” needs boxes or other regions, and this grid has none"
        collector.error(place, "no-regions", said, "leave out the rule, or say “boxes:” or “regions:”")
        return False
    said = f"“{kind.kind}” does not go with a grid that has holes"
    collector.error(place, "holes-rule", said, "leave out the rule, or the holes")
    return False


def check_signs(rule: Rule, grid: Grid, place: Place, collector: Collector) -> None:
    """A diagnostic where a rule does not go with what stands for the digits of its grid."""
    if not rule.suits(grid):
        what = "letters, which are only told apart" if grid.lettered else "digits from 0"
        hint = f"leave out “{'letters' if grid.lettered else 'digits'}:”, or the rule"
        collector.error(place, "other-signs", f"“{rule.kind}” does not go with {what}", hint)
