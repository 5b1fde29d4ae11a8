"""Fish with fins: a fish but for a few places beside it, which all see the cells where it still strikes the digit."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import combinations

from bookmaker.logic.state import Crossed, Ground
from bookmaker.logic.subsets import joined
from bookmaker.logic.techniques.fish import Caught, FishTechnique, crossing
from bookmaker.reasons import Rung
from bookmaker.reasons.patterns import FISH


class FinnedFish(FishTechnique):
    """At most three fins."""

    name = "finned-fish"
    before = "finned-"
    step_names = tuple(f"finned-{name}" for name in FISH.values())
    rung = Rung.WING
    fins = 3

    def caught(self, ground: Ground, board: int, lines: Crossed) -> Iterator[Caught]:
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
                        yield Caught(lines, chosen, across, joined(places), fins, gone)

    def reach(self, size: int) -> int:
        return size - 1

    def _with_fins(
        self, ground: Ground, lines: Sequence[int], beyond: dict[int, int]
    ) -> Iterator[tuple[tuple[int, ...], int, int]]:
        """As many of the crossing lines as there are lines, the fins that lie outside them, and where the digit goes.

        `lines` are the digit's places in each of the lines, `beyond` those in every line that crosses them, by number.
        """
        places = joined(lines)
        crossed = [number for number, line in beyond.items() if line & places]
        left = len(crossed) - len(lines)  # so many of them are left out, with a fin in each
        few = [number for number in crossed if (beyond[number] & places).bit_count() <= self.fins - left + 1]
        if len(few) < left:
            return
        whole = joined(map(beyond.__getitem__, crossed))
        for others in reversed([*combinations(few, left)]):  # so that the lines that are taken come in order
            outside = 0
            for line in others:
                outside |= beyond[line]
            fins, inside = places & outside, whole & ~outside
            if fins.bit_count() > self.fins:
                continue
            gone = inside & ~places & ground.peers[fins.bit_length() - 1]
            if gone and (gone := gone & ground.sees_all(fins)) and all(line & inside for line in lines):
                yield tuple(number for number in crossed if number not in others), fins, gone
