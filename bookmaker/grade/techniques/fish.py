"""Fish: a digit's places in some rows lie in as many columns, so it stands nowhere else in those; or turned by 90°.

Two lines make an X-wing, three a swordfish, four a jellyfish.
"""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial
from itertools import combinations

from bookmaker.grade.state import Ground, State
from bookmaker.grade.technique import Finding, Technique
from bookmaker.puzzle.bits import cells_on

NAMES = {2: "X-wing", 3: "swordfish", 4: "jellyfish"}


class Fish(Technique):
    """Sizes 2 to 4 without fins."""

    name = "fish"
    rung = 8

    def find(self, state: State) -> Iterator[Finding]:
        grid = state.ground.grid
        rows, columns = state.ground.rows, state.ground.columns
        for digit in grid.digits:
            board = state.boards[digit]
            if not board:
                continue
            for base, cover, what, other in ((rows, columns, "rows", "columns"), (columns, rows, "columns", "rows")):
                lines = [(i, board & line) for i, line in enumerate(base) if (board & line).bit_count() >= 2]
                for size in range(2, min(4, len(lines) - 1) + 1):
                    few = [(i, places) for i, places in lines if places.bit_count() <= size]
                    for chosen in combinations(few, size):
                        places = 0
                        for _, line in chosen:
                            places |= line
                        across = [i for i, line in enumerate(cover) if line & places]
                        if len(across) != size:
                            continue
                        gone = 0
                        for i in across:
                            gone |= cover[i]
                        gone &= board & ~places
                        if gone:
                            removed = tuple((cell, digit) for cell in cells_on(gone))
                            at = [i for i, _ in chosen]
                            words = partial(_words, state.ground, digit, what, at, other, across)
                            yield Finding(NAMES[size], self.rung, tuple(cells_on(places)), removed, words, size - 2)


def _words(ground: Ground, digit: int, what: str, base: list[int], other: str, cover: list[int]) -> str:
    return (
        f"in {what} {lines_named(base)} every place for {ground.symbol(digit)} lies in {other} {lines_named(cover)}, "
        f"so those {other} have it there"
    )


def lines_named(lines: list[int]) -> str:
    """“2, 5 and 7” for lines counted from 0."""
    return ", ".join(str(i + 1) for i in lines[:-1]) + f" and {lines[-1] + 1}"
