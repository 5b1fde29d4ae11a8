"""Between lines: every digit on the line lies strictly between the two in its end circles.

Manifest: a list of chains from circle to circle. Which circle holds the greater digit is to be found.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import lru_cache
from typing import Self

from bookmaker.display.items import Stroke
from bookmaker.display.shapes import circle, polyline
from bookmaker.placed import Node
from bookmaker.puzzle.bits import digits_in, span_mask
from bookmaker.puzzle.grid import CLASSIC, Grid
from bookmaker.puzzle.position import Position
from bookmaker.rules.common.automata import Machine, machine
from bookmaker.rules.common.candidates import removed_by
from bookmaker.rules.common.chain import Chain, ChainRule, Complaint, read_chains
from bookmaker.rules.common.contract import Deduction, Sample
from bookmaker.rules.common.fillings import tried_out
from bookmaker.rules.common.frame import Frame, Layer, Mark
from bookmaker.rules.common.strokes import BODY, THIN, halo, trace
from bookmaker.rules.common.wording import ends_named, one_or_many
from bookmaker.solve.problem import Constraint
from bookmaker.trouble import Desk

RING = 0.37
"""Radius of the end circles in cells."""


@dataclass(frozen=True)
class BetweenLine(ChainRule):
    """Chains whose first and last cells are the circles."""

    kind = "between-line"
    title = "Between lines"
    noun = "between line"
    example = """\
between-line:
  - r1c1-r1c4 r2c5
  - r9c9-r6c9
"""

    @classmethod
    def read(cls, body: Node, grid: Grid, desk: Desk) -> Self | None:
        def objects(chain: Chain) -> Complaint | None:
            crowd = _most_different(grid, chain[1:-1])
            if crowd + 2 <= grid.size:
                return None
            text = f"the between line needs {crowd} different digits between its ends, which leaves none for the ends"
            return "chain-long", text, f"there are only {grid.size} digits"

        chains = read_chains(body, cls.noun, grid, desk, least=3, objects=objects)
        return None if chains is None else cls(chains)

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        for chain in self.chains:
            yield _machine(grid.size).over((chain[0], chain[-1], *chain[1:-1]))

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        for chain in self.chains:
            one, other = digits[chain[0]], digits[chain[-1]]
            for cell in chain[1:-1]:
                if not (one < digits[cell] < other or other < digits[cell] < one):
                    return False
        return True

    def sentence(self) -> str:
        which = one_or_many(len(self.chains), "the line between two circles", "each line between two circles")
        return f"Digits on {which} are greater than the digit in one circle and smaller than that in the other."

    @classmethod
    def primer(cls) -> str:
        return (
            "The digits on the line lie between those in the two circles at its ends; neither of the two stands on it. "
            "So the lowest and the highest digit are never on such a line, and if three of its cells share a row, "
            "column or box, the circles are at least four apart. Find out which circle is the higher one first."
        )

    def marks(self, frame: Frame) -> Iterator[Mark]:
        pen = Stroke(frame.thin() + 0.3, THIN, join="round")
        radius = RING * frame.cell
        for chain in self.chains:
            way = trace(frame, chain)
            shaft = way.between(radius, way.length - radius)
            yield Mark(Layer.LINE, halo(frame, shaft, pen.width))
            yield Mark(Layer.LINE, polyline(shaft, pen))
        for chain in self.chains:
            for end in (chain[0], chain[-1]):
                yield Mark(Layer.LINE, circle(frame.centre(end), radius, pen, BODY))

    @classmethod
    def sample(cls) -> Sample:
        return Sample(cls(((0, 1, 2),)), CLASSIC, 1, 3)

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """Pairs of ends that leave room for the line; then the whole line tried out."""
        grid, masks = position.grid, position.masks
        for chain in self.chains:
            one, other, inner = chain[0], chain[-1], chain[1:-1]
            crowd = _most_different(grid, inner)
            kept = dict.fromkeys(chain, 0)
            for a in digits_in(masks[one]):
                for b in digits_in(masks[other]):
                    room = span_mask(min(a, b) + 1, max(a, b) - 1)
                    if room.bit_count() >= crowd and all(masks[cell] & room for cell in inner):
                        kept[one] |= 1 << (a - 1)
                        kept[other] |= 1 << (b - 1)
                        for cell in inner:
                            kept[cell] |= room
            name = f"the between line {ends_named(grid, chain)}"
            removed = removed_by(position, kept)
            if removed and all(kept.values()):
                cells = {cell for cell, _ in removed}
                words = f"{name} needs a digit on both sides of every digit along it"
                if cells <= {one, other}:
                    words = f"{name} needs room for its digits between those in the circles"
                yield Deduction(5, len(chain), chain, removed, words)
            elif not removed:
                yield from tried_out(position, (one, other, *inner), _fits, name)


@lru_cache(maxsize=16)
def _machine(size: int) -> Machine:
    """Reads the two ends, then everything between them."""

    def step(state: tuple[int, ...], digit: int) -> tuple[int, ...] | None:
        if len(state) < 2:
            return tuple(sorted((*state, digit)))
        return state if state[0] < digit < state[1] else None

    start: tuple[int, ...] = ()
    return machine(range(1, size + 1), start, step, lambda state: len(state) == 2)


def _fits(digits: Sequence[int]) -> bool:
    """The two ends first, then the cells between them."""
    return len(digits) < 3 or min(digits[:2]) < digits[-1] < max(digits[:2])


def _most_different(grid: Grid, cells: Sequence[int]) -> int:
    """How many of these cells, at most, stand in one row, column or region, so that their digits differ."""
    return max((sum(cell in house.cells for cell in cells) for house in grid.houses), default=0)
