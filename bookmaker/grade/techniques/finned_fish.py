"""Fish with fins: a fish but for a few places beside it, which all see the cells where it still strikes the digit."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from functools import partial
from itertools import combinations

from bookmaker.grade.state import Ground, State
from bookmaker.grade.subsets import joined
from bookmaker.grade.technique import Finding, Technique
from bookmaker.grade.techniques.fish import NAMES, both_ways, crossing, lines_named
from bookmaker.puzzle.bits import cells_on


class FinnedFish(Technique):
    """Sizes 2 to 4 with at most three fins."""

    name = "finned fish"
    rung = 9
    fins = 3

    @property
    def names(self) -> tuple[str, ...]:
        return tuple(f"finned {name}" for name in NAMES.values())

    def find(self, state: State) -> Iterator[Finding]:
        ground = state.ground
        for digit in ground.grid.digits:
            board = state.boards[digit]
            for base, cover, what, other in both_ways(ground):
                met = crossing(board, base, cover)
                own = {line: board & base[line] for line in met}
                beyond = {line: board & across for line, across in enumerate(cover)}
                for size in range(2, min(4, len(met) - 1) + 1):
                    few = [line for line, crossed in met.items() if crossed.bit_count() <= size + self.fins]
                    for lines in combinations(few, size):
                        crossed = 0
                        for line in lines:
                            crossed |= met[line]
                        if size < crossed.bit_count() <= size + self.fins:
                            places = [own[line] for line in lines]
                            for across, fins, gone in self._with_fins(ground, places, beyond):
                                at = tuple(cells_on(joined(places)))
                                removed = tuple((cell, digit) for cell in cells_on(gone))
                                told = partial(_words, ground, digit, what, lines, other, across, tuple(cells_on(fins)))
                                yield Finding(f"finned {NAMES[size]}", self.rung, at, removed, told, size - 1)

    def _with_fins(
        self, ground: Ground, lines: Sequence[int], beyond: dict[int, int]
    ) -> Iterator[tuple[tuple[int, ...], int, int]]:
        """As many of the crossing lines as there are lines, the fins that lie outside them, and where the digit goes.

        `lines` are the digit's places in each of the lines, `beyond` those in every line that crosses them, by number.
        """
        size, places = len(lines), joined(lines)
        crossed = {number: line for number, line in beyond.items() if line & places}
        outside = sorted((line & places).bit_count() for line in crossed.values())[: len(crossed) - size]
        if sum(outside) > self.fins:
            return
        for across in combinations(crossed, size):
            inside = 0
            for line in across:
                inside |= crossed[line]
            fins = places & ~inside
            gone = inside & ~places & ground.peers[fins.bit_length() - 1]
            if not gone or fins.bit_count() > self.fins:
                continue
            gone &= ground.sees_all(fins)
            if gone and all(line & inside for line in lines):
                yield across, fins, gone


def _words(
    ground: Ground,
    digit: int,
    what: str,
    base: Sequence[int],
    other: str,
    cover: Sequence[int],
    fins: tuple[int, ...],
) -> str:
    return (
        f"every place for {ground.symbol(digit)} in {what} {lines_named(base)} lies in {other} {lines_named(cover)} "
        f"or is {ground.either(fins)}; both ways it is struck from what all of these see"
    )
