"""Fish: a digit's places in some rows lie in as many columns, so it stands nowhere else in those; or turned by 90°.

Two lines make an X-wing, three a swordfish, four a jellyfish.
"""

from __future__ import annotations

from abc import abstractmethod
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from functools import partial

from bookmaker.logic.state import Crossed, Ground, State
from bookmaker.logic.subsets import as_many, joined
from bookmaker.logic.technique import Finding, Technique
from bookmaker.puzzle.bits import cells_on
from bookmaker.puzzle.position import Candidate
from bookmaker.reasons import Reason, Rung
from bookmaker.reasons.patterns import FISH, Fish


@dataclass(frozen=True, slots=True)
class Caught:
    """A fish on the board of a digit: its base and cover among the lines, by number, the boards of its places, of its
    fins and of what goes."""

    lines: Crossed
    base: tuple[int, ...]
    cover: tuple[int, ...]
    places: int
    fins: int
    gone: int


class FishTechnique(Technique):
    """Fish of sizes 2 to 4. What is found on a digit's board is kept with the ground."""

    by_digit = True
    before: str
    """What stands before the name of the size."""

    def find(self, state: State) -> Iterator[Finding]:
        return self._of(state, state.ground.grid.digits)

    def find_for(self, state: State, removed: tuple[Candidate, ...]) -> Iterator[Finding]:
        return self._of(state, sorted({digit for _, digit in removed}))

    def _of(self, state: State, digits: Iterable[int]) -> Iterator[Finding]:
        kept = state.ground.on_boards
        for digit in digits:
            key = self.name, state.boards[digit]
            if key not in kept:
                kept[key] = [one for lines in state.ground.crossed for one in self.caught(state.ground, key[1], lines)]
            for one in kept[key]:
                removed = tuple((cell, digit) for cell in cells_on(one.gone))
                reason = partial(_reason, self.before, digit, one)
                yield Finding(self.rung, tuple(cells_on(one.places)), removed, reason, self.reach(len(one.base)))

    @abstractmethod
    def caught(self, ground: Ground, board: int, lines: Crossed) -> Iterator[Caught]:
        """All fish on a digit's board in these lines."""

    @abstractmethod
    def reach(self, size: int) -> int:
        """How far ahead a person must think."""


class PlainFish(FishTechnique):
    """Fish without fins."""

    name = "fish"
    step_names = tuple(FISH.values())
    rung = Rung.FISH
    before = ""

    def caught(self, ground: Ground, board: int, lines: Crossed) -> Iterator[Caught]:
        base, cover = lines.base_boards, lines.cover_boards
        met = crossing(board, base, cover)
        for size in range(2, min(4, len(met) - 1) + 1):
            for chosen, crossed in as_many(met, size):
                across = tuple(cells_on(crossed))
                places = board & joined(base[i] for i in chosen)
                gone = board & joined(cover[i] for i in across) & ~places
                if gone:
                    yield Caught(lines, chosen, across, places, 0, gone)

    def reach(self, size: int) -> int:
        return size - 2


def crossing(board: int, base: Sequence[int], cover: Sequence[int]) -> dict[int, int]:
    """For each line of the base with two places or more, by number: the crossing lines these lie in, as bits."""
    return {
        number: sum(1 << i for i, across in enumerate(cover) if across & line & board)
        for number, line in enumerate(base)
        if (line & board).bit_count() >= 2
    }


def _reason(before: str, digit: int, caught: Caught) -> Reason:
    base = tuple(caught.lines.base[line] for line in caught.base)
    cover = tuple(caught.lines.cover[line] for line in caught.cover)
    claim = Fish(digit, base, cover, tuple(cells_on(caught.places)), tuple(cells_on(caught.fins)))
    return Reason(before + FISH[len(base)], None, claim)
