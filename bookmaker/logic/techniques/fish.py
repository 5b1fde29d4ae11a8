"""Fish: a digit's places in some rows lie in as many columns, so it stands nowhere else in those; or turned by 90°.

Two lines make an X-wing, three a swordfish, four a jellyfish.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from functools import partial

from bookmaker.logic.state import Crossed, State
from bookmaker.logic.subsets import as_many, joined
from bookmaker.logic.technique import Finding, Technique
from bookmaker.puzzle.bits import cells_on
from bookmaker.reasons import Reason, Rung
from bookmaker.reasons.patterns import FISH, Fish


class PlainFish(Technique):
    """Sizes 2 to 4 without fins."""

    name = "fish"
    step_names = tuple(FISH.values())
    rung = Rung.FISH

    def find(self, state: State) -> Iterator[Finding]:
        ground = state.ground
        for digit in ground.grid.digits:
            board = state.boards[digit]
            for lines in ground.crossed:
                base, cover = lines.base_boards, lines.cover_boards
                met = crossing(board, base, cover)
                for size in range(2, min(4, len(met) - 1) + 1):
                    for chosen, crossed in as_many(met, size):
                        across = tuple(cells_on(crossed))
                        places = board & joined(base[i] for i in chosen)
                        gone = board & joined(cover[i] for i in across) & ~places
                        if gone:
                            removed = tuple((cell, digit) for cell in cells_on(gone))
                            at = tuple(cells_on(places))
                            reason = partial(fish, FISH[size], lines, digit, chosen, across, at)
                            yield Finding(self.rung, at, removed, reason, size - 2)


def crossing(board: int, base: Sequence[int], cover: Sequence[int]) -> dict[int, int]:
    """For each line of the base with two places or more, by number: the crossing lines these lie in, as bits."""
    return {
        number: sum(1 << i for i, across in enumerate(cover) if across & line & board)
        for number, line in enumerate(base)
        if (line & board).bit_count() >= 2
    }


def fish(
    name: str,
    lines: Crossed,
    digit: int,
    base: Sequence[int],
    cover: Sequence[int],
    places: tuple[int, ...],
    fins: tuple[int, ...] = (),
) -> Reason:
    """The reason of a fish in some of the lines, by their numbers from 0."""
    houses = tuple(lines.base[line] for line in base), tuple(lines.cover[line] for line in cover)
    return Reason(name, None, Fish(digit, *houses, places, fins))
