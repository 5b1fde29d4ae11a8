"""Fish with fins: a fish but for a few places beside it, which all see the cells where it still strikes the digit."""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial
from itertools import combinations

from bookmaker.grade.state import Ground, State
from bookmaker.grade.technique import Finding, Technique
from bookmaker.grade.techniques.fish import NAMES, lines_named
from bookmaker.puzzle.bits import cells_on


class FinnedFish(Technique):
    """Sizes 2 to 4 with at most three fins."""

    name = "finned fish"
    rung = 9
    fins = 3

    def find(self, state: State) -> Iterator[Finding]:
        ground = state.ground
        for digit in ground.grid.digits:
            board = state.boards[digit]
            if not board:
                continue
            for base, cover, what, other in (
                (ground.rows, ground.columns, "rows", "columns"),
                (ground.columns, ground.rows, "columns", "rows"),
            ):
                lines = [(i, board & line) for i, line in enumerate(base) if (board & line).bit_count() >= 2]
                across = [(i, board & line) for i, line in enumerate(cover) if board & line]
                meets = {i: sum(1 << j for j, line in across if line & places) for i, places in lines}
                for size in range(2, min(4, len(lines) - 1) + 1):
                    few = [(i, places) for i, places in lines if places.bit_count() <= size + self.fins]
                    for chosen in combinations(few, size):
                        places = met = 0
                        for i, line in chosen:
                            places |= line
                            met |= meets[i]
                        if size < met.bit_count() <= size + self.fins:
                            yield from self._finned(ground, digit, board, chosen, places, across, size, (what, other))

    def _finned(
        self,
        ground: Ground,
        digit: int,
        board: int,
        chosen: tuple[tuple[int, int], ...],
        places: int,
        across: list[tuple[int, int]],
        size: int,
        words: tuple[str, str],
    ) -> Iterator[Finding]:
        met = [(i, line) for i, line in across if line & places]
        outside = sorted((line & places).bit_count() for _, line in met)[: len(met) - size]
        if sum(outside) > self.fins:
            return
        for covers in combinations(met, size):
            inside = 0
            for _, line in covers:
                inside |= line
            fins = places & ~inside
            gone = inside & ~places & ground.peers[fins.bit_length() - 1]
            if not gone or fins.bit_count() > self.fins:
                continue
            gone &= ground.sees_all(fins)
            if gone and all(line & inside for _, line in chosen):
                removed = tuple((cell, digit) for cell in cells_on(gone))
                told = partial(
                    _words, ground, digit, words, [i for i, _ in chosen], [i for i, _ in covers], tuple(cells_on(fins))
                )
                yield Finding(
                    f"finned {NAMES[size]}", self.rung, tuple(cells_on(places)), removed, told, reach=size - 1
                )


def _words(
    ground: Ground, digit: int, words: tuple[str, str], base: list[int], cover: list[int], fins: tuple[int, ...]
) -> str:
    what, other = words
    return (
        f"every place for {ground.symbol(digit)} in {what} {lines_named(base)} lies in {other} {lines_named(cover)} "
        f"or is {ground.either(fins)}; both ways it is struck from what all of these see"
    )
