"""Fish with fins: a fish but for a few places beside it, which all see the cells where it still strikes the digit."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from functools import partial
from itertools import combinations

from bookmaker.logic.state import Ground, State
from bookmaker.logic.subsets import joined
from bookmaker.logic.technique import Finding, Technique
from bookmaker.logic.techniques.fish import crossing, fish
from bookmaker.puzzle.bits import cells_on
from bookmaker.puzzle.position import Candidate
from bookmaker.reasons import Rung
from bookmaker.reasons.patterns import FISH


class FinnedFish(Technique):
    """Sizes 2 to 4 with at most three fins."""

    name = "finned-fish"
    step_names = tuple(f"finned-{name}" for name in FISH.values())
    rung = Rung.WING
    fins = 3

    def find(self, state: State) -> Iterator[Finding]:
        return self._of(state, state.ground.grid.digits)

    def find_for(self, state: State, removed: tuple[Candidate, ...]) -> Iterator[Finding]:
        return self._of(state, sorted({digit for _, digit in removed}))

    def _of(self, state: State, digits: Iterable[int]) -> Iterator[Finding]:
        ground = state.ground
        for digit in digits:
            board = state.boards[digit]
            for lines in ground.crossed:
                base, cover = lines.base_boards, lines.cover_boards
                met = crossing(board, base, cover)
                own = {line: board & base[line] for line in met}
                beyond = {line: board & across for line, across in enumerate(cover)}
                for size in range(2, min(4, len(met) - 1) + 1):
                    few = [line for line, crossed in met.items() if crossed.bit_count() <= size + self.fins]
                    for chosen in combinations(few, size):
                        crossed = 0
                        for line in chosen:
                            crossed |= met[line]
                        if size < crossed.bit_count() <= size + self.fins:
                            places = [own[line] for line in chosen]
                            for across, fins, gone in self._with_fins(ground, places, beyond):
                                at = tuple(cells_on(joined(places)))
                                removed = tuple((cell, digit) for cell in cells_on(gone))
                                name, beside = f"finned-{FISH[size]}", tuple(cells_on(fins))
                                reason = partial(fish, name, lines, digit, chosen, across, at, beside)
                                yield Finding(self.rung, at, removed, reason, size - 1)

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
            if fins.bit_count() > self.fins:
                continue
            gone = inside & ~places & ground.peers[fins.bit_length() - 1]
            if gone and (gone := gone & ground.sees_all(fins)) and all(line & inside for line in lines):
                yield across, fins, gone
