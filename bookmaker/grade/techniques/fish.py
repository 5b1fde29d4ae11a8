"""Fish: a digit's places in some rows lie in as many columns, so it stands nowhere else in those; or turned by 90°.

Two lines make an X-wing, three a swordfish, four a jellyfish.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from functools import partial

from bookmaker.grade.state import Ground, State
from bookmaker.grade.subsets import as_many, joined
from bookmaker.grade.technique import Finding, Technique
from bookmaker.puzzle.bits import cells_on

NAMES = {2: "X-wing", 3: "swordfish", 4: "jellyfish"}


class Fish(Technique):
    """Sizes 2 to 4 without fins."""

    name = "fish"
    rung = 8

    @property
    def names(self) -> tuple[str, ...]:
        return tuple(NAMES.values())

    def find(self, state: State) -> Iterator[Finding]:
        ground = state.ground
        for digit in ground.grid.digits:
            board = state.boards[digit]
            for base, cover, what, other in both_ways(ground):
                met = crossing(board, base, cover)
                for size in range(2, min(4, len(met) - 1) + 1):
                    for lines, crossed in as_many(met, size):
                        across = tuple(cells_on(crossed))
                        places = board & joined(base[i] for i in lines)
                        gone = board & joined(cover[i] for i in across) & ~places
                        if gone:
                            removed = tuple((cell, digit) for cell in cells_on(gone))
                            words = partial(_words, ground, digit, what, lines, other, across)
                            yield Finding(NAMES[size], self.rung, tuple(cells_on(places)), removed, words, size - 2)


def both_ways(ground: Ground) -> Iterator[tuple[Sequence[int], Sequence[int], str, str]]:
    """The lines in which a fish is looked for and those that cross them, as boards, and what both are called."""
    yield ground.rows, ground.columns, "rows", "columns"
    yield ground.columns, ground.rows, "columns", "rows"


def crossing(board: int, base: Sequence[int], cover: Sequence[int]) -> dict[int, int]:
    """For each line of the base with two places or more, by number: the crossing lines these lie in, as bits."""
    return {
        number: sum(1 << i for i, across in enumerate(cover) if across & line & board)
        for number, line in enumerate(base)
        if (line & board).bit_count() >= 2
    }


def _words(ground: Ground, digit: int, what: str, base: Sequence[int], other: str, cover: Sequence[int]) -> str:
    return (
        f"in {what} {lines_named(base)} every place for {ground.symbol(digit)} lies in {other} {lines_named(cover)}, "
        f"so those {other} have it there"
    )


def lines_named(lines: Sequence[int]) -> str:
    """“2, 5 and 7” for lines counted from 0."""
    return ", ".join(str(i + 1) for i in lines[:-1]) + f" and {lines[-1] + 1}"
