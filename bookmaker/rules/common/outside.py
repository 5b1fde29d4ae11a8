"""Kinds whose clues stand outside the grid: reading the clues side by side, and what such kinds have in common.

In: a table of sides, each a row of clues with dots for none, as in

    left: . 12 . . 0 . . 35 .
    top:  . . 7 . . . . . .

read from top to bottom and from left to right. Out: `Clue` values with their places, or diagnostics at the exact clue.
"""

from __future__ import annotations

from abc import abstractmethod
from collections.abc import Callable, Collection, Iterator, Sequence
from dataclasses import dataclass, replace
from functools import cache, partial
from random import Random
from typing import ClassVar, Self, TypeAlias, cast

from bookmaker.language import Argument, Catalogue
from bookmaker.puzzle.grid import Grid
from bookmaker.puzzle.position import Position
from bookmaker.reasons import MarkRef
from bookmaker.rules.common.clue import SIDES, Clue, Placed, Side, clue_along, lines_seen
from bookmaker.rules.common.contract import Deduction, Rule
from bookmaker.rules.common.deducing.enumeration import tried_out
from bookmaker.rules.common.deducing.sums import digit_sets
from bookmaker.rules.common.drawing.clueplaces import lane
from bookmaker.rules.common.drawing.frame import Margins
from bookmaker.rules.common.parts import Figures, Form, Part, Written
from bookmaker.rules.common.reading import parts_of
from bookmaker.rules.common.words.wording import counted, signs_of
from bookmaker.source.diagnostics import Collector, Place, quoted
from bookmaker.source.placed import Node, Word, read_fields

ReadValue: TypeAlias = Callable[[str, Place], Collection[int]]
"""From the text of one clue to its values (one, but for kinds that take several digits); none after a diagnostic."""


def read_clues(
    body: Node, what: str, grid: Grid, collector: Collector, read_value: ReadValue, options: tuple[str, ...] = ()
) -> Placed | None:
    """All clues of a table of sides; None after any diagnostic. `options` may stand beside the sides."""
    already = len(collector.found)
    placed: dict[Clue, Place] = {}
    for side, node in read_fields(body, what, collector, (*SIDES, *options)).items():
        if side in options:
            continue
        if not isinstance(node, Word):
            collector.error(
                node.place, "not-a-row-of-clues", f"the clues at the {side} should stand in one row", _ROW_HINT
            )
            continue
        found = parts_of(node)
        if len(found) != grid.size:
            lines = counted(grid.size, "row" if side in ("left", "right") else "column")
            typed = counted(len(found), "clue or dot stands", "clues and dots stand")
            said = f"the grid has {lines}, and {typed} at the {side}"
            collector.error(node.place, "clue-count", said, _ROW_HINT)
            continue
        for line, part in enumerate(found):
            if part.value != ".":
                values = read_value(part.value, part.place)
                placed.update((Clue(cast(Side, side), line, value), part.place) for value in values)
    if len(collector.found) == already and not placed:
        collector.error(body.place, "no-clues", f"{what} has no clue at any side", "remove it, or give it a clue")
    return placed if len(collector.found) == already else None


@dataclass(frozen=True)
class OutsideRule(Rule):
    """A kind whose clues stand outside the grid and look along rows and columns, each with a value."""

    typed = ("left: text, right: text, top: text, bottom: text",)
    room: ClassVar[tuple[float, float]]
    """Size of a clue's place in cells: its width at the left and right, its height at the top and bottom."""

    form = Form.EDGE
    directed = True
    figures: ClassVar[Figures] = "number"

    clues: tuple[Clue, ...]

    @classmethod
    def read(cls, body: Node, grid: Grid, collector: Collector) -> Self | None:
        already = len(collector.found)
        placed = read_clues(body, cls.kind, grid, collector, partial(cls.read_clue, grid=grid, collector=collector))
        if placed is not None:
            cls.compare(placed, grid, collector)
        return cls(tuple(placed)) if placed is not None and len(collector.found) == already else None

    @classmethod
    @abstractmethod
    def read_clue(cls, text: str, place: Place, grid: Grid, collector: Collector) -> Collection[int]:
        """The values of one clue (one, but for kinds that take several digits); none after a diagnostic."""

    @classmethod
    def compare(cls, placed: Placed, grid: Grid, collector: Collector) -> None:
        """Report clues that cannot be true together, where a kind can tell."""
        return

    @classmethod
    @abstractmethod
    def values_on(cls, line: Sequence[int], grid: Grid) -> Collection[int]:
        """The clues that are true of a filled line, read from the clue on: one, unless a kind lets one choose."""

    @classmethod
    def blank(cls, grid: Grid) -> Self:
        return cls(())

    def parts(self, grid: Grid) -> tuple[Part, ...]:
        return tuple(Part(clue.cells(grid), "", (clue.value,)) for clue in self.clues)

    def with_parts(self, parts: Sequence[Part], grid: Grid) -> Self:
        return replace(self, clues=tuple(clue_along(part.cells, sum(part.value), grid) for part in parts))

    def written(self, grid: Grid) -> Written:
        rows: dict[str, list[str]] = {side: [""] * grid.size for side in SIDES}
        for clue in self.clues:
            rows[clue.side][clue.line] += self.clue_typed(clue.value, grid)
        return {side: " ".join(text or "." for text in row) for side, row in rows.items() if any(row)}

    def places(self, grid: Grid) -> tuple[tuple[int, ...], ...]:
        return tuple(Clue(cast(Side, side), line, 0).cells(grid) for side in SIDES for line in range(grid.size))

    def read_off(self, cells: Sequence[int], grid: Grid, digits: Sequence[int], rng: Random) -> Iterator[Part]:
        values = self.values_on([digits[cell] for cell in cells], grid)
        return (Part(tuple(cells), "", (value,)) for value in values)

    def clue_typed(self, value: int, grid: Grid) -> str:
        """A clue as it is typed."""
        return grid.symbol(value) if self.figures == "digits" else str(value)

    def arguments(self, words: Catalogue) -> dict[str, Argument]:
        return {"n": len(self.clues), "line": lines_seen(self.clues)}

    def clue_said(self, words: Catalogue, value: int, grid: Grid) -> str:
        """A clue as it is printed."""
        return str(value)

    def side_said(self, words: Catalogue, clue: Clue) -> str:
        """Where the clues at one side stand, and what else holds for all of them."""
        return words.say(f"spoken-side-{clue.side}")

    def spoken(self, words: Catalogue, grid: Grid) -> Iterator[str]:
        """The clues of a side together: “Sandwich sums on the left: row 2 has 12; row 5 has 0”."""
        for side in SIDES:
            ends: dict[int, list[Clue]] = {}
            for clue in sorted((clue for clue in self.clues if clue.side == side), key=lambda clue: clue.line):
                ends.setdefault(clue.line, []).append(clue)
            said = []
            for clues in ends.values():
                values = words.listed(self.clue_said(words, clue.value, grid) for clue in clues)
                name = f"spoken-{'row' if clues[0].along_row else 'column'}-has"
                said.append(words.say(name, number=str(clues[0].looks_along(grid).ref.number), values=values))
            if said:
                first = next(clue for clue in self.clues if clue.side == side)
                at = self.side_said(words, first)
                yield words.sentence(f"{self.kind}-spoken", n=len(said), side=at, clues="; ".join(said))

    def margins(self, grid: Grid) -> Margins:
        return lane(self.clues, *self.room)

    def references(self, grid: Grid) -> tuple[MarkRef, ...]:
        return tuple(clue.refer(self.kind, grid) for clue in self.clues)


_ROW_HINT = "one clue for each row or column, with a dot where there is none, such as “left: . 12 . . 0 . . 35 .”"


def number_clue(
    text: str,
    place: Place,
    what: str,
    collector: Collector,
    least: int,
    most: int,
    hint: str = "a dot stands for no clue",
) -> int | None:
    """One clue that is a number from `least` to `most`; `hint` helps where it is none."""
    if not (text.isascii() and text.isdigit()):
        collector.error(place, "not-a-number", f"{what} should be a whole number, not {quoted(text)}", hint)
        return None
    if not least <= int(text[:9]) <= most:
        collector.error(place, "out-of-range", f"{what} should be from {least} to {most}, not {text}")
        return None
    return int(text)


def digit_clue(text: str, place: Place, grid: Grid, collector: Collector) -> int | None:
    """One clue that is a digit of the grid."""
    if len(text) == 1 and text.upper() in grid.symbols:
        return grid.symbols.index(text.upper()) + 1
    collector.error(
        place,
        "not-a-digit",
        f"{quoted(text)} does not stand in this grid: {signs_of(grid)}",
    )
    return None


def clashing_first_digits(
    placed: Placed, grid: Grid, collector: Collector, noun: str, first_digit: Callable[[int], int | None]
) -> None:
    """A diagnostic for each clue that needs the same first digit as an earlier one at its side: both stand in one
    line."""
    earlier: dict[tuple[str, int], Clue] = {}
    for clue, place in placed.items():
        digit = first_digit(clue.value)
        if digit is None:
            continue
        other = earlier.setdefault((clue.side, digit), clue)
        if other is not clue:
            edge = Clue("top" if clue.along_row else "left", 0 if clue.side in ("left", "top") else grid.size - 1, 0)
            said = (
                f"the {noun}s {clue.value} {clue.where} and {other.value} {other.where} "
                f"would put {grid.symbol(digit)} into {edge.house} twice"
            )
            collector.error(place, "clues-contradict", said, "one of the two is likely a slip", also=(placed[other],))


@cache
def subset_sums(digits: tuple[int, ...]) -> frozenset[tuple[int, int]]:
    """Every (count, sum) that a set of these different digits can have."""
    reached = {(0, 0)}
    for digit in digits:
        reached |= {(count + 1, total + digit) for count, total in reached}
    return frozenset(reached)


def sets_that_fill(masks: Sequence[int], cells: Sequence[int], available: int, total: int) -> Iterator[int]:
    """Sets with that sum that the cells can share: each digit is open in one of them, each cell has one of the set."""
    open_to = 0
    for cell in cells:
        open_to |= masks[cell]
    for digits in digit_sets(available & open_to, len(cells), total):
        if all(masks[cell] & digits for cell in cells):
            yield digits


def whole_line(clue: Clue, position: Position, kind: str, fits: Callable[[Sequence[int]], bool]) -> Iterator[Deduction]:
    """The last resort at a line with few candidates: write down all ways to fill it. `fits` is said in `fillings`."""
    cells = clue.cells(position.grid)
    if sum(position.masks[cell].bit_count() for cell in cells) > FEW * len(cells):
        return
    yield from tried_out(position, cells, fits, clue.refer(kind, position.grid))


FEW = 3
"""Candidates a cell, on average, up to which a person would write down all ways to fill a line."""
