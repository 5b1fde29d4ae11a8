"""Limits: the digits that a cell may hold, or may not.

Manifest: cells, a colon and the digits allowed there: `1 2 5`, `1-4`, `low`, `high`, or after `not` those forbidden.
Low digits are those below the middle, high ones those above: 1 to 4 and 6 to 9 on a 9×9 grid.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from functools import lru_cache
from itertools import groupby
from random import Random
from typing import Self

from bookmaker.display.items import Line, Rect, Stroke
from bookmaker.language import Catalogue
from bookmaker.puzzle.bits import digits_in, mask_of
from bookmaker.puzzle.grid import CLASSIC, LETTERS, Grid
from bookmaker.puzzle.position import Position
from bookmaker.reasons import MarkRef, Rung
from bookmaker.reasons.bymark import OnlyDigits
from bookmaker.reasons.patterns import NakedSubset
from bookmaker.rules.common.contract import Deduction, Rule, Sample
from bookmaker.rules.common.deducing.candidates import removed_by
from bookmaker.rules.common.drawing.frame import Frame, Layer, Mark
from bookmaker.rules.common.drawing.places import Box, InCell, PlaceClaim
from bookmaker.rules.common.parts import Form, Part, Written
from bookmaker.rules.common.reading import parts_of, read_digits
from bookmaker.rules.common.words.speech import cells_said
from bookmaker.rules.common.words.wording import cells_listed, digits_listed
from bookmaker.solve.problem import Allowed, Constraint
from bookmaker.source.cells import read_cells
from bookmaker.source.diagnostics import Collector, Place, nearest, quoted
from bookmaker.source.placed import Node, Table, Word


@dataclass(frozen=True, slots=True)
class Limit:
    """The digits written in a cell, as a mask: the only ones it may hold, or with `forbidden` those it may not."""

    cell: int
    digits: int
    forbidden: bool = False


WAYS = (1, 0.2), (1, 0.15), (1, 0.135), (2, 0.14), (2, 0.125), (3, 0.125), (3, 0.105)
"""On how many lines the digits may be written, and how high, in cells, the best first."""

SPOTS = (0.93, 0.955), (0.93, 0.935), (0.87, 0.88), (0.73, 0.95), (0.93, 0.05), (0.87, 0.13), (0.73, 0.05)
"""Where they end: at the right, and at the bottom or, where that is taken, how far from the top they begin."""

LEFT, PAD, BETWEEN = 0.06, 0.015, 0.035
"""The least distance from the left edge, white over and under the lines, and between them, in cells."""

OPEN = 0.09
"""By how much spaces are wider than the font's own, per em, or “5 8” would be read as 58."""

FIGURE, WIDE = 0.68, {" ": 0.43, "–": 0.76, **dict.fromkeys(LETTERS, 0.75)}
"""Widths for the height of a figure, in the narrow font at its boldest."""

_ONE_OF, _NONE_OF = Limit(0, 0b10011), Limit(9, 0b10000, forbidden=True)
"""What the key to the marks shows."""


@dataclass(frozen=True)
class Limits(Rule):
    """Each cell has at most one limit."""

    kind = "limits"
    title = "Limits"
    noun = "limit"
    typed = ("*: text",)
    relabels = "any"
    from_zero = True
    lettered = True
    example = """\
limits:
  r1c1 r2c2: 1 2 5
  r5c5: not 5
  r9c1-r9c3: low
"""
    form = Form.CELL
    figures = "digits"

    limits: tuple[Limit, ...]

    @classmethod
    def read(cls, body: Node, grid: Grid, collector: Collector) -> Self | None:
        if not isinstance(body, Table) or not body.entries:
            hint = "such as “r1c1 r2c2: 1 2 5” or “r5c5: not 5”"
            collector.error(body.place, "not-limits", "limits are lines of cells, a colon, and their digits", hint)
            return None
        limits: dict[int, Limit] = {}
        typed: dict[int, Place] = {}
        sound = True
        for key, value in body.entries:
            written = _read_written(value, grid, collector)
            sound &= written is not None
            for part in parts_of(key) or (key,):
                cells = read_cells(part, grid, collector)
                sound &= cells is not None
                for cell in cells or ():
                    if cell in limits:
                        hint = "put all of it in one line"
                        collector.error(part.place, "limit-twice", f"{grid.name(cell)} is limited twice", hint)
                        sound = False
                    elif written is not None:
                        limits[cell] = Limit(cell, *written)
                        typed[cell] = part.place
        if sound:
            sound = not _crowded(limits, typed, grid, collector)
        return cls(tuple(limits.values())) if sound else None

    @classmethod
    def blank(cls, grid: Grid) -> Self:
        return cls(())

    def parts(self, grid: Grid) -> tuple[Part, ...]:
        return tuple(
            Part((limit.cell,), "not" if limit.forbidden else "", digits_in(limit.digits)) for limit in self.limits
        )

    def with_parts(self, parts: Sequence[Part], grid: Grid) -> Self:
        limits = (Limit(part.cells[0], mask_of(part.value), part.name == "not") for part in parts)
        return replace(self, limits=tuple(limits))

    def written(self, grid: Grid) -> Written:
        lines: dict[str, Written] = {}
        for (digits, forbidden), alike in groupby(self.limits, key=lambda limit: (limit.digits, limit.forbidden)):
            cells = " ".join(grid.name(limit.cell) for limit in alike)
            lines[cells] = ("not " if forbidden else "") + " ".join(map(grid.symbol, digits_in(digits)))
        return lines

    def places(self, grid: Grid) -> tuple[tuple[int, ...], ...]:
        return tuple((cell,) for cell in grid.cells)

    def read_off(self, cells: Sequence[int], grid: Grid, digits: Sequence[int], rng: Random) -> Iterator[Part]:
        """One limit by chance, of three digits at most."""
        own = digits[cells[0]]
        others = rng.sample([digit for digit in grid.digits if digit != own], rng.randint(1, 3))
        if rng.random() < 0.4:
            yield Part(tuple(cells), "not", tuple(sorted(others)))
        else:
            yield Part(tuple(cells), "", tuple(sorted([own, *others[:2]])))

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        return (Allowed((limit.cell,), _allowed(limit, grid)) for limit in self.limits)

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        for limit in self.limits:
            written = {digit for digit in grid.digits if limit.digits & 2 ** (digit - 1)}
            if (digits[limit.cell] in written) == limit.forbidden:
                return False
        return True

    def sentence(self, words: Catalogue) -> str:
        forbidden = sum(limit.forbidden for limit in self.limits)
        among = "allowed" if not forbidden else "forbidden" if forbidden == len(self.limits) else "both"
        return words.say(f"limits-sentence-{among}", n=len(self.limits))

    def spoken(self, words: Catalogue, grid: Grid) -> Iterator[str]:
        alike: dict[tuple[int, bool], list[int]] = {}
        for limit in self.limits:
            alike.setdefault((limit.digits, limit.forbidden), []).append(limit.cell)
        for (digits, forbidden), cells in alike.items():
            listed = words.listed(map(grid.symbol, digits_in(digits)), "or")
            name = f"limits-spoken-{'not' if forbidden else 'only'}"
            yield words.say(name, digits=listed, cells=cells_said(words, grid, cells))

    def marks(self, frame: Frame) -> Iterator[Mark]:
        cell = frame.cell
        for limit in self.limits:
            of = (f"the limit of {frame.grid.name(limit.cell)}",)
            x, y = frame.corner(limit.cell)
            ways = _ways(limit.digits, frame.grid.symbols)
            box = frame.box(InCell(limit.cell, tuple(ways)))
            lines, height = ways[box]
            end, top = x + box.right * cell, y + box.top * cell
            ground = Rect(
                x + box.left * cell, top, (box.right - box.left) * cell, (box.bottom - box.top) * cell, fill=1.0
            )
            yield Mark(Layer.FIGURE, ground, of)
            for at, line in enumerate(lines):
                middle = top + (PAD + height / 2 + at * (height + BETWEEN)) * cell
                figures = frame.figures((end, middle), line, height, font=frame.narrow, mark=True)
                yield Mark(Layer.FIGURE, replace(figures, anchor="end", word_space=OPEN * figures.size), of)
                if limit.forbidden:
                    # Slanting, since a level line would be lost in the dash of “1–4”.
                    over, half = 0.03 * cell, height * cell / 2
                    start = end - _width(line, height) * cell - over, middle + half + over / 2
                    tip = end + over, middle - half - over / 2
                    yield Mark(Layer.FIGURE, Line(start, tip, Stroke(frame.thin())), of)

    def claims(self, grid: Grid) -> Iterator[PlaceClaim]:
        return (InCell(limit.cell, tuple(_ways(limit.digits, grid.symbols))) for limit in self.limits)

    @classmethod
    def sample(cls) -> Sample:
        return Sample(cls((_ONE_OF, _NONE_OF)), CLASSIC, 2, 1)

    def key(self) -> Sample:
        forbidden = {limit.forbidden for limit in self.limits}
        if len(forbidden) == 2:
            return self.sample()
        return Sample(Limits((replace(_NONE_OF, cell=0) if forbidden == {True} else _ONE_OF,)), CLASSIC, 1, 1)

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """The limits themselves; and as many cells of a house with one limit as it has digits."""
        grid = position.grid
        allowed = {limit.cell: _allowed(limit, grid) for limit in self.limits}
        for cell, mask in allowed.items():
            removed = removed_by(position, {cell: mask})
            if removed:
                claim = OnlyDigits((cell,), digits_in(mask))
                yield Deduction(Rung.SIMPLE, 1, (cell,), removed, MarkRef.at(self.kind, (cell,)), claim)
        for house in grid.houses:
            for mask in sorted({allowed[cell] for cell in house.cells if cell in allowed}):
                cells = tuple(cell for cell in house.cells if cell in allowed and allowed[cell] | mask == mask)
                if len(cells) == mask.bit_count():
                    removed = removed_by(position, {cell: ~mask for cell in house.cells if cell not in cells})
                    if removed:
                        mark, used_up = MarkRef.joined(self.kind, cells), NakedSubset(cells, digits_in(mask), house.ref)
                        yield Deduction(Rung.PAIR, len(cells), cells, removed, mark, used_up)

    def references(self, grid: Grid) -> tuple[MarkRef, ...]:
        return tuple(MarkRef.at(self.kind, (limit.cell,)) for limit in self.limits)


def _crowded(limits: Mapping[int, Limit], typed: Mapping[int, Place], grid: Grid, collector: Collector) -> bool:
    """Do more cells of a house share their limits than these leave digits? If so, a diagnostic at the last of them."""
    for house in grid.houses:
        here = {cell: _allowed(limits[cell], grid) for cell in limits if cell in house.cells}
        for mask in sorted(set(here.values())):
            cells = [cell for cell, allowed in here.items() if allowed | mask == mask]
            if len(cells) > mask.bit_count():
                left = f"have only {digits_listed(grid, digits_in(mask))} left among them"
                text = f"{cells_listed(grid, sorted(cells))} of {house.name} {left}"
                collector.error(
                    typed[cells[-1]], "limits-crowd", text, "cells of one row, column or region hold different digits"
                )
                return True
    return False


def _read_written(node: Node, grid: Grid, collector: Collector) -> tuple[int, bool] | None:
    """The digits as a mask, and whether they are forbidden."""
    parts = parts_of(node) if isinstance(node, Word) else ()
    forbidden = bool(parts) and parts[0].value == "not"
    named = parts[1:] if forbidden else parts
    if len(named) == 1 and named[0].value in ("low", "high"):
        half = grid.digits[: grid.size // 2] if named[0].value == "low" else grid.digits[-(grid.size // 2) :]
        return mask_of(half), forbidden
    listing = node
    if isinstance(node, Word) and forbidden:
        offset = node.value.index("not") + len("not")
        listing = Word(node.at_offset(offset), node.value[offset:])
    if len(named) == 1 and len(named[0].value) > 1 and named[0].value.isalpha():
        said, hint = f"the limit can't be {quoted(named[0].value)}", nearest(named[0].value, ("low", "high"))
        if not set(named[0].value.upper()) <= set(grid.symbols):
            collector.error(named[0].place, "unknown-word", said, hint)
            return None
    digits = read_digits(listing, "the limit", grid, collector)
    if digits is None:
        return None
    mask = mask_of(digits)
    if mask.bit_count() < len(digits):
        collector.error(node.place, "digit-twice", "the limit names a digit twice")
        return None
    if mask == grid.all_digits:
        text = "the limit forbids every digit" if forbidden else "the limit allows every digit, so it says nothing"
        collector.error(node.place, "limit-all", text)
        return None
    return mask, forbidden


def _allowed(limit: Limit, grid: Grid) -> int:
    return grid.all_digits & ~limit.digits if limit.forbidden else limit.digits


def _as_written(mask: int, symbols: str) -> list[str]:
    """Digits in little room: “1”, “2” and “5”, and “1–4” for three or more in a row."""
    digits, said = digits_in(mask), list[str]()
    while digits:
        run = next(n for n in range(len(digits), 0, -1) if digits[n - 1] - digits[0] == n - 1)
        if run > 2:
            said.append(f"{symbols[digits[0] - 1]}–{symbols[digits[run - 1] - 1]}")
        else:
            said += (symbols[digit - 1] for digit in digits[:run])
        digits = digits[run:]
    return said


@lru_cache(maxsize=1024)
def _ways(mask: int, symbols: str) -> dict[Box, tuple[tuple[str, ...], float]]:
    """How these digits may be written, the best way first: for each place its lines and how high they are."""
    runs, ways = _as_written(mask, symbols), dict[Box, tuple[tuple[str, ...], float]]()
    for count, height in WAYS:
        lines = _broken(runs, count)
        wide = max(_width(line, height) for line in lines)
        high = len(lines) * (height + BETWEEN) - BETWEEN + 2 * PAD
        for right, bottom in SPOTS:
            box = Box(
                right - wide,
                bottom - high if bottom > 0.5 else bottom,
                right,
                bottom if bottom > 0.5 else bottom + high,
            )
            if box.left >= LEFT:
                ways.setdefault(box, (lines, height))
    return ways


def _broken(runs: Sequence[str], count: int) -> tuple[str, ...]:
    """The runs on at most so many lines, the longest as short as can be."""
    if count == 1 or len(runs) == 1:
        return (" ".join(runs),)
    broken = [(" ".join(runs[:at]), *_broken(runs[at:], count - 1)) for at in range(1, len(runs))]
    return min(broken, key=lambda lines: max(map(len, lines)))


def _width(line: str, height: float) -> float:
    """Width of a line in the narrow font, in cells."""
    return sum(WIDE.get(character, FIGURE) for character in line) * height
